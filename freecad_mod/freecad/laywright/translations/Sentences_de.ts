<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>Sentences</name>
  <message>
   <source>"30 mm round 10, 20, 5", "25 mm along the edge" or "faces Face3, Face5"</source>
   <translation>„30 mm round 10, 20, 5“, „25 mm along the edge“ oder „faces Face3, Face5“</translation>
  </message>
  <message>
   <source>%1 % of its area</source>
   <translation>%1 % seiner Fläche</translation>
  </message>
  <message>
   <source>%1 %2 at %3 mm</source>
   <translation>%1 %2 bei %3 mm</translation>
  </message>
  <message>
   <source>%1 %2 at %3 mm and %4 more</source>
   <translation>%1 %2 bei %3 mm und %4 weitere</translation>
  </message>
  <message>
   <source>%1 %2 is %3 of the %4 that the resin's maker states: %5; give it time or warmth before it is loaded, sanded or sawn.</source>
   <translation>%1 %2 sind %3 der %4, die der Hersteller des Harzes angibt: %5; Zeit oder Wärme geben, bevor es belastet, geschliffen oder gesägt wird.</translation>
  </message>
  <message>
   <source>%1 %2 is below the usual %3 to %4: perhaps not cured through; ask the maker of the resin for the value of a full cure.</source>
   <translation>%1 %2 liegt unter den üblichen %3 bis %4: vielleicht nicht durchgehärtet; den Hersteller des Harzes nach dem Wert bei voller Härtung fragen.</translation>
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
   <translation>%1 MPa bei %2 g/cm³</translation>
  </message>
  <message>
   <source>%1 MiB in the folder for temporary files, twice</source>
   <translation>%1 MiB im Ordner für vorläufige Dateien, zweimal</translation>
  </message>
  <message>
   <source>%1 N on %2 mm^2</source>
   <translation>%1 N auf %2 mm²</translation>
  </message>
  <message>
   <source>%1 after</source>
   <translation>%1 danach</translation>
  </message>
  <message>
   <source>%1 after the first stir the oven is %2 degC hotter than what the part stands by then: it sags. Support it all over and %3.</source>
   <translation>%1 nach dem ersten Rühren ist der Ofen %2 K wärmer, als das Teil dann verträgt: es sackt durch. Überall stützen und %3.</translation>
  </message>
  <message>
   <source>%1 and %2 mirrored</source>
   <translation>%1 und %2 gespiegelte</translation>
  </message>
  <message>
   <source>%1 bytes</source>
   <translation>%1 Byte</translation>
  </message>
  <message>
   <source>%1 card</source>
   <translation>%1-Karte</translation>
  </message>
  <message>
   <source>%1 cells</source>
   <translation>%1 Zellen</translation>
  </message>
  <message>
   <source>%1 cloths and %2 angles</source>
   <translation>%1 Gewebe und %2 Winkel</translation>
  </message>
  <message>
   <source>%1 coupons are too few for a value to rely on; test at least %2.</source>
   <translation>%1 Proben sind zu wenige, um sich auf einen Wert zu verlassen; mindestens %2 prüfen.</translation>
  </message>
  <message>
   <source>%1 coupons of %2 x %3 mm from a plate of %4 x %5 mm, %6 mm thick</source>
   <translation>%1 Proben von %2 x %3 mm aus einer Platte von %4 x %5 mm, %6 mm dick</translation>
  </message>
  <message>
   <source>%1 cuts</source>
   <translation>%1 Schnitte</translation>
  </message>
  <message>
   <source>%1 days</source>
   <translation>%1 Tage</translation>
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
   <translation>%1 °C sind weit weg von den %2 °C des Datenblatts: Zeiten nach der 10-Grad-Regel sind hier grob.</translation>
  </message>
  <message>
   <source>%1 degC is far from the %2 degC of the data sheet: times there are rough.</source>
   <translation>%1 °C sind weit weg von den %2 °C des Datenblatts: Zeiten sind dort grob.</translation>
  </message>
  <message>
   <source>%1 edges with more than two triangles or triangles turned against each other, one at (%2, %3, %4) mm</source>
   <translation>%1 Kanten mit mehr als zwei Dreiecken oder gegeneinander gewendeten Dreiecken, eine bei (%2, %3, %4) mm</translation>
  </message>
  <message>
   <source>%1 fails first, %2, on its %3, at %4 times this load.</source>
   <translation>%1 versagt zuerst, %2, nach %3, bei dieser Last mal %4.</translation>
  </message>
  <message>
   <source>%1 files named %2</source>
   <translation>%1 Dateien namens %2</translation>
  </message>
  <message>
   <source>%1 filled%2.</source>
   <translation>%1 gefüllt%2.</translation>
  </message>
  <message>
   <source>%1 first, at %2 times this load.</source>
   <translation>%1 zuerst, bei dieser Last mal %2.</translation>
  </message>
  <message>
   <source>%1 g of %2 g</source>
   <translation>%1 g von %2 g</translation>
  </message>
  <message>
   <source>%1 g of cloth and %2 g of mix for the plate</source>
   <translation>%1 g Gewebe und %2 g Gemisch für die Platte</translation>
  </message>
  <message>
   <source>%1 g of resin for %2 g of cloth</source>
   <translation>%1 g Harz auf %2 g Gewebe</translation>
  </message>
  <message>
   <source>%1 g of the mix are meant for brush, cups and drips.</source>
   <translation>%1 g des Gemischs sind für Pinsel, Becher und Tropfen gedacht.</translation>
  </message>
  <message>
   <source>%1 g of the mix are neither in the part nor among the left-overs: look for drips, gloves and rags, or weigh again.</source>
   <translation>%1 g des Gemischs sind weder im Teil noch im Rest: nach Tropfen, Handschuhen und Lappen sehen oder neu wiegen.</translation>
  </message>
  <message>
   <source>%1 g on a scale that shows steps of %2 g</source>
   <translation>%1 g auf einer Waage mit Schritten von %2 g</translation>
  </message>
  <message>
   <source>%1 g should bend it %2 mm</source>
   <translation>%1 g sollten sie um %2 mm biegen</translation>
  </message>
  <message>
   <source>%1 g, %2 g of it coats and core</source>
   <translation>%1 g, davon %2 g Schichten und Kern</translation>
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
   <translation>%1 hat %2° Schräge, gewünscht %3°, auf zusammen %4 mm².</translation>
  </message>
  <message>
   <source>%1 has no field %2</source>
   <translation>%1 hat kein Feld %2</translation>
  </message>
  <message>
   <source>%1 holds the part back over %2 mm^2, %3 mm deep along the pull.</source>
   <translation>%1 hält das Teil auf %2 mm² zurück, %3 mm tief entlang der Zugrichtung.</translation>
  </message>
  <message>
   <source>%1 holes of the face are</source>
   <translation>%1 Löcher der Fläche sind</translation>
  </message>
  <message>
   <source>%1 hours</source>
   <translation>%1 Stunden</translation>
  </message>
  <message>
   <source>%1 in %2</source>
   <translation>%1 in %2</translation>
  </message>
  <message>
   <source>%1 in the seams</source>
   <translation>%1 in den Fugen</translation>
  </message>
  <message>
   <source>%1 is no %2</source>
   <translation>%1 ist kein %2</translation>
  </message>
  <message>
   <source>%1 is no list</source>
   <translation>%1 ist keine Liste</translation>
  </message>
  <message>
   <source>%1 is none of %2</source>
   <translation>%1 ist nichts von %2</translation>
  </message>
  <message>
   <source>%1 is wider than its roll and is cut as %2</source>
   <translation>%1 ist breiter als seine Rolle und wird als %2 geschnitten</translation>
  </message>
  <message>
   <source>%1 kPa</source>
   <translation>%1 kPa</translation>
  </message>
  <message>
   <source>%1 layups</source>
   <translation>%1 Lagenaufbauten</translation>
  </message>
  <message>
   <source>%1 lines for %2 plies</source>
   <translation>%1 Zeilen für %2 Lagen</translation>
  </message>
  <message>
   <source>%1 m^2 of cloth for %2 m^2 of the part</source>
   <translation>%1 m² Gewebe für %2 m² des Teils</translation>
  </message>
  <message>
   <source>%1 materials and %2 directions</source>
   <translation>%1 Werkstoffe und %2 Richtungen</translation>
  </message>
  <message>
   <source>%1 minutes</source>
   <translation>%1 Minuten</translation>
  </message>
  <message>
   <source>%1 minutes at %2 degC</source>
   <translation>%1 Minuten bei %2 °C</translation>
  </message>
  <message>
   <source>%1 mm</source>
   <translation>%1 mm</translation>
  </message>
  <message>
   <source>%1 mm along the edge</source>
   <translation>%1 mm entlang der Kante</translation>
  </message>
  <message>
   <source>%1 mm beyond the edge of the cloth</source>
   <translation>%1 mm jenseits des Gewebes</translation>
  </message>
  <message>
   <source>%1 mm for the joint and a wall of %2 mm around it</source>
   <translation>%1 mm für die Verbindung und %2 mm Wand darum</translation>
  </message>
  <message>
   <source>%1 mm of usable room</source>
   <translation>%1 mm nutzbarer Raum</translation>
  </message>
  <message>
   <source>%1 mm round %2</source>
   <translation>%1 mm um %2</translation>
  </message>
  <message>
   <source>%1 mm to %2 m</source>
   <translation>%1 mm bis %2 m</translation>
  </message>
  <message>
   <source>%1 mm where the scrap reaches %2 mm beyond the trim line, seen along the pull</source>
   <translation>%1 mm, wo der Rest, in Zugrichtung gesehen, %2 mm über die Besäumlinie reicht</translation>
  </message>
  <message>
   <source>%1 mm wide with a lap of %2 mm</source>
   <translation>%1 mm breit mit %2 mm Überlappung</translation>
  </message>
  <message>
   <source>%1 mm with bolt holes of %2 mm</source>
   <translation>%1 mm mit Schraubenlöchern von %2 mm</translation>
  </message>
  <message>
   <source>%1 mm, in a stretch without cuts</source>
   <translation>%1 mm, auf einer Strecke ohne Schnitte</translation>
  </message>
  <message>
   <source>%1 mm, through what no cut may pass</source>
   <translation>%1 mm, durch etwas, das kein Schnitt treffen darf</translation>
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
   <translation>%1 mm² haben entlang der Zugrichtung ihres Stücks weniger als %2° Schräge.</translation>
  </message>
  <message>
   <source>%1 mm^2 hold a piece by less than %2 mm, as triangles along the crest of a round face do; they count as leaving.</source>
   <translation>%1 mm² halten ein Stück um weniger als %2 mm, wie es Dreiecke am Scheitel einer runden Fläche tun; sie zählen als lösbar.</translation>
  </message>
  <message>
   <source>%1 mm^2 of %2 hold the part back.</source>
   <translation>%1 mm² von %2 halten das Teil zurück.</translation>
  </message>
  <message>
   <source>%1 mm^2 of mould, %2 people for %3 hours</source>
   <translation>%1 mm² Form, %2 Personen für %3 Stunden</translation>
  </message>
  <message>
   <source>%1 mm^2 of the flange of %2 face away from its pull and may jam.</source>
   <translation>%1 mm² des Flansches von %2 weisen gegen seine Zugrichtung und können klemmen.</translation>
  </message>
  <message>
   <source>%1 mm^2 still hold a piece back: add draft there, or change the part.</source>
   <translation>%1 mm² halten noch ein Stück zurück: dort Schräge geben oder das Teil ändern.</translation>
  </message>
  <message>
   <source>%1 mm^2 that hold the part back along the pull%2</source>
   <translation>%1 mm², die das Teil entlang der Zugrichtung zurückhalten%2</translation>
  </message>
  <message>
   <source>%1 more undercut places hold %2 mm^2.</source>
   <translation>%1 weitere Hinterschnitte halten auf %2 mm².</translation>
  </message>
  <message>
   <source>%1 numbers</source>
   <translation>%1 Zahlen</translation>
  </message>
  <message>
   <source>%1 numbers as in the lines around it</source>
   <translation>%1 Zahlen wie in den Zeilen darum</translation>
  </message>
  <message>
   <source>%1 numbers in a line below %2 headings</source>
   <translation>%1 Zahlen in einer Zeile unter %2 Überschriften</translation>
  </message>
  <message>
   <source>%1 of %2</source>
   <translation>%1 von %2</translation>
  </message>
  <message>
   <source>%1 of a laminate, from its modulus</source>
   <translation>%1 eines Laminats, aus seinem Modul</translation>
  </message>
  <message>
   <source>%1 of printer %2</source>
   <translation>%1 des Druckers %2</translation>
  </message>
  <message>
   <source>%1 of the cloth</source>
   <translation>%1 des Gewebes</translation>
  </message>
  <message>
   <source>%1 of the offcut of %2</source>
   <translation>%1 des Reststücks von %2</translation>
  </message>
  <message>
   <source>%1 of the patterns</source>
   <translation>%1 der Schnittmuster</translation>
  </message>
  <message>
   <source>%1 of the roll plan</source>
   <translation>%1 des Rollenplans</translation>
  </message>
  <message>
   <source>%1 on the roll of %2</source>
   <translation>%1 auf der Rolle von %2</translation>
  </message>
  <message>
   <source>%1 outside its own range %2</source>
   <translation>%1 außerhalb des eigenen Bereichs %2</translation>
  </message>
  <message>
   <source>%1 pages for %2 x %3 mm</source>
   <translation>%1 Seiten für %2 x %3 mm</translation>
  </message>
  <message>
   <source>%1 parts of resin to 100 parts of cloth, by mass</source>
   <translation>%1 Teile Harz auf 100 Teile Gewebe, nach Masse</translation>
  </message>
  <message>
   <source>%1 patch numbers came for %2 triangles</source>
   <translation>%1 Flächennummern kamen für %2 Dreiecke</translation>
  </message>
  <message>
   <source>%1 per %2</source>
   <translation>%1 je %2</translation>
  </message>
  <message>
   <source>%1 pieces that do not hang together along an edge</source>
   <translation>%1 Stücke, die an keiner Kante zusammenhängen</translation>
  </message>
  <message>
   <source>%1 pieces, %2 mm of parting lines between them.</source>
   <translation>%1 Stücke, zwischen ihnen %2 mm Trennlinien.</translation>
  </message>
  <message>
   <source>%1 ply</source>
   <translation>%1 Lage</translation>
  </message>
  <message>
   <source>%1 points</source>
   <translation>%1 Punkte</translation>
  </message>
  <message>
   <source>%1 points that are no numbers</source>
   <translation>%1 Punkte, die keine Zahlen sind</translation>
  </message>
  <message>
   <source>%1 points that belong to no triangle</source>
   <translation>%1 Punkte, die zu keinem Dreieck gehören</translation>
  </message>
  <message>
   <source>%1 resin and %2 cloth, by mass of the laminate</source>
   <translation>%1 Harz und %2 Gewebe, nach Masse des Laminats</translation>
  </message>
  <message>
   <source>%1 stands %2 degC, the part is heated to %3 degC in the bag: take another one, or post-cure without the bag.</source>
   <translation>%1 verträgt %2 degC, das Teil wird im Sack auf %3 degC erwärmt: etwas anderes nehmen oder ohne Sack tempern.</translation>
  </message>
  <message>
   <source>%1 stays full: %2.</source>
   <translation>%1 bleibt voll: %2.</translation>
  </message>
  <message>
   <source>%1 stays full: it has no base to be hollowed from.</source>
   <translation>%1 bleibt voll: Es fehlt eine Standfläche, von der aus ausgehöhlt wird.</translation>
  </message>
  <message>
   <source>%1 stiffness of the cloth</source>
   <translation>%1steifigkeit des Gewebes</translation>
  </message>
  <message>
   <source>%1 strips of %2 mm along the warp, %3, with the seam %4 mm to the left of the start point seen along the warp</source>
   <translation>%1 Streifen von %2 mm entlang der Kette, %3, mit der Naht %4 mm links vom Startpunkt, entlang der Kette gesehen</translation>
  </message>
  <message>
   <source>%1 tiles for this mould</source>
   <translation>%1 Kacheln für diese Form</translation>
  </message>
  <message>
   <source>%1 times the in-plane forces</source>
   <translation>%1-mal die Kräfte in der Ebene</translation>
  </message>
  <message>
   <source>%1 times the pressure</source>
   <translation>%1-mal der Druck</translation>
  </message>
  <message>
   <source>%1 to %2</source>
   <translation>%1 bis %2</translation>
  </message>
  <message>
   <source>%1 to %2 %3</source>
   <translation>%1 bis %2 %3</translation>
  </message>
  <message>
   <source>%1 to %2 MPa at such a density</source>
   <translation>%1 bis %2 MPa bei solcher Dichte</translation>
  </message>
  <message>
   <source>%1 to %2 mm</source>
   <translation>%1 bis %2 mm</translation>
  </message>
  <message>
   <source>%1 to %2 mm along, %3 to %4 mm across</source>
   <translation>%1 bis %2 mm längs, %3 bis %4 mm quer</translation>
  </message>
  <message>
   <source>%1 to %2%3</source>
   <translation>%1 bis %2%3</translation>
  </message>
  <message>
   <source>%1 to 40</source>
   <translation>%1 bis 40</translation>
  </message>
  <message>
   <source>%1 triangles</source>
   <translation>%1 Dreiecke</translation>
  </message>
  <message>
   <source>%1 triangles that turn over when offset by %2 mm, one at (%3, %4, %5) mm</source>
   <translation>%1 Dreiecke, die beim Versetzen um %2 mm umklappen, eines bei (%3, %4, %5) mm</translation>
  </message>
  <message>
   <source>%1 triangles to be opened</source>
   <translation>%1 zu öffnende Dreiecke</translation>
  </message>
  <message>
   <source>%1 triangles without area, one at (%2, %3, %4) mm</source>
   <translation>%1 Dreiecke ohne Fläche, eines bei (%2, %3, %4) mm</translation>
  </message>
  <message>
   <source>%1 turns by %2 deg, %3, over %4 mm near (%5, %6, %7) mm</source>
   <translation>%1 dreht sich um %2°, %3, über %4 mm bei (%5, %6, %7) mm</translation>
  </message>
  <message>
   <source>%1 values</source>
   <translation>%1 Werte</translation>
  </message>
  <message>
   <source>%1 weighs %2 g/m^2 where its card says %3: correct the card.</source>
   <translation>%1 wiegt %2 g/m², auf der Karte stehen %3: die Karte berichtigen.</translation>
  </message>
  <message>
   <source>%1 weights</source>
   <translation>%1 Gewichte</translation>
  </message>
  <message>
   <source>%1 would hold %2 fibre by volume, where %3 work usually gives %4 to %5: %6. Check the resin share.</source>
   <translation>%1 hätte einen Faservolumenanteil von %2, wo die Arbeitsweise „%3“ meist %4 bis %5 gibt: %6. Den Harzanteil prüfen.</translation>
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
   <translation>%1, %2 als die Karten; zuerst Breite, Dicke und Einheiten prüfen.</translation>
  </message>
  <message>
   <source>%1, %2, %3 deg</source>
   <translation>%1, %2, %3°</translation>
  </message>
  <message>
   <source>%1, %2, sheared %3 deg, cover %4</source>
   <translation>%1, %2, um %3° geschert, Bedeckung %4</translation>
  </message>
  <message>
   <source>%1, a flat strip of %2 mm bends by %3 mm.</source>
   <translation>%1, ein flacher Streifen von %2 mm biegt sich um %3 mm.</translation>
  </message>
  <message>
   <source>%1, a square of %2 mm lifts a corner by %3 mm.</source>
   <translation>%1, ein Quadrat von %2 mm hebt eine Ecke um %3 mm.</translation>
  </message>
  <message>
   <source>%1, but the coupons scatter as much; test more of them.</source>
   <translation>%1, aber die Proben streuen ebenso sehr; mehr davon prüfen.</translation>
  </message>
  <message>
   <source>%1, coat %2 of %3</source>
   <translation>%1, Schicht %2 von %3</translation>
  </message>
  <message>
   <source>%1, column '%2'</source>
   <translation>%1, Spalte „%2“</translation>
  </message>
  <message>
   <source>%1, it shears by %2.</source>
   <translation>%1, es schert um %2.</translation>
  </message>
  <message>
   <source>%1, line %2</source>
   <translation>%1, Zeile %2</translation>
  </message>
  <message>
   <source>%1, piece %2</source>
   <translation>%1, Stück %2</translation>
  </message>
  <message>
   <source>%1, set back by local plies</source>
   <translation>%1, durch örtliche Lagen zurückgesetzt</translation>
  </message>
  <message>
   <source>%1, which asks for 1.5 deg more for each 0.025 mm (common practice)</source>
   <translation>%1, was je 0,025 mm weitere 1,5° verlangt (übliche Praxis)</translation>
  </message>
  <message>
   <source>%1: %2 % of its area shears past the locking angle of %3 deg, up to %4 deg near (%5, %6, %7) mm; the cloth will wrinkle there. Have cuts proposed, turn the ply, move the start point or take a looser cloth.</source>
   <translation>%1: %2 % seiner Fläche scheren über den Sperrwinkel von %3°, bis %4° bei (%5, %6, %7) mm; dort wirft das Gewebe Falten. Schnitte vorschlagen lassen, die Lage drehen, den Startpunkt verlegen oder ein loseres Gewebe nehmen.</translation>
  </message>
  <message>
   <source>%1: %2 %3, planned %4</source>
   <translation>%1: %2 %3, geplant %4</translation>
  </message>
  <message>
   <source>%1: %2 covers the whole face; its extent can be left out.</source>
   <translation>%1: %2 bedeckt die ganze Fläche; der Umfang kann wegbleiben.</translation>
  </message>
  <message>
   <source>%1: %2 falls apart into %3 pieces; cut them all.</source>
   <translation>%1: %2 zerfällt in %3 Stücke; alle zuschneiden.</translation>
  </message>
  <message>
   <source>%1: %2 g, planned %3 g, good work by hand %4 to %5 g</source>
   <translation>%1: %2 g, geplant %3 g, gute Handarbeit %4 bis %5 g</translation>
  </message>
  <message>
   <source>%1: %2 m of %3 m, %4%5 % used</source>
   <translation>%1: %2 m von %3 m Breite, %4%5 % genutzt</translation>
  </message>
  <message>
   <source>%1: %2 m of 20 mm tape, or %3 m of 50 mm tape, on one face</source>
   <translation>%1: %2 m Band von 20 mm oder %3 m Band von 50 mm, auf einer Seite</translation>
  </message>
  <message>
   <source>%1: %2 mm, %3 g, %4 h</source>
   <translation>%1: %2 mm, %3 g, %4 h</translation>
  </message>
  <message>
   <source>%1: %2 mm²</source>
   <translation>%1: %2 mm²</translation>
  </message>
  <message>
   <source>%1: %2 passes a limit and no cuts were found that help; one piece of this cloth cannot cover the face. Move the start point, turn the ply, take a looser cloth or split the face into two Moulded Faces.</source>
   <translation>%1: %2 überschreitet eine Grenze, und es fanden sich keine Schnitte, die helfen; ein Stück dieses Gewebes kann die Fläche nicht bedecken. Den Startpunkt verlegen, die Lage drehen, ein loseres Gewebe nehmen oder die Fläche in zwei Formflächen teilen.</translation>
  </message>
  <message>
   <source>%1: %2 weighed, %3 on its card</source>
   <translation>%1: %2 gewogen, %3 auf der Karte</translation>
  </message>
  <message>
   <source>%1: %2 x %3 mm</source>
   <translation>%1: %2 x %3 mm</translation>
  </message>
  <message>
   <source>%1: %2%3 %4 from %5 record%6, the plan has %7 %8</source>
   <translation>%1: %2%3 %4 aus %5 Aufzeichnung%6, im Plan stehen %7 %8</translation>
  </message>
  <message>
   <source>%1: %2%3; up to %4 mm more than elsewhere.</source>
   <translation>%1: %2%3; bis %4 mm mehr als anderswo.</translation>
  </message>
  <message>
   <source>%1: %2, %3°, %4 m², largest shear %5°</source>
   <translation>%1: %2, %3°, %4 m², größte Scherung %5°</translation>
  </message>
  <message>
   <source>%1: %2, layer lines %3 the pull, %4 cm² hang over, %5 % of the working face</source>
   <translation>%1: %2, Druckriefen %3 zur Zugrichtung, %4 cm² hängen über, %5 % der Arbeitsfläche</translation>
  </message>
  <message>
   <source>%1: %2, made.</source>
   <translation>%1: %2, ausgeführt.</translation>
  </message>
  <message>
   <source>%1: %2, proposed.</source>
   <translation>%1: %2, vorgeschlagen.</translation>
  </message>
  <message>
   <source>%1: area</source>
   <translation>%1: Fläche</translation>
  </message>
  <message>
   <source>%1: areal weight</source>
   <translation>%1: Flächengewicht</translation>
  </message>
  <message>
   <source>%1: card</source>
   <translation>%1: Karte</translation>
  </message>
  <message>
   <source>%1: column of the %2</source>
   <translation>%1: Spalte für %2</translation>
  </message>
  <message>
   <source>%1: covered area</source>
   <translation>%1: bedeckte Fläche</translation>
  </message>
  <message>
   <source>%1: fibre volume fraction</source>
   <translation>%1: Faservolumenanteil</translation>
  </message>
  <message>
   <source>%1: found %2, needed %3; %4.</source>
   <translation>%1: gefunden: %2; gebraucht: %3. Abhilfe: %4.</translation>
  </message>
  <message>
   <source>%1: kind</source>
   <translation>%1: Art</translation>
  </message>
  <message>
   <source>%1: leaves along (%2, %3, %4), %5 cm³</source>
   <translation>%1: löst sich entlang (%2, %3, %4), %5 cm³</translation>
  </message>
  <message>
   <source>%1: mass</source>
   <translation>%1: Masse</translation>
  </message>
  <message>
   <source>%1: modulus</source>
   <translation>%1: Modul</translation>
  </message>
  <message>
   <source>%1: modulus %2 MPa, %3 %4 MPa</source>
   <translation>%1: Modul %2 MPa, %3 %4 MPa</translation>
  </message>
  <message>
   <source>%1: modulus_in_plane</source>
   <translation>%1: Modul in der Ebene</translation>
  </message>
  <message>
   <source>%1: name</source>
   <translation>%1: Name</translation>
  </message>
  <message>
   <source>%1: one piece without cuts cannot cover the face: %2 passes a limit. %3, %4 mm together, bring that to %5.</source>
   <translation>%1: ein Stück ohne Schnitte kann die Fläche nicht bedecken: %2 überschreitet eine Grenze. %3, zusammen %4 mm, bringen das auf %5.</translation>
  </message>
  <message>
   <source>%1: planned %2 %3, nine of ten parts %4 to %5 %6</source>
   <translation>%1: geplant %2 %3, neun von zehn Teilen %4 bis %5 %6</translation>
  </message>
  <message>
   <source>%1: resin share</source>
   <translation>%1: Harzanteil</translation>
  </message>
  <message>
   <source>%1: the cloth would have to stretch or gather by %2 % on average; make a trial in cheap cloth before you cut.</source>
   <translation>%1: das Gewebe müsste sich im Mittel um %2 % dehnen oder stauchen; vor dem Zuschnitt einen Versuch mit billigem Gewebe machen.</translation>
  </message>
  <message>
   <source>%1: the computation stopped before the cloth had come to rest; take the pattern as a rough guide and leave more margin.</source>
   <translation>%1: die Rechnung endete, bevor das Gewebe zur Ruhe kam; das Schnittmuster nur als groben Anhalt nehmen und mehr Zugabe lassen.</translation>
  </message>
  <message>
   <source>%1: too much resin, air, turned fibres or a thickness misread.</source>
   <translation>%1: zu viel Harz, Luft, verdrehte Fasern oder eine falsch gelesene Dicke.</translation>
  </message>
  <message>
   <source>%1: unit of the %2</source>
   <translation>%1: Einheit für %2</translation>
  </message>
  <message>
   <source>%1; pressure %2 MPa, positive away from the mould.</source>
   <translation>%1; Druck %2 MPa, positiv von der Form weg.</translation>
  </message>
  <message>
   <source>%1; what matters most is the %2.</source>
   <translation>%1; am meisten zählt: %2.</translation>
  </message>
  <message>
   <source>'%1' a second time</source>
   <translation>„%1“ ein zweites Mal</translation>
  </message>
  <message>
   <source>'%1' in '%2'</source>
   <translation>„%1“ in „%2“</translation>
  </message>
  <message>
   <source>'%1' in the heading and '%2' in the settings</source>
   <translation>„%1“ in der Überschrift und „%2“ in den Einstellungen</translation>
  </message>
  <message>
   <source>'%1' is not engraved: the sides leave no room for letters 3 mm high; a base of 8 mm carries them.</source>
   <translation>„%1“ wird nicht eingraviert: die Seiten lassen keinen Platz für 3 mm hohe Buchstaben; ein Sockel von 8 mm trägt sie.</translation>
  </message>
  <message>
   <source>'%1' twice</source>
   <translation>„%1“ zweimal</translation>
  </message>
  <message>
   <source>'%1', which is on no card</source>
   <translation>„%1“, das auf keiner Karte steht</translation>
  </message>
  <message>
   <source>'%1', which the file states</source>
   <translation>„%1“, was die Datei angibt</translation>
  </message>
  <message>
   <source>'A4', 'Letter' or 'A3'</source>
   <translation>„A4“, „Letter“ oder „A3“</translation>
  </message>
  <message>
   <source>(%1, %2, %3) mm</source>
   <translation>(%1, %2, %3) mm</translation>
  </message>
  <message>
   <source>, %1 mm further in</source>
   <translation>, %1 mm weiter innen</translation>
  </message>
  <message>
   <source>, mirrored part %1</source>
   <translation>, gespiegeltes Teil %1</translation>
  </message>
  <message>
   <source>, part %1</source>
   <translation>, Teil %1</translation>
  </message>
  <message>
   <source>, the best that a search down to %1 deg found</source>
   <translation>, das Beste, das eine Suche bis auf %1° fand</translation>
  </message>
  <message>
   <source>, the edges scribed</source>
   <translation>, die Kanten angerissen</translation>
  </message>
  <message>
   <source>, they end %1 mm %2 than that</source>
   <translation>, sie enden %1 mm %2 als das</translation>
  </message>
  <message>
   <source>-5 to 5 %</source>
   <translation>-5 bis 5 %</translation>
  </message>
  <message>
   <source>0 mm or more</source>
   <translation>0 mm oder mehr</translation>
  </message>
  <message>
   <source>0 or more</source>
   <translation>0 oder mehr</translation>
  </message>
  <message>
   <source>0 to %1</source>
   <translation>0 bis %1</translation>
  </message>
  <message>
   <source>0 to %1 mm</source>
   <translation>0 bis %1 mm</translation>
  </message>
  <message>
   <source>0 to 0.3</source>
   <translation>0 bis 0,3</translation>
  </message>
  <message>
   <source>0 to 100 %</source>
   <translation>0 bis 100 %</translation>
  </message>
  <message>
   <source>0 to 100 mm</source>
   <translation>0 bis 100 mm</translation>
  </message>
  <message>
   <source>0 to 100000 mm</source>
   <translation>0 bis 100000 mm</translation>
  </message>
  <message>
   <source>0 to 1440 minutes</source>
   <translation>0 bis 1440 Minuten</translation>
  </message>
  <message>
   <source>0 to 24</source>
   <translation>0 bis 24</translation>
  </message>
  <message>
   <source>0 to 90 deg</source>
   <translation>0 bis 90°</translation>
  </message>
  <message>
   <source>0, 3 or 4</source>
   <translation>0, 3 oder 4</translation>
  </message>
  <message>
   <source>0.1 to 12 deg</source>
   <translation>0,1 bis 12°</translation>
  </message>
  <message>
   <source>1 cut</source>
   <translation>1 Schnitt</translation>
  </message>
  <message>
   <source>1 hole of the face is</source>
   <translation>1 Loch der Fläche ist</translation>
  </message>
  <message>
   <source>1 mm^2 to 1000 m^2</source>
   <translation>1 mm² bis 1000 m²</translation>
  </message>
  <message>
   <source>1 to %1</source>
   <translation>1 bis %1</translation>
  </message>
  <message>
   <source>1 to 1000 mm</source>
   <translation>1 bis 1000 mm</translation>
  </message>
  <message>
   <source>1 to 10000</source>
   <translation>1 bis 10000</translation>
  </message>
  <message>
   <source>1 to 4</source>
   <translation>1 bis 4</translation>
  </message>
  <message>
   <source>1 unit taken as %1 mm</source>
   <translation>1 Einheit wird als %1 mm genommen</translation>
  </message>
  <message>
   <source>10 MPa at most</source>
   <translation>höchstens 10 MPa</translation>
  </message>
  <message>
   <source>10 degC more halve the time</source>
   <translation>10 °C mehr halbieren die Zeit</translation>
  </message>
  <message>
   <source>100 to 100000</source>
   <translation>100 bis 100000</translation>
  </message>
  <message>
   <source>16 times the thickness (ASTM D790)</source>
   <translation>16-mal die Dicke (ASTM D790)</translation>
  </message>
  <message>
   <source>16, 32 or 40 times the thickness is usual</source>
   <translation>16-, 32- oder 40-mal die Dicke ist üblich</translation>
  </message>
  <message>
   <source>2 to 4</source>
   <translation>2 bis 4</translation>
  </message>
  <message>
   <source>24 to 5000, coarse to fine</source>
   <translation>24 bis 5000, grob bis fein</translation>
  </message>
  <message>
   <source>32 times the thickness (ASTM D7264)</source>
   <translation>32-mal die Dicke (ASTM D7264)</translation>
  </message>
  <message>
   <source>40 parts of resin to 60 of cloth is a share of 0.40</source>
   <translation>40 Teile Harz auf 60 Teile Gewebe sind ein Anteil von 0,40</translation>
  </message>
  <message>
   <source>40 times the thickness (ISO 14125, carbon)</source>
   <translation>40-mal die Dicke (ISO 14125, Kohlefaser)</translation>
  </message>
  <message>
   <source>50 to 50000</source>
   <translation>50 bis 50000</translation>
  </message>
  <message>
   <source>60 mm/s</source>
   <translation>60 mm/s</translation>
  </message>
  <message>
   <source>; in pieces: %1</source>
   <translation>; in Stücken: %1</translation>
  </message>
  <message>
   <source>; it leaves along (%1, %2, %3)</source>
   <translation>; es geht entlang (%1, %2, %3) heraus</translation>
  </message>
  <message>
   <source>A cup of this size can get hot enough to smoke, melt and burn. Move a hot cup outdoors; do not hold it.</source>
   <translation>Ein Becher dieser Größe kann so heiß werden, dass er raucht, schmilzt und brennt. Einen heißen Becher ins Freie bringen; nicht in der Hand halten.</translation>
  </message>
  <message>
   <source>A flat panel of %1 x %2 mm, %3</source>
   <translation>Eine ebene Platte von %1 x %2 mm, %3</translation>
  </message>
  <message>
   <source>A full cup that loses no heat would reach %1 degC: an upper bound, no forecast, but the reason never to leave one standing.</source>
   <translation>Ein voller Becher, der keine Wärme verliert, käme auf %1 °C: eine obere Grenze, keine Vorhersage, aber der Grund, nie einen stehen zu lassen.</translation>
  </message>
  <message>
   <source>A mould in %1 pieces releases the part, no fewer were found: it leaves them along %2 and %3.</source>
   <translation>Eine Form in %1 Stücken gibt das Teil frei, weniger wurden nicht gefunden: es löst sich entlang %2 und %3.</translation>
  </message>
  <message>
   <source>A post-cure above %1 degC gains nothing with this resin and lets the part sag.</source>
   <translation>Eine Nachhärtung über %1 °C bringt bei diesem Harz nichts und lässt das Teil durchsacken.</translation>
  </message>
  <message>
   <source>A post-cure at %1 degC is too hot for the mould, which softens at %2 degC: take the part off and hold it in a cradle, or post-cure cooler for longer.</source>
   <translation>Eine Nachhärtung bei %1 °C ist zu heiß für die Form, die bei %2 °C weich wird: das Teil abnehmen und in einem Gestell halten oder kühler und länger nachhärten.</translation>
  </message>
  <message>
   <source>A quick estimate for a flat rectangle on edges that do not give way, under an even pressure, with small deflections. Curvature makes the real part stiffer, soft edges, holes and joints make it softer.</source>
   <translation>Eine schnelle Schätzung für ein ebenes Rechteck auf unnachgiebigen Rändern, unter gleichmäßigem Druck, bei kleinen Durchbiegungen. Krümmung macht das echte Teil steifer, weiche Ränder, Löcher und Fügestellen machen es weicher.</translation>
  </message>
  <message>
   <source>A span of %1 mm is short for supports made by hand: lay the coupons up with the plies twice, %2 mm thick.</source>
   <translation>Eine Stützweite von %1 mm ist kurz für Auflager von Hand: die Proben mit doppelten Lagen legen, %2 mm dick.</translation>
  </message>
  <message>
   <source>A tile's name begins with the number of its piece. Glue each piece by itself, then put the pieces together, cones in their holes, and bolt them.</source>
   <translation>Der Name einer Kachel beginnt mit der Nummer ihres Stücks. Jedes Stück für sich kleben, dann die Stücke zusammensetzen, Kegel in ihre Löcher, und verschrauben.</translation>
  </message>
  <message>
   <source>Along %1%2, %3 mm^2 would still be held back: part the mould.</source>
   <translation>Entlang %1%2 würden noch %3 mm² zurückgehalten: die Form teilen.</translation>
  </message>
  <message>
   <source>Along the parting lines %1 mm^2 came to the neighbouring piece.</source>
   <translation>An den Trennlinien kamen %1 mm² zum Nachbarstück.</translation>
  </message>
  <message>
   <source>An estimate for comparing layups, without residual stress, holes, impact, fatigue or damp other than by the knock-downs. It says nothing about the protection of a person; load-bearing and protective parts need tests by an accredited laboratory.</source>
   <translation>Eine Schätzung zum Vergleich von Lagenaufbauten, ohne Eigenspannungen, Löcher, Stöße, Ermüdung oder Feuchte außer durch die Abschläge. Sie sagt nichts über den Schutz einer Person; tragende und schützende Teile brauchen Prüfungen durch ein akkreditiertes Labor.</translation>
  </message>
  <message>
   <source>An estimate; nothing in it certifies a protection.</source>
   <translation>Eine Schätzung; nichts darin bescheinigt einen Schutz.</translation>
  </message>
  <message>
   <source>Area, cm^2</source>
   <translation>Fläche, cm²</translation>
  </message>
  <message>
   <source>At %1 degC resin is thick, the layup gets heavy and many resins never cure fully: warm the shop above %2 degC.</source>
   <translation>Bei %1 °C ist Harz dick, das Laminat wird schwer, und viele Harze härten nie ganz: die Werkstatt über %2 °C heizen.</translation>
  </message>
  <message>
   <source>Bag Plan</source>
   <translation>Plan der Folie</translation>
  </message>
  <message>
   <source>Bag film, folded round</source>
   <translation>Vakuumfolie, umgeschlagen</translation>
  </message>
  <message>
   <source>Bag film, once</source>
   <translation>Vakuumfolie, einfach</translation>
  </message>
  <message>
   <source>Barcol 934</source>
   <translation>Barcol 934</translation>
  </message>
  <message>
   <source>Bending along, across, N m</source>
   <translation>Biegung längs, quer, N m</translation>
  </message>
  <message>
   <source>Bent %1 the datum arrow, it also twists: %2 of twist for each unit of bending.</source>
   <translation>%1 des Bezugspfeils gebogen, verdreht es sich auch: %2 Drillung je Einheit Biegung.</translation>
  </message>
  <message>
   <source>Best Pull</source>
   <translation>Beste Zugrichtung</translation>
  </message>
  <message>
   <source>Buckles at</source>
   <translation>Beult bei</translation>
  </message>
  <message>
   <source>Buff coat %1 and look along it against a lamp.</source>
   <translation>Schicht %1 polieren und gegen eine Lampe daran entlangsehen.</translation>
  </message>
  <message>
   <source>Clean the mould. A test piece with the same plastic, sealer, release agent and resin must have come off first. Air the room; gloves.</source>
   <translation>Die Form reinigen. Ein Probestück aus demselben Kunststoff, Versiegler, Trennmittel und Harz muss sich vorher gelöst haben. Lüften; Handschuhe.</translation>
  </message>
  <message>
   <source>Close the bag %1; set the %2 pleats where the mould is deep or tight, so that the bag reaches the bottom of every corner.</source>
   <translation>Die Folie %1 schließen; die %2 Falten dort setzen, wo die Form tief oder eng ist, damit die Folie bis in jede Ecke reicht.</translation>
  </message>
  <message>
   <source>Cloth Patterns</source>
   <translation>Schnittmuster</translation>
  </message>
  <message>
   <source>Corners full of resin get much hotter than the skin; a test piece on the same mould material tells more than any number here.</source>
   <translation>Ecken voller Harz werden viel heißer als die Haut; ein Probestück auf demselben Formwerkstoff sagt mehr als jede Zahl hier.</translation>
  </message>
  <message>
   <source>Corners where a cut leaves less than was asked for: %1.</source>
   <translation>Ecken, an denen ein Schnitt weniger lässt als verlangt: %1.</translation>
  </message>
  <message>
   <source>Coupon %1 lies far from the others in %2: look for a cause at the bench before leaving it out.</source>
   <translation>Probe %1 liegt bei %2 weit von den anderen: an der Werkbank nach einer Ursache suchen, bevor sie weggelassen wird.</translation>
  </message>
  <message>
   <source>Coupon %1: a span of %2 times the thickness lets shear lower the modulus; 32 times or more is better.</source>
   <translation>Probe %1: bei einer Stützweite von %2-mal der Dicke senkt der Schub den Modul; 32-mal oder mehr ist besser.</translation>
  </message>
  <message>
   <source>Coupon Plan</source>
   <translation>Probenplan</translation>
  </message>
  <message>
   <source>Coupon Test</source>
   <translation>Probenversuch</translation>
  </message>
  <message>
   <source>Coupon Test in bending</source>
   <translation>Probenversuch in Biegung</translation>
  </message>
  <message>
   <source>Coupon Test in tension</source>
   <translation>Probenversuch in Zug</translation>
  </message>
  <message>
   <source>Cup %1 holds %2 g, but the pot life is known for %3 g: a fuller cup sets sooner and runs hotter. Use smaller cups or pour it into a flat tray at once.</source>
   <translation>Becher %1 fasst %2 g, die Topfzeit ist aber für %3 g bekannt: ein vollerer Becher geliert früher und wird heißer. Kleinere Becher nehmen oder gleich in eine flache Schale gießen.</translation>
  </message>
  <message>
   <source>Cure Plan</source>
   <translation>Härteplan</translation>
  </message>
  <message>
   <source>Cut all coupons from one flat plate of the same layup, laid the same day from the same cup; mark the datum arrow on each and measure width and thickness at three places.</source>
   <translation>Alle Proben aus einer ebenen Platte desselben Lagenaufbaus schneiden, am selben Tag aus demselben Becher gelegt; auf jeder den Bezugspfeil anzeichnen und Breite und Dicke an drei Stellen messen.</translation>
  </message>
  <message>
   <source>Cut and dry-fit everything before any resin is mixed.</source>
   <translation>Alles zuschneiden und trocken einpassen, bevor Harz angemischt wird.</translation>
  </message>
  <message>
   <source>Cut the surplus with a knife between %1 and %2: it is firm but not yet hard. Wear gloves, it is not cured.</source>
   <translation>Den Überstand zwischen %1 und %2 mit dem Messer abschneiden: er ist fest, aber noch nicht hart. Handschuhe tragen, er ist nicht ausgehärtet.</translation>
  </message>
  <message>
   <source>Cuts of ply %1 and ply %2 come within %3 mm of each other near %4; at least %5 mm are wanted: move one.</source>
   <translation>Schnitte von Lage %1 und Lage %2 kommen sich bei %4 auf %3 mm nahe; mindestens %5 mm sind gewünscht: einen verlegen.</translation>
  </message>
  <message>
   <source>Deflection of the middle</source>
   <translation>Durchbiegung der Mitte</translation>
  </message>
  <message>
   <source>Demould after %1 at the earliest.</source>
   <translation>Frühestens nach %1 entformen.</translation>
  </message>
  <message>
   <source>Draped Laminate</source>
   <translation>Drapiertes Laminat</translation>
  </message>
  <message>
   <source>E across (MPa)</source>
   <translation>E quer (MPa)</translation>
  </message>
  <message>
   <source>E along (MPa)</source>
   <translation>E längs (MPa)</translation>
  </message>
  <message>
   <source>Faces</source>
   <translation>Flächen</translation>
  </message>
  <message>
   <source>Failure Envelope</source>
   <translation>Versagenshüllkurve</translation>
  </message>
  <message>
   <source>Fill seams and layer lines</source>
   <translation>Fugen und Druckriefen füllen</translation>
  </message>
  <message>
   <source>Film to cover the bench</source>
   <translation>Folie, um die Bank abzudecken</translation>
  </message>
  <message>
   <source>Film, spray %1 of %2: %3.</source>
   <translation>Film, Sprühgang %1 von %2: %3.</translation>
  </message>
  <message>
   <source>Flow mesh</source>
   <translation>Fließhilfe</translation>
  </message>
  <message>
   <source>Full strength after %1. Sand and machine only then, with dust mask and extraction: dust of half-cured resin sensitises the skin for good.</source>
   <translation>Volle Festigkeit nach %1. Erst dann schleifen und bearbeiten, mit Staubmaske und Absaugung: Staub halb gehärteten Harzes sensibilisiert die Haut für immer.</translation>
  </message>
  <message>
   <source>Fully cured</source>
   <translation>Ganz gehärtet</translation>
  </message>
  <message>
   <source>Gelled: the knife may cut the edge</source>
   <translation>Geliert: das Messer darf an den Rand</translation>
  </message>
  <message>
   <source>Glue %1 to %2.</source>
   <translation>%1 an %2 kleben.</translation>
  </message>
  <message>
   <source>Glue %1.</source>
   <translation>%1 kleben.</translation>
  </message>
  <message>
   <source>Glue gaps of %1, %2 and %3 mm in all are taken off the tiles.</source>
   <translation>Klebefugen von zusammen %1, %2 und %3 mm sind von den Kacheln abgezogen.</translation>
  </message>
  <message>
   <source>Glue the layer of %1 on the layer of %2.</source>
   <translation>Die Schicht von %1 auf die Schicht von %2 kleben.</translation>
  </message>
  <message>
   <source>Hands are slower than the cup: what cup %1 holds takes %2 minutes with mixing, but it lasts %3. Take a slower hardener, a cooler shop, more hands or a finer scale for smaller cups.</source>
   <translation>Die Hände sind langsamer als der Becher: was Becher %1 fasst, dauert mit Mischen %2 Minuten, er hält aber nur %3. Einen langsameren Härter, eine kühlere Werkstatt, mehr Hände oder eine feinere Waage für kleinere Becher nehmen.</translation>
  </message>
  <message>
   <source>Hands are slower than the gel: laying takes %1 h, but the first ply gels after %2 h. Take a slower hardener or more hands, or stop with peel ply and lay the rest another day.</source>
   <translation>Die Hände sind langsamer als das Gelieren: das Legen dauert %1 h, aber die erste Lage geliert nach %2 h. Einen langsameren Härter oder mehr Hände nehmen oder mit Abreißgewebe enden und den Rest an einem anderen Tag legen.</translation>
  </message>
  <message>
   <source>How many times the %1 until it fails, by %2</source>
   <translation>Wie oft die %1, bis es versagt, nach %2</translation>
  </message>
  <message>
   <source>How much</source>
   <translation>Wie viel</translation>
  </message>
  <message>
   <source>It holds %1 resin where %2 was planned: plan the next one with %3, or change how the surplus is taken off.</source>
   <translation>Es enthält %1 Harz, geplant waren %2: das nächste mit %3 planen oder den Überschuss anders abnehmen.</translation>
  </message>
  <message>
   <source>Keep the vacuum until the resin has gelled, better until demould.</source>
   <translation>Das Vakuum halten, bis das Harz geliert ist, besser bis zum Entformen.</translation>
  </message>
  <message>
   <source>Lay the tape edge to edge, without bubbles or gaps.</source>
   <translation>Das Band Kante an Kante legen, ohne Blasen und Lücken.</translation>
  </message>
  <message>
   <source>Layup Choice</source>
   <translation>Wahl des Lagenaufbaus</translation>
  </message>
  <message>
   <source>Laywright: took up %1 objects saved without the workbench</source>
   <translation>Laywright: %1 Objekte aufgenommen, die ohne die Arbeitsumgebung gespeichert waren</translation>
  </message>
  <message>
   <source>Leak test with the dry bag: pump to full vacuum, shut the valve, wait ten minutes. A gauge that falls by more than 20 mbar (common practice, no source) means a leak: listen, press the tape, patch.</source>
   <translation>Dichtprobe mit der trockenen Folie: auf volles Vakuum pumpen, Ventil schließen, zehn Minuten warten. Fällt das Manometer um mehr als 20 mbar (übliche Praxis, keine Quelle), ist etwas undicht: horchen, das Band andrücken, flicken.</translation>
  </message>
  <message>
   <source>Leave the part alone until it gels, about %1 after the first stir.</source>
   <translation>Das Teil ruhen lassen, bis es geliert, etwa %1 nach dem ersten Rühren.</translation>
  </message>
  <message>
   <source>Mass, g</source>
   <translation>Masse, g</translation>
  </message>
  <message>
   <source>May leave the mould</source>
   <translation>Darf von der Form</translation>
  </message>
  <message>
   <source>Mix &amp; Cure Plan</source>
   <translation>Mischen und Härten</translation>
  </message>
  <message>
   <source>Mix Plan</source>
   <translation>Mischplan</translation>
  </message>
  <message>
   <source>Mixing alone takes %1 minutes of the %2 that a cup lasts: take a slower hardener or a cooler shop.</source>
   <translation>Das Mischen allein dauert %1 der %2 Minuten, die ein Becher hält: einen langsameren Härter oder eine kühlere Werkstatt nehmen.</translation>
  </message>
  <message>
   <source>Mixing cups, two for each mix</source>
   <translation>Mischbecher, zwei je Mischung</translation>
  </message>
  <message>
   <source>Moduli along, across, GPa</source>
   <translation>Moduln längs, quer, GPa</translation>
  </message>
  <message>
   <source>Mould Body</source>
   <translation>Formkörper</translation>
  </message>
  <message>
   <source>Mould Finish</source>
   <translation>Oberfläche der Form</translation>
  </message>
  <message>
   <source>Mould Pieces</source>
   <translation>Stücke der Form</translation>
  </message>
  <message>
   <source>Moulded Face</source>
   <translation>Formfläche</translation>
  </message>
  <message>
   <source>N mm</source>
   <translation>N mm</translation>
  </message>
  <message>
   <source>Never add hardener to make it faster: %1 parts to 100 parts of resin, by mass, is the only right ratio. Left-overs go outdoors, spread flat, until they are hard.</source>
   <translation>Nie Härter zugeben, damit es schneller geht: %1 Teile auf 100 Teile Harz, nach Masse, ist das einzig richtige Verhältnis. Reste ins Freie, flach ausgegossen, bis sie hart sind.</translation>
  </message>
  <message>
   <source>Nitrile gloves</source>
   <translation>Nitrilhandschuhe</translation>
  </message>
  <message>
   <source>No %1 at %2: %3 mm of section, %4 mm needed; glued flat.</source>
   <translation>Kein %1 an %2: %3 mm Querschnitt, %4 mm gebraucht; stumpf geklebt.</translation>
  </message>
  <message>
   <source>No air port: drawing the pieces away one by one lets the air in.</source>
   <translation>Kein Luftanschluss: Beim Abziehen der Stücke nacheinander dringt Luft ein.</translation>
  </message>
  <message>
   <source>No bolt holes beside those that join the pieces.</source>
   <translation>Keine Schraubenlöcher außer denen, die die Stücke verbinden.</translation>
  </message>
  <message>
   <source>No coupon broke: the stresses reached are no strengths, only lower bounds.</source>
   <translation>Keine Probe brach: die erreichten Spannungen sind keine Festigkeiten, nur untere Grenzen.</translation>
  </message>
  <message>
   <source>No division into %1 pieces was found: allow more pieces, or change the part.</source>
   <translation>Keine Teilung in %1 Stücke gefunden: mehr Stücke zulassen oder das Teil ändern.</translation>
  </message>
  <message>
   <source>No ears at %1: hold these by hand or by straps.</source>
   <translation>Keine Ohren an %1: diese von Hand oder mit Gurten halten.</translation>
  </message>
  <message>
   <source>No feet: one could stand across a joint; put strips below.</source>
   <translation>Keine Füße: Einer könnte über einer Fuge stehen; Leisten unterlegen.</translation>
  </message>
  <message>
   <source>No flange of its own: the level ring round the trim line, %1 mm wide.</source>
   <translation>Kein eigener Flansch: Der ebene Ring um die Beschnittlinie ist %1 mm breit.</translation>
  </message>
  <message>
   <source>No inscription: a joint between pieces could cut through it.</source>
   <translation>Keine Beschriftung: Eine Fuge zwischen Stücken könnte sie durchschneiden.</translation>
  </message>
  <message>
   <source>No marks of the datum: a joint between pieces could cut through them.</source>
   <translation>Keine Zeichen für den Bezugspfeil: Eine Fuge zwischen Stücken könnte sie durchschneiden.</translation>
  </message>
  <message>
   <source>No mould in %1 pieces was found that releases the part.</source>
   <translation>Keine Form in %1 Stücken gefunden, die das Teil freigibt.</translation>
  </message>
  <message>
   <source>No number of plies certifies a protection. A part that protects a person needs tests by an accredited laboratory; no protection level is computed or claimed here.</source>
   <translation>Keine Zahl von Lagen bescheinigt einen Schutz. Ein Teil, das eine Person schützt, braucht Prüfungen durch ein akkreditiertes Labor; hier wird kein Schutzgrad berechnet oder behauptet.</translation>
  </message>
  <message>
   <source>No pry pockets: unbolted, the pieces are wedged apart at their joint.</source>
   <translation>Keine Hebeltaschen: Gelöst werden die Stücke an ihrer Fuge auseinandergekeilt.</translation>
  </message>
  <message>
   <source>No room for a mark on %1.</source>
   <translation>Kein Platz für eine Marke auf %1.</translation>
  </message>
  <message>
   <source>No single pull sees the whole surface: it needs a mould of several parts.</source>
   <translation>Keine einzelne Zugrichtung sieht die ganze Fläche: sie braucht eine mehrteilige Form.</translation>
  </message>
  <message>
   <source>Of that from transverse shear</source>
   <translation>Davon aus Querschub</translation>
  </message>
  <message>
   <source>Of the strengths on the cards %1 are counted on in tension, %2 in compression, %3 in shear and %4 of a core (%5).</source>
   <translation>Von den Festigkeiten auf den Karten werden %1 in Zug gezählt, %2 in Druck, %3 in Schub und %4 bei einem Kern (%5).</translation>
  </message>
  <message>
   <source>One cup at a time, when what it is for comes next: empty cup on the scale, set to zero, resin to the first reading, then hardener to the second.</source>
   <translation>Ein Becher nach dem anderen, wenn das an der Reihe ist, wofür er ist: leeren Becher auf die Waage, auf null stellen, Harz bis zur ersten Anzeige, dann Härter bis zur zweiten.</translation>
  </message>
  <message>
   <source>One piece is enough: the whole surface leaves along one pull.</source>
   <translation>Ein Stück genügt: die ganze Fläche löst sich in einer Zugrichtung.</translation>
  </message>
  <message>
   <source>Opened for spring-in, the mould has a least draft of %1 deg along the pull; the part's own shape, which the Release Check looks at, has %2 deg.</source>
   <translation>Für das Einspringen geöffnet hat die Form eine kleinste Schräge von %1° zur Zugrichtung; die eigene Gestalt des Teils, die die Entformprüfung ansieht, hat %2°.</translation>
  </message>
  <message>
   <source>Particle filters for the mask</source>
   <translation>Partikelfilter für die Maske</translation>
  </message>
  <message>
   <source>Peel ply</source>
   <translation>Abreißgewebe</translation>
  </message>
  <message>
   <source>Peel ply and what lies on it may take up %1 g of the mix, the plan has %2 g to spare: allow %3 % extra for losses, or weigh what a piece of them takes up and put it on the card.</source>
   <translation>Abreißgewebe und was darauf liegt nehmen bis zu %1 g der Mischung auf, der Plan hat %2 g übrig: %3 % mehr für Verluste vorsehen, oder wiegen, was ein Stück davon aufnimmt, und es auf die Karte schreiben.</translation>
  </message>
  <message>
   <source>Piece %1</source>
   <translation>Stück %1</translation>
  </message>
  <message>
   <source>Ply %1 and ply %2 end %3 mm apart near (%4, %5, %6) mm, at least %7 mm are wanted: change one of their extents.</source>
   <translation>Lage %1 und Lage %2 enden bei (%4, %5, %6) mm nur %3 mm auseinander, mindestens %7 mm sind gewünscht: einen der Umfänge ändern.</translation>
  </message>
  <message>
   <source>Ply by ply, with all stiffness of a failed ply gone, it carries up to %1 times this load.</source>
   <translation>Lage um Lage, wenn eine versagte Lage alle Steifigkeit verliert, trägt es bis zu dieser Last mal %1.</translation>
  </message>
  <message>
   <source>Post-cure on %1: warm by at most %2 degC an hour to %3 degC, hold for %4 hours, cool as slowly, and take the support away only when it is cold.</source>
   <translation>Nachhärten auf %1: höchstens %2 K je Stunde auf %3 °C wärmen, %4 Stunden halten, ebenso langsam abkühlen, und die Stütze erst kalt wegnehmen.</translation>
  </message>
  <message>
   <source>Post-cure: begin to cool</source>
   <translation>Nachhärtung: Abkühlen beginnt</translation>
  </message>
  <message>
   <source>Post-cure: begin to warm</source>
   <translation>Nachhärtung: Aufheizen beginnt</translation>
  </message>
  <message>
   <source>Post-cure: cold again</source>
   <translation>Nachhärtung: wieder kalt</translation>
  </message>
  <message>
   <source>Post-cure: hold</source>
   <translation>Nachhärtung: halten</translation>
  </message>
  <message>
   <source>Pressure and in-plane forces are looked at one without the other.</source>
   <translation>Druck und Kräfte in der Ebene werden jedes für sich betrachtet.</translation>
  </message>
  <message>
   <source>Print Tiles</source>
   <translation>Druckkacheln</translation>
  </message>
  <message>
   <source>Pulled by %1 %2 the datum arrow</source>
   <translation>%1 %2 zum Bezugspfeil gezogen</translation>
  </message>
  <message>
   <source>Put %1 together and bolt them.</source>
   <translation>%1 zusammensetzen und verschrauben.</translation>
  </message>
  <message>
   <source>Record of a part</source>
   <translation>Aufzeichnung eines Teils</translation>
  </message>
  <message>
   <source>Release Check</source>
   <translation>Entformprüfung</translation>
  </message>
  <message>
   <source>Release Coats</source>
   <translation>Trennschichten</translation>
  </message>
  <message>
   <source>Release Strips</source>
   <translation>Trennstreifen</translation>
  </message>
  <message>
   <source>Release film, perforated</source>
   <translation>Trennfolie, gelocht</translation>
  </message>
  <message>
   <source>Result</source>
   <translation>Ergebnis</translation>
  </message>
  <message>
   <source>Roll Plan</source>
   <translation>Rollenplan</translation>
  </message>
  <message>
   <source>Rollers or squeegees</source>
   <translation>Rollen oder Rakel</translation>
  </message>
  <message>
   <source>Sand with %1 grit</source>
   <translation>Mit Körnung %1 schleifen</translation>
  </message>
  <message>
   <source>Sand with %1 grit, wet</source>
   <translation>Mit Körnung %1 nass schleifen</translation>
  </message>
  <message>
   <source>Scanned Part</source>
   <translation>Gescanntes Teil</translation>
  </message>
  <message>
   <source>Sealer, coat %1 of %2</source>
   <translation>Versiegler, Schicht %1 von %2</translation>
  </message>
  <message>
   <source>Searched start point (%1, %2, %3) mm, datum arrow along (%4, %5, %6): largest shear about %7 deg, %8 deg from the middle of the face along it.</source>
   <translation>Gesuchter Startpunkt (%1, %2, %3) mm, Bezugspfeil entlang (%4, %5, %6): größte Scherung etwa %7°, %8° von der Mitte der Fläche aus.</translation>
  </message>
  <message>
   <source>Set out cups, sticks, brush, roller and the plies in the order of laying.</source>
   <translation>Becher, Stäbe, Pinsel, Rolle und die Lagen in der Reihenfolge des Legens bereitlegen.</translation>
  </message>
  <message>
   <source>Shopping List</source>
   <translation>Einkaufsliste</translation>
  </message>
  <message>
   <source>Shore D</source>
   <translation>Shore D</translation>
  </message>
  <message>
   <source>Something fails at</source>
   <translation>Etwas versagt bei</translation>
  </message>
  <message>
   <source>Stir for four minutes, scraping wall and bottom; pour into a second cup and stir for another four. Write down the time of the first stir. Spread it out early.</source>
   <translation>Vier Minuten rühren, Wand und Boden abstreifen; in einen zweiten Becher gießen und weitere vier rühren. Die Zeit des ersten Rührens notieren. Früh ausstreichen.</translation>
  </message>
  <message>
   <source>Stirring sticks</source>
   <translation>Rührstäbe</translation>
  </message>
  <message>
   <source>Strength Check</source>
   <translation>Festigkeitsprüfung</translation>
  </message>
  <message>
   <source>Strips of %1 mm would wrinkle where the face is curved both ways: take %2 mm or less there, or wax instead.</source>
   <translation>Streifen von %1 mm werfen Falten, wo die Fläche doppelt gekrümmt ist: dort %2 mm oder weniger nehmen, oder wachsen.</translation>
  </message>
  <message>
   <source>That much is wanted because %1.</source>
   <translation>So viel ist gewünscht, weil: %1.</translation>
  </message>
  <message>
   <source>The %1 of %2 coupon%3 is %4 MPa, predicted were %5:</source>
   <translation>%1 von %2 Probe%3: %4 MPa, vorhergesagt waren %5:</translation>
  </message>
  <message>
   <source>The angles are not balanced: pulled along the datum arrow the laminate also shears. Give each angled ply a partner at the opposite angle to avoid it.</source>
   <translation>Die Winkel sind nicht ausgeglichen: längs des Bezugspfeils gezogen, schert das Laminat auch. Jeder schrägen Lage eine im Gegenwinkel geben, um das zu vermeiden.</translation>
  </message>
  <message>
   <source>The bands hold what is on the cards and what usually varies in the work; they know nothing of mistakes, and nothing of what the theory itself leaves out.</source>
   <translation>Die Spannen enthalten, was auf den Karten steht und was in der Arbeit meist schwankt; von Fehlern wissen sie nichts und nichts von dem, was die Theorie selbst weglässt.</translation>
  </message>
  <message>
   <source>The datum is not marked on %1 of its 4 sides: the run-off leaves less than %2 mm there; widen the run-off or the flange.</source>
   <translation>Der Bezugspfeil ist auf %1 seiner 4 Seiten nicht angezeichnet: Der Auslauf lässt dort weniger als %2 mm; den Auslauf oder den Flansch verbreitern.</translation>
  </message>
  <message>
   <source>The datum is not marked: its arrow, or the direction across it, stands upright in the mould.</source>
   <translation>Der Bezugspfeil ist nicht angezeichnet: Er, oder die Richtung quer dazu, steht in der Form senkrecht.</translation>
  </message>
  <message>
   <source>The datum is not marked: scribed lines have no depth.</source>
   <translation>Der Bezugspfeil ist nicht angezeichnet: Angerissene Linien haben keine Tiefe.</translation>
  </message>
  <message>
   <source>The datum's ticks go without the figure %1: the run-off leaves no room beside them.</source>
   <translation>Den Strichen des Bezugspfeils fehlt die Zahl %1: Der Auslauf lässt neben ihnen keinen Platz.</translation>
  </message>
  <message>
   <source>The deflection of %1 mm is more than half the thickness: the plate then also stretches and bends less than this says.</source>
   <translation>Die Durchbiegung von %1 mm ist mehr als die halbe Dicke: die Platte dehnt sich dann auch und biegt sich weniger als hier steht.</translation>
  </message>
  <message>
   <source>The flange of %1 has no room for %2: make it wider.</source>
   <translation>Der Flansch von %1 hat keinen Platz für %2: breiter machen.</translation>
  </message>
  <message>
   <source>The layup carries no cards: only the work was varied.</source>
   <translation>Der Lagenaufbau trägt keine Karten: nur die Arbeit wurde variiert.</translation>
  </message>
  <message>
   <source>The layup is not symmetric: the coupling of stretching and bending is only followed as a loss of bending stiffness.</source>
   <translation>Der Lagenaufbau ist nicht symmetrisch: die Kopplung von Dehnung und Biegung wird nur als Verlust an Biegesteifigkeit verfolgt.</translation>
  </message>
  <message>
   <source>The layup may start. Touch the mould only with clean gloves.</source>
   <translation>Das Legen darf beginnen. Die Form nur mit sauberen Handschuhen berühren.</translation>
  </message>
  <message>
   <source>The line at the edge of the cloth is left out: the outline comes back nearer than %1 mm.</source>
   <translation>Die Linie am Rand des Gewebes entfällt: der Umriss kommt sich näher als %1 mm.</translation>
  </message>
  <message>
   <source>The line at the edge of the cloth is left out: the ring round the trim line or its outline has no room %1 mm away.</source>
   <translation>Die Linie am Rand des Gewebes fehlt: Der Ring um die Beschnittlinie oder ihr Umriss hat in %1 mm Abstand keinen Platz.</translation>
  </message>
  <message>
   <source>The margin is that of the plies; the core is not judged here.</source>
   <translation>Die Reserve ist die der Lagen; der Kern wird hier nicht beurteilt.</translation>
  </message>
  <message>
   <source>The middle moves only %1 mm: a dial gauge of %2 mm reads that coarsely. Take a longer span or more plies.</source>
   <translation>Die Mitte bewegt sich nur %1 mm: eine Messuhr von %2 mm liest das grob. Eine größere Stützweite oder mehr Lagen nehmen.</translation>
  </message>
  <message>
   <source>The panel bends by %1 mm. %2</source>
   <translation>Die Platte biegt sich um %1 mm. %2</translation>
  </message>
  <message>
   <source>The part is %1 %2 than planned; within %3 is good work by hand.</source>
   <translation>Das Teil ist %1 %2 als geplant; innerhalb von %3 ist gute Handarbeit.</translation>
  </message>
  <message>
   <source>The part is held back along one direction, so the mould is built in %1 pieces.</source>
   <translation>In einer Richtung wird das Teil zurückgehalten, daher wird die Form in %1 Stücken gebaut.</translation>
  </message>
  <message>
   <source>The part itself softens near %1 degC until it is post-cured: warm it slowly and support it all over.</source>
   <translation>Das Teil selbst wird bei etwa %1 °C weich, bis es nachgehärtet ist: langsam wärmen und überall stützen.</translation>
  </message>
  <message>
   <source>The part leaves %1 along (%2, %3, %4).</source>
   <translation>Das Teil löst sich von %1 entlang (%2, %3, %4).</translation>
  </message>
  <message>
   <source>The part softens near %1 degC: keep it out of the sun and out of hot cars, dark parts above all.</source>
   <translation>Das Teil wird bei etwa %1 °C weich: von Sonne und heißen Autos fernhalten, dunkle Teile vor allem.</translation>
  </message>
  <message>
   <source>The part would leave along %1 with a least draft of %2 deg%3.</source>
   <translation>Das Teil ginge entlang %1 heraus, mit einer kleinsten Schräge von %2°%3.</translation>
  </message>
  <message>
   <source>The plate is thick for its size: transverse shear governs it, and the estimate is rough.</source>
   <translation>Die Platte ist dick für ihre Größe: der Querschub überwiegt, und die Schätzung ist grob.</translation>
  </message>
  <message>
   <source>The plies are not symmetric about the middle: %1. Mirror the plies about the middle to avoid it.</source>
   <translation>Die Lagen sind nicht symmetrisch zur Mitte: %1. Die Lagen zur Mitte spiegeln, um das zu vermeiden.</translation>
  </message>
  <message>
   <source>The scale is coarse for cup %1: in steps of %2 g the hardener can be off by %3. Use a finer scale, or fewer and larger cups.</source>
   <translation>Die Waage ist grob für Becher %1: in Schritten von %2 g kann der Härter um %3 danebenliegen. Eine feinere Waage oder weniger und größere Becher nehmen.</translation>
  </message>
  <message>
   <source>The search of the cuts was ended early; these are the best so far.</source>
   <translation>Die Suche der Schnitte wurde früh beendet; dies sind die besten bisher.</translation>
  </message>
  <message>
   <source>The shop is at %1 degC, but the mould softens at %2 degC and should stay below %3 degC.</source>
   <translation>Die Werkstatt hat %1 °C, die Form wird aber bei %2 °C weich und sollte unter %3 °C bleiben.</translation>
  </message>
  <message>
   <source>The strengths scatter by %1: the layups differ, or the cutting and the supports do.</source>
   <translation>Die Festigkeiten streuen um %1: die Lagenaufbauten sind verschieden, oder Zuschnitt und Auflager.</translation>
  </message>
  <message>
   <source>The thickness is less than cloth and resin without any air would give: a weighing, a thickness or a density is wrong.</source>
   <translation>Die Dicke ist kleiner, als Gewebe und Harz ganz ohne Luft ergäben: eine Wägung, eine Dicke oder eine Dichte stimmt nicht.</translation>
  </message>
  <message>
   <source>The trim line is not scribed: the working surface comes back too flat below the trim edge.</source>
   <translation>Die Besäumlinie wird nicht angerissen: die Arbeitsfläche kommt unter dem Besäumrand zu flach zurück.</translation>
  </message>
  <message>
   <source>The working area is off by %1 mm, wanted at most %2 mm.</source>
   <translation>Die Arbeitsfläche weicht um %1 mm ab, gewünscht höchstens %2 mm.</translation>
  </message>
  <message>
   <source>Thickness and mass differ by %1 of air: more working in with the roller, or a bag, or the gauge sat on a lap.</source>
   <translation>Dicke und Masse unterscheiden sich um %1 Luft: mehr mit der Rolle einarbeiten, eine Folie nehmen, oder die Lehre saß auf einer Überlappung.</translation>
  </message>
  <message>
   <source>Thickness, mm</source>
   <translation>Dicke, mm</translation>
  </message>
  <message>
   <source>This load stresses nothing that is judged.</source>
   <translation>Diese Last beansprucht nichts, was beurteilt wird.</translation>
  </message>
  <message>
   <source>Three to six plies of cloth are laid against light knocks, six to ten against hard ones: common practice, no source.</source>
   <translation>Gegen leichte Stöße werden drei bis sechs Lagen gelegt, gegen harte sechs bis zehn: übliche Praxis, keine Quelle.</translation>
  </message>
  <message>
   <source>To run it: ccx and the name of this file without its ending, in the file's folder.</source>
   <translation>Starten: ccx und der Name dieser Datei ohne Endung, im Ordner der Datei.</translation>
  </message>
  <message>
   <source>Too hard for a knife</source>
   <translation>Zu hart für ein Messer</translation>
  </message>
  <message>
   <source>Trim Plan</source>
   <translation>Besäumplan</translation>
  </message>
  <message>
   <source>Trim line and holes</source>
   <translation>Besäumlinie und Löcher</translation>
  </message>
  <message>
   <source>Under a vacuum of %1 MPa a flat wall of %2 mm gives way by %3 over %4 mm, wanted at most %5 mm: thicken the wall, set the ribs closer or keep the bag off it.</source>
   <translation>Unter einem Vakuum von %1 MPa gibt eine ebene Wand von %2 mm über %4 mm um %3 nach, gewünscht höchstens %5 mm: die Wand verdicken, die Rippen enger setzen oder die Folie davon fernhalten.</translation>
  </message>
  <message>
   <source>Units: mm, N, MPa, tonne. Made for editing: supports and load are an example.</source>
   <translation>Einheiten: mm, N, MPa, Tonne. Zum Ändern gedacht: Lager und Last sind ein Beispiel.</translation>
  </message>
  <message>
   <source>Use a regulator: too much vacuum on thin wet cloth sucks it dry. A printed mould creeps under the load when it is warm: keep it cold until the resin has gelled.</source>
   <translation>Einen Regler benutzen: zu viel Vakuum saugt dünnes nasses Gewebe trocken. Eine gedruckte Form kriecht warm unter der Last: kalt halten, bis das Harz geliert ist.</translation>
  </message>
  <message>
   <source>Wax, coat %1 of %2: thin, the other way round.</source>
   <translation>Wachs, Schicht %1 von %2: dünn, in der anderen Richtung.</translation>
  </message>
  <message>
   <source>Wear eye protection when you load to the end: splinters fly.</source>
   <translation>Beim Belasten bis zum Ende Augenschutz tragen: Splitter fliegen.</translation>
  </message>
  <message>
   <source>Weigh the cut cloth and compare it with the plan before any resin is poured.</source>
   <translation>Das zugeschnittene Gewebe wiegen und mit dem Plan vergleichen, bevor Harz gegossen wird.</translation>
  </message>
  <message>
   <source>With a core the stress at the surface is only apparent; test the skins alone as well.</source>
   <translation>Mit einem Kern ist die Spannung an der Oberfläche nur scheinbar; die Häute auch allein prüfen.</translation>
  </message>
  <message>
   <source>With the pinned and forbidden cuts: %1 tiles, weighted seams of %2 mm; without them: %3 tiles, %4 mm.</source>
   <translation>Mit den festgelegten und verbotenen Schnitten: %1 Kacheln, gewichtete Fugen von %2 mm; ohne sie: %3 Kacheln, %4 mm.</translation>
  </message>
  <message>
   <source>Without the plies that cover a part of the face: %1.</source>
   <translation>Ohne die Lagen, die einen Teil der Fläche bedecken: %1.</translation>
  </message>
  <message>
   <source>Zones: %1 to %2 mm thick, %3 g in all, of flat plies</source>
   <translation>Zonen: %1 bis %2 mm dick, zusammen %3 g, aus flachen Lagen</translation>
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
   <translation>ein %1 hat keine einfache Form</translation>
  </message>
  <message>
   <source>a %1 of that name</source>
   <translation>ein %1 dieses Namens</translation>
  </message>
  <message>
   <source>a Release Check</source>
   <translation>eine Entformprüfung</translation>
  </message>
  <message>
   <source>a TOML file as the cards that come along</source>
   <translation>eine TOML-Datei wie die mitgelieferten Karten</translation>
  </message>
  <message>
   <source>a bare %1</source>
   <translation>nur %1</translation>
  </message>
  <message>
   <source>a base of %1 x %2 mm</source>
   <translation>ein Sockel von %1 x %2 mm</translation>
  </message>
  <message>
   <source>a body %1 mm thick where its seams are thickest</source>
   <translation>ein Körper, %1 mm dick, wo seine Fugen am dicksten sind</translation>
  </message>
  <message>
   <source>a body at least twice as thick as its wall</source>
   <translation>ein Körper, mindestens doppelt so dick wie seine Wand</translation>
  </message>
  <message>
   <source>a body with gaps</source>
   <translation>ein Körper mit Lücken</translation>
  </message>
  <message>
   <source>a card for it</source>
   <translation>eine Karte dafür</translation>
  </message>
  <message>
   <source>a card in TOML</source>
   <translation>eine Karte in TOML</translation>
  </message>
  <message>
   <source>a card of it: %1</source>
   <translation>eine Karte davon: %1</translation>
  </message>
  <message>
   <source>a card of that name</source>
   <translation>eine Karte dieses Namens</translation>
  </message>
  <message>
   <source>a card of your own</source>
   <translation>eine eigene Karte</translation>
  </message>
  <message>
   <source>a card of your own; those that come along stay</source>
   <translation>eine eigene Karte; die mitgelieferten bleiben</translation>
  </message>
  <message>
   <source>a card that can be taken away</source>
   <translation>eine Karte, die weggenommen werden kann</translation>
  </message>
  <message>
   <source>a card that comes along</source>
   <translation>eine mitgelieferte Karte</translation>
  </message>
  <message>
   <source>a clean offset</source>
   <translation>ein sauberer Versatz</translation>
  </message>
  <message>
   <source>a closed body</source>
   <translation>ein geschlossener Körper</translation>
  </message>
  <message>
   <source>a closed edge of the part</source>
   <translation>eine geschlossene Kante des Teils</translation>
  </message>
  <message>
   <source>a closed piece</source>
   <translation>ein geschlossenes Stück</translation>
  </message>
  <message>
   <source>a closed shape that encloses a volume</source>
   <translation>eine geschlossene Gestalt, die ein Volumen umschließt</translation>
  </message>
  <message>
   <source>a closed solid whose every edge has two triangles</source>
   <translation>ein geschlossener Volumenkörper, an dessen Kanten je zwei Dreiecke liegen</translation>
  </message>
  <message>
   <source>a closed tile</source>
   <translation>eine geschlossene Kachel</translation>
  </message>
  <message>
   <source>a cradle</source>
   <translation>ein Gestell</translation>
  </message>
  <message>
   <source>a cut across the face</source>
   <translation>ein Schnitt quer über die Fläche</translation>
  </message>
  <message>
   <source>a cut of %1 mm from %2 to %3, %4</source>
   <translation>ein Schnitt von %1 mm von %2 bis %3, %4</translation>
  </message>
  <message>
   <source>a cut of about %1 mm</source>
   <translation>ein Schnitt von etwa %1 mm</translation>
  </message>
  <message>
   <source>a cut of at least %1 mm that does not meet itself</source>
   <translation>ein Schnitt von mindestens %1 mm, der sich nicht selbst trifft</translation>
  </message>
  <message>
   <source>a cut that runs along another one</source>
   <translation>ein Schnitt, der an einem anderen entlangläuft</translation>
  </message>
  <message>
   <source>a cut that runs along the edge</source>
   <translation>ein Schnitt, der am Rand entlangläuft</translation>
  </message>
  <message>
   <source>a cut that starts at the edge of the face, of a hole or of another cut</source>
   <translation>ein Schnitt, der am Rand der Fläche, eines Lochs oder eines anderen Schnitts beginnt</translation>
  </message>
  <message>
   <source>a date such as 2026-11-25</source>
   <translation>ein Datum wie 2026-11-25</translation>
  </message>
  <message>
   <source>a datum arrow along the pull</source>
   <translation>ein Bezugspfeil entlang der Zugrichtung</translation>
  </message>
  <message>
   <source>a direction along the face</source>
   <translation>eine Richtung entlang der Fläche</translation>
  </message>
  <message>
   <source>a direction such as (0, 0, 1)</source>
   <translation>eine Richtung wie (0, 0, 1)</translation>
  </message>
  <message>
   <source>a direction that leaves the face</source>
   <translation>eine Richtung, die die Fläche verlässt</translation>
  </message>
  <message>
   <source>a direction that lies in the face everywhere</source>
   <translation>eine Richtung, die überall in der Fläche liegt</translation>
  </message>
  <message>
   <source>a disk or folder for larger files</source>
   <translation>ein Laufwerk oder ein Ordner für größere Dateien</translation>
  </message>
  <message>
   <source>a disk that takes no more (%1)</source>
   <translation>ein Datenträger, der nichts mehr aufnimmt (%1)</translation>
  </message>
  <message>
   <source>a face %1 mm long</source>
   <translation>eine Fläche von %1 mm Länge</translation>
  </message>
  <message>
   <source>a face narrower than %1 mm somewhere</source>
   <translation>eine Fläche, die irgendwo schmaler als %1 mm ist</translation>
  </message>
  <message>
   <source>a face that differs from the picked one by %1 (the nearest, %2, by %3)</source>
   <translation>eine Fläche, die von der gewählten um %1 abweicht (die nächste, %2, um %3)</translation>
  </message>
  <message>
   <source>a face that even triangles fit into</source>
   <translation>eine Fläche, in die gleichmäßige Dreiecke passen</translation>
  </message>
  <message>
   <source>a face that is seen whole along the pull</source>
   <translation>eine Fläche, die entlang der Zugrichtung ganz zu sehen ist</translation>
  </message>
  <message>
   <source>a face that one piece of cloth can cover</source>
   <translation>eine Fläche, die ein Stück Gewebe bedecken kann</translation>
  </message>
  <message>
   <source>a face that turns by less than half a circle at every edge</source>
   <translation>eine Fläche, die an jeder Kante um weniger als einen Halbkreis dreht</translation>
  </message>
  <message>
   <source>a face with area</source>
   <translation>eine Fläche mit Inhalt</translation>
  </message>
  <message>
   <source>a failure while writing (%1)</source>
   <translation>ein Fehler beim Schreiben (%1)</translation>
  </message>
  <message>
   <source>a fault in a roll</source>
   <translation>ein Fehler in einer Rolle</translation>
  </message>
  <message>
   <source>a fault in the roll of %1</source>
   <translation>ein Fehler in der Rolle von %1</translation>
  </message>
  <message>
   <source>a field that a card does not have</source>
   <translation>ein Feld, das eine Karte nicht hat</translation>
  </message>
  <message>
   <source>a file larger than this disk takes</source>
   <translation>eine Datei, die für dieses Laufwerk zu groß ist</translation>
  </message>
  <message>
   <source>a file name</source>
   <translation>ein Dateiname</translation>
  </message>
  <message>
   <source>a file of kind '%1'</source>
   <translation>eine Datei der Art „%1“</translation>
  </message>
  <message>
   <source>a file of that name</source>
   <translation>eine Datei dieses Namens</translation>
  </message>
  <message>
   <source>a file that cannot be read (%1)</source>
   <translation>eine Datei, die nicht gelesen werden kann (%1)</translation>
  </message>
  <message>
   <source>a file that cannot be read as a mesh (%1)</source>
   <translation>eine Datei, die nicht als Netz gelesen werden kann (%1)</translation>
  </message>
  <message>
   <source>a file that cannot be read as a printer card (%1)</source>
   <translation>eine Datei, die nicht als Druckerkarte gelesen werden kann (%1)</translation>
  </message>
  <message>
   <source>a file that is no text</source>
   <translation>eine Datei, die kein Text ist</translation>
  </message>
  <message>
   <source>a finite number</source>
   <translation>eine endliche Zahl</translation>
  </message>
  <message>
   <source>a first flat map</source>
   <translation>eine erste Abwicklung</translation>
  </message>
  <message>
   <source>a fold at (%1, %2, %3) mm, the face lying on itself</source>
   <translation>eine Falte bei (%1, %2, %3) mm, die Fläche liegt auf sich selbst</translation>
  </message>
  <message>
   <source>a folder</source>
   <translation>ein Ordner</translation>
  </message>
  <message>
   <source>a folder of that name</source>
   <translation>ein Ordner dieses Namens</translation>
  </message>
  <message>
   <source>a folder or file that may not be written to</source>
   <translation>ein Ordner oder eine Datei ohne Schreibrecht</translation>
  </message>
  <message>
   <source>a folder that can be written to</source>
   <translation>ein Ordner, in den geschrieben werden kann</translation>
  </message>
  <message>
   <source>a folder that exists</source>
   <translation>ein Ordner, den es gibt</translation>
  </message>
  <message>
   <source>a folder with cards</source>
   <translation>ein Ordner mit Karten</translation>
  </message>
  <message>
   <source>a folder with printer cards</source>
   <translation>ein Ordner mit Druckerkarten</translation>
  </message>
  <message>
   <source>a force of zero or more on some area</source>
   <translation>eine Kraft von null oder mehr auf eine Fläche</translation>
  </message>
  <message>
   <source>a full disk</source>
   <translation>ein voller Datenträger</translation>
  </message>
  <message>
   <source>a job description</source>
   <translation>eine Auftragsbeschreibung</translation>
  </message>
  <message>
   <source>a lap smaller than the width</source>
   <translation>eine Überlappung kleiner als die Breite</translation>
  </message>
  <message>
   <source>a larger one</source>
   <translation>eine größere</translation>
  </message>
  <message>
   <source>a line such as 'ply 2: (70, 70, 9) to (42, 40, 81), lap'</source>
   <translation>eine Zeile wie 'ply 2: (70, 70, 9) to (42, 40, 81), lap'</translation>
  </message>
  <message>
   <source>a list in square brackets</source>
   <translation>eine Liste in eckigen Klammern</translation>
  </message>
  <message>
   <source>a list of %1, each with its unit</source>
   <translation>eine Liste von %1, jedes mit seiner Einheit</translation>
  </message>
  <message>
   <source>a list of texts in quotes</source>
   <translation>eine Liste von Texten in Anführungszeichen</translation>
  </message>
  <message>
   <source>a list such as [{ cloth = "...", angle = "45 deg" }]</source>
   <translation>eine Liste wie [{ cloth = "...", angle = "45 deg" }]</translation>
  </message>
  <message>
   <source>a list such as [{ ply = 1, points = [[0, 0, 0], [10, 0, 5]] }]</source>
   <translation>eine Liste wie [{ ply = 1, points = [[0, 0, 0], [10, 0, 5]] }]</translation>
  </message>
  <message>
   <source>a load of finite size</source>
   <translation>eine Last endlicher Größe</translation>
  </message>
  <message>
   <source>a mesh file</source>
   <translation>eine Netzdatei</translation>
  </message>
  <message>
   <source>a mesh object of the document</source>
   <translation>ein Netzobjekt des Dokuments</translation>
  </message>
  <message>
   <source>a mist only</source>
   <translation>nur ein Nebel</translation>
  </message>
  <message>
   <source>a mixing plan for ply %1</source>
   <translation>ein Mischplan für Lage %1</translation>
  </message>
  <message>
   <source>a modulus of %1 MPa</source>
   <translation>ein Modul von %1 MPa</translation>
  </message>
  <message>
   <source>a mould in %1 pieces</source>
   <translation>eine Form aus %1 Stücken</translation>
  </message>
  <message>
   <source>a mould, 1 to 20 people, up to 100 hours</source>
   <translation>eine Form, 1 bis 20 Personen, bis 100 Stunden</translation>
  </message>
  <message>
   <source>a name</source>
   <translation>ein Name</translation>
  </message>
  <message>
   <source>a name of its own</source>
   <translation>ein eigener Name</translation>
  </message>
  <message>
   <source>a name such as A1</source>
   <translation>ein Name wie A1</translation>
  </message>
  <message>
   <source>a name that is taken</source>
   <translation>ein Name, der vergeben ist</translation>
  </message>
  <message>
   <source>a name that is too long for this disk</source>
   <translation>ein Name, der für dieses Laufwerk zu lang ist</translation>
  </message>
  <message>
   <source>a number</source>
   <translation>eine Zahl</translation>
  </message>
  <message>
   <source>a number above 0</source>
   <translation>eine Zahl über 0</translation>
  </message>
  <message>
   <source>a number and a unit such as '1.5 %1'</source>
   <translation>eine Zahl und eine Einheit wie „1.5 %1“</translation>
  </message>
  <message>
   <source>a number below 0</source>
   <translation>eine Zahl unter 0</translation>
  </message>
  <message>
   <source>a number with a point as the decimal mark</source>
   <translation>eine Zahl mit Punkt als Dezimalzeichen</translation>
  </message>
  <message>
   <source>a number with its unit in quotes</source>
   <translation>eine Zahl mit ihrer Einheit in Anführungszeichen</translation>
  </message>
  <message>
   <source>a part %1 mm long when its numbers are read in '%2'</source>
   <translation>ein Teil von %1 mm Länge, wenn seine Zahlen in „%2“ gelesen werden</translation>
  </message>
  <message>
   <source>a part of the face that it covers</source>
   <translation>ein Teil der Fläche, den sie bedeckt</translation>
  </message>
  <message>
   <source>a part of the whole</source>
   <translation>ein Teil vom Ganzen</translation>
  </message>
  <message>
   <source>a part without faces</source>
   <translation>ein Teil ohne Flächen</translation>
  </message>
  <message>
   <source>a parting line</source>
   <translation>eine Trennlinie</translation>
  </message>
  <message>
   <source>a parting line that crosses itself near (%1, %2, %3) mm in its frame</source>
   <translation>eine Trennlinie, die sich bei (%1, %2, %3) mm in ihrem Rahmen kreuzt</translation>
  </message>
  <message>
   <source>a pattern that can be cut from one layer of cloth</source>
   <translation>ein Schnittmuster, das aus einer Lage Gewebe geschnitten werden kann</translation>
  </message>
  <message>
   <source>a pattern that falls into loose pieces when it is split along the warp</source>
   <translation>ein Schnittmuster, das entlang der Kette geteilt in lose Stücke zerfällt</translation>
  </message>
  <message>
   <source>a pattern that fits the roll</source>
   <translation>ein Schnittmuster, das auf die Rolle passt</translation>
  </message>
  <message>
   <source>a pattern that is %1 mm wide across the warp</source>
   <translation>ein Schnittmuster, das quer zur Kette %1 mm breit ist</translation>
  </message>
  <message>
   <source>a pattern that laps over itself</source>
   <translation>ein Schnittmuster, das sich selbst überlappt</translation>
  </message>
  <message>
   <source>a piece with gaps</source>
   <translation>ein Stück mit Lücken</translation>
  </message>
  <message>
   <source>a place after ply %1 of %2</source>
   <translation>eine Stelle nach Lage %1 von %2</translation>
  </message>
  <message>
   <source>a place after ply %1 with no ply that covers the whole face on one of its sides</source>
   <translation>eine Stelle nach Lage %1, an deren einer Seite keine Lage die ganze Fläche bedeckt</translation>
  </message>
  <message>
   <source>a place inside %1</source>
   <translation>eine Stelle innerhalb von %1</translation>
  </message>
  <message>
   <source>a place outside %1 to %2 mm</source>
   <translation>eine Stelle außerhalb %1 bis %2 mm</translation>
  </message>
  <message>
   <source>a place outside the folder</source>
   <translation>eine Stelle außerhalb des Ordners</translation>
  </message>
  <message>
   <source>a place that is no number</source>
   <translation>ein Ort, der keine Zahl ist</translation>
  </message>
  <message>
   <source>a placement that mirrors it or squeezes it flat</source>
   <translation>eine Lage im Raum, die es spiegelt oder platt drückt</translation>
  </message>
  <message>
   <source>a plain zip archive</source>
   <translation>ein einfaches ZIP-Archiv</translation>
  </message>
  <message>
   <source>a ply that covers a part of the face</source>
   <translation>eine Lage, die einen Teil der Fläche bedeckt</translation>
  </message>
  <message>
   <source>a ply that covers the whole face</source>
   <translation>eine Lage, die die ganze Fläche bedeckt</translation>
  </message>
  <message>
   <source>a point (%1, %2, %3) mm that lies %4 mm off the mesh</source>
   <translation>ein Punkt (%1, %2, %3) mm, der %4 mm neben dem Netz liegt</translation>
  </message>
  <message>
   <source>a point more than 1 km away</source>
   <translation>ein Punkt, der mehr als 1 km weit weg ist</translation>
  </message>
  <message>
   <source>a point on the scan</source>
   <translation>ein Punkt auf dem Scan</translation>
  </message>
  <message>
   <source>a point that is no number</source>
   <translation>ein Punkt, der keine Zahl ist</translation>
  </message>
  <message>
   <source>a point within %1 mm of it</source>
   <translation>ein Punkt innerhalb von %1 mm davon</translation>
  </message>
  <message>
   <source>a pressure or an in-plane force</source>
   <translation>ein Druck oder eine Kraft in der Ebene</translation>
  </message>
  <message>
   <source>a price for each cloth and the resin</source>
   <translation>ein Preis für jedes Gewebe und das Harz</translation>
  </message>
  <message>
   <source>a price per %1</source>
   <translation>ein Preis je %1</translation>
  </message>
  <message>
   <source>a process with a bag</source>
   <translation>eine Arbeitsweise mit Folie</translation>
  </message>
  <message>
   <source>a quantity in %1</source>
   <translation>eine Größe in %1</translation>
  </message>
  <message>
   <source>a record that was written here</source>
   <translation>eine hier geschriebene Aufzeichnung</translation>
  </message>
  <message>
   <source>a record whose %1 does not rise throughout</source>
   <translation>eine Aufzeichnung, deren %1 nicht durchweg steigt</translation>
  </message>
  <message>
   <source>a region smaller than its triangles</source>
   <translation>ein Bereich kleiner als seine Dreiecke</translation>
  </message>
  <message>
   <source>a region that cloth can be cut for</source>
   <translation>ein Bereich, für den Gewebe geschnitten werden kann</translation>
  </message>
  <message>
   <source>a registration cone</source>
   <translation>ein Passkegel</translation>
  </message>
  <message>
   <source>a result that is up to date</source>
   <translation>ein Ergebnis auf dem Stand</translation>
  </message>
  <message>
   <source>a roll width</source>
   <translation>eine Rollenbreite</translation>
  </message>
  <message>
   <source>a run-off of %1 mm that folds over</source>
   <translation>ein Auslauf von %1 mm, der überfaltet</translation>
  </message>
  <message>
   <source>a run-off of %1 mm that runs into itself</source>
   <translation>ein Auslauf von %1 mm, der in sich selbst läuft</translation>
  </message>
  <message>
   <source>a scale needs ascending limits and one colour more than limits</source>
   <translation>eine Skala braucht steigende Grenzen und eine Farbe mehr als Grenzen</translation>
  </message>
  <message>
   <source>a section [%1] with keys and values</source>
   <translation>ein Abschnitt [%1] mit Schlüsseln und Werten</translation>
  </message>
  <message>
   <source>a section of its own</source>
   <translation>ein eigener Abschnitt</translation>
  </message>
  <message>
   <source>a section with point and direction</source>
   <translation>ein Abschnitt mit point und direction</translation>
  </message>
  <message>
   <source>a shape that does not close into a solid</source>
   <translation>eine Gestalt, die sich nicht zum Volumenkörper schließt</translation>
  </message>
  <message>
   <source>a share from 0 to 1</source>
   <translation>ein Anteil von 0 bis 1</translation>
  </message>
  <message>
   <source>a share from 0.05 to 1</source>
   <translation>ein Anteil von 0.05 bis 1</translation>
  </message>
  <message>
   <source>a share of the laminate's mass from 0.05 to 0.95</source>
   <translation>ein Anteil an der Masse des Laminats von 0.05 bis 0.95</translation>
  </message>
  <message>
   <source>a sharp edge</source>
   <translation>eine scharfe Kante</translation>
  </message>
  <message>
   <source>a sheet of %1 x %2 mm</source>
   <translation>ein Blatt von %1 x %2 mm</translation>
  </message>
  <message>
   <source>a sheet that cuts %1 mm^2 into the working areas</source>
   <translation>eine Trennfläche, die %1 mm² in die Arbeitsflächen schneidet</translation>
  </message>
  <message>
   <source>a sheet that meets them in the parting lines only</source>
   <translation>eine Trennfläche, die sie nur in den Trennlinien trifft</translation>
  </message>
  <message>
   <source>a shorter one</source>
   <translation>ein kürzerer</translation>
  </message>
  <message>
   <source>a simple outline</source>
   <translation>ein einfacher Umriss</translation>
  </message>
  <message>
   <source>a single value</source>
   <translation>ein einzelner Wert</translation>
  </message>
  <message>
   <source>a size that is none</source>
   <translation>eine Größe, die keine ist</translation>
  </message>
  <message>
   <source>a smooth, sealed mould lets go from 1 deg on, and 2 to 3 deg are preferred (common practice)</source>
   <translation>eine glatte, versiegelte Form gibt ab 1° frei, besser sind 2° bis 3° (übliche Praxis)</translation>
  </message>
  <message>
   <source>a start %1 mm away from every edge</source>
   <translation>ein Anfang, %1 mm von jedem Rand entfernt</translation>
  </message>
  <message>
   <source>a start before its end</source>
   <translation>ein Anfang vor seinem Ende</translation>
  </message>
  <message>
   <source>a stored %1</source>
   <translation>ein gespeichertes %1</translation>
  </message>
  <message>
   <source>a straight edge, a flat or a round face</source>
   <translation>eine gerade Kante, eine ebene oder eine runde Fläche</translation>
  </message>
  <message>
   <source>a strength in bending</source>
   <translation>eine Festigkeit in Biegung</translation>
  </message>
  <message>
   <source>a surface</source>
   <translation>eine Oberfläche</translation>
  </message>
  <message>
   <source>a surface that closes on itself</source>
   <translation>eine Oberfläche, die sich zu sich selbst schließt</translation>
  </message>
  <message>
   <source>a surface that folds over when it is opened</source>
   <translation>eine Oberfläche, die beim Öffnen überfaltet</translation>
  </message>
  <message>
   <source>a surface that lies flat apart from holes</source>
   <translation>eine Oberfläche, die bis auf Löcher flach liegt</translation>
  </message>
  <message>
   <source>a surface with a tunnel through it</source>
   <translation>eine Oberfläche mit einem Tunnel</translation>
  </message>
  <message>
   <source>a surface with an open edge</source>
   <translation>eine Oberfläche mit offenem Rand</translation>
  </message>
  <message>
   <source>a surface with at most two triangles on every edge and two sides</source>
   <translation>eine Oberfläche mit höchstens zwei Dreiecken an jeder Kante und zwei Seiten</translation>
  </message>
  <message>
   <source>a surface without triangles has no distance</source>
   <translation>eine Oberfläche ohne Dreiecke hat keinen Abstand</translation>
  </message>
  <message>
   <source>a table with one line for each reading</source>
   <translation>eine Tabelle mit einer Zeile je Ablesung</translation>
  </message>
  <message>
   <source>a temperature</source>
   <translation>eine Temperatur</translation>
  </message>
  <message>
   <source>a text</source>
   <translation>ein Text</translation>
  </message>
  <message>
   <source>a text in quotes</source>
   <translation>ein Text in Anführungszeichen</translation>
  </message>
  <message>
   <source>a text table</source>
   <translation>eine Texttabelle</translation>
  </message>
  <message>
   <source>a text that cannot be read (%1)</source>
   <translation>ein Text, der nicht gelesen werden kann (%1)</translation>
  </message>
  <message>
   <source>a tile with gaps</source>
   <translation>eine Kachel mit Lücken</translation>
  </message>
  <message>
   <source>a time such as 08:00</source>
   <translation>eine Uhrzeit wie 08:00</translation>
  </message>
  <message>
   <source>a trial</source>
   <translation>ein Versuch</translation>
  </message>
  <message>
   <source>a triangle of point %1 in %2 points</source>
   <translation>ein Dreieck mit Punkt %1 bei %2 Punkten</translation>
  </message>
  <message>
   <source>a triangle that names a point which does not exist</source>
   <translation>ein Dreieck, das einen Punkt nennt, den es nicht gibt</translation>
  </message>
  <message>
   <source>a trim edge that crosses itself seen along the pull</source>
   <translation>ein Besäumrand, der sich entlang der Zugrichtung gesehen kreuzt</translation>
  </message>
  <message>
   <source>a trim edge that encloses a clear area, its mouth along the pull</source>
   <translation>ein Besäumrand, der eine klare Fläche umschließt, die Mündung in Zugrichtung</translation>
  </message>
  <message>
   <source>a turn and a shift</source>
   <translation>eine Drehung und eine Verschiebung</translation>
  </message>
  <message>
   <source>a unit such as %1</source>
   <translation>eine Einheit wie %1</translation>
  </message>
  <message>
   <source>a value</source>
   <translation>ein Wert</translation>
  </message>
  <message>
   <source>a volume of %1 mm^3</source>
   <translation>ein Volumen von %1 mm³</translation>
  </message>
  <message>
   <source>a volume of %1 x %2 x %3 mm</source>
   <translation>ein Volumen von %1 x %2 x %3 mm</translation>
  </message>
  <message>
   <source>a whole mesh file</source>
   <translation>eine vollständige Netzdatei</translation>
  </message>
  <message>
   <source>a whole number</source>
   <translation>eine ganze Zahl</translation>
  </message>
  <message>
   <source>a whole number from 1 on</source>
   <translation>eine ganze Zahl ab 1</translation>
  </message>
  <message>
   <source>activation energy of the resin</source>
   <translation>Aktivierungsenergie des Harzes</translation>
  </message>
  <message>
   <source>add %1 = "..."</source>
   <translation>%1 = "..." hinzufügen</translation>
  </message>
  <message>
   <source>add a ply</source>
   <translation>eine Lage hinzufügen</translation>
  </message>
  <message>
   <source>add a record</source>
   <translation>eine Aufzeichnung hinzufügen</translation>
  </message>
  <message>
   <source>add after = 1</source>
   <translation>after = 1 hinzufügen</translation>
  </message>
  <message>
   <source>add it</source>
   <translation>hinzufügen</translation>
  </message>
  <message>
   <source>add it to the card</source>
   <translation>auf der Karte ergänzen</translation>
  </message>
  <message>
   <source>add it to the card, or take the rule that 10 degC halve the time</source>
   <translation>auf der Karte ergänzen oder die Regel nehmen, dass 10 °C die Zeit halbieren</translation>
  </message>
  <message>
   <source>add it to the job description</source>
   <translation>in der Auftragsbeschreibung ergänzen</translation>
  </message>
  <message>
   <source>add plies to the layup</source>
   <translation>dem Lagenaufbau Lagen hinzufügen</translation>
  </message>
  <message>
   <source>add records of coupons</source>
   <translation>Aufzeichnungen von Proben hinzufügen</translation>
  </message>
  <message>
   <source>add the line</source>
   <translation>die Zeile hinzufügen</translation>
  </message>
  <message>
   <source>add the plies, the one that touches the mould first</source>
   <translation>die Lagen hinzufügen, zuerst die an der Form</translation>
  </message>
  <message>
   <source>add the points of the cut</source>
   <translation>die Punkte des Schnitts hinzufügen</translation>
  </message>
  <message>
   <source>add the points, the one at the edge first</source>
   <translation>die Punkte hinzufügen, zuerst den am Rand</translation>
  </message>
  <message>
   <source>add them</source>
   <translation>hinzufügen</translation>
  </message>
  <message>
   <source>add them from coupons of your own or leave out the strength check</source>
   <translation>aus eigenen Proben ergänzen oder die Festigkeitsprüfung weglassen</translation>
  </message>
  <message>
   <source>add what is missing and take out the rest</source>
   <translation>ergänzen, was fehlt, und den Rest herausnehmen</translation>
  </message>
  <message>
   <source>adhesive tape</source>
   <translation>Klebeband</translation>
  </message>
  <message>
   <source>air port</source>
   <translation>Luftanschluss</translation>
  </message>
  <message>
   <source>allow fewer cloths, angles or plies</source>
   <translation>weniger Gewebe, Winkel oder Lagen zulassen</translation>
  </message>
  <message>
   <source>allow more pieces</source>
   <translation>mehr Stücke zulassen</translation>
  </message>
  <message>
   <source>allow more pieces, or change the part</source>
   <translation>mehr Stücke zulassen oder das Teil ändern</translation>
  </message>
  <message>
   <source>allow one piece more or fewer, turn the pull, or add draft where they meet</source>
   <translation>ein Stück mehr oder weniger erlauben, die Zugrichtung drehen oder dort, wo sie sich treffen, Schräge geben</translation>
  </message>
  <message>
   <source>allow smaller tiles, choose another printer or move what bars the cuts</source>
   <translation>kleinere Kacheln zulassen, einen anderen Drucker wählen oder verlegen, was die Schnitte sperrt</translation>
  </message>
  <message>
   <source>along the edge</source>
   <translation>entlang der Kante</translation>
  </message>
  <message>
   <source>an angle of %1</source>
   <translation>ein Winkel von %1</translation>
  </message>
  <message>
   <source>an archive that cannot be read (%1)</source>
   <translation>ein Archiv, das nicht gelesen werden kann (%1)</translation>
  </message>
  <message>
   <source>an area of %1 mm^2</source>
   <translation>eine Fläche von %1 mm²</translation>
  </message>
  <message>
   <source>an area that is off by %1 mm</source>
   <translation>eine Arbeitsfläche, die um %1 mm abweicht</translation>
  </message>
  <message>
   <source>an array of shape %1</source>
   <translation>ein Feld der Form %1</translation>
  </message>
  <message>
   <source>an array of shape %1 came where %2 was needed</source>
   <translation>ein Feld der Form %1 kam, wo %2 gebraucht wurde</translation>
  </message>
  <message>
   <source>an arrow across it</source>
   <translation>einen Pfeil quer dazu</translation>
  </message>
  <message>
   <source>an axis with a direction</source>
   <translation>eine Achse mit einer Richtung</translation>
  </message>
  <message>
   <source>an edge of the part</source>
   <translation>eine Kante des Teils</translation>
  </message>
  <message>
   <source>an edge that crosses itself seen along the pull</source>
   <translation>ein Rand, der sich entlang der Zugrichtung gesehen kreuzt</translation>
  </message>
  <message>
   <source>an edge that encloses a clear area</source>
   <translation>ein Rand, der eine klare Fläche umschließt</translation>
  </message>
  <message>
   <source>an edge that is less tightly curved</source>
   <translation>eine weniger eng gekrümmte Kante</translation>
  </message>
  <message>
   <source>an end after its beginning</source>
   <translation>ein Ende nach seinem Anfang</translation>
  </message>
  <message>
   <source>an end behind its start, both 0 mm or more</source>
   <translation>ein Ende hinter seinem Anfang, beide 0 mm oder mehr</translation>
  </message>
  <message>
   <source>an end that lies nowhere on the face%1</source>
   <translation>ein Ende, das nirgends auf der Fläche liegt%1</translation>
  </message>
  <message>
   <source>an entry '%1'</source>
   <translation>ein Eintrag „%1“</translation>
  </message>
  <message>
   <source>an error of %1 at most</source>
   <translation>ein Fehler von höchstens %1</translation>
  </message>
  <message>
   <source>an even wet coat, no puddles</source>
   <translation>eine gleichmäßig nasse Schicht, keine Pfützen</translation>
  </message>
  <message>
   <source>an inside radius of more than %1 mm</source>
   <translation>ein Innenradius von mehr als %1 mm</translation>
  </message>
  <message>
   <source>an item, a price and its unit, such as 'Peel ply = 4.20 per m^2'</source>
   <translation>ein Gegenstand, ein Preis und seine Einheit, etwa 'Peel ply = 4.20 per m^2'</translation>
  </message>
  <message>
   <source>an object of a newer Laywright (schema %1)</source>
   <translation>ein Objekt eines neueren Laywright (Schema %1)</translation>
  </message>
  <message>
   <source>an offcut</source>
   <translation>ein Reststück</translation>
  </message>
  <message>
   <source>an offset with gaps</source>
   <translation>ein Versatz mit Lücken</translation>
  </message>
  <message>
   <source>an outline along which the run-off lies open</source>
   <translation>ein Umriss, an dem der Auslauf offen liegt</translation>
  </message>
  <message>
   <source>an outline that crosses itself</source>
   <translation>ein Umriss, der sich kreuzt</translation>
  </message>
  <message>
   <source>an outline that crosses itself, seen along the pull</source>
   <translation>ein Umriss, der sich entlang der Zugrichtung gesehen kreuzt</translation>
  </message>
  <message>
   <source>an outline that passes each place once</source>
   <translation>ein Umriss, der jede Stelle einmal berührt</translation>
  </message>
  <message>
   <source>an outline that passes each point once</source>
   <translation>ein Umriss, der jeden Punkt einmal berührt</translation>
  </message>
  <message>
   <source>an outline that touches itself at (%1, %2, %3) mm</source>
   <translation>ein Umriss, der sich bei (%1, %2, %3) mm selbst berührt</translation>
  </message>
  <message>
   <source>and</source>
   <translation>und</translation>
  </message>
  <message>
   <source>and %1 more</source>
   <translation>und %1 weitere</translation>
  </message>
  <message>
   <source>another format</source>
   <translation>ein anderes Format</translation>
  </message>
  <message>
   <source>area (mm2)</source>
   <translation>Fläche (mm²)</translation>
  </message>
  <message>
   <source>ask for less, or allow more plies, other cloths or a core</source>
   <translation>weniger verlangen oder mehr Lagen, andere Gewebe oder einen Kern zulassen</translation>
  </message>
  <message>
   <source>at least %1</source>
   <translation>mindestens %1</translation>
  </message>
  <message>
   <source>at least %1 mm</source>
   <translation>mindestens %1 mm</translation>
  </message>
  <message>
   <source>at least %1 mm for the least tile and its %2</source>
   <translation>mindestens %1 mm für die kleinste Kachel und %2</translation>
  </message>
  <message>
   <source>at least %1, %2</source>
   <translation>mindestens %1, %2</translation>
  </message>
  <message>
   <source>at least 0 mm</source>
   <translation>mindestens 0 mm</translation>
  </message>
  <message>
   <source>at least 1</source>
   <translation>mindestens 1</translation>
  </message>
  <message>
   <source>at least 2</source>
   <translation>mindestens 2</translation>
  </message>
  <message>
   <source>at least 4</source>
   <translation>mindestens 4</translation>
  </message>
  <message>
   <source>at least 4 mm</source>
   <translation>mindestens 4 mm</translation>
  </message>
  <message>
   <source>at least one</source>
   <translation>mindestens eines</translation>
  </message>
  <message>
   <source>at least one in all</source>
   <translation>mindestens eines insgesamt</translation>
  </message>
  <message>
   <source>at least one ply on each side</source>
   <translation>mindestens eine Lage auf jeder Seite</translation>
  </message>
  <message>
   <source>at least one triangle</source>
   <translation>mindestens ein Dreieck</translation>
  </message>
  <message>
   <source>at least ten steps of the scale</source>
   <translation>mindestens zehn Schritte der Waage</translation>
  </message>
  <message>
   <source>at least the least tile of %1 mm</source>
   <translation>mindestens die kleinste Kachel von %1 mm</translation>
  </message>
  <message>
   <source>at least three pairs of rising %1 and force</source>
   <translation>mindestens drei Paare steigender %1 und Kraft</translation>
  </message>
  <message>
   <source>at most %1</source>
   <translation>höchstens %1</translation>
  </message>
  <message>
   <source>at most %1 MPa, %2 times that through it</source>
   <translation>höchstens %1 MPa, %2-mal das quer hindurch</translation>
  </message>
  <message>
   <source>at most %1 and every other face twice as far</source>
   <translation>höchstens %1 und jede andere Fläche doppelt so weit</translation>
  </message>
  <message>
   <source>at most %1 mm</source>
   <translation>höchstens %1 mm</translation>
  </message>
  <message>
   <source>at most %1 mm each way</source>
   <translation>höchstens %1 mm je Richtung</translation>
  </message>
  <message>
   <source>at most %1 mm in tiles of %2 mm</source>
   <translation>höchstens %1 mm bei Kacheln von %2 mm</translation>
  </message>
  <message>
   <source>at most %1 pages</source>
   <translation>höchstens %1 Seiten</translation>
  </message>
  <message>
   <source>at most %1 x %2 x %3 mm</source>
   <translation>höchstens %1 x %2 x %3 mm</translation>
  </message>
  <message>
   <source>at most one for each ply</source>
   <translation>höchstens eine je Lage</translation>
  </message>
  <message>
   <source>at most the %1 g before trimming</source>
   <translation>höchstens die %1 g vor dem Besäumen</translation>
  </message>
  <message>
   <source>at most the %1 g of cloth, mix and core that went in</source>
   <translation>höchstens die %1 g Gewebe, Gemisch und Kern, die hineingingen</translation>
  </message>
  <message>
   <source>at most two triangles along an edge, turned the same way</source>
   <translation>höchstens zwei Dreiecke an einer Kante, gleich gewendet</translation>
  </message>
  <message>
   <source>at the edges across x</source>
   <translation>an den Rändern quer zu x</translation>
  </message>
  <message>
   <source>at the edges across y</source>
   <translation>an den Rändern quer zu y</translation>
  </message>
  <message>
   <source>bag</source>
   <translation>Folie</translation>
  </message>
  <message>
   <source>bag film</source>
   <translation>Vakuumfolie</translation>
  </message>
  <message>
   <source>bag: a pleat every</source>
   <translation>Folie: eine Falte alle</translation>
  </message>
  <message>
   <source>bag: beyond the part</source>
   <translation>Folie: über das Teil hinaus</translation>
  </message>
  <message>
   <source>bag: height of a pleat</source>
   <translation>Folie: Höhe einer Falte</translation>
  </message>
  <message>
   <source>bag: slack</source>
   <translation>Folie: Lose</translation>
  </message>
  <message>
   <source>base down</source>
   <translation>Sockel unten</translation>
  </message>
  <message>
   <source>base height</source>
   <translation>Sockelhöhe</translation>
  </message>
  <message>
   <source>base on the bed</source>
   <translation>Sockel auf dem Bett</translation>
  </message>
  <message>
   <source>base or a side on the bed</source>
   <translation>Sockel oder eine Seite auf dem Bett</translation>
  </message>
  <message>
   <source>before a later part</source>
   <translation>vor einem späteren Teil</translation>
  </message>
  <message>
   <source>before cutting, card '%1': skin %2 mm2 x %3 mm + %4 % of the rest = %5 cm3; %6 g; %7 h at %8 mm/s%9</source>
   <translation>vor dem Zerlegen, Karte '%1': Haut %2 mm² x %3 mm + %4 % vom Rest = %5 cm³; %6 g; %7 h bei %8 mm/s%9</translation>
  </message>
  <message>
   <source>before the second part</source>
   <translation>vor dem zweiten Teil</translation>
  </message>
  <message>
   <source>below the wanted draft</source>
   <translation>unter der gewünschten Schräge</translation>
  </message>
  <message>
   <source>bench: %1</source>
   <translation>Werkbank: %1</translation>
  </message>
  <message>
   <source>bending across (N mm)</source>
   <translation>Biegung quer (N mm)</translation>
  </message>
  <message>
   <source>bending along (N mm)</source>
   <translation>Biegung längs (N mm)</translation>
  </message>
  <message>
   <source>bending along and across</source>
   <translation>Biegung längs und quer</translation>
  </message>
  <message>
   <source>bending over %1 mm</source>
   <translation>Biegung über %1 mm</translation>
  </message>
  <message>
   <source>bending stiffness across</source>
   <translation>Biegesteifigkeit quer</translation>
  </message>
  <message>
   <source>bending stiffness along</source>
   <translation>Biegesteifigkeit längs</translation>
  </message>
  <message>
   <source>bends that open by less</source>
   <translation>Biegungen, die sich weniger öffnen</translation>
  </message>
  <message>
   <source>bent over three points</source>
   <translation>über drei Punkte gebogen</translation>
  </message>
  <message>
   <source>blend radius of the flange</source>
   <translation>Übergangsradius des Flansches</translation>
  </message>
  <message>
   <source>bolt diameter</source>
   <translation>Schraubendurchmesser</translation>
  </message>
  <message>
   <source>bolt hole</source>
   <translation>Schraubenloch</translation>
  </message>
  <message>
   <source>bolt holes</source>
   <translation>Schraubenlöcher</translation>
  </message>
  <message>
   <source>bolt spacing</source>
   <translation>Schraubenabstand</translation>
  </message>
  <message>
   <source>both faces and region</source>
   <translation>Flächen und Bereich zugleich</translation>
  </message>
  <message>
   <source>bring Laywright up to date to change it; until then it is shown as it was saved</source>
   <translation>Laywright erneuern, um es zu ändern; bis dahin wird es gezeigt, wie es gespeichert war</translation>
  </message>
  <message>
   <source>bring layup and patterns into agreement</source>
   <translation>Lagenaufbau und Schnittmuster in Einklang bringen</translation>
  </message>
  <message>
   <source>build a Mould Body: the part leaves it along one pull</source>
   <translation>einen Formkörper bauen: das Teil löst sich daraus in einer Zugrichtung</translation>
  </message>
  <message>
   <source>buy %1 m,</source>
   <translation>%1 m kaufen,</translation>
  </message>
  <message>
   <source>card</source>
   <translation>Karte</translation>
  </message>
  <message>
   <source>cards hold strengths in tension, compression and shear: pull coupons as well</source>
   <translation>Karten enthalten Festigkeiten in Zug, Druck und Schub: auch Proben ziehen</translation>
  </message>
  <message>
   <source>change the least tile size a little and try again</source>
   <translation>die kleinste Kachel etwas ändern und neu versuchen</translation>
  </message>
  <message>
   <source>check Poisson's ratio and the two moduli</source>
   <translation>die Querdehnzahl und die beiden Moduln prüfen</translation>
  </message>
  <message>
   <source>check both numbers and their units</source>
   <translation>beide Zahlen und ihre Einheiten prüfen</translation>
  </message>
  <message>
   <source>check it</source>
   <translation>prüfen</translation>
  </message>
  <message>
   <source>check its name and folder</source>
   <translation>Namen und Ordner prüfen</translation>
  </message>
  <message>
   <source>check that the drawing is in mm, or have it plotted on a roll</source>
   <translation>prüfen, ob die Zeichnung in mm ist, oder auf einer Rolle plotten lassen</translation>
  </message>
  <message>
   <source>check that the drawing is in mm, or use its DXF or SVG file</source>
   <translation>prüfen, ob die Zeichnung in mm ist, oder ihre DXF- oder SVG-Datei nehmen</translation>
  </message>
  <message>
   <source>check the face</source>
   <translation>die Fläche prüfen</translation>
  </message>
  <message>
   <source>check the layup</source>
   <translation>den Lagenaufbau prüfen</translation>
  </message>
  <message>
   <source>check the list</source>
   <translation>die Liste prüfen</translation>
  </message>
  <message>
   <source>check the mould</source>
   <translation>die Form prüfen</translation>
  </message>
  <message>
   <source>check the number and its unit</source>
   <translation>die Zahl und ihre Einheit prüfen</translation>
  </message>
  <message>
   <source>check the path</source>
   <translation>den Pfad prüfen</translation>
  </message>
  <message>
   <source>check the picked faces for gaps and folds</source>
   <translation>die gewählten Flächen auf Lücken und Falten prüfen</translation>
  </message>
  <message>
   <source>check the unit</source>
   <translation>die Einheit prüfen</translation>
  </message>
  <message>
   <source>check the unit of the part: millimetres, metres or inches</source>
   <translation>die Einheit des Teils prüfen: Millimeter, Meter oder Zoll</translation>
  </message>
  <message>
   <source>check the unit: 1 kPa is 0.001 MPa</source>
   <translation>die Einheit prüfen: 1 kPa ist 0.001 MPa</translation>
  </message>
  <message>
   <source>check the weighing</source>
   <translation>die Wägung prüfen</translation>
  </message>
  <message>
   <source>check them</source>
   <translation>prüfen</translation>
  </message>
  <message>
   <source>check width, thickness, span and units</source>
   <translation>Breite, Dicke, Stützweite und Einheiten prüfen</translation>
  </message>
  <message>
   <source>checking the pieces</source>
   <translation>die Stücke werden geprüft</translation>
  </message>
  <message>
   <source>choice of layups</source>
   <translation>Wahl von Lagenaufbauten</translation>
  </message>
  <message>
   <source>choose a cloth of the layup</source>
   <translation>ein Gewebe des Lagenaufbaus wählen</translation>
  </message>
  <message>
   <source>choose a larger printer</source>
   <translation>einen größeren Drucker wählen</translation>
  </message>
  <message>
   <source>choose a larger printer or allow smaller tiles</source>
   <translation>einen größeren Drucker wählen oder kleinere Kacheln zulassen</translation>
  </message>
  <message>
   <source>choose a larger printer, smaller tiles or smaller joints</source>
   <translation>einen größeren Drucker, kleinere Kacheln oder kleinere Verbindungen wählen</translation>
  </message>
  <message>
   <source>choose another</source>
   <translation>eine andere Wahl treffen</translation>
  </message>
  <message>
   <source>choose another card or write one</source>
   <translation>eine andere Karte wählen oder eine schreiben</translation>
  </message>
  <message>
   <source>choose another file</source>
   <translation>eine andere Datei wählen</translation>
  </message>
  <message>
   <source>choose another folder</source>
   <translation>einen anderen Ordner wählen</translation>
  </message>
  <message>
   <source>choose another folder, or close the program that holds the file open</source>
   <translation>einen anderen Ordner wählen oder das Programm schließen, das die Datei offen hält</translation>
  </message>
  <message>
   <source>choose another folder; the old file is unchanged</source>
   <translation>einen anderen Ordner wählen; die alte Datei ist unverändert</translation>
  </message>
  <message>
   <source>choose another name</source>
   <translation>einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>choose another printer</source>
   <translation>einen anderen Drucker wählen</translation>
  </message>
  <message>
   <source>choose another process</source>
   <translation>eine andere Arbeitsweise wählen</translation>
  </message>
  <message>
   <source>choose one</source>
   <translation>eines wählen</translation>
  </message>
  <message>
   <source>choose one of them</source>
   <translation>eines davon wählen</translation>
  </message>
  <message>
   <source>choose one of these</source>
   <translation>eines von diesen wählen</translation>
  </message>
  <message>
   <source>choose one of these or add a card</source>
   <translation>eines von diesen wählen oder eine Karte hinzufügen</translation>
  </message>
  <message>
   <source>clamped thickness</source>
   <translation>geklemmte Dicke</translation>
  </message>
  <message>
   <source>clean the record</source>
   <translation>die Aufzeichnung bereinigen</translation>
  </message>
  <message>
   <source>close the hole in the part or set another pull direction</source>
   <translation>das Loch im Teil schließen oder eine andere Zugrichtung setzen</translation>
  </message>
  <message>
   <source>close the mesh before it is written</source>
   <translation>das Netz schließen, bevor es geschrieben wird</translation>
  </message>
  <message>
   <source>closing of bends</source>
   <translation>Schließen der Biegungen</translation>
  </message>
  <message>
   <source>cloth and angle</source>
   <translation>Gewebe und Winkel</translation>
  </message>
  <message>
   <source>cloth for %1 parts and %2 mirrored ones; everything else in this job is for one part</source>
   <translation>Gewebe für %1 Teile und %2 gespiegelte; alles andere in diesem Auftrag ist für ein Teil</translation>
  </message>
  <message>
   <source>cloth for ply %1</source>
   <translation>Gewebe für Lage %1</translation>
  </message>
  <message>
   <source>cloth line</source>
   <translation>Gewebelinie</translation>
  </message>
  <message>
   <source>cloth margin</source>
   <translation>Gewebezugabe</translation>
  </message>
  <message>
   <source>cloth short of locking</source>
   <translation>Gewebe vor der Sperre</translation>
  </message>
  <message>
   <source>cloth: length along the warp x width</source>
   <translation>Gewebe: Länge entlang der Kette x Breite</translation>
  </message>
  <message>
   <source>cloth: start to end, and where wanted: across low to high</source>
   <translation>Gewebe: Anfang bis Ende und wo gewünscht: quer von bis</translation>
  </message>
  <message>
   <source>cloth: width</source>
   <translation>Gewebe: Breite</translation>
  </message>
  <message>
   <source>coarsen the mesh of the picked faces a little and try again</source>
   <translation>das Netz der gewählten Flächen etwas vergröbern und neu versuchen</translation>
  </message>
  <message>
   <source>coats of primer</source>
   <translation>Schichten Grundierung</translation>
  </message>
  <message>
   <source>coats of sealer</source>
   <translation>Schichten Versiegler</translation>
  </message>
  <message>
   <source>complete the list</source>
   <translation>die Liste vervollständigen</translation>
  </message>
  <message>
   <source>complete the list in the order of the page 'Cut cloth'</source>
   <translation>die Liste in der Reihenfolge der Seite „Gewebe zuschneiden“ vervollständigen</translation>
  </message>
  <message>
   <source>complete the weigh-in</source>
   <translation>das Wiegen vervollständigen</translation>
  </message>
  <message>
   <source>cone diameter</source>
   <translation>Kegeldurchmesser</translation>
  </message>
  <message>
   <source>core</source>
   <translation>Kern</translation>
  </message>
  <message>
   <source>core thickness</source>
   <translation>Kerndicke</translation>
  </message>
  <message>
   <source>core, crushed</source>
   <translation>Kern, zerdrückt</translation>
  </message>
  <message>
   <source>core, sheared</source>
   <translation>Kern, geschert</translation>
  </message>
  <message>
   <source>correct it</source>
   <translation>berichtigen</translation>
  </message>
  <message>
   <source>correct one of the two</source>
   <translation>eines der beiden berichtigen</translation>
  </message>
  <message>
   <source>correct that line</source>
   <translation>diese Zeile berichtigen</translation>
  </message>
  <message>
   <source>correct the card</source>
   <translation>die Karte berichtigen</translation>
  </message>
  <message>
   <source>correct the cloth's card</source>
   <translation>die Karte des Gewebes berichtigen</translation>
  </message>
  <message>
   <source>correct the core</source>
   <translation>den Kern berichtigen</translation>
  </message>
  <message>
   <source>correct the cut</source>
   <translation>den Schnitt berichtigen</translation>
  </message>
  <message>
   <source>correct the file</source>
   <translation>die Datei berichtigen</translation>
  </message>
  <message>
   <source>correct the key</source>
   <translation>den Schlüssel berichtigen</translation>
  </message>
  <message>
   <source>correct the limit, or leave it out for that of the cloth</source>
   <translation>die Grenze berichtigen oder für die des Gewebes weglassen</translation>
  </message>
  <message>
   <source>correct the line</source>
   <translation>die Zeile berichtigen</translation>
  </message>
  <message>
   <source>correct the list</source>
   <translation>die Liste berichtigen</translation>
  </message>
  <message>
   <source>correct the name</source>
   <translation>den Namen berichtigen</translation>
  </message>
  <message>
   <source>correct the number</source>
   <translation>die Zahl berichtigen</translation>
  </message>
  <message>
   <source>correct the placement</source>
   <translation>die Lage im Raum berichtigen</translation>
  </message>
  <message>
   <source>correct the ply</source>
   <translation>die Lage berichtigen</translation>
  </message>
  <message>
   <source>correct the printer's card</source>
   <translation>die Karte des Druckers berichtigen</translation>
  </message>
  <message>
   <source>correct the setting</source>
   <translation>die Einstellung berichtigen</translation>
  </message>
  <message>
   <source>correct the settings</source>
   <translation>die Einstellungen berichtigen</translation>
  </message>
  <message>
   <source>correct the side</source>
   <translation>die Seite berichtigen</translation>
  </message>
  <message>
   <source>correct the sides</source>
   <translation>die Seiten berichtigen</translation>
  </message>
  <message>
   <source>correct the thickness</source>
   <translation>die Dicke berichtigen</translation>
  </message>
  <message>
   <source>correct the two</source>
   <translation>die beiden berichtigen</translation>
  </message>
  <message>
   <source>correct the two numbers</source>
   <translation>die beiden Zahlen berichtigen</translation>
  </message>
  <message>
   <source>correct the two times</source>
   <translation>die beiden Zeiten berichtigen</translation>
  </message>
  <message>
   <source>correct the unit</source>
   <translation>die Einheit berichtigen</translation>
  </message>
  <message>
   <source>correct the value or the range</source>
   <translation>den Wert oder den Bereich berichtigen</translation>
  </message>
  <message>
   <source>cost</source>
   <translation>Kosten</translation>
  </message>
  <message>
   <source>coupon</source>
   <translation>Probe</translation>
  </message>
  <message>
   <source>coupon %1</source>
   <translation>Probe %1</translation>
  </message>
  <message>
   <source>coupon %1: %2</source>
   <translation>Probe %1: %2</translation>
  </message>
  <message>
   <source>coupon %1: span</source>
   <translation>Probe %1: Stützweite</translation>
  </message>
  <message>
   <source>coupon test</source>
   <translation>Probenversuch</translation>
  </message>
  <message>
   <source>cup %1 for %2: stir at %3 min, resin to %4 g, hardener to %5 g, use within %6 min</source>
   <translation>Becher %1 für %2: rühren bei %3 min, Harz bis %4 g, Härter bis %5 g, binnen %6 min verbrauchen</translation>
  </message>
  <message>
   <source>cup limit</source>
   <translation>Bechergrenze</translation>
  </message>
  <message>
   <source>cut</source>
   <translation>Schnitt</translation>
  </message>
  <message>
   <source>cut %1 in %2</source>
   <translation>Schnitt %1 in %2</translation>
  </message>
  <message>
   <source>cut in every ply</source>
   <translation>Schnitt in jeder Lage</translation>
  </message>
  <message>
   <source>cut in ply %1</source>
   <translation>Schnitt in Lage %1</translation>
  </message>
  <message>
   <source>cut it into pieces from edge to edge, or move the start point</source>
   <translation>von Rand zu Rand in Stücke schneiden oder den Startpunkt verlegen</translation>
  </message>
  <message>
   <source>cuts</source>
   <translation>Schnitte</translation>
  </message>
  <message>
   <source>cuts %1 mm apart beside what no cut may pass</source>
   <translation>Schnitte %1 mm auseinander neben dem, was kein Schnitt treffen darf</translation>
  </message>
  <message>
   <source>cuts apart</source>
   <translation>Abstand der Schnitte</translation>
  </message>
  <message>
   <source>cutting lines and bores</source>
   <translation>Schnittlinien und Bohrungen</translation>
  </message>
  <message>
   <source>date</source>
   <translation>Datum</translation>
  </message>
  <message>
   <source>datum arrow</source>
   <translation>Bezugspfeil</translation>
  </message>
  <message>
   <source>datum edge</source>
   <translation>Bezugskante</translation>
  </message>
  <message>
   <source>datum figure</source>
   <translation>Zahl am Bezugspfeil</translation>
  </message>
  <message>
   <source>datum tick</source>
   <translation>Strich des Bezugspfeils</translation>
  </message>
  <message>
   <source>decimal commas between commas cannot be told apart: export it with semicolons</source>
   <translation>Dezimalkommas zwischen Kommas sind nicht zu unterscheiden: mit Strichpunkten ausgeben</translation>
  </message>
  <message>
   <source>deflection</source>
   <translation>Durchbiegung</translation>
  </message>
  <message>
   <source>degC</source>
   <translation>°C</translation>
  </message>
  <message>
   <source>depth of the texture</source>
   <translation>Tiefe der Struktur</translation>
  </message>
  <message>
   <source>diameter of the feet</source>
   <translation>Durchmesser der Füße</translation>
  </message>
  <message>
   <source>dividing the surface</source>
   <translation>die Fläche wird geteilt</translation>
  </message>
  <message>
   <source>doubled triangles</source>
   <translation>doppelte Dreiecke</translation>
  </message>
  <message>
   <source>dowel clearance</source>
   <translation>Dübelspiel</translation>
  </message>
  <message>
   <source>dowel depth</source>
   <translation>Dübeltiefe</translation>
  </message>
  <message>
   <source>dowel diameter</source>
   <translation>Dübeldurchmesser</translation>
  </message>
  <message>
   <source>drape the layup again</source>
   <translation>den Lagenaufbau neu drapieren</translation>
  </message>
  <message>
   <source>draped laminate</source>
   <translation>drapiertes Laminat</translation>
  </message>
  <message>
   <source>draping %1</source>
   <translation>%1 wird drapiert</translation>
  </message>
  <message>
   <source>drop-off of the plies</source>
   <translation>Staffelung der Lagen</translation>
  </message>
  <message>
   <source>dry cloth</source>
   <translation>trockenes Gewebe</translation>
  </message>
  <message>
   <source>drying of the film</source>
   <translation>Trocknen des Films</translation>
  </message>
  <message>
   <source>ear height</source>
   <translation>Ohrhöhe</translation>
  </message>
  <message>
   <source>ear reach</source>
   <translation>Ohrlänge</translation>
  </message>
  <message>
   <source>ear thickness</source>
   <translation>Ohrdicke</translation>
  </message>
  <message>
   <source>edge can neither turn nor shift</source>
   <translation>Rand kann weder drehen noch gleiten</translation>
  </message>
  <message>
   <source>edge can turn but not shift</source>
   <translation>Rand kann drehen, aber nicht gleiten</translation>
  </message>
  <message>
   <source>edges with more than two triangles</source>
   <translation>Kanten mit mehr als zwei Dreiecken</translation>
  </message>
  <message>
   <source>elements of the shell</source>
   <translation>Elemente der Schale</translation>
  </message>
  <message>
   <source>end the plies before the bend, or switch the allowance for the laminate off</source>
   <translation>die Lagen vor der Biegung enden lassen oder die Zugabe für das Laminat ausschalten</translation>
  </message>
  <message>
   <source>enlarge it</source>
   <translation>ihn vergrößern</translation>
  </message>
  <message>
   <source>enlarge the fillet there or put the laminate on the other side</source>
   <translation>dort die Ausrundung vergrößern oder das Laminat auf die andere Seite legen</translation>
  </message>
  <message>
   <source>every entry of a printer card</source>
   <translation>jeder Eintrag einer Druckerkarte</translation>
  </message>
  <message>
   <source>every part</source>
   <translation>jedes Teil</translation>
  </message>
  <message>
   <source>every ply</source>
   <translation>jede Lage</translation>
  </message>
  <message>
   <source>every ply along the datum arrow</source>
   <translation>jede Lage entlang des Bezugspfeils</translation>
  </message>
  <message>
   <source>expansion of the plastic</source>
   <translation>Ausdehnung des Kunststoffs</translation>
  </message>
  <message>
   <source>export it again</source>
   <translation>neu ausgeben</translation>
  </message>
  <message>
   <source>export it as CSV or text</source>
   <translation>als CSV oder Text ausgeben</translation>
  </message>
  <message>
   <source>export it as such</source>
   <translation>so ausgeben</translation>
  </message>
  <message>
   <source>export it as text with semicolons between the columns</source>
   <translation>als Text mit Strichpunkten zwischen den Spalten ausgeben</translation>
  </message>
  <message>
   <source>export less of it</source>
   <translation>weniger davon ausgeben</translation>
  </message>
  <message>
   <source>extent of a ply</source>
   <translation>Umfang einer Lage</translation>
  </message>
  <message>
   <source>extents</source>
   <translation>Umfänge</translation>
  </message>
  <message>
   <source>extra for losses</source>
   <translation>Zuschlag für Verluste</translation>
  </message>
  <message>
   <source>extra share</source>
   <translation>Zuschlag</translation>
  </message>
  <message>
   <source>face at the mould, wrinkling</source>
   <translation>Haut an der Form, Knittern</translation>
  </message>
  <message>
   <source>face away from it, wrinkling</source>
   <translation>Haut auf der anderen Seite, Knittern</translation>
  </message>
  <message>
   <source>face%1 %2</source>
   <translation>Fläche%1 %2</translation>
  </message>
  <message>
   <source>faces that a ply covers</source>
   <translation>Flächen, die eine Lage bedeckt</translation>
  </message>
  <message>
   <source>faces that close into a shell</source>
   <translation>Flächen, die sich zu einer Schale schließen</translation>
  </message>
  <message>
   <source>faces with an open edge, so that the part can leave the mould</source>
   <translation>Flächen mit offenem Rand, damit das Teil die Form verlassen kann</translation>
  </message>
  <message>
   <source>far side</source>
   <translation>abgewandte Seite</translation>
  </message>
  <message>
   <source>fault in the roll of %1</source>
   <translation>Fehler in der Rolle von %1</translation>
  </message>
  <message>
   <source>feet</source>
   <translation>Füße</translation>
  </message>
  <message>
   <source>fibre volume</source>
   <translation>Faservolumen</translation>
  </message>
  <message>
   <source>fibres %1</source>
   <translation>Fasern %1</translation>
  </message>
  <message>
   <source>fill coat</source>
   <translation>Füllanstrich</translation>
  </message>
  <message>
   <source>fill coats</source>
   <translation>Füllanstriche</translation>
  </message>
  <message>
   <source>fill it in</source>
   <translation>ausfüllen</translation>
  </message>
  <message>
   <source>fill the sheet first</source>
   <translation>zuerst das Blatt füllen</translation>
  </message>
  <message>
   <source>filled hole</source>
   <translation>gefülltes Loch</translation>
  </message>
  <message>
   <source>finding regions</source>
   <translation>Bereiche werden gesucht</translation>
  </message>
  <message>
   <source>finding the best pull</source>
   <translation>die beste Zugrichtung wird gesucht</translation>
  </message>
  <message>
   <source>finite coordinates</source>
   <translation>endliche Koordinaten</translation>
  </message>
  <message>
   <source>finite coordinates in mm</source>
   <translation>endliche Koordinaten in mm</translation>
  </message>
  <message>
   <source>finite numbers</source>
   <translation>endliche Zahlen</translation>
  </message>
  <message>
   <source>five strengths</source>
   <translation>fünf Festigkeiten</translation>
  </message>
  <message>
   <source>fixed loss</source>
   <translation>fester Verlust</translation>
  </message>
  <message>
   <source>flange</source>
   <translation>Flansch</translation>
  </message>
  <message>
   <source>flange width</source>
   <translation>Flanschbreite</translation>
  </message>
  <message>
   <source>flat pattern of %1</source>
   <translation>Schnittmuster von %1</translation>
  </message>
  <message>
   <source>flat with clamp ears</source>
   <translation>stumpf mit Klemmohren</translation>
  </message>
  <message>
   <source>flow mesh</source>
   <translation>Fließhilfe</translation>
  </message>
  <message>
   <source>for each %1 degC</source>
   <translation>je %1 °C</translation>
  </message>
  <message>
   <source>forces, strains or a panel</source>
   <translation>Kräfte, Dehnungen oder eine Platte</translation>
  </message>
  <message>
   <source>free it</source>
   <translation>freigeben</translation>
  </message>
  <message>
   <source>free some space and recompute</source>
   <translation>Platz schaffen und neu berechnen</translation>
  </message>
  <message>
   <source>free some space; the old file is unchanged</source>
   <translation>Platz schaffen; die alte Datei ist unverändert</translation>
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
   <source>g/m^2</source>
   <translation>g/m²</translation>
  </message>
  <message>
   <source>gauge length</source>
   <translation>Messlänge</translation>
  </message>
  <message>
   <source>gelled after</source>
   <translation>geliert nach</translation>
  </message>
  <message>
   <source>give it</source>
   <translation>angeben</translation>
  </message>
  <message>
   <source>give it a name</source>
   <translation>einen Namen geben</translation>
  </message>
  <message>
   <source>give it as a share of volume</source>
   <translation>als Volumenanteil angeben</translation>
  </message>
  <message>
   <source>give it more resin</source>
   <translation>mehr Harz geben</translation>
  </message>
  <message>
   <source>give it one</source>
   <translation>eines angeben</translation>
  </message>
  <message>
   <source>give one cell per column</source>
   <translation>eine Zelle je Spalte angeben</translation>
  </message>
  <message>
   <source>give one of each</source>
   <translation>von jedem eines angeben</translation>
  </message>
  <message>
   <source>give the job a name</source>
   <translation>dem Auftrag einen Namen geben</translation>
  </message>
  <message>
   <source>give the number with such a unit</source>
   <translation>die Zahl mit solch einer Einheit angeben</translation>
  </message>
  <message>
   <source>give the ply a dart or a splice</source>
   <translation>der Lage einen Abnäher oder eine Teilung geben</translation>
  </message>
  <message>
   <source>give the price in the unit of the shopping list</source>
   <translation>den Preis in der Einheit der Einkaufsliste angeben</translation>
  </message>
  <message>
   <source>give the share of the strength that is left</source>
   <translation>den Anteil der verbleibenden Festigkeit angeben</translation>
  </message>
  <message>
   <source>give them</source>
   <translation>angeben</translation>
  </message>
  <message>
   <source>glue density</source>
   <translation>Dichte des Klebers</translation>
  </message>
  <message>
   <source>glue gap</source>
   <translation>Klebefuge</translation>
  </message>
  <message>
   <source>grits</source>
   <translation>Körnungen</translation>
  </message>
  <message>
   <source>growth of the mould at cure temperature</source>
   <translation>Wachsen der Form bei Härtetemperatur</translation>
  </message>
  <message>
   <source>handling a piece</source>
   <translation>Handhaben eines Stücks</translation>
  </message>
  <message>
   <source>hardness of the cured resin</source>
   <translation>Härte des ausgehärteten Harzes</translation>
  </message>
  <message>
   <source>hardness of the part</source>
   <translation>Härte des Teils</translation>
  </message>
  <message>
   <source>have cuts proposed and made, cut the ply from edge to edge, or move the start point</source>
   <translation>Schnitte vorschlagen und ausführen lassen, die Lage von Rand zu Rand schneiden oder den Startpunkt verlegen</translation>
  </message>
  <message>
   <source>head bore</source>
   <translation>Kopfbohrung</translation>
  </message>
  <message>
   <source>height of the feet</source>
   <translation>Höhe der Füße</translation>
  </message>
  <message>
   <source>holes</source>
   <translation>Löcher</translation>
  </message>
  <message>
   <source>holes closed</source>
   <translation>Löcher geschlossen</translation>
  </message>
  <message>
   <source>hollow with ribs</source>
   <translation>hohl mit Rippen</translation>
  </message>
  <message>
   <source>hollowing the pieces</source>
   <translation>Stücke aushöhlen</translation>
  </message>
  <message>
   <source>hours of the filler</source>
   <translation>Stunden des Füllers</translation>
  </message>
  <message>
   <source>hours of the primer</source>
   <translation>Stunden der Grundierung</translation>
  </message>
  <message>
   <source>hours of the sealer</source>
   <translation>Stunden des Versieglers</translation>
  </message>
  <message>
   <source>humidity of the shop</source>
   <translation>Luftfeuchte der Werkstatt</translation>
  </message>
  <message>
   <source>in the middle</source>
   <translation>in der Mitte</translation>
  </message>
  <message>
   <source>infill share of printer %1</source>
   <translation>Füllanteil des Druckers %1</translation>
  </message>
  <message>
   <source>inscription</source>
   <translation>Inschrift</translation>
  </message>
  <message>
   <source>inside (plug)</source>
   <translation>innen (Positivform)</translation>
  </message>
  <message>
   <source>inside the part</source>
   <translation>im Teil</translation>
  </message>
  <message>
   <source>it holds %1</source>
   <translation>es enthält %1</translation>
  </message>
  <message>
   <source>it may stay dry</source>
   <translation>es kann trocken bleiben</translation>
  </message>
  <message>
   <source>it will be heavy and weak</source>
   <translation>es wird schwer und schwach</translation>
  </message>
  <message>
   <source>it will curl %1, a flat strip of %2 mm %3 the datum arrow rises by about %4 mm %5</source>
   <translation>es wölbt sich %1, ein ebener Streifen von %2 mm %3 des Bezugspfeils hebt sich um etwa %4 mm %5</translation>
  </message>
  <message>
   <source>it will twist %1, a flat square of %2 mm lifts a corner by about %3 mm %4</source>
   <translation>es verdreht sich %1, ein ebenes Quadrat von %2 mm hebt eine Ecke um etwa %3 mm %4</translation>
  </message>
  <message>
   <source>joint coupon</source>
   <translation>Probestück der Verbindung</translation>
  </message>
  <message>
   <source>joint coupon tongue</source>
   <translation>Zunge des Probestücks</translation>
  </message>
  <message>
   <source>keep it on the run-off and clear of the trim line</source>
   <translation>auf dem Auslauf und frei von der Besäumlinie halten</translation>
  </message>
  <message>
   <source>keyed tongues</source>
   <translation>Zungen mit Form</translation>
  </message>
  <message>
   <source>knock-down in %1</source>
   <translation>Abschlag bei %1</translation>
  </message>
  <message>
   <source>laid edge to edge</source>
   <translation>Kante an Kante gelegt</translation>
  </message>
  <message>
   <source>lamina</source>
   <translation>Einzellage</translation>
  </message>
  <message>
   <source>lamina: poisson_12</source>
   <translation>Einzellage: Querdehnzahl 12</translation>
  </message>
  <message>
   <source>laminate thickness</source>
   <translation>Laminatdicke</translation>
  </message>
  <message>
   <source>lap of the cuts</source>
   <translation>Überlappung der Schnitte</translation>
  </message>
  <message>
   <source>lapped %1 mm</source>
   <translation>%1 mm überlappt</translation>
  </message>
  <message>
   <source>lapped by %1 mm</source>
   <translation>um %1 mm überlappt</translation>
  </message>
  <message>
   <source>largest least draft, exact</source>
   <translation>größte kleinste Schräge, genau</translation>
  </message>
  <message>
   <source>lay it between two plies</source>
   <translation>zwischen zwei Lagen legen</translation>
  </message>
  <message>
   <source>lay it between two plies that cover the whole face</source>
   <translation>zwischen zwei Lagen legen, die die ganze Fläche bedecken</translation>
  </message>
  <message>
   <source>layer %1</source>
   <translation>Schicht %1</translation>
  </message>
  <message>
   <source>layer height</source>
   <translation>Schichthöhe</translation>
  </message>
  <message>
   <source>layer lines %1 mm deep run across the pull and are neither sanded nor sealed</source>
   <translation>Druckriefen, %1 mm tief, laufen quer zur Zugrichtung und sind weder geschliffen noch versiegelt</translation>
  </message>
  <message>
   <source>layer lines across the pull</source>
   <translation>Druckriefen quer zur Zugrichtung</translation>
  </message>
  <message>
   <source>laying a square metre</source>
   <translation>Legen eines Quadratmeters</translation>
  </message>
  <message>
   <source>laying the run-off</source>
   <translation>der Auslauf wird gelegt</translation>
  </message>
  <message>
   <source>layup</source>
   <translation>Lagenaufbau</translation>
  </message>
  <message>
   <source>laywright record 1</source>
   <translation>laywright record 1</translation>
  </message>
  <message>
   <source>least cost</source>
   <translation>kleinste Kosten</translation>
  </message>
  <message>
   <source>least mass</source>
   <translation>kleinste Masse</translation>
  </message>
  <message>
   <source>least thickness</source>
   <translation>kleinste Dicke</translation>
  </message>
  <message>
   <source>least tile</source>
   <translation>kleinste Kachel</translation>
  </message>
  <message>
   <source>least undercut, by search</source>
   <translation>kleinster Hinterschnitt, durch Suche</translation>
  </message>
  <message>
   <source>leave it: it does no harm</source>
   <translation>so lassen: es schadet nicht</translation>
  </message>
  <message>
   <source>leave one out</source>
   <translation>eines weglassen</translation>
  </message>
  <message>
   <source>leave out the extent of a ply</source>
   <translation>den Umfang einer Lage weglassen</translation>
  </message>
  <message>
   <source>length of the post-cure</source>
   <translation>Dauer der Nachhärtung</translation>
  </message>
  <message>
   <source>length that cloth is sold by</source>
   <translation>Länge, in der Gewebe verkauft wird</translation>
  </message>
  <message>
   <source>lengthen the cut or take more triangles for the drape</source>
   <translation>den Schnitt verlängern oder mehr Dreiecke für das Drapieren nehmen</translation>
  </message>
  <message>
   <source>lengths in mm</source>
   <translation>Längen in mm</translation>
  </message>
  <message>
   <source>less than %1, the square root of the ratio of the moduli</source>
   <translation>weniger als %1, die Wurzel aus dem Verhältnis der Moduln</translation>
  </message>
  <message>
   <source>letters A to Z, figures, '-' and '%1'</source>
   <translation>Buchstaben A bis Z, Ziffern, „-“ und „%1“</translation>
  </message>
  <message>
   <source>link %1 to it</source>
   <translation>%1 damit verknüpfen</translation>
  </message>
  <message>
   <source>link a Release Check to it</source>
   <translation>eine Entformprüfung damit verknüpfen</translation>
  </message>
  <message>
   <source>link one</source>
   <translation>eines verknüpfen</translation>
  </message>
  <message>
   <source>load</source>
   <translation>Last</translation>
  </message>
  <message>
   <source>load case</source>
   <translation>Lastfall</translation>
  </message>
  <message>
   <source>load it from nothing up to there, or take the other window</source>
   <translation>von null bis dorthin belasten oder das andere Fenster nehmen</translation>
  </message>
  <message>
   <source>load to the end</source>
   <translation>bis zum Ende belasten</translation>
  </message>
  <message>
   <source>locked stiffness of the cloth</source>
   <translation>Sperrsteifigkeit des Gewebes</translation>
  </message>
  <message>
   <source>locking angle of the cloth</source>
   <translation>Sperrwinkel des Gewebes</translation>
  </message>
  <message>
   <source>look whether it is the right one and pick it again</source>
   <translation>nachsehen, ob es die richtige ist, und neu wählen</translation>
  </message>
  <message>
   <source>looking along candidate pulls</source>
   <translation>mögliche Zugrichtungen werden angesehen</translation>
  </message>
  <message>
   <source>looking along the pull</source>
   <translation>entlang der Zugrichtung gesehen</translation>
  </message>
  <message>
   <source>looking for a pull that releases</source>
   <translation>eine Zugrichtung, die freigibt, wird gesucht</translation>
  </message>
  <message>
   <source>looking for the best start</source>
   <translation>der beste Start wird gesucht</translation>
  </message>
  <message>
   <source>loose scraps left out</source>
   <translation>lose Schnipsel weggelassen</translation>
  </message>
  <message>
   <source>low, value and high in rising order</source>
   <translation>untere Grenze, Wert und obere Grenze in steigender Folge</translation>
  </message>
  <message>
   <source>lower the share by which they close, or have it listed instead of applied</source>
   <translation>den Anteil, um den sie schließen, senken oder es auflisten statt anwenden lassen</translation>
  </message>
  <message>
   <source>make a closed solid</source>
   <translation>einen geschlossenen Volumenkörper machen</translation>
  </message>
  <message>
   <source>make a ply for each piece</source>
   <translation>für jedes Stück eine Lage anlegen</translation>
  </message>
  <message>
   <source>make it again in its own program</source>
   <translation>im eigenen Programm neu erzeugen</translation>
  </message>
  <message>
   <source>make it less or set a larger least tile</source>
   <translation>kleiner machen oder eine größere kleinste Kachel setzen</translation>
  </message>
  <message>
   <source>make one first</source>
   <translation>zuerst eines machen</translation>
  </message>
  <message>
   <source>make the body thicker, the joints smaller, or glue the tiles flat</source>
   <translation>den Körper dicker machen, die Verbindungen kleiner oder die Kacheln stumpf kleben</translation>
  </message>
  <message>
   <source>make the folder or choose another</source>
   <translation>den Ordner anlegen oder einen anderen wählen</translation>
  </message>
  <message>
   <source>make the part first</source>
   <translation>zuerst das Teil machen</translation>
  </message>
  <message>
   <source>make the patterns first</source>
   <translation>zuerst die Schnittmuster machen</translation>
  </message>
  <message>
   <source>make the tiles first</source>
   <translation>zuerst die Kacheln machen</translation>
  </message>
  <message>
   <source>margin %1</source>
   <translation>Zugabe %1</translation>
  </message>
  <message>
   <source>margin %1 of the patterns</source>
   <translation>Zugabe %1 der Schnittmuster</translation>
  </message>
  <message>
   <source>margin of a side</source>
   <translation>Zugabe einer Seite</translation>
  </message>
  <message>
   <source>margins of the patterns</source>
   <translation>Zugaben der Schnittmuster</translation>
  </message>
  <message>
   <source>mark depth</source>
   <translation>Tiefe der Marken</translation>
  </message>
  <message>
   <source>mass (g)</source>
   <translation>Masse (g)</translation>
  </message>
  <message>
   <source>mass (g/m2)</source>
   <translation>Masse (g/m²)</translation>
  </message>
  <message>
   <source>material in %1</source>
   <translation>Werkstoff in %1</translation>
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
   <source>measure a printed bar and set the share by which it is too short</source>
   <translation>einen gedruckten Stab messen und den Anteil setzen, um den er zu kurz ist</translation>
  </message>
  <message>
   <source>measure it again</source>
   <translation>neu messen</translation>
  </message>
  <message>
   <source>measure it again from the free end of the roll</source>
   <translation>vom freien Ende der Rolle neu messen</translation>
  </message>
  <message>
   <source>measure it, or smooth and seal the mould</source>
   <translation>messen oder die Form glätten und versiegeln</translation>
  </message>
  <message>
   <source>measured thickness</source>
   <translation>gemessene Dicke</translation>
  </message>
  <message>
   <source>measuring draft</source>
   <translation>Schräge wird gemessen</translation>
  </message>
  <message>
   <source>measuring the working area</source>
   <translation>die Arbeitsfläche wird gemessen</translation>
  </message>
  <message>
   <source>mend it first</source>
   <translation>zuerst in Ordnung bringen</translation>
  </message>
  <message>
   <source>mend it or take it out of the folder</source>
   <translation>ausbessern oder aus dem Ordner nehmen</translation>
  </message>
  <message>
   <source>mend the edge of the face, set another pull or split the face into two moulds</source>
   <translation>den Rand der Fläche ausbessern, eine andere Zugrichtung setzen oder die Fläche in zwei Formen teilen</translation>
  </message>
  <message>
   <source>mend the face in the part or pick fewer faces</source>
   <translation>die Fläche im Teil ausbessern oder weniger Flächen wählen</translation>
  </message>
  <message>
   <source>mesh the face again with another deflection</source>
   <translation>die Fläche mit anderer Abweichung neu vernetzen</translation>
  </message>
  <message>
   <source>mesh the faces coarser, or have their spring-in listed instead of applied</source>
   <translation>die Flächen gröber vernetzen oder ihr Einspringen auflisten statt anwenden lassen</translation>
  </message>
  <message>
   <source>metres or inches</source>
   <translation>Meter oder Zoll</translation>
  </message>
  <message>
   <source>middle of a round patch</source>
   <translation>Mitte eines runden Flecks</translation>
  </message>
  <message>
   <source>middle of the face, along it</source>
   <translation>Mitte der Fläche, an ihr entlang</translation>
  </message>
  <message>
   <source>millimetres</source>
   <translation>Millimeter</translation>
  </message>
  <message>
   <source>minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <source>mix for coupons</source>
   <translation>Gemisch für Proben</translation>
  </message>
  <message>
   <source>mix left over</source>
   <translation>übriges Gemisch</translation>
  </message>
  <message>
   <source>mixing plan</source>
   <translation>Mischplan</translation>
  </message>
  <message>
   <source>mm, cm, m or in</source>
   <translation>mm, cm, m oder in</translation>
  </message>
  <message>
   <source>mm^2</source>
   <translation>mm²</translation>
  </message>
  <message>
   <source>modulus across</source>
   <translation>Modul quer</translation>
  </message>
  <message>
   <source>modulus along</source>
   <translation>Modul längs</translation>
  </message>
  <message>
   <source>more than 0 %</source>
   <translation>mehr als 0 %</translation>
  </message>
  <message>
   <source>more than 0 and at most %1</source>
   <translation>mehr als 0 und höchstens %1</translation>
  </message>
  <message>
   <source>more than 0 and at most %1, the densest packing of round fibres</source>
   <translation>mehr als 0 und höchstens %1, die dichteste Packung runder Fasern</translation>
  </message>
  <message>
   <source>more than 0 and at most 90 deg</source>
   <translation>mehr als 0 und höchstens 90°</translation>
  </message>
  <message>
   <source>more than 0 mm</source>
   <translation>mehr als 0 mm</translation>
  </message>
  <message>
   <source>more than 0 mm^3</source>
   <translation>mehr als 0 mm³</translation>
  </message>
  <message>
   <source>more than its thickness</source>
   <translation>mehr als seine Dicke</translation>
  </message>
  <message>
   <source>more than the %1 g of its dry cloth</source>
   <translation>mehr als die %1 g seines trockenen Gewebes</translation>
  </message>
  <message>
   <source>more than the %1 minutes that mixing takes</source>
   <translation>mehr als die %1 Minuten, die das Mischen dauert</translation>
  </message>
  <message>
   <source>more than twice the unused edge of %1 mm</source>
   <translation>mehr als das Doppelte des ungenutzten Rands von %1 mm</translation>
  </message>
  <message>
   <source>most bending stiffness</source>
   <translation>größte Biegesteifigkeit</translation>
  </message>
  <message>
   <source>most pieces</source>
   <translation>meiste Stücke</translation>
  </message>
  <message>
   <source>most plies</source>
   <translation>meiste Lagen</translation>
  </message>
  <message>
   <source>mould area</source>
   <translation>Fläche der Form</translation>
  </message>
  <message>
   <source>mould side</source>
   <translation>Seite der Form</translation>
  </message>
  <message>
   <source>move it inwards</source>
   <translation>nach innen verlegen</translation>
  </message>
  <message>
   <source>move its first point to the edge</source>
   <translation>den ersten Punkt an den Rand verlegen</translation>
  </message>
  <message>
   <source>move one of them</source>
   <translation>eines davon verlegen</translation>
  </message>
  <message>
   <source>move the pinned cut</source>
   <translation>den festgelegten Schnitt verlegen</translation>
  </message>
  <message>
   <source>name another file</source>
   <translation>eine andere Datei nennen</translation>
  </message>
  <message>
   <source>name the column or give its number</source>
   <translation>die Spalte nennen oder ihre Nummer angeben</translation>
  </message>
  <message>
   <source>names from '%1' to '%2'</source>
   <translation>Namen von „%1“ bis „%2“</translation>
  </message>
  <message>
   <source>names of moulded faces, such as '%1'</source>
   <translation>Namen von Formflächen, etwa „%1“</translation>
  </message>
  <message>
   <source>names such as ["Face1", "Face2"]</source>
   <translation>Namen wie ["Face1", "Face2"]</translation>
  </message>
  <message>
   <source>new or refinished</source>
   <translation>neu oder aufgearbeitet</translation>
  </message>
  <message>
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <source>no %1</source>
   <translation>kein %1</translation>
  </message>
  <message>
   <source>no activation energy on its card</source>
   <translation>keine Aktivierungsenergie auf der Karte</translation>
  </message>
  <message>
   <source>no area</source>
   <translation>keine Fläche</translation>
  </message>
  <message>
   <source>no axis along which they can be divided</source>
   <translation>keine Achse, entlang der sie geteilt werden können</translation>
  </message>
  <message>
   <source>no card</source>
   <translation>keine Karte</translation>
  </message>
  <message>
   <source>no card of '%1'</source>
   <translation>keine Karte für „%1“</translation>
  </message>
  <message>
   <source>no cloth or no angle</source>
   <translation>kein Gewebe oder kein Winkel</translation>
  </message>
  <message>
   <source>no coupon</source>
   <translation>keine Probe</translation>
  </message>
  <message>
   <source>no coupon that broke</source>
   <translation>keine Probe, die brach</translation>
  </message>
  <message>
   <source>no curve of finite points</source>
   <translation>keine Kurve endlicher Punkte</translation>
  </message>
  <message>
   <source>no curve of positive values</source>
   <translation>keine Kurve positiver Werte</translation>
  </message>
  <message>
   <source>no date</source>
   <translation>kein Datum</translation>
  </message>
  <message>
   <source>no direction in %1</source>
   <translation>keine Richtung in %1</translation>
  </message>
  <message>
   <source>no drawing</source>
   <translation>keine Zeichnung</translation>
  </message>
  <message>
   <source>no edge</source>
   <translation>kein Rand</translation>
  </message>
  <message>
   <source>no edge or face</source>
   <translation>keine Kante oder Fläche</translation>
  </message>
  <message>
   <source>no entry %1</source>
   <translation>kein Eintrag %1</translation>
  </message>
  <message>
   <source>no face of this name any more</source>
   <translation>keine Fläche dieses Namens mehr</translation>
  </message>
  <message>
   <source>no faces, for %1 is gone</source>
   <translation>keine Flächen, denn %1 ist weg</translation>
  </message>
  <message>
   <source>no file</source>
   <translation>keine Datei</translation>
  </message>
  <message>
   <source>no folder</source>
   <translation>kein Ordner</translation>
  </message>
  <message>
   <source>no heading that says it once</source>
   <translation>keine Überschrift, die es einmal sagt</translation>
  </message>
  <message>
   <source>no line to the other pieces</source>
   <translation>keine Linie zu den anderen Stücken</translation>
  </message>
  <message>
   <source>no link</source>
   <translation>keine Verknüpfung</translation>
  </message>
  <message>
   <source>no load</source>
   <translation>keine Last</translation>
  </message>
  <message>
   <source>no mesh</source>
   <translation>kein Netz</translation>
  </message>
  <message>
   <source>no name</source>
   <translation>kein Name</translation>
  </message>
  <message>
   <source>no normals to hold in a cap</source>
   <translation>keine Normalen für eine Kappe</translation>
  </message>
  <message>
   <source>no ply</source>
   <translation>keine Lage</translation>
  </message>
  <message>
   <source>no ply that covers the whole face</source>
   <translation>keine Lage, die die ganze Fläche bedeckt</translation>
  </message>
  <message>
   <source>no point</source>
   <translation>kein Punkt</translation>
  </message>
  <message>
   <source>no prices</source>
   <translation>keine Preise</translation>
  </message>
  <message>
   <source>no result</source>
   <translation>kein Ergebnis</translation>
  </message>
  <message>
   <source>no room behind a wall of %1 mm</source>
   <translation>kein Raum hinter einer Wand von %1 mm</translation>
  </message>
  <message>
   <source>no room for a ring %1 mm wide, but %2</source>
   <translation>keinen Platz für einen %1 mm breiten Ring, sondern %2</translation>
  </message>
  <message>
   <source>no solid</source>
   <translation>kein Volumenkörper</translation>
  </message>
  <message>
   <source>no span</source>
   <translation>keine Stützweite</translation>
  </message>
  <message>
   <source>no station</source>
   <translation>keine Station</translation>
  </message>
  <message>
   <source>no strengths on its card</source>
   <translation>keine Festigkeiten auf der Karte</translation>
  </message>
  <message>
   <source>no such folder</source>
   <translation>kein solcher Ordner</translation>
  </message>
  <message>
   <source>no such section</source>
   <translation>kein solcher Abschnitt</translation>
  </message>
  <message>
   <source>no text</source>
   <translation>kein Text</translation>
  </message>
  <message>
   <source>no triangle left</source>
   <translation>kein Dreieck übrig</translation>
  </message>
  <message>
   <source>no triangle with area</source>
   <translation>kein Dreieck mit Inhalt</translation>
  </message>
  <message>
   <source>no triangles</source>
   <translation>keine Dreiecke</translation>
  </message>
  <message>
   <source>no two columns of numbers</source>
   <translation>keine zwei Spalten von Zahlen</translation>
  </message>
  <message>
   <source>no values or one that is no number</source>
   <translation>keine Werte oder einer, der keine Zahl ist</translation>
  </message>
  <message>
   <source>none</source>
   <translation>keines</translation>
  </message>
  <message>
   <source>none for %1</source>
   <translation>keines für %1</translation>
  </message>
  <message>
   <source>none of %1 layups that fulfils it; they weigh %2 to %3 g/m^2 and reach %4 N mm in bending</source>
   <translation>keiner von %1 Lagenaufbauten, der das erfüllt; sie wiegen %2 bis %3 g/m² und erreichen %4 N mm bei Biegung</translation>
  </message>
  <message>
   <source>none stated; a mesh does not say what its numbers mean</source>
   <translation>keine angegeben; ein Netz sagt nicht, was seine Zahlen bedeuten</translation>
  </message>
  <message>
   <source>not applied: %1 and closes by this angle; have spring-in applied, which opens the mould by it, if it matters</source>
   <translation>nicht angewandt: %1 und schließt sich um diesen Winkel; wenn es darauf ankommt, das Einspringen anwenden lassen, das die Form darum öffnet</translation>
  </message>
  <message>
   <source>not applied: switched off</source>
   <translation>nicht angewandt: ausgeschaltet</translation>
  </message>
  <message>
   <source>not applied: the mould touches the CAD face</source>
   <translation>nicht angewandt: die Form berührt die CAD-Fläche</translation>
  </message>
  <message>
   <source>not applied: the mould touches the CAD face, the %1 mm lie on its other side</source>
   <translation>nicht angewandt: die Form berührt die CAD-Fläche, die %1 mm liegen auf der anderen Seite</translation>
  </message>
  <message>
   <source>not considered</source>
   <translation>nicht betrachtet</translation>
  </message>
  <message>
   <source>not cured through</source>
   <translation>nicht durchgehärtet</translation>
  </message>
  <message>
   <source>not decided</source>
   <translation>nicht entschieden</translation>
  </message>
  <message>
   <source>not stated</source>
   <translation>nicht angegeben</translation>
  </message>
  <message>
   <source>nothing</source>
   <translation>nichts</translation>
  </message>
  <message>
   <source>nothing (%1)</source>
   <translation>nichts (%1)</translation>
  </message>
  <message>
   <source>nothing is proposed</source>
   <translation>nichts wird vorgeschlagen</translation>
  </message>
  <message>
   <source>nothing left on one side</source>
   <translation>nichts bleibt auf einer Seite</translation>
  </message>
  <message>
   <source>nothing to see</source>
   <translation>nichts zu sehen</translation>
  </message>
  <message>
   <source>number of coupons</source>
   <translation>Zahl der Proben</translation>
  </message>
  <message>
   <source>number of parts</source>
   <translation>Zahl der Teile</translation>
  </message>
  <message>
   <source>number of parts that are cut</source>
   <translation>Zahl der zugeschnittenen Teile</translation>
  </message>
  <message>
   <source>numbers in mm</source>
   <translation>Zahlen in mm</translation>
  </message>
  <message>
   <source>numbers that belong to no array</source>
   <translation>Zahlen, die zu keinem Feld gehören</translation>
  </message>
  <message>
   <source>of the turn</source>
   <translation>der Drehung</translation>
  </message>
  <message>
   <source>off the mould after</source>
   <translation>von der Form nach</translation>
  </message>
  <message>
   <source>offcut %1</source>
   <translation>Reststück %1</translation>
  </message>
  <message>
   <source>offcut of %1</source>
   <translation>Reststück von %1</translation>
  </message>
  <message>
   <source>on the flange</source>
   <translation>auf dem Flansch</translation>
  </message>
  <message>
   <source>one and the same</source>
   <translation>ein und dasselbe</translation>
  </message>
  <message>
   <source>one card of each name</source>
   <translation>eine Karte je Name</translation>
  </message>
  <message>
   <source>one cloth and no core</source>
   <translation>ein Gewebe und kein Kern</translation>
  </message>
  <message>
   <source>one cloth and one angle for each ply, one ply at least</source>
   <translation>ein Gewebe und ein Winkel je Lage, mindestens eine Lage</translation>
  </message>
  <message>
   <source>one connected piece</source>
   <translation>ein zusammenhängendes Stück</translation>
  </message>
  <message>
   <source>one face at least</source>
   <translation>mindestens eine Fläche</translation>
  </message>
  <message>
   <source>one fibre</source>
   <translation>eine Faser</translation>
  </message>
  <message>
   <source>one for each cloth</source>
   <translation>eines je Gewebe</translation>
  </message>
  <message>
   <source>one for each of the %1 pieces, or none</source>
   <translation>eines für jedes der %1 Stücke oder keines</translation>
  </message>
  <message>
   <source>one in kJ/mol</source>
   <translation>eines in kJ/mol</translation>
  </message>
  <message>
   <source>one in tension</source>
   <translation>einer in Zug</translation>
  </message>
  <message>
   <source>one mould</source>
   <translation>eine einzige Form</translation>
  </message>
  <message>
   <source>one number below each heading</source>
   <translation>eine Zahl unter jeder Überschrift</translation>
  </message>
  <message>
   <source>one of</source>
   <translation>eines von</translation>
  </message>
  <message>
   <source>one of %1</source>
   <translation>eines von %1</translation>
  </message>
  <message>
   <source>one of each</source>
   <translation>eines von jedem</translation>
  </message>
  <message>
   <source>one of each for %1 triangles</source>
   <translation>eines von jedem für %1 Dreiecke</translation>
  </message>
  <message>
   <source>one of the two</source>
   <translation>eines von beiden</translation>
  </message>
  <message>
   <source>one or more</source>
   <translation>eines oder mehr</translation>
  </message>
  <message>
   <source>one or more faces of a part</source>
   <translation>eine oder mehrere Flächen eines Teils</translation>
  </message>
  <message>
   <source>one piece</source>
   <translation>ein Stück</translation>
  </message>
  <message>
   <source>one price</source>
   <translation>ein Preis</translation>
  </message>
  <message>
   <source>one rising series</source>
   <translation>eine steigende Folge</translation>
  </message>
  <message>
   <source>one that a fibre of %1 to %2 GPa can give</source>
   <translation>einer, den eine Faser von %1 bis %2 GPa geben kann</translation>
  </message>
  <message>
   <source>open edges</source>
   <translation>offene Kanten</translation>
  </message>
  <message>
   <source>open or doubled edges</source>
   <translation>offene oder doppelte Kanten</translation>
  </message>
  <message>
   <source>opening the bends</source>
   <translation>die Biegungen werden geöffnet</translation>
  </message>
  <message>
   <source>or</source>
   <translation>oder</translation>
  </message>
  <message>
   <source>out of date: %1</source>
   <translation>veraltet: %1</translation>
  </message>
  <message>
   <source>out of date: %1 changed</source>
   <translation>veraltet: %1 geändert</translation>
  </message>
  <message>
   <source>out of date: %1 changed since they were written</source>
   <translation>veraltet: %1 seit dem Schreiben geändert</translation>
  </message>
  <message>
   <source>out of date: %1 of %2 changed</source>
   <translation>veraltet: %1 von %2 geändert</translation>
  </message>
  <message>
   <source>out of date: %1: %2</source>
   <translation>veraltet: %1: %2</translation>
  </message>
  <message>
   <source>out of date: waits for %1</source>
   <translation>veraltet: wartet auf %1</translation>
  </message>
  <message>
   <source>outside (cavity)</source>
   <translation>außen (Negativform)</translation>
  </message>
  <message>
   <source>outside the part</source>
   <translation>außerhalb des Teils</translation>
  </message>
  <message>
   <source>own %1, %2 coupon%3, standard deviation %4 MPa, %5</source>
   <translation>eigene %1, %2 Probe%3, Standardabweichung %4 MPa, %5</translation>
  </message>
  <message>
   <source>part after trimming</source>
   <translation>Teil nach dem Besäumen</translation>
  </message>
  <message>
   <source>part before trimming</source>
   <translation>Teil vor dem Besäumen</translation>
  </message>
  <message>
   <source>parting lines that are seen apart along the pieces' pulls</source>
   <translation>Trennlinien, die entlang der Zugrichtungen der Stücke getrennt zu sehen sind</translation>
  </message>
  <message>
   <source>parting the body</source>
   <translation>der Körper wird geteilt</translation>
  </message>
  <message>
   <source>peel ply</source>
   <translation>Abreißgewebe</translation>
  </message>
  <message>
   <source>perhaps not cured through</source>
   <translation>vielleicht nicht durchgehärtet</translation>
  </message>
  <message>
   <source>permission to write</source>
   <translation>das Recht zu schreiben</translation>
  </message>
  <message>
   <source>pick a face</source>
   <translation>eine Fläche wählen</translation>
  </message>
  <message>
   <source>pick a face again</source>
   <translation>eine Fläche neu wählen</translation>
  </message>
  <message>
   <source>pick a point</source>
   <translation>einen Punkt wählen</translation>
  </message>
  <message>
   <source>pick a point on the mesh, in millimetres</source>
   <translation>einen Punkt auf dem Netz wählen, in Millimetern</translation>
  </message>
  <message>
   <source>pick another edge or face</source>
   <translation>eine andere Kante oder Fläche wählen</translation>
  </message>
  <message>
   <source>pick another face</source>
   <translation>eine andere Fläche wählen</translation>
  </message>
  <message>
   <source>pick faces of the Moulded Face</source>
   <translation>Flächen der Formfläche wählen</translation>
  </message>
  <message>
   <source>pick faces that share an edge and not only a corner</source>
   <translation>Flächen wählen, die eine Kante teilen und nicht nur eine Ecke</translation>
  </message>
  <message>
   <source>pick faces without slivers or repair the part</source>
   <translation>Flächen ohne Splitter wählen oder das Teil ausbessern</translation>
  </message>
  <message>
   <source>pick fewer faces</source>
   <translation>weniger Flächen wählen</translation>
  </message>
  <message>
   <source>pick it again; %1 is the most like it</source>
   <translation>neu wählen; %1 ist ihr am ähnlichsten</translation>
  </message>
  <message>
   <source>pick its faces</source>
   <translation>seine Flächen wählen</translation>
  </message>
  <message>
   <source>pick one</source>
   <translation>eines wählen</translation>
  </message>
  <message>
   <source>pick the faces</source>
   <translation>die Flächen wählen</translation>
  </message>
  <message>
   <source>pick the faces between them too, or make one Moulded Face for each</source>
   <translation>auch die Flächen dazwischen wählen oder für jede eine Formfläche anlegen</translation>
  </message>
  <message>
   <source>pick the others only</source>
   <translation>nur die anderen wählen</translation>
  </message>
  <message>
   <source>picked faces</source>
   <translation>gewählte Flächen</translation>
  </message>
  <message>
   <source>picked region</source>
   <translation>gewählter Bereich</translation>
  </message>
  <message>
   <source>piece %1</source>
   <translation>Stück %1</translation>
  </message>
  <message>
   <source>piece %1 to %2: %3 mm, %4 % along edges, %5 % along silhouettes</source>
   <translation>Stück %1 zu %2: %3 mm, %4 % an Kanten, %5 % an Umrissen</translation>
  </message>
  <message>
   <source>piece %1,</source>
   <translation>Stück %1,</translation>
  </message>
  <message>
   <source>pieces %1</source>
   <translation>Stücke %1</translation>
  </message>
  <message>
   <source>pieces that cannot be turned one way</source>
   <translation>Stücke, die nicht gleich gewendet werden können</translation>
  </message>
  <message>
   <source>pinned cut along %1</source>
   <translation>festgelegter Schnitt entlang %1</translation>
  </message>
  <message>
   <source>places in mm</source>
   <translation>Orte in mm</translation>
  </message>
  <message>
   <source>placing %1 pieces of %2</source>
   <translation>%1 Stücke von %2 werden verlegt</translation>
  </message>
  <message>
   <source>placing joints and marks</source>
   <translation>Verbindungen und Marken werden gesetzt</translation>
  </message>
  <message>
   <source>placing the cuts</source>
   <translation>die Schnitte werden gelegt</translation>
  </message>
  <message>
   <source>plan the mixing again</source>
   <translation>die Mischung neu planen</translation>
  </message>
  <message>
   <source>plate</source>
   <translation>Platte</translation>
  </message>
  <message>
   <source>plies</source>
   <translation>Lagen</translation>
  </message>
  <message>
   <source>plies %1: %2 cm², %3 mm, %4 g</source>
   <translation>Lagen %1: %2 cm², %3 mm, %4 g</translation>
  </message>
  <message>
   <source>plies 1 to %1 of the laminate</source>
   <translation>Lagen 1 bis %1 des Laminats</translation>
  </message>
  <message>
   <source>plies 1 to %1 of the layup</source>
   <translation>Lagen 1 bis %1 des Lagenaufbaus</translation>
  </message>
  <message>
   <source>plies at several angles</source>
   <translation>Lagen in mehreren Winkeln</translation>
  </message>
  <message>
   <source>plies between cuts</source>
   <translation>Lagen zwischen Schnitten</translation>
  </message>
  <message>
   <source>ply %1</source>
   <translation>Lage %1</translation>
  </message>
  <message>
   <source>ply %1, %2</source>
   <translation>Lage %1, %2</translation>
  </message>
  <message>
   <source>ply and points</source>
   <translation>ply und points</translation>
  </message>
  <message>
   <source>point numbers from 0 to %1</source>
   <translation>Punktnummern von 0 bis %1</translation>
  </message>
  <message>
   <source>point on the face</source>
   <translation>Punkt auf der Fläche</translation>
  </message>
  <message>
   <source>points such as [[0, 0, 0], [10, 0, 5]]</source>
   <translation>Punkte wie [[0, 0, 0], [10, 0, 5]]</translation>
  </message>
  <message>
   <source>points such as [[0, 0, 5]] in mm</source>
   <translation>Punkte wie [[0, 0, 5]] in mm</translation>
  </message>
  <message>
   <source>points that are corners of triangles</source>
   <translation>Punkte, die Ecken von Dreiecken sind</translation>
  </message>
  <message>
   <source>points that are no numbers</source>
   <translation>Punkte, die keine Zahlen sind</translation>
  </message>
  <message>
   <source>points where pieces touch</source>
   <translation>Punkte, an denen sich Stücke berühren</translation>
  </message>
  <message>
   <source>points without three coordinates</source>
   <translation>Punkte ohne drei Koordinaten</translation>
  </message>
  <message>
   <source>post-cure cooler first</source>
   <translation>zuerst kühler nachhärten</translation>
  </message>
  <message>
   <source>post-cure temperature</source>
   <translation>Temperatur der Nachhärtung</translation>
  </message>
  <message>
   <source>pot life of %1</source>
   <translation>Topfzeit von %1</translation>
  </message>
  <message>
   <source>pressed across the warp</source>
   <translation>quer zur Kette gedrückt</translation>
  </message>
  <message>
   <source>pressed along the warp</source>
   <translation>längs der Kette gedrückt</translation>
  </message>
  <message>
   <source>pressed patch</source>
   <translation>gedrückte Stelle</translation>
  </message>
  <message>
   <source>pressure on the plate</source>
   <translation>Druck auf die Platte</translation>
  </message>
  <message>
   <source>price and currency; all else is taken from the printer's card</source>
   <translation>price und currency; alles andere kommt von der Karte des Druckers</translation>
  </message>
  <message>
   <source>price of %1</source>
   <translation>Preis von %1</translation>
  </message>
  <message>
   <source>price of a kilogram</source>
   <translation>Preis eines Kilogramms</translation>
  </message>
  <message>
   <source>prices</source>
   <translation>Preise</translation>
  </message>
  <message>
   <source>print shrinkage</source>
   <translation>Druckschrumpfung</translation>
  </message>
  <message>
   <source>print shrinkage along %1</source>
   <translation>Druckschrumpfung entlang %1</translation>
  </message>
  <message>
   <source>printed surface, set back along its normals</source>
   <translation>gedruckte Oberfläche, entlang ihrer Normalen zurückgesetzt</translation>
  </message>
  <message>
   <source>printer</source>
   <translation>Drucker</translation>
  </message>
  <message>
   <source>printer %1</source>
   <translation>Drucker %1</translation>
  </message>
  <message>
   <source>proposed cuts are made</source>
   <translation>vorgeschlagene Schnitte werden ausgeführt</translation>
  </message>
  <message>
   <source>proposed cuts are shown</source>
   <translation>vorgeschlagene Schnitte werden gezeigt</translation>
  </message>
  <message>
   <source>pry pocket</source>
   <translation>Hebeltasche</translation>
  </message>
  <message>
   <source>pry pockets</source>
   <translation>Hebeltaschen</translation>
  </message>
  <message>
   <source>pull along and across</source>
   <translation>Zug längs und quer</translation>
  </message>
  <message>
   <source>pull along and shear</source>
   <translation>Zug längs und Schub</translation>
  </message>
  <message>
   <source>pull axis</source>
   <translation>Zugachse</translation>
  </message>
  <message>
   <source>pull direction</source>
   <translation>Zugrichtung</translation>
  </message>
  <message>
   <source>pull direction on %1</source>
   <translation>Zugrichtung an %1</translation>
  </message>
  <message>
   <source>pulled across the warp</source>
   <translation>quer zur Kette gezogen</translation>
  </message>
  <message>
   <source>pulled along the warp</source>
   <translation>längs der Kette gezogen</translation>
  </message>
  <message>
   <source>pulled along their length</source>
   <translation>entlang ihrer Länge gezogen</translation>
  </message>
  <message>
   <source>put them in order</source>
   <translation>in eine Reihenfolge bringen</translation>
  </message>
  <message>
   <source>radius %1 mm</source>
   <translation>Radius %1 mm</translation>
  </message>
  <message>
   <source>radius of a round patch</source>
   <translation>Radius eines runden Flecks</translation>
  </message>
  <message>
   <source>raise the base, thin the wall or build it solid</source>
   <translation>den Sockel erhöhen, die Wand dünner machen oder massiv bauen</translation>
  </message>
  <message>
   <source>read it again</source>
   <translation>neu lesen</translation>
  </message>
  <message>
   <source>readings that hold</source>
   <translation>brauchbare Ablesungen</translation>
  </message>
  <message>
   <source>recompute it</source>
   <translation>neu berechnen</translation>
  </message>
  <message>
   <source>recompute the object</source>
   <translation>das Objekt neu berechnen</translation>
  </message>
  <message>
   <source>recompute the object, or take an earlier copy of the document</source>
   <translation>das Objekt neu berechnen oder eine frühere Kopie des Dokuments nehmen</translation>
  </message>
  <message>
   <source>refused, with a split proposed</source>
   <translation>abgelehnt, mit vorgeschlagener Teilung</translation>
  </message>
  <message>
   <source>registration cones</source>
   <translation>Passkegel</translation>
  </message>
  <message>
   <source>release film</source>
   <translation>Trennfilm</translation>
  </message>
  <message>
   <source>release film and coats</source>
   <translation>Trennfilm und Schichten</translation>
  </message>
  <message>
   <source>release tape</source>
   <translation>Trennband</translation>
  </message>
  <message>
   <source>remove one of them</source>
   <translation>eines davon entfernen</translation>
  </message>
  <message>
   <source>rename</source>
   <translation>umbenennen</translation>
  </message>
  <message>
   <source>rename or remove it</source>
   <translation>umbenennen oder entfernen</translation>
  </message>
  <message>
   <source>rename or remove one of the two</source>
   <translation>eines der beiden umbenennen oder entfernen</translation>
  </message>
  <message>
   <source>repair the mesh</source>
   <translation>das Netz ausbessern</translation>
  </message>
  <message>
   <source>repair the mesh file</source>
   <translation>die Netzdatei ausbessern</translation>
  </message>
  <message>
   <source>repair the mesh or pick faces that do not touch along an edge</source>
   <translation>das Netz ausbessern oder Flächen wählen, die sich an keiner Kante berühren</translation>
  </message>
  <message>
   <source>repair the shape</source>
   <translation>die Gestalt ausbessern</translation>
  </message>
  <message>
   <source>resin share</source>
   <translation>Harzanteil</translation>
  </message>
  <message>
   <source>resin share %1, voids %2, angle %3 rad</source>
   <translation>Harzanteil %1, Luft %2, Winkel %3 rad</translation>
  </message>
  <message>
   <source>resolution of the pull search</source>
   <translation>Feinheit der Suche nach der Zugrichtung</translation>
  </message>
  <message>
   <source>rib spacing</source>
   <translation>Rippenabstand</translation>
  </message>
  <message>
   <source>rib thickness</source>
   <translation>Rippendicke</translation>
  </message>
  <message>
   <source>room between the borders</source>
   <translation>Platz zwischen den Rändern</translation>
  </message>
  <message>
   <source>room for %1 feet of %2 mm</source>
   <translation>Platz für %1 Füße von %2 mm</translation>
  </message>
  <message>
   <source>room for %1 mm</source>
   <translation>Platz für %1 mm</translation>
  </message>
  <message>
   <source>room for one more</source>
   <translation>Platz für noch eines</translation>
  </message>
  <message>
   <source>room for the file</source>
   <translation>Platz für die Datei</translation>
  </message>
  <message>
   <source>round the whole mould</source>
   <translation>um die ganze Form</translation>
  </message>
  <message>
   <source>row %1</source>
   <translation>Reihe %1</translation>
  </message>
  <message>
   <source>row %1 of the table</source>
   <translation>Zeile %1 der Tabelle</translation>
  </message>
  <message>
   <source>row %1 of the table '%2'</source>
   <translation>Zeile %1 der Tabelle „%2“</translation>
  </message>
  <message>
   <source>samples</source>
   <translation>Stichproben</translation>
  </message>
  <message>
   <source>say how the value is known</source>
   <translation>sagen, woher der Wert bekannt ist</translation>
  </message>
  <message>
   <source>say the unit, or write it into the heading</source>
   <translation>die Einheit angeben oder in die Überschrift schreiben</translation>
  </message>
  <message>
   <source>scale for the cup of %1</source>
   <translation>Waage für den Becher mit %1</translation>
  </message>
  <message>
   <source>scale resolution</source>
   <translation>Auflösung der Waage</translation>
  </message>
  <message>
   <source>scan it again</source>
   <translation>neu scannen</translation>
  </message>
  <message>
   <source>scatter</source>
   <translation>Streuung</translation>
  </message>
  <message>
   <source>schema %1 or older</source>
   <translation>Schema %1 oder älter</translation>
  </message>
  <message>
   <source>scraps</source>
   <translation>Schnipsel</translation>
  </message>
  <message>
   <source>scribe depth</source>
   <translation>Tiefe des Anrisses</translation>
  </message>
  <message>
   <source>scribe line</source>
   <translation>Anrisslinie</translation>
  </message>
  <message>
   <source>scribe width</source>
   <translation>Breite des Anrisses</translation>
  </message>
  <message>
   <source>seal coat</source>
   <translation>Deckanstrich</translation>
  </message>
  <message>
   <source>seal coats</source>
   <translation>Deckanstriche</translation>
  </message>
  <message>
   <source>sealant tape</source>
   <translation>Dichtband</translation>
  </message>
  <message>
   <source>searching for a shorter piece of roll</source>
   <translation>ein kürzeres Rollenstück wird gesucht</translation>
  </message>
  <message>
   <source>set 1, 2, 3 or 4</source>
   <translation>1, 2, 3 oder 4 setzen</translation>
  </message>
  <message>
   <source>set 2, 3 or 4</source>
   <translation>2, 3 oder 4 setzen</translation>
  </message>
  <message>
   <source>set a value in that range</source>
   <translation>einen Wert in diesem Bereich setzen</translation>
  </message>
  <message>
   <source>set an angle such as 1 deg</source>
   <translation>einen Winkel wie 1° setzen</translation>
  </message>
  <message>
   <source>set an angle such as 2 deg</source>
   <translation>einen Winkel wie 2° setzen</translation>
  </message>
  <message>
   <source>set another</source>
   <translation>einen anderen setzen</translation>
  </message>
  <message>
   <source>set another number</source>
   <translation>eine andere Zahl setzen</translation>
  </message>
  <message>
   <source>set another pull direction or pick other faces</source>
   <translation>eine andere Zugrichtung setzen oder andere Flächen wählen</translation>
  </message>
  <message>
   <source>set another pull direction, add draft or split the face into two moulds</source>
   <translation>eine andere Zugrichtung setzen, Schräge geben oder die Fläche in zwei Formen teilen</translation>
  </message>
  <message>
   <source>set another value</source>
   <translation>einen anderen Wert setzen</translation>
  </message>
  <message>
   <source>set at least one</source>
   <translation>mindestens eines setzen</translation>
  </message>
  <message>
   <source>set for this job</source>
   <translation>für diesen Auftrag gesetzt</translation>
  </message>
  <message>
   <source>set one</source>
   <translation>eines setzen</translation>
  </message>
  <message>
   <source>set one or leave the load out</source>
   <translation>eines setzen oder die Last weglassen</translation>
  </message>
  <message>
   <source>set smaller feet, fewer of them, or a longer run-off</source>
   <translation>kleinere Füße, weniger davon oder einen längeren Auslauf setzen</translation>
  </message>
  <message>
   <source>set the Moulded Face's mould side to '%1' and turn its pull round: the part closes round a plug, but %2 outside of it releases it</source>
   <translation>die Seite der Form an der Formfläche auf '%1' setzen und ihre Zugrichtung umkehren: Das Teil umschließt eine Positivform, aber %2 außen herum gibt es frei</translation>
  </message>
  <message>
   <source>set the Moulded Face's pull along the mouth of the part</source>
   <translation>die Zugrichtung der Formfläche entlang der Mündung des Teils setzen</translation>
  </message>
  <message>
   <source>set the angle</source>
   <translation>den Winkel setzen</translation>
  </message>
  <message>
   <source>set the direction</source>
   <translation>die Richtung setzen</translation>
  </message>
  <message>
   <source>set the number of parts</source>
   <translation>die Zahl der Teile setzen</translation>
  </message>
  <message>
   <source>set the width of the roll</source>
   <translation>die Breite der Rolle setzen</translation>
  </message>
  <message>
   <source>shares up to 0.3 and 0.2, an angle up to 0.8 rad</source>
   <translation>Anteile bis 0,3 und 0,2, ein Winkel bis 0,8 rad</translation>
  </message>
  <message>
   <source>shear limit of the cuts</source>
   <translation>Schergrenze der Schnitte</translation>
  </message>
  <message>
   <source>shear modulus</source>
   <translation>Schubmodul</translation>
  </message>
  <message>
   <source>sheared in the plane</source>
   <translation>in der Ebene geschert</translation>
  </message>
  <message>
   <source>shop temperature</source>
   <translation>Temperatur der Werkstatt</translation>
  </message>
  <message>
   <source>shorten the run-off or smooth the edge of the face</source>
   <translation>den Auslauf kürzen oder den Rand der Fläche glätten</translation>
  </message>
  <message>
   <source>shorten the run-off or widen the bays of the outline</source>
   <translation>den Auslauf kürzen oder die Buchten des Umrisses weiten</translation>
  </message>
  <message>
   <source>side down</source>
   <translation>Seite nach unten</translation>
  </message>
  <message>
   <source>side: margin</source>
   <translation>Seite: Zugabe</translation>
  </message>
  <message>
   <source>sides from 5 mm to 100 m</source>
   <translation>Seiten von 5 mm bis 100 m</translation>
  </message>
  <message>
   <source>sides that differ by a factor of %1 at most</source>
   <translation>Seiten, die sich höchstens um den Faktor %1 unterscheiden</translation>
  </message>
  <message>
   <source>simply supported</source>
   <translation>frei aufliegend</translation>
  </message>
  <message>
   <source>size of the job</source>
   <translation>Größe des Auftrags</translation>
  </message>
  <message>
   <source>smooth its spikes and pits, split it into two Moulded Faces, or cut the ply</source>
   <translation>Spitzen und Gruben glätten, in zwei Formflächen teilen oder die Lage schneiden</translation>
  </message>
  <message>
   <source>smooth the face</source>
   <translation>die Fläche glätten</translation>
  </message>
  <message>
   <source>smooth the trim edge of the picked faces, or set their pull along the mouth</source>
   <translation>den Besäumrand der gewählten Flächen glätten oder die Zugrichtung entlang der Mündung setzen</translation>
  </message>
  <message>
   <source>smooth, sealed</source>
   <translation>glatt, versiegelt</translation>
  </message>
  <message>
   <source>softening temperature of the mould</source>
   <translation>Erweichungstemperatur der Form</translation>
  </message>
  <message>
   <source>split along the warp</source>
   <translation>entlang der Kette geteilt</translation>
  </message>
  <message>
   <source>split it into two Moulded Faces</source>
   <translation>in zwei Formflächen teilen</translation>
  </message>
  <message>
   <source>spring-in of %1</source>
   <translation>Einspringen von %1</translation>
  </message>
  <message>
   <source>spring-in of bend %1</source>
   <translation>Einspringen der Biegung %1</translation>
  </message>
  <message>
   <source>spring-in of bends</source>
   <translation>Einspringen der Biegungen</translation>
  </message>
  <message>
   <source>stagger of the cuts</source>
   <translation>Versatz der Schnitte</translation>
  </message>
  <message>
   <source>state its unit: are its numbers in %1</source>
   <translation>die Einheit angeben: sind die Zahlen in %1</translation>
  </message>
  <message>
   <source>state the same unit</source>
   <translation>dieselbe Einheit angeben</translation>
  </message>
  <message>
   <source>state the unit that it was scanned or drawn in</source>
   <translation>die Einheit angeben, in der es gescannt oder gezeichnet wurde</translation>
  </message>
  <message>
   <source>statistics</source>
   <translation>Statistik</translation>
  </message>
  <message>
   <source>steps of %1 g for %2 g of hardener, off by up to %3</source>
   <translation>Schritte von %1 g für %2 g Härter, um bis zu %3 daneben</translation>
  </message>
  <message>
   <source>stiffness of the plastic</source>
   <translation>Steifigkeit des Kunststoffs</translation>
  </message>
  <message>
   <source>stopped before it broke</source>
   <translation>vor dem Bruch angehalten</translation>
  </message>
  <message>
   <source>strain</source>
   <translation>Dehnung</translation>
  </message>
  <message>
   <source>strains from %1 to %2</source>
   <translation>Dehnungen von %1 bis %2</translation>
  </message>
  <message>
   <source>strains that do not rise</source>
   <translation>Dehnungen, die nicht steigen</translation>
  </message>
  <message>
   <source>strengths</source>
   <translation>Festigkeiten</translation>
  </message>
  <message>
   <source>stretch along the warp</source>
   <translation>Dehnung längs der Kette</translation>
  </message>
  <message>
   <source>stretch along the weft</source>
   <translation>Dehnung längs des Schusses</translation>
  </message>
  <message>
   <source>stretch without cuts along %1</source>
   <translation>Strecke ohne Schnitte entlang %1</translation>
  </message>
  <message>
   <source>strips</source>
   <translation>Streifen</translation>
  </message>
  <message>
   <source>such a ply on each side</source>
   <translation>solch eine Lage auf jeder Seite</translation>
  </message>
  <message>
   <source>supports %1 mm apart</source>
   <translation>Auflager %1 mm auseinander</translation>
  </message>
  <message>
   <source>take a shorter piece, for beyond %1 widths the length hardly matters</source>
   <translation>ein kürzeres Stück nehmen, denn ab %1 Breiten zählt die Länge kaum</translation>
  </message>
  <message>
   <source>take a slower hardener or a cooler shop</source>
   <translation>einen langsameren Härter oder eine kühlere Werkstatt nehmen</translation>
  </message>
  <message>
   <source>take a wider roll, turn the ply, or divide the face into two Moulded Faces</source>
   <translation>eine breitere Rolle nehmen, die Lage drehen oder die Fläche in zwei Formflächen teilen</translation>
  </message>
  <message>
   <source>take a wider roll, turn the ply, or have it split: %1</source>
   <translation>eine breitere Rolle nehmen, die Lage drehen oder teilen lassen: %1</translation>
  </message>
  <message>
   <source>take it from the data sheet of the plastic</source>
   <translation>vom Datenblatt des Kunststoffs nehmen</translation>
  </message>
  <message>
   <source>take it out and set %1 in [printer]</source>
   <translation>ihn herausnehmen und %1 in [printer] setzen</translation>
  </message>
  <message>
   <source>take lines away</source>
   <translation>Zeilen wegnehmen</translation>
  </message>
  <message>
   <source>take the cut out, or split the extent of the ply into two plies</source>
   <translation>den Schnitt herausnehmen oder den Umfang der Lage auf zwei Lagen teilen</translation>
  </message>
  <message>
   <source>take the line out, or put each test into a file of its own</source>
   <translation>die Zeile herausnehmen oder jeden Versuch in eine eigene Datei legen</translation>
  </message>
  <message>
   <source>take the other record out first, or choose another name</source>
   <translation>zuerst die andere Aufzeichnung herausnehmen oder einen anderen Namen wählen</translation>
  </message>
  <message>
   <source>take the paper guide</source>
   <translation>die Papierschablone nehmen</translation>
  </message>
  <message>
   <source>temperature of the shop</source>
   <translation>Temperatur der Werkstatt</translation>
  </message>
  <message>
   <source>test a laminate of the one cloth at 0 degrees</source>
   <translation>ein Laminat aus dem einen Gewebe bei 0 Grad prüfen</translation>
  </message>
  <message>
   <source>test it by itself</source>
   <translation>für sich allein prüfen</translation>
  </message>
  <message>
   <source>test more coupons</source>
   <translation>mehr Proben prüfen</translation>
  </message>
  <message>
   <source>test record</source>
   <translation>Versuchsaufzeichnung</translation>
  </message>
  <message>
   <source>test them one by one</source>
   <translation>einzeln prüfen</translation>
  </message>
  <message>
   <source>text that is not TOML (%1)</source>
   <translation>Text, der kein TOML ist (%1)</translation>
  </message>
  <message>
   <source>that of %1 plies</source>
   <translation>das von %1 Lagen</translation>
  </message>
  <message>
   <source>the 3MF file</source>
   <translation>die 3MF-Datei</translation>
  </message>
  <message>
   <source>the DXF file</source>
   <translation>die DXF-Datei</translation>
  </message>
  <message>
   <source>the air port</source>
   <translation>der Luftanschluss</translation>
  </message>
  <message>
   <source>the arrow stands upright</source>
   <translation>der Pfeil steht senkrecht</translation>
  </message>
  <message>
   <source>the chart '%1'</source>
   <translation>das Diagramm „%1“</translation>
  </message>
  <message>
   <source>the cloth settles</source>
   <translation>das Gewebe legt sich</translation>
  </message>
  <message>
   <source>the coupon broke</source>
   <translation>die Probe brach</translation>
  </message>
  <message>
   <source>the direction %1, which does not run along the face at its origin</source>
   <translation>die Richtung %1, die an ihrem Ursprung nicht an der Fläche entlangläuft</translation>
  </message>
  <message>
   <source>the distance of the supports</source>
   <translation>der Abstand der Auflager</translation>
  </message>
  <message>
   <source>the drape of %1 plies</source>
   <translation>das Drapieren von %1 Lagen</translation>
  </message>
  <message>
   <source>the face that was picked</source>
   <translation>die gewählte Fläche</translation>
  </message>
  <message>
   <source>the feet</source>
   <translation>die Füße</translation>
  </message>
  <message>
   <source>the flange of %1</source>
   <translation>der Flansch von %1</translation>
  </message>
  <message>
   <source>the hole at (%1, %2) mm in %3</source>
   <translation>das Loch bei (%1, %2) mm in %3</translation>
  </message>
  <message>
   <source>the hollow</source>
   <translation>der Hohlraum</translation>
  </message>
  <message>
   <source>the hollow of the mould body</source>
   <translation>der Hohlraum des Formkörpers</translation>
  </message>
  <message>
   <source>the job</source>
   <translation>der Auftrag</translation>
  </message>
  <message>
   <source>the job sheet</source>
   <translation>das Auftragsblatt</translation>
  </message>
  <message>
   <source>the key '%1'</source>
   <translation>der Schlüssel „%1“</translation>
  </message>
  <message>
   <source>the mesh</source>
   <translation>das Netz</translation>
  </message>
  <message>
   <source>the mould</source>
   <translation>die Form</translation>
  </message>
  <message>
   <source>the mould body</source>
   <translation>der Formkörper</translation>
  </message>
  <message>
   <source>the mould body on %1</source>
   <translation>der Formkörper an %1</translation>
  </message>
  <message>
   <source>the mould is opened by %1 deg, the faces around it hold the rest</source>
   <translation>die Form wird um %1° geöffnet, die Flächen ringsum halten den Rest</translation>
  </message>
  <message>
   <source>the mould is opened by this angle</source>
   <translation>die Form wird um diesen Winkel geöffnet</translation>
  </message>
  <message>
   <source>the mould's body</source>
   <translation>der Körper der Form</translation>
  </message>
  <message>
   <source>the mould's working area</source>
   <translation>die Arbeitsfläche der Form</translation>
  </message>
  <message>
   <source>the name of a record</source>
   <translation>der Name einer Aufzeichnung</translation>
  </message>
  <message>
   <source>the number of a ply</source>
   <translation>die Nummer einer Lage</translation>
  </message>
  <message>
   <source>the number of a ply, or 0 for every ply</source>
   <translation>die Nummer einer Lage oder 0 für jede Lage</translation>
  </message>
  <message>
   <source>the number of the ply that it lies on</source>
   <translation>die Nummer der Lage, auf der er liegt</translation>
  </message>
  <message>
   <source>the paper</source>
   <translation>das Papier</translation>
  </message>
  <message>
   <source>the part bends or twists when it is pulled</source>
   <translation>das Teil biegt oder verdreht sich, wenn es gezogen wird</translation>
  </message>
  <message>
   <source>the parting</source>
   <translation>die Teilung</translation>
  </message>
  <message>
   <source>the picked face</source>
   <translation>die gewählte Fläche</translation>
  </message>
  <message>
   <source>the plotter sheets</source>
   <translation>die Plotterblätter</translation>
  </message>
  <message>
   <source>the pry pockets</source>
   <translation>die Hebeltaschen</translation>
  </message>
  <message>
   <source>the search was ended before its time: this is the shortest plan till then</source>
   <translation>die Suche endete vor ihrer Zeit: dies ist der kürzeste Plan bis dahin</translation>
  </message>
  <message>
   <source>the side '%1'</source>
   <translation>die Seite „%1“</translation>
  </message>
  <message>
   <source>the start point alone, the warp along the arrow</source>
   <translation>nur der Startpunkt, die Kette entlang des Pfeils</translation>
  </message>
  <message>
   <source>the texture is %1 mm deep</source>
   <translation>die Struktur ist %1 mm tief</translation>
  </message>
  <message>
   <source>the true-scale pages</source>
   <translation>die Seiten in wahrer Größe</translation>
  </message>
  <message>
   <source>the unit '%1'</source>
   <translation>die Einheit „%1“</translation>
  </message>
  <message>
   <source>the view of the layup</source>
   <translation>die Ansicht des Lagenaufbaus</translation>
  </message>
  <message>
   <source>there is none</source>
   <translation>es gibt keine</translation>
  </message>
  <message>
   <source>thickness</source>
   <translation>Dicke</translation>
  </message>
  <message>
   <source>thickness (mm)</source>
   <translation>Dicke (mm)</translation>
  </message>
  <message>
   <source>thickness of local ply %1</source>
   <translation>Dicke der örtlichen Lage %1</translation>
  </message>
  <message>
   <source>those in tension or compression, by the sign of each stress</source>
   <translation>die in Zug oder Druck, nach dem Vorzeichen jeder Spannung</translation>
  </message>
  <message>
   <source>those in tension, whatever the sign of the stress</source>
   <translation>die in Zug, gleich welchen Vorzeichens die Spannung ist</translation>
  </message>
  <message>
   <source>three numbers in mm</source>
   <translation>drei Zahlen in mm</translation>
  </message>
  <message>
   <source>three numbers such as [0, 0, 1]</source>
   <translation>drei Zahlen wie [0, 0, 1]</translation>
  </message>
  <message>
   <source>tidy it up</source>
   <translation>aufräumen</translation>
  </message>
  <message>
   <source>tile %1</source>
   <translation>Kachel %1</translation>
  </message>
  <message>
   <source>tiles as they are printed, along all axes</source>
   <translation>Kacheln beim Drucken, entlang aller Achsen</translation>
  </message>
  <message>
   <source>tiles as they are printed, along the printer's %1</source>
   <translation>Kacheln beim Drucken, entlang %1 des Druckers</translation>
  </message>
  <message>
   <source>time budget</source>
   <translation>Zeitvorgabe</translation>
  </message>
  <message>
   <source>time for a ply</source>
   <translation>Zeit für eine Lage</translation>
  </message>
  <message>
   <source>time for a square metre</source>
   <translation>Zeit für einen Quadratmeter</translation>
  </message>
  <message>
   <source>time for sanding</source>
   <translation>Zeit zum Schleifen</translation>
  </message>
  <message>
   <source>time for the cuts</source>
   <translation>Zeit für die Schnitte</translation>
  </message>
  <message>
   <source>time of laying</source>
   <translation>Zeit des Legens</translation>
  </message>
  <message>
   <source>time until demould</source>
   <translation>Zeit bis zum Entformen</translation>
  </message>
  <message>
   <source>time until gel</source>
   <translation>Zeit bis zum Gelieren</translation>
  </message>
  <message>
   <source>times of %1</source>
   <translation>Zeiten von %1</translation>
  </message>
  <message>
   <source>times the load</source>
   <translation>mal der Last</translation>
  </message>
  <message>
   <source>tongue clearance</source>
   <translation>Spiel der Zunge</translation>
  </message>
  <message>
   <source>tongue length</source>
   <translation>Länge der Zunge</translation>
  </message>
  <message>
   <source>tongue width</source>
   <translation>Breite der Zunge</translation>
  </message>
  <message>
   <source>too heavy</source>
   <translation>zu schwer</translation>
  </message>
  <message>
   <source>too light</source>
   <translation>zu leicht</translation>
  </message>
  <message>
   <source>too small an inside radius</source>
   <translation>ein zu kleiner Innenradius</translation>
  </message>
  <message>
   <source>triangles for the drape</source>
   <translation>Dreiecke für das Drapieren</translation>
  </message>
  <message>
   <source>triangles taken off edges with more than two</source>
   <translation>Dreiecke von Kanten mit mehr als zweien genommen</translation>
  </message>
  <message>
   <source>triangles taken off where an outline touches itself</source>
   <translation>Dreiecke dort weggenommen, wo ein Umriss sich selbst berührt</translation>
  </message>
  <message>
   <source>triangles with area</source>
   <translation>Dreiecke mit Inhalt</translation>
  </message>
  <message>
   <source>triangles without area</source>
   <translation>Dreiecke ohne Inhalt</translation>
  </message>
  <message>
   <source>trim guide</source>
   <translation>Besäumschablone</translation>
  </message>
  <message>
   <source>trim line</source>
   <translation>Besäumlinie</translation>
  </message>
  <message>
   <source>true or false</source>
   <translation>true oder false</translation>
  </message>
  <message>
   <source>try again or choose another folder; the old file is unchanged</source>
   <translation>es noch einmal versuchen oder einen anderen Ordner wählen; die alte Datei ist unverändert</translation>
  </message>
  <message>
   <source>trying cuts</source>
   <translation>Schnitte werden versucht</translation>
  </message>
  <message>
   <source>turn its triangles inside out</source>
   <translation>seine Dreiecke umwenden</translation>
  </message>
  <message>
   <source>turn the arrow</source>
   <translation>den Pfeil drehen</translation>
  </message>
  <message>
   <source>turn the datum arrow</source>
   <translation>den Bezugspfeil drehen</translation>
  </message>
  <message>
   <source>two pieces or more</source>
   <translation>zwei Stücke oder mehr</translation>
  </message>
  <message>
   <source>two points or more</source>
   <translation>zwei Punkte oder mehr</translation>
  </message>
  <message>
   <source>two solid sides</source>
   <translation>zwei volle Seiten</translation>
  </message>
  <message>
   <source>unit of %1</source>
   <translation>Einheit von %1</translation>
  </message>
  <message>
   <source>unused edge</source>
   <translation>ungenutzter Rand</translation>
  </message>
  <message>
   <source>up to date</source>
   <translation>auf dem Stand</translation>
  </message>
  <message>
   <source>use a finer scale or larger cups</source>
   <translation>eine feinere Waage oder größere Becher nehmen</translation>
  </message>
  <message>
   <source>usual for %1 work, common practice, no source</source>
   <translation>üblich für die Arbeitsweise „%1“, übliche Praxis, keine Quelle</translation>
  </message>
  <message>
   <source>value, unit, source and kind</source>
   <translation>Wert, Einheit, Quelle und Art</translation>
  </message>
  <message>
   <source>value, unit, source and kind, perhaps low and high</source>
   <translation>Wert, Einheit, Quelle und Art, vielleicht low und high</translation>
  </message>
  <message>
   <source>void share</source>
   <translation>Luftanteil</translation>
  </message>
  <message>
   <source>volume in %1</source>
   <translation>Volumen in %1</translation>
  </message>
  <message>
   <source>wait after a coat</source>
   <translation>Warten nach einer Schicht</translation>
  </message>
  <message>
   <source>wall around joints</source>
   <translation>Wand um Verbindungen</translation>
  </message>
  <message>
   <source>wanted draft</source>
   <translation>gewünschte Schräge</translation>
  </message>
  <message>
   <source>warm by %1 degC an hour or less</source>
   <translation>höchstens %1 °C je Stunde wärmen</translation>
  </message>
  <message>
   <source>warming of the mould</source>
   <translation>Erwärmung der Form</translation>
  </message>
  <message>
   <source>warming of the post-cure</source>
   <translation>Aufheizen der Nachhärtung</translation>
  </message>
  <message>
   <source>warp ahead</source>
   <translation>Kette voraus</translation>
  </message>
  <message>
   <source>warp and weft only %1 degrees apart</source>
   <translation>Kette und Schuss nur %1 Grad auseinander</translation>
  </message>
  <message>
   <source>warp and weft thread through the start point, giving way to spare shear</source>
   <translation>Kette und Schuss durch den Startpunkt, sie geben nach, um Scherung zu sparen</translation>
  </message>
  <message>
   <source>warp and weft thread through the start point, held straight</source>
   <translation>Kette und Schuss durch den Startpunkt, gerade gehalten</translation>
  </message>
  <message>
   <source>warp behind</source>
   <translation>Kette zurück</translation>
  </message>
  <message>
   <source>wax and film</source>
   <translation>Wachs und Film</translation>
  </message>
  <message>
   <source>weft left</source>
   <translation>Schuss links</translation>
  </message>
  <message>
   <source>weft right</source>
   <translation>Schuss rechts</translation>
  </message>
  <message>
   <source>weigh again, and perhaps change the two</source>
   <translation>neu wiegen und vielleicht die beiden vertauschen</translation>
  </message>
  <message>
   <source>weigh again, and take off filler and paint</source>
   <translation>neu wiegen und Füller und Lack abziehen</translation>
  </message>
  <message>
   <source>weigh again: cloth and part may have been changed</source>
   <translation>neu wiegen: Gewebe und Teil sind vielleicht vertauscht</translation>
  </message>
  <message>
   <source>weigh with a finer scale, or mix %1 g or more in each cup</source>
   <translation>mit einer feineren Waage wiegen oder %1 g oder mehr je Becher mischen</translation>
  </message>
  <message>
   <source>weighed cloth</source>
   <translation>gewogenes Gewebe</translation>
  </message>
  <message>
   <source>weighed left-over mix</source>
   <translation>gewogener Mischungsrest</translation>
  </message>
  <message>
   <source>weighed mix</source>
   <translation>gewogenes Gemisch</translation>
  </message>
  <message>
   <source>weighed part</source>
   <translation>gewogenes Teil</translation>
  </message>
  <message>
   <source>weighed pieces</source>
   <translation>gewogene Stücke</translation>
  </message>
  <message>
   <source>weighed trimmed part</source>
   <translation>gewogenes besäumtes Teil</translation>
  </message>
  <message>
   <source>weight of a fill coat</source>
   <translation>Gewicht eines Füllanstrichs</translation>
  </message>
  <message>
   <source>weight of a seal coat</source>
   <translation>Gewicht eines Deckanstrichs</translation>
  </message>
  <message>
   <source>well above the thickness of %1 mm</source>
   <translation>deutlich über der Dicke von %1 mm</translation>
  </message>
  <message>
   <source>what was stored in the document</source>
   <translation>was im Dokument gespeichert war</translation>
  </message>
  <message>
   <source>when it cools from cure</source>
   <translation>beim Abkühlen nach dem Härten</translation>
  </message>
  <message>
   <source>when it takes up water</source>
   <translation>bei Wasseraufnahme</translation>
  </message>
  <message>
   <source>where both faces of the cloth are alike</source>
   <translation>wo beide Seiten des Gewebes gleich sind</translation>
  </message>
  <message>
   <source>where the cloth shears least</source>
   <translation>wo das Gewebe am wenigsten schert</translation>
  </message>
  <message>
   <source>where the start point lies</source>
   <translation>wo der Startpunkt liegt</translation>
  </message>
  <message>
   <source>whole numbers in brackets</source>
   <translation>ganze Zahlen in Klammern</translation>
  </message>
  <message>
   <source>widen its extent</source>
   <translation>seinen Umfang erweitern</translation>
  </message>
  <message>
   <source>widen its extent or move it onto the face</source>
   <translation>seinen Umfang erweitern oder auf die Fläche verlegen</translation>
  </message>
  <message>
   <source>widen its extent or shorten the drop-off</source>
   <translation>seinen Umfang erweitern oder die Staffelung kürzen</translation>
  </message>
  <message>
   <source>widen the cloth margin, narrow the port or leave it out</source>
   <translation>die Gewebezugabe verbreitern, den Anschluss schmaler machen oder weglassen</translation>
  </message>
  <message>
   <source>widen the flange</source>
   <translation>den Flansch verbreitern</translation>
  </message>
  <message>
   <source>widen the flange or leave the holes out</source>
   <translation>den Flansch verbreitern oder die Löcher weglassen</translation>
  </message>
  <message>
   <source>widen the lap</source>
   <translation>die Überlappung verbreitern</translation>
  </message>
  <message>
   <source>widen the run-off or the flange</source>
   <translation>den Auslauf oder den Flansch verbreitern</translation>
  </message>
  <message>
   <source>width of a strip</source>
   <translation>Breite eines Streifens</translation>
  </message>
  <message>
   <source>width of the roll of %1</source>
   <translation>Breite der Rolle von %1</translation>
  </message>
  <message>
   <source>width, depth and height in a list</source>
   <translation>Breite, Tiefe und Höhe in einer Liste</translation>
  </message>
  <message>
   <source>wish for a layup</source>
   <translation>Wunsch an einen Lagenaufbau</translation>
  </message>
  <message>
   <source>wish: %1</source>
   <translation>Wunsch: %1</translation>
  </message>
  <message>
   <source>with %1 g of left-overs</source>
   <translation>mit %1 g Resten</translation>
  </message>
  <message>
   <source>with %1 of water, which its resin takes up in the long run</source>
   <translation>mit %1 Wasser, das sein Harz auf Dauer aufnimmt</translation>
  </message>
  <message>
   <source>with a border of %1 mm</source>
   <translation>mit einem Rand von %1 mm</translation>
  </message>
  <message>
   <source>with a core</source>
   <translation>mit einem Kern</translation>
  </message>
  <message>
   <source>within %1, as good as cards and hands allow.</source>
   <translation>innerhalb von %1, so gut Karten und Hände es erlauben.</translation>
  </message>
  <message>
   <source>within the band</source>
   <translation>innerhalb der Spanne</translation>
  </message>
  <message>
   <source>work by hand</source>
   <translation>Handarbeit</translation>
  </message>
  <message>
   <source>working day</source>
   <translation>Arbeitstag</translation>
  </message>
  <message>
   <source>working surface under the ply, running out over %1 mm beyond its end</source>
   <translation>Arbeitsfläche unter der Lage, läuft über %1 mm jenseits ihres Endes aus</translation>
  </message>
  <message>
   <source>working surface, moved along its normals</source>
   <translation>Arbeitsfläche, entlang ihrer Normalen verschoben</translation>
  </message>
  <message>
   <source>working surface, opened so that the part closes to its shape; moved by at most this, stretched by at most %1 %</source>
   <translation>Arbeitsfläche, geöffnet, damit sich das Teil zu seiner Gestalt schließt; höchstens um so viel bewegt, höchstens um %1 % gedehnt</translation>
  </message>
  <message>
   <source>working surface: %1; %2</source>
   <translation>Arbeitsfläche: %1; %2</translation>
  </message>
  <message>
   <source>write "%1 %2"</source>
   <translation>„%1 %2“ schreiben</translation>
  </message>
  <message>
   <source>write "%1 unit"</source>
   <translation>„%1 Einheit“ schreiben</translation>
  </message>
  <message>
   <source>write for example "ahead: 40 mm"</source>
   <translation>zum Beispiel „ahead: 40 mm“ schreiben</translation>
  </message>
  <message>
   <source>write for example "my cloth: 1.27 m"</source>
   <translation>zum Beispiel „my cloth: 1.27 m“ schreiben</translation>
  </message>
  <message>
   <source>write for example "my cloth: 1200 mm to 1230 mm"</source>
   <translation>zum Beispiel „my cloth: 1200 mm to 1230 mm“ schreiben</translation>
  </message>
  <message>
   <source>write for example "my cloth: 600 mm x 400 mm"</source>
   <translation>zum Beispiel „my cloth: 600 mm x 400 mm“ schreiben</translation>
  </message>
  <message>
   <source>write hours and minutes</source>
   <translation>Stunden und Minuten schreiben</translation>
  </message>
  <message>
   <source>write it in one of these ways</source>
   <translation>auf eine dieser Arten schreiben</translation>
  </message>
  <message>
   <source>write it otherwise</source>
   <translation>anders schreiben</translation>
  </message>
  <message>
   <source>write it that way</source>
   <translation>so schreiben</translation>
  </message>
  <message>
   <source>write it that way, with a point as the decimal mark</source>
   <translation>so schreiben, mit Punkt als Dezimalzeichen</translation>
  </message>
  <message>
   <source>write it without quotes</source>
   <translation>ohne Anführungszeichen schreiben</translation>
  </message>
  <message>
   <source>write it without quotes or unit</source>
   <translation>ohne Anführungszeichen und Einheit schreiben</translation>
  </message>
  <message>
   <source>write one first</source>
   <translation>zuerst eines schreiben</translation>
  </message>
  <message>
   <source>write one text for each</source>
   <translation>je einen Text schreiben</translation>
  </message>
  <message>
   <source>write them as a table</source>
   <translation>als Tabelle schreiben</translation>
  </message>
  <message>
   <source>zero or more</source>
   <translation>null oder mehr</translation>
  </message>
  <message>
   <source>{ sheet = "...", thickness = "8 mm", after = 2 }</source>
   <translation>{ sheet = "...", thickness = "8 mm", after = 2 }</translation>
  </message>
 </context>
</TS>
