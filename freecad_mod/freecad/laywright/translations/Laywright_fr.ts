<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <source>10 degC more halve the time</source>
   <translation>10 °C de plus divisent le temps par deux</translation>
  </message>
  <message>
   <source>16 times the thickness (ASTM D790)</source>
   <translation>16 fois l’épaisseur (ASTM D790)</translation>
  </message>
  <message>
   <source>32 times the thickness (ASTM D7264)</source>
   <translation>32 fois l’épaisseur (ASTM D7264)</translation>
  </message>
  <message>
   <source>40 times the thickness (ISO 14125, carbon)</source>
   <translation>40 fois l’épaisseur (ISO 14125, carbone)</translation>
  </message>
  <message>
   <source>A Layup to print</source>
   <translation>Un empilement à imprimer</translation>
  </message>
  <message>
   <source>A Mix &amp; Cure Plan to print</source>
   <translation>Un plan de mélange et cuisson à imprimer</translation>
  </message>
  <message>
   <source>A Mould Body to print</source>
   <translation>Un corps de moule à imprimer</translation>
  </message>
  <message>
   <source>A Moulded Face to print</source>
   <translation>Une face moulée à imprimer</translation>
  </message>
  <message>
   <source>A Release Check to print</source>
   <translation>Un contrôle du démoulage à imprimer</translation>
  </message>
  <message>
   <source>A Roll Plan to print</source>
   <translation>Un plan de rouleau à imprimer</translation>
  </message>
  <message>
   <source>A point on each region, instead of names (mm)</source>
   <translation>Un point sur chaque région, au lieu des noms (mm)</translation>
  </message>
  <message>
   <source>A3</source>
   <translation>A3</translation>
  </message>
  <message>
   <source>A4</source>
   <translation>A4</translation>
  </message>
  <message>
   <source>ABasis</source>
   <translation>Base A</translation>
  </message>
  <message>
   <source>About how many elements that shell has</source>
   <translation>Nombre approximatif d’éléments de cette coque</translation>
  </message>
  <message>
   <source>Acceptance</source>
   <translation>Réception</translation>
  </message>
  <message>
   <source>Air as a share of the laminate's volume (%)</source>
   <translation>Air en part du volume du stratifié (%)</translation>
  </message>
  <message>
   <source>Air in the laminate, from both (%)</source>
   <translation>Air dans le stratifié, d’après les deux (%)</translation>
  </message>
  <message>
   <source>Air port</source>
   <translation>Prise d’air</translation>
  </message>
  <message>
   <source>All dry cloth, 0 for the sum of the pieces (g)</source>
   <translation>Tout le tissu sec, 0 pour la somme des morceaux (g)</translation>
  </message>
  <message>
   <source>All resin and hardener that was mixed (g)</source>
   <translation>Toute la résine et le durcisseur mélangés (g)</translation>
  </message>
  <message>
   <source>Allowances switched off, one on each line: 'laminate thickness', 'release film and coats', 'print shrinkage', 'growth of the mould at cure temperature', 'spring-in of bends'</source>
   <translation>Corrections coupées, une par ligne : 'laminate thickness', 'release film and coats', 'print shrinkage', 'growth of the mould at cure temperature', 'spring-in of bends'</translation>
  </message>
  <message>
   <source>Also cut</source>
   <translation>Découper aussi</translation>
  </message>
  <message>
   <source>Angle of each ply's warp from the datum arrow (degrees), counter-clockwise seen from the side away from the mould</source>
   <translation>Angle de la chaîne de chaque pli avec la flèche (degrés), sens inverse des aiguilles d’une montre, vu du côté opposé au moule</translation>
  </message>
  <message>
   <source>Angles</source>
   <translation>Angles</translation>
  </message>
  <message>
   <source>Area</source>
   <translation>Aire</translation>
  </message>
  <message>
   <source>Area by class</source>
   <translation>Aire par classe</translation>
  </message>
  <message>
   <source>Area of all patterns (mm²)</source>
   <translation>Aire de tous les patrons (mm²)</translation>
  </message>
  <message>
   <source>Area of all seams (mm²)</source>
   <translation>Aire de tous les joints (mm²)</translation>
  </message>
  <message>
   <source>Area of each class of draft (mm²)</source>
   <translation>Aire de chaque classe de dépouille (mm²)</translation>
  </message>
  <message>
   <source>Area of the moulded faces (mm²)</source>
   <translation>Aire des faces moulées (mm²)</translation>
  </message>
  <message>
   <source>Area that cannot leave along the pull (mm²)</source>
   <translation>Aire qui ne peut sortir dans le sens du démoulage (mm²)</translation>
  </message>
  <message>
   <source>Areal mass</source>
   <translation>Masse surfacique</translation>
  </message>
  <message>
   <source>Areal weight of each cloth, card and scale (g/m²)</source>
   <translation>Masse surfacique de chaque tissu, fiche et balance (g/m²)</translation>
  </message>
  <message>
   <source>Assembly</source>
   <translation>Assemblage</translation>
  </message>
  <message>
   <source>At most so many pieces where one direction does not release the part; 1 refuses it, 0 takes as many as the Release Check</source>
   <translation>Au plus tant d’éléments là où une direction ne libère pas la pièce ; 1 le refuse, 0 en prend autant que le contrôle du démoulage</translation>
  </message>
  <message>
   <source>BBasis</source>
   <translation>Base B</translation>
  </message>
  <message>
   <source>Bag closed</source>
   <translation>Sac fermé</translation>
  </message>
  <message>
   <source>Bag film</source>
   <translation>Film à vide</translation>
  </message>
  <message>
   <source>Bag film by its card</source>
   <translation>Film à vide selon sa fiche</translation>
  </message>
  <message>
   <source>Balls that no cut passes through, each as x, y, z of the part and radius (mm)</source>
   <translation>Boules qu’aucune coupe ne traverse, chacune par x, y, z de la pièce et rayon (mm)</translation>
  </message>
  <message>
   <source>Barcol 934</source>
   <translation>Barcol 934</translation>
  </message>
  <message>
   <source>Base height</source>
   <translation>Hauteur du socle</translation>
  </message>
  <message>
   <source>Batch numbers, leaks, dry spots, who did it</source>
   <translation>Numéros de lot, fuites, zones sèches, qui l’a fait</translation>
  </message>
  <message>
   <source>Bend across</source>
   <translation>Flexion en travers</translation>
  </message>
  <message>
   <source>Bend along</source>
   <translation>Flexion en long</translation>
  </message>
  <message>
   <source>Bend twist</source>
   <translation>Flexion, torsion</translation>
  </message>
  <message>
   <source>Bending across</source>
   <translation>Module de flexion en travers</translation>
  </message>
  <message>
   <source>Bending along</source>
   <translation>Module de flexion en long</translation>
  </message>
  <message>
   <source>Bends close</source>
   <translation>Fermeture des plis</translation>
  </message>
  <message>
   <source>Bends that close: listed, applied (the mould is opened by as much) or not considered</source>
   <translation>Plis qui se ferment : énumérés, appliqués (le moule est ouvert d'autant) ou non considérés</translation>
  </message>
  <message>
   <source>Best draft</source>
   <translation>Meilleure dépouille</translation>
  </message>
  <message>
   <source>Best pull</source>
   <translation>Meilleur sens de démoulage</translation>
  </message>
  <message>
   <source>Best pull by search, where something is held back</source>
   <translation>Meilleur démoulage par recherche, là où quelque chose retient</translation>
  </message>
  <message>
   <source>Between which strains the modulus is taken</source>
   <translation>Entre quelles déformations le module est pris</translation>
  </message>
  <message>
   <source>Body</source>
   <translation>Corps</translation>
  </message>
  <message>
   <source>Bolt holes</source>
   <translation>Trous de boulons</translation>
  </message>
  <message>
   <source>Bolt spacing</source>
   <translation>Écart des boulons</translation>
  </message>
  <message>
   <source>Bottom</source>
   <translation>Fond</translation>
  </message>
  <message>
   <source>Breather</source>
   <translation>Feutre de drainage</translation>
  </message>
  <message>
   <source>Breather by its card</source>
   <translation>Feutre de drainage selon sa fiche</translation>
  </message>
  <message>
   <source>Build</source>
   <translation>Construction</translation>
  </message>
  <message>
   <source>By how much each further ply of the same extent ends off the one before; 0 for what is usual, 20 times its thickness and at least 6 mm (mm)</source>
   <translation>De combien chaque pli suivant de même étendue finit plus loin que le précédent ; 0 pour l’usage, 20 fois son épaisseur et au moins 6 mm (mm)</translation>
  </message>
  <message>
   <source>Cards</source>
   <translation>Fiches</translation>
  </message>
  <message>
   <source>Cards of the materials in it, kept so that the job stays what it was; empty to take those of the library</source>
   <translation>Fiches des matières, gardées pour que le travail reste ce qu’il était ; vider pour prendre celles de la collection</translation>
  </message>
  <message>
   <source>Chord</source>
   <translation>Plage de déformation</translation>
  </message>
  <message>
   <source>Clearance</source>
   <translation>Jeu</translation>
  </message>
  <message>
   <source>Clearance of the dowel holes per side (mm)</source>
   <translation>Jeu des trous de goujons par côté (mm)</translation>
  </message>
  <message>
   <source>Clearance of tongues per side (mm)</source>
   <translation>Jeu des languettes par côté (mm)</translation>
  </message>
  <message>
   <source>Clock</source>
   <translation>Horaire</translation>
  </message>
  <message>
   <source>Cloth (g)</source>
   <translation>Tissu (g)</translation>
  </message>
  <message>
   <source>Cloth Patterns to print</source>
   <translation>Patrons de tissu à imprimer</translation>
  </message>
  <message>
   <source>Cloth beyond the trim line on every side (mm)</source>
   <translation>Tissu au-delà de la ligne de détourage, de chaque côté (mm)</translation>
  </message>
  <message>
   <source>Cloth margin</source>
   <translation>Marge de tissu</translation>
  </message>
  <message>
   <source>Cloth mass</source>
   <translation>Masse de tissu</translation>
  </message>
  <message>
   <source>Cloth of each ply by its card; ply 1 touches the mould</source>
   <translation>Tissu de chaque pli selon sa fiche ; le pli 1 touche le moule</translation>
  </message>
  <message>
   <source>Cloth to buy, all rolls together (mm)</source>
   <translation>Tissu à acheter, tous rouleaux ensemble (mm)</translation>
  </message>
  <message>
   <source>Cloths</source>
   <translation>Tissus</translation>
  </message>
  <message>
   <source>Coats</source>
   <translation>Couches</translation>
  </message>
  <message>
   <source>Coats of mix on the mould before ply 1</source>
   <translation>Couches de mélange sur le moule avant le pli 1</translation>
  </message>
  <message>
   <source>Coats of mix over the last ply, to fill the weave</source>
   <translation>Couches de mélange sur le dernier pli, pour boucher le tissage</translation>
  </message>
  <message>
   <source>Code that every sheet and file of this state carries</source>
   <translation>Code que porte chaque feuille et fichier de cet état</translation>
  </message>
  <message>
   <source>Compensations</source>
   <translation>Compensations</translation>
  </message>
  <message>
   <source>Compression counted</source>
   <translation>Compression retenue</translation>
  </message>
  <message>
   <source>Core</source>
   <translation>Âme</translation>
  </message>
  <message>
   <source>Core between two plies by its card, empty for none</source>
   <translation>Âme entre deux plis selon sa fiche, vide pour aucune</translation>
  </message>
  <message>
   <source>Core counted</source>
   <translation>Âme retenue</translation>
  </message>
  <message>
   <source>Core on ply</source>
   <translation>Âme sur le pli</translation>
  </message>
  <message>
   <source>Core thickness</source>
   <translation>Épaisseur de l’âme</translation>
  </message>
  <message>
   <source>Cost of one part, as far as there are prices</source>
   <translation>Coût d’une pièce, autant qu’il y a des prix</translation>
  </message>
  <message>
   <source>Cost per part</source>
   <translation>Coût par pièce</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Nombre</translation>
  </message>
  <message>
   <source>Coupon span</source>
   <translation>Portée des éprouvettes</translation>
  </message>
  <message>
   <source>Coupons</source>
   <translation>Éprouvettes</translation>
  </message>
  <message>
   <source>Criterion</source>
   <translation>Critère</translation>
  </message>
  <message>
   <source>Cup limit</source>
   <translation>Limite du gobelet</translation>
  </message>
  <message>
   <source>Cups</source>
   <translation>Gobelets</translation>
  </message>
  <message>
   <source>Cups in order, with readings of the scale</source>
   <translation>Gobelets dans l’ordre, avec lectures de la balance</translation>
  </message>
  <message>
   <source>Cure</source>
   <translation>Polymérisation</translation>
  </message>
  <message>
   <source>Currency</source>
   <translation>Monnaie</translation>
  </message>
  <message>
   <source>Cut area</source>
   <translation>Aire coupée</translation>
  </message>
  <message>
   <source>Cut list</source>
   <translation>Liste de coupe</translation>
  </message>
  <message>
   <source>Cuts</source>
   <translation>Coupes</translation>
  </message>
  <message>
   <source>Cuts that are made, points in mm</source>
   <translation>Coupes qui sont faites, points en mm</translation>
  </message>
  <message>
   <source>Cuts that are proposed, points in mm</source>
   <translation>Coupes qui sont proposées, points en mm</translation>
  </message>
  <message>
   <source>Cuts that are wanted across x of the grid (mm)</source>
   <translation>Coupes voulues en travers de x de la grille (mm)</translation>
  </message>
  <message>
   <source>Cuts that are wanted across y of the grid (mm)</source>
   <translation>Coupes voulues en travers de y de la grille (mm)</translation>
  </message>
  <message>
   <source>Cuts that are wanted across z of the grid (mm)</source>
   <translation>Coupes voulues en travers de z de la grille (mm)</translation>
  </message>
  <message>
   <source>Cuts to make, each as in ProposedCuts; add 'refused' to one that you do not want</source>
   <translation>Coupes à faire, chacune comme dans ProposedCuts ; ajouter 'refused' à celle dont vous ne voulez pas</translation>
  </message>
  <message>
   <source>Date</source>
   <translation>Date</translation>
  </message>
  <message>
   <source>Date of the layup, such as 2026-11-25</source>
   <translation>Date du drapage, comme 2026-11-25</translation>
  </message>
  <message>
   <source>Date of the test, for the cards</source>
   <translation>Date de l’essai, pour les fiches</translation>
  </message>
  <message>
   <source>Datum direction</source>
   <translation>Direction de la flèche</translation>
  </message>
  <message>
   <source>Datum edge</source>
   <translation>Arête de référence</translation>
  </message>
  <message>
   <source>Datum from</source>
   <translation>Flèche depuis</translation>
  </message>
  <message>
   <source>Datum point</source>
   <translation>Point de la flèche</translation>
  </message>
  <message>
   <source>Day begins</source>
   <translation>Début de journée</translation>
  </message>
  <message>
   <source>Day ends</source>
   <translation>Fin de journée</translation>
  </message>
  <message>
   <source>Decimal mark</source>
   <translation>Séparateur décimal</translation>
  </message>
  <message>
   <source>Demould time</source>
   <translation>Temps de démoulage</translation>
  </message>
  <message>
   <source>Density of the glue (g/cm³)</source>
   <translation>Masse volumique de la colle (g/cm³)</translation>
  </message>
  <message>
   <source>Depth of layer lines or texture across the pull (mm)</source>
   <translation>Profondeur des couches ou de la texture en travers du démoulage (mm)</translation>
  </message>
  <message>
   <source>Depth of the dowel hole in each tile (mm)</source>
   <translation>Profondeur du trou de goujon dans chaque tuile (mm)</translation>
  </message>
  <message>
   <source>Depth of the engraved marks, 0 for none (mm)</source>
   <translation>Profondeur des repères gravés, 0 pour aucun (mm)</translation>
  </message>
  <message>
   <source>Depth of the scribed trim line (mm)</source>
   <translation>Profondeur de la ligne de détourage tracée (mm)</translation>
  </message>
  <message>
   <source>Deviation</source>
   <translation>Écart</translation>
  </message>
  <message>
   <source>Diagonal of a tongue's section (mm)</source>
   <translation>Diagonale de la section d’une languette (mm)</translation>
  </message>
  <message>
   <source>Diameter of a bore below the scrap, for air (mm)</source>
   <translation>Diamètre d’un perçage sous la chute, pour l’air (mm)</translation>
  </message>
  <message>
   <source>Diameter of four bores in the flange's corners (mm)</source>
   <translation>Diamètre de quatre perçages aux coins de la bride (mm)</translation>
  </message>
  <message>
   <source>Diameter of the dowels (mm)</source>
   <translation>Diamètre des goujons (mm)</translation>
  </message>
  <message>
   <source>Diameter of the feet (mm)</source>
   <translation>Diamètre des pieds (mm)</translation>
  </message>
  <message>
   <source>Diameter of the holes for bolts (mm)</source>
   <translation>Diamètre des trous de boulons (mm)</translation>
  </message>
  <message>
   <source>Direction in which the part leaves the mould, when it is fixed</source>
   <translation>Direction dans laquelle la pièce quitte le moule, si elle est fixe</translation>
  </message>
  <message>
   <source>Direction of the arrow</source>
   <translation>Direction de la flèche</translation>
  </message>
  <message>
   <source>Direction of the datum arrow there</source>
   <translation>Direction de la flèche à cet endroit</translation>
  </message>
  <message>
   <source>Directions in which the part leaves the pieces</source>
   <translation>Directions dans lesquelles la pièce quitte les parties du moule</translation>
  </message>
  <message>
   <source>Distance kept by cuts of plies near by (mm)</source>
   <translation>Distance que gardent les coupes des plis voisins (mm)</translation>
  </message>
  <message>
   <source>Distance of the supports</source>
   <translation>Portée</translation>
  </message>
  <message>
   <source>Distance of the supports that the test pieces are bent over</source>
   <translation>Distance des appuis sur lesquels les éprouvettes sont fléchies</translation>
  </message>
  <message>
   <source>Dowel depth</source>
   <translation>Profondeur de goujon</translation>
  </message>
  <message>
   <source>Dowel diameter</source>
   <translation>Diamètre des goujons</translation>
  </message>
  <message>
   <source>Draft found</source>
   <translation>Dépouille trouvée</translation>
  </message>
  <message>
   <source>Draft that is wanted at every piece; 0 takes that of the Release Check</source>
   <translation>Dépouille voulue à chaque élément ; 0 prend celle du contrôle du démoulage</translation>
  </message>
  <message>
   <source>Draft that is wanted everywhere, as set by hand; pieces of the Mould Body too</source>
   <translation>Dépouille voulue partout, fixée à la main ; aussi aux éléments du corps du moule</translation>
  </message>
  <message>
   <source>Draft that is wanted for this surface (degrees)</source>
   <translation>Dépouille voulue pour cette surface (degrés)</translation>
  </message>
  <message>
   <source>Drop off</source>
   <translation>Décalage des fins</translation>
  </message>
  <message>
   <source>Drop way</source>
   <translation>Sens du décalage</translation>
  </message>
  <message>
   <source>Dry cloth</source>
   <translation>Tissu sec</translation>
  </message>
  <message>
   <source>Dry cloth, one weight for each piece in the order of the page 'Cut cloth' (g)</source>
   <translation>Tissu sec, un poids par morceau dans l’ordre de la page 'Cut cloth' (g)</translation>
  </message>
  <message>
   <source>Each pattern with its area (m²) and largest shear</source>
   <translation>Chaque patron avec son aire (m²) et son plus grand cisaillement</translation>
  </message>
  <message>
   <source>Each piece: the direction in which the part leaves it, volume (cm³)</source>
   <translation>Chaque élément : direction dans laquelle la pièce le quitte, volume (cm³)</translation>
  </message>
  <message>
   <source>Ear height</source>
   <translation>Hauteur des oreilles</translation>
  </message>
  <message>
   <source>Ear reach</source>
   <translation>Saillie des oreilles</translation>
  </message>
  <message>
   <source>Ear thickness</source>
   <translation>Épaisseur des oreilles</translation>
  </message>
  <message>
   <source>Edge</source>
   <translation>Bord</translation>
  </message>
  <message>
   <source>Edge of the part from whose middle the cloth is laid, the datum arrow along it</source>
   <translation>Arête de la pièce du milieu de laquelle le tissu est posé, la flèche de référence le long d'elle</translation>
  </message>
  <message>
   <source>Edge tape</source>
   <translation>Ruban de bord</translation>
  </message>
  <message>
   <source>Edge tape along the cut lines (m)</source>
   <translation>Ruban de bord le long des lignes de coupe (m)</translation>
  </message>
  <message>
   <source>Every piece of cloth takes besides (min)</source>
   <translation>Temps en plus pour chaque morceau de tissu (min)</translation>
  </message>
  <message>
   <source>Extents</source>
   <translation>Étendues</translation>
  </message>
  <message>
   <source>Extra for cups and brush (%)</source>
   <translation>Supplément pour gobelets et pinceau (%)</translation>
  </message>
  <message>
   <source>Extra share</source>
   <translation>Supplément</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Face</translation>
  </message>
  <message>
   <source>Face down</source>
   <translation>Face dessous</translation>
  </message>
  <message>
   <source>Faces</source>
   <translation>Faces</translation>
  </message>
  <message>
   <source>Farthest from part</source>
   <translation>Plus grand écart à la pièce</translation>
  </message>
  <message>
   <source>Faults</source>
   <translation>Défauts</translation>
  </message>
  <message>
   <source>Feet</source>
   <translation>Pieds</translation>
  </message>
  <message>
   <source>Fibre by mass</source>
   <translation>Fibre selon la masse</translation>
  </message>
  <message>
   <source>Fibre by thickness</source>
   <translation>Fibre selon l’épaisseur</translation>
  </message>
  <message>
   <source>Fibre volume</source>
   <translation>Volume de fibre</translation>
  </message>
  <message>
   <source>Fibre volume fraction (%)</source>
   <translation>Fraction volumique de fibre (%)</translation>
  </message>
  <message>
   <source>Fibre volume from the masses (%)</source>
   <translation>Volume de fibre d’après les masses (%)</translation>
  </message>
  <message>
   <source>Fibre volume from the thickness (%)</source>
   <translation>Volume de fibre d’après l’épaisseur (%)</translation>
  </message>
  <message>
   <source>File</source>
   <translation>Fichier</translation>
  </message>
  <message>
   <source>Files</source>
   <translation>Fichiers</translation>
  </message>
  <message>
   <source>Fill coat weight</source>
   <translation>Masse par couche de bouchage</translation>
  </message>
  <message>
   <source>Fill coats</source>
   <translation>Couches de bouchage</translation>
  </message>
  <message>
   <source>Film that is sprayed over the wax, by its card</source>
   <translation>Film pulvérisé sur la cire, selon sa fiche</translation>
  </message>
  <message>
   <source>Fingerprints of all faces of the part when these were taken</source>
   <translation>Empreintes de toutes les faces de la pièce au moment du choix</translation>
  </message>
  <message>
   <source>Finish</source>
   <translation>Fin</translation>
  </message>
  <message>
   <source>Fixed loss</source>
   <translation>Perte fixe</translation>
  </message>
  <message>
   <source>Flange</source>
   <translation>Bride</translation>
  </message>
  <message>
   <source>Flange between pieces (mm)</source>
   <translation>Bride entre éléments (mm)</translation>
  </message>
  <message>
   <source>Flange blend</source>
   <translation>Rayon de la bride</translation>
  </message>
  <message>
   <source>Flow mesh</source>
   <translation>Filet drainant</translation>
  </message>
  <message>
   <source>Flow mesh by its card</source>
   <translation>Filet drainant selon sa fiche</translation>
  </message>
  <message>
   <source>Folder</source>
   <translation>Dossier</translation>
  </message>
  <message>
   <source>Folder that the files were last written to</source>
   <translation>Dossier où les fichiers ont été écrits en dernier</translation>
  </message>
  <message>
   <source>Foot diameter</source>
   <translation>Diamètre des pieds</translation>
  </message>
  <message>
   <source>Foot height</source>
   <translation>Hauteur des pieds</translation>
  </message>
  <message>
   <source>Force per width that presses it along the datum arrow, under which it may buckle (N/mm)</source>
   <translation>Force par largeur qui le presse le long de la flèche et peut le faire flamber (N/mm)</translation>
  </message>
  <message>
   <source>Free x</source>
   <translation>Libre x</translation>
  </message>
  <message>
   <source>Free y</source>
   <translation>Libre y</translation>
  </message>
  <message>
   <source>Free z</source>
   <translation>Libre z</translation>
  </message>
  <message>
   <source>From rib to rib in a hollow body (mm)</source>
   <translation>De nervure à nervure dans un corps creux (mm)</translation>
  </message>
  <message>
   <source>From the first stir to the last ply, 0 if not read (min)</source>
   <translation>Du premier mélange au dernier pli, 0 si non relevé (min)</translation>
  </message>
  <message>
   <source>From the first stir until it gelled, 0 if not read (h)</source>
   <translation>Du premier mélange au gel, 0 si non relevé (h)</translation>
  </message>
  <message>
   <source>From the first stir until the last ply lies (h)</source>
   <translation>Du premier mélange jusqu’à la pose du dernier pli (h)</translation>
  </message>
  <message>
   <source>Full hardness</source>
   <translation>Dureté complète</translation>
  </message>
  <message>
   <source>Gap</source>
   <translation>Écartement</translation>
  </message>
  <message>
   <source>Gap between the pieces (mm)</source>
   <translation>Écart entre les morceaux (mm)</translation>
  </message>
  <message>
   <source>Gap between the pieces on the screen (mm)</source>
   <translation>Écart entre les éléments à l’écran (mm)</translation>
  </message>
  <message>
   <source>Gap between the tiles on the screen (mm)</source>
   <translation>Écart entre les tuiles à l’écran (mm)</translation>
  </message>
  <message>
   <source>Gauge of the hardness</source>
   <translation>Appareil de dureté</translation>
  </message>
  <message>
   <source>Gel time</source>
   <translation>Temps de gel</translation>
  </message>
  <message>
   <source>Glass transition</source>
   <translation>Transition vitreuse</translation>
  </message>
  <message>
   <source>Glue area</source>
   <translation>Aire de collage</translation>
  </message>
  <message>
   <source>Glue density</source>
   <translation>Masse volumique de la colle</translation>
  </message>
  <message>
   <source>Glue gap</source>
   <translation>Joint de colle</translation>
  </message>
  <message>
   <source>Glue gap at each seam (mm)</source>
   <translation>Joint de colle à chaque raccord (mm)</translation>
  </message>
  <message>
   <source>Glue mass</source>
   <translation>Masse de colle</translation>
  </message>
  <message>
   <source>Glue that fills the seams (g)</source>
   <translation>Colle qui remplit les joints (g)</translation>
  </message>
  <message>
   <source>Grid turn</source>
   <translation>Rotation de la grille</translation>
  </message>
  <message>
   <source>Hands at the mould</source>
   <translation>Personnes au moule</translation>
  </message>
  <message>
   <source>Hands lay and wet out a square metre in (min)</source>
   <translation>Temps pour poser et imprégner un mètre carré (min)</translation>
  </message>
  <message>
   <source>Hands-on time without printing (h)</source>
   <translation>Travail manuel sans impression (h)</translation>
  </message>
  <message>
   <source>Hardener (g)</source>
   <translation>Durcisseur (g)</translation>
  </message>
  <message>
   <source>Hardener mass</source>
   <translation>Masse de durcisseur</translation>
  </message>
  <message>
   <source>Hardness</source>
   <translation>Dureté</translation>
  </message>
  <message>
   <source>Hardness at several places of the cured part</source>
   <translation>Dureté en plusieurs points de la pièce durcie</translation>
  </message>
  <message>
   <source>Hardness scale</source>
   <translation>Échelle de dureté</translation>
  </message>
  <message>
   <source>Hashin</source>
   <translation>Hashin</translation>
  </message>
  <message>
   <source>Height below the lowest point of the edge (mm)</source>
   <translation>Hauteur sous le point le plus bas du bord (mm)</translation>
  </message>
  <message>
   <source>Height of an ear at most (mm)</source>
   <translation>Hauteur d’une oreille, au plus (mm)</translation>
  </message>
  <message>
   <source>Height of the feet (mm)</source>
   <translation>Hauteur des pieds (mm)</translation>
  </message>
  <message>
   <source>How all its edges are held</source>
   <translation>Comment tous ses bords sont tenus</translation>
  </message>
  <message>
   <source>How far a tongue stands out (mm)</source>
   <translation>Saillie d’une languette (mm)</translation>
  </message>
  <message>
   <source>How far clamp ears stand out (mm)</source>
   <translation>Saillie des oreilles de serrage (mm)</translation>
  </message>
  <message>
   <source>How it is laid up</source>
   <translation>Comment il est drapé</translation>
  </message>
  <message>
   <source>How long it is held (h)</source>
   <translation>Durée du maintien (h)</translation>
  </message>
  <message>
   <source>How often the mould was used</source>
   <translation>Combien de fois le moule a servi</translation>
  </message>
  <message>
   <source>How the coupons are loaded</source>
   <translation>Comment les éprouvettes sont chargées</translation>
  </message>
  <message>
   <source>How the pull direction is chosen</source>
   <translation>Comment le sens du démoulage est choisi</translation>
  </message>
  <message>
   <source>How tiles may stand on the bed</source>
   <translation>Comment les tuiles peuvent être posées sur le plateau</translation>
  </message>
  <message>
   <source>How times are taken to another temperature</source>
   <translation>Comment les temps passent à une autre température</translation>
  </message>
  <message>
   <source>Humidity</source>
   <translation>Humidité</translation>
  </message>
  <message>
   <source>Inscription</source>
   <translation>Inscription</translation>
  </message>
  <message>
   <source>Its regions by name, such as Face1; none takes all</source>
   <translation>Ses régions par leur nom, comme Face1 ; aucun les prend toutes</translation>
  </message>
  <message>
   <source>Its width across the datum arrow (mm)</source>
   <translation>Sa largeur en travers de la flèche (mm)</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Assemblage des tuiles</translation>
  </message>
  <message>
   <source>Joint wall</source>
   <translation>Paroi d’assemblage</translation>
  </message>
  <message>
   <source>Kept whole</source>
   <translation>Gardé entier</translation>
  </message>
  <message>
   <source>Known faces</source>
   <translation>Faces connues</translation>
  </message>
  <message>
   <source>Known shape</source>
   <translation>Forme connue</translation>
  </message>
  <message>
   <source>Laminate side</source>
   <translation>Côté du stratifié</translation>
  </message>
  <message>
   <source>Lap</source>
   <translation>Recouvrement</translation>
  </message>
  <message>
   <source>Largest chord</source>
   <translation>Plus grande corde</translation>
  </message>
  <message>
   <source>Largest deviation</source>
   <translation>Plus grand écart</translation>
  </message>
  <message>
   <source>Largest distance between a CAD face and the triangles that stand for it (mm)</source>
   <translation>Plus grande distance entre une face CAO et ses triangles (mm)</translation>
  </message>
  <message>
   <source>Largest distance between bolts (mm)</source>
   <translation>Plus grande distance entre boulons (mm)</translation>
  </message>
  <message>
   <source>Largest distance found between faces and triangles (mm)</source>
   <translation>Plus grande distance trouvée entre faces et triangles (mm)</translation>
  </message>
  <message>
   <source>Largest distance of the printed working area from the part's faces (mm)</source>
   <translation>Plus grande distance de la zone utile imprimée aux faces de la pièce (mm)</translation>
  </message>
  <message>
   <source>Largest distance of the working area from the wanted surface, the chord of the triangles included (mm)</source>
   <translation>Plus grande distance de la zone utile à la surface voulue, corde des triangles comprise (mm)</translation>
  </message>
  <message>
   <source>Largest rectangles that remain (mm)</source>
   <translation>Plus grands rectangles qui restent (mm)</translation>
  </message>
  <message>
   <source>Largest shear</source>
   <translation>Plus grand cisaillement</translation>
  </message>
  <message>
   <source>Largest shear of any ply (degrees)</source>
   <translation>Plus grand cisaillement d’un pli (degrés)</translation>
  </message>
  <message>
   <source>Layered shell of the part for a finite-element solver among the written files, and how its edge is held in its first load case</source>
   <translation>Coque stratifiée de la pièce pour un calcul par éléments finis parmi les fichiers écrits, et tenue de son bord dans le premier cas de charge</translation>
  </message>
  <message>
   <source>Laying hours</source>
   <translation>Heures de drapage</translation>
  </message>
  <message>
   <source>Laying time</source>
   <translation>Temps de drapage</translation>
  </message>
  <message>
   <source>Layup</source>
   <translation>Empilement</translation>
  </message>
  <message>
   <source>Least draft</source>
   <translation>Dépouille minimale</translation>
  </message>
  <message>
   <source>Least draft along that direction (degrees)</source>
   <translation>Dépouille minimale dans cette direction (degrés)</translation>
  </message>
  <message>
   <source>Least draft found (degrees)</source>
   <translation>Dépouille minimale trouvée (degrés)</translation>
  </message>
  <message>
   <source>Least tile</source>
   <translation>Tuile minimale</translation>
  </message>
  <message>
   <source>Least wall</source>
   <translation>Paroi minimale</translation>
  </message>
  <message>
   <source>Least wall measured; 0 for a solid body (mm)</source>
   <translation>Paroi minimale mesurée ; 0 pour un corps plein (mm)</translation>
  </message>
  <message>
   <source>Least wall of a hollow body (mm)</source>
   <translation>Paroi minimale d’un corps creux (mm)</translation>
  </message>
  <message>
   <source>Left out</source>
   <translation>Laissé de côté</translation>
  </message>
  <message>
   <source>Left over</source>
   <translation>Restant</translation>
  </message>
  <message>
   <source>Length of the trim line (mm)</source>
   <translation>Longueur de la ligne de détourage (mm)</translation>
  </message>
  <message>
   <source>Length to cut and to buy (m), share used, of each cloth</source>
   <translation>Longueur à couper et à acheter (m), part utilisée, pour chaque tissu</translation>
  </message>
  <message>
   <source>Lengths that cloth is sold by (mm)</source>
   <translation>Pas de longueur auquel le tissu est vendu (mm)</translation>
  </message>
  <message>
   <source>Letter</source>
   <translation>Letter</translation>
  </message>
  <message>
   <source>Lines between pieces: length (mm) and course</source>
   <translation>Lignes entre éléments : longueur (mm) et tracé</translation>
  </message>
  <message>
   <source>Load: force that presses on a small patch, by which a core is judged (N)</source>
   <translation>Charge : force pressant sur une petite zone, par laquelle l’âme est jugée (N)</translation>
  </message>
  <message>
   <source>Load: moment per width that bends across the datum arrow, the far side stretched (N)</source>
   <translation>Charge : moment par largeur, flexion en travers de la flèche, face opposée tendue (N)</translation>
  </message>
  <message>
   <source>Load: moment per width that bends along the datum arrow, the far side stretched (N)</source>
   <translation>Charge : moment par largeur, flexion le long de la flèche, face opposée tendue (N)</translation>
  </message>
  <message>
   <source>Load: pull across the datum arrow, per width (N/mm)</source>
   <translation>Charge : traction en travers de la flèche, par largeur (N/mm)</translation>
  </message>
  <message>
   <source>Load: pull along the datum arrow, per width (N/mm)</source>
   <translation>Charge : traction le long de la flèche, par largeur (N/mm)</translation>
  </message>
  <message>
   <source>Load: shear in the plane, per width (N/mm)</source>
   <translation>Charge : cisaillement dans le plan, par largeur (N/mm)</translation>
  </message>
  <message>
   <source>Load: shear through the thickness when it is bent across the datum arrow, per width, by which a core is judged (N/mm)</source>
   <translation>Charge : cisaillement à travers l’épaisseur en flexion en travers de la flèche, par largeur, par lequel l’âme est jugée (N/mm)</translation>
  </message>
  <message>
   <source>Load: shear through the thickness when it is bent along the datum arrow, per width, by which a core is judged (N/mm)</source>
   <translation>Charge : cisaillement à travers l’épaisseur en flexion le long de la flèche, par largeur, par lequel l’âme est jugée (N/mm)</translation>
  </message>
  <message>
   <source>Load: twisting moment per width (N)</source>
   <translation>Charge : moment de torsion par largeur (N)</translation>
  </message>
  <message>
   <source>Loading</source>
   <translation>Chargement</translation>
  </message>
  <message>
   <source>Loss that does not grow with the part (g)</source>
   <translation>Perte qui ne croît pas avec la pièce (g)</translation>
  </message>
  <message>
   <source>Lost</source>
   <translation>Perdu</translation>
  </message>
  <message>
   <source>Made cuts</source>
   <translation>Coupes faites</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Marge</translation>
  </message>
  <message>
   <source>Margin of a side where it differs, seen along the datum arrow, such as ahead: 40 mm; also left, behind, right and holes</source>
   <translation>Marge d’un côté où elle diffère, vue le long de la flèche, comme ahead: 40 mm ; aussi left, behind, right et holes</translation>
  </message>
  <message>
   <source>Mark depth</source>
   <translation>Profondeur des repères</translation>
  </message>
  <message>
   <source>Marked datum</source>
   <translation>Flèche marquée</translation>
  </message>
  <message>
   <source>Mass of the laminate without local plies (g/m²)</source>
   <translation>Masse du stratifié sans plis locaux (g/m²)</translation>
  </message>
  <message>
   <source>Mass of the part against the plan</source>
   <translation>Masse de la pièce comparée au plan</translation>
  </message>
  <message>
   <source>Material left around a hole or groove (mm)</source>
   <translation>Matière laissée autour d’un trou ou d’une rainure (mm)</translation>
  </message>
  <message>
   <source>Mean modulus</source>
   <translation>Module moyen</translation>
  </message>
  <message>
   <source>Mean strength of those that broke, 0 if none did</source>
   <translation>Résistance moyenne de celles qui ont cassé, 0 si aucune</translation>
  </message>
  <message>
   <source>Mirrored parts</source>
   <translation>Pièces symétriques</translation>
  </message>
  <message>
   <source>Mix cure</source>
   <translation>Mélange et cuisson</translation>
  </message>
  <message>
   <source>Mix in one fill coat (g/m²)</source>
   <translation>Mélange dans une couche de bouchage (g/m²)</translation>
  </message>
  <message>
   <source>Mix in one seal coat (g/m²)</source>
   <translation>Mélange dans une couche d’apprêt (g/m²)</translation>
  </message>
  <message>
   <source>Mix left in cups and tools, -1 if not weighed (g)</source>
   <translation>Mélange resté aux gobelets et outils, -1 si non pesé (g)</translation>
  </message>
  <message>
   <source>Mix made</source>
   <translation>Mélange préparé</translation>
  </message>
  <message>
   <source>Mix that is not in the part (g)</source>
   <translation>Mélange qui n’est pas dans la pièce (g)</translation>
  </message>
  <message>
   <source>Modulus</source>
   <translation>Module</translation>
  </message>
  <message>
   <source>Modulus in bending across the datum arrow</source>
   <translation>Module de flexion en travers de la flèche</translation>
  </message>
  <message>
   <source>Modulus in bending along the datum arrow</source>
   <translation>Module de flexion le long de la flèche</translation>
  </message>
  <message>
   <source>Modulus in plane across the datum arrow</source>
   <translation>Module dans le plan en travers de la flèche</translation>
  </message>
  <message>
   <source>Modulus in plane along the datum arrow</source>
   <translation>Module dans le plan le long de la flèche</translation>
  </message>
  <message>
   <source>More seam cost</source>
   <translation>Surcoût des joints</translation>
  </message>
  <message>
   <source>More tiles</source>
   <translation>Tuiles en plus</translation>
  </message>
  <message>
   <source>Most pieces</source>
   <translation>Nombre maximal</translation>
  </message>
  <message>
   <source>Most that is mixed in one cup (g)</source>
   <translation>Le plus qui soit mélangé dans un gobelet (g)</translation>
  </message>
  <message>
   <source>Most time for the search of the cuts (s)</source>
   <translation>Temps maximal pour chercher les coupes (s)</translation>
  </message>
  <message>
   <source>Mould side</source>
   <translation>Côté du moule</translation>
  </message>
  <message>
   <source>Mould softening</source>
   <translation>Ramollissement du moule</translation>
  </message>
  <message>
   <source>Mould surface</source>
   <translation>Surface du moule</translation>
  </message>
  <message>
   <source>Mould use</source>
   <translation>Usage du moule</translation>
  </message>
  <message>
   <source>Name and version engraved in a side</source>
   <translation>Nom et version gravés sur un côté</translation>
  </message>
  <message>
   <source>Name of the job, printed on every sheet</source>
   <translation>Nom du travail, imprimé sur chaque feuille</translation>
  </message>
  <message>
   <source>Name, size (mm), mass (g) and time (h) of each tile</source>
   <translation>Nom, taille (mm), masse (g) et temps (h) de chaque tuile</translation>
  </message>
  <message>
   <source>No tile is thinner than this (mm)</source>
   <translation>Aucune tuile n’est plus mince (mm)</translation>
  </message>
  <message>
   <source>Notes</source>
   <translation>Notes</translation>
  </message>
  <message>
   <source>Number of coupons that are planned</source>
   <translation>Nombre d’éprouvettes prévues</translation>
  </message>
  <message>
   <source>Number of feet below the base: 0, 3 or 4</source>
   <translation>Nombre de pieds sous le socle : 0, 3 ou 4</translation>
  </message>
  <message>
   <source>Number of mirrored parts that are cut besides</source>
   <translation>Nombre de pièces symétriques coupées en plus</translation>
  </message>
  <message>
   <source>Number of parts that are cut at once</source>
   <translation>Nombre de pièces coupées à la fois</translation>
  </message>
  <message>
   <source>Number of parts that share what is paid once</source>
   <translation>Nombre de pièces qui partagent ce qui est payé une fois</translation>
  </message>
  <message>
   <source>Number of patterns</source>
   <translation>Nombre de patrons</translation>
  </message>
  <message>
   <source>Number of pockets for wedges at the mould's edge</source>
   <translation>Nombre d’encoches pour coins au bord du moule</translation>
  </message>
  <message>
   <source>Number of the ply that the core lies on</source>
   <translation>Numéro du pli sur lequel est posée l’âme</translation>
  </message>
  <message>
   <source>Number of tiles</source>
   <translation>Nombre de tuiles</translation>
  </message>
  <message>
   <source>Of the fully cured resin by its maker, 0 if unknown</source>
   <translation>De la résine entièrement durcie selon son fabricant, 0 si inconnue</translation>
  </message>
  <message>
   <source>Offcuts</source>
   <translation>Chutes de tissu</translation>
  </message>
  <message>
   <source>Offcuts that are used first: cloth: length x width in mm</source>
   <translation>Chutes utilisées en premier : tissu: longueur x largeur en mm</translation>
  </message>
  <message>
   <source>Panel edges</source>
   <translation>Bords du panneau</translation>
  </message>
  <message>
   <source>Panel length</source>
   <translation>Longueur du panneau</translation>
  </message>
  <message>
   <source>Panel pressure</source>
   <translation>Pression sur le panneau</translation>
  </message>
  <message>
   <source>Panel push</source>
   <translation>Poussée sur le panneau</translation>
  </message>
  <message>
   <source>Panel width</source>
   <translation>Largeur du panneau</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Paper of the printed sheets</source>
   <translation>Papier des feuilles imprimées</translation>
  </message>
  <message>
   <source>Part trimmed</source>
   <translation>Pièce détourée</translation>
  </message>
  <message>
   <source>Part untrimmed</source>
   <translation>Pièce non détourée</translation>
  </message>
  <message>
   <source>Parting lines</source>
   <translation>Lignes de joint</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Pièces</translation>
  </message>
  <message>
   <source>Patterns</source>
   <translation>Patrons</translation>
  </message>
  <message>
   <source>Peel ply</source>
   <translation>Tissu d'arrachage</translation>
  </message>
  <message>
   <source>Peel ply by its card</source>
   <translation>Tissu d'arrachage selon sa fiche</translation>
  </message>
  <message>
   <source>People</source>
   <translation>Personnes</translation>
  </message>
  <message>
   <source>Perforated film</source>
   <translation>Film perforé</translation>
  </message>
  <message>
   <source>Piece bolts</source>
   <translation>Boulons par élément</translation>
  </message>
  <message>
   <source>Piece draft</source>
   <translation>Dépouille par élément</translation>
  </message>
  <message>
   <source>Piece flange</source>
   <translation>Bride par élément</translation>
  </message>
  <message>
   <source>Piece masses</source>
   <translation>Masses des éléments</translation>
  </message>
  <message>
   <source>Piece pulls</source>
   <translation>Directions des parties</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Éléments</translation>
  </message>
  <message>
   <source>Pieces in the order of cutting</source>
   <translation>Morceaux dans l’ordre de coupe</translation>
  </message>
  <message>
   <source>Pinned x</source>
   <translation>Fixé x</translation>
  </message>
  <message>
   <source>Pinned y</source>
   <translation>Fixé y</translation>
  </message>
  <message>
   <source>Pinned z</source>
   <translation>Fixé z</translation>
  </message>
  <message>
   <source>Places on a roll that are left out: cloth: 1200 mm to 1230 mm, across 0 mm to 80 mm</source>
   <translation>Endroits d’un rouleau laissés de côté : tissu: 1200 mm to 1230 mm, across 0 mm to 80 mm</translation>
  </message>
  <message>
   <source>Plain sheets that are cut besides and laid over the last ply, one on each line: 'film', 'peel ply', 'adhesive tape'</source>
   <translation>Feuilles simples découpées en plus et posées sur le dernier pli, une par ligne : 'film', 'peel ply', 'adhesive tape'</translation>
  </message>
  <message>
   <source>Plain sheets that are cut besides, with their area (m²)</source>
   <translation>Feuilles simples découpées en plus, avec leur aire (m²)</translation>
  </message>
  <message>
   <source>Plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>Planned</source>
   <translation>Prévu</translation>
  </message>
  <message>
   <source>Planned and made, side by side</source>
   <translation>Prévu et fait, côte à côte</translation>
  </message>
  <message>
   <source>Plastic and time before cutting, with the formula and the printer's card</source>
   <translation>Plastique et temps avant la découpe, avec la formule et la fiche de l'imprimante</translation>
  </message>
  <message>
   <source>Plastic and time of all tiles together, by the printer's card</source>
   <translation>Plastique et temps de toutes les tuiles ensemble, selon la fiche de l'imprimante</translation>
  </message>
  <message>
   <source>Plastic expansion</source>
   <translation>Dilatation du plastique</translation>
  </message>
  <message>
   <source>Plate that closes a hollow body; 0 leaves it open (mm)</source>
   <translation>Plaque qui ferme un corps creux ; 0 le laisse ouvert (mm)</translation>
  </message>
  <message>
   <source>Ply time</source>
   <translation>Temps par pli</translation>
  </message>
  <message>
   <source>Point of the datum arrow on the face (mm)</source>
   <translation>Point de la flèche sur la face (mm)</translation>
  </message>
  <message>
   <source>Pose</source>
   <translation>Pose</translation>
  </message>
  <message>
   <source>Poses</source>
   <translation>Poses</translation>
  </message>
  <message>
   <source>Post cure</source>
   <translation>Post-cuisson</translation>
  </message>
  <message>
   <source>Post cure on</source>
   <translation>Post-cuisson sur</translation>
  </message>
  <message>
   <source>Post cure time</source>
   <translation>Durée de post-cuisson</translation>
  </message>
  <message>
   <source>Pressed area</source>
   <translation>Aire pressée</translation>
  </message>
  <message>
   <source>Pressed force</source>
   <translation>Force de pression</translation>
  </message>
  <message>
   <source>Pressure on it, positive away from the mould (kPa)</source>
   <translation>Pression dessus, positive en s’éloignant du moule (kPa)</translation>
  </message>
  <message>
   <source>Pressure on that shell, positive away from the mould (kPa)</source>
   <translation>Pression sur cette coque, positive en s’éloignant du moule (kPa)</translation>
  </message>
  <message>
   <source>Prices</source>
   <translation>Prix</translation>
  </message>
  <message>
   <source>Print Tiles to print</source>
   <translation>Tuiles à imprimer, pour les feuilles</translation>
  </message>
  <message>
   <source>Print shrinkage</source>
   <translation>Retrait d’impression</translation>
  </message>
  <message>
   <source>Printed beside the cost</source>
   <translation>Imprimé à côté du coût</translation>
  </message>
  <message>
   <source>Printer</source>
   <translation>Imprimante</translation>
  </message>
  <message>
   <source>Printer by its card</source>
   <translation>Imprimante selon sa fiche</translation>
  </message>
  <message>
   <source>Printer by its card, for plastic and time; empty takes the one for new jobs</source>
   <translation>Imprimante selon sa fiche, pour le plastique et le temps ; vide prend celle des nouveaux travaux</translation>
  </message>
  <message>
   <source>Printing</source>
   <translation>Impression</translation>
  </message>
  <message>
   <source>Process</source>
   <translation>Procédé</translation>
  </message>
  <message>
   <source>Proposed cuts</source>
   <translation>Coupes proposées</translation>
  </message>
  <message>
   <source>Pry pockets</source>
   <translation>Encoches de levier</translation>
  </message>
  <message>
   <source>Pull</source>
   <translation>Démoulage</translation>
  </message>
  <message>
   <source>Pull across</source>
   <translation>Traction en travers</translation>
  </message>
  <message>
   <source>Pull along</source>
   <translation>Traction en long</translation>
  </message>
  <message>
   <source>Pull axis</source>
   <translation>Axe de démoulage</translation>
  </message>
  <message>
   <source>Pull direction with the largest least draft</source>
   <translation>Démoulage avec la plus grande dépouille minimale</translation>
  </message>
  <message>
   <source>Pull from</source>
   <translation>Démoulage selon</translation>
  </message>
  <message>
   <source>Pull shear</source>
   <translation>Traction, cisaillement</translation>
  </message>
  <message>
   <source>Pull used</source>
   <translation>Démoulage utilisé</translation>
  </message>
  <message>
   <source>Quick estimate of a flat panel: its length along the datum arrow, 0 for none (mm)</source>
   <translation>Estimation rapide d’un panneau plan : longueur le long de la flèche, 0 pour aucune (mm)</translation>
  </message>
  <message>
   <source>Radius between run-off and flange (mm)</source>
   <translation>Rayon entre débord et bride (mm)</translation>
  </message>
  <message>
   <source>Ramp</source>
   <translation>Rampe</translation>
  </message>
  <message>
   <source>Region points</source>
   <translation>Points des régions</translation>
  </message>
  <message>
   <source>Regions</source>
   <translation>Régions</translation>
  </message>
  <message>
   <source>Relative humidity of the shop, 0 if not read (%)</source>
   <translation>Humidité relative de l’atelier, 0 si non relevée (%)</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Démoulabilité</translation>
  </message>
  <message>
   <source>Release agent</source>
   <translation>Démoulant</translation>
  </message>
  <message>
   <source>Release film</source>
   <translation>Film de démoulage</translation>
  </message>
  <message>
   <source>Release film over the peel ply, by its card</source>
   <translation>Film séparateur sur le tissu d'arrachage, selon sa fiche</translation>
  </message>
  <message>
   <source>Release tape</source>
   <translation>Ruban de démoulage</translation>
  </message>
  <message>
   <source>Release tape by its card</source>
   <translation>Ruban de démoulage selon sa fiche</translation>
  </message>
  <message>
   <source>Releasing pull</source>
   <translation>Démoulage possible</translation>
  </message>
  <message>
   <source>Remarks</source>
   <translation>Remarques</translation>
  </message>
  <message>
   <source>Resin</source>
   <translation>Résine</translation>
  </message>
  <message>
   <source>Resin in the laminate, by mass (%)</source>
   <translation>Résine dans le stratifié, en masse (%)</translation>
  </message>
  <message>
   <source>Resin mass</source>
   <translation>Masse de résine</translation>
  </message>
  <message>
   <source>Resin share</source>
   <translation>Part de résine</translation>
  </message>
  <message>
   <source>Resin system by its card</source>
   <translation>Système de résine selon sa fiche</translation>
  </message>
  <message>
   <source>Resin with hardener as a share of the laminate's mass, 0 for the usual share of the process (%)</source>
   <translation>Résine et durcisseur en part de la masse du stratifié, 0 pour la part usuelle du procédé (%)</translation>
  </message>
  <message>
   <source>Resin without hardener (g)</source>
   <translation>Résine sans durcisseur (g)</translation>
  </message>
  <message>
   <source>Rib spacing</source>
   <translation>Écart des nervures</translation>
  </message>
  <message>
   <source>Rib thickness</source>
   <translation>Épaisseur des nervures</translation>
  </message>
  <message>
   <source>Roll</source>
   <translation>Rouleau</translation>
  </message>
  <message>
   <source>Rolls</source>
   <translation>Rouleaux</translation>
  </message>
  <message>
   <source>Rule by which a ply is judged</source>
   <translation>Règle par laquelle un pli est jugé</translation>
  </message>
  <message>
   <source>Run off</source>
   <translation>Débord</translation>
  </message>
  <message>
   <source>Scale step</source>
   <translation>Pas de la balance</translation>
  </message>
  <message>
   <source>Scan</source>
   <translation>Scan</translation>
  </message>
  <message>
   <source>Scribe depth</source>
   <translation>Profondeur du tracé</translation>
  </message>
  <message>
   <source>Scribe width</source>
   <translation>Largeur du tracé</translation>
  </message>
  <message>
   <source>Seal coat weight</source>
   <translation>Masse par couche d’apprêt</translation>
  </message>
  <message>
   <source>Seal coats</source>
   <translation>Couches d’apprêt</translation>
  </message>
  <message>
   <source>Sealant tape</source>
   <translation>Mastic d'étanchéité</translation>
  </message>
  <message>
   <source>Sealant tape by its card</source>
   <translation>Mastic d'étanchéité selon sa fiche</translation>
  </message>
  <message>
   <source>Seam cost</source>
   <translation>Coût des joints</translation>
  </message>
  <message>
   <source>Search time</source>
   <translation>Temps de recherche</translation>
  </message>
  <message>
   <source>Second line, this far from the trim line (mm)</source>
   <translation>Seconde ligne, à cette distance de la ligne de détourage (mm)</translation>
  </message>
  <message>
   <source>Set temperature</source>
   <translation>Température de prise</translation>
  </message>
  <message>
   <source>Share of its turn by which a bend closes (%), as measured; 0 takes it from the Layup</source>
   <translation>Part de son angle dont un pli se ferme (%), mesurée ; 0 la prend de l'empilement</translation>
  </message>
  <message>
   <source>Share of the cards' strength in compression that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Part retenue de la résistance en compression des fiches, 0 pour l’usuelle du procédé (%)</translation>
  </message>
  <message>
   <source>Share of the cards' strength in core that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Part retenue de la résistance d’âme des fiches, 0 pour l’usuelle du procédé (%)</translation>
  </message>
  <message>
   <source>Share of the cards' strength in shear that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Part retenue de la résistance en cisaillement des fiches, 0 pour l’usuelle du procédé (%)</translation>
  </message>
  <message>
   <source>Share of the cards' strength in tension that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Part retenue de la résistance en traction des fiches, 0 pour l’usuelle du procédé (%)</translation>
  </message>
  <message>
   <source>Shear counted</source>
   <translation>Cisaillement retenu</translation>
  </message>
  <message>
   <source>Sheet</source>
   <translation>Fiche</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Feuilles</translation>
  </message>
  <message>
   <source>Shell elements</source>
   <translation>Éléments de coque</translation>
  </message>
  <message>
   <source>Shell file</source>
   <translation>Fichier de coque</translation>
  </message>
  <message>
   <source>Shell pressure</source>
   <translation>Pression de coque</translation>
  </message>
  <message>
   <source>Shopping</source>
   <translation>Achats</translation>
  </message>
  <message>
   <source>Shore D</source>
   <translation>Shore D</translation>
  </message>
  <message>
   <source>Shown apart</source>
   <translation>Écart à l’écran</translation>
  </message>
  <message>
   <source>Shrinkage of the print along x, y, z (%), made up for by a larger body</source>
   <translation>Retrait de l’impression en x, y, z (%), compensé par un corps plus grand</translation>
  </message>
  <message>
   <source>Side margins</source>
   <translation>Marges des côtés</translation>
  </message>
  <message>
   <source>Side of the CAD face on which the laminate lies</source>
   <translation>Côté de la face CAO où se trouve le stratifié</translation>
  </message>
  <message>
   <source>Side of the laminate on which the mould stands</source>
   <translation>Côté du stratifié où se trouve le moule</translation>
  </message>
  <message>
   <source>Signature of the faces that the triangles stand for</source>
   <translation>Signature des faces que représentent les triangles</translation>
  </message>
  <message>
   <source>Size of that patch (mm²)</source>
   <translation>Taille de cette zone (mm²)</translation>
  </message>
  <message>
   <source>Sizes, weights and what they should do</source>
   <translation>Tailles, poids et ce qu’elles devraient donner</translation>
  </message>
  <message>
   <source>Smallest step of the scale (g)</source>
   <translation>Plus petit pas de la balance (g)</translation>
  </message>
  <message>
   <source>Sold by</source>
   <translation>Vendu par</translation>
  </message>
  <message>
   <source>Span</source>
   <translation>Portée</translation>
  </message>
  <message>
   <source>Spring in</source>
   <translation>Retrait angulaire</translation>
  </message>
  <message>
   <source>Stagger</source>
   <translation>Décalage</translation>
  </message>
  <message>
   <source>Start direction</source>
   <translation>Direction de départ</translation>
  </message>
  <message>
   <source>Start point</source>
   <translation>Point de départ</translation>
  </message>
  <message>
   <source>Stiffness across</source>
   <translation>Rigidité en travers</translation>
  </message>
  <message>
   <source>Stiffness along</source>
   <translation>Rigidité en long</translation>
  </message>
  <message>
   <source>Straight edge, flat face or round face that gives the pull, when one is picked</source>
   <translation>Arête droite, face plane ou ronde qui donne le démoulage, si une est choisie</translation>
  </message>
  <message>
   <source>Strength</source>
   <translation>Résistance</translation>
  </message>
  <message>
   <source>Strength that 90 % exceed, with 95 % confidence</source>
   <translation>Résistance dépassée par 90 %, avec 95 % de confiance</translation>
  </message>
  <message>
   <source>Strength that 99 % exceed, with 95 % confidence</source>
   <translation>Résistance dépassée par 99 %, avec 95 % de confiance</translation>
  </message>
  <message>
   <source>Stretches along x of the grid without a cut, each as from and to (mm)</source>
   <translation>Tronçons le long de x sans coupe, chacun par début et fin (mm)</translation>
  </message>
  <message>
   <source>Stretches along y of the grid without a cut, each as from and to (mm)</source>
   <translation>Tronçons le long de y sans coupe, chacun par début et fin (mm)</translation>
  </message>
  <message>
   <source>Stretches along z of the grid without a cut, each as from and to (mm)</source>
   <translation>Tronçons le long de z sans coupe, chacun par début et fin (mm)</translation>
  </message>
  <message>
   <source>Surface of the mould: it decides which draft is wanted</source>
   <translation>Surface du moule : elle décide de la dépouille voulue</translation>
  </message>
  <message>
   <source>Tape width</source>
   <translation>Largeur du ruban</translation>
  </message>
  <message>
   <source>Temperature</source>
   <translation>Température</translation>
  </message>
  <message>
   <source>Temperature at which the resin sets, the post-cure's where there is one (°C)</source>
   <translation>Température de prise de la résine, celle de la post-cuisson s’il y en a une (°C)</translation>
  </message>
  <message>
   <source>Temperature of a post-cure, 0 for none (°C)</source>
   <translation>Température de post-cuisson, 0 pour aucune (°C)</translation>
  </message>
  <message>
   <source>Temperature of the shop (°C)</source>
   <translation>Température de l’atelier (°C)</translation>
  </message>
  <message>
   <source>Temperature of the shop, 0 if not read (°C)</source>
   <translation>Température de l’atelier, 0 si non relevée (°C)</translation>
  </message>
  <message>
   <source>Tension counted</source>
   <translation>Traction retenue</translation>
  </message>
  <message>
   <source>Test pieces laid up beside the part, 0 for none</source>
   <translation>Éprouvettes drapées à côté de la pièce, 0 pour aucune</translation>
  </message>
  <message>
   <source>Tested</source>
   <translation>Essayé</translation>
  </message>
  <message>
   <source>Texture depth</source>
   <translation>Profondeur de texture</translation>
  </message>
  <message>
   <source>The Cloth Patterns that are placed</source>
   <translation>Les patrons qui sont placés</translation>
  </message>
  <message>
   <source>The Cloth Patterns whose cloth is wetted</source>
   <translation>Les patrons dont le tissu est imprégné</translation>
  </message>
  <message>
   <source>The Cloth Patterns whose datum is marked on the run-off; none for no marks</source>
   <translation>Les patrons de tissu dont la flèche de référence est marquée sur le débord ; aucun pour aucune marque</translation>
  </message>
  <message>
   <source>The Job Sheet that the part was made by</source>
   <translation>La feuille de travail selon laquelle la pièce a été faite</translation>
  </message>
  <message>
   <source>The Layup that the coupons are of</source>
   <translation>L’empilement des éprouvettes</translation>
  </message>
  <message>
   <source>The Layup whose plies are cut</source>
   <translation>L’empilement dont les plis sont coupés</translation>
  </message>
  <message>
   <source>The Layup whose thickness it allows for</source>
   <translation>L’empilement dont l’épaisseur est prise en compte</translation>
  </message>
  <message>
   <source>The Layup with its resin</source>
   <translation>L’empilement avec sa résine</translation>
  </message>
  <message>
   <source>The Mould Body that is cut</source>
   <translation>Le corps de moule qui est coupé</translation>
  </message>
  <message>
   <source>The Moulded Face that is checked</source>
   <translation>La face moulée qui est contrôlée</translation>
  </message>
  <message>
   <source>The Moulded Face that it forms</source>
   <translation>La face moulée qu’il forme</translation>
  </message>
  <message>
   <source>The Moulded Face that the cloth covers</source>
   <translation>La face moulée que couvre le tissu</translation>
  </message>
  <message>
   <source>The Print Tiles whose plastic the mould is made of</source>
   <translation>Les tuiles dont le plastique fait le moule</translation>
  </message>
  <message>
   <source>The Release Check that says draft and number of pieces</source>
   <translation>Le contrôle du démoulage qui fixe la dépouille et le nombre d’éléments</translation>
  </message>
  <message>
   <source>The Scanned Part whose regions are moulded, instead of faces</source>
   <translation>La pièce numérisée dont les régions sont moulées, au lieu des faces</translation>
  </message>
  <message>
   <source>The cured part before it is trimmed (g)</source>
   <translation>La pièce durcie avant détourage (g)</translation>
  </message>
  <message>
   <source>The order in which the tiles are glued</source>
   <translation>L’ordre de collage des tuiles</translation>
  </message>
  <message>
   <source>The part after it is trimmed, 0 if not weighed (g)</source>
   <translation>La pièce après détourage, 0 si non pesée (g)</translation>
  </message>
  <message>
   <source>The part and its faces that are moulded</source>
   <translation>La pièce et ses faces qui sont moulées</translation>
  </message>
  <message>
   <source>The pull direction in use</source>
   <translation>Le sens de démoulage utilisé</translation>
  </message>
  <message>
   <source>The records of the coupons</source>
   <translation>Les relevés des éprouvettes</translation>
  </message>
  <message>
   <source>Thermal expansion of the plastic (1e-6 per K)</source>
   <translation>Dilatation thermique du plastique (1e-6 per K)</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Épaisseur</translation>
  </message>
  <message>
   <source>Thickness at several places, away from laps (mm)</source>
   <translation>Épaisseur en plusieurs points, hors recouvrements (mm)</translation>
  </message>
  <message>
   <source>Thickness of an ear along the clamp (mm)</source>
   <translation>Épaisseur d’une oreille le long du serre-joint (mm)</translation>
  </message>
  <message>
   <source>Thickness of the core (mm)</source>
   <translation>Épaisseur de l’âme (mm)</translation>
  </message>
  <message>
   <source>Thickness of the laminate without local plies (mm)</source>
   <translation>Épaisseur du stratifié sans plis locaux (mm)</translation>
  </message>
  <message>
   <source>Thickness of the ribs (mm)</source>
   <translation>Épaisseur des nervures (mm)</translation>
  </message>
  <message>
   <source>Thicknesses</source>
   <translation>Épaisseurs</translation>
  </message>
  <message>
   <source>Through across</source>
   <translation>À travers, en travers</translation>
  </message>
  <message>
   <source>Through along</source>
   <translation>À travers, en long</translation>
  </message>
  <message>
   <source>Tiles</source>
   <translation>Tuiles</translation>
  </message>
  <message>
   <source>Tiles and cut-outs together against the body (relative)</source>
   <translation>Tuiles et évidements ensemble comparés au corps (relatif)</translation>
  </message>
  <message>
   <source>Tiles more because of pinned and forbidden cuts</source>
   <translation>Tuiles en plus à cause des coupes fixées et interdites</translation>
  </message>
  <message>
   <source>Time rule</source>
   <translation>Règle de temps</translation>
  </message>
  <message>
   <source>Time spent looking for a shorter plan (s)</source>
   <translation>Temps passé à chercher un plan plus court (s)</translation>
  </message>
  <message>
   <source>Times at the shop's temperature</source>
   <translation>Temps à la température de l’atelier</translation>
  </message>
  <message>
   <source>Title</source>
   <translation>Titre</translation>
  </message>
  <message>
   <source>To buy</source>
   <translation>À acheter</translation>
  </message>
  <message>
   <source>Tongue clearance</source>
   <translation>Jeu des languettes</translation>
  </message>
  <message>
   <source>Tongue length</source>
   <translation>Longueur des languettes</translation>
  </message>
  <message>
   <source>Tongue width</source>
   <translation>Largeur des languettes</translation>
  </message>
  <message>
   <source>Trim guide</source>
   <translation>Guide de détourage</translation>
  </message>
  <message>
   <source>Trim line</source>
   <translation>Ligne de détourage</translation>
  </message>
  <message>
   <source>Tsai-Hill</source>
   <translation>Tsai-Hill</translation>
  </message>
  <message>
   <source>Tsai-Wu</source>
   <translation>Tsai-Wu</translation>
  </message>
  <message>
   <source>Turn of the grid about the pull (°); -1 leaves it to the search while no cut is set</source>
   <translation>Rotation de la grille autour du démoulage (°) ; -1 la laisse à la recherche tant qu’aucune coupe n’est fixée</translation>
  </message>
  <message>
   <source>Under load</source>
   <translation>Sous charge</translation>
  </message>
  <message>
   <source>Undercut area</source>
   <translation>Aire en contre-dépouille</translation>
  </message>
  <message>
   <source>Until it left the mould, 0 if not read (h)</source>
   <translation>Jusqu’au démoulage, 0 si non relevé (h)</translation>
  </message>
  <message>
   <source>Unusable edge on each side of the roll (mm)</source>
   <translation>Bord inutilisable de chaque côté du rouleau (mm)</translation>
  </message>
  <message>
   <source>Verdict</source>
   <translation>Verdict</translation>
  </message>
  <message>
   <source>Version</source>
   <translation>Version</translation>
  </message>
  <message>
   <source>Version of the job that the part was made by</source>
   <translation>Version du travail selon lequel la pièce a été faite</translation>
  </message>
  <message>
   <source>Void share</source>
   <translation>Part de vide</translation>
  </message>
  <message>
   <source>Voids</source>
   <translation>Vides</translation>
  </message>
  <message>
   <source>Volume</source>
   <translation>Volume</translation>
  </message>
  <message>
   <source>Volume error</source>
   <translation>Erreur de volume</translation>
  </message>
  <message>
   <source>Volume of the body (mm³)</source>
   <translation>Volume du corps (mm³)</translation>
  </message>
  <message>
   <source>Wall</source>
   <translation>Paroi</translation>
  </message>
  <message>
   <source>Wanted draft</source>
   <translation>Dépouille voulue</translation>
  </message>
  <message>
   <source>Warmer than the printed size when the resin gels (K)</source>
   <translation>Plus chaud qu’à la taille imprimée quand la résine gélifie (K)</translation>
  </message>
  <message>
   <source>Warming</source>
   <translation>Échauffement</translation>
  </message>
  <message>
   <source>Warming and cooling in an hour (°C)</source>
   <translation>Chauffe et refroidissement en une heure (°C)</translation>
  </message>
  <message>
   <source>Wax</source>
   <translation>Cire</translation>
  </message>
  <message>
   <source>Wax by its card</source>
   <translation>Cire selon sa fiche</translation>
  </message>
  <message>
   <source>Weighted length of all seams on the working face (mm)</source>
   <translation>Longueur pondérée de tous les joints sur la face utile (mm)</translation>
  </message>
  <message>
   <source>Weighted seams more because of these cuts (mm)</source>
   <translation>Joints pondérés en plus à cause de ces coupes (mm)</translation>
  </message>
  <message>
   <source>What begins when</source>
   <translation>Ce qui commence quand</translation>
  </message>
  <message>
   <source>What each coupon gave</source>
   <translation>Ce que chaque éprouvette a donné</translation>
  </message>
  <message>
   <source>What each ply covers: a line for each, empty for the whole face, or such as '30 mm round 10, 20, 5', '25 mm along the edge', 'faces Face3, Face5'; lines may be left out at the end</source>
   <translation>Ce que couvre chaque pli : une ligne pour chacun, vide pour toute la face, ou par exemple '30 mm round 10, 20, 5' (autour d’un point), '25 mm along the edge' (le long du bord), 'faces Face3, Face5' (faces) ; les dernières lignes peuvent manquer</translation>
  </message>
  <message>
   <source>What each tile stands on, and what hangs over (cm²)</source>
   <translation>Sur quoi chaque tuile est posée, et ce qui surplombe (cm²)</translation>
  </message>
  <message>
   <source>What fails first under the load</source>
   <translation>Ce qui cède d’abord sous la charge</translation>
  </message>
  <message>
   <source>What follows from it</source>
   <translation>Ce qui en suit</translation>
  </message>
  <message>
   <source>What happens to a pattern that is wider than its roll</source>
   <translation>Ce qui arrive à un patron plus large que son rouleau</translation>
  </message>
  <message>
   <source>What holds the part during the post-cure</source>
   <translation>Ce qui tient la pièce pendant la post-cuisson</translation>
  </message>
  <message>
   <source>What holds the tiles in place while the glue sets</source>
   <translation>Ce qui tient les tuiles pendant la prise de la colle</translation>
  </message>
  <message>
   <source>What is allowed for: size and place</source>
   <translation>Ce qui est compensé : taille et lieu</translation>
  </message>
  <message>
   <source>What is bought</source>
   <translation>Ce qui est acheté</translation>
  </message>
  <message>
   <source>What is printed to trim by</source>
   <translation>Ce qui est imprimé pour détourer</translation>
  </message>
  <message>
   <source>What keeps the part from sticking</source>
   <translation>Ce qui empêche la pièce de coller</translation>
  </message>
  <message>
   <source>What lies inside</source>
   <translation>Ce qui est à l’intérieur</translation>
  </message>
  <message>
   <source>What primer, sealer or film add to the print (mm)</source>
   <translation>Ce qu’apprêt, bouche-pores ou film ajoutent à l’impression (mm)</translation>
  </message>
  <message>
   <source>What stands between whole and fraction on printed sheets; tables for other programs keep the point</source>
   <translation>Ce qui précède les décimales sur les feuilles imprimées ; les tableaux pour d’autres programmes gardent le point</translation>
  </message>
  <message>
   <source>What to do where the cloth would shear or stretch past its limits</source>
   <translation>Que faire là où le tissu serait cisaillé ou étiré au-delà de ses limites</translation>
  </message>
  <message>
   <source>What to know about this layup</source>
   <translation>Ce qu’il faut savoir de cet empilement</translation>
  </message>
  <message>
   <source>What to know about this plan</source>
   <translation>Ce qu’il faut savoir de ce plan</translation>
  </message>
  <message>
   <source>What to know before going on</source>
   <translation>Ce qu’il faut savoir avant de continuer</translation>
  </message>
  <message>
   <source>What to know before printing</source>
   <translation>Ce qu’il faut savoir avant d’imprimer</translation>
  </message>
  <message>
   <source>What to watch</source>
   <translation>À quoi veiller</translation>
  </message>
  <message>
   <source>What to watch, and how it compares with the prediction</source>
   <translation>À quoi veiller, et la comparaison à la prévision</translation>
  </message>
  <message>
   <source>What was allowed for, and what is not done</source>
   <translation>Ce qui a été compensé, et ce qui n’est pas fait</translation>
  </message>
  <message>
   <source>When all is done, at the earliest</source>
   <translation>Quand tout est fini, au plus tôt</translation>
  </message>
  <message>
   <source>Where a bag is closed</source>
   <translation>Où le sac est fermé</translation>
  </message>
  <message>
   <source>Where local plies lie: the plies of each zone, its area, thickness and mass</source>
   <translation>Où sont les plis locaux : les plis de chaque zone, son aire, son épaisseur et sa masse</translation>
  </message>
  <message>
   <source>Where no direction releases the part, up to so many pieces are tried; 1 for none; the Mould Body takes it, too</source>
   <translation>Si aucune direction ne démoule la pièce, jusqu'à autant de parties sont essayées ; 1 pour aucune ; le corps du moule le reprend</translation>
  </message>
  <message>
   <source>Where past limits</source>
   <translation>Au-delà des limites</translation>
  </message>
  <message>
   <source>Where the cloth is laid first (mm)</source>
   <translation>Où le tissu est posé en premier (mm)</translation>
  </message>
  <message>
   <source>Where the cloth will not lie down by itself</source>
   <translation>Où le tissu ne se pose pas de lui-même</translation>
  </message>
  <message>
   <source>Where the cured part softens (°C)</source>
   <translation>Où la pièce durcie ramollit (°C)</translation>
  </message>
  <message>
   <source>Where the cuts lie along the grid's axes (mm)</source>
   <translation>Où sont les coupes sur les axes de la grille (mm)</translation>
  </message>
  <message>
   <source>Where the datum arrow comes from</source>
   <translation>D’où vient la flèche</translation>
  </message>
  <message>
   <source>Where the mould's plastic softens, 0 for that of the printer's card (°C)</source>
   <translation>Où le plastique du moule ramollit, 0 pour celui de la fiche d’imprimante (°C)</translation>
  </message>
  <message>
   <source>Where the record was written last</source>
   <translation>Où le relevé a été écrit en dernier</translation>
  </message>
  <message>
   <source>Whether further plies of the same extent end further in or out</source>
   <translation>Si les plis suivants de même étendue finissent plus à l’intérieur ou plus à l’extérieur</translation>
  </message>
  <message>
   <source>Whether pieces may be cut with the cloth face down</source>
   <translation>Si des morceaux peuvent être coupés face du tissu dessous</translation>
  </message>
  <message>
   <source>Whether the part was taken as good; accepted ones teach the next plan</source>
   <translation>Si la pièce a été jugée bonne ; les acceptées instruisent le plan suivant</translation>
  </message>
  <message>
   <source>Whether the written files fit the present job</source>
   <translation>Si les fichiers écrits conviennent au travail actuel</translation>
  </message>
  <message>
   <source>Wide patterns</source>
   <translation>Patrons larges</translation>
  </message>
  <message>
   <source>Width of a lap along a cut (mm)</source>
   <translation>Largeur du recouvrement le long d’une coupe (mm)</translation>
  </message>
  <message>
   <source>Width of a level flange around the run-off (mm)</source>
   <translation>Largeur d’une bride plane autour du débord (mm)</translation>
  </message>
  <message>
   <source>Width of a roll where it is not the card's: cloth: 1.27 m</source>
   <translation>Largeur d’un rouleau si ce n’est pas celle de la fiche : tissu: 1.27 m</translation>
  </message>
  <message>
   <source>Width of release tape (mm)</source>
   <translation>Largeur du ruban démoulant (mm)</translation>
  </message>
  <message>
   <source>Width of the run-off beyond the trim line (mm)</source>
   <translation>Largeur du débord au-delà de la ligne de détourage (mm)</translation>
  </message>
  <message>
   <source>Width of the scribed trim line (mm)</source>
   <translation>Largeur de la ligne de détourage tracée (mm)</translation>
  </message>
  <message>
   <source>Widths</source>
   <translation>Largeurs</translation>
  </message>
  <message>
   <source>Work</source>
   <translation>Travail</translation>
  </message>
  <message>
   <source>Work begins, such as 08:00</source>
   <translation>Le travail commence, comme 08:00</translation>
  </message>
  <message>
   <source>Work ends</source>
   <translation>Le travail finit</translation>
  </message>
  <message>
   <source>Your own prices, a line such as: Peel ply = 4.20 per m^2</source>
   <translation>Vos propres prix, une ligne comme : Peel ply = 4.20 per m^2</translation>
  </message>
  <message>
   <source>Zones</source>
   <translation>Zones</translation>
  </message>
  <message>
   <source>a cradle</source>
   <translation>un berceau</translation>
  </message>
  <message>
   <source>accepted</source>
   <translation>acceptée</translation>
  </message>
  <message>
   <source>activation energy of the resin</source>
   <translation>énergie d’activation de la résine</translation>
  </message>
  <message>
   <source>applied</source>
   <translation>appliqué</translation>
  </message>
  <message>
   <source>bagged</source>
   <translation>sous vide</translation>
  </message>
  <message>
   <source>base on the bed</source>
   <translation>socle sur le plateau</translation>
  </message>
  <message>
   <source>base or a side on the bed</source>
   <translation>socle ou côté sur le plateau</translation>
  </message>
  <message>
   <source>before a later part</source>
   <translation>avant une pièce suivante</translation>
  </message>
  <message>
   <source>before the second part</source>
   <translation>avant la deuxième pièce</translation>
  </message>
  <message>
   <source>bent over three points</source>
   <translation>fléchie sur trois points</translation>
  </message>
  <message>
   <source>clamped</source>
   <translation>encastré</translation>
  </message>
  <message>
   <source>comma</source>
   <translation>virgule</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>goujons</translation>
  </message>
  <message>
   <source>draft set by hand</source>
   <translation>dépouille fixée à la main</translation>
  </message>
  <message>
   <source>edge can neither turn nor shift</source>
   <translation>le bord ne tourne ni ne glisse</translation>
  </message>
  <message>
   <source>edge can turn but not shift</source>
   <translation>le bord tourne sans glisser</translation>
  </message>
  <message>
   <source>fixed direction</source>
   <translation>direction fixe</translation>
  </message>
  <message>
   <source>flat</source>
   <translation>plat</translation>
  </message>
  <message>
   <source>flat with clamp ears</source>
   <translation>plat avec oreilles de serrage</translation>
  </message>
  <message>
   <source>further in</source>
   <translation>plus à l’intérieur</translation>
  </message>
  <message>
   <source>further out</source>
   <translation>plus à l’extérieur</translation>
  </message>
  <message>
   <source>hand</source>
   <translation>à la main</translation>
  </message>
  <message>
   <source>hollow with ribs</source>
   <translation>creux à nervures</translation>
  </message>
  <message>
   <source>infused</source>
   <translation>infusé</translation>
  </message>
  <message>
   <source>inside (plug)</source>
   <translation>intérieur (mâle)</translation>
  </message>
  <message>
   <source>inside the part</source>
   <translation>dans la pièce</translation>
  </message>
  <message>
   <source>keyed tongues</source>
   <translation>languettes</translation>
  </message>
  <message>
   <source>largest least draft</source>
   <translation>plus grande dépouille minimale</translation>
  </message>
  <message>
   <source>layer lines across the pull</source>
   <translation>couches en travers du démoulage</translation>
  </message>
  <message>
   <source>listed</source>
   <translation>énuméré</translation>
  </message>
  <message>
   <source>maximum strain</source>
   <translation>déformation maximale</translation>
  </message>
  <message>
   <source>maximum stress</source>
   <translation>contrainte maximale</translation>
  </message>
  <message>
   <source>middle of the face, along it</source>
   <translation>milieu de la face, en long</translation>
  </message>
  <message>
   <source>never</source>
   <translation>jamais</translation>
  </message>
  <message>
   <source>new or refinished</source>
   <translation>neuf ou refait</translation>
  </message>
  <message>
   <source>none</source>
   <translation>aucun</translation>
  </message>
  <message>
   <source>not considered</source>
   <translation>non considéré</translation>
  </message>
  <message>
   <source>not decided</source>
   <translation>non décidé</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>non écrit</translation>
  </message>
  <message>
   <source>nothing is proposed</source>
   <translation>rien n’est proposé</translation>
  </message>
  <message>
   <source>on the flange</source>
   <translation>sur la bride</translation>
  </message>
  <message>
   <source>outside (cavity)</source>
   <translation>extérieur (femelle)</translation>
  </message>
  <message>
   <source>outside the part</source>
   <translation>hors de la pièce</translation>
  </message>
  <message>
   <source>paper at true scale</source>
   <translation>papier à l’échelle 1</translation>
  </message>
  <message>
   <source>picked edge</source>
   <translation>arête choisie</translation>
  </message>
  <message>
   <source>picked edge or face</source>
   <translation>arête ou face choisie</translation>
  </message>
  <message>
   <source>point</source>
   <translation>point</translation>
  </message>
  <message>
   <source>point and direction below</source>
   <translation>point et direction ci-dessous</translation>
  </message>
  <message>
   <source>proposed cuts are made</source>
   <translation>les coupes proposées sont faites</translation>
  </message>
  <message>
   <source>proposed cuts are shown</source>
   <translation>les coupes proposées sont montrées</translation>
  </message>
  <message>
   <source>pulled along their length</source>
   <translation>tirée en long</translation>
  </message>
  <message>
   <source>refused, with a split proposed</source>
   <translation>refusé, avec une division proposée</translation>
  </message>
  <message>
   <source>rejected</source>
   <translation>refusée</translation>
  </message>
  <message>
   <source>release tape</source>
   <translation>ruban démoulant</translation>
  </message>
  <message>
   <source>ring to be printed</source>
   <translation>anneau à imprimer</translation>
  </message>
  <message>
   <source>round the whole mould</source>
   <translation>autour de tout le moule</translation>
  </message>
  <message>
   <source>shell</source>
   <translation>coque</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>appui simple</translation>
  </message>
  <message>
   <source>smooth, sealed</source>
   <translation>lisse, scellé</translation>
  </message>
  <message>
   <source>solid</source>
   <translation>plein</translation>
  </message>
  <message>
   <source>split along the warp</source>
   <translation>divisé le long de la chaîne</translation>
  </message>
  <message>
   <source>strains 0.05 to 0.25 % (ISO 527)</source>
   <translation>déformations de 0,05 à 0,25 % (ISO 527)</translation>
  </message>
  <message>
   <source>strains 0.1 to 0.3 % (ASTM D3039)</source>
   <translation>déformations de 0,1 à 0,3 % (ASTM D3039)</translation>
  </message>
  <message>
   <source>textured</source>
   <translation>texturé</translation>
  </message>
  <message>
   <source>the mould</source>
   <translation>le moule</translation>
  </message>
  <message>
   <source>wax</source>
   <translation>cire</translation>
  </message>
  <message>
   <source>wax and film</source>
   <translation>cire et film</translation>
  </message>
  <message>
   <source>where both faces of the cloth are alike</source>
   <translation>où les deux faces du tissu sont pareilles</translation>
  </message>
  <message>
   <source>where the cloth shears least</source>
   <translation>où le tissu se cisaille le moins</translation>
  </message>
 </context>
 <context>
  <name>Laywright</name>
  <message>
   <source>* may stay empty. Numbers with a point.</source>
   <translation>* peut rester vide. Nombres avec un point.</translation>
  </message>
  <message>
   <source>Across, N m</source>
   <translation>En travers, N m</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Ajouter</translation>
  </message>
  <message>
   <source>Add readings …</source>
   <translation>Ajouter des mesures …</translation>
  </message>
  <message>
   <source>Add the place clicked on</source>
   <translation>Ajouter le point cliqué</translation>
  </message>
  <message>
   <source>Allowed cloths</source>
   <translation>Tissus permis</translation>
  </message>
  <message>
   <source>Angle (°)</source>
   <translation>Angle (°)</translation>
  </message>
  <message>
   <source>Angles (°)</source>
   <translation>Angles (°)</translation>
  </message>
  <message>
   <source>As stiff when bent: {0}.</source>
   <translation>Aussi rigide en flexion que : {0}.</translation>
  </message>
  <message>
   <source>Away from it</source>
   <translation>En s’éloignant</translation>
  </message>
  <message>
   <source>Balanced.</source>
   <translation>Équilibré.</translation>
  </message>
  <message>
   <source>Begin a new card with these values under another name</source>
   <translation>Commencer une nouvelle fiche avec ces valeurs sous un autre nom</translation>
  </message>
  <message>
   <source>Begun from the chosen one; its card is kept in your folder</source>
   <translation>Commencée d’après celle choisie ; sa fiche est gardée dans votre dossier</translation>
  </message>
  <message>
   <source>Bending across</source>
   <translation>Module de flexion en travers</translation>
  </message>
  <message>
   <source>Bending across, at least</source>
   <translation>Flexion en travers, au moins</translation>
  </message>
  <message>
   <source>Bending along</source>
   <translation>Module de flexion en long</translation>
  </message>
  <message>
   <source>Bending along, N m</source>
   <translation>Flexion en long, N m</translation>
  </message>
  <message>
   <source>Bending along, at least</source>
   <translation>Flexion en long, au moins</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Annuler</translation>
  </message>
  <message>
   <source>Cards (*.toml)</source>
   <translation>Fiches (*.toml)</translation>
  </message>
  <message>
   <source>Cards of your own</source>
   <translation>Vos propres fiches</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Fermer</translation>
  </message>
  <message>
   <source>Cloth, what it covers</source>
   <translation>Tissu, ce qu’il couvre</translation>
  </message>
  <message>
   <source>Coarse preview, the full one follows</source>
   <translation>Aperçu grossier, le complet suit</translation>
  </message>
  <message>
   <source>Colours of maps</source>
   <translation>Couleurs des cartes</translation>
  </message>
  <message>
   <source>Copy</source>
   <translation>Copier</translation>
  </message>
  <message>
   <source>Core</source>
   <translation>Âme</translation>
  </message>
  <message>
   <source>Cost per m²</source>
   <translation>Coût au m²</translation>
  </message>
  <message>
   <source>Cost per m², at most</source>
   <translation>Coût au m², au plus</translation>
  </message>
  <message>
   <source>Cover picked faces</source>
   <translation>Couvrir les faces choisies</translation>
  </message>
  <message>
   <source>Cover round the point</source>
   <translation>Couvrir autour du point</translation>
  </message>
  <message>
   <source>Decimal mark on the sheets</source>
   <translation>Séparateur décimal sur les feuilles</translation>
  </message>
  <message>
   <source>Distance from the part</source>
   <translation>Écart à la pièce</translation>
  </message>
  <message>
   <source>Draft classes</source>
   <translation>Classes de dépouille</translation>
  </message>
  <message>
   <source>Edit {0}</source>
   <translation>Modifier {0}</translation>
  </message>
  <message>
   <source>Empty for the whole face, or such as: 30 mm round 10, 20, 5; 25 mm along the edge; faces Face3, Face5</source>
   <translation>Vide pour toute la face, ou par exemple : 30 mm round 10, 20, 5 (autour d’un point) ; 25 mm along the edge (le long du bord) ; faces Face3, Face5 (faces)</translation>
  </message>
  <message>
   <source>Ends of local plies</source>
   <translation>Fins des plis locaux</translation>
  </message>
  <message>
   <source>Find a layup</source>
   <translation>Trouver un empilement</translation>
  </message>
  <message>
   <source>Find a layup …</source>
   <translation>Trouver un empilement …</translation>
  </message>
  <message>
   <source>Finish what is open in the task panel first.</source>
   <translation>Terminez d’abord ce qui est ouvert dans le panneau des tâches.</translation>
  </message>
  <message>
   <source>Flat panel, a quick estimate</source>
   <translation>Panneau plan, estimation rapide</translation>
  </message>
  <message>
   <source>Folder for cards and records</source>
   <translation>Dossier des fiches et des relevés</translation>
  </message>
  <message>
   <source>Folder for the files</source>
   <translation>Dossier des fichiers</translation>
  </message>
  <message>
   <source>Folder with material cards</source>
   <translation>Dossier des fiches de matériaux</translation>
  </message>
  <message>
   <source>Folder with printer cards</source>
   <translation>Dossier des fiches d’imprimantes</translation>
  </message>
  <message>
   <source>Folder with records of parts</source>
   <translation>Dossier des relevés de pièces</translation>
  </message>
  <message>
   <source>Follows: {0}</source>
   <translation>Suit : {0}</translation>
  </message>
  <message>
   <source>Forget all places</source>
   <translation>Oublier tous les points</translation>
  </message>
  <message>
   <source>From</source>
   <translation>De</translation>
  </message>
  <message>
   <source>General</source>
   <translation>Général</translation>
  </message>
  <message>
   <source>How it ended</source>
   <translation>Comment cela a fini</translation>
  </message>
  <message>
   <source>In brackets: nine of ten parts. What matters most: {0}.</source>
   <translation>Entre parenthèses : neuf pièces sur dix. Le plus important : {0}.</translation>
  </message>
  <message>
   <source>In the window</source>
   <translation>Dans la fenêtre</translation>
  </message>
  <message>
   <source>Installing {0}. You can go on working.</source>
   <translation>Installation de {0}. Vous pouvez continuer à travailler.</translation>
  </message>
  <message>
   <source>Keep</source>
   <translation>Garder</translation>
  </message>
  <message>
   <source>Keep as a dated file</source>
   <translation>Garder comme fichier daté</translation>
  </message>
  <message>
   <source>Keep the card in your folder, for all jobs</source>
   <translation>Garder la fiche dans votre dossier, pour tous les travaux</translation>
  </message>
  <message>
   <source>Keep the card in your folder; jobs made with the old one stay what they are</source>
   <translation>Garder la fiche dans votre dossier ; les travaux faits avec l’ancienne restent ce qu’ils sont</translation>
  </message>
  <message>
   <source>Known by</source>
   <translation>Connu par</translation>
  </message>
  <message>
   <source>Lay all plies once more in reverse: symmetric</source>
   <translation>Reprendre tous les plis à l’envers : symétrique</translation>
  </message>
  <message>
   <source>Laywright needs Python packages that FreeCAD does not bring: {0}.

Install them into {1}?</source>
   <translation>Laywright a besoin de paquets Python que FreeCAD n’apporte pas : {0}.

Les installer dans {1} ?</translation>
  </message>
  <message>
   <source>Load</source>
   <translation>Charge</translation>
  </message>
  <message>
   <source>Make the proposed cuts</source>
   <translation>Faire les coupes proposées</translation>
  </message>
  <message>
   <source>Mass</source>
   <translation>Masse</translation>
  </message>
  <message>
   <source>Mass, at most</source>
   <translation>Masse, au plus</translation>
  </message>
  <message>
   <source>Material cards</source>
   <translation>Fiches matière</translation>
  </message>
  <message>
   <source>Meshing {0} …</source>
   <translation>Maillage de {0} …</translation>
  </message>
  <message>
   <source>Mirror all</source>
   <translation>Refléter tout</translation>
  </message>
  <message>
   <source>Mirror, last once</source>
   <translation>Refléter, dernier une fois</translation>
  </message>
  <message>
   <source>Modulus onto a card …</source>
   <translation>Module sur une fiche …</translation>
  </message>
  <message>
   <source>Most plies</source>
   <translation>Plis au plus</translation>
  </message>
  <message>
   <source>New jobs</source>
   <translation>Nouveaux travaux</translation>
  </message>
  <message>
   <source>Not balanced.</source>
   <translation>Non équilibré.</translation>
  </message>
  <message>
   <source>Not symmetric.</source>
   <translation>Non symétrique.</translation>
  </message>
  <message>
   <source>Number</source>
   <translation>Numéro</translation>
  </message>
  <message>
   <source>One line for each reading; the first line names the columns</source>
   <translation>Une ligne par mesure ; la première nomme les colonnes</translation>
  </message>
  <message>
   <source>Open or make a document first.</source>
   <translation>Ouvrez ou créez d’abord un document.</translation>
  </message>
  <message>
   <source>Out of date: {0}. Bring the job up to date and write it?</source>
   <translation>Périmé : {0}. Mettre le travail à jour et l’écrire ?</translation>
  </message>
  <message>
   <source>Packages are missing: {0}</source>
   <translation>Il manque des paquets : {0}</translation>
  </message>
  <message>
   <source>Packages for Laywright</source>
   <translation>Paquets pour Laywright</translation>
  </message>
  <message>
   <source>Paper of the printed sheets</source>
   <translation>Papier des feuilles imprimées</translation>
  </message>
  <message>
   <source>Plausible: {0} to {1}</source>
   <translation>Plausible : {0} à {1}</translation>
  </message>
  <message>
   <source>Plies from the mould</source>
   <translation>Plis depuis le moule</translation>
  </message>
  <message>
   <source>Plies, the first touches the mould</source>
   <translation>Plis, le premier touche le moule</translation>
  </message>
  <message>
   <source>Ply that is shown</source>
   <translation>Pli montré</translation>
  </message>
  <message>
   <source>Preview; OK or Apply keeps it</source>
   <translation>Aperçu ; OK ou Appliquer le garde</translation>
  </message>
  <message>
   <source>Price of resin per kg</source>
   <translation>Prix de la résine au kg</translation>
  </message>
  <message>
   <source>Price per m²</source>
   <translation>Prix au m²</translation>
  </message>
  <message>
   <source>Printer of a new job</source>
   <translation>Imprimante d’un nouveau travail</translation>
  </message>
  <message>
   <source>Printer of your own</source>
   <translation>Votre imprimante</translation>
  </message>
  <message>
   <source>Printer of your own …</source>
   <translation>Votre imprimante …</translation>
  </message>
  <message>
   <source>Printers</source>
   <translation>Imprimantes</translation>
  </message>
  <message>
   <source>Proposed cuts</source>
   <translation>Coupes proposées</translation>
  </message>
  <message>
   <source>Pull a number to move its ply</source>
   <translation>Tirer un numéro pour déplacer son pli</translation>
  </message>
  <message>
   <source>Pull arrow</source>
   <translation>Flèche de démoulage</translation>
  </message>
  <message>
   <source>Pulled across</source>
   <translation>Tiré en travers</translation>
  </message>
  <message>
   <source>Pulled across, at least</source>
   <translation>Tiré en travers, au moins</translation>
  </message>
  <message>
   <source>Pulled along</source>
   <translation>Tiré en long</translation>
  </message>
  <message>
   <source>Pulled along, at least</source>
   <translation>Tiré en long, au moins</translation>
  </message>
  <message>
   <source>Pulled apart</source>
   <translation>Écartées</translation>
  </message>
  <message>
   <source>Ranked by</source>
   <translation>Classé par</translation>
  </message>
  <message>
   <source>Read a card from a TOML file; it is kept with Keep</source>
   <translation>Lire une fiche d’un fichier TOML ; Garder la conserve</translation>
  </message>
  <message>
   <source>Read a file …</source>
   <translation>Lire un fichier …</translation>
  </message>
  <message>
   <source>Readings of one coupon</source>
   <translation>Mesures d’une éprouvette</translation>
  </message>
  <message>
   <source>Refuse the proposed cuts</source>
   <translation>Refuser les coupes proposées</translation>
  </message>
  <message>
   <source>Regions in shades</source>
   <translation>Zones en nuances</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Enlever</translation>
  </message>
  <message>
   <source>Save as file …</source>
   <translation>Enregistrer un fichier …</translation>
  </message>
  <message>
   <source>Search</source>
   <translation>Chercher</translation>
  </message>
  <message>
   <source>Select a job, or anything in it, in the tree first.</source>
   <translation>Choisissez d’abord un travail, ou un élément, dans l’arbre.</translation>
  </message>
  <message>
   <source>Select a part, or faces of one, first.</source>
   <translation>Choisissez d’abord une pièce ou des faces.</translation>
  </message>
  <message>
   <source>Show changes at once</source>
   <translation>Montrer aussitôt les changements</translation>
  </message>
  <message>
   <source>Show changes in task panels at once</source>
   <translation>Montrer aussitôt les changements dans les panneaux</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Source</translation>
  </message>
  <message>
   <source>Stack</source>
   <translation>Pile</translation>
  </message>
  <message>
   <source>Stiffness</source>
   <translation>Rigidité</translation>
  </message>
  <message>
   <source>Stopped, nothing was changed.</source>
   <translation>Arrêté, rien n’a changé.</translation>
  </message>
  <message>
   <source>Stopping …</source>
   <translation>Arrêt en cours …</translation>
  </message>
  <message>
   <source>Strength onto a card …</source>
   <translation>Résistance sur une fiche …</translation>
  </message>
  <message>
   <source>Symmetric.</source>
   <translation>Symétrique.</translation>
  </message>
  <message>
   <source>Tables</source>
   <translation>Tableaux</translation>
  </message>
  <message>
   <source>Take away</source>
   <translation>Retirer</translation>
  </message>
  <message>
   <source>Take in file …</source>
   <translation>Prendre un fichier …</translation>
  </message>
  <message>
   <source>Take out</source>
   <translation>Sortir</translation>
  </message>
  <message>
   <source>Take the card of your own printer out of your folder, now</source>
   <translation>Retirer maintenant de votre dossier la fiche de votre imprimante</translation>
  </message>
  <message>
   <source>Take the library's cards</source>
   <translation>Prendre les fiches de la collection</translation>
  </message>
  <message>
   <source>Take this one</source>
   <translation>Prendre celui-ci</translation>
  </message>
  <message>
   <source>Take what is selected</source>
   <translation>Prendre la sélection</translation>
  </message>
  <message>
   <source>Take what is ticked</source>
   <translation>Prendre ce qui est coché</translation>
  </message>
  <message>
   <source>Take your own card away; one that came along counts again</source>
   <translation>Retirer votre fiche ; celle fournie compte de nouveau</translation>
  </message>
  <message>
   <source>The chosen ply becomes a patch of 30 mm radius round the point, corner or round edge picked in the view</source>
   <translation>Le pli choisi devient une pièce de 30 mm de rayon autour du point, du sommet ou de l’arête ronde choisis dans la vue</translation>
  </message>
  <message>
   <source>The chosen ply covers the faces picked in the view</source>
   <translation>Le pli choisi couvre les faces choisies dans la vue</translation>
  </message>
  <message>
   <source>The last ply becomes the middle one: symmetric</source>
   <translation>Le dernier pli devient celui du milieu : symétrique</translation>
  </message>
  <message>
   <source>The packages were not installed: {0}

To do it by hand run:
{1}</source>
   <translation>Les paquets n’ont pas été installés : {0}

Pour le faire à la main, lancer :
{1}</translation>
  </message>
  <message>
   <source>There is no accepted record of this process yet: weigh a part, accept it, and keep its record.</source>
   <translation>Il n’y a pas encore de relevé accepté de ce procédé : peser une pièce, l’accepter et garder son relevé.</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Épaisseur</translation>
  </message>
  <message>
   <source>Thickness, at most</source>
   <translation>Épaisseur, au plus</translation>
  </message>
  <message>
   <source>This job keeps its own cards. The library now says otherwise of: {0}</source>
   <translation>Ce travail garde ses propres fiches. La collection dit maintenant autre chose de : {0}</translation>
  </message>
  <message>
   <source>Tiles in two shades</source>
   <translation>Tuiles en deux teintes</translation>
  </message>
  <message>
   <source>To</source>
   <translation>À</translation>
  </message>
  <message>
   <source>Towards mould</source>
   <translation>Vers le moule</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Unité</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Valeur</translation>
  </message>
  <message>
   <source>What is ticked goes into Layup and Mix &amp; Cure Plan:</source>
   <translation>Ce qui est coché va dans l’empilement et le plan de mélange et cuisson :</translation>
  </message>
  <message>
   <source>What the records say</source>
   <translation>Ce que disent les relevés</translation>
  </message>
  <message>
   <source>Write the card as it stands in its file, in TOML</source>
   <translation>Écrire la fiche en TOML comme dans son fichier</translation>
  </message>
  <message>
   <source>Write the record into the folder of records; none is replaced</source>
   <translation>Écrire le relevé dans le dossier ; aucun n’est remplacé</translation>
  </message>
  <message>
   <source>Written to {0}.</source>
   <translation>Écrit dans {0}.</translation>
  </message>
  <message>
   <source>about {0} min left</source>
   <translation>encore {0} min environ</translation>
  </message>
  <message>
   <source>about {0} s left</source>
   <translation>encore {0} s environ</translation>
  </message>
  <message>
   <source>and {0} more</source>
   <translation>et {0} de plus</translation>
  </message>
  <message>
   <source>by its heading</source>
   <translation>selon son en-tête</translation>
  </message>
  <message>
   <source>cannot leave along the pull: {0} mm²</source>
   <translation>ne peut pas sortir : {0} mm²</translation>
  </message>
  <message>
   <source>comes along; a change is kept in {0}</source>
   <translation>fournie ; un changement reste dans {0}</translation>
  </message>
  <message>
   <source>comma: 0,5</source>
   <translation>virgule : 0,5</translation>
  </message>
  <message>
   <source>frost to night</source>
   <translation>givre à nuit</translation>
  </message>
  <message>
   <source>g/m²</source>
   <translation>g/m²</translation>
  </message>
  <message>
   <source>leaves hard, draft under {0}°: {1} mm²</source>
   <translation>sort mal, dépouille sous {0}° : {1} mm²</translation>
  </message>
  <message>
   <source>leaves: {0} mm²</source>
   <translation>sort : {0} mm²</translation>
  </message>
  <message>
   <source>mm</source>
   <translation>mm</translation>
  </message>
  <message>
   <source>none</source>
   <translation>aucun</translation>
  </message>
  <message>
   <source>off the part {0}</source>
   <translation>écart à la pièce {0}</translation>
  </message>
  <message>
   <source>on the flat patterns</source>
   <translation>sur les patrons à plat</translation>
  </message>
  <message>
   <source>on the part</source>
   <translation>sur la pièce</translation>
  </message>
  <message>
   <source>outlines only</source>
   <translation>contours seuls</translation>
  </message>
  <message>
   <source>over {0}</source>
   <translation>plus de {0}</translation>
  </message>
  <message>
   <source>past what the cloth bears, {0}</source>
   <translation>au-delà de ce que le tissu supporte, {0}</translation>
  </message>
  <message>
   <source>ply {0}</source>
   <translation>pli {0}</translation>
  </message>
  <message>
   <source>point: 0.5</source>
   <translation>point : 0.5</translation>
  </message>
  <message>
   <source>pull ({0}, {1}, {2}), {3} cm² moulded</source>
   <translation>démoulage ({0}, {1}, {2}), {3} cm² moulés</translation>
  </message>
  <message>
   <source>sand to plum</source>
   <translation>sable à prune</translation>
  </message>
  <message>
   <source>shear</source>
   <translation>cisaillement</translation>
  </message>
  <message>
   <source>straw to bark</source>
   <translation>paille à écorce</translation>
  </message>
  <message>
   <source>stretch along the warp</source>
   <translation>allongement en chaîne</translation>
  </message>
  <message>
   <source>stretch along the weft</source>
   <translation>allongement en trame</translation>
  </message>
  <message>
   <source>the readings</source>
   <translation>les mesures</translation>
  </message>
  <message>
   <source>unit of the heading</source>
   <translation>unité de l’en-tête</translation>
  </message>
  <message>
   <source>up to {0}</source>
   <translation>jusqu'à {0}</translation>
  </message>
  <message>
   <source>whole face</source>
   <translation>toute la face</translation>
  </message>
  <message>
   <source>your own, from {0}</source>
   <translation>la vôtre, de {0}</translation>
  </message>
  <message>
   <source>{0} files in {1}</source>
   <translation>{0} fichiers dans {1}</translation>
  </message>
  <message>
   <source>{0} is not possible here</source>
   <translation>{0} n’est pas possible ici</translation>
  </message>
  <message>
   <source>{0} job</source>
   <translation>Travail {0}</translation>
  </message>
  <message>
   <source>{0} of {1} symmetric and balanced layups fulfil the wish.</source>
   <translation>{0} empilements symétriques et équilibrés sur {1} répondent au souhait.</translation>
  </message>
  <message>
   <source>{0} tiles, {1} cm² to glue, {2} g of glue</source>
   <translation>{0} tuiles, {1} cm² à coller, {2} g de colle</translation>
  </message>
  <message>
   <source>{0} to {1}</source>
   <translation>{0} à {1}</translation>
  </message>
  <message>
   <source>{0}, my own</source>
   <translation>{0}, la mienne</translation>
  </message>
  <message>
   <source>{0}: stopped, nothing was changed</source>
   <translation>{0} : arrêté, rien n’a changé</translation>
  </message>
 </context>
 <context>
  <name>Laywright_BringUpToDate</name>
  <message>
   <source>Bring up to date</source>
   <translation>Mettre à jour</translation>
  </message>
  <message>
   <source>Compute again, in order, whatever in the job is out of date</source>
   <translation>Recalculer dans l’ordre ce qui est périmé dans le travail</translation>
  </message>
 </context>
 <context>
  <name>Laywright_ClothPatterns</name>
  <message>
   <source>Cloth Patterns</source>
   <translation>Patrons de tissu</translation>
  </message>
  <message>
   <source>Make the flat pattern of every ply</source>
   <translation>Faire le patron à plat de chaque pli</translation>
  </message>
 </context>
 <context>
  <name>Laywright_CouponTest</name>
  <message>
   <source>Coupon Test</source>
   <translation>Essai d’éprouvettes</translation>
  </message>
  <message>
   <source>Plan test pieces of the layup, read them in, compare with the prediction</source>
   <translation>Prévoir des éprouvettes du stratifié, les lire, comparer à la prévision</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Example_battery_tray</name>
  <message>
   <source>Battery tray that holds itself back</source>
   <translation>Bac de batterie qui se retient lui-même</translation>
  </message>
  <message>
   <source>Open a copy of this example to try the workbench on; its numbers are invented</source>
   <translation>Ouvrir une copie de cet exemple pour essayer l’atelier ; ses nombres sont inventés</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Example_hatch_cover</name>
  <message>
   <source>Crowned hatch cover</source>
   <translation>Capot d’écoutille bombé</translation>
  </message>
  <message>
   <source>Open a copy of this example to try the workbench on; its numbers are invented</source>
   <translation>Ouvrir une copie de cet exemple pour essayer l’atelier ; ses nombres sont inventés</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Example_sensor_cowl</name>
  <message>
   <source>Open a copy of this example to try the workbench on; its numbers are invented</source>
   <translation>Ouvrir une copie de cet exemple pour essayer l’atelier ; ses nombres sont inventés</translation>
  </message>
  <message>
   <source>Teardrop cowl for a sensor</source>
   <translation>Capot en goutte pour un capteur</translation>
  </message>
 </context>
 <context>
  <name>Laywright_JobSheet</name>
  <message>
   <source>Gather everything on printed sheets</source>
   <translation>Tout réunir sur des feuilles imprimées</translation>
  </message>
  <message>
   <source>Job Sheet</source>
   <translation>Feuille de travail</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Layup</name>
  <message>
   <source>Layup</source>
   <translation>Empilement</translation>
  </message>
  <message>
   <source>Set the plies and see thickness, mass and stiffness</source>
   <translation>Fixer les plis, voir épaisseur, masse et rigidité</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Learn</name>
  <message>
   <source>Learn from records</source>
   <translation>Apprendre des relevés</translation>
  </message>
  <message>
   <source>Show what accepted records say on resin, losses and pace; take what you tick</source>
   <translation>Montrer ce que disent les relevés acceptés de la résine, des pertes et du rythme ; prendre ce qui est coché</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MaterialCards</name>
  <message>
   <source>Look at the material cards, change or copy them into your folder, take in and give away</source>
   <translation>Voir les fiches matière, les changer ou copier dans votre dossier, en prendre et en donner</translation>
  </message>
  <message>
   <source>Material cards</source>
   <translation>Fiches matière</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MixCurePlan</name>
  <message>
   <source>Mix &amp; Cure Plan</source>
   <translation>Plan de mélange et cuisson</translation>
  </message>
  <message>
   <source>Plan resin, cups and cure</source>
   <translation>Prévoir résine, gobelets et cuisson</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MouldBody</name>
  <message>
   <source>Make the closed solid under the moulded face</source>
   <translation>Faire le solide fermé sous la face moulée</translation>
  </message>
  <message>
   <source>Mould Body</source>
   <translation>Corps du moule</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MouldedFace</name>
  <message>
   <source>Moulded Face</source>
   <translation>Face moulée</translation>
  </message>
  <message>
   <source>Pick the faces of the part that cloth is laid against</source>
   <translation>Choisir les faces de la pièce sur lesquelles le tissu est posé</translation>
  </message>
 </context>
 <context>
  <name>Laywright_PrintTiles</name>
  <message>
   <source>Cut the mould body into pieces that fit the printer</source>
   <translation>Couper le corps du moule en morceaux pour l’imprimante</translation>
  </message>
  <message>
   <source>Print Tiles</source>
   <translation>Tuiles à imprimer</translation>
  </message>
 </context>
 <context>
  <name>Laywright_ReleaseCheck</name>
  <message>
   <source>Release Check</source>
   <translation>Contrôle du démoulage</translation>
  </message>
  <message>
   <source>See whether the part leaves the mould along the pull</source>
   <translation>Voir si la pièce quitte le moule dans le sens du démoulage</translation>
  </message>
 </context>
 <context>
  <name>Laywright_RollPlan</name>
  <message>
   <source>Place the patterns on the roll</source>
   <translation>Placer les patrons sur le rouleau</translation>
  </message>
  <message>
   <source>Roll Plan</source>
   <translation>Plan de rouleau</translation>
  </message>
 </context>
 <context>
  <name>Laywright_StartJob</name>
  <message>
   <source>Make a job with every stage from the selected faces of a part, or from those that look upwards if the part itself is selected</source>
   <translation>Faire un travail avec toutes ses étapes à partir des faces choisies d’une pièce, ou de celles tournées vers le haut si la pièce elle-même est choisie</translation>
  </message>
  <message>
   <source>Start a job</source>
   <translation>Commencer un travail</translation>
  </message>
 </context>
 <context>
  <name>Laywright_WeighIn</name>
  <message>
   <source>Weigh-in</source>
   <translation>Pesée</translation>
  </message>
  <message>
   <source>Write down what a part really weighs and hold it against the plan</source>
   <translation>Noter ce qu’une pièce pèse vraiment et le comparer au plan</translation>
  </message>
 </context>
 <context>
  <name>Laywright_WriteFiles</name>
  <message>
   <source>Write files</source>
   <translation>Écrire les fichiers</translation>
  </message>
  <message>
   <source>Write tiles, patterns, plans and sheets of the job into a folder</source>
   <translation>Écrire tuiles, patrons, plans et feuilles du travail dans un dossier</translation>
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <source>Examples</source>
   <translation>Exemples</translation>
  </message>
  <message>
   <source>Laywright</source>
   <translation>Laywright</translation>
  </message>
 </context>
</TS>
