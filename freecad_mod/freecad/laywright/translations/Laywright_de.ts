<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>App::Property</name>
  <message>
   <source>10 degC more halve the time</source>
   <translation>10 °C mehr halbieren die Zeit</translation>
  </message>
  <message>
   <source>16 times the thickness (ASTM D790)</source>
   <translation>16-fache Dicke (ASTM D790)</translation>
  </message>
  <message>
   <source>32 times the thickness (ASTM D7264)</source>
   <translation>32-fache Dicke (ASTM D7264)</translation>
  </message>
  <message>
   <source>40 times the thickness (ISO 14125, carbon)</source>
   <translation>40-fache Dicke (ISO 14125, Kohlenstoff)</translation>
  </message>
  <message>
   <source>A Layup to print</source>
   <translation>Ein Lagenaufbau zum Drucken</translation>
  </message>
  <message>
   <source>A Mix &amp; Cure Plan to print</source>
   <translation>Ein Misch- und Härteplan zum Drucken</translation>
  </message>
  <message>
   <source>A Mould Body to print</source>
   <translation>Ein Formkörper zum Drucken</translation>
  </message>
  <message>
   <source>A Moulded Face to print</source>
   <translation>Eine Formfläche zum Drucken</translation>
  </message>
  <message>
   <source>A Release Check to print</source>
   <translation>Eine Entformprüfung zum Drucken</translation>
  </message>
  <message>
   <source>A Roll Plan to print</source>
   <translation>Ein Rollenplan zum Drucken</translation>
  </message>
  <message>
   <source>A point on each region, instead of names (mm)</source>
   <translation>Ein Punkt auf jedem Bereich, statt der Namen (mm)</translation>
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
   <translation>A-Basis</translation>
  </message>
  <message>
   <source>About how many elements that shell has</source>
   <translation>Etwa wie viele Elemente diese Schale hat</translation>
  </message>
  <message>
   <source>Acceptance</source>
   <translation>Abnahme</translation>
  </message>
  <message>
   <source>Air as a share of the laminate's volume (%)</source>
   <translation>Luft als Anteil am Volumen des Laminats (%)</translation>
  </message>
  <message>
   <source>Air in the laminate, from both (%)</source>
   <translation>Luft im Laminat, aus beiden (%)</translation>
  </message>
  <message>
   <source>Air port</source>
   <translation>Luftanschluss</translation>
  </message>
  <message>
   <source>All dry cloth, 0 for the sum of the pieces (g)</source>
   <translation>Alles trockene Gewebe, 0 für die Summe der Stücke (g)</translation>
  </message>
  <message>
   <source>All resin and hardener that was mixed (g)</source>
   <translation>Alles angemischte Harz mit Härter (g)</translation>
  </message>
  <message>
   <source>Allowances switched off, one on each line: 'laminate thickness', 'release film and coats', 'print shrinkage', 'growth of the mould at cure temperature', 'spring-in of bends'</source>
   <translation>Ausgeschaltete Zugaben, eine je Zeile: 'laminate thickness', 'release film and coats', 'print shrinkage', 'growth of the mould at cure temperature', 'spring-in of bends'</translation>
  </message>
  <message>
   <source>Also cut</source>
   <translation>Außerdem schneiden</translation>
  </message>
  <message>
   <source>Angle of each ply's warp from the datum arrow (degrees), counter-clockwise seen from the side away from the mould</source>
   <translation>Winkel der Kette jeder Lage zum Bezugspfeil (Grad), gegen den Uhrzeigersinn, gesehen von der Seite, die von der Form weg liegt</translation>
  </message>
  <message>
   <source>Angles</source>
   <translation>Winkel</translation>
  </message>
  <message>
   <source>Area</source>
   <translation>Fläche</translation>
  </message>
  <message>
   <source>Area by class</source>
   <translation>Fläche je Klasse</translation>
  </message>
  <message>
   <source>Area of all patterns (mm²)</source>
   <translation>Fläche aller Schnittmuster (mm²)</translation>
  </message>
  <message>
   <source>Area of all seams (mm²)</source>
   <translation>Fläche aller Nähte (mm²)</translation>
  </message>
  <message>
   <source>Area of each class of draft (mm²)</source>
   <translation>Fläche jeder Klasse der Schräge (mm²)</translation>
  </message>
  <message>
   <source>Area of the moulded faces (mm²)</source>
   <translation>Fläche der Formflächen (mm²)</translation>
  </message>
  <message>
   <source>Area that cannot leave along the pull (mm²)</source>
   <translation>Fläche, die in Zugrichtung nicht heraus kann (mm²)</translation>
  </message>
  <message>
   <source>Areal mass</source>
   <translation>Flächengewicht</translation>
  </message>
  <message>
   <source>Areal weight of each cloth, card and scale (g/m²)</source>
   <translation>Flächengewicht jedes Gewebes, Karte und Waage (g/m²)</translation>
  </message>
  <message>
   <source>Assembly</source>
   <translation>Zusammenbau</translation>
  </message>
  <message>
   <source>At most so many pieces where one direction does not release the part; 1 refuses it, 0 takes as many as the Release Check</source>
   <translation>Höchstens so viele Stücke, wo eine Richtung das Teil nicht löst; 1 lehnt es ab, 0 nimmt so viele wie die Entformprüfung</translation>
  </message>
  <message>
   <source>BBasis</source>
   <translation>B-Basis</translation>
  </message>
  <message>
   <source>Bag closed</source>
   <translation>Sack geschlossen</translation>
  </message>
  <message>
   <source>Bag film</source>
   <translation>Vakuumfolie</translation>
  </message>
  <message>
   <source>Bag film by its card</source>
   <translation>Vakuumfolie nach ihrer Karte</translation>
  </message>
  <message>
   <source>Balls that no cut passes through, each as x, y, z of the part and radius (mm)</source>
   <translation>Kugeln, durch die kein Schnitt geht, jede als x, y, z des Teils und Radius (mm)</translation>
  </message>
  <message>
   <source>Barcol 934</source>
   <translation>Barcol 934</translation>
  </message>
  <message>
   <source>Base height</source>
   <translation>Sockelhöhe</translation>
  </message>
  <message>
   <source>Batch numbers, leaks, dry spots, who did it</source>
   <translation>Chargennummern, Lecks, trockene Stellen, wer es tat</translation>
  </message>
  <message>
   <source>Bend across</source>
   <translation>Biegung quer</translation>
  </message>
  <message>
   <source>Bend along</source>
   <translation>Biegung längs</translation>
  </message>
  <message>
   <source>Bend twist</source>
   <translation>Biegung, Verdrehen</translation>
  </message>
  <message>
   <source>Bending across</source>
   <translation>Biegemodul quer</translation>
  </message>
  <message>
   <source>Bending along</source>
   <translation>Biegemodul längs</translation>
  </message>
  <message>
   <source>Bends close</source>
   <translation>Biegungen schließen</translation>
  </message>
  <message>
   <source>Bends that close: listed, applied (the mould is opened by as much) or not considered</source>
   <translation>Biegungen, die sich schließen: aufgeführt, angewandt (die Form wird um ebenso viel geöffnet) oder nicht betrachtet</translation>
  </message>
  <message>
   <source>Best draft</source>
   <translation>Beste Schräge</translation>
  </message>
  <message>
   <source>Best pull</source>
   <translation>Beste Zugrichtung</translation>
  </message>
  <message>
   <source>Best pull by search, where something is held back</source>
   <translation>Beste Zugrichtung durch Suche, wo etwas festgehalten wird</translation>
  </message>
  <message>
   <source>Between which strains the modulus is taken</source>
   <translation>Zwischen welchen Dehnungen der Modul genommen wird</translation>
  </message>
  <message>
   <source>Body</source>
   <translation>Körper</translation>
  </message>
  <message>
   <source>Bolt holes</source>
   <translation>Schraubenlöcher</translation>
  </message>
  <message>
   <source>Bolt spacing</source>
   <translation>Schraubenabstand</translation>
  </message>
  <message>
   <source>Bottom</source>
   <translation>Boden</translation>
  </message>
  <message>
   <source>Breather</source>
   <translation>Absaugvlies</translation>
  </message>
  <message>
   <source>Breather by its card</source>
   <translation>Absaugvlies nach seiner Karte</translation>
  </message>
  <message>
   <source>Build</source>
   <translation>Aufbau</translation>
  </message>
  <message>
   <source>By how much each further ply of the same extent ends off the one before; 0 for what is usual, 20 times its thickness and at least 6 mm (mm)</source>
   <translation>Um wie viel jede weitere Lage desselben Umfangs von der vorigen versetzt endet; 0 für das Übliche, das 20-Fache ihrer Dicke und mindestens 6 mm (mm)</translation>
  </message>
  <message>
   <source>Cards</source>
   <translation>Karten</translation>
  </message>
  <message>
   <source>Cards of the materials in it, kept so that the job stays what it was; empty to take those of the library</source>
   <translation>Karten der Werkstoffe darin, behalten, damit der Auftrag bleibt, was er war; leeren, um die der Sammlung zu nehmen</translation>
  </message>
  <message>
   <source>Chord</source>
   <translation>Dehnungsbereich</translation>
  </message>
  <message>
   <source>Clearance</source>
   <translation>Spiel</translation>
  </message>
  <message>
   <source>Clearance of the dowel holes per side (mm)</source>
   <translation>Spiel der Dübellöcher je Seite (mm)</translation>
  </message>
  <message>
   <source>Clearance of tongues per side (mm)</source>
   <translation>Spiel der Federn je Seite (mm)</translation>
  </message>
  <message>
   <source>Clock</source>
   <translation>Uhrzeiten</translation>
  </message>
  <message>
   <source>Cloth (g)</source>
   <translation>Gewebe (g)</translation>
  </message>
  <message>
   <source>Cloth Patterns to print</source>
   <translation>Schnittmuster zum Drucken</translation>
  </message>
  <message>
   <source>Cloth beyond the trim line on every side (mm)</source>
   <translation>Stoff über die Beschneidlinie hinaus, an jeder Seite (mm)</translation>
  </message>
  <message>
   <source>Cloth margin</source>
   <translation>Stoffrand</translation>
  </message>
  <message>
   <source>Cloth mass</source>
   <translation>Stoffmasse</translation>
  </message>
  <message>
   <source>Cloth of each ply by its card; ply 1 touches the mould</source>
   <translation>Gewebe jeder Lage nach seiner Karte; Lage 1 liegt an der Form</translation>
  </message>
  <message>
   <source>Cloth to buy, all rolls together (mm)</source>
   <translation>Zu kaufendes Gewebe, alle Rollen zusammen (mm)</translation>
  </message>
  <message>
   <source>Cloths</source>
   <translation>Gewebe</translation>
  </message>
  <message>
   <source>Coats</source>
   <translation>Anstriche</translation>
  </message>
  <message>
   <source>Coats of mix on the mould before ply 1</source>
   <translation>Anstriche mit Mischung auf der Form vor Lage 1</translation>
  </message>
  <message>
   <source>Coats of mix over the last ply, to fill the weave</source>
   <translation>Anstriche mit Mischung über der letzten Lage, die das Gewebe füllen</translation>
  </message>
  <message>
   <source>Code that every sheet and file of this state carries</source>
   <translation>Kennung, die jedes Blatt und jede Datei dieses Standes trägt</translation>
  </message>
  <message>
   <source>Compensations</source>
   <translation>Ausgleiche</translation>
  </message>
  <message>
   <source>Compression counted</source>
   <translation>Druck, angerechnet</translation>
  </message>
  <message>
   <source>Core</source>
   <translation>Kern</translation>
  </message>
  <message>
   <source>Core between two plies by its card, empty for none</source>
   <translation>Kern zwischen zwei Lagen nach seiner Karte, leer für keinen</translation>
  </message>
  <message>
   <source>Core counted</source>
   <translation>Kern, angerechnet</translation>
  </message>
  <message>
   <source>Core on ply</source>
   <translation>Kern auf Lage</translation>
  </message>
  <message>
   <source>Core thickness</source>
   <translation>Kerndicke</translation>
  </message>
  <message>
   <source>Cost of one part, as far as there are prices</source>
   <translation>Kosten eines Teils, soweit es Preise gibt</translation>
  </message>
  <message>
   <source>Cost per part</source>
   <translation>Kosten je Teil</translation>
  </message>
  <message>
   <source>Count</source>
   <translation>Anzahl</translation>
  </message>
  <message>
   <source>Coupon span</source>
   <translation>Stützweite der Proben</translation>
  </message>
  <message>
   <source>Coupons</source>
   <translation>Proben</translation>
  </message>
  <message>
   <source>Criterion</source>
   <translation>Kriterium</translation>
  </message>
  <message>
   <source>Cup limit</source>
   <translation>Bechergrenze</translation>
  </message>
  <message>
   <source>Cups</source>
   <translation>Becher</translation>
  </message>
  <message>
   <source>Cups in order, with readings of the scale</source>
   <translation>Becher der Reihe nach, mit Ablesungen der Waage</translation>
  </message>
  <message>
   <source>Cure</source>
   <translation>Härtung</translation>
  </message>
  <message>
   <source>Currency</source>
   <translation>Währung</translation>
  </message>
  <message>
   <source>Cut area</source>
   <translation>Zuschnittfläche</translation>
  </message>
  <message>
   <source>Cut list</source>
   <translation>Zuschnittliste</translation>
  </message>
  <message>
   <source>Cuts</source>
   <translation>Schnitte</translation>
  </message>
  <message>
   <source>Cuts that are made, points in mm</source>
   <translation>Schnitte, die gemacht werden, Punkte in mm</translation>
  </message>
  <message>
   <source>Cuts that are proposed, points in mm</source>
   <translation>Schnitte, die vorgeschlagen werden, Punkte in mm</translation>
  </message>
  <message>
   <source>Cuts that are wanted across x of the grid (mm)</source>
   <translation>Gewünschte Schnitte quer zu x des Rasters (mm)</translation>
  </message>
  <message>
   <source>Cuts that are wanted across y of the grid (mm)</source>
   <translation>Gewünschte Schnitte quer zu y des Rasters (mm)</translation>
  </message>
  <message>
   <source>Cuts that are wanted across z of the grid (mm)</source>
   <translation>Gewünschte Schnitte quer zu z des Rasters (mm)</translation>
  </message>
  <message>
   <source>Cuts to make, each as in ProposedCuts; add 'refused' to one that you do not want</source>
   <translation>Schnitte, die gemacht werden sollen, jeder wie in ProposedCuts; 'refused' anfügen, wo einer nicht gewünscht ist</translation>
  </message>
  <message>
   <source>Date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <source>Date of the layup, such as 2026-11-25</source>
   <translation>Tag des Laminierens, wie 2026-11-25</translation>
  </message>
  <message>
   <source>Date of the test, for the cards</source>
   <translation>Tag des Versuchs, für die Karten</translation>
  </message>
  <message>
   <source>Datum direction</source>
   <translation>Richtung des Bezugspfeils</translation>
  </message>
  <message>
   <source>Datum edge</source>
   <translation>Bezugskante</translation>
  </message>
  <message>
   <source>Datum from</source>
   <translation>Bezugspfeil von</translation>
  </message>
  <message>
   <source>Datum point</source>
   <translation>Punkt des Bezugspfeils</translation>
  </message>
  <message>
   <source>Day begins</source>
   <translation>Arbeitsbeginn</translation>
  </message>
  <message>
   <source>Day ends</source>
   <translation>Arbeitsende</translation>
  </message>
  <message>
   <source>Decimal mark</source>
   <translation>Dezimalzeichen</translation>
  </message>
  <message>
   <source>Demould time</source>
   <translation>Zeit bis zum Entformen</translation>
  </message>
  <message>
   <source>Density of the glue (g/cm³)</source>
   <translation>Dichte des Klebers (g/cm³)</translation>
  </message>
  <message>
   <source>Depth of layer lines or texture across the pull (mm)</source>
   <translation>Tiefe von Drucklagen oder Struktur quer zum Zug (mm)</translation>
  </message>
  <message>
   <source>Depth of the dowel hole in each tile (mm)</source>
   <translation>Tiefe des Dübellochs in jeder Kachel (mm)</translation>
  </message>
  <message>
   <source>Depth of the engraved marks, 0 for none (mm)</source>
   <translation>Tiefe der gravierten Marken, 0 für keine (mm)</translation>
  </message>
  <message>
   <source>Depth of the scribed trim line (mm)</source>
   <translation>Tiefe der angerissenen Beschneidlinie (mm)</translation>
  </message>
  <message>
   <source>Deviation</source>
   <translation>Abweichung</translation>
  </message>
  <message>
   <source>Diagonal of a tongue's section (mm)</source>
   <translation>Diagonale des Querschnitts einer Feder (mm)</translation>
  </message>
  <message>
   <source>Diameter of a bore below the scrap, for air (mm)</source>
   <translation>Durchmesser einer Bohrung unter dem Abfall, für Luft (mm)</translation>
  </message>
  <message>
   <source>Diameter of four bores in the flange's corners (mm)</source>
   <translation>Durchmesser von vier Bohrungen in den Ecken des Flanschs (mm)</translation>
  </message>
  <message>
   <source>Diameter of the dowels (mm)</source>
   <translation>Durchmesser der Dübel (mm)</translation>
  </message>
  <message>
   <source>Diameter of the feet (mm)</source>
   <translation>Durchmesser der Füße (mm)</translation>
  </message>
  <message>
   <source>Diameter of the holes for bolts (mm)</source>
   <translation>Durchmesser der Löcher für Schrauben (mm)</translation>
  </message>
  <message>
   <source>Direction in which the part leaves the mould, when it is fixed</source>
   <translation>Richtung, in der das Teil die Form verlässt, wenn sie fest ist</translation>
  </message>
  <message>
   <source>Direction of the arrow</source>
   <translation>Richtung des Pfeils</translation>
  </message>
  <message>
   <source>Direction of the datum arrow there</source>
   <translation>Richtung des Bezugspfeils dort</translation>
  </message>
  <message>
   <source>Directions in which the part leaves the pieces</source>
   <translation>Richtungen, in denen das Teil die Formstücke verlässt</translation>
  </message>
  <message>
   <source>Distance kept by cuts of plies near by (mm)</source>
   <translation>Abstand, den Schnitte benachbarter Lagen einhalten (mm)</translation>
  </message>
  <message>
   <source>Distance of the supports</source>
   <translation>Stützweite</translation>
  </message>
  <message>
   <source>Distance of the supports that the test pieces are bent over</source>
   <translation>Abstand der Auflager, über die die Proben gebogen werden</translation>
  </message>
  <message>
   <source>Dowel depth</source>
   <translation>Dübeltiefe</translation>
  </message>
  <message>
   <source>Dowel diameter</source>
   <translation>Dübeldurchmesser</translation>
  </message>
  <message>
   <source>Draft found</source>
   <translation>Gefundene Schräge</translation>
  </message>
  <message>
   <source>Draft that is wanted at every piece; 0 takes that of the Release Check</source>
   <translation>Schräge, die an jedem Stück gewünscht ist; 0 nimmt die der Entformprüfung</translation>
  </message>
  <message>
   <source>Draft that is wanted everywhere, as set by hand; pieces of the Mould Body too</source>
   <translation>Schräge, die überall gewünscht ist, von Hand gesetzt; auch an den Stücken des Formkörpers</translation>
  </message>
  <message>
   <source>Draft that is wanted for this surface (degrees)</source>
   <translation>Schräge, die für diese Oberfläche gewünscht ist (Grad)</translation>
  </message>
  <message>
   <source>Drop off</source>
   <translation>Abstufung</translation>
  </message>
  <message>
   <source>Drop way</source>
   <translation>Richtung der Abstufung</translation>
  </message>
  <message>
   <source>Dry cloth</source>
   <translation>Trockenes Gewebe</translation>
  </message>
  <message>
   <source>Dry cloth, one weight for each piece in the order of the page 'Cut cloth' (g)</source>
   <translation>Trockenes Gewebe, ein Gewicht je Stück in der Reihenfolge der Seite 'Cut cloth' (g)</translation>
  </message>
  <message>
   <source>Each pattern with its area (m²) and largest shear</source>
   <translation>Jedes Schnittmuster mit Fläche (m²) und größter Scherung</translation>
  </message>
  <message>
   <source>Each piece: the direction in which the part leaves it, volume (cm³)</source>
   <translation>Jedes Stück: die Richtung, in der das Teil es verlässt, Volumen (cm³)</translation>
  </message>
  <message>
   <source>Ear height</source>
   <translation>Höhe der Spannohren</translation>
  </message>
  <message>
   <source>Ear reach</source>
   <translation>Ausladung der Spannohren</translation>
  </message>
  <message>
   <source>Ear thickness</source>
   <translation>Dicke der Spannohren</translation>
  </message>
  <message>
   <source>Edge</source>
   <translation>Rand</translation>
  </message>
  <message>
   <source>Edge of the part from whose middle the cloth is laid, the datum arrow along it</source>
   <translation>Kante des Teils, von deren Mitte aus das Gewebe gelegt wird, der Bezugspfeil läuft an ihr entlang</translation>
  </message>
  <message>
   <source>Edge tape</source>
   <translation>Kantenband</translation>
  </message>
  <message>
   <source>Edge tape along the cut lines (m)</source>
   <translation>Kantenband entlang der Schnittlinien (m)</translation>
  </message>
  <message>
   <source>Every piece of cloth takes besides (min)</source>
   <translation>So viel braucht jedes Stück Stoff außerdem (min)</translation>
  </message>
  <message>
   <source>Extents</source>
   <translation>Umfang</translation>
  </message>
  <message>
   <source>Extra for cups and brush (%)</source>
   <translation>Zuschlag für Becher und Pinsel (%)</translation>
  </message>
  <message>
   <source>Extra share</source>
   <translation>Zuschlag</translation>
  </message>
  <message>
   <source>Face</source>
   <translation>Fläche der Form</translation>
  </message>
  <message>
   <source>Face down</source>
   <translation>Gewebe gewendet</translation>
  </message>
  <message>
   <source>Faces</source>
   <translation>Flächen</translation>
  </message>
  <message>
   <source>Farthest from part</source>
   <translation>Größter Abstand zum Teil</translation>
  </message>
  <message>
   <source>Faults</source>
   <translation>Fehlstellen</translation>
  </message>
  <message>
   <source>Feet</source>
   <translation>Füße</translation>
  </message>
  <message>
   <source>Fibre by mass</source>
   <translation>Faser nach Masse</translation>
  </message>
  <message>
   <source>Fibre by thickness</source>
   <translation>Faser nach Dicke</translation>
  </message>
  <message>
   <source>Fibre volume</source>
   <translation>Faservolumen</translation>
  </message>
  <message>
   <source>Fibre volume fraction (%)</source>
   <translation>Faservolumenanteil (%)</translation>
  </message>
  <message>
   <source>Fibre volume from the masses (%)</source>
   <translation>Faservolumen aus den Massen (%)</translation>
  </message>
  <message>
   <source>Fibre volume from the thickness (%)</source>
   <translation>Faservolumen aus der Dicke (%)</translation>
  </message>
  <message>
   <source>File</source>
   <translation>Datei</translation>
  </message>
  <message>
   <source>Files</source>
   <translation>Dateien</translation>
  </message>
  <message>
   <source>Fill coat weight</source>
   <translation>Gewicht je Füllanstrich</translation>
  </message>
  <message>
   <source>Fill coats</source>
   <translation>Füllanstriche</translation>
  </message>
  <message>
   <source>Film that is sprayed over the wax, by its card</source>
   <translation>Film, der über das Wachs gesprüht wird, nach seiner Karte</translation>
  </message>
  <message>
   <source>Fingerprints of all faces of the part when these were taken</source>
   <translation>Kennzeichen aller Flächen des Teils, als diese gewählt wurden</translation>
  </message>
  <message>
   <source>Finish</source>
   <translation>Fertig</translation>
  </message>
  <message>
   <source>Fixed loss</source>
   <translation>Fester Verlust</translation>
  </message>
  <message>
   <source>Flange</source>
   <translation>Flansch</translation>
  </message>
  <message>
   <source>Flange between pieces (mm)</source>
   <translation>Flansch zwischen Stücken (mm)</translation>
  </message>
  <message>
   <source>Flange blend</source>
   <translation>Flanschradius</translation>
  </message>
  <message>
   <source>Flow mesh</source>
   <translation>Fließhilfe</translation>
  </message>
  <message>
   <source>Flow mesh by its card</source>
   <translation>Fließhilfe nach ihrer Karte</translation>
  </message>
  <message>
   <source>Folder</source>
   <translation>Ordner</translation>
  </message>
  <message>
   <source>Folder that the files were last written to</source>
   <translation>Ordner, in den die Dateien zuletzt geschrieben wurden</translation>
  </message>
  <message>
   <source>Foot diameter</source>
   <translation>Fußdurchmesser</translation>
  </message>
  <message>
   <source>Foot height</source>
   <translation>Fußhöhe</translation>
  </message>
  <message>
   <source>Force per width that presses it along the datum arrow, under which it may buckle (N/mm)</source>
   <translation>Kraft je Breite, die es längs des Bezugspfeils drückt und unter der es beulen kann (N/mm)</translation>
  </message>
  <message>
   <source>Free x</source>
   <translation>Frei x</translation>
  </message>
  <message>
   <source>Free y</source>
   <translation>Frei y</translation>
  </message>
  <message>
   <source>Free z</source>
   <translation>Frei z</translation>
  </message>
  <message>
   <source>From rib to rib in a hollow body (mm)</source>
   <translation>Von Rippe zu Rippe in einem hohlen Körper (mm)</translation>
  </message>
  <message>
   <source>From the first stir to the last ply, 0 if not read (min)</source>
   <translation>Vom ersten Rühren bis zur letzten Lage, 0 wenn nicht abgelesen (min)</translation>
  </message>
  <message>
   <source>From the first stir until it gelled, 0 if not read (h)</source>
   <translation>Vom ersten Rühren bis zum Gelieren, 0 wenn nicht abgelesen (h)</translation>
  </message>
  <message>
   <source>From the first stir until the last ply lies (h)</source>
   <translation>Vom ersten Rühren, bis die letzte Lage liegt (h)</translation>
  </message>
  <message>
   <source>Full hardness</source>
   <translation>Volle Härte</translation>
  </message>
  <message>
   <source>Gap</source>
   <translation>Abstand</translation>
  </message>
  <message>
   <source>Gap between the pieces (mm)</source>
   <translation>Abstand zwischen den Stücken (mm)</translation>
  </message>
  <message>
   <source>Gap between the pieces on the screen (mm)</source>
   <translation>Abstand zwischen den Stücken am Schirm (mm)</translation>
  </message>
  <message>
   <source>Gap between the tiles on the screen (mm)</source>
   <translation>Abstand zwischen den Kacheln am Schirm (mm)</translation>
  </message>
  <message>
   <source>Gauge of the hardness</source>
   <translation>Messgerät der Härte</translation>
  </message>
  <message>
   <source>Gel time</source>
   <translation>Gelzeit</translation>
  </message>
  <message>
   <source>Glass transition</source>
   <translation>Glasübergang</translation>
  </message>
  <message>
   <source>Glue area</source>
   <translation>Klebefläche</translation>
  </message>
  <message>
   <source>Glue density</source>
   <translation>Dichte des Klebers</translation>
  </message>
  <message>
   <source>Glue gap</source>
   <translation>Klebefuge</translation>
  </message>
  <message>
   <source>Glue gap at each seam (mm)</source>
   <translation>Klebefuge an jeder Naht (mm)</translation>
  </message>
  <message>
   <source>Glue mass</source>
   <translation>Klebermasse</translation>
  </message>
  <message>
   <source>Glue that fills the seams (g)</source>
   <translation>Kleber, der die Nähte füllt (g)</translation>
  </message>
  <message>
   <source>Grid turn</source>
   <translation>Drehung des Rasters</translation>
  </message>
  <message>
   <source>Hands at the mould</source>
   <translation>Hände an der Form</translation>
  </message>
  <message>
   <source>Hands lay and wet out a square metre in (min)</source>
   <translation>So lange wird ein Quadratmeter gelegt und getränkt (min)</translation>
  </message>
  <message>
   <source>Hands-on time without printing (h)</source>
   <translation>Handarbeit ohne Drucken (h)</translation>
  </message>
  <message>
   <source>Hardener (g)</source>
   <translation>Härter (g)</translation>
  </message>
  <message>
   <source>Hardener mass</source>
   <translation>Härtermasse</translation>
  </message>
  <message>
   <source>Hardness</source>
   <translation>Härte</translation>
  </message>
  <message>
   <source>Hardness at several places of the cured part</source>
   <translation>Härte an mehreren Stellen des gehärteten Teils</translation>
  </message>
  <message>
   <source>Hardness scale</source>
   <translation>Härteskala</translation>
  </message>
  <message>
   <source>Hashin</source>
   <translation>Hashin</translation>
  </message>
  <message>
   <source>Height below the lowest point of the edge (mm)</source>
   <translation>Höhe unter dem tiefsten Punkt des Randes (mm)</translation>
  </message>
  <message>
   <source>Height of an ear at most (mm)</source>
   <translation>Höhe eines Spannohrs, höchstens (mm)</translation>
  </message>
  <message>
   <source>Height of the feet (mm)</source>
   <translation>Höhe der Füße (mm)</translation>
  </message>
  <message>
   <source>How all its edges are held</source>
   <translation>Wie alle seine Ränder gehalten sind</translation>
  </message>
  <message>
   <source>How far a tongue stands out (mm)</source>
   <translation>Wie weit eine Feder vorsteht (mm)</translation>
  </message>
  <message>
   <source>How far clamp ears stand out (mm)</source>
   <translation>Wie weit Spannohren vorstehen (mm)</translation>
  </message>
  <message>
   <source>How it is laid up</source>
   <translation>Wie laminiert wird</translation>
  </message>
  <message>
   <source>How long it is held (h)</source>
   <translation>Wie lange gehalten wird (h)</translation>
  </message>
  <message>
   <source>How often the mould was used</source>
   <translation>Wie oft die Form benutzt wurde</translation>
  </message>
  <message>
   <source>How the coupons are loaded</source>
   <translation>Wie die Proben belastet werden</translation>
  </message>
  <message>
   <source>How the pull direction is chosen</source>
   <translation>Wie die Zugrichtung gewählt wird</translation>
  </message>
  <message>
   <source>How tiles may stand on the bed</source>
   <translation>Wie Kacheln auf dem Bett stehen dürfen</translation>
  </message>
  <message>
   <source>How times are taken to another temperature</source>
   <translation>Wie Zeiten auf eine andere Temperatur umgerechnet werden</translation>
  </message>
  <message>
   <source>Humidity</source>
   <translation>Feuchte</translation>
  </message>
  <message>
   <source>Inscription</source>
   <translation>Inschrift</translation>
  </message>
  <message>
   <source>Its regions by name, such as Face1; none takes all</source>
   <translation>Seine Bereiche mit Namen, wie Face1; keiner nimmt alle</translation>
  </message>
  <message>
   <source>Its width across the datum arrow (mm)</source>
   <translation>Seine Breite quer zum Bezugspfeil (mm)</translation>
  </message>
  <message>
   <source>Joint</source>
   <translation>Verbindung</translation>
  </message>
  <message>
   <source>Joint wall</source>
   <translation>Wand der Verbindung</translation>
  </message>
  <message>
   <source>Kept whole</source>
   <translation>Bleibt ganz</translation>
  </message>
  <message>
   <source>Known faces</source>
   <translation>Bekannte Flächen</translation>
  </message>
  <message>
   <source>Known shape</source>
   <translation>Bekannte Form</translation>
  </message>
  <message>
   <source>Laminate side</source>
   <translation>Seite des Laminats</translation>
  </message>
  <message>
   <source>Lap</source>
   <translation>Überlappung</translation>
  </message>
  <message>
   <source>Largest chord</source>
   <translation>Größte Sehne</translation>
  </message>
  <message>
   <source>Largest deviation</source>
   <translation>Größte Abweichung</translation>
  </message>
  <message>
   <source>Largest distance between a CAD face and the triangles that stand for it (mm)</source>
   <translation>Größter Abstand zwischen einer CAD-Fläche und ihren Dreiecken (mm)</translation>
  </message>
  <message>
   <source>Largest distance between bolts (mm)</source>
   <translation>Größter Abstand zwischen Schrauben (mm)</translation>
  </message>
  <message>
   <source>Largest distance found between faces and triangles (mm)</source>
   <translation>Größter gefundener Abstand zwischen Flächen und Dreiecken (mm)</translation>
  </message>
  <message>
   <source>Largest distance of the printed working area from the part's faces (mm)</source>
   <translation>Größter Abstand des gedruckten Arbeitsbereichs von den Flächen des Teils (mm)</translation>
  </message>
  <message>
   <source>Largest distance of the working area from the wanted surface, the chord of the triangles included (mm)</source>
   <translation>Größter Abstand des Arbeitsbereichs von der gewünschten Fläche, die Sehne der Dreiecke eingerechnet (mm)</translation>
  </message>
  <message>
   <source>Largest rectangles that remain (mm)</source>
   <translation>Größte Rechtecke, die übrig bleiben (mm)</translation>
  </message>
  <message>
   <source>Largest shear</source>
   <translation>Größte Scherung</translation>
  </message>
  <message>
   <source>Largest shear of any ply (degrees)</source>
   <translation>Größte Scherung einer Lage (Grad)</translation>
  </message>
  <message>
   <source>Layered shell of the part for a finite-element solver among the written files, and how its edge is held in its first load case</source>
   <translation>Geschichtete Schale des Teils für einen Finite-Elemente-Rechner unter den geschriebenen Dateien, und wie ihr Rand im ersten Lastfall gehalten ist</translation>
  </message>
  <message>
   <source>Laying hours</source>
   <translation>Legestunden</translation>
  </message>
  <message>
   <source>Laying time</source>
   <translation>Legezeit</translation>
  </message>
  <message>
   <source>Layup</source>
   <translation>Lagenaufbau</translation>
  </message>
  <message>
   <source>Least draft</source>
   <translation>Kleinste Schräge</translation>
  </message>
  <message>
   <source>Least draft along that direction (degrees)</source>
   <translation>Kleinste Schräge in dieser Richtung (Grad)</translation>
  </message>
  <message>
   <source>Least draft found (degrees)</source>
   <translation>Kleinste gefundene Schräge (Grad)</translation>
  </message>
  <message>
   <source>Least tile</source>
   <translation>Kleinste Kachel</translation>
  </message>
  <message>
   <source>Least wall</source>
   <translation>Kleinste Wand</translation>
  </message>
  <message>
   <source>Least wall measured; 0 for a solid body (mm)</source>
   <translation>Kleinste gemessene Wand; 0 bei massivem Körper (mm)</translation>
  </message>
  <message>
   <source>Least wall of a hollow body (mm)</source>
   <translation>Kleinste Wand eines hohlen Körpers (mm)</translation>
  </message>
  <message>
   <source>Left out</source>
   <translation>Ausgelassen</translation>
  </message>
  <message>
   <source>Left over</source>
   <translation>Übrig</translation>
  </message>
  <message>
   <source>Length of the trim line (mm)</source>
   <translation>Länge der Beschneidlinie (mm)</translation>
  </message>
  <message>
   <source>Length to cut and to buy (m), share used, of each cloth</source>
   <translation>Länge zum Schneiden und zum Kaufen (m), genutzter Anteil, für jedes Gewebe</translation>
  </message>
  <message>
   <source>Lengths that cloth is sold by (mm)</source>
   <translation>Längenschritt, in dem Gewebe verkauft wird (mm)</translation>
  </message>
  <message>
   <source>Letter</source>
   <translation>Letter</translation>
  </message>
  <message>
   <source>Lines between pieces: length (mm) and course</source>
   <translation>Linien zwischen Stücken: Länge (mm) und Verlauf</translation>
  </message>
  <message>
   <source>Load: force that presses on a small patch, by which a core is judged (N)</source>
   <translation>Last: Kraft, die auf einen kleinen Fleck drückt und nach der ein Kern beurteilt wird (N)</translation>
  </message>
  <message>
   <source>Load: moment per width that bends across the datum arrow, the far side stretched (N)</source>
   <translation>Last: Moment je Breite, das quer zum Bezugspfeil biegt, die abgewandte Seite gedehnt (N)</translation>
  </message>
  <message>
   <source>Load: moment per width that bends along the datum arrow, the far side stretched (N)</source>
   <translation>Last: Moment je Breite, das längs des Bezugspfeils biegt, die abgewandte Seite gedehnt (N)</translation>
  </message>
  <message>
   <source>Load: pull across the datum arrow, per width (N/mm)</source>
   <translation>Last: Zug quer zum Bezugspfeil, je Breite (N/mm)</translation>
  </message>
  <message>
   <source>Load: pull along the datum arrow, per width (N/mm)</source>
   <translation>Last: Zug längs des Bezugspfeils, je Breite (N/mm)</translation>
  </message>
  <message>
   <source>Load: shear in the plane, per width (N/mm)</source>
   <translation>Last: Schub in der Ebene, je Breite (N/mm)</translation>
  </message>
  <message>
   <source>Load: shear through the thickness when it is bent across the datum arrow, per width, by which a core is judged (N/mm)</source>
   <translation>Last: Schub durch die Dicke bei Biegung quer zum Bezugspfeil, je Breite, nach dem ein Kern beurteilt wird (N/mm)</translation>
  </message>
  <message>
   <source>Load: shear through the thickness when it is bent along the datum arrow, per width, by which a core is judged (N/mm)</source>
   <translation>Last: Schub durch die Dicke bei Biegung längs des Bezugspfeils, je Breite, nach dem ein Kern beurteilt wird (N/mm)</translation>
  </message>
  <message>
   <source>Load: twisting moment per width (N)</source>
   <translation>Last: Drillmoment je Breite (N)</translation>
  </message>
  <message>
   <source>Loading</source>
   <translation>Belastung</translation>
  </message>
  <message>
   <source>Loss that does not grow with the part (g)</source>
   <translation>Verlust, der nicht mit dem Teil wächst (g)</translation>
  </message>
  <message>
   <source>Lost</source>
   <translation>Verloren</translation>
  </message>
  <message>
   <source>Made cuts</source>
   <translation>Gemachte Schnitte</translation>
  </message>
  <message>
   <source>Margin</source>
   <translation>Zugabe</translation>
  </message>
  <message>
   <source>Margin of a side where it differs, seen along the datum arrow, such as ahead: 40 mm; also left, behind, right and holes</source>
   <translation>Rand einer Seite, wo er abweicht, längs des Bezugspfeils gesehen, wie ahead: 40 mm; auch left, behind, right und holes</translation>
  </message>
  <message>
   <source>Mark depth</source>
   <translation>Tiefe der Marken</translation>
  </message>
  <message>
   <source>Marked datum</source>
   <translation>Angezeichneter Bezugspfeil</translation>
  </message>
  <message>
   <source>Mass of the laminate without local plies (g/m²)</source>
   <translation>Masse des Laminats ohne örtliche Lagen (g/m²)</translation>
  </message>
  <message>
   <source>Mass of the part against the plan</source>
   <translation>Masse des Teils gegen den Plan</translation>
  </message>
  <message>
   <source>Material left around a hole or groove (mm)</source>
   <translation>Material, das um ein Loch oder eine Nut stehen bleibt (mm)</translation>
  </message>
  <message>
   <source>Mean modulus</source>
   <translation>Mittlerer Modul</translation>
  </message>
  <message>
   <source>Mean strength of those that broke, 0 if none did</source>
   <translation>Mittlere Festigkeit der gebrochenen, 0 wenn keine brach</translation>
  </message>
  <message>
   <source>Mirrored parts</source>
   <translation>Gespiegelte Teile</translation>
  </message>
  <message>
   <source>Mix cure</source>
   <translation>Mischen und Härten</translation>
  </message>
  <message>
   <source>Mix in one fill coat (g/m²)</source>
   <translation>Mischung in einem Füllanstrich (g/m²)</translation>
  </message>
  <message>
   <source>Mix in one seal coat (g/m²)</source>
   <translation>Mischung in einem Grundanstrich (g/m²)</translation>
  </message>
  <message>
   <source>Mix left in cups and tools, -1 if not weighed (g)</source>
   <translation>Mischung in Bechern und Werkzeug, -1 wenn nicht gewogen (g)</translation>
  </message>
  <message>
   <source>Mix made</source>
   <translation>Angesetzte Mischung</translation>
  </message>
  <message>
   <source>Mix that is not in the part (g)</source>
   <translation>Mischung, die nicht im Teil ist (g)</translation>
  </message>
  <message>
   <source>Modulus</source>
   <translation>Modul</translation>
  </message>
  <message>
   <source>Modulus in bending across the datum arrow</source>
   <translation>Biegemodul quer zum Bezugspfeil</translation>
  </message>
  <message>
   <source>Modulus in bending along the datum arrow</source>
   <translation>Biegemodul längs des Bezugspfeils</translation>
  </message>
  <message>
   <source>Modulus in plane across the datum arrow</source>
   <translation>Modul in der Ebene quer zum Bezugspfeil</translation>
  </message>
  <message>
   <source>Modulus in plane along the datum arrow</source>
   <translation>Modul in der Ebene längs des Bezugspfeils</translation>
  </message>
  <message>
   <source>More seam cost</source>
   <translation>Mehr Nahtkosten</translation>
  </message>
  <message>
   <source>More tiles</source>
   <translation>Mehr Kacheln</translation>
  </message>
  <message>
   <source>Most pieces</source>
   <translation>Höchstens Stücke</translation>
  </message>
  <message>
   <source>Most that is mixed in one cup (g)</source>
   <translation>Höchstens so viel wird in einem Becher gemischt (g)</translation>
  </message>
  <message>
   <source>Most time for the search of the cuts (s)</source>
   <translation>Höchste Zeit für die Suche der Schnitte (s)</translation>
  </message>
  <message>
   <source>Mould side</source>
   <translation>Seite der Form</translation>
  </message>
  <message>
   <source>Mould softening</source>
   <translation>Erweichen der Form</translation>
  </message>
  <message>
   <source>Mould surface</source>
   <translation>Oberfläche der Form</translation>
  </message>
  <message>
   <source>Mould use</source>
   <translation>Gebrauch der Form</translation>
  </message>
  <message>
   <source>Name and version engraved in a side</source>
   <translation>Name und Version, an einer Seite eingraviert</translation>
  </message>
  <message>
   <source>Name of the job, printed on every sheet</source>
   <translation>Name des Auftrags, auf jedem Blatt gedruckt</translation>
  </message>
  <message>
   <source>Name, size (mm), mass (g) and time (h) of each tile</source>
   <translation>Name, Größe (mm), Masse (g) und Zeit (h) jeder Kachel</translation>
  </message>
  <message>
   <source>No tile is thinner than this (mm)</source>
   <translation>Keine Kachel ist dünner als dies (mm)</translation>
  </message>
  <message>
   <source>Notes</source>
   <translation>Notizen</translation>
  </message>
  <message>
   <source>Number of coupons that are planned</source>
   <translation>Anzahl der geplanten Proben</translation>
  </message>
  <message>
   <source>Number of feet below the base: 0, 3 or 4</source>
   <translation>Anzahl der Füße unter dem Sockel: 0, 3 oder 4</translation>
  </message>
  <message>
   <source>Number of mirrored parts that are cut besides</source>
   <translation>Anzahl gespiegelter Teile, die außerdem zugeschnitten werden</translation>
  </message>
  <message>
   <source>Number of parts that are cut at once</source>
   <translation>Anzahl der Teile, die zugleich zugeschnitten werden</translation>
  </message>
  <message>
   <source>Number of parts that share what is paid once</source>
   <translation>Anzahl der Teile, die sich Einmaliges teilen</translation>
  </message>
  <message>
   <source>Number of patterns</source>
   <translation>Anzahl der Schnittmuster</translation>
  </message>
  <message>
   <source>Number of pockets for wedges at the mould's edge</source>
   <translation>Anzahl der Taschen für Keile am Rand der Form</translation>
  </message>
  <message>
   <source>Number of the ply that the core lies on</source>
   <translation>Nummer der Lage, auf der der Kern liegt</translation>
  </message>
  <message>
   <source>Number of tiles</source>
   <translation>Anzahl der Kacheln</translation>
  </message>
  <message>
   <source>Of the fully cured resin by its maker, 0 if unknown</source>
   <translation>Des voll gehärteten Harzes nach seinem Hersteller, 0 wenn unbekannt</translation>
  </message>
  <message>
   <source>Offcuts</source>
   <translation>Reststücke</translation>
  </message>
  <message>
   <source>Offcuts that are used first: cloth: length x width in mm</source>
   <translation>Reststücke, die zuerst verbraucht werden: Gewebe: Länge x Breite in mm</translation>
  </message>
  <message>
   <source>Panel edges</source>
   <translation>Ränder des Feldes</translation>
  </message>
  <message>
   <source>Panel length</source>
   <translation>Länge des Feldes</translation>
  </message>
  <message>
   <source>Panel pressure</source>
   <translation>Druck auf das Feld</translation>
  </message>
  <message>
   <source>Panel push</source>
   <translation>Schub auf das Feld</translation>
  </message>
  <message>
   <source>Panel width</source>
   <translation>Breite des Feldes</translation>
  </message>
  <message>
   <source>Paper</source>
   <translation>Papier</translation>
  </message>
  <message>
   <source>Paper of the printed sheets</source>
   <translation>Papier der gedruckten Blätter</translation>
  </message>
  <message>
   <source>Part trimmed</source>
   <translation>Teil, beschnitten</translation>
  </message>
  <message>
   <source>Part untrimmed</source>
   <translation>Teil, unbeschnitten</translation>
  </message>
  <message>
   <source>Parting lines</source>
   <translation>Trennlinien</translation>
  </message>
  <message>
   <source>Parts</source>
   <translation>Teile</translation>
  </message>
  <message>
   <source>Patterns</source>
   <translation>Schnittmuster</translation>
  </message>
  <message>
   <source>Peel ply</source>
   <translation>Abreißgewebe</translation>
  </message>
  <message>
   <source>Peel ply by its card</source>
   <translation>Abreißgewebe nach seiner Karte</translation>
  </message>
  <message>
   <source>People</source>
   <translation>Personen</translation>
  </message>
  <message>
   <source>Perforated film</source>
   <translation>Lochfolie</translation>
  </message>
  <message>
   <source>Piece bolts</source>
   <translation>Schrauben je Stück</translation>
  </message>
  <message>
   <source>Piece draft</source>
   <translation>Schräge je Stück</translation>
  </message>
  <message>
   <source>Piece flange</source>
   <translation>Flansch je Stück</translation>
  </message>
  <message>
   <source>Piece masses</source>
   <translation>Massen der Stücke</translation>
  </message>
  <message>
   <source>Piece pulls</source>
   <translation>Richtungen der Formstücke</translation>
  </message>
  <message>
   <source>Pieces</source>
   <translation>Stücke</translation>
  </message>
  <message>
   <source>Pieces in the order of cutting</source>
   <translation>Stücke in der Reihenfolge des Zuschnitts</translation>
  </message>
  <message>
   <source>Pinned x</source>
   <translation>Gesetzt x</translation>
  </message>
  <message>
   <source>Pinned y</source>
   <translation>Gesetzt y</translation>
  </message>
  <message>
   <source>Pinned z</source>
   <translation>Gesetzt z</translation>
  </message>
  <message>
   <source>Places on a roll that are left out: cloth: 1200 mm to 1230 mm, across 0 mm to 80 mm</source>
   <translation>Stellen auf einer Rolle, die ausgelassen werden: Gewebe: 1200 mm to 1230 mm, across 0 mm to 80 mm</translation>
  </message>
  <message>
   <source>Plain sheets that are cut besides and laid over the last ply, one on each line: 'film', 'peel ply', 'adhesive tape'</source>
   <translation>Bahnen ohne Verstärkung, die außerdem geschnitten und über die letzte Lage gelegt werden, eine je Zeile: 'film', 'peel ply', 'adhesive tape'</translation>
  </message>
  <message>
   <source>Plain sheets that are cut besides, with their area (m²)</source>
   <translation>Bahnen, die außerdem geschnitten werden, mit ihrer Fläche (m²)</translation>
  </message>
  <message>
   <source>Plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <source>Planned</source>
   <translation>Geplant</translation>
  </message>
  <message>
   <source>Planned and made, side by side</source>
   <translation>Geplant und gemacht, nebeneinander</translation>
  </message>
  <message>
   <source>Plastic and time before cutting, with the formula and the printer's card</source>
   <translation>Kunststoff und Zeit vor dem Zerlegen, mit der Formel und der Karte des Druckers</translation>
  </message>
  <message>
   <source>Plastic and time of all tiles together, by the printer's card</source>
   <translation>Kunststoff und Zeit aller Kacheln zusammen, nach der Karte des Druckers</translation>
  </message>
  <message>
   <source>Plastic expansion</source>
   <translation>Ausdehnung des Kunststoffs</translation>
  </message>
  <message>
   <source>Plate that closes a hollow body; 0 leaves it open (mm)</source>
   <translation>Platte, die einen hohlen Körper schließt; 0 lässt ihn offen (mm)</translation>
  </message>
  <message>
   <source>Ply time</source>
   <translation>Zeit je Lage</translation>
  </message>
  <message>
   <source>Point of the datum arrow on the face (mm)</source>
   <translation>Punkt des Bezugspfeils auf der Fläche (mm)</translation>
  </message>
  <message>
   <source>Pose</source>
   <translation>Stellung</translation>
  </message>
  <message>
   <source>Poses</source>
   <translation>Stellungen</translation>
  </message>
  <message>
   <source>Post cure</source>
   <translation>Nachhärten</translation>
  </message>
  <message>
   <source>Post cure on</source>
   <translation>Nachhärten auf</translation>
  </message>
  <message>
   <source>Post cure time</source>
   <translation>Dauer des Nachhärtens</translation>
  </message>
  <message>
   <source>Pressed area</source>
   <translation>Gedrückte Fläche</translation>
  </message>
  <message>
   <source>Pressed force</source>
   <translation>Druckkraft</translation>
  </message>
  <message>
   <source>Pressure on it, positive away from the mould (kPa)</source>
   <translation>Druck darauf, positiv von der Form weg (kPa)</translation>
  </message>
  <message>
   <source>Pressure on that shell, positive away from the mould (kPa)</source>
   <translation>Druck auf diese Schale, positiv von der Form weg (kPa)</translation>
  </message>
  <message>
   <source>Prices</source>
   <translation>Preise</translation>
  </message>
  <message>
   <source>Print Tiles to print</source>
   <translation>Druckkacheln zum Drucken</translation>
  </message>
  <message>
   <source>Print shrinkage</source>
   <translation>Schwund des Drucks</translation>
  </message>
  <message>
   <source>Printed beside the cost</source>
   <translation>Neben den Kosten gedruckt</translation>
  </message>
  <message>
   <source>Printer</source>
   <translation>Drucker</translation>
  </message>
  <message>
   <source>Printer by its card</source>
   <translation>Drucker nach seiner Karte</translation>
  </message>
  <message>
   <source>Printer by its card, for plastic and time; empty takes the one for new jobs</source>
   <translation>Drucker nach seiner Karte, für Kunststoff und Zeit; leer nimmt den für neue Aufträge</translation>
  </message>
  <message>
   <source>Printing</source>
   <translation>Druck</translation>
  </message>
  <message>
   <source>Process</source>
   <translation>Verfahren</translation>
  </message>
  <message>
   <source>Proposed cuts</source>
   <translation>Vorgeschlagene Schnitte</translation>
  </message>
  <message>
   <source>Pry pockets</source>
   <translation>Hebeltaschen</translation>
  </message>
  <message>
   <source>Pull</source>
   <translation>Zugrichtung</translation>
  </message>
  <message>
   <source>Pull across</source>
   <translation>Zug quer</translation>
  </message>
  <message>
   <source>Pull along</source>
   <translation>Zug längs</translation>
  </message>
  <message>
   <source>Pull axis</source>
   <translation>Zugachse</translation>
  </message>
  <message>
   <source>Pull direction with the largest least draft</source>
   <translation>Zugrichtung mit der größten kleinsten Schräge</translation>
  </message>
  <message>
   <source>Pull from</source>
   <translation>Zugrichtung aus</translation>
  </message>
  <message>
   <source>Pull shear</source>
   <translation>Zug, Schub</translation>
  </message>
  <message>
   <source>Pull used</source>
   <translation>Benutzte Zugrichtung</translation>
  </message>
  <message>
   <source>Quick estimate of a flat panel: its length along the datum arrow, 0 for none (mm)</source>
   <translation>Schnelle Schätzung eines ebenen Feldes: seine Länge am Bezugspfeil, 0 für keine (mm)</translation>
  </message>
  <message>
   <source>Radius between run-off and flange (mm)</source>
   <translation>Radius zwischen Auslauf und Flansch (mm)</translation>
  </message>
  <message>
   <source>Ramp</source>
   <translation>Rampe</translation>
  </message>
  <message>
   <source>Region points</source>
   <translation>Punkte der Bereiche</translation>
  </message>
  <message>
   <source>Regions</source>
   <translation>Bereiche</translation>
  </message>
  <message>
   <source>Relative humidity of the shop, 0 if not read (%)</source>
   <translation>Relative Feuchte der Werkstatt, 0 wenn nicht abgelesen (%)</translation>
  </message>
  <message>
   <source>Release</source>
   <translation>Entformen</translation>
  </message>
  <message>
   <source>Release agent</source>
   <translation>Trennmittel</translation>
  </message>
  <message>
   <source>Release film</source>
   <translation>Trennfilm</translation>
  </message>
  <message>
   <source>Release film over the peel ply, by its card</source>
   <translation>Trennfolie über dem Abreißgewebe, nach ihrer Karte</translation>
  </message>
  <message>
   <source>Release tape</source>
   <translation>Trennband</translation>
  </message>
  <message>
   <source>Release tape by its card</source>
   <translation>Trennband nach seiner Karte</translation>
  </message>
  <message>
   <source>Releasing pull</source>
   <translation>Zugrichtung, die löst</translation>
  </message>
  <message>
   <source>Remarks</source>
   <translation>Bemerkungen</translation>
  </message>
  <message>
   <source>Resin</source>
   <translation>Harz</translation>
  </message>
  <message>
   <source>Resin in the laminate, by mass (%)</source>
   <translation>Harz im Laminat, nach Masse (%)</translation>
  </message>
  <message>
   <source>Resin mass</source>
   <translation>Harzmasse</translation>
  </message>
  <message>
   <source>Resin share</source>
   <translation>Harzanteil</translation>
  </message>
  <message>
   <source>Resin system by its card</source>
   <translation>Harzsystem nach seiner Karte</translation>
  </message>
  <message>
   <source>Resin with hardener as a share of the laminate's mass, 0 for the usual share of the process (%)</source>
   <translation>Harz mit Härter als Anteil an der Masse des Laminats, 0 für den üblichen Anteil des Verfahrens (%)</translation>
  </message>
  <message>
   <source>Resin without hardener (g)</source>
   <translation>Harz ohne Härter (g)</translation>
  </message>
  <message>
   <source>Rib spacing</source>
   <translation>Rippenabstand</translation>
  </message>
  <message>
   <source>Rib thickness</source>
   <translation>Rippendicke</translation>
  </message>
  <message>
   <source>Roll</source>
   <translation>Rolle</translation>
  </message>
  <message>
   <source>Rolls</source>
   <translation>Rollen</translation>
  </message>
  <message>
   <source>Rule by which a ply is judged</source>
   <translation>Regel, nach der eine Lage beurteilt wird</translation>
  </message>
  <message>
   <source>Run off</source>
   <translation>Auslauf</translation>
  </message>
  <message>
   <source>Scale step</source>
   <translation>Teilung der Waage</translation>
  </message>
  <message>
   <source>Scan</source>
   <translation>Scan</translation>
  </message>
  <message>
   <source>Scribe depth</source>
   <translation>Tiefe der Anrisslinie</translation>
  </message>
  <message>
   <source>Scribe width</source>
   <translation>Breite der Anrisslinie</translation>
  </message>
  <message>
   <source>Seal coat weight</source>
   <translation>Gewicht je Grundanstrich</translation>
  </message>
  <message>
   <source>Seal coats</source>
   <translation>Grundanstriche</translation>
  </message>
  <message>
   <source>Sealant tape</source>
   <translation>Dichtband</translation>
  </message>
  <message>
   <source>Sealant tape by its card</source>
   <translation>Dichtband nach seiner Karte</translation>
  </message>
  <message>
   <source>Seam cost</source>
   <translation>Nahtkosten</translation>
  </message>
  <message>
   <source>Search time</source>
   <translation>Suchzeit</translation>
  </message>
  <message>
   <source>Second line, this far from the trim line (mm)</source>
   <translation>Zweite Linie, so weit von der Beschneidlinie (mm)</translation>
  </message>
  <message>
   <source>Set temperature</source>
   <translation>Härtetemperatur</translation>
  </message>
  <message>
   <source>Share of its turn by which a bend closes (%), as measured; 0 takes it from the Layup</source>
   <translation>Anteil ihres Winkels, um den sich eine Biegung schließt (%), wie gemessen; 0 nimmt ihn aus dem Lagenaufbau</translation>
  </message>
  <message>
   <source>Share of the cards' strength in compression that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Anteil der Druckfestigkeit der Karten, mit dem gerechnet wird, 0 für den üblichen des Verfahrens (%)</translation>
  </message>
  <message>
   <source>Share of the cards' strength in core that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Anteil der Kernfestigkeit der Karten, mit dem gerechnet wird, 0 für den üblichen des Verfahrens (%)</translation>
  </message>
  <message>
   <source>Share of the cards' strength in shear that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Anteil der Schubfestigkeit der Karten, mit dem gerechnet wird, 0 für den üblichen des Verfahrens (%)</translation>
  </message>
  <message>
   <source>Share of the cards' strength in tension that is counted on, 0 for the usual share of the process (%)</source>
   <translation>Anteil der Zugfestigkeit der Karten, mit dem gerechnet wird, 0 für den üblichen des Verfahrens (%)</translation>
  </message>
  <message>
   <source>Shear counted</source>
   <translation>Schub, angerechnet</translation>
  </message>
  <message>
   <source>Sheet</source>
   <translation>Blatt</translation>
  </message>
  <message>
   <source>Sheets</source>
   <translation>Bahnen</translation>
  </message>
  <message>
   <source>Shell elements</source>
   <translation>Schalenelemente</translation>
  </message>
  <message>
   <source>Shell file</source>
   <translation>Schalendatei</translation>
  </message>
  <message>
   <source>Shell pressure</source>
   <translation>Schalendruck</translation>
  </message>
  <message>
   <source>Shopping</source>
   <translation>Einkauf</translation>
  </message>
  <message>
   <source>Shore D</source>
   <translation>Shore D</translation>
  </message>
  <message>
   <source>Shown apart</source>
   <translation>Abstand am Schirm</translation>
  </message>
  <message>
   <source>Shrinkage of the print along x, y, z (%), made up for by a larger body</source>
   <translation>Schwund des Drucks in x, y, z (%), durch einen größeren Körper ausgeglichen</translation>
  </message>
  <message>
   <source>Side margins</source>
   <translation>Seitenränder</translation>
  </message>
  <message>
   <source>Side of the CAD face on which the laminate lies</source>
   <translation>Seite der CAD-Fläche, auf der das Laminat liegt</translation>
  </message>
  <message>
   <source>Side of the laminate on which the mould stands</source>
   <translation>Seite des Laminats, auf der die Form steht</translation>
  </message>
  <message>
   <source>Signature of the faces that the triangles stand for</source>
   <translation>Kennzeichen der Flächen, für die die Dreiecke stehen</translation>
  </message>
  <message>
   <source>Size of that patch (mm²)</source>
   <translation>Größe dieses Flecks (mm²)</translation>
  </message>
  <message>
   <source>Sizes, weights and what they should do</source>
   <translation>Maße, Gewichte und was sie leisten sollen</translation>
  </message>
  <message>
   <source>Smallest step of the scale (g)</source>
   <translation>Kleinster Schritt der Waage (g)</translation>
  </message>
  <message>
   <source>Sold by</source>
   <translation>Verkauft je</translation>
  </message>
  <message>
   <source>Span</source>
   <translation>Stützweite</translation>
  </message>
  <message>
   <source>Spring in</source>
   <translation>Einspringen</translation>
  </message>
  <message>
   <source>Stagger</source>
   <translation>Versatz</translation>
  </message>
  <message>
   <source>Start direction</source>
   <translation>Anfangsrichtung</translation>
  </message>
  <message>
   <source>Start point</source>
   <translation>Anfangspunkt</translation>
  </message>
  <message>
   <source>Stiffness across</source>
   <translation>Steifigkeit quer</translation>
  </message>
  <message>
   <source>Stiffness along</source>
   <translation>Steifigkeit längs</translation>
  </message>
  <message>
   <source>Straight edge, flat face or round face that gives the pull, when one is picked</source>
   <translation>Gerade Kante, ebene oder runde Fläche, die die Zugrichtung gibt, wenn eine gewählt ist</translation>
  </message>
  <message>
   <source>Strength</source>
   <translation>Festigkeit</translation>
  </message>
  <message>
   <source>Strength that 90 % exceed, with 95 % confidence</source>
   <translation>Festigkeit, die 90 % übertreffen, mit 95 % Sicherheit</translation>
  </message>
  <message>
   <source>Strength that 99 % exceed, with 95 % confidence</source>
   <translation>Festigkeit, die 99 % übertreffen, mit 95 % Sicherheit</translation>
  </message>
  <message>
   <source>Stretches along x of the grid without a cut, each as from and to (mm)</source>
   <translation>Strecken entlang x des Rasters ohne Schnitt, jede als von und bis (mm)</translation>
  </message>
  <message>
   <source>Stretches along y of the grid without a cut, each as from and to (mm)</source>
   <translation>Strecken entlang y des Rasters ohne Schnitt, jede als von und bis (mm)</translation>
  </message>
  <message>
   <source>Stretches along z of the grid without a cut, each as from and to (mm)</source>
   <translation>Strecken entlang z des Rasters ohne Schnitt, jede als von und bis (mm)</translation>
  </message>
  <message>
   <source>Surface of the mould: it decides which draft is wanted</source>
   <translation>Oberfläche der Form: sie bestimmt, welche Schräge gewünscht ist</translation>
  </message>
  <message>
   <source>Tape width</source>
   <translation>Bandbreite</translation>
  </message>
  <message>
   <source>Temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <source>Temperature at which the resin sets, the post-cure's where there is one (°C)</source>
   <translation>Temperatur, bei der das Harz fest wird, die des Nachhärtens, wo es eines gibt (°C)</translation>
  </message>
  <message>
   <source>Temperature of a post-cure, 0 for none (°C)</source>
   <translation>Temperatur des Nachhärtens, 0 für keines (°C)</translation>
  </message>
  <message>
   <source>Temperature of the shop (°C)</source>
   <translation>Temperatur der Werkstatt (°C)</translation>
  </message>
  <message>
   <source>Temperature of the shop, 0 if not read (°C)</source>
   <translation>Temperatur der Werkstatt, 0 wenn nicht abgelesen (°C)</translation>
  </message>
  <message>
   <source>Tension counted</source>
   <translation>Zug, angerechnet</translation>
  </message>
  <message>
   <source>Test pieces laid up beside the part, 0 for none</source>
   <translation>Proben, die neben dem Teil laminiert werden, 0 für keine</translation>
  </message>
  <message>
   <source>Tested</source>
   <translation>Geprüft</translation>
  </message>
  <message>
   <source>Texture depth</source>
   <translation>Tiefe der Struktur</translation>
  </message>
  <message>
   <source>The Cloth Patterns that are placed</source>
   <translation>Die Schnittmuster, die gelegt werden</translation>
  </message>
  <message>
   <source>The Cloth Patterns whose cloth is wetted</source>
   <translation>Die Schnittmuster, deren Gewebe getränkt wird</translation>
  </message>
  <message>
   <source>The Cloth Patterns whose datum is marked on the run-off; none for no marks</source>
   <translation>Die Schnittmuster, deren Bezugspfeil auf dem Auslauf angezeichnet wird; keine für keine Zeichen</translation>
  </message>
  <message>
   <source>The Job Sheet that the part was made by</source>
   <translation>Das Auftragsblatt, nach dem das Teil gemacht wurde</translation>
  </message>
  <message>
   <source>The Layup that the coupons are of</source>
   <translation>Der Lagenaufbau der Proben</translation>
  </message>
  <message>
   <source>The Layup whose plies are cut</source>
   <translation>Der Lagenaufbau, dessen Lagen zugeschnitten werden</translation>
  </message>
  <message>
   <source>The Layup whose thickness it allows for</source>
   <translation>Der Lagenaufbau, für dessen Dicke Platz bleibt</translation>
  </message>
  <message>
   <source>The Layup with its resin</source>
   <translation>Der Lagenaufbau mit seinem Harz</translation>
  </message>
  <message>
   <source>The Mould Body that is cut</source>
   <translation>Der Formkörper, der geschnitten wird</translation>
  </message>
  <message>
   <source>The Moulded Face that is checked</source>
   <translation>Die Formfläche, die geprüft wird</translation>
  </message>
  <message>
   <source>The Moulded Face that it forms</source>
   <translation>Die Formfläche, die er formt</translation>
  </message>
  <message>
   <source>The Moulded Face that the cloth covers</source>
   <translation>Die Formfläche, die der Stoff bedeckt</translation>
  </message>
  <message>
   <source>The Print Tiles whose plastic the mould is made of</source>
   <translation>Die Druckkacheln, aus deren Kunststoff die Form ist</translation>
  </message>
  <message>
   <source>The Release Check that says draft and number of pieces</source>
   <translation>Die Entformprüfung, die Schräge und Zahl der Stücke vorgibt</translation>
  </message>
  <message>
   <source>The Scanned Part whose regions are moulded, instead of faces</source>
   <translation>Das gescannte Teil, dessen Bereiche geformt werden, statt der Flächen</translation>
  </message>
  <message>
   <source>The cured part before it is trimmed (g)</source>
   <translation>Das gehärtete Teil vor dem Beschneiden (g)</translation>
  </message>
  <message>
   <source>The order in which the tiles are glued</source>
   <translation>Die Reihenfolge, in der die Kacheln geklebt werden</translation>
  </message>
  <message>
   <source>The part after it is trimmed, 0 if not weighed (g)</source>
   <translation>Das Teil nach dem Beschneiden, 0 wenn nicht gewogen (g)</translation>
  </message>
  <message>
   <source>The part and its faces that are moulded</source>
   <translation>Das Teil und seine Flächen, die geformt werden</translation>
  </message>
  <message>
   <source>The pull direction in use</source>
   <translation>Die benutzte Zugrichtung</translation>
  </message>
  <message>
   <source>The records of the coupons</source>
   <translation>Die Aufzeichnungen der Proben</translation>
  </message>
  <message>
   <source>Thermal expansion of the plastic (1e-6 per K)</source>
   <translation>Wärmeausdehnung des Kunststoffs (1e-6 per K)</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>Thickness at several places, away from laps (mm)</source>
   <translation>Dicke an mehreren Stellen, abseits von Überlappungen (mm)</translation>
  </message>
  <message>
   <source>Thickness of an ear along the clamp (mm)</source>
   <translation>Dicke eines Spannohrs längs der Zwinge (mm)</translation>
  </message>
  <message>
   <source>Thickness of the core (mm)</source>
   <translation>Dicke des Kerns (mm)</translation>
  </message>
  <message>
   <source>Thickness of the laminate without local plies (mm)</source>
   <translation>Dicke des Laminats ohne örtliche Lagen (mm)</translation>
  </message>
  <message>
   <source>Thickness of the ribs (mm)</source>
   <translation>Dicke der Rippen (mm)</translation>
  </message>
  <message>
   <source>Thicknesses</source>
   <translation>Dicken</translation>
  </message>
  <message>
   <source>Through across</source>
   <translation>Quer hindurch</translation>
  </message>
  <message>
   <source>Through along</source>
   <translation>Längs hindurch</translation>
  </message>
  <message>
   <source>Tiles</source>
   <translation>Kacheln</translation>
  </message>
  <message>
   <source>Tiles and cut-outs together against the body (relative)</source>
   <translation>Kacheln und Aussparungen zusammen gegen den Körper (relativ)</translation>
  </message>
  <message>
   <source>Tiles more because of pinned and forbidden cuts</source>
   <translation>Mehr Kacheln durch gesetzte und verbotene Schnitte</translation>
  </message>
  <message>
   <source>Time rule</source>
   <translation>Zeitregel</translation>
  </message>
  <message>
   <source>Time spent looking for a shorter plan (s)</source>
   <translation>Zeit für die Suche nach einem kürzeren Plan (s)</translation>
  </message>
  <message>
   <source>Times at the shop's temperature</source>
   <translation>Zeiten bei der Temperatur der Werkstatt</translation>
  </message>
  <message>
   <source>Title</source>
   <translation>Titel</translation>
  </message>
  <message>
   <source>To buy</source>
   <translation>Zu kaufen</translation>
  </message>
  <message>
   <source>Tongue clearance</source>
   <translation>Spiel der Federn</translation>
  </message>
  <message>
   <source>Tongue length</source>
   <translation>Länge der Federn</translation>
  </message>
  <message>
   <source>Tongue width</source>
   <translation>Breite der Federn</translation>
  </message>
  <message>
   <source>Trim guide</source>
   <translation>Beschneidhilfe</translation>
  </message>
  <message>
   <source>Trim line</source>
   <translation>Beschneidlinie</translation>
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
   <translation>Drehung des Rasters um die Zugrichtung (°); -1 überlässt sie der Suche, solange kein Schnitt gesetzt ist</translation>
  </message>
  <message>
   <source>Under load</source>
   <translation>Unter Last</translation>
  </message>
  <message>
   <source>Undercut area</source>
   <translation>Hinterschnittene Fläche</translation>
  </message>
  <message>
   <source>Until it left the mould, 0 if not read (h)</source>
   <translation>Bis es die Form verließ, 0 wenn nicht abgelesen (h)</translation>
  </message>
  <message>
   <source>Unusable edge on each side of the roll (mm)</source>
   <translation>Unbrauchbarer Rand an jeder Seite der Rolle (mm)</translation>
  </message>
  <message>
   <source>Verdict</source>
   <translation>Urteil</translation>
  </message>
  <message>
   <source>Version</source>
   <translation>Version</translation>
  </message>
  <message>
   <source>Version of the job that the part was made by</source>
   <translation>Version des Auftrags, nach dem das Teil gemacht wurde</translation>
  </message>
  <message>
   <source>Void share</source>
   <translation>Porenanteil</translation>
  </message>
  <message>
   <source>Voids</source>
   <translation>Poren</translation>
  </message>
  <message>
   <source>Volume</source>
   <translation>Volumen</translation>
  </message>
  <message>
   <source>Volume error</source>
   <translation>Volumenfehler</translation>
  </message>
  <message>
   <source>Volume of the body (mm³)</source>
   <translation>Volumen des Körpers (mm³)</translation>
  </message>
  <message>
   <source>Wall</source>
   <translation>Wand</translation>
  </message>
  <message>
   <source>Wanted draft</source>
   <translation>Gewünschte Schräge</translation>
  </message>
  <message>
   <source>Warmer than the printed size when the resin gels (K)</source>
   <translation>Wärmer als bei gedruckter Größe, wenn das Harz geliert (K)</translation>
  </message>
  <message>
   <source>Warming</source>
   <translation>Erwärmung</translation>
  </message>
  <message>
   <source>Warming and cooling in an hour (°C)</source>
   <translation>Erwärmen und Abkühlen in einer Stunde (°C)</translation>
  </message>
  <message>
   <source>Wax</source>
   <translation>Wachs</translation>
  </message>
  <message>
   <source>Wax by its card</source>
   <translation>Wachs nach seiner Karte</translation>
  </message>
  <message>
   <source>Weighted length of all seams on the working face (mm)</source>
   <translation>Gewichtete Länge aller Nähte auf der Arbeitsfläche (mm)</translation>
  </message>
  <message>
   <source>Weighted seams more because of these cuts (mm)</source>
   <translation>Mehr gewichtete Nähte durch diese Schnitte (mm)</translation>
  </message>
  <message>
   <source>What begins when</source>
   <translation>Was wann beginnt</translation>
  </message>
  <message>
   <source>What each coupon gave</source>
   <translation>Was jede Probe ergab</translation>
  </message>
  <message>
   <source>What each ply covers: a line for each, empty for the whole face, or such as '30 mm round 10, 20, 5', '25 mm along the edge', 'faces Face3, Face5'; lines may be left out at the end</source>
   <translation>Was jede Lage bedeckt: eine Zeile für jede, leer für die ganze Fläche, oder etwa '30 mm round 10, 20, 5' (rund um einen Punkt), '25 mm along the edge' (entlang des Rands), 'faces Face3, Face5' (Flächen); am Ende dürfen Zeilen fehlen</translation>
  </message>
  <message>
   <source>What each tile stands on, and what hangs over (cm²)</source>
   <translation>Worauf jede Kachel steht, und was überhängt (cm²)</translation>
  </message>
  <message>
   <source>What fails first under the load</source>
   <translation>Was unter der Last zuerst versagt</translation>
  </message>
  <message>
   <source>What follows from it</source>
   <translation>Was daraus folgt</translation>
  </message>
  <message>
   <source>What happens to a pattern that is wider than its roll</source>
   <translation>Was mit einem Schnittmuster geschieht, das breiter als seine Rolle ist</translation>
  </message>
  <message>
   <source>What holds the part during the post-cure</source>
   <translation>Was das Teil beim Nachhärten hält</translation>
  </message>
  <message>
   <source>What holds the tiles in place while the glue sets</source>
   <translation>Was die Kacheln hält, bis der Kleber fest ist</translation>
  </message>
  <message>
   <source>What is allowed for: size and place</source>
   <translation>Was ausgeglichen wird: Größe und Ort</translation>
  </message>
  <message>
   <source>What is bought</source>
   <translation>Was gekauft wird</translation>
  </message>
  <message>
   <source>What is printed to trim by</source>
   <translation>Was zum Beschneiden gedruckt wird</translation>
  </message>
  <message>
   <source>What keeps the part from sticking</source>
   <translation>Was das Teil vom Kleben abhält</translation>
  </message>
  <message>
   <source>What lies inside</source>
   <translation>Was innen ist</translation>
  </message>
  <message>
   <source>What primer, sealer or film add to the print (mm)</source>
   <translation>Was Grundierung, Versiegelung oder Film auf den Druck auftragen (mm)</translation>
  </message>
  <message>
   <source>What stands between whole and fraction on printed sheets; tables for other programs keep the point</source>
   <translation>Was auf gedruckten Blättern vor den Dezimalstellen steht; Tabellen für andere Programme behalten den Punkt</translation>
  </message>
  <message>
   <source>What to do where the cloth would shear or stretch past its limits</source>
   <translation>Was zu tun ist, wo das Gewebe über seine Grenzen geschert oder gedehnt würde</translation>
  </message>
  <message>
   <source>What to know about this layup</source>
   <translation>Was zu diesem Lagenaufbau zu wissen ist</translation>
  </message>
  <message>
   <source>What to know about this plan</source>
   <translation>Was zu diesem Plan zu wissen ist</translation>
  </message>
  <message>
   <source>What to know before going on</source>
   <translation>Was vor dem Weitergehen zu wissen ist</translation>
  </message>
  <message>
   <source>What to know before printing</source>
   <translation>Was vor dem Drucken zu wissen ist</translation>
  </message>
  <message>
   <source>What to watch</source>
   <translation>Worauf zu achten ist</translation>
  </message>
  <message>
   <source>What to watch, and how it compares with the prediction</source>
   <translation>Worauf zu achten ist, und wie es zur Vorhersage steht</translation>
  </message>
  <message>
   <source>What was allowed for, and what is not done</source>
   <translation>Was ausgeglichen wurde, und was nicht gemacht ist</translation>
  </message>
  <message>
   <source>When all is done, at the earliest</source>
   <translation>Wann alles fertig ist, frühestens</translation>
  </message>
  <message>
   <source>Where a bag is closed</source>
   <translation>Wo ein Sack geschlossen wird</translation>
  </message>
  <message>
   <source>Where local plies lie: the plies of each zone, its area, thickness and mass</source>
   <translation>Wo örtliche Lagen liegen: die Lagen jeder Zone, ihre Fläche, Dicke und Masse</translation>
  </message>
  <message>
   <source>Where no direction releases the part, up to so many pieces are tried; 1 for none; the Mould Body takes it, too</source>
   <translation>Wo keine Richtung das Teil entformt, werden bis zu so viele Formstücke versucht; 1 für keine; der Formkörper übernimmt es</translation>
  </message>
  <message>
   <source>Where past limits</source>
   <translation>Über den Grenzen</translation>
  </message>
  <message>
   <source>Where the cloth is laid first (mm)</source>
   <translation>Wo das Gewebe zuerst angelegt wird (mm)</translation>
  </message>
  <message>
   <source>Where the cloth will not lie down by itself</source>
   <translation>Wo der Stoff sich nicht von selbst anlegt</translation>
  </message>
  <message>
   <source>Where the cured part softens (°C)</source>
   <translation>Wo das gehärtete Teil erweicht (°C)</translation>
  </message>
  <message>
   <source>Where the cuts lie along the grid's axes (mm)</source>
   <translation>Wo die Schnitte auf den Achsen des Rasters liegen (mm)</translation>
  </message>
  <message>
   <source>Where the datum arrow comes from</source>
   <translation>Woher der Bezugspfeil kommt</translation>
  </message>
  <message>
   <source>Where the mould's plastic softens, 0 for that of the printer's card (°C)</source>
   <translation>Wo der Kunststoff der Form erweicht, 0 für den der Druckerkarte (°C)</translation>
  </message>
  <message>
   <source>Where the record was written last</source>
   <translation>Wohin die Aufzeichnung zuletzt geschrieben wurde</translation>
  </message>
  <message>
   <source>Whether further plies of the same extent end further in or out</source>
   <translation>Ob weitere Lagen desselben Umfangs weiter innen oder weiter außen enden</translation>
  </message>
  <message>
   <source>Whether pieces may be cut with the cloth face down</source>
   <translation>Ob Stücke aus gewendetem Gewebe geschnitten werden dürfen</translation>
  </message>
  <message>
   <source>Whether the part was taken as good; accepted ones teach the next plan</source>
   <translation>Ob das Teil als gut angenommen wurde; angenommene lehren den nächsten Plan</translation>
  </message>
  <message>
   <source>Whether the written files fit the present job</source>
   <translation>Ob die geschriebenen Dateien zum jetzigen Auftrag passen</translation>
  </message>
  <message>
   <source>Wide patterns</source>
   <translation>Breite Schnittmuster</translation>
  </message>
  <message>
   <source>Width of a lap along a cut (mm)</source>
   <translation>Breite der Überlappung an einem Schnitt (mm)</translation>
  </message>
  <message>
   <source>Width of a level flange around the run-off (mm)</source>
   <translation>Breite eines ebenen Flanschs um den Auslauf (mm)</translation>
  </message>
  <message>
   <source>Width of a roll where it is not the card's: cloth: 1.27 m</source>
   <translation>Breite einer Rolle, wo sie von der Karte abweicht: Gewebe: 1.27 m</translation>
  </message>
  <message>
   <source>Width of release tape (mm)</source>
   <translation>Breite des Trennbands (mm)</translation>
  </message>
  <message>
   <source>Width of the run-off beyond the trim line (mm)</source>
   <translation>Breite des Auslaufs über die Beschneidlinie hinaus (mm)</translation>
  </message>
  <message>
   <source>Width of the scribed trim line (mm)</source>
   <translation>Breite der angerissenen Beschneidlinie (mm)</translation>
  </message>
  <message>
   <source>Widths</source>
   <translation>Breiten</translation>
  </message>
  <message>
   <source>Work</source>
   <translation>Arbeit</translation>
  </message>
  <message>
   <source>Work begins, such as 08:00</source>
   <translation>Arbeit beginnt, wie 08:00</translation>
  </message>
  <message>
   <source>Work ends</source>
   <translation>Arbeit endet</translation>
  </message>
  <message>
   <source>Your own prices, a line such as: Peel ply = 4.20 per m^2</source>
   <translation>Ihre eigenen Preise, eine Zeile wie: Peel ply = 4.20 per m^2</translation>
  </message>
  <message>
   <source>Zones</source>
   <translation>Zonen</translation>
  </message>
  <message>
   <source>a cradle</source>
   <translation>eine Wiege</translation>
  </message>
  <message>
   <source>accepted</source>
   <translation>angenommen</translation>
  </message>
  <message>
   <source>activation energy of the resin</source>
   <translation>Aktivierungsenergie des Harzes</translation>
  </message>
  <message>
   <source>applied</source>
   <translation>angewandt</translation>
  </message>
  <message>
   <source>bagged</source>
   <translation>im Vakuumsack</translation>
  </message>
  <message>
   <source>base on the bed</source>
   <translation>Sockel auf dem Bett</translation>
  </message>
  <message>
   <source>base or a side on the bed</source>
   <translation>Sockel oder Seite auf dem Bett</translation>
  </message>
  <message>
   <source>before a later part</source>
   <translation>vor einem späteren Teil</translation>
  </message>
  <message>
   <source>before the second part</source>
   <translation>vor dem zweiten Teil</translation>
  </message>
  <message>
   <source>bent over three points</source>
   <translation>über drei Punkte gebogen</translation>
  </message>
  <message>
   <source>clamped</source>
   <translation>eingespannt</translation>
  </message>
  <message>
   <source>comma</source>
   <translation>Komma</translation>
  </message>
  <message>
   <source>dowels</source>
   <translation>Dübel</translation>
  </message>
  <message>
   <source>draft set by hand</source>
   <translation>Schräge von Hand gesetzt</translation>
  </message>
  <message>
   <source>edge can neither turn nor shift</source>
   <translation>Rand kann weder drehen noch gleiten</translation>
  </message>
  <message>
   <source>edge can turn but not shift</source>
   <translation>Rand kann drehen, nicht gleiten</translation>
  </message>
  <message>
   <source>fixed direction</source>
   <translation>feste Richtung</translation>
  </message>
  <message>
   <source>flat</source>
   <translation>eben</translation>
  </message>
  <message>
   <source>flat with clamp ears</source>
   <translation>eben mit Spannohren</translation>
  </message>
  <message>
   <source>further in</source>
   <translation>weiter innen</translation>
  </message>
  <message>
   <source>further out</source>
   <translation>weiter außen</translation>
  </message>
  <message>
   <source>hand</source>
   <translation>von Hand</translation>
  </message>
  <message>
   <source>hollow with ribs</source>
   <translation>hohl mit Rippen</translation>
  </message>
  <message>
   <source>infused</source>
   <translation>infundiert</translation>
  </message>
  <message>
   <source>inside (plug)</source>
   <translation>innen (positiv)</translation>
  </message>
  <message>
   <source>inside the part</source>
   <translation>im Teil</translation>
  </message>
  <message>
   <source>keyed tongues</source>
   <translation>Federn in Nuten</translation>
  </message>
  <message>
   <source>largest least draft</source>
   <translation>größte kleinste Schräge</translation>
  </message>
  <message>
   <source>layer lines across the pull</source>
   <translation>Drucklagen quer zum Zug</translation>
  </message>
  <message>
   <source>listed</source>
   <translation>aufgeführt</translation>
  </message>
  <message>
   <source>maximum strain</source>
   <translation>größte Dehnung</translation>
  </message>
  <message>
   <source>maximum stress</source>
   <translation>größte Spannung</translation>
  </message>
  <message>
   <source>middle of the face, along it</source>
   <translation>Mitte der Fläche, der Länge nach</translation>
  </message>
  <message>
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <source>new or refinished</source>
   <translation>neu oder frisch überarbeitet</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>not considered</source>
   <translation>nicht betrachtet</translation>
  </message>
  <message>
   <source>not decided</source>
   <translation>nicht entschieden</translation>
  </message>
  <message>
   <source>not written</source>
   <translation>nicht geschrieben</translation>
  </message>
  <message>
   <source>nothing is proposed</source>
   <translation>nichts wird vorgeschlagen</translation>
  </message>
  <message>
   <source>on the flange</source>
   <translation>auf dem Flansch</translation>
  </message>
  <message>
   <source>outside (cavity)</source>
   <translation>außen (negativ)</translation>
  </message>
  <message>
   <source>outside the part</source>
   <translation>außerhalb des Teils</translation>
  </message>
  <message>
   <source>paper at true scale</source>
   <translation>Papier in wahrer Größe</translation>
  </message>
  <message>
   <source>picked edge</source>
   <translation>gewählte Kante</translation>
  </message>
  <message>
   <source>picked edge or face</source>
   <translation>gewählte Kante oder Fläche</translation>
  </message>
  <message>
   <source>point</source>
   <translation>Punkt</translation>
  </message>
  <message>
   <source>point and direction below</source>
   <translation>Punkt und Richtung unten</translation>
  </message>
  <message>
   <source>proposed cuts are made</source>
   <translation>vorgeschlagene Schnitte werden gemacht</translation>
  </message>
  <message>
   <source>proposed cuts are shown</source>
   <translation>vorgeschlagene Schnitte werden gezeigt</translation>
  </message>
  <message>
   <source>pulled along their length</source>
   <translation>der Länge nach gezogen</translation>
  </message>
  <message>
   <source>refused, with a split proposed</source>
   <translation>abgelehnt, mit Vorschlag zur Teilung</translation>
  </message>
  <message>
   <source>rejected</source>
   <translation>verworfen</translation>
  </message>
  <message>
   <source>release tape</source>
   <translation>Trennband</translation>
  </message>
  <message>
   <source>ring to be printed</source>
   <translation>Ring zum Drucken</translation>
  </message>
  <message>
   <source>round the whole mould</source>
   <translation>um die ganze Form</translation>
  </message>
  <message>
   <source>shell</source>
   <translation>Schale</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>frei aufliegend</translation>
  </message>
  <message>
   <source>smooth, sealed</source>
   <translation>glatt, versiegelt</translation>
  </message>
  <message>
   <source>solid</source>
   <translation>massiv</translation>
  </message>
  <message>
   <source>split along the warp</source>
   <translation>längs der Kette geteilt</translation>
  </message>
  <message>
   <source>strains 0.05 to 0.25 % (ISO 527)</source>
   <translation>Dehnungen 0,05 bis 0,25 % (ISO 527)</translation>
  </message>
  <message>
   <source>strains 0.1 to 0.3 % (ASTM D3039)</source>
   <translation>Dehnungen 0,1 bis 0,3 % (ASTM D3039)</translation>
  </message>
  <message>
   <source>textured</source>
   <translation>strukturiert</translation>
  </message>
  <message>
   <source>the mould</source>
   <translation>die Form</translation>
  </message>
  <message>
   <source>wax</source>
   <translation>Wachs</translation>
  </message>
  <message>
   <source>wax and film</source>
   <translation>Wachs und Film</translation>
  </message>
  <message>
   <source>where both faces of the cloth are alike</source>
   <translation>wo beide Seiten des Gewebes gleich sind</translation>
  </message>
  <message>
   <source>where the cloth shears least</source>
   <translation>wo das Gewebe am wenigsten schert</translation>
  </message>
 </context>
 <context>
  <name>Laywright</name>
  <message>
   <source>* may stay empty. Numbers with a point.</source>
   <translation>* darf leer bleiben. Zahlen mit Punkt.</translation>
  </message>
  <message>
   <source>Across, N m</source>
   <translation>Quer, N m</translation>
  </message>
  <message>
   <source>Add</source>
   <translation>Hinzufügen</translation>
  </message>
  <message>
   <source>Add readings …</source>
   <translation>Messwerte hinzufügen …</translation>
  </message>
  <message>
   <source>Add the place clicked on</source>
   <translation>Angeklickte Stelle hinzunehmen</translation>
  </message>
  <message>
   <source>Allowed cloths</source>
   <translation>Erlaubte Gewebe</translation>
  </message>
  <message>
   <source>Angle (°)</source>
   <translation>Winkel (°)</translation>
  </message>
  <message>
   <source>Angles (°)</source>
   <translation>Winkel (°)</translation>
  </message>
  <message>
   <source>As stiff when bent: {0}.</source>
   <translation>Bei Biegung so steif wie: {0}.</translation>
  </message>
  <message>
   <source>Away from it</source>
   <translation>Von der Form weg</translation>
  </message>
  <message>
   <source>Balanced.</source>
   <translation>Ausgewogen.</translation>
  </message>
  <message>
   <source>Begin a new card with these values under another name</source>
   <translation>Eine neue Karte mit diesen Werten unter anderem Namen beginnen</translation>
  </message>
  <message>
   <source>Begun from the chosen one; its card is kept in your folder</source>
   <translation>Beginnt mit dem gewählten; die Karte kommt in Ihren Ordner</translation>
  </message>
  <message>
   <source>Bending across</source>
   <translation>Biegemodul quer</translation>
  </message>
  <message>
   <source>Bending across, at least</source>
   <translation>Biegung quer, mindestens</translation>
  </message>
  <message>
   <source>Bending along</source>
   <translation>Biegemodul längs</translation>
  </message>
  <message>
   <source>Bending along, N m</source>
   <translation>Biegung längs, N m</translation>
  </message>
  <message>
   <source>Bending along, at least</source>
   <translation>Biegung längs, mindestens</translation>
  </message>
  <message>
   <source>Cancel</source>
   <translation>Abbrechen</translation>
  </message>
  <message>
   <source>Cards (*.toml)</source>
   <translation>Karten (*.toml)</translation>
  </message>
  <message>
   <source>Cards of your own</source>
   <translation>Eigene Karten</translation>
  </message>
  <message>
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <source>Cloth, what it covers</source>
   <translation>Gewebe, was es bedeckt</translation>
  </message>
  <message>
   <source>Coarse preview, the full one follows</source>
   <translation>Grobe Vorschau, die volle folgt</translation>
  </message>
  <message>
   <source>Colours of maps</source>
   <translation>Farben der Karten</translation>
  </message>
  <message>
   <source>Copy</source>
   <translation>Kopieren</translation>
  </message>
  <message>
   <source>Core</source>
   <translation>Kern</translation>
  </message>
  <message>
   <source>Cost per m²</source>
   <translation>Kosten je m²</translation>
  </message>
  <message>
   <source>Cost per m², at most</source>
   <translation>Kosten je m², höchstens</translation>
  </message>
  <message>
   <source>Cover picked faces</source>
   <translation>Gewählte Flächen bedecken</translation>
  </message>
  <message>
   <source>Cover round the point</source>
   <translation>Rund um den Punkt bedecken</translation>
  </message>
  <message>
   <source>Decimal mark on the sheets</source>
   <translation>Dezimalzeichen auf den Blättern</translation>
  </message>
  <message>
   <source>Distance from the part</source>
   <translation>Abstand vom Teil</translation>
  </message>
  <message>
   <source>Draft classes</source>
   <translation>Klassen der Schräge</translation>
  </message>
  <message>
   <source>Edit {0}</source>
   <translation>{0} bearbeiten</translation>
  </message>
  <message>
   <source>Empty for the whole face, or such as: 30 mm round 10, 20, 5; 25 mm along the edge; faces Face3, Face5</source>
   <translation>Leer für die ganze Fläche, oder etwa: 30 mm round 10, 20, 5 (rund um einen Punkt); 25 mm along the edge (entlang des Rands); faces Face3, Face5 (Flächen)</translation>
  </message>
  <message>
   <source>Ends of local plies</source>
   <translation>Enden örtlicher Lagen</translation>
  </message>
  <message>
   <source>Find a layup</source>
   <translation>Lagenaufbau finden</translation>
  </message>
  <message>
   <source>Find a layup …</source>
   <translation>Lagenaufbau finden …</translation>
  </message>
  <message>
   <source>Finish what is open in the task panel first.</source>
   <translation>Zuerst abschließen, was im Aufgabenfenster offen ist.</translation>
  </message>
  <message>
   <source>Flat panel, a quick estimate</source>
   <translation>Ebenes Feld, schnelle Schätzung</translation>
  </message>
  <message>
   <source>Folder for cards and records</source>
   <translation>Ordner für Karten und Aufzeichnungen</translation>
  </message>
  <message>
   <source>Folder for the files</source>
   <translation>Ordner für die Dateien</translation>
  </message>
  <message>
   <source>Folder with material cards</source>
   <translation>Ordner mit Materialkarten</translation>
  </message>
  <message>
   <source>Folder with printer cards</source>
   <translation>Ordner mit Druckerkarten</translation>
  </message>
  <message>
   <source>Folder with records of parts</source>
   <translation>Ordner mit Aufzeichnungen der Teile</translation>
  </message>
  <message>
   <source>Follows: {0}</source>
   <translation>Folgt: {0}</translation>
  </message>
  <message>
   <source>Forget all places</source>
   <translation>Alle Stellen vergessen</translation>
  </message>
  <message>
   <source>From</source>
   <translation>Von</translation>
  </message>
  <message>
   <source>General</source>
   <translation>Allgemein</translation>
  </message>
  <message>
   <source>How it ended</source>
   <translation>Wie es endete</translation>
  </message>
  <message>
   <source>In brackets: nine of ten parts. What matters most: {0}.</source>
   <translation>In Klammern: neun von zehn Teilen. Am wichtigsten: {0}.</translation>
  </message>
  <message>
   <source>In the window</source>
   <translation>Im Fenster</translation>
  </message>
  <message>
   <source>Installing {0}. You can go on working.</source>
   <translation>{0} werden eingerichtet. Sie können weiterarbeiten.</translation>
  </message>
  <message>
   <source>Keep</source>
   <translation>Behalten</translation>
  </message>
  <message>
   <source>Keep as a dated file</source>
   <translation>Als datierte Datei behalten</translation>
  </message>
  <message>
   <source>Keep the card in your folder, for all jobs</source>
   <translation>Die Karte im eigenen Ordner behalten, für alle Aufträge</translation>
  </message>
  <message>
   <source>Keep the card in your folder; jobs made with the old one stay what they are</source>
   <translation>Die Karte im eigenen Ordner behalten; Aufträge mit der alten bleiben, was sie sind</translation>
  </message>
  <message>
   <source>Known by</source>
   <translation>Bekannt durch</translation>
  </message>
  <message>
   <source>Lay all plies once more in reverse: symmetric</source>
   <translation>Alle Lagen noch einmal umgekehrt: symmetrisch</translation>
  </message>
  <message>
   <source>Laywright needs Python packages that FreeCAD does not bring: {0}.

Install them into {1}?</source>
   <translation>Laywright braucht Python-Pakete, die FreeCAD nicht mitbringt: {0}.

In {1} installieren?</translation>
  </message>
  <message>
   <source>Load</source>
   <translation>Last</translation>
  </message>
  <message>
   <source>Make the proposed cuts</source>
   <translation>Die vorgeschlagenen Schnitte machen</translation>
  </message>
  <message>
   <source>Mass</source>
   <translation>Masse</translation>
  </message>
  <message>
   <source>Mass, at most</source>
   <translation>Masse, höchstens</translation>
  </message>
  <message>
   <source>Material cards</source>
   <translation>Materialkarten</translation>
  </message>
  <message>
   <source>Meshing {0} …</source>
   <translation>{0} wird vernetzt …</translation>
  </message>
  <message>
   <source>Mirror all</source>
   <translation>Alle spiegeln</translation>
  </message>
  <message>
   <source>Mirror, last once</source>
   <translation>Spiegeln, letzte einmal</translation>
  </message>
  <message>
   <source>Modulus onto a card …</source>
   <translation>Modul auf eine Karte …</translation>
  </message>
  <message>
   <source>Most plies</source>
   <translation>Höchstens Lagen</translation>
  </message>
  <message>
   <source>New jobs</source>
   <translation>Neue Aufträge</translation>
  </message>
  <message>
   <source>Not balanced.</source>
   <translation>Nicht ausgewogen.</translation>
  </message>
  <message>
   <source>Not symmetric.</source>
   <translation>Nicht symmetrisch.</translation>
  </message>
  <message>
   <source>Number</source>
   <translation>Nummer</translation>
  </message>
  <message>
   <source>One line for each reading; the first line names the columns</source>
   <translation>Eine Zeile je Messung; die erste nennt die Spalten</translation>
  </message>
  <message>
   <source>Open or make a document first.</source>
   <translation>Zuerst ein Dokument öffnen oder anlegen.</translation>
  </message>
  <message>
   <source>Out of date: {0}. Bring the job up to date and write it?</source>
   <translation>Veraltet: {0}. Den Auftrag auf den neuen Stand bringen und schreiben?</translation>
  </message>
  <message>
   <source>Packages are missing: {0}</source>
   <translation>Es fehlen Pakete: {0}</translation>
  </message>
  <message>
   <source>Packages for Laywright</source>
   <translation>Pakete für Laywright</translation>
  </message>
  <message>
   <source>Paper of the printed sheets</source>
   <translation>Papier der gedruckten Blätter</translation>
  </message>
  <message>
   <source>Plausible: {0} to {1}</source>
   <translation>Plausibel: {0} bis {1}</translation>
  </message>
  <message>
   <source>Plies from the mould</source>
   <translation>Lagen von der Form aus</translation>
  </message>
  <message>
   <source>Plies, the first touches the mould</source>
   <translation>Lagen, die erste liegt an der Form</translation>
  </message>
  <message>
   <source>Ply that is shown</source>
   <translation>Gezeigte Lage</translation>
  </message>
  <message>
   <source>Preview; OK or Apply keeps it</source>
   <translation>Vorschau; OK oder Anwenden behält sie</translation>
  </message>
  <message>
   <source>Price of resin per kg</source>
   <translation>Preis des Harzes je kg</translation>
  </message>
  <message>
   <source>Price per m²</source>
   <translation>Preis je m²</translation>
  </message>
  <message>
   <source>Printer of a new job</source>
   <translation>Drucker eines neuen Auftrags</translation>
  </message>
  <message>
   <source>Printer of your own</source>
   <translation>Eigener Drucker</translation>
  </message>
  <message>
   <source>Printer of your own …</source>
   <translation>Eigener Drucker …</translation>
  </message>
  <message>
   <source>Printers</source>
   <translation>Drucker</translation>
  </message>
  <message>
   <source>Proposed cuts</source>
   <translation>Vorgeschlagene Schnitte</translation>
  </message>
  <message>
   <source>Pull a number to move its ply</source>
   <translation>Eine Nummer ziehen, um ihre Lage zu verschieben</translation>
  </message>
  <message>
   <source>Pull arrow</source>
   <translation>Zugpfeil</translation>
  </message>
  <message>
   <source>Pulled across</source>
   <translation>Quer gezogen</translation>
  </message>
  <message>
   <source>Pulled across, at least</source>
   <translation>Quer gezogen, mindestens</translation>
  </message>
  <message>
   <source>Pulled along</source>
   <translation>Längs gezogen</translation>
  </message>
  <message>
   <source>Pulled along, at least</source>
   <translation>Längs gezogen, mindestens</translation>
  </message>
  <message>
   <source>Pulled apart</source>
   <translation>Auseinandergezogen</translation>
  </message>
  <message>
   <source>Ranked by</source>
   <translation>Geordnet nach</translation>
  </message>
  <message>
   <source>Read a card from a TOML file; it is kept with Keep</source>
   <translation>Eine Karte aus einer TOML-Datei lesen; mit Behalten bleibt sie</translation>
  </message>
  <message>
   <source>Read a file …</source>
   <translation>Datei lesen …</translation>
  </message>
  <message>
   <source>Readings of one coupon</source>
   <translation>Messwerte einer Probe</translation>
  </message>
  <message>
   <source>Refuse the proposed cuts</source>
   <translation>Die vorgeschlagenen Schnitte ablehnen</translation>
  </message>
  <message>
   <source>Regions in shades</source>
   <translation>Bereiche in Tönen</translation>
  </message>
  <message>
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <source>Save as file …</source>
   <translation>Als Datei sichern …</translation>
  </message>
  <message>
   <source>Search</source>
   <translation>Suchen</translation>
  </message>
  <message>
   <source>Select a job, or anything in it, in the tree first.</source>
   <translation>Zuerst einen Auftrag oder etwas darin im Baum wählen.</translation>
  </message>
  <message>
   <source>Select a part, or faces of one, first.</source>
   <translation>Zuerst ein Teil oder Flächen davon wählen.</translation>
  </message>
  <message>
   <source>Show changes at once</source>
   <translation>Änderungen gleich zeigen</translation>
  </message>
  <message>
   <source>Show changes in task panels at once</source>
   <translation>Änderungen in Aufgabenfenstern sofort zeigen</translation>
  </message>
  <message>
   <source>Source</source>
   <translation>Quelle</translation>
  </message>
  <message>
   <source>Stack</source>
   <translation>Stapel</translation>
  </message>
  <message>
   <source>Stiffness</source>
   <translation>Steifigkeit</translation>
  </message>
  <message>
   <source>Stopped, nothing was changed.</source>
   <translation>Angehalten, nichts wurde geändert.</translation>
  </message>
  <message>
   <source>Stopping …</source>
   <translation>Wird angehalten …</translation>
  </message>
  <message>
   <source>Strength onto a card …</source>
   <translation>Festigkeit auf eine Karte …</translation>
  </message>
  <message>
   <source>Symmetric.</source>
   <translation>Symmetrisch.</translation>
  </message>
  <message>
   <source>Tables</source>
   <translation>Tabellen</translation>
  </message>
  <message>
   <source>Take away</source>
   <translation>Wegnehmen</translation>
  </message>
  <message>
   <source>Take in file …</source>
   <translation>Datei holen …</translation>
  </message>
  <message>
   <source>Take out</source>
   <translation>Herausnehmen</translation>
  </message>
  <message>
   <source>Take the card of your own printer out of your folder, now</source>
   <translation>Die Karte Ihres eigenen Druckers sofort aus Ihrem Ordner nehmen</translation>
  </message>
  <message>
   <source>Take the library's cards</source>
   <translation>Karten der Sammlung nehmen</translation>
  </message>
  <message>
   <source>Take this one</source>
   <translation>Diesen nehmen</translation>
  </message>
  <message>
   <source>Take what is selected</source>
   <translation>Gewähltes nehmen</translation>
  </message>
  <message>
   <source>Take what is ticked</source>
   <translation>Angekreuztes nehmen</translation>
  </message>
  <message>
   <source>Take your own card away; one that came along counts again</source>
   <translation>Die eigene Karte wegnehmen; die mitgelieferte gilt wieder</translation>
  </message>
  <message>
   <source>The chosen ply becomes a patch of 30 mm radius round the point, corner or round edge picked in the view</source>
   <translation>Die gewählte Lage wird ein Flicken mit 30 mm Radius um den Punkt, die Ecke oder die runde Kante, die in der Ansicht gewählt ist</translation>
  </message>
  <message>
   <source>The chosen ply covers the faces picked in the view</source>
   <translation>Die gewählte Lage bedeckt die in der Ansicht gewählten Flächen</translation>
  </message>
  <message>
   <source>The last ply becomes the middle one: symmetric</source>
   <translation>Die letzte Lage wird die mittlere: symmetrisch</translation>
  </message>
  <message>
   <source>The packages were not installed: {0}

To do it by hand run:
{1}</source>
   <translation>Die Pakete wurden nicht installiert: {0}

Von Hand geht es mit:
{1}</translation>
  </message>
  <message>
   <source>There is no accepted record of this process yet: weigh a part, accept it, and keep its record.</source>
   <translation>Von diesem Verfahren gibt es noch keine angenommene Aufzeichnung: ein Teil wiegen, annehmen und die Aufzeichnung behalten.</translation>
  </message>
  <message>
   <source>Thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>Thickness, at most</source>
   <translation>Dicke, höchstens</translation>
  </message>
  <message>
   <source>This job keeps its own cards. The library now says otherwise of: {0}</source>
   <translation>Dieser Auftrag behält seine eigenen Karten. Die Sammlung sagt jetzt anderes zu: {0}</translation>
  </message>
  <message>
   <source>Tiles in two shades</source>
   <translation>Kacheln in zwei Tönen</translation>
  </message>
  <message>
   <source>To</source>
   <translation>Bis</translation>
  </message>
  <message>
   <source>Towards mould</source>
   <translation>Zur Form hin</translation>
  </message>
  <message>
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <source>Value</source>
   <translation>Wert</translation>
  </message>
  <message>
   <source>What is ticked goes into Layup and Mix &amp; Cure Plan:</source>
   <translation>Angekreuztes geht in Lagenaufbau und Misch- und Härteplan:</translation>
  </message>
  <message>
   <source>What the records say</source>
   <translation>Was die Aufzeichnungen sagen</translation>
  </message>
  <message>
   <source>Write the card as it stands in its file, in TOML</source>
   <translation>Die Karte so in TOML schreiben, wie sie in ihrer Datei steht</translation>
  </message>
  <message>
   <source>Write the record into the folder of records; none is replaced</source>
   <translation>Die Aufzeichnung in den Ordner schreiben; keine wird ersetzt</translation>
  </message>
  <message>
   <source>Written to {0}.</source>
   <translation>Geschrieben nach {0}.</translation>
  </message>
  <message>
   <source>about {0} min left</source>
   <translation>noch etwa {0} min</translation>
  </message>
  <message>
   <source>about {0} s left</source>
   <translation>noch etwa {0} s</translation>
  </message>
  <message>
   <source>and {0} more</source>
   <translation>und {0} weitere</translation>
  </message>
  <message>
   <source>by its heading</source>
   <translation>nach seiner Überschrift</translation>
  </message>
  <message>
   <source>cannot leave along the pull: {0} mm²</source>
   <translation>kann nicht heraus: {0} mm²</translation>
  </message>
  <message>
   <source>comes along; a change is kept in {0}</source>
   <translation>mitgeliefert; eine Änderung bleibt in {0}</translation>
  </message>
  <message>
   <source>comma: 0,5</source>
   <translation>Komma: 0,5</translation>
  </message>
  <message>
   <source>frost to night</source>
   <translation>Reif bis Nacht</translation>
  </message>
  <message>
   <source>g/m²</source>
   <translation>g/m²</translation>
  </message>
  <message>
   <source>leaves hard, draft under {0}°: {1} mm²</source>
   <translation>löst schwer, Schräge unter {0}°: {1} mm²</translation>
  </message>
  <message>
   <source>leaves: {0} mm²</source>
   <translation>löst: {0} mm²</translation>
  </message>
  <message>
   <source>mm</source>
   <translation>mm</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <source>off the part {0}</source>
   <translation>Abstand vom Teil {0}</translation>
  </message>
  <message>
   <source>on the flat patterns</source>
   <translation>auf den flachen Schnittmustern</translation>
  </message>
  <message>
   <source>on the part</source>
   <translation>auf dem Teil</translation>
  </message>
  <message>
   <source>outlines only</source>
   <translation>nur Umrisse</translation>
  </message>
  <message>
   <source>over {0}</source>
   <translation>über {0}</translation>
  </message>
  <message>
   <source>past what the cloth bears, {0}</source>
   <translation>mehr, als das Gewebe verträgt, {0}</translation>
  </message>
  <message>
   <source>ply {0}</source>
   <translation>Lage {0}</translation>
  </message>
  <message>
   <source>point: 0.5</source>
   <translation>Punkt: 0.5</translation>
  </message>
  <message>
   <source>pull ({0}, {1}, {2}), {3} cm² moulded</source>
   <translation>Zug ({0}, {1}, {2}), {3} cm² geformt</translation>
  </message>
  <message>
   <source>sand to plum</source>
   <translation>Sand bis Pflaume</translation>
  </message>
  <message>
   <source>shear</source>
   <translation>Scherung</translation>
  </message>
  <message>
   <source>straw to bark</source>
   <translation>Stroh bis Rinde</translation>
  </message>
  <message>
   <source>stretch along the warp</source>
   <translation>Dehnung in Kettrichtung</translation>
  </message>
  <message>
   <source>stretch along the weft</source>
   <translation>Dehnung in Schussrichtung</translation>
  </message>
  <message>
   <source>the readings</source>
   <translation>die Messwerte</translation>
  </message>
  <message>
   <source>unit of the heading</source>
   <translation>Einheit der Überschrift</translation>
  </message>
  <message>
   <source>up to {0}</source>
   <translation>bis {0}</translation>
  </message>
  <message>
   <source>whole face</source>
   <translation>ganze Fläche</translation>
  </message>
  <message>
   <source>your own, from {0}</source>
   <translation>Ihre eigene, aus {0}</translation>
  </message>
  <message>
   <source>{0} files in {1}</source>
   <translation>{0} Dateien in {1}</translation>
  </message>
  <message>
   <source>{0} is not possible here</source>
   <translation>{0} geht hier nicht</translation>
  </message>
  <message>
   <source>{0} job</source>
   <translation>{0} Auftrag</translation>
  </message>
  <message>
   <source>{0} of {1} symmetric and balanced layups fulfil the wish.</source>
   <translation>{0} von {1} symmetrischen, ausgewogenen Aufbauten erfüllen den Wunsch.</translation>
  </message>
  <message>
   <source>{0} tiles, {1} cm² to glue, {2} g of glue</source>
   <translation>{0} Kacheln, {1} cm² zu kleben, {2} g Kleber</translation>
  </message>
  <message>
   <source>{0} to {1}</source>
   <translation>{0} bis {1}</translation>
  </message>
  <message>
   <source>{0}, my own</source>
   <translation>{0}, meine eigene</translation>
  </message>
  <message>
   <source>{0}: stopped, nothing was changed</source>
   <translation>{0}: angehalten, nichts wurde geändert</translation>
  </message>
 </context>
 <context>
  <name>Laywright_BringUpToDate</name>
  <message>
   <source>Bring up to date</source>
   <translation>Auf den neuen Stand bringen</translation>
  </message>
  <message>
   <source>Compute again, in order, whatever in the job is out of date</source>
   <translation>Der Reihe nach neu berechnen, was im Auftrag veraltet ist</translation>
  </message>
 </context>
 <context>
  <name>Laywright_ClothPatterns</name>
  <message>
   <source>Cloth Patterns</source>
   <translation>Schnittmuster</translation>
  </message>
  <message>
   <source>Make the flat pattern of every ply</source>
   <translation>Das ebene Schnittmuster jeder Lage machen</translation>
  </message>
 </context>
 <context>
  <name>Laywright_CouponTest</name>
  <message>
   <source>Coupon Test</source>
   <translation>Probenversuch</translation>
  </message>
  <message>
   <source>Plan test pieces of the layup, read them in, compare with the prediction</source>
   <translation>Proben des Laminats planen, einlesen, mit der Vorhersage vergleichen</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Example_battery_tray</name>
  <message>
   <source>Battery tray that holds itself back</source>
   <translation>Akkuwanne, die sich selbst festhält</translation>
  </message>
  <message>
   <source>Open a copy of this example to try the workbench on; its numbers are invented</source>
   <translation>Eine Kopie dieses Beispiels öffnen, um den Arbeitsbereich zu erproben; seine Zahlen sind erfunden</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Example_hatch_cover</name>
  <message>
   <source>Crowned hatch cover</source>
   <translation>Gewölbter Lukendeckel</translation>
  </message>
  <message>
   <source>Open a copy of this example to try the workbench on; its numbers are invented</source>
   <translation>Eine Kopie dieses Beispiels öffnen, um den Arbeitsbereich zu erproben; seine Zahlen sind erfunden</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Example_sensor_cowl</name>
  <message>
   <source>Open a copy of this example to try the workbench on; its numbers are invented</source>
   <translation>Eine Kopie dieses Beispiels öffnen, um den Arbeitsbereich zu erproben; seine Zahlen sind erfunden</translation>
  </message>
  <message>
   <source>Teardrop cowl for a sensor</source>
   <translation>Tropfenhaube für einen Sensor</translation>
  </message>
 </context>
 <context>
  <name>Laywright_JobSheet</name>
  <message>
   <source>Gather everything on printed sheets</source>
   <translation>Alles auf gedruckten Blättern sammeln</translation>
  </message>
  <message>
   <source>Job Sheet</source>
   <translation>Auftragsblatt</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Layup</name>
  <message>
   <source>Layup</source>
   <translation>Lagenaufbau</translation>
  </message>
  <message>
   <source>Set the plies and see thickness, mass and stiffness</source>
   <translation>Lagen festlegen, Dicke, Masse und Steifigkeit sehen</translation>
  </message>
 </context>
 <context>
  <name>Laywright_Learn</name>
  <message>
   <source>Learn from records</source>
   <translation>Aus Aufzeichnungen lernen</translation>
  </message>
  <message>
   <source>Show what accepted records say on resin, losses and pace; take what you tick</source>
   <translation>Zeigen, was angenommene Aufzeichnungen zu Harz, Verlust und Tempo sagen; Angekreuztes nehmen</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MaterialCards</name>
  <message>
   <source>Look at the material cards, change or copy them into your folder, take in and give away</source>
   <translation>Materialkarten ansehen, ändern oder in den eigenen Ordner kopieren, holen und weitergeben</translation>
  </message>
  <message>
   <source>Material cards</source>
   <translation>Materialkarten</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MixCurePlan</name>
  <message>
   <source>Mix &amp; Cure Plan</source>
   <translation>Misch- und Härteplan</translation>
  </message>
  <message>
   <source>Plan resin, cups and cure</source>
   <translation>Harz, Becher und Härtung planen</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MouldBody</name>
  <message>
   <source>Make the closed solid under the moulded face</source>
   <translation>Den geschlossenen Körper unter der Formfläche machen</translation>
  </message>
  <message>
   <source>Mould Body</source>
   <translation>Formkörper</translation>
  </message>
 </context>
 <context>
  <name>Laywright_MouldedFace</name>
  <message>
   <source>Moulded Face</source>
   <translation>Formfläche</translation>
  </message>
  <message>
   <source>Pick the faces of the part that cloth is laid against</source>
   <translation>Die Flächen des Teils wählen, an die der Stoff gelegt wird</translation>
  </message>
 </context>
 <context>
  <name>Laywright_PrintTiles</name>
  <message>
   <source>Cut the mould body into pieces that fit the printer</source>
   <translation>Den Formkörper in Stücke schneiden, die auf den Drucker passen</translation>
  </message>
  <message>
   <source>Print Tiles</source>
   <translation>Druckkacheln</translation>
  </message>
 </context>
 <context>
  <name>Laywright_ReleaseCheck</name>
  <message>
   <source>Release Check</source>
   <translation>Entformprüfung</translation>
  </message>
  <message>
   <source>See whether the part leaves the mould along the pull</source>
   <translation>Sehen, ob das Teil die Form in Zugrichtung verlässt</translation>
  </message>
 </context>
 <context>
  <name>Laywright_RollPlan</name>
  <message>
   <source>Place the patterns on the roll</source>
   <translation>Die Schnittmuster auf die Rolle legen</translation>
  </message>
  <message>
   <source>Roll Plan</source>
   <translation>Rollenplan</translation>
  </message>
 </context>
 <context>
  <name>Laywright_StartJob</name>
  <message>
   <source>Make a job with every stage from the selected faces of a part, or from those that look upwards if the part itself is selected</source>
   <translation>Einen Auftrag mit allen Stufen aus den gewählten Flächen eines Teils machen, oder aus denen, die nach oben sehen, wenn das Teil selbst gewählt ist</translation>
  </message>
  <message>
   <source>Start a job</source>
   <translation>Auftrag beginnen</translation>
  </message>
 </context>
 <context>
  <name>Laywright_WeighIn</name>
  <message>
   <source>Weigh-in</source>
   <translation>Wiegen</translation>
  </message>
  <message>
   <source>Write down what a part really weighs and hold it against the plan</source>
   <translation>Aufschreiben, was ein Teil wirklich wiegt, und mit dem Plan vergleichen</translation>
  </message>
 </context>
 <context>
  <name>Laywright_WriteFiles</name>
  <message>
   <source>Write files</source>
   <translation>Dateien schreiben</translation>
  </message>
  <message>
   <source>Write tiles, patterns, plans and sheets of the job into a folder</source>
   <translation>Kacheln, Schnittmuster, Pläne und Blätter des Auftrags in einen Ordner schreiben</translation>
  </message>
 </context>
 <context>
  <name>Workbench</name>
  <message>
   <source>Examples</source>
   <translation>Beispiele</translation>
  </message>
  <message>
   <source>Laywright</source>
   <translation>Laywright</translation>
  </message>
 </context>
</TS>
