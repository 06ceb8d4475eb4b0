<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
 <context>
  <name>Poleward</name>
  <message>
   <location filename="app/compose.py" />
   <source>From the next start on: {language}.</source>
   <translation>Vom nächsten Start an: {language}.</translation>
  </message>
  <message>
   <location filename="app/compose.py" />
   <source>The program is not ready yet: drop the file once more.</source>
   <translation>Das Programm ist noch nicht bereit: Legen Sie die Datei noch einmal ab.</translation>
  </message>
  <message>
   <location filename="app/faults.py" />
   <source>Details are in {path}.</source>
   <translation>Einzelheiten stehen in {path}.</translation>
  </message>
  <message>
   <location filename="app/faults.py" />
   <source>Something in the program went wrong ({fault}); what you measured is kept.</source>
   <translation>Im Programm ist ein Fehler aufgetreten ({fault}); Ihre Messungen bleiben erhalten.</translation>
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Back</source>
   <translation>Zurück</translation>
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Enter your site</source>
   <translation>Standort eingeben</translation>
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Guide for the first start</source>
   <translation>Einführung beim ersten Start</translation>
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Next</source>
   <translation>Weiter</translation>
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>Skip the guide</source>
   <translation>Einführung überspringen</translation>
  </message>
  <message>
   <location filename="app/firstrun.py" />
   <source>{n} of {count}</source>
   <translation>{n} von {count}</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Another language is spoken from the next start on.</source>
   <translation>Eine andere Sprache gilt vom nächsten Start an.</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Close help</source>
   <translation>Hilfe schließen</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>From which source?</source>
   <translation>Aus welcher Quelle?</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Help</source>
   <translation>Hilfe</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Help: {page}</source>
   <translation>Hilfe: {page}</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>How is it computed?</source>
   <translation>Wie wird es berechnet?</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Keys</source>
   <translation>Tasten</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Language</source>
   <translation>Sprache</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Part of the help</source>
   <translation>Teil der Hilfe</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Text of the help</source>
   <translation>Text der Hilfe</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>This page</source>
   <translation>Diese Seite</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>What is this?</source>
   <translation>Was ist das?</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Which way is positive?</source>
   <translation>Welche Richtung ist positiv?</translation>
  </message>
  <message>
   <location filename="app/helppanel.py" />
   <source>Words</source>
   <translation>Wörter</translation>
  </message>
  <message>
   <location filename="app/helptexts.py" />
   <source>The texts of the help {file} cannot be read ({reason}). Install Poleward again.</source>
   <translation>Die Hilfetexte {file} lassen sich nicht lesen ({reason}). Installieren Sie Poleward neu.</translation>
  </message>
  <message>
   <location filename="app/leaving.py" />
   <source>Close and lose them</source>
   <translation>Schließen und verlieren</translation>
  </message>
  <message>
   <location filename="app/leaving.py" />
   <source>Copy the readings and stay</source>
   <translation>Ablesungen kopieren und bleiben</translation>
  </message>
  <message>
   <location filename="app/leaving.py" />
   <source>What you measured or wrote tonight is not on disk, because the log of nights cannot be written. If you close now, it is lost. Copied as a drift log, you can paste your readings into a text file and import them again.</source>
   <translation>Was Sie heute Nacht gemessen oder geschrieben haben, ist nicht auf der Platte, weil sich das Nachtbuch nicht schreiben lässt. Wenn Sie jetzt schließen, geht es verloren. Als Driftprotokoll kopiert, können Sie Ihre Ablesungen in eine Textdatei einfügen und wieder einlesen.</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Budget</source>
   <translation>Spielraum</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Drift</source>
   <translation>Drift</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Field rotation</source>
   <translation>Bildfelddrehung</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Log</source>
   <translation>Nachtbuch</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Mount</source>
   <translation>Montierung</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Night plan</source>
   <translation>Nachtplan</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Pole</source>
   <translation>Pol</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Site</source>
   <translation>Standort</translation>
  </message>
  <message>
   <location filename="app/pagemaking.py" />
   <source>Tonight</source>
   <translation>Heute Nacht</translation>
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
   <source>The altitude error</source>
   <translation>Der Höhenfehler</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>The axis as solved</source>
   <translation>Die Achse, wie gerechnet</translation>
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>The azimuth error</source>
   <translation>Der Azimutfehler</translation>
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
   <source> hours</source>
   <translation> Stunden</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source> seconds</source>
   <translation> Sekunden</translation>
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
   <source>The distance from guide star to farthest corner</source>
   <translation>Der Abstand vom Leitstern zur fernsten Ecke</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>The hour angle to begin at</source>
   <translation>Der Stundenwinkel am Beginn</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>The hour angle to end at</source>
   <translation>Der Stundenwinkel am Ende</translation>
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>The length of one exposure</source>
   <translation>Die Dauer einer Belichtung</translation>
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
   <location filename="app/pages/budget/question.py" />
   <source>for an axis exactly on the {aim}</source>
   <translation>für eine Achse genau auf dem Ziel ({aim})</translation>
  </message>
  <message>
   <location filename="app/pages/budget/question.py" />
   <source>for an axis {azimuth:g}′ off in azimuth and {altitude:g}′ in altitude</source>
   <translation>für eine Achse, die {azimuth:g}′ im Azimut und {altitude:g}′ in der Höhe daneben liegt</translation>
  </message>
  <message>
   <location filename="app/pages/budget/question.py" />
   <source>for an axis {size} off in azimuth, the most that is allowed</source>
   <translation>für eine Achse, die {size} im Azimut daneben liegt, so viel wie höchstens erlaubt</translation>
  </message>
  <message>
   <location filename="app/pages/budget/question.py" />
   <source>for the axis as solved now</source>
   <translation>für die Achse, wie sie jetzt berechnet ist</translation>
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
   <location filename="app/pages/budget/standing.py" />
   <source>{low:.2f} to {high:.2f}</source>
   <translation>{low:.2f} bis {high:.2f}</translation>
  </message>
  <message>
   <location filename="app/pages/budget/work.py" />
   <source>Map and curve {axis}. {longest}</source>
   <translation>Karte und Kurve {axis}. {longest}</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Lower</source>
   <translation>Senken</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Raise</source>
   <translation>Heben</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn by</source>
   <translation>Drehen um</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn by, in ′</source>
   <translation>Drehen um, in ′</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn east</source>
   <translation>Nach Osten drehen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn the bolts by so many ′; say “turned” when both are done</source>
   <translation>Drehen Sie die Stellschrauben um so viele ′; melden Sie „gedreht“, wenn beide fertig sind</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>Turn west</source>
   <translation>Nach Westen drehen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/bolts.py" />
   <source>amount</source>
   <translation>Betrag</translation>
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>Another star, or one by its coordinates</source>
   <translation>Ein anderer Stern, oder einer nach Koordinaten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>How you measure</source>
   <translation>Wie Sie messen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>One drift</source>
   <translation>Eine Drift</translation>
  </message>
  <message>
   <location filename="app/pages/drift/byhand.py" />
   <source>Read several times</source>
   <translation>Mehrmals ablesen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/choosing.py" />
   <source>Chart of the sky</source>
   <translation>Karte des Himmels</translation>
  </message>
  <message>
   <location filename="app/pages/drift/choosing.py" />
   <source>Stars to watch, the best first</source>
   <translation>Sterne zum Beobachten, der beste zuerst</translation>
  </message>
  <message>
   <location filename="app/pages/drift/choosing.py" />
   <source>The sky now, and the stars that tell most</source>
   <translation>Der Himmel jetzt, und die Sterne, die am meisten verraten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/fieldpanel.py" />
   <source>Field in view</source>
   <translation>Feld im Blick</translation>
  </message>
  <message>
   <location filename="app/pages/drift/fieldpanel.py" />
   <source>The shorter way across</source>
   <translation>Quer, in der kürzeren Richtung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/fieldpanel.py" />
   <source>from the equipment</source>
   <translation>aus der Ausrüstung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Between them</source>
   <translation>Dazwischen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Follow tonight’s budget</source>
   <translation>Nach dem Spielraum von heute Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Goal</source>
   <translation>Ziel</translation>
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Goal: {goal}</source>
   <translation>Ziel: {goal}</translation>
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>How near the axis is to come</source>
   <translation>Wie nahe die Achse kommen soll</translation>
  </message>
  <message>
   <location filename="app/pages/drift/goal.py" />
   <source>Your own goal</source>
   <translation>Eigenes Ziel</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>Both bolts are turned</source>
   <translation>Beide Stellschrauben sind gedreht</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>I cannot tell</source>
   <translation>Ich kann es nicht sagen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>It went north</source>
   <translation>Er ging nach Norden</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>It went south</source>
   <translation>Er ging nach Süden</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>Look again</source>
   <translation>Noch einmal nachsehen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>My view is mirrored</source>
   <translation>Mein Bild ist gespiegelt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>Next star</source>
   <translation>Nächster Stern</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>The tripod was moved</source>
   <translation>Das Stativ wurde bewegt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>Turned, but otherwise</source>
   <translation>Gedreht, aber anders</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>Watch this star</source>
   <translation>Diesen Stern beobachten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidance.py" />
   <source>Which way is north?</source>
   <translation>Wo ist Norden?</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guideband.py" />
   <source>What to do next</source>
   <translation>Was als Nächstes zu tun ist</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guideband.py" />
   <source>{words} ({letter})</source>
   <translation>{words} ({letter})</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>A telescope that moves north sees the star go south. In a mirrored view it is read the other way round; then the readings are turned over.</source>
   <translation>Ein Teleskop, das nach Norden fährt, sieht den Stern nach Süden gehen. In einem gespiegelten Bild liest man es umgekehrt; dann werden die Ablesungen umgedreht.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>After this turn {chance}.</source>
   <translation>Nach dieser Drehung gilt: {chance}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Enough is known: turning the bolts now helps more than watching on.</source>
   <translation>Genug ist bekannt: Die Stellschrauben zu drehen hilft jetzt mehr als weiter zu beobachten.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Five more minutes on {star} would bring the ± from {before} to {after}.</source>
   <translation>Fünf Minuten mehr an {star} brächten das ± von {before} auf {after}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Go on reading: the first answer takes about half a minute.</source>
   <translation>Lesen Sie weiter ab: Die erste Antwort dauert etwa eine halbe Minute.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Good enough: {chance}.</source>
   <translation>Gut genug: {chance}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Looking for the best star …</source>
   <translation>Der beste Stern wird gesucht …</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Move the telescope a little north with the mount's own key. Which way did the star go?</source>
   <translation>Bewegen Sie das Teleskop mit der Taste der Montierung ein wenig nach Norden. Wohin ging der Stern?</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>One star alone leaves the other direction open.</source>
   <translation>Ein Stern allein lässt die andere Richtung offen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>The legs contradict one another: in their list, exchange north and south of the wrong one or discard it. Another star may show which it is.</source>
   <translation>Die Etappen widersprechen einander: Vertauschen Sie in ihrer Liste Norden und Süden der falschen, oder verwerfen Sie sie. Ein weiterer Stern zeigt vielleicht, welche es ist.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>This star has told enough: another one helps more now.</source>
   <translation>Dieser Stern hat genug verraten: Ein anderer hilft jetzt mehr.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Turn both bolts; finish every turn in the same sense, so that the play is taken up.</source>
   <translation>Drehen Sie beide Stellschrauben; beenden Sie jede Drehung im selben Sinn, damit kein Spiel bleibt.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Turn the bolts only when the figures above are good enough for you.</source>
   <translation>Drehen Sie die Stellschrauben erst, wenn Ihnen die Werte oben gut genug sind.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Watch on.</source>
   <translation>Weiter beobachten.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>Which way is north is not known: the first turn will tell.</source>
   <translation>Wo Norden ist, ist nicht bekannt: Die erste Drehung wird es zeigen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>how near the axis is to the {aim} is not known</source>
   <translation>wie nahe die Achse dem Ziel ({aim}) ist, ist nicht bekannt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>more than a degree</source>
   <translation>mehr als ein Grad</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>the axis is within {target:g}′ of the {aim} with a chance of {chance} %</source>
   <translation>die Achse liegt mit {chance} % Wahrscheinlichkeit höchstens {target:g}′ neben dem Ziel ({aim})</translation>
  </message>
  <message>
   <location filename="app/pages/drift/guidewords.py" />
   <source>± {width} now.</source>
   <translation>Jetzt ± {width}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>1 line was not used:</source>
   <translation>1 Zeile wurde nicht verwendet:</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>A text file with the columns {columns}; times in UTC.</source>
   <translation>Eine Textdatei mit den Spalten {columns}; Zeiten in UTC.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Choose a file</source>
   <translation>Datei wählen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Every line was used.</source>
   <translation>Jede Zeile wurde verwendet.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Lines that were not used, with the reasons</source>
   <translation>Zeilen, die nicht verwendet wurden, mit den Gründen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Reading {file} …</source>
   <translation>{file} wird gelesen …</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Share of the file that is read</source>
   <translation>Gelesener Teil der Datei</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Stop reading</source>
   <translation>Lesen anhalten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Stopped; nothing was taken from the file.</source>
   <translation>Angehalten; aus der Datei wurde nichts übernommen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Taken: {readings:,} readings in 1 leg.</source>
   <translation>Übernommen: {readings:,} Ablesungen in 1 Etappe.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>Taken: {readings:,} readings in {legs} legs.</source>
   <translation>Übernommen: {readings:,} Ablesungen in {legs} Etappen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>{lines:,} lines were not used:</source>
   <translation>{lines:,} Zeilen wurden nicht verwendet:</translation>
  </message>
  <message>
   <location filename="app/pages/drift/importing.py" />
   <source>… and {more:,} more.</source>
   <translation>… und {more:,} weitere.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Contradicts the others.</source>
   <translation>Widerspricht den anderen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Discard</source>
   <translation>Verwerfen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Discard it</source>
   <translation>Ja, verwerfen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Discard the leg {leg}</source>
   <translation>Etappe {leg} verwerfen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Exchange back</source>
   <translation>Zurücktauschen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Exchange north and south</source>
   <translation>Nord und Süd vertauschen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Exchange north and south of the leg {leg}</source>
   <translation>Norden und Süden der Etappe {leg} vertauschen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>Keep it</source>
   <translation>Behalten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/leglist.py" />
   <source>{star}, watched now</source>
   <translation>{star}, wird gerade beobachtet</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>, a gap of {minutes:.1f} min</source>
   <translation>, eine Lücke von {minutes:.1f} min</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>, {number} gaps of up to {minutes:.1f} min</source>
   <translation>, {number} Lücken von bis zu {minutes:.1f} min</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>1 reading in {minutes:.1f} min</source>
   <translation>1 Ablesung in {minutes:.1f} min</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>no drift known yet</source>
   <translation>noch keine Drift bekannt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>no drift within the ±</source>
   <translation>keine Drift innerhalb des ±</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>on the meridian</source>
   <translation>auf dem Meridian</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>{count:,} readings in {minutes:.1f} min</source>
   <translation>{count:,} Ablesungen in {minutes:.1f} min</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>{extent}, {aside} set aside</source>
   <translation>{extent}, davon {aside} beiseitegelegt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>{hours:.1f} h east of the meridian</source>
   <translation>{hours:.1f} h östlich des Meridians</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>{hours:.1f} h west of the meridian</source>
   <translation>{hours:.1f} h westlich des Meridians</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>{rate}″ ± {width}″ a minute, {side}</source>
   <translation>{rate}″ ± {width}″ je Minute: {side}</translation>
  </message>
  <message>
   <location filename="app/pages/drift/legwords.py" />
   <source>{where}, {altitude:.0f}° high</source>
   <translation>{where}, {altitude:.0f}° hoch</translation>
  </message>
  <message>
   <location filename="app/pages/drift/logquestion.py" />
   <source>Begin a new state with the log</source>
   <translation>Neuer Achsenstand mit dem Protokoll</translation>
  </message>
  <message>
   <location filename="app/pages/drift/logquestion.py" />
   <source>Leave the log</source>
   <translation>Protokoll weglassen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/logquestion.py" />
   <source>Solve them together</source>
   <translation>Zusammen lösen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/logquestion.py" />
   <source>The legs here have changed since the question was asked, and nothing was taken: read the log again.</source>
   <translation>Die Etappen hier haben sich seit der Frage geändert, und nichts wurde übernommen: Lesen Sie das Protokoll noch einmal ein.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/logquestion.py" />
   <source>The log was left; nothing was taken from it.</source>
   <translation>Das Protokoll blieb weg; nichts wurde daraus übernommen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/northset.py" />
   <source>By eye</source>
   <translation>Geschätzt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/northset.py" />
   <source>How well north of the eyepiece or camera was set</source>
   <translation>Wie genau Norden von Okular oder Kamera gestellt wurde</translation>
  </message>
  <message>
   <location filename="app/pages/drift/northset.py" />
   <source>Measured</source>
   <translation>Gemessen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/northset.py" />
   <source>North of the eyepiece or camera was measured; good to {angle:g}°.</source>
   <translation>Norden von Okular oder Kamera ist gemessen; auf {angle:g}° genau.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/northset.py" />
   <source>North of the eyepiece or camera was set by eye; good to {angle:g}°.</source>
   <translation>Norden von Okular oder Kamera ist nach Augenmaß gestellt; auf {angle:g}° genau.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/northset.py" />
   <source>North of the eyepiece or camera: the star, moved with the hand control or pushed, ran along the line; good to {angle:g}°.</source>
   <translation>Norden von Okular oder Kamera: Der Stern, mit der Handsteuerung oder von Hand bewegt, lief die Linie entlang; auf {angle:g}° genau.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/northset.py" />
   <source>Star nudged</source>
   <translation>Stern bewegt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/notes.py" />
   <source>Only the motion to the north or south tells of the axis: the motion to the east or west carries the periodic error of the drive, and tells how far the reticle is turned.</source>
   <translation>Nur die Bewegung nach Nord oder Süd sagt etwas über die Achse: Die Bewegung nach Ost oder West trägt den periodischen Fehler des Antriebs und sagt, wie weit das Fadenkreuz gedreht ist.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/notes.py" />
   <source>The ± contains the air, the step of the readings, a reticle turned by some {angle:g}°, slow wander of the field and a tube that yields {flexure:g}″ per g. It cannot know of a wrong star, a wrong place or time, a base that moves, or a tube that yields more.</source>
   <translation>Das ± enthält die Luft, die Stufen der Ablesungen, ein um etwa {angle:g}° verdrehtes Fadenkreuz, langsames Wandern des Feldes und ein Rohr, das {flexure:g}″ je g nachgibt. Es kann nichts wissen von einem falschen Stern, falschem Ort oder falscher Zeit, einem Untergrund, der sich bewegt, oder einem Rohr, das mehr nachgibt.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/notes.py" />
   <source>Worth knowing</source>
   <translation>Gut zu wissen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/offset.py" />
   <source>“{typed}” is not a number; the {what} needs one.</source>
   <translation>„{typed}“ ist keine Zahl; hier wird eine gebraucht: {what}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Another crooked mount</source>
   <translation>Eine andere schiefe Montierung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>East</source>
   <translation>Ost</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>In the practice night it is {time} UTC</source>
   <translation>In der Übungsnacht ist es {time} UTC</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>In truth the axis points {azimuth:.1f}′ {east} and is {altitude:.1f}′ {high}.</source>
   <translation>In Wahrheit zeigt die Achse {azimuth:.1f}′ {east} und ist {altitude:.1f}′ {high}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Meridian</source>
   <translation>Meridian</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Or a star by where it stands, with its altitude</source>
   <translation>Oder ein Stern danach, wo er steht, mit seiner Höhe</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Pause</source>
   <translation>Pause</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Show how close I came</source>
   <translation>Zeigen, wie nahe ich kam</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Speed of the night</source>
   <translation>Geschwindigkeit der Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Watch {star}, {altitude:.0f}° high, {where}</source>
   <translation>{star} beobachten, {altitude:.0f}° hoch, {where}</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>West</source>
   <translation>West</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>Where to look</source>
   <translation>Wohin schauen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>{star} {altitude:.0f}°</source>
   <translation>{star} {altitude:.0f}°</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practice.py" />
   <source>{star}, practice</source>
   <translation>{star}, Übung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>Back to tonight</source>
   <translation>Zurück zu heute Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>Practice</source>
   <translation>Üben</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>Practice at {where}: nothing here is kept; your own night is untouched.</source>
   <translation>Übung, Standort {where}: Hier wird nichts gespeichert; Ihre eigene Nacht bleibt unberührt.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/practiceband.py" />
   <source>your site</source>
   <translation>Ihr Standort</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Arcsec in one division or pixel</source>
   <translation>Bogensekunden in einem Teilstrich oder Pixel</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Arcsec ″</source>
   <translation>Bogensekunden ″</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Divisions or pixels</source>
   <translation>Teilstriche oder Pixel</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Done with this star</source>
   <translation>Fertig mit diesem Stern</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Moment kept: {t} UTC. Now type the offset.</source>
   <translation>Zeitpunkt gemerkt: {t} UTC. Geben Sie nun die Abweichung ein.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>North (N)</source>
   <translation>Norden (N)</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Not taken; the reason stands above.</source>
   <translation>Nicht übernommen; der Grund steht oben.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Offset of the star from where it was</source>
   <translation>Abweichung des Sterns von seinem früheren Ort</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Read now (Space)</source>
   <translation>Jetzt ablesen (Leertaste)</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Reading error, in ″ (one standard deviation)</source>
   <translation>Ablesefehler, in ″ (eine Standardabweichung)</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Side</source>
   <translation>Seite</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>South (S)</source>
   <translation>Süden (S)</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Taken: {size:g} {side}.</source>
   <translation>Übernommen: {size:g} {side}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>The last reading is taken back.</source>
   <translation>Die letzte Ablesung ist zurückgenommen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>The reading error must be more than 0.</source>
   <translation>Der Ablesefehler muss größer als 0 sein.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>There is no reading to take back.</source>
   <translation>Es gibt keine Ablesung zum Zurücknehmen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Undo last reading</source>
   <translation>Letzte Ablesung zurücknehmen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Unit</source>
   <translation>Einheit</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>Watching {star}. Put it on a mark of the reticle and read 0 first.</source>
   <translation>{star} wird beobachtet. Stellen Sie ihn auf eine Marke des Fadenkreuzes und lesen Sie zuerst 0 ab.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>divisions</source>
   <translation>Teilstriche</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>offset</source>
   <translation>Abweichung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>reading error</source>
   <translation>Ablesefehler</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>scale</source>
   <translation>Maßstab</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readingpad.py" />
   <source>{star} was being watched. If it still stands by the same mark, read on; otherwise choose it again.</source>
   <translation>{star} wurde beobachtet. Steht er noch an derselben Marke, lesen Sie weiter ab; sonst wählen Sie ihn neu.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>By hand</source>
   <translation>Von Hand</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>Drift log</source>
   <translation>Driftprotokoll</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>Practice sky</source>
   <translation>Übungshimmel</translation>
  </message>
  <message>
   <location filename="app/pages/drift/readings.py" />
   <source>Readings from</source>
   <translation>Ablesungen aus</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Another star</source>
   <translation>Ein anderer Stern</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>At a UTC time</source>
   <translation>Zu einer Zeit in UTC</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Date and time, UTC</source>
   <translation>Datum und Zeit, UTC</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Ending</source>
   <translation>Ende</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Ending now</source>
   <translation>Ende jetzt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>In so many minutes</source>
   <translation>In so vielen Minuten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>It moved, in ″</source>
   <translation>Er bewegte sich um, in ″</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>North</source>
   <translation>Norden</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>South</source>
   <translation>Süden</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>To the</source>
   <translation>Nach</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>Work it out</source>
   <translation>Berechnen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>movement</source>
   <translation>Bewegung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/singledrift.py" />
   <source>number of minutes</source>
   <translation>Zahl der Minuten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Rising: a star or the alignment is good enough. Falling: the star leaves. Ticks: turn on. A long one: stop.</source>
   <translation>Steigend: Ein Stern oder die Ausrichtung ist gut genug. Fallend: Der Stern geht aus dem Feld. Ticken: weiterdrehen. Ein langer Ton: Halt.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Silent</source>
   <translation>Stumm</translation>
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Sounds</source>
   <translation>Töne</translation>
  </message>
  <message>
   <location filename="app/pages/drift/soundpanel.py" />
   <source>Tones</source>
   <translation>Töne</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>All</source>
   <translation>Alle</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Bright stars up now</source>
   <translation>Helle Sterne, die jetzt am Himmel stehen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Declination, J2000</source>
   <translation>Deklination, J2000</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Enter your site: then the bright stars that are up now stand here. A star can be typed without it.</source>
   <translation>Geben Sie Ihren Standort ein: dann stehen hier die hellen Sterne, die jetzt am Himmel sind. Ein Stern lässt sich auch ohne ihn eintippen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>My star</source>
   <translation>Mein Stern</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Name, as you like it</source>
   <translation>Name, wie Sie mögen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>No bright star stands there now.</source>
   <translation>Dort steht jetzt kein heller Stern.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Right ascension, J2000</source>
   <translation>Rektaszension, J2000</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Type one</source>
   <translation>Eingeben</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starchoice.py" />
   <source>Which stars</source>
   <translation>Welche Sterne</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>Azimuth {azimuth:.0f}°, altitude {altitude:.0f}°; right ascension {hours} h {minutes:02d} m, declination {declination}° ({constellation}).</source>
   <translation>Azimut {azimuth:.0f}°, Höhe {altitude:.0f}°; Rektaszension {hours} h {minutes:02d} m, Deklination {declination}° ({constellation}).</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>about {minutes:.0f} min to the goal</source>
   <translation>etwa {minutes:.0f} min bis zum Ziel</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>about {minutes:.0f} min to the goal, {more:.0f} more than the best</source>
   <translation>etwa {minutes:.0f} min bis zum Ziel, {more:.0f} mehr als beim besten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>goal in over an hour</source>
   <translation>Ziel in über einer Stunde</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>goal in {minutes:.0f} min</source>
   <translation>Ziel in {minutes:.0f} min</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>mag {magnitude:.1f}</source>
   <translation>{magnitude:.1f} mag</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>more than an hour to the goal</source>
   <translation>mehr als eine Stunde bis zum Ziel</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>shows azimuth and altitude mixed</source>
   <translation>zeigt Azimut und Höhe gemischt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>{star} next: {where}, {altitude:.0f}° high. It {shows}.</source>
   <translation>Als Nächstes {star}: {where}, {altitude:.0f}° hoch. Er {shows}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>± {width:.1f}′ in 5 min, {goal}</source>
   <translation>± {width:.1f}′ in 5 min, {goal}</translation>
  </message>
  <message>
   <location filename="app/pages/drift/starwords.py" />
   <source>± {width} after five minutes</source>
   <translation>± {width} nach fünf Minuten</translation>
  </message>
  <message>
   <location filename="app/pages/drift/steerchart.py" />
   <source>Bring the star here.</source>
   <translation>Bringen Sie den Stern hierher.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/steerchart.py" />
   <source>The star now.</source>
   <translation>Der Stern jetzt.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/steerchart.py" />
   <source>The star’s place lies outside the field, this way.</source>
   <translation>Der Platz des Sterns liegt außerhalb des Feldes, in dieser Richtung.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/suitability.py" />
   <source>magnitude {magnitude:.1f}</source>
   <translation>Helligkeit {magnitude:.1f}</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>A base leans by 0 to {most:g} degrees.</source>
   <translation>Ein Unterbau ist um 0 bis {most:g} Grad geneigt.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Altitude bolt</source>
   <translation>Höhenschraube</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Azimuth bolts</source>
   <translation>Azimutschrauben</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>If not, the azimuth bolts move the altitude as well. Read a spirit level, or leave it empty; a degree hardly matters for small turns.</source>
   <translation>Wenn nicht, verstellen die Azimutschrauben auch die Höhe. Lesen Sie eine Wasserwaage ab oder lassen Sie es leer; bei kleinen Drehungen macht ein Grad kaum etwas aus.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Is the base level?</source>
   <translation>Steht der Unterbau waagrecht?</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>The base leans by so many degrees</source>
   <translation>Der Unterbau ist um so viel Grad geneigt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>The field in view, with the star and its place</source>
   <translation>Das Feld im Blick, mit dem Stern und seinem Platz</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>Turns you made, if you count them (the other way: −)</source>
   <translation>Ihre Umdrehungen, falls Sie sie zählen (andersherum: −)</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>down towards azimuth, in degrees</source>
   <translation>abwärts in Richtung Azimut, in Grad</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>lean of the base</source>
   <translation>Neigung des Unterbaus</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turning.py" />
   <source>number of turns</source>
   <translation>Zahl der Umdrehungen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>+ way</source>
   <translation>+</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>, against the last turn</source>
   <translation>, gegen die letzte Drehung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>, the same way as last time</source>
   <translation>, in derselben Richtung wie zuletzt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>About {turns:.2f} ± {width:.2f} turns by the mount’s data sheet; which way is learned from the first turn you count.</source>
   <translation>Etwa {turns:.2f} ± {width:.2f} Umdrehungen nach dem Datenblatt der Montierung; die Richtung lernt das Programm aus der ersten Drehung, die Sie zählen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>About {turns:.2f} ± {width:.2f} turns.</source>
   <translation>Etwa {turns:.2f} ± {width:.2f} Umdrehungen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>By the whole turn the star in view moves {far_north} to the {north} and {far_east} to the {east}: steer it there with the bolts.</source>
   <translation>Durch die ganze Drehung wandert der Stern im Blick {far_north} (Richtung: {north}) und {far_east} (Richtung: {east}): Steuern Sie ihn mit den Stellschrauben dorthin.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>Learned: {size:.1f}′ ± {width:.1f}′ a turn, play {play:.1f}′ ± {play_width:.1f}′, from {number} turns.</source>
   <translation>Gelernt: {size:.1f}′ ± {width:.1f}′ je Umdrehung, Spiel {play:.1f}′ ± {play_width:.1f}′, aus {number} Drehungen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>That is beyond the field ({across:.3g}′ across): stop before the star leaves it, say that the bolts are turned, watch again, and turn the rest.</source>
   <translation>Das reicht über das Feld ({across:.3g}′) hinaus: Halten Sie an, bevor der Stern es verlässt, melden Sie die Stellschrauben als gedreht, beobachten Sie wieder und drehen Sie den Rest.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>The star in view hardly moves by this turn.</source>
   <translation>Durch diese Drehung bewegt sich der Stern im Blick kaum.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>Turn it the {way}{relation}: on this mount turns counted as + move the axis {plus}.</source>
   <translation>Drehen Sie in Richtung {way}{relation}: An dieser Montierung bewegen als + gezählte Umdrehungen die Achse so: {plus}.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>Which way is open: the turns counted so far moved the axis now one way, now the other. Count the other way as minus.</source>
   <translation>Die Richtung ist offen: Die bisher gezählten Umdrehungen bewegten die Achse bald so, bald andersherum. Zählen Sie die andere Richtung als Minus.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>down</source>
   <translation>abwärts</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>so far {seen:.1f}′ of {wanted:.1f}′</source>
   <translation>bisher {seen:.1f}′ von {wanted:.1f}′</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>stop</source>
   <translation>Halt</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>there</source>
   <translation>erreicht</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>too far: {seen:.1f}′ of {wanted:.1f}′</source>
   <translation>zu weit: {seen:.1f}′ von {wanted:.1f}′</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>up</source>
   <translation>aufwärts</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>{left:.1f}′ to go</source>
   <translation>noch {left:.1f}′</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>{seen:.1f}′ the other way so far</source>
   <translation>bisher {seen:.1f}′ in die andere Richtung</translation>
  </message>
  <message>
   <location filename="app/pages/drift/turnwords.py" />
   <source>− way</source>
   <translation>−</translation>
  </message>
  <message>
   <location filename="app/pages/drift/verdictwords.py" />
   <source>Aligning on the {aim}. The ± is the 95 % range.</source>
   <translation>Ziel der Achse: {aim}. Das ± ist der 95-%-Bereich.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/verdictwords.py" />
   <source>Enter your site: with it these legs can tell.</source>
   <translation>Geben Sie Ihren Standort ein: Mit ihm sagen diese Etappen etwas.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/verdictwords.py" />
   <source>Watch a star to find out.</source>
   <translation>Beobachten Sie einen Stern, um es herauszufinden.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/verdictwords.py" />
   <source>Watching {star}: the first answer takes about half a minute.</source>
   <translation>{star} wird beobachtet: Die erste Antwort dauert etwa eine halbe Minute.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/watchwords.py" />
   <source>No reading for {minutes:.1f} min (clouds?): what was read still counts.</source>
   <translation>Seit {minutes:.1f} min keine Ablesung (Wolken?): Was abgelesen wurde, zählt weiter.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/watchwords.py" />
   <source>The star goes behind the horizon in about {minutes:.0f} min.</source>
   <translation>Der Stern geht in etwa {minutes:.0f} min hinter den Horizont.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/watchwords.py" />
   <source>The star has moved {moved:.1f}′ and may leave the field ({across:.3g}′ across): bring it back and begin a new leg on it; both legs count.</source>
   <translation>Der Stern hat sich um {moved:.1f}′ bewegt und verlässt vielleicht das Feld ({across:.3g}′): Holen Sie ihn zurück und beginnen Sie eine neue Etappe mit ihm; beide Etappen zählen.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/watchwords.py" />
   <source>The star is behind the horizon now: end this leg; what was read still counts.</source>
   <translation>Der Stern steht jetzt hinter dem Horizont: Beenden Sie diese Etappe; was abgelesen wurde, zählt weiter.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>A CSV file with times and offsets of one or more stars.</source>
   <translation>Eine CSV-Datei mit Zeiten und Abweichungen eines oder mehrerer Sterne.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>A star that is tracked by a mount with a crooked axis creeps slowly north or south. Watch how far one creeps near the meridian, then another low in the east or west: from the two, this page works out where the axis points and which bolt to turn.</source>
   <translation>Ein Stern, dem eine Montierung mit schiefer Achse folgt, kriecht langsam nach Norden oder Süden. Beobachten Sie, wie weit einer nahe am Meridian kriecht, dann ein anderer tief im Osten oder Westen: Aus beiden berechnet diese Seite, wohin die Achse zeigt und welche Stellschraube zu drehen ist.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>At a reticle eyepiece or a live view: type the offset, press one key.</source>
   <translation>Am Fadenkreuzokular oder Livebild: die Abweichung eingeben, eine Taste drücken.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Import a drift log</source>
   <translation>Driftprotokoll einlesen</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>No telescope needed: a made-up mount to align in five minutes.</source>
   <translation>Ohne Teleskop: eine erfundene Montierung, in fünf Minuten auszurichten.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Type readings by hand</source>
   <translation>Ablesungen eingeben</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Where are you?</source>
   <translation>Wo sind Sie?</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Where does the axis point, and what do I turn?</source>
   <translation>Wohin zeigt die Achse, und was drehe ich?</translation>
  </message>
  <message>
   <location filename="app/pages/drift/waysin.py" />
   <source>Your latitude and longitude are needed to read the sky.</source>
   <translation>Ihre geografische Breite und Länge werden gebraucht, um den Himmel zu deuten.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>After a turn the legs so far say nothing about the axis.</source>
   <translation>Nach einer Drehung sagen die bisherigen Etappen nichts mehr über die Achse.</translation>
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>I have turned the bolts</source>
   <translation>Ich habe die Stellschrauben gedreht</translation>
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>Legs since the bolts were last turned</source>
   <translation>Etappen seit der letzten Drehung der Stellschrauben</translation>
  </message>
  <message>
   <location filename="app/pages/drift/work.py" />
   <source>None yet: choose a star and watch it.</source>
   <translation>Noch keine: Wählen Sie einen Stern und beobachten Sie ihn.</translation>
  </message>
  <message>
   <location filename="app/pages/eveningpage.py" />
   <source>Being worked out …</source>
   <translation>Wird berechnet …</translation>
  </message>
  <message>
   <location filename="app/pages/eveningpage.py" />
   <source>Part of the page</source>
   <translation>Teil der Seite</translation>
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>Show times in UTC</source>
   <translation>Zeiten in UTC zeigen</translation>
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>Times are in UTC.</source>
   <translation>Zeiten sind in UTC.</translation>
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>Times of {zone}, {offset}.</source>
   <translation>Zeiten von {zone}, {offset}.</translation>
  </message>
  <message>
   <location filename="app/pages/headline.py" />
   <source>UTC</source>
   <translation>UTC</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source> hPa</source>
   <translation> hPa</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source> °C</source>
   <translation> °C</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Alignment {n}</source>
   <translation>Ausrichtung {n}</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Between which turns of the bolts</source>
   <translation>Zwischen welchen Drehungen der Stellschrauben</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>It could not be worked out because of a fault in the program.</source>
   <translation>Wegen eines Fehlers im Programm ließ es sich nicht berechnen.</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>It is being worked out …</source>
   <translation>Es wird berechnet …</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Refracted pole</source>
   <translation>Gehobener Pol</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Solve again</source>
   <translation>Neu berechnen</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Solve again with other choices</source>
   <translation>Mit anderen Vorgaben neu berechnen</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Solved again; the night itself stays as it is.</source>
   <translation>Neu berechnet; die Nacht selbst bleibt, wie sie ist.</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>The night itself stays as it is; tube, drive and the setting of north count as they stand now.</source>
   <translation>Die Nacht selbst bleibt, wie sie ist; Rohr, Antrieb und die Einstellung von Norden zählen, wie sie jetzt gelten.</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>The pressure at the station</source>
   <translation>Der Luftdruck am Standort</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>The temperature</source>
   <translation>Die Temperatur</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>True pole</source>
   <translation>Wahrer Pol</translation>
  </message>
  <message>
   <location filename="app/pages/log/again.py" />
   <source>Use the leg {leg}</source>
   <translation>Etappe {leg} verwenden</translation>
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Add what “{file}” holds to the log? Nothing here is replaced.</source>
   <translation>Den Inhalt von „{file}“ ins Nachtbuch aufnehmen? Hier wird nichts ersetzt.</translation>
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Choose a backup or an exported night</source>
   <translation>Sicherung oder exportierte Nacht wählen</translation>
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Choose a damaged log of nights</source>
   <translation>Beschädigtes Nachtbuch wählen</translation>
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>No, leave it</source>
   <translation>Nein, lassen</translation>
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Save a backup of the log</source>
   <translation>Sicherung des Nachtbuchs speichern</translation>
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Save the night</source>
   <translation>Die Nacht speichern</translation>
  </message>
  <message>
   <location filename="app/pages/log/carrying.py" />
   <source>Yes, add it</source>
   <translation>Ja, aufnehmen</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Bolt scale</source>
   <translation>Gang der Stellschrauben</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Error reached</source>
   <translation>Erreichter Fehler</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Minutes spent</source>
   <translation>Gebrauchte Minuten</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Nights compared</source>
   <translation>Nächte im Vergleich</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>No night in the log has this figure yet.</source>
   <translation>Noch keine Nacht im Nachtbuch hat diesen Wert.</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>Periodic error</source>
   <translation>Periodischer Fehler</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>What is compared</source>
   <translation>Was verglichen wird</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>altitude bolt</source>
   <translation>Höhenschraube</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>as it was meant</source>
   <translation>wie beabsichtigt</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>axis error reached, arcminutes</source>
   <translation>erreichter Achsenfehler, Bogenminuten</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>azimuth bolt</source>
   <translation>Azimutschraube</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>error reached</source>
   <translation>erreichter Fehler</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>minutes spent</source>
   <translation>gebrauchte Minuten</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>minutes, first leg to result</source>
   <translation>Minuten, erste Etappe bis Ergebnis</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>moved over meant</source>
   <translation>bewegt zu beabsichtigt</translation>
  </message>
  <message>
   <location filename="app/pages/log/comparing.py" />
   <source>peak to peak, arcseconds</source>
   <translation>von Spitze zu Spitze, Bogensekunden</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>All files (*)</source>
   <translation>Alle Dateien (*)</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>No, keep it</source>
   <translation>Nein, behalten</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>Nothing was changed.</source>
   <translation>Nichts wurde geändert.</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>These files ({pattern})</source>
   <translation>Diese Dateien ({pattern})</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>This could not be done because of a fault in the program.</source>
   <translation>Wegen eines Fehlers im Programm war das nicht möglich.</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>Working on the file …</source>
   <translation>Die Datei wird bearbeitet …</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>Yes, replace it</source>
   <translation>Ja, ersetzen</translation>
  </message>
  <message>
   <location filename="app/pages/log/filebar.py" />
   <source>“{file}” is there already. Replace it?</source>
   <translation>„{file}“ gibt es schon. Ersetzen?</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>A backup or a night exported as JSON: what it holds is added to this log. Nothing that is here is replaced or lost.</source>
   <translation>Eine Sicherung oder eine als JSON exportierte Nacht: Ihr Inhalt kommt zu diesem Nachtbuch hinzu. Nichts, was hier ist, wird ersetzt oder geht verloren.</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>A damaged log is salvaged by itself: the old file is kept untouched beside a new one, all that can be read is saved into the new one, and you are told how much that is. Any other damaged log, whatever its name, can be salvaged into this log here. Choose the log in use to have it looked through.</source>
   <translation>Ein beschädigtes Nachtbuch wird von selbst gerettet: Die alte Datei bleibt unberührt neben einer neuen, alles Lesbare kommt in die neue, und Sie erfahren, wie viel das ist. Jedes andere beschädigte Nachtbuch, wie es auch heißt, lässt sich hier in dieses retten. Wählen Sie das benutzte Nachtbuch, um es durchsehen zu lassen.</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>All nights, all readings and all settings in one file. It is read back before you are told that it is good. Put it on another disk than this one.</source>
   <translation>Alle Nächte, alle Ablesungen und alle Einstellungen in einer Datei. Sie wird zurückgelesen, bevor sie für gut erklärt wird. Legen Sie sie auf einen anderen Datenträger als diesen.</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Backup</source>
   <translation>Sicherung</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>If the log is damaged</source>
   <translation>Wenn das Nachtbuch beschädigt ist</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Restore and import</source>
   <translation>Zurückholen und einlesen</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Restore or import</source>
   <translation>Zurückholen oder einlesen</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Salvage a damaged log file…</source>
   <translation>Beschädigtes Nachtbuch retten…</translation>
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>Save a backup</source>
   <translation>Sicherung speichern</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>1 night.</source>
   <translation>1 Nacht.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Found in 1 night.</source>
   <translation>In 1 Nacht gefunden.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Found in {n} nights.</source>
   <translation>In {n} Nächten gefunden.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Nights</source>
   <translation>Nächte</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Nights, the newest first</source>
   <translation>Nächte, die neueste zuerst</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>No night is in the log yet: the first leg on the Drift page, or a note, makes one of tonight. What is done on the practice sky is not kept.</source>
   <translation>Noch steht keine Nacht im Nachtbuch: Die erste Etappe auf der Seite „Drift“ oder eine Notiz macht heute zu einer. Was am Übungshimmel geschieht, wird nicht behalten.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>Search</source>
   <translation>Suchen</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>The log of nights cannot be read now; open this page again once it can.</source>
   <translation>Das Nachtbuch lässt sich jetzt nicht lesen; öffnen Sie diese Seite wieder, sobald es geht.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>The newest nights; earlier ones are being read.</source>
   <translation>Die neuesten Nächte; frühere werden noch gelesen.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>place, star, equipment, words of a note</source>
   <translation>Ort, Stern, Ausrüstung, Wörter einer Notiz</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightlist.py" />
   <source>{n} nights.</source>
   <translation>{n} Nächte.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Alignment</source>
   <translation>Ausrichtung</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Begun</source>
   <translation>Beginn</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Bolts</source>
   <translation>Stellschrauben</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Carry this night out</source>
   <translation>Diese Nacht mitnehmen</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Drift logs, CSV</source>
   <translation>Driftprotokolle, CSV</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Drift ″/min</source>
   <translation>Drift ″/min</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Everything, JSON</source>
   <translation>Alles, JSON</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Leg</source>
   <translation>Etappe</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Legs</source>
   <translation>Etappen</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>No star was watched in this night.</source>
   <translation>In dieser Nacht wurde kein Stern beobachtet.</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Readings</source>
   <translation>Ablesungen</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Report, HTML</source>
   <translation>Bericht, HTML</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Report, PDF</source>
   <translation>Bericht, PDF</translation>
  </message>
  <message>
   <location filename="app/pages/log/nightsheet.py" />
   <source>Time</source>
   <translation>Zeit</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>A note for this night</source>
   <translation>Eine Notiz zu dieser Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>A picture can also be dropped on this page.</source>
   <translation>Ein Bild kann auch auf dieser Seite abgelegt werden.</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Add a picture</source>
   <translation>Bild hinzufügen</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Change</source>
   <translation>Ändern</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Keep the change</source>
   <translation>Änderung behalten</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Leave it as it was</source>
   <translation>Lassen, wie es war</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Notes and pictures</source>
   <translation>Notizen und Bilder</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Put it back</source>
   <translation>Zurückholen</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Remove</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>The note is removed.</source>
   <translation>Die Notiz ist entfernt.</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>The picture is removed.</source>
   <translation>Das Bild ist entfernt.</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>What went well, what to change</source>
   <translation>Was gut ging, was zu ändern ist</translation>
  </message>
  <message>
   <location filename="app/pages/log/notes.py" />
   <source>Write it down</source>
   <translation>Aufschreiben</translation>
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Compare</source>
   <translation>Vergleichen</translation>
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Every night is kept here as it happened: legs with all readings, turns of the bolts, results, checklist, weather, notes and pictures. Choose a night to open it.</source>
   <translation>Jede Nacht bleibt hier, wie sie war: Etappen mit allen Ablesungen, Drehungen der Stellschrauben, Ergebnisse, Checkliste, Wetter, Notizen und Bilder. Wählen Sie eine Nacht, um sie zu öffnen.</translation>
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Keep safe</source>
   <translation>Sicher aufheben</translation>
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>The nights cannot be read because of a fault in the program.</source>
   <translation>Wegen eines Fehlers im Programm lassen sich die Nächte nicht lesen.</translation>
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>This night cannot be read from the log.</source>
   <translation>Diese Nacht lässt sich nicht aus dem Nachtbuch lesen.</translation>
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>What remains of the nights?</source>
   <translation>Was bleibt von den Nächten?</translation>
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Caption</source>
   <translation>Bildunterschrift</translation>
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Caption of {name}</source>
   <translation>Bildunterschrift von {name}</translation>
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Remove the picture</source>
   <translation>Bild entfernen</translation>
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>Remove the picture {name}</source>
   <translation>Bild {name} entfernen</translation>
  </message>
  <message>
   <location filename="app/pages/log/pictureview.py" />
   <source>what it shows; goes into the report</source>
   <translation>was es zeigt; kommt in den Bericht</translation>
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>Choose a picture</source>
   <translation>Bild wählen</translation>
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>Open a night first: the picture goes with it.</source>
   <translation>Öffnen Sie zuerst eine Nacht: Das Bild gehört zu ihr.</translation>
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>The caption is kept.</source>
   <translation>Die Bildunterschrift ist gespeichert.</translation>
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>This waits in memory: another copy of the program writes the log. It is written when that copy is closed.</source>
   <translation>Das wartet im Speicher: Eine andere Kopie des Programms schreibt das Nachtbuch. Es wird geschrieben, sobald jene geschlossen ist.</translation>
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>This waits in memory: the log of nights does not take it now. It is written as soon as it does; do not close the program before.</source>
   <translation>Das wartet im Speicher: Das Nachtbuch nimmt es gerade nicht auf. Es wird geschrieben, sobald das wieder geht; schließen Sie das Programm nicht vorher.</translation>
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>What waited in memory is written into the log now.</source>
   <translation>Was im Speicher wartete, ist jetzt ins Nachtbuch geschrieben.</translation>
  </message>
  <message>
   <location filename="app/pages/log/remembering.py" />
   <source>{name} is kept with the night.</source>
   <translation>{name} ist bei der Nacht gespeichert.</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>1 leg</source>
   <translation>1 Etappe</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>1 tracking run</source>
   <translation>1 Aufzeichnung der Nachführung</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>from the first leg to the result</source>
   <translation>von der ersten Etappe bis zum Ergebnis</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>m/s wind</source>
   <translation>m/s Wind</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>not aligned</source>
   <translation>nicht ausgerichtet</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>turns of the bolts</source>
   <translation>Drehungen der Stellschrauben</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>{count} legs</source>
   <translation>{count} Etappen</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>{count} tracking runs</source>
   <translation>{count} Aufzeichnungen der Nachführung</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>{leg} (left out)</source>
   <translation>{leg} (ausgelassen)</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>{target}: flipped at {times}</source>
   <translation>{target}: umgeschlagen um {times}</translation>
  </message>
  <message>
   <location filename="app/pages/log/words.py" />
   <source>± {width}′ (95 %), axis error reached</source>
   <translation>± {width}′ (95 %), erreichter Achsenfehler</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>, up to {best:.2f}</source>
   <translation>, bis zu {best:.2f}</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>No. {rank}</source>
   <translation>Nr. {rank}</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>Open</source>
   <translation>Offen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>Out</source>
   <translation>Ausgeschieden</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>What would change that</source>
   <translation>Was daran etwas ändern würde</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>Why</source>
   <translation>Warum</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>invented, no product</source>
   <translation>erfunden, kein Produkt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>price {price:g}</source>
   <translation>Preis {price:g}</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>to be bought</source>
   <translation>noch zu kaufen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/candidatecard.py" />
   <source>{total:.2f} of 1</source>
   <translation>{total:.2f} von 1</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Balancing</source>
   <translation>Ausbalancieren</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Caution</source>
   <translation>Vorsicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Caution: axes locked. Counterweight on first and off last, toe stop in. Fingers clear. Lift with two people.</source>
   <translation>Vorsicht: Achsen geklemmt lassen. Gegengewicht zuerst an, zuletzt ab, Endanschlag eingeschraubt. Finger weg vom Spalt. Zu zweit heben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Common practice, no source.</source>
   <translation>Übliche Praxis, ohne Quelle.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Handling the load</source>
   <translation>Umgang mit der Last</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Lifting</source>
   <translation>Heben</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Putting on</source>
   <translation>Aufsetzen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/cautions.py" />
   <source>Taking off</source>
   <translation>Abnehmen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/choosing.py" />
   <source>Compare three invented mounts</source>
   <translation>Drei erfundene Montierungen vergleichen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/choosing.py" />
   <source>Enter two mounts or more under Equipment, owned or planned, to compare.</source>
   <translation>Geben Sie unter „Ausrüstung“ zwei oder mehr Montierungen ein, vorhandene oder geplante, um sie zu vergleichen.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source> and {n} more</source>
   <translation> und {n} weitere</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Equipment (*.json)</source>
   <translation>Ausrüstung (*.json)</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Export equipment</source>
   <translation>Ausrüstung exportieren</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Export …</source>
   <translation>Exportieren …</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Import equipment</source>
   <translation>Ausrüstung importieren</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Import …</source>
   <translation>Importieren …</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Keep mine</source>
   <translation>Meine behalten</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Leave it</source>
   <translation>Lassen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Pieces taken: {n}; sets taken: {m}.</source>
   <translation>Übernommene Stücke: {n}; übernommene Sätze: {m}.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Replace it</source>
   <translation>Ersetzen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Take the file's</source>
   <translation>Die der Datei nehmen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>The file could not be used because of a fault in the program.</source>
   <translation>Die Datei ließ sich wegen eines Programmfehlers nicht verwenden.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>The file has other figures than yours for {names}{more}.</source>
   <translation>Die Datei hat andere Werte als Ihre für {names}{more}.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>Written to “{path}”.</source>
   <translation>Nach „{path}“ geschrieben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>“{file}” cannot be read ({why}): choose another file.</source>
   <translation>„{file}“ lässt sich nicht lesen ({why}): Wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>“{file}” is a folder, a pipe or a device, not a file that can be read whole: choose another file.</source>
   <translation>„{file}“ ist ein Ordner, eine Pipe oder ein Gerät und keine Datei, die sich ganz lesen lässt: Wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>“{path}” cannot be written ({why}): choose another place.</source>
   <translation>„{path}“ lässt sich nicht schreiben ({why}): Wählen Sie einen anderen Ort.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/exchange.py" />
   <source>… and {n} more.</source>
   <translation>… und {n} weitere.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Beside the tube</source>
   <translation>Neben dem Rohr</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>How the axes stand</source>
   <translation>Wie die Achsen stehen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Name, as you call it</source>
   <translation>Name, wie Sie es nennen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>No</source>
   <translation>Nein</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Not kept yet: see the dashed fields.</source>
   <translation>Noch nicht gespeichert: siehe die gestrichelten Felder.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Not known</source>
   <translation>Nicht bekannt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Note</source>
   <translation>Notiz</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>On the head</source>
   <translation>Am Montierungskopf</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>On the tube</source>
   <translation>Auf dem Rohr</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Still to be bought</source>
   <translation>Noch zu kaufen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Tripod or ground</source>
   <translation>Stativ oder Boden</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Where it rides</source>
   <translation>Worauf es sitzt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Without a name it cannot be found again.</source>
   <translation>Ohne Namen ist es nicht wiederzufinden.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/form.py" />
   <source>Yes</source>
   <translation>Ja</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Close</source>
   <translation>Schließen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Keep</source>
   <translation>Speichern</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Kept.</source>
   <translation>Gespeichert.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Remove it</source>
   <translation>Entfernen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formhead.py" />
   <source>Remove “{name}”, from all sets too?</source>
   <translation>„{name}“ entfernen, auch aus allen Sätzen?</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>A camera</source>
   <translation>Eine Kamera</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>A counterweight</source>
   <translation>Ein Gegengewicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>A guide camera, with its guide telescope</source>
   <translation>Eine Guidingkamera mit ihrem Leitrohr</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>A mount</source>
   <translation>Eine Montierung</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>A telescope, with its rings and dovetail bar</source>
   <translation>Ein Teleskop mit Rohrschellen und Prismenschiene</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Accessory</source>
   <translation>Zubehör</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>An eyepiece</source>
   <translation>Ein Okular</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Anything else that rides on the mount</source>
   <translation>Alles andere, was auf der Montierung mitfährt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Autoguider port</source>
   <translation>Autoguider-Anschluss</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Bolts of the polar axis</source>
   <translation>Stellschrauben der Polachse</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Camera</source>
   <translation>Kamera</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Computer control</source>
   <translation>Steuerung vom Computer</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Counterweight</source>
   <translation>Gegengewicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Driven: follows the sky by itself</source>
   <translation>Antrieb: folgt dem Himmel von selbst</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Eyepiece</source>
   <translation>Okular</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>For the balance</source>
   <translation>Für das Gleichgewicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>From peak to peak.</source>
   <translation>Von Spitze zu Spitze.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>From the axis, where the capacity is listed; often not given.</source>
   <translation>Abstand von der Achse, für den die Tragkraft gilt; oft nicht angegeben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>From the polar axis to the saddle's face.</source>
   <translation>Von der Polachse bis zur Auflage der Klemme.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>From the polar axis to where a weight can begin.</source>
   <translation>Von der Polachse bis dahin, wo ein Gewicht beginnen kann.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>From there to the toe stop.</source>
   <translation>Von dort bis zum Endanschlag.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Goto: finds objects by itself</source>
   <translation>Goto: findet Objekte von selbst</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Guide camera</source>
   <translation>Guidingkamera</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>How far it may track past it.</source>
   <translation>Wie weit sie darüber hinaus nachführen darf.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>How far the tube yields when gravity turns round in it: 5 for a stiff small refractor, 20 or more with a loose focuser, a mirror that shifts or a guide scope beside it; empty counts as the usual 10.</source>
   <translation>Wie weit das Rohr nachgibt, wenn sich die Schwerkraft darin umkehrt: 5 bei einem steifen kleinen Refraktor, 20 oder mehr bei losem Okularauszug, wanderndem Spiegel oder Leitrohr daneben; leer gilt das übliche 10.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>How much of the dovetail it grips.</source>
   <translation>Wie viel von der Prismenschiene sie fasst.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>How well it follows and points</source>
   <translation>Wie gut sie folgt und zeigt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>In your own currency.</source>
   <translation>In Ihrer Währung.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Object database</source>
   <translation>Objektdatenbank</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Of its centre of gravity, from the middle of the dovetail bar; negative towards the rear.</source>
   <translation>Des Schwerpunkts, von der Mitte der Prismenschiene aus; nach hinten negativ.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Of its centre of gravity, from the saddle's face outward.</source>
   <translation>Des Schwerpunkts, von der Auflage der Klemme nach außen.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>On the mount</source>
   <translation>Auf der Montierung</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Positive when the head alone sinks on the telescope's side; 0 when even.</source>
   <translation>Positiv, wenn der Kopf allein zur Teleskopseite sinkt; 0, wenn er ausgeglichen ist.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Sensor</source>
   <translation>Sensor</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Telescope</source>
   <translation>Teleskop</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>The bar in the saddle, end to end.</source>
   <translation>Die Schiene in der Klemme, von Ende zu Ende.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>The weight</source>
   <translation>Das Gewicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Training of the periodic error</source>
   <translation>Training des periodischen Fehlers</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Tube</source>
   <translation>Rohr</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Weigh it with all that is screwed to it.</source>
   <translation>Mit allem wiegen, was daran geschraubt ist.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>What it has</source>
   <translation>Was sie hat</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>What it is</source>
   <translation>Was es ist</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>What it shows</source>
   <translation>Was es zeigt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Without counterweights, as data sheets do.</source>
   <translation>Ohne Gegengewichte, wie in Datenblättern.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Your own mark: 1 is a struggle, 5 is out and observing at once.</source>
   <translation>Ihre eigene Note: 1 ist Mühsal, 5 ist sofort draußen am Beobachten.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/formwords.py" />
   <source>Your own notes</source>
   <translation>Eigene Notizen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>Guiding and exposure</source>
   <translation>Guiding und Belichtung</translation>
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>Not judged:</source>
   <translation>Nicht beurteilt:</translation>
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>One pixel sees</source>
   <translation>Ein Pixel sieht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>The longest unguided exposure needs your site and an error of the axis.</source>
   <translation>Die längste Belichtung ohne Guiding braucht Ihren Standort und einen Fehler der Achse.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>The set in use has no telescope with a camera: choose another set, or give this one both under Equipment.</source>
   <translation>Der benutzte Satz hat kein Teleskop mit Kamera: Wählen Sie einen anderen Satz, oder geben Sie diesem unter „Ausrüstung“ beides.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/image.py" />
   <source>The whole field</source>
   <translation>Das ganze Bildfeld</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>1 without either; a reducer is below, a Barlow lens above.</source>
   <translation>1 ohne beides; ein Reducer liegt darunter, eine Barlowlinse darüber.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>An axis error to try out</source>
   <translation>Ein Achsenfehler zum Ausprobieren</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>Binning</source>
   <translation>Binning</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>For the longest exposure without guiding.</source>
   <translation>Für die längste Belichtung ohne Guiding.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>The reducer or Barlow factor</source>
   <translation>Der Faktor von Reducer oder Barlowlinse</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>What with</source>
   <translation>Womit</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageform.py" />
   <source>Width of a star at half its brightness; 2 to 4 is usual.</source>
   <translation>Breite eines Sterns bei halber Helligkeit; üblich sind 2 bis 4.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageresult.py" />
   <source>Guiding: the pixel size of “{camera}” is not entered.</source>
   <translation>Guiding: Die Pixelgröße von „{camera}“ ist nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageresult.py" />
   <source>Guiding: the set has no guide camera.</source>
   <translation>Guiding: Der Satz hat keine Guidingkamera.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageresult.py" />
   <source>How much stars dance: the aperture of “{telescope}” is not entered.</source>
   <translation>Wie stark Sterne tanzen: Die Öffnung von „{telescope}“ ist nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageresult.py" />
   <source>In short exposures a star dances by about {size:.2g}″ (one axis, rms); guiding cannot take that out and should not chase it: guide with exposures of seconds.</source>
   <translation>In kurzen Belichtungen tanzt ein Stern um etwa {size:.2g}″ (eine Achse, rms); das kann Guiding nicht herausnehmen und soll ihm nicht nachjagen: Belichten Sie beim Guiding Sekunden lang.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageresult.py" />
   <source>It has no focal length of its own and looks through the telescope.</source>
   <translation>Sie hat keine eigene Brennweite und schaut durch das Teleskop.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/imageresult.py" />
   <source>The sampling: the seeing is not entered.</source>
   <translation>Die Abtastung: Das Seeing ist nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>Balance along the tube</source>
   <translation>Gleichgewicht längs des Rohrs</translation>
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>Balance with what is still to be bought</source>
   <translation>Gleichgewicht mit dem, was noch zu kaufen ist</translation>
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>On this bar anything from {least:.1f} to {most:.1f} kg would balance.</source>
   <translation>An dieser Stange wäre alles von {least:.1f} bis {most:.1f} kg auszubalancieren.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>The set names things that are not there any more: {keys}.</source>
   <translation>Der Satz nennt Dinge, die es nicht mehr gibt: {keys}.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>The set “{name}” has no mount: give it one under Equipment.</source>
   <translation>Der Satz „{name}“ hat keine Montierung: Geben Sie ihm unter „Ausrüstung“ eine.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/load.py" />
   <source>There is no set yet: under Equipment, add a set with a mount in it.</source>
   <translation>Es gibt noch keinen Satz: Legen Sie unter „Ausrüstung“ einen Satz mit einer Montierung an.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Cannot be judged yet</source>
   <translation>Noch nicht zu beurteilen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Does the mount carry it?</source>
   <translation>Trägt die Montierung das?</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>More than is good for it</source>
   <translation>Mehr, als ihr guttut</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Now</source>
   <translation>Jetzt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Now {practice}.</source>
   <translation>Jetzt {practice}.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>The mount carries it</source>
   <translation>Die Montierung trägt es</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>The part of the capacity to use</source>
   <translation>Der benutzte Teil der Tragkraft</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>Too heavy</source>
   <translation>Zu schwer</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>With what is still to be bought</source>
   <translation>Mit dem, was noch zu kaufen ist</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadpanel.py" />
   <source>With what is to be bought: {w}</source>
   <translation>Mit dem, was zu kaufen ist: {w}</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>Moment about the polar axis: {moment:.2f} kg m, {share:.0f} % of the {capacity:.2f} kg m it is listed for.</source>
   <translation>Moment um die Polachse: {moment:.2f} kg m, {share:.0f} % der angegebenen {capacity:.2f} kg m.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>Moment about the polar axis: {moment:.2f} kg m.</source>
   <translation>Moment um die Polachse: {moment:.2f} kg m.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>Spread out along the tube, the load is {times:.1f} times as hard to turn and to hold still as in one lump.</source>
   <translation>Über das Rohr verteilt ist die Last {times:.1f}-mal so schwer zu drehen und ruhig zu halten wie auf einem Fleck.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>declination axis</source>
   <translation>Deklinationsachse</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>polar axis</source>
   <translation>Polachse</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>rear</source>
   <translation>hinten</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>sky</source>
   <translation>Himmel</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>{least}{mass:.1f} kg</source>
   <translation>{least}{mass:.1f} kg</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>{number}  {name}: {mass:.3g} kg at {arm:.0f} mm</source>
   <translation>{number}  {name}: {mass:.3g} kg bei {arm:.0f} mm</translation>
  </message>
  <message>
   <location filename="app/pages/mount/loadwords.py" />
   <source>–  The bar: {mass:.3g} kg, with its middle at {arm:.0f} mm</source>
   <translation>–  Die Stange: {mass:.3g} kg, Mitte bei {arm:.0f} mm</translation>
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Image</source>
   <translation>Bild</translation>
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Load and balance</source>
   <translation>Last und Gleichgewicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Section</source>
   <translation>Bereich</translation>
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Set in use</source>
   <translation>Benutzter Satz</translation>
  </message>
  <message>
   <location filename="app/pages/mount/page.py" />
   <source>Which mount?</source>
   <translation>Welche Montierung?</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>A set: things used together</source>
   <translation>Ein Satz: Dinge, die zusammen benutzt werden</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Deep-sky imaging</source>
   <translation>Deep-Sky-Fotografie</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>None</source>
   <translation>Keine</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Nothing is entered yet.</source>
   <translation>Noch ist nichts eingegeben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Observing</source>
   <translation>Beobachten</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>Planets</source>
   <translation>Planeten</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>What goes on it</source>
   <translation>Was darauf kommt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>What it is for</source>
   <translation>Wofür er ist</translation>
  </message>
  <message>
   <location filename="app/pages/mount/setform.py" />
   <source>{name} (to be bought)</source>
   <translation>{name} (zu kaufen)</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>A drawing: the weight on the left holds the load on the right.</source>
   <translation>Eine Zeichnung: Das Gewicht links hält die Last rechts.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>A made-up mount with a telescope, cameras and a weight, to look around.</source>
   <translation>Eine ausgedachte Montierung mit Teleskop, Kameras und Gewicht, zum Umsehen.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>A telescope and a counterweight in balance</source>
   <translation>Ein Teleskop und ein Gegengewicht im Gleichgewicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Does the mount carry it, and which one to buy?</source>
   <translation>Trägt die Montierung das, und welche soll man kaufen?</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Enter your mount</source>
   <translation>Ihre Montierung eingeben</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Its capacity is enough for a start; the rest can follow.</source>
   <translation>Die Tragkraft reicht für den Anfang; der Rest kann folgen.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Try an invented set</source>
   <translation>Einen erfundenen Satz ausprobieren</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>Type what the data sheets say of your mount and of what goes on it. This page weighs the load, places the counterweight, tells what one pixel sees, and compares mounts for what you want to do. It knows no products: the figures are yours.</source>
   <translation>Geben Sie ein, was die Datenblätter über Ihre Montierung und das sagen, was darauf kommt. Diese Seite wiegt die Last, gibt dem Gegengewicht seinen Platz, sagt, was ein Pixel sieht, und vergleicht Montierungen für das, was Sie vorhaben. Sie kennt keine Produkte: Die Werte sind Ihre eigenen.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>tube</source>
   <translation>Rohr</translation>
  </message>
  <message>
   <location filename="app/pages/mount/start.py" />
   <source>weight</source>
   <translation>Gewicht</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Add</source>
   <translation>Hinzufügen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Add: {what}</source>
   <translation>Hinzufügen: {what}</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Equipment and sets</source>
   <translation>Ausrüstung und Sätze</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>Set</source>
   <translation>Satz</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>What you have</source>
   <translation>Was Sie haben</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>carries {kg:g} kg</source>
   <translation>trägt {kg:g} kg</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>invented</source>
   <translation>erfunden</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>mass not known</source>
   <translation>Masse nicht bekannt</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>set for {purpose}, {count} pieces</source>
   <translation>Satz für „{purpose}“, {count} Stücke</translation>
  </message>
  <message>
   <location filename="app/pages/mount/thinglist.py" />
   <source>{kg:g} kg</source>
   <translation>{kg:g} kg</translation>
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Choose a piece, or add one</source>
   <translation>Wählen Sie ein Stück, oder legen Sie eines an</translation>
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Let it go</source>
   <translation>Verwerfen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Remove all that is marked as invented, with what you changed in it?</source>
   <translation>Alles entfernen, was als erfunden gekennzeichnet ist, samt dem, was Sie daran geändert haben?</translation>
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Remove the invented examples</source>
   <translation>Die erfundenen Beispiele entfernen</translation>
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>Type what the data sheet says; leave empty what it does not say. A set names a mount and what goes on it together. What you only mean to buy is kept apart and counted when you ask for it.</source>
   <translation>Geben Sie ein, was das Datenblatt sagt; was es nicht sagt, bleibt leer. Ein Satz nennt eine Montierung und was zusammen darauf kommt. Was Sie erst kaufen wollen, wird getrennt geführt und zählt mit, wenn Sie danach fragen.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/things.py" />
   <source>What you typed is not kept yet.</source>
   <translation>Was Sie eingegeben haben, ist noch nicht gespeichert.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/unguided.py" />
   <source>The longest exposure cannot be told.</source>
   <translation>Die längste Belichtung lässt sich nicht bestimmen.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/unguided.py" />
   <source>Unguided, {where}, the axis {error:g}′ off.</source>
   <translation>Ohne Guiding, {where}, die Achse {error:g}′ daneben.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/unguided.py" />
   <source>declination {declination:g}°</source>
   <translation>Deklination {declination:g}°</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>A mount that lacks one of these is out.</source>
   <translation>Eine Montierung, der eines davon fehlt, scheidet aus.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Back to the usual figures</source>
   <translation>Zurück zu den üblichen Werten</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Empty: not known.</source>
   <translation>Leer: nicht bekannt.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Empty: {kg:.3g} kg, of the set in use with what is planned.</source>
   <translation>Leer: {kg:.3g} kg, die des benutzten Satzes samt Geplantem.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>How much the rest counts, from 0 to 9</source>
   <translation>Wie viel das Übrige zählt, von 0 bis 9</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>In your own currency; counts when ticked above.</source>
   <translation>In Ihrer Währung; zählt, wenn oben angekreuzt.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>Purpose</source>
   <translation>Zweck</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>The highest price</source>
   <translation>Der höchste Preis</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>The load it is to carry</source>
   <translation>Die Last, die sie tragen soll</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>The usual order is common practice, no source; the numbers are ours.</source>
   <translation>Die übliche Reihenfolge ist übliche Praxis, ohne Quelle; die Zahlen sind von uns.</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>What it must have</source>
   <translation>Was sie haben muss</translation>
  </message>
  <message>
   <location filename="app/pages/mount/wishform.py" />
   <source>What you want it for</source>
   <translation>Wofür Sie sie wollen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/agenda.py" />
   <source>Noon to noon</source>
   <translation>Mittag bis Mittag</translation>
  </message>
  <message>
   <location filename="app/pages/plan/agenda.py" />
   <source>{begin} to {end}</source>
   <translation>{begin} bis {end}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>, magnitude {magnitude:.1f}</source>
   <translation>, Helligkeit {magnitude:.1f}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>All to magnitude 9</source>
   <translation>Alle bis Helligkeit 9</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Best placed tonight</source>
   <translation>Heute am günstigsten</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>From which list</source>
   <translation>Aus welcher Liste</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>In order of the hours in which they are clear in the dark, each hour counted more the higher the object stands and less the nearer and brighter the Moon. The order is our own.</source>
   <translation>Geordnet nach den Stunden, in denen sie im Dunkeln frei stehen; jede Stunde zählt mehr, je höher das Objekt steht, und weniger, je näher und heller der Mond ist. Die Ordnung ist unsere eigene.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>It does not get dark enough tonight for clusters and nebulae.</source>
   <translation>Heute Nacht wird es für Sternhaufen und Nebel nicht dunkel genug.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Messier's list</source>
   <translation>Messier-Liste</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Nothing of this list rises high enough: try a lower altitude.</source>
   <translation>Nichts auf dieser Liste steigt hoch genug: Versuchen Sie eine geringere Höhe.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Take it as target</source>
   <translation>Als Objekt nehmen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>Which objects</source>
   <translation>Welche Objekte</translation>
  </message>
  <message>
   <location filename="app/pages/plan/bestsection.py" />
   <source>{name}   {kind}{size}
{height:.0f}° high at {time}, clear for {hours:.1f} h, Moon {moon:.0f}° away</source>
   <translation>{name}   {kind}{size}
{height:.0f}° hoch um {time}, frei für {hours:.1f} h, Mond {moon:.0f}° entfernt</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>0: away from the mount; clockwise from behind.</source>
   <translation>0: von der Montierung weg; im Uhrzeigersinn von hinten.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>At {time} it is {place}, {height:.1f} m up; drawn as seen from behind.</source>
   <translation>Um {time} sitzt es {place}, {height:.1f} m hoch; gezeichnet von hinten gesehen.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Choose a target above to see where the eyepiece goes.</source>
   <translation>Wählen Sie oben ein Objekt, um zu sehen, wohin das Okular geht.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Height and place of the eyepiece</source>
   <translation>Höhe und Platz des Okulars</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Newtonian and mount</source>
   <translation>Newton und Montierung</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>No other turn in the rings does better.</source>
   <translation>Keine andere Drehung in den Rohrschellen ist besser.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>On an alt-azimuth mount the eyepiece stays on the same side of the tube all night; only its height changes. This is about equatorial mounts.</source>
   <translation>Auf einer azimutalen Montierung bleibt das Okular die ganze Nacht auf derselben Seite des Rohrs; nur seine Höhe ändert sich. Hier geht es um parallaktische Montierungen.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>The target gives no session tonight.</source>
   <translation>Das Objekt ergibt heute Nacht keine Zeit für Aufnahmen.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Turned to {turn:.0f}° in its rings it is in reach for {after:.0f} % of the session instead of {before:.0f} %.</source>
   <translation>Auf {turn:.0f}° in den Rohrschellen gedreht ist es {after:.0f} % der Zeit erreichbar statt {before:.0f} %.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/eyesection.py" />
   <source>Where the eyepiece ends up</source>
   <translation>Wohin das Okular kommt</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>April</source>
   <translation>April</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>August</source>
   <translation>August</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>December</source>
   <translation>Dezember</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>February</source>
   <translation>Februar</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>January</source>
   <translation>Januar</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>July</source>
   <translation>Juli</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>June</source>
   <translation>Juni</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>March</source>
   <translation>März</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>May</source>
   <translation>Mai</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>Night from {begin} to {end}.</source>
   <translation>Nacht vom {begin} auf den {end}.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>November</source>
   <translation>November</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>October</source>
   <translation>Oktober</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>September</source>
   <translation>September</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>all day</source>
   <translation>den ganzen Tag</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>at {time}; clear for {span}</source>
   <translation>um {time}; frei für {span}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>choose a target</source>
   <translation>Wählen Sie ein Objekt</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>clear and high enough in the dark</source>
   <translation>frei und hoch genug im Dunkeln</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>from noon to noon</source>
   <translation>von Mittag bis Mittag</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>in the dark: there is no darkness</source>
   <translation>im Dunkeln: Es wird nicht dunkel</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>it stays too light for stars</source>
   <translation>für Sterne bleibt es zu hell</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>needed in this session</source>
   <translation>kein Umschlagen in dieser Zeit</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>never</source>
   <translation>nie</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>none</source>
   <translation>keine</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>the first of {count}</source>
   <translation>der erste von {count}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>this kind of mount does not flip</source>
   <translation>diese Art Montierung schlägt nicht um</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>until {time}, {span}</source>
   <translation>bis {time}, {span}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>up: it stays {depth:.0f}° or more below the horizon</source>
   <translation>am Himmel: Es bleibt {depth:.0f}° oder mehr unter dem Horizont</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>{day}</source>
   <translation>{day}.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>{day} {month}</source>
   <translation>{day}. {month}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>{day} {year}</source>
   <translation>{day} {year}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>{span} without exposing</source>
   <translation>{span} ohne Belichtung</translation>
  </message>
  <message>
   <location filename="app/pages/plan/factwords.py" />
   <source>{until} of {light}</source>
   <translation>{until} ({light})</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipkeys.py" />
   <source>Centred and focused again</source>
   <translation>Wieder zentriert und scharf gestellt</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipkeys.py" />
   <source>Flipped at {time}, centred and focused again at {again}.</source>
   <translation>Umgeschlagen um {time}, wieder zentriert und scharf um {again}.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipkeys.py" />
   <source>Flipped at {time}. Now centre the target and focus.</source>
   <translation>Umgeschlagen um {time}. Zentrieren Sie nun das Objekt und stellen Sie scharf.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipkeys.py" />
   <source>Take the last one back</source>
   <translation>Letztes zurücknehmen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipkeys.py" />
   <source>The mount has flipped</source>
   <translation>Die Montierung ist umgeschlagen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Begin</source>
   <translation>Beginn</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Choose a target above to see when the mount must flip.</source>
   <translation>Wählen Sie oben ein Objekt, um zu sehen, wann die Montierung umschlagen muss.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>End</source>
   <translation>Ende</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Exposures and the flip</source>
   <translation>Belichtungen und das Umschlagen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>From {begin} to {end}: {count:,} exposures, none cut.</source>
   <translation>Von {begin} bis {end}: {count:,} Belichtungen, keine abgebrochen.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>It passed the meridian {span} before that, towards the west.</source>
   <translation>Es ging {span} davor durch den Meridian, nach Westen.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Last exposure ends {stops}, flip at {turns}, on again at {resumes}: {lost} without exposing. Before: tube {before}. After: tube {after}.</source>
   <translation>Letzte Belichtung endet {stops}, Umschlagen um {turns}, weiter um {resumes}: {lost} ohne Belichtung. Vorher: Rohr {before}. Nachher: Rohr {after}.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Latest time before the mount's limit: {latest}.</source>
   <translation>Spätestens, vor dem Anschlag der Montierung: {latest}.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Mount and series</source>
   <translation>Montierung und Serie</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Negative: it must stop before.</source>
   <translation>Negativ: Sie muss vorher anhalten.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>On the meridian</source>
   <translation>Auf dem Meridian</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>On the meridian below the pole</source>
   <translation>Auf dem Meridian unter dem Pol</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>The flip</source>
   <translation>Das Umschlagen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>The mount must stop at {stop} and wait until {go}.</source>
   <translation>Die Montierung muss um {stop} anhalten und bis {go} warten.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>Type a time of this night, like 22:30, or leave it empty.</source>
   <translation>Geben Sie eine Zeit dieser Nacht wie 22:30 ein oder lassen Sie es leer.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>empty: when it is dark</source>
   <translation>leer: wenn es dunkel ist</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>empty: while clear</source>
   <translation>leer: solange es frei steht</translation>
  </message>
  <message>
   <location filename="app/pages/plan/flipsection.py" />
   <source>{where} at {time}, {height:.0f}° high.</source>
   <translation>{where} um {time}, {height:.0f}° hoch.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/mountchoice.py" />
   <source>Alt-azimuth</source>
   <translation>Azimutal</translation>
  </message>
  <message>
   <location filename="app/pages/plan/mountchoice.py" />
   <source>Fork on a wedge</source>
   <translation>Gabel auf Polkeil</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>All of it depends on where you are: say where that is.</source>
   <translation>Alles hängt davon ab, wo Sie sind: Sagen Sie, wo das ist.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Best placed</source>
   <translation>Am günstigsten</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Dark</source>
   <translation>Dunkel</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Flip</source>
   <translation>Umschlagen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Reference stars</source>
   <translation>Referenzsterne</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Target, highest</source>
   <translation>Objekt, am höchsten</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>Time line</source>
   <translation>Zeitlinie</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>What can I do tonight, and when?</source>
   <translation>Was kann ich heute Nacht tun, und wann?</translation>
  </message>
  <message>
   <location filename="app/pages/plan/page.py" />
   <source>When it is dark, what stands well, when the mount must flip, and which stars to set it up by: one line of time for the whole night.</source>
   <translation>Wann es dunkel ist, was gut steht, wann die Montierung umschlagen muss und nach welchen Sternen man sie einrichtet: die ganze Nacht auf einer Zeitlinie.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>Altitude, degrees</source>
   <translation>Höhe, Grad</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>Brightest pair for a drift alignment</source>
   <translation>Hellstes Paar zum Ausrichten nach der Drift</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>Exposures and flip</source>
   <translation>Belichtungen und Umschlagen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>Field rotation, degrees per hour</source>
   <translation>Bildfelddrehung, Grad je Stunde</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>Height of the eye above the ground</source>
   <translation>Höhe des Auges über dem Boden</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>Round the tube: 0° on top, 90° on the right from behind</source>
   <translation>Rund ums Rohr: 0° oben, 90° rechts, von hinten gesehen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>Sun and darkness</source>
   <translation>Sonne und Dunkelheit</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>comfortable</source>
   <translation>bequem</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>comfortable from</source>
   <translation>bequem ab</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>field turns</source>
   <translation>Feld dreht sich</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>flip</source>
   <translation>umschlagen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>may flip</source>
   <translation>darf umschlagen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>on the meridian below the pole</source>
   <translation>auf dem Meridian unter dem Pol</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>too low or hidden</source>
   <translation>zu tief oder verdeckt</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>turned as advised</source>
   <translation>gedreht wie empfohlen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>{meridian} and {aside}</source>
   <translation>{meridian} und {aside}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>{metres:.2g} m</source>
   <translation>{metres:.2g} m</translation>
  </message>
  <message>
   <location filename="app/pages/plan/pictures.py" />
   <source>{rate:.3g}°/h</source>
   <translation>{rate:.3g}°/h</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source> Tube {side}.</source>
   <translation> Rohr {side}.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>15 min earlier</source>
   <translation>15 min früher</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>15 min later</source>
   <translation>15 min später</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>After a careless choice</source>
   <translation>Nach achtloser Wahl</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>After these stars</source>
   <translation>Nach diesen Sternen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>After {names}</source>
   <translation>Nach {names}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>How many stars</source>
   <translation>Wie viele Sterne</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Lines of equal pointing error, from 20° up; the same tone is the same error in both. North is up and east on the right, as on a map of the ground.</source>
   <translation>Linien gleichen Zielfehlers, ab 20° Höhe; derselbe Ton ist in beiden derselbe Fehler. Norden ist oben und Osten rechts, wie auf einer Landkarte.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Point into a map to read it.</source>
   <translation>Zeigen Sie in eine Karte, um sie abzulesen.</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Pointing error after a careless choice</source>
   <translation>Zielfehler nach achtloser Wahl</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Pointing error after the stars chosen</source>
   <translation>Zielfehler nach den gewählten Sternen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Reference stars at {time}</source>
   <translation>Referenzsterne um {time}</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Three stars</source>
   <translation>Drei Sterne</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>Two stars</source>
   <translation>Zwei Sterne</translation>
  </message>
  <message>
   <location filename="app/pages/plan/starssection.py" />
   <source>expect to be {error} off</source>
   <translation>mit {error} Abweichung rechnen</translation>
  </message>
  <message>
   <location filename="app/pages/plan/tonightsection.py" />
   <source>In order of time</source>
   <translation>Nach der Zeit</translation>
  </message>
  <message>
   <location filename="app/pages/plan/tonightsection.py" />
   <source>The night on one line of time</source>
   <translation>Die Nacht auf einer Zeitlinie</translation>
  </message>
  <message>
   <location filename="app/pages/plan/tonightsection.py" />
   <source>What happens tonight, in order of time</source>
   <translation>Was heute Nacht geschieht, nach der Zeit geordnet</translation>
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
   <source>{star} in an erect sight, on the clock at</source>
   <translation>{star} in einem aufrechten Visier, auf der Uhr bei</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{star} in an inverted sight, on the clock at</source>
   <translation>{star} in einem umgekehrten Visier, auf der Uhr bei</translation>
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{which}, due {way}</source>
   <translation>{which}, genau im {way}</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>Both poles.</source>
   <translation>Beide Pole.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>The middle of the sight: the axis.</source>
   <translation>Die Mitte des Visiers: die Achse.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>The refracted pole.</source>
   <translation>Der gehobene Pol.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>The true pole.</source>
   <translation>Der wahre Pol.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>You saw it at {place}.</source>
   <translation>Sie sahen ihn bei {place}.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>axis</source>
   <translation>Achse</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>pole</source>
   <translation>Pol</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>seen</source>
   <translation>gesehen</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>{star} belongs at {place}.</source>
   <translation>{star} gehört auf {place}.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/charts.py" />
   <source>{star}, magnitude {magnitude:.1f}: {place}.</source>
   <translation>{star}, Helligkeit {magnitude:.1f}: {place}.</translation>
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
   <source>The distance from the middle</source>
   <translation>Der Abstand von der Mitte</translation>
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
   <location filename="app/pages/pole/sightverdict.py" />
   <source>A sight is good to a few minutes of arc at best: then watch a star drift.</source>
   <translation>Ein Visier ist bestenfalls auf einige Bogenminuten genau: Beobachten Sie danach die Drift eines Sterns.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightverdict.py" />
   <source>On the sky the axis is {size} from the true pole, as read at {time:%H:%M:%S} UTC.</source>
   <translation>Am Himmel ist die Achse {size} vom wahren Pol entfernt, abgelesen um {time:%H:%M:%S} UTC.</translation>
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
   <source>The field of view</source>
   <translation>Das Gesichtsfeld</translation>
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Your sight</source>
   <translation>Ihr Visier</translation>
  </message>
  <message>
   <location filename="app/pages/pole/standing.py" />
   <source>By your horizon {star} is hidden now: what stands there reaches {height:.0f}° high. Use the ways for a hidden pole.</source>
   <translation>Nach Ihrem Horizont ist {star} jetzt verdeckt: Was dort steht, reicht {height:.0f}° hoch. Nehmen Sie die Wege für einen verdeckten Pol.</translation>
  </message>
  <message>
   <location filename="app/pages/pole/standing.py" />
   <source>{star} is below the horizon now: it cannot be seen from here.</source>
   <translation>{star} steht jetzt unter dem Horizont: Er ist von hier nicht zu sehen.</translation>
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
   <location filename="app/pages/pole/words.py" />
   <source>{clock}, {distance} from the middle</source>
   <translation>{clock}, {distance} von der Mitte</translation>
  </message>
  <message>
   <location filename="app/pages/pole/words.py" />
   <source>{direction} ({azimuth:.1f}°), {altitude:.1f}° high</source>
   <translation>{direction} ({azimuth:.1f}°), {altitude:.1f}° hoch</translation>
  </message>
  <message>
   <location filename="app/pages/pole/words.py" />
   <source>{hour_angle} east</source>
   <translation>{hour_angle} Ost</translation>
  </message>
  <message>
   <location filename="app/pages/pole/words.py" />
   <source>{hour_angle} west</source>
   <translation>{hour_angle} West</translation>
  </message>
  <message>
   <location filename="app/pages/pole/words.py" />
   <source>{hours} h {minutes} min</source>
   <translation>{hours} h {minutes} min</translation>
  </message>
  <message>
   <location filename="app/pages/pole/words.py" />
   <source>{time:%H:%M} UTC</source>
   <translation>{time:%H:%M} UTC</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Angle of the derotator through the night</source>
   <translation>Winkel des Derotators durch die Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>At {limit:g}° a second the drive loses stars within {south:.2f}° south and {north:.2f}° north of the zenith.</source>
   <translation>Bei {limit:g}° je Sekunde verliert der Antrieb Sterne bis {south:.2f}° südlich und {north:.2f}° nördlich des Zenits.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Choose a target above to see what its derotator must do.</source>
   <translation>Wählen Sie oben ein Objekt, um zu sehen, was sein Derotator leisten muss.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Choose a target above to see whether it passes there.</source>
   <translation>Wählen Sie oben ein Objekt, um zu sehen, ob es dort vorbeikommt.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Derotator</source>
   <translation>Derotator</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Near the zenith</source>
   <translation>Nahe am Zenit</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Near the zenith a star's azimuth changes faster than a drive can turn. The map “Zenith enlarged” shows the zone enlarged. Keep cables and hands clear of a mount that turns at full speed.</source>
   <translation>Nahe am Zenit ändert sich der Azimut eines Sterns schneller, als ein Antrieb drehen kann. Die Karte „Zenit vergrößert“ zeigt die Zone vergrößert. Halten Sie Kabel und Hände von einer Montierung fern, die mit voller Geschwindigkeit dreht.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Needed: {range:.0f}° of range, up to {speed:.3g}° a minute.</source>
   <translation>Nötig: {range:.0f}° Drehbereich, bis zu {speed:.3g}° je Minute.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>The star's azimuth changes by up to {speed:.2g}° a second.</source>
   <translation>Der Azimut des Sterns ändert sich um bis zu {speed:.2g}° je Sekunde.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>Turn it back at {times}.</source>
   <translation>Zurückdrehen um {times}.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>{target} comes within {distance:.1f}° of the zenith tonight and is never lost.</source>
   <translation>{target} kommt heute Nacht dem Zenit bis auf {distance:.1f}° nahe und geht nie verloren.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/drivesection.py" />
   <source>{target} enters the zone at {enters} and the drive has caught up at {leaves}, after {span}.</source>
   <translation>{target} tritt um {enters} in die Zone ein, und um {leaves} hat der Antrieb es eingeholt, nach {span}.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Across the stack the field turns {turn:.1f}°. All frames share {common:.0f} % of the picture; cropped to its shape {crop:.0f} % is left, {lost:.0f} % is lost.</source>
   <translation>Über das Summenbild dreht sich das Feld um {turn:.1f}°. Allen Bildern gemeinsam sind {common:.0f} % des Bildes; auf seine Form beschnitten bleiben {crop:.0f} %, {lost:.0f} % gehen verloren.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>At {time} the target is not seen: pick a moment in the picture when it is.</source>
   <translation>Um {time} ist das Objekt nicht zu sehen: Wählen Sie im Bild einen Zeitpunkt, zu dem es zu sehen ist.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Camera and series</source>
   <translation>Kamera und Serie</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Choose a target above to plan a series on it.</source>
   <translation>Wählen Sie oben ein Objekt, um eine Serie zu planen.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>From {time} on the target is not seen.</source>
   <translation>Ab {time} ist das Objekt nicht zu sehen.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Longest exposure through the night</source>
   <translation>Längste Belichtung durch die Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>The exposure is too long for the smear allowed.</source>
   <translation>Für die erlaubte Verwischung ist die Belichtung zu lang.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>The stack</source>
   <translation>Das Summenbild</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>Thin: the first frame; broken: the last one. Filled: what all frames saw. Thick: the largest crop of the same shape.</source>
   <translation>Dünn: das erste Bild; gestrichelt: das letzte. Gefüllt: was alle Bilder sahen. Dick: der größte Ausschnitt derselben Form.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>empty: the longest possible</source>
   <translation>leer: so lang wie möglich</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/exposuresection.py" />
   <source>{count:,} exposures of {one}, from {begin} to {end}. The corner smears by {smear:.2g} px at most.</source>
   <translation>{count:,} Belichtungen zu {one}, von {begin} bis {end}. Die Ecke verwischt um höchstens {smear:.2g} px.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source> min</source>
   <translation> min</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source> px</source>
   <translation> px</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source> s</source>
   <translation> s</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source> °/s</source>
   <translation> °/s</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Axis east of the pole by</source>
   <translation>Achse östlich vom Pol um</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Derotator, fastest turn</source>
   <translation>Derotator, schnellste Drehung</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Derotator, lower stop</source>
   <translation>Derotator, unterer Anschlag</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Derotator, upper stop</source>
   <translation>Derotator, oberer Anschlag</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Exposure in all</source>
   <translation>Belichtung insgesamt</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Fastest turn in azimuth</source>
   <translation>Schnellste Drehung im Azimut</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Frame, height</source>
   <translation>Bild, Höhe</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Frame, width</source>
   <translation>Bild, Breite</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Made or set for latitude</source>
   <translation>Gebaut oder eingestellt für die Breite</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Pause after each</source>
   <translation>Pause nach jeder</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/figures.py" />
   <source>Smear allowed in the corner</source>
   <translation>Erlaubte Verwischung in der Ecke</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>A mount that stands upright, turning about the vertical, lets the stars in its field turn. This page shows how fast over the whole sky, how long one may expose, and what is left of the picture after stacking.</source>
   <translation>Eine Montierung, die senkrecht steht und sich um die Senkrechte dreht, lässt die Sterne in ihrem Feld sich drehen. Diese Seite zeigt, wie schnell am ganzen Himmel, wie lange man belichten kann und was nach dem Überlagern vom Bild bleibt.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Choose a target to see its own figures.</source>
   <translation>Wählen Sie ein Objekt, um seine Werte zu sehen.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Exposures</source>
   <translation>Belichtungen</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Field rotation of the target</source>
   <translation>Bildfelddrehung des Objekts</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>How fast does the field turn?</source>
   <translation>Wie schnell dreht sich das Feld?</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Longest exposure</source>
   <translation>Längste Belichtung</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Sky</source>
   <translation>Himmel</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>The field turns</source>
   <translation>Das Feld dreht sich</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>The sky turns by your latitude: say where you are.</source>
   <translation>Der Himmel dreht sich nach Ihrer Breite: Sagen Sie, wo Sie sind.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>The target stands</source>
   <translation>Das Objekt steht</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Wedge or platform</source>
   <translation>Polkeil oder Plattform</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/page.py" />
   <source>Zenith and derotator</source>
   <translation>Zenit und Derotator</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>Angle of the derotator</source>
   <translation>Winkel des Derotators</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>Longest exposure, begun at each moment</source>
   <translation>Längste Belichtung, zu jedem Zeitpunkt begonnen</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>Parallactic angle</source>
   <translation>Parallaktischer Winkel</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>Rotation since the target came into view</source>
   <translation>Drehung, seit das Objekt zu sehen ist</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>Rotation that is left, degrees per hour</source>
   <translation>Verbleibende Drehung, Grad je Stunde</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>Stop the exposure</source>
   <translation>Belichtung anhalten</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>The series</source>
   <translation>Die Serie</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>derotator</source>
   <translation>Derotator</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>longest exposure</source>
   <translation>längste Belichtung</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>lower stop</source>
   <translation>unterer Anschlag</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>parallactic angle</source>
   <translation>parallaktischer Winkel</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>too fast</source>
   <translation>zu schnell</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>too fast for the drive</source>
   <translation>zu schnell für den Antrieb</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>turn back</source>
   <translation>zurückdrehen</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>turned in all</source>
   <translation>insgesamt gedreht</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>upper stop</source>
   <translation>oberer Anschlag</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/pictures.py" />
   <source>what is left</source>
   <translation>was bleibt</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skymaps.py" />
   <source>more than {rate:,.0f}°/h</source>
   <translation>mehr als {rate:,.0f}°/h</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skymaps.py" />
   <source>{sign}{rate:.6g}°/h</source>
   <translation>{sign}{rate:.6g}°/h</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>At a pole of the Earth the field does not turn at all.</source>
   <translation>An einem Pol der Erde dreht sich das Feld gar nicht.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Choose a target above: its path, and how the field turns along it, show here.</source>
   <translation>Wählen Sie oben ein Objekt: Hier erscheint sein Weg und wie sich das Feld dabei dreht.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Exposure</source>
   <translation>Belichtung</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Field rotation through the night</source>
   <translation>Bildfelddrehung durch die Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Lines of equal field rotation: whole where the parallactic angle grows (+), broken where it falls (−).</source>
   <translation>Linien gleicher Bildfelddrehung: durchgezogen, wo der parallaktische Winkel wächst (+), gestrichelt, wo er fällt (−).</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Lines of equal longest exposure for {smear:g} px of smear in the corner.</source>
   <translation>Linien gleicher längster Belichtung für {smear:g} px Verwischung in der Ecke.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Map</source>
   <translation>Karte</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Map of the sky above</source>
   <translation>Karte des Himmels über Ihnen</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>North is up and east on the right, as on a map of the ground. Hatched at the rim: obstructions; crossed: too fast for the drive.</source>
   <translation>Norden ist oben und Osten rechts, wie auf einer Landkarte. Schraffiert am Rand: Hindernisse; gekreuzt: zu schnell für den Antrieb.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Point into the map to read it.</source>
   <translation>Zeigen Sie in die Karte, um sie abzulesen.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Rate</source>
   <translation>Drehung</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>Zenith enlarged</source>
   <translation>Zenit vergrößert</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>expose {time} at most</source>
   <translation>höchstens {time} belichten</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/skysection.py" />
   <source>the field turns {rate}</source>
   <translation>das Feld dreht sich {rate}</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/stacked.py" />
   <source>That would be {count:,} exposures: the field turns too fast on the way, or the exposure is too short. Pick another moment, take less exposure in all, or give the length of one exposure.</source>
   <translation>Das wären {count:,} Belichtungen: Das Feld dreht sich unterwegs zu schnell, oder die Belichtung ist zu kurz. Wählen Sie einen anderen Zeitpunkt, belichten Sie insgesamt kürzer oder geben Sie die Dauer einer Belichtung vor.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>At the moment picked {left:.2g}° an hour are left: the corner smears by {smear:g} px after {time}.</source>
   <translation>Zum gewählten Zeitpunkt bleiben {left:.2g}° je Stunde: Die Ecke verwischt nach {time} um {smear:g} px.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Choose a target above to see what is left on it.</source>
   <translation>Wählen Sie oben ein Objekt, um zu sehen, was dabei bleibt.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Dobsonian on a platform</source>
   <translation>Dobson auf einer Plattform</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>On its own, the mount would let the field turn {plain:.2g}° an hour.</source>
   <translation>Allein ließe die Montierung das Feld um {plain:.2g}° je Stunde drehen.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>On what the mount stands</source>
   <translation>Worauf die Montierung steht</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Rotation that is left through the night</source>
   <translation>Verbleibende Drehung durch die Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Set for this latitude and this pole, nothing is left.</source>
   <translation>Auf diese Breite und diesen Pol eingestellt, bleibt nichts.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>Set for {set:.1f}°, used at {here:.1f}°.</source>
   <translation>Eingestellt für {set:.1f}°, benutzt auf {here:.1f}°.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>The platform is taken to stand level at the moment picked.</source>
   <translation>Zum gewählten Zeitpunkt wird die Plattform als waagrecht angenommen.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>What is left of the rotation</source>
   <translation>Was von der Drehung bleibt</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/tiltedsection.py" />
   <source>empty: the latitude of the site</source>
   <translation>leer: die Breite des Standorts</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>an hour; parallactic angle {angle}°, falling</source>
   <translation>je Stunde; parallaktischer Winkel {angle}°, fallend</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>an hour; parallactic angle {angle}°, growing</source>
   <translation>je Stunde; parallaktischer Winkel {angle}°, wachsend</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>before the corner smears by {smear:g} px</source>
   <translation>bis die Ecke um {smear:g} px verwischt</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>high in the {direction} at {time}</source>
   <translation>hoch, Richtung {direction}, um {time}</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>the horizon at {time}</source>
   <translation>dem Horizont um {time}</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>up: it stays below the horizon all night</source>
   <translation>am Himmel: Es bleibt die ganze Nacht unter dem Horizont</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>{place}, behind an obstruction</source>
   <translation>{place}, hinter einem Hindernis</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>{target} does not rise tonight: it stays at least {depth:.1f}° below the horizon.</source>
   <translation>{target} geht heute Nacht nicht auf: Es bleibt mindestens {depth:.1f}° unter dem Horizont.</translation>
  </message>
  <message>
   <location filename="app/pages/rotation/verdictwords.py" />
   <source>{target} stays behind your obstructions all night.</source>
   <translation>{target} bleibt die ganze Nacht hinter Ihren Hindernissen.</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>Left empty: assumed from the elevation as soon as that is known.</source>
   <translation>Leer gelassen: wird aus der Höhe über dem Meer angenommen, sobald diese bekannt ist.</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>Left empty: the default for {elevation:.0f} m is assumed, {pressure:.0f} hPa (standard atmosphere).</source>
   <translation>Leer gelassen: Für {elevation:.0f} m wird der Vorgabewert {pressure:.0f} hPa angenommen (Standardatmosphäre).</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>Left empty: {temperature:.0f} °C assumed.</source>
   <translation>Leer gelassen: {temperature:.0f} °C angenommen.</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>Taken as you say, though about {usual:.0f} hPa are usual at {elevation:.0f} m.</source>
   <translation>Übernommen, wie Sie sagen, obwohl auf {elevation:.0f} m etwa {usual:.0f} hPa üblich sind.</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>To convert it, the elevation must be known.</source>
   <translation>Zum Umrechnen muss die Höhe über dem Meer bekannt sein.</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>{sea_level:g} hPa at sea level make {station:.1f} hPa at {elevation:.0f} m.</source>
   <translation>{sea_level:g} hPa auf Meereshöhe ergeben {station:.1f} hPa auf {elevation:.0f} m.</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>{value:g} {unit} is outside {low:g} to {high:g} {unit}.</source>
   <translation>{value:g} {unit} liegt außerhalb von {low:g} bis {high:g} {unit}.</translation>
  </message>
  <message>
   <location filename="app/pages/site/air.py" />
   <source>“{shown}” is not a number of {unit}.</source>
   <translation>„{shown}“ ist keine Zahl in {unit}.</translation>
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
   <location filename="app/pages/site/moving.py" />
   <source>Neither: keep the place in use</source>
   <translation>Keines von beiden: beim benutzten Ort bleiben</translation>
  </message>
  <message>
   <location filename="app/pages/site/moving.py" />
   <source>The mount was moved</source>
   <translation>Die Montierung wurde versetzt</translation>
  </message>
  <message>
   <location filename="app/pages/site/moving.py" />
   <source>The new place lies {apart:.1f}° from the one in use, where stars were measured tonight. Was the place wrong, or was the mount moved? A mount that was moved has to be measured anew.</source>
   <translation>Der neue Ort liegt {apart:.1f}° von dem benutzten entfernt, an dem heute Nacht Sterne gemessen wurden. War der Ort falsch, oder wurde die Montierung versetzt? Eine versetzte Montierung muss neu vermessen werden.</translation>
  </message>
  <message>
   <location filename="app/pages/site/moving.py" />
   <source>The place was wrong</source>
   <translation>Der Ort war falsch</translation>
  </message>
  <message>
   <location filename="app/pages/site/numbers.py" />
   <source>Is that {fahrenheit:g} °F? It makes {celsius:.1f} °C.</source>
   <translation>Sind das {fahrenheit:g} °F? Das ergibt {celsius:.1f} °C.</translation>
  </message>
  <message>
   <location filename="app/pages/site/numbers.py" />
   <source>{feet:g} feet are {metres:.0f} m. Use {metres:.0f} m?</source>
   <translation>{feet:g} Fuß sind {metres:.0f} m. {metres:.0f} m verwenden?</translation>
  </message>
  <message>
   <location filename="app/pages/site/numbers.py" />
   <source>“{text}” can be read as {thousands:g} m or as {decimals:g} m. Use {thousands:g} m?</source>
   <translation>„{text}“ lässt sich als {thousands:g} m oder als {decimals:g} m lesen. {thousands:g} m verwenden?</translation>
  </message>
  <message>
   <location filename="app/pages/site/page.py" />
   <source>In use.</source>
   <translation>In Gebrauch.</translation>
  </message>
  <message>
   <location filename="app/pages/site/page.py" />
   <source>In use. The mount counts as moved: what was measured before says nothing about it any more.</source>
   <translation>In Gebrauch. Die Montierung gilt als versetzt: Was vorher gemessen wurde, sagt nichts mehr über sie.</translation>
  </message>
  <message>
   <location filename="app/pages/site/page.py" />
   <source>In use. What was measured is computed anew for this place.</source>
   <translation>In Gebrauch. Was gemessen wurde, wird für diesen Ort neu berechnet.</translation>
  </message>
  <message>
   <location filename="app/pages/site/page.py" />
   <source>The pole stands as high as your latitude, and the stars turn by your longitude. A hundredth of a degree is good enough.</source>
   <translation>Der Pol steht so hoch wie Ihre geografische Breite, und die Sterne drehen sich nach Ihrer Länge. Ein hundertstel Grad genügt.</translation>
  </message>
  <message>
   <location filename="app/pages/site/reading.py" />
   <source>The elevation is empty. A rough figure will do: 100 m matter less than 1″.</source>
   <translation>Die Höhe über dem Meer fehlt. Ein ungefährer Wert genügt: 100 m machen weniger als 1″ aus.</translation>
  </message>
  <message>
   <location filename="app/pages/site/reading.py" />
   <source>{value:g} m is outside {low:g} to {high:g} m.</source>
   <translation>{value:g} m liegt außerhalb von {low:g} bis {high:g} m.</translation>
  </message>
  <message>
   <location filename="app/pages/site/reading.py" />
   <source>“{shown}” is not a number of m.</source>
   <translation>„{shown}“ ist keine Zahl in m.</translation>
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>No target yet</source>
   <translation>Noch kein Objekt</translation>
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>Target</source>
   <translation>Objekt</translation>
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>Type its name, or the first letters.</source>
   <translation>Geben Sie den Namen ein oder seine ersten Buchstaben.</translation>
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>magnitude {size:.1f}</source>
   <translation>Helligkeit {size:.1f}</translation>
  </message>
  <message>
   <location filename="app/pages/targetbar.py" />
   <source>{size:.3g}′ across</source>
   <translation>{size:.3g}′ groß</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>A guide star is followed</source>
   <translation>Ein Leitstern wird verfolgt</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Battery</source>
   <translation>Akku</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Cooling the telescope takes</source>
   <translation>Das Teleskop kühlt aus in</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Deep sky, camera</source>
   <translation>Deep Sky, Kamera</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Mains</source>
   <translation>Netz</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Power</source>
   <translation>Strom</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Target begins at</source>
   <translation>Das Objekt beginnt um</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>The checklist is made for</source>
   <translation>Die Checkliste gilt für</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>Write it like 22:30.</source>
   <translation>Schreiben Sie es wie 22:30.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/circumstances.py" />
   <source>empty: as soon as it can</source>
   <translation>leer: sobald es geht</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>All is done. Clear skies.</source>
   <translation>Alles ist getan. Klaren Himmel!</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>It is done</source>
   <translation>Es ist getan</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>Next, {time}: {due}. {left} steps are left.</source>
   <translation>Als Nächstes, {time}: {due}. Noch {left} Schritte.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>Nothing is left on the checklist.</source>
   <translation>Auf der Checkliste ist nichts mehr offen.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>Open {page}</source>
   <translation>{page} öffnen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>The next step</source>
   <translation>Der nächste Schritt</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>The night is being worked out …</source>
   <translation>Die Nacht wird berechnet …</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/nextband.py" />
   <source>The target can begin {minutes} min later than planned.</source>
   <translation>Das Objekt kann {minutes} min später beginnen als geplant.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>All times follow from the Sun over your place: say where you are.</source>
   <translation>Alle Zeiten folgen aus der Sonne über Ihrem Ort: Sagen Sie, wo das ist.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>Darkness</source>
   <translation>Dunkelheit</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>The night could not be worked out because of a fault in the program.</source>
   <translation>Wegen eines Fehlers im Programm ließ sich die Nacht nicht berechnen.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>The whole night from packing the car to coming home: what is next, when it has to begin, how long until it is dark, and how well the axis stands.</source>
   <translation>Die ganze Nacht vom Packen bis zur Heimkehr: was als Nächstes kommt, wann es beginnen muss, wie lange es noch bis zur Dunkelheit ist und wie gut die Achse steht.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/page.py" />
   <source>What comes next tonight?</source>
   <translation>Was kommt heute Nacht als Nächstes?</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>It goes into the report. Cautions stay.</source>
   <translation>Es kommt in den Bericht. Vorsichtshinweise bleiben.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Leave it open</source>
   <translation>Offen lassen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Say in a few words why it is skipped.</source>
   <translation>Sagen Sie in wenigen Worten, warum er ausgelassen wird.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Skip it</source>
   <translation>Auslassen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Skip “{step}”</source>
   <translation>„{step}“ auslassen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>Why is it skipped tonight?</source>
   <translation>Warum wird er heute Nacht ausgelassen?</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/skipping.py" />
   <source>in a few words</source>
   <translation>in wenigen Worten</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>A step of your own, at the end of this part</source>
   <translation>Ein eigener Schritt, am Ende dieses Teils</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Add it</source>
   <translation>Hinzufügen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Checklist for this night</source>
   <translation>Checkliste für diese Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Every night</source>
   <translation>Jede Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Keep it for other nights</source>
   <translation>Für andere Nächte behalten</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steplist.py" />
   <source>Part of the night</source>
   <translation>Teil der Nacht</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Done: {step}</source>
   <translation>Getan: {step}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Move down</source>
   <translation>Nach unten</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Move up</source>
   <translation>Nach oben</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Skip</source>
   <translation>Auslassen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/steprow.py" />
   <source>Skip: {step}</source>
   <translation>Auslassen: {step}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source> m/s</source>
   <translation> m/s</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>In words</source>
   <translation>In Worten</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Note it</source>
   <translation>Notieren</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Noted last: {what}.</source>
   <translation>Zuletzt notiert: {what}.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Nothing is filled in yet.</source>
   <translation>Noch ist nichts ausgefüllt.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Nothing is noted yet tonight.</source>
   <translation>Heute Nacht ist noch nichts notiert.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>The humidity</source>
   <translation>Die Luftfeuchte</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>The wind</source>
   <translation>Der Wind</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>Weather, as you find it</source>
   <translation>Wetter, wie Sie es vorfinden</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/weatherform.py" />
   <source>thin cloud in the west, dew</source>
   <translation>dünne Wolken im Westen, Tau</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>Done at {when}.</source>
   <translation>Getan um {when}.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>Done.</source>
   <translation>Getan.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>Not needed: {reason}</source>
   <translation>Nicht nötig: {reason}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>Skipped: {reason}</source>
   <translation>Ausgelassen: {reason}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>The program saw it done, {when}.</source>
   <translation>Das Programm hat um {when} gesehen, dass es getan ist.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>The program saw it done.</source>
   <translation>Das Programm hat gesehen, dass es getan ist.</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>begin now</source>
   <translation>jetzt beginnen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>begin within {span}</source>
   <translation>beginnen binnen {span}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>good enough, {allowed} is the target</source>
   <translation>gut genug, Ziel ist {allowed}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>no time set</source>
   <translation>keine Zeit festgelegt</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>should have begun {span} ago</source>
   <translation>hätte vor {span} beginnen sollen</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>turn the bolts again, {allowed} is the target</source>
   <translation>Stellschrauben noch einmal drehen, Ziel ist {allowed}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>until {darkest}; now: {light}</source>
   <translation>bis {darkest}; jetzt: {light}</translation>
  </message>
  <message>
   <location filename="app/pages/tonight/words.py" />
   <source>watch longer to be sure, {allowed} is the target</source>
   <translation>länger beobachten, um sicher zu sein, Ziel ist {allowed}</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/bench.py" />
   <source>The computation broke off because of a fault in the program. Report it.</source>
   <translation>Die Rechnung brach wegen eines Programmfehlers ab. Melden Sie ihn.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/bench.py" />
   <source>The computation was stopped before its end. Change anything, and it begins again.</source>
   <translation>Die Rechnung wurde vor dem Ende angehalten. Ändern Sie etwas, und sie beginnt von vorn.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>206.265 times the pixel in µm over the focal length in mm.</source>
   <translation>206.265 mal der Pixel in µm durch die Brennweite in mm.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>From the middle of a guide exposure to its correction.</source>
   <translation>Von der Mitte einer Guidingbelichtung bis zu ihrer Korrektur.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>How it would be guided</source>
   <translation>Wie geguidet würde</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Longest exposures of which nine in ten are sharp</source>
   <translation>Längste Belichtungen, von denen neun von zehn scharf sind</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Needs an unguided run: bring one in under Periodic error.</source>
   <translation>Braucht eine Aufzeichnung ohne Guiding: Bringen Sie unter „Periodischer Fehler“ eine ein.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>Of exposures begun at any moment at declination {dec:.0f}°, nine in ten smear less than {free:g} px, guided less than {held:g} px.</source>
   <translation>Von Belichtungen, die zu beliebiger Zeit bei Deklination {dec:.0f}° beginnen, verwischen neun von zehn weniger als {free:g} px, mit Guiding weniger als {held:g} px.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>The air moves a guided star too; more than unguided is usual.</source>
   <translation>Die Luft bewegt auch einen geführten Stern; mehr als ohne Guiding ist üblich.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>The one the verdict is about.</source>
   <translation>Die, um die es beim Urteil geht.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>What the air does to one measurement.</source>
   <translation>Was die Luft an einer einzelnen Messung ausmacht.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/exposuresection.py" />
   <source>as far as this run can tell</source>
   <translation>soweit diese Aufzeichnung reicht</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source> ″/px</source>
   <translation> ″/px</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source> ″/s</source>
   <translation> ″/s</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>A guide correction every</source>
   <translation>Eine Guidingkorrektur alle</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>A star is centred within</source>
   <translation>Ein Stern ist zentriert auf</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Delay of the correction</source>
   <translation>Verzögerung der Korrektur</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Dither, after the first reading</source>
   <translation>Dither, nach der ersten Ablesung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Error of one guide measurement</source>
   <translation>Fehler einer Guidingmessung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>One turn of the worm</source>
   <translation>Eine Umdrehung der Schnecke</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Payload</source>
   <translation>Zuladung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Periodic error, peak to peak</source>
   <translation>Periodischer Fehler, von Spitze zu Spitze</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Settled within</source>
   <translation>Beruhigt innerhalb von</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Share corrected each time</source>
   <translation>Jeweils korrigierter Anteil</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Smear allowed</source>
   <translation>Erlaubte Verwischung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>Smear allowed when guided</source>
   <translation>Erlaubte Verwischung mit Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>The capacity</source>
   <translation>Die Tragkraft</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/figures.py" />
   <source>The guide rate</source>
   <translation>Die Guidinggeschwindigkeit</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>1 is even</source>
   <translation>1 ist ausgeglichen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Air and dither</source>
   <translation>Luft und Dithern</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Asked and moved, in ″</source>
   <translation>Verlangt und bewegt, in ″</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Declination</source>
   <translation>Deklination</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Declination backlash</source>
   <translation>Umkehrspiel in Deklination</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>If the record holds a dither.</source>
   <translation>Falls die Aufzeichnung einen Dither enthält.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Import guiding (CSV) …</source>
   <translation>Guiding importieren (CSV) …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>No guiding recorded yet; bring some minutes of it in.</source>
   <translation>Noch kein Guiding aufgezeichnet; bringen Sie einige Minuten davon ein.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Nothing in it asks for a change.</source>
   <translation>Nichts darin verlangt eine Änderung.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Practice guiding</source>
   <translation>Guiding zum Üben</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Push the star north with short equal pulses until it moves evenly, then south. Write a line for each pulse since the reversal: arcseconds asked for in all, and arcseconds the star has moved.</source>
   <translation>Schieben Sie den Stern mit kurzen, gleichen Pulsen nach Norden, bis er sich gleichmäßig bewegt, dann nach Süden. Schreiben Sie für jeden Puls seit der Umkehr eine Zeile: insgesamt verlangte Bogensekunden und wie viele Bogensekunden sich der Stern bewegt hat.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Ratio of the two</source>
   <translation>Verhältnis der beiden</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Reversal in declination: asked and moved, in ″</source>
   <translation>Umkehr in Deklination: verlangt und bewegt, in ″</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Right ascension</source>
   <translation>Rektaszension</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Some minutes of guiding</source>
   <translation>Einige Minuten Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>The offsets of the guide star while it is guided, in both axes: five minutes or more, one line for each guide exposure.</source>
   <translation>Die Abweichungen des Leitsterns, während er geführt wird, in beiden Achsen: fünf Minuten oder mehr, eine Zeile für jede Guidingbelichtung.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Under such seeing the air alone moves a star {moved:.1f}″ rms in each axis of your telescope, in short exposures; no guiding is better than that.</source>
   <translation>Bei solchem Seeing bewegt die Luft allein einen Stern in jeder Achse Ihres Teleskops um {moved:.1f}″ rms, in kurzen Belichtungen; besser kann kein Guiding sein.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>What guiding leaves</source>
   <translation>Was das Guiding übrig lässt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>Width of a star at half its brightness.</source>
   <translation>Breite eines Sterns bei halber Helligkeit.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/guidingsection.py" />
   <source>rms, worst {peak:.1f}″</source>
   <translation>rms, größte {peak:.1f}″</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Enter the image scale</source>
   <translation>Abbildungsmaßstab eingeben</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>From: {origins}.</source>
   <translation>Aus: {origins}.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Guiding holds within</source>
   <translation>Guiding hält innerhalb von</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Import a run (CSV) …</source>
   <translation>Eine Aufzeichnung importieren (CSV) …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>In figures</source>
   <translation>In Zahlen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Left after training</source>
   <translation>Rest nach dem Training</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Longest exposure, unguided</source>
   <translation>Längste Belichtung ohne Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>No answer</source>
   <translation>Keine Antwort</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Practice run</source>
   <translation>Übungsaufzeichnung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Share of the computation that is done</source>
   <translation>Erledigter Teil der Rechnung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Stop</source>
   <translation>Anhalten</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Stop recording</source>
   <translation>Aufzeichnung beenden</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>Verdict</source>
   <translation>Urteil</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/head.py" />
   <source>What each cause smears in one exposure</source>
   <translation>Was jede Ursache in einer Belichtung verwischt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>air</source>
   <translation>Luft</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>allowed</source>
   <translation>erlaubt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>guiding</source>
   <translation>Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>is surely sharp</source>
   <translation>ist sicher scharf</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>needs the image scale</source>
   <translation>braucht den Abbildungsmaßstab</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>nine in ten are sharp</source>
   <translation>neun von zehn sind scharf</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>not measured</source>
   <translation>nicht gemessen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>peak to peak</source>
   <translation>von Spitze zu Spitze</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>polar alignment</source>
   <translation>Polausrichtung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>rms</source>
   <translation>rms</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>rms, predicted</source>
   <translation>rms, vorhergesagt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>uneven drive</source>
   <translation>ungleichmäßiger Antrieb</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>{size:.1f} px</source>
   <translation>{size:.1f} px</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headfigures.py" />
   <source>{size:g} px</source>
   <translation>{size:g} px</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>A run is being recorded</source>
   <translation>Es wird aufgezeichnet</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Balancing:</source>
   <translation>Ausbalancieren:</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Every reading is kept as it comes. Half an hour to an hour is wanted; the verdict follows when the recording is stopped.</source>
   <translation>Jede Ablesung wird gespeichert, wie sie kommt. Gebraucht wird eine halbe bis eine ganze Stunde; das Urteil folgt, wenn die Aufzeichnung angehalten ist.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>It tracks well enough for such exposures</source>
   <translation>Für solche Belichtungen läuft sie gut genug</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Let the mount track a star without guiding for half an hour, or bring some minutes of guiding in. This page then says how much the drive swings, what training or guiding would leave, how long you may expose, and the one thing to try first. A practice run shows all of it by daylight.</source>
   <translation>Lassen Sie die Montierung einem Stern eine halbe Stunde ohne Guiding folgen, oder bringen Sie einige Minuten Guiding ein. Diese Seite sagt dann, wie stark der Antrieb schwingt, was Training oder Guiding übrig ließen, wie lange Sie belichten dürfen und was Sie als Erstes versuchen sollten. Eine Übungsaufzeichnung zeigt das alles bei Tageslicht.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Measured; the verdict needs one thing more</source>
   <translation>Gemessen; zum Urteil fehlt noch eines</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the air</source>
   <translation>Vor allem die Luft</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the guiding</source>
   <translation>Vor allem das Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the periodic error of the mount</source>
   <translation>Vor allem der periodische Fehler der Montierung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly the polar alignment</source>
   <translation>Vor allem die Polausrichtung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Mostly what the drive does once and not again</source>
   <translation>Vor allem, was der Antrieb nur einmal tut</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Nothing is measured yet</source>
   <translation>Noch ist nichts gemessen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>This cannot be judged yet</source>
   <translation>Das lässt sich noch nicht beurteilen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/headwords.py" />
   <source>Whether that spoils a picture depends on how much sky one pixel sees: enter the image scale.</source>
   <translation>Ob das ein Bild verdirbt, hängt davon ab, wie viel Himmel ein Pixel sieht: Geben Sie den Abbildungsmaßstab ein.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/leftout.py" />
   <source>Line {number} of the file was left out: {reason}</source>
   <translation>Zeile {number} der Datei wurde weggelassen: {reason}</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/leftout.py" />
   <source>{count} lines of the file were left out, the last of them line {number}: {reason}</source>
   <translation>{count} Zeilen der Datei wurden weggelassen, die letzte davon Zeile {number}: {reason}</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livebox.py" />
   <source>Choose the file that is being written</source>
   <translation>Die Datei wählen, in die geschrieben wird</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livebox.py" />
   <source>Record a run now</source>
   <translation>Jetzt aufzeichnen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livebox.py" />
   <source>Record from a growing file …</source>
   <translation>Aus einer wachsenden Datei aufzeichnen …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livebox.py" />
   <source>Record from the practice sky</source>
   <translation>Vom Übungshimmel aufzeichnen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livebox.py" />
   <source>Runs (*.csv *.txt *.tsv)</source>
   <translation>Aufzeichnungen (*.csv *.txt *.tsv)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livebox.py" />
   <source>Speed of the practice night</source>
   <translation>Tempo der Übungsnacht</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livebox.py" />
   <source>Track one star near the celestial equator, guiding corrections off, and record it here while another program measures it into a file (same columns as below). Every reading is in the log of nights at once; what was recorded survives a power cut.</source>
   <translation>Einem Stern nahe dem Himmelsäquator ohne Guidingkorrekturen folgen und hier aufzeichnen, während ein anderes Programm ihn misst und in eine Datei schreibt (Spalten wie unten). Jede Ablesung steht sofort im Nachtbuch; was aufgezeichnet ist, übersteht einen Stromausfall.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/liverun.py" />
   <source>Nothing was recorded: no reading had come.</source>
   <translation>Es wurde nichts aufgezeichnet: Es kam keine Ablesung.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/liverun.py" />
   <source>Practice sky, recorded live, invented</source>
   <translation>Übungshimmel, unmittelbar aufgezeichnet, erfunden</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/liverun.py" />
   <source>Recorded tonight from “{file}”</source>
   <translation>Heute Nacht aus „{file}“ aufgezeichnet</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/liverun.py" />
   <source>Recorded {n} readings, too few to judge ({least} are needed, over three turns of the worm); they are in the log of nights.</source>
   <translation>{n} Ablesungen aufgezeichnet, zu wenige für ein Urteil (nötig sind {least}, über drei Umdrehungen der Schnecke); sie stehen im Nachtbuch.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/liverun.py" />
   <source>Recorded {n} readings.</source>
   <translation>{n} Ablesungen aufgezeichnet.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/liverun.py" />
   <source>practice run</source>
   <translation>Übungsaufzeichnung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livewords.py" />
   <source>Go on for another {minutes:.0f} minutes at least, better {more:.0f}.</source>
   <translation>Noch mindestens {minutes:.0f} Minuten weiter, besser {more:.0f}.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livewords.py" />
   <source>No reading for {seconds:.0f} s: is the star still found, and the file still written?</source>
   <translation>Seit {seconds:.0f} s keine Ablesung: Wird der Stern noch gefunden und die Datei noch geschrieben?</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livewords.py" />
   <source>Recording “{label}”: {n} readings, {minutes:.1f} minutes.</source>
   <translation>Aufzeichnung „{label}“: {n} Ablesungen, {minutes:.1f} Minuten.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livewords.py" />
   <source>That can be judged; another {minutes:.0f} minutes make it surer.</source>
   <translation>Das lässt sich beurteilen; weitere {minutes:.0f} Minuten machen es sicherer.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livewords.py" />
   <source>That is enough.</source>
   <translation>Das genügt.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/livewords.py" />
   <source>Waiting for the first reading …</source>
   <translation>Warten auf die erste Ablesung …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>How well does this mount track, and what first?</source>
   <translation>Wie gut läuft diese Montierung, und was zuerst?</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>Part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/page.py" />
   <source>Training</source>
   <translation>Training</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pairs.py" />
   <source>Line {line} needs two figures with a space between them.</source>
   <translation>Zeile {line} braucht zwei Zahlen mit einem Leerzeichen dazwischen.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>A run is being recorded. Leave mount and bolts alone until it is long enough; then stop the recording, and it is judged.</source>
   <translation>Es wird aufgezeichnet. Montierung und Stellschrauben nicht anrühren, bis es lang genug ist; dann die Aufzeichnung beenden, und sie wird beurteilt.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>As the data sheet says.</source>
   <translation>Wie das Datenblatt sagt.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>From the data sheet; empty finds it in the run.</source>
   <translation>Aus dem Datenblatt; leer wird sie in der Aufzeichnung gesucht.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Let the mount track one star without guiding for at least three turns of its worm, better six: half an hour to an hour, any declination below 60°. The drift of the polar axis and of the air is computed and taken out. Legs of tonight with east offsets can be chosen here too.</source>
   <translation>Lassen Sie die Montierung einem Stern ohne Guiding mindestens drei, besser sechs Umdrehungen ihrer Schnecke lang folgen: eine halbe bis eine Stunde, beliebige Deklination unter 60°. Die Drift durch Polachse und Luft wird berechnet und abgezogen. Auch Etappen von heute Nacht mit Abweichungen nach Osten lassen sich hier wählen.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>No run yet.</source>
   <translation>Noch keine Aufzeichnung.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>No run yet. It will show what the drive does in each turn of its worm.</source>
   <translation>Noch keine Aufzeichnung. Sie zeigt, was der Antrieb in jeder Umdrehung seiner Schnecke tut.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>One turn</source>
   <translation>Eine Umdrehung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Parts of the curve that stand out</source>
   <translation>Teile der Kurve, die hervortreten</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Periods</source>
   <translation>Perioden</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>The run</source>
   <translation>Die Aufzeichnung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>The sheet gives it as ±</source>
   <translation>Das Blatt gibt ihn als ± an</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>What the data sheet says</source>
   <translation>Was das Datenblatt sagt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>What the plot shows</source>
   <translation>Was das Diagramm zeigt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>Whole run</source>
   <translation>Ganze Aufzeichnung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>amplitude ± 95 %</source>
   <translation>Amplitude ± 95 %</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>beside the worm</source>
   <translation>neben der Schnecke</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>one turn of the worm</source>
   <translation>eine Umdrehung der Schnecke</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>part</source>
   <translation>Teil</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>period</source>
   <translation>Periode</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>phase ± 95 %</source>
   <translation>Phase ± 95 %</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>{n} swings a turn</source>
   <translation>{n} Schwingungen je Umdrehung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/periodicsection.py" />
   <source>{seconds:.1f} s</source>
   <translation>{seconds:.1f} s</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>After a touch</source>
   <translation>Nach einer Berührung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Amplitude (″)</source>
   <translation>Amplitude (″)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Before and after training</source>
   <translation>Vor und nach dem Training</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Chance of a sharp exposure</source>
   <translation>Aussicht auf eine scharfe Belichtung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Declination under guiding</source>
   <translation>Deklination beim Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Drive ahead (″)</source>
   <translation>Antrieb voraus (″)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>East (″)</source>
   <translation>Ost (″)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Example: one turn of a worm</source>
   <translation>Beispiel: eine Umdrehung einer Schnecke</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>North (′)</source>
   <translation>Nord (′)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>North (″)</source>
   <translation>Nord (″)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Offset (″)</source>
   <translation>Abweichung (″)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Period (seconds)</source>
   <translation>Periode (Sekunden)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Place in the turn (seconds)</source>
   <translation>Stelle in der Umdrehung (Sekunden)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Right ascension under guiding</source>
   <translation>Rektaszension beim Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Sharp ones (%)</source>
   <translation>Scharfe (%)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Star to the east (″)</source>
   <translation>Stern nach Osten (″)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>The run so far, as it is measured</source>
   <translation>Die bisherige Aufzeichnung, wie sie gemessen wird</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>The whole run, the drift of the axis taken out</source>
   <translation>Die ganze Aufzeichnung, die Drift der Achse abgezogen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Time (minutes)</source>
   <translation>Zeit (Minuten)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Time (seconds)</source>
   <translation>Zeit (Sekunden)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>West (′)</source>
   <translation>West (′)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>What is left at each star</source>
   <translation>Was an jedem Stern bleibt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>Which periods the run holds</source>
   <translation>Welche Perioden die Aufzeichnung enthält</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>after a change</source>
   <translation>nach einer Änderung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>amplitude</source>
   <translation>Amplitude</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>an invented drive</source>
   <translation>ein erfundener Antrieb</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>before</source>
   <translation>vorher</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>fitted curve</source>
   <translation>angepasste Kurve</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>guided</source>
   <translation>mit Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>mean of all turns</source>
   <translation>Mittel aller Umdrehungen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>nine in ten</source>
   <translation>neun von zehn</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>single turns</source>
   <translation>einzelne Umdrehungen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>star, all parts taken out</source>
   <translation>Stern, alle Anteile abgezogen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>trained</source>
   <translation>trainiert</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>unguided</source>
   <translation>ohne Guiding</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>what is left of single turns</source>
   <translation>Rest einzelner Umdrehungen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>what training takes out</source>
   <translation>was das Training herausnimmt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>{arcmin:+.1f}′ north</source>
   <translation>{arcmin:+.1f}′ Nord</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>{arcmin:+.1f}′ west</source>
   <translation>{arcmin:+.1f}′ West</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>{minutes:.1f} min</source>
   <translation>{minutes:.1f} min</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>{seconds:.0f} s</source>
   <translation>{seconds:.0f} s</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pictures.py" />
   <source>{seconds:.2f} s</source>
   <translation>{seconds:.2f} s</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Before you loosen anything: cap the tube and have somebody hold it.</source>
   <translation>Bevor Sie etwas lösen: das Rohr abdecken und von jemandem halten lassen.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Choose a list of stars</source>
   <translation>Eine Sternliste wählen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Enter your site first; the stars are placed over it.</source>
   <translation>Geben Sie zuerst Ihren Standort ein; die Sterne werden von dort aus gesehen.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>How far the mount misses</source>
   <translation>Wie weit die Montierung danebenzeigt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Import stars (CSV) …</source>
   <translation>Sterne importieren (CSV) …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>No star yet. From three stars on something can be said.</source>
   <translation>Noch kein Stern. Ab drei Sternen lässt sich etwas sagen.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Once its circles are set</source>
   <translation>Wenn ihre Kreise eingestellt sind</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Practice stars</source>
   <translation>Sterne zum Üben</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Practice stars, invented; they are not kept.</source>
   <translation>Sterne zum Üben, erfunden; sie werden nicht gespeichert.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Remove all</source>
   <translation>Alle entfernen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Remove the chosen star</source>
   <translation>Den gewählten Stern entfernen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Send the mount to a star, bring it into the middle by hand, and note what the mount shows. Eight or more, high and low, on both sides of the pier.</source>
   <translation>Lassen Sie die Montierung einen Stern anfahren, bringen Sie ihn von Hand in die Mitte und notieren Sie, was die Montierung anzeigt. Acht oder mehr, hoch und tief, auf beiden Seiten der Säule.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Stars (*.csv *.txt *.tsv)</source>
   <translation>Sterne (*.csv *.txt *.tsv)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Stars pointed at</source>
   <translation>Angefahrene Sterne</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Taken: {n} stars.</source>
   <translation>Übernommen: {n} Sterne.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>Where were they seen from? Enter your site first.</source>
   <translation>Von wo wurden sie gesehen? Geben Sie zuerst Ihren Standort ein.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>With all parts taken out</source>
   <translation>Mit allen Anteilen abgezogen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>declination {dec:+.0f}°</source>
   <translation>Deklination {dec:+.0f}°</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>rms on these stars</source>
   <translation>rms an diesen Sternen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>star {number}</source>
   <translation>Stern {number}</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>tube east of the pier</source>
   <translation>Rohr östlich der Säule</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>tube west of the pier</source>
   <translation>Rohr westlich der Säule</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>{h:.1f} h east</source>
   <translation>{h:.1f} h östlich</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/pointingsection.py" />
   <source>{h:.1f} h west</source>
   <translation>{h:.1f} h westlich</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/polardrift.py" />
   <source>The polar axis is in all curves: as a drift when unguided, as the turning of the field about a guide star in its middle when guided.</source>
   <translation>Die Polachse steckt in allen Kurven: ohne Guiding als Drift, mit Guiding als Drehung des Bildfelds um einen Leitstern in seiner Mitte.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/polardrift.py" />
   <source>The polar axis is in the unguided curves. The turning of the field about the guide star is not in the guided one: it needs the telescope and camera of the Mount page.</source>
   <translation>Die Polachse steckt in den Kurven ohne Guiding. Die Drehung des Bildfelds um den Leitstern steckt nicht in der mit Guiding: Sie braucht Teleskop und Kamera der Seite „Montierung“.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/polardrift.py" />
   <source>The polar axis is not known yet: what its error adds is counted as part of the drive when unguided, and left out when guided. Finish an alignment on the Drift page.</source>
   <translation>Die Polachse ist noch nicht bekannt: Was ihr Fehler beiträgt, zählt ohne Guiding zum Antrieb und bleibt mit Guiding weg. Schließen Sie auf der Seite „Drift“ eine Ausrichtung ab.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/practice.py" />
   <source>Practice guiding, invented</source>
   <translation>Guiding zum Üben, erfunden</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/practice.py" />
   <source>Practice run, invented</source>
   <translation>Übungsaufzeichnung, erfunden</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/practice.py" />
   <source>Practice tap, invented</source>
   <translation>Klopfen zum Üben, erfunden</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/practice.py" />
   <source>invented {number}</source>
   <translation>erfunden {number}</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/practice.py" />
   <source>practice guiding</source>
   <translation>Guiding zum Üben</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/reading.py" />
   <source>{file}, leg “{leg}”</source>
   <translation>{file}, Etappe „{leg}“</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/reading.py" />
   <source>“{file}” is too large for such a record; choose another file.</source>
   <translation>„{file}“ ist zu groß für eine solche Aufzeichnung; wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/reading.py" />
   <source>… and {more} more lines.</source>
   <translation>… und {more} weitere Zeilen.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>A text file with the columns {columns}; east_px and north_px too.</source>
   <translation>Eine Textdatei mit den Spalten {columns}; auch east_px und north_px.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Choose a run</source>
   <translation>Eine Aufzeichnung wählen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Leave this one out</source>
   <translation>Diese weglassen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Leg of the file</source>
   <translation>Etappe der Datei</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Leg of tonight, up to now</source>
   <translation>Etappe von heute Nacht, bis jetzt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Read it again</source>
   <translation>Noch einmal lesen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>Tonight, leg “{label}”</source>
   <translation>Heute Nacht, Etappe „{label}“</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/runbox.py" />
   <source>{origin}: {n} readings over {minutes:.0f} minutes.</source>
   <translation>{origin}: {n} Ablesungen über {minutes:.0f} Minuten.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>A star in the middle of the field</source>
   <translation>Ein Stern in der Mitte des Bildfelds</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Add this star</source>
   <translation>Diesen Stern hinzufügen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Declination of the star, J2000</source>
   <translation>Deklination des Sterns, J2000</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Declination the mount shows</source>
   <translation>Deklination, die die Montierung zeigt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Right ascension of the star, J2000</source>
   <translation>Rektaszension des Sterns, J2000</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>Right ascension the mount shows</source>
   <translation>Rektaszension, die die Montierung zeigt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>The mount shows places</source>
   <translation>Die Montierung zeigt Orte</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>The tube stands</source>
   <translation>Das Rohr steht</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>When, in UTC; empty is now</source>
   <translation>Wann, in UTC; leer heißt jetzt</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>east of the pier</source>
   <translation>östlich der Säule</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>of J2000</source>
   <translation>von J2000</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>of tonight</source>
   <translation>von heute</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/starform.py" />
   <source>west of the pier</source>
   <translation>westlich der Säule</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>A mount that can be trained plays a recorded curve back against its worm. It takes out what repeats from turn to turn, no more. Sign and phase are said in the head of the file: the curve is the lead of the drive at the equator, positive ahead.</source>
   <translation>Eine Montierung mit Fehlertraining spielt eine aufgezeichnete Kurve gegen ihre Schnecke ab. Sie nimmt heraus, was sich von Umdrehung zu Umdrehung wiederholt, mehr nicht. Vorzeichen und Phase stehen im Kopf der Datei: Die Kurve ist der Vorlauf des Antriebs am Äquator, voraus ist positiv.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Changes from turn to turn</source>
   <translation>Ändert sich von Umdrehung zu Umdrehung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Curves (*.csv)</source>
   <translation>Kurven (*.csv)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Export the mean curve</source>
   <translation>Die mittlere Kurve exportieren</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Export the mean curve (CSV) …</source>
   <translation>Die mittlere Kurve exportieren (CSV) …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>Repeats from turn to turn</source>
   <translation>Wiederholt sich von Umdrehung zu Umdrehung</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/trainingsection.py" />
   <source>What repeats and what does not</source>
   <translation>Was sich wiederholt und was nicht</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>A tap</source>
   <translation>Ein Klopfen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Choose a record</source>
   <translation>Eine Aufzeichnung wählen</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Columns: {columns}</source>
   <translation>Spalten: {columns}</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>First swing</source>
   <translation>Erster Ausschlag</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Import a tap (CSV) …</source>
   <translation>Ein Klopfen importieren (CSV) …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Import a tap after a change …</source>
   <translation>Ein Klopfen nach einer Änderung importieren …</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Load</source>
   <translation>Last</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>No tap yet. It shows how long to wait after a touch.</source>
   <translation>Noch kein Klopfen. Es zeigt, wie lange nach einer Berührung zu warten ist.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Practice tap</source>
   <translation>Klopfen zum Üben</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Record a bright star ten times a second or more, tap the tube lightly with a finger or turn the focuser, and record until it is still.</source>
   <translation>Zeichnen Sie einen hellen Stern mindestens zehnmal je Sekunde auf, klopfen Sie leicht mit einem Finger ans Rohr oder drehen Sie am Okularauszug, und zeichnen Sie auf, bis er ruhig steht.</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Settled after</source>
   <translation>Beruhigt nach</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Swings a second</source>
   <translation>Schwingungen je Sekunde</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Taking weight off:</source>
   <translation>Gewicht abnehmen:</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>Taps (*.csv *.txt *.tsv)</source>
   <translation>Klopfaufzeichnungen (*.csv *.txt *.tsv)</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>one in {s:.2f} s</source>
   <translation>eine in {s:.2f} s</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>to one side</source>
   <translation>nach einer Seite</translation>
  </message>
  <message>
   <location filename="app/pages/tracking/vibrationsection.py" />
   <source>± {error:.1f} s</source>
   <translation>± {error:.1f} s</translation>
  </message>
  <message>
   <location filename="app/rail.py" />
   <source>Page {title}</source>
   <translation>Seite {title}</translation>
  </message>
  <message>
   <location filename="app/rail.py" />
   <source>Pages</source>
   <translation>Seiten</translation>
  </message>
  <message>
   <location filename="app/rail.py" />
   <source>{title} (Alt+{number})</source>
   <translation>{title} (Alt+{number})</translation>
  </message>
  <message>
   <location filename="app/session/around.py" />
   <source>No time zone is kept for this place: times are in UTC.</source>
   <translation>Für diesen Ort ist keine Zeitzone gespeichert: Zeiten sind in UTC.</translation>
  </message>
  <message>
   <location filename="app/session/around.py" />
   <source>The time zone of this place is not known: times are in UTC.</source>
   <translation>Die Zeitzone dieses Ortes ist nicht bekannt: Zeiten sind in UTC.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>The exposure is not entered yet.</source>
   <translation>Die Belichtung ist noch nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>The hour angle to begin at is not entered yet.</source>
   <translation>Der Stundenwinkel am Beginn ist noch nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>The hour angle to end at is not entered yet.</source>
   <translation>Der Stundenwinkel am Ende ist noch nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>The reducer or Barlow factor is not entered yet.</source>
   <translation>Der Faktor des Reducers oder der Barlowlinse ist noch nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>The set in use has no telescope and camera to go with it: choose such a set on the Mount page, or type the optics on the Budget page.</source>
   <translation>Zum benutzten Satz gehören kein Teleskop und keine Kamera dazu: Wählen Sie auf der Seite „Montierung“ einen solchen Satz oder geben Sie die Optik auf der Seite „Spielraum“ ein.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>The smear allowed is not entered yet.</source>
   <translation>Die erlaubte Verwischung ist noch nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>The target is not entered yet.</source>
   <translation>Das Objekt ist noch nicht eingegeben.</translation>
  </message>
  <message>
   <location filename="app/session/budget.py" />
   <source>the optics typed</source>
   <translation>die eingegebene Optik</translation>
  </message>
  <message>
   <location filename="app/session/clockcheck.py" />
   <source>A reading was not taken because its time lies at the same instant as the one before: check that only one source delivers readings.</source>
   <translation>Eine Ablesung wurde nicht übernommen, weil ihre Zeit genau die der vorigen ist: Prüfen Sie, dass nur eine Quelle Ablesungen liefert.</translation>
  </message>
  <message>
   <location filename="app/session/clockcheck.py" />
   <source>A reading was not taken because its time lies {early_s:.1f} s before the one before: check that only one source delivers readings.</source>
   <translation>Eine Ablesung wurde nicht übernommen, weil ihre Zeit {early_s:.1f} s vor der vorigen liegt: Prüfen Sie, dass nur eine Quelle Ablesungen liefert.</translation>
  </message>
  <message>
   <location filename="app/session/clockcheck.py" />
   <source>No reading came for {span}, or the clock was set forward</source>
   <translation>Seit {span} kam keine Ablesung, oder die Uhr wurde vorgestellt</translation>
  </message>
  <message>
   <location filename="app/session/clockcheck.py" />
   <source>The clock went back by {span}</source>
   <translation>Die Uhr ging um {span} zurück</translation>
  </message>
  <message>
   <location filename="app/session/clockcheck.py" />
   <source>{hours:.1f} h</source>
   <translation>{hours:.1f} h</translation>
  </message>
  <message>
   <location filename="app/session/clockcheck.py" />
   <source>{what}: leg “{ended}” was ended and “{begun}” begun. If the clock was set, check the time and date, then discard the leg that was read by the wrong time.</source>
   <translation>{what}: Etappe „{ended}“ wurde beendet und „{begun}“ begonnen. Falls die Uhr gestellt wurde, prüfen Sie Zeit und Datum und verwerfen Sie dann die Etappe mit der falschen Zeit.</translation>
  </message>
  <message>
   <location filename="app/session/clockwatch.py" />
   <source>Compare the time on the Site page with a clock you trust; what was worked out before may be for the wrong time.</source>
   <translation>Vergleichen Sie die Zeit auf der Seite „Standort“ mit einer verlässlichen Uhr; was vorher berechnet wurde, kann für die falsche Zeit gelten.</translation>
  </message>
  <message>
   <location filename="app/session/clockwatch.py" />
   <source>The computer's clock jumped back by {span}.</source>
   <translation>Die Uhr des Computers sprang um {span} zurück.</translation>
  </message>
  <message>
   <location filename="app/session/clockwatch.py" />
   <source>The computer's clock jumped forward by {span}.</source>
   <translation>Die Uhr des Computers sprang um {span} vor.</translation>
  </message>
  <message>
   <location filename="app/session/flipping.py" />
   <source>{target} is never high enough and clear while it is dark tonight. Choose another target, or a lower useful altitude.</source>
   <translation>{target} steht heute Nacht im Dunkeln nie hoch genug und frei. Wählen Sie ein anderes Objekt oder eine geringere nutzbare Höhe.</translation>
  </message>
  <message>
   <location filename="app/session/guide/afterturn.py" />
   <source>The axis is not where this turn should have brought it. If the tripod was knocked or moved, say so; otherwise go on, what was known before is no longer used.</source>
   <translation>Die Achse ist nicht da, wohin diese Drehung sie hätte bringen sollen. Wurde das Stativ angestoßen oder bewegt, sagen Sie es; sonst machen Sie weiter, das vorher Bekannte wird nicht mehr verwendet.</translation>
  </message>
  <message>
   <location filename="app/session/guide/afterturn.py" />
   <source>The error</source>
   <translation>Der Fehler</translation>
  </message>
  <message>
   <location filename="app/session/guide/afterturn.py" />
   <source>{what} grew by {size:.0f}′: that was the other direction.</source>
   <translation>{what} wuchs um {size:.0f}′: Das war die andere Richtung.</translation>
  </message>
  <message>
   <location filename="app/session/guide/afterturn.py" />
   <source>{what} went {size:.0f}′ past the pole: that was the other direction.</source>
   <translation>{what} ging {size:.0f}′ über den Pol hinaus: Das war die andere Richtung.</translation>
  </message>
  <message>
   <location filename="app/session/guide/boltbook.py" />
   <source>No mount is chosen on the Mount page: what turns teach is kept in a book of its own, for no mount. Choose the set you use to keep it with its mount.</source>
   <translation>Auf der Seite „Montierung“ ist keine Montierung gewählt: Was Drehungen lehren, kommt in ein eigenes Buch ohne Montierung. Wählen Sie den benutzten Satz, um es bei seiner Montierung zu behalten.</translation>
  </message>
  <message>
   <location filename="app/session/guide/boltbook.py" />
   <source>Practice: what these turns teach is forgotten at the end.</source>
   <translation>Übung: Was diese Drehungen lehren, wird am Ende vergessen.</translation>
  </message>
  <message>
   <location filename="app/session/guide/boltbook.py" />
   <source>What turns teach is kept with the mount “{name}”.</source>
   <translation>Was Drehungen lehren, wird bei der Montierung „{name}“ behalten.</translation>
  </message>
  <message>
   <location filename="app/session/guide/stars.py" />
   <source>It is too light for stars yet. The practice sky is there by day as well.</source>
   <translation>Für Sterne ist es noch zu hell. Den Übungshimmel gibt es auch bei Tag.</translation>
  </message>
  <message>
   <location filename="app/session/guide/stars.py" />
   <source>No bright star stands free of obstructions now: wait a little, or name one yourself.</source>
   <translation>Jetzt steht kein heller Stern frei von Hindernissen: Warten Sie ein wenig oder nennen Sie selbst einen.</translation>
  </message>
  <message>
   <location filename="app/session/guide/stars.py" />
   <source>The Moon stands {apart:.0f}° from it.</source>
   <translation>Der Mond steht {apart:.0f}° daneben.</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>All legs of this log are here already: nothing was taken again.</source>
   <translation>Alle Etappen dieses Protokolls sind schon da: Nichts wurde noch einmal übernommen.</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>Legs here since the bolts were last turned: {here} ({here_times}). Legs in the log: {new} ({new_times}).</source>
   <translation>Etappen hier seit der letzten Drehung der Stellschrauben: {here} ({here_times}). Etappen im Protokoll: {new} ({new_times}).</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>Solve them together only if nobody touched the bolts or moved the mount in between. In a new state the log stands alone: the legs here no longer count, but stay in the log of nights.</source>
   <translation>Lösen Sie sie nur zusammen, wenn dazwischen niemand die Stellschrauben berührt oder die Montierung bewegt hat. In einem neuen Achsenstand steht das Protokoll allein: Die Etappen hier zählen nicht mehr, bleiben aber im Nachtbuch.</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>The log is from another night.</source>
   <translation>Das Protokoll stammt aus einer anderen Nacht.</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>This log was measured at latitude {log_latitude:.2f}°, longitude {log_longitude:.2f}°, but tonight's place is {latitude:.2f}°, {longitude:.2f}°. Nothing was taken: solved at the wrong place it may turn the bolts the wrong way. Enter its place on the Site page and read it again, or correct the lines at its top.</source>
   <translation>Dieses Protokoll wurde bei Breite {log_latitude:.2f}°, Länge {log_longitude:.2f}° gemessen, der Ort heute Nacht ist aber {latitude:.2f}°, {longitude:.2f}°. Nichts wurde übernommen: Am falschen Ort gerechnet, kann es die Schrauben in die falsche Richtung drehen lassen. Geben Sie seinen Ort auf der Seite „Standort“ ein und lesen Sie es noch einmal, oder berichtigen Sie die Zeilen an seinem Anfang.</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>not read yet</source>
   <translation>noch nicht abgelesen</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>{begun} to {ended}</source>
   <translation>{begun} bis {ended}</translation>
  </message>
  <message>
   <location filename="app/session/joining.py" />
   <source>{count} of its legs are here already and were not taken again.</source>
   <translation>{count} seiner Etappen sind schon da und wurden nicht noch einmal übernommen.</translation>
  </message>
  <message>
   <location filename="app/session/keeper.py" />
   <source>The log of nights could not be written ({reason}). What you measure stays in memory only: export it as a drift log before you close the program.</source>
   <translation>Das Nachtbuch ließ sich nicht schreiben ({reason}). Ihre Messungen bleiben nur im Speicher: Exportieren Sie sie als Driftprotokoll, bevor Sie das Programm schließen.</translation>
  </message>
  <message>
   <location filename="app/session/nightfiles.py" />
   <source>Saved as {name} in {folder}, {size:.0f} kB.</source>
   <translation>Gespeichert als {name} in {folder}, {size:.0f} kB.</translation>
  </message>
  <message>
   <location filename="app/session/nightfiles.py" />
   <source>The night cannot be read from the log; nothing was written.</source>
   <translation>Die Nacht lässt sich nicht aus dem Nachtbuch lesen; nichts wurde geschrieben.</translation>
  </message>
  <message>
   <location filename="app/session/nightfiles.py" />
   <source>The night of {when} is in the log.</source>
   <translation>Die Nacht vom {when} ist im Nachtbuch.</translation>
  </message>
  <message>
   <location filename="app/session/nightfiles.py" />
   <source>{name} has {size:.0f} MB; more than {most:.0f} cannot be taken.</source>
   <translation>{name} hat {size:.0f} MB; mehr als {most:.0f} können nicht übernommen werden.</translation>
  </message>
  <message>
   <location filename="app/session/nightfiles.py" />
   <source>{name} is not a picture that can be kept: {kinds} can.</source>
   <translation>{name} ist kein Bild, das gespeichert werden kann; möglich sind {kinds}.</translation>
  </message>
  <message>
   <location filename="app/session/nightfiles.py" />
   <source>{path} cannot be read ({why}); choose another file.</source>
   <translation>{path} lässt sich nicht lesen ({why}); wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <location filename="app/session/nightfiles.py" />
   <source>{path} could not be written ({why}): choose another folder or make room. What was there before is unchanged.</source>
   <translation>{path} ließ sich nicht schreiben ({why}): Wählen Sie einen anderen Ordner oder schaffen Sie Platz. Was vorher da war, ist unverändert.</translation>
  </message>
  <message>
   <location filename="app/session/nightpdf.py" />
   <source>Night of {when}</source>
   <translation>Nacht vom {when}</translation>
  </message>
  <message>
   <location filename="app/session/nightpdf.py" />
   <source>nothing was written to {path}</source>
   <translation>nach {path} wurde nichts geschrieben</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source> m</source>
   <translation> m</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Centring again takes</source>
   <translation>Das erneute Zentrieren dauert</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Crossing of the axes above ground</source>
   <translation>Kreuzung der Achsen über dem Boden</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Eye comfortable from</source>
   <translation>Auge bequem ab</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Eye comfortable to</source>
   <translation>Auge bequem bis</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Eye out from the tube's middle</source>
   <translation>Auge von der Mitte des Rohrs nach außen</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Eyepiece forward along the tube</source>
   <translation>Okular entlang des Rohrs nach vorn</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Eyepiece turned in the rings</source>
   <translation>Okular in den Rohrschellen gedreht</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Flips from, past the meridian</source>
   <translation>Schlägt um ab, hinter dem Meridian</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>From there to the middle of the tube</source>
   <translation>Von dort bis zur Mitte des Rohrs</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Lowest useful altitude</source>
   <translation>Geringste nutzbare Höhe</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>May pass the meridian by</source>
   <translation>Darf über den Meridian hinaus um</translation>
  </message>
  <message>
   <location filename="app/session/planfigures.py" />
   <source>Turning over takes</source>
   <translation>Das Umschlagen dauert</translation>
  </message>
  <message>
   <location filename="app/session/problems.py" />
   <source>The place you stand on is not known, so the axis error cannot be computed yet: enter latitude and longitude on the Site page. The readings are kept.</source>
   <translation>Ihr Standort ist nicht bekannt, deshalb lässt sich der Achsenfehler noch nicht berechnen: Geben Sie auf der Seite „Standort“ geografische Breite und Länge ein. Die Ablesungen bleiben erhalten.</translation>
  </message>
  <message>
   <location filename="app/session/runrecorder.py" />
   <source>A reading was left out because it has no east offset, and the drive shows in these alone.</source>
   <translation>Eine Ablesung wurde ausgelassen, weil ihr die Abweichung nach Osten fehlt, und nur in dieser zeigt sich der Antrieb.</translation>
  </message>
  <message>
   <location filename="app/session/runrecorder.py" />
   <source>A reading was left out because its time or its offset is not a number.</source>
   <translation>Eine Ablesung wurde ausgelassen, weil ihre Zeit oder ihre Abweichung keine Zahl ist.</translation>
  </message>
  <message>
   <location filename="app/session/runrecorder.py" />
   <source>The times of the readings jumped, so run “{old}” was ended and “{new}” begun: was the clock set, or the recording interrupted?</source>
   <translation>Die Zeiten der Ablesungen sprangen, deshalb wurde die Aufzeichnung „{old}“ beendet und „{new}“ begonnen: Wurde die Uhr gestellt oder die Aufzeichnung unterbrochen?</translation>
  </message>
  <message>
   <location filename="app/session/sleepcheck.py" />
   <source>The computer slept for {slept} before “{label}” was read for the first time. See that the star is in view, then read it.</source>
   <translation>Der Computer schlief {slept}, bevor „{label}“ zum ersten Mal abgelesen wurde. Sehen Sie nach, ob der Stern im Feld steht, und lesen Sie ihn dann ab.</translation>
  </message>
  <message>
   <location filename="app/session/sleepcheck.py" />
   <source>The computer slept for {slept} while “{label}” was watched. At its drift the star has left the field: bring it back. A new leg on it is begun; both count.</source>
   <translation>Der Computer schlief {slept}, während „{label}“ beobachtet wurde. Bei seiner Drift hat der Stern das Feld verlassen: Holen Sie ihn zurück. Eine neue Etappe mit ihm ist begonnen; beide zählen.</translation>
  </message>
  <message>
   <location filename="app/session/sleepcheck.py" />
   <source>The computer slept for {slept} while “{label}” was watched. See that the star is still where it was read: when it is read again within {left}, the leg goes on and the gap stays empty.</source>
   <translation>Der Computer schlief {slept}, während „{label}“ beobachtet wurde. Sehen Sie nach, ob der Stern noch da ist, wo er abgelesen wurde: Wird er innerhalb von {left} wieder abgelesen, so geht die Etappe weiter, und die Lücke bleibt leer.</translation>
  </message>
  <message>
   <location filename="app/session/sleepcheck.py" />
   <source>The computer slept for {slept}, and “{label}” was last read {gap} ago: too long for one leg. A new leg on the same star is begun; both count. See that the star is still in view.</source>
   <translation>Der Computer schlief {slept}, und „{label}“ wurde vor {gap} zuletzt abgelesen: zu lang für eine Etappe. Eine neue Etappe mit demselben Stern ist begonnen; beide zählen. Sehen Sie nach, ob der Stern noch im Feld steht.</translation>
  </message>
  <message>
   <location filename="app/session/solvedagain.py" />
   <source>No leg is chosen: choose at least one.</source>
   <translation>Keine Etappe ist gewählt: Wählen Sie mindestens eine.</translation>
  </message>
  <message>
   <location filename="app/session/solver.py" />
   <source>The axis error could not be computed from these readings because of a fault in the program ({fault}: {reason}). Every reading is kept: go on watching, discard the newest leg if the message stays, and report it.</source>
   <translation>Wegen eines Fehlers im Programm ({fault}: {reason}) ließ sich der Achsenfehler aus diesen Ablesungen nicht berechnen. Jede Ablesung bleibt erhalten: Beobachten Sie weiter, verwerfen Sie die neueste Etappe, wenn die Meldung bleibt, und melden Sie den Fehler.</translation>
  </message>
  <message>
   <location filename="app/session/tonight.py" />
   <source>A reading came while no star was being watched and was not taken: begin a leg first.</source>
   <translation>Eine Ablesung kam, während kein Stern beobachtet wurde, und wurde nicht übernommen: Beginnen Sie zuerst eine Etappe.</translation>
  </message>
  <message>
   <location filename="app/session/tonight.py" />
   <source>A reading was not taken because its time or its offset is not a number.</source>
   <translation>Eine Ablesung wurde nicht übernommen, weil ihre Zeit oder ihre Abweichung keine Zahl ist.</translation>
  </message>
  <message>
   <location filename="app/session/tonight.py" />
   <source>There is no leg “{label}” to discard since the bolts were turned.</source>
   <translation>Seit der Drehung der Stellschrauben gibt es keine Etappe „{label}“ zum Verwerfen.</translation>
  </message>
  <message>
   <location filename="app/signals/awake.py" />
   <source>A star is being watched</source>
   <translation>Ein Stern wird beobachtet</translation>
  </message>
  <message>
   <location filename="app/signals/awake.py" />
   <source>This computer offers no way to keep its screen on: switch off screen saver and sleep in its settings while you watch a star.</source>
   <translation>Dieser Computer bietet keinen Weg, den Bildschirm eingeschaltet zu lassen: Schalten Sie Bildschirmschoner und Ruhezustand in seinen Einstellungen aus, während Sie einen Stern beobachten.</translation>
  </message>
  <message>
   <location filename="app/signals/cue.py" />
   <source>Good enough.</source>
   <translation>Gut genug.</translation>
  </message>
  <message>
   <location filename="app/signals/cue.py" />
   <source>Stop.</source>
   <translation>Halt.</translation>
  </message>
  <message>
   <location filename="app/signals/cue.py" />
   <source>The star is leaving.</source>
   <translation>Der Stern geht aus dem Feld.</translation>
  </message>
  <message>
   <location filename="app/signals/cue.py" />
   <source>This star has told enough.</source>
   <translation>Dieser Stern hat genug verraten.</translation>
  </message>
  <message>
   <location filename="app/signals/cue.py" />
   <source>Turn the bolts now.</source>
   <translation>Drehen Sie jetzt die Stellschrauben.</translation>
  </message>
  <message>
   <location filename="app/signals/means.py" />
   <source>This computer offers no player of sounds: a plain beep is used, if it has one.</source>
   <translation>Dieser Computer bietet kein Programm zum Abspielen von Tönen: Ein einfacher Piepton wird verwendet, falls er einen hat.</translation>
  </message>
  <message>
   <location filename="app/signals/sounds.py" />
   <source>The player of sounds failed and nothing is heard: watch the screen.</source>
   <translation>Das Abspielen der Töne ist gescheitert, und nichts ist zu hören: Beachten Sie den Bildschirm.</translation>
  </message>
  <message>
   <location filename="app/sources/growing.py" />
   <source>“{file}” became shorter, so it was begun anew; what was recorded so far is kept. Follow it again for the new run.</source>
   <translation>„{file}“ wurde kürzer, also wurde neu begonnen; was bisher aufgezeichnet wurde, bleibt. Folgen Sie der Datei für die neue Aufzeichnung noch einmal.</translation>
  </message>
  <message>
   <location filename="app/sources/growing.py" />
   <source>“{file}” can no longer be read ({reason}); what was recorded so far is kept. Is the drive still there?</source>
   <translation>„{file}“ lässt sich nicht mehr lesen ({reason}); was bisher aufgezeichnet wurde, bleibt. Ist das Laufwerk noch da?</translation>
  </message>
  <message>
   <location filename="app/sources/growing.py" />
   <source>“{file}” has no lines of text that could be readings; choose a CSV file.</source>
   <translation>„{file}“ hat keine Textzeilen, die Ablesungen sein könnten; wählen Sie eine CSV-Datei.</translation>
  </message>
  <message>
   <location filename="app/sources/logfile.py" />
   <source>{file} could not be read because of a fault in the program ({fault}: {reason}): nothing was taken from it. Report it.</source>
   <translation>{file} ließ sich wegen eines Fehlers im Programm nicht lesen ({fault}: {reason}): Nichts wurde daraus übernommen. Melden Sie den Fehler.</translation>
  </message>
  <message>
   <location filename="app/sources/logfile.py" />
   <source>{file} has been read.</source>
   <translation>{file} ist gelesen.</translation>
  </message>
  <message>
   <location filename="app/sources/manual.py" />
   <source>One of your {unit} must cover more than zero arcseconds: measure how long a star near the equator takes to drift across it; a second of time is 15 arcseconds.</source>
   <translation>Einer Ihrer Schritte ({unit}) muss mehr als null Bogensekunden groß sein: Messen Sie, wie lange ein Stern nahe am Äquator braucht, um ihn zu durchlaufen; eine Zeitsekunde sind 15 Bogensekunden.</translation>
  </message>
  <message>
   <location filename="app/sources/manual.py" />
   <source>Readings by hand</source>
   <translation>Ablesungen von Hand</translation>
  </message>
  <message>
   <location filename="app/sources/manual.py" />
   <source>The offset must be a number: read it again and type its digits.</source>
   <translation>Die Abweichung muss eine Zahl sein: Lesen Sie noch einmal ab und geben Sie die Ziffern ein.</translation>
  </message>
  <message>
   <location filename="app/sources/manual.py" />
   <source>arcseconds</source>
   <translation>Bogensekunden</translation>
  </message>
  <message>
   <location filename="app/sources/shortest.py" />
   <source>A drift can be judged over {shortest:g} to {longest:g} minutes, not over {given:g}: give the minutes between the two looks.</source>
   <translation>Eine Drift lässt sich über {shortest:g} bis {longest:g} Minuten beurteilen, nicht über {given:g}: Geben Sie die Minuten zwischen den beiden Blicken an.</translation>
  </message>
  <message>
   <location filename="app/sources/shortest.py" />
   <source>How far the star moved and when must be numbers: type them again.</source>
   <translation>Wie weit sich der Stern bewegte und wann, müssen Zahlen sein: Geben Sie sie noch einmal ein.</translation>
  </message>
  <message>
   <location filename="app/sources/shortest.py" />
   <source>Say how well you can read an offset, in arcseconds above zero: without it nobody can tell how sure the result is.</source>
   <translation>Sagen Sie, wie genau Sie eine Abweichung ablesen können, in Bogensekunden über null: Ohne das weiß niemand, wie sicher das Ergebnis ist.</translation>
  </message>
  <message>
   <location filename="app/storage/archive.py" />
   <source>reading it back found a fault</source>
   <translation>beim Zurücklesen fand sich ein Fehler</translation>
  </message>
  <message>
   <location filename="app/storage/opening.py" />
   <source>all of {count} files are of a newer version</source>
   <translation>alle {count} Dateien stammen von einer neueren Version</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>All that can be read of the file is in the log already; nothing was added.</source>
   <translation>Alles Lesbare der Datei steht schon im Nachtbuch; nichts kam hinzu.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Another copy of this program writes the log of nights {file}: this one only reads it. What you measure here is kept in memory. Close the other copy, and within seconds it is written.</source>
   <translation>Eine andere Kopie dieses Programms schreibt das Nachtbuch {file}: Diese liest es nur. Was Sie hier messen, bleibt im Speicher. Schließen Sie die andere Kopie, und binnen Sekunden wird es geschrieben.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Another copy of this program writes the log of nights, so nothing can be added here. Close the other copy, then take {file} in.</source>
   <translation>Eine andere Kopie dieses Programms schreibt das Nachtbuch, deshalb kann hier nichts aufgenommen werden. Schließen Sie die andere Kopie und nehmen Sie {file} dann auf.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Another file was put in the place of the log of nights {path} while the program ran. The program still had all nights, tonight as well, and has written them there anew. The other file is kept as {other}: if nights are in it, add them on the Log page, part “Keep safe”.</source>
   <translation>An die Stelle des Nachtbuchs {path} wurde eine andere Datei gelegt, während das Programm lief. Das Programm hatte noch alle Nächte, auch die heutige, und hat sie dort neu geschrieben. Die andere Datei bleibt als {other} erhalten: Sind Nächte darin, fügen Sie diese auf der Seite „Nachtbuch“, Teil „Sicher aufheben“, hinzu.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Saved into the log: {counted}.</source>
   <translation>Ins Nachtbuch gerettet: {counted}.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>Some of the file cannot be read.</source>
   <translation>Ein Teil der Datei ist nicht lesbar.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The backup {path} could not be written ({reason}). Choose a place with enough room that may be written; the log of nights is not affected.</source>
   <translation>Die Sicherung {path} ließ sich nicht schreiben ({reason}). Wählen Sie einen Ort mit genug Platz, an den geschrieben werden darf; das Nachtbuch ist nicht betroffen.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The disk with {folder} is full: free some space on it.</source>
   <translation>Der Datenträger mit {folder} ist voll: Schaffen Sie dort Platz.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The drive with {folder} does not take data: check that it is still there.</source>
   <translation>Das Laufwerk mit {folder} nimmt keine Daten an: Prüfen Sie, ob es noch da ist.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The folder {folder} cannot be made or used ({reason}).</source>
   <translation>Der Ordner {folder} lässt sich nicht anlegen oder benutzen ({reason}).</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was damaged. It is kept as {aside} and a new one was begun with all that could be read of it: {counted}.</source>
   <translation>Das Nachtbuch {file} war beschädigt. Es bleibt als {aside} erhalten, und ein neues wurde begonnen mit allem, was sich daraus lesen ließ: {counted}.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was damaged. It is kept as {aside} and a new one was begun, and nothing in the old one could be read.</source>
   <translation>Das Nachtbuch {file} war beschädigt. Es bleibt als {aside} erhalten, und ein neues wurde begonnen; im alten war nichts lesbar.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was damaged. It is kept as {aside} and a new one was begun, but there was no room to save what can be read of the old one: free some space on the disk, then salvage it on the Log page, part “Keep safe”.</source>
   <translation>Das Nachtbuch {file} war beschädigt. Es bleibt als {aside} erhalten, und ein neues wurde begonnen, doch es war kein Platz, um zu retten, was im alten lesbar ist: Schaffen Sie Platz auf dem Datenträger und retten Sie es dann auf der Seite „Nachtbuch“, Teil „Sicher aufheben“.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {file} was written by a newer version of this program and is left untouched; tonight goes into {instead}. Update the program to see the earlier nights.</source>
   <translation>Das Nachtbuch {file} wurde von einer neueren Version dieses Programms geschrieben und bleibt unberührt; heute Nacht kommt in {instead}. Aktualisieren Sie das Programm, um die früheren Nächte zu sehen.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} cannot be written ({reason}).</source>
   <translation>Das Nachtbuch {path} lässt sich nicht schreiben ({reason}).</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} cannot be written: allow writing in {folder}.</source>
   <translation>Das Nachtbuch {path} lässt sich nicht schreiben: Erlauben Sie das Schreiben in {folder}.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} is damaged and cannot be set aside: move it elsewhere.</source>
   <translation>Das Nachtbuch {path} ist beschädigt und lässt sich nicht beiseitelegen: Verschieben Sie es an einen anderen Ort.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} is held by another program: close that program.</source>
   <translation>Das Nachtbuch {path} wird von einem anderen Programm festgehalten: Schließen Sie jenes Programm.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} was deleted or moved, in whole or in part, while the program ran. The program still had all nights, tonight as well, and has written them there anew. Leave the log where it is while the program runs.</source>
   <translation>Das Nachtbuch {path} wurde ganz oder teilweise gelöscht oder verschoben, während das Programm lief. Das Programm hatte noch alle Nächte, auch die heutige, und hat sie dort neu geschrieben. Lassen Sie das Nachtbuch an seinem Platz, solange das Programm läuft.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} was deleted, moved or replaced while the program ran.</source>
   <translation>Das Nachtbuch {path} wurde gelöscht, verschoben oder ersetzt, während das Programm lief.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The log of nights {path} was empty (0 bytes) and was begun anew. If nights should be in it, restore a backup on the Log page.</source>
   <translation>Das Nachtbuch {path} war leer (0 Bytes) und wurde neu begonnen. Sollten Nächte darin sein, holen Sie auf der Seite „Nachtbuch“ eine Sicherung zurück.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The old file is kept untouched: {path}.</source>
   <translation>Die alte Datei bleibt unberührt: {path}.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>The other copy is closed: this one writes the log of nights {file} now.</source>
   <translation>Die andere Kopie ist geschlossen: Diese schreibt jetzt das Nachtbuch {file}.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>This program still has all nights and tries every few seconds to write them there anew. Do not close it before this message is gone.</source>
   <translation>Dieses Programm hat noch alle Nächte und versucht alle paar Sekunden, sie dort neu zu schreiben. Schließen Sie es nicht, bevor diese Meldung verschwunden ist.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>What was recorded beside {file} by another copy of the program has joined it: {counted}.</source>
   <translation>Was eine andere Kopie des Programms neben {file} aufgezeichnet hat, ist hinzugekommen: {counted}.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>What you measure is kept in memory and writing is tried again every few seconds; export it as a drift log before you close the program.</source>
   <translation>Ihre Messungen bleiben im Speicher, und alle paar Sekunden wird das Schreiben wieder versucht; exportieren Sie sie als Driftprotokoll, bevor Sie das Programm schließen.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>While this copy of the program only read, the other one changed what both keep, such as the equipment or the places. That stays as the other one left it, and what you change of it here is not kept. Close this copy and open it again to go on with it.</source>
   <translation>Während diese Kopie des Programms nur las, hat die andere geändert, was beide behalten, etwa die Ausrüstung oder die Orte. Das bleibt, wie es die andere hinterließ, und was Sie hier daran ändern, wird nicht behalten. Schließen Sie diese Kopie und öffnen Sie sie neu, um damit weiterzumachen.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>nights: {nights}, legs: {legs}, readings: {readings:,}</source>
   <translation>Nächte: {nights}, Etappen: {legs}, Ablesungen: {readings:,}</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} is empty (0 bytes): there is nothing in it to take. Choose another file.</source>
   <translation>{file} ist leer (0 Bytes): Darin ist nichts zu holen. Wählen Sie eine andere Datei.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} is not a log of nights, or nothing in it can be read: choose a backup or a log made by this program. Nothing was changed.</source>
   <translation>{file} ist kein Nachtbuch, oder nichts darin ist lesbar: Wählen Sie eine Sicherung oder ein Nachtbuch dieses Programms. Nichts wurde geändert.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} is the log of nights in use; it was looked through and is not damaged.</source>
   <translation>{file} ist das benutzte Nachtbuch; es wurde durchgesehen und ist nicht beschädigt.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} was damaged and is salvaged; what was saved is said above.</source>
   <translation>{file} war beschädigt und ist gerettet; was gerettet wurde, steht oben.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{file} was written by a newer version of this program: update the program, then take it in. Nothing was changed.</source>
   <translation>{file} wurde von einer neueren Version dieses Programms geschrieben: Aktualisieren Sie das Programm und nehmen Sie die Datei dann auf. Nichts wurde geändert.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{nights} nights are saved in {path} and were read back without a fault.</source>
   <translation>{nights} Nächte sind in {path} gesichert und wurden fehlerfrei zurückgelesen.</translation>
  </message>
  <message>
   <location filename="app/storage/sentences.py" />
   <source>{path} belongs to the log of nights that is in use, and writing there would destroy it. Nothing was written: choose another name or another folder.</source>
   <translation>{path} gehört zum Nachtbuch, das gerade benutzt wird; es würde zerstört, wenn dorthin geschrieben würde. Nichts wurde geschrieben: Wählen Sie einen anderen Namen oder einen anderen Ordner.</translation>
  </message>
  <message>
   <location filename="app/storage/writer.py" />
   <source>the log of nights is not open</source>
   <translation>das Nachtbuch ist nicht geöffnet</translation>
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Day</source>
   <translation>Tag</translation>
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Help on this page, words and keys (F1)</source>
   <translation>Hilfe zu dieser Seite, Wörter und Tasten (F1)</translation>
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Larger text; after the largest comes the usual size again</source>
   <translation>Größerer Text; nach dem größten kommt wieder die übliche Größe</translation>
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Look</source>
   <translation>Ansicht</translation>
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Night</source>
   <translation>Nacht</translation>
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>No place yet</source>
   <translation>Noch kein Ort</translation>
  </message>
  <message>
   <location filename="app/strip.py" />
   <source>Text {percent} %</source>
   <translation>Text {percent} %</translation>
  </message>
  <message>
   <location filename="app/translation.py" />
   <source>The words for “{language}” cannot be read from {folder}: the program speaks English. Install Poleward again.</source>
   <translation>Die Wörter für „{language}“ lassen sich nicht aus {folder} lesen: Das Programm spricht Englisch. Installieren Sie Poleward neu.</translation>
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
   <location filename="app/widgets/curves.py" />
   <source>{low} to {high}</source>
   <translation>{low} bis {high}</translation>
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>Azimuth {azimuth:.0f}°, {altitude} high</source>
   <translation>Azimut {azimuth:.0f}°, {altitude} hoch</translation>
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
   <translation>Drift nach Norden (″)</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Plot of declination drift against time</source>
   <translation>Bild der Deklinationsdrift über der Zeit</translation>
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Point at a reading, or walk with , and . (arrows move, + and − zoom, L: next leg).</source>
   <translation>Zeigen Sie auf eine Ablesung, oder gehen Sie mit , und . (Pfeile verschieben, + und − vergrößern, L: nächste Etappe).</translation>
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
   <location filename="app/widgets/figure.py" />
   <source>It lies between {low:g} and {high:g}{unit}.</source>
   <translation>Der Wert liegt zwischen {low:g} und {high:g}{unit}.</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>It must be above zero; {value:g} is not.</source>
   <translation>Der Wert muss über null liegen; {value:g} tut das nicht.</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>The </source>
   <translation>Der |Die |Das </translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>arcminutes</source>
   <translation>Bogenminuten</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>arcminutes a turn</source>
   <translation>Bogenminuten je Umdrehung</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>arcseconds per g</source>
   <translation>Bogensekunden je g</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>degrees a second</source>
   <translation>Grad je Sekunde</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>{quantity}, in {unit}</source>
   <translation>{quantity}, in {unit}</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>{typed} is not a whole number.</source>
   <translation>{typed} ist keine ganze Zahl.</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>“{shown}” has two marks; write it without thousands.</source>
   <translation>„{shown}“ hat zwei Trennzeichen; schreiben Sie es ohne Tausenderzeichen.</translation>
  </message>
  <message>
   <location filename="app/widgets/figure.py" />
   <source>“{shown}” is not a number.</source>
   <translation>„{shown}“ ist keine Zahl.</translation>
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
   <location filename="app/widgets/legcurves.py" />
   <source>step {size:.1f}″</source>
   <translation>Sprung {size:.1f}″</translation>
  </message>
  <message>
   <location filename="app/widgets/legshapes.py" />
   <source>circle</source>
   <translation>Kreis</translation>
  </message>
  <message>
   <location filename="app/widgets/legshapes.py" />
   <source>diamond</source>
   <translation>Raute</translation>
  </message>
  <message>
   <location filename="app/widgets/legshapes.py" />
   <source>inverted triangle</source>
   <translation>umgekehrtes Dreieck</translation>
  </message>
  <message>
   <location filename="app/widgets/legshapes.py" />
   <source>pentagon</source>
   <translation>Fünfeck</translation>
  </message>
  <message>
   <location filename="app/widgets/legshapes.py" />
   <source>plus</source>
   <translation>Plus</translation>
  </message>
  <message>
   <location filename="app/widgets/legshapes.py" />
   <source>square</source>
   <translation>Quadrat</translation>
  </message>
  <message>
   <location filename="app/widgets/legshapes.py" />
   <source>triangle</source>
   <translation>Dreieck</translation>
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
   <location filename="app/widgets/nightpainter.py" />
   <source>now</source>
   <translation>jetzt</translation>
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
   <location filename="app/widgets/spans.py" />
   <source>{hours} h</source>
   <translation>{hours} h</translation>
  </message>
  <message>
   <location filename="app/widgets/spans.py" />
   <source>{minutes:.2g} min</source>
   <translation>{minutes:.2g} min</translation>
  </message>
  <message>
   <location filename="app/widgets/spans.py" />
   <source>{minutes:.4g} min</source>
   <translation>{minutes:.4g} min</translation>
  </message>
  <message>
   <location filename="app/widgets/spans.py" />
   <source>{seconds:.2g} s</source>
   <translation>{seconds:.2g} s</translation>
  </message>
  <message>
   <location filename="app/widgets/spans.py" />
   <source>{seconds:.4g} s</source>
   <translation>{seconds:.4g} s</translation>
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
   <location filename="app/widgets/targetsearch.py" />
   <source>{size:g}′ across</source>
   <translation>{size:g}′ groß</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>Drawing: the tube from behind, with its eyepiece</source>
   <translation>Zeichnung: der Tubus von hinten mit seinem Okular</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>on the left of the tube</source>
   <translation>links am Rohr</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>on the right of the tube</source>
   <translation>rechts am Rohr</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>on top of the tube</source>
   <translation>oben auf dem Rohr</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>on top, towards the left</source>
   <translation>oben, nach links</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>on top, towards the right</source>
   <translation>oben, nach rechts</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>under the tube</source>
   <translation>unter dem Rohr</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>under the tube, towards the left</source>
   <translation>unter dem Rohr, nach links</translation>
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>under the tube, towards the right</source>
   <translation>unter dem Rohr, nach rechts</translation>
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
   <location filename="app/widgets/waiting.py" />
   <source>Being worked out … What stands here is from before.</source>
   <translation>Wird berechnet … Was hier steht, ist von vorher.</translation>
  </message>
  <message>
   <location filename="app/widgets/waiting.py" />
   <source>Stop working it out</source>
   <translation>Berechnung anhalten</translation>
  </message>
  <message>
   <location filename="app/widgets/waiting.py" />
   <source>Stopped: what stands here is from before.</source>
   <translation>Angehalten: Was hier steht, ist von vorher.</translation>
  </message>
  <message>
   <location filename="app/window.py" />
   <source>Drop one file at a time: none of these was taken.</source>
   <translation>Legen Sie immer nur eine Datei ab: Keine davon wurde genommen.</translation>
  </message>
  <message>
   <location filename="app/window.py" />
   <source>Opening tonight as it was left…</source>
   <translation>Heute Nacht wird geöffnet, wie sie verlassen wurde…</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Altitude error: not known yet; these readings cannot tell it.</source>
   <translation>Höhenfehler: noch nicht bekannt; aus diesen Ablesungen geht er nicht hervor.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Altitude error: not told while the legs contradict one another.</source>
   <translation>Höhenfehler: wird nicht genannt, solange die Etappen einander widersprechen.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Altitude: {size}, at the pole within the ±: leave it.</source>
   <translation>Höhe: {size}, innerhalb des ± am Pol: so lassen.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Altitude: {size}; whether it is off, and which way, is not clear yet: watch on.</source>
   <translation>Höhe: {size}; ob sie falsch ist und in welche Richtung, ist noch nicht klar: weiter beobachten.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Azimuth error: not known yet; these readings cannot tell it.</source>
   <translation>Azimutfehler: noch nicht bekannt; aus diesen Ablesungen geht er nicht hervor.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Azimuth error: not told while the legs contradict one another.</source>
   <translation>Azimutfehler: wird nicht genannt, solange die Etappen einander widersprechen.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Azimuth means nothing at a pole of the Earth, so no error of it is given.</source>
   <translation>An einem Pol der Erde bedeutet das Azimut nichts, daher wird kein Fehler dafür angegeben.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Azimuth: {size}, at the pole within the ±: leave it.</source>
   <translation>Azimut: {size}, innerhalb des ± am Pol: so lassen.</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>Azimuth: {size}; whether it is off, and to which side, is not clear yet: watch on.</source>
   <translation>Azimut: {size}; ob es falsch ist und nach welcher Seite, ist noch nicht klar: weiter beobachten.</translation>
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
   <location filename="core/alignment/advice.py" />
   <source>probably {turn}</source>
   <translation>wahrscheinlich {turn}</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>probably {where}</source>
   <translation>wahrscheinlich {where}</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>side not clear yet</source>
   <translation>Seite noch nicht klar</translation>
  </message>
  <message>
   <location filename="core/alignment/advice.py" />
   <source>watch on</source>
   <translation>weiter beobachten</translation>
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
   <location filename="core/alignment/axis/priors.py" />
   <source>degrees</source>
   <translation>Grad</translation>
  </message>
  <message>
   <location filename="core/alignment/axis/priors.py" />
   <source>seconds</source>
   <translation>Sekunden</translation>
  </message>
  <message>
   <location filename="core/alignment/axis/priors.py" />
   <source>seconds of arc</source>
   <translation>Bogensekunden</translation>
  </message>
  <message>
   <location filename="core/alignment/axis/priors.py" />
   <source>seconds of arc per g</source>
   <translation>Bogensekunden je g</translation>
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
   <location filename="core/alignment/budget/goal.py" />
   <source>It asks for less than a hand can turn: expose shorter.</source>
   <translation>Er verlangt weniger, als eine Hand drehen kann: Belichten Sie kürzer.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/goal.py" />
   <source>It would allow more; nearer is easily reached.</source>
   <translation>Er würde mehr erlauben; näher ist leicht zu erreichen.</translation>
  </message>
  <message>
   <location filename="core/alignment/budget/goal.py" />
   <source>{goal:g}′, from tonight’s budget: {seconds:g} s exposures at {focal:g} mm.</source>
   <translation>{goal:g}′, aus dem Spielraum von heute Nacht: Belichtungen von {seconds:g} s bei {focal:g} mm.</translation>
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
   <source>a shorter exposure or a guide star nearer to the target</source>
   <translation>eine kürzere Belichtung oder einen Leitstern näher am Ziel</translation>
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
   <source>These stars stand alike: together they fix one combination of the two errors.</source>
   <translation>Diese Sterne stehen gleich: Zusammen legen sie nur eine Verbindung der beiden Fehler fest.</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>To settle it, watch {star}.</source>
   <translation>Um sie zu trennen, beobachten Sie {star}.</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>a second star about {hours:.0f} hours east of the meridian</source>
   <translation>einen zweiten Stern etwa {hours:.0f} Stunden östlich des Meridians</translation>
  </message>
  <message>
   <location filename="core/alignment/combination.py" />
   <source>a second star about {hours:.0f} hours west of the meridian</source>
   <translation>einen zweiten Stern etwa {hours:.0f} Stunden westlich des Meridians</translation>
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
   <location filename="core/alignment/contradictionwords.py" />
   <source> or of leg </source>
   <translation> oder von Etappe </translation>
  </message>
  <message>
   <location filename="core/alignment/contradictionwords.py" />
   <source>Leg {names} contradicts all others and is not used.</source>
   <translation>Etappe {names} widerspricht allen anderen und wird nicht verwendet.</translation>
  </message>
  <message>
   <location filename="core/alignment/contradictionwords.py" />
   <source>The legs {names} contradict all others and are not used.</source>
   <translation>Die Etappen {names} widersprechen allen anderen und werden nicht verwendet.</translation>
  </message>
  <message>
   <location filename="core/alignment/contradictionwords.py" />
   <source>The legs {names} contradict one another, and nothing tells which of them is wrong: so no error of the axis is told.</source>
   <translation>Die Etappen {names} widersprechen einander, und nichts verrät, welche davon falsch ist: Deshalb wird kein Fehler der Achse genannt.</translation>
  </message>
  <message>
   <location filename="core/alignment/contradictionwords.py" />
   <source>Was another star in view, or the tripod moved in between? Leave out the leg that is wrong, or watch a star again.</source>
   <translation>War ein anderer Stern im Blick, oder wurde das Stativ dazwischen bewegt? Lassen Sie die falsche Etappe aus, oder beobachten Sie noch einen Stern.</translation>
  </message>
  <message>
   <location filename="core/alignment/contradictionwords.py" />
   <source>With north and south of leg {names} exchanged all legs agree: if you took one for the other there, exchange them.</source>
   <translation>Mit vertauschtem Norden und Süden von Etappe {names} stimmen alle überein: Haben Sie dort das eine für das andere genommen, vertauschen Sie sie.</translation>
  </message>
  <message>
   <location filename="core/alignment/contradictionwords.py" />
   <source>“{label}”</source>
   <translation>„{label}“</translation>
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
   <source>It begins with # like a remark though it looks like a reading; put the label of the leg in quotation marks if it is meant.</source>
   <translation>Sie beginnt mit # wie eine Bemerkung, sieht aber wie eine Ablesung aus; setzen Sie den Namen der Etappe in Anführungszeichen, wenn er gemeint ist.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/columns.py" />
   <source>It has {count} fields for {columns} column names (with a decimal comma separate the columns by “;”).</source>
   <translation>Sie hat {count} Felder für {columns} Spaltennamen (bei Dezimalkomma die Spalten mit „;“ trennen).</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/columns.py" />
   <source>It has {count} fields for {columns} column names.</source>
   <translation>Sie hat {count} Felder für {columns} Spaltennamen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/columns.py" />
   <source>Its quotation marks do not match.</source>
   <translation>Ihre Anführungszeichen passen nicht zusammen.</translation>
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
   <location filename="core/alignment/driftlog/headkeys.py" />
   <source>The key “{key}” is not known, so its value is not used. Known are {names}: rename it and convert its value, or leave out the sign behind it if this is a remark.</source>
   <translation>Der Schlüssel „{key}“ ist nicht bekannt, daher wird sein Wert nicht verwendet. Bekannt sind {names}: Benennen Sie ihn um und rechnen Sie seinen Wert um, oder lassen Sie das Zeichen dahinter weg, wenn es eine Bemerkung ist.</translation>
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
   <source>{name} was already {first:g} in line {line}; {value:g} is left out. Split the log if the place, the air or the equipment changed.</source>
   <translation>{name} war schon {first:g} in Zeile {line}; {value:g} wird ausgelassen. Teilen Sie das Protokoll, wenn sich Ort, Luft oder Ausrüstung geändert haben.</translation>
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
   <location filename="core/alignment/driftlog/lines.py" />
   <source>It holds NUL bytes, as a power cut leaves them.</source>
   <translation>Sie enthält NUL-Bytes, wie ein Stromausfall sie hinterlässt.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/lines.py" />
   <source>It is longer than {most} characters.</source>
   <translation>Sie ist länger als {most} Zeichen.</translation>
  </message>
  <message>
   <location filename="core/alignment/driftlog/lines.py" />
   <source>It is not UTF-8 text; save the file as UTF-8.</source>
   <translation>Sie ist kein Text in UTF-8; speichern Sie die Datei in UTF-8.</translation>
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
   <source>sigma_arcsec {sigma:g} is finer than any instrument reads ({least:g}″ at best); correct it, or leave it empty if unknown.</source>
   <translation>sigma_arcsec {sigma:g} ist feiner, als irgendein Instrument misst (bestenfalls {least:g}″); berichtigen Sie den Wert, oder lassen Sie ihn leer, wenn er unbekannt ist.</translation>
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
   <source>A tube that yields {flexure:g}″ per g leaves ±{least:.1f}′ however long you watch, so the ± will not come within {target:g}′: state a stiffer tube if yours is one.</source>
   <translation>Ein Tubus, der um {flexure:g}″ je g nachgibt, lässt ±{least:.1f}′ übrig, so lange Sie auch beobachten; das ± kommt also nicht unter {target:g}′. Geben Sie einen steiferen Tubus an, wenn Ihrer einer ist.</translation>
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
   <source>The legs contradict one another: first settle which of them is wrong.</source>
   <translation>Die Etappen widersprechen einander: Klären Sie zuerst, welche davon falsch ist.</translation>
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
   <location filename="core/alignment/goal.py" />
   <source>beyond</source>
   <translation>nicht erreicht</translation>
  </message>
  <message>
   <location filename="core/alignment/goal.py" />
   <source>from tonight's budget</source>
   <translation>aus dem Spielraum von heute</translation>
  </message>
  <message>
   <location filename="core/alignment/goal.py" />
   <source>not clear yet</source>
   <translation>noch nicht klar</translation>
  </message>
  <message>
   <location filename="core/alignment/goal.py" />
   <source>set by you</source>
   <translation>von Ihnen gesetzt</translation>
  </message>
  <message>
   <location filename="core/alignment/goal.py" />
   <source>the usual figure</source>
   <translation>der übliche Wert</translation>
  </message>
  <message>
   <location filename="core/alignment/goal.py" />
   <source>within</source>
   <translation>erreicht</translation>
  </message>
  <message>
   <location filename="core/alignment/goal.py" />
   <source>{goal:g}′, as you set it.</source>
   <translation>{goal:g}′, wie von Ihnen festgelegt.</translation>
  </message>
  <message>
   <location filename="core/alignment/goal.py" />
   <source>{goal:g}′, the usual figure (common practice, no source): the Budget page tells what tonight’s exposures need.</source>
   <translation>{goal:g}′, der übliche Wert (gängige Praxis, keine Quelle): Die Seite „Spielraum“ sagt, was die Belichtungen von heute Nacht brauchen.</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>Check that the times are UTC and not local time, the place (longitude counts east), and the star.</source>
   <translation>Prüfen Sie, ob die Zeiten UTC sind und nicht Ortszeit, dazu den Ort (Länge nach Osten gezählt) und den Stern.</translation>
  </message>
  <message>
   <location filename="core/alignment/plausibility.py" />
   <source>Leg “{label}” cannot be right: {reason}</source>
   <translation>Etappe „{label}“ kann nicht stimmen: {reason}</translation>
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
   <location filename="core/alignment/speed.py" />
   <source>its star drifts {rate:,.0f}″ a minute, though no polar axis can cause more than {fastest:.0f}″. The offsets cannot be seconds of arc: are they milliarcseconds or pixels? Convert them first.</source>
   <translation>ihr Stern driftet {rate:,.0f}″ in der Minute, doch keine Polachse kann mehr als {fastest:.0f}″ bewirken. Die Abweichungen können keine Bogensekunden sein: Sind es Millibogensekunden oder Pixel? Rechnen Sie sie zuerst um.</translation>
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
   <source>At latitude {latitude:.1f}° the axis stands upright, where azimuth means nothing, so no azimuth error is given; level the mount and trust the altitude error.</source>
   <translation>Bei {latitude:.1f}° Breite steht die Achse senkrecht; dort bedeutet das Azimut nichts, daher wird kein Azimutfehler angegeben. Stellen Sie die Montierung waagrecht und verlassen Sie sich auf den Höhenfehler.</translation>
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
   <source>North of leg “{label}” is turned by {angle:.1f}° ± {width:.1f}°: motion in east shows in it. That is taken into account, but turn the camera or reticle until a star runs along east and west.</source>
   <translation>Norden von Etappe „{label}“ ist um {angle:.1f}° ± {width:.1f}° gedreht: Bewegung in Ost zeigt sich darin. Das ist berücksichtigt, aber drehen Sie Kamera oder Fadenkreuz, bis ein Stern entlang Ost und West läuft.</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>Refraction is switched off (no air pressure).</source>
   <translation>Die Refraktion ist abgeschaltet (kein Luftdruck).</translation>
  </message>
  <message>
   <location filename="core/alignment/weakness.py" />
   <source>The star of leg “{label}” drifts {rate:.0f}″ a minute, as if the axis pointed {least:.0f}° or more beside the pole. If it does not, the offsets are not seconds of arc (milliarcseconds, pixels?) and nothing said here is right.</source>
   <translation>Der Stern der Etappe „{label}“ driftet {rate:.0f}″ in der Minute, als zeigte die Achse {least:.0f}° oder mehr am Pol vorbei. Tut sie das nicht, sind die Abweichungen keine Bogensekunden (Millibogensekunden, Pixel?), und nichts von dem hier Gesagten stimmt.</translation>
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
   <translation>Ein Gegengewicht ist nötig: Zwischen {least:.1f} und {most:.1f} kg passt an diese Stange.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>At the end of the bar {weight:g} kg is still too light: use at least {least:.1f} kg in all, or a bar {longer:.0f} mm longer of the same make.</source>
   <translation>Auch am Ende der Stange sind {weight:g} kg zu leicht: Nehmen Sie insgesamt mindestens {least:.1f} kg oder eine um {longer:.0f} mm längere Stange gleicher Art.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>Even at the inner end of the bar {weight:g} kg is too heavy: use at most {most:.1f} kg.</source>
   <translation>Selbst am inneren Ende der Stange sind {weight:g} kg zu schwer: Nehmen Sie höchstens {most:.1f} kg.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>It balances with the middle of the {weight:g} kg {place:.0f} mm from the polar axis, {end:.0f} mm from the end of the bar.</source>
   <translation>Gleichgewicht herrscht, wenn die Mitte der {weight:g} kg {place:.0f} mm von der Polachse entfernt ist, {end:.0f} mm vom Ende der Stange.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>No counterweight is needed.</source>
   <translation>Ein Gegengewicht ist nicht nötig.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>No counterweight is needed; the bar alone outweighs the load by {torque:.1f} N m: take the bar off, or use a lighter one.</source>
   <translation>Ein Gegengewicht ist nicht nötig; die Stange allein überwiegt die Last um {torque:.1f} N m: Nehmen Sie die Stange ab, oder verwenden Sie eine leichtere.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>The bar alone holds the load: take the counterweight off.</source>
   <translation>Die Stange allein hält die Last: Nehmen Sie das Gegengewicht ab.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>The counterweight cannot be placed without {missing}.</source>
   <translation>Der Platz des Gegengewichts lässt sich nicht bestimmen; es fehlt: {missing}.</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar</source>
   <translation>die Stange</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar's beginning of “{mount}”</source>
   <translation>der Beginn der Gegengewichtsstange von „{mount}“</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar's length of “{mount}”</source>
   <translation>die Länge der Gegengewichtsstange von „{mount}“</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the bar's mass of “{mount}”</source>
   <translation>die Masse der Gegengewichtsstange von „{mount}“</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the counterweight</source>
   <translation>das Gegengewicht</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>the mass of “{name}”</source>
   <translation>die Masse von „{name}“</translation>
  </message>
  <message>
   <location filename="core/mount/balance.py" />
   <source>“{mount}” is {kind}: it has no counterweight bar to balance.</source>
   <translation>„{mount}“ ({kind}) hat keine Gegengewichtsstange, die auszubalancieren wäre.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source> and </source>
   <translation> und </translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>It is level with “{name}”.</source>
   <translation>Sie ist gleichauf mit „{name}“.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>It would be in if {changes}.</source>
   <translation>Sie wäre dabei, wenn {changes}.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>It would draw level with “{name}” {change}.</source>
   <translation>Sie wäre mit „{name}“ gleichauf, {change}.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>No single figure would bring it level with “{name}”.</source>
   <translation>Kein einzelner Wert brächte sie mit „{name}“ gleichauf.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>Nothing here speaks for “{name}” against it; no weights would change that.</source>
   <translation>Nichts spricht hier für „{name}“ und gegen sie; keine Gewichtung würde das ändern.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>Out for {purpose}: {reasons}.</source>
   <translation>Ausgeschieden für „{purpose}“: {reasons}.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>There is nothing to compare it with.</source>
   <translation>Es gibt nichts, womit sie zu vergleichen wäre.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>To judge it, {tasks}.</source>
   <translation>Um sie zu beurteilen: {tasks}.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>any</source>
   <translation>beliebig</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>as good as the others'</source>
   <translation>so gut wie der der anderen</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>but {reasons}</source>
   <translation>aber {reasons}</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if it had error training</source>
   <translation>wenn sie Fehlertraining hätte</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if it had goto</source>
   <translation>wenn sie Goto hätte</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if it has error training, not known</source>
   <translation>wenn sie Fehlertraining hat, was nicht bekannt ist</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if its {criterion} were {figure}</source>
   <translation>wenn ihr Wert für „{criterion}“ {figure} wäre</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>if its {criterion}, which is not known, were {figure}</source>
   <translation>wenn ihr Wert für „{criterion}“, der nicht bekannt ist, {figure} wäre</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>not judged: {qualities}</source>
   <translation>nicht beurteilt: {qualities}</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>strong in {qualities}</source>
   <translation>stark: {qualities}</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>weak in {qualities}</source>
   <translation>schwach: {qualities}</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>{mark:.1f} of 5</source>
   <translation>{mark:.1f} von 5</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>{total:.2f} of 1 for {purpose}</source>
   <translation>{total:.2f} von 1 für „{purpose}“</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>“{name}” could pass it once its {qualities} is known.</source>
   <translation>„{name}“ könnte sie überholen, sobald {qualities} bekannt ist.</translation>
  </message>
  <message>
   <location filename="core/mount/choicewords.py" />
   <source>“{name}” would draw level if {criterion} counted {weight:.3g} instead of {present:g}.</source>
   <translation>„{name}“ wäre gleichauf, wenn „{criterion}“ mit {weight:.3g} statt mit {present:g} zählte.</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>A piece of equipment has no name; give it one.</source>
   <translation>Ein Stück der Ausrüstung hat keinen Namen; geben Sie ihm einen.</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>Dobsonian</source>
   <translation>Dobson</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>German equatorial</source>
   <translation>Deutsche Montierung</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The altitude bolt</source>
   <translation>Die Höhenschraube</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The aperture</source>
   <translation>Die Öffnung</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The apparent field</source>
   <translation>Das scheinbare Gesichtsfeld</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The azimuth bolt</source>
   <translation>Die Azimutschraube</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The bar's beginning</source>
   <translation>Der Beginn der Stange</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The bar's length</source>
   <translation>Die Länge der Stange</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The bar's mass</source>
   <translation>Die Masse der Stange</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The capacity's distance</source>
   <translation>Der Abstand zur Tragkraft</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The dovetail's length</source>
   <translation>Die Länge der Prismenschiene</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The drive speed limit</source>
   <translation>Die Höchstgeschwindigkeit</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The ease of use</source>
   <translation>Die Bedienbarkeit</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The flexure</source>
   <translation>Die Durchbiegung</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The guide focal length</source>
   <translation>Die Guiding-Brennweite</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The head's imbalance</source>
   <translation>Das Ungleichgewicht des Kopfes</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The height</source>
   <translation>Die Höhe</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The height above the saddle</source>
   <translation>Die Höhe über der Klemme</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The length</source>
   <translation>Die Länge</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The listed capacity</source>
   <translation>Die angegebene Tragkraft</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The mass</source>
   <translation>Die Masse</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The outer diameter</source>
   <translation>Der Außendurchmesser</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The own weight</source>
   <translation>Das Eigengewicht</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The periodic error</source>
   <translation>Der periodische Fehler</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The pointing accuracy</source>
   <translation>Die Zeigegenauigkeit</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The position along the tube</source>
   <translation>Die Lage längs des Rohrs</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The price</source>
   <translation>Der Preis</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The saddle's distance</source>
   <translation>Der Abstand der Klemme</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The saddle's length</source>
   <translation>Die Länge der Klemme</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The thickness along the bar</source>
   <translation>Die Dicke längs der Stange</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The way past the meridian</source>
   <translation>Der Weg über den Meridian</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The width</source>
   <translation>Die Breite</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>The worm period</source>
   <translation>Die Schneckenperiode</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>alt-azimuth</source>
   <translation>azimutal</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>deep-sky imaging</source>
   <translation>Deep-Sky-Fotografie</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>fork on a wedge</source>
   <translation>Gabel auf Polkeil</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>observing</source>
   <translation>Beobachten</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>planetary</source>
   <translation>Planeten</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>′/turn</source>
   <translation>′/Umdrehung</translation>
  </message>
  <message>
   <location filename="core/mount/equipment.py" />
   <source>″ per g</source>
   <translation>″ je g</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>A set is not a group of fields in braces.</source>
   <translation>Ein Satz ist keine Gruppe von Feldern in geschweiften Klammern.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>An entry is not a group of fields in braces.</source>
   <translation>Ein Eintrag ist keine Gruppe von Feldern in geschweiften Klammern.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>An entry without a name</source>
   <translation>Ein Eintrag ohne Namen</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>a number</source>
   <translation>eine Zahl</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>a text</source>
   <translation>ein Text</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>a whole number</source>
   <translation>eine ganze Zahl</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>should be a list of texts in brackets</source>
   <translation>muss eine Liste von Texten in eckigen Klammern sein</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>should be one of {choices}</source>
   <translation>muss eines davon sein: {choices}</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>should be {what}</source>
   <translation>muss {what} sein</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>true or false</source>
   <translation>true oder false</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>{label} of {thing} {reason}.</source>
   <translation>{thing}: {label} {reason}.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>{thing} does not say what it is; “what” is one of {kinds}.</source>
   <translation>{thing} sagt nicht, was es ist; „what“ ist eines von {kinds}.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfields.py" />
   <source>{thing} has no “{field}”.</source>
   <translation>{thing} hat kein „{field}“.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>Entry {number} of “{name}” is left out: {reason}</source>
   <translation>Eintrag {number} von „{name}“ ist weggelassen: {reason}</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The equipment file cannot be read: {reason}. Nothing was changed.</source>
   <translation>Die Ausrüstungsdatei lässt sich nicht lesen: {reason}. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The equipment file does not say its version. Nothing was changed.</source>
   <translation>Die Ausrüstungsdatei nennt ihre Version nicht. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The equipment file is of version {version}; this program reads version {known_version}. Read it with the newer program, or export it there in the older form.</source>
   <translation>Die Ausrüstungsdatei hat die Version {version}; dieses Programm liest Version {known_version}. Lesen Sie sie mit dem neueren Programm, oder exportieren Sie sie dort in der älteren Form.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The file does not begin as an equipment file (“format”: “{form}”). Choose one that was exported here. Nothing was changed.</source>
   <translation>Die Datei beginnt nicht wie eine Ausrüstungsdatei („format“: „{form}“). Wählen Sie eine, die hier exportiert wurde. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The file has parts not known here, kept: {parts}.</source>
   <translation>Die Datei hat Teile, die hier nicht bekannt sind; sie bleiben erhalten: {parts}.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The file has {megabytes:.0f} MB; equipment files are far smaller. Choose the file that was exported here.</source>
   <translation>Die Datei hat {megabytes:.0f} MB; Ausrüstungsdateien sind viel kleiner. Wählen Sie die Datei, die hier exportiert wurde.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>The set “{name}” names things not there: {missing}.</source>
   <translation>Der Satz „{name}“ nennt Dinge, die nicht da sind: {missing}.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>it holds a number too long to read</source>
   <translation>sie enthält eine Zahl, die zum Lesen zu lang ist</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>it is nested too deeply</source>
   <translation>sie ist zu tief verschachtelt</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>it is not text, or holds broken characters</source>
   <translation>sie ist kein Text oder enthält kaputte Zeichen</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>line {line} is not JSON ({fault})</source>
   <translation>Zeile {line} ist kein JSON ({fault})</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>{name} is not a number that can be used</source>
   <translation>{name} ist keine brauchbare Zahl</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>{number} is too large a number</source>
   <translation>{number} ist eine zu große Zahl</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” has fields this program does not know, kept as they are: {fields}.</source>
   <translation>„{name}“ hat Felder, die dieses Programm nicht kennt; sie bleiben, wie sie sind: {fields}.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” has the key {key}, which is taken.</source>
   <translation>„{name}“ hat den Schlüssel {key}, der schon vergeben ist.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” in the equipment file is not a list; nothing was read.</source>
   <translation>„{name}“ in der Ausrüstungsdatei ist keine Liste; es wurde nichts gelesen.</translation>
  </message>
  <message>
   <location filename="core/mount/equipmentfile.py" />
   <source>“{name}” stands twice in one group</source>
   <translation>„{name}“ steht in einer Gruppe zweimal</translation>
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Example: balcony alt-azimuth</source>
   <translation>Beispiel: azimutale Balkonmontierung</translation>
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Example: hill equatorial</source>
   <translation>Beispiel: parallaktische Hügelmontierung</translation>
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Example: meadow equatorial</source>
   <translation>Beispiel: parallaktische Wiesenmontierung</translation>
  </message>
  <message>
   <location filename="core/mount/examples.py" />
   <source>Invented; no real product.</source>
   <translation>Erfunden; kein wirkliches Produkt.</translation>
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: 100 mm refractor</source>
   <translation>Beispiel: Refraktor 100 mm</translation>
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: 5 kg weight</source>
   <translation>Beispiel: Gewicht 5 kg</translation>
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: camera</source>
   <translation>Beispiel: Kamera</translation>
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: guide telescope</source>
   <translation>Beispiel: Leitrohr</translation>
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: imaging on the meadow</source>
   <translation>Beispiel: Fotografieren auf der Wiese</translation>
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: second tube</source>
   <translation>Beispiel: zweites Rohr</translation>
  </message>
  <message>
   <location filename="core/mount/exampleset.py" />
   <source>Example: small computer</source>
   <translation>Beispiel: kleiner Computer</translation>
  </message>
  <message>
   <location filename="core/mount/eyepiece.py" />
   <source>The eyepiece is between {low:.1f} m and {high:.1f} m above the ground, in reach all the time.</source>
   <translation>Das Okular liegt zwischen {low:.1f} m und {high:.1f} m über dem Boden, die ganze Zeit in Reichweite.</translation>
  </message>
  <message>
   <location filename="core/mount/eyepiece.py" />
   <source>The eyepiece is between {low:.1f} m and {high:.1f} m above the ground; for {percent:.0f} % of the time it is under the tube, too high or too low. Turn the tube in its rings before you begin, and recheck its balance; climb on nothing that does not stand firmly.</source>
   <translation>Das Okular liegt zwischen {low:.1f} m und {high:.1f} m über dem Boden; {percent:.0f} % der Zeit ist es unter dem Rohr, zu hoch oder zu tief. Drehen Sie das Rohr in seinen Schellen, bevor Sie beginnen, und prüfen Sie das Gleichgewicht neu; steigen Sie auf nichts, was nicht fest steht.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>A Dobsonian turns about the vertical and passes the meridian like any other direction: no flip. On an equatorial platform neither; but a platform carries it for about an hour at a time: wind it back before it reaches its end, and hold the tube while you do.</source>
   <translation>Ein Dobson dreht sich um die Senkrechte und überquert den Meridian wie jede andere Richtung: kein Umschlagen. Auf einer äquatorialen Plattform auch nicht; aber die Plattform trägt ihn jeweils nur etwa eine Stunde: Drehen Sie sie zurück, bevor sie ihr Ende erreicht, und halten Sie dabei das Rohr.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>A fork carries the tube between its arms and passes the meridian without changing sides: no flip. Near the pole see that the camera clears the base of the fork.</source>
   <translation>Eine Gabel trägt das Rohr zwischen ihren Armen und überquert den Meridian, ohne die Seite zu wechseln: kein Umschlagen. Nahe dem Pol darauf achten, dass die Kamera am Fuß der Gabel vorbeikommt.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>A meridian limit lies between −90° and 90° of hour angle; correct it.</source>
   <translation>Eine Meridiangrenze liegt zwischen −90° und 90° Stundenwinkel; berichtigen Sie sie.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>An alt-azimuth mount turns about the vertical and passes the meridian like any other direction: no flip. Watch for cables winding up over the night, and for the zone about the zenith that it cannot follow.</source>
   <translation>Eine azimutale Montierung dreht sich um die Senkrechte und überquert den Meridian wie jede andere Richtung: kein Umschlagen. Achten Sie auf Kabel, die sich im Lauf der Nacht aufwickeln, und auf die Zone um den Zenit, der sie nicht folgen kann.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>An exposure must be longer than nothing; correct its seconds.</source>
   <translation>Eine Belichtung muss länger als nichts sein; berichtigen Sie ihre Sekunden.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>Before the night turn the mount to both sides by hand, power off and clutches loose, and see that every cable reaches without being pulled or caught.</source>
   <translation>Drehen Sie die Montierung vor der Nacht von Hand auf beide Seiten, Strom aus und Klemmen gelöst, und sehen Sie nach, ob jedes Kabel reicht, ohne zu ziehen oder hängen zu bleiben.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>Do not trust a limit you have not tried: it depends on this tube, this camera and this dew shield.</source>
   <translation>Trauen Sie keiner Grenze, die Sie nicht ausprobiert haben: Sie hängt von diesem Rohr, dieser Kamera und dieser Taukappe ab.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>Stand by at the first flip of every new set-up, with a hand on the stop: the tube, the camera or the counterweight can strike the pier or a tripod leg, and fingers can be caught.</source>
   <translation>Bleiben Sie beim ersten Umschlagen jedes neuen Aufbaus daneben, eine Hand am Halt: Rohr, Kamera oder Gegengewicht können an die Säule oder ein Stativbein schlagen, und Finger können eingeklemmt werden.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The mount has to stop before the meridian and the session ends before it may flip: no flip, and less time. Keep the tube {side}.</source>
   <translation>Die Montierung muss vor dem Meridian anhalten, und die Zeit endet, bevor sie umschlagen darf: kein Umschlagen, und weniger Zeit. Lassen Sie das Rohr {side}.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The mount would stop {stop:g}° past the meridian but flip only from {flip:g}° on: it could never flip. Correct one of the two.</source>
   <translation>Die Montierung würde {stop:g}° hinter dem Meridian anhalten, aber erst ab {flip:g}° umschlagen: Sie könnte es nie. Berichtigen Sie eines von beiden.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The session ends before it begins; exchange or correct its times.</source>
   <translation>Die Zeit endet, bevor sie beginnt; tauschen oder berichtigen Sie ihre Zeitpunkte.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The session ends before the mount reaches its limit at the meridian: no flip. Keep the tube {side}.</source>
   <translation>Die Zeit endet, bevor die Montierung ihre Grenze am Meridian erreicht: kein Umschlagen. Lassen Sie das Rohr {side}.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target crosses the meridian above and below the pole: {count} flips. Begin with the tube {side}.</source>
   <translation>Das Objekt überquert den Meridian über und unter dem Pol: {count}-maliges Umschlagen. Beginnen Sie mit dem Rohr {side}.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target crosses the meridian below the pole: one flip. Begin with the tube {side}.</source>
   <translation>Das Objekt überquert den Meridian unter dem Pol: ein Umschlagen. Beginnen Sie mit dem Rohr {side}.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target crosses the meridian: one flip. Begin with the tube {side}.</source>
   <translation>Das Objekt überquert den Meridian: ein Umschlagen. Beginnen Sie mit dem Rohr {side}.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target does not cross the meridian in this session: no flip. Keep the tube {side}.</source>
   <translation>Das Objekt überquert den Meridian in dieser Zeit nicht: kein Umschlagen. Lassen Sie das Rohr {side}.</translation>
  </message>
  <message>
   <location filename="core/mount/flip.py" />
   <source>The target is past the meridian already: no flip. Begin with the tube {side}.</source>
   <translation>Das Objekt ist schon über den Meridian hinaus: kein Umschlagen. Beginnen Sie mit dem Rohr {side}.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Cameras and other parts off first.</source>
   <translation>Zuerst Kameras und andere Teile ab.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Counterweight off last; hold it while you take out the toe stop.</source>
   <translation>Das Gegengewicht zuletzt ab; halten Sie es, während Sie den Endanschlag herausnehmen.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Counterweight on first, near the end of the bar, its screw tight.</source>
   <translation>Zuerst das Gegengewicht, nahe dem Ende der Stange, die Schraube fest.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Follow the maker's manual and your local safety rules first; this is only a reminder.</source>
   <translation>Befolgen Sie zuerst die Anleitung des Herstellers und die örtlichen Sicherheitsregeln; dies ist nur eine Erinnerung.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Keep fingers, hair and cables away from the gap between weight, tripod and tube.</source>
   <translation>Finger, Haare und Kabel weg vom Spalt zwischen Gewicht, Stativ und Rohr.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Let two people lift what one cannot hold easily.</source>
   <translation>Zu zweit heben, was einer nicht leicht halten kann.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Lift with bent knees, close to the body; carry heavy parts one by one.</source>
   <translation>Mit gebeugten Knien heben, nah am Körper; schwere Teile einzeln tragen.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Lock both axes, the bar pointing down.</source>
   <translation>Beide Achsen klemmen, die Stange nach unten.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Loosen a saddle or weight only with its axis locked and the load held.</source>
   <translation>Klemme oder Gewicht nur lösen, wenn die zugehörige Achse geklemmt und die Last gehalten ist.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Loosen one axis at a time, with a hand on the tube: it may swing.</source>
   <translation>Immer nur eine Achse lösen, eine Hand am Rohr: Es kann schwingen.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Put the toe stop in at the end of the bar before you let go: it keeps a loose weight off your feet.</source>
   <translation>Den Endanschlag am Ende der Stange einschrauben, bevor Sie loslassen: Er hält ein loses Gewicht von Ihren Füßen fern.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Stand the tripod firm and level, legs locked; on ice, sand or in the dark take more care.</source>
   <translation>Das Stativ fest und waagrecht aufstellen, Beine geklemmt; auf Eis, Sand oder im Dunkeln doppelt aufpassen.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Telescope off before the counterweight.</source>
   <translation>Das Teleskop vor dem Gegengewicht ab.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Then cameras and the rest; tie cables so that nothing can pull.</source>
   <translation>Dann Kameras und der Rest; Kabel so festbinden, dass nichts ziehen kann.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Then the telescope; keep a hand on it until the saddle's screws are tight and tested.</source>
   <translation>Dann das Teleskop; eine Hand daran lassen, bis die Schrauben der Klemme fest und geprüft sind.</translation>
  </message>
  <message>
   <location filename="core/mount/handling.py" />
   <source>Wear closed shoes.</source>
   <translation>Geschlossene Schuhe tragen.</translation>
  </message>
  <message>
   <location filename="core/mount/inventory.py" />
   <source>A set of equipment has no name; give it one.</source>
   <translation>Ein Satz der Ausrüstung hat keinen Namen; geben Sie ihm einen.</translation>
  </message>
  <message>
   <location filename="core/mount/inventory.py" />
   <source>The set “{name}” names “{part}” twice; enter a second piece of the same kind as a piece of its own.</source>
   <translation>Der Satz „{name}“ nennt „{part}“ zweimal; geben Sie ein zweites Stück derselben Art als eigenes Stück ein.</translation>
  </message>
  <message>
   <location filename="core/mount/inventory.py" />
   <source>“{name}” and “{other}” have the same key, {key}; each needs its own.</source>
   <translation>„{name}“ und „{other}“ haben denselben Schlüssel, {key}; jedes braucht einen eigenen.</translation>
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the distance from the polar axis to the saddle of “{mount}”</source>
   <translation>der Abstand von der Polachse bis zur Klemme von „{mount}“</translation>
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the head itself</source>
   <translation>der Kopf selbst</translation>
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the height above the saddle of “{name}”</source>
   <translation>die Höhe von „{name}“ über der Klemme</translation>
  </message>
  <message>
   <location filename="core/mount/leverage.py" />
   <source>the position along the tube of “{name}”</source>
   <translation>die Lage von „{name}“ längs des Rohrs</translation>
  </message>
  <message>
   <location filename="core/mount/meridian.py" />
   <source>east of the pier, looking west</source>
   <translation>östlich der Säule, nach Westen gerichtet</translation>
  </message>
  <message>
   <location filename="core/mount/meridian.py" />
   <source>west of the pier, looking east</source>
   <translation>westlich der Säule, nach Osten gerichtet</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>enter its price</source>
   <translation>ihren Preis eingeben</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out the listed capacity</source>
   <translation>die angegebene Tragkraft herausfinden</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out the load it is to carry</source>
   <translation>die Last herausfinden, die sie tragen soll</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out whether it has one</source>
   <translation>herausfinden, ob sie einen hat</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>find out whether it is driven</source>
   <translation>herausfinden, ob sie einen Antrieb hat</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it cost {limit:g} or less</source>
   <translation>sie höchstens {limit:g} kostete</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it had an autoguider port</source>
   <translation>sie einen Autoguider-Anschluss hätte</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it has neither drive nor goto</source>
   <translation>sie hat weder Antrieb noch Goto</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it has no autoguider port</source>
   <translation>sie hat keinen Autoguider-Anschluss</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it is {kind}, and the field turns during exposures</source>
   <translation>ihre Art ist: {kind}, und das Bildfeld dreht sich während der Belichtungen</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it stood on a wedge, or {purpose} did not have to be equatorial</source>
   <translation>sie auf einem Polkeil stünde oder sie für „{purpose}“ nicht parallaktisch sein müsste</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it were driven</source>
   <translation>sie einen Antrieb hätte</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>it were listed for {load:g} kg, or the load were {capacity:g} kg or less</source>
   <translation>sie für {load:g} kg angegeben wäre oder die Last höchstens {capacity:g} kg betrüge</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>its price is not entered</source>
   <translation>ihr Preis ist nicht eingegeben</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>its price of {price:g} is above {limit:g}</source>
   <translation>ihr Preis von {price:g} liegt über {limit:g}</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>the listed capacity is not known</source>
   <translation>die angegebene Tragkraft ist nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>the load it is to carry is not known</source>
   <translation>die Last, die sie tragen soll, ist nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>whether it has an autoguider port is not known</source>
   <translation>ob sie einen Autoguider-Anschluss hat, ist nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>whether it is driven is not known</source>
   <translation>ob sie einen Antrieb hat, ist nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/mount/musts.py" />
   <source>{load:g} kg is more than the {capacity:g} kg it is listed to carry</source>
   <translation>{load:g} kg sind mehr als die {capacity:g} kg, für die sie angegeben ist</translation>
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The binning is given as {binning}; it is 1 or more.</source>
   <translation>Als Binning ist {binning} angegeben; es ist 1 oder mehr.</translation>
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The focal length of “{name}” is not entered; see its data sheet.</source>
   <translation>Die Brennweite von „{name}“ ist nicht eingegeben; siehe Datenblatt.</translation>
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The number of pixels across of “{name}” is not entered; see its data sheet.</source>
   <translation>Die Zahl der Pixel in der Breite von „{name}“ ist nicht eingegeben; siehe Datenblatt.</translation>
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The number of pixels down of “{name}” is not entered; see its data sheet.</source>
   <translation>Die Zahl der Pixel in der Höhe von „{name}“ ist nicht eingegeben; siehe Datenblatt.</translation>
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The pixel size of “{name}” is not entered; see its data sheet.</source>
   <translation>Die Pixelgröße von „{name}“ ist nicht eingegeben; siehe Datenblatt.</translation>
  </message>
  <message>
   <location filename="core/mount/optics.py" />
   <source>The reducer or Barlow factor is given as {factor:g}; it lies between 0.05 and 20, and is 1 without either.</source>
   <translation>Als Faktor von Reducer oder Barlowlinse ist {factor:g} angegeben; er liegt zwischen 0.05 und 20 und ist 1 ohne beides.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>Nothing is on the mount yet.</source>
   <translation>Auf der Montierung ist noch nichts.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>Overloaded, the clutches or worm may slip, the tube may swing down on you, a screw or the tripod may give way and everything may fall. Do not use it so: take parts off.</source>
   <translation>Überladen können Klemmen oder Schnecke durchrutschen, das Rohr kann auf Sie herabschwingen, eine Schraube oder das Stativ nachgeben und alles herunterfallen. Nicht so verwenden: Nehmen Sie Teile ab.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The load against the capacity: the data sheet's figure is missing.</source>
   <translation>Die Last gegen die Tragkraft: Der Wert aus dem Datenblatt fehlt.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The load is at least {mass:.1f} kg</source>
   <translation>Die Last beträgt mindestens {mass:.1f} kg</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The load is {mass:.1f} kg</source>
   <translation>Die Last beträgt {mass:.1f} kg</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The moment about the axes: it is judged for German equatorial mounts only.</source>
   <translation>Das Moment um die Achsen: Es wird nur für deutsche Montierungen beurteilt.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The moment about the polar axis: missing {unknown}.</source>
   <translation>Das Moment um die Polachse: Es fehlt {unknown}.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The moment against the mount's: the data sheet does not say at what distance from the axis the capacity holds.</source>
   <translation>Das Moment gegen das der Montierung: Das Datenblatt sagt nicht, für welchen Abstand von der Achse die Tragkraft gilt.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The part of the capacity used for {purpose} is given as {percent:g} %; it lies between 5 and 100 %.</source>
   <translation>Als benutzter Teil der Tragkraft für „{purpose}“ sind {percent:g} % angegeben; er liegt zwischen 5 und 100 %.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>The whole load: no mass is entered for {unweighed}.</source>
   <translation>Die ganze Last: Für {unweighed} ist keine Masse eingegeben.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>Wind, and how stiff tripod and saddle are.</source>
   <translation>Wind, und wie steif Stativ und Klemme sind.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: above {practice}.</source>
   <translation>{load}, {part}: über {practice}.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: more than “{mount}” is listed to carry at this distance from the axis.</source>
   <translation>{load}, {part}: mehr, als „{mount}“ in diesem Abstand von der Achse tragen soll.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: more than “{mount}” is listed to carry.</source>
   <translation>{load}, {part}: mehr, als „{mount}“ tragen soll.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}: within {practice}.</source>
   <translation>{load}, {part}: innerhalb von {practice}.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}, {part}; it cannot be judged without the mass of {names}.</source>
   <translation>{load}, {part}; ohne die Masse von {names} ist das nicht zu beurteilen.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{load}; the listed capacity of “{mount}” is not known: see its data sheet.</source>
   <translation>{load}; die Tragkraft von „{mount}“ ist nicht bekannt: siehe Datenblatt.</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:.0f} % of the {capacity:g} kg listed</source>
   <translation>{percent:.0f} % der angegebenen {capacity:g} kg</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:g} % of the listed capacity (common practice, no source)</source>
   <translation>{percent:g} % der angegebenen Tragkraft (übliche Praxis, ohne Quelle)</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:g} % of the listed capacity (our suggestion, no source)</source>
   <translation>{percent:g} % der angegebenen Tragkraft (unser Vorschlag, ohne Quelle)</translation>
  </message>
  <message>
   <location filename="core/mount/payload.py" />
   <source>{percent:g} % of the listed capacity (your own figure)</source>
   <translation>{percent:g} % der angegebenen Tragkraft (Ihr eigener Wert)</translation>
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>correct it, or leave it empty if it is not known</source>
   <translation>berichtigen Sie den Wert, oder lassen Sie das Feld leer, wenn er nicht bekannt ist</translation>
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is given as {value:g}{unit}; it is above zero: {advice}.</source>
   <translation>{label} von „{name}“ ist mit {value:g}{unit} angegeben; der Wert muss über null liegen: {advice}.</translation>
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is given as {value:g}{unit}; it lies between {low:g} and {high:g}{unit}: {advice}.</source>
   <translation>{label} von „{name}“ ist mit {value:g}{unit} angegeben; möglich ist {low:g} bis {high:g}{unit}: {advice}.</translation>
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is not a number; it is above zero: {advice}.</source>
   <translation>{label} von „{name}“ ist keine Zahl; der Wert muss über null liegen: {advice}.</translation>
  </message>
  <message>
   <location filename="core/mount/quantities.py" />
   <source>{label} of “{name}” is not a number; it lies between {low:g} and {high:g}{unit}: {advice}.</source>
   <translation>{label} von „{name}“ ist keine Zahl; möglich ist {low:g} bis {high:g}{unit}: {advice}.</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>Do not take the planet {body} for it, {apart:.0f}° away ({way}).</source>
   <translation>Nicht mit dem Planeten {body} verwechseln, {apart:.0f}° entfernt ({way}).</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>No brighter star stands within three fists of it.</source>
   <translation>Im Umkreis von drei Fäusten steht kein hellerer Stern.</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>above</source>
   <translation>oben</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>almost overhead, {altitude:.0f}° high towards the {direction}</source>
   <translation>fast senkrecht über Ihnen, {altitude:.0f}° hoch in Richtung {direction}</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>below</source>
   <translation>unten</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>left</source>
   <translation>links</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>lower left</source>
   <translation>links unten</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>lower right</source>
   <translation>rechts unten</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>right</source>
   <translation>rechts</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>upper left</source>
   <translation>links oben</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>upper right</source>
   <translation>rechts oben</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{altitude:.0f}° high in the {direction}, one fist at arm's length above the horizon</source>
   <translation>{altitude:.0f}° hoch im {direction}, eine Faust am ausgestreckten Arm über dem Horizont</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{altitude:.0f}° high in the {direction}, {fists} fists at arm's length above the horizon</source>
   <translation>{altitude:.0f}° hoch im {direction}, {fists} Fäuste am ausgestreckten Arm über dem Horizont</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}, in {constellation}: {where}.</source>
   <translation>{star}, in {constellation}: {where}.</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}, the nearest brighter star near it, stands {apart:.0f}° away ({way} as you face it).</source>
   <translation>{star}, der nächste hellere Stern in der Nähe, steht {apart:.0f}° entfernt ({way} in Blickrichtung).</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}, the only brighter star near it, stands {apart:.0f}° away ({way} as you face it).</source>
   <translation>{star}, der einzige hellere Stern in der Nähe, steht {apart:.0f}° entfernt ({way} in Blickrichtung).</translation>
  </message>
  <message>
   <location filename="core/mount/recognise.py" />
   <source>{star}: {where}.</source>
   <translation>{star}: {where}.</translation>
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>A derotator with {range:.0f}° between its stops cannot be used: it needs at least 180°, and a speed above zero. Correct its limits.</source>
   <translation>Ein Derotator mit {range:.0f}° zwischen seinen Anschlägen ist nicht zu gebrauchen: Er braucht mindestens 180° und eine Geschwindigkeit über null. Berichtigen Sie seine Grenzen.</translation>
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>The field turns through {turn:.0f}° on this track; the derotator manages it from {start:.0f}° in one go.</source>
   <translation>Das Bildfeld dreht sich auf dieser Bahn um {turn:.0f}°; der Derotator schafft das von {start:.0f}° an in einem Zug.</translation>
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>The field turns through {turn:.0f}° on this track; {troubles}. Stop the exposure for that time.</source>
   <translation>Das Bildfeld dreht sich auf dieser Bahn um {turn:.0f}°; {troubles}. Belichten Sie in dieser Zeit nicht.</translation>
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>it must be turned back by half a turn once</source>
   <translation>er muss einmal um eine halbe Umdrehung zurückgedreht werden</translation>
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>it must be turned back by half a turn {times} times</source>
   <translation>er muss {times}-mal um eine halbe Umdrehung zurückgedreht werden</translation>
  </message>
  <message>
   <location filename="core/mount/rotationderotator.py" />
   <source>near the zenith the field turns at up to {speed:.2f}° a second, faster than it can, for {minutes:.0f} min</source>
   <translation>nahe dem Zenit dreht sich das Bildfeld mit bis zu {speed:.2f}° je Sekunde, {minutes:.0f} min lang schneller, als er kann</translation>
  </message>
  <message>
   <location filename="core/mount/rotationexposure.py" />
   <source>The frame and the smear allowed in it must be larger than nothing.</source>
   <translation>Das Bild und die darin erlaubte Verwischung müssen größer als nichts sein.</translation>
  </message>
  <message>
   <location filename="core/mount/rotationexposure.py" />
   <source>The whole time and the exposure must be longer than nothing.</source>
   <translation>Die ganze Zeit und die Belichtung müssen länger als nichts sein.</translation>
  </message>
  <message>
   <location filename="core/mount/rotationtrack.py" />
   <source>A track needs moments in rising order.</source>
   <translation>Eine Bahn braucht Zeitpunkte in steigender Folge.</translation>
  </message>
  <message>
   <location filename="core/mount/rotationzenith.py" />
   <source>A drive limit of {limit:g}° a second is slower than the stars turn (0.0042° a second); such a mount cannot follow anywhere. Correct the limit.</source>
   <translation>Eine Höchstgeschwindigkeit von {limit:g}° je Sekunde ist langsamer als die Sterne (0.0042° je Sekunde); eine solche Montierung kann nirgends folgen. Berichtigen Sie die Grenze.</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>A guide pixel of {scale:.2f}″ is {ratio:.1f} image pixels; guiding can tell about {resolution:.2g} of a pixel: {advice} (up to {most:g} is common practice, no source).</source>
   <translation>Ein Guidingpixel von {scale:.2f}″ entspricht {ratio:.1f} Bildpixeln; das Guiding unterscheidet etwa {resolution:.2g} Pixel: {advice} (bis {most:g} ist übliche Praxis, ohne Quelle).</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The binning</source>
   <translation>Das Binning</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The guide scale</source>
   <translation>Der Guiding-Maßstab</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The image scale</source>
   <translation>Der Abbildungsmaßstab</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The seeing</source>
   <translation>Das Seeing</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The sensor's height</source>
   <translation>Die Höhe des Sensors</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>The sensor's width</source>
   <translation>Die Breite des Sensors</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>a fitting sampling</source>
   <translation>eine passende Abtastung</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>coarse: detail the sky allows is lost, guiding and alignment are forgiving</source>
   <translation>grob: Einzelheiten, die der Himmel erlaubt, gehen verloren, Guiding und Ausrichtung sind nachsichtig</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>fine enough</source>
   <translation>fein genug</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>fine: no more detail, and guiding and alignment must be better for it; binning helps</source>
   <translation>fein: nicht mehr Einzelheiten, und Guiding und Ausrichtung müssen dafür besser sein; Binning hilft</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>too coarse: use a guide focal length at least {times:.1f} times as long</source>
   <translation>zu grob: Nehmen Sie eine mindestens {times:.1f}-mal so lange Guiding-Brennweite</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>{seeing:g}″ seeing covers {across:.1f} pixels of {scale:.2f}″: {said} ({fewest:g} to {most:g} is common practice, no source).</source>
   <translation>{seeing:g}″ Seeing decken {across:.1f} Pixel von {scale:.2f}″: {said} ({fewest:g} bis {most:g} ist übliche Praxis, ohne Quelle).</translation>
  </message>
  <message>
   <location filename="core/mount/sampling.py" />
   <source>{what} is given as {value:g}; it is above zero: correct it.</source>
   <translation>{what} ist mit {value:g} angegeben; der Wert muss über null liegen: Berichtigen Sie ihn.</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source> kg</source>
   <translation> kg</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>by hand</source>
   <translation>von Hand</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>driven</source>
   <translation>mit Antrieb</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>driven, goto not known</source>
   <translation>mit Antrieb, Goto nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>goto</source>
   <translation>Goto</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>no</source>
   <translation>nein</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>no goto, drive not known</source>
   <translation>kein Goto, Antrieb nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>not known</source>
   <translation>nicht bekannt</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>yes</source>
   <translation>ja</translation>
  </message>
  <message>
   <location filename="core/mount/scores.py" />
   <source>{mark:g} of 5</source>
   <translation>{mark:g} von 5</translation>
  </message>
  <message>
   <location filename="core/mount/seenfield.py" />
   <source>Taken to be {across:g}′ across, a small field (common practice, no source): type what you see, or choose telescope and camera on the Mount page.</source>
   <translation>Angenommen werden {across:g}′ Durchmesser, ein kleines Bildfeld (übliche Praxis, ohne Quelle): Geben Sie ein, was Sie sehen, oder wählen Sie Teleskop und Kamera auf der Seite „Montierung“.</translation>
  </message>
  <message>
   <location filename="core/mount/seenfield.py" />
   <source>{across:.3g}′ across, as you typed.</source>
   <translation>{across:.3g}′ Durchmesser, wie eingegeben.</translation>
  </message>
  <message>
   <location filename="core/mount/seenfield.py" />
   <source>{across:.3g}′ across, from “{name}”.</source>
   <translation>{across:.3g}′ Durchmesser, aus „{name}“.</translation>
  </message>
  <message>
   <location filename="core/mount/skycandidates.py" />
   <source>The Sun is up: no star can be used, and no optic may come near the Sun. Choose a time after sunset.</source>
   <translation>Die Sonne steht am Himmel: Kein Stern ist zu gebrauchen, und keine Optik darf in die Nähe der Sonne gerichtet werden. Wählen Sie eine Zeit nach Sonnenuntergang.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>After {names} and {last} expect to point about {error:.1f}′ off, and {worst:.1f}′ in the worst part of the sky; after {careless}, taken for their brightness alone, {careless_error:.1f}′ and {careless_worst:.1f}′.</source>
   <translation>Nach {names} und {last} ist zu erwarten, dass sie etwa {error:.1f}′ danebenzeigt, im schlechtesten Teil des Himmels {worst:.1f}′; nach {careless}, nur der Helligkeit wegen genommen, {careless_error:.1f}′ und {careless_worst:.1f}′.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>By chance those would do as well now, if {star} were easy to centre: it stands near the zenith, where an axis has to turn far for little.</source>
   <translation>Zufällig taugten diese jetzt ebenso gut, wenn {star} leicht in die Mitte zu bringen wäre: er steht nahe dem Zenit, wo sich eine Achse für wenig weit drehen muss.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>By chance those would do as well now.</source>
   <translation>Zufällig täten es diese jetzt ebenso gut.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>Level the base first, in two directions at right angles: what is left of its tilt is then small enough for a few stars to take out.</source>
   <translation>Richten Sie zuerst die Basis waagrecht, in zwei Richtungen im rechten Winkel: Was von ihrer Neigung bleibt, ist dann klein genug, dass einige Sterne es beseitigen.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>No stars stand as far apart as they should now; these are the best there are. Take a third or fourth once the sky has turned.</source>
   <translation>Derzeit stehen keine Sterne so weit auseinander, wie sie sollten; diese sind die besten. Nehmen Sie einen dritten oder vierten, wenn sich der Himmel gedreht hat.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>One side of the meridian after the other, with one flip between: stars on both sides tell a tube that is not square to its axis from an axis that is off.</source>
   <translation>Eine Seite des Meridians nach der anderen, dazwischen einmal umschlagen: Sterne auf beiden Seiten unterscheiden ein Rohr, das nicht rechtwinklig zu seiner Achse steht, von einer Achse, die danebenliegt.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>Only {count} fit stars are up: not enough clear sky between {lowest:.0f}° and {highest:.0f}°. Wait half an hour, or move to a place with a wider view.</source>
   <translation>Nur {count} geeignete Sterne stehen am Himmel: zu wenig freier Himmel zwischen {lowest:.0f}° und {highest:.0f}°. Warten Sie eine halbe Stunde, oder gehen Sie an einen Platz mit weiterer Sicht.</translation>
  </message>
  <message>
   <location filename="core/mount/skysetup.py" />
   <source>Two or three reference stars can be chosen.</source>
   <translation>Es lassen sich zwei oder drei Referenzsterne wählen.</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The balance along the tube cannot be told with nothing on the tube.</source>
   <translation>Das Gleichgewicht längs des Rohrs lässt sich nicht bestimmen, solange nichts auf dem Rohr ist.</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The balance along the tube cannot be told without {unknown}.</source>
   <translation>Das Gleichgewicht längs des Rohrs lässt sich nicht bestimmen; es fehlt: {unknown}.</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The tube balances where it is.</source>
   <translation>Das Rohr ist im Gleichgewicht, wo es ist.</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The tube is front-heavy: slide it {slide:.0f} mm back</source>
   <translation>Das Rohr ist vorn schwerer: Schieben Sie es {slide:.0f} mm zurück</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>The tube is rear-heavy: slide it {slide:.0f} mm forward</source>
   <translation>Das Rohr ist hinten schwerer: Schieben Sie es {slide:.0f} mm nach vorn</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>move heavy parts back, or use a longer dovetail</source>
   <translation>schwere Teile nach hinten setzen oder eine längere Prismenschiene verwenden</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>move heavy parts forward, or use a longer dovetail</source>
   <translation>schwere Teile nach vorn setzen oder eine längere Prismenschiene verwenden</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{slide}, but the dovetail lets it only {reach:.0f} mm: {ways}.</source>
   <translation>{slide}, aber die Prismenschiene lässt nur {reach:.0f} mm zu: {ways}.</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{slide}; whether the dovetail is long enough is not known.</source>
   <translation>{slide}; ob die Prismenschiene lang genug ist, ist nicht bekannt.</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{ways}, or add {mass:.2g} kg at the front end of the tube</source>
   <translation>{ways}, oder {mass:.2g} kg am vorderen Ende des Rohrs anbringen</translation>
  </message>
  <message>
   <location filename="core/mount/tubebalance.py" />
   <source>{ways}, or add {mass:.2g} kg at the rear end of the tube</source>
   <translation>{ways}, oder {mass:.2g} kg am hinteren Ende des Rohrs anbringen</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>The load is given as {load:g} kg; it lies between 0 and 5000 kg.</source>
   <translation>Die Last ist mit {load:g} kg angegeben; sie liegt zwischen 0 und 5000 kg.</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>The part of the capacity to use lies between 5 and 100 %.</source>
   <translation>Der benutzte Teil der Tragkraft liegt zwischen 5 und 100 %.</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>The weights are zero or above, and at least one is above zero.</source>
   <translation>Die Gewichte sind null oder größer, und mindestens eines ist größer als null.</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>To stay within a price, enter the price.</source>
   <translation>Um unter einem Preis zu bleiben, geben Sie den Preis ein.</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>autoguider port</source>
   <translation>Autoguider-Anschluss</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>capacity</source>
   <translation>Tragkraft</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>carries the load</source>
   <translation>trägt die Last</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>drive and goto</source>
   <translation>Antrieb und Goto</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>driven or goto</source>
   <translation>Antrieb oder Goto</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>ease of use</source>
   <translation>Bedienbarkeit</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>equatorial</source>
   <translation>parallaktisch</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>error training</source>
   <translation>Fehlertraining</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>own weight</source>
   <translation>Eigengewicht</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>periodic error</source>
   <translation>periodischer Fehler</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>pointing accuracy</source>
   <translation>Zeigegenauigkeit</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>price</source>
   <translation>Preis</translation>
  </message>
  <message>
   <location filename="core/mount/wishes.py" />
   <source>within the price</source>
   <translation>nicht über dem Preis</translation>
  </message>
  <message>
   <location filename="core/night/checklist.py" />
   <source>The Sun gives no evening tonight to plan by: the steps stand without times.</source>
   <translation>Die Sonne gibt heute keinen Abend her, nach dem zu planen wäre: Die Schritte stehen ohne Zeiten.</translation>
  </message>
  <message>
   <location filename="core/night/checklist.py" />
   <source>What needs stars cannot all be done before the target's time: it can begin {minutes:.0f} minutes later. Skip a step with a reason, or begin the target later.</source>
   <translation>Was Sterne braucht, ist bis zur Zeit des Objekts nicht alles zu schaffen: Es kann {minutes:.0f} Minuten später beginnen. Überspringen Sie einen Schritt mit einem Grund, oder beginnen Sie das Objekt später.</translation>
  </message>
  <message>
   <location filename="core/night/checklistmarks.py" />
   <source>Say in a few words why the step is skipped; it goes into the report.</source>
   <translation>Sagen Sie in ein paar Worten, warum der Schritt übersprungen wird; es kommt in den Bericht.</translation>
  </message>
  <message>
   <location filename="core/night/checklistmarks.py" />
   <source>done</source>
   <translation>erledigt</translation>
  </message>
  <message>
   <location filename="core/night/checklistmarks.py" />
   <source>seen by the program</source>
   <translation>vom Programm bemerkt</translation>
  </message>
  <message>
   <location filename="core/night/checklistmarks.py" />
   <source>skipped</source>
   <translation>übersprungen</translation>
  </message>
  <message>
   <location filename="core/night/checklistown.py" />
   <source>The step has no text; write what is to be done.</source>
   <translation>Der Schritt hat keinen Text; schreiben Sie, was zu tun ist.</translation>
  </message>
  <message>
   <location filename="core/night/checklistown.py" />
   <source>The step takes {minutes:g} minutes; give 0 to {longest:.0f}.</source>
   <translation>Der Schritt dauert {minutes:g} Minuten; geben Sie 0 bis {longest:.0f} an.</translation>
  </message>
  <message>
   <location filename="core/night/checkliststeps.py" />
   <source>The checklist's texts {file} cannot be read ({error}). Install Poleward again.</source>
   <translation>Die Texte der Checkliste {file} lassen sich nicht lesen ({error}). Installieren Sie Poleward neu.</translation>
  </message>
  <message>
   <location filename="core/night/checkliststeps.py" />
   <source>at dusk</source>
   <translation>in der Dämmerung</translation>
  </message>
  <message>
   <location filename="core/night/checkliststeps.py" />
   <source>before you leave</source>
   <translation>vor der Abfahrt</translation>
  </message>
  <message>
   <location filename="core/night/checkliststeps.py" />
   <source>by daylight</source>
   <translation>bei Tageslicht</translation>
  </message>
  <message>
   <location filename="core/night/checkliststeps.py" />
   <source>closing down</source>
   <translation>Abbau</translation>
  </message>
  <message>
   <location filename="core/night/checkliststeps.py" />
   <source>in the dark</source>
   <translation>im Dunkeln</translation>
  </message>
  <message>
   <location filename="core/night/checkliststeps.py" />
   <source>through the night</source>
   <translation>durch die Nacht</translation>
  </message>
  <message>
   <location filename="core/night/planalign.py" />
   <source>Align on {meridian_star} near the meridian and {low_star} low ({hour_angle}, {altitude:.0f}° high)</source>
   <translation>Ausrichten mit {meridian_star} nahe dem Meridian und {low_star} in niedriger Höhe ({hour_angle}, {altitude:.0f}° hoch)</translation>
  </message>
  <message>
   <location filename="core/night/plannight.py" />
   <source>It gets no darker than civil twilight: only the brightest stars and planets show.</source>
   <translation>Es wird nicht dunkler als bürgerliche Dämmerung: Nur die hellsten Sterne und Planeten zeigen sich.</translation>
  </message>
  <message>
   <location filename="core/night/plannight.py" />
   <source>It gets no darker than {darkest}: bright stars and planets serve, faint nebulae and galaxies hardly.</source>
   <translation>Dunkler als „{darkest}“ wird es nicht: Helle Sterne und Planeten taugen, schwache Nebel und Galaxien kaum.</translation>
  </message>
  <message>
   <location filename="core/night/plannight.py" />
   <source>The Sun does not rise: polar night. What is dark here may last past noon.</source>
   <translation>Die Sonne geht nicht auf: Polarnacht. Was hier dunkel ist, kann über den Mittag hinaus dauern.</translation>
  </message>
  <message>
   <location filename="core/night/plannight.py" />
   <source>The Sun does not set: polar summer, no night at all. Stars cannot be used; keep every optic away from the Sun.</source>
   <translation>Die Sonne geht nicht unter: Polarsommer, gar keine Nacht. Sterne sind nicht zu gebrauchen; halten Sie jede Optik von der Sonne weg.</translation>
  </message>
  <message>
   <location filename="core/night/plantarget.py" />
   <source>coordinates</source>
   <translation>Koordinaten</translation>
  </message>
  <message>
   <location filename="core/night/plantarget.py" />
   <source>planet</source>
   <translation>Planet</translation>
  </message>
  <message>
   <location filename="core/night/plantarget.py" />
   <source>star</source>
   <translation>Stern</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>Moonrise, {percent:.0f} % lit</source>
   <translation>Mondaufgang, {percent:.0f} % beleuchtet</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>Moonset, {percent:.0f} % lit</source>
   <translation>Monduntergang, {percent:.0f} % beleuchtet</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>Sunrise</source>
   <translation>Sonnenaufgang</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>Sunset</source>
   <translation>Sonnenuntergang</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{light} begins</source>
   <translation>{light} beginnt</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{light} ends</source>
   <translation>{light} endet</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{name} too near the zenith</source>
   <translation>{name} zu nahe am Zenit</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{name}: flip possible</source>
   <translation>{name}: Umschlagen möglich</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{name}: flip, centre again</source>
   <translation>{name}: umschlagen, neu zentrieren</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{name}: mount must wait</source>
   <translation>{name}: Montierung muss warten</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{target} clear</source>
   <translation>{target} frei</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{target} on the meridian</source>
   <translation>{target} im Meridian</translation>
  </message>
  <message>
   <location filename="core/night/plantimeline.py" />
   <source>{target} on the meridian below the pole</source>
   <translation>{target} im Meridian unter dem Pol</translation>
  </message>
  <message>
   <location filename="core/night/reportchecked.py" />
   <source>a list is missing</source>
   <translation>eine Liste fehlt</translation>
  </message>
  <message>
   <location filename="core/night/reportchecked.py" />
   <source>{given!r:.40} is no key</source>
   <translation>{given!r:.40} ist kein Schlüssel</translation>
  </message>
  <message>
   <location filename="core/night/reportchecked.py" />
   <source>{given!r:.40} is no number that can be used</source>
   <translation>{given!r:.40} ist keine brauchbare Zahl</translation>
  </message>
  <message>
   <location filename="core/night/reportchecked.py" />
   <source>{given!r:.40} stands where a number belongs</source>
   <translation>{given!r:.40} steht, wo eine Zahl hingehört</translation>
  </message>
  <message>
   <location filename="core/night/reportchecked.py" />
   <source>{given!r:.40} stands where a text belongs</source>
   <translation>{given!r:.40} steht, wo ein Text hingehört</translation>
  </message>
  <message>
   <location filename="core/night/reportchecked.py" />
   <source>{given!r:.40} stands where true or false belongs</source>
   <translation>{given!r:.40} steht, wo wahr oder falsch hingehört</translation>
  </message>
  <message>
   <location filename="core/night/reporthtml.py" />
   <source>Night of {time}</source>
   <translation>Nacht vom {time}</translation>
  </message>
  <message>
   <location filename="core/night/reporthtml.py" />
   <source>Night of {time}, {place}</source>
   <translation>Nacht vom {time}, {place}</translation>
  </message>
  <message>
   <location filename="core/night/reporthtml.py" />
   <source>{caption}: {name}, {size:.0f} kB, not shown here.</source>
   <translation>{caption}: {name}, {size:.0f} kB, hier nicht gezeigt.</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>The file cannot be read as a night: {reason}. Nothing was changed.</source>
   <translation>Die Datei lässt sich nicht als Nacht lesen: {reason}. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>The file does not say which form it has. Nothing was changed.</source>
   <translation>Die Datei sagt nicht, welche Form sie hat. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>The file has {megabytes:.0f} MB; a night has less than {most_megabytes:.0f}. Choose the file that was exported here. Nothing was changed.</source>
   <translation>Die Datei hat {megabytes:.0f} MB; eine Nacht hat weniger als {most_megabytes:.0f}. Wählen Sie die Datei, die hier exportiert wurde. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>The file is damaged or was changed by hand: {what}. Nothing was taken from it.</source>
   <translation>Die Datei ist beschädigt oder wurde von Hand geändert: {what}. Es wurde nichts daraus übernommen.</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>The file is not a night exported by this program (“format”: “{form}”). Choose one that is. Nothing was changed.</source>
   <translation>Die Datei ist keine von diesem Programm exportierte Nacht („format“: „{form}“). Wählen Sie eine solche. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>The night was exported by a newer version of this program (form {version}; this one reads {known_version}). Update the program, then take it in. Nothing was changed.</source>
   <translation>Die Nacht wurde von einer neueren Version dieses Programms exportiert (Form {version}; diese hier liest {known_version}). Aktualisieren Sie das Programm, und übernehmen Sie sie dann. Es wurde nichts geändert.</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>an attachment is not base 64</source>
   <translation>ein Anhang ist nicht in Base 64</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>an entry has no content</source>
   <translation>ein Eintrag hat keinen Inhalt</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>it is not text</source>
   <translation>sie ist kein Text</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>its site lies outside the Earth</source>
   <translation>ihr Standort liegt außerhalb der Erde</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>leg “{label}” has a reading without a time or an offset</source>
   <translation>Etappe „{label}“ hat eine Ablesung ohne Zeit oder ohne Abweichung</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>the columns of leg “{label}” are not equally long</source>
   <translation>die Spalten der Etappe „{label}“ sind nicht gleich lang</translation>
  </message>
  <message>
   <location filename="core/night/reportjson.py" />
   <source>“{name}” is missing</source>
   <translation>„{name}“ fehlt</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>begun</source>
   <translation>begonnen</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>drift ″/min</source>
   <translation>Drift ″/min</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>east offset (″)</source>
   <translation>Abweichung nach Osten (″)</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>left out</source>
   <translation>weggelassen</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>leg</source>
   <translation>Etappe</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>minutes</source>
   <translation>Minuten</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>north offset (″)</source>
   <translation>Abweichung nach Norden (″)</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>readings</source>
   <translation>Ablesungen</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>straight line through them</source>
   <translation>Gerade durch sie</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>used</source>
   <translation>benutzt</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>{leg}: declination drift</source>
   <translation>{leg}: Deklinationsdrift</translation>
  </message>
  <message>
   <location filename="core/night/reportlegs.py" />
   <source>{leg}: tracking in right ascension</source>
   <translation>{leg}: Nachführung in Rektaszension</translation>
  </message>
  <message>
   <location filename="core/night/reportmeasured.py" />
   <source>Guiding</source>
   <translation>Nachführregelung</translation>
  </message>
  <message>
   <location filename="core/night/reportmeasured.py" />
   <source>Pointing</source>
   <translation>Zeigegenauigkeit</translation>
  </message>
  <message>
   <location filename="core/night/reportmeasured.py" />
   <source>Vibration</source>
   <translation>Schwingung</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Alignment {number}</source>
   <translation>Ausrichtung {number}</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Checklist</source>
   <translation>Checkliste</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Equipment</source>
   <translation>Ausrüstung</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Meridian flip</source>
   <translation>Umschlagen am Meridian</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Notes</source>
   <translation>Notizen</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Pictures</source>
   <translation>Bilder</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Plan</source>
   <translation>Plan</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>The night</source>
   <translation>Die Nacht</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Tracking</source>
   <translation>Nachführung</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>Weather</source>
   <translation>Wetter</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>aimed at</source>
   <translation>ausgerichtet auf</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>altitude bolt, moved over meant</source>
   <translation>Höhenschraube, bewegt zu gemeint</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>axis error reached</source>
   <translation>erreichter Achsenfehler</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>azimuth bolt, moved over meant</source>
   <translation>Azimutschraube, bewegt zu gemeint</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>bolts turned</source>
   <translation>Stellschrauben gedreht</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>centred and focused again</source>
   <translation>wieder zentriert und scharf gestellt</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>flipped</source>
   <translation>umgeschlagen</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>found</source>
   <translation>gefunden</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>goal</source>
   <translation>Ziel</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>last entry</source>
   <translation>letzter Eintrag</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>periodic error, peak to peak (″)</source>
   <translation>periodischer Fehler, von Spitze zu Spitze (″)</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>reason</source>
   <translation>Grund</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>state</source>
   <translation>Stand</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>step</source>
   <translation>Schritt</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>target</source>
   <translation>Objekt</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>time</source>
   <translation>Zeit</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>time spent on the alignment</source>
   <translation>Zeit für die Ausrichtung</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>what</source>
   <translation>was</translation>
  </message>
  <message>
   <location filename="core/night/reportsections.py" />
   <source>{minutes:.0f} min</source>
   <translation>{minutes:.0f} min</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>E</source>
   <translation>O</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>N</source>
   <translation>N</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>S</source>
   <translation>S</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>W</source>
   <translation>W</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>accessory</source>
   <translation>Zubehör</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>air pressure there</source>
   <translation>Luftdruck dort</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>air temperature</source>
   <translation>Lufttemperatur</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>altitude</source>
   <translation>Höhe</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>altitude error</source>
   <translation>Höhenfehler</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>altitude turns</source>
   <translation>Umdrehungen in der Höhe</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>an unknown time</source>
   <translation>zu unbekannter Zeit</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>azimuth</source>
   <translation>Azimut</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>azimuth error</source>
   <translation>Azimutfehler</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>azimuth turns</source>
   <translation>Umdrehungen im Azimut</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>begin</source>
   <translation>Beginn</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>camera</source>
   <translation>Kamera</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>counterweight</source>
   <translation>Gegengewicht</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>elevation</source>
   <translation>Höhe über dem Meer</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>end</source>
   <translation>Ende</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>equipment</source>
   <translation>Ausrüstung</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>error on the sky</source>
   <translation>Fehler am Himmel</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>eyepiece</source>
   <translation>Okular</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>goal is</source>
   <translation>Herkunft des Ziels</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>guider</source>
   <translation>Guidingkamera</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>humidity</source>
   <translation>Luftfeuchte</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>latitude</source>
   <translation>Breite</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>legs</source>
   <translation>Etappen</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>longitude</source>
   <translation>Länge</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>mount</source>
   <translation>Montierung</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>name</source>
   <translation>Name</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>never said</source>
   <translation>nie angegeben</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>pixels</source>
   <translation>Pixel</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>seeing</source>
   <translation>Seeing</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>site</source>
   <translation>Standort</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>telescope</source>
   <translation>Teleskop</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>temperature</source>
   <translation>Temperatur</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>verdict</source>
   <translation>Urteil</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>wind</source>
   <translation>Wind</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>without a name</source>
   <translation>ohne Namen</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>worm period</source>
   <translation>Schneckenperiode</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>{pressure} (from the elevation)</source>
   <translation>{pressure} (aus der Höhe über dem Meer)</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>± altitude error (95 %)</source>
   <translation>± Höhenfehler (95 %)</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>± azimuth error (95 %)</source>
   <translation>± Azimutfehler (95 %)</translation>
  </message>
  <message>
   <location filename="core/night/reportwords.py" />
   <source>± of it (95 %)</source>
   <translation>± davon (95 %)</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>It is {light}.</source>
   <translation>Es ist {light}.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>It is {light}; {darkest} begins in {span}.</source>
   <translation>Es ist {light}; noch {span}, dann {darkest}.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>The Sun does not set tonight.</source>
   <translation>Die Sonne geht heute nicht unter.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>The axis error has not been measured since the bolts were last turned.</source>
   <translation>Der Achsenfehler ist nicht gemessen, seit zuletzt an den Stellschrauben gedreht wurde.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>The axis is {error:.1f}′ ± {half_width:.1f}′ off, {budget:.1f}′ is allowed tonight: turn the bolts again.</source>
   <translation>Die Achse liegt {error:.1f}′ ± {half_width:.1f}′ daneben, heute sind {budget:.1f}′ erlaubt: noch einmal an den Stellschrauben drehen.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>The axis is {error:.1f}′ ± {half_width:.1f}′ off, {budget:.1f}′ is allowed tonight: watch longer to be sure.</source>
   <translation>Die Achse liegt {error:.1f}′ ± {half_width:.1f}′ daneben, heute sind {budget:.1f}′ erlaubt: länger beobachten, um sicher zu sein.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>The axis is {error:.1f}′ ± {half_width:.1f}′ off: good enough, {budget:.1f}′ is allowed tonight.</source>
   <translation>Die Achse liegt {error:.1f}′ ± {half_width:.1f}′ daneben: gut genug, heute sind {budget:.1f}′ erlaubt.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>The axis is {error:.1f}′ ± {half_width:.1f}′ off; how much is allowed follows from the equipment and the target.</source>
   <translation>Die Achse liegt {error:.1f}′ ± {half_width:.1f}′ daneben; wie viel erlaubt ist, folgt aus Ausrüstung und Objekt.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>This mount has no polar axis to align.</source>
   <translation>Diese Montierung hat keine Polachse, die auszurichten wäre.</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>dark</source>
   <translation>dunkel</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>{hours} h {minutes:02d} min</source>
   <translation>{hours} h {minutes:02d} min</translation>
  </message>
  <message>
   <location filename="core/night/tonight.py" />
   <source>{minutes} min</source>
   <translation>{minutes} min</translation>
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
   <source>“{text}” is in hours; a latitude is in degrees. Latitude and longitude may be swapped.</source>
   <translation>„{text}“ ist in Stunden angegeben, eine Breite aber in Grad. Vielleicht sind Breite und Länge vertauscht.</translation>
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
   <location filename="core/sky/coordinates.py" />
   <source>“{text}” mixes hours with degrees. Write a longitude in one of them, like 11.6° or 0h46m24s.</source>
   <translation>„{text}“ mischt Stunden und Grad. Schreiben Sie eine Länge in einem von beiden, etwa 11.6° oder 0h46m24s.</translation>
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
   <translation>Die Tabelle der Erdrotation beginnt am {day}: UT1 kann um bis zu etwa {seconds:.1f} s falsch sein und Stundenwinkel um {arcsec:.0f}″, was den Achsenfehler um weniger als {percent} % seiner Größe ändert.</translation>
  </message>
  <message>
   <location filename="core/sky/earthrotation.py" />
   <source>The table of the Earth's rotation ends on {day}: UT1 may be off by up to about {seconds:.1f} s and hour angles by {arcsec:.0f}″, which changes the axis error by less than {percent} % of its size.</source>
   <translation>Die Tabelle der Erdrotation endet am {day}: UT1 kann um bis zu etwa {seconds:.1f} s falsch sein und Stundenwinkel um {arcsec:.0f}″, was den Achsenfehler um weniger als {percent} % seiner Größe ändert.</translation>
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
   <location filename="core/tracking/axischeck.py" />
   <source>Pointing and drift disagree on the polar axis by {azimuth:.1f}′ in azimuth and {altitude:.1f}′ in altitude: flexure, a moved tripod, coordinates of two epochs mixed, or a bolt turned in between. Trust the drift, which watches the sky itself.</source>
   <translation>Zeigen und Drift sind sich über die Polachse um {azimuth:.1f}′ im Azimut und {altitude:.1f}′ in der Höhe uneins: Durchbiegung, ein verschobenes Stativ, vermischte Koordinaten zweier Epochen oder eine zwischendurch gedrehte Schraube. Trauen Sie der Drift, die den Himmel selbst beobachtet.</translation>
  </message>
  <message>
   <location filename="core/tracking/axischeck.py" />
   <source>Pointing and drift find the polar axis in the same place, within their errors.</source>
   <translation>Zeigen und Drift finden die Polachse innerhalb ihrer Fehler am selben Ort.</translation>
  </message>
  <message>
   <location filename="core/tracking/axischeck.py" />
   <source>The polar axis cannot be compared: one of the two is unknown.</source>
   <translation>Die Polachse lässt sich nicht vergleichen: Eines von beiden ist unbekannt.</translation>
  </message>
  <message>
   <location filename="core/tracking/backlash.py" />
   <source>A reversal needs at least {fewest} readings while the motion asked for grows in one direction; repeat it with short, equal pulses.</source>
   <translation>Eine Umkehr braucht mindestens {fewest} Ablesungen, während die verlangte Bewegung in einer Richtung wächst; wiederholen Sie sie mit kurzen, gleichen Pulsen.</translation>
  </message>
  <message>
   <location filename="core/tracking/backlash.py" />
   <source>Declination has {play:.1f}″ ± {half_width:.1f}″ of backlash: each reversal waits that long. Leave the axis slightly out of balance or the alignment slightly off, so that corrections go one way; or have the worm adjusted.</source>
   <translation>Die Deklination hat {play:.1f}″ ± {half_width:.1f}″ Umkehrspiel: So lange wartet jede Umkehr. Lassen Sie die Achse etwas aus dem Gleichgewicht oder die Ausrichtung etwas daneben, damit die Korrekturen nach einer Seite gehen; oder lassen Sie die Schnecke nachstellen.</translation>
  </message>
  <message>
   <location filename="core/tracking/backlash.py" />
   <source>No declination backlash beyond {size:.1f}″ shows.</source>
   <translation>Es zeigt sich kein Umkehrspiel in Deklination über {size:.1f}″.</translation>
  </message>
  <message>
   <location filename="core/tracking/backlash.py" />
   <source>The guide rate is not known; enter arcseconds a second (half the sidereal rate is 7.5).</source>
   <translation>Die Guidinggeschwindigkeit ist nicht bekannt; geben Sie Bogensekunden je Sekunde ein (die halbe Sterngeschwindigkeit ist 7.5).</translation>
  </message>
  <message>
   <location filename="core/tracking/backlash.py" />
   <source>The star did not turn back within the motion asked for: the backlash is larger than {asked:.0f}″, or the axis does not answer. Ask for more, and check the cable.</source>
   <translation>Der Stern ist innerhalb der verlangten Bewegung nicht umgekehrt: Das Umkehrspiel ist größer als {asked:.0f}″, oder die Achse reagiert nicht. Verlangen Sie mehr, und prüfen Sie das Kabel.</translation>
  </message>
  <message>
   <location filename="core/tracking/backlash.py" />
   <source>The star moves {rate:.2f} times as far as asked: the guide rate is not the one stated, or the calibration was made at another declination.</source>
   <translation>Der Stern bewegt sich {rate:.2f}-mal so weit wie verlangt: Die Guidinggeschwindigkeit ist nicht die angegebene, oder die Kalibrierung wurde bei anderer Deklination gemacht.</translation>
  </message>
  <message>
   <location filename="core/tracking/datasheet.py" />
   <source>The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″ ± {half_width:.1f}″: too close to tell; track longer.</source>
   <translation>Das Datenblatt verspricht {promised:.1f}″ von Spitze zu Spitze, gemessen {measured:.1f}″ ± {half_width:.1f}″: zu knapp, um es zu sagen; zeichnen Sie länger auf.</translation>
  </message>
  <message>
   <location filename="core/tracking/datasheet.py" />
   <source>The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″: it keeps its promise.</source>
   <translation>Das Datenblatt verspricht {promised:.1f}″ von Spitze zu Spitze, gemessen {measured:.1f}″: Es hält sein Versprechen.</translation>
  </message>
  <message>
   <location filename="core/tracking/datasheet.py" />
   <source>The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″: {times:.1f} times as much.</source>
   <translation>Das Datenblatt verspricht {promised:.1f}″ von Spitze zu Spitze, gemessen {measured:.1f}″: {times:.1f}-mal so viel.</translation>
  </message>
  <message>
   <location filename="core/tracking/datasheet.py" />
   <source>The run shows a period of {period:.1f} ± {half:.1f} s where the data sheet says {promised:g} s: another gear, or the sheet is wrong.</source>
   <translation>Die Aufzeichnung zeigt eine Periode von {period:.1f} ± {half:.1f} s, das Datenblatt sagt {promised:g} s: ein anderes Getriebe, oder das Blatt irrt.</translation>
  </message>
  <message>
   <location filename="core/tracking/datasheet.py" />
   <source>The worm's period agrees with the {promised:g} s of the data sheet.</source>
   <translation>Die Schneckenperiode stimmt mit den {promised:g} s des Datenblatts überein.</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>A swing of {size:.0f}″ is more than any worm does: are the offsets really in arcseconds, and is the image scale right?</source>
   <translation>Ein Ausschlag von {size:.0f}″ ist mehr, als irgendeine Schnecke macht: Sind die Abweichungen wirklich in Bogensekunden, und stimmt der Abbildungsmaßstab?</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The drive falls behind the stars by {rate:.1f}″ a minute, as it does at the lunar rate; choose the sidereal rate.</source>
   <translation>Der Antrieb bleibt um {rate:.1f}″ je Minute hinter den Sternen zurück wie bei Mondgeschwindigkeit; wählen Sie die Sterngeschwindigkeit.</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The drive falls behind the stars by {rate:.1f}″ a minute, as it does at the solar rate; choose the sidereal rate.</source>
   <translation>Der Antrieb bleibt um {rate:.1f}″ je Minute hinter den Sternen zurück wie bei Sonnengeschwindigkeit; wählen Sie die Sterngeschwindigkeit.</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The drive runs ahead of the stars by {rate:.1f}″ a minute ({percent:.2f} %) beyond what the axis explains; check the tracking rate and the balance.</source>
   <translation>Der Antrieb eilt den Sternen um {rate:.1f}″ je Minute ({percent:.2f} %) voraus, mehr als die Achse erklärt; prüfen Sie Nachführgeschwindigkeit und Gleichgewicht.</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The drive runs behind the stars by {rate:.1f}″ a minute ({percent:.2f} %) beyond what the axis explains; check the tracking rate and the balance.</source>
   <translation>Der Antrieb bleibt um {rate:.1f}″ je Minute ({percent:.2f} %) hinter den Sternen zurück, mehr als die Achse erklärt; prüfen Sie Nachführgeschwindigkeit und Gleichgewicht.</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The star drifted {seen} where the alignment says {expected}: the sign of the east offsets may be reversed (east on the sky is positive).</source>
   <translation>Der Stern driftete nach {seen}, wo die Ausrichtung {expected} sagt: Das Vorzeichen der Abweichungen nach Osten ist vielleicht vertauscht (Osten am Himmel ist positiv).</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The star drifted {seen} where the alignment says {expected}: the sign of the north offsets may be reversed.</source>
   <translation>Der Stern driftete nach {seen}, wo die Ausrichtung {expected} sagt: Das Vorzeichen der Abweichungen nach Norden ist vielleicht vertauscht.</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The star was held in place more steadily than air and drive alone could leave it: guiding corrections were probably left on. This shows what guiding leaves over, not the drive; switch the corrections off and record again.</source>
   <translation>Der Stern wurde ruhiger gehalten, als Luft und Antrieb allein es ließen: Wahrscheinlich waren Guidingkorrekturen an. Das zeigt, was das Guiding übrig lässt, nicht den Antrieb; schalten Sie die Korrekturen aus und zeichnen Sie neu auf.</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The worm's period was entered as {given:g} s but {found:.0f} s stands in the run: minutes taken for seconds?</source>
   <translation>Als Schneckenperiode sind {given:g} s eingegeben, in der Aufzeichnung stehen aber {found:.0f} s: Minuten für Sekunden genommen?</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>The worm's period was entered as {given:g} s but {found:.0f} s stands in the run: seconds for minutes?</source>
   <translation>Als Schneckenperiode sind {given:g} s eingegeben, in der Aufzeichnung stehen aber {found:.0f} s: Sekunden für Minuten?</translation>
  </message>
  <message>
   <location filename="core/tracking/doubts.py" />
   <source>Whether guiding corrections were left on, this run cannot tell: the star moved as little as a quiet drive or weak guiding would leave it. Make sure that they were off.</source>
   <translation>Ob Guidingkorrekturen an waren, kann diese Aufzeichnung nicht sagen: Der Stern bewegte sich so wenig, wie ein ruhiger Antrieb oder schwaches Guiding ihn ließe. Vergewissern Sie sich, dass sie aus waren.</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>Guided</source>
   <translation>Mit Guiding</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>The image scale is not known; enter arcseconds per pixel (206.265 times the pixel size in µm over the focal length in mm).</source>
   <translation>Der Abbildungsmaßstab ist nicht bekannt; geben Sie Bogensekunden je Pixel ein (206.265 mal die Pixelgröße in µm durch die Brennweite in mm).</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>The run was read too seldom or too unevenly for a guider this quick, so that this may be too hopeful: record a run with a reading every second or two.</source>
   <translation>Der Lauf wurde für einen so schnellen Autoguider zu selten oder zu ungleichmäßig gelesen, sodass dies zu hoffnungsvoll sein kann: Nehmen Sie einen Lauf mit einer Messung alle ein bis zwei Sekunden auf.</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>The smear allowed lies between 0.01 and 100 pixels.</source>
   <translation>Die erlaubte Verwischung liegt zwischen 0.01 und 100 Pixeln.</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>Trained</source>
   <translation>Trainiert</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>Unguided</source>
   <translation>Ohne Guiding</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>{what}: nine in ten exposures keep {allowed} up to {length}, as far as this run can tell.</source>
   <translation>{what}: Neun von zehn Belichtungen halten {allowed} bis {length} ein, soweit diese Aufzeichnung reicht.</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>{what}: nine in ten exposures of {length} keep {allowed}.</source>
   <translation>{what}: Neun von zehn Belichtungen von {length} halten {allowed} ein.</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>{what}: no exposure of {length} or more keeps {allowed} surely.</source>
   <translation>{what}: Keine Belichtung von {length} oder mehr hält {allowed} sicher ein.</translation>
  </message>
  <message>
   <location filename="core/tracking/exposure.py" />
   <source>{what}: the run is too short to say; track longer.</source>
   <translation>{what}: Die Aufzeichnung ist zu kurz, um es zu sagen; zeichnen Sie länger auf.</translation>
  </message>
  <message>
   <location filename="core/tracking/guideloop.py" />
   <source>A guide delay of {delay:g} s does not fit an interval of {interval:g} s; enter both in seconds (milliseconds taken for seconds?).</source>
   <translation>Eine Guidingverzögerung von {delay:g} s passt nicht zu einem Abstand von {interval:g} s; geben Sie beides in Sekunden ein (Millisekunden für Sekunden genommen?).</translation>
  </message>
  <message>
   <location filename="core/tracking/guideloop.py" />
   <source>A guide interval of {interval:g} s cannot be; enter seconds, usually 1 to 10.</source>
   <translation>Ein Guidingabstand von {interval:g} s kann nicht sein; geben Sie Sekunden ein, üblich sind 1 bis 10.</translation>
  </message>
  <message>
   <location filename="core/tracking/guideloop.py" />
   <source>The share corrected each time lies above 0 and below 2 (above 1 it overshoots), and the measurement noise is not negative.</source>
   <translation>Der jeweils korrigierte Anteil liegt über 0 und unter 2 (über 1 schießt er hinaus), und das Messrauschen ist nicht negativ.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>Declination is {ratio:.1f} times worse than right ascension: backlash, poor balance in declination or wind. Measure the backlash with a reversal.</source>
   <translation>Die Deklination ist {ratio:.1f}-mal schlechter als die Rektaszension: Umkehrspiel, schlechtes Gleichgewicht in Deklination oder Wind. Messen Sie das Umkehrspiel mit einer Umkehr.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>Guiding holds the star within {total:.2f}″ rms ({pixels:.2f} pixels)</source>
   <translation>Das Guiding hält den Stern innerhalb von {total:.2f}″ rms ({pixels:.2f} Pixel)</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>In {axis} the star stays off to one side for several readings: the corrections are too weak, too rare, or do not reach the axis. Correct a larger share or more often, and check that the axis answers.</source>
   <translation>In {axis} bleibt der Stern für mehrere Ablesungen auf einer Seite: Die Korrekturen sind zu schwach, zu selten oder erreichen die Achse nicht. Korrigieren Sie einen größeren Anteil oder öfter, und prüfen Sie, ob die Achse reagiert.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>In {axis} the star swings to and fro about every {period:.0f} s: the corrections are too strong or come too late. Correct a smaller share each time, or guide less often; in declination look for backlash too.</source>
   <translation>In {axis} pendelt der Stern etwa alle {period:.0f} s hin und her: Die Korrekturen sind zu stark oder kommen zu spät. Korrigieren Sie jeweils einen kleineren Anteil oder seltener; in Deklination suchen Sie auch nach Umkehrspiel.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>Right ascension is {ratio:.1f} times worse than declination: the drive, not the air, since the air moves both alike. Balance the tube slightly heavy towards the east, check the cables, train the periodic error.</source>
   <translation>Die Rektaszension ist {ratio:.1f}-mal schlechter als die Deklination: der Antrieb, nicht die Luft, denn die bewegt beide gleich. Balancieren Sie das Rohr nach Osten etwas schwerer aus, prüfen Sie die Kabel, trainieren Sie den periodischen Fehler.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>The times of the guided readings do not increase; check their order.</source>
   <translation>Die Zeiten der Guiding-Ablesungen steigen nicht; prüfen Sie ihre Reihenfolge.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>The worm still shows with {size:.1f}″ under guiding: train the periodic error, or guide more often.</source>
   <translation>Die Schnecke zeigt sich beim Guiding noch mit {size:.1f}″: Trainieren Sie den periodischen Fehler, oder korrigieren Sie öfter.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>{count} guided readings are too few to judge; {fewest} and some minutes are needed, in both axes.</source>
   <translation>{count} Guiding-Ablesungen sind zu wenig zum Beurteilen; {fewest} und einige Minuten sind nötig, in beiden Achsen.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>{start}, which costs nothing one could see.</source>
   <translation>{start}; das kostet nichts, was man sehen könnte.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>{start}, which makes the stars {percent:.0f} % wider.</source>
   <translation>{start}; das macht die Sterne um {percent:.0f} % breiter.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>{start}, which makes the stars {percent:.0f} % wider; no fault of the guiding shows, so suspect the air.</source>
   <translation>{start}; das macht die Sterne um {percent:.0f} % breiter. Ein Fehler des Guidings zeigt sich nicht, verdächtig ist also die Luft.</translation>
  </message>
  <message>
   <location filename="core/tracking/guiding.py" />
   <source>{start}; enter the seeing to know what that costs.</source>
   <translation>{start}; geben Sie das Seeing ein, um zu erfahren, was das kostet.</translation>
  </message>
  <message>
   <location filename="core/tracking/livelog.py" />
   <source>{name} cannot be followed. {problem}</source>
   <translation>{name} kann nicht mitgelesen werden. {problem}</translation>
  </message>
  <message>
   <location filename="core/tracking/motion.py" />
   <source>What training would leave cannot be told from fewer than two turns.</source>
   <translation>Was ein Training übrig ließe, ist aus weniger als zwei Umdrehungen nicht zu sagen.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>After the break in the run the curve is upside down: the mount flipped and the camera with it, so that east offsets read as west. {used}</source>
   <translation>Nach der Unterbrechung steht die Kurve auf dem Kopf: Die Montierung wurde umgeschlagen und die Kamera mit ihr, sodass Abweichungen nach Osten als Westen erscheinen. {used}</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>Only the part after it is used.</source>
   <translation>Nur der Teil danach wird benutzt.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>Only the part before it is used.</source>
   <translation>Nur der Teil davor wird benutzt.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>The run has a gap of together {minutes:.0f} minutes; the star may have been centred anew, so each stretch counts from an origin of its own.</source>
   <translation>Die Aufzeichnung hat eine Lücke von {minutes:.0f} Minuten; der Stern wurde vielleicht neu zentriert, deshalb zählt jeder Abschnitt von einem eigenen Nullpunkt.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>The run has {count} gaps of together {minutes:.0f} minutes; the star may have been centred anew, so each stretch counts from an origin of its own.</source>
   <translation>Die Aufzeichnung hat {count} Lücken von zusammen {minutes:.0f} Minuten; der Stern wurde vielleicht neu zentriert, deshalb zählt jeder Abschnitt von einem eigenen Nullpunkt.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>The star jumped once (a bump, a re-centring, a slipping clutch); both sides are used with origins of their own.</source>
   <translation>Der Stern sprang einmal (ein Stoß, neues Zentrieren, eine rutschende Klemme); beide Seiten werden mit eigenen Nullpunkten benutzt.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>The star jumped {count} times (a bump, a re-centring, a slipping clutch); both sides are used with origins of their own.</source>
   <translation>Der Stern sprang {count}-mal (ein Stoß, neues Zentrieren, eine rutschende Klemme); beide Seiten werden mit eigenen Nullpunkten benutzt.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>The stretch without a break holds too few readings; track longer.</source>
   <translation>Der Abschnitt ohne Unterbrechung hat zu wenige Ablesungen; zeichnen Sie länger auf.</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>The worm does not keep its phase across a break in the run: the mount was moved, parked or flipped. {used}</source>
   <translation>Die Schnecke behält über eine Unterbrechung der Aufzeichnung ihre Phase nicht: Die Montierung wurde bewegt, geparkt oder umgeschlagen. {used}</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>The worm lost its phase at a break near the meridian: the mount flipped there. {used}</source>
   <translation>Die Schnecke verlor bei einer Unterbrechung nahe dem Meridian ihre Phase: Dort wurde die Montierung umgeschlagen. {used}</translation>
  </message>
  <message>
   <location filename="core/tracking/passes.py" />
   <source>{count} readings far off their neighbours were set aside.</source>
   <translation>{count} Ablesungen weitab von ihren Nachbarn wurden beiseitegelassen.</translation>
  </message>
  <message>
   <location filename="core/tracking/periodic.py" />
   <source>A worm period of {period:g} s cannot be; enter the seconds of one turn, usually between 120 and 1200. This run lasts {duration:.0f} s.</source>
   <translation>Eine Schneckenperiode von {period:g} s kann nicht sein; geben Sie die Sekunden einer Umdrehung ein, meist zwischen 120 und 1200. Diese Aufzeichnung dauert {duration:.0f} s.</translation>
  </message>
  <message>
   <location filename="core/tracking/periodic.py" />
   <source>A worm period of {period:g} s is too short; were minutes meant? {period:g} minutes are {seconds:g} s. Enter it in seconds.</source>
   <translation>Eine Schneckenperiode von {period:g} s ist zu kurz; waren Minuten gemeint? {period:g} Minuten sind {seconds:g} s. Geben Sie sie in Sekunden ein.</translation>
  </message>
  <message>
   <location filename="core/tracking/periodic.py" />
   <source>No periodic error stands out of the noise in {turns:.1f} turns of {period:.0f} s; peak to peak it is below about {limit:.1f}″.</source>
   <translation>In {turns:.1f} Umdrehungen von {period:.0f} s hebt sich kein periodischer Fehler aus dem Rauschen; von Spitze zu Spitze liegt er unter etwa {limit:.1f}″.</translation>
  </message>
  <message>
   <location filename="core/tracking/periodic.py" />
   <source>The drive swings {size:.1f}″ ± {half_width:.1f}″ peak to peak ({rms:.1f}″ rms) in each turn of {period:.1f}{origin} s, measured over {turns:.1f} turns.</source>
   <translation>Der Antrieb schwingt {size:.1f}″ ± {half_width:.1f}″ von Spitze zu Spitze ({rms:.1f}″ rms) in jeder Umdrehung von {period:.1f}{origin} s, gemessen über {turns:.1f} Umdrehungen.</translation>
  </message>
  <message>
   <location filename="core/tracking/periodic.py" />
   <source>The readings are {interval:.0f} s apart, too far to follow the worm; take one at least every ten seconds.</source>
   <translation>Die Ablesungen liegen {interval:.0f} s auseinander, zu weit, um der Schnecke zu folgen; lesen Sie mindestens alle zehn Sekunden ab.</translation>
  </message>
  <message>
   <location filename="core/tracking/periodic.py" />
   <source>The strongest period in the run is {found:.0f} s, not the {given:g} s entered or a part of it; check the data sheet, or let the period be found.</source>
   <translation>Die stärkste Periode der Aufzeichnung ist {found:.0f} s, nicht die eingegebenen {given:g} s oder ein Teil davon; prüfen Sie das Datenblatt, oder lassen Sie die Periode suchen.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>Only {count} stars stand higher than {lowest:.0f}°; at least {fewest} are needed, better {comfortable}, all over the sky.</source>
   <translation>Nur {count} Sterne stehen höher als {lowest:.0f}°; mindestens {fewest} sind nötig, besser {comfortable}, über den ganzen Himmel verteilt.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>Over {stars} stars the mount points within {rms:.1f}′ rms once its circles are set; with the parts below taken out {left:.1f}′ would be left on these stars.</source>
   <translation>Über {stars} Sterne zeigt die Montierung auf {rms:.1f}′ rms genau, wenn ihre Kreise eingestellt sind; ohne die Anteile unten blieben an diesen Sternen {left:.1f}′.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>Star {name} is far off the others: another star?; it was left out.</source>
   <translation>Stern {name} liegt weitab von den anderen: ein anderer Stern? Er wurde weggelassen.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>Star {name} stands too low; it was left out.</source>
   <translation>Stern {name} steht zu tief; er wurde weggelassen.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>Star “{star}” has a coordinate that is not a number, or a declination beyond 90°; correct or remove it.</source>
   <translation>Stern „{star}“ hat eine Koordinate, die keine Zahl ist, oder eine Deklination über 90°; berichtigen oder entfernen Sie ihn.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>number {number}</source>
   <translation>Nummer {number}</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>{count} stars are too few: {fewest} give zeros and the polar axis at best, {comfortable} or more on both sides of the pier all parts.</source>
   <translation>{count} Sterne sind zu wenig: {fewest} ergeben bestenfalls Nullpunkte und Polachse, {comfortable} oder mehr auf beiden Seiten der Säule alle Anteile.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointing.py" />
   <source>{number} stars tell little about the smaller parts; take {comfortable} or more, high and low, east and west, near the pole and the equator.</source>
   <translation>{number} Sterne sagen wenig über die kleineren Anteile; nehmen Sie {comfortable} oder mehr, hoch und tief, im Osten und Westen, nahe dem Pol und am Äquator.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingcoordinates.py" />
   <source>Line {line}: the mount's coordinates {text} are not known here. Write “# mount_coordinates: of date” (also JNow) or “# mount_coordinates: ICRS” (also J2000), whichever the hand control shows.</source>
   <translation>Zeile {line}: Die Koordinaten der Montierung {text} sind hier nicht bekannt. Schreiben Sie „# mount_coordinates: of date“ (auch JNow) oder „# mount_coordinates: ICRS“ (auch J2000), je nachdem, was die Handsteuerung anzeigt.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointinglog.py" />
   <source>No line of the list can be used.</source>
   <translation>Keine Zeile der Liste ist zu gebrauchen.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointinglog.py" />
   <source>No line of the list can be used. Line {line}: {reason}</source>
   <translation>Keine Zeile der Liste ist zu gebrauchen. Zeile {line}: {reason}</translation>
  </message>
  <message>
   <location filename="core/tracking/pointinglog.py" />
   <source>The file is too long for a list of stars; choose another.</source>
   <translation>Die Datei ist zu lang für eine Sternliste; wählen Sie eine andere.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointinglog.py" />
   <source>The first line should name the columns ({columns}[,side][,star]) but reads {text}.</source>
   <translation>Die erste Zeile sollte die Spalten nennen ({columns}[,side][,star]), lautet aber {text}.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointinglog.py" />
   <source>side {side} is neither east nor west of the pier.</source>
   <translation>side {side} ist weder östlich (east) noch westlich (west) der Säule.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointinglog.py" />
   <source>{name} {value:g} is beyond {limit:g} degrees.</source>
   <translation>{name} {value:g} liegt jenseits von {limit:g} Grad.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>Add stars near the pole and near the equator, high and low.</source>
   <translation>Nehmen Sie Sterne nahe dem Pol und am Äquator hinzu, hoch und tief.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>Add stars on the other side of the pier, and near the pole as well as the equator.</source>
   <translation>Nehmen Sie Sterne auf der anderen Seite der Säule hinzu, nahe dem Pol und am Äquator.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The declination readings are off by {size}: set the circle, or sync on one star.</source>
   <translation>Die angezeigte Deklination liegt um {size} daneben: Stellen Sie den Kreis ein, oder gleichen Sie an einem Stern ab.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The hour angle readings are off by {size}: set the circle, or sync on one star.</source>
   <translation>Der angezeigte Stundenwinkel liegt um {size} daneben: Stellen Sie den Kreis ein, oder gleichen Sie an einem Stern ab.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The polar axis is {size} {where}: {turn}.</source>
   <translation>Die Polachse steht {size} {where}: {turn}.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The polar axis points {size} {where}: {turn}.</source>
   <translation>Die Polachse zeigt {size} {where}: {turn}.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The tube hangs low by {size} at the horizon: tighten rings, focuser and the dovetail, or support the camera.</source>
   <translation>Das Rohr hängt am Horizont um {size} durch: Ziehen Sie Schellen, Okularauszug und Prismenschiene nach, oder stützen Sie die Kamera.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The tube is lifted by {size} at the horizon: tighten rings, focuser and the dovetail, or support the camera.</source>
   <translation>Das Rohr steht am Horizont um {size} angehoben: Ziehen Sie Schellen, Okularauszug und Prismenschiene nach, oder stützen Sie die Kamera.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The tube is not square to the declination axis: on the east side of the pier it looks {size} too far east, on the other as far the other way. Shim the tube or its rings.</source>
   <translation>Das Rohr steht nicht rechtwinklig zur Deklinationsachse: Östlich der Säule schaut es {size} zu weit nach Osten, auf der anderen Seite ebenso weit nach der anderen. Unterlegen Sie das Rohr oder seine Schellen.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The tube is not square to the declination axis: on the east side of the pier it looks {size} too far west, on the other as far the other way. Shim the tube or its rings.</source>
   <translation>Das Rohr steht nicht rechtwinklig zur Deklinationsachse: Östlich der Säule schaut es {size} zu weit nach Westen, auf der anderen Seite ebenso weit nach der anderen. Unterlegen Sie das Rohr oder seine Schellen.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>The two axes miss a right angle by {size}. This is the maker's to correct; a pointing model allows for it.</source>
   <translation>Den beiden Achsen fehlen {size} zum rechten Winkel. Das zu berichtigen ist Sache des Herstellers; ein Zeigemodell berücksichtigt es.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>These stars do not tell the {name}.</source>
   <translation>Diese Sterne sagen nichts über: {name}.</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>These stars do not tell: {listed}. {advice}</source>
   <translation>Diese Sterne sagen nichts über: {listed}. {advice}</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>altitude of the polar axis</source>
   <translation>Höhe der Polachse</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>azimuth of the polar axis</source>
   <translation>Azimut der Polachse</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>declination axis against the polar axis</source>
   <translation>Deklinationsachse gegen die Polachse</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>sag of the tube</source>
   <translation>Durchhang des Rohrs</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>tube against the declination axis</source>
   <translation>Rohr gegen die Deklinationsachse</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>zero of the declination circle</source>
   <translation>Nullpunkt des Deklinationskreises</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>zero of the hour circle</source>
   <translation>Nullpunkt des Stundenkreises</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>{names} and {last}</source>
   <translation>{names} und {last}</translation>
  </message>
  <message>
   <location filename="core/tracking/pointingwords.py" />
   <source>{name}: none to speak of, within {size:.1f}′.</source>
   <translation>{name}: nicht der Rede wert, innerhalb von {size:.1f}′.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>At declination {declination:.0f}° the air counts {times:.1f} times as much as at the equator; a star nearer the equator shows the drive better.</source>
   <translation>Bei Deklination {declination:.0f}° zählt die Luft {times:.1f}-mal so viel wie am Äquator; ein Stern näher am Äquator zeigt den Antrieb besser.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>Leg “{leg}” has no east offsets, and the drive shows in these alone; record them, or add the column east_arcsec.</source>
   <translation>Etappe „{leg}“ hat keine Abweichungen nach Osten, und nur darin zeigt sich der Antrieb; zeichnen Sie sie auf, oder fügen Sie die Spalte east_arcsec hinzu.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>Leg “{leg}” has {count} readings with an east offset; at least {fewest} over three turns of the worm are needed.</source>
   <translation>Etappe „{leg}“ hat {count} Ablesungen mit einer Abweichung nach Osten; nötig sind mindestens {fewest} über drei Umdrehungen der Schnecke.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>Leg “{leg}” lasts {hours:.0f} hours; a run belongs to one night. Give each night a leg of its own, and check the unit of the times.</source>
   <translation>Etappe „{leg}“ dauert {hours:.0f} Stunden; eine Aufzeichnung gehört zu einer Nacht. Geben Sie jeder Nacht eine eigene Etappe, und prüfen Sie die Einheit der Zeiten.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>Leg “{leg}” watches a star at declination {declination:.0f}°, where the drive hardly moves it; choose a star nearer the celestial equator.</source>
   <translation>Etappe „{leg}“ beobachtet einen Stern bei Deklination {declination:.0f}°, wo der Antrieb ihn kaum bewegt; wählen Sie einen Stern näher am Himmelsäquator.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>Readings of leg “{leg}” that were not used, since they have no east offset: {count}.</source>
   <translation>Ablesungen der Etappe „{leg}“, die nicht verwendet wurden, weil ihnen die Abweichung nach Osten fehlt: {count}.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>The axis error is not known yet, so a smooth curve was taken for its drift; with a finished alignment the drift is computed instead.</source>
   <translation>Der Achsenfehler ist noch nicht bekannt, deshalb wurde für seine Drift eine glatte Kurve angenommen; mit fertiger Ausrichtung wird die Drift stattdessen berechnet.</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>The east offsets of leg “{leg}” never change; was the star measured?</source>
   <translation>Die Abweichungen nach Osten der Etappe „{leg}“ ändern sich nie; wurde der Stern gemessen?</translation>
  </message>
  <message>
   <location filename="core/tracking/run.py" />
   <source>The times of leg “{leg}” do not increase; was the clock set while it was watched? Put the readings in order of time.</source>
   <translation>Die Zeiten der Etappe „{leg}“ steigen nicht; wurde währenddessen die Uhr gestellt? Bringen Sie die Ablesungen in zeitliche Folge.</translation>
  </message>
  <message>
   <location filename="core/tracking/runlog.py" />
   <source>{name} gives its offsets in pixels, but not how large a pixel is. Enter the image scale in arcseconds per pixel, or write “# {scale_key}: …” into the log.</source>
   <translation>{name} gibt die Abweichungen in Pixeln an, aber nicht, wie groß ein Pixel ist. Geben Sie den Abbildungsmaßstab in Bogensekunden je Pixel ein, oder schreiben Sie „# {scale_key}: …“ in das Protokoll.</translation>
  </message>
  <message>
   <location filename="core/tracking/settling.py" />
   <source>No readings follow the dither, or the limit to settle within is not above zero.</source>
   <translation>Nach dem Dithern folgen keine Ablesungen, oder die Grenze zum Beruhigen liegt nicht über null.</translation>
  </message>
  <message>
   <location filename="core/tracking/settling.py" />
   <source>The star did not stay within {within:.1f}″ for {hold:.0f} s after the dither: allow more, or look for backlash and over-correction.</source>
   <translation>Der Stern blieb nach dem Dithern nicht {hold:.0f} s lang innerhalb von {within:.1f}″: Erlauben Sie mehr, oder suchen Sie nach Umkehrspiel und Überkorrektur.</translation>
  </message>
  <message>
   <location filename="core/tracking/settling.py" />
   <source>The star settled within {within:.1f}″ after {seconds:.0f} s, which is long: dither less far, in right ascension only, or correct a larger share.</source>
   <translation>Der Stern beruhigte sich nach {seconds:.0f} s auf {within:.1f}″, und das ist lang: Dithern Sie weniger weit, nur in Rektaszension, oder korrigieren Sie einen größeren Anteil.</translation>
  </message>
  <message>
   <location filename="core/tracking/settling.py" />
   <source>The star settled within {within:.1f}″ after {seconds:.0f} s; wait that long before the next exposure.</source>
   <translation>Der Stern beruhigte sich nach {seconds:.0f} s auf {within:.1f}″; warten Sie so lange bis zur nächsten Belichtung.</translation>
  </message>
  <message>
   <location filename="core/tracking/taplog.py" />
   <source>Line {line} is shorter than the line of names; correct it.</source>
   <translation>Zeile {line} ist kürzer als die Zeile der Namen; berichtigen Sie sie.</translation>
  </message>
  <message>
   <location filename="core/tracking/taplog.py" />
   <source>Line {line}: the value {reason}</source>
   <translation>Zeile {line}: der Wert {reason}</translation>
  </message>
  <message>
   <location filename="core/tracking/taplog.py" />
   <source>Line {number}: {text}</source>
   <translation>Zeile {number}: {text}</translation>
  </message>
  <message>
   <location filename="core/tracking/taplog.py" />
   <source>The first line should name the columns {time} and {arcsec} (or {pixels}) but reads {text}.</source>
   <translation>Die erste Zeile sollte die Spalten {time} und {arcsec} (oder {pixels}) nennen, lautet aber {text}.</translation>
  </message>
  <message>
   <location filename="core/tracking/taplog.py" />
   <source>The record gives its offsets in pixels, but not how large a pixel is. Enter the image scale in arcseconds per pixel, or write “# {scale_key}: …” into the file.</source>
   <translation>Die Aufzeichnung gibt ihre Abweichungen in Pixeln an, aber nicht, wie groß ein Pixel ist. Geben Sie den Abbildungsmaßstab in Bogensekunden je Pixel ein, oder schreiben Sie „# {scale_key}: …“ in die Datei.</translation>
  </message>
  <message>
   <location filename="core/tracking/taplog.py" />
   <source>The record holds no readings; write {time},{arcsec} and a line each.</source>
   <translation>Die Aufzeichnung enthält keine Ablesungen; schreiben Sie {time},{arcsec} und je eine Zeile.</translation>
  </message>
  <message>
   <location filename="core/tracking/taplog.py" />
   <source>The record is too long for a tap; take the minute around it.</source>
   <translation>Die Aufzeichnung ist zu lang für ein Klopfen; nehmen Sie die Minute darum herum.</translation>
  </message>
  <message>
   <location filename="core/tracking/training.py" />
   <source>(the air is still inside: north offsets would take it out)</source>
   <translation>(die Luft ist noch darin: Abweichungen nach Norden nähmen sie heraus)</translation>
  </message>
  <message>
   <location filename="core/tracking/training.py" />
   <source>The run holds {turns} whole turns of the worm; what training would bring shows from {fewest} whole turns on.</source>
   <translation>Die Aufzeichnung enthält {turns} ganze Umdrehungen der Schnecke; was ein Training brächte, zeigt sich ab {fewest} ganzen Umdrehungen.</translation>
  </message>
  <message>
   <location filename="core/tracking/training.py" />
   <source>Training would bring little: of {before:.1f}″ rms only {repeating:.1f}″ repeats from turn to turn{inside}.</source>
   <translation>Ein Training brächte wenig: Von {before:.1f}″ rms wiederholen sich nur {repeating:.1f}″ von Umdrehung zu Umdrehung{inside}.</translation>
  </message>
  <message>
   <location filename="core/tracking/training.py" />
   <source>Training would bring the drive from {before:.1f}″ to about {residual:.1f}″ rms: {repeating:.1f}″ repeats from turn to turn, the rest does not{inside}.</source>
   <translation>Ein Training brächte den Antrieb von {before:.1f}″ auf etwa {residual:.1f}″ rms: {repeating:.1f}″ wiederholen sich von Umdrehung zu Umdrehung, der Rest nicht{inside}.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>Beside it: {others}.</source>
   <translation>Daneben: {others}.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>First thing to try: a longer guide exposure, then a smaller correction.</source>
   <translation>Als Erstes versuchen: eine längere Guidingbelichtung, dann eine kleinere Korrektur.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>First thing to try: balance anew, slightly heavy towards the east, lead the cables free and keep the wind off; then record again.</source>
   <translation>Als Erstes versuchen: neu ausbalancieren, nach Osten etwas schwerer, die Kabel frei führen und den Wind abhalten; dann neu aufzeichnen.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>First thing to try: improve the polar alignment by drift.</source>
   <translation>Als Erstes versuchen: die Polausrichtung nach der Drift verbessern.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>First thing to try: train the periodic error, or guide.</source>
   <translation>Als Erstes versuchen: den periodischen Fehler trainieren oder guiden.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>First thing to try: wait for steadier air, or take a higher target.</source>
   <translation>Als Erstes versuchen: ruhigere Luft abwarten oder ein höheres Objekt nehmen.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>In exposures of {length} most of the smear comes from {cause}: {smear:.1f}″ or {pixels:.1f} pixels, where {allowed:g} are allowed.</source>
   <translation>In Belichtungen von {length} ist die Hauptursache der Verwischung {cause}: {smear:.1f}″ oder {pixels:.1f} Pixel, erlaubt sind {allowed:g}.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>In exposures of {length} nothing measured comes near the {allowed:g} pixels allowed; the largest part is {cause} with {pixels:.2f} pixels.</source>
   <translation>In Belichtungen von {length} kommt nichts Gemessenes den erlaubten {allowed:g} Pixeln nahe; der größte Teil ist {cause} mit {pixels:.2f} Pixeln.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>It points only within {size:.0f}′, which does not smear but costs time at every target.</source>
   <translation>Sie zeigt nur auf {size:.0f}′ genau; das verwischt nichts, kostet aber bei jedem Objekt Zeit.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>Nothing has been measured yet: record an unguided run, or some minutes of guiding.</source>
   <translation>Noch ist nichts gemessen: Zeichnen Sie ohne Guiding auf, oder einige Minuten mit Guiding.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>Nothing needs doing for such exposures.</source>
   <translation>Für solche Belichtungen ist nichts zu tun.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>The mount shakes for {seconds:.0f} s after a touch: lighten the load or stiffen the legs, and wait before exposing.</source>
   <translation>Die Montierung wackelt nach einer Berührung {seconds:.0f} s lang: Erleichtern Sie die Last oder versteifen Sie die Beine, und warten Sie vor dem Belichten.</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>the air</source>
   <translation>die Luft</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>the guiding</source>
   <translation>das Guiding</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>the mount's periodic error</source>
   <translation>der periodische Fehler der Montierung</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>the polar alignment</source>
   <translation>die Polausrichtung</translation>
  </message>
  <message>
   <location filename="core/tracking/verdict.py" />
   <source>what the drive does once and not again (balance, cables, wind, dirt)</source>
   <translation>was der Antrieb nur einmal tut (Gleichgewicht, Kabel, Wind, Schmutz)</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>A tap needs at least {fewest} readings in order of time; take ten or more a second, from just before the tap until the star is still.</source>
   <translation>Ein Klopfen braucht mindestens {fewest} Ablesungen in zeitlicher Folge; nehmen Sie zehn oder mehr je Sekunde, von kurz vor dem Klopfen, bis der Stern ruhig steht.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>A touch swings the star {swing:.1f}″ to one side, {frequency:.1f} times a second</source>
   <translation>Eine Berührung lässt den Stern {swing:.1f}″ nach einer Seite ausschlagen, {frequency:.1f}-mal je Sekunde</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>Enter payload and capacity in kilograms, the capacity above zero.</source>
   <translation>Geben Sie Zuladung und Tragkraft in Kilogramm ein, die Tragkraft über null.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>No tap stands out of the noise: tap harder, or record while the focuser is turned.</source>
   <translation>Kein Klopfen hebt sich aus dem Rauschen: Klopfen Sie kräftiger, oder zeichnen Sie auf, während am Okularauszug gedreht wird.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>Nothing rings above the noise: tap harder, or the mount is still.</source>
   <translation>Nichts schwingt über dem Rauschen nach: Klopfen Sie kräftiger, oder die Montierung steht ruhig.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>Settling went from {before:.1f} s to {after:.1f} s: no change beyond the errors; tap several times.</source>
   <translation>Das Beruhigen ging von {before:.1f} s auf {after:.1f} s: keine Änderung außerhalb der Fehler; klopfen Sie mehrmals.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>The change did harm: settling went from {before:.1f} s to {after:.1f} s.</source>
   <translation>Die Änderung hat geschadet: Das Beruhigen ging von {before:.1f} s auf {after:.1f} s.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>The change helped: settling went from {before:.1f} s to {after:.1f} s.</source>
   <translation>Die Änderung hat geholfen: Das Beruhigen ging von {before:.1f} s auf {after:.1f} s.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>The mount carries {percent:.0f} % of its listed capacity</source>
   <translation>Die Montierung trägt {percent:.0f} % ihrer angegebenen Tragkraft</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>The swing is too fast for readings every {interval:.2g} s: fewer than three fall into one swing. Take more readings a second (a smaller part of the sensor helps).</source>
   <translation>Die Schwingung ist zu schnell für Ablesungen alle {interval:.2g} s: Weniger als drei fallen in eine Schwingung. Nehmen Sie mehr Ablesungen je Sekunde (ein kleinerer Ausschnitt des Sensors hilft).</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>Too few readings follow the tap; record until the star is still.</source>
   <translation>Nach dem Klopfen folgen zu wenige Ablesungen; zeichnen Sie auf, bis der Stern ruhig steht.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>{words}, within the 60 % that is common practice for imaging.</source>
   <translation>{words}, innerhalb der 60 %, die zum Fotografieren übliche Praxis sind.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>{words}: it is overloaded, and shakes long at every touch. Take weight off.</source>
   <translation>{words}: Sie ist überladen und wackelt lange nach jeder Berührung. Nehmen Sie Gewicht ab.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>{words}; after {settling:.1f} s it stays within {settled:.1f}″.</source>
   <translation>{words}; nach {settling:.1f} s bleibt er innerhalb von {settled:.1f}″.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>{words}; for imaging, 60 % or less is common practice: a lighter load rings less.</source>
   <translation>{words}; zum Fotografieren sind 60 % oder weniger übliche Praxis: Eine leichtere Last schwingt weniger nach.</translation>
  </message>
  <message>
   <location filename="core/tracking/vibration.py" />
   <source>{words}; it was not still at the end of the record, so record for longer.</source>
   <translation>{words}; am Ende der Aufzeichnung war er noch nicht ruhig, zeichnen Sie also länger auf.</translation>
  </message>
  <message>
   <location filename="core/tracking/wormperiod.py" />
   <source>No period up to {longest:.0f} s stands out of the noise in {minutes:.0f} minutes: any periodic error as fast is below about {size:.1f}″, or guiding was left on. A slower worm shows from three of its turns on: track longer, or enter its period to have it measured anyway.</source>
   <translation>Keine Periode bis {longest:.0f} s hebt sich in {minutes:.0f} Minuten aus dem Rauschen: Ein so schneller periodischer Fehler liegt unter etwa {size:.1f}″, oder das Guiding war an. Eine langsamere Schnecke zeigt sich ab drei ihrer Umdrehungen: Zeichnen Sie länger auf, oder geben Sie ihre Periode ein, um sie trotzdem messen zu lassen.</translation>
  </message>
  <message>
   <location filename="core/tracking/wormperiod.py" />
   <source>The run lasts {minutes:.0f} minutes, {turns:.1f} turns of a worm of {period:.0f} s: too short to tell what repeats from what happened once. Track one star unguided for at least {least:.0f} minutes.</source>
   <translation>Die Aufzeichnung dauert {minutes:.0f} Minuten, {turns:.1f} Umdrehungen einer Schnecke von {period:.0f} s: zu kurz, um zu unterscheiden, was sich wiederholt und was einmal geschah. Lassen Sie die Montierung mindestens {least:.0f} Minuten lang einem Stern ohne Guiding folgen.</translation>
  </message>
  <message>
   <location filename="core/tracking/wormperiod.py" />
   <source>The run lasts {minutes:.0f} minutes; a worm usually turns once in four to ten minutes and three turns are needed. Track one star unguided for half an hour or more.</source>
   <translation>Die Aufzeichnung dauert {minutes:.0f} Minuten; eine Schnecke dreht sich meist in vier bis zehn Minuten einmal, und drei Umdrehungen sind nötig. Lassen Sie die Montierung eine halbe Stunde oder länger einem Stern ohne Guiding folgen.</translation>
  </message>
  <message>
   <location filename="core/tracking/wormperiod.py" />
   <source>The run lasts {seconds:.0f} s: are its times in seconds, not in minutes or hours? A worm usually turns once in four to ten minutes and three turns are needed. Track one star unguided for half an hour or more.</source>
   <translation>Die Aufzeichnung dauert {seconds:.0f} s: Sind ihre Zeiten in Sekunden, nicht in Minuten oder Stunden? Eine Schnecke dreht sich meist einmal in vier bis zehn Minuten, und drei Umdrehungen werden gebraucht. Folgen Sie einem Stern eine halbe Stunde oder länger ohne Nachführregelung.</translation>
  </message>
  <message>
   <location filename="core/tracking/wormperiod.py" />
   <source>What repeats in this run is slower than a third of its {minutes:.0f} minutes: the worm turns more slowly, or the star drifts unevenly. Track longer, or enter the worm's period.</source>
   <translation>Was sich in dieser Aufzeichnung wiederholt, ist langsamer als ein Drittel ihrer {minutes:.0f} Minuten: Die Schnecke dreht sich langsamer, oder der Stern driftet ungleichmäßig. Zeichnen Sie länger auf, oder geben Sie die Schneckenperiode ein.</translation>
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
   <source>Cold makes people careless. Dress for sitting still, wear gloves at bare metal, go in and warm up before hands go numb, and do not drive tired.</source>
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
   <translation>Den Achsenfehler mit der Drift messen und korrigieren, bis er im Spielraum liegt.</translation>
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
   <source>Wind and dew decide more than the equipment whether the night is worth the journey.</source>
   <translation>Wind und Tau entscheiden mehr als die Ausrüstung, ob die Nacht den Weg lohnt.</translation>
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Write down what went well and what to change.</source>
   <translation>Aufschreiben, was gut ging und was zu ändern ist.</translation>
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
   <source>A displaced axis makes a tracked star drift in declination. A star near the meridian shows the azimuth error, a star low in the east or west the altitude error. All legs between two turns of the bolts are solved together for both errors, with the refraction along each star's path. The ± is a 95 % range. It contains the air, which moves a star slowly as well as quickly, the step of the readings, a turned reticle, slow wander of the whole field, and a tube that yields as much as its form on the Mount page says. It cannot know of a wrong star, a wrong place or time, a base that moves, or a tube that yields more.</source>
   <translation>Eine verschobene Achse lässt einen verfolgten Stern in Deklination driften. Ein Stern nahe dem Meridian zeigt den Azimutfehler, einer tief im Osten oder Westen den Höhenfehler. Alle Etappen zwischen zwei Drehungen der Stellschrauben werden zusammen nach beiden Fehlern gelöst, mit der Refraktion auf dem Weg jedes Sterns. Das ± ist ein 95-%-Bereich. Es enthält die Luft, die einen Stern langsam ebenso wie schnell bewegt, die Stufen der Ablesungen, ein verdrehtes Fadenkreuz, langsames Wandern des ganzen Feldes und ein Rohr, das so weit nachgibt, wie sein Formular auf der Seite Montierung sagt. Es kann nichts wissen von einem falschen Stern, falschem Ort oder falscher Zeit, einem Untergrund, der sich bewegt, oder einem Rohr, das mehr nachgibt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A run of unguided tracking is fitted with a line and the periods of the worm together. The amplitude is given with its ±, which contains the air, the differences between the turns of the worm, and gears that turn beside it. It cannot know what no turn of the run has shown.</source>
   <translation>Einer Aufzeichnung ohne Guiding werden eine Gerade und die Perioden der Schnecke zusammen angepasst. Die Amplitude steht mit ihrem ± da, das die Luft enthält, die Unterschiede zwischen den Umdrehungen der Schnecke und Zahnräder, die daneben laufen. Es kann nicht wissen, was keine Umdrehung der Aufzeichnung gezeigt hat.</translation>
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
   <source>Exact rotations, no small-angle formula. The errors are weighed by restricted likelihood (Patterson &amp; Thompson, Biometrika 58, 545, 1971). Slow wander of the field: Taylor, McGraw, Zimmer &amp; Pier (AAS 215, 387.05, 2010). How far tubes yield and how well north is set are common practice without a source.</source>
   <translation>Genaue Drehungen, keine Näherung für kleine Winkel. Die Fehler werden mit der eingeschränkten Likelihood gewichtet (Patterson &amp; Thompson, Biometrika 58, 545, 1971). Langsames Wandern des Feldes: Taylor, McGraw, Zimmer &amp; Pier (AAS 215, 387.05, 2010). Wie weit Rohre nachgeben und wie genau Norden gestellt wird, ist übliche Praxis ohne Quelle.</translation>
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
   <source>Flexure</source>
   <translation>Durchbiegung</translation>
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
   <source>How far a tube, a focuser or a mirror yields when gravity pulls on it from another side, in arcseconds per g.</source>
   <translation>Wie weit ein Rohr, ein Okularauszug oder ein Spiegel nachgibt, wenn die Schwerkraft von einer anderen Seite daran zieht, in Bogensekunden je g.</translation>
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
   <translation>Messen Sie den Achsenfehler, indem Sie beobachten, wie ein Stern nach Norden oder Süden driftet, während die Montierung dem Himmel folgt; drehen Sie dann die Stellschrauben und sehen Sie noch einmal hin.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Mechanics of levers; image scale 206265″ × pixel ÷ focal length. The part of the capacity to use, how far a tube yields, and two to three pixels across the seeing, are common practice without a source.</source>
   <translation>Mechanik der Hebel; Abbildungsmaßstab 206265″ × Pixel ÷ Brennweite. Welchen Teil der Tragfähigkeit man nutzt, wie weit ein Rohr nachgibt und dass zwei bis drei Pixel auf das Seeing kommen, ist übliche Praxis ohne Quelle.</translation>
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
   <translation>Sagen Sie, wo Sie sind: Zeiten, Sterne und Pol folgen daraus. Ohne Teleskop zur Hand hat der Übungshimmel auf der Driftseite einen verborgenen Achsenfehler, der zu finden ist.</translation>
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
   <source>Sun, Moon and planets from JPL's DE421, 1899 to 2053, and from ERFA's series beyond; rising and setting as printed tables define them (US Naval Observatory); illuminated share of the Moon by Meeus, Astronomical Algorithms, eq. 48.1 and 48.3; deep sky from the OpenNGC database.</source>
   <translation>Sonne, Mond und Planeten aus DE421 des JPL, 1899 bis 2053, darüber hinaus aus den Reihen von ERFA; Auf- und Untergänge, wie gedruckte Tafeln sie definieren (US Naval Observatory); beleuchteter Teil des Mondes nach Meeus, Astronomical Algorithms, Gl. 48.1 und 48.3; Deep Sky aus der Datenbank OpenNGC.</translation>
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
   <translation>Der größte Achsenfehler, den das Bild dieser Nacht erlaubt.</translation>
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
   <source>The rate is the change of the parallactic angle at the true altitude: Meeus, Astronomical Algorithms, ch. 14, differentiated. The smear is the chord of the turn at the corner of the frame.</source>
   <translation>Die Drehung je Zeit ist die Änderung des parallaktischen Winkels in der wahren Höhe: Meeus, Astronomical Algorithms, Kap. 14, abgeleitet. Die Verwischung ist die Sehne der Drehung in der Ecke des Bildes.</translation>
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
   <translation>Die Sterne des ganzen Feldes werden bei verschobener Achse durch eine Belichtung verfolgt. Guiding hält einen Stern still; was bleibt, dreht das Feld um ihn. Der größte Achsenfehler, dessen Verwischung in Ihrer Grenze bleibt, ist der Spielraum.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The target's altitude is as seen, refraction included; the Moon's is the true one. The hour angle is negative before the meridian.</source>
   <translation>Die Höhe des Objekts ist die gesehene, mit Refraktion; die des Mondes ist die wahre. Der Stundenwinkel ist vor dem Meridian negativ.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The time between two turns of the bolts. All legs in it are solved together.</source>
   <translation>Die Zeit zwischen zwei Drehungen der Stellschrauben. Alle Etappen darin werden zusammen gelöst.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The time of each step is worked back from the target's beginning, step by step, by how long each takes; what needs stars cannot begin before them. Steps tick themselves when the program sees that they are done; a step is skipped only with a reason. Alignment counts as done when the axis error plus its ± is within the target.</source>
   <translation>Die Zeit jedes Schritts wird vom Beginn des Objekts aus zurückgerechnet, Schritt um Schritt, nach der Dauer eines jeden; was Sterne braucht, kann nicht vor ihnen beginnen. Schritte haken sich selbst ab, wenn das Programm sieht, dass sie getan sind; übersprungen wird ein Schritt nur mit einem Grund. Das Ausrichten gilt als getan, wenn der Achsenfehler samt seinem ± innerhalb des Ziels liegt.</translation>
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The true value lies within it in nineteen cases of twenty, unless something went wrong that no reading shows; the help of the Drift page says what the ± of the axis contains.</source>
   <translation>In neunzehn von zwanzig Fällen liegt der wahre Wert darin, sofern nichts schiefging, was keine Ablesung zeigt; was das ± der Achse enthält, sagt die Hilfe der Seite Drift.</translation>
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
