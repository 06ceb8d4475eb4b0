<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>Poleward</name>
  <message>
   <location filename="app/compose.py" />
   <source>From the next start on: {language}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/compose.py" />
   <source>The program is not ready yet: drop the file once more.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Enter your site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Guide for the first start</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Skip the guide</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>{n} of {count}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Another language is spoken from the next start on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Close help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>From which source?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Help</source>
   <translation>Hilfe</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Help: {page}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>How is it computed?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Keys</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Language</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Part of the help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Text of the help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>This page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>What is this?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Which way is positive?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/leaving.py" />
   <source>Close and lose them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/leaving.py" />
   <source>Copy the readings and stay</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/leaving.py" />
   <source>What you measured tonight is not on disk, because the log of nights cannot be written. If you close now, it is lost. Copied as a drift log, you can paste it into a text file and import it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Budget</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Drift</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Field rotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Night plan</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Tonight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Tracking</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/aimpanel.py" />
   <source>Aim</source>
   <translation>Ausrichtung auf</translation>
  </message>
  <message>
   <location filename="app/pages/budget/aimpanel.py" />
   <source>Align on the</source>
   <translation>Ausrichten auf</translation>
  </message>
  <message>
   <location filename="app/pages/budget/aimpanel.py" />
   <source>Best for this target</source>
   <translation>Am besten für dieses Objekt</translation>
  </message>
  <message>
   <location filename="app/pages/budget/aimpanel.py" />
   <source>Where to aim</source>
   <translation>Wohin ausrichten</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>An error I type</source>
   <translation>Ein Fehler, den ich eingebe</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>Drawn for</source>
   <translation>Gezeichnet für</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>From the true pole; positive when too high.</source>
   <translation>Vom wahren Pol aus; positiv, wenn zu hoch.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>Positive towards greater azimuth: east of the pole in the north.</source>
   <translation>Positiv nach größerem Azimut hin: auf der Nordhalbkugel östlich vom Pol.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>The axis as solved</source>
   <translation>Die Achse, wie gerechnet</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>The most that is allowed</source>
   <translation>Das Äußerste, was erlaubt ist</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>Align to this on the Drift page</source>
   <translation>So genau auf der Driftseite ausrichten</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>How far off the axis may be</source>
   <translation>Wie weit die Achse danebenstehen darf</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>In altitude alone</source>
   <translation>Allein in der Höhe</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>In azimuth alone</source>
   <translation>Allein im Azimut</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>The Drift page aligns to {goal:g}′ now.</source>
   <translation>Die Driftseite richtet jetzt auf {goal:g}′ aus.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>The axis may be off by</source>
   <translation>Die Achse darf abweichen um</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>in whatever direction</source>
   <translation>in jeder Richtung</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>with the altitude right</source>
   <translation>bei richtiger Höhe</translation>
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>with the azimuth right</source>
   <translation>bei richtigem Azimut</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>3 is three hours after.</source>
   <translation>3 heißt drei Stunden danach.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Declination, of date</source>
   <translation>Deklination, des Datums</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Empty: the guide star in the middle of the field.</source>
   <translation>Leer: der Leitstern steht in der Bildmitte.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Guided</source>
   <translation>Mit Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Guiding</source>
   <translation>Nachführregelung</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Half a pixel cannot be seen; 1 can just be seen (our figures).</source>
   <translation>Ein halbes Pixel ist nicht zu sehen, 1 ist eben zu sehen (eigene Werte).</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Name or number</source>
   <translation>Name oder Nummer</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Not guided</source>
   <translation>Ohne Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Not in the tables: type its declination.</source>
   <translation>Nicht in den Tabellen: Deklination eingeben.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>One exposure</source>
   <translation>Eine Belichtung</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Tonight's target</source>
   <translation>Objekt dieser Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>−3 is three hours before it crosses the meridian.</source>
   <translation>−3 heißt drei Stunden vor dem Meridian.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Height, in pixels</source>
   <translation>Höhe, in Pixeln</translation>
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Optics</source>
   <translation>Optik</translation>
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>The set in use</source>
   <translation>Die Ausrüstung in Gebrauch</translation>
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Type figures</source>
   <translation>Werte eingeben</translation>
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Width, in pixels</source>
   <translation>Breite, in Pixeln</translation>
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>With what</source>
   <translation>Womit</translation>
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>As good as your picture needs, no better. Say what you photograph and with what: this page tells how far off the axis may be before stars smear.</source>
   <translation>So gut, wie das Bild es braucht, nicht besser. Sagen Sie, was Sie womit fotografieren: Diese Seite sagt, wie weit die Achse danebenstehen darf, bevor Sterne verwischen.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>How good must the alignment be tonight?</source>
   <translation>Wie gut muss heute Nacht ausgerichtet sein?</translation>
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>Invented target</source>
   <translation>Erfundenes Objekt</translation>
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>The air and the sky over you count: enter your site first.</source>
   <translation>Luft und Himmel über Ihnen zählen mit: Geben Sie zuerst den Standort ein.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>This could not be worked out because of a fault in the program.</source>
   <translation>Das ließ sich wegen eines Fehlers im Programm nicht berechnen.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>Try an invented example</source>
   <translation>Ein erfundenes Beispiel versuchen</translation>
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>{focal:g} mm, {width} × {height} pixels of {pixel:g} µm, {scale:.2f}″ each</source>
   <translation>{focal:g} mm, {width} × {height} Pixel von {pixel:g} µm, je {scale:.2f}″</translation>
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Centre</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Corner</source>
   <translation>Ecke</translation>
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>North on top, east on the right; down to {low:g}°. Hatched: more than {limit:g} pixels. Each shade is {step:.2g} of a pixel more. The thick line: the target, from the dot on.</source>
   <translation>Norden oben, Osten rechts; bis {low:g}° hinab. Schraffiert: mehr als {limit:g} Pixel. Jede Stufe ist {step:.2g} Pixel mehr. Die dicke Linie: das Objekt, vom Punkt an.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Place in the picture</source>
   <translation>Stelle im Bild</translation>
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Point at the sky, or use the arrow keys.</source>
   <translation>Auf den Himmel zeigen oder die Pfeiltasten benutzen.</translation>
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Smear over the sky</source>
   <translation>Verwischung über den Himmel</translation>
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>{direction}, {altitude:.0f}° high: {size:.2f} pixels</source>
   <translation>{direction}, {altitude:.0f}° hoch: {size:.2f} Pixel</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>All together</source>
   <translation>Alles zusammen</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Altitude error alone</source>
   <translation>Höhenfehler allein</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Azimuth error alone</source>
   <translation>Azimutfehler allein</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Between (95 %)</source>
   <translation>Zwischen (95 %)</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Not clear yet</source>
   <translation>Noch nicht klar</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Not good enough</source>
   <translation>Nicht gut genug</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Not known yet</source>
   <translation>Noch nicht bekannt</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Smear, in pixels</source>
   <translation>Verwischung, in Pixeln</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>The air alone</source>
   <translation>Die Luft allein</translation>
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>The axis as it stands</source>
   <translation>Die Achse, wie sie steht</translation>
  </message>
  <message>
   <location filename="app/pages/budget/work.py" />
   <source>Map and curve {axis}. {longest}</source>
   <translation>Karte und Kurve {axis}. {longest}</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Lower</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Raise</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn by, in ′</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn east</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn the bolts by so many ′; say “turned” when both are done</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn west</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>amount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>Another star, or one by its coordinates</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>How you measure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>One drift</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>Read several times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/choosing.py" />
   <source>Chart of the sky</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/choosing.py" />
   <source>Stars to watch, the best first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/choosing.py" />
   <source>The sky now, and the stars that tell most</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/fieldpanel.py" />
   <source>Field in view</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/fieldpanel.py" />
   <source>The shorter way across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/fieldpanel.py" />
   <source>from the equipment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Between them</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Goal</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Until ± is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Watch until the ± is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/guideband.py" />
   <source>What to do next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/guideband.py" />
   <source>{words} ({letter})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>A text file with the columns {columns}; times in UTC.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Choose a file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Lines that were not used, with the reasons</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Reading {file} …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Share of the file that is read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Stop reading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Stopped; nothing was taken from the file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Discard</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Discard it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Discard the leg {leg}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Keep it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>{star}, watched now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/notes.py" />
   <source>Only the motion to the north or south counts: the motion to the east or west carries the periodic error of the drive.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/notes.py" />
   <source>Worth knowing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Another crooked mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>East</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>In the practice night it is {time} UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>In truth the axis points {azimuth:.1f}′ {east} and is {altitude:.1f}′ {high}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Meridian</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Or a star by where it stands, with its altitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Pause</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Show how close I came</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Speed of the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Watch {star}, {altitude:.0f}° high, {where}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>West</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Where to look</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>{star} {altitude:.0f}°</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>{star}, practice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>Back to tonight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>Practice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>Practice at {where}: nothing here is kept; your own night is untouched.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>your site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Arcsec in one division or pixel</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Arcsec ″</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Divisions or pixels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Done with this star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Moment kept: {t} UTC. Now type the offset.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>North (N)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Not taken; the reason stands above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Offset of the star from where it was</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Read now (Space)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Reading error, in ″ (one standard deviation)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>South (S)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Taken: {size:g} {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>The last reading is taken back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>The reading error must be more than 0.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>There is no reading to take back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Undo last reading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Unit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Watching {star}. Put it on a mark of the reticle and read 0 first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>divisions</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>offset</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>reading error</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>{star} was being watched. If it still stands by the same mark, read on; otherwise choose it again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>By hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>Drift log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>Practice sky</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>Readings from</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Another star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>At a UTC time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Date and time, UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Ending</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Ending now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>In so many minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>It moved, in ″</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>North</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>To the</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Work it out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>movement</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>number of minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Rising: a star or the alignment is good enough. Falling: the star leaves. Ticks: turn on. A long one: stop.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Silent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Sounds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Tones</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>All</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Bright stars up now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Declination, J2000</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>My star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Name, as you like it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>No bright star stands there now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Right ascension, J2000</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Type one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Watch this star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Which stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/steerchart.py" />
   <source>Bring the star here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/steerchart.py" />
   <source>The star now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/steerchart.py" />
   <source>The star’s place lies outside the field, this way.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>A base leans by 0 to {most:g} degrees.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Altitude bolt</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Azimuth bolts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>If not, the azimuth bolts move the altitude as well. Read a spirit level, or leave it empty; a degree hardly matters for small turns.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Is the base level?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>The base leans by so many degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>The field in view, with the star and its place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Turns you made, if you count them (the other way: −)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>azimuth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>down towards azimuth, in degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>lean of the base</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>number of turns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>+ way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>, against the last turn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>, the same way as last time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>About {turns:.2f} ± {width:.2f} turns by the mount’s data sheet; which way is learned from the first turn you count.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>About {turns:.2f} ± {width:.2f} turns.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>By the whole turn the star in view moves {far_north} to the {north} and {far_east} to the {east}: steer it there with the bolts.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>Learned: {size:.1f}′ ± {width:.1f}′ a turn, play {play:.1f}′ ± {play_width:.1f}′, from {number} turns.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>That is beyond the field ({across:.3g}′ across): stop before the star leaves it, say that the bolts are turned, watch again, and turn the rest.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>The star in view hardly moves by this turn.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>Turn it the {way}{relation}: on this mount turns counted as + move the axis {plus}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>Which way is open: the turns counted so far moved the axis now one way, now the other. Count the other way as minus.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>− way</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/watchwords.py" />
   <source>The star has moved {moved:.1f}′ and may leave the field ({across:.3g}′ across): bring it back and begin a new leg on it; both legs count.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>A CSV file with times and offsets of one or more stars.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>A star that is tracked by a mount with a crooked axis creeps slowly north or south. Watch how far one creeps near the meridian, then another low in the east or west: from the two, this page works out where the axis points and which bolt to turn.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>At a reticle eyepiece or a live view: type the offset, press one key.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Import a drift log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>No telescope needed: a made-up mount to align in five minutes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Type readings by hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Where are you?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Where does the axis point, and what do I turn?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Your latitude and longitude are needed to read the sky.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>After a turn the legs so far say nothing about the axis.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>I have turned the bolts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>Legs since the bolts were last turned</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>None yet: choose a star and watch it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>Show times in UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>Times are in UTC.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>Times of {zone}, {offset}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Alignment {n}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Between which turns of the bolts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>It could not be worked out because of a fault in the program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>It is being worked out …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Refracted pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Solve again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Solve again with other choices</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Solved again; the night itself stays as it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>The night itself stays as it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>True pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Use the leg {leg}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Add what “{file}” holds to the log? Nothing here is replaced.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Choose a backup or an exported night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Choose a damaged log of nights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>No, leave it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Save a backup of the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Save the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Yes, add it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Bolt scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Error reached</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Minutes spent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Nights compared</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>No night in the log has this figure yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Periodic error</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>What is compared</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>altitude bolt</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>axis error reached, arcminutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>azimuth bolt</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>error reached</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>minutes spent</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>minutes, first leg to result</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>moved over meant</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>peak to peak, arcseconds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>All files (*)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>No, keep it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>These files ({pattern})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>This could not be done because of a fault in the program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>Working on the file …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>Yes, replace it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>“{file}” is there already. Replace it?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>A backup or a night exported as JSON: what it holds is added to this log. Nothing that is here is replaced or lost.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>A damaged log is salvaged by itself: the old file is kept untouched beside a new one, all that can be read is saved into the new one, and you are told how much that is. Any other damaged log, whatever its name, can be salvaged into this log here. Choose the log in use to have it looked through.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>All nights, all readings and all settings in one file. It is read back before you are told that it is good. Put it on another disk than this one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Backup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>If the log is damaged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Restore and import</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Restore or import</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Salvage a damaged log file…</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Save a backup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>1 night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Found in {n} nights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Nights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Nights, the newest first</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>No night is in the log yet: the first leg or note makes one of tonight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Search</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>place, star, equipment, words of a note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>{n} nights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Alignment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Begun</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Bolts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Carry this night out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Drift logs, CSV</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Drift ″/min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Everything, JSON</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Leg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Legs</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Minutes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>No star was watched in this night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Report, HTML</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Report, PDF</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>The night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>A note for this night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>A picture can also be dropped on this page.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Add a picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Change</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Keep the change</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Leave it as it was</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Notes and pictures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Put it back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Remove</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>The note is removed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>The picture is removed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>What went well, what to change</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Write it down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Compare</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Every night is kept here as it happened: legs with all readings, turns of the bolts, results, checklist, weather, notes and pictures. Choose a night to open it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Keep safe</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Part of the page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>The nights cannot be read because of a fault in the program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>This night cannot be read from the log.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>What remains of the nights?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Caption</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Caption of {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Remove the picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Remove the picture {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>what it shows; goes into the report</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>Choose a picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>Open a night first: the picture goes with it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>The caption is kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>{name} is kept with the night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>, up to {best:.2f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>No. {rank}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>Open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>Out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>What would change that</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>Why</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>invented, no product</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>price {price:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>to be bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>{total:.2f} of 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Balancing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Caution</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Caution: axes locked. Counterweight on first and off last, toe stop in. Fingers clear. Lift with two.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Common practice, no source.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Handling the load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Lifting</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Putting on</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Taking off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/choosing.py" />
   <source>Compare three invented mounts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/choosing.py" />
   <source>Enter two mounts or more under Equipment, owned or planned, to compare.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source> and {n} more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Equipment (*.json)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Export equipment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Export …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Import equipment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Import …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Keep mine</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Leave it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Replace it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Take the file's</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Taken: {n} pieces and {m} sets.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>The file could not be used because of a fault in the program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>The file has other figures than yours for {names}{more}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>… and {n} more.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Beside the tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>How the axes stand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Name, as you call it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>No</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Not kept yet: see the dashed fields.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Note</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>On the head</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>On the tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Still to be bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Tripod or ground</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Where it rides</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Without a name it cannot be found again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Yes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Close</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Keep</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Remove it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Remove “{name}”, from all sets too?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>Guiding and exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>Not judged:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>One pixel sees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>The longest unguided exposure needs your site and an error of the axis.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>The set in use has no telescope with a camera: choose another set, or give this one both under Equipment.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>The whole field</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>1 without either; a reducer is below, a Barlow lens above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>Binning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>Camera</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>For the longest exposure without guiding.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>Telescope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>What with</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>Width of a star at half its brightness; 2 to 4 is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>Balance along the tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>Balance with what is still to be bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>Counterweight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>On this bar anything from {least:.1f} to {most:.1f} kg would balance.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>The set names things that are not there any more: {keys}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>The set “{name}” has no mount: give it one under Equipment.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>There is no set yet: under Equipment, add a set with a mount in it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Cannot be judged yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Does the mount carry it?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>More than is good for it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Now {practice}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>The mount carries it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Too heavy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>With what is still to be bought</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>With what is to be bought: {w}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Equipment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Image</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Load and balance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Section</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Set in use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Which mount?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>A set: things used together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Deep-sky imaging</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>None</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Nothing is entered yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Observing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Planets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>What goes on it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>What it is for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>{name} (to be bought)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>A drawing: the weight on the left holds the load on the right.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>A made-up mount with a telescope, cameras and a weight, to look around.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>A telescope and a counterweight in balance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Does the mount carry it, and which one to buy?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Enter your mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Its capacity is enough for a start; the rest can follow.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Try an invented set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Type what the data sheets say of your mount and of what goes on it. This page weighs the load, places the counterweight, tells what one pixel sees, and compares mounts for what you want to do. It knows no products: the figures are yours.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>camera</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>counterweight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>polar axis</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>telescope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Add</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Add: {what}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Equipment and sets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>What you have</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>carries {kg:g} kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>invented</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>mass not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>set for {purpose}, {count} pieces</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Choose a piece, or add one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Let it go</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Remove all that is marked as invented, with what you changed in it?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Remove the invented examples</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Type what the data sheet says; leave empty what it does not say. A set names a mount and what goes on it together. What you only mean to buy is kept apart and counted when you ask for it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>What you typed is not kept yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>A mount that lacks one of these is out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Back to the usual figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Empty: not known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Empty: {kg:.3g} kg, of the set in use with what is planned.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>How much the rest counts, from 0 to 9</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>In your own currency; counts when ticked above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Purpose</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>The usual order is common practice, no source; the numbers are ours.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>What it must have</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>What you want it for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>All to magnitude 9</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Best placed tonight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>From which list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>In order of the hours in which they are clear in the dark, each hour counted more the higher the object stands and less the nearer and brighter the Moon. The order is our own.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>It does not get dark enough tonight for clusters and nebulae.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Messier's list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Nothing of this list rises high enough: try a lower altitude.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Take it as target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Which objects</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>{name}   {kind}{size}
{height:.0f}° high at {time}, clear for {hours:.1f} h, Moon {moon:.0f}° away</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>0: away from the mount; clockwise from behind.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>At {time} it is {place}, {height:.1f} m up; drawn as seen from behind.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Choose a target above to see where the eyepiece goes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Height and place of the eyepiece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Newtonian and mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>No other turn in the rings does better.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>On an alt-azimuth mount the eyepiece stays on the same side of the tube all night; only its height changes. This is about equatorial mounts.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>The target gives no session tonight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Turned to {turn:.0f}° in its rings it is in reach for {after:.0f} % of the session instead of {before:.0f} %.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Where the eyepiece ends up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Begin</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Choose a target above to see when the mount must flip.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>End</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Exposures and the flip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>From {begin} to {end}: {count:,} exposures, none cut.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>It passed the meridian {span} before that, towards the west.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Last exposure ends {stops}, flip at {turns}, on again at {resumes}: {lost} without light. Before: tube {before}. After: tube {after}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Latest time before the mount's limit: {latest}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Mount and series</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Negative: it must stop before.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>On the meridian</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>On the meridian below the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>The flip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>The mount must stop at {stop} and wait until {go}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Type a time of this night, like 22:30, or leave it empty.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>empty: when it is dark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>empty: while clear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>{where} at {time}, {height:.0f}° high.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/mountchoice.py" />
   <source>Alt-azimuth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/mountchoice.py" />
   <source>Fork on a wedge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>All of it depends on where you are: say where that is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Being worked out …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Best placed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Dark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Eyepiece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Flip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Meridian flip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Reference stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Target, highest</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Time line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>What can I do tonight, and when?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>When it is dark, what stands well, when the mount must flip, and which stars to set it up by: one line of time for the whole night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source> Tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>15 min earlier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>15 min later</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>After a careless choice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>After these stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>After {names}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>How many stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Lines of equal pointing error, from 20° up; the same tone is the same error in both. North is up and east on the right, as on a map of the ground.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Point into a map to read it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Pointing error after a careless choice</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Pointing error after the stars chosen</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Reference stars at {time}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Three stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Two stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>expect to be {error} off</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/tonightsection.py" />
   <source>In order of time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/tonightsection.py" />
   <source>The night on one line of time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/tonightsection.py" />
   <source>What happens tonight, in order of time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>Hour angle {hour_angle}; azimuth {azimuth:.2f}°, {altitude:.2f}° high; {middle} from the middle of a sight on the {which}.</source>
   <translation>Stundenwinkel {hour_angle}; Azimut {azimuth:.2f}°, {altitude:.2f}° hoch; {middle} von der Mitte eines Visiers, ausgerichtet auf: {which}.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>Set the latitude scale to</source>
   <translation>Polhöhenskala stellen auf</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>The pole and its star</source>
   <translation>Der Pol und sein Stern</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>True pole {true:.3f}° high, refracted {refracted:.3f}°: the air lifts it {lift:.0f}″.</source>
   <translation>Wahrer Pol {true:.3f}° hoch, gehobener {refracted:.3f}°: Die Luft hebt ihn um {lift:.0f}″.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>between the poles</source>
   <translation>zwischen den Polen</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{distance} from the pole</source>
   <translation>{distance} vom Pol</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{star} in a mirrored sight, on the clock at</source>
   <translation>{star} im gespiegelten Visier, auf der Uhr bei</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{star} in an {view} sight, on the clock at</source>
   <translation>{star} im Visier ({view}), auf der Uhr bei</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{which}, due {way}</source>
   <translation>{which}, genau im {way}</translation>
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>Example: the stars around the pole</source>
   <translation>Beispiel: die Sterne um den Pol</translation>
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>Example: the stars round the pole at an invented site.</source>
   <translation>Beispiel: die Sterne um den Pol an einem erfundenen Standort.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>How high to set the axis, where the pole star stands in a polar-axis sight, and how to come near the pole when it is hidden: all that follows from where you are.</source>
   <translation>Wie hoch die Achse zu stellen ist, wo der Polstern im Polvisier steht und wie man dem Pol nahekommt, wenn er verdeckt ist: Das alles folgt daraus, wo Sie sind.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>Look round at an invented site</source>
   <translation>An einem erfundenen Standort umsehen</translation>
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>Brightest stars around the pole</source>
   <translation>Hellste Sterne um den Pol</translation>
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>Shown around the pole</source>
   <translation>Rund um den Pol gezeigt</translation>
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>Stars around the pole</source>
   <translation>Sterne um den Pol</translation>
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>The field</source>
   <translation>Das Feld</translation>
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>You look</source>
   <translation>Sie sehen</translation>
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>{clock}, {away} from the true pole</source>
   <translation>{clock}, {away} vom wahren Pol</translation>
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>{star}   magnitude {magnitude:.1f}</source>
   <translation>{star}   Helligkeit {magnitude:.1f} mag</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>   magnitude {magnitude:.1f}</source>
   <translation>   Helligkeit {magnitude:.1f} mag</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>By a star, a planet or the Moon</source>
   <translation>Nach einem Stern, einem Planeten oder dem Mond</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>By the Sun's shadow at noon</source>
   <translation>Nach dem Schatten der Sonne am Mittag</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Here the axis points to the zenith and has no bearing: set it upright with a spirit level.</source>
   <translation>Hier zeigt die Achse zum Zenit und hat keine Richtung: Stellen Sie sie mit der Wasserwaage senkrecht.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>In {span}, at {time}. </source>
   <translation>In {span}, um {time}. </translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Level the tripod and set the latitude scale. Choose what you can see, set both circles as told below, and turn the whole mount on its foot until it stands in the finder: the axis then points within a degree or so of the pole.</source>
   <translation>Stellen Sie das Stativ waagrecht und die Polhöhenskala ein. Wählen Sie, was zu sehen ist, stellen Sie beide Teilkreise wie unten angegeben und drehen Sie die ganze Montierung auf ihrem Fuß, bis es im Sucher steht: Dann zeigt die Achse auf etwa ein Grad genau zum Pol.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Nothing fit to align by stands in the sky now: wait until it is darker, or use the compass.</source>
   <translation>Jetzt steht nichts am Himmel, wonach man ausrichten könnte: Warten Sie, bis es dunkler ist, oder nehmen Sie den Kompass.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>The Moon, planets and bright stars up now</source>
   <translation>Mond, Planeten und helle Sterne, die jetzt am Himmel stehen</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Turn the mount so that its axis points there, and raise it to {height:.1f}° with an inclinometer on the axis: within a degree or two of the pole.</source>
   <translation>Drehen Sie die Montierung, bis ihre Achse dorthin zeigt, und heben Sie diese mit einem Neigungsmesser an der Achse auf {height:.1f}°: Dann steht sie auf ein bis zwei Grad genau am Pol.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>What is up now could not be worked out: see the fault file.</source>
   <translation>Was jetzt am Himmel steht, ließ sich nicht berechnen: siehe Fehlerdatei.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>{name}: set declination {declination} and hour angle {hour_angle}. It stands at azimuth {azimuth:.1f}°, {altitude:.1f}° high.</source>
   <translation>{name}: Deklination {declination} und Stundenwinkel {hour_angle} einstellen. Azimut {azimuth:.1f}°, {altitude:.1f}° hoch.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>At an invented site, {site}.</source>
   <translation>An einem erfundenen Standort, {site}.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>By the star field</source>
   <translation>Nach dem Sternfeld</translation>
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>How you look for the pole</source>
   <translation>Wie Sie den Pol suchen</translation>
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>The pole is hidden</source>
   <translation>Der Pol ist verdeckt</translation>
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>Through a polar-axis sight</source>
   <translation>Durch ein Polvisier</translation>
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>Where is the pole?</source>
   <translation>Wo ist der Pol?</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>From the middle, in ′</source>
   <translation>Von der Mitte, in ′</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>On the clock</source>
   <translation>Auf der Uhr</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>Set the sight's own 12 o'clock upright first. Then drag the mark on the dial to where {star} is, move it with the arrow keys, or type its place.</source>
   <translation>Stellen Sie zuerst die 12 des Visiers senkrecht nach oben. Ziehen Sie dann die Marke auf dem Zifferblatt dorthin, wo {star} steht, bewegen Sie sie mit den Pfeiltasten oder geben Sie die Stelle ein.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>Take it back</source>
   <translation>Zurücknehmen</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>That is where I see it</source>
   <translation>Dort sehe ich ihn</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>That lies outside a field {field:g}° across, whose edge is {edge:g}′ from the middle.</source>
   <translation>Das liegt außerhalb eines Feldes von {field:g}°, dessen Rand {edge:g}′ von der Mitte entfernt ist.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>The distance is empty; in the very middle it is 0.</source>
   <translation>Der Abstand fehlt; genau in der Mitte ist er 0.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>Where do you see the star?</source>
   <translation>Wo sehen Sie den Stern?</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Dial of the polar-axis sight</source>
   <translation>Zifferblatt des Polvisiers</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Empty: {field:g}° holds until there is another.</source>
   <translation>Leer: {field:g}° gelten, bis ein anderer Wert da ist.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Field of view across, in °</source>
   <translation>Gesichtsfeld, in °</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>It shows the sky</source>
   <translation>Es zeigt den Himmel</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Your sight</source>
   <translation>Ihr Visier</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>Farthest east and west it is {widest:.2f}° of azimuth from the pole.</source>
   <translation>Am weitesten östlich und westlich steht er {widest:.2f}° im Azimut vom Pol.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>So near the Earth's pole the star goes round the zenith and is never farthest east or west.</source>
   <translation>So nahe am Pol der Erde läuft der Stern um den Zenit und steht nie am weitesten östlich oder westlich.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>above the pole (upper culmination)</source>
   <translation>über dem Pol (obere Kulmination)</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>below the pole (lower culmination)</source>
   <translation>unter dem Pol (untere Kulmination)</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>farthest east (elongation)</source>
   <translation>am weitesten östlich (Elongation)</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>farthest west (elongation)</source>
   <translation>am weitesten westlich (Elongation)</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>{star} next stands</source>
   <translation>{star} steht als Nächstes</translation>
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>{where} in {span}, {time}</source>
   <translation>{where} in {span}, {time}</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Angle of the derotator through the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>At {limit:g}° a second the drive loses stars within {south:.2f}° south and {north:.2f}° north of the zenith.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Choose a target above to see what its derotator must do.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Choose a target above to see whether it passes there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Derotator</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Near the zenith</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Near the zenith a star's azimuth changes faster than a drive can turn. The map “Zenith enlarged” shows the zone enlarged. Keep cables and hands clear of a mount that turns at full speed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Needed: {range:.0f}° of range, up to {speed:.3g}° a minute.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>The star's azimuth changes by up to {speed:.2g}° a second.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Turn it back at {times}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>{target} comes within {distance:.1f}° of the zenith tonight and is never lost.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>{target} enters the zone at {enters} and the drive has caught up at {leaves}, after {span}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Across the stack the field turns {turn:.1f}°. All frames share {common:.0f} % of the picture; cropped to its shape {crop:.0f} % is left, {lost:.0f} % is lost.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Camera and series</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Choose a target above to plan a series on it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>From {time} on the target is not seen.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Longest exposure through the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>The exposure is too long for the smear allowed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>The stack</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Thin: the first frame; broken: the last one. Filled: what all frames saw. Thick: the largest crop of the same shape.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>empty: the longest possible</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>{count:,} exposures of {one}, from {begin} to {end}. The corner smears by {smear:.2g} px at most.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>A mount that stands upright, turning about the vertical, lets the stars in its field turn. This page shows how fast over the whole sky, how long one may expose, and what is left of the picture after stacking.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Choose a target to see its own figures.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Exposures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Field rotation of the target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>How fast does the field turn?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Longest exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Sky</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>The field turns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>The sky turns by your latitude: say where you are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>The target stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Wedge or platform</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Zenith and derotator</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>At a pole of the Earth the field does not turn at all.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Choose a target above: its path, and how the field turns along it, show here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Field rotation through the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Lines of equal field rotation: whole where the parallactic angle grows (+), broken where it falls (−).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Lines of equal longest exposure for {smear:g} px of smear in the corner.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Map</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Map of the sky above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>North is up and east on the right, as on a map of the ground. Hatched at the rim: obstructions; crossed: too fast for the drive.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Point into the map to read it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Rate</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Zenith enlarged</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>expose {time} at most</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>the field turns {rate}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>At the moment picked {left:.2g}° an hour are left: the corner smears by {smear:g} px after {time}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Choose a target above to see what is left on it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Dobsonian on a platform</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>On its own, the mount would let the field turn {plain:.2g}° an hour.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>On what the mount stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Rotation that is left through the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Set for this latitude and this pole, nothing is left.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Set for {set:.1f}°, used at {here:.1f}°.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>The platform is taken to stand level at the moment picked.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>What is left of the rotation</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>empty: the latitude of the site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Clock</source>
   <translation>Uhr</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Is the clock right?</source>
   <translation>Geht die Uhr richtig?</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Local time</source>
   <translation>Ortszeit</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Noted on tonight's checklist.</source>
   <translation>Auf der Checkliste dieser Nacht vermerkt.</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Sidereal time</source>
   <translation>Sternzeit</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>The clock is right</source>
   <translation>Die Uhr geht richtig</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Time zone</source>
   <translation>Zeitzone</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>With the site known, the Sun's place will check the clock.</source>
   <translation>Ist der Standort bekannt, prüft der Ort der Sonne die Uhr.</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>at this longitude</source>
   <translation>auf dieser Länge</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>empty: the computer's own</source>
   <translation>leer: die des Computers</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>needs the site</source>
   <translation>braucht den Standort</translation>
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>{zone}: {offset} now.</source>
   <translation>{zone}: jetzt {offset}.</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>11.575  or  11 34 30 E</source>
   <translation>11.575  oder  11 34 30 E</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>48.137  or  48 08 14 N</source>
   <translation>48.137  oder  48 08 14 N</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Air lifts the stars and the pole. A barometer shows the pressure at the station; weather reports give it reduced to sea level.</source>
   <translation>Die Luft hebt Sterne und Pol. Ein Barometer zeigt den Druck am Standort; Wetterberichte geben ihn auf Meereshöhe umgerechnet an.</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Elevation, in metres</source>
   <translation>Höhe über dem Meer, in Metern</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>In use.</source>
   <translation>In Gebrauch.</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Latitude</source>
   <translation>Breite</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Longitude</source>
   <translation>Länge</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>No, it is {typed:g}</source>
   <translation>Nein, es sind {typed:g}</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Not yet: answer the question first.</source>
   <translation>Noch nicht: Beantworten Sie zuerst die Frage.</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Not yet: see the dashed fields.</source>
   <translation>Noch nicht: siehe die gestrichelten Felder.</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Place</source>
   <translation>Ort</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Pressure at the station</source>
   <translation>Druck am Standort</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Pressure, in hPa</source>
   <translation>Druck, in hPa</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Reduced to sea level</source>
   <translation>Auf Meereshöhe umgerechnet</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Temperature, in °C</source>
   <translation>Temperatur, in °C</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>The pressure is</source>
   <translation>Der Druck ist</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Use this site</source>
   <translation>Diesen Standort benutzen</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Yes, use {guess:g}</source>
   <translation>Ja, {guess:g} nehmen</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>empty: 10 assumed</source>
   <translation>leer: 10 angenommen</translation>
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>empty: default</source>
   <translation>leer: Vorgabe</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>All clear</source>
   <translation>Ringsum frei</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Draw the skyline over trees and roofs with the mouse; or step along it with the arrow keys left and right and raise or lower it with up and down (Shift: finer).</source>
   <translation>Ziehen Sie mit der Maus die Linie über Bäume und Dächer; oder gehen Sie mit den Pfeiltasten links und rechts an ihr entlang und heben oder senken Sie sie mit auf und ab (Umschalttaste: feiner).</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Horizon</source>
   <translation>Horizont</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Horizon as pairs: azimuth and altitude in degrees</source>
   <translation>Horizont in Paaren: Azimut und Höhe in Grad</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Not taken. {why}</source>
   <translation>Nicht übernommen. {why}</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Nothing in the way all round</source>
   <translation>Ringsum steht nichts im Weg</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Or azimuth and altitude, a pair a line</source>
   <translation>Oder Azimut und Höhe, ein Paar je Zeile</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Undo</source>
   <translation>Rückgängig</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Undo the last change of the horizon</source>
   <translation>Die letzte Änderung des Horizonts zurücknehmen</translation>
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>What stands in the way?</source>
   <translation>Was steht im Weg?</translation>
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Forget this place</source>
   <translation>Diesen Ort vergessen</translation>
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Forget “{place}”, with its time zone and horizon?</source>
   <translation>„{place}“ vergessen, mit Zeitzone und Horizont?</translation>
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Places kept</source>
   <translation>Gespeicherte Orte</translation>
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Use {place}</source>
   <translation>{place} benutzen</translation>
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Yes, forget it</source>
   <translation>Ja, vergessen</translation>
  </message>
  <message>
   <location filename="app/pages/site/page.py" />
   <source>The pole stands as high as your latitude, and the stars turn by your longitude. A hundredth of a degree is good enough.</source>
   <translation>Der Pol steht so hoch wie Ihre geografische Breite, und die Sterne drehen sich nach Ihrer Länge. Ein hundertstel Grad genügt.</translation>
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>No target yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>Target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>Type its name, or the first letters.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>magnitude {size:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>{size:.3g}′ across</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>A guide star is followed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Battery</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Deep sky, camera</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Mains</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Power</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Target begins at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>The checklist is made for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Write it like 22:30.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>empty: as soon as it can</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>All is done. Clear skies.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>It is done</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>Next, {time}: {due}. {left} steps are left.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>Nothing is left on the checklist.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>Open {page}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>The next step</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>The night is being worked out …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>The target can begin {minutes} min later than planned.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>All times follow from the Sun over your place: say where you are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>Darkness</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>The night could not be worked out because of a fault in the program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>The whole night from packing the car to coming home: what is next, when it has to begin, how long until it is dark, and how well the axis stands.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>What comes next tonight?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>It goes into the report. Cautions stay.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Leave it open</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Say in a few words why it is skipped.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Skip it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Skip “{step}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Why is it skipped tonight?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>in a few words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>A step of your own, at the end of this part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Add it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Checklist</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Checklist for this night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Every night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Keep it for other nights</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Part of the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Done: {step}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Move down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Move up</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Skip</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Skip: {step}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>In words</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Note it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Noted last: {what}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Nothing is filled in yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Nothing is noted yet tonight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Weather, as you find it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>thin cloud in the west, dew</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>Done{when}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>Skipped: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>The program saw it done{when}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>begin now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>begin within {span}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>good enough, {allowed} is the target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>no time set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>should have begun {span} ago</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>turn the bolts again, {allowed} is the target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>until {darkest}; now: {light}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>watch longer to be sure, {allowed} is the target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>206.265 times the pixel in µm over the focal length in mm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>From the middle of a guide exposure to its correction.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>How it would be guided</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Longest exposures of which nine in ten are sharp</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Needs an unguided run: bring one in under Periodic error.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Of exposures begun at any moment at declination {dec:.0f}°, nine in ten smear less than {free:g} px, guided less than {held:g} px.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>The air moves a guided star too; more than unguided is usual.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>The one the verdict is about.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Trained</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Unguided</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>What the air does to one measurement.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>as far as this run can tell</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>1 is even</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Air and dither</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Asked and moved, in ″</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Declination</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Declination backlash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>If the record holds a dither.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Import guiding (CSV) …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>No guiding recorded yet; bring some minutes of it in.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Nothing in it asks for a change.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Practice guiding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Push the star north with short equal pulses until it moves evenly, then south. Write a line for each pulse since the reversal: arcseconds asked for in all, and arcseconds the star has moved.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Ratio of the two</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Reversal in declination: asked and moved, in ″</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Right ascension</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Some minutes of guiding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>The offsets of the guide star while it is guided, in both axes: five minutes or more, one line for each guide exposure.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Under such seeing the air alone moves a star {moved:.1f}″ rms in each axis of your telescope, in short exposures; no guiding is better than that.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>What guiding leaves</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Width of a star at half its brightness.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>rms, worst {peak:.1f}″</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Enter the image scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>From: {origins}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Guiding holds within</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Import a run (CSV) …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>In figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Left after training</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Longest exposure, unguided</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>No answer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Practice run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Share of the computation that is done</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Stop</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Verdict</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>What each cause smears in one exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>air</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>allowed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>guiding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>is surely sharp</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>needs the image scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>nine in ten are sharp</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>none</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>not measured</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>peak to peak</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>polar alignment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>rms</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>rms, predicted</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>uneven drive</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>{size:.1f} px</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>{size:g} px</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Balancing:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>It tracks well enough for such exposures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Let the mount track a star without guiding for half an hour, or bring some minutes of guiding in. This page then says how much the drive swings, what training or guiding would leave, how long you may expose, and the one thing to try first. A practice run shows all of it by daylight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Measured; the verdict needs one thing more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the air</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the guiding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the periodic error of the mount</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the polar alignment</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly what the drive does once and not again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Nothing is measured yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>This cannot be judged yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Whether that spoils a picture depends on how much sky one pixel sees: enter the image scale.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>How well does this mount track, and what first?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>Part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>Pointing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>Training</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>Vibration</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>As the data sheet says.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>From the data sheet; empty finds it in the run.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Let the mount track one star without guiding for at least three turns of its worm, better six: half an hour to an hour, any declination below 60°. The drift of the polar axis and of the air is computed and taken out. Legs of tonight with east offsets can be chosen here too.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>No run yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>No run yet. It will show what the drive does in each turn of its worm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>One turn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Parts of the curve that stand out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Periods</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>The run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>The sheet gives it as ±</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>What the data sheet says</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>What the plot shows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Whole run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>amplitude ± 95 %</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>beside the worm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>one turn of the worm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>part</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>period</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>phase ± 95 %</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>{n} swings a turn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>After a touch</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Amplitude (″)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Before and after training</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Chance of a sharp exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Declination under guiding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Drive ahead (″)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>East (″)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Example: one turn of a worm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>North (′)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>North (″)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Offset (″)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>One turn of the worm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Period (seconds)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Place in the turn (seconds)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Right ascension under guiding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Sharp ones (%)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>The whole run, the drift of the axis taken out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Time (minutes)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Time (seconds)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>West (′)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>What is left at each star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Which periods the run holds</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>after a change</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>amplitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>an invented drive</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>before</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>fitted curve</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>guided</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>mean of all turns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>nine in ten</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>single turns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>star, all parts taken out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>trained</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>unguided</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>what is left of single turns</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>what training takes out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Before you loosen anything: cap the tube and have somebody hold it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Choose a list of stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Enter your site first; the stars are placed over it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>How far the mount misses</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Import stars (CSV) …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>No star yet. From three stars on something can be said.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Once its circles are set</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Practice stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Practice stars, invented; they are not kept.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Remove all</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Remove the chosen star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Send the mount to a star, bring it into the middle by hand, and note what the mount shows. Eight or more, high and low, on both sides of the pier.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Stars (*.csv *.txt *.tsv)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Stars pointed at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Taken: {n} stars.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Where were they seen from? Enter your site first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>With all parts taken out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>declination {dec:+.0f}°</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>rms on these stars</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>star {number}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>tube east of the pier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>tube west of the pier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>{h:.1f} h east</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>{h:.1f} h west</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>A text file with the columns {columns}; east_px and north_px too.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Choose a run</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Leave this one out</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Leg of the file</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Leg of tonight, up to now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Read it again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Runs (*.csv *.txt *.tsv)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Tonight, leg “{label}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>{origin}: {n} readings over {minutes:.0f} minutes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>A star in the middle of the field</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Add this star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Declination of the star, J2000</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Declination the mount shows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Right ascension of the star, J2000</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Right ascension the mount shows</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>The mount shows places</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>The tube stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>When, in UTC; empty is now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>east of the pier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>of J2000</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>of tonight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>west of the pier</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>A mount that can be trained plays a recorded curve back against its worm. It takes out what repeats from turn to turn, no more. Sign and phase are said in the head of the file: the curve is the lead of the drive at the equator, positive ahead.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Changes from turn to turn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Curves (*.csv)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Export the mean curve</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Export the mean curve (CSV) …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Repeats from turn to turn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>What repeats and what does not</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>A tap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Choose a record</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Columns: {columns}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>First swing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Import a tap (CSV) …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Import a tap after a change …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>No tap yet. It shows how long to wait after a touch.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Practice tap</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Record a bright star ten times a second or more, tap the tube lightly with a finger or turn the focuser, and record until it is still.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Settled after</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Swings a second</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Taking weight off:</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Taps (*.csv *.txt *.tsv)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>one in {s:.2f} s</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>to one side</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>± {error:.1f} s</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/rail.py" />
   <source>Page {title}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/rail.py" />
   <source>Pages</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/rail.py" />
   <source>{title} (Alt+{number})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/session/guide/boltbook.py" />
   <source>No mount is chosen on the Mount page: what turns teach is kept in a book of its own, for no mount. Choose the set you use to keep it with its mount.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/session/guide/boltbook.py" />
   <source>Practice: what these turns teach is forgotten at the end.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/session/guide/boltbook.py" />
   <source>What turns teach is kept with the mount “{name}”.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>All that can be read of the file is in the log already; nothing was added.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Another copy of this program is running and writes the log of nights {file}. What this copy measures goes into {instead} and joins the other nights when the program is next opened alone; earlier nights are shown by the other copy.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Saved into the log: {counted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Some of the file cannot be read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The backup {path} could not be written ({reason}). Choose a place with enough room that may be written; the log of nights is not affected.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The disk with {folder} is full: free some space on it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The drive with {folder} does not take data: check that it is still there.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The folder {folder} cannot be made or used ({reason}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was damaged. It is kept as {aside} and a new one was begun with all that could be read of it: {counted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was damaged. It is kept as {aside} and a new one was begun, and nothing in the old one could be read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was damaged. It is kept as {aside} and a new one was begun, but there was no room to save what can be read of the old one: free some space on the disk, then salvage it on the Log page, part “Keep safe”.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was written by a newer version of this program and is left untouched; tonight goes into {instead}. Update the program to see the earlier nights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} cannot be written ({reason}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} cannot be written: allow writing in {folder}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} is damaged and cannot be set aside: move it elsewhere.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} is held by another program: close that program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} was empty (0 bytes) and was begun anew. If nights should be in it, restore a backup on the Log page.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The old file is kept untouched: {path}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>What another copy of the program recorded has joined {file}: {counted}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>What you measure is kept in memory and writing is tried again every few seconds; export it as a drift log before you close the program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>nights: {nights}, legs: {legs}, readings: {readings:,}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} is empty (0 bytes): there is nothing in it to take. Choose another file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} is not a log of nights, or nothing in it can be read: choose a backup or a log made by this program. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} is the log of nights in use; it was looked through and is not damaged.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} was damaged and is salvaged; what was saved is said above.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} was written by a newer version of this program: update the program, then take it in. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{nights} nights are saved in {path} and were read back without a fault.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Day</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Help on this page, words and keys (F1)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Larger text; after the largest comes the usual size again</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Look</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>No place yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Text {percent} %</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/amount.py" />
   <source>A figure is needed here; until then the last one holds.</source>
   <translation>Hier wird ein Wert gebraucht; bis dahin gilt der letzte.</translation>
  </message>
  <message>
   <location filename="app/widgets/beamdrawing.py" />
   <source>{mm:g} mm</source>
   <translation>{mm:g} mm</translation>
  </message>
  <message>
   <location filename="app/widgets/compass.py" />
   <source>Compass</source>
   <translation>Kompass</translation>
  </message>
  <message>
   <location filename="app/widgets/compass.py" />
   <source>Enter the site: where true north is by compass depends on it.</source>
   <translation>Geben Sie den Standort ein: Wo nach dem Kompass der wahre Norden liegt, hängt davon ab.</translation>
  </message>
  <message>
   <location filename="app/widgets/cropdrawing.py" />
   <source>Drawing of the stacked picture</source>
   <translation>Zeichnung des gestapelten Bildes</translation>
  </message>
  <message>
   <location filename="app/widgets/curveplot.py" />
   <source>Copy values</source>
   <translation>Werte kopieren</translation>
  </message>
  <message>
   <location filename="app/widgets/curveplot.py" />
   <source>Point at the plot, or use the arrow keys.</source>
   <translation>Auf die Kurve zeigen oder die Pfeiltasten benutzen.</translation>
  </message>
  <message>
   <location filename="app/widgets/curveplot.py" />
   <source>Put what is drawn on the clipboard as a table</source>
   <translation>Das Gezeichnete als Tabelle in die Zwischenablage legen</translation>
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>Azimuth {azimuth:.0f}°, {altitude} high</source>
   <translation>Azimut {azimuth:.0f}°, {altitude} hoch</translation>
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>E</source>
   <translation>O</translation>
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>N</source>
   <translation>N</translation>
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>S</source>
   <translation>S</translation>
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>W</source>
   <translation>W</translation>
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>{place}: obstructed</source>
   <translation>{place}: verdeckt</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Copy readings</source>
   <translation>Ablesungen kopieren</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Declination drift</source>
   <translation>Deklinationsdrift</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Follow (F)</source>
   <translation>Mitlaufen (F)</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>North drift (arcsec)</source>
   <translation>Drift nach Norden (Bogensekunden)</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Plot of declination drift against time</source>
   <translation>Bild der Deklinationsdrift über der Zeit</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Put all readings on the clipboard as a drift log</source>
   <translation>Alle Ablesungen als Driftprotokoll in die Zwischenablage legen</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Readings will show here as they come.</source>
   <translation>Hier erscheinen Ablesungen, sobald sie kommen.</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Show all readings again as they come</source>
   <translation>Alle Ablesungen wieder zeigen, wie sie kommen</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>The newest {shown} legs are drawn; the {count} before count as well.</source>
   <translation>Gezeichnet sind die neuesten {shown} Etappen; die {count} davor zählen ebenfalls.</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Time since the leg began (minutes)</source>
   <translation>Zeit seit Beginn der Etappe (Minuten)</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>{leg}: {size:.1f}″ {side} after {minutes:.1f} min, at {time} UTC</source>
   <translation>{leg}: {size:.1f}″ nach {side}, {minutes:.1f} min nach Beginn, um {time} UTC</translation>
  </message>
  <message>
   <location filename="app/widgets/filepicker.py" />
   <source>Choose a drift log</source>
   <translation>Driftprotokoll wählen</translation>
  </message>
  <message>
   <location filename="app/widgets/filepicker.py" />
   <source>Drift logs (*.csv *.txt *.tsv)</source>
   <translation>Driftprotokolle (*.csv *.txt *.tsv)</translation>
  </message>
  <message>
   <location filename="app/widgets/loadbar.py" />
   <source>Load against capacity</source>
   <translation>Zuladung und Tragfähigkeit</translation>
  </message>
  <message>
   <location filename="app/widgets/loadbar.py" />
   <source>keep to {kg:.3g} kg</source>
   <translation>höchstens {kg:.3g} kg</translation>
  </message>
  <message>
   <location filename="app/widgets/loadbar.py" />
   <source>listed {kg:.3g} kg</source>
   <translation>angegeben {kg:.3g} kg</translation>
  </message>
  <message>
   <location filename="app/widgets/nightview.py" />
   <source>All values on the clipboard, for a table program</source>
   <translation>Alle Werte in die Zwischenablage, für ein Tabellenprogramm</translation>
  </message>
  <message>
   <location filename="app/widgets/nightview.py" />
   <source>Copy the values of: {name}</source>
   <translation>Die Werte kopieren von: {name}</translation>
  </message>
  <message>
   <location filename="app/widgets/nightview.py" />
   <source>Press on the picture, or use the arrow keys.</source>
   <translation>Auf das Bild drücken oder die Pfeiltasten benutzen.</translation>
  </message>
  <message>
   <location filename="app/widgets/notice.py" />
   <source>Close this message</source>
   <translation>Diese Meldung schließen</translation>
  </message>
  <message>
   <location filename="app/widgets/notice.py" />
   <source>Read</source>
   <translation>Gelesen</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>At azimuth {azimuth:.0f}° the sky begins {height:.0f}° high.</source>
   <translation>Bei Azimut {azimuth:.0f}° beginnt der Himmel {height:.0f}° hoch.</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>Horizon all round</source>
   <translation>Horizont ringsum</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>NE</source>
   <translation>NO</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>NW</source>
   <translation>NW</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>Pointer at azimuth {azimuth:.0f}°, altitude {altitude:.0f}°.</source>
   <translation>Zeiger bei Azimut {azimuth:.0f}°, Höhe {altitude:.0f}°.</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>SE</source>
   <translation>SO</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>SW</source>
   <translation>SW</translation>
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>pole</source>
   <translation>Pol</translation>
  </message>
  <message>
   <location filename="app/widgets/pixelgrid.py" />
   <source>A star over the pixels of the camera, to scale</source>
   <translation>Ein Stern über den Pixeln der Kamera, maßstäblich</translation>
  </message>
  <message>
   <location filename="app/widgets/pixelgrid.py" />
   <source>{n:.1f} pixels across the star</source>
   <translation>{n:.1f} Pixel über den Stern</translation>
  </message>
  <message>
   <location filename="app/widgets/sharebar.py" />
   <source>{share:.2f} of 1</source>
   <translation>{share:.2f} von 1</translation>
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>Drawing: the axis of a mount points beside the pole, and in the eyepiece the star creeps away from where the mount keeps pointing.</source>
   <translation>Zeichnung: Die Achse einer Montierung zeigt neben den Pol, und im Okular wandert der Stern langsam von der Stelle weg, auf die die Montierung gerichtet bleibt.</translation>
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>in the eyepiece, minute by minute</source>
   <translation>im Okular, Minute für Minute</translation>
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>the axis</source>
   <translation>die Achse</translation>
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>the pole</source>
   <translation>der Pol</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Copy</source>
   <translation>Kopieren</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Copy the curve</source>
   <translation>Kurve kopieren</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Exposure (minutes)</source>
   <translation>Belichtung (Minuten)</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Plot of smear against exposure</source>
   <translation>Bild der Verwischung über der Belichtung</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Point at the curve to read it off.</source>
   <translation>Auf die Kurve zeigen, um sie abzulesen.</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Put exposure and smear on the clipboard as a table</source>
   <translation>Belichtung und Verwischung als Tabelle in die Zwischenablage legen</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Smear (pixels)</source>
   <translation>Verwischung (Pixel)</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Smear against exposure</source>
   <translation>Verwischung über der Belichtung</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>centre</source>
   <translation>Mitte</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>corner</source>
   <translation>Ecke</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>corner {corner:.2f} px, centre {centre:.2f} px</source>
   <translation>Ecke {corner:.2f} px, Mitte {centre:.2f} px</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>the target does not stay up so long.</source>
   <translation>so lange bleibt das Objekt nicht oben.</translation>
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>{minutes:.3g} min: </source>
   <translation>{minutes:.3g} min: </translation>
  </message>
  <message>
   <location filename="app/widgets/stepper.py" />
   <source>{name}: less</source>
   <translation>{name}: weniger</translation>
  </message>
  <message>
   <location filename="app/widgets/stepper.py" />
   <source>{name}: more</source>
   <translation>{name}: mehr</translation>
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>Find a target</source>
   <translation>Objekt suchen</translation>
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>M 31, Vega, Saturn …</source>
   <translation>M 31, Vega, Saturn …</translation>
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>Nothing is called that. Coordinates go like 00 42 44 +41 16 09 (J2000).</source>
   <translation>So heißt nichts. Koordinaten gehen so: 00 42 44 +41 16 09 (J2000).</translation>
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>Targets found</source>
   <translation>Gefundene Objekte</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>Drawing: the tube from behind, with its eyepiece</source>
   <translation>Zeichnung: der Tubus von hinten mit seinem Okular</translation>
  </message>
  <message>
   <location filename="app/widgets/utcclock.py" />
   <source>Time in UTC</source>
   <translation>Zeit in UTC</translation>
  </message>
  <message>
   <location filename="app/widgets/utcclock.py" />
   <source>{time} UTC</source>
   <translation>{time} UTC</translation>
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>A newer answer is being worked out …</source>
   <translation>Eine neuere Antwort wird gerade berechnet …</translation>
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>Altitude</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>Azimuth</source>
   <translation>Azimut</translation>
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>Where the axis points</source>
   <translation>Wohin die Achse zeigt</translation>
  </message>
  <message>
   <location filename="app/window.py" />
   <source>Drop one file at a time: none of these was taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Altitude error: not known yet; these readings cannot tell it.</source>
   <translation>Höhenfehler: noch nicht bekannt; aus diesen Ablesungen geht er nicht hervor.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Altitude: {size}, at the pole within the ±: leave it.</source>
   <translation>Höhe: {size}, innerhalb des ± am Pol: so lassen.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Azimuth error: not known yet; these readings cannot tell it.</source>
   <translation>Azimutfehler: noch nicht bekannt; aus diesen Ablesungen geht er nicht hervor.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Azimuth: {size}, at the pole within the ±: leave it.</source>
   <translation>Azimut: {size}, innerhalb des ± am Pol: so lassen.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>The axis is {size} {where}: {turn}.</source>
   <translation>Die Achse steht {size} {where}: {turn}.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>The axis points {size} {where}: {turn}.</source>
   <translation>Die Achse zeigt {size} {where}: {turn}.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>The refracted pole, {lift:.1f}′ above the true one here: least drift for unguided exposures near the pole and high up.</source>
   <translation>Der gehobene Pol, hier {lift:.1f}′ über dem wahren: geringste Drift bei Belichtungen ohne Guiding nahe am Pol und hoch oben.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>The true pole: least field rotation, the usual choice when guiding.</source>
   <translation>Der wahre Pol: geringste Bildfelddrehung, beim Guiding die übliche Wahl.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>The {aim}, {above:.1f}′ above the true one: chosen for the target, whose drift and rotation together are least there.</source>
   <translation>{aim}, {above:.1f}′ über dem wahren Pol: für das Objekt gewählt, dessen Drift und Drehung zusammen dort am geringsten sind.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>at the pole within the ±</source>
   <translation>innerhalb des ± am Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>leave it</source>
   <translation>so lassen</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>not known yet</source>
   <translation>noch nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/alignment/aim.py" />
   <source>place a quarter of the way from the true to the refracted pole</source>
   <translation>Stelle auf einem Viertel des Weges vom wahren zum gehobenen Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/aim.py" />
   <source>place halfway between the true and the refracted pole</source>
   <translation>Stelle auf halbem Weg vom wahren zum gehobenen Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/aim.py" />
   <source>place three quarters of the way from the true to the refracted pole</source>
   <translation>Stelle auf drei Vierteln des Weges vom wahren zum gehobenen Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/aim.py" />
   <source>refracted pole</source>
   <translation>gehobener Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/aim.py" />
   <source>true pole</source>
   <translation>wahrer Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/aim.py" />
   <source>For this target it makes no difference which pole is aimed at: {size}.</source>
   <translation>Für dieses Objekt ist es gleich, auf welchen Pol ausgerichtet wird: {size}.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/aim.py" />
   <source>This target smears least with the axis {place}: {size}, against {true} on the true and {refracted} on the refracted pole.</source>
   <translation>Dieses Objekt verwischt am wenigsten mit der Achse {place}: um {size}, gegenüber {true} auf dem wahren und {refracted} auf dem gehobenen Pol.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/aim.py" />
   <source>on the refracted pole</source>
   <translation>auf dem gehobenen Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/aim.py" />
   <source>on the true pole</source>
   <translation>auf dem wahren Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/aim.py" />
   <source>{above:.1f}′ above the true pole</source>
   <translation>{above:.1f}′ über dem wahren Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/curve.py" />
   <source>Longest exposure at {focal_length:g} mm: {duration}; beyond, stars smear more than {limit}.</source>
   <translation>Längste Belichtung mit {focal_length:g} mm: {duration}; darüber verwischen Sterne um mehr als {limit}.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/curve.py" />
   <source>No exposure is short enough for this budget.</source>
   <translation>Für diesen Spielraum ist keine Belichtung kurz genug.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/curve.py" />
   <source>Smear sets no limit: it stays below {limit} for {duration}.</source>
   <translation>Die Verwischung setzt keine Grenze: Sie bleibt unter {limit}, {duration} lang.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/field.py" />
   <source>At declination {declination:g}° the target is never above {lowest:g}° for a whole exposure between hour angles {first:g}° and {last:g}°; choose other hours, or check the latitude.</source>
   <translation>Bei Deklination {declination:g}° steht das Objekt zwischen den Stundenwinkeln {first:g}° und {last:g}° nie eine ganze Belichtung lang über {lowest:g}°; wählen Sie andere Stunden oder prüfen Sie die Breite.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source> of the sidereal rate</source>
   <translation> × siderisch</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source> pixels</source>
   <translation> Pixel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The exposure</source>
   <translation>Die Belichtung</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The field is more than 60° across; check the focal length, the pixel size and the number of pixels.</source>
   <translation>Das Feld misst mehr als 60°; prüfen Sie Brennweite, Pixelgröße und Pixelzahl.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The first hour angle</source>
   <translation>Der erste Stundenwinkel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The focal length</source>
   <translation>Die Brennweite</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The guide star is given as {given:g}′ from the farthest corner; that corner is {corner:.1f}′ from the middle of the field, so the figure is at least that, and at most 60° more.</source>
   <translation>Der Leitstern ist mit {given:g}′ von der fernsten Ecke angegeben; diese Ecke ist {corner:.1f}′ von der Bildmitte entfernt, der Wert ist also mindestens so groß und höchstens 60° größer.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The height of the sensor</source>
   <translation>Die Höhe des Sensors</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The last hour angle</source>
   <translation>Der letzte Stundenwinkel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The last hour angle is before the first, or more than a day after it; give them in the order of time, east of the meridian negative.</source>
   <translation>Der letzte Stundenwinkel liegt vor dem ersten oder mehr als einen Tag danach; geben Sie beide in zeitlicher Folge an, östlich vom Meridian negativ.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The mount's tracking rate</source>
   <translation>Die Nachführgeschwindigkeit der Montierung</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The pixel size</source>
   <translation>Die Pixelgröße</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The smear allowed</source>
   <translation>Die erlaubte Verwischung</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The target's declination</source>
   <translation>Die Deklination des Objekts</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>The width of the sensor</source>
   <translation>Die Breite des Sensors</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/task.py" />
   <source>{what} is given as {value:g}{unit}; it lies between {low:g} and {high:g}{unit}.</source>
   <translation>{what} ist mit {value:g}{unit} angegeben; möglich ist {low:g} bis {high:g}{unit}.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/tolerance.py" />
   <source>For {exposures} even an axis exactly on the {place} is not enough: the air's refraction smears {smear} (budget {limit:g}). It takes {way}.</source>
   <translation>Für {exposures} genügt selbst eine genau stehende Achse nicht (Ausrichtung auf: {place}): Die Refraktion der Luft verwischt um {smear} (Spielraum {limit:g}). Es braucht {way}.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/tolerance.py" />
   <source>For {what} any axis within 10° of the {place} will do.</source>
   <translation>Für {what} genügt jede Achse, die höchstens 10° danebensteht (Ausrichtung auf: {place}).</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/tolerance.py" />
   <source>For {what} keep the axis within {tolerance} of the {place}: stars then smear less than {limit}.</source>
   <translation>Für {what} darf die Achse höchstens {tolerance} danebenstehen (Ausrichtung auf: {place}); Sterne verwischen dann um weniger als {limit}.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/tolerance.py" />
   <source>a shorter exposure</source>
   <translation>eine kürzere Belichtung</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/tolerance.py" />
   <source>a shorter exposure or guiding</source>
   <translation>eine kürzere Belichtung oder Guiding</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>Good enough for {what}: {smear} {size} (budget {limit:g}).</source>
   <translation>Gut genug für {what}: {smear} {size} (Spielraum {limit:g}).</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>Not clear yet for {what}: {smear} {span} (budget {limit:g}); watch longer.</source>
   <translation>Noch nicht klar für {what}: {smear} {span} (Spielraum {limit:g}); länger beobachten.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>Not good enough for {what}: {smear} {size} (budget {limit:g}); {blame}.</source>
   <translation>Nicht gut genug für {what}: {smear} {size} (Spielraum {limit:g}); {blame}.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>Smear cannot be told: the legs do not fix both errors of the axis yet.</source>
   <translation>Die Verwischung lässt sich nicht angeben: Die Etappen legen noch nicht beide Fehler der Achse fest.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>centre smear</source>
   <translation>Verwischung in der Mitte</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>corner smear</source>
   <translation>Verwischung in der Ecke</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>the air's refraction does most of it: expose shorter</source>
   <translation>das meiste davon macht die Refraktion der Luft: kürzer belichten</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>the air's refraction does most of it: expose shorter or guide</source>
   <translation>das meiste davon macht die Refraktion der Luft: kürzer belichten oder mit Guiding arbeiten</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>the altitude error does most of it</source>
   <translation>das meiste davon macht der Höhenfehler</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/verdict.py" />
   <source>the azimuth error does most of it</source>
   <translation>das meiste davon macht der Azimutfehler</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>1 pixel</source>
   <translation>1 Pixel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>between {low} and {high} of a pixel</source>
   <translation>zwischen {low} und {high} Pixel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>between {low} and {high} pixels</source>
   <translation>zwischen {low} und {high} Pixel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>less than 0.01 of a pixel</source>
   <translation>weniger als 0.01 Pixel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{length} exposures at {focal_length:g} mm</source>
   <translation>{length}Belichtungen mit {focal_length:g} mm</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{minutes:.0f} minutes</source>
   <translation>{minutes:.0f} Minuten</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{minutes:.1f} minutes</source>
   <translation>{minutes:.1f} Minuten</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{minutes:g}-minute</source>
   <translation>{minutes:g}-Minuten-</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{seconds:.0f} seconds</source>
   <translation>{seconds:.0f} Sekunden</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{seconds:.3g}-second</source>
   <translation>{seconds:.3g}-Sekunden-</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{size} of a pixel</source>
   <translation>{size} Pixel</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/words.py" />
   <source>{size} pixels</source>
   <translation>{size} Pixel</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>If the altitude were right, the axis would point {size} {side}.</source>
   <translation>Wäre die Höhe richtig, zeigte die Achse {size} {side}.</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>If the azimuth were right, the axis would be {size} {side}.</source>
   <translation>Wäre der Azimut richtig, stünde die Achse {size} {side}.</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>One star alone fixes only one combination of the two errors.</source>
   <translation>Ein einzelner Stern legt nur eine Verbindung der beiden Fehler fest.</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>To settle it, watch {star}.</source>
   <translation>Um sie zu trennen, beobachten Sie {star}.</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>a second star about {hours:.0f} hours east of the meridian (or {other_hours:.0f} hours west of it)</source>
   <translation>einen zweiten Stern etwa {hours:.0f} Stunden östlich vom Meridian (oder {other_hours:.0f} Stunden westlich davon)</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>a second star about {hours:.0f} hours west of the meridian (or {other_hours:.0f} hours east of it)</source>
   <translation>einen zweiten Stern etwa {hours:.0f} Stunden westlich vom Meridian (oder {other_hours:.0f} Stunden östlich davon)</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>a second star in the east or the west, about six hours from the meridian</source>
   <translation>einen zweiten Stern im Osten oder im Westen, etwa sechs Stunden vom Meridian</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>a second star near the meridian, not too close to the pole or the zenith</source>
   <translation>einen zweiten Stern nahe dem Meridian, nicht zu dicht am Pol oder am Zenit</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/body.py" />
   <source>Its quotation marks do not match.</source>
   <translation>Ihre Anführungszeichen passen nicht zusammen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/body.py" />
   <source>Leg “{label}” goes on here after leg “{other}”. If the bolts were turned in between, give the later readings a label of their own.</source>
   <translation>Etappe „{label}“ geht hier nach Etappe „{other}“ weiter. Falls dazwischen die Stellschrauben gedreht wurden, geben Sie den späteren Ablesungen einen eigenen Namen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/body.py" />
   <source>Times with an offset from UTC, like {text}, were converted.</source>
   <translation>Zeiten mit einem Abstand von UTC, wie {text}, wurden umgerechnet.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/body.py" />
   <source>{name} holds more than {most:,} readings, more than a night can give; split it into one file a night.</source>
   <translation>{name} enthält mehr als {most:,} Ablesungen, mehr, als eine Nacht geben kann; teilen Sie die Datei in eine je Nacht.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/body.py" />
   <source>{name} names more than {most} legs; does its leg column count lines? All readings of one star, without touching the bolts, share one label.</source>
   <translation>{name} nennt mehr als {most} Etappen; zählt die Spalte der Etappe die Zeilen? Alle Ablesungen eines Sterns, zwischen denen die Stellschrauben nicht berührt wurden, tragen einen gemeinsamen Namen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/columns.py" />
   <source>Line {line} lacks the column {missing}; it names {names}. The columns needed are {example}; rename yours if they mean the same, in the same units.</source>
   <translation>In Zeile {line} fehlt die Spalte {missing}; sie nennt {names}. Gebraucht werden die Spalten {example}; benennen Sie Ihre um, wenn sie dasselbe in denselben Einheiten bedeuten.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/columns.py" />
   <source>Line {line} names the column {name} twice; rename or remove one of them.</source>
   <translation>Zeile {line} nennt die Spalte {name} zweimal; benennen Sie eine um oder entfernen Sie eine.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/columns.py" />
   <source>Line {line} should name the columns ({example}) but reads {text}; is this a drift log? Put the column names above the readings.</source>
   <translation>Zeile {line} sollte die Spalten nennen ({example}), lautet aber {text}; ist das ein Driftprotokoll? Setzen Sie die Spaltennamen über die Ablesungen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/columns.py" />
   <source>{first} and {second}</source>
   <translation>{first} und {second}</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} could not be read ({problem}); is the drive still there?</source>
   <translation>{name} ließ sich nicht lesen ({problem}); ist das Laufwerk noch da?</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} could not be read as text ({problem}); save it as CSV in UTF-8.</source>
   <translation>{name} ließ sich nicht als Text lesen ({problem}); als CSV in UTF-8 speichern.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} does not exist; was it moved or renamed?</source>
   <translation>{name} gibt es nicht; wurde die Datei verschoben oder umbenannt?</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} has {size:,.0f} MB; a drift log of the longest night has less than {most:.0f} MB. Choose another file, or split it into one a night.</source>
   <translation>{name} hat {size:,.0f} MB; ein Driftprotokoll der längsten Nacht hat weniger als {most:.0f} MB. Wählen Sie eine andere Datei oder teilen Sie diese in eine je Nacht.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} is a binary file, not text; choose a CSV file in UTF-8.</source>
   <translation>{name} ist eine Binärdatei, kein Text; wählen Sie eine CSV-Datei in UTF-8.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} is a workbook or an archive; export the sheet as CSV.</source>
   <translation>{name} ist eine Arbeitsmappe oder ein Archiv; geben Sie das Blatt als CSV aus.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} is empty; choose another file.</source>
   <translation>{name} ist leer; wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} is not a file that can be read as a log; choose a CSV file.</source>
   <translation>{name} ist keine Datei, die sich als Protokoll lesen lässt; wählen Sie eine CSV-Datei.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} is not text in UTF-8; choose a CSV file, or save it as UTF-8.</source>
   <translation>{name} ist kein Text in UTF-8; wählen Sie eine CSV-Datei oder speichern Sie diese in UTF-8.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/files.py" />
   <source>{name} may not be read; change its permissions or copy it elsewhere.</source>
   <translation>{name} darf nicht gelesen werden; ändern Sie die Rechte oder kopieren Sie die Datei anderswohin.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/gather.py" />
   <source>It is the only usable reading of leg “{label}”; a drift needs at least two, and minutes between them.</source>
   <translation>Es ist die einzige brauchbare Ablesung der Etappe „{label}“; eine Drift braucht wenigstens zwei, mit Minuten dazwischen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/gather.py" />
   <source>Its time is that of line {twin}; a leg has one reading at a time.</source>
   <translation>Sie hat die Zeit von Zeile {twin}; eine Etappe hat nur eine Ablesung zu einer Zeit.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/gather.py" />
   <source>Its time {time} is out of order among the neighbouring lines of leg “{label}”; did the clock jump?</source>
   <translation>Ihre Zeit {time} passt nicht in die Folge der Nachbarzeilen von Etappe „{label}“; ist die Uhr gesprungen?</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/gather.py" />
   <source>Leg “{label}” began on the star at {ra:.4f}, {dec:.4f} but this line names one at {other_ra:.4f}, {other_dec:.4f}; give each star a leg of its own.</source>
   <translation>Etappe „{label}“ begann mit dem Stern bei {ra:.4f}, {dec:.4f}, aber diese Zeile nennt einen bei {other_ra:.4f}, {other_dec:.4f}; geben Sie jedem Stern eine eigene Etappe.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/gather.py" />
   <source>The times of leg “{label}” run backwards; put its lines in order of time, earliest first.</source>
   <translation>Die Zeiten der Etappe „{label}“ laufen rückwärts; bringen Sie die Zeilen in zeitliche Folge, die früheste zuerst.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/gather.py" />
   <source>sigma_arcsec is empty here though other readings of leg “{label}” state it; the stated errors of this leg are not used. State all of them or none.</source>
   <translation>sigma_arcsec ist hier leer, obwohl andere Ablesungen der Etappe „{label}“ es angeben; die angegebenen Fehler dieser Etappe werden nicht benutzt. Geben Sie alle an oder keinen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>There are too many remarks to keep.</source>
   <translation>Es sind zu viele Bemerkungen, um sie zu behalten.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>degrees Celsius</source>
   <translation>Grad Celsius</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>degrees, east positive</source>
   <translation>Grad, Ost positiv</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>degrees, north positive</source>
   <translation>Grad, Nord positiv</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>hectopascals</source>
   <translation>Hektopascal</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>latitude_deg {value:g} is beyond ±90; longitude_deg {longitude:g} would fit a latitude, so the two may be swapped: exchange or correct them.</source>
   <translation>latitude_deg {value:g} liegt jenseits von ±90; longitude_deg {longitude:g} würde als Breite passen, also sind beide vielleicht vertauscht: tauschen oder berichtigen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>metres</source>
   <translation>Meter</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>{name} has no unit; write “# {key}: …” if that is meant.</source>
   <translation>{name} hat keine Einheit; schreiben Sie „# {key}: …“, wenn das gemeint ist.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>{name} was already {first:g} in line {line}; {value:g} is left out. Split the log if the place or the air changed.</source>
   <translation>{name} war schon {first:g} in Zeile {line}; {value:g} wird ausgelassen. Teilen Sie das Protokoll, wenn sich Ort oder Luft geändert haben.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>{name} {problem}</source>
   <translation>{name} {problem}</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>{name} {text} must be in decimal degrees: {value:.5f}.</source>
   <translation>{name} {text} muss in Dezimalgrad stehen: {value:.5f}.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/headlines.py" />
   <source>{name} {value:g} is outside {low:g} to {high:g} ({unit}); correct it.</source>
   <translation>{name} {value:g} liegt nicht zwischen {low:g} und {high:g} ({unit}); bitte berichtigen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/numerals.py" />
   <source>is empty.</source>
   <translation>ist leer.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/numerals.py" />
   <source>{text} is not a finite number; leave such readings out.</source>
   <translation>{text} ist keine endliche Zahl; lassen Sie solche Ablesungen weg.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/numerals.py" />
   <source>{text} is not a number.</source>
   <translation>{text} ist keine Zahl.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/numerals.py" />
   <source>{text} is not a number; with a decimal comma separate the columns by “;”.</source>
   <translation>{text} ist keine Zahl; bei Dezimalkomma die Spalten mit „;“ trennen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/numerals.py" />
   <source>{text} mixes commas and points; write it without thousands.</source>
   <translation>{text} mischt Kommas und Punkte; schreiben Sie die Zahl ohne Tausenderzeichen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/numerals.py" />
   <source>“{text}”</source>
   <translation>„{text}“</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>It begins with # like a remark though it looks like a reading; put the label of the leg in quotation marks if it is meant.</source>
   <translation>Sie beginnt mit # wie eine Bemerkung, sieht aber wie eine Ablesung aus; setzen Sie den Namen der Etappe in Anführungszeichen, wenn er gemeint ist.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>It holds NUL bytes, as a power cut leaves them.</source>
   <translation>Sie enthält NUL-Bytes, wie ein Stromausfall sie hinterlässt.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>It is longer than {most} characters.</source>
   <translation>Sie ist länger als {most} Zeichen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>It is not UTF-8 text; save the file as UTF-8.</source>
   <translation>Sie ist kein Text in UTF-8; speichern Sie die Datei in UTF-8.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>Reading {name} was stopped at line {line}.</source>
   <translation>Das Lesen von {name} wurde in Zeile {line} angehalten.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>The log</source>
   <translation>Das Protokoll</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>line {line} was rejected</source>
   <translation>Zeile {line} wurde verworfen</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>{count} lines were rejected, the first of them line {line}</source>
   <translation>{count} Zeilen wurden verworfen, als erste Zeile {line}</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>{name} cannot be read. {problem}</source>
   <translation>{name} lässt sich nicht lesen. {problem}</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>{name} has no usable leg: {how_many}. {reason}</source>
   <translation>{name} hat keine brauchbare Etappe: {how_many}. {reason}</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>{name} holds no readings; choose a drift log ({example}).</source>
   <translation>{name} enthält keine Ablesungen; wählen Sie ein Driftprotokoll ({example}).</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/reader.py" />
   <source>{name} names its columns but holds no readings below them.</source>
   <translation>{name} nennt seine Spalten, enthält darunter aber keine Ablesungen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>It has {count} fields for {columns} column names (with a decimal comma separate the columns by “;”).</source>
   <translation>Sie hat {count} Felder für {columns} Spaltennamen (bei Dezimalkomma die Spalten mit „;“ trennen).</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>It has {count} fields for {columns} column names.</source>
   <translation>Sie hat {count} Felder für {columns} Spaltennamen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>The leg is empty; give every reading the label of its leg.</source>
   <translation>Die Etappe ist leer; geben Sie jeder Ablesung den Namen ihrer Etappe.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>ra_deg {text} looks like hours, minutes and seconds; the column is in decimal degrees, where that is {degrees:.5f}.</source>
   <translation>ra_deg {text} sieht nach Stunden, Minuten und Sekunden aus; die Spalte steht in Dezimalgrad, das wären {degrees:.5f}.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>sigma_arcsec {sigma:g} is not above zero; leave it empty if unknown.</source>
   <translation>sigma_arcsec {sigma:g} ist nicht größer als null; leer lassen, wenn unbekannt.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>utc is empty.</source>
   <translation>utc ist leer.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>utc {text} is not a date and time; write UTC like 2026-11-24T20:15:30Z.</source>
   <translation>utc {text} ist kein Datum mit Uhrzeit; schreiben Sie UTC wie 2026-11-24T20:15:30Z.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>utc {text} is not within the years 1960 to 2199.</source>
   <translation>utc {text} liegt nicht in den Jahren 1960 bis 2199.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>{name} {value:g} is more than half the sky; it must be in arcseconds.</source>
   <translation>{name} {value:g} ist mehr als der halbe Himmel; der Wert muss in Bogensekunden stehen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/rows.py" />
   <source>{name} {value:g} is outside {low:g} to {high:g} degrees.</source>
   <translation>{name} {value:g} liegt nicht zwischen {low:g} und {high:g} Grad.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/writer.py" />
   <source>The legs were not written: each needs a label of its own.</source>
   <translation>Die Etappen wurden nicht geschrieben: Jede braucht einen eigenen Namen.</translation>
  </message>
  <message>
   <location filename="core/alignment/forecast.py" />
   <source>About a minute more on this star brings the ± to {target:g}′.</source>
   <translation>Noch etwa eine Minute an diesem Stern bringt das ± auf {target:g}′.</translation>
  </message>
  <message>
   <location filename="core/alignment/forecast.py" />
   <source>About {minutes:.0f} more minutes on this star bring the ± to {target:g}′.</source>
   <translation>Noch etwa {minutes:.0f} Minuten an diesem Stern bringen das ± auf {target:g}′.</translation>
  </message>
  <message>
   <location filename="core/alignment/forecast.py" />
   <source>The ± is within {target:g}′: enough watched.</source>
   <translation>Das ± liegt innerhalb von {target:g}′: genug beobachtet.</translation>
  </message>
  <message>
   <location filename="core/alignment/forecast.py" />
   <source>This star alone will not bring the ± down: end this leg and watch {star}.</source>
   <translation>Dieser Stern allein bringt das ± nicht herunter: Beenden Sie diese Etappe und beobachten Sie {star}.</translation>
  </message>
  <message>
   <location filename="core/alignment/forecast.py" />
   <source>Watch on: the ± is not yet within {target:g}′.</source>
   <translation>Weiter beobachten: Das ± liegt noch nicht innerhalb von {target:g}′.</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>Check that the times are UTC and not local time, the place (longitude counts east), and the star.</source>
   <translation>Prüfen Sie, ob die Zeiten UTC sind und nicht Ortszeit, dazu den Ort (Länge nach Osten gezählt) und den Stern.</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>Leg “{label}” ends {ahead} in the future. Either local time was taken for UTC, or the clock of this computer or of the one that wrote the log is wrong.</source>
   <translation>Etappe „{label}“ endet {ahead} in der Zukunft. Entweder wurde Ortszeit für UTC genommen, oder die Uhr dieses Computers oder jenes, der das Protokoll schrieb, geht falsch.</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>Perhaps local time was taken for UTC: by a clock at UTC{hours:+d} it stood {altitude:.0f}° high. If so, write the times with their offset, like 20:15:30{hours:+03d}:00.</source>
   <translation>Vielleicht wurde Ortszeit für UTC genommen: Nach einer Uhr mit UTC{hours:+d} stand er {altitude:.0f}° hoch. Dann schreiben Sie die Zeiten mit ihrem Abstand von UTC, wie 20:15:30{hours:+03d}:00.</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>The pressure of {pressure:.0f} hPa does not fit {elevation:.0f} m, where about {usual:.0f} hPa is usual. It must be the pressure at the place, not that reduced to sea level which weather reports give.</source>
   <translation>Der Druck von {pressure:.0f} hPa passt nicht zu {elevation:.0f} m, wo etwa {usual:.0f} hPa üblich sind. Es muss der Druck am Ort sein, nicht der auf Meereshöhe umgerechnete der Wetterberichte.</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>The star of leg “{label}” was {depth:.0f}° below the horizon at {time}. {cause}</source>
   <translation>Der Stern der Etappe „{label}“ stand um {time} {depth:.0f}° unter dem Horizont. {cause}</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>{days:.0f} days</source>
   <translation>{days:.0f} Tage</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>{hours:.1f} hours</source>
   <translation>{hours:.1f} Stunden</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>Choose a star</source>
   <translation>Stern wählen</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>Find north in the field</source>
   <translation>Norden im Feld finden</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>Good enough</source>
   <translation>Gut genug</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>Turn the bolts</source>
   <translation>Stellschrauben drehen</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>Watch it drift</source>
   <translation>Drift beobachten</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>a star is in view</source>
   <translation>ein Stern ist im Blick</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>look again</source>
   <translation>noch einmal hinsehen</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>north is in doubt</source>
   <translation>Norden ist zweifelhaft</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>north is known</source>
   <translation>Norden ist bekannt</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>the bolts were turned</source>
   <translation>die Stellschrauben wurden gedreht</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>the star is lost</source>
   <translation>der Stern ist verloren</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>the tripod was moved</source>
   <translation>das Stativ wurde bewegt</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>this star has told enough</source>
   <translation>dieser Stern hat genug gesagt</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>turning helps more than watching</source>
   <translation>Drehen hilft mehr als Beobachten</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>within the target</source>
   <translation>innerhalb des Ziels</translation>
  </message>
  <message>
   <location filename="core/alignment/procedure.py" />
   <source>“{event}” has no place at “{stage}”; possible now: {events}.</source>
   <translation>„{event}“ passt nicht zu „{stage}“; jetzt möglich: {events}.</translation>
  </message>
  <message>
   <location filename="core/alignment/sight.py" />
   <source>No axis shows the star at that place. Check the clock position, the distance and which way round the sight shows the sky.</source>
   <translation>Keine Achse zeigt den Stern an dieser Stelle. Prüfen Sie die Stelle auf der Uhr, den Abstand und wie herum das Visier den Himmel zeigt.</translation>
  </message>
  <message>
   <location filename="core/alignment/sight.py" />
   <source>erect</source>
   <translation>aufrecht</translation>
  </message>
  <message>
   <location filename="core/alignment/sight.py" />
   <source>inverted</source>
   <translation>umgekehrt</translation>
  </message>
  <message>
   <location filename="core/alignment/sight.py" />
   <source>mirrored</source>
   <translation>gespiegelt</translation>
  </message>
  <message>
   <location filename="core/alignment/sight.py" />
   <source>“{text}” is no place on a clock face; write it like 10:20 or 3:05.</source>
   <translation>„{text}“ ist keine Stelle auf einem Zifferblatt; schreiben Sie sie wie 10:20 oder 3:05.</translation>
  </message>
  <message>
   <location filename="core/alignment/sighting.py" />
   <source>So near the Earth's pole the axis is almost upright: azimuth hardly moves it, and a small slip in the sight makes a large azimuth error. Trust the angle on the sky.</source>
   <translation>So nahe am Pol der Erde steht die Achse fast senkrecht: Der Azimut bewegt sie kaum, und ein kleines Versehen im Visier macht einen großen Azimutfehler. Verlassen Sie sich auf den Winkel am Himmel.</translation>
  </message>
  <message>
   <location filename="core/alignment/sighting.py" />
   <source>So near the equator the pole is on the horizon: haze, obstacles and refraction that changes by arcminutes make its star a poor mark. Watch stars drift instead.</source>
   <translation>So nahe am Äquator liegt der Pol am Horizont: Dunst, Hindernisse und eine um Bogenminuten schwankende Refraktion machen seinen Stern zu einer schlechten Marke. Beobachten Sie lieber die Drift von Sternen.</translation>
  </message>
  <message>
   <location filename="core/alignment/sighting.py" />
   <source>Within half a degree of the Earth's pole the axis points to the zenith and has no azimuth. Set it upright with a spirit level, then watch stars drift.</source>
   <translation>Weniger als ein halbes Grad vom Pol der Erde zeigt die Achse zum Zenit und hat keinen Azimut. Stellen Sie sie mit der Wasserwaage senkrecht und beobachten Sie dann die Drift von Sternen.</translation>
  </message>
  <message>
   <location filename="core/alignment/solution.py" />
   <source>The axis is not where the last turn of the bolts should have brought it (turned the other way, or the tripod was moved?); what was measured before the turn is no longer used.</source>
   <translation>Die Achse ist nicht dort, wohin die letzte Drehung der Stellschrauben sie hätte bringen sollen (andersherum gedreht, oder wurde das Stativ bewegt?); was vor der Drehung gemessen wurde, wird nicht mehr benutzt.</translation>
  </message>
  <message>
   <location filename="core/alignment/starchoice.py" />
   <source>shows a mixture of both</source>
   <translation>zeigt eine Mischung aus beiden</translation>
  </message>
  <message>
   <location filename="core/alignment/starchoice.py" />
   <source>shows altitude</source>
   <translation>zeigt die Höhe</translation>
  </message>
  <message>
   <location filename="core/alignment/starchoice.py" />
   <source>shows azimuth</source>
   <translation>zeigt den Azimut</translation>
  </message>
  <message>
   <location filename="core/alignment/steering.py" />
   <source>This star hardly moves when one of the bolts is turned, so it cannot show how far they went; take a star lower in the sky, or say how far you turned.</source>
   <translation>Dieser Stern bewegt sich kaum, wenn eine der Stellschrauben gedreht wird, er kann also nicht zeigen, wie weit sie gedreht wurden; nehmen Sie einen tiefer stehenden Stern oder sagen Sie, wie weit Sie gedreht haben.</translation>
  </message>
  <message>
   <location filename="core/alignment/suggestions.py" />
   <source>low in the east</source>
   <translation>tief im Osten</translation>
  </message>
  <message>
   <location filename="core/alignment/suggestions.py" />
   <source>low in the west</source>
   <translation>tief im Westen</translation>
  </message>
  <message>
   <location filename="core/alignment/suggestions.py" />
   <source>near the meridian</source>
   <translation>nahe dem Meridian</translation>
  </message>
  <message>
   <location filename="core/alignment/usable.py" />
   <source>Leg “{label}” is left out: {reason}</source>
   <translation>Etappe „{label}“ wird ausgelassen: {reason}</translation>
  </message>
  <message>
   <location filename="core/alignment/usable.py" />
   <source>There is no leg yet: watch a star, or import a drift log.</source>
   <translation>Es gibt noch keine Etappe: Beobachten Sie einen Stern oder lesen Sie ein Driftprotokoll ein.</translation>
  </message>
  <message>
   <location filename="core/alignment/usable.py" />
   <source>a reading or a time in it is not a number.</source>
   <translation>eine Ablesung oder eine Zeit darin ist keine Zahl.</translation>
  </message>
  <message>
   <location filename="core/alignment/usable.py" />
   <source>it has a single reading; a drift needs at least two, some minutes apart.</source>
   <translation>sie hat nur eine Ablesung; eine Drift braucht wenigstens zwei im Abstand von einigen Minuten.</translation>
  </message>
  <message>
   <location filename="core/alignment/usable.py" />
   <source>it has {number} readings and no reading error; take at least {fewest} readings, or state how well you can read the offset.</source>
   <translation>sie hat {number} Ablesungen und keinen Ablesefehler; nehmen Sie wenigstens {fewest} Ablesungen oder geben Sie an, wie genau Sie die Abweichung ablesen können.</translation>
  </message>
  <message>
   <location filename="core/alignment/usable.py" />
   <source>it lasts under {seconds:.0f} seconds; watch the star for some minutes.</source>
   <translation>sie dauert unter {seconds:.0f} Sekunden; beobachten Sie den Stern einige Minuten lang.</translation>
  </message>
  <message>
   <location filename="core/alignment/usable.py" />
   <source>its times run backwards; was the clock set while it was watched?</source>
   <translation>ihre Zeiten laufen rückwärts; wurde währenddessen die Uhr gestellt?</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>At latitude {latitude:.1f}° the axis is nearly upright: azimuth error hardly shows and hardly matters; level the mount and trust the altitude error.</source>
   <translation>Bei {latitude:.1f}° Breite steht die Achse fast senkrecht: Ein Azimutfehler zeigt sich kaum und schadet kaum; stellen Sie die Montierung waagrecht und verlassen Sie sich auf den Höhenfehler.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>At latitude {latitude:.1f}° the pole lies near the horizon, where refraction is large and uncertain; the altitude error, measured from stars high up, holds, but the refracted pole is only known to some minutes of arc.</source>
   <translation>Bei {latitude:.1f}° Breite liegt der Pol nahe am Horizont, wo die Refraktion groß und unsicher ist; der Höhenfehler, an hoch stehenden Sternen gemessen, stimmt, aber der gehobene Pol ist nur auf einige Bogenminuten bekannt.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>Leg “{label}” bends in a way this star should not at that time: check star, time (UTC?) and site; if they are right, something in the mount or telescope is yielding.</source>
   <translation>Etappe „{label}“ krümmt sich, wie dieser Stern es zu dieser Zeit nicht sollte: Prüfen Sie Stern, Zeit (UTC?) und Standort; wenn sie stimmen, gibt etwas an Montierung oder Teleskop nach.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>Leg “{label}” jumped {size:.1f}″ {way} after {after:.1f} min (a bump?). Both sides are used; if the tripod moved, start anew.</source>
   <translation>Etappe „{label}“ sprang nach {after:.1f} min um {size:.1f}″ nach {way} (ein Stoß?). Beide Seiten werden benutzt; wenn das Stativ bewegt wurde, fangen Sie neu an.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>Refraction is switched off (no air pressure).</source>
   <translation>Die Refraktion ist abgeschaltet (kein Luftdruck).</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>The star of leg “{label}” is {distance:.0f}° from a pole of the sky; one nearer the equator is easier to keep in the field.</source>
   <translation>Der Stern der Etappe „{label}“ steht {distance:.0f}° von einem Himmelspol; einer näher am Äquator ist leichter im Feld zu halten.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>The star of leg “{label}” stood only {altitude:.0f}° high, where the air is unsteady and refraction uncertain; one above 20° is better.</source>
   <translation>Der Stern der Etappe „{label}“ stand nur {altitude:.0f}° hoch, wo die Luft unruhig und die Refraktion unsicher ist; einer über 20° ist besser.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>The star of leg “{label}” was {depth:.0f}° below the horizon at the stated time. Was local time taken for UTC, or are latitude and longitude wrong?</source>
   <translation>Der Stern der Etappe „{label}“ stand zur angegebenen Zeit {depth:.0f}° unter dem Horizont. Wurde Ortszeit für UTC genommen, oder sind Breite und Länge falsch?</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>The stars stand at similar hour angles ({hours}), so azimuth and altitude error are hard to tell apart: add one near the meridian or one six hours from it, whichever is missing.</source>
   <translation>Die Sterne stehen bei ähnlichen Stundenwinkeln ({hours}), deshalb lassen sich Azimut- und Höhenfehler schwer trennen: Nehmen Sie einen nahe dem Meridian oder einen sechs Stunden davon hinzu, je nachdem, welcher fehlt.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>north</source>
   <translation>Norden</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>south</source>
   <translation>Süden</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>{aside} of {count} readings of leg “{label}” stand far from their neighbours (a gust, a touch?) and are set aside.</source>
   <translation>{aside} von {count} Ablesungen der Etappe „{label}“ liegen weit von ihren Nachbarn (ein Windstoß, eine Berührung?) und bleiben beiseite.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>{hours:.1f} h east</source>
   <translation>{hours:.1f} h östlich</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>{hours:.1f} h west</source>
   <translation>{hours:.1f} h westlich</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>east of the pole</source>
   <translation>östlich vom Pol</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>lower it</source>
   <translation>absenken</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>raise it</source>
   <translation>anheben</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>too high</source>
   <translation>zu hoch</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>too low</source>
   <translation>zu tief</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>turn it east</source>
   <translation>nach Osten drehen</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>turn it west</source>
   <translation>nach Westen drehen</translation>
  </message>
  <message>
   <location filename="core/alignment/words.py" />
   <source>west of the pole</source>
   <translation>westlich vom Pol</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>A counterweight is needed: between {least:.1f} and {most:.1f} kg fits on this bar.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>At the end of the bar {weight:g} kg is still too light: use at least {least:.1f} kg in all, or a bar {longer:.0f} mm longer of the same make.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>Even at the inner end of the bar {weight:g} kg is too heavy: use at most {most:.1f} kg.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>It balances with the middle of the {weight:g} kg {place:.0f} mm from the polar axis, {end:.0f} mm from the end of the bar.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>No counterweight is needed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>No counterweight is needed; the bar alone outweighs the load by {torque:.1f} N m: take the bar off, or use a lighter one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>The bar alone holds the load: take the counterweight off.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>The counterweight cannot be placed without {missing}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar's beginning of “{mount}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar's length of “{mount}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar's mass of “{mount}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the counterweight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the mass of “{name}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>“{mount}” is {kind}: it has no counterweight bar to balance.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source> and </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>It is level with “{name}”.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>It would be in if {changes}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>It would draw level with “{name}” {change}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>No single figure would bring it level with “{name}”.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>Nothing here speaks for “{name}” against it; no weights would change that.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>Out for {purpose}: {reasons}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>There is nothing to compare it with.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>To judge it, {tasks}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>any</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>as good as the others'</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>but {reasons}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if it had error training</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if it had goto</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if it has error training, not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if its {criterion} were {figure}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if its {criterion}, which is not known, were {figure}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>not judged: {qualities}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>strong in {qualities}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>weak in {qualities}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>{mark:.1f} of 5</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>{total:.2f} of 1 for {purpose}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>“{name}” could pass it once its {qualities} is known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>“{name}” would draw level if {criterion} counted {weight:.3g} instead of {present:g}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>A piece of equipment has no name; give it one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>Dobsonian</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>German equatorial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The altitude bolt</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The aperture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The apparent field</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The azimuth bolt</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The bar's beginning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The bar's length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The bar's mass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The capacity's distance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The dovetail's length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The drive speed limit</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The ease of use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The guide focal length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The head's imbalance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The height above the saddle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The listed capacity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The mass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The outer diameter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The own weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The periodic error</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The pointing accuracy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The position along the tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The saddle's distance</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The saddle's length</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The thickness along the bar</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The way past the meridian</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The worm period</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>deep-sky imaging</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>fork on a wedge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>observing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>planetary</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>′/turn</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>A set is not a group of fields in braces.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>An entry is not a group of fields in braces.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>An entry without a name</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>a text</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>a whole number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>should be a list of texts in brackets</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>should be one of {choices}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>should be {what}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>true or false</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>{label} of {thing} {reason}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>{thing} does not say what it is; “what” is one of {kinds}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>{thing} has no “{field}”.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>Entry {number} of “{name}” is left out: {reason}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The equipment file cannot be read: {reason}. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The equipment file does not say its version. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The equipment file is of version {version}; this program reads version {known_version}. Read it with the newer program, or export it there in the older form.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The file does not begin as an equipment file (“format”: “{form}”). Choose one that was exported here. Nothing was changed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The file has parts not known here, kept: {parts}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The file has {megabytes:.0f} MB; equipment files are far smaller. Choose the file that was exported here.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The set “{name}” names things not there: {missing}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>it holds a number too long to read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>it is nested too deeply</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>it is not text, or holds broken characters</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>line {line} is not JSON ({fault})</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>{name} is not a number that can be used</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>{number} is too large a number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” has fields this program does not know, kept as they are: {fields}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” has the key {key}, which is taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” in the equipment file is not a list; nothing was read.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” stands twice in one group</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Example: balcony alt-azimuth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Example: hill equatorial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Example: meadow equatorial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Invented; no real product.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: 100 mm refractor</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: 5 kg weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: camera</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: guide telescope</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: imaging on the meadow</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: second tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: small computer</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/eyepiece.py" />
   <source>The eyepiece is between {low:.1f} m and {high:.1f} m above the ground, in reach all the time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/eyepiece.py" />
   <source>The eyepiece is between {low:.1f} m and {high:.1f} m above the ground; for {percent:.0f} % of the time it is under the tube, too high or too low. Turn the tube in its rings before you begin, and recheck its balance; climb on nothing that does not stand firmly.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>A fork carries the tube between its arms and passes the meridian without changing sides: no flip. Near the pole see that the camera clears the base of the fork.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>A meridian limit lies between −90° and 90° of hour angle; correct it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>An alt-azimuth mount turns about the vertical and passes the meridian like any other direction: no flip. Watch for cables winding up over the night, and for the zone about the zenith that it cannot follow.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>An exposure must be longer than nothing; correct its seconds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>Before the night turn the mount to both sides by hand, power off and clutches loose, and see that every cable reaches without being pulled or caught.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>Do not trust a limit you have not tried: it depends on this tube, this camera and this dew shield.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>Stand by at the first flip of every new set-up, with a hand on the stop: the tube, the camera or the counterweight can strike the pier or a tripod leg, and fingers can be caught.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The mount has to stop before the meridian and the session ends before it may flip: no flip, and less time. Keep the tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The mount would stop {stop:g}° past the meridian but flip only from {flip:g}° on: it could never flip. Correct one of the two.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The session ends before it begins; exchange or correct its times.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The session ends before the mount reaches its limit at the meridian: no flip. Keep the tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target crosses the meridian above and below the pole: {count} flips. Begin with the tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target crosses the meridian below the pole: one flip. Begin with the tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target crosses the meridian: one flip. Begin with the tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target does not cross the meridian in this session: no flip. Keep the tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target is past the meridian already: no flip. Begin with the tube {side}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Cameras and other parts off first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Counterweight off last; hold it while you take out the toe stop.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Counterweight on first, near the end of the bar, its screw tight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Follow the maker's manual and your local safety rules first; this is only a reminder.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Keep fingers, hair and cables away from the gap between weight, tripod and tube.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Let two people lift what one cannot hold easily.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Lift with bent knees, close to the body; carry heavy parts one by one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Lock both axes, the bar pointing down.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Loosen a saddle or weight only with its axis locked and the load held.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Loosen one axis at a time, with a hand on the tube: it may swing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Put the toe stop in at the end of the bar before you let go: it keeps a loose weight off your feet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Stand the tripod firm and level, legs locked; on ice, sand or in the dark take more care.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Telescope off before the counterweight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Then cameras and the rest; tie cables so that nothing can pull.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Then the telescope; keep a hand on it until the saddle's screws are tight and tested.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Wear closed shoes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/inventory.py" />
   <source>A set of equipment has no name; give it one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/inventory.py" />
   <source>The set “{name}” names “{part}” twice; enter a second piece of the same kind as a piece of its own.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/inventory.py" />
   <source>“{name}” and “{other}” have the same key, {key}; each needs its own.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the distance from the polar axis to the saddle of “{mount}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the head itself</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the height above the saddle of “{name}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the position along the tube of “{name}”</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/meridian.py" />
   <source>east of the pier, looking west</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/meridian.py" />
   <source>west of the pier, looking east</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>enter its price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out the listed capacity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out the load it is to carry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out whether it has one</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out whether it is driven</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it cost {limit:g} or less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it had an autoguider port</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it has neither drive nor goto</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it has no autoguider port</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it is {kind}, and the field turns during exposures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it stood on a wedge, or {purpose} did not have to be equatorial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it were driven</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it were listed for {load:g} kg, or the load were {capacity:g} kg or less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>its price is not entered</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>its price of {price:g} is above {limit:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>the listed capacity is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>the load it is to carry is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>whether it has an autoguider port is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>whether it is driven is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>{load:g} kg is more than the {capacity:g} kg it is listed to carry</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The binning is given as {binning}; it is 1 or more.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The focal length of “{name}” is not entered; see its data sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The number of pixels across of “{name}” is not entered; see its data sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The number of pixels down of “{name}” is not entered; see its data sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The pixel size of “{name}” is not entered; see its data sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The reducer or Barlow factor is given as {factor:g}; it lies between 0.05 and 20, and is 1 without either.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>Nothing is on the mount yet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>Overloaded, the clutches or worm may slip, the tube may swing down on you, a screw or the tripod may give way and everything may fall. Do not use it so: take parts off.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The load against the capacity: the data sheet's figure is missing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The load is at least {mass:.1f} kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The load is {mass:.1f} kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The moment about the axes: it is judged for German equatorial mounts only.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The moment about the polar axis: missing {unknown}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The moment against the mount's: the data sheet does not say at what distance from the axis the capacity holds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The part of the capacity used for {purpose} is given as {percent:g} %; it lies between 5 and 100 %.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The whole load: no mass is entered for {unweighed}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>Wind, and how stiff tripod and saddle are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: above {practice}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: more than “{mount}” is listed to carry at this distance from the axis.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: more than “{mount}” is listed to carry.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: within {practice}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}; it cannot be judged without the mass of {names}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}; the listed capacity of “{mount}” is not known: see its data sheet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:.0f} % of the {capacity:g} kg listed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:g} % of the listed capacity (common practice, no source)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:g} % of the listed capacity (our suggestion, no source)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:g} % of the listed capacity (your own figure)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>correct it, or leave it empty if it is not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is given as {value:g}{unit}; it is above zero: {advice}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is given as {value:g}{unit}; it lies between {low:g} and {high:g}{unit}: {advice}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is not a number; it is above zero: {advice}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is not a number; it lies between {low:g} and {high:g}{unit}: {advice}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>Do not take the planet {body} for it, {apart:.0f}° away ({way}).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>No brighter star stands within three fists of it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>above</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>almost overhead, {altitude:.0f}° high towards the {direction}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>below</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>lower left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>lower right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>upper left</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>upper right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{altitude:.0f}° high in the {direction}, one fist at arm's length above the horizon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{altitude:.0f}° high in the {direction}, {fists} fists at arm's length above the horizon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}, in {constellation}: {where}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}, the nearest brighter star near it, stands {apart:.0f}° away ({way} as you face it).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}, the only brighter star near it, stands {apart:.0f}° away ({way} as you face it).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}: {where}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>A derotator with {range:.0f}° between its stops cannot be used: it needs at least 180°, and a speed above zero. Correct its limits.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>The field turns through {turn:.0f}° on this track; the derotator manages it from {start:.0f}° in one go.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>The field turns through {turn:.0f}° on this track; {troubles}. Stop the exposure for that time.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>it must be turned back by half a turn once</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>it must be turned back by half a turn {times} times</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>near the zenith the field turns at up to {speed:.2f}° a second, faster than it can, for {minutes:.0f} min</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationexposure.py" />
   <source>The frame and the smear allowed in it must be larger than nothing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationexposure.py" />
   <source>The whole time and the exposure must be longer than nothing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationtrack.py" />
   <source>A track needs moments in rising order.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/rotationzenith.py" />
   <source>A drive limit of {limit:g}° a second is slower than the stars turn (0.0042° a second); such a mount cannot follow anywhere. Correct the limit.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>A guide pixel of {scale:.2f}″ is {ratio:.1f} image pixels; guiding can tell about {resolution:.2g} of a pixel: {advice} (up to {most:g} is common practice, no source).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The binning</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The guide scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The image scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The seeing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The sensor's height</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The sensor's width</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>a fitting sampling</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>coarse: detail the sky allows is lost, guiding and alignment are forgiving</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>fine enough</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>fine: no more detail, and guiding and alignment must be better for it; binning helps</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>too coarse: use a guide focal length at least {times:.1f} times as long</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>{seeing:g}″ seeing covers {across:.1f} pixels of {scale:.2f}″: {said} ({fewest:g} to {most:g} is common practice, no source).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>{what} is given as {value:g}; it is above zero: correct it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>by hand</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>driven</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>driven, goto not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>goto</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>no</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>no goto, drive not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>not known</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>yes</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>{mark:g} of 5</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/seenfield.py" />
   <source>Taken to be {across:g}′ across, a small field (common practice, no source): type what you see, or choose telescope and camera on the Mount page.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/seenfield.py" />
   <source>{across:.3g}′ across, as you typed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/seenfield.py" />
   <source>{across:.3g}′ across, from “{name}”.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>After {names} and {last} expect to point about {error:.1f}′ off, and {worst:.1f}′ in the worst part of the sky; after {careless}, taken for their brightness alone, {careless_error:.1f}′ and {careless_worst:.1f}′.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>By chance those would do as well now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>Level the base first, in two directions at right angles: what is left of its tilt is then small enough for a few stars to take out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>No stars stand as far apart as they should now; these are the best there are. Take a third or fourth once the sky has turned.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>One side of the meridian after the other, with one flip between: stars on both sides tell a tube that is not square to its axis from an axis that is off.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>Only {count} fit stars are up: not enough clear sky between {lowest:.0f}° and {highest:.0f}°. Wait half an hour, or move to a place with a wider view.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>The Sun is up: no star can be used, and no optic may come near the Sun. Choose a time after sunset.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>Two or three reference stars can be chosen.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The balance along the tube cannot be told with nothing on the tube.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The balance along the tube cannot be told without {unknown}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The tube balances where it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The tube is front-heavy: slide it {slide:.0f} mm back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The tube is rear-heavy: slide it {slide:.0f} mm forward</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>move heavy parts back, or use a longer dovetail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>move heavy parts forward, or use a longer dovetail</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{slide}, but the dovetail lets it only {reach:.0f} mm: {ways}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{slide}; whether the dovetail is long enough is not known.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{ways}, or add {mass:.2g} kg at the front end of the tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{ways}, or add {mass:.2g} kg at the rear end of the tube</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>The load is given as {load:g} kg; it lies between 0 and 5000 kg.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>The part of the capacity to use lies between 5 and 100 %.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>The weights are zero or above, and at least one is above zero.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>To stay within a price, enter the price.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>autoguider port</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>capacity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>carries the load</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>drive and goto</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>driven or goto</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>ease of use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>equatorial</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>error training</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>own weight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>periodic error</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>pointing accuracy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>within the price</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="core/practice/meadow.py" />
   <source>Practice meadow, north (invented)</source>
   <translation>Übungswiese, Nord (erfunden)</translation>
  </message>
  <message>
   <location filename="core/practice/meadow.py" />
   <source>Practice meadow, south (invented)</source>
   <translation>Übungswiese, Süd (erfunden)</translation>
  </message>
  <message>
   <location filename="core/sky/almanac.py" />
   <source>astronomical twilight</source>
   <translation>astronomische Dämmerung</translation>
  </message>
  <message>
   <location filename="core/sky/almanac.py" />
   <source>civil twilight</source>
   <translation>bürgerliche Dämmerung</translation>
  </message>
  <message>
   <location filename="core/sky/almanac.py" />
   <source>day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <location filename="core/sky/almanac.py" />
   <source>nautical twilight</source>
   <translation>nautische Dämmerung</translation>
  </message>
  <message>
   <location filename="core/sky/almanac.py" />
   <source>night</source>
   <translation>Nacht</translation>
  </message>
  <message>
   <location filename="core/sky/catalogue.py" />
   <source>The table of stars {path} cannot be read ({problem}). Install Poleward again; until then stars can be entered by their coordinates.</source>
   <translation>Die Sterntabelle {path} lässt sich nicht lesen ({problem}). Installieren Sie Poleward neu; bis dahin lassen sich Sterne mit ihren Koordinaten eingeben.</translation>
  </message>
  <message>
   <location filename="core/sky/catalogue.py" />
   <source>its columns are not the ones expected</source>
   <translation>ihre Spalten sind nicht die erwarteten</translation>
  </message>
  <message>
   <location filename="core/sky/clock.py" />
   <source>{seconds} seconds is no time in the years 1 to 9999.</source>
   <translation>{seconds} Sekunden sind keine Zeit in den Jahren 1 bis 9999.</translation>
  </message>
  <message>
   <location filename="core/sky/clock.py" />
   <source>“{text}” is not a date and time; write it like 2026-11-24T20:15:30Z.</source>
   <translation>„{text}“ ist kein Datum mit Uhrzeit; schreiben Sie es wie 2026-11-24T20:15:30Z.</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>east</source>
   <translation>Osten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>east-north-east</source>
   <translation>Ostnordosten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>east-south-east</source>
   <translation>Ostsüdosten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>north-east</source>
   <translation>Nordosten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>north-north-east</source>
   <translation>Nordnordosten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>north-north-west</source>
   <translation>Nordnordwesten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>north-west</source>
   <translation>Nordwesten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>south-east</source>
   <translation>Südosten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>south-south-east</source>
   <translation>Südsüdosten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>south-south-west</source>
   <translation>Südsüdwesten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>south-west</source>
   <translation>Südwesten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>west</source>
   <translation>Westen</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>west-north-west</source>
   <translation>Westnordwesten</translation>
  </message>
  <message>
   <location filename="core/sky/compass.py" />
   <source>west-south-west</source>
   <translation>Westsüdwesten</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>A declination lies between −90° and +90°; “{text}” does not. Right ascension and declination may be swapped.</source>
   <translation>Eine Deklination liegt zwischen −90° und +90°; „{text}“ nicht. Rektaszension und Deklination sind vielleicht vertauscht.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>A latitude lies between 90° S and 90° N; “{text}” does not. Latitude and longitude may be swapped.</source>
   <translation>Eine Breite liegt zwischen 90° S und 90° N; „{text}“ nicht. Breite und Länge sind vielleicht vertauscht.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>A longitude lies between 180° W and 180° E; “{text}” does not.</source>
   <translation>Eine Länge liegt zwischen 180° W und 180° E; „{text}“ nicht.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>A right ascension lies between 0 and 24 hours, or 0° and 360°; “{text}” does not.</source>
   <translation>Eine Rektaszension liegt zwischen 0 und 24 Stunden oder 0° und 360°; „{text}“ nicht.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>In “{text}” minutes and seconds stay below 60.</source>
   <translation>In „{text}“ bleiben Minuten und Sekunden unter 60.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>In “{text}” only the last number may have decimals.</source>
   <translation>In „{text}“ darf nur die letzte Zahl Dezimalen haben.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>The {what} is empty.</source>
   <translation>Die {what} fehlt.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>declination</source>
   <translation>Deklination</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>latitude</source>
   <translation>Breite</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>longitude</source>
   <translation>Länge</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>right ascension</source>
   <translation>Rektaszension</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” cannot be read as a {what}. Write it like 48.137 or 48 08 14.</source>
   <translation>„{text}“ lässt sich nicht als {what} lesen. Schreiben Sie den Wert wie 48.137 oder 48 08 14.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” has a sign and the letter {letter}. Leave one of them out.</source>
   <translation>„{text}“ hat ein Vorzeichen und den Buchstaben {letter}. Lassen Sie eines davon weg.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” is a latitude, since it says {letter}; a longitude says E or W. Latitude and longitude may be swapped.</source>
   <translation>„{text}“ ist eine Breite, da {letter} dabeisteht; bei einer Länge steht E oder W. Breite und Länge sind vielleicht vertauscht.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” is a longitude, since it says {letter}; a latitude says N or S. Latitude and longitude may be swapped.</source>
   <translation>„{text}“ ist eine Länge, da {letter} dabeisteht; bei einer Breite steht N oder S. Breite und Länge sind vielleicht vertauscht.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” is in hours; a declination is in degrees. Right ascension and declination may be swapped.</source>
   <translation>„{text}“ steht in Stunden; eine Deklination steht in Grad. Rektaszension und Deklination sind vielleicht vertauscht.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” is not a latitude and a longitude. Write them like 48.1, 11.6.</source>
   <translation>„{text}“ ist nicht Breite und Länge. Schreiben Sie sie wie 48.1, 11.6.</translation>
  </message>
  <message>
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” may be hours or degrees. Write 5.24h or 78.6°, or 5 14 32 for hours, minutes, seconds.</source>
   <translation>„{text}“ kann Stunden oder Grad meinen. Schreiben Sie 5.24h oder 78.6°, oder 5 14 32 für Stunden, Minuten, Sekunden.</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>The table of clusters, nebulae and galaxies {path} cannot be read ({problem}). Install Poleward again; until then targets can be entered by their coordinates.</source>
   <translation>Die Tabelle der Sternhaufen, Nebel und Galaxien {path} lässt sich nicht lesen ({problem}). Installieren Sie Poleward neu; bis dahin lassen sich Objekte mit ihren Koordinaten eingeben.</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>cluster with nebula</source>
   <translation>Sternhaufen mit Nebel</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>dark nebula</source>
   <translation>Dunkelnebel</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>double star</source>
   <translation>Doppelstern</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>emission nebula</source>
   <translation>Emissionsnebel</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>galaxy</source>
   <translation>Galaxie</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>globular cluster</source>
   <translation>Kugelsternhaufen</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>group of galaxies</source>
   <translation>Galaxiengruppe</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>nebula</source>
   <translation>Nebel</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>nova</source>
   <translation>Nova</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>object of unknown kind</source>
   <translation>Objekt unbekannter Art</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>open cluster</source>
   <translation>offener Sternhaufen</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>pair of galaxies</source>
   <translation>Galaxienpaar</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>planetary nebula</source>
   <translation>planetarischer Nebel</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>reflection nebula</source>
   <translation>Reflexionsnebel</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>star</source>
   <translation>Stern</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>star group</source>
   <translation>Sterngruppe</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>supernova remnant</source>
   <translation>Supernovaüberrest</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>triplet of galaxies</source>
   <translation>Galaxientripel</translation>
  </message>
  <message>
   <location filename="core/sky/deepsky.py" />
   <source>“{kind}” is no kind of object</source>
   <translation>„{kind}“ ist keine Art von Objekt</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>The Earth's rotation is known or predicted up to {end}.</source>
   <translation>Die Erdrotation ist bis {end} bekannt oder vorausgesagt.</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>The Earth's rotation is measured up to {day} and predicted up to {end}.</source>
   <translation>Die Erdrotation ist bis {day} gemessen und bis {end} vorausgesagt.</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>The Earth's rotation is measured up to {day}, {days} days ago, and predicted up to {end}.</source>
   <translation>Die Erdrotation ist bis {day}, vor {days} Tagen, gemessen und bis {end} vorausgesagt.</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>The table of the Earth's rotation begins on {day}: UT1 may be off by up to about {seconds:.1f} s and hour angles by {arcsec:.0f}″, which changes the axis error by less than {percent} % of its size.</source>
   <translation>Die Tabelle der Erdrotation beginnt am {day}: UT1 kann um bis zu etwa {seconds:.1f} s falsch sein und Stundenwinkel um {arcsec:.0f}″, was den Achsfehler um weniger als {percent} % seiner Größe ändert.</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>The table of the Earth's rotation ends on {day}: UT1 may be off by up to about {seconds:.1f} s and hour angles by {arcsec:.0f}″, which changes the axis error by less than {percent} % of its size.</source>
   <translation>Die Tabelle der Erdrotation endet am {day}: UT1 kann um bis zu etwa {seconds:.1f} s falsch sein und Stundenwinkel um {arcsec:.0f}″, was den Achsfehler um weniger als {percent} % seiner Größe ändert.</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>The table of the Earth's rotation {path} cannot be used ({reason}). Install Poleward again, or the package astropy-iers-data by itself.</source>
   <translation>Die Tabelle der Erdrotation {path} ist nicht zu gebrauchen ({reason}). Installieren Sie Poleward neu, oder das Paket astropy-iers-data für sich.</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>its days are missing or out of order</source>
   <translation>ihre Tage fehlen oder stehen in falscher Folge</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>Jupiter</source>
   <translation>Jupiter</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>Mars</source>
   <translation>Mars</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>Mercury</source>
   <translation>Merkur</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>Moon</source>
   <translation>Mond</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>Saturn</source>
   <translation>Saturn</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>Sun</source>
   <translation>Sonne</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>The precise table of the Sun, Moon and planets runs from 1900 to 2053; for this date shorter series stand in: the Sun stays good to 0.1″, the Moon to 20″, planets to 1.5′.</source>
   <translation>Die genaue Tabelle von Sonne, Mond und Planeten reicht von 1900 bis 2053; für dieses Datum springen kürzere Reihen ein: Die Sonne bleibt auf 0.1″ genau, der Mond auf 20″, Planeten auf 1.5′.</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>The table of the Sun, Moon and planets {path} cannot be read ({problem}). Install Poleward again, or the package skyfield-data by itself.</source>
   <translation>Die Tabelle von Sonne, Mond und Planeten {path} lässt sich nicht lesen ({problem}). Installieren Sie Poleward neu, oder das Paket skyfield-data für sich.</translation>
  </message>
  <message>
   <location filename="core/sky/ephemeris.py" />
   <source>Venus</source>
   <translation>Venus</translation>
  </message>
  <message>
   <location filename="core/sky/horizon.py" />
   <source>Line {number} of the horizon, “{line}”, is not an azimuth and an altitude; write two numbers in degrees, like 135 12.5.</source>
   <translation>Zeile {number} des Horizonts, „{line}“, ist nicht Azimut und Höhe; schreiben Sie zwei Zahlen in Grad, wie 135 12.5.</translation>
  </message>
  <message>
   <location filename="core/sky/horizon.py" />
   <source>Line {number} of the horizon: {problem}</source>
   <translation>Zeile {number} des Horizonts: {problem}</translation>
  </message>
  <message>
   <location filename="core/sky/horizon.py" />
   <source>altitude {altitude:g}° is not between {low:g} and {high:g}; the azimuth goes first, the altitude second.</source>
   <translation>Höhe {altitude:g}° liegt nicht zwischen {low:g} und {high:g}; der Azimut kommt zuerst, die Höhe danach.</translation>
  </message>
  <message>
   <location filename="core/sky/horizon.py" />
   <source>azimuth {azimuth:g}° is not between 0 and 360; count from north through east.</source>
   <translation>Azimut {azimuth:g}° liegt nicht zwischen 0 und 360; zählen Sie von Norden über Osten.</translation>
  </message>
  <message>
   <location filename="core/sky/magnetic.py" />
   <source>A compass is no use here: so near the magnetic pole the field is almost upright (horizontal part {field:.0f} nT, under {least:.0f}). Set the axis by a star or by the Sun's shadow at noon.</source>
   <translation>Ein Kompass nützt hier nichts: So nahe am Magnetpol steht das Feld fast senkrecht (waagrechter Teil {field:.0f} nT, unter {least:.0f}). Stellen Sie die Achse nach einem Stern oder nach dem Schatten der Sonne am Mittag.</translation>
  </message>
  <message>
   <location filename="core/sky/magnetic.py" />
   <source>Doubt the compass here: near the magnetic pole its needle is weak and sluggish (horizontal field {field:.0f} nT, under {least:.0f}) and magnetic storms turn it by degrees.</source>
   <translation>Zweifeln Sie hier am Kompass: Nahe am Magnetpol ist die Nadel schwach und träge (waagrechtes Feld {field:.0f} nT, unter {least:.0f}), und magnetische Stürme drehen sie um Grade.</translation>
  </message>
  <message>
   <location filename="core/sky/magnetic.py" />
   <source>Keep the compass two metres from the mount, a car or anything of iron; rock and cables nearby can add degrees that no model knows.</source>
   <translation>Halten Sie den Kompass zwei Meter von Montierung, Auto und allem aus Eisen fern; Gestein und Kabel in der Nähe können Grade ausmachen, die kein Modell kennt.</translation>
  </message>
  <message>
   <location filename="core/sky/magnetic.py" />
   <source>The magnetic model holds from {first:.0f} to the end of {last:.0f}, not in {year}: set the axis by a star, by the Sun's shadow at noon, or with the declination printed on a current map.</source>
   <translation>Das Magnetmodell gilt von {first:.0f} bis Ende {last:.0f}, nicht für {year}: Stellen Sie die Achse nach einem Stern, nach dem Schatten der Sonne am Mittag oder mit der Missweisung einer neuen Karte.</translation>
  </message>
  <message>
   <location filename="core/sky/magnetic.py" />
   <source>True north is at compass bearing {bearing:.1f}° here ± {sigma}°.</source>
   <translation>Der wahre Norden liegt hier bei {bearing:.1f}° ± {sigma}° auf dem Kompass.</translation>
  </message>
  <message>
   <location filename="core/sky/magnetic.py" />
   <source>True south is at compass bearing {bearing:.1f}° here ± {sigma}°.</source>
   <translation>Der wahre Süden liegt hier bei {bearing:.1f}° ± {sigma}° auf dem Kompass.</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>An elevation of {typed:g} m does not fit a pressure of {station:.0f} hPa, but feet would. Were these feet? That is {metres:.0f} m.</source>
   <translation>Eine Höhe von {typed:g} m über dem Meer passt nicht zu einem Druck von {station:.0f} hPa, Fuß dagegen schon. Waren das Fuß? Das sind {metres:.0f} m.</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>An elevation of {typed:g} m is higher than any mountain. Were these feet? That is {metres:.0f} m.</source>
   <translation>Eine Höhe von {typed:g} m über dem Meer liegt höher als jeder Berg. Waren das Fuß? Das sind {metres:.0f} m.</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>inches of mercury</source>
   <translation>Zoll Quecksilber</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>kilopascals</source>
   <translation>Kilopascal</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>millimetres of mercury</source>
   <translation>Millimeter Quecksilber</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>{typed:g} cannot be hPa here. Was it in {unit}? That makes {guess:.1f} hPa at the station.</source>
   <translation>{typed:g} können hier keine hPa sein. Waren es {unit}? Das macht {guess:.1f} hPa am Standort.</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>{typed:g} hPa is too much for {elevation:.0f} m; it looks like the weather report's pressure, reduced to sea level. Use {station:.1f} hPa, the pressure at the station?</source>
   <translation>{typed:g} hPa sind zu viel für {elevation:.0f} m; es sieht nach dem Druck des Wetterberichts aus, auf Meereshöhe umgerechnet. {station:.1f} hPa nehmen, den Druck am Standort?</translation>
  </message>
  <message>
   <location filename="core/sky/pressure.py" />
   <source>{unit} reduced to sea level</source>
   <translation>{unit}, auf Meereshöhe umgerechnet</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>At local noon the shadow of a plumb line points true {towards}. It is {length:.1f} times as long as the line is high and turns {turn:.1f}° a minute, so mark it within half a minute.</source>
   <translation>Am wahren Mittag zeigt der Schatten eines Lots genau nach {towards}. Er ist {length:.1f}-mal so lang, wie das Lot hoch ist, und dreht sich um {turn:.1f}° in der Minute; markieren Sie ihn also auf eine halbe Minute genau.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>At the next noon the Sun is almost overhead ({altitude:.0f}°): the shadow is too short and turns too fast.</source>
   <translation>Am nächsten Mittag steht die Sonne fast senkrecht oben ({altitude:.0f}°): Der Schatten ist zu kurz und dreht sich zu schnell.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>At the next noon the Sun is only {altitude:.0f}° high: the shadow has no end.</source>
   <translation>Am nächsten Mittag steht die Sonne nur {altitude:.0f}° hoch: Der Schatten hat kein Ende.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>If it is not, the clock, the time zone or the longitude is wrong.</source>
   <translation>Wenn nicht, ist die Uhr, die Zeitzone oder die Länge falsch.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>Judge by the shadows; never look at the Sun.</source>
   <translation>Urteilen Sie nach den Schatten; niemals in die Sonne blicken.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>Never look at the Sun, and never point a telescope, finder, camera or polar-axis sight at it or near it: eyes are destroyed at once and without pain, and instruments can catch fire. Keep every cap on and every finder covered until the Sun has set.</source>
   <translation>Niemals in die Sonne blicken und niemals ein Teleskop, einen Sucher, eine Kamera oder ein Polvisier auf sie oder in ihre Nähe richten: Augen werden sofort und ohne Schmerz zerstört, und Geräte können Feuer fangen. Jeden Deckel drauf und jeden Sucher abgedeckt lassen, bis die Sonne untergegangen ist.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>The Moon</source>
   <translation>Der Mond</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>The Sun</source>
   <translation>Die Sonne</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>The Sun stays below the horizon at the next noon: there is no shadow.</source>
   <translation>Am nächsten Mittag bleibt die Sonne unter dem Horizont: Es gibt keinen Schatten.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>Use the shadow only, with your back to the Sun and all optics capped or still packed. Never aim along the shadow towards the Sun.</source>
   <translation>Benutzen Sie nur den Schatten, mit dem Rücken zur Sonne und aller Optik abgedeckt oder noch eingepackt. Niemals den Schatten entlang zur Sonne hin zielen.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>it should be night</source>
   <translation>es sollte Nacht sein</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>it should be {light}</source>
   <translation>es sollte {light} sein</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>{name} should now be almost overhead, {height}° high in the {where}.</source>
   <translation>{name} sollte jetzt fast senkrecht über Ihnen stehen, {height}° hoch im {where}.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>{name} should now be on the {where} horizon.</source>
   <translation>{name} sollte jetzt am Horizont stehen, im {where}.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>{name} should now be {height}° above the {where} horizon.</source>
   <translation>{name} sollte jetzt {height}° über dem Horizont stehen, im {where}.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>{name} should now be {height}° below the {where} horizon.</source>
   <translation>{name} sollte jetzt {height}° unter dem Horizont stehen, im {where}.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>{name} should now be {height}° below the {where} horizon: {dark}.</source>
   <translation>{name} sollte jetzt {height}° unter dem Horizont stehen, im {where}: {dark}.</translation>
  </message>
  <message>
   <location filename="core/sky/sunlight.py" />
   <source>{reason} Set the axis by compass or by a star.</source>
   <translation>{reason} Stellen Sie die Achse nach dem Kompass oder nach einem Stern.</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>The rules of {zone} cannot be read on this computer ({problem}); give the offset instead, like UTC+2.</source>
   <translation>Die Regeln von {zone} lassen sich auf diesem Computer nicht lesen ({problem}); geben Sie stattdessen den Abstand an, wie UTC+2.</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>The time zone is empty; write a name like Europe/Lisbon or an offset like UTC+2.</source>
   <translation>Die Zeitzone fehlt; schreiben Sie einen Namen wie Europe/Lisbon oder einen Abstand wie UTC+2.</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>{first} or {second}</source>
   <translation>{first} oder {second}</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>{zone} is {hours:.0f} hours away from the Sun's time at this longitude: the time zone is that of another place, or the longitude has the wrong side (E or W).</source>
   <translation>{zone} liegt {hours:.0f} Stunden neben der Sonnenzeit dieser Länge: Die Zeitzone gehört zu einem anderen Ort, oder die Länge liegt auf der falschen Seite (E oder W).</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>“{text}” is no offset from UTC: they go from −12 to +14 hours.</source>
   <translation>„{text}“ ist kein Abstand von UTC: Diese reichen von −12 bis +14 Stunden.</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>“{text}” is no time zone known here. An offset like UTC+2 will do as well.</source>
   <translation>„{text}“ ist hier als Zeitzone nicht bekannt. Ein Abstand wie UTC+2 geht auch.</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>“{text}” is no time zone known here. Is {place} meant? An offset like UTC+2 will do as well.</source>
   <translation>„{text}“ ist hier als Zeitzone nicht bekannt. Ist {place} gemeint? Ein Abstand wie UTC+2 geht auch.</translation>
  </message>
  <message>
   <location filename="core/sky/zones.py" />
   <source>“{text}” may be {names}: write which.</source>
   <translation>„{text}“ kann {names} sein: Schreiben Sie, welche.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A base that rocks cannot be pointed.</source>
   <translation>Was wackelt, lässt sich nicht richten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A cable that is caught stops a motor, tears a plug or shifts the field.</source>
   <translation>Ein Kabel, das hängen bleibt, hält einen Motor an, reißt einen Stecker ab oder verschiebt das Feld.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A full disk ends a series without a sound.</source>
   <translation>Ein voller Datenträger beendet eine Serie, ohne einen Laut.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A lead that is live at its open end lies in wet grass.</source>
   <translation>Sonst liegt eine Leitung, deren offenes Ende unter Spannung steht, im nassen Gras.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A locked gate at three in the morning is no adventure.</source>
   <translation>Ein verschlossenes Tor um drei Uhr früh ist kein Abenteuer.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A loose bolt shows as drift that no alignment takes away.</source>
   <translation>Eine lose Schraube zeigt sich als Drift, die keine Ausrichtung beseitigt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A minute of time is a quarter of a degree on the sky.</source>
   <translation>Eine Minute Zeit ist ein Viertelgrad am Himmel.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A mount that runs into its limit stops, or strikes the pier.</source>
   <translation>Eine Montierung, die an ihre Grenze läuft, bleibt stehen oder stößt an die Säule.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A tool across open terminals burns hands and starts fires.</source>
   <translation>Ein Werkzeug über offenen Polen verbrennt Hände und legt Brände.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A wrong place turns every correction in the wrong direction.</source>
   <translation>Ein falscher Ort dreht jede Korrektur in die falsche Richtung.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Align the finder on something far away, well apart from the Sun.</source>
   <translation>Den Sucher an etwas weit Entferntem ausrichten, deutlich abseits der Sonne.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>All is ready; from here on disturb nothing.</source>
   <translation>Alles ist bereit; von jetzt an nichts mehr stören.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Alone in the dark, a small accident becomes a large one: tell somebody where you are and when you will be back, and keep a charged telephone on you, not in the car.</source>
   <translation>Allein im Dunkeln wird aus einem kleinen Unfall ein großer: Sagen Sie jemandem, wo Sie sind und wann Sie zurück sind, und tragen Sie ein geladenes Telefon bei sich, nicht im Auto.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>An alt-azimuth mount keeps the middle of the field still and turns the rest.</source>
   <translation>Eine azimutale Montierung hält die Mitte des Feldes still und dreht den Rest.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>An overloaded mount tracks badly and can slip or tip.</source>
   <translation>Eine überladene Montierung führt schlecht nach und kann rutschen oder kippen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Ask the owner, and keep the local rules of the site on access, fires, light, noise, wildlife and closing times. Leave when you are asked to.</source>
   <translation>Fragen Sie den Eigentümer und halten Sie die Regeln des Ortes für Zugang, Feuer, Licht, Lärm, Tiere und Schließzeiten ein. Gehen Sie, wenn man Sie darum bittet.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>At frost, ground, steps and ladders can be icy and touching bare metal hurts the skin. Walk the ways once with a white light before it is dark.</source>
   <translation>Bei Frost können Boden, Stufen und Leitern vereist sein, und blankes Metall verletzt bei Berührung die Haut. Gehen Sie die Wege einmal mit weißem Licht ab, bevor es dunkel ist.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Balance and cooling count only with everything in its place.</source>
   <translation>Gleichgewicht und Abkühlung zählen erst, wenn alles an seinem Platz ist.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Balance both axes with everything mounted, eyepiece or camera included.</source>
   <translation>Beide Achsen mit allem ausbalancieren, Okular oder Kamera eingeschlossen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Balance the tube in altitude with everything mounted.</source>
   <translation>Den Tubus mit allem in der Höhe ausbalancieren.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Begin with the target.</source>
   <translation>Mit dem Objekt beginnen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Bring the axis near the pole by the pole star.</source>
   <translation>Die Achse mit dem Polarstern in die Nähe des Pols bringen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Bring the axis near the pole by the stars around it.</source>
   <translation>Die Achse mit den Sternen um den Pol in dessen Nähe bringen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>By tomorrow half of it is forgotten.</source>
   <translation>Bis morgen ist die Hälfte vergessen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Cables and tripod legs cannot be seen in the dark. Lay the cables along one side, and mark legs and edges with something that shows in red light.</source>
   <translation>Kabel und Stativbeine sind im Dunkeln nicht zu sehen. Führen Sie die Kabel an einer Seite und kennzeichnen Sie Beine und Kanten mit etwas, das im roten Licht zu sehen ist.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Calibrate guiding near the celestial equator, close to the meridian.</source>
   <translation>Das Guiding nahe am Himmelsäquator kalibrieren, dicht am Meridian.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Cap the telescope and take the dark frames.</source>
   <translation>Das Teleskop abdecken und die Dunkelbilder aufnehmen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Charge the batteries and check what they still hold in the cold.</source>
   <translation>Die Batterien laden und prüfen, was sie in der Kälte noch halten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Check the clock and the time zone.</source>
   <translation>Uhr und Zeitzone prüfen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Check the load against the mount.</source>
   <translation>Die Zuladung mit der Montierung vergleichen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Choose the target and see when it is up.</source>
   <translation>Das Objekt wählen und nachsehen, wann es oben steht.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Choose tonight's equipment.</source>
   <translation>Die Ausrüstung dieser Nacht wählen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Clear space on the camera's card or the computer's disk.</source>
   <translation>Platz schaffen auf der Karte der Kamera oder der Festplatte des Computers.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Closed up wet, optics grow fungus.</source>
   <translation>Nass verschlossen, setzt Optik Pilz an.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Cold makes careless. Dress for sitting still, wear gloves at bare metal, go in and warm up before hands go numb, and do not drive tired.</source>
   <translation>Kälte macht leichtsinnig. Kleiden Sie sich fürs Stillsitzen, tragen Sie Handschuhe an blankem Metall, gehen Sie hinein und wärmen Sie sich auf, bevor die Hände taub werden, und fahren Sie nicht müde.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Confirm the place: latitude, longitude, elevation.</source>
   <translation>Den Ort bestätigen: Breite, Länge, Höhe über dem Meer.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Connect the battery, polarity checked, terminals covered.</source>
   <translation>Die Batterie anschließen, Polung geprüft, Pole abgedeckt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Connect the mains through the residual-current device and press its test button.</source>
   <translation>Das Netz über den Fehlerstrom-Schutzschalter anschließen und dessen Prüftaste drücken.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Counterweights go on before the telescope and come off after it. Fit the toe stop at the end of the bar first: a weight that slides off breaks feet.</source>
   <translation>Gegengewichte kommen vor dem Teleskop drauf und nach ihm herunter. Bringen Sie zuerst den Sicherungsanschlag am Ende der Stange an: Ein Gewicht, das herabrutscht, bricht Füße.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Dew on a lens is prevented, not removed.</source>
   <translation>Tau auf einer Linse verhindert man, man entfernt ihn nicht.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Dew, metal and mains voltage together kill.</source>
   <translation>Tau, Metall und Netzspannung zusammen töten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Disconnect the battery and cover its terminals.</source>
   <translation>Die Batterie abklemmen und ihre Pole abdecken.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>End the programs, let a cooled camera warm up slowly, then switch off the mount, and the supply last.</source>
   <translation>Die Programme beenden, eine gekühlte Kamera langsam warm werden lassen, dann die Montierung abschalten und zuletzt die Versorgung.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Every later step judges a star's place, and a blurred star has none.</source>
   <translation>Jeder spätere Schritt beurteilt den Ort eines Sterns, und ein unscharfer Stern hat keinen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Everything else is timed back from when it can begin.</source>
   <translation>Alles andere wird von seinem Beginn aus zurückgerechnet.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Eyes need half an hour to adapt and a second to lose it.</source>
   <translation>Augen brauchen eine halbe Stunde, sich anzupassen, und eine Sekunde, es zu verlieren.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Fit the counterweight bar, the weights and the toe stop.</source>
   <translation>Gegengewichtsstange, Gewichte und Sicherungsanschlag anbringen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Fix the mount's head and tighten every bolt.</source>
   <translation>Den Kopf der Montierung befestigen und jede Schraube anziehen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Focus again, frame the target, take one exposure and look at its corners.</source>
   <translation>Noch einmal scharfstellen, das Objekt ins Bild setzen, eine Belichtung machen und ihre Ecken ansehen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Focus on a bright star.</source>
   <translation>An einem hellen Stern scharfstellen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Fuse the battery at its terminal, keep it upright and its terminals covered, never charge a frozen, swollen or damaged one, and do not leave one charging unwatched.</source>
   <translation>Die Batterie am Pol absichern, aufrecht und mit abgedeckten Polen halten, nie eine gefrorene, aufgeblähte oder beschädigte laden und keine unbeaufsichtigt am Ladegerät lassen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Go in or get into the car and warm up before you need to.</source>
   <translation>Hineingehen oder ins Auto steigen und sich aufwärmen, bevor es nötig ist.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Help comes only to where it knows to look.</source>
   <translation>Hilfe kommt nur dorthin, wo sie suchen kann.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Hold the tube with one hand whenever a clutch is loosened: an unbalanced mount swings at once and can strike a head or trap fingers.</source>
   <translation>Halten Sie den Tubus mit einer Hand, sooft eine Klemme gelöst wird: Eine Montierung außer Gleichgewicht schlägt sofort herum und kann einen Kopf treffen oder Finger einklemmen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Holes, steps and wires do not show in red light.</source>
   <translation>Löcher, Stufen und Drähte zeigen sich im roten Licht nicht.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In frost a battery gives perhaps half of what it holds in a warm room.</source>
   <translation>Bei Frost gibt eine Batterie vielleicht die Hälfte dessen ab, was sie im warmen Zimmer hält.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In half an hour none of it can be seen.</source>
   <translation>In einer halben Stunde ist davon nichts mehr zu sehen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In the dark the first star is then in the field at once.</source>
   <translation>Im Dunkeln steht der erste Stern dann gleich im Feld.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In the dark the ground tilts more than it seems.</source>
   <translation>Im Dunkeln neigt sich der Boden mehr, als es scheint.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It decides how long an exposure can be without guiding.</source>
   <translation>Er bestimmt, wie lange ohne Guiding belichtet werden kann.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It finds nothing before it knows which way it points.</source>
   <translation>Sie findet nichts, bevor sie weiß, wohin sie zeigt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It saves the first rounds of drift alignment.</source>
   <translation>Das spart die ersten Runden beim Ausrichten nach der Drift.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It saves the first rounds of drift alignment; no bright star marks the southern pole.</source>
   <translation>Das spart die ersten Runden beim Ausrichten nach der Drift; den Südpol des Himmels bezeichnet kein heller Stern.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Keep off the roadway and out of the way of vehicles. Where cars can come, wear something reflecting while setting up and packing.</source>
   <translation>Bleiben Sie von der Fahrbahn weg und Fahrzeugen aus dem Weg. Wo Autos kommen können, tragen Sie beim Auf- und Abbau etwas Reflektierendes.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Lay the cables along one side, mark the legs, put every tool in its place.</source>
   <translation>Die Kabel an einer Seite führen, die Stativbeine kennzeichnen, jedes Werkzeug an seinen Platz legen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Let the telescope cool in the shade, caps on.</source>
   <translation>Das Teleskop im Schatten abkühlen lassen, Deckel drauf.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Level the base in two directions at right angles.</source>
   <translation>Den Unterbau in zwei Richtungen im rechten Winkel waagrecht stellen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Lift with straight back and bent knees, heavy parts between two people, and keep fingers out of the clamps. Do not let go before the clamp or dovetail holds.</source>
   <translation>Heben Sie mit geradem Rücken und gebeugten Knien, schwere Teile zu zweit, und halten Sie die Finger aus den Klemmen. Lassen Sie nicht los, bevor Klemme oder Schwalbenschwanz hält.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Load, image scale and budget are computed for what really goes on the mount.</source>
   <translation>Zuladung, Abbildungsmaßstab und Spielraum werden für das berechnet, was wirklich auf die Montierung kommt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Look at the forecast: cloud, wind, dew point and frost.</source>
   <translation>Die Vorhersage ansehen: Wolken, Wind, Taupunkt und Frost.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Look for dew, focus again, and check that the target is still where it should be.</source>
   <translation>Nach Tau sehen, nachfokussieren und prüfen, ob das Objekt noch dort ist, wo es sein soll.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Make sure that you may be here tonight, and how to get out again.</source>
   <translation>Sicherstellen, dass Sie heute Nacht dort sein dürfen und wie Sie wieder hinauskommen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Measure the axis error by drift, and correct it until it is within the budget.</source>
   <translation>Den Achsfehler mit der Drift messen und korrigieren, bis er im Spielraum liegt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Measure the periodic error.</source>
   <translation>Den periodischen Fehler messen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Moonlight drowns faint targets near it; another target or a narrow filter may save the night.</source>
   <translation>Mondlicht ertränkt schwache Objekte in seiner Nähe; ein anderes Objekt oder ein schmales Filter rettet vielleicht die Nacht.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Motors last longer and the mount tracks evenly.</source>
   <translation>Motoren halten länger, und die Montierung läuft gleichmäßig.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Never look at the Sun, and never point a telescope, finder, camera or polar-axis sight at or near it without a proper filter over the full aperture. By day keep the caps on, the finder's too: eyes are destroyed at once and without pain.</source>
   <translation>Niemals in die Sonne blicken und niemals ein Teleskop, einen Sucher, eine Kamera oder ein Polvisier auf sie oder in ihre Nähe richten ohne ein geeignetes Filter vor der ganzen Öffnung. Am Tag bleiben die Deckel drauf, auch am Sucher: Augen werden sofort und ohne Schmerz zerstört.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>On a German mount the telescope comes off before the weights.</source>
   <translation>Bei einer deutschen Montierung kommt das Teleskop vor den Gewichten herunter.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>On a ladder or stool keep one hand free to hold on, and never lean out to reach an eyepiece.</source>
   <translation>Auf Leiter oder Hocker eine Hand zum Festhalten frei lassen und sich nie hinauslehnen, um ein Okular zu erreichen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>On a level base the two bolts do not disturb each other, and the latitude scale is true.</source>
   <translation>Auf waagrechtem Unterbau stören die beiden Stellschrauben einander nicht, und die Polhöhenskala stimmt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Open the cases at home and let everything dry.</source>
   <translation>Zu Hause die Koffer öffnen und alles trocknen lassen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Or somebody goes out to look for you.</source>
   <translation>Sonst geht jemand los, um Sie zu suchen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Outdoors, mains electricity only through a residual-current device, with plugs, leads and adapters made for wet places and off the ground. Work on wiring is for a licensed electrician. The rules of your country come first.</source>
   <translation>Im Freien Netzstrom nur über einen Fehlerstrom-Schutzschalter, mit Steckern, Leitungen und Netzteilen, die für Nässe gemacht sind und nicht am Boden liegen. Arbeiten an der Installation sind Sache einer Elektrofachkraft. Die Vorschriften Ihres Landes gehen vor.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pack a red light and a spare, and a white one for packing up.</source>
   <translation>Ein rotes Licht und ein zweites einpacken, dazu ein weißes für den Abbau.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pack warm clothes, gloves, a hot drink and warm spare batteries.</source>
   <translation>Warme Kleidung, Handschuhe, ein heißes Getränk und warme Ersatzbatterien einpacken.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pack, count caps and eyepieces, and search the ground with a white light.</source>
   <translation>Einpacken, Deckel und Okulare zählen und den Boden mit weißem Licht absuchen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Park the mount and put all caps on, the finder's too.</source>
   <translation>Die Montierung parken und alle Deckel aufsetzen, auch den des Suchers.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Power cut under a running disk or a cold sensor does harm.</source>
   <translation>Strom weg bei laufendem Datenträger oder kaltem Sensor richtet Schaden an.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pull the mains plug at the wall first, then the leads at the mount.</source>
   <translation>Zuerst den Netzstecker an der Wand ziehen, dann die Leitungen an der Montierung.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Put on the dew shield and switch on the dew heaters.</source>
   <translation>Die Taukappe aufsetzen und die Tauheizung einschalten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Put the telescope on with all caps on, and everything it carries.</source>
   <translation>Das Teleskop mit allen Deckeln aufsetzen, dazu alles, was es trägt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Reversed polarity ends the night and the electronics.</source>
   <translation>Falsche Polung beendet die Nacht und die Elektronik.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See how long one exposure can be before the field turns too far.</source>
   <translation>Nachsehen, wie lang eine Belichtung sein darf, bevor sich das Feld zu weit dreht.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See that ladder or stool stands firm before you climb it.</source>
   <translation>Prüfen, dass Leiter oder Hocker fest steht, bevor Sie hinaufsteigen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See when the mount has to flip, and on which side it begins.</source>
   <translation>Nachsehen, wann die Montierung umschlagen muss und auf welcher Seite sie beginnt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See where the Moon is during the session.</source>
   <translation>Nachsehen, wo in dieser Zeit der Mond steht.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the base on firm, even ground, or on a board.</source>
   <translation>Den Unterbau auf festen, ebenen Boden oder ein Brett stellen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the latitude scale and turn the axis to true north by compass or noon shadow.</source>
   <translation>Die Polhöhenskala einstellen und die Achse nach Kompass oder Mittagsschatten zum wahren Norden drehen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the latitude scale and turn the axis to true south by compass or noon shadow.</source>
   <translation>Die Polhöhenskala einstellen und die Achse nach Kompass oder Mittagsschatten zum wahren Süden drehen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the mount up on reference stars.</source>
   <translation>Die Montierung an Bezugssternen einrichten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Shine a laser at the sky only where the law allows it, never when an aircraft is anywhere near, and never at people, animals or vehicles. If in doubt, point with the arm.</source>
   <translation>Mit einem Laser nur dort zum Himmel leuchten, wo das Gesetz es erlaubt, niemals, wenn irgendwo in der Nähe ein Flugzeug ist, und niemals auf Menschen, Tiere oder Fahrzeuge. Im Zweifel mit dem Arm zeigen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Slew to the target once, slowly, and watch tube and cables all the way.</source>
   <translation>Einmal langsam zum Objekt schwenken und auf dem ganzen Weg Tubus und Kabel beobachten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Soft ground gives way during the night.</source>
   <translation>Weicher Boden gibt in der Nacht nach.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Somebody who freezes goes home early or makes mistakes.</source>
   <translation>Wer friert, fährt früh heim oder macht Fehler.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand by while the mount flips, then centre and focus again.</source>
   <translation>Beim Umschlagen der Montierung dabeistehen, dann zentrieren und nachfokussieren.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand the tripod firm, the leg or mark that belongs to the pole towards true north.</source>
   <translation>Das Stativ fest aufstellen, das Bein oder die Marke für den Pol zum wahren Norden.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand the tripod firm, the leg or mark that belongs to the pole towards true south.</source>
   <translation>Das Stativ fest aufstellen, das Bein oder die Marke für den Pol zum wahren Süden.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand the tripod or pier firm.</source>
   <translation>Stativ oder Säule fest aufstellen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Take the counterweights off, the toe stop last.</source>
   <translation>Die Gegengewichte abnehmen, den Sicherungsanschlag zuletzt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Take the telescope off, with the clutches tight.</source>
   <translation>Das Teleskop abnehmen, die Klemmen fest angezogen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Tell somebody where you will be and when you will be back.</source>
   <translation>Jemandem sagen, wo Sie sein werden und wann Sie zurück sind.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Tell the one who waits that you are back.</source>
   <translation>Wer auf Sie wartet, soll erfahren, dass Sie zurück sind.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The Sun comes up while you pack: put the caps on the telescope and the finder before sunrise, and do not leave the tube where the Sun can wander into it.</source>
   <translation>Die Sonne geht auf, während Sie einpacken: Setzen Sie die Deckel auf Teleskop und Sucher, bevor sie aufgeht, und lassen Sie den Tubus nicht stehen, wo die Sonne hineinwandern kann.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The azimuth bolts reach a few degrees only; soft ground gives way during the night.</source>
   <translation>Die Stellschrauben für den Azimut reichen nur wenige Grad; weicher Boden gibt in der Nacht nach.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The calibration holds only for the axis as it now stands, so it comes after the alignment.</source>
   <translation>Die Kalibrierung gilt nur für die Achse, wie sie jetzt steht, also kommt sie nach dem Ausrichten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The closer the axis starts, the fewer turns it takes at night; a compass points to the magnetic pole, not the true one.</source>
   <translation>Je näher die Achse beginnt, desto weniger Drehungen braucht es in der Nacht; ein Kompass zeigt zum magnetischen Pol, nicht zum wahren.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The corners show tilt, rotation and dew before a whole series has them.</source>
   <translation>Die Ecken zeigen Verkippung, Drehung und Tau, bevor eine ganze Serie sie hat.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The first slew in the dark is where collisions happen.</source>
   <translation>Beim ersten Schwenk im Dunkeln geschehen die Zusammenstöße.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The last hour is the one with the mistakes.</source>
   <translation>In der letzten Stunde geschehen die Fehler.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The telescope changes sides; what did not catch before can catch now.</source>
   <translation>Das Teleskop wechselt die Seite; was vorher nicht hängen blieb, kann jetzt hängen bleiben.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The tube shrinks as it cools, and the focus moves with it.</source>
   <translation>Der Tubus schrumpft beim Abkühlen, und der Fokus wandert mit.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The weight must be there before the telescope, or the mount tips and swings.</source>
   <translation>Das Gewicht muss vor dem Teleskop da sein, sonst kippt und schwingt die Montierung.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>They only fit at the same temperature.</source>
   <translation>Sie passen nur bei derselben Temperatur.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Turn the mount by hand through all it will do tonight and watch the cables.</source>
   <translation>Die Montierung von Hand durch alles drehen, was sie heute Nacht tun wird, und auf die Kabel achten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Until the last weight is off, the stop keeps it off your feet.</source>
   <translation>Bis das letzte Gewicht ab ist, hält der Anschlag es von Ihren Füßen fern.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Walk the ways once while you can see them.</source>
   <translation>Die Wege einmal abgehen, solange sie zu sehen sind.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Warm air above the optics blurs every star; thick glass takes longest.</source>
   <translation>Warme Luft über der Optik verwischt jeden Stern; dickes Glas braucht am längsten.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is left in the grass is found by the mower.</source>
   <translation>Was im Gras bleibt, findet der Rasenmäher.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is left of it draws stars out and turns the field.</source>
   <translation>Was davon bleibt, zieht Sterne in die Länge und dreht das Feld.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is left of the tilt is then small enough for a few stars to take out.</source>
   <translation>Was an Neigung bleibt, ist dann so klein, dass ein paar Sterne sie herausrechnen.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is parked and capped can wait; what is not cannot.</source>
   <translation>Was geparkt und abgedeckt ist, kann warten; was es nicht ist, kann es nicht.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>When a mount slews, the tube, the camera or the counterweight can strike the pier or a tripod leg, and cables can be pulled off. Stand by, with a hand on the stop.</source>
   <translation>Beim Schwenken der Montierung können Tubus, Kamera oder Gegengewicht an Säule oder Stativbein stoßen, und Kabel können abreißen. Stehen Sie dabei, eine Hand am Notstopp.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Wind and dew decide more than the equipment whether the night is worth the way.</source>
   <translation>Wind und Tau entscheiden mehr als die Ausrüstung, ob die Nacht den Weg lohnt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Write down what went well and what to change.</source>
   <translation>Aufschreiben, was gut ging und was zu ändern ist.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>at dusk</source>
   <translation>in der Dämmerung</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>before you leave</source>
   <translation>vor der Abfahrt</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>by daylight</source>
   <translation>bei Tageslicht</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>closing down</source>
   <translation>Abbau</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>in the dark</source>
   <translation>im Dunkeln</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>through the night</source>
   <translation>durch die Nacht</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>+ −</source>
   <translation>+ −</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>, .</source>
   <translation>, .</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A bolt scale is how far a turn moved the axis over how far it was meant to: 1 is perfect, below 1 the bolt moved too little.</source>
   <translation>Der Maßstab einer Stellschraube ist, wie weit eine Drehung die Achse bewegt hat, geteilt durch das, was gemeint war: 1 ist vollkommen, unter 1 hat die Stellschraube zu wenig bewegt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A displaced axis makes a tracked star drift in declination. A star near the meridian shows the azimuth error, a star low in the east or west the altitude error. All legs between two turns of the bolts are solved together for both errors, with the refraction along each star's path. The ± is a 95 % range and takes into account that air moves a star slowly as well as quickly.</source>
   <translation>Eine verschobene Achse lässt einen verfolgten Stern in Deklination driften. Ein Stern nahe dem Meridian zeigt den Azimutfehler, einer tief im Osten oder Westen den Höhenfehler. Alle Etappen zwischen zwei Drehungen der Stellschrauben werden zusammen nach beiden Fehlern gelöst, mit der Refraktion auf dem Weg jedes Sterns. Das ± ist ein 95-%-Bereich und berücksichtigt, dass die Luft einen Stern langsam ebenso wie schnell bewegt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A run of unguided tracking is fitted with a line and the periods of the worm together. The amplitude is given with its ±; what the air adds is told apart by its lack of rhythm.</source>
   <translation>Einer Aufzeichnung ohne Guiding werden eine Gerade und die Perioden der Schnecke zusammen angepasst. Die Amplitude steht mit ihrem ± da; was die Luft hinzutut, verrät sich dadurch, dass es keinen Takt hat.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A slow motion of a tracked star against the mount.</source>
   <translation>Eine langsame Bewegung eines verfolgten Sterns gegen die Montierung.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A star's place along the celestial equator, in hours or degrees eastward.</source>
   <translation>Der Ort eines Sterns am Himmelsäquator entlang, in Stunden oder Grad nach Osten.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>All nights as they happened. Open one, write a note, solve its legs again with other choices, carry it out, save everything.</source>
   <translation>Alle Nächte, wie sie waren. Öffnen Sie eine, schreiben Sie eine Notiz, lösen Sie ihre Etappen mit anderen Vorgaben noch einmal, geben Sie sie aus, sichern Sie alles.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>All times are clock times of the place, or UTC where you choose so.</source>
   <translation>Alle Zeiten sind Uhrzeiten des Ortes, oder UTC, wo Sie es so wählen.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Along a plot, a line of time, or keys of which one is down</source>
   <translation>Entlang einer Kurve, einer Zeitlinie oder Tasten, von denen eine gedrückt ist</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Alt+1 … Alt+0</source>
   <translation>Alt+1 … Alt+0</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Altitudes are as seen, refraction included. The hour angle is negative before the meridian.</source>
   <translation>Höhen sind so, wie sie gesehen werden, mit Refraktion. Der Stundenwinkel ist vor dem Meridian negativ.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Altitudes are followed through the night over your own horizon. The flip follows from how far past the meridian the mount may go.</source>
   <translation>Die Höhen werden durch die Nacht über Ihrem eigenen Horizont verfolgt. Das Umschlagen folgt daraus, wie weit die Montierung über den Meridian hinausgehen darf.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Angle above the horizon: 0° at the horizon, 90° overhead.</source>
   <translation>Winkel über dem Horizont: 0° am Horizont, 90° senkrecht oben.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Axis state</source>
   <translation>Achsenstand</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Azimuth and altitude bolts</source>
   <translation>Stellschrauben für Azimut und Höhe</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Backlash</source>
   <translation>Spiel</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Bring the axis near the pole before measuring: by the pole star in a polar-axis sight, by the stars around the pole, or by other marks when the pole is hidden.</source>
   <translation>Bringen Sie die Achse vor dem Messen in die Nähe des Pols: mit dem Polstern im Polvisier, mit den Sternen um den Pol oder nach anderen Marken, wenn der Pol verdeckt ist.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Closes the help</source>
   <translation>Schließt die Hilfe</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Day, Dark and Night, in the top right corner, change the look. Night shines in red alone. The key beside them makes the text larger, up to twice. Every key can be reached with Tab; F1 explains the page in view.</source>
   <translation>Tag, Dunkel und Nacht oben rechts wechseln die Ansicht. Nacht leuchtet allein in Rot. Die Taste daneben macht die Schrift größer, bis zum Doppelten. Jede Taste ist mit Tab zu erreichen; F1 erklärt die gezeigte Seite.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Direction along the horizon: north 0°, east 90°, south 180°, west 270°.</source>
   <translation>Richtung am Horizont entlang: Norden 0°, Osten 90°, Süden 180°, Westen 270°.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>East and west, high and low are said of the axis where it meets the sky at the elevated pole. Clock places are as you see them in the sight.</source>
   <translation>Ost und West, hoch und tief gelten für die Achse dort, wo sie am Pol über Ihrem Horizont den Himmel trifft. Stellen auf der Uhr sind so gemeint, wie Sie sie im Visier sehen.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>East offset: east on the sky, right ascension times cos declination. The periodic error is told from peak to peak.</source>
   <translation>Abweichung nach Osten: Osten am Himmel, Rektaszension mal Kosinus der Deklination. Der periodische Fehler wird von Spitze zu Spitze angegeben.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Elevated pole</source>
   <translation>Pol über dem Horizont</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Enter</source>
   <translation>Eingabetaste</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Esc</source>
   <translation>Esc</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Every reading is on disk within a second. Solving again uses the same method as the Drift page and changes nothing in the night. A backup is read back before it is called good.</source>
   <translation>Jede Ablesung ist binnen einer Sekunde auf der Festplatte. Noch einmal lösen benutzt dasselbe Verfahren wie die Driftseite und ändert nichts an der Nacht. Eine Sicherung wird zurückgelesen, bevor sie gut heißt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Exact rotations, as on the Drift page. Half a pixel as the limit is common practice without a source; it is yours to change.</source>
   <translation>Genaue Drehungen, wie auf der Driftseite. Ein halbes Pixel als Grenze ist übliche Praxis ohne Quelle; Sie können sie ändern.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Exact rotations, no small-angle formula. The errors are weighed by restricted likelihood (Patterson &amp; Thompson, Biometrika 58, 545, 1971).</source>
   <translation>Genaue Drehungen, keine Näherung für kleine Winkel. Die Fehler werden mit der eingeschränkten Likelihood gewichtet (Patterson &amp; Thompson, Biometrika 58, 545, 1971).</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>F</source>
   <translation>F</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>F1</source>
   <translation>F1</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>First safety</source>
   <translation>Zuerst die Sicherheit</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>For the dark</source>
   <translation>Für die Dunkelheit</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Heights are from the saddle outward, away from the polar axis. Places along the tube are positive towards the sky.</source>
   <translation>Höhen zählen vom Sattel nach außen, von der Polachse weg. Stellen längs des Tubus sind zum Himmel hin positiv.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Help on the page in view; once more closes it</source>
   <translation>Hilfe zur gezeigten Seite; noch einmal schließt sie</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Hipparcos catalogue for the stars, ERFA for their places of tonight.</source>
   <translation>Hipparcos-Katalog für die Sterne, ERFA für ihre Örter in dieser Nacht.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Home, End</source>
   <translation>Pos1, Ende</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Hour angle</source>
   <translation>Stundenwinkel</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Hour angles are negative east of the meridian, positive west of it. Smear is a length in pixels and has no sign.</source>
   <translation>Stundenwinkel sind östlich vom Meridian negativ, westlich positiv. Verwischung ist eine Länge in Pixeln und hat kein Vorzeichen.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How far a star is drawn out in one exposure, in pixels.</source>
   <translation>Wie weit ein Stern in einer Belichtung in die Länge gezogen wird, in Pixeln.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How far north or south of the celestial equator a star stands, north positive.</source>
   <translation>Wie weit nördlich oder südlich vom Himmelsäquator ein Stern steht, nach Norden positiv.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How far west of the meridian a star stands; east of it is negative.</source>
   <translation>Wie weit westlich vom Meridian ein Stern steht; östlich davon negativ.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How fast the picture turns on a mount without a polar axis, or on a tilted one, how long one exposure may be and what is left after stacking.</source>
   <translation>Wie schnell sich das Bild auf einer Montierung ohne Polachse oder mit schiefer Achse dreht, wie lang eine Belichtung sein darf und was nach dem Stapeln bleibt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How good the alignment has to be tonight, for this target, camera and exposure: as good as the picture needs, no better.</source>
   <translation>Wie gut heute Nacht ausgerichtet sein muss, für dieses Objekt, diese Kamera und Belichtung: so gut, wie das Bild es braucht, nicht besser.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How much the air spreads a star, in arcseconds.</source>
   <translation>Wie weit die Luft einen Stern ausbreitet, in Bogensekunden.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How well the drive follows the sky: its periodic error, what training and guiding take away, and how long one can expose.</source>
   <translation>Wie gut der Antrieb dem Himmel folgt: sein periodischer Fehler, was Fehlertraining und Guiding davon wegnehmen und wie lange man belichten kann.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>In the drift plot: follow the newest reading</source>
   <translation>Im Driftbild: der neuesten Ablesung folgen</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>In the drift plot: nearer and farther; the arrow keys move it</source>
   <translation>Im Driftbild: näher und ferner; die Pfeiltasten verschieben es</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>In the drift plot: to the reading before and the next</source>
   <translation>Im Driftbild: zur Ablesung davor und zur nächsten</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>It helps to get the polar axis of a telescope mount onto the pole and to keep the night in order. It works without a network and sends nothing anywhere. All you measure is on disk within a second.</source>
   <translation>Es hilft, die Polachse einer Teleskopmontierung auf den Pol zu bringen und die Nacht in Ordnung zu halten. Es arbeitet ohne Netz und sendet nichts irgendwohin. Alles, was Sie messen, ist binnen einer Sekunde auf der Festplatte.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Latitude is positive north, longitude positive east, azimuth runs from north through east. The pressure is that at the station, not reduced to sea level.</source>
   <translation>Breite ist nach Norden positiv, Länge nach Osten, der Azimut läuft von Norden über Osten. Der Druck ist der am Standort, nicht auf Meereshöhe umgerechnet.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Masses and distances are added about the polar axis. The load is held against what the mount is listed to carry and against the part of it one keeps to. Image scale is pixel size over focal length.</source>
   <translation>Massen und Abstände werden um die Polachse zusammengezählt. Die Zuladung wird mit dem verglichen, was die Montierung laut Angabe trägt, und mit dem Teil davon, bei dem man bleibt. Der Abbildungsmaßstab ist Pixelgröße durch Brennweite.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Measure the axis error by watching a star drift north or south while the mount follows the sky, then turn the bolts, and look again.</source>
   <translation>Messen Sie den Achsfehler, indem Sie beobachten, wie ein Stern nach Norden oder Süden driftet, während die Montierung dem Himmel folgt; drehen Sie dann die Stellschrauben und sehen Sie noch einmal hin.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Mechanics of levers; image scale 206265″ × pixel ÷ focal length. The part of the capacity to use, and two to three pixels across the seeing, are common practice without a source.</source>
   <translation>Mechanik der Hebel; Abbildungsmaßstab 206265″ × Pixel ÷ Brennweite. Welchen Teil der Tragfähigkeit man nutzt und dass zwei bis drei Pixel auf das Seeing kommen, ist übliche Praxis ohne Quelle.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Never look at the Sun, and never point a telescope or finder at or near it without a proper filter over the full aperture. Telescopes are heavy, cables are traps in the dark, and mains outdoors needs a residual-current device. Each step that can hurt somebody says so; these words cannot be switched off.</source>
   <translation>Niemals in die Sonne blicken und niemals Teleskop oder Sucher auf sie oder in ihre Nähe richten ohne ein geeignetes Filter vor der ganzen Öffnung. Teleskope sind schwer, Kabel sind Fallen im Dunkeln, und Netzstrom im Freien braucht einen Fehlerstrom-Schutzschalter. Jeder Schritt, der jemanden verletzen kann, sagt es; diese Worte lassen sich nicht abschalten.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>One star watched without touching the bolts.</source>
   <translation>Ein Stern, beobachtet, ohne die Stellschrauben zu berühren.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Parallactic angle</source>
   <translation>Parallaktischer Winkel</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Periods by Lomb–Scargle periodograms (astropy).</source>
   <translation>Perioden nach Lomb-Scargle-Periodogrammen (astropy).</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Polar axis</source>
   <translation>Polachse</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Presses the key that has the ring</source>
   <translation>Drückt die Taste, die den Ring hat</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Refraction</source>
   <translation>Refraktion</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Reports, drift logs (CSV) and nights (JSON) are plain files of this program; the drift log is described in its own header.</source>
   <translation>Berichte, Driftprotokolle (CSV) und Nächte (JSON) sind einfache Dateien dieses Programms; das Driftprotokoll ist in seinem eigenen Kopf beschrieben.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Say where you are: times, stars and the pole follow from it. Without a telescope at hand, the practice sky on the Drift page has a hidden axis error to be found.</source>
   <translation>Sagen Sie, wo Sie sind: Zeiten, Sterne und Pol folgen daraus. Ohne Teleskop zur Hand hat der Übungshimmel auf der Driftseite einen verborgenen Achsfehler, der zu finden ist.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Seeing</source>
   <translation>Seeing</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Smear</source>
   <translation>Verwischung</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Space</source>
   <translation>Leertaste</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Sun, Moon and planets from the program's own ephemeris, rising and setting as printed tables define them (US Naval Observatory); illuminated share of the Moon by Meeus, Astronomical Algorithms, eq. 48.1 and 48.3; deep sky from the OpenNGC database.</source>
   <translation>Sonne, Mond und Planeten aus der Ephemeride des Programms, Auf- und Untergang, wie gedruckte Tafeln sie bestimmen (US Naval Observatory); beleuchteter Teil des Mondes nach Meeus, Astronomical Algorithms, Gl. 48.1 und 48.3; Nebel und Sternhaufen aus der OpenNGC-Datenbank.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Sunset and twilight as printed tables define them (US Naval Observatory): Sun's centre 6°, 12° and 18° below a level horizon. How long steps take, and from which Moon on it matters, is common practice without a source.</source>
   <translation>Sonnenuntergang und Dämmerung, wie gedruckte Tafeln sie bestimmen (US Naval Observatory): Mitte der Sonne 6°, 12° und 18° unter einem ebenen Horizont. Wie lange Schritte dauern und ab welchem Mond es darauf ankommt, ist übliche Praxis ohne Quelle.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Tab, Shift+Tab</source>
   <translation>Tab, Umschalt+Tab</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Takes what is typed in a line</source>
   <translation>Übernimmt, was in einer Zeile eingegeben ist</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The angle at a star between the pole and the zenith, positive west of the meridian.</source>
   <translation>Der Winkel an einem Stern zwischen Pol und Zenit, westlich vom Meridian positiv.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The axis of an equatorial mount that is to point at the celestial pole.</source>
   <translation>Die Achse einer äquatorialen Montierung, die zum Himmelspol zeigen soll.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The bending of light in the air, which lifts stars; about half a degree at the horizon.</source>
   <translation>Die Brechung des Lichts in der Luft, die Sterne hebt; am Horizont etwa ein halbes Grad.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The celestial pole above your horizon: the northern one in the north, the southern one in the south.</source>
   <translation>Der Himmelspol über Ihrem Horizont: auf der Nordhalbkugel der nördliche, auf der Südhalbkugel der südliche.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The largest axis error that tonight's picture allows.</source>
   <translation>Der größte Achsfehler, den das Bild dieser Nacht erlaubt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The line from north through the zenith to south; stars culminate on it.</source>
   <translation>Die Linie von Norden durch den Zenit nach Süden; auf ihr kulminieren die Sterne.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The north offset is positive when the star moves north of where the mount points. Azimuth error: the end of the axis at the elevated pole lies at greater azimuth than the pole, that is east of it in the north and west of it in the south. Altitude error: that end is too high.</source>
   <translation>Die Abweichung nach Norden ist positiv, wenn der Stern nördlich von der Stelle wandert, auf die die Montierung zeigt. Azimutfehler: Das Ende der Achse am Pol über Ihrem Horizont liegt bei größerem Azimut als der Pol, also auf der Nordhalbkugel östlich, auf der Südhalbkugel westlich von ihm. Höhenfehler: Dieses Ende steht zu hoch.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The pages, from the top of the list</source>
   <translation>Die Seiten, von oben in der Liste</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The parallactic angle is followed through the exposure; a star at the corner of the field moves by the angle times its distance from the centre.</source>
   <translation>Der parallaktische Winkel wird durch die Belichtung verfolgt; ein Stern in der Ecke des Feldes bewegt sich um diesen Winkel mal seinen Abstand von der Mitte.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The parallactic angle is positive west of the meridian; the rotation rate is its rate of change.</source>
   <translation>Der parallaktische Winkel ist westlich vom Meridian positiv; die Drehgeschwindigkeit ist seine Änderung mit der Zeit.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The places of the stars are those of this minute: precession, nutation, aberration and proper motion from the catalogue, refraction by your air. What you see of the pole star in the sight is turned back into where the axis points.</source>
   <translation>Die Örter der Sterne gelten für diese Minute: Präzession, Nutation, Aberration und Eigenbewegung aus dem Katalog, Refraktion nach Ihrer Luft. Was Sie vom Polstern im Visier sehen, wird zurückgerechnet in die Richtung der Achse.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The pole stands as high as your latitude. The stars turn with your longitude and the clock: four minutes of error in the clock are one degree of turning. The air lifts everything near the horizon, more when it is cold and the pressure high.</source>
   <translation>Der Pol steht so hoch wie Ihre geografische Breite. Die Sterne drehen sich mit Ihrer Länge und der Uhr: Geht die Uhr um vier Minuten falsch, ist das ein Grad Drehung. Die Luft hebt alles nahe am Horizont, mehr bei Kälte und hohem Druck.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The rate is that of the parallactic angle, spherical trigonometry of the triangle pole, zenith, star.</source>
   <translation>Die Geschwindigkeit ist die des parallaktischen Winkels: sphärische Trigonometrie im Dreieck aus Pol, Zenit und Stern.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The right ascension that is on the meridian now.</source>
   <translation>Die Rektaszension, die gerade im Meridian steht.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The screws of the mount that move its axis sideways and up or down.</source>
   <translation>Die Schrauben der Montierung, die ihre Achse seitwärts oder auf und ab bewegen.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The stars of the whole field are followed through one exposure with the axis displaced. Guiding keeps one star still; what remains turns the field about it. The largest axis error whose smear stays within your limit is the budget.</source>
   <translation>Die Sterne des ganzen Feldes werden bei verschobener Achse durch eine Belichtung verfolgt. Guiding hält einen Stern still; was bleibt, dreht das Feld um ihn. Der größte Achsfehler, dessen Verwischung in Ihrer Grenze bleibt, ist der Spielraum.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The time between two turns of the bolts. All legs in it are solved together.</source>
   <translation>Die Zeit zwischen zwei Drehungen der Stellschrauben. Alle Etappen darin werden zusammen gelöst.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The time of each step is worked back from the target's beginning, step by step, by how long each takes; what needs stars cannot begin before them. Steps tick themselves when the program sees that they are done; a step is skipped only with a reason. Alignment counts as done when the axis error plus its ± is within the target.</source>
   <translation>Die Zeit jedes Schritts wird vom Beginn des Objekts aus zurückgerechnet, Schritt um Schritt, nach der Dauer eines jeden; was Sterne braucht, kann nicht vor ihnen beginnen. Schritte haken sich selbst ab, wenn das Programm sieht, dass sie getan sind; übersprungen wird ein Schritt nur mit einem Grund. Das Ausrichten gilt als getan, wenn der Achsfehler samt seinem ± innerhalb des Ziels liegt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The true value lies within it in nineteen cases of twenty.</source>
   <translation>In neunzehn von zwanzig Fällen liegt der wahre Wert darin.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The turning of the picture about the centre or about the guide star.</source>
   <translation>Die Drehung des Bildes um die Mitte oder um den Leitstern.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The wobble of the drive that repeats with every turn of the worm.</source>
   <translation>Das Schwanken des Antriebs, das sich mit jeder Umdrehung der Schnecke wiederholt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Through a list</source>
   <translation>Durch eine Liste</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Time scales and star places: ERFA, the library of the International Astronomical Union's standards (SOFA). Refraction: ERFA's refco, below 5° Bennett's form (Journal of Navigation 35, 255, 1982). Compass: World Magnetic Model 2025 (NOAA/NCEI and British Geological Survey).</source>
   <translation>Zeitskalen und Sternörter: ERFA, die Bibliothek der Standards der Internationalen Astronomischen Union (SOFA). Refraktion: refco aus ERFA, unter 5° nach Bennett (Journal of Navigation 35, 255, 1982). Kompass: World Magnetic Model 2025 (NOAA/NCEI und British Geological Survey).</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>To the ends of a plot or list</source>
   <translation>An die Enden einer Kurve oder Liste</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>To the next key or line, and back</source>
   <translation>Zur nächsten Taste oder Zeile, und zurück</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Turning a German equatorial mount over to the other side of the pier when the target has crossed the meridian.</source>
   <translation>Das Herumdrehen einer deutschen Montierung auf die andere Seite der Säule, wenn das Objekt durch den Meridian gegangen ist.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Welcome to Poleward</source>
   <translation>Willkommen bei Poleward</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>What a screw or gear turns before anything moves.</source>
   <translation>Was eine Schraube oder ein Getriebe dreht, bevor sich etwas bewegt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>What stands well tonight and when, when it is dark, when the Moon is up, when the mount must flip, and which stars to set the mount up by.</source>
   <translation>Was heute Nacht gut steht und wann, wann es dunkel ist, wann der Mond oben ist, wann die Montierung umschlagen muss und nach welchen Sternen sie einzurichten ist.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the Earth's axis points, as if there were no air.</source>
   <translation>Wohin die Achse der Erde zeigt, als gäbe es keine Luft.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the air makes the pole appear: a little higher than it is.</source>
   <translation>Wo die Luft den Pol erscheinen lässt: ein wenig höher, als er ist.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the mount stands, what the air is like, and whether the clock is right. Everything else follows from this page.</source>
   <translation>Wo die Montierung steht, wie die Luft ist und ob die Uhr richtig geht. Alles andere folgt aus dieser Seite.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the night is and what comes next. The checklist is made for this night: only steps that apply to your purpose, mount, power, hemisphere, cold and Moon, in the order they are done.</source>
   <translation>Wo die Nacht steht und was als Nächstes kommt. Die Checkliste ist für diese Nacht gemacht: nur Schritte, die zu Zweck, Montierung, Strom, Halbkugel, Kälte und Mond passen, in der Reihenfolge, in der sie getan werden.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Whether the mount carries the load, how the counterweights stand, how fine the image is, and which mount would suit you.</source>
   <translation>Ob die Montierung die Zuladung trägt, wie die Gegengewichte stehen, wie fein das Bild ist und welche Montierung zu Ihnen passt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>± (95 % range)</source>
   <translation>± (95-%-Bereich)</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>← →</source>
   <translation>← →</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>↑ ↓</source>
   <translation>↑ ↓</translation>
  </message>
 </context>
</TS>
