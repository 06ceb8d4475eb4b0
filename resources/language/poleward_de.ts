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
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/aimpanel.py" />
   <source>Align on the</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/aimpanel.py" />
   <source>Best for this target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/aimpanel.py" />
   <source>Where to aim</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>An error I type</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>Drawn for</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>From the true pole; positive when too high.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>Positive towards greater azimuth: east of the pole in the north.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>The axis as solved</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/axischoice.py" />
   <source>The most that is allowed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>Align to this on the Drift page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>How far off the axis may be</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>In altitude alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>In azimuth alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>The Drift page aligns to {goal:g}′ now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>The axis may be off by</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>in whatever direction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>with the altitude right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/band.py" />
   <source>with the azimuth right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>3 is three hours after.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Declination, of date</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Empty: the guide star in the middle of the field.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Guided</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Guiding</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Half a pixel cannot be seen; 1 can just be seen (our figures).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Name or number</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Not guided</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Not in the tables: type its declination.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>One exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>Tonight's target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/form.py" />
   <source>−3 is three hours before it crosses the meridian.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Height, in pixels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Optics</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>The set in use</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Type figures</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>Width, in pixels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/opticsform.py" />
   <source>With what</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>As good as your picture needs, no better. Say what you photograph and with what: this page tells how far off the axis may be before stars smear.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>How good must the alignment be tonight?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>Invented target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>The air and the sky over you count: enter your site first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>This could not be worked out because of a fault in the program.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>Try an invented example</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/page.py" />
   <source>{focal:g} mm, {width} × {height} pixels of {pixel:g} µm, {scale:.2f}″ each</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>North on top, east on the right; down to {low:g}°. Hatched: more than {limit:g} pixels. Each shade is {step:.2g} of a pixel more. The thick line: the target, from the dot on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Place in the picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Point at the sky, or use the arrow keys.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>Smear over the sky</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/skypanel.py" />
   <source>{direction}, {altitude:.0f}° high: {size:.2f} pixels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>All together</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Altitude error alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Azimuth error alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Between (95 %)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Good enough</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Not clear yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Not good enough</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Not known yet</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>Smear, in pixels</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>The air alone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/standing.py" />
   <source>The axis as it stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/budget/work.py" />
   <source>Map and curve {axis}. {longest}</source>
   <translation type="unfinished" />
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
   <source>Moon</source>
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
   <source>north</source>
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
   <source>south</source>
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
   <location filename="app/pages/log/comparing.py" />
   <source>periodic error</source>
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
   <source>A backup, a night exported as JSON, or a damaged log that was set aside: what it holds is added to this log. Nothing that is here is replaced or lost.</source>
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
   <source>Save a backup</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/keeping.py" />
   <source>The program notices a damaged log when it starts: it keeps the old file beside the new one, saves into the new one all that can be read, and says how much that is. The old file can be given here again, for instance after it was repaired.</source>
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
   <source>Notes and pictures</source>
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
   <source>Add what “{file}” holds to the log? Nothing here is replaced.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Choose a backup or an exported night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Choose a picture</source>
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
   <source>No, leave it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Open a night first: the picture goes with it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Part of the page</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Save a backup of the log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
   <source>Save the night</source>
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
   <location filename="app/pages/log/page.py" />
   <source>Yes, add it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/log/page.py" />
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
   <source>Remove</source>
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
   <source>Dobsonian</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/mountchoice.py" />
   <source>Fork on a wedge</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/plan/mountchoice.py" />
   <source>German equatorial</source>
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
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>Set the latitude scale to</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>The pole and its star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>True pole {true:.3f}° high, refracted {refracted:.3f}°: the air lifts it {lift:.0f}″.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>between the poles</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>refracted pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>true pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{distance} from the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{star} in a mirrored sight, on the clock at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{star} in an {view} sight, on the clock at</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/band.py" />
   <source>{which}, due {way}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>Example: the stars around the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>Example: the stars round the pole at an invented site.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>How high to set the axis, where the pole star stands in a polar-axis sight, and how to come near the pole when it is hidden: all that follows from where you are.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/empty.py" />
   <source>Look round at an invented site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>Brightest stars around the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>Shown around the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>Stars around the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>The field</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>You look</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>{clock}, {away} from the true pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/fieldview.py" />
   <source>{star}   magnitude {magnitude:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>   magnitude {magnitude:.1f}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>By a star, a planet or the Moon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>By the Sun's shadow at noon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Here the axis points to the zenith and has no bearing: set it upright with a spirit level.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>In {span}, at {time}. </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Level the tripod and set the latitude scale. Choose what you can see, set both circles as told below, and turn the whole mount on its foot until it stands in the finder: the axis then points within a degree or so of the pole.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Nothing fit to align by stands in the sky now: wait until it is darker, or use the compass.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>The Moon, planets and bright stars up now</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>Turn the mount so that its axis points there, and raise it to {height:.1f}° with an inclinometer on the axis: within a degree or two of the pole.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>What is up now could not be worked out: see the fault file.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/hiddenview.py" />
   <source>{name}: set declination {declination} and hour angle {hour_angle}. It stands at azimuth {azimuth:.1f}°, {altitude:.1f}° high.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>At an invented site, {site}.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>By the star field</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>How you look for the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>The pole is hidden</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>Through a polar-axis sight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/page.py" />
   <source>Where is the pole?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>From the middle, in ′</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>On the clock</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>Set the sight's own 12 o'clock upright first. Then drag the mark on the dial to where {star} is, move it with the arrow keys, or type its place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>Take it back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>That is where I see it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>That lies outside a field {field:g}° across, whose edge is {edge:g}′ from the middle.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>The distance is empty; in the very middle it is 0.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightreading.py" />
   <source>Where do you see the star?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Dial of the polar-axis sight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Empty: {field:g}° holds until there is another.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Field of view across, in °</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>It shows the sky</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/sightview.py" />
   <source>Your sight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>Farthest east and west it is {widest:.2f}° of azimuth from the pole.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>So near the Earth's pole the star goes round the zenith and is never farthest east or west.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>above the pole (upper culmination)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>below the pole (lower culmination)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>farthest east (elongation)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>farthest west (elongation)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>{star} next stands</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/pole/turns.py" />
   <source>{where} in {span}, {time}</source>
   <translation type="unfinished" />
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
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Is the clock right?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Local time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Noted on tonight's checklist.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Sidereal time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>The clock is right</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>Time zone</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>With the site known, the Sun's place will check the clock.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>at this longitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>empty: the computer's own</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>needs the site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/clockpanel.py" />
   <source>{zone}: {offset} now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>11.575  or  11 34 30 E</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>48.137  or  48 08 14 N</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Air</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Air lifts the stars and the pole. A barometer shows the pressure at the station; weather reports give it reduced to sea level.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Elevation, in metres</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>In use.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Latitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Longitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>No, it is {typed:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Not yet: answer the question first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Not yet: see the dashed fields.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Pressure at the station</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Pressure, in hPa</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Reduced to sea level</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Temperature, in °C</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>The pressure is</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Use this site</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>Yes, use {guess:g}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>empty: 10 assumed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/form.py" />
   <source>empty: default</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>All clear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Draw the skyline over trees and roofs with the mouse; or step along it with the arrow keys left and right and raise or lower it with up and down (Shift: finer).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Horizon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Horizon as pairs: azimuth and altitude in degrees</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Not taken. {why}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Nothing in the way all round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Or azimuth and altitude, a pair a line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Undo</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>Undo the last change of the horizon</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/horizonpanel.py" />
   <source>What stands in the way?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Forget this place</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Forget “{place}”, with its time zone and horizon?</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Places kept</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Use {place}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/kept.py" />
   <source>Yes, forget it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/pages/site/page.py" />
   <source>The pole stands as high as your latitude, and the stars turn by your longitude. A hundredth of a degree is good enough.</source>
   <translation type="unfinished" />
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
   <location filename="app/pages/tracking/amounts.py" />
   <source>not known</source>
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
   <source>The exposure</source>
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
   <source>east</source>
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
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/beamdrawing.py" />
   <source>{mm:g} mm</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/compass.py" />
   <source>Compass</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/compass.py" />
   <source>Enter the site: where true north is by compass depends on it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/cropdrawing.py" />
   <source>Drawing of the stacked picture</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/curveplot.py" />
   <source>Copy values</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/curveplot.py" />
   <source>Point at the plot, or use the arrow keys.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/curveplot.py" />
   <source>Put what is drawn on the clipboard as a table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>Azimuth {azimuth:.0f}°, {altitude} high</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>E</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>N</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>S</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>W</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/dome.py" />
   <source>{place}: obstructed</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Copy readings</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Declination drift</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Follow (F)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>North drift (arcsec)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Plot of declination drift against time</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Put all readings on the clipboard as a drift log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Readings will show here as they come.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Show all readings again as they come</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>The newest {shown} legs are drawn; the {count} before count as well.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>Time since the leg began (minutes)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/driftplot.py" />
   <source>{leg}: {size:.1f}″ {side} after {minutes:.1f} min, at {time} UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/filepicker.py" />
   <source>Choose a drift log</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/filepicker.py" />
   <source>Drift logs (*.csv *.txt *.tsv)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/loadbar.py" />
   <source>Load against capacity</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/loadbar.py" />
   <source>keep to {kg:.3g} kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/loadbar.py" />
   <source>listed {kg:.3g} kg</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/nightview.py" />
   <source>All values on the clipboard, for a table program</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/nightview.py" />
   <source>Copy the values of: {name}</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/nightview.py" />
   <source>Press on the picture, or use the arrow keys.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/notice.py" />
   <source>Close this message</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/notice.py" />
   <source>Read</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>At azimuth {azimuth:.0f}° the sky begins {height:.0f}° high.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>Horizon all round</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>NE</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>NW</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>Pointer at azimuth {azimuth:.0f}°, altitude {altitude:.0f}°.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>SE</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>SW</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/panorama.py" />
   <source>pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/pixelgrid.py" />
   <source>A star over the pixels of the camera, to scale</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/pixelgrid.py" />
   <source>{n:.1f} pixels across the star</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/sharebar.py" />
   <source>{share:.2f} of 1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>Drawing: the axis of a mount points beside the pole, and in the eyepiece the star creeps away from where the mount keeps pointing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>in the eyepiece, minute by minute</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>the axis</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/sketch.py" />
   <source>the pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Copy</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Copy the curve</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Exposure (minutes)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Plot of smear against exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Point at the curve to read it off.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Put exposure and smear on the clipboard as a table</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Smear (pixels)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>Smear against exposure</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>centre</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>corner</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>corner {corner:.2f} px, centre {centre:.2f} px</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>the target does not stay up so long.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/smearplot.py" />
   <source>{minutes:.3g} min: </source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/stepper.py" />
   <source>{name}: less</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/stepper.py" />
   <source>{name}: more</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>Find a target</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>M 31, Vega, Saturn …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>Nothing is called that. Coordinates go like 00 42 44 +41 16 09 (J2000).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/targetsearch.py" />
   <source>Targets found</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/tubedrawing.py" />
   <source>Drawing: the tube from behind, with its eyepiece</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/utcclock.py" />
   <source>Time in UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/utcclock.py" />
   <source>{time} UTC</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>A newer answer is being worked out …</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>Altitude</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>Azimuth</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/widgets/verdict.py" />
   <source>Where the axis points</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="app/window.py" />
   <source>Drop one file at a time: none of these was taken.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A base that rocks cannot be pointed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A cable that is caught stops a motor, tears a plug or shifts the field.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A full disk ends a series without a sound.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A lead that is live at its open end lies in wet grass.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A locked gate at three in the morning is no adventure.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A loose bolt shows as drift that no alignment takes away.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A minute of time is a quarter of a degree on the sky.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A mount that runs into its limit stops, or strikes the pier.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A tool across open terminals burns hands and starts fires.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>A wrong place turns every correction in the wrong direction.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Align the finder on something far away, well apart from the Sun.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>All is ready; from here on disturb nothing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Alone in the dark, a small accident becomes a large one: tell somebody where you are and when you will be back, and keep a charged telephone on you, not in the car.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>An alt-azimuth mount keeps the middle of the field still and turns the rest.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>An overloaded mount tracks badly and can slip or tip.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Ask the owner, and keep the local rules of the site on access, fires, light, noise, wildlife and closing times. Leave when you are asked to.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>At frost, ground, steps and ladders can be icy and touching bare metal hurts the skin. Walk the ways once with a white light before it is dark.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Balance and cooling count only with everything in its place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Balance both axes with everything mounted, eyepiece or camera included.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Balance the tube in altitude with everything mounted.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Begin with the target.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Bring the axis near the pole by the pole star.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Bring the axis near the pole by the stars around it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>By tomorrow half of it is forgotten.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Cables and tripod legs cannot be seen in the dark. Lay the cables along one side, and mark legs and edges with something that shows in red light.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Calibrate guiding near the celestial equator, close to the meridian.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Cap the telescope and take the dark frames.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Charge the batteries and check what they still hold in the cold.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Check the clock and the time zone.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Check the load against the mount.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Choose the target and see when it is up.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Choose tonight's equipment.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Clear space on the camera's card or the computer's disk.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Closed up wet, optics grow fungus.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Cold makes careless. Dress for sitting still, wear gloves at bare metal, go in and warm up before hands go numb, and do not drive tired.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Confirm the place: latitude, longitude, elevation.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Connect the battery, polarity checked, terminals covered.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Connect the mains through the residual-current device and press its test button.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Counterweights go on before the telescope and come off after it. Fit the toe stop at the end of the bar first: a weight that slides off breaks feet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Dew on a lens is prevented, not removed.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Dew, metal and mains voltage together kill.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Disconnect the battery and cover its terminals.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>End the programs, let a cooled camera warm up slowly, then switch off the mount, and the supply last.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Every later step judges a star's place, and a blurred star has none.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Everything else is timed back from when it can begin.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Eyes need half an hour to adapt and a second to lose it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Fit the counterweight bar, the weights and the toe stop.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Fix the mount's head and tighten every bolt.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Focus again, frame the target, take one exposure and look at its corners.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Focus on a bright star.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Fuse the battery at its terminal, keep it upright and its terminals covered, never charge a frozen, swollen or damaged one, and do not leave one charging unwatched.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Go in or get into the car and warm up before you need to.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Help comes only to where it knows to look.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Hold the tube with one hand whenever a clutch is loosened: an unbalanced mount swings at once and can strike a head or trap fingers.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Holes, steps and wires do not show in red light.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In frost a battery gives perhaps half of what it holds in a warm room.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In half an hour none of it can be seen.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In the dark the first star is then in the field at once.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>In the dark the ground tilts more than it seems.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It decides how long an exposure can be without guiding.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It finds nothing before it knows which way it points.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It saves the first rounds of drift alignment.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>It saves the first rounds of drift alignment; no bright star marks the southern pole.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Keep off the roadway and out of the way of vehicles. Where cars can come, wear something reflecting while setting up and packing.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Lay the cables along one side, mark the legs, put every tool in its place.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Let the telescope cool in the shade, caps on.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Level the base in two directions at right angles.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Lift with straight back and bent knees, heavy parts between two people, and keep fingers out of the clamps. Do not let go before the clamp or dovetail holds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Load, image scale and budget are computed for what really goes on the mount.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Look at the forecast: cloud, wind, dew point and frost.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Look for dew, focus again, and check that the target is still where it should be.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Make sure that you may be here tonight, and how to get out again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Measure the axis error by drift, and correct it until it is within the budget.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Measure the periodic error.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Moonlight drowns faint targets near it; another target or a narrow filter may save the night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Motors last longer and the mount tracks evenly.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Never look at the Sun, and never point a telescope, finder, camera or polar-axis sight at or near it without a proper filter over the full aperture. By day keep the caps on, the finder's too: eyes are destroyed at once and without pain.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>On a German mount the telescope comes off before the weights.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>On a ladder or stool keep one hand free to hold on, and never lean out to reach an eyepiece.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>On a level base the two bolts do not disturb each other, and the latitude scale is true.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Open the cases at home and let everything dry.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Or somebody goes out to look for you.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Outdoors, mains electricity only through a residual-current device, with plugs, leads and adapters made for wet places and off the ground. Work on wiring is for a licensed electrician. The rules of your country come first.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pack a red light and a spare, and a white one for packing up.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pack warm clothes, gloves, a hot drink and warm spare batteries.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pack, count caps and eyepieces, and search the ground with a white light.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Park the mount and put all caps on, the finder's too.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Power cut under a running disk or a cold sensor does harm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Pull the mains plug at the wall first, then the leads at the mount.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Put on the dew shield and switch on the dew heaters.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Put the telescope on with all caps on, and everything it carries.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Reversed polarity ends the night and the electronics.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See how long one exposure can be before the field turns too far.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See that ladder or stool stands firm before you climb it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See when the mount has to flip, and on which side it begins.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>See where the Moon is during the session.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the base on firm, even ground, or on a board.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the latitude scale and turn the axis to true north by compass or noon shadow.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the latitude scale and turn the axis to true south by compass or noon shadow.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Set the mount up on reference stars.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Shine a laser at the sky only where the law allows it, never when an aircraft is anywhere near, and never at people, animals or vehicles. If in doubt, point with the arm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Slew to the target once, slowly, and watch tube and cables all the way.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Soft ground gives way during the night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Somebody who freezes goes home early or makes mistakes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand by while the mount flips, then centre and focus again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand the tripod firm, the leg or mark that belongs to the pole towards true north.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand the tripod firm, the leg or mark that belongs to the pole towards true south.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Stand the tripod or pier firm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Take the counterweights off, the toe stop last.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Take the telescope off, with the clutches tight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Tell somebody where you will be and when you will be back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Tell the one who waits that you are back.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The Sun comes up while you pack: put the caps on the telescope and the finder before sunrise, and do not leave the tube where the Sun can wander into it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The azimuth bolts reach a few degrees only; soft ground gives way during the night.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The calibration holds only for the axis as it now stands, so it comes after the alignment.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The closer the axis starts, the fewer turns it takes at night; a compass points to the magnetic pole, not the true one.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The corners show tilt, rotation and dew before a whole series has them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The first slew in the dark is where collisions happen.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The last hour is the one with the mistakes.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The telescope changes sides; what did not catch before can catch now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The tube shrinks as it cools, and the focus moves with it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>The weight must be there before the telescope, or the mount tips and swings.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>They only fit at the same temperature.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Turn the mount by hand through all it will do tonight and watch the cables.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Until the last weight is off, the stop keeps it off your feet.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Walk the ways once while you can see them.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Warm air above the optics blurs every star; thick glass takes longest.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is left in the grass is found by the mower.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is left of it draws stars out and turns the field.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is left of the tilt is then small enough for a few stars to take out.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>What is parked and capped can wait; what is not cannot.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>When a mount slews, the tube, the camera or the counterweight can strike the pier or a tripod leg, and cables can be pulled off. Stand by, with a hand on the stop.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Wind and dew decide more than the equipment whether the night is worth the way.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>Write down what went well and what to change.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>at dusk</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>before you leave</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>by daylight</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>closing down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>in the dark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/checklist.json" />
   <source>through the night</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>+ −</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>, .</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A bolt scale is how far a turn moved the axis over how far it was meant to: 1 is perfect, below 1 the bolt moved too little.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A displaced axis makes a tracked star drift in declination. A star near the meridian shows the azimuth error, a star low in the east or west the altitude error. All legs between two turns of the bolts are solved together for both errors, with the refraction along each star's path. The ± is a 95 % range and takes into account that air moves a star slowly as well as quickly.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A run of unguided tracking is fitted with a line and the periods of the worm together. The amplitude is given with its ±; what the air adds is told apart by its lack of rhythm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A slow motion of a tracked star against the mount.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>A star's place along the celestial equator, in hours or degrees eastward.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>All nights as they happened. Open one, write a note, solve its legs again with other choices, carry it out, save everything.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>All times are clock times of the place, or UTC where you choose so.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Along a plot, a line of time, or keys of which one is down</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Alt+1 … Alt+0</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Altitudes are as seen, refraction included. The hour angle is negative before the meridian.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Altitudes are followed through the night over your own horizon. The flip follows from how far past the meridian the mount may go.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Angle above the horizon: 0° at the horizon, 90° overhead.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Axis state</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Azimuth and altitude bolts</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Backlash</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Bring the axis near the pole before measuring: by the pole star in a polar-axis sight, by the stars around the pole, or by other marks when the pole is hidden.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Closes the help</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Day, Dark and Night, in the top right corner, change the look. Night shines in red alone. The key beside them makes the text larger, up to twice. Every key can be reached with Tab; F1 explains the page in view.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Direction along the horizon: north 0°, east 90°, south 180°, west 270°.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>East and west, high and low are said of the axis where it meets the sky at the elevated pole. Clock places are as you see them in the sight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>East offset: east on the sky, right ascension times cos declination. The periodic error is told from peak to peak.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Elevated pole</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Enter</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Esc</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Every reading is on disk within a second. Solving again uses the same method as the Drift page and changes nothing in the night. A backup is read back before it is called good.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Exact rotations, as on the Drift page. Half a pixel as the limit is common practice without a source; it is yours to change.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Exact rotations, no small-angle formula. The errors are weighed by restricted likelihood (Patterson &amp; Thompson, Biometrika 58, 545, 1971).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>F</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>F1</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>First safety</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>For the dark</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Heights are from the saddle outward, away from the polar axis. Places along the tube are positive towards the sky.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Help on the page in view; once more closes it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Hipparcos catalogue for the stars, ERFA for their places of tonight.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Home, End</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Hour angle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Hour angles are negative east of the meridian, positive west of it. Smear is a length in pixels and has no sign.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How far a star is drawn out in one exposure, in pixels.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How far north or south of the celestial equator a star stands, north positive.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How far west of the meridian a star stands; east of it is negative.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How fast the picture turns on a mount without a polar axis, or on a tilted one, how long one exposure may be and what is left after stacking.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How good the alignment has to be tonight, for this target, camera and exposure: as good as the picture needs, no better.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How much the air spreads a star, in arcseconds.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>How well the drive follows the sky: its periodic error, what training and guiding take away, and how long one can expose.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>In the drift plot: follow the newest reading</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>In the drift plot: nearer and farther; the arrow keys move it</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>In the drift plot: to the reading before and the next</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>It helps to get the polar axis of a telescope mount onto the pole and to keep the night in order. It works without a network and sends nothing anywhere. All you measure is on disk within a second.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Latitude is positive north, longitude positive east, azimuth runs from north through east. The pressure is that at the station, not reduced to sea level.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Masses and distances are added about the polar axis. The load is held against what the mount is listed to carry and against the part of it one keeps to. Image scale is pixel size over focal length.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Measure the axis error by watching a star drift north or south while the mount follows the sky, then turn the bolts, and look again.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Mechanics of levers; image scale 206265″ × pixel ÷ focal length. The part of the capacity to use, and two to three pixels across the seeing, are common practice without a source.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Never look at the Sun, and never point a telescope or finder at or near it without a proper filter over the full aperture. Telescopes are heavy, cables are traps in the dark, and mains outdoors needs a residual-current device. Each step that can hurt somebody says so; these words cannot be switched off.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>One star watched without touching the bolts.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Parallactic angle</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Periods by Lomb–Scargle periodograms (astropy).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Polar axis</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Presses the key that has the ring</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Refraction</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Reports, drift logs (CSV) and nights (JSON) are plain files of this program; the drift log is described in its own header.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Say where you are: times, stars and the pole follow from it. Without a telescope at hand, the practice sky on the Drift page has a hidden axis error to be found.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Seeing</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Smear</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Space</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Sun, Moon and planets from the program's own ephemeris, rising and setting as printed tables define them (US Naval Observatory); illuminated share of the Moon by Meeus, Astronomical Algorithms, eq. 48.1 and 48.3; deep sky from the OpenNGC database.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Sunset and twilight as printed tables define them (US Naval Observatory): Sun's centre 6°, 12° and 18° below a level horizon. How long steps take, and from which Moon on it matters, is common practice without a source.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Tab, Shift+Tab</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Takes what is typed in a line</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The angle at a star between the pole and the zenith, positive west of the meridian.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The axis of an equatorial mount that is to point at the celestial pole.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The bending of light in the air, which lifts stars; about half a degree at the horizon.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The celestial pole above your horizon: the northern one in the north, the southern one in the south.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The largest axis error that tonight's picture allows.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The line from north through the zenith to south; stars culminate on it.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The north offset is positive when the star moves north of where the mount points. Azimuth error: the end of the axis at the elevated pole lies at greater azimuth than the pole, that is east of it in the north and west of it in the south. Altitude error: that end is too high.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The pages, from the top of the list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The parallactic angle is followed through the exposure; a star at the corner of the field moves by the angle times its distance from the centre.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The parallactic angle is positive west of the meridian; the rotation rate is its rate of change.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The places of the stars are those of this minute: precession, nutation, aberration and proper motion from the catalogue, refraction by your air. What you see of the pole star in the sight is turned back into where the axis points.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The pole stands as high as your latitude. The stars turn with your longitude and the clock: four minutes of error in the clock are one degree of turning. The air lifts everything near the horizon, more when it is cold and the pressure high.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The rate is that of the parallactic angle, spherical trigonometry of the triangle pole, zenith, star.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The right ascension that is on the meridian now.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The screws of the mount that move its axis sideways and up or down.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The stars of the whole field are followed through one exposure with the axis displaced. Guiding keeps one star still; what remains turns the field about it. The largest axis error whose smear stays within your limit is the budget.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The time between two turns of the bolts. All legs in it are solved together.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The time of each step is worked back from the target's beginning, step by step, by how long each takes; what needs stars cannot begin before them. Steps tick themselves when the program sees that they are done; a step is skipped only with a reason. Alignment counts as done when the axis error plus its ± is within the target.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The true value lies within it in nineteen cases of twenty.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The turning of the picture about the centre or about the guide star.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>The wobble of the drive that repeats with every turn of the worm.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Through a list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Time scales and star places: ERFA, the library of the International Astronomical Union's standards (SOFA). Refraction: ERFA's refco, below 5° Bennett's form (Journal of Navigation 35, 255, 1982). Compass: World Magnetic Model 2025 (NOAA/NCEI and British Geological Survey).</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>To the ends of a plot or list</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>To the next key or line, and back</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Turning a German equatorial mount over to the other side of the pier when the target has crossed the meridian.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Welcome to Poleward</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>What a screw or gear turns before anything moves.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>What stands well tonight and when, when it is dark, when the Moon is up, when the mount must flip, and which stars to set the mount up by.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the Earth's axis points, as if there were no air.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the air makes the pole appear: a little higher than it is.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the mount stands, what the air is like, and whether the clock is right. Everything else follows from this page.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Where the night is and what comes next. The checklist is made for this night: only steps that apply to your purpose, mount, power, hemisphere, cold and Moon, in the order they are done.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>Whether the mount carries the load, how the counterweights stand, how fine the image is, and which mount would suit you.</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>± (95 % range)</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>← →</source>
   <translation type="unfinished" />
  </message>
  <message>
   <location filename="resources/help.json" />
   <source>↑ ↓</source>
   <translation type="unfinished" />
  </message>
 </context>
</TS>
