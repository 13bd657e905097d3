<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
 <context>
  <name>Sentences</name>
  <message>
   <source>"30 mm round 10, 20, 5", "25 mm along the edge" or "faces Face3, Face5"</source>
   <translation>« 30 mm round 10, 20, 5 », « 25 mm along the edge » ou « faces Face3, Face5 »</translation>
  </message>
  <message>
   <source>%1 % of its area</source>
   <translation>%1 % de son aire</translation>
  </message>
  <message>
   <source>%1 %2 at %3 mm</source>
   <translation>%1 %2 à %3 mm</translation>
  </message>
  <message>
   <source>%1 %2 at %3 mm and %4 more</source>
   <translation>%1 %2 à %3 mm et %4 autres</translation>
  </message>
  <message>
   <source>%1 %2 is %3 of the %4 that the resin's maker states: %5; give it time or warmth before it is loaded, sanded or sawn.</source>
   <translation>%1 %2, soit %3 des %4 indiqués par le fabricant de la résine : %5 ; laisser du temps ou chauffer avant de charger, poncer ou scier.</translation>
  </message>
  <message>
   <source>%1 %2 is below the usual %3 to %4: perhaps not cured through; ask the maker of the resin for the value of a full cure.</source>
   <translation>%1 %2 est sous les valeurs usuelles de %3 à %4 : peut-être pas durci à cœur ; demander au fabricant de la résine la valeur d'un durcissement complet.</translation>
  </message>
  <message>
   <source>%1 (%2, %3 deg)</source>
   <translation>%1 (%2, %3°)</translation>
  </message>
  <message>
   <source>%1 *.json</source>
   <translation>%1 *.json</translation>
  </message>
  <message>
   <source>%1 MPa</source>
   <translation>%1 MPa</translation>
  </message>
  <message>
   <source>%1 MPa at %2 g/cm^3</source>
   <translation>%1 MPa à %2 g/cm³</translation>
  </message>
  <message>
   <source>%1 MiB in the folder for temporary files, twice</source>
   <translation>%1 Mio dans le dossier temporaire, deux fois</translation>
  </message>
  <message>
   <source>%1 N on %2 mm^2</source>
   <translation>%1 N sur %2 mm²</translation>
  </message>
  <message>
   <source>%1 after</source>
   <translation>%1 après</translation>
  </message>
  <message>
   <source>%1 after the first stir the oven is %2 degC hotter than what the part stands by then: it sags. Support it all over and %3.</source>
   <translation>%1 après le premier mélange, l'étuve est %2 K plus chaude que ce que la pièce supporte alors : elle s'affaisse. La soutenir partout et %3.</translation>
  </message>
  <message>
   <source>%1 and %2 mirrored</source>
   <translation>%1 et %2 en miroir</translation>
  </message>
  <message>
   <source>%1 bytes</source>
   <translation>%1 octets</translation>
  </message>
  <message>
   <source>%1 card</source>
   <translation>fiche %1</translation>
  </message>
  <message>
   <source>%1 cells</source>
   <translation>%1 cellules</translation>
  </message>
  <message>
   <source>%1 cloths and %2 angles</source>
   <translation>%1 tissus et %2 angles</translation>
  </message>
  <message>
   <source>%1 coupons are too few for a value to rely on; test at least %2.</source>
   <translation>%1 éprouvettes sont trop peu pour se fier à une valeur ; en essayer au moins %2.</translation>
  </message>
  <message>
   <source>%1 coupons of %2 x %3 mm from a plate of %4 x %5 mm, %6 mm thick</source>
   <translation>%1 éprouvettes de %2 x %3 mm dans une plaque de %4 x %5 mm, épaisse de %6 mm</translation>
  </message>
  <message>
   <source>%1 cuts</source>
   <translation>%1 coupes</translation>
  </message>
  <message>
   <source>%1 days</source>
   <translation>%1 jours</translation>
  </message>
  <message>
   <source>%1 deg</source>
   <translation>%1°</translation>
  </message>
  <message>
   <source>%1 degC</source>
   <translation>%1 °C</translation>
  </message>
  <message>
   <source>%1 degC is far from the %2 degC of the data sheet: times by the 10 degC rule are rough here.</source>
   <translation>%1 °C est loin des %2 °C de la fiche technique : les durées selon la règle des 10 °C sont ici grossières.</translation>
  </message>
  <message>
   <source>%1 degC is far from the %2 degC of the data sheet: times there are rough.</source>
   <translation>%1 °C est loin des %2 °C de la fiche technique : les durées y sont grossières.</translation>
  </message>
  <message>
   <source>%1 edges with more than two triangles or triangles turned against each other, one at (%2, %3, %4) mm</source>
   <translation>%1 arêtes avec plus de deux triangles ou des triangles retournés, dont une en (%2, %3, %4) mm</translation>
  </message>
  <message>
   <source>%1 fails first, %2, on its %3, at %4 times this load.</source>
   <translation>%1 cède en premier, %2, selon %3, à %4 fois cette charge.</translation>
  </message>
  <message>
   <source>%1 files named %2</source>
   <translation>%1 fichiers nommés %2</translation>
  </message>
  <message>
   <source>%1 filled%2.</source>
   <translation>%1 bouchés%2.</translation>
  </message>
  <message>
   <source>%1 first, at %2 times this load.</source>
   <translation>%1 d'abord, à %2 fois cette charge.</translation>
  </message>
  <message>
   <source>%1 g of %2 g</source>
   <translation>%1 g sur %2 g</translation>
  </message>
  <message>
   <source>%1 g of cloth and %2 g of mix for the plate</source>
   <translation>%1 g de tissu et %2 g de mélange pour la plaque</translation>
  </message>
  <message>
   <source>%1 g of resin for %2 g of cloth</source>
   <translation>%1 g de résine pour %2 g de tissu</translation>
  </message>
  <message>
   <source>%1 g of the mix are meant for brush, cups and drips.</source>
   <translation>%1 g du mélange sont prévus pour pinceau, gobelets et gouttes.</translation>
  </message>
  <message>
   <source>%1 g of the mix are neither in the part nor among the left-overs: look for drips, gloves and rags, or weigh again.</source>
   <translation>%1 g du mélange ne sont ni dans la pièce ni dans les restes : chercher gouttes, gants et chiffons, ou repeser.</translation>
  </message>
  <message>
   <source>%1 g on a scale that shows steps of %2 g</source>
   <translation>%1 g sur une balance à pas de %2 g</translation>
  </message>
  <message>
   <source>%1 g should bend it %2 mm</source>
   <translation>%1 g devraient la fléchir de %2 mm</translation>
  </message>
  <message>
   <source>%1 g, %2 g of it coats and core</source>
   <translation>%1 g, dont %2 g de couches et d'âme</translation>
  </message>
  <message>
   <source>%1 g, %2 h, %3</source>
   <translation>%1 g, %2 h, %3</translation>
  </message>
  <message>
   <source>%1 g/cm^3</source>
   <translation>%1 g/cm³</translation>
  </message>
  <message>
   <source>%1 has a draft of %2 deg, wanted %3 deg, over %4 mm^2 in all.</source>
   <translation>%1 a une dépouille de %2°, voulue %3°, sur %4 mm² en tout.</translation>
  </message>
  <message>
   <source>%1 has no field %2</source>
   <translation>%1 n'a pas de champ %2</translation>
  </message>
  <message>
   <source>%1 holds the part back over %2 mm^2, %3 mm deep along the pull.</source>
   <translation>%1 retient la pièce sur %2 mm², sur %3 mm de profondeur le long du démoulage.</translation>
  </message>
  <message>
   <source>%1 holes of the face are</source>
   <translation>%1 trous de la face sont</translation>
  </message>
  <message>
   <source>%1 hours</source>
   <translation>%1 heures</translation>
  </message>
  <message>
   <source>%1 in %2</source>
   <translation>%1 dans %2</translation>
  </message>
  <message>
   <source>%1 in the seams</source>
   <translation>%1 dans les joints</translation>
  </message>
  <message>
   <source>%1 is no %2</source>
   <translation>%1 n'est pas un %2</translation>
  </message>
  <message>
   <source>%1 is no list</source>
   <translation>%1 n'est pas une liste</translation>
  </message>
  <message>
   <source>%1 is none of %2</source>
   <translation>%1 n'est aucun de %2</translation>
  </message>
  <message>
   <source>%1 is wider than its roll and is cut as %2</source>
   <translation>%1 est plus large que son rouleau et est coupé en %2</translation>
  </message>
  <message>
   <source>%1 kPa</source>
   <translation>%1 kPa</translation>
  </message>
  <message>
   <source>%1 layups</source>
   <translation>%1 empilements</translation>
  </message>
  <message>
   <source>%1 lines for %2 plies</source>
   <translation>%1 lignes pour %2 plis</translation>
  </message>
  <message>
   <source>%1 m^2 of cloth for %2 m^2 of the part</source>
   <translation>%1 m² de tissu pour %2 m² de la pièce</translation>
  </message>
  <message>
   <source>%1 materials and %2 directions</source>
   <translation>%1 matières et %2 directions</translation>
  </message>
  <message>
   <source>%1 minutes</source>
   <translation>%1 minutes</translation>
  </message>
  <message>
   <source>%1 minutes at %2 degC</source>
   <translation>%1 minutes à %2 °C</translation>
  </message>
  <message>
   <source>%1 mm</source>
   <translation>%1 mm</translation>
  </message>
  <message>
   <source>%1 mm along the edge</source>
   <translation>%1 mm le long du bord</translation>
  </message>
  <message>
   <source>%1 mm beyond the edge of the cloth</source>
   <translation>%1 mm au-delà du bord du tissu</translation>
  </message>
  <message>
   <source>%1 mm for the joint and a wall of %2 mm around it</source>
   <translation>%1 mm pour l'assemblage et une paroi de %2 mm autour</translation>
  </message>
  <message>
   <source>%1 mm of usable room</source>
   <translation>%1 mm d'espace utilisable</translation>
  </message>
  <message>
   <source>%1 mm round %2</source>
   <translation>%1 mm autour de %2</translation>
  </message>
  <message>
   <source>%1 mm to %2 m</source>
   <translation>%1 mm à %2 m</translation>
  </message>
  <message>
   <source>%1 mm where the scrap reaches %2 mm beyond the trim line, seen along the pull</source>
   <translation>%1 mm là où la chute dépasse de %2 mm la ligne de détourage, vue selon le démoulage</translation>
  </message>
  <message>
   <source>%1 mm wide with a lap of %2 mm</source>
   <translation>%1 mm de large avec un recouvrement de %2 mm</translation>
  </message>
  <message>
   <source>%1 mm with bolt holes of %2 mm</source>
   <translation>%1 mm avec des trous de vis de %2 mm</translation>
  </message>
  <message>
   <source>%1 mm, in a stretch without cuts</source>
   <translation>%1 mm, sur un tronçon sans coupe</translation>
  </message>
  <message>
   <source>%1 mm, through what no cut may pass</source>
   <translation>%1 mm, à travers ce qu'aucune coupe ne doit traverser</translation>
  </message>
  <message>
   <source>%1 mm/s</source>
   <translation>%1 mm/s</translation>
  </message>
  <message>
   <source>%1 mm^2</source>
   <translation>%1 mm²</translation>
  </message>
  <message>
   <source>%1 mm^2 have less than %2 deg of draft along the pull of their piece.</source>
   <translation>%1 mm² ont moins de %2° de dépouille selon le démoulage de leur partie.</translation>
  </message>
  <message>
   <source>%1 mm^2 hold a piece by less than %2 mm, as triangles along the crest of a round face do; they count as leaving.</source>
   <translation>%1 mm² retiennent une partie de moins de %2 mm, comme le font les triangles sur la crête d'une face ronde ; ils comptent comme libres.</translation>
  </message>
  <message>
   <source>%1 mm^2 of %2 hold the part back.</source>
   <translation>%1 mm² sur %2 retiennent la pièce.</translation>
  </message>
  <message>
   <source>%1 mm^2 of mould, %2 people for %3 hours</source>
   <translation>%1 mm² de moule, %2 personnes pendant %3 heures</translation>
  </message>
  <message>
   <source>%1 mm^2 of the flange of %2 face away from its pull and may jam.</source>
   <translation>%1 mm² de la bride de %2 sont opposés à son démoulage et peuvent coincer.</translation>
  </message>
  <message>
   <source>%1 mm^2 still hold a piece back: add draft there, or change the part.</source>
   <translation>%1 mm² retiennent encore une partie : y ajouter de la dépouille ou modifier la pièce.</translation>
  </message>
  <message>
   <source>%1 mm^2 that hold the part back along the pull%2</source>
   <translation>%1 mm² qui retiennent la pièce le long du démoulage%2</translation>
  </message>
  <message>
   <source>%1 more undercut places hold %2 mm^2.</source>
   <translation>%1 autres contre-dépouilles retiennent sur %2 mm².</translation>
  </message>
  <message>
   <source>%1 numbers</source>
   <translation>%1 nombres</translation>
  </message>
  <message>
   <source>%1 numbers as in the lines around it</source>
   <translation>%1 nombres comme dans les lignes voisines</translation>
  </message>
  <message>
   <source>%1 numbers in a line below %2 headings</source>
   <translation>%1 nombres dans une ligne sous %2 titres</translation>
  </message>
  <message>
   <source>%1 of %2</source>
   <translation>%1 de %2</translation>
  </message>
  <message>
   <source>%1 of a laminate, from its modulus</source>
   <translation>%1 d'un stratifié, d'après son module</translation>
  </message>
  <message>
   <source>%1 of printer %2</source>
   <translation>%1 de l'imprimante %2</translation>
  </message>
  <message>
   <source>%1 of the cloth</source>
   <translation>%1 du tissu</translation>
  </message>
  <message>
   <source>%1 of the offcut of %2</source>
   <translation>%1 de la chute de %2</translation>
  </message>
  <message>
   <source>%1 of the patterns</source>
   <translation>%1 des patrons</translation>
  </message>
  <message>
   <source>%1 of the roll plan</source>
   <translation>%1 du plan de rouleau</translation>
  </message>
  <message>
   <source>%1 on the roll of %2</source>
   <translation>%1 sur le rouleau de %2</translation>
  </message>
  <message>
   <source>%1 outside its own range %2</source>
   <translation>%1 hors de son propre domaine %2</translation>
  </message>
  <message>
   <source>%1 pages for %2 x %3 mm</source>
   <translation>%1 pages pour %2 x %3 mm</translation>
  </message>
  <message>
   <source>%1 parts of resin to 100 parts of cloth, by mass</source>
   <translation>%1 parts de résine pour 100 parts de tissu, en masse</translation>
  </message>
  <message>
   <source>%1 patch numbers came for %2 triangles</source>
   <translation>%1 numéros de face pour %2 triangles</translation>
  </message>
  <message>
   <source>%1 per %2</source>
   <translation>%1 par %2</translation>
  </message>
  <message>
   <source>%1 pieces that do not hang together along an edge</source>
   <translation>%1 morceaux qui ne tiennent ensemble par aucune arête</translation>
  </message>
  <message>
   <source>%1 pieces, %2 mm of parting lines between them.</source>
   <translation>%1 parties, %2 mm de plans de joint entre elles.</translation>
  </message>
  <message>
   <source>%1 ply</source>
   <translation>%1 pli</translation>
  </message>
  <message>
   <source>%1 points</source>
   <translation>%1 points</translation>
  </message>
  <message>
   <source>%1 points that are no numbers</source>
   <translation>%1 points qui ne sont pas des nombres</translation>
  </message>
  <message>
   <source>%1 points that belong to no triangle</source>
   <translation>%1 points qui n'appartiennent à aucun triangle</translation>
  </message>
  <message>
   <source>%1 resin and %2 cloth, by mass of the laminate</source>
   <translation>%1 résine et %2 tissu, en masse du stratifié</translation>
  </message>
  <message>
   <source>%1 stands %2 degC, the part is heated to %3 degC in the bag: take another one, or post-cure without the bag.</source>
   <translation>%1 supporte %2 degC, la pièce est chauffée à %3 degC sous la bâche : en prendre un autre, ou faire la post-cuisson sans bâche.</translation>
  </message>
  <message>
   <source>%1 stays full: %2.</source>
   <translation>%1 reste pleine : %2.</translation>
  </message>
  <message>
   <source>%1 stays full: it has no base to be hollowed from.</source>
   <translation>%1 reste pleine : elle n'a pas de base d'où l'évider.</translation>
  </message>
  <message>
   <source>%1 stiffness of the cloth</source>
   <translation>raideur %1 du tissu</translation>
  </message>
  <message>
   <source>%1 strips of %2 mm along the warp, %3, with the seam %4 mm to the left of the start point seen along the warp</source>
   <translation>%1 bandes de %2 mm selon la chaîne, %3, la couture à %4 mm à gauche du point de départ vu selon la chaîne</translation>
  </message>
  <message>
   <source>%1 tiles for this mould</source>
   <translation>%1 tuiles pour ce moule</translation>
  </message>
  <message>
   <source>%1 times the in-plane forces</source>
   <translation>%1 fois les forces dans le plan</translation>
  </message>
  <message>
   <source>%1 times the pressure</source>
   <translation>%1 fois la pression</translation>
  </message>
  <message>
   <source>%1 to %2</source>
   <translation>%1 à %2</translation>
  </message>
  <message>
   <source>%1 to %2 %3</source>
   <translation>%1 à %2 %3</translation>
  </message>
  <message>
   <source>%1 to %2 MPa at such a density</source>
   <translation>%1 à %2 MPa à une telle densité</translation>
  </message>
  <message>
   <source>%1 to %2 mm</source>
   <translation>%1 à %2 mm</translation>
  </message>
  <message>
   <source>%1 to %2 mm along, %3 to %4 mm across</source>
   <translation>%1 à %2 mm en long, %3 à %4 mm en travers</translation>
  </message>
  <message>
   <source>%1 to %2%3</source>
   <translation>%1 à %2%3</translation>
  </message>
  <message>
   <source>%1 to 40</source>
   <translation>%1 à 40</translation>
  </message>
  <message>
   <source>%1 triangles</source>
   <translation>%1 triangles</translation>
  </message>
  <message>
   <source>%1 triangles that turn over when offset by %2 mm, one at (%3, %4, %5) mm</source>
   <translation>%1 triangles qui se retournent en décalant de %2 mm, dont un en (%3, %4, %5) mm</translation>
  </message>
  <message>
   <source>%1 triangles to be opened</source>
   <translation>%1 triangles à ouvrir</translation>
  </message>
  <message>
   <source>%1 triangles without area, one at (%2, %3, %4) mm</source>
   <translation>%1 triangles sans aire, dont un en (%2, %3, %4) mm</translation>
  </message>
  <message>
   <source>%1 turns by %2 deg, %3, over %4 mm near (%5, %6, %7) mm</source>
   <translation>%1 tourne de %2°, %3, sur %4 mm près de (%5, %6, %7) mm</translation>
  </message>
  <message>
   <source>%1 values</source>
   <translation>%1 valeurs</translation>
  </message>
  <message>
   <source>%1 weighs %2 g/m^2 where its card says %3: correct the card.</source>
   <translation>%1 pèse %2 g/m² alors que sa fiche dit %3 : corriger la fiche.</translation>
  </message>
  <message>
   <source>%1 weights</source>
   <translation>%1 poids</translation>
  </message>
  <message>
   <source>%1 would hold %2 fibre by volume, where %3 work usually gives %4 to %5: %6. Check the resin share.</source>
   <translation>%1 contiendrait %2 de fibres en volume, alors que le procédé « %3 » donne d'ordinaire %4 à %5 : %6. Vérifier la part de résine.</translation>
  </message>
  <message>
   <source>%1 x %2 mm</source>
   <translation>%1 x %2 mm</translation>
  </message>
  <message>
   <source>%1 x %2 x %3 mm</source>
   <translation>%1 x %2 x %3 mm</translation>
  </message>
  <message>
   <source>%1, %2 than the cards; check width, thickness and units first.</source>
   <translation>%1, %2 que les fiches ; vérifier d'abord largeur, épaisseur et unités.</translation>
  </message>
  <message>
   <source>%1, %2, %3 deg</source>
   <translation>%1, %2, %3°</translation>
  </message>
  <message>
   <source>%1, %2, sheared %3 deg, cover %4</source>
   <translation>%1, %2, cisaillé de %3°, couverture %4</translation>
  </message>
  <message>
   <source>%1, a flat strip of %2 mm bends by %3 mm.</source>
   <translation>%1, une bande plane de %2 mm fléchit de %3 mm.</translation>
  </message>
  <message>
   <source>%1, a square of %2 mm lifts a corner by %3 mm.</source>
   <translation>%1, un carré de %2 mm relève un coin de %3 mm.</translation>
  </message>
  <message>
   <source>%1, but the coupons scatter as much; test more of them.</source>
   <translation>%1, mais les éprouvettes varient autant ; en essayer davantage.</translation>
  </message>
  <message>
   <source>%1, coat %2 of %3</source>
   <translation>%1, couche %2 sur %3</translation>
  </message>
  <message>
   <source>%1, column '%2'</source>
   <translation>%1, colonne « %2 »</translation>
  </message>
  <message>
   <source>%1, it shears by %2.</source>
   <translation>%1, il se cisaille de %2.</translation>
  </message>
  <message>
   <source>%1, line %2</source>
   <translation>%1, ligne %2</translation>
  </message>
  <message>
   <source>%1, piece %2</source>
   <translation>%1, morceau %2</translation>
  </message>
  <message>
   <source>%1, set back by local plies</source>
   <translation>%1, en retrait à cause des plis locaux</translation>
  </message>
  <message>
   <source>%1, which asks for 1.5 deg more for each 0.025 mm (common practice)</source>
   <translation>%1, ce qui demande 1,5° de plus par 0,025 mm (pratique courante)</translation>
  </message>
  <message>
   <source>%1: %2 % of its area shears past the locking angle of %3 deg, up to %4 deg near (%5, %6, %7) mm; the cloth will wrinkle there. Have cuts proposed, turn the ply, move the start point or take a looser cloth.</source>
   <translation>%1 : %2 % de son aire se cisaille au-delà de l'angle de blocage de %3°, jusqu'à %4° près de (%5, %6, %7) mm ; le tissu y plissera. Faire proposer des coupes, tourner le pli, déplacer le point de départ ou prendre un tissu plus lâche.</translation>
  </message>
  <message>
   <source>%1: %2 %3, planned %4</source>
   <translation>%1 : %2 %3, prévu %4</translation>
  </message>
  <message>
   <source>%1: %2 covers the whole face; its extent can be left out.</source>
   <translation>%1 : %2 couvre toute la face ; son étendue peut être omise.</translation>
  </message>
  <message>
   <source>%1: %2 falls apart into %3 pieces; cut them all.</source>
   <translation>%1 : %2 se sépare en %3 morceaux ; les couper tous.</translation>
  </message>
  <message>
   <source>%1: %2 g, planned %3 g, good work by hand %4 to %5 g</source>
   <translation>%1 : %2 g, prévu %3 g, bon travail à la main %4 à %5 g</translation>
  </message>
  <message>
   <source>%1: %2 m of %3 m, %4%5 % used</source>
   <translation>%1 : %2 m en %3 m, %4%5 % utilisés</translation>
  </message>
  <message>
   <source>%1: %2 m of 20 mm tape, or %3 m of 50 mm tape, on one face</source>
   <translation>%1 : %2 m de ruban de 20 mm, ou %3 m de ruban de 50 mm, sur une face</translation>
  </message>
  <message>
   <source>%1: %2 mm, %3 g, %4 h</source>
   <translation>%1 : %2 mm, %3 g, %4 h</translation>
  </message>
  <message>
   <source>%1: %2 mm²</source>
   <translation>%1 : %2 mm²</translation>
  </message>
  <message>
   <source>%1: %2 passes a limit and no cuts were found that help; one piece of this cloth cannot cover the face. Move the start point, turn the ply, take a looser cloth or split the face into two Moulded Faces.</source>
   <translation>%1 : %2 dépasse une limite et aucune coupe utile n'a été trouvée ; un seul morceau de ce tissu ne peut couvrir la face. Déplacer le point de départ, tourner le pli, prendre un tissu plus lâche ou diviser la face en deux faces moulées.</translation>
  </message>
  <message>
   <source>%1: %2 weighed, %3 on its card</source>
   <translation>%1 : %2 pesé, %3 sur sa fiche</translation>
  </message>
  <message>
   <source>%1: %2 x %3 mm</source>
   <translation>%1 : %2 x %3 mm</translation>
  </message>
  <message>
   <source>%1: %2%3 %4 from %5 record%6, the plan has %7 %8</source>
   <translation>%1 : %2%3 %4 d'après %5 fiche%6, le plan indique %7 %8</translation>
  </message>
  <message>
   <source>%1: %2%3; up to %4 mm more than elsewhere.</source>
   <translation>%1 : %2%3 ; jusqu'à %4 mm de plus qu'ailleurs.</translation>
  </message>
  <message>
   <source>%1: %2, %3°, %4 m², largest shear %5°</source>
   <translation>%1 : %2, %3°, %4 m², plus grand cisaillement %5°</translation>
  </message>
  <message>
   <source>%1: %2, layer lines %3 the pull, %4 cm² hang over, %5 % of the working face</source>
   <translation>%1 : %2, stries %3 du démoulage, %4 cm² en surplomb, %5 % de la face de travail</translation>
  </message>
  <message>
   <source>%1: %2, made.</source>
   <translation>%1 : %2, faite.</translation>
  </message>
  <message>
   <source>%1: %2, proposed.</source>
   <translation>%1 : %2, proposée.</translation>
  </message>
  <message>
   <source>%1: area</source>
   <translation>%1 : aire</translation>
  </message>
  <message>
   <source>%1: areal weight</source>
   <translation>%1 : masse surfacique</translation>
  </message>
  <message>
   <source>%1: card</source>
   <translation>%1 : fiche</translation>
  </message>
  <message>
   <source>%1: column of the %2</source>
   <translation>%1 : colonne de %2</translation>
  </message>
  <message>
   <source>%1: covered area</source>
   <translation>%1 : aire couverte</translation>
  </message>
  <message>
   <source>%1: fibre volume fraction</source>
   <translation>%1 : taux volumique de fibres</translation>
  </message>
  <message>
   <source>%1: found %2, needed %3; %4.</source>
   <translation>%1 : trouvé : %2 ; attendu : %3. Remède : %4.</translation>
  </message>
  <message>
   <source>%1: kind</source>
   <translation>%1 : genre</translation>
  </message>
  <message>
   <source>%1: leaves along (%2, %3, %4), %5 cm³</source>
   <translation>%1 : sort selon (%2, %3, %4), %5 cm³</translation>
  </message>
  <message>
   <source>%1: mass</source>
   <translation>%1 : masse</translation>
  </message>
  <message>
   <source>%1: modulus</source>
   <translation>%1 : module</translation>
  </message>
  <message>
   <source>%1: modulus %2 MPa, %3 %4 MPa</source>
   <translation>%1 : module %2 MPa, %3 %4 MPa</translation>
  </message>
  <message>
   <source>%1: modulus_in_plane</source>
   <translation>%1 : module dans le plan</translation>
  </message>
  <message>
   <source>%1: name</source>
   <translation>%1 : nom</translation>
  </message>
  <message>
   <source>%1: one piece without cuts cannot cover the face: %2 passes a limit. %3, %4 mm together, bring that to %5.</source>
   <translation>%1 : un morceau sans coupes ne peut couvrir la face : %2 dépasse une limite. %3, %4 mm en tout, ramènent cela à %5.</translation>
  </message>
  <message>
   <source>%1: planned %2 %3, nine of ten parts %4 to %5 %6</source>
   <translation>%1 : prévu %2 %3, neuf pièces sur dix %4 à %5 %6</translation>
  </message>
  <message>
   <source>%1: resin share</source>
   <translation>%1 : part de résine</translation>
  </message>
  <message>
   <source>%1: the cloth would have to stretch or gather by %2 % on average; make a trial in cheap cloth before you cut.</source>
   <translation>%1 : le tissu devrait s'étirer ou se froncer de %2 % en moyenne ; faire un essai dans un tissu bon marché avant de couper.</translation>
  </message>
  <message>
   <source>%1: the computation stopped before the cloth had come to rest; take the pattern as a rough guide and leave more margin.</source>
   <translation>%1 : le calcul s'est arrêté avant que le tissu soit au repos ; prendre le patron comme une ébauche et laisser plus de marge.</translation>
  </message>
  <message>
   <source>%1: too much resin, air, turned fibres or a thickness misread.</source>
   <translation>%1 : trop de résine, de l'air, des fibres tournées ou une épaisseur mal lue.</translation>
  </message>
  <message>
   <source>%1: unit of the %2</source>
   <translation>%1 : unité de %2</translation>
  </message>
  <message>
   <source>%1; pressure %2 MPa, positive away from the mould.</source>
   <translation>%1 ; pression %2 MPa, positive à l'opposé du moule.</translation>
  </message>
  <message>
   <source>%1; what matters most is the %2.</source>
   <translation>%1 ; ce qui compte le plus : %2.</translation>
  </message>
  <message>
   <source>'%1' a second time</source>
   <translation>« %1 » une seconde fois</translation>
  </message>
  <message>
   <source>'%1' in '%2'</source>
   <translation>« %1 » dans « %2 »</translation>
  </message>
  <message>
   <source>'%1' in the heading and '%2' in the settings</source>
   <translation>« %1 » dans le titre et « %2 » dans les réglages</translation>
  </message>
  <message>
   <source>'%1' is not engraved: the sides leave no room for letters 3 mm high; a base of 8 mm carries them.</source>
   <translation>« %1 » n'est pas gravé : les côtés ne laissent pas de place à des lettres de 3 mm ; un socle de 8 mm les porte.</translation>
  </message>
  <message>
   <source>'%1' twice</source>
   <translation>« %1 » deux fois</translation>
  </message>
  <message>
   <source>'%1', which is on no card</source>
   <translation>« %1 », qui n'est sur aucune fiche</translation>
  </message>
  <message>
   <source>'%1', which the file states</source>
   <translation>« %1 », que le fichier indique</translation>
  </message>
  <message>
   <source>'A4', 'Letter' or 'A3'</source>
   <translation>« A4 », « Letter » ou « A3 »</translation>
  </message>
  <message>
   <source>(%1, %2, %3) mm</source>
   <translation>(%1, %2, %3) mm</translation>
  </message>
  <message>
   <source>, %1 mm further in</source>
   <translation>, %1 mm plus à l'intérieur</translation>
  </message>
  <message>
   <source>, mirrored part %1</source>
   <translation>, pièce en miroir %1</translation>
  </message>
  <message>
   <source>, part %1</source>
   <translation>, pièce %1</translation>
  </message>
  <message>
   <source>, the best that a search down to %1 deg found</source>
   <translation>, le meilleur trouvé par une recherche à %1° près</translation>
  </message>
  <message>
   <source>, the edges scribed</source>
   <translation>, les bords tracés</translation>
  </message>
  <message>
   <source>, they end %1 mm %2 than that</source>
   <translation>, ils finissent %1 mm %2 que cela</translation>
  </message>
  <message>
   <source>-5 to 5 %</source>
   <translation>-5 à 5 %</translation>
  </message>
  <message>
   <source>0 mm or more</source>
   <translation>0 mm ou plus</translation>
  </message>
  <message>
   <source>0 or more</source>
   <translation>0 ou plus</translation>
  </message>
  <message>
   <source>0 to %1</source>
   <translation>0 à %1</translation>
  </message>
  <message>
   <source>0 to %1 mm</source>
   <translation>0 à %1 mm</translation>
  </message>
  <message>
   <source>0 to 0.3</source>
   <translation>0 à 0,3</translation>
  </message>
  <message>
   <source>0 to 100 %</source>
   <translation>0 à 100 %</translation>
  </message>
  <message>
   <source>0 to 100 mm</source>
   <translation>0 à 100 mm</translation>
  </message>
  <message>
   <source>0 to 100000 mm</source>
   <translation>0 à 100000 mm</translation>
  </message>
  <message>
   <source>0 to 1440 minutes</source>
   <translation>0 à 1440 minutes</translation>
  </message>
  <message>
   <source>0 to 24</source>
   <translation>0 à 24</translation>
  </message>
  <message>
   <source>0 to 90 deg</source>
   <translation>0 à 90°</translation>
  </message>
  <message>
   <source>0, 3 or 4</source>
   <translation>0, 3 ou 4</translation>
  </message>
  <message>
   <source>0.1 to 12 deg</source>
   <translation>0,1 à 12°</translation>
  </message>
  <message>
   <source>1 cut</source>
   <translation>1 coupe</translation>
  </message>
  <message>
   <source>1 hole of the face is</source>
   <translation>1 trou de la face est</translation>
  </message>
  <message>
   <source>1 mm^2 to 1000 m^2</source>
   <translation>1 mm² à 1000 m²</translation>
  </message>
  <message>
   <source>1 to %1</source>
   <translation>1 à %1</translation>
  </message>
  <message>
   <source>1 to 1000 mm</source>
   <translation>1 à 1000 mm</translation>
  </message>
  <message>
   <source>1 to 10000</source>
   <translation>1 à 10000</translation>
  </message>
  <message>
   <source>1 to 4</source>
   <translation>1 à 4</translation>
  </message>
  <message>
   <source>1 unit taken as %1 mm</source>
   <translation>1 unité prise pour %1 mm</translation>
  </message>
  <message>
   <source>10 MPa at most</source>
   <translation>10 MPa au plus</translation>
  </message>
  <message>
   <source>10 degC more halve the time</source>
   <translation>10 °C de plus réduisent le temps de moitié</translation>
  </message>
  <message>
   <source>100 to 100000</source>
   <translation>100 à 100000</translation>
  </message>
  <message>
   <source>16 times the thickness (ASTM D790)</source>
   <translation>16 fois l'épaisseur (ASTM D790)</translation>
  </message>
  <message>
   <source>16, 32 or 40 times the thickness is usual</source>
   <translation>16, 32 ou 40 fois l'épaisseur est usuel</translation>
  </message>
  <message>
   <source>2 to 4</source>
   <translation>2 à 4</translation>
  </message>
  <message>
   <source>24 to 5000, coarse to fine</source>
   <translation>24 à 5000, de grossier à fin</translation>
  </message>
  <message>
   <source>32 times the thickness (ASTM D7264)</source>
   <translation>32 fois l'épaisseur (ASTM D7264)</translation>
  </message>
  <message>
   <source>40 parts of resin to 60 of cloth is a share of 0.40</source>
   <translation>40 parts de résine pour 60 de tissu font une part de 0,40</translation>
  </message>
  <message>
   <source>40 times the thickness (ISO 14125, carbon)</source>
   <translation>40 fois l'épaisseur (ISO 14125, carbone)</translation>
  </message>
  <message>
   <source>50 to 50000</source>
   <translation>50 à 50000</translation>
  </message>
  <message>
   <source>60 mm/s</source>
   <translation>60 mm/s</translation>
  </message>
  <message>
   <source>; in pieces: %1</source>
   <translation>; en parties : %1</translation>
  </message>
  <message>
   <source>; it leaves along (%1, %2, %3)</source>
   <translation>; elle sort selon (%1, %2, %3)</translation>
  </message>
  <message>
   <source>A cup of this size can get hot enough to smoke, melt and burn. Move a hot cup outdoors; do not hold it.</source>
   <translation>Un gobelet de cette taille peut chauffer jusqu'à fumer, fondre et brûler. Porter dehors un gobelet chaud ; ne pas le tenir en main.</translation>
  </message>
  <message>
   <source>A flat panel of %1 x %2 mm, %3</source>
   <translation>Un panneau plan de %1 x %2 mm, %3</translation>
  </message>
  <message>
   <source>A full cup that loses no heat would reach %1 degC: an upper bound, no forecast, but the reason never to leave one standing.</source>
   <translation>Un gobelet plein qui ne perd pas de chaleur atteindrait %1 °C : une borne supérieure, pas une prévision, mais la raison de ne jamais en laisser un.</translation>
  </message>
  <message>
   <source>A mould in %1 pieces releases the part, no fewer were found: it leaves them along %2 and %3.</source>
   <translation>Un moule en %1 parties libère la pièce, moins n'a pas été trouvé : elle en sort selon %2 et %3.</translation>
  </message>
  <message>
   <source>A post-cure above %1 degC gains nothing with this resin and lets the part sag.</source>
   <translation>Une post-cuisson au-dessus de %1 °C n'apporte rien avec cette résine et laisse la pièce s'affaisser.</translation>
  </message>
  <message>
   <source>A post-cure at %1 degC is too hot for the mould, which softens at %2 degC: take the part off and hold it in a cradle, or post-cure cooler for longer.</source>
   <translation>Une post-cuisson à %1 °C est trop chaude pour le moule, qui ramollit à %2 °C : démouler la pièce et la tenir dans un berceau, ou post-cuire moins chaud plus longtemps.</translation>
  </message>
  <message>
   <source>A quick estimate for a flat rectangle on edges that do not give way, under an even pressure, with small deflections. Curvature makes the real part stiffer, soft edges, holes and joints make it softer.</source>
   <translation>Une estimation rapide pour un rectangle plan sur des bords qui ne cèdent pas, sous une pression uniforme, avec de petites flèches. La courbure rend la vraie pièce plus raide ; bords souples, trous et joints la rendent plus souple.</translation>
  </message>
  <message>
   <source>A span of %1 mm is short for supports made by hand: lay the coupons up with the plies twice, %2 mm thick.</source>
   <translation>Une portée de %1 mm est courte pour des appuis faits à la main : stratifier les éprouvettes avec deux fois les plis, %2 mm d'épaisseur.</translation>
  </message>
  <message>
   <source>A tile's name begins with the number of its piece. Glue each piece by itself, then put the pieces together, cones in their holes, and bolt them.</source>
   <translation>Le nom d'une tuile commence par le numéro de sa partie. Coller chaque partie séparément, puis assembler les parties, cônes dans leurs trous, et les boulonner.</translation>
  </message>
  <message>
   <source>Along %1%2, %3 mm^2 would still be held back: part the mould.</source>
   <translation>Selon %1%2, %3 mm² seraient encore retenus : diviser le moule.</translation>
  </message>
  <message>
   <source>Along the parting lines %1 mm^2 came to the neighbouring piece.</source>
   <translation>Le long des plans de joint, %1 mm² sont passés à la partie voisine.</translation>
  </message>
  <message>
   <source>An estimate for comparing layups, without residual stress, holes, impact, fatigue or damp other than by the knock-downs. It says nothing about the protection of a person; load-bearing and protective parts need tests by an accredited laboratory.</source>
   <translation>Une estimation pour comparer des empilements, sans contraintes résiduelles, trous, chocs, fatigue ni humidité autres que par les abattements. Elle ne dit rien de la protection d'une personne ; les pièces porteuses ou protectrices exigent des essais par un laboratoire accrédité.</translation>
  </message>
  <message>
   <source>An estimate; nothing in it certifies a protection.</source>
   <translation>Une estimation ; rien n'y certifie une protection.</translation>
  </message>
  <message>
   <source>Area, cm^2</source>
   <translation>Aire, cm²</translation>
  </message>
  <message>
   <source>At %1 degC resin is thick, the layup gets heavy and many resins never cure fully: warm the shop above %2 degC.</source>
   <translation>À %1 °C la résine est épaisse, le stratifié devient lourd et bien des résines ne durcissent jamais à fond : chauffer l'atelier au-dessus de %2 °C.</translation>
  </message>
  <message>
   <source>Bag Plan</source>
   <translation>Plan de la bâche</translation>
  </message>
  <message>
   <source>Bag film, folded round</source>
   <translation>Bâche à vide, repliée</translation>
  </message>
  <message>
   <source>Bag film, once</source>
   <translation>Bâche à vide, simple</translation>
  </message>
  <message>
   <source>Barcol 934</source>
   <translation>Barcol 934</translation>
  </message>
  <message>
   <source>Bending along, across, N m</source>
   <translation>Flexion en long, en travers, N m</translation>
  </message>
  <message>
   <source>Bent %1 the datum arrow, it also twists: %2 of twist for each unit of bending.</source>
   <translation>Fléchi %1 de la flèche, il se tord aussi : %2 de torsion par unité de flexion.</translation>
  </message>
  <message>
   <source>Best Pull</source>
   <translation>Meilleur démoulage</translation>
  </message>
  <message>
   <source>Buckles at</source>
   <translation>Flambe à</translation>
  </message>
  <message>
   <source>Buff coat %1 and look along it against a lamp.</source>
   <translation>Lustrer la couche %1 et regarder le long contre une lampe.</translation>
  </message>
  <message>
   <source>Clean the mould. A test piece with the same plastic, sealer, release agent and resin must have come off first. Air the room; gloves.</source>
   <translation>Nettoyer le moule. Un essai avec le même plastique, le même bouche-pores, le même agent de démoulage et la même résine doit s'être décollé auparavant. Aérer ; gants.</translation>
  </message>
  <message>
   <source>Close the bag %1; set the %2 pleats where the mould is deep or tight, so that the bag reaches the bottom of every corner.</source>
   <translation>Fermer la bâche %1 ; placer les %2 plis là où le moule est profond ou étroit, pour qu'elle atteigne le fond de chaque coin.</translation>
  </message>
  <message>
   <source>Cloth Patterns</source>
   <translation>Patrons de tissu</translation>
  </message>
  <message>
   <source>Corners full of resin get much hotter than the skin; a test piece on the same mould material tells more than any number here.</source>
   <translation>Les coins pleins de résine chauffent bien plus que la peau ; un essai sur la même matière de moule en dit plus que tout nombre ici.</translation>
  </message>
  <message>
   <source>Corners where a cut leaves less than was asked for: %1.</source>
   <translation>Coins où une coupe laisse moins que demandé : %1.</translation>
  </message>
  <message>
   <source>Coupon %1 lies far from the others in %2: look for a cause at the bench before leaving it out.</source>
   <translation>L'éprouvette %1 est loin des autres en %2 : chercher une cause à l'établi avant de l'écarter.</translation>
  </message>
  <message>
   <source>Coupon %1: a span of %2 times the thickness lets shear lower the modulus; 32 times or more is better.</source>
   <translation>Éprouvette %1 : avec une portée de %2 fois l'épaisseur le cisaillement abaisse le module ; 32 fois ou plus vaut mieux.</translation>
  </message>
  <message>
   <source>Coupon Plan</source>
   <translation>Plan d'éprouvettes</translation>
  </message>
  <message>
   <source>Coupon Test</source>
   <translation>Essai d'éprouvettes</translation>
  </message>
  <message>
   <source>Coupon Test in bending</source>
   <translation>Essai d'éprouvettes en flexion</translation>
  </message>
  <message>
   <source>Coupon Test in tension</source>
   <translation>Essai d'éprouvettes en traction</translation>
  </message>
  <message>
   <source>Cup %1 holds %2 g, but the pot life is known for %3 g: a fuller cup sets sooner and runs hotter. Use smaller cups or pour it into a flat tray at once.</source>
   <translation>Le gobelet %1 contient %2 g, mais la durée en pot est connue pour %3 g : un gobelet plus plein prend plus tôt et chauffe plus. Prendre des gobelets plus petits ou verser aussitôt dans un bac plat.</translation>
  </message>
  <message>
   <source>Cure Plan</source>
   <translation>Plan de polymérisation</translation>
  </message>
  <message>
   <source>Cut all coupons from one flat plate of the same layup, laid the same day from the same cup; mark the datum arrow on each and measure width and thickness at three places.</source>
   <translation>Couper toutes les éprouvettes dans une plaque plane du même empilement, stratifiée le même jour du même gobelet ; marquer la flèche sur chacune et mesurer largeur et épaisseur en trois endroits.</translation>
  </message>
  <message>
   <source>Cut and dry-fit everything before any resin is mixed.</source>
   <translation>Tout couper et essayer à sec avant de mélanger de la résine.</translation>
  </message>
  <message>
   <source>Cut the surplus with a knife between %1 and %2: it is firm but not yet hard. Wear gloves, it is not cured.</source>
   <translation>Couper le surplus au couteau entre %1 et %2 : il est ferme mais pas encore dur. Porter des gants, il n'est pas durci.</translation>
  </message>
  <message>
   <source>Cuts of ply %1 and ply %2 come within %3 mm of each other near %4; at least %5 mm are wanted: move one.</source>
   <translation>Des coupes du pli %1 et du pli %2 s'approchent à %3 mm près de %4 ; au moins %5 mm sont voulus : en déplacer une.</translation>
  </message>
  <message>
   <source>Deflection of the middle</source>
   <translation>Flèche du milieu</translation>
  </message>
  <message>
   <source>Demould after %1 at the earliest.</source>
   <translation>Démouler après %1 au plus tôt.</translation>
  </message>
  <message>
   <source>Draped Laminate</source>
   <translation>Stratifié drapé</translation>
  </message>
  <message>
   <source>E across (MPa)</source>
   <translation>E en travers (MPa)</translation>
  </message>
  <message>
   <source>E along (MPa)</source>
   <translation>E en long (MPa)</translation>
  </message>
  <message>
   <source>Faces</source>
   <translation>Faces</translation>
  </message>
  <message>
   <source>Failure Envelope</source>
   <translation>Enveloppe de rupture</translation>
  </message>
  <message>
   <source>Fill seams and layer lines</source>
   <translation>Boucher joints et stries d'impression</translation>
  </message>
  <message>
   <source>Film to cover the bench</source>
   <translation>Film pour couvrir l'établi</translation>
  </message>
  <message>
   <source>Film, spray %1 of %2: %3.</source>
   <translation>Film, passe %1 sur %2 : %3.</translation>
  </message>
  <message>
   <source>Flow mesh</source>
   <translation>Filet drainant</translation>
  </message>
  <message>
   <source>Full strength after %1. Sand and machine only then, with dust mask and extraction: dust of half-cured resin sensitises the skin for good.</source>
   <translation>Pleine résistance après %1. Ne poncer et n'usiner qu'alors, avec masque et aspiration : la poussière de résine à demi durcie sensibilise la peau pour toujours.</translation>
  </message>
  <message>
   <source>Fully cured</source>
   <translation>Durci à fond</translation>
  </message>
  <message>
   <source>Gelled: the knife may cut the edge</source>
   <translation>Gélifié : le couteau peut couper le bord</translation>
  </message>
  <message>
   <source>Glue %1 to %2.</source>
   <translation>Coller %1 à %2.</translation>
  </message>
  <message>
   <source>Glue %1.</source>
   <translation>Coller %1.</translation>
  </message>
  <message>
   <source>Glue gaps of %1, %2 and %3 mm in all are taken off the tiles.</source>
   <translation>Des joints de colle de %1, %2 et %3 mm en tout sont retirés des tuiles.</translation>
  </message>
  <message>
   <source>Glue the layer of %1 on the layer of %2.</source>
   <translation>Coller la couche de %1 sur la couche de %2.</translation>
  </message>
  <message>
   <source>Hands are slower than the cup: what cup %1 holds takes %2 minutes with mixing, but it lasts %3. Take a slower hardener, a cooler shop, more hands or a finer scale for smaller cups.</source>
   <translation>Les mains sont plus lentes que le gobelet : le contenu du gobelet %1 prend %2 minutes mélange compris, mais il ne tient que %3. Prendre un durcisseur plus lent, un atelier plus frais, plus de mains ou une balance plus fine pour des gobelets plus petits.</translation>
  </message>
  <message>
   <source>Hands are slower than the gel: laying takes %1 h, but the first ply gels after %2 h. Take a slower hardener or more hands, or stop with peel ply and lay the rest another day.</source>
   <translation>Les mains sont plus lentes que le gel : la pose prend %1 h, mais le premier pli gélifie après %2 h. Prendre un durcisseur plus lent ou plus de mains, ou finir par un tissu d'arrachage et poser le reste un autre jour.</translation>
  </message>
  <message>
   <source>How many times the %1 until it fails, by %2</source>
   <translation>Combien de fois les %1 avant rupture, selon %2</translation>
  </message>
  <message>
   <source>How much</source>
   <translation>Combien</translation>
  </message>
  <message>
   <source>It holds %1 resin where %2 was planned: plan the next one with %3, or change how the surplus is taken off.</source>
   <translation>Il contient %1 de résine là où %2 était prévu : prévoir le prochain avec %3, ou changer la façon d'ôter le surplus.</translation>
  </message>
  <message>
   <source>Keep the vacuum until the resin has gelled, better until demould.</source>
   <translation>Garder le vide jusqu'au gel de la résine, mieux jusqu'au démoulage.</translation>
  </message>
  <message>
   <source>Lay the tape edge to edge, without bubbles or gaps.</source>
   <translation>Poser le ruban bord à bord, sans bulles ni vides.</translation>
  </message>
  <message>
   <source>Layup Choice</source>
   <translation>Choix de l'empilement</translation>
  </message>
  <message>
   <source>Laywright: took up %1 objects saved without the workbench</source>
   <translation>Laywright : %1 objets repris, enregistrés sans l'atelier</translation>
  </message>
  <message>
   <source>Leak test with the dry bag: pump to full vacuum, shut the valve, wait ten minutes. A gauge that falls by more than 20 mbar (common practice, no source) means a leak: listen, press the tape, patch.</source>
   <translation>Essai d'étanchéité avec la bâche à sec : pomper à plein vide, fermer la vanne, attendre dix minutes. Si le manomètre baisse de plus de 20 mbar (pratique courante, sans source), il y a fuite : écouter, presser le mastic, réparer.</translation>
  </message>
  <message>
   <source>Leave the part alone until it gels, about %1 after the first stir.</source>
   <translation>Laisser la pièce tranquille jusqu'au gel, environ %1 après le premier mélange.</translation>
  </message>
  <message>
   <source>Mass, g</source>
   <translation>Masse, g</translation>
  </message>
  <message>
   <source>May leave the mould</source>
   <translation>Peut quitter le moule</translation>
  </message>
  <message>
   <source>Mix &amp; Cure Plan</source>
   <translation>Mélange et cuisson</translation>
  </message>
  <message>
   <source>Mix Plan</source>
   <translation>Plan de mélange</translation>
  </message>
  <message>
   <source>Mixing alone takes %1 minutes of the %2 that a cup lasts: take a slower hardener or a cooler shop.</source>
   <translation>Le mélange prend à lui seul %1 des %2 minutes que tient un gobelet : prendre un durcisseur plus lent ou un atelier plus frais.</translation>
  </message>
  <message>
   <source>Mixing cups, two for each mix</source>
   <translation>Gobelets, deux par mélange</translation>
  </message>
  <message>
   <source>Moduli along, across, GPa</source>
   <translation>Modules en long, en travers, GPa</translation>
  </message>
  <message>
   <source>Mould Body</source>
   <translation>Corps du moule</translation>
  </message>
  <message>
   <source>Mould Finish</source>
   <translation>Fini du moule</translation>
  </message>
  <message>
   <source>Mould Pieces</source>
   <translation>Parties du moule</translation>
  </message>
  <message>
   <source>Moulded Face</source>
   <translation>Face moulée</translation>
  </message>
  <message>
   <source>N mm</source>
   <translation>N mm</translation>
  </message>
  <message>
   <source>Never add hardener to make it faster: %1 parts to 100 parts of resin, by mass, is the only right ratio. Left-overs go outdoors, spread flat, until they are hard.</source>
   <translation>Ne jamais ajouter de durcisseur pour accélérer : %1 parts pour 100 parts de résine, en masse, est le seul bon rapport. Les restes dehors, étalés à plat, jusqu'à ce qu'ils soient durs.</translation>
  </message>
  <message>
   <source>Nitrile gloves</source>
   <translation>Gants en nitrile</translation>
  </message>
  <message>
   <source>No %1 at %2: %3 mm of section, %4 mm needed; glued flat.</source>
   <translation>Pas de %1 à %2 : section de %3 mm, %4 mm nécessaires ; collé à plat.</translation>
  </message>
  <message>
   <source>No air port: drawing the pieces away one by one lets the air in.</source>
   <translation>Pas de prise d'air : l'air entre quand on retire les parties une à une.</translation>
  </message>
  <message>
   <source>No bolt holes beside those that join the pieces.</source>
   <translation>Pas de trous de boulons hors ceux qui joignent les parties.</translation>
  </message>
  <message>
   <source>No coupon broke: the stresses reached are no strengths, only lower bounds.</source>
   <translation>Aucune éprouvette n'a cassé : les contraintes atteintes ne sont pas des résistances, seulement des bornes inférieures.</translation>
  </message>
  <message>
   <source>No division into %1 pieces was found: allow more pieces, or change the part.</source>
   <translation>Aucune division en %1 parties trouvée : permettre plus de parties ou modifier la pièce.</translation>
  </message>
  <message>
   <source>No ears at %1: hold these by hand or by straps.</source>
   <translation>Pas d'oreilles à %1 : tenir celles-ci à la main ou par sangles.</translation>
  </message>
  <message>
   <source>No feet: one could stand across a joint; put strips below.</source>
   <translation>Pas de pieds : l'un pourrait chevaucher un joint ; posez des tasseaux dessous.</translation>
  </message>
  <message>
   <source>No flange of its own: the level ring round the trim line, %1 mm wide.</source>
   <translation>Pas de bride propre : l'anneau plat autour de la ligne de détourage, large de %1 mm.</translation>
  </message>
  <message>
   <source>No inscription: a joint between pieces could cut through it.</source>
   <translation>Pas d'inscription : un joint entre parties pourrait la couper.</translation>
  </message>
  <message>
   <source>No marks of the datum: a joint between pieces could cut through them.</source>
   <translation>Pas de marques de la flèche de référence : un joint entre parties pourrait les couper.</translation>
  </message>
  <message>
   <source>No mould in %1 pieces was found that releases the part.</source>
   <translation>Aucun moule en %1 parties trouvé qui libère la pièce.</translation>
  </message>
  <message>
   <source>No number of plies certifies a protection. A part that protects a person needs tests by an accredited laboratory; no protection level is computed or claimed here.</source>
   <translation>Aucun nombre de plis ne certifie une protection. Une pièce qui protège une personne exige des essais par un laboratoire accrédité ; aucun niveau de protection n'est calculé ni affirmé ici.</translation>
  </message>
  <message>
   <source>No pry pockets: unbolted, the pieces are wedged apart at their joint.</source>
   <translation>Pas d'encoches de levier : déboulonnées, les parties s'écartent au coin à leur joint.</translation>
  </message>
  <message>
   <source>No room for a mark on %1.</source>
   <translation>Pas de place pour un repère sur %1.</translation>
  </message>
  <message>
   <source>No single pull sees the whole surface: it needs a mould of several parts.</source>
   <translation>Aucun démoulage seul ne voit toute la surface : il faut un moule en plusieurs parties.</translation>
  </message>
  <message>
   <source>Of that from transverse shear</source>
   <translation>Dont par cisaillement transverse</translation>
  </message>
  <message>
   <source>Of the strengths on the cards %1 are counted on in tension, %2 in compression, %3 in shear and %4 of a core (%5).</source>
   <translation>Des résistances sur les fiches on compte %1 en traction, %2 en compression, %3 en cisaillement et %4 pour une âme (%5).</translation>
  </message>
  <message>
   <source>One cup at a time, when what it is for comes next: empty cup on the scale, set to zero, resin to the first reading, then hardener to the second.</source>
   <translation>Un gobelet à la fois, quand vient ce pour quoi il est : gobelet vide sur la balance, mise à zéro, résine jusqu'à la première lecture, puis durcisseur jusqu'à la seconde.</translation>
  </message>
  <message>
   <source>One piece is enough: the whole surface leaves along one pull.</source>
   <translation>Une partie suffit : toute la surface sort selon un seul démoulage.</translation>
  </message>
  <message>
   <source>Opened for spring-in, the mould has a least draft of %1 deg along the pull; the part's own shape, which the Release Check looks at, has %2 deg.</source>
   <translation>Ouvert pour le retrait angulaire, le moule a une dépouille minimale de %1° ; la forme propre de la pièce, que regarde le contrôle du démoulage, a %2°.</translation>
  </message>
  <message>
   <source>Particle filters for the mask</source>
   <translation>Filtres à particules pour le masque</translation>
  </message>
  <message>
   <source>Peel ply</source>
   <translation>Tissu d'arrachage</translation>
  </message>
  <message>
   <source>Peel ply and what lies on it may take up %1 g of the mix, the plan has %2 g to spare: allow %3 % extra for losses, or weigh what a piece of them takes up and put it on the card.</source>
   <translation>Le tissu d'arrachage et ce qui est posé dessus peuvent absorber %1 g du mélange, le plan a %2 g en réserve : prévoir %3 % de plus pour les pertes, ou peser ce qu'un morceau absorbe et le noter sur la fiche.</translation>
  </message>
  <message>
   <source>Piece %1</source>
   <translation>Partie %1</translation>
  </message>
  <message>
   <source>Ply %1 and ply %2 end %3 mm apart near (%4, %5, %6) mm, at least %7 mm are wanted: change one of their extents.</source>
   <translation>Le pli %1 et le pli %2 finissent à %3 mm l'un de l'autre près de (%4, %5, %6) mm, au moins %7 mm sont voulus : changer une des étendues.</translation>
  </message>
  <message>
   <source>Ply by ply, with all stiffness of a failed ply gone, it carries up to %1 times this load.</source>
   <translation>Pli par pli, un pli rompu perdant toute raideur, il porte jusqu'à %1 fois cette charge.</translation>
  </message>
  <message>
   <source>Post-cure on %1: warm by at most %2 degC an hour to %3 degC, hold for %4 hours, cool as slowly, and take the support away only when it is cold.</source>
   <translation>Post-cuire sur %1 : chauffer d'au plus %2 K par heure jusqu'à %3 °C, tenir %4 heures, refroidir aussi lentement, et n'ôter le soutien qu'à froid.</translation>
  </message>
  <message>
   <source>Post-cure: begin to cool</source>
   <translation>Post-cuisson : début du refroidissement</translation>
  </message>
  <message>
   <source>Post-cure: begin to warm</source>
   <translation>Post-cuisson : début du chauffage</translation>
  </message>
  <message>
   <source>Post-cure: cold again</source>
   <translation>Post-cuisson : de nouveau froid</translation>
  </message>
  <message>
   <source>Post-cure: hold</source>
   <translation>Post-cuisson : palier</translation>
  </message>
  <message>
   <source>Pressure and in-plane forces are looked at one without the other.</source>
   <translation>Pression et forces dans le plan sont considérées l'une sans l'autre.</translation>
  </message>
  <message>
   <source>Print Tiles</source>
   <translation>Tuiles à imprimer</translation>
  </message>
  <message>
   <source>Pulled by %1 %2 the datum arrow</source>
   <translation>Tiré %1 %2 par rapport à la flèche</translation>
  </message>
  <message>
   <source>Put %1 together and bolt them.</source>
   <translation>Assembler %1 et boulonner.</translation>
  </message>
  <message>
   <source>Record of a part</source>
   <translation>Fiche d'une pièce</translation>
  </message>
  <message>
   <source>Release Check</source>
   <translation>Contrôle du démoulage</translation>
  </message>
  <message>
   <source>Release Coats</source>
   <translation>Couches de démoulage</translation>
  </message>
  <message>
   <source>Release Strips</source>
   <translation>Bandes de démoulage</translation>
  </message>
  <message>
   <source>Release film, perforated</source>
   <translation>Film séparateur, perforé</translation>
  </message>
  <message>
   <source>Result</source>
   <translation>Résultat</translation>
  </message>
  <message>
   <source>Roll Plan</source>
   <translation>Plan de rouleau</translation>
  </message>
  <message>
   <source>Rollers or squeegees</source>
   <translation>Rouleaux ou raclettes</translation>
  </message>
  <message>
   <source>Sand with %1 grit</source>
   <translation>Poncer au grain %1</translation>
  </message>
  <message>
   <source>Sand with %1 grit, wet</source>
   <translation>Poncer au grain %1, à l'eau</translation>
  </message>
  <message>
   <source>Scanned Part</source>
   <translation>Pièce numérisée</translation>
  </message>
  <message>
   <source>Sealer, coat %1 of %2</source>
   <translation>Bouche-pores, couche %1 sur %2</translation>
  </message>
  <message>
   <source>Searched start point (%1, %2, %3) mm, datum arrow along (%4, %5, %6): largest shear about %7 deg, %8 deg from the middle of the face along it.</source>
   <translation>Point de départ cherché (%1, %2, %3) mm, flèche selon (%4, %5, %6) : plus grand cisaillement environ %7°, %8° depuis le milieu de la face.</translation>
  </message>
  <message>
   <source>Set out cups, sticks, brush, roller and the plies in the order of laying.</source>
   <translation>Disposer gobelets, bâtons, pinceau, rouleau et les plis dans l'ordre de pose.</translation>
  </message>
  <message>
   <source>Shopping List</source>
   <translation>Liste d'achats</translation>
  </message>
  <message>
   <source>Shore D</source>
   <translation>Shore D</translation>
  </message>
  <message>
   <source>Something fails at</source>
   <translation>Quelque chose cède à</translation>
  </message>
  <message>
   <source>Stir for four minutes, scraping wall and bottom; pour into a second cup and stir for another four. Write down the time of the first stir. Spread it out early.</source>
   <translation>Mélanger quatre minutes en raclant paroi et fond ; verser dans un second gobelet et mélanger encore quatre. Noter l'heure du premier mélange. Étaler tôt.</translation>
  </message>
  <message>
   <source>Stirring sticks</source>
   <translation>Bâtons mélangeurs</translation>
  </message>
  <message>
   <source>Strength Check</source>
   <translation>Vérification de résistance</translation>
  </message>
  <message>
   <source>Strips of %1 mm would wrinkle where the face is curved both ways: take %2 mm or less there, or wax instead.</source>
   <translation>Des bandes de %1 mm plisseraient là où la face est courbée dans les deux sens : y prendre %2 mm ou moins, ou cirer.</translation>
  </message>
  <message>
   <source>That much is wanted because %1.</source>
   <translation>Autant est voulu parce que : %1.</translation>
  </message>
  <message>
   <source>The %1 of %2 coupon%3 is %4 MPa, predicted were %5:</source>
   <translation>%1 de %2 éprouvette%3 : %4 MPa, prévu %5 :</translation>
  </message>
  <message>
   <source>The angles are not balanced: pulled along the datum arrow the laminate also shears. Give each angled ply a partner at the opposite angle to avoid it.</source>
   <translation>Les angles ne sont pas équilibrés : tiré selon la flèche, le stratifié se cisaille aussi. Donner à chaque pli oblique un pli à l'angle opposé pour l'éviter.</translation>
  </message>
  <message>
   <source>The bands hold what is on the cards and what usually varies in the work; they know nothing of mistakes, and nothing of what the theory itself leaves out.</source>
   <translation>Les intervalles contiennent ce qui est sur les fiches et ce qui varie d'ordinaire dans le travail ; ils ignorent les erreurs et ce que la théorie elle-même néglige.</translation>
  </message>
  <message>
   <source>The datum is not marked on %1 of its 4 sides: the run-off leaves less than %2 mm there; widen the run-off or the flange.</source>
   <translation>La flèche de référence n'est pas marquée sur %1 de ses 4 côtés : le débord y laisse moins de %2 mm ; élargir le débord ou la bride.</translation>
  </message>
  <message>
   <source>The datum is not marked: its arrow, or the direction across it, stands upright in the mould.</source>
   <translation>La flèche de référence n'est pas marquée : elle, ou la direction en travers, est verticale dans le moule.</translation>
  </message>
  <message>
   <source>The datum is not marked: scribed lines have no depth.</source>
   <translation>La flèche de référence n'est pas marquée : les lignes tracées n'ont pas de profondeur.</translation>
  </message>
  <message>
   <source>The datum's ticks go without the figure %1: the run-off leaves no room beside them.</source>
   <translation>Les traits de la flèche de référence restent sans le chiffre %1 : le débord ne laisse pas de place à côté d'eux.</translation>
  </message>
  <message>
   <source>The deflection of %1 mm is more than half the thickness: the plate then also stretches and bends less than this says.</source>
   <translation>La flèche de %1 mm dépasse la demi-épaisseur : la plaque s'étire alors aussi et fléchit moins qu'indiqué.</translation>
  </message>
  <message>
   <source>The flange of %1 has no room for %2: make it wider.</source>
   <translation>La bride de %1 n'a pas de place pour %2 : l'élargir.</translation>
  </message>
  <message>
   <source>The layup carries no cards: only the work was varied.</source>
   <translation>L'empilement ne porte pas de fiches : seul le travail a été varié.</translation>
  </message>
  <message>
   <source>The layup is not symmetric: the coupling of stretching and bending is only followed as a loss of bending stiffness.</source>
   <translation>L'empilement n'est pas symétrique : le couplage entre traction et flexion n'est suivi que comme une perte de raideur en flexion.</translation>
  </message>
  <message>
   <source>The layup may start. Touch the mould only with clean gloves.</source>
   <translation>La stratification peut commencer. Ne toucher le moule qu'avec des gants propres.</translation>
  </message>
  <message>
   <source>The line at the edge of the cloth is left out: the outline comes back nearer than %1 mm.</source>
   <translation>La ligne au bord du tissu est omise : le contour revient à moins de %1 mm.</translation>
  </message>
  <message>
   <source>The line at the edge of the cloth is left out: the ring round the trim line or its outline has no room %1 mm away.</source>
   <translation>La ligne au bord du tissu est omise : l'anneau autour de la ligne de détourage ou son contour n'a pas de place à %1 mm.</translation>
  </message>
  <message>
   <source>The margin is that of the plies; the core is not judged here.</source>
   <translation>La réserve est celle des plis ; l'âme n'est pas jugée ici.</translation>
  </message>
  <message>
   <source>The middle moves only %1 mm: a dial gauge of %2 mm reads that coarsely. Take a longer span or more plies.</source>
   <translation>Le milieu ne bouge que de %1 mm : un comparateur de %2 mm lit cela grossièrement. Prendre une portée plus longue ou plus de plis.</translation>
  </message>
  <message>
   <source>The panel bends by %1 mm. %2</source>
   <translation>Le panneau fléchit de %1 mm. %2</translation>
  </message>
  <message>
   <source>The part is %1 %2 than planned; within %3 is good work by hand.</source>
   <translation>La pièce est %1 %2 que prévu ; à %3 près, c'est du bon travail à la main.</translation>
  </message>
  <message>
   <source>The part is held back along one direction, so the mould is built in %1 pieces.</source>
   <translation>La pièce est retenue selon une seule direction, le moule est donc construit en %1 parties.</translation>
  </message>
  <message>
   <source>The part itself softens near %1 degC until it is post-cured: warm it slowly and support it all over.</source>
   <translation>La pièce elle-même ramollit vers %1 °C tant qu'elle n'est pas post-cuite : chauffer lentement et la soutenir partout.</translation>
  </message>
  <message>
   <source>The part leaves %1 along (%2, %3, %4).</source>
   <translation>La pièce quitte %1 selon (%2, %3, %4).</translation>
  </message>
  <message>
   <source>The part softens near %1 degC: keep it out of the sun and out of hot cars, dark parts above all.</source>
   <translation>La pièce ramollit vers %1 °C : la tenir loin du soleil et des voitures chaudes, surtout si elle est sombre.</translation>
  </message>
  <message>
   <source>The part would leave along %1 with a least draft of %2 deg%3.</source>
   <translation>La pièce sortirait selon %1 avec une dépouille minimale de %2°%3.</translation>
  </message>
  <message>
   <source>The plate is thick for its size: transverse shear governs it, and the estimate is rough.</source>
   <translation>La plaque est épaisse pour sa taille : le cisaillement transverse domine et l'estimation est grossière.</translation>
  </message>
  <message>
   <source>The plies are not symmetric about the middle: %1. Mirror the plies about the middle to avoid it.</source>
   <translation>Les plis ne sont pas symétriques par rapport au milieu : %1. Mettre les plis en miroir autour du milieu pour l'éviter.</translation>
  </message>
  <message>
   <source>The scale is coarse for cup %1: in steps of %2 g the hardener can be off by %3. Use a finer scale, or fewer and larger cups.</source>
   <translation>La balance est grossière pour le gobelet %1 : par pas de %2 g le durcisseur peut être faux de %3. Prendre une balance plus fine, ou moins de gobelets plus grands.</translation>
  </message>
  <message>
   <source>The search of the cuts was ended early; these are the best so far.</source>
   <translation>La recherche des coupes a été arrêtée tôt ; voici les meilleures jusqu'ici.</translation>
  </message>
  <message>
   <source>The shop is at %1 degC, but the mould softens at %2 degC and should stay below %3 degC.</source>
   <translation>L'atelier est à %1 °C, mais le moule ramollit à %2 °C et devrait rester sous %3 °C.</translation>
  </message>
  <message>
   <source>The strengths scatter by %1: the layups differ, or the cutting and the supports do.</source>
   <translation>Les résistances varient de %1 : les empilements diffèrent, ou la coupe et les appuis.</translation>
  </message>
  <message>
   <source>The thickness is less than cloth and resin without any air would give: a weighing, a thickness or a density is wrong.</source>
   <translation>L'épaisseur est moindre que ne donneraient tissu et résine sans air : une pesée, une épaisseur ou une densité est fausse.</translation>
  </message>
  <message>
   <source>The trim line is not scribed: the working surface comes back too flat below the trim edge.</source>
   <translation>La ligne de détourage n'est pas tracée : la surface de travail revient trop à plat sous le bord de détourage.</translation>
  </message>
  <message>
   <source>The working area is off by %1 mm, wanted at most %2 mm.</source>
   <translation>La surface de travail s'écarte de %1 mm, voulu au plus %2 mm.</translation>
  </message>
  <message>
   <source>Thickness and mass differ by %1 of air: more working in with the roller, or a bag, or the gauge sat on a lap.</source>
   <translation>Épaisseur et masse diffèrent de %1 d'air : travailler plus au rouleau, mettre une bâche, ou la jauge était sur un recouvrement.</translation>
  </message>
  <message>
   <source>Thickness, mm</source>
   <translation>Épaisseur, mm</translation>
  </message>
  <message>
   <source>This load stresses nothing that is judged.</source>
   <translation>Cette charge ne sollicite rien de ce qui est jugé.</translation>
  </message>
  <message>
   <source>Three to six plies of cloth are laid against light knocks, six to ten against hard ones: common practice, no source.</source>
   <translation>On pose trois à six plis contre les petits chocs, six à dix contre les durs : pratique courante, sans source.</translation>
  </message>
  <message>
   <source>To run it: ccx and the name of this file without its ending, in the file's folder.</source>
   <translation>Pour lancer : ccx et le nom de ce fichier sans extension, dans son dossier.</translation>
  </message>
  <message>
   <source>Too hard for a knife</source>
   <translation>Trop dur pour un couteau</translation>
  </message>
  <message>
   <source>Trim Plan</source>
   <translation>Plan de détourage</translation>
  </message>
  <message>
   <source>Trim line and holes</source>
   <translation>Ligne de détourage et trous</translation>
  </message>
  <message>
   <source>Under a vacuum of %1 MPa a flat wall of %2 mm gives way by %3 over %4 mm, wanted at most %5 mm: thicken the wall, set the ribs closer or keep the bag off it.</source>
   <translation>Sous un vide de %1 MPa une paroi plane de %2 mm cède de %3 sur %4 mm, voulu au plus %5 mm : épaissir la paroi, rapprocher les nervures ou en écarter la bâche.</translation>
  </message>
  <message>
   <source>Units: mm, N, MPa, tonne. Made for editing: supports and load are an example.</source>
   <translation>Unités : mm, N, MPa, tonne. Fait pour être modifié : appuis et charge sont un exemple.</translation>
  </message>
  <message>
   <source>Use a regulator: too much vacuum on thin wet cloth sucks it dry. A printed mould creeps under the load when it is warm: keep it cold until the resin has gelled.</source>
   <translation>Utiliser un régulateur : trop de vide assèche un tissu mince et mouillé. Un moule imprimé flue sous la charge à chaud : le garder froid jusqu'au gel.</translation>
  </message>
  <message>
   <source>Wax, coat %1 of %2: thin, the other way round.</source>
   <translation>Cire, couche %1 sur %2 : mince, dans l'autre sens.</translation>
  </message>
  <message>
   <source>Wear eye protection when you load to the end: splinters fly.</source>
   <translation>Porter des lunettes en chargeant jusqu'au bout : des éclats volent.</translation>
  </message>
  <message>
   <source>Weigh the cut cloth and compare it with the plan before any resin is poured.</source>
   <translation>Peser le tissu coupé et comparer au plan avant de verser la résine.</translation>
  </message>
  <message>
   <source>With a core the stress at the surface is only apparent; test the skins alone as well.</source>
   <translation>Avec une âme la contrainte en surface n'est qu'apparente ; essayer aussi les peaux seules.</translation>
  </message>
  <message>
   <source>With the pinned and forbidden cuts: %1 tiles, weighted seams of %2 mm; without them: %3 tiles, %4 mm.</source>
   <translation>Avec les coupes imposées et interdites : %1 tuiles, joints pondérés de %2 mm ; sans elles : %3 tuiles, %4 mm.</translation>
  </message>
  <message>
   <source>Without the plies that cover a part of the face: %1.</source>
   <translation>Sans les plis qui couvrent une partie de la face : %1.</translation>
  </message>
  <message>
   <source>Zones: %1 to %2 mm thick, %3 g in all, of flat plies</source>
   <translation>Zones : épaisses de %1 à %2 mm, %3 g en tout, en plis plans</translation>
  </message>
  <message>
   <source>[bench] %1</source>
   <translation>[bench] %1</translation>
  </message>
  <message>
   <source>[cuts] list</source>
   <translation>[cuts] list</translation>
  </message>
  <message>
   <source>[datum]</source>
   <translation>[datum]</translation>
  </message>
  <message>
   <source>[layup] plies</source>
   <translation>[layup] plies</translation>
  </message>
  <message>
   <source>[mould.plastic]</source>
   <translation>[mould.plastic]</translation>
  </message>
  <message>
   <source>[mould] %1</source>
   <translation>[mould] %1</translation>
  </message>
  <message>
   <source>[part]</source>
   <translation>[part]</translation>
  </message>
  <message>
   <source>[part] faces</source>
   <translation>[part] faces</translation>
  </message>
  <message>
   <source>[part] region</source>
   <translation>[part] region</translation>
  </message>
  <message>
   <source>[prices] currency</source>
   <translation>[prices] currency</translation>
  </message>
  <message>
   <source>[printer] %1</source>
   <translation>[printer] %1</translation>
  </message>
  <message>
   <source>[printer] use</source>
   <translation>[printer] use</translation>
  </message>
  <message>
   <source>[roll] %1</source>
   <translation>[roll] %1</translation>
  </message>
  <message>
   <source>a %1 has no plain form</source>
   <translation>un %1 n'a pas de forme simple</translation>
  </message>
  <message>
   <source>a %1 of that name</source>
   <translation>un %1 de ce nom</translation>
  </message>
  <message>
   <source>a Release Check</source>
   <translation>un contrôle du démoulage</translation>
  </message>
  <message>
   <source>a TOML file as the cards that come along</source>
   <translation>un fichier TOML comme les fiches fournies</translation>
  </message>
  <message>
   <source>a bare %1</source>
   <translation>un simple %1</translation>
  </message>
  <message>
   <source>a base of %1 x %2 mm</source>
   <translation>un socle de %1 x %2 mm</translation>
  </message>
  <message>
   <source>a body %1 mm thick where its seams are thickest</source>
   <translation>un corps épais de %1 mm là où ses joints sont les plus épais</translation>
  </message>
  <message>
   <source>a body at least twice as thick as its wall</source>
   <translation>un corps au moins deux fois plus épais que sa paroi</translation>
  </message>
  <message>
   <source>a body with gaps</source>
   <translation>un corps avec des vides</translation>
  </message>
  <message>
   <source>a card for it</source>
   <translation>une fiche pour cela</translation>
  </message>
  <message>
   <source>a card in TOML</source>
   <translation>une fiche en TOML</translation>
  </message>
  <message>
   <source>a card of it: %1</source>
   <translation>une fiche de cela : %1</translation>
  </message>
  <message>
   <source>a card of that name</source>
   <translation>une fiche de ce nom</translation>
  </message>
  <message>
   <source>a card of your own</source>
   <translation>une fiche à soi</translation>
  </message>
  <message>
   <source>a card of your own; those that come along stay</source>
   <translation>une fiche à soi ; celles fournies restent</translation>
  </message>
  <message>
   <source>a card that can be taken away</source>
   <translation>une fiche qu'on peut retirer</translation>
  </message>
  <message>
   <source>a card that comes along</source>
   <translation>une fiche fournie</translation>
  </message>
  <message>
   <source>a clean offset</source>
   <translation>un décalage propre</translation>
  </message>
  <message>
   <source>a closed body</source>
   <translation>un corps fermé</translation>
  </message>
  <message>
   <source>a closed edge of the part</source>
   <translation>une arête fermée de la pièce</translation>
  </message>
  <message>
   <source>a closed piece</source>
   <translation>une partie fermée</translation>
  </message>
  <message>
   <source>a closed shape that encloses a volume</source>
   <translation>une forme fermée qui enclôt un volume</translation>
  </message>
  <message>
   <source>a closed solid whose every edge has two triangles</source>
   <translation>un solide fermé dont chaque arête a deux triangles</translation>
  </message>
  <message>
   <source>a closed tile</source>
   <translation>une tuile fermée</translation>
  </message>
  <message>
   <source>a cradle</source>
   <translation>un berceau</translation>
  </message>
  <message>
   <source>a cut across the face</source>
   <translation>une coupe à travers la face</translation>
  </message>
  <message>
   <source>a cut of %1 mm from %2 to %3, %4</source>
   <translation>une coupe de %1 mm de %2 à %3, %4</translation>
  </message>
  <message>
   <source>a cut of about %1 mm</source>
   <translation>une coupe d'environ %1 mm</translation>
  </message>
  <message>
   <source>a cut of at least %1 mm that does not meet itself</source>
   <translation>une coupe d'au moins %1 mm qui ne se rencontre pas</translation>
  </message>
  <message>
   <source>a cut that runs along another one</source>
   <translation>une coupe qui longe une autre</translation>
  </message>
  <message>
   <source>a cut that runs along the edge</source>
   <translation>une coupe qui longe le bord</translation>
  </message>
  <message>
   <source>a cut that starts at the edge of the face, of a hole or of another cut</source>
   <translation>une coupe qui part du bord de la face, d'un trou ou d'une autre coupe</translation>
  </message>
  <message>
   <source>a date such as 2026-11-25</source>
   <translation>une date telle que 2026-11-25</translation>
  </message>
  <message>
   <source>a datum arrow along the pull</source>
   <translation>une flèche le long du démoulage</translation>
  </message>
  <message>
   <source>a direction along the face</source>
   <translation>une direction le long de la face</translation>
  </message>
  <message>
   <source>a direction such as (0, 0, 1)</source>
   <translation>une direction telle que (0, 0, 1)</translation>
  </message>
  <message>
   <source>a direction that leaves the face</source>
   <translation>une direction qui quitte la face</translation>
  </message>
  <message>
   <source>a direction that lies in the face everywhere</source>
   <translation>une direction partout contenue dans la face</translation>
  </message>
  <message>
   <source>a disk or folder for larger files</source>
   <translation>un disque ou un dossier pour de plus grands fichiers</translation>
  </message>
  <message>
   <source>a disk that takes no more (%1)</source>
   <translation>un disque plein (%1)</translation>
  </message>
  <message>
   <source>a face %1 mm long</source>
   <translation>une face longue de %1 mm</translation>
  </message>
  <message>
   <source>a face narrower than %1 mm somewhere</source>
   <translation>une face plus étroite que %1 mm quelque part</translation>
  </message>
  <message>
   <source>a face that differs from the picked one by %1 (the nearest, %2, by %3)</source>
   <translation>une face qui diffère de la choisie de %1 (la plus proche, %2, de %3)</translation>
  </message>
  <message>
   <source>a face that even triangles fit into</source>
   <translation>une face où tiennent des triangles réguliers</translation>
  </message>
  <message>
   <source>a face that is seen whole along the pull</source>
   <translation>une face vue entière selon le démoulage</translation>
  </message>
  <message>
   <source>a face that one piece of cloth can cover</source>
   <translation>une face qu'un morceau de tissu peut couvrir</translation>
  </message>
  <message>
   <source>a face that turns by less than half a circle at every edge</source>
   <translation>une face qui tourne de moins d'un demi-tour à chaque arête</translation>
  </message>
  <message>
   <source>a face with area</source>
   <translation>une face avec une aire</translation>
  </message>
  <message>
   <source>a failure while writing (%1)</source>
   <translation>une erreur d'écriture (%1)</translation>
  </message>
  <message>
   <source>a fault in a roll</source>
   <translation>un défaut dans un rouleau</translation>
  </message>
  <message>
   <source>a fault in the roll of %1</source>
   <translation>un défaut dans le rouleau de %1</translation>
  </message>
  <message>
   <source>a field that a card does not have</source>
   <translation>un champ qu'une fiche n'a pas</translation>
  </message>
  <message>
   <source>a file larger than this disk takes</source>
   <translation>un fichier plus grand que ce disque ne l'admet</translation>
  </message>
  <message>
   <source>a file name</source>
   <translation>un nom de fichier</translation>
  </message>
  <message>
   <source>a file of kind '%1'</source>
   <translation>un fichier du genre « %1 »</translation>
  </message>
  <message>
   <source>a file of that name</source>
   <translation>un fichier de ce nom</translation>
  </message>
  <message>
   <source>a file that cannot be read (%1)</source>
   <translation>un fichier illisible (%1)</translation>
  </message>
  <message>
   <source>a file that cannot be read as a mesh (%1)</source>
   <translation>un fichier illisible comme maillage (%1)</translation>
  </message>
  <message>
   <source>a file that cannot be read as a printer card (%1)</source>
   <translation>un fichier illisible comme fiche d'imprimante (%1)</translation>
  </message>
  <message>
   <source>a file that is no text</source>
   <translation>un fichier qui n'est pas du texte</translation>
  </message>
  <message>
   <source>a finite number</source>
   <translation>un nombre fini</translation>
  </message>
  <message>
   <source>a first flat map</source>
   <translation>une première mise à plat</translation>
  </message>
  <message>
   <source>a fold at (%1, %2, %3) mm, the face lying on itself</source>
   <translation>un repli en (%1, %2, %3) mm, la face couchée sur elle-même</translation>
  </message>
  <message>
   <source>a folder</source>
   <translation>un dossier</translation>
  </message>
  <message>
   <source>a folder of that name</source>
   <translation>un dossier de ce nom</translation>
  </message>
  <message>
   <source>a folder or file that may not be written to</source>
   <translation>un dossier ou un fichier sans droit d'écriture</translation>
  </message>
  <message>
   <source>a folder that can be written to</source>
   <translation>un dossier dans lequel on peut écrire</translation>
  </message>
  <message>
   <source>a folder that exists</source>
   <translation>un dossier qui existe</translation>
  </message>
  <message>
   <source>a folder with cards</source>
   <translation>un dossier de fiches</translation>
  </message>
  <message>
   <source>a folder with printer cards</source>
   <translation>un dossier de fiches d'imprimantes</translation>
  </message>
  <message>
   <source>a force of zero or more on some area</source>
   <translation>une force nulle ou plus sur une aire</translation>
  </message>
  <message>
   <source>a full disk</source>
   <translation>un disque plein</translation>
  </message>
  <message>
   <source>a job description</source>
   <translation>une description de travail</translation>
  </message>
  <message>
   <source>a lap smaller than the width</source>
   <translation>un recouvrement plus petit que la largeur</translation>
  </message>
  <message>
   <source>a larger one</source>
   <translation>une plus grande</translation>
  </message>
  <message>
   <source>a line such as 'ply 2: (70, 70, 9) to (42, 40, 81), lap'</source>
   <translation>une ligne telle que 'ply 2: (70, 70, 9) to (42, 40, 81), lap'</translation>
  </message>
  <message>
   <source>a list in square brackets</source>
   <translation>une liste entre crochets</translation>
  </message>
  <message>
   <source>a list of %1, each with its unit</source>
   <translation>une liste de %1, chacun avec son unité</translation>
  </message>
  <message>
   <source>a list of texts in quotes</source>
   <translation>une liste de textes entre guillemets</translation>
  </message>
  <message>
   <source>a list such as [{ cloth = "...", angle = "45 deg" }]</source>
   <translation>une liste telle que [{ cloth = "...", angle = "45 deg" }]</translation>
  </message>
  <message>
   <source>a list such as [{ ply = 1, points = [[0, 0, 0], [10, 0, 5]] }]</source>
   <translation>une liste telle que [{ ply = 1, points = [[0, 0, 0], [10, 0, 5]] }]</translation>
  </message>
  <message>
   <source>a load of finite size</source>
   <translation>une charge de grandeur finie</translation>
  </message>
  <message>
   <source>a mesh file</source>
   <translation>un fichier de maillage</translation>
  </message>
  <message>
   <source>a mesh object of the document</source>
   <translation>un objet maillage du document</translation>
  </message>
  <message>
   <source>a mist only</source>
   <translation>un simple voile</translation>
  </message>
  <message>
   <source>a mixing plan for ply %1</source>
   <translation>un plan de mélange pour le pli %1</translation>
  </message>
  <message>
   <source>a modulus of %1 MPa</source>
   <translation>un module de %1 MPa</translation>
  </message>
  <message>
   <source>a mould in %1 pieces</source>
   <translation>un moule en %1 parties</translation>
  </message>
  <message>
   <source>a mould, 1 to 20 people, up to 100 hours</source>
   <translation>un moule, 1 à 20 personnes, jusqu'à 100 heures</translation>
  </message>
  <message>
   <source>a name</source>
   <translation>un nom</translation>
  </message>
  <message>
   <source>a name of its own</source>
   <translation>un nom à soi</translation>
  </message>
  <message>
   <source>a name such as A1</source>
   <translation>un nom tel que A1</translation>
  </message>
  <message>
   <source>a name that is taken</source>
   <translation>un nom déjà pris</translation>
  </message>
  <message>
   <source>a name that is too long for this disk</source>
   <translation>un nom trop long pour ce disque</translation>
  </message>
  <message>
   <source>a number</source>
   <translation>un nombre</translation>
  </message>
  <message>
   <source>a number above 0</source>
   <translation>un nombre au-dessus de 0</translation>
  </message>
  <message>
   <source>a number and a unit such as '1.5 %1'</source>
   <translation>un nombre et une unité, comme « 1.5 %1 »</translation>
  </message>
  <message>
   <source>a number below 0</source>
   <translation>un nombre sous 0</translation>
  </message>
  <message>
   <source>a number with a point as the decimal mark</source>
   <translation>un nombre avec un point décimal</translation>
  </message>
  <message>
   <source>a number with its unit in quotes</source>
   <translation>un nombre avec son unité entre guillemets</translation>
  </message>
  <message>
   <source>a part %1 mm long when its numbers are read in '%2'</source>
   <translation>une pièce longue de %1 mm si ses nombres sont lus en « %2 »</translation>
  </message>
  <message>
   <source>a part of the face that it covers</source>
   <translation>une partie de la face qu'il couvre</translation>
  </message>
  <message>
   <source>a part of the whole</source>
   <translation>une partie du tout</translation>
  </message>
  <message>
   <source>a part without faces</source>
   <translation>une pièce sans faces</translation>
  </message>
  <message>
   <source>a parting line</source>
   <translation>un plan de joint</translation>
  </message>
  <message>
   <source>a parting line that crosses itself near (%1, %2, %3) mm in its frame</source>
   <translation>un plan de joint qui se croise près de (%1, %2, %3) mm dans son repère</translation>
  </message>
  <message>
   <source>a pattern that can be cut from one layer of cloth</source>
   <translation>un patron qu'on peut couper dans une couche de tissu</translation>
  </message>
  <message>
   <source>a pattern that falls into loose pieces when it is split along the warp</source>
   <translation>un patron qui tombe en morceaux quand on le divise selon la chaîne</translation>
  </message>
  <message>
   <source>a pattern that fits the roll</source>
   <translation>un patron qui tient sur le rouleau</translation>
  </message>
  <message>
   <source>a pattern that is %1 mm wide across the warp</source>
   <translation>un patron large de %1 mm en travers de la chaîne</translation>
  </message>
  <message>
   <source>a pattern that laps over itself</source>
   <translation>un patron qui se recouvre lui-même</translation>
  </message>
  <message>
   <source>a piece with gaps</source>
   <translation>une partie avec des vides</translation>
  </message>
  <message>
   <source>a place after ply %1 of %2</source>
   <translation>une place après le pli %1 sur %2</translation>
  </message>
  <message>
   <source>a place after ply %1 with no ply that covers the whole face on one of its sides</source>
   <translation>une place après le pli %1 dont un côté n'a aucun pli couvrant toute la face</translation>
  </message>
  <message>
   <source>a place inside %1</source>
   <translation>une place dans %1</translation>
  </message>
  <message>
   <source>a place outside %1 to %2 mm</source>
   <translation>une place hors de %1 à %2 mm</translation>
  </message>
  <message>
   <source>a place outside the folder</source>
   <translation>un endroit hors du dossier</translation>
  </message>
  <message>
   <source>a place that is no number</source>
   <translation>une place qui n'est pas un nombre</translation>
  </message>
  <message>
   <source>a placement that mirrors it or squeezes it flat</source>
   <translation>un placement qui le met en miroir ou l'aplatit</translation>
  </message>
  <message>
   <source>a plain zip archive</source>
   <translation>une archive zip simple</translation>
  </message>
  <message>
   <source>a ply that covers a part of the face</source>
   <translation>un pli qui couvre une partie de la face</translation>
  </message>
  <message>
   <source>a ply that covers the whole face</source>
   <translation>un pli qui couvre toute la face</translation>
  </message>
  <message>
   <source>a point (%1, %2, %3) mm that lies %4 mm off the mesh</source>
   <translation>un point (%1, %2, %3) mm à %4 mm du maillage</translation>
  </message>
  <message>
   <source>a point more than 1 km away</source>
   <translation>un point à plus de 1 km</translation>
  </message>
  <message>
   <source>a point on the scan</source>
   <translation>un point sur la numérisation</translation>
  </message>
  <message>
   <source>a point that is no number</source>
   <translation>un point qui n'est pas un nombre</translation>
  </message>
  <message>
   <source>a point within %1 mm of it</source>
   <translation>un point à moins de %1 mm</translation>
  </message>
  <message>
   <source>a pressure or an in-plane force</source>
   <translation>une pression ou une force dans le plan</translation>
  </message>
  <message>
   <source>a price for each cloth and the resin</source>
   <translation>un prix pour chaque tissu et la résine</translation>
  </message>
  <message>
   <source>a price per %1</source>
   <translation>un prix par %1</translation>
  </message>
  <message>
   <source>a process with a bag</source>
   <translation>un procédé sous bâche</translation>
  </message>
  <message>
   <source>a quantity in %1</source>
   <translation>une grandeur en %1</translation>
  </message>
  <message>
   <source>a record that was written here</source>
   <translation>une fiche écrite ici</translation>
  </message>
  <message>
   <source>a record whose %1 does not rise throughout</source>
   <translation>un relevé dont %1 ne croît pas partout</translation>
  </message>
  <message>
   <source>a region smaller than its triangles</source>
   <translation>une région plus petite que ses triangles</translation>
  </message>
  <message>
   <source>a region that cloth can be cut for</source>
   <translation>une région pour laquelle on peut couper du tissu</translation>
  </message>
  <message>
   <source>a registration cone</source>
   <translation>un cône de repérage</translation>
  </message>
  <message>
   <source>a result that is up to date</source>
   <translation>un résultat à jour</translation>
  </message>
  <message>
   <source>a roll width</source>
   <translation>une largeur de rouleau</translation>
  </message>
  <message>
   <source>a run-off of %1 mm that folds over</source>
   <translation>un débord de %1 mm qui se replie</translation>
  </message>
  <message>
   <source>a run-off of %1 mm that runs into itself</source>
   <translation>un débord de %1 mm qui se rencontre</translation>
  </message>
  <message>
   <source>a scale needs ascending limits and one colour more than limits</source>
   <translation>une échelle veut des limites croissantes et une couleur de plus que de limites</translation>
  </message>
  <message>
   <source>a section [%1] with keys and values</source>
   <translation>une section [%1] avec clés et valeurs</translation>
  </message>
  <message>
   <source>a section of its own</source>
   <translation>une section à soi</translation>
  </message>
  <message>
   <source>a section with point and direction</source>
   <translation>une section avec point et direction</translation>
  </message>
  <message>
   <source>a shape that does not close into a solid</source>
   <translation>une forme qui ne se ferme pas en solide</translation>
  </message>
  <message>
   <source>a share from 0 to 1</source>
   <translation>une part de 0 à 1</translation>
  </message>
  <message>
   <source>a share from 0.05 to 1</source>
   <translation>une part de 0.05 à 1</translation>
  </message>
  <message>
   <source>a share of the laminate's mass from 0.05 to 0.95</source>
   <translation>une part de la masse du stratifié de 0.05 à 0.95</translation>
  </message>
  <message>
   <source>a sharp edge</source>
   <translation>une arête vive</translation>
  </message>
  <message>
   <source>a sheet of %1 x %2 mm</source>
   <translation>une feuille de %1 x %2 mm</translation>
  </message>
  <message>
   <source>a sheet that cuts %1 mm^2 into the working areas</source>
   <translation>une surface de joint qui entame les surfaces de travail de %1 mm²</translation>
  </message>
  <message>
   <source>a sheet that meets them in the parting lines only</source>
   <translation>une surface de joint qui ne les rencontre qu'aux plans de joint</translation>
  </message>
  <message>
   <source>a shorter one</source>
   <translation>un nom plus court</translation>
  </message>
  <message>
   <source>a simple outline</source>
   <translation>un contour simple</translation>
  </message>
  <message>
   <source>a single value</source>
   <translation>une valeur unique</translation>
  </message>
  <message>
   <source>a size that is none</source>
   <translation>une taille qui n'en est pas une</translation>
  </message>
  <message>
   <source>a smooth, sealed mould lets go from 1 deg on, and 2 to 3 deg are preferred (common practice)</source>
   <translation>un moule lisse et bouché libère dès 1°, 2 à 3° sont préférés (pratique courante)</translation>
  </message>
  <message>
   <source>a start %1 mm away from every edge</source>
   <translation>un départ à %1 mm de tout bord</translation>
  </message>
  <message>
   <source>a start before its end</source>
   <translation>un début avant sa fin</translation>
  </message>
  <message>
   <source>a stored %1</source>
   <translation>un %1 enregistré</translation>
  </message>
  <message>
   <source>a straight edge, a flat or a round face</source>
   <translation>une arête droite, une face plane ou ronde</translation>
  </message>
  <message>
   <source>a strength in bending</source>
   <translation>une résistance en flexion</translation>
  </message>
  <message>
   <source>a surface</source>
   <translation>une surface</translation>
  </message>
  <message>
   <source>a surface that closes on itself</source>
   <translation>une surface qui se referme sur elle-même</translation>
  </message>
  <message>
   <source>a surface that folds over when it is opened</source>
   <translation>une surface qui se replie quand on l'ouvre</translation>
  </message>
  <message>
   <source>a surface that lies flat apart from holes</source>
   <translation>une surface à plat à part des trous</translation>
  </message>
  <message>
   <source>a surface with a tunnel through it</source>
   <translation>une surface traversée d'un tunnel</translation>
  </message>
  <message>
   <source>a surface with an open edge</source>
   <translation>une surface avec un bord ouvert</translation>
  </message>
  <message>
   <source>a surface with at most two triangles on every edge and two sides</source>
   <translation>une surface avec au plus deux triangles par arête et deux côtés</translation>
  </message>
  <message>
   <source>a surface without triangles has no distance</source>
   <translation>une surface sans triangles n'a pas de distance</translation>
  </message>
  <message>
   <source>a table with one line for each reading</source>
   <translation>un tableau avec une ligne par lecture</translation>
  </message>
  <message>
   <source>a temperature</source>
   <translation>une température</translation>
  </message>
  <message>
   <source>a text</source>
   <translation>un texte</translation>
  </message>
  <message>
   <source>a text in quotes</source>
   <translation>un texte entre guillemets</translation>
  </message>
  <message>
   <source>a text table</source>
   <translation>un tableau en texte</translation>
  </message>
  <message>
   <source>a text that cannot be read (%1)</source>
   <translation>un texte illisible (%1)</translation>
  </message>
  <message>
   <source>a tile with gaps</source>
   <translation>une tuile avec des vides</translation>
  </message>
  <message>
   <source>a time such as 08:00</source>
   <translation>une heure telle que 08:00</translation>
  </message>
  <message>
   <source>a trial</source>
   <translation>un essai</translation>
  </message>
  <message>
   <source>a triangle of point %1 in %2 points</source>
   <translation>un triangle au point %1 sur %2 points</translation>
  </message>
  <message>
   <source>a triangle that names a point which does not exist</source>
   <translation>un triangle qui nomme un point inexistant</translation>
  </message>
  <message>
   <source>a trim edge that crosses itself seen along the pull</source>
   <translation>un bord de détourage qui se croise vu selon le démoulage</translation>
  </message>
  <message>
   <source>a trim edge that encloses a clear area, its mouth along the pull</source>
   <translation>un bord de détourage qui enclôt une aire nette, l'ouverture selon le démoulage</translation>
  </message>
  <message>
   <source>a turn and a shift</source>
   <translation>une rotation et une translation</translation>
  </message>
  <message>
   <source>a unit such as %1</source>
   <translation>une unité telle que %1</translation>
  </message>
  <message>
   <source>a value</source>
   <translation>une valeur</translation>
  </message>
  <message>
   <source>a volume of %1 mm^3</source>
   <translation>un volume de %1 mm³</translation>
  </message>
  <message>
   <source>a volume of %1 x %2 x %3 mm</source>
   <translation>un volume de %1 x %2 x %3 mm</translation>
  </message>
  <message>
   <source>a whole mesh file</source>
   <translation>un fichier de maillage complet</translation>
  </message>
  <message>
   <source>a whole number</source>
   <translation>un nombre entier</translation>
  </message>
  <message>
   <source>a whole number from 1 on</source>
   <translation>un nombre entier à partir de 1</translation>
  </message>
  <message>
   <source>activation energy of the resin</source>
   <translation>énergie d'activation de la résine</translation>
  </message>
  <message>
   <source>add %1 = "..."</source>
   <translation>ajouter %1 = "..."</translation>
  </message>
  <message>
   <source>add a ply</source>
   <translation>ajouter un pli</translation>
  </message>
  <message>
   <source>add a record</source>
   <translation>ajouter une fiche</translation>
  </message>
  <message>
   <source>add after = 1</source>
   <translation>ajouter after = 1</translation>
  </message>
  <message>
   <source>add it</source>
   <translation>l'ajouter</translation>
  </message>
  <message>
   <source>add it to the card</source>
   <translation>l'ajouter à la fiche</translation>
  </message>
  <message>
   <source>add it to the card, or take the rule that 10 degC halve the time</source>
   <translation>l'ajouter à la fiche, ou prendre la règle que 10 °C réduisent le temps de moitié</translation>
  </message>
  <message>
   <source>add it to the job description</source>
   <translation>l'ajouter à la description de travail</translation>
  </message>
  <message>
   <source>add plies to the layup</source>
   <translation>ajouter des plis à l'empilement</translation>
  </message>
  <message>
   <source>add records of coupons</source>
   <translation>ajouter des relevés d'éprouvettes</translation>
  </message>
  <message>
   <source>add the line</source>
   <translation>ajouter la ligne</translation>
  </message>
  <message>
   <source>add the plies, the one that touches the mould first</source>
   <translation>ajouter les plis, d'abord celui qui touche le moule</translation>
  </message>
  <message>
   <source>add the points of the cut</source>
   <translation>ajouter les points de la coupe</translation>
  </message>
  <message>
   <source>add the points, the one at the edge first</source>
   <translation>ajouter les points, d'abord celui du bord</translation>
  </message>
  <message>
   <source>add them</source>
   <translation>les ajouter</translation>
  </message>
  <message>
   <source>add them from coupons of your own or leave out the strength check</source>
   <translation>les ajouter d'après ses éprouvettes ou omettre la vérification de résistance</translation>
  </message>
  <message>
   <source>add what is missing and take out the rest</source>
   <translation>ajouter ce qui manque et ôter le reste</translation>
  </message>
  <message>
   <source>adhesive tape</source>
   <translation>ruban adhésif</translation>
  </message>
  <message>
   <source>air port</source>
   <translation>prise d'air</translation>
  </message>
  <message>
   <source>allow fewer cloths, angles or plies</source>
   <translation>permettre moins de tissus, d'angles ou de plis</translation>
  </message>
  <message>
   <source>allow more pieces</source>
   <translation>permettre plus de parties</translation>
  </message>
  <message>
   <source>allow more pieces, or change the part</source>
   <translation>permettre plus de parties ou modifier la pièce</translation>
  </message>
  <message>
   <source>allow one piece more or fewer, turn the pull, or add draft where they meet</source>
   <translation>autoriser une partie de plus ou de moins, tourner le démoulage ou ajouter de la dépouille là où elles se rencontrent</translation>
  </message>
  <message>
   <source>allow smaller tiles, choose another printer or move what bars the cuts</source>
   <translation>permettre des tuiles plus petites, choisir une autre imprimante ou déplacer ce qui gêne les coupes</translation>
  </message>
  <message>
   <source>along the edge</source>
   <translation>le long du bord</translation>
  </message>
  <message>
   <source>an angle of %1</source>
   <translation>un angle de %1</translation>
  </message>
  <message>
   <source>an archive that cannot be read (%1)</source>
   <translation>une archive illisible (%1)</translation>
  </message>
  <message>
   <source>an area of %1 mm^2</source>
   <translation>une aire de %1 mm²</translation>
  </message>
  <message>
   <source>an area that is off by %1 mm</source>
   <translation>une surface qui s'écarte de %1 mm</translation>
  </message>
  <message>
   <source>an array of shape %1</source>
   <translation>un tableau de forme %1</translation>
  </message>
  <message>
   <source>an array of shape %1 came where %2 was needed</source>
   <translation>un tableau de forme %1 au lieu de %2</translation>
  </message>
  <message>
   <source>an arrow across it</source>
   <translation>une flèche en travers</translation>
  </message>
  <message>
   <source>an axis with a direction</source>
   <translation>un axe avec une direction</translation>
  </message>
  <message>
   <source>an edge of the part</source>
   <translation>une arête de la pièce</translation>
  </message>
  <message>
   <source>an edge that crosses itself seen along the pull</source>
   <translation>un bord qui se croise vu selon le démoulage</translation>
  </message>
  <message>
   <source>an edge that encloses a clear area</source>
   <translation>un bord qui enclôt une aire nette</translation>
  </message>
  <message>
   <source>an edge that is less tightly curved</source>
   <translation>un bord moins fortement courbé</translation>
  </message>
  <message>
   <source>an end after its beginning</source>
   <translation>une fin après son début</translation>
  </message>
  <message>
   <source>an end behind its start, both 0 mm or more</source>
   <translation>une fin après son début, tous deux 0 mm ou plus</translation>
  </message>
  <message>
   <source>an end that lies nowhere on the face%1</source>
   <translation>une fin qui n'est nulle part sur la face%1</translation>
  </message>
  <message>
   <source>an entry '%1'</source>
   <translation>une entrée « %1 »</translation>
  </message>
  <message>
   <source>an error of %1 at most</source>
   <translation>une erreur de %1 au plus</translation>
  </message>
  <message>
   <source>an even wet coat, no puddles</source>
   <translation>une couche mouillée régulière, sans flaques</translation>
  </message>
  <message>
   <source>an inside radius of more than %1 mm</source>
   <translation>un rayon intérieur de plus de %1 mm</translation>
  </message>
  <message>
   <source>an item, a price and its unit, such as 'Peel ply = 4.20 per m^2'</source>
   <translation>un article, un prix et son unité, comme 'Peel ply = 4.20 per m^2'</translation>
  </message>
  <message>
   <source>an object of a newer Laywright (schema %1)</source>
   <translation>un objet d'un Laywright plus récent (schéma %1)</translation>
  </message>
  <message>
   <source>an offcut</source>
   <translation>une chute</translation>
  </message>
  <message>
   <source>an offset with gaps</source>
   <translation>un décalage avec des vides</translation>
  </message>
  <message>
   <source>an outline along which the run-off lies open</source>
   <translation>un contour où le débord est ouvert</translation>
  </message>
  <message>
   <source>an outline that crosses itself</source>
   <translation>un contour qui se croise</translation>
  </message>
  <message>
   <source>an outline that crosses itself, seen along the pull</source>
   <translation>un contour qui se croise, vu selon le démoulage</translation>
  </message>
  <message>
   <source>an outline that passes each place once</source>
   <translation>un contour qui passe une fois par chaque endroit</translation>
  </message>
  <message>
   <source>an outline that passes each point once</source>
   <translation>un contour qui passe une fois par chaque point</translation>
  </message>
  <message>
   <source>an outline that touches itself at (%1, %2, %3) mm</source>
   <translation>un contour qui se touche en (%1, %2, %3) mm</translation>
  </message>
  <message>
   <source>and</source>
   <translation>et</translation>
  </message>
  <message>
   <source>and %1 more</source>
   <translation>et %1 de plus</translation>
  </message>
  <message>
   <source>another format</source>
   <translation>un autre format</translation>
  </message>
  <message>
   <source>area (mm2)</source>
   <translation>aire (mm²)</translation>
  </message>
  <message>
   <source>ask for less, or allow more plies, other cloths or a core</source>
   <translation>demander moins, ou permettre plus de plis, d'autres tissus ou une âme</translation>
  </message>
  <message>
   <source>at least %1</source>
   <translation>au moins %1</translation>
  </message>
  <message>
   <source>at least %1 mm</source>
   <translation>au moins %1 mm</translation>
  </message>
  <message>
   <source>at least %1 mm for the least tile and its %2</source>
   <translation>au moins %1 mm pour la plus petite tuile et %2</translation>
  </message>
  <message>
   <source>at least %1, %2</source>
   <translation>au moins %1, %2</translation>
  </message>
  <message>
   <source>at least 0 mm</source>
   <translation>au moins 0 mm</translation>
  </message>
  <message>
   <source>at least 1</source>
   <translation>au moins 1</translation>
  </message>
  <message>
   <source>at least 2</source>
   <translation>au moins 2</translation>
  </message>
  <message>
   <source>at least 4</source>
   <translation>au moins 4</translation>
  </message>
  <message>
   <source>at least 4 mm</source>
   <translation>au moins 4 mm</translation>
  </message>
  <message>
   <source>at least one</source>
   <translation>au moins un</translation>
  </message>
  <message>
   <source>at least one in all</source>
   <translation>au moins un en tout</translation>
  </message>
  <message>
   <source>at least one ply on each side</source>
   <translation>au moins un pli de chaque côté</translation>
  </message>
  <message>
   <source>at least one triangle</source>
   <translation>au moins un triangle</translation>
  </message>
  <message>
   <source>at least ten steps of the scale</source>
   <translation>au moins dix pas de la balance</translation>
  </message>
  <message>
   <source>at least the least tile of %1 mm</source>
   <translation>au moins la plus petite tuile de %1 mm</translation>
  </message>
  <message>
   <source>at least three pairs of rising %1 and force</source>
   <translation>au moins trois paires de %1 et de force croissants</translation>
  </message>
  <message>
   <source>at most %1</source>
   <translation>au plus %1</translation>
  </message>
  <message>
   <source>at most %1 MPa, %2 times that through it</source>
   <translation>au plus %1 MPa, %2 fois celui à travers</translation>
  </message>
  <message>
   <source>at most %1 and every other face twice as far</source>
   <translation>au plus %1 et toute autre face deux fois plus loin</translation>
  </message>
  <message>
   <source>at most %1 mm</source>
   <translation>au plus %1 mm</translation>
  </message>
  <message>
   <source>at most %1 mm each way</source>
   <translation>au plus %1 mm dans chaque sens</translation>
  </message>
  <message>
   <source>at most %1 mm in tiles of %2 mm</source>
   <translation>au plus %1 mm pour des tuiles de %2 mm</translation>
  </message>
  <message>
   <source>at most %1 pages</source>
   <translation>au plus %1 pages</translation>
  </message>
  <message>
   <source>at most %1 x %2 x %3 mm</source>
   <translation>au plus %1 x %2 x %3 mm</translation>
  </message>
  <message>
   <source>at most one for each ply</source>
   <translation>au plus une par pli</translation>
  </message>
  <message>
   <source>at most the %1 g before trimming</source>
   <translation>au plus les %1 g avant détourage</translation>
  </message>
  <message>
   <source>at most the %1 g of cloth, mix and core that went in</source>
   <translation>au plus les %1 g de tissu, mélange et âme employés</translation>
  </message>
  <message>
   <source>at most two triangles along an edge, turned the same way</source>
   <translation>au plus deux triangles par arête, tournés du même côté</translation>
  </message>
  <message>
   <source>at the edges across x</source>
   <translation>aux bords en travers de x</translation>
  </message>
  <message>
   <source>at the edges across y</source>
   <translation>aux bords en travers de y</translation>
  </message>
  <message>
   <source>bag</source>
   <translation>bâche</translation>
  </message>
  <message>
   <source>bag film</source>
   <translation>bâche à vide</translation>
  </message>
  <message>
   <source>bag: a pleat every</source>
   <translation>bâche : un pli tous les</translation>
  </message>
  <message>
   <source>bag: beyond the part</source>
   <translation>bâche : au-delà de la pièce</translation>
  </message>
  <message>
   <source>bag: height of a pleat</source>
   <translation>bâche : hauteur d'un pli</translation>
  </message>
  <message>
   <source>bag: slack</source>
   <translation>bâche : mou</translation>
  </message>
  <message>
   <source>base down</source>
   <translation>socle en bas</translation>
  </message>
  <message>
   <source>base height</source>
   <translation>hauteur du socle</translation>
  </message>
  <message>
   <source>base on the bed</source>
   <translation>socle sur le plateau</translation>
  </message>
  <message>
   <source>base or a side on the bed</source>
   <translation>socle ou un côté sur le plateau</translation>
  </message>
  <message>
   <source>before a later part</source>
   <translation>avant une pièce suivante</translation>
  </message>
  <message>
   <source>before cutting, card '%1': skin %2 mm2 x %3 mm + %4 % of the rest = %5 cm3; %6 g; %7 h at %8 mm/s%9</source>
   <translation>avant la découpe, fiche '%1' : peau %2 mm² x %3 mm + %4 % du reste = %5 cm³ ; %6 g ; %7 h à %8 mm/s%9</translation>
  </message>
  <message>
   <source>before the second part</source>
   <translation>avant la deuxième pièce</translation>
  </message>
  <message>
   <source>below the wanted draft</source>
   <translation>sous la dépouille voulue</translation>
  </message>
  <message>
   <source>bench: %1</source>
   <translation>établi : %1</translation>
  </message>
  <message>
   <source>bending across (N mm)</source>
   <translation>flexion en travers (N mm)</translation>
  </message>
  <message>
   <source>bending along (N mm)</source>
   <translation>flexion en long (N mm)</translation>
  </message>
  <message>
   <source>bending along and across</source>
   <translation>flexion en long et en travers</translation>
  </message>
  <message>
   <source>bending over %1 mm</source>
   <translation>flexion sur %1 mm</translation>
  </message>
  <message>
   <source>bending stiffness across</source>
   <translation>raideur de flexion en travers</translation>
  </message>
  <message>
   <source>bending stiffness along</source>
   <translation>raideur de flexion en long</translation>
  </message>
  <message>
   <source>bends that open by less</source>
   <translation>plis de forme qui s'ouvrent moins</translation>
  </message>
  <message>
   <source>bent over three points</source>
   <translation>fléchi en trois points</translation>
  </message>
  <message>
   <source>blend radius of the flange</source>
   <translation>rayon de raccord de la bride</translation>
  </message>
  <message>
   <source>bolt diameter</source>
   <translation>diamètre des vis</translation>
  </message>
  <message>
   <source>bolt hole</source>
   <translation>trou de vis</translation>
  </message>
  <message>
   <source>bolt holes</source>
   <translation>trous de vis</translation>
  </message>
  <message>
   <source>bolt spacing</source>
   <translation>écart des vis</translation>
  </message>
  <message>
   <source>both faces and region</source>
   <translation>à la fois faces et région</translation>
  </message>
  <message>
   <source>bring Laywright up to date to change it; until then it is shown as it was saved</source>
   <translation>mettre Laywright à jour pour le modifier ; d'ici là il est montré tel qu'enregistré</translation>
  </message>
  <message>
   <source>bring layup and patterns into agreement</source>
   <translation>accorder empilement et patrons</translation>
  </message>
  <message>
   <source>build a Mould Body: the part leaves it along one pull</source>
   <translation>construire un corps de moule : la pièce en sort selon un seul démoulage</translation>
  </message>
  <message>
   <source>buy %1 m,</source>
   <translation>acheter %1 m,</translation>
  </message>
  <message>
   <source>card</source>
   <translation>fiche</translation>
  </message>
  <message>
   <source>cards hold strengths in tension, compression and shear: pull coupons as well</source>
   <translation>les fiches donnent les résistances en traction, compression et cisaillement : tirer aussi des éprouvettes</translation>
  </message>
  <message>
   <source>change the least tile size a little and try again</source>
   <translation>changer un peu la plus petite tuile et réessayer</translation>
  </message>
  <message>
   <source>check Poisson's ratio and the two moduli</source>
   <translation>vérifier le coefficient de Poisson et les deux modules</translation>
  </message>
  <message>
   <source>check both numbers and their units</source>
   <translation>vérifier les deux nombres et leurs unités</translation>
  </message>
  <message>
   <source>check it</source>
   <translation>le vérifier</translation>
  </message>
  <message>
   <source>check its name and folder</source>
   <translation>vérifier son nom et son dossier</translation>
  </message>
  <message>
   <source>check that the drawing is in mm, or have it plotted on a roll</source>
   <translation>vérifier que le dessin est en mm, ou le faire tracer sur rouleau</translation>
  </message>
  <message>
   <source>check that the drawing is in mm, or use its DXF or SVG file</source>
   <translation>vérifier que le dessin est en mm, ou prendre son fichier DXF ou SVG</translation>
  </message>
  <message>
   <source>check the face</source>
   <translation>vérifier la face</translation>
  </message>
  <message>
   <source>check the layup</source>
   <translation>vérifier l'empilement</translation>
  </message>
  <message>
   <source>check the list</source>
   <translation>vérifier la liste</translation>
  </message>
  <message>
   <source>check the mould</source>
   <translation>vérifier le moule</translation>
  </message>
  <message>
   <source>check the number and its unit</source>
   <translation>vérifier le nombre et son unité</translation>
  </message>
  <message>
   <source>check the path</source>
   <translation>vérifier le chemin</translation>
  </message>
  <message>
   <source>check the picked faces for gaps and folds</source>
   <translation>chercher vides et replis dans les faces choisies</translation>
  </message>
  <message>
   <source>check the unit</source>
   <translation>vérifier l'unité</translation>
  </message>
  <message>
   <source>check the unit of the part: millimetres, metres or inches</source>
   <translation>vérifier l'unité de la pièce : millimètres, mètres ou pouces</translation>
  </message>
  <message>
   <source>check the unit: 1 kPa is 0.001 MPa</source>
   <translation>vérifier l'unité : 1 kPa vaut 0.001 MPa</translation>
  </message>
  <message>
   <source>check the weighing</source>
   <translation>vérifier la pesée</translation>
  </message>
  <message>
   <source>check them</source>
   <translation>les vérifier</translation>
  </message>
  <message>
   <source>check width, thickness, span and units</source>
   <translation>vérifier largeur, épaisseur, portée et unités</translation>
  </message>
  <message>
   <source>checking the pieces</source>
   <translation>contrôle des parties</translation>
  </message>
  <message>
   <source>choice of layups</source>
   <translation>choix d'empilements</translation>
  </message>
  <message>
   <source>choose a cloth of the layup</source>
   <translation>choisir un tissu de l'empilement</translation>
  </message>
  <message>
   <source>choose a larger printer</source>
   <translation>choisir une imprimante plus grande</translation>
  </message>
  <message>
   <source>choose a larger printer or allow smaller tiles</source>
   <translation>choisir une imprimante plus grande ou permettre des tuiles plus petites</translation>
  </message>
  <message>
   <source>choose a larger printer, smaller tiles or smaller joints</source>
   <translation>choisir une imprimante plus grande, des tuiles ou des assemblages plus petits</translation>
  </message>
  <message>
   <source>choose another</source>
   <translation>en choisir un autre</translation>
  </message>
  <message>
   <source>choose another card or write one</source>
   <translation>choisir une autre fiche ou en écrire une</translation>
  </message>
  <message>
   <source>choose another file</source>
   <translation>choisir un autre fichier</translation>
  </message>
  <message>
   <source>choose another folder</source>
   <translation>choisir un autre dossier</translation>
  </message>
  <message>
   <source>choose another folder, or close the program that holds the file open</source>
   <translation>choisir un autre dossier, ou fermer le programme qui tient le fichier ouvert</translation>
  </message>
  <message>
   <source>choose another folder; the old file is unchanged</source>
   <translation>choisir un autre dossier ; l'ancien fichier est inchangé</translation>
  </message>
  <message>
   <source>choose another name</source>
   <translation>choisir un autre nom</translation>
  </message>
  <message>
   <source>choose another printer</source>
   <translation>choisir une autre imprimante</translation>
  </message>
  <message>
   <source>choose another process</source>
   <translation>choisir un autre procédé</translation>
  </message>
  <message>
   <source>choose one</source>
   <translation>en choisir un</translation>
  </message>
  <message>
   <source>choose one of them</source>
   <translation>en choisir un parmi eux</translation>
  </message>
  <message>
   <source>choose one of these</source>
   <translation>choisir l'un d'eux</translation>
  </message>
  <message>
   <source>choose one of these or add a card</source>
   <translation>choisir l'un d'eux ou ajouter une fiche</translation>
  </message>
  <message>
   <source>clamped thickness</source>
   <translation>épaisseur serrée</translation>
  </message>
  <message>
   <source>clean the record</source>
   <translation>nettoyer le relevé</translation>
  </message>
  <message>
   <source>close the hole in the part or set another pull direction</source>
   <translation>boucher le trou de la pièce ou choisir un autre démoulage</translation>
  </message>
  <message>
   <source>close the mesh before it is written</source>
   <translation>fermer le maillage avant de l'écrire</translation>
  </message>
  <message>
   <source>closing of bends</source>
   <translation>fermeture des plis de forme</translation>
  </message>
  <message>
   <source>cloth and angle</source>
   <translation>tissu et angle</translation>
  </message>
  <message>
   <source>cloth for %1 parts and %2 mirrored ones; everything else in this job is for one part</source>
   <translation>tissu pour %1 pièces et %2 en miroir ; tout le reste de ce travail est pour une pièce</translation>
  </message>
  <message>
   <source>cloth for ply %1</source>
   <translation>tissu pour le pli %1</translation>
  </message>
  <message>
   <source>cloth line</source>
   <translation>ligne du tissu</translation>
  </message>
  <message>
   <source>cloth margin</source>
   <translation>marge du tissu</translation>
  </message>
  <message>
   <source>cloth short of locking</source>
   <translation>tissu avant blocage</translation>
  </message>
  <message>
   <source>cloth: length along the warp x width</source>
   <translation>tissu : longueur selon la chaîne x largeur</translation>
  </message>
  <message>
   <source>cloth: start to end, and where wanted: across low to high</source>
   <translation>tissu : début à fin et si voulu : en travers de à</translation>
  </message>
  <message>
   <source>cloth: width</source>
   <translation>tissu : largeur</translation>
  </message>
  <message>
   <source>coarsen the mesh of the picked faces a little and try again</source>
   <translation>grossir un peu le maillage des faces choisies et réessayer</translation>
  </message>
  <message>
   <source>coats of primer</source>
   <translation>couches d'apprêt</translation>
  </message>
  <message>
   <source>coats of sealer</source>
   <translation>couches de bouche-pores</translation>
  </message>
  <message>
   <source>complete the list</source>
   <translation>compléter la liste</translation>
  </message>
  <message>
   <source>complete the list in the order of the page 'Cut cloth'</source>
   <translation>compléter la liste dans l'ordre de la page « Couper le tissu »</translation>
  </message>
  <message>
   <source>complete the weigh-in</source>
   <translation>compléter la pesée</translation>
  </message>
  <message>
   <source>cone diameter</source>
   <translation>diamètre des cônes</translation>
  </message>
  <message>
   <source>core</source>
   <translation>âme</translation>
  </message>
  <message>
   <source>core thickness</source>
   <translation>épaisseur de l'âme</translation>
  </message>
  <message>
   <source>core, crushed</source>
   <translation>âme, écrasée</translation>
  </message>
  <message>
   <source>core, sheared</source>
   <translation>âme, cisaillée</translation>
  </message>
  <message>
   <source>correct it</source>
   <translation>le corriger</translation>
  </message>
  <message>
   <source>correct one of the two</source>
   <translation>corriger l'un des deux</translation>
  </message>
  <message>
   <source>correct that line</source>
   <translation>corriger cette ligne</translation>
  </message>
  <message>
   <source>correct the card</source>
   <translation>corriger la fiche</translation>
  </message>
  <message>
   <source>correct the cloth's card</source>
   <translation>corriger la fiche du tissu</translation>
  </message>
  <message>
   <source>correct the core</source>
   <translation>corriger l'âme</translation>
  </message>
  <message>
   <source>correct the cut</source>
   <translation>corriger la coupe</translation>
  </message>
  <message>
   <source>correct the file</source>
   <translation>corriger le fichier</translation>
  </message>
  <message>
   <source>correct the key</source>
   <translation>corriger la clé</translation>
  </message>
  <message>
   <source>correct the limit, or leave it out for that of the cloth</source>
   <translation>corriger la limite, ou l'omettre pour celle du tissu</translation>
  </message>
  <message>
   <source>correct the line</source>
   <translation>corriger la ligne</translation>
  </message>
  <message>
   <source>correct the list</source>
   <translation>corriger la liste</translation>
  </message>
  <message>
   <source>correct the name</source>
   <translation>corriger le nom</translation>
  </message>
  <message>
   <source>correct the number</source>
   <translation>corriger le nombre</translation>
  </message>
  <message>
   <source>correct the placement</source>
   <translation>corriger le placement</translation>
  </message>
  <message>
   <source>correct the ply</source>
   <translation>corriger le pli</translation>
  </message>
  <message>
   <source>correct the printer's card</source>
   <translation>corriger la fiche de l'imprimante</translation>
  </message>
  <message>
   <source>correct the setting</source>
   <translation>corriger le réglage</translation>
  </message>
  <message>
   <source>correct the settings</source>
   <translation>corriger les réglages</translation>
  </message>
  <message>
   <source>correct the side</source>
   <translation>corriger le côté</translation>
  </message>
  <message>
   <source>correct the sides</source>
   <translation>corriger les côtés</translation>
  </message>
  <message>
   <source>correct the thickness</source>
   <translation>corriger l'épaisseur</translation>
  </message>
  <message>
   <source>correct the two</source>
   <translation>corriger les deux</translation>
  </message>
  <message>
   <source>correct the two numbers</source>
   <translation>corriger les deux nombres</translation>
  </message>
  <message>
   <source>correct the two times</source>
   <translation>corriger les deux durées</translation>
  </message>
  <message>
   <source>correct the unit</source>
   <translation>corriger l'unité</translation>
  </message>
  <message>
   <source>correct the value or the range</source>
   <translation>corriger la valeur ou le domaine</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>coût</translation>
  </message>
  <message>
   <source>coupon</source>
   <translation>éprouvette</translation>
  </message>
  <message>
   <source>coupon %1</source>
   <translation>éprouvette %1</translation>
  </message>
  <message>
   <source>coupon %1: %2</source>
   <translation>éprouvette %1 : %2</translation>
  </message>
  <message>
   <source>coupon %1: span</source>
   <translation>éprouvette %1 : portée</translation>
  </message>
  <message>
   <source>coupon test</source>
   <translation>essai d'éprouvettes</translation>
  </message>
  <message>
   <source>cup %1 for %2: stir at %3 min, resin to %4 g, hardener to %5 g, use within %6 min</source>
   <translation>gobelet %1 pour %2 : mélanger à %3 min, résine jusqu'à %4 g, durcisseur jusqu'à %5 g, utiliser en %6 min</translation>
  </message>
  <message>
   <source>cup limit</source>
   <translation>limite du gobelet</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>coupe</translation>
  </message>
  <message>
   <source>cut %1 in %2</source>
   <translation>coupe %1 dans %2</translation>
  </message>
  <message>
   <source>cut in every ply</source>
   <translation>coupe dans chaque pli</translation>
  </message>
  <message>
   <source>cut in ply %1</source>
   <translation>coupe dans le pli %1</translation>
  </message>
  <message>
   <source>cut it into pieces from edge to edge, or move the start point</source>
   <translation>le couper en morceaux de bord à bord, ou déplacer le point de départ</translation>
  </message>
  <message>
   <source>cuts</source>
   <translation>coupes</translation>
  </message>
  <message>
   <source>cuts %1 mm apart beside what no cut may pass</source>
   <translation>coupes écartées de %1 mm à côté de ce qu'aucune coupe ne doit traverser</translation>
  </message>
  <message>
   <source>cuts apart</source>
   <translation>écart des coupes</translation>
  </message>
  <message>
   <source>cutting lines and bores</source>
   <translation>lignes de coupe et perçages</translation>
  </message>
  <message>
   <source>date</source>
   <translation>date</translation>
  </message>
  <message>
   <source>datum arrow</source>
   <translation>flèche de référence</translation>
  </message>
  <message>
   <source>datum edge</source>
   <translation>arête de référence</translation>
  </message>
  <message>
   <source>datum figure</source>
   <translation>chiffre de la flèche de référence</translation>
  </message>
  <message>
   <source>datum tick</source>
   <translation>trait de la flèche de référence</translation>
  </message>
  <message>
   <source>decimal commas between commas cannot be told apart: export it with semicolons</source>
   <translation>les virgules décimales entre virgules ne se distinguent pas : exporter avec des points-virgules</translation>
  </message>
  <message>
   <source>deflection</source>
   <translation>flèche</translation>
  </message>
  <message>
   <source>degC</source>
   <translation>°C</translation>
  </message>
  <message>
   <source>depth of the texture</source>
   <translation>profondeur de la texture</translation>
  </message>
  <message>
   <source>diameter of the feet</source>
   <translation>diamètre des pieds</translation>
  </message>
  <message>
   <source>dividing the surface</source>
   <translation>division de la surface</translation>
  </message>
  <message>
   <source>doubled triangles</source>
   <translation>triangles doublés</translation>
  </message>
  <message>
   <source>dowel clearance</source>
   <translation>jeu des goujons</translation>
  </message>
  <message>
   <source>dowel depth</source>
   <translation>profondeur des goujons</translation>
  </message>
  <message>
   <source>dowel diameter</source>
   <translation>diamètre des goujons</translation>
  </message>
  <message>
   <source>drape the layup again</source>
   <translation>draper de nouveau l'empilement</translation>
  </message>
  <message>
   <source>draped laminate</source>
   <translation>stratifié drapé</translation>
  </message>
  <message>
   <source>draping %1</source>
   <translation>drapage de %1</translation>
  </message>
  <message>
   <source>drop-off of the plies</source>
   <translation>échelonnement des plis</translation>
  </message>
  <message>
   <source>dry cloth</source>
   <translation>tissu sec</translation>
  </message>
  <message>
   <source>drying of the film</source>
   <translation>séchage du film</translation>
  </message>
  <message>
   <source>ear height</source>
   <translation>hauteur d'oreille</translation>
  </message>
  <message>
   <source>ear reach</source>
   <translation>portée d'oreille</translation>
  </message>
  <message>
   <source>ear thickness</source>
   <translation>épaisseur d'oreille</translation>
  </message>
  <message>
   <source>edge can neither turn nor shift</source>
   <translation>bord sans rotation ni glissement</translation>
  </message>
  <message>
   <source>edge can turn but not shift</source>
   <translation>bord libre en rotation, sans glissement</translation>
  </message>
  <message>
   <source>edges with more than two triangles</source>
   <translation>arêtes avec plus de deux triangles</translation>
  </message>
  <message>
   <source>elements of the shell</source>
   <translation>éléments de la coque</translation>
  </message>
  <message>
   <source>end the plies before the bend, or switch the allowance for the laminate off</source>
   <translation>finir les plis avant le pli de forme, ou désactiver la prise en compte du stratifié</translation>
  </message>
  <message>
   <source>enlarge it</source>
   <translation>l'agrandir</translation>
  </message>
  <message>
   <source>enlarge the fillet there or put the laminate on the other side</source>
   <translation>y agrandir le congé ou mettre le stratifié de l'autre côté</translation>
  </message>
  <message>
   <source>every entry of a printer card</source>
   <translation>chaque entrée d'une fiche d'imprimante</translation>
  </message>
  <message>
   <source>every part</source>
   <translation>chaque pièce</translation>
  </message>
  <message>
   <source>every ply</source>
   <translation>chaque pli</translation>
  </message>
  <message>
   <source>every ply along the datum arrow</source>
   <translation>chaque pli selon la flèche</translation>
  </message>
  <message>
   <source>expansion of the plastic</source>
   <translation>dilatation du plastique</translation>
  </message>
  <message>
   <source>export it again</source>
   <translation>l'exporter de nouveau</translation>
  </message>
  <message>
   <source>export it as CSV or text</source>
   <translation>l'exporter en CSV ou en texte</translation>
  </message>
  <message>
   <source>export it as such</source>
   <translation>l'exporter ainsi</translation>
  </message>
  <message>
   <source>export it as text with semicolons between the columns</source>
   <translation>l'exporter en texte avec des points-virgules entre colonnes</translation>
  </message>
  <message>
   <source>export less of it</source>
   <translation>en exporter moins</translation>
  </message>
  <message>
   <source>extent of a ply</source>
   <translation>étendue d'un pli</translation>
  </message>
  <message>
   <source>extents</source>
   <translation>étendues</translation>
  </message>
  <message>
   <source>extra for losses</source>
   <translation>supplément pour pertes</translation>
  </message>
  <message>
   <source>extra share</source>
   <translation>part en plus</translation>
  </message>
  <message>
   <source>face at the mould, wrinkling</source>
   <translation>peau côté moule, plissement</translation>
  </message>
  <message>
   <source>face away from it, wrinkling</source>
   <translation>peau opposée, plissement</translation>
  </message>
  <message>
   <source>face%1 %2</source>
   <translation>face%1 %2</translation>
  </message>
  <message>
   <source>faces that a ply covers</source>
   <translation>faces qu'un pli couvre</translation>
  </message>
  <message>
   <source>faces that close into a shell</source>
   <translation>faces qui se ferment en coque</translation>
  </message>
  <message>
   <source>faces with an open edge, so that the part can leave the mould</source>
   <translation>des faces avec un bord ouvert, pour que la pièce puisse sortir du moule</translation>
  </message>
  <message>
   <source>far side</source>
   <translation>côté opposé</translation>
  </message>
  <message>
   <source>fault in the roll of %1</source>
   <translation>défaut dans le rouleau de %1</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>pieds</translation>
  </message>
  <message>
   <source>fibre volume</source>
   <translation>volume de fibres</translation>
  </message>
  <message>
   <source>fibres %1</source>
   <translation>fibres %1</translation>
  </message>
  <message>
   <source>fill coat</source>
   <translation>couche de bouchage</translation>
  </message>
  <message>
   <source>fill coats</source>
   <translation>couches de bouchage</translation>
  </message>
  <message>
   <source>fill it in</source>
   <translation>le remplir</translation>
  </message>
  <message>
   <source>fill the sheet first</source>
   <translation>remplir d'abord la feuille</translation>
  </message>
  <message>
   <source>filled hole</source>
   <translation>trou bouché</translation>
  </message>
  <message>
   <source>finding regions</source>
   <translation>recherche de régions</translation>
  </message>
  <message>
   <source>finding the best pull</source>
   <translation>recherche du meilleur démoulage</translation>
  </message>
  <message>
   <source>finite coordinates</source>
   <translation>coordonnées finies</translation>
  </message>
  <message>
   <source>finite coordinates in mm</source>
   <translation>coordonnées finies en mm</translation>
  </message>
  <message>
   <source>finite numbers</source>
   <translation>nombres finis</translation>
  </message>
  <message>
   <source>five strengths</source>
   <translation>cinq résistances</translation>
  </message>
  <message>
   <source>fixed loss</source>
   <translation>perte fixe</translation>
  </message>
  <message>
   <source>flange</source>
   <translation>bride</translation>
  </message>
  <message>
   <source>flange width</source>
   <translation>largeur de bride</translation>
  </message>
  <message>
   <source>flat pattern of %1</source>
   <translation>patron à plat de %1</translation>
  </message>
  <message>
   <source>flat with clamp ears</source>
   <translation>à plat avec oreilles de serrage</translation>
  </message>
  <message>
   <source>flow mesh</source>
   <translation>filet drainant</translation>
  </message>
  <message>
   <source>for each %1 degC</source>
   <translation>pour chaque %1 °C</translation>
  </message>
  <message>
   <source>forces, strains or a panel</source>
   <translation>forces, déformations ou un panneau</translation>
  </message>
  <message>
   <source>free it</source>
   <translation>le libérer</translation>
  </message>
  <message>
   <source>free some space and recompute</source>
   <translation>libérer de la place et recalculer</translation>
  </message>
  <message>
   <source>free some space; the old file is unchanged</source>
   <translation>libérer de la place ; l'ancien fichier est inchangé</translation>
  </message>
  <message>
   <source>further in</source>
   <translation>plus à l'intérieur</translation>
  </message>
  <message>
   <source>further out</source>
   <translation>plus à l'extérieur</translation>
  </message>
  <message>
   <source>g/m^2</source>
   <translation>g/m²</translation>
  </message>
  <message>
   <source>gauge length</source>
   <translation>longueur de mesure</translation>
  </message>
  <message>
   <source>gelled after</source>
   <translation>gélifié après</translation>
  </message>
  <message>
   <source>give it</source>
   <translation>le donner</translation>
  </message>
  <message>
   <source>give it a name</source>
   <translation>lui donner un nom</translation>
  </message>
  <message>
   <source>give it as a share of volume</source>
   <translation>le donner en part de volume</translation>
  </message>
  <message>
   <source>give it more resin</source>
   <translation>lui donner plus de résine</translation>
  </message>
  <message>
   <source>give it one</source>
   <translation>en donner un</translation>
  </message>
  <message>
   <source>give one cell per column</source>
   <translation>donner une cellule par colonne</translation>
  </message>
  <message>
   <source>give one of each</source>
   <translation>donner un de chaque</translation>
  </message>
  <message>
   <source>give the job a name</source>
   <translation>donner un nom au travail</translation>
  </message>
  <message>
   <source>give the number with such a unit</source>
   <translation>donner le nombre avec une telle unité</translation>
  </message>
  <message>
   <source>give the ply a dart or a splice</source>
   <translation>donner au pli une pince ou une jonction</translation>
  </message>
  <message>
   <source>give the price in the unit of the shopping list</source>
   <translation>donner le prix dans l'unité de la liste d'achats</translation>
  </message>
  <message>
   <source>give the share of the strength that is left</source>
   <translation>donner la part de résistance restante</translation>
  </message>
  <message>
   <source>give them</source>
   <translation>les donner</translation>
  </message>
  <message>
   <source>glue density</source>
   <translation>densité de la colle</translation>
  </message>
  <message>
   <source>glue gap</source>
   <translation>joint de colle</translation>
  </message>
  <message>
   <source>grits</source>
   <translation>grains</translation>
  </message>
  <message>
   <source>growth of the mould at cure temperature</source>
   <translation>dilatation du moule à la température de cuisson</translation>
  </message>
  <message>
   <source>handling a piece</source>
   <translation>manipulation d'un morceau</translation>
  </message>
  <message>
   <source>hardness of the cured resin</source>
   <translation>dureté de la résine durcie</translation>
  </message>
  <message>
   <source>hardness of the part</source>
   <translation>dureté de la pièce</translation>
  </message>
  <message>
   <source>have cuts proposed and made, cut the ply from edge to edge, or move the start point</source>
   <translation>faire proposer et faire les coupes, couper le pli de bord à bord, ou déplacer le point de départ</translation>
  </message>
  <message>
   <source>head bore</source>
   <translation>lamage</translation>
  </message>
  <message>
   <source>height of the feet</source>
   <translation>hauteur des pieds</translation>
  </message>
  <message>
   <source>holes</source>
   <translation>trous</translation>
  </message>
  <message>
   <source>holes closed</source>
   <translation>trous bouchés</translation>
  </message>
  <message>
   <source>hollow with ribs</source>
   <translation>creux à nervures</translation>
  </message>
  <message>
   <source>hollowing the pieces</source>
   <translation>évidement des parties</translation>
  </message>
  <message>
   <source>hours of the filler</source>
   <translation>heures du mastic</translation>
  </message>
  <message>
   <source>hours of the primer</source>
   <translation>heures de l'apprêt</translation>
  </message>
  <message>
   <source>hours of the sealer</source>
   <translation>heures du bouche-pores</translation>
  </message>
  <message>
   <source>humidity of the shop</source>
   <translation>humidité de l'atelier</translation>
  </message>
  <message>
   <source>in the middle</source>
   <translation>au milieu</translation>
  </message>
  <message>
   <source>infill share of printer %1</source>
   <translation>taux de remplissage de l'imprimante %1</translation>
  </message>
  <message>
   <source>inscription</source>
   <translation>inscription</translation>
  </message>
  <message>
   <source>inside (plug)</source>
   <translation>intérieur (moule mâle)</translation>
  </message>
  <message>
   <source>inside the part</source>
   <translation>dans la pièce</translation>
  </message>
  <message>
   <source>it holds %1</source>
   <translation>il contient %1</translation>
  </message>
  <message>
   <source>it may stay dry</source>
   <translation>il peut rester sec</translation>
  </message>
  <message>
   <source>it will be heavy and weak</source>
   <translation>il sera lourd et faible</translation>
  </message>
  <message>
   <source>it will curl %1, a flat strip of %2 mm %3 the datum arrow rises by about %4 mm %5</source>
   <translation>il se cintre %1, une bande plane de %2 mm %3 de la flèche se relève d'environ %4 mm %5</translation>
  </message>
  <message>
   <source>it will twist %1, a flat square of %2 mm lifts a corner by about %3 mm %4</source>
   <translation>il se vrille %1, un carré plan de %2 mm relève un coin d'environ %3 mm %4</translation>
  </message>
  <message>
   <source>joint coupon</source>
   <translation>éprouvette d'assemblage</translation>
  </message>
  <message>
   <source>joint coupon tongue</source>
   <translation>languette de l'éprouvette d'assemblage</translation>
  </message>
  <message>
   <source>keep it on the run-off and clear of the trim line</source>
   <translation>le tenir sur le débord et à l'écart de la ligne de détourage</translation>
  </message>
  <message>
   <source>keyed tongues</source>
   <translation>languettes à clé</translation>
  </message>
  <message>
   <source>knock-down in %1</source>
   <translation>abattement en %1</translation>
  </message>
  <message>
   <source>laid edge to edge</source>
   <translation>posé bord à bord</translation>
  </message>
  <message>
   <source>lamina</source>
   <translation>lamina</translation>
  </message>
  <message>
   <source>lamina: poisson_12</source>
   <translation>lamina : coefficient de Poisson 12</translation>
  </message>
  <message>
   <source>laminate thickness</source>
   <translation>épaisseur du stratifié</translation>
  </message>
  <message>
   <source>lap of the cuts</source>
   <translation>recouvrement des coupes</translation>
  </message>
  <message>
   <source>lapped %1 mm</source>
   <translation>recouvert de %1 mm</translation>
  </message>
  <message>
   <source>lapped by %1 mm</source>
   <translation>recouvert de %1 mm</translation>
  </message>
  <message>
   <source>largest least draft, exact</source>
   <translation>plus grande dépouille minimale, exacte</translation>
  </message>
  <message>
   <source>lay it between two plies</source>
   <translation>la poser entre deux plis</translation>
  </message>
  <message>
   <source>lay it between two plies that cover the whole face</source>
   <translation>la poser entre deux plis qui couvrent toute la face</translation>
  </message>
  <message>
   <source>layer %1</source>
   <translation>couche %1</translation>
  </message>
  <message>
   <source>layer height</source>
   <translation>hauteur de couche</translation>
  </message>
  <message>
   <source>layer lines %1 mm deep run across the pull and are neither sanded nor sealed</source>
   <translation>des stries d'impression de %1 mm courent en travers du démoulage, ni poncées ni bouchées</translation>
  </message>
  <message>
   <source>layer lines across the pull</source>
   <translation>stries d'impression en travers du démoulage</translation>
  </message>
  <message>
   <source>laying a square metre</source>
   <translation>pose d'un mètre carré</translation>
  </message>
  <message>
   <source>laying the run-off</source>
   <translation>tracé du débord</translation>
  </message>
  <message>
   <source>layup</source>
   <translation>empilement</translation>
  </message>
  <message>
   <source>laywright record 1</source>
   <translation>laywright record 1</translation>
  </message>
  <message>
   <source>least cost</source>
   <translation>moindre coût</translation>
  </message>
  <message>
   <source>least mass</source>
   <translation>moindre masse</translation>
  </message>
  <message>
   <source>least thickness</source>
   <translation>moindre épaisseur</translation>
  </message>
  <message>
   <source>least tile</source>
   <translation>plus petite tuile</translation>
  </message>
  <message>
   <source>least undercut, by search</source>
   <translation>moindre contre-dépouille, par recherche</translation>
  </message>
  <message>
   <source>leave it: it does no harm</source>
   <translation>le laisser : cela ne nuit pas</translation>
  </message>
  <message>
   <source>leave one out</source>
   <translation>en omettre un</translation>
  </message>
  <message>
   <source>leave out the extent of a ply</source>
   <translation>omettre l'étendue d'un pli</translation>
  </message>
  <message>
   <source>length of the post-cure</source>
   <translation>durée de la post-cuisson</translation>
  </message>
  <message>
   <source>length that cloth is sold by</source>
   <translation>longueur de vente du tissu</translation>
  </message>
  <message>
   <source>lengthen the cut or take more triangles for the drape</source>
   <translation>allonger la coupe ou prendre plus de triangles pour le drapage</translation>
  </message>
  <message>
   <source>lengths in mm</source>
   <translation>longueurs en mm</translation>
  </message>
  <message>
   <source>less than %1, the square root of the ratio of the moduli</source>
   <translation>moins de %1, la racine du rapport des modules</translation>
  </message>
  <message>
   <source>letters A to Z, figures, '-' and '%1'</source>
   <translation>lettres A à Z, chiffres, « - » et « %1 »</translation>
  </message>
  <message>
   <source>link %1 to it</source>
   <translation>y lier %1</translation>
  </message>
  <message>
   <source>link a Release Check to it</source>
   <translation>y lier un contrôle du démoulage</translation>
  </message>
  <message>
   <source>link one</source>
   <translation>en lier un</translation>
  </message>
  <message>
   <source>load</source>
   <translation>charge</translation>
  </message>
  <message>
   <source>load case</source>
   <translation>cas de charge</translation>
  </message>
  <message>
   <source>load it from nothing up to there, or take the other window</source>
   <translation>charger de zéro jusque-là, ou prendre l'autre fenêtre</translation>
  </message>
  <message>
   <source>load to the end</source>
   <translation>charger jusqu'au bout</translation>
  </message>
  <message>
   <source>locked stiffness of the cloth</source>
   <translation>raideur de blocage du tissu</translation>
  </message>
  <message>
   <source>locking angle of the cloth</source>
   <translation>angle de blocage du tissu</translation>
  </message>
  <message>
   <source>look whether it is the right one and pick it again</source>
   <translation>voir si c'est la bonne et la choisir de nouveau</translation>
  </message>
  <message>
   <source>looking along candidate pulls</source>
   <translation>examen de démoulages possibles</translation>
  </message>
  <message>
   <source>looking along the pull</source>
   <translation>vue selon le démoulage</translation>
  </message>
  <message>
   <source>looking for a pull that releases</source>
   <translation>recherche d'un démoulage qui libère</translation>
  </message>
  <message>
   <source>looking for the best start</source>
   <translation>recherche du meilleur départ</translation>
  </message>
  <message>
   <source>loose scraps left out</source>
   <translation>bribes isolées omises</translation>
  </message>
  <message>
   <source>low, value and high in rising order</source>
   <translation>bas, valeur et haut en ordre croissant</translation>
  </message>
  <message>
   <source>lower the share by which they close, or have it listed instead of applied</source>
   <translation>baisser la part dont ils se ferment, ou la faire lister au lieu d'appliquer</translation>
  </message>
  <message>
   <source>make a closed solid</source>
   <translation>faire un solide fermé</translation>
  </message>
  <message>
   <source>make a ply for each piece</source>
   <translation>faire un pli pour chaque morceau</translation>
  </message>
  <message>
   <source>make it again in its own program</source>
   <translation>le refaire dans son propre programme</translation>
  </message>
  <message>
   <source>make it less or set a larger least tile</source>
   <translation>le réduire ou choisir une plus petite tuile plus grande</translation>
  </message>
  <message>
   <source>make one first</source>
   <translation>en faire d'abord un</translation>
  </message>
  <message>
   <source>make the body thicker, the joints smaller, or glue the tiles flat</source>
   <translation>épaissir le corps, réduire les assemblages ou coller les tuiles à plat</translation>
  </message>
  <message>
   <source>make the folder or choose another</source>
   <translation>créer le dossier ou en choisir un autre</translation>
  </message>
  <message>
   <source>make the part first</source>
   <translation>faire d'abord la pièce</translation>
  </message>
  <message>
   <source>make the patterns first</source>
   <translation>faire d'abord les patrons</translation>
  </message>
  <message>
   <source>make the tiles first</source>
   <translation>faire d'abord les tuiles</translation>
  </message>
  <message>
   <source>margin %1</source>
   <translation>marge %1</translation>
  </message>
  <message>
   <source>margin %1 of the patterns</source>
   <translation>marge %1 des patrons</translation>
  </message>
  <message>
   <source>margin of a side</source>
   <translation>marge d'un côté</translation>
  </message>
  <message>
   <source>margins of the patterns</source>
   <translation>marges des patrons</translation>
  </message>
  <message>
   <source>mark depth</source>
   <translation>profondeur des repères</translation>
  </message>
  <message>
   <source>mass (g)</source>
   <translation>masse (g)</translation>
  </message>
  <message>
   <source>mass (g/m2)</source>
   <translation>masse (g/m²)</translation>
  </message>
  <message>
   <source>material in %1</source>
   <translation>matière dans %1</translation>
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
   <source>measure a printed bar and set the share by which it is too short</source>
   <translation>mesurer une barre imprimée et donner la part dont elle est trop courte</translation>
  </message>
  <message>
   <source>measure it again</source>
   <translation>le mesurer de nouveau</translation>
  </message>
  <message>
   <source>measure it again from the free end of the roll</source>
   <translation>le mesurer de nouveau depuis le bout libre du rouleau</translation>
  </message>
  <message>
   <source>measure it, or smooth and seal the mould</source>
   <translation>le mesurer, ou lisser et boucher le moule</translation>
  </message>
  <message>
   <source>measured thickness</source>
   <translation>épaisseur mesurée</translation>
  </message>
  <message>
   <source>measuring draft</source>
   <translation>mesure de la dépouille</translation>
  </message>
  <message>
   <source>measuring the working area</source>
   <translation>mesure de la surface de travail</translation>
  </message>
  <message>
   <source>mend it first</source>
   <translation>le réparer d'abord</translation>
  </message>
  <message>
   <source>mend it or take it out of the folder</source>
   <translation>le réparer ou le retirer du dossier</translation>
  </message>
  <message>
   <source>mend the edge of the face, set another pull or split the face into two moulds</source>
   <translation>réparer le bord de la face, choisir un autre démoulage ou diviser la face en deux moules</translation>
  </message>
  <message>
   <source>mend the face in the part or pick fewer faces</source>
   <translation>réparer la face dans la pièce ou choisir moins de faces</translation>
  </message>
  <message>
   <source>mesh the face again with another deflection</source>
   <translation>remailler la face avec un autre écart</translation>
  </message>
  <message>
   <source>mesh the faces coarser, or have their spring-in listed instead of applied</source>
   <translation>mailler les faces plus gros, ou faire lister leur retrait angulaire au lieu de l'appliquer</translation>
  </message>
  <message>
   <source>metres or inches</source>
   <translation>mètres ou pouces</translation>
  </message>
  <message>
   <source>middle of a round patch</source>
   <translation>milieu d'une pièce ronde</translation>
  </message>
  <message>
   <source>middle of the face, along it</source>
   <translation>milieu de la face, le long d'elle</translation>
  </message>
  <message>
   <source>millimetres</source>
   <translation>millimètres</translation>
  </message>
  <message>
   <source>minutes</source>
   <translation>minutes</translation>
  </message>
  <message>
   <source>mix for coupons</source>
   <translation>mélange pour éprouvettes</translation>
  </message>
  <message>
   <source>mix left over</source>
   <translation>mélange restant</translation>
  </message>
  <message>
   <source>mixing plan</source>
   <translation>plan de mélange</translation>
  </message>
  <message>
   <source>mm, cm, m or in</source>
   <translation>mm, cm, m ou in</translation>
  </message>
  <message>
   <source>mm^2</source>
   <translation>mm²</translation>
  </message>
  <message>
   <source>modulus across</source>
   <translation>module en travers</translation>
  </message>
  <message>
   <source>modulus along</source>
   <translation>module en long</translation>
  </message>
  <message>
   <source>more than 0 %</source>
   <translation>plus de 0 %</translation>
  </message>
  <message>
   <source>more than 0 and at most %1</source>
   <translation>plus de 0 et au plus %1</translation>
  </message>
  <message>
   <source>more than 0 and at most %1, the densest packing of round fibres</source>
   <translation>plus de 0 et au plus %1, l'empilement le plus dense de fibres rondes</translation>
  </message>
  <message>
   <source>more than 0 and at most 90 deg</source>
   <translation>plus de 0 et au plus 90°</translation>
  </message>
  <message>
   <source>more than 0 mm</source>
   <translation>plus de 0 mm</translation>
  </message>
  <message>
   <source>more than 0 mm^3</source>
   <translation>plus de 0 mm³</translation>
  </message>
  <message>
   <source>more than its thickness</source>
   <translation>plus que son épaisseur</translation>
  </message>
  <message>
   <source>more than the %1 g of its dry cloth</source>
   <translation>plus que les %1 g de son tissu sec</translation>
  </message>
  <message>
   <source>more than the %1 minutes that mixing takes</source>
   <translation>plus que les %1 minutes que prend le mélange</translation>
  </message>
  <message>
   <source>more than twice the unused edge of %1 mm</source>
   <translation>plus du double du bord inutilisé de %1 mm</translation>
  </message>
  <message>
   <source>most bending stiffness</source>
   <translation>plus grande raideur de flexion</translation>
  </message>
  <message>
   <source>most pieces</source>
   <translation>le plus de parties</translation>
  </message>
  <message>
   <source>most plies</source>
   <translation>le plus de plis</translation>
  </message>
  <message>
   <source>mould area</source>
   <translation>aire du moule</translation>
  </message>
  <message>
   <source>mould side</source>
   <translation>côté du moule</translation>
  </message>
  <message>
   <source>move it inwards</source>
   <translation>le déplacer vers l'intérieur</translation>
  </message>
  <message>
   <source>move its first point to the edge</source>
   <translation>déplacer son premier point au bord</translation>
  </message>
  <message>
   <source>move one of them</source>
   <translation>en déplacer un</translation>
  </message>
  <message>
   <source>move the pinned cut</source>
   <translation>déplacer la coupe imposée</translation>
  </message>
  <message>
   <source>name another file</source>
   <translation>nommer un autre fichier</translation>
  </message>
  <message>
   <source>name the column or give its number</source>
   <translation>nommer la colonne ou donner son numéro</translation>
  </message>
  <message>
   <source>names from '%1' to '%2'</source>
   <translation>noms de « %1 » à « %2 »</translation>
  </message>
  <message>
   <source>names of moulded faces, such as '%1'</source>
   <translation>noms de faces moulées, tels que « %1 »</translation>
  </message>
  <message>
   <source>names such as ["Face1", "Face2"]</source>
   <translation>noms tels que ["Face1", "Face2"]</translation>
  </message>
  <message>
   <source>new or refinished</source>
   <translation>neuf ou refait</translation>
  </message>
  <message>
   <source>no</source>
   <translation>non</translation>
  </message>
  <message>
   <source>no %1</source>
   <translation>pas de %1</translation>
  </message>
  <message>
   <source>no activation energy on its card</source>
   <translation>pas d'énergie d'activation sur sa fiche</translation>
  </message>
  <message>
   <source>no area</source>
   <translation>pas d'aire</translation>
  </message>
  <message>
   <source>no axis along which they can be divided</source>
   <translation>pas d'axe selon lequel les diviser</translation>
  </message>
  <message>
   <source>no card</source>
   <translation>pas de fiche</translation>
  </message>
  <message>
   <source>no card of '%1'</source>
   <translation>pas de fiche pour « %1 »</translation>
  </message>
  <message>
   <source>no cloth or no angle</source>
   <translation>pas de tissu ou pas d'angle</translation>
  </message>
  <message>
   <source>no coupon</source>
   <translation>pas d'éprouvette</translation>
  </message>
  <message>
   <source>no coupon that broke</source>
   <translation>pas d'éprouvette cassée</translation>
  </message>
  <message>
   <source>no curve of finite points</source>
   <translation>pas de courbe de points finis</translation>
  </message>
  <message>
   <source>no curve of positive values</source>
   <translation>pas de courbe de valeurs positives</translation>
  </message>
  <message>
   <source>no date</source>
   <translation>pas de date</translation>
  </message>
  <message>
   <source>no direction in %1</source>
   <translation>pas de direction en %1</translation>
  </message>
  <message>
   <source>no drawing</source>
   <translation>pas de dessin</translation>
  </message>
  <message>
   <source>no edge</source>
   <translation>pas de bord</translation>
  </message>
  <message>
   <source>no edge or face</source>
   <translation>pas d'arête ni de face</translation>
  </message>
  <message>
   <source>no entry %1</source>
   <translation>pas d'entrée %1</translation>
  </message>
  <message>
   <source>no face of this name any more</source>
   <translation>plus de face de ce nom</translation>
  </message>
  <message>
   <source>no faces, for %1 is gone</source>
   <translation>pas de faces, car %1 a disparu</translation>
  </message>
  <message>
   <source>no file</source>
   <translation>pas de fichier</translation>
  </message>
  <message>
   <source>no folder</source>
   <translation>pas de dossier</translation>
  </message>
  <message>
   <source>no heading that says it once</source>
   <translation>pas de titre qui le dise une fois</translation>
  </message>
  <message>
   <source>no line to the other pieces</source>
   <translation>pas de ligne vers les autres parties</translation>
  </message>
  <message>
   <source>no link</source>
   <translation>pas de lien</translation>
  </message>
  <message>
   <source>no load</source>
   <translation>pas de charge</translation>
  </message>
  <message>
   <source>no mesh</source>
   <translation>pas de maillage</translation>
  </message>
  <message>
   <source>no name</source>
   <translation>pas de nom</translation>
  </message>
  <message>
   <source>no normals to hold in a cap</source>
   <translation>pas de normales à tenir dans une calotte</translation>
  </message>
  <message>
   <source>no ply</source>
   <translation>pas de pli</translation>
  </message>
  <message>
   <source>no ply that covers the whole face</source>
   <translation>pas de pli qui couvre toute la face</translation>
  </message>
  <message>
   <source>no point</source>
   <translation>pas de point</translation>
  </message>
  <message>
   <source>no prices</source>
   <translation>pas de prix</translation>
  </message>
  <message>
   <source>no result</source>
   <translation>pas de résultat</translation>
  </message>
  <message>
   <source>no room behind a wall of %1 mm</source>
   <translation>pas de place derrière une paroi de %1 mm</translation>
  </message>
  <message>
   <source>no room for a ring %1 mm wide, but %2</source>
   <translation>pas de place pour un anneau de %1 mm de large, mais %2</translation>
  </message>
  <message>
   <source>no solid</source>
   <translation>pas de solide</translation>
  </message>
  <message>
   <source>no span</source>
   <translation>pas de portée</translation>
  </message>
  <message>
   <source>no station</source>
   <translation>pas de poste</translation>
  </message>
  <message>
   <source>no strengths on its card</source>
   <translation>pas de résistances sur sa fiche</translation>
  </message>
  <message>
   <source>no such folder</source>
   <translation>pas de tel dossier</translation>
  </message>
  <message>
   <source>no such section</source>
   <translation>pas de telle section</translation>
  </message>
  <message>
   <source>no text</source>
   <translation>pas de texte</translation>
  </message>
  <message>
   <source>no triangle left</source>
   <translation>plus de triangle</translation>
  </message>
  <message>
   <source>no triangle with area</source>
   <translation>pas de triangle avec une aire</translation>
  </message>
  <message>
   <source>no triangles</source>
   <translation>pas de triangles</translation>
  </message>
  <message>
   <source>no two columns of numbers</source>
   <translation>pas deux colonnes de nombres</translation>
  </message>
  <message>
   <source>no values or one that is no number</source>
   <translation>pas de valeurs, ou une qui n'est pas un nombre</translation>
  </message>
  <message>
   <source>none</source>
   <translation>aucun</translation>
  </message>
  <message>
   <source>none for %1</source>
   <translation>aucun pour %1</translation>
  </message>
  <message>
   <source>none of %1 layups that fulfils it; they weigh %2 to %3 g/m^2 and reach %4 N mm in bending</source>
   <translation>aucun de %1 empilements qui le remplisse ; ils pèsent %2 à %3 g/m² et atteignent %4 N mm en flexion</translation>
  </message>
  <message>
   <source>none stated; a mesh does not say what its numbers mean</source>
   <translation>aucune indiquée ; un maillage ne dit pas ce que valent ses nombres</translation>
  </message>
  <message>
   <source>not applied: %1 and closes by this angle; have spring-in applied, which opens the mould by it, if it matters</source>
   <translation>non appliqué : %1 et se ferme de cet angle ; si cela importe, faire appliquer le retrait angulaire, qui ouvre le moule d'autant</translation>
  </message>
  <message>
   <source>not applied: switched off</source>
   <translation>non appliqué : désactivé</translation>
  </message>
  <message>
   <source>not applied: the mould touches the CAD face</source>
   <translation>non appliqué : le moule touche la face CAO</translation>
  </message>
  <message>
   <source>not applied: the mould touches the CAD face, the %1 mm lie on its other side</source>
   <translation>non appliqué : le moule touche la face CAO, les %1 mm sont de l'autre côté</translation>
  </message>
  <message>
   <source>not considered</source>
   <translation>non considéré</translation>
  </message>
  <message>
   <source>not cured through</source>
   <translation>pas durci à cœur</translation>
  </message>
  <message>
   <source>not decided</source>
   <translation>pas décidé</translation>
  </message>
  <message>
   <source>not stated</source>
   <translation>non indiqué</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>rien</translation>
  </message>
  <message>
   <source>nothing (%1)</source>
   <translation>rien (%1)</translation>
  </message>
  <message>
   <source>nothing is proposed</source>
   <translation>rien n'est proposé</translation>
  </message>
  <message>
   <source>nothing left on one side</source>
   <translation>rien ne reste d'un côté</translation>
  </message>
  <message>
   <source>nothing to see</source>
   <translation>rien à voir</translation>
  </message>
  <message>
   <source>number of coupons</source>
   <translation>nombre d'éprouvettes</translation>
  </message>
  <message>
   <source>number of parts</source>
   <translation>nombre de pièces</translation>
  </message>
  <message>
   <source>number of parts that are cut</source>
   <translation>nombre de pièces coupées</translation>
  </message>
  <message>
   <source>numbers in mm</source>
   <translation>nombres en mm</translation>
  </message>
  <message>
   <source>numbers that belong to no array</source>
   <translation>nombres qui n'appartiennent à aucun tableau</translation>
  </message>
  <message>
   <source>of the turn</source>
   <translation>de la rotation</translation>
  </message>
  <message>
   <source>off the mould after</source>
   <translation>hors du moule après</translation>
  </message>
  <message>
   <source>offcut %1</source>
   <translation>chute %1</translation>
  </message>
  <message>
   <source>offcut of %1</source>
   <translation>chute de %1</translation>
  </message>
  <message>
   <source>on the flange</source>
   <translation>sur la bride</translation>
  </message>
  <message>
   <source>one and the same</source>
   <translation>un seul et même</translation>
  </message>
  <message>
   <source>one card of each name</source>
   <translation>une fiche par nom</translation>
  </message>
  <message>
   <source>one cloth and no core</source>
   <translation>un tissu et pas d'âme</translation>
  </message>
  <message>
   <source>one cloth and one angle for each ply, one ply at least</source>
   <translation>un tissu et un angle par pli, un pli au moins</translation>
  </message>
  <message>
   <source>one connected piece</source>
   <translation>un seul tenant</translation>
  </message>
  <message>
   <source>one face at least</source>
   <translation>au moins une face</translation>
  </message>
  <message>
   <source>one fibre</source>
   <translation>une fibre</translation>
  </message>
  <message>
   <source>one for each cloth</source>
   <translation>un par tissu</translation>
  </message>
  <message>
   <source>one for each of the %1 pieces, or none</source>
   <translation>un pour chacune des %1 parties, ou aucun</translation>
  </message>
  <message>
   <source>one in kJ/mol</source>
   <translation>un en kJ/mol</translation>
  </message>
  <message>
   <source>one in tension</source>
   <translation>un en traction</translation>
  </message>
  <message>
   <source>one mould</source>
   <translation>un seul moule</translation>
  </message>
  <message>
   <source>one number below each heading</source>
   <translation>un nombre sous chaque titre</translation>
  </message>
  <message>
   <source>one of</source>
   <translation>l'un de</translation>
  </message>
  <message>
   <source>one of %1</source>
   <translation>l'un de %1</translation>
  </message>
  <message>
   <source>one of each</source>
   <translation>un de chaque</translation>
  </message>
  <message>
   <source>one of each for %1 triangles</source>
   <translation>un de chaque pour %1 triangles</translation>
  </message>
  <message>
   <source>one of the two</source>
   <translation>l'un des deux</translation>
  </message>
  <message>
   <source>one or more</source>
   <translation>un ou plus</translation>
  </message>
  <message>
   <source>one or more faces of a part</source>
   <translation>une ou plusieurs faces d'une pièce</translation>
  </message>
  <message>
   <source>one piece</source>
   <translation>un morceau</translation>
  </message>
  <message>
   <source>one price</source>
   <translation>un prix</translation>
  </message>
  <message>
   <source>one rising series</source>
   <translation>une suite croissante</translation>
  </message>
  <message>
   <source>one that a fibre of %1 to %2 GPa can give</source>
   <translation>un qu'une fibre de %1 à %2 GPa peut donner</translation>
  </message>
  <message>
   <source>open edges</source>
   <translation>arêtes ouvertes</translation>
  </message>
  <message>
   <source>open or doubled edges</source>
   <translation>arêtes ouvertes ou doublées</translation>
  </message>
  <message>
   <source>opening the bends</source>
   <translation>ouverture des plis de forme</translation>
  </message>
  <message>
   <source>or</source>
   <translation>ou</translation>
  </message>
  <message>
   <source>out of date: %1</source>
   <translation>périmé : %1</translation>
  </message>
  <message>
   <source>out of date: %1 changed</source>
   <translation>périmé : %1 a changé</translation>
  </message>
  <message>
   <source>out of date: %1 changed since they were written</source>
   <translation>périmé : %1 a changé depuis l'écriture</translation>
  </message>
  <message>
   <source>out of date: %1 of %2 changed</source>
   <translation>périmé : %1 de %2 a changé</translation>
  </message>
  <message>
   <source>out of date: %1: %2</source>
   <translation>périmé : %1 : %2</translation>
  </message>
  <message>
   <source>out of date: waits for %1</source>
   <translation>périmé : attend %1</translation>
  </message>
  <message>
   <source>outside (cavity)</source>
   <translation>extérieur (moule femelle)</translation>
  </message>
  <message>
   <source>outside the part</source>
   <translation>hors de la pièce</translation>
  </message>
  <message>
   <source>own %1, %2 coupon%3, standard deviation %4 MPa, %5</source>
   <translation>%1 propre, %2 éprouvette%3, écart type %4 MPa, %5</translation>
  </message>
  <message>
   <source>part after trimming</source>
   <translation>pièce après détourage</translation>
  </message>
  <message>
   <source>part before trimming</source>
   <translation>pièce avant détourage</translation>
  </message>
  <message>
   <source>parting lines that are seen apart along the pieces' pulls</source>
   <translation>plans de joint vus séparés selon les démoulages des parties</translation>
  </message>
  <message>
   <source>parting the body</source>
   <translation>division du corps</translation>
  </message>
  <message>
   <source>peel ply</source>
   <translation>tissu d'arrachage</translation>
  </message>
  <message>
   <source>perhaps not cured through</source>
   <translation>peut-être pas durci à cœur</translation>
  </message>
  <message>
   <source>permission to write</source>
   <translation>le droit d'écrire</translation>
  </message>
  <message>
   <source>pick a face</source>
   <translation>choisir une face</translation>
  </message>
  <message>
   <source>pick a face again</source>
   <translation>choisir de nouveau une face</translation>
  </message>
  <message>
   <source>pick a point</source>
   <translation>choisir un point</translation>
  </message>
  <message>
   <source>pick a point on the mesh, in millimetres</source>
   <translation>choisir un point sur le maillage, en millimètres</translation>
  </message>
  <message>
   <source>pick another edge or face</source>
   <translation>choisir une autre arête ou face</translation>
  </message>
  <message>
   <source>pick another face</source>
   <translation>choisir une autre face</translation>
  </message>
  <message>
   <source>pick faces of the Moulded Face</source>
   <translation>choisir des faces de la face moulée</translation>
  </message>
  <message>
   <source>pick faces that share an edge and not only a corner</source>
   <translation>choisir des faces qui partagent une arête et pas seulement un coin</translation>
  </message>
  <message>
   <source>pick faces without slivers or repair the part</source>
   <translation>choisir des faces sans éclats ou réparer la pièce</translation>
  </message>
  <message>
   <source>pick fewer faces</source>
   <translation>choisir moins de faces</translation>
  </message>
  <message>
   <source>pick it again; %1 is the most like it</source>
   <translation>la choisir de nouveau ; %1 lui ressemble le plus</translation>
  </message>
  <message>
   <source>pick its faces</source>
   <translation>choisir ses faces</translation>
  </message>
  <message>
   <source>pick one</source>
   <translation>en choisir un</translation>
  </message>
  <message>
   <source>pick the faces</source>
   <translation>choisir les faces</translation>
  </message>
  <message>
   <source>pick the faces between them too, or make one Moulded Face for each</source>
   <translation>choisir aussi les faces entre elles, ou faire une face moulée pour chacune</translation>
  </message>
  <message>
   <source>pick the others only</source>
   <translation>ne choisir que les autres</translation>
  </message>
  <message>
   <source>picked faces</source>
   <translation>faces choisies</translation>
  </message>
  <message>
   <source>picked region</source>
   <translation>région choisie</translation>
  </message>
  <message>
   <source>piece %1</source>
   <translation>partie %1</translation>
  </message>
  <message>
   <source>piece %1 to %2: %3 mm, %4 % along edges, %5 % along silhouettes</source>
   <translation>partie %1 à %2 : %3 mm, %4 % le long d'arêtes, %5 % le long de silhouettes</translation>
  </message>
  <message>
   <source>piece %1,</source>
   <translation>partie %1,</translation>
  </message>
  <message>
   <source>pieces %1</source>
   <translation>parties %1</translation>
  </message>
  <message>
   <source>pieces that cannot be turned one way</source>
   <translation>morceaux qu'on ne peut tourner du même côté</translation>
  </message>
  <message>
   <source>pinned cut along %1</source>
   <translation>coupe imposée selon %1</translation>
  </message>
  <message>
   <source>places in mm</source>
   <translation>places en mm</translation>
  </message>
  <message>
   <source>placing %1 pieces of %2</source>
   <translation>placement de %1 morceaux de %2</translation>
  </message>
  <message>
   <source>placing joints and marks</source>
   <translation>placement des assemblages et repères</translation>
  </message>
  <message>
   <source>placing the cuts</source>
   <translation>placement des coupes</translation>
  </message>
  <message>
   <source>plan the mixing again</source>
   <translation>replanifier le mélange</translation>
  </message>
  <message>
   <source>plate</source>
   <translation>plaque</translation>
  </message>
  <message>
   <source>plies</source>
   <translation>plis</translation>
  </message>
  <message>
   <source>plies %1: %2 cm², %3 mm, %4 g</source>
   <translation>plis %1 : %2 cm², %3 mm, %4 g</translation>
  </message>
  <message>
   <source>plies 1 to %1 of the laminate</source>
   <translation>plis 1 à %1 du stratifié</translation>
  </message>
  <message>
   <source>plies 1 to %1 of the layup</source>
   <translation>plis 1 à %1 de l'empilement</translation>
  </message>
  <message>
   <source>plies at several angles</source>
   <translation>plis à plusieurs angles</translation>
  </message>
  <message>
   <source>plies between cuts</source>
   <translation>plis entre coupes</translation>
  </message>
  <message>
   <source>ply %1</source>
   <translation>pli %1</translation>
  </message>
  <message>
   <source>ply %1, %2</source>
   <translation>pli %1, %2</translation>
  </message>
  <message>
   <source>ply and points</source>
   <translation>ply et points</translation>
  </message>
  <message>
   <source>point numbers from 0 to %1</source>
   <translation>numéros de points de 0 à %1</translation>
  </message>
  <message>
   <source>point on the face</source>
   <translation>point sur la face</translation>
  </message>
  <message>
   <source>points such as [[0, 0, 0], [10, 0, 5]]</source>
   <translation>points tels que [[0, 0, 0], [10, 0, 5]]</translation>
  </message>
  <message>
   <source>points such as [[0, 0, 5]] in mm</source>
   <translation>points tels que [[0, 0, 5]] en mm</translation>
  </message>
  <message>
   <source>points that are corners of triangles</source>
   <translation>points qui sont des sommets de triangles</translation>
  </message>
  <message>
   <source>points that are no numbers</source>
   <translation>points qui ne sont pas des nombres</translation>
  </message>
  <message>
   <source>points where pieces touch</source>
   <translation>points où des morceaux se touchent</translation>
  </message>
  <message>
   <source>points without three coordinates</source>
   <translation>points sans trois coordonnées</translation>
  </message>
  <message>
   <source>post-cure cooler first</source>
   <translation>post-cuire d'abord moins chaud</translation>
  </message>
  <message>
   <source>post-cure temperature</source>
   <translation>température de post-cuisson</translation>
  </message>
  <message>
   <source>pot life of %1</source>
   <translation>durée en pot de %1</translation>
  </message>
  <message>
   <source>pressed across the warp</source>
   <translation>comprimé en travers de la chaîne</translation>
  </message>
  <message>
   <source>pressed along the warp</source>
   <translation>comprimé selon la chaîne</translation>
  </message>
  <message>
   <source>pressed patch</source>
   <translation>zone pressée</translation>
  </message>
  <message>
   <source>pressure on the plate</source>
   <translation>pression sur la plaque</translation>
  </message>
  <message>
   <source>price and currency; all else is taken from the printer's card</source>
   <translation>price et currency ; tout le reste vient de la fiche de l'imprimante</translation>
  </message>
  <message>
   <source>price of %1</source>
   <translation>prix de %1</translation>
  </message>
  <message>
   <source>price of a kilogram</source>
   <translation>prix d'un kilogramme</translation>
  </message>
  <message>
   <source>prices</source>
   <translation>prix</translation>
  </message>
  <message>
   <source>print shrinkage</source>
   <translation>retrait d'impression</translation>
  </message>
  <message>
   <source>print shrinkage along %1</source>
   <translation>retrait d'impression selon %1</translation>
  </message>
  <message>
   <source>printed surface, set back along its normals</source>
   <translation>surface imprimée, en retrait selon ses normales</translation>
  </message>
  <message>
   <source>printer</source>
   <translation>imprimante</translation>
  </message>
  <message>
   <source>printer %1</source>
   <translation>imprimante %1</translation>
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
   <source>pry pocket</source>
   <translation>encoche de levier</translation>
  </message>
  <message>
   <source>pry pockets</source>
   <translation>encoches de levier</translation>
  </message>
  <message>
   <source>pull along and across</source>
   <translation>traction en long et en travers</translation>
  </message>
  <message>
   <source>pull along and shear</source>
   <translation>traction en long et cisaillement</translation>
  </message>
  <message>
   <source>pull axis</source>
   <translation>axe de démoulage</translation>
  </message>
  <message>
   <source>pull direction</source>
   <translation>sens de démoulage</translation>
  </message>
  <message>
   <source>pull direction on %1</source>
   <translation>sens de démoulage sur %1</translation>
  </message>
  <message>
   <source>pulled across the warp</source>
   <translation>tiré en travers de la chaîne</translation>
  </message>
  <message>
   <source>pulled along the warp</source>
   <translation>tiré selon la chaîne</translation>
  </message>
  <message>
   <source>pulled along their length</source>
   <translation>tirées selon leur longueur</translation>
  </message>
  <message>
   <source>put them in order</source>
   <translation>les mettre en ordre</translation>
  </message>
  <message>
   <source>radius %1 mm</source>
   <translation>rayon %1 mm</translation>
  </message>
  <message>
   <source>radius of a round patch</source>
   <translation>rayon d'une pièce ronde</translation>
  </message>
  <message>
   <source>raise the base, thin the wall or build it solid</source>
   <translation>rehausser le socle, amincir la paroi ou construire plein</translation>
  </message>
  <message>
   <source>read it again</source>
   <translation>le relire</translation>
  </message>
  <message>
   <source>readings that hold</source>
   <translation>des lectures valables</translation>
  </message>
  <message>
   <source>recompute it</source>
   <translation>le recalculer</translation>
  </message>
  <message>
   <source>recompute the object</source>
   <translation>recalculer l'objet</translation>
  </message>
  <message>
   <source>recompute the object, or take an earlier copy of the document</source>
   <translation>recalculer l'objet, ou prendre une copie antérieure du document</translation>
  </message>
  <message>
   <source>refused, with a split proposed</source>
   <translation>refusé, avec une division proposée</translation>
  </message>
  <message>
   <source>registration cones</source>
   <translation>cônes de repérage</translation>
  </message>
  <message>
   <source>release film</source>
   <translation>film de démoulage</translation>
  </message>
  <message>
   <source>release film and coats</source>
   <translation>film de démoulage et couches</translation>
  </message>
  <message>
   <source>release tape</source>
   <translation>ruban de démoulage</translation>
  </message>
  <message>
   <source>remove one of them</source>
   <translation>en ôter un</translation>
  </message>
  <message>
   <source>rename</source>
   <translation>renommer</translation>
  </message>
  <message>
   <source>rename or remove it</source>
   <translation>le renommer ou l'ôter</translation>
  </message>
  <message>
   <source>rename or remove one of the two</source>
   <translation>renommer ou ôter l'un des deux</translation>
  </message>
  <message>
   <source>repair the mesh</source>
   <translation>réparer le maillage</translation>
  </message>
  <message>
   <source>repair the mesh file</source>
   <translation>réparer le fichier de maillage</translation>
  </message>
  <message>
   <source>repair the mesh or pick faces that do not touch along an edge</source>
   <translation>réparer le maillage ou choisir des faces qui ne se touchent pas par une arête</translation>
  </message>
  <message>
   <source>repair the shape</source>
   <translation>réparer la forme</translation>
  </message>
  <message>
   <source>resin share</source>
   <translation>part de résine</translation>
  </message>
  <message>
   <source>resin share %1, voids %2, angle %3 rad</source>
   <translation>part de résine %1, vides %2, angle %3 rad</translation>
  </message>
  <message>
   <source>resolution of the pull search</source>
   <translation>finesse de la recherche du démoulage</translation>
  </message>
  <message>
   <source>rib spacing</source>
   <translation>écart des nervures</translation>
  </message>
  <message>
   <source>rib thickness</source>
   <translation>épaisseur des nervures</translation>
  </message>
  <message>
   <source>room between the borders</source>
   <translation>place entre les bords</translation>
  </message>
  <message>
   <source>room for %1 feet of %2 mm</source>
   <translation>place pour %1 pieds de %2 mm</translation>
  </message>
  <message>
   <source>room for %1 mm</source>
   <translation>place pour %1 mm</translation>
  </message>
  <message>
   <source>room for one more</source>
   <translation>place pour un de plus</translation>
  </message>
  <message>
   <source>room for the file</source>
   <translation>de la place pour le fichier</translation>
  </message>
  <message>
   <source>round the whole mould</source>
   <translation>autour de tout le moule</translation>
  </message>
  <message>
   <source>row %1</source>
   <translation>ligne %1</translation>
  </message>
  <message>
   <source>row %1 of the table</source>
   <translation>ligne %1 du tableau</translation>
  </message>
  <message>
   <source>row %1 of the table '%2'</source>
   <translation>ligne %1 du tableau « %2 »</translation>
  </message>
  <message>
   <source>samples</source>
   <translation>échantillons</translation>
  </message>
  <message>
   <source>say how the value is known</source>
   <translation>dire d'où la valeur est connue</translation>
  </message>
  <message>
   <source>say the unit, or write it into the heading</source>
   <translation>dire l'unité, ou l'écrire dans le titre</translation>
  </message>
  <message>
   <source>scale for the cup of %1</source>
   <translation>balance pour le gobelet de %1</translation>
  </message>
  <message>
   <source>scale resolution</source>
   <translation>résolution de la balance</translation>
  </message>
  <message>
   <source>scan it again</source>
   <translation>le numériser de nouveau</translation>
  </message>
  <message>
   <source>scatter</source>
   <translation>dispersion</translation>
  </message>
  <message>
   <source>schema %1 or older</source>
   <translation>schéma %1 ou antérieur</translation>
  </message>
  <message>
   <source>scraps</source>
   <translation>bribes</translation>
  </message>
  <message>
   <source>scribe depth</source>
   <translation>profondeur du tracé</translation>
  </message>
  <message>
   <source>scribe line</source>
   <translation>ligne tracée</translation>
  </message>
  <message>
   <source>scribe width</source>
   <translation>largeur du tracé</translation>
  </message>
  <message>
   <source>seal coat</source>
   <translation>couche de scellement</translation>
  </message>
  <message>
   <source>seal coats</source>
   <translation>couches de scellement</translation>
  </message>
  <message>
   <source>sealant tape</source>
   <translation>ruban d'étanchéité</translation>
  </message>
  <message>
   <source>searching for a shorter piece of roll</source>
   <translation>recherche d'un rouleau plus court</translation>
  </message>
  <message>
   <source>set 1, 2, 3 or 4</source>
   <translation>mettre 1, 2, 3 ou 4</translation>
  </message>
  <message>
   <source>set 2, 3 or 4</source>
   <translation>mettre 2, 3 ou 4</translation>
  </message>
  <message>
   <source>set a value in that range</source>
   <translation>mettre une valeur dans ce domaine</translation>
  </message>
  <message>
   <source>set an angle such as 1 deg</source>
   <translation>mettre un angle tel que 1°</translation>
  </message>
  <message>
   <source>set an angle such as 2 deg</source>
   <translation>mettre un angle tel que 2°</translation>
  </message>
  <message>
   <source>set another</source>
   <translation>en mettre un autre</translation>
  </message>
  <message>
   <source>set another number</source>
   <translation>mettre un autre nombre</translation>
  </message>
  <message>
   <source>set another pull direction or pick other faces</source>
   <translation>choisir un autre démoulage ou d'autres faces</translation>
  </message>
  <message>
   <source>set another pull direction, add draft or split the face into two moulds</source>
   <translation>choisir un autre démoulage, ajouter de la dépouille ou diviser la face en deux moules</translation>
  </message>
  <message>
   <source>set another value</source>
   <translation>mettre une autre valeur</translation>
  </message>
  <message>
   <source>set at least one</source>
   <translation>en mettre au moins un</translation>
  </message>
  <message>
   <source>set for this job</source>
   <translation>fixé pour ce travail</translation>
  </message>
  <message>
   <source>set one</source>
   <translation>en mettre un</translation>
  </message>
  <message>
   <source>set one or leave the load out</source>
   <translation>en mettre un ou omettre la charge</translation>
  </message>
  <message>
   <source>set smaller feet, fewer of them, or a longer run-off</source>
   <translation>mettre des pieds plus petits, moins nombreux, ou un débord plus long</translation>
  </message>
  <message>
   <source>set the Moulded Face's mould side to '%1' and turn its pull round: the part closes round a plug, but %2 outside of it releases it</source>
   <translation>mettez le côté du moule de la face moulée sur '%1' et retournez sa direction : la pièce enserre un moule mâle, mais %2 à l'extérieur la libère</translation>
  </message>
  <message>
   <source>set the Moulded Face's pull along the mouth of the part</source>
   <translation>mettre le démoulage de la face moulée selon l'ouverture de la pièce</translation>
  </message>
  <message>
   <source>set the angle</source>
   <translation>mettre l'angle</translation>
  </message>
  <message>
   <source>set the direction</source>
   <translation>mettre la direction</translation>
  </message>
  <message>
   <source>set the number of parts</source>
   <translation>mettre le nombre de pièces</translation>
  </message>
  <message>
   <source>set the width of the roll</source>
   <translation>mettre la largeur du rouleau</translation>
  </message>
  <message>
   <source>shares up to 0.3 and 0.2, an angle up to 0.8 rad</source>
   <translation>parts jusqu'à 0,3 et 0,2, un angle jusqu'à 0,8 rad</translation>
  </message>
  <message>
   <source>shear limit of the cuts</source>
   <translation>limite de cisaillement des coupes</translation>
  </message>
  <message>
   <source>shear modulus</source>
   <translation>module de cisaillement</translation>
  </message>
  <message>
   <source>sheared in the plane</source>
   <translation>cisaillé dans le plan</translation>
  </message>
  <message>
   <source>shop temperature</source>
   <translation>température de l'atelier</translation>
  </message>
  <message>
   <source>shorten the run-off or smooth the edge of the face</source>
   <translation>raccourcir le débord ou lisser le bord de la face</translation>
  </message>
  <message>
   <source>shorten the run-off or widen the bays of the outline</source>
   <translation>raccourcir le débord ou élargir les baies du contour</translation>
  </message>
  <message>
   <source>side down</source>
   <translation>côté en bas</translation>
  </message>
  <message>
   <source>side: margin</source>
   <translation>côté : marge</translation>
  </message>
  <message>
   <source>sides from 5 mm to 100 m</source>
   <translation>côtés de 5 mm à 100 m</translation>
  </message>
  <message>
   <source>sides that differ by a factor of %1 at most</source>
   <translation>côtés qui diffèrent d'un facteur %1 au plus</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>simplement appuyé</translation>
  </message>
  <message>
   <source>size of the job</source>
   <translation>taille du travail</translation>
  </message>
  <message>
   <source>smooth its spikes and pits, split it into two Moulded Faces, or cut the ply</source>
   <translation>lisser ses pointes et ses creux, diviser en deux faces moulées, ou couper le pli</translation>
  </message>
  <message>
   <source>smooth the face</source>
   <translation>lisser la face</translation>
  </message>
  <message>
   <source>smooth the trim edge of the picked faces, or set their pull along the mouth</source>
   <translation>lisser le bord de détourage des faces choisies, ou mettre leur démoulage selon l'ouverture</translation>
  </message>
  <message>
   <source>smooth, sealed</source>
   <translation>lisse, bouché</translation>
  </message>
  <message>
   <source>softening temperature of the mould</source>
   <translation>température de ramollissement du moule</translation>
  </message>
  <message>
   <source>split along the warp</source>
   <translation>divisé selon la chaîne</translation>
  </message>
  <message>
   <source>split it into two Moulded Faces</source>
   <translation>diviser en deux faces moulées</translation>
  </message>
  <message>
   <source>spring-in of %1</source>
   <translation>retrait angulaire de %1</translation>
  </message>
  <message>
   <source>spring-in of bend %1</source>
   <translation>retrait angulaire du pli de forme %1</translation>
  </message>
  <message>
   <source>spring-in of bends</source>
   <translation>retrait angulaire des plis de forme</translation>
  </message>
  <message>
   <source>stagger of the cuts</source>
   <translation>décalage des coupes</translation>
  </message>
  <message>
   <source>state its unit: are its numbers in %1</source>
   <translation>indiquer son unité : ses nombres sont-ils en %1</translation>
  </message>
  <message>
   <source>state the same unit</source>
   <translation>indiquer la même unité</translation>
  </message>
  <message>
   <source>state the unit that it was scanned or drawn in</source>
   <translation>indiquer l'unité de sa numérisation ou de son dessin</translation>
  </message>
  <message>
   <source>statistics</source>
   <translation>statistique</translation>
  </message>
  <message>
   <source>steps of %1 g for %2 g of hardener, off by up to %3</source>
   <translation>pas de %1 g pour %2 g de durcisseur, faux de %3 au plus</translation>
  </message>
  <message>
   <source>stiffness of the plastic</source>
   <translation>raideur du plastique</translation>
  </message>
  <message>
   <source>stopped before it broke</source>
   <translation>arrêté avant la rupture</translation>
  </message>
  <message>
   <source>strain</source>
   <translation>déformation</translation>
  </message>
  <message>
   <source>strains from %1 to %2</source>
   <translation>déformations de %1 à %2</translation>
  </message>
  <message>
   <source>strains that do not rise</source>
   <translation>déformations qui ne croissent pas</translation>
  </message>
  <message>
   <source>strengths</source>
   <translation>résistances</translation>
  </message>
  <message>
   <source>stretch along the warp</source>
   <translation>étirement selon la chaîne</translation>
  </message>
  <message>
   <source>stretch along the weft</source>
   <translation>étirement selon la trame</translation>
  </message>
  <message>
   <source>stretch without cuts along %1</source>
   <translation>tronçon sans coupes selon %1</translation>
  </message>
  <message>
   <source>strips</source>
   <translation>bandes</translation>
  </message>
  <message>
   <source>such a ply on each side</source>
   <translation>un tel pli de chaque côté</translation>
  </message>
  <message>
   <source>supports %1 mm apart</source>
   <translation>appuis écartés de %1 mm</translation>
  </message>
  <message>
   <source>take a shorter piece, for beyond %1 widths the length hardly matters</source>
   <translation>prendre un morceau plus court, car au-delà de %1 largeurs la longueur compte à peine</translation>
  </message>
  <message>
   <source>take a slower hardener or a cooler shop</source>
   <translation>prendre un durcisseur plus lent ou un atelier plus frais</translation>
  </message>
  <message>
   <source>take a wider roll, turn the ply, or divide the face into two Moulded Faces</source>
   <translation>prendre un rouleau plus large, tourner le pli ou diviser la face en deux faces moulées</translation>
  </message>
  <message>
   <source>take a wider roll, turn the ply, or have it split: %1</source>
   <translation>prendre un rouleau plus large, tourner le pli ou le faire diviser : %1</translation>
  </message>
  <message>
   <source>take it from the data sheet of the plastic</source>
   <translation>le prendre de la fiche technique du plastique</translation>
  </message>
  <message>
   <source>take it out and set %1 in [printer]</source>
   <translation>la retirer et définir %1 dans [printer]</translation>
  </message>
  <message>
   <source>take lines away</source>
   <translation>ôter des lignes</translation>
  </message>
  <message>
   <source>take the cut out, or split the extent of the ply into two plies</source>
   <translation>ôter la coupe, ou partager l'étendue du pli en deux plis</translation>
  </message>
  <message>
   <source>take the line out, or put each test into a file of its own</source>
   <translation>ôter la ligne, ou mettre chaque essai dans son fichier</translation>
  </message>
  <message>
   <source>take the other record out first, or choose another name</source>
   <translation>retirer d'abord l'autre fiche, ou choisir un autre nom</translation>
  </message>
  <message>
   <source>take the paper guide</source>
   <translation>prendre le gabarit en papier</translation>
  </message>
  <message>
   <source>temperature of the shop</source>
   <translation>température de l'atelier</translation>
  </message>
  <message>
   <source>test a laminate of the one cloth at 0 degrees</source>
   <translation>essayer un stratifié de ce seul tissu à 0 degré</translation>
  </message>
  <message>
   <source>test it by itself</source>
   <translation>l'essayer seul</translation>
  </message>
  <message>
   <source>test more coupons</source>
   <translation>essayer plus d'éprouvettes</translation>
  </message>
  <message>
   <source>test record</source>
   <translation>fiche d'essai</translation>
  </message>
  <message>
   <source>test them one by one</source>
   <translation>les essayer un à un</translation>
  </message>
  <message>
   <source>text that is not TOML (%1)</source>
   <translation>un texte qui n'est pas du TOML (%1)</translation>
  </message>
  <message>
   <source>that of %1 plies</source>
   <translation>celui de %1 plis</translation>
  </message>
  <message>
   <source>the 3MF file</source>
   <translation>le fichier 3MF</translation>
  </message>
  <message>
   <source>the DXF file</source>
   <translation>le fichier DXF</translation>
  </message>
  <message>
   <source>the air port</source>
   <translation>la prise d'air</translation>
  </message>
  <message>
   <source>the arrow stands upright</source>
   <translation>la flèche est verticale</translation>
  </message>
  <message>
   <source>the chart '%1'</source>
   <translation>le graphique « %1 »</translation>
  </message>
  <message>
   <source>the cloth settles</source>
   <translation>le tissu se pose</translation>
  </message>
  <message>
   <source>the coupon broke</source>
   <translation>l'éprouvette a cassé</translation>
  </message>
  <message>
   <source>the direction %1, which does not run along the face at its origin</source>
   <translation>la direction %1, qui ne longe pas la face à son origine</translation>
  </message>
  <message>
   <source>the distance of the supports</source>
   <translation>la distance des appuis</translation>
  </message>
  <message>
   <source>the drape of %1 plies</source>
   <translation>le drapage de %1 plis</translation>
  </message>
  <message>
   <source>the face that was picked</source>
   <translation>la face choisie</translation>
  </message>
  <message>
   <source>the feet</source>
   <translation>les pieds</translation>
  </message>
  <message>
   <source>the flange of %1</source>
   <translation>la bride de %1</translation>
  </message>
  <message>
   <source>the hole at (%1, %2) mm in %3</source>
   <translation>le trou en (%1, %2) mm dans %3</translation>
  </message>
  <message>
   <source>the hollow</source>
   <translation>le creux</translation>
  </message>
  <message>
   <source>the hollow of the mould body</source>
   <translation>le creux du corps du moule</translation>
  </message>
  <message>
   <source>the job</source>
   <translation>le travail</translation>
  </message>
  <message>
   <source>the job sheet</source>
   <translation>la feuille de travail</translation>
  </message>
  <message>
   <source>the key '%1'</source>
   <translation>la clé « %1 »</translation>
  </message>
  <message>
   <source>the mesh</source>
   <translation>le maillage</translation>
  </message>
  <message>
   <source>the mould</source>
   <translation>le moule</translation>
  </message>
  <message>
   <source>the mould body</source>
   <translation>le corps du moule</translation>
  </message>
  <message>
   <source>the mould body on %1</source>
   <translation>le corps du moule sur %1</translation>
  </message>
  <message>
   <source>the mould is opened by %1 deg, the faces around it hold the rest</source>
   <translation>le moule est ouvert de %1°, les faces autour retiennent le reste</translation>
  </message>
  <message>
   <source>the mould is opened by this angle</source>
   <translation>le moule est ouvert de cet angle</translation>
  </message>
  <message>
   <source>the mould's body</source>
   <translation>le corps du moule</translation>
  </message>
  <message>
   <source>the mould's working area</source>
   <translation>la surface de travail du moule</translation>
  </message>
  <message>
   <source>the name of a record</source>
   <translation>le nom d'une fiche</translation>
  </message>
  <message>
   <source>the number of a ply</source>
   <translation>le numéro d'un pli</translation>
  </message>
  <message>
   <source>the number of a ply, or 0 for every ply</source>
   <translation>le numéro d'un pli, ou 0 pour chaque pli</translation>
  </message>
  <message>
   <source>the number of the ply that it lies on</source>
   <translation>le numéro du pli sur lequel elle repose</translation>
  </message>
  <message>
   <source>the paper</source>
   <translation>le papier</translation>
  </message>
  <message>
   <source>the part bends or twists when it is pulled</source>
   <translation>la pièce fléchit ou se tord quand on la tire</translation>
  </message>
  <message>
   <source>the parting</source>
   <translation>la division</translation>
  </message>
  <message>
   <source>the picked face</source>
   <translation>la face choisie</translation>
  </message>
  <message>
   <source>the plotter sheets</source>
   <translation>les feuilles du traceur</translation>
  </message>
  <message>
   <source>the pry pockets</source>
   <translation>les encoches de levier</translation>
  </message>
  <message>
   <source>the search was ended before its time: this is the shortest plan till then</source>
   <translation>la recherche a fini avant son temps : voici le plan le plus court jusque-là</translation>
  </message>
  <message>
   <source>the side '%1'</source>
   <translation>le côté « %1 »</translation>
  </message>
  <message>
   <source>the start point alone, the warp along the arrow</source>
   <translation>le point de départ seul, la chaîne selon la flèche</translation>
  </message>
  <message>
   <source>the texture is %1 mm deep</source>
   <translation>la texture a %1 mm de profondeur</translation>
  </message>
  <message>
   <source>the true-scale pages</source>
   <translation>les pages grandeur nature</translation>
  </message>
  <message>
   <source>the unit '%1'</source>
   <translation>l'unité « %1 »</translation>
  </message>
  <message>
   <source>the view of the layup</source>
   <translation>la vue de l'empilement</translation>
  </message>
  <message>
   <source>there is none</source>
   <translation>il n'y en a pas</translation>
  </message>
  <message>
   <source>thickness</source>
   <translation>épaisseur</translation>
  </message>
  <message>
   <source>thickness (mm)</source>
   <translation>épaisseur (mm)</translation>
  </message>
  <message>
   <source>thickness of local ply %1</source>
   <translation>épaisseur du pli local %1</translation>
  </message>
  <message>
   <source>those in tension or compression, by the sign of each stress</source>
   <translation>ceux en traction ou compression, selon le signe de chaque contrainte</translation>
  </message>
  <message>
   <source>those in tension, whatever the sign of the stress</source>
   <translation>ceux en traction, quel que soit le signe de la contrainte</translation>
  </message>
  <message>
   <source>three numbers in mm</source>
   <translation>trois nombres en mm</translation>
  </message>
  <message>
   <source>three numbers such as [0, 0, 1]</source>
   <translation>trois nombres tels que [0, 0, 1]</translation>
  </message>
  <message>
   <source>tidy it up</source>
   <translation>y mettre de l'ordre</translation>
  </message>
  <message>
   <source>tile %1</source>
   <translation>tuile %1</translation>
  </message>
  <message>
   <source>tiles as they are printed, along all axes</source>
   <translation>tuiles à l'impression, selon tous les axes</translation>
  </message>
  <message>
   <source>tiles as they are printed, along the printer's %1</source>
   <translation>tuiles à l'impression, selon %1 de l'imprimante</translation>
  </message>
  <message>
   <source>time budget</source>
   <translation>temps accordé</translation>
  </message>
  <message>
   <source>time for a ply</source>
   <translation>temps pour un pli</translation>
  </message>
  <message>
   <source>time for a square metre</source>
   <translation>temps pour un mètre carré</translation>
  </message>
  <message>
   <source>time for sanding</source>
   <translation>temps de ponçage</translation>
  </message>
  <message>
   <source>time for the cuts</source>
   <translation>temps pour les coupes</translation>
  </message>
  <message>
   <source>time of laying</source>
   <translation>temps de pose</translation>
  </message>
  <message>
   <source>time until demould</source>
   <translation>temps avant démoulage</translation>
  </message>
  <message>
   <source>time until gel</source>
   <translation>temps avant gel</translation>
  </message>
  <message>
   <source>times of %1</source>
   <translation>durées de %1</translation>
  </message>
  <message>
   <source>times the load</source>
   <translation>fois la charge</translation>
  </message>
  <message>
   <source>tongue clearance</source>
   <translation>jeu de la languette</translation>
  </message>
  <message>
   <source>tongue length</source>
   <translation>longueur de la languette</translation>
  </message>
  <message>
   <source>tongue width</source>
   <translation>largeur de la languette</translation>
  </message>
  <message>
   <source>too heavy</source>
   <translation>trop lourd</translation>
  </message>
  <message>
   <source>too light</source>
   <translation>trop léger</translation>
  </message>
  <message>
   <source>too small an inside radius</source>
   <translation>un rayon intérieur trop petit</translation>
  </message>
  <message>
   <source>triangles for the drape</source>
   <translation>triangles pour le drapage</translation>
  </message>
  <message>
   <source>triangles taken off edges with more than two</source>
   <translation>triangles ôtés d'arêtes qui en ont plus de deux</translation>
  </message>
  <message>
   <source>triangles taken off where an outline touches itself</source>
   <translation>triangles ôtés là où un contour se touche lui-même</translation>
  </message>
  <message>
   <source>triangles with area</source>
   <translation>triangles avec une aire</translation>
  </message>
  <message>
   <source>triangles without area</source>
   <translation>triangles sans aire</translation>
  </message>
  <message>
   <source>trim guide</source>
   <translation>gabarit de détourage</translation>
  </message>
  <message>
   <source>trim line</source>
   <translation>ligne de détourage</translation>
  </message>
  <message>
   <source>true or false</source>
   <translation>true ou false</translation>
  </message>
  <message>
   <source>try again or choose another folder; the old file is unchanged</source>
   <translation>réessayer ou choisir un autre dossier ; l'ancien fichier est inchangé</translation>
  </message>
  <message>
   <source>trying cuts</source>
   <translation>essai de coupes</translation>
  </message>
  <message>
   <source>turn its triangles inside out</source>
   <translation>retourner ses triangles</translation>
  </message>
  <message>
   <source>turn the arrow</source>
   <translation>tourner la flèche</translation>
  </message>
  <message>
   <source>turn the datum arrow</source>
   <translation>tourner la flèche de référence</translation>
  </message>
  <message>
   <source>two pieces or more</source>
   <translation>deux parties ou plus</translation>
  </message>
  <message>
   <source>two points or more</source>
   <translation>deux points ou plus</translation>
  </message>
  <message>
   <source>two solid sides</source>
   <translation>deux côtés pleins</translation>
  </message>
  <message>
   <source>unit of %1</source>
   <translation>unité de %1</translation>
  </message>
  <message>
   <source>unused edge</source>
   <translation>bord inutilisé</translation>
  </message>
  <message>
   <source>up to date</source>
   <translation>à jour</translation>
  </message>
  <message>
   <source>use a finer scale or larger cups</source>
   <translation>prendre une balance plus fine ou des gobelets plus grands</translation>
  </message>
  <message>
   <source>usual for %1 work, common practice, no source</source>
   <translation>usuel pour le procédé « %1 », pratique courante, sans source</translation>
  </message>
  <message>
   <source>value, unit, source and kind</source>
   <translation>valeur, unité, source et genre</translation>
  </message>
  <message>
   <source>value, unit, source and kind, perhaps low and high</source>
   <translation>valeur, unité, source et genre, peut-être low et high</translation>
  </message>
  <message>
   <source>void share</source>
   <translation>part de vides</translation>
  </message>
  <message>
   <source>volume in %1</source>
   <translation>volume en %1</translation>
  </message>
  <message>
   <source>wait after a coat</source>
   <translation>attente après une couche</translation>
  </message>
  <message>
   <source>wall around joints</source>
   <translation>paroi autour des assemblages</translation>
  </message>
  <message>
   <source>wanted draft</source>
   <translation>dépouille voulue</translation>
  </message>
  <message>
   <source>warm by %1 degC an hour or less</source>
   <translation>chauffer de %1 °C par heure au plus</translation>
  </message>
  <message>
   <source>warming of the mould</source>
   <translation>chauffage du moule</translation>
  </message>
  <message>
   <source>warming of the post-cure</source>
   <translation>montée de la post-cuisson</translation>
  </message>
  <message>
   <source>warp ahead</source>
   <translation>chaîne devant</translation>
  </message>
  <message>
   <source>warp and weft only %1 degrees apart</source>
   <translation>chaîne et trame à seulement %1 degrés</translation>
  </message>
  <message>
   <source>warp and weft thread through the start point, giving way to spare shear</source>
   <translation>chaîne et trame par le point de départ, cédant pour épargner du cisaillement</translation>
  </message>
  <message>
   <source>warp and weft thread through the start point, held straight</source>
   <translation>chaîne et trame par le point de départ, tenues droites</translation>
  </message>
  <message>
   <source>warp behind</source>
   <translation>chaîne derrière</translation>
  </message>
  <message>
   <source>wax and film</source>
   <translation>cire et film</translation>
  </message>
  <message>
   <source>weft left</source>
   <translation>trame à gauche</translation>
  </message>
  <message>
   <source>weft right</source>
   <translation>trame à droite</translation>
  </message>
  <message>
   <source>weigh again, and perhaps change the two</source>
   <translation>repeser, et peut-être échanger les deux</translation>
  </message>
  <message>
   <source>weigh again, and take off filler and paint</source>
   <translation>repeser, et déduire mastic et peinture</translation>
  </message>
  <message>
   <source>weigh again: cloth and part may have been changed</source>
   <translation>repeser : tissu et pièce sont peut-être échangés</translation>
  </message>
  <message>
   <source>weigh with a finer scale, or mix %1 g or more in each cup</source>
   <translation>peser avec une balance plus fine, ou mélanger %1 g ou plus par gobelet</translation>
  </message>
  <message>
   <source>weighed cloth</source>
   <translation>tissu pesé</translation>
  </message>
  <message>
   <source>weighed left-over mix</source>
   <translation>reste de mélange pesé</translation>
  </message>
  <message>
   <source>weighed mix</source>
   <translation>mélange pesé</translation>
  </message>
  <message>
   <source>weighed part</source>
   <translation>pièce pesée</translation>
  </message>
  <message>
   <source>weighed pieces</source>
   <translation>morceaux pesés</translation>
  </message>
  <message>
   <source>weighed trimmed part</source>
   <translation>pièce détourée pesée</translation>
  </message>
  <message>
   <source>weight of a fill coat</source>
   <translation>poids d'une couche de bouchage</translation>
  </message>
  <message>
   <source>weight of a seal coat</source>
   <translation>poids d'une couche de scellement</translation>
  </message>
  <message>
   <source>well above the thickness of %1 mm</source>
   <translation>bien au-dessus de l'épaisseur de %1 mm</translation>
  </message>
  <message>
   <source>what was stored in the document</source>
   <translation>ce qui était enregistré dans le document</translation>
  </message>
  <message>
   <source>when it cools from cure</source>
   <translation>en refroidissant après cuisson</translation>
  </message>
  <message>
   <source>when it takes up water</source>
   <translation>en prenant de l'eau</translation>
  </message>
  <message>
   <source>where both faces of the cloth are alike</source>
   <translation>là où les deux faces du tissu sont pareilles</translation>
  </message>
  <message>
   <source>where the cloth shears least</source>
   <translation>là où le tissu se cisaille le moins</translation>
  </message>
  <message>
   <source>where the start point lies</source>
   <translation>là où est le point de départ</translation>
  </message>
  <message>
   <source>whole numbers in brackets</source>
   <translation>nombres entiers entre crochets</translation>
  </message>
  <message>
   <source>widen its extent</source>
   <translation>élargir son étendue</translation>
  </message>
  <message>
   <source>widen its extent or move it onto the face</source>
   <translation>élargir son étendue ou la déplacer sur la face</translation>
  </message>
  <message>
   <source>widen its extent or shorten the drop-off</source>
   <translation>élargir son étendue ou raccourcir l'échelonnement</translation>
  </message>
  <message>
   <source>widen the cloth margin, narrow the port or leave it out</source>
   <translation>élargir la marge du tissu, rétrécir la prise ou l'omettre</translation>
  </message>
  <message>
   <source>widen the flange</source>
   <translation>élargir la bride</translation>
  </message>
  <message>
   <source>widen the flange or leave the holes out</source>
   <translation>élargir la bride ou omettre les trous</translation>
  </message>
  <message>
   <source>widen the lap</source>
   <translation>élargir le recouvrement</translation>
  </message>
  <message>
   <source>widen the run-off or the flange</source>
   <translation>élargir le débord ou la bride</translation>
  </message>
  <message>
   <source>width of a strip</source>
   <translation>largeur d'une bande</translation>
  </message>
  <message>
   <source>width of the roll of %1</source>
   <translation>largeur du rouleau de %1</translation>
  </message>
  <message>
   <source>width, depth and height in a list</source>
   <translation>largeur, profondeur et hauteur dans une liste</translation>
  </message>
  <message>
   <source>wish for a layup</source>
   <translation>souhait pour un empilement</translation>
  </message>
  <message>
   <source>wish: %1</source>
   <translation>souhait : %1</translation>
  </message>
  <message>
   <source>with %1 g of left-overs</source>
   <translation>avec %1 g de restes</translation>
  </message>
  <message>
   <source>with %1 of water, which its resin takes up in the long run</source>
   <translation>avec %1 d'eau, que sa résine absorbe à la longue</translation>
  </message>
  <message>
   <source>with a border of %1 mm</source>
   <translation>avec un bord de %1 mm</translation>
  </message>
  <message>
   <source>with a core</source>
   <translation>avec une âme</translation>
  </message>
  <message>
   <source>within %1, as good as cards and hands allow.</source>
   <translation>à %1 près, aussi bien que fiches et mains le permettent.</translation>
  </message>
  <message>
   <source>within the band</source>
   <translation>dans l'intervalle</translation>
  </message>
  <message>
   <source>work by hand</source>
   <translation>travail à la main</translation>
  </message>
  <message>
   <source>working day</source>
   <translation>journée de travail</translation>
  </message>
  <message>
   <source>working surface under the ply, running out over %1 mm beyond its end</source>
   <translation>surface de travail sous le pli, s'effaçant sur %1 mm au-delà de sa fin</translation>
  </message>
  <message>
   <source>working surface, moved along its normals</source>
   <translation>surface de travail, déplacée selon ses normales</translation>
  </message>
  <message>
   <source>working surface, opened so that the part closes to its shape; moved by at most this, stretched by at most %1 %</source>
   <translation>surface de travail, ouverte pour que la pièce se ferme à sa forme ; déplacée au plus d'autant, étirée au plus de %1 %</translation>
  </message>
  <message>
   <source>working surface: %1; %2</source>
   <translation>surface de travail : %1 ; %2</translation>
  </message>
  <message>
   <source>write "%1 %2"</source>
   <translation>écrire « %1 %2 »</translation>
  </message>
  <message>
   <source>write "%1 unit"</source>
   <translation>écrire « %1 unité »</translation>
  </message>
  <message>
   <source>write for example "ahead: 40 mm"</source>
   <translation>écrire par exemple « ahead: 40 mm »</translation>
  </message>
  <message>
   <source>write for example "my cloth: 1.27 m"</source>
   <translation>écrire par exemple « my cloth: 1.27 m »</translation>
  </message>
  <message>
   <source>write for example "my cloth: 1200 mm to 1230 mm"</source>
   <translation>écrire par exemple « my cloth: 1200 mm to 1230 mm »</translation>
  </message>
  <message>
   <source>write for example "my cloth: 600 mm x 400 mm"</source>
   <translation>écrire par exemple « my cloth: 600 mm x 400 mm »</translation>
  </message>
  <message>
   <source>write hours and minutes</source>
   <translation>écrire heures et minutes</translation>
  </message>
  <message>
   <source>write it in one of these ways</source>
   <translation>l'écrire d'une de ces façons</translation>
  </message>
  <message>
   <source>write it otherwise</source>
   <translation>l'écrire autrement</translation>
  </message>
  <message>
   <source>write it that way</source>
   <translation>l'écrire ainsi</translation>
  </message>
  <message>
   <source>write it that way, with a point as the decimal mark</source>
   <translation>l'écrire ainsi, avec un point décimal</translation>
  </message>
  <message>
   <source>write it without quotes</source>
   <translation>l'écrire sans guillemets</translation>
  </message>
  <message>
   <source>write it without quotes or unit</source>
   <translation>l'écrire sans guillemets ni unité</translation>
  </message>
  <message>
   <source>write one first</source>
   <translation>en écrire d'abord un</translation>
  </message>
  <message>
   <source>write one text for each</source>
   <translation>écrire un texte pour chacun</translation>
  </message>
  <message>
   <source>write them as a table</source>
   <translation>les écrire en tableau</translation>
  </message>
  <message>
   <source>zero or more</source>
   <translation>zéro ou plus</translation>
  </message>
  <message>
   <source>{ sheet = "...", thickness = "8 mm", after = 2 }</source>
   <translation>{ sheet = "...", thickness = "8 mm", after = 2 }</translation>
  </message>
 </context>
</TS>
