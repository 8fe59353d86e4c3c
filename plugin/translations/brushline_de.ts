<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>brushline::AimOffAlgorithm</name>
    <message>
        <source>Aim off to a line feature</source>
        <translation>Daneben zielen auf eine Linie im Gelände</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>aiming off,deliberate offset,handrail,catching feature,trail,stream,compass,bearing,drift,leg,off trail</source>
        <translation>daneben zielen,absichtlicher Versatz,Leitlinie,Auffanglinie,Weg,Bach,Kompass,Richtung,Abdrift,Teilstrecke,weglos</translation>
    </message>
    <message>
        <source>Legs that aim to one side of a destination on a trail or stream, so that on meeting it one knows which way to turn.</source>
        <translation>Teilstrecken, die auf eine bestimmte Seite neben ein Ziel an einem Weg oder Bach führen, sodass man beim Treffen auf die Linie weiß, wohin man abbiegen muss.</translation>
    </message>
    <message>
        <source>Starts with legs</source>
        <translation>Starts mit Teilstrecken</translation>
    </message>
    <message>
        <source>Legs written, one for each walker</source>
        <translation>Geschriebene Teilstrecken, eine je Geher</translation>
    </message>
    <message>
        <source>Starts passed over</source>
        <translation>Übergangene Starts</translation>
    </message>
</context>
<context>
    <name>brushline::AimOffParameters</name>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Leer: das Feld „name“, falls es eines gibt.</translation>
    </message>
    <message>
        <source>%1: give a layer with %2.</source>
        <translation>%1: Geben Sie einen Layer mit %2 an.</translation>
    </message>
    <message>
        <source>%1: %2 cannot be had. Give a chance between 0.5 and 1, for example 0.95.</source>
        <translation>%1: %2 ist nicht zu haben. Geben Sie eine Wahrscheinlichkeit zwischen 0,5 und 1 an, zum Beispiel 0,95.</translation>
    </message>
    <message>
        <source>Whichever is better</source>
        <translation>Die bessere Seite</translation>
    </message>
    <message>
        <source>Left of the destination</source>
        <translation>Links vom Ziel</translation>
    </message>
    <message>
        <source>Right of the destination</source>
        <translation>Rechts vom Ziel</translation>
    </message>
    <message>
        <source>Starts (points)</source>
        <translation>Starts (Punkte)</translation>
    </message>
    <message>
        <source>Where one sets out, one leg from each.</source>
        <translation>Wo man losgeht, von jedem Start eine Teilstrecke.</translation>
    </message>
    <message>
        <source>Field with the start&apos;s name</source>
        <translation>Feld mit dem Namen des Starts</translation>
    </message>
    <message>
        <source>Lines to meet (trails, streams, power lines)</source>
        <translation>Linien, auf die man trifft (Wege, Bäche, Stromleitungen)</translation>
    </message>
    <message>
        <source>What one cannot cross without noticing. Lines of one name are one line. Give only lines that are as plain on the ground as on the map.</source>
        <translation>Was man nicht unbemerkt überqueren kann. Linien gleichen Namens gelten als eine Linie. Geben Sie nur Linien an, die im Gelände so deutlich sind wie auf der Karte.</translation>
    </message>
    <message>
        <source>Field with the line&apos;s name</source>
        <translation>Feld mit dem Namen der Linie</translation>
    </message>
    <message>
        <source>Destinations on the lines (points)</source>
        <translation>Ziele an den Linien (Punkte)</translation>
    </message>
    <message>
        <source>Where one wants to come to. Each start goes to the nearest one, or to that of its own name. Empty: the surest bearing to meet any line.</source>
        <translation>Wohin man kommen will. Jeder Start gehört zum nächstgelegenen Ziel oder zu dem, dessen Namen er nennt. Leer: die sicherste Richtung, um irgendeine Linie zu treffen.</translation>
    </message>
    <message>
        <source>Field with the destination&apos;s name</source>
        <translation>Feld mit dem Namen des Ziels</translation>
    </message>
    <message>
        <source>Field of the starts that names their destination</source>
        <translation>Feld der Starts, das ihr Ziel nennt</translation>
    </message>
    <message>
        <source>Its value is looked up among the destinations&apos; names; of several alike the nearest counts. Empty: the nearest destination.</source>
        <translation>Sein Wert wird unter den Namen der Ziele gesucht; von mehreren gleichen zählt das nächstgelegene. Leer: das nächstgelegene Ziel.</translation>
    </message>
    <message>
        <source>Aim to which side</source>
        <translation>Auf welche Seite gezielt wird</translation>
    </message>
    <message>
        <source>Left and right as seen when facing the destination. Whichever is better: the side that is sure, of two sure ones the shorter way in all.</source>
        <translation>Links und rechts mit Blick zum Ziel. Die bessere Seite: diejenige, die sicher ist; sind es beide, die mit dem insgesamt kürzeren Weg.</translation>
    </message>
    <message>
        <source>Chance that the turn is the right one</source>
        <translation>Wahrscheinlichkeit, dass richtig abgebogen wird</translation>
    </message>
    <message>
        <source>Between 0.5 and 1: 0.95 aims off so far that nineteen of twenty walks meet the line on the intended side.</source>
        <translation>Zwischen 0,5 und 1: Mit 0,95 wird so weit daneben gezielt, dass man neunzehn von zwanzig Mal auf der beabsichtigten Seite auf die Linie trifft.</translation>
    </message>
    <message>
        <source>What catches one beyond the line</source>
        <translation>Auffanglinien hinter der Linie</translation>
    </message>
    <message>
        <source>Roads, streams, lakes beyond: what tells that one has crossed the line without noticing.</source>
        <translation>Straßen, Bäche, Seen dahinter: woran man merkt, dass man die Linie unbemerkt überquert hat.</translation>
    </message>
    <message>
        <source>Field with its name</source>
        <translation>Feld mit dem Namen der Auffanglinie</translation>
    </message>
    <message>
        <source>How far to look for lines (m)</source>
        <translation>Wie weit nach Linien gesucht wird (m)</translation>
    </message>
    <message>
        <source>From the start, in metres. Destinations, lines and what catches count within it only.</source>
        <translation>Vom Start aus, in Metern. Ziele, Linien und Auffanglinien zählen nur innerhalb davon.</translation>
    </message>
    <message>
        <source>Farthest a destination may lie from its line (m)</source>
        <translation>Wie weit ein Ziel höchstens von seiner Linie liegen darf (m)</translation>
    </message>
    <message>
        <source>A destination is taken to the nearest place on a line; one that lies farther away, in metres, is passed over.</source>
        <translation>Ein Ziel wird auf die nächste Stelle einer Linie gesetzt; liegt es weiter weg als so viele Meter, wird es übergangen.</translation>
    </message>
    <message>
        <source>Walkers can tell the lines apart</source>
        <translation>Geher können die Linien auseinanderhalten</translation>
    </message>
    <message>
        <source>Off: one who meets another line first takes it for the right one, and counts as having missed. On: other lines are crossed without harm.</source>
        <translation>Aus: Wer zuerst auf eine andere Linie trifft, hält sie für die richtige und zählt als fehlgegangen. Ein: Andere Linien werden ohne Schaden überquert.</translation>
    </message>
    <message>
        <source>Aim by whole graduations of the dial</source>
        <translation>Um ganze Teilstriche des Skalenrings daneben zielen</translation>
    </message>
    <message>
        <source>The aim is one that the dial can show, the next one farther from the destination. Off: exact, and the dial rounds it.</source>
        <translation>Gezielt wird auf eine Zahl, die der Skalenring anzeigen kann: die nächste, die weiter vom Ziel weg liegt. Aus: genau, und der Skalenring rundet.</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>Starts</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>Linien</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no field “name”: give the field with the names that %3 refers to.</source>
        <translation>%1: Layer „%2“ hat kein Feld „name“: Geben Sie das Feld mit den Namen an, auf die sich %3 bezieht.</translation>
    </message>
    <message>
        <source>%1 refers to destinations: give %2 too.</source>
        <translation>%1 bezieht sich auf Ziele: Geben Sie auch %2 an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no line of any length, so there is nothing to meet.</source>
        <translation>%1: Layer „%2“ hat keine Linie mit einer Länge, es gibt also nichts, worauf man treffen kann.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n destination(s) of layer “%2” lie farther than %3 m from every line; passed over. Move them onto a line, or give a greater %4.</source>
        <translation>
            <numerusform>%1: %n Ziel des Layers „%2“ liegt weiter als %3 m von jeder Linie entfernt; es wurde übergangen. Verschieben Sie es auf eine Linie oder geben Sie ein größeres %4 an.</numerusform>
            <numerusform>%1: %n Ziele des Layers „%2“ liegen weiter als %3 m von jeder Linie entfernt; sie wurden übergangen. Verschieben Sie sie auf eine Linie oder geben Sie ein größeres %4 an.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: no destination of layer “%2” lies within %3 m of a line, so there is nowhere to aim. Move them onto a line, give a greater %4, or leave %1 empty.</source>
        <translation>%1: Kein Ziel des Layers „%2“ liegt näher als %3 m an einer Linie, es gibt also nichts, worauf man zielen kann. Verschieben Sie die Ziele auf eine Linie, geben Sie ein größeres %4 an oder lassen Sie %1 leer.</translation>
    </message>
</context>
<context>
    <name>brushline::AimOffWriter</name>
    <message>
        <source>Legs that aim off</source>
        <translation>Teilstrecken, die daneben zielen</translation>
    </message>
    <message>
        <source>Not sure: the chance that the line is met where one turns %1 is %2 %, less than asked for.</source>
        <translation>Nicht sicher: Die Wahrscheinlichkeit, dass man dort auf die Linie trifft, wo man nach %1 abbiegt, beträgt %2 %, weniger als verlangt.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>Not sure: the chance of meeting the line is %1 %, less than asked for.</source>
        <translation>Nicht sicher: Die Wahrscheinlichkeit, auf die Linie zu treffen, beträgt %1 %, weniger als verlangt.</translation>
    </message>
    <message>
        <source>With a chance of %1 % another line is met first.</source>
        <translation>Mit einer Wahrscheinlichkeit von %1 % trifft man zuerst auf eine andere Linie.</translation>
    </message>
    <message>
        <source>With a chance of %1 % another line is met first, most likely %2.</source>
        <translation>Mit einer Wahrscheinlichkeit von %1 % trifft man zuerst auf eine andere Linie, am ehesten auf %2.</translation>
    </message>
    <message>
        <source>The destination lies %1 m beside the line.</source>
        <translation>Das Ziel liegt %1 m neben der Linie.</translation>
    </message>
    <message>
        <source>Aims more than 45 degrees beside the destination: look for a better way.</source>
        <translation>Zielt mehr als 45 Grad neben das Ziel: einen besseren Weg suchen.</translation>
    </message>
    <message>
        <source>%1 m beyond</source>
        <translation>%1 m dahinter</translation>
    </message>
    <message>
        <source>%1, %2 m beyond</source>
        <translation>%1, %2 m dahinter</translation>
    </message>
    <message numerus="yes">
        <source>%n start(s) have no aim as sure as asked for: see the field warnings, and do not send anybody by these without looking at the map.</source>
        <translation>
            <numerusform>%n Start hat keine so sichere Zielrichtung wie verlangt: siehe das Feld warnings. Schicken Sie niemanden danach los, ohne auf die Karte zu sehen.</numerusform>
            <numerusform>%n Starts haben keine so sichere Zielrichtung wie verlangt: siehe das Feld warnings. Schicken Sie niemanden danach los, ohne auf die Karte zu sehen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Starts: %1; leg rows written: %2.</source>
        <translation>Starts: %1; Zeilen mit Teilstrecken geschrieben: %2.</translation>
    </message>
</context>
<context>
    <name>brushline::AimStarts</name>
    <message>
        <source>has no usable place.</source>
        <translation>hat keinen brauchbaren Ort.</translation>
    </message>
    <message>
        <source>lies outside the grid %1: give another %2.</source>
        <translation>liegt außerhalb des Gitters %1: Geben Sie ein anderes %2 an.</translation>
    </message>
    <message>
        <source>names no destination in its field “%1”.</source>
        <translation>nennt in seinem Feld „%1“ kein Ziel.</translation>
    </message>
    <message>
        <source>goes to “%1”, which lies on no line.</source>
        <translation>gehört zu „%1“, das auf keiner Linie liegt.</translation>
    </message>
    <message>
        <source>goes to “%1”, which is not among the destinations.</source>
        <translation>gehört zu „%1“, das nicht unter den Zielen ist.</translation>
    </message>
    <message>
        <source>layer “%1”, feature %2</source>
        <translation>Layer „%1“, Objekt %2</translation>
    </message>
    <message>
        <source>has no geometry.</source>
        <translation>hat keine Geometrie.</translation>
    </message>
    <message>
        <source>%1: %2 %3 Passed over.</source>
        <translation>%1: %2 %3 Übergangen.</translation>
    </message>
    <message>
        <source>meets no line within %1 m: give a greater REACH, or other lines.</source>
        <translation>trifft innerhalb von %1 m auf keine Linie: Geben Sie ein größeres REACH oder andere Linien an.</translation>
    </message>
    <message>
        <source>lies on the line already, or within a metre of it.</source>
        <translation>liegt schon auf der Linie oder keinen Meter daneben.</translation>
    </message>
    <message>
        <source>has no destination within %1 m: give a greater REACH.</source>
        <translation>hat innerhalb von %1 m kein Ziel: Geben Sie ein größeres REACH an.</translation>
    </message>
    <message>
        <source>lies farther than %1 m from its destination: give a greater REACH.</source>
        <translation>liegt weiter als %1 m von seinem Ziel entfernt: Geben Sie ein größeres REACH an.</translation>
    </message>
    <message>
        <source>has no bearing that meets the line where one turn leads to the destination: the line ends there or bends away, or another line lies in front of it. Try the other SIDE, or TELL_APART where one line cannot be taken for another.</source>
        <translation>hat keine Richtung, in der man dort auf die Linie trifft, wo nur eine Abbiegerichtung zum Ziel führt: Die Linie endet dort oder biegt weg, oder eine andere Linie liegt davor. Versuchen Sie die andere Seite (SIDE) oder TELL_APART, falls eine Linie nicht mit einer anderen verwechselt werden kann.</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n start(s) could be used.</source>
        <translation>
            <numerusform>%n Start, und er war nicht brauchbar.</numerusform>
            <numerusform>%n Starts, und keiner war brauchbar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n start(s) passed over in all.</source>
        <translation>
            <numerusform>Insgesamt %n Start übergangen.</numerusform>
            <numerusform>Insgesamt %n Starts übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features, so there are no legs.</source>
        <translation>%1: Layer „%2“ hat keine Objekte, es gibt also keine Teilstrecken.</translation>
    </message>
    <message>
        <source>has no aim that stands on the dial: the numbers on both sides of the best bearing miss the line. Give a finer DIAL_STEP if the compass has one, the other SIDE, or another start.</source>
        <translation>hat keine Zielrichtung, die auf dem Skalenring steht: Die Zahlen auf beiden Seiten der besten Richtung verfehlen die Linie. Geben Sie ein feineres DIAL_STEP an, wenn der Kompass es hat, die andere SIDE oder einen anderen Start.</translation>
    </message>
</context>
<context>
    <name>brushline::AnnotateLegsAlgorithm</name>
    <message>
        <source>Annotate legs</source>
        <translation>Teilstrecken berechnen</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Teilstrecken</translation>
    </message>
    <message>
        <source>compass,bearing,azimuth,heading,magnetic,declination,variation,paces,pacing,step count,route,leg,back bearing,off trail,cross country,dead reckoning,navigation,walk,hike,course</source>
        <translation>Kompass,Richtung,Azimut,Kurs,magnetisch,Deklination,Missweisung,Schritte,Schrittzahl,Schritte zählen,Route,Teilstrecke,Gegenrichtung,Marschzahl,weglos,querfeldein,Koppelnavigation,Gehen,Wandern</translation>
    </message>
    <message>
        <source>Turns planned routes into legs to walk by compass and pace count: the number for the dial today, paces, minutes and the way back.</source>
        <translation>Macht aus geplanten Routen Teilstrecken, die man nach Kompass und Schrittzahl geht: die Marschzahl für den Tag, Schritte, Minuten und den Rückweg.</translation>
    </message>
    <message>
        <source>Out, as drawn</source>
        <translation>Hinweg, wie gezeichnet</translation>
    </message>
    <message>
        <source>Back, the other way</source>
        <translation>Rückweg, andersherum</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beides</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Gehrichtung</translation>
    </message>
    <message>
        <source>Legs as the route is drawn, the way home, or both.</source>
        <translation>Teilstrecken, wie die Route gezeichnet ist, den Weg zurück oder beides.</translation>
    </message>
    <message>
        <source>Named points are found with certainty</source>
        <translation>Benannte Punkte werden mit Sicherheit gefunden</translation>
    </message>
    <message>
        <source>Drift starts anew at every named point. Off: errors add up along the whole route.</source>
        <translation>Die Abdrift beginnt an jedem benannten Punkt neu. Aus: Die Fehler summieren sich über die ganze Route.</translation>
    </message>
    <message>
        <source>Routes with legs</source>
        <translation>Routen mit Teilstrecken</translation>
    </message>
    <message>
        <source>Legs written, one for each walker</source>
        <translation>Geschriebene Teilstrecken, eine je Geher</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>hat keine zwei auseinanderliegenden Stützpunkte, also keine Teilstrecke.</translation>
    </message>
</context>
<context>
    <name>brushline::BaseAlgorithm</name>
    <message>
        <source>There is not enough memory for this. Split the input, or write to a file instead of memory.</source>
        <translation>Dafür reicht der Speicher nicht. Teilen Sie die Eingabe auf oder schreiben Sie in eine Datei statt in den Speicher.</translation>
    </message>
    <message>
        <source>The host reports: %1</source>
        <translation>Das Wirtsprogramm meldet: %1</translation>
    </message>
    <message>
        <source>This could not be computed: %1</source>
        <translation>Das ließ sich nicht berechnen: %1</translation>
    </message>
    <message>
        <source>This could not be computed, for a reason that was not told.</source>
        <translation>Das ließ sich nicht berechnen; ein Grund wurde nicht genannt.</translation>
    </message>
    <message>
        <source>Cancelled: nothing was kept of the outputs.</source>
        <translation>Abgebrochen: Von den Ausgaben wurde nichts behalten.</translation>
    </message>
</context>
<context>
    <name>brushline::CalibratePacesAlgorithm</name>
    <message>
        <source>Calibrate paces</source>
        <translation>Schritte eichen</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>pace,paces,count,step,stride,calibrate,walker,walkers,measure,distance</source>
        <translation>Schritt,Schritte,zählen,Schrittzahl,Schrittlänge,Doppelschritt,eichen,kalibrieren,Geher,messen,Strecke</translation>
    </message>
    <message>
        <source>Makes a table of walkers, with their paces over 100 m and how sure they are, from counts over known distances.</source>
        <translation>Macht aus Zählungen über bekannte Strecken eine Tabelle der Geher, mit ihren Schritten auf 100 m und wie sicher diese sind.</translation>
    </message>
    <message>
        <source>Walkers</source>
        <translation>Geher</translation>
    </message>
    <message>
        <source>Tries used</source>
        <translation>Verwendete Versuche</translation>
    </message>
</context>
<context>
    <name>brushline::CalibratedWalkers</name>
    <message>
        <source>Calibrated walkers</source>
        <translation>Geeichte Geher</translation>
    </message>
    <message>
        <source>Tries, judged</source>
        <translation>Versuche, beurteilt</translation>
    </message>
    <message>
        <source>no try on ground of 30 degrees or less, where the slope table ends. Are the slopes in percent?</source>
        <translation>Kein Versuch in Gelände mit höchstens 30 Grad, wo die Hangtabelle endet. Sind die Steigungen in Prozent?</translation>
    </message>
    <message>
        <source>the tries do not agree, and nothing tells which are right (%1 steps over 100 m, give or take %2). Count again, over the same distance.</source>
        <translation>Die Versuche stimmen nicht überein, und nichts sagt, welche richtig sind (%1 Schritte auf 100 m, plus oder minus %2). Zählen Sie noch einmal, über dieselbe Strecke.</translation>
    </message>
    <message>
        <source>steps of %1 m are nobody&apos;s. Are the distances in feet, or is PACE_KIND not what was counted?</source>
        <translation>Schritte von %1 m macht niemand. Sind die Strecken in Fuß, oder ist PACE_KIND nicht das, was gezählt wurde?</translation>
    </message>
    <message>
        <source>steeper than 30 degrees, where the slope table ends (percent, not degrees?)</source>
        <translation>steiler als 30 Grad, wo die Hangtabelle endet (Prozent statt Grad?)</translation>
    </message>
    <message>
        <source>about half the others&apos; count (double paces among single steps, or twice the distance?)</source>
        <translation>etwa die Hälfte der Zahl der anderen (Doppelschritte unter Einzelschritten oder die doppelte Strecke?)</translation>
    </message>
    <message>
        <source>about twice the others&apos; count (single steps among double paces, or half the distance?)</source>
        <translation>etwa das Doppelte der Zahl der anderen (Einzelschritte unter Doppelschritten oder die halbe Strecke?)</translation>
    </message>
    <message>
        <source>about 0.3 of the others&apos; count (distance in feet?)</source>
        <translation>etwa das 0,3-Fache der Zahl der anderen (Strecke in Fuß?)</translation>
    </message>
    <message>
        <source>far off the others&apos; count</source>
        <translation>weit von der Zahl der anderen entfernt</translation>
    </message>
    <message>
        <source>an outlier by the test (count lost?)</source>
        <translation>ein Ausreißer nach dem Test (verzählt?)</translation>
    </message>
    <message numerus="yes">
        <source>%n try(s) kept, as too few would be left: %1.</source>
        <translation>
            <numerusform>%n Versuch behalten, da sonst zu wenige übrig blieben: %1.</numerusform>
            <numerusform>%n Versuche behalten, da sonst zu wenige übrig blieben: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n try(s) left out: %1.</source>
        <translation>
            <numerusform>%n Versuch weggelassen: %1.</numerusform>
            <numerusform>%n Versuche weggelassen: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sloped try(s) brought to the level by the slope table.</source>
        <translation>
            <numerusform>%n Versuch am Hang mit der Hangtabelle auf die Ebene umgerechnet.</numerusform>
            <numerusform>%n Versuche am Hang mit der Hangtabelle auf die Ebene umgerechnet.</numerusform>
        </translation>
    </message>
    <message>
        <source>Slope changes the count %1 times as much as the slope table says (95 %: %2 to %3).</source>
        <translation>Die Steigung ändert die Schrittzahl %1-mal so stark, wie die Hangtabelle sagt (95 %: %2 bis %3).</translation>
    </message>
    <message>
        <source>The tries hardly tell how slope changes the count.</source>
        <translation>Die Versuche sagen kaum, wie die Steigung die Schrittzahl ändert.</translation>
    </message>
    <message>
        <source>The table does not hold for this walker: paces on slopes will be off, and those of level ground are taken from the tries&apos; own line. Count level tries.</source>
        <translation>Die Tabelle gilt für diesen Geher nicht: Schritte am Hang werden nicht stimmen, und die in der Ebene sind aus der Geraden durch die Versuche selbst genommen. Zählen Sie Versuche in der Ebene.</translation>
    </message>
    <message>
        <source>Sloped tries brought to the level by the table.</source>
        <translation>Versuche am Hang mit der Tabelle auf die Ebene umgerechnet.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n try(s) used, %2 m.</source>
        <translation>
            <numerusform>%1 von %n Versuch verwendet, %2 m.</numerusform>
            <numerusform>%1 von %n Versuchen verwendet, %2 m.</numerusform>
        </translation>
    </message>
    <message>
        <source>One try tells no error: pace_err and the interval are empty. Walk it again, at least twice.</source>
        <translation>Ein einziger Versuch sagt nichts über den Fehler: pace_err und das Intervall sind leer. Noch einmal gehen, mindestens zweimal.</translation>
    </message>
    <message numerus="yes">
        <source>Only %n tries: the interval is wide. Four or more tell much more.</source>
        <translation>
            <numerusform>Nur %n Versuch: Das Intervall ist weit. Vier oder mehr sagen viel mehr.</numerusform>
            <numerusform>Nur %n Versuche: Das Intervall ist weit. Vier oder mehr sagen viel mehr.</numerusform>
        </translation>
    </message>
    <message>
        <source>The tries agree better than whole paces can tell; the spread is that of rounding.</source>
        <translation>Die Versuche stimmen besser überein, als ganze Schritte es zeigen können; die Streuung ist die der Rundung.</translation>
    </message>
    <message>
        <source>CHECK: steps of %1 m are longer than anybody&apos;s. If these are double paces, run again with PACE_KIND 1.</source>
        <translation>BITTE PRÜFEN: Schritte von %1 m sind länger als die von irgendjemandem. Wenn es Doppelschritte sind, noch einmal mit PACE_KIND 1 ausführen.</translation>
    </message>
    <message>
        <source>CHECK: steps of %1 m are short even for a small child. Are the distances in metres, and is PACE_KIND what was counted?</source>
        <translation>BITTE PRÜFEN: Schritte von %1 m sind selbst für ein kleines Kind kurz. Sind die Strecken in Metern, und ist PACE_KIND das, was gezählt wurde?</translation>
    </message>
    <message>
        <source>paces_100m, sd_100m, lo_100m and hi_100m are in double paces here: %1 single steps could be read two ways.</source>
        <translation>paces_100m, sd_100m, lo_100m und hi_100m sind hier in Doppelschritten: %1 Einzelschritte ließen sich auf zwei Arten verstehen.</translation>
    </message>
    <message>
        <source>Walker “%1”: also written %2; taken for one.</source>
        <translation>Geher „%1“: auch %2 geschrieben; als einer genommen.</translation>
    </message>
    <message>
        <source>Walker “%1” is left out: %2</source>
        <translation>Geher „%1“ wird weggelassen: %2</translation>
    </message>
    <message>
        <source>Walker “%1”: %2</source>
        <translation>Geher „%1“: %2</translation>
    </message>
    <message>
        <source>Kept, as too few would be left: %1.</source>
        <translation>Behalten, da sonst zu wenige übrig blieben: %1.</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Weggelassen: %1.</translation>
    </message>
    <message>
        <source>Walker left out: %1</source>
        <translation>Geher weggelassen: %1</translation>
    </message>
    <message numerus="yes">
        <source>There is no number for any of the %n walker(s). %1</source>
        <translation>
            <numerusform>%n Geher, und für ihn gibt es keine Zahl. %1</numerusform>
            <numerusform>%n Geher, und für keinen gibt es eine Zahl. %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Walkers: %1; tries used: %2, flagged: %3.</source>
        <translation>Geher: %1; Versuche verwendet: %2, beanstandet: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n walker(s) left out in all. They are not in the output, and Annotate legs will have no legs for them.</source>
        <translation>
            <numerusform>Insgesamt %n Geher weggelassen. Er ist nicht in der Ausgabe, und „Teilstrecken berechnen“ wird keine Teilstrecken für ihn haben.</numerusform>
            <numerusform>Insgesamt %n Geher weggelassen. Sie sind nicht in der Ausgabe, und „Teilstrecken berechnen“ wird keine Teilstrecken für sie haben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CandidatesParameters</name>
    <message>
        <source>Candidates for marks (points)</source>
        <translation>Kandidaten für Marken (Punkte)</translation>
    </message>
    <message>
        <source>Trees, boulders, stumps: what can be told from its surroundings and sighted at.</source>
        <translation>Bäume, Felsblöcke, Baumstümpfe: was sich von seiner Umgebung unterscheiden und anpeilen lässt.</translation>
    </message>
    <message>
        <source>Field with the candidate&apos;s name</source>
        <translation>Feld mit dem Namen des Kandidaten</translation>
    </message>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Leer: das Feld „name“, falls es eines gibt.</translation>
    </message>
    <message>
        <source>Farthest a mark may lie from the line (m)</source>
        <translation>Wie weit eine Marke höchstens neben der Linie liegen darf (m)</translation>
    </message>
    <message>
        <source>Marks beside the line are fine, since each has its own bearing; in metres, to either side.</source>
        <translation>Marken neben der Linie sind in Ordnung, denn jede hat ihre eigene Richtung; in Metern, nach beiden Seiten.</translation>
    </message>
    <message>
        <source>%1: give a layer with points.</source>
        <translation>%1: Geben Sie einen Layer mit Punkten an.</translation>
    </message>
</context>
<context>
    <name>brushline::CardFeatures</name>
    <message>
        <source>What the legs meet (points)</source>
        <translation>Worauf die Teilstrecken treffen (Punkte)</translation>
    </message>
    <message>
        <source>Streams, trails and the like that legs cross or pass, with the fields route, leg, feature, at_m and role: each is told on its leg&apos;s row, with the paces at which it comes.</source>
        <translation>Bäche, Wege und dergleichen, die Teilstrecken kreuzen oder an denen sie vorbeiführen, mit den Feldern route, leg, feature, at_m und role: Jedes steht in der Zeile seiner Teilstrecke, mit der Schrittzahl, bei der es kommt.</translation>
    </message>
    <message>
        <source>%1: layer “%2” lacks these fields: %3. It needs the fields route, leg, feature (what is met) and at_m (metres from the leg&apos;s start).</source>
        <translation>%1: Dem Layer „%2“ fehlen die Felder %3. Er braucht die Felder route, leg, feature (worauf man trifft) und at_m (Meter vom Anfang der Teilstrecke).</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” belong to none of the legs or to several, or say neither what is met nor where; passed over.</source>
        <translation>
            <numerusform>%1: %n Zeile des Layers „%2“ gehört zu keiner Teilstrecke oder zu mehreren oder sagt weder was noch wo; sie wurde übergangen.</numerusform>
            <numerusform>%1: %n Zeilen des Layers „%2“ gehören zu keiner Teilstrecke oder zu mehreren oder sagen weder was noch wo; sie wurden übergangen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CardPrinter</name>
    <message>
        <source>Layer “%1” could not be drawn: %2</source>
        <translation>Layer „%1“ konnte nicht gezeichnet werden: %2</translation>
    </message>
    <message>
        <source>A card could not be made in the temporary folder “%1”. Is its disk full?</source>
        <translation>Im temporären Ordner „%1“ konnte kein Laufzettel angelegt werden. Ist der Datenträger voll?</translation>
    </message>
</context>
<context>
    <name>brushline::CardsIndex</name>
    <message>
        <source>Leg cards</source>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>Walker</source>
        <translation>Geher</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Gehrichtung</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Teilstrecken</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
</context>
<context>
    <name>brushline::Cautions</name>
    <message>
        <source>The bearings rest on a model of the Earth’s magnetic field, or on a declination read off a map, and are good for the day named. The model has an error of its own, a quarter of a degree or more, and knows nothing of iron in the ground or near the compass.</source>
        <translation>Die Richtungen beruhen auf einem Modell des Erdmagnetfelds oder auf einer Deklination, die von einer Karte abgelesen wurde, und gelten für den genannten Tag. Das Modell hat selbst einen Fehler von einem Viertelgrad oder mehr und weiß nichts von Eisen im Boden oder nahe am Kompass.</translation>
    </message>
    <message>
        <source>Keep the compass away from iron and electric current: knives, phones, vehicles, wire fences, power lines. Stay at least 55 m from a high-tension line, 18 m from a vehicle and 10 m from a wire fence when you read it.</source>
        <translation>Halten Sie den Kompass von Eisen und elektrischem Strom fern: Messern, Telefonen, Fahrzeugen, Drahtzäunen, Stromleitungen. Bleiben Sie beim Ablesen mindestens 55 m von einer Hochspannungsleitung, 18 m von einem Fahrzeug und 10 m von einem Drahtzaun entfernt.</translation>
    </message>
    <message>
        <source>Check every leg by its back bearing: from the leg’s end sight back to where you came from. The two numbers must differ by half a turn, that is 180 degrees, 3200 mils or 200 gon. If they do not, something draws the needle aside or you are not where you think: stop and find out before you go on.</source>
        <translation>Prüfen Sie jede Teilstrecke durch ihre Gegenrichtung: Peilen Sie vom Ende der Teilstrecke dorthin zurück, woher Sie gekommen sind. Die beiden Zahlen müssen sich um eine halbe Drehung unterscheiden, das sind 180 Grad, 3200 Strich (mil) oder 200 Gon. Tun sie es nicht, lenkt etwas die Nadel ab, oder Sie sind nicht dort, wo Sie meinen: Bleiben Sie stehen und finden Sie es heraus, bevor Sie weitergehen.</translation>
    </message>
    <message>
        <source>A leg is a straight line. It takes no heed of cliffs, water, bogs and thickets: look at the map and at the ground, and go round what is dangerous.</source>
        <translation>Eine Teilstrecke ist eine gerade Linie. Sie nimmt keine Rücksicht auf Felsabbrüche, Wasser, Moore und Dickichte: Sehen Sie auf die Karte und ins Gelände, und gehen Sie um alles Gefährliche herum.</translation>
    </message>
    <message>
        <source>Tell someone who stays behind where you go and when you will be back.</source>
        <translation>Sagen Sie jemandem, der zurückbleibt, wohin Sie gehen und wann Sie wieder da sind.</translation>
    </message>
    <message>
        <source>Set a time at which you turn back, wherever you are then, and keep to it.</source>
        <translation>Setzen Sie eine Uhrzeit fest, zu der Sie umkehren, wo immer Sie dann sind, und halten Sie sich daran.</translation>
    </message>
    <message>
        <source>Ask whose land it is, and whether there is hunting on it. Local rules and the word of a qualified leader stand above anything written here.</source>
        <translation>Fragen Sie, wem das Land gehört und ob dort gejagt wird. Örtliche Regeln und das Wort einer ausgebildeten Leitungsperson gehen allem vor, was hier steht.</translation>
    </message>
    <message>
        <source>Walk a new course yourself before children do.</source>
        <translation>Gehen Sie eine neue Route selbst ab, bevor Kinder sie gehen.</translation>
    </message>
    <message>
        <source>At the end of a leg sight back. If its back number does not fit, stop and think.</source>
        <translation>Peile am Ende jeder Teilstrecke zurück. Passt die Gegenzahl nicht, bleib stehen und denk nach.</translation>
    </message>
    <message>
        <source>The line knows nothing of cliffs, water or thicket: look, go round, come back to it.</source>
        <translation>Die Linie weiß nichts von Felsabbrüchen, Wasser oder Dickicht: Schau hin, geh außen herum, geh zur Linie zurück.</translation>
    </message>
    <message>
        <source>Not sure? Stay together, and go back to the last place you knew.</source>
        <translation>Nicht sicher? Bleibt zusammen und geht zurück zum letzten Ort, den ihr kennt.</translation>
    </message>
    <message>
        <source>Knives, phones, cars, wire fences and power lines turn the needle: keep away from iron and current.</source>
        <translation>Messer, Telefone, Autos, Drahtzäune und Stromleitungen lenken die Nadel ab: Bleib von Eisen und Strom weg.</translation>
    </message>
    <message>
        <source>Local rules and the word of a qualified leader come first. Ask whose land it is.</source>
        <translation>Örtliche Regeln und das Wort einer ausgebildeten Leitungsperson gehen vor. Fragt, wem das Land gehört.</translation>
    </message>
</context>
<context>
    <name>brushline::CheckHazardsAlgorithm</name>
    <message>
        <source>Check legs for hazards</source>
        <translation>Teilstrecken auf Gefahren prüfen</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>hazard,danger,power line,iron,fence,cliff,water,slope,steep,compass,leg,route</source>
        <translation>Gefahr,Stromleitung,Eisen,Zaun,Felsabbruch,Wasser,Hang,steil,Kompass,Teilstrecke,Route</translation>
    </message>
    <message>
        <source>Finds the stretches of legs where iron or current draws the needle off, where the ground is too steep, and which come close to cliffs, water and other hazards.</source>
        <translation>Findet die Stücke von Teilstrecken, wo Eisen oder Strom die Nadel ablenkt, wo das Gelände zu steil ist und die nahe an Felsabbrüche, Wasser und andere Gefahren kommen.</translation>
    </message>
    <message>
        <source>Stretches to take care on</source>
        <translation>Stücke, auf denen Vorsicht nötig ist</translation>
    </message>
    <message>
        <source>Hazards found</source>
        <translation>Gefundene Gefahren</translation>
    </message>
    <message>
        <source>From %1 to %2 m the ground is steeper than %3°: go round, or let a qualified leader decide on the spot.</source>
        <translation>Von %1 bis %2 m ist das Gelände steiler als %3°: außen herum gehen oder eine ausgebildete Leitungsperson an Ort und Stelle entscheiden lassen.</translation>
    </message>
    <message>
        <source>No compass works here, near the magnetic pole: find your way by other means.</source>
        <translation>Hier, nahe am Magnetpol, taugt kein Kompass: den Weg auf andere Art finden.</translation>
    </message>
    <message>
        <source>The needle is weak here, near the magnetic pole: do not rely on it alone.</source>
        <translation>Hier, nahe am Magnetpol, ist die Nadel schwach: sich nicht allein auf sie verlassen.</translation>
    </message>
    <message>
        <source>Do not trust the needle from %1 to %2 m, within %3 m of: %4. Sight a mark beyond before you get there, and read the compass again behind it.</source>
        <translation>Von %1 bis %2 m der Nadel nicht trauen, näher als %3 m an: %4. Vorher eine Marke jenseits davon anpeilen und den Kompass erst dahinter wieder ablesen.</translation>
    </message>
    <message>
        <source>From %1 to %2 m the leg is within %3 m of: %4. Stop short of it, look, and go round.</source>
        <translation>Von %1 bis %2 m ist die Teilstrecke näher als %3 m an: %4. Davor anhalten, hinsehen und außen herum gehen.</translation>
    </message>
    <message>
        <source>On %1 m of the legs there are no heights: the slope there is not known.</source>
        <translation>Auf %1 m der Teilstrecken fehlen Höhen: Die Steigung dort ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No hazard was found. That does not mean that there is none: the layers know only what somebody drew.</source>
        <translation>Keine Gefahr gefunden. Das heißt nicht, dass es keine gibt: Die Layer wissen nur, was jemand gezeichnet hat.</translation>
    </message>
    <message numerus="yes">
        <source>%n stretch(es) to take care on.</source>
        <translation>
            <numerusform>%n Stück, auf dem Vorsicht nötig ist.</numerusform>
            <numerusform>%n Stücke, auf denen Vorsicht nötig ist.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ChooseMarksAlgorithm</name>
    <message>
        <source>Choose marks to leapfrog between</source>
        <translation>Marken zum Weiterpeilen wählen</translation>
    </message>
    <message>
        <source>Sighting</source>
        <translation>Sicht und Peilung</translation>
    </message>
    <message>
        <source>mark,tree,boulder,leapfrog,sighting,bearing,compass,leg,route,landmark</source>
        <translation>Marke,Baum,Felsblock,Weiterpeilen,Peilung,Richtung,Kompass,Teilstrecke,Route,Landmarke</translation>
    </message>
    <message>
        <source>Chooses, from trees, boulders and stumps, the chain of marks that leads along each leg, each visible from the one before.</source>
        <translation>Wählt aus Bäumen, Felsblöcken und Baumstümpfen die Kette von Marken, die jede Teilstrecke entlang führt, jede von der vorigen aus zu sehen.</translation>
    </message>
</context>
<context>
    <name>brushline::ChosenMarksWriter</name>
    <message>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Sightings (from mark to mark)</source>
        <translation>Peilungen (von Marke zu Marke)</translation>
    </message>
    <message>
        <source>Gaps (no candidate serves)</source>
        <translation>Lücken (kein Kandidat taugt)</translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s) written.</source>
        <translation>
            <numerusform>%n Marke geschrieben.</numerusform>
            <numerusform>%n Marken geschrieben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) that no candidate serves. Marks put on the line there: %1.</source>
        <translation>
            <numerusform>%n Lücke, für die kein Kandidat taugt. Marken dort auf der Linie: %1.</numerusform>
            <numerusform>%n Lücken, für die kein Kandidat taugt. Marken dort auf der Linie: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s) cannot be seen from the one before: sight_m is shorter than the way there. Go from hand to hand there, or give a smaller SPACING_MIN.</source>
        <translation>
            <numerusform>%n Marke ist von der vorigen aus nicht zu sehen: sight_m ist kürzer als der Weg dorthin. Dort von Hand zu Hand gehen, immer in Griffweite, oder SPACING_MIN kleiner angeben.</numerusform>
            <numerusform>%n Marken sind von der vorigen aus nicht zu sehen: sight_m ist kürzer als der Weg dorthin. Dort von Hand zu Hand gehen, immer in Griffweite, oder SPACING_MIN kleiner angeben.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ClosureWords</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 paces (%2 m)</source>
        <translation>%1 Schritte (%2 m)</translation>
    </message>
    <message>
        <source>All bearings may be counted from true north already.</source>
        <translation>Vielleicht sind alle Richtungen schon ab geographisch Nord gezählt.</translation>
    </message>
    <message>
        <source>All bearings may be counted from magnetic north.</source>
        <translation>Vielleicht sind alle Richtungen ab magnetisch Nord gezählt.</translation>
    </message>
    <message>
        <source>The declination may have been turned the wrong way round on all bearings.</source>
        <translation>Vielleicht ist die Deklination bei allen Richtungen mit verkehrtem Vorzeichen angewendet.</translation>
    </message>
    <message>
        <source>All legs may be half as long: counted in the other kind of paces.</source>
        <translation>Vielleicht sind alle Teilstrecken halb so lang: in der anderen Art von Schritten gezählt.</translation>
    </message>
    <message>
        <source>All legs may be twice as long: counted in the other kind of paces.</source>
        <translation>Vielleicht sind alle Teilstrecken doppelt so lang: in der anderen Art von Schritten gezählt.</translation>
    </message>
    <message>
        <source>Leg %1 (row %2)</source>
        <translation>Teilstrecke %1 (Zeile %2)</translation>
    </message>
    <message>
        <source>%1 may have its back bearing noted: “%2” for %3.</source>
        <translation>%1: Vielleicht ist die Gegenrichtung notiert, „%2“ statt %3.</translation>
    </message>
    <message>
        <source>%1 may have two digits of its bearing swapped: “%2” for %3.</source>
        <translation>%1: Vielleicht sind zwei Ziffern der Richtung vertauscht, „%2“ statt %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred paces too many: %2 for %3.</source>
        <translation>%1: Vielleicht sind es hundert Schritte zu viel, %2 statt %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred metres too many: %2 for %3.</source>
        <translation>%1: Vielleicht sind es hundert Meter zu viel, %2 statt %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred paces too few: %2 for %3.</source>
        <translation>%1: Vielleicht sind es hundert Schritte zu wenig, %2 statt %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred metres too few: %2 for %3.</source>
        <translation>%1: Vielleicht sind es hundert Meter zu wenig, %2 statt %3.</translation>
    </message>
    <message>
        <source>%1 may be counted in the other kind of paces: %2 for %3.</source>
        <translation>%1: Vielleicht in der anderen Art von Schritten gezählt, %2 statt %3.</translation>
    </message>
    <message>
        <source>%1 may be wrong in its length: %2 for %3.</source>
        <translation>%1: Vielleicht stimmt die Länge nicht, %2 statt %3.</translation>
    </message>
    <message>
        <source>The errors allow %1 m.</source>
        <translation>Die Fehler erlauben %1 m.</translation>
    </message>
    <message>
        <source>No single slip accounts for more: look for two, or measure again.</source>
        <translation>Kein einzelnes Versehen erklärt mehr: nach zweien suchen oder noch einmal messen.</translation>
    </message>
    <message>
        <source>Then it would miss by %1 m.</source>
        <translation>Dann läge die Route %1 m daneben.</translation>
    </message>
    <message numerus="yes">
        <source>%n other slip(s) would account for it too.</source>
        <translation>
            <numerusform>%n anderes Versehen würde es auch erklären.</numerusform>
            <numerusform>%n andere Versehen würden es auch erklären.</numerusform>
        </translation>
    </message>
    <message>
        <source>No other single slip would account for it.</source>
        <translation>Kein anderes einzelnes Versehen würde es erklären.</translation>
    </message>
    <message>
        <source>This route misses its end by %1 m, more than its errors allow (%2 m): do not walk it before the slip is found.</source>
        <translation>Diese Route verfehlt ihr Ende um %1 m, mehr als ihre Fehler erlauben (%2 m): nicht gehen, bevor das Versehen gefunden ist.</translation>
    </message>
    <message>
        <source>Spreading the miss over the legs has only hidden it.</source>
        <translation>Die Verteilung des Schlussfehlers auf die Teilstrecken hat es nur verdeckt.</translation>
    </message>
    <message numerus="yes">
        <source>Route “%1”: %n leg(s), %2 m; misses its end by %3 m</source>
        <translation>
            <numerusform>Route „%1“: %n Teilstrecke, %2 m; verfehlt ihr Ende um %3 m</numerusform>
            <numerusform>Route „%1“: %n Teilstrecken, %2 m; verfehlt ihr Ende um %3 m</numerusform>
        </translation>
    </message>
    <message>
        <source> towards %1° true, 1 in %2</source>
        <translation> in Richtung %1° geographisch, 1 zu %2</translation>
    </message>
</context>
<context>
    <name>brushline::CompareTrackAlgorithm</name>
    <message>
        <source>Compare a walked track</source>
        <translation>Gegangenen Track vergleichen</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>GPX,GPS,track,log,error,bearing,declination,pace,drift,cross-track,leg,route</source>
        <translation>GPX,GPS,Track,Aufzeichnung,Fehler,Richtung,Deklination,Schritt,Abdrift,Querabweichung,Teilstrecke,Route</translation>
    </message>
    <message>
        <source>Cuts a recorded track where its walker turned, holds each leg against the plan, and tells what all legs have in common: a compass that is off, a pace that is too long.</source>
        <translation>Zerschneidet einen aufgezeichneten Track, wo der Geher die Richtung wechselte, hält jede Teilstrecke gegen den Plan und sagt, was alle Teilstrecken gemeinsam haben: einen Kompass, der falsch zeigt, einen Schritt, der zu lang ist.</translation>
    </message>
    <message>
        <source>Farthest from a planned turn (m)</source>
        <translation>Wie weit höchstens von einem geplanten Knickpunkt (m)</translation>
    </message>
    <message>
        <source>A walked turn lies within it of the planned one, and so does some part of a track that is a walk of a route. Larger for long routes and large errors.</source>
        <translation>So weit höchstens liegt ein gegangener Knickpunkt vom geplanten entfernt, und so nahe kommt ein Track, auf dem eine Route gegangen wurde, ihr mit irgendeinem Stück. Größer für lange Routen und große Fehler.</translation>
    </message>
    <message>
        <source>Most days between a track and the day of its legs</source>
        <translation>Höchstzahl der Tage zwischen einem Track und dem Tag seiner Teilstrecken</translation>
    </message>
    <message>
        <source>A track of another time is refused: its clock was wrong, or the numbers of the legs were not made for it.</source>
        <translation>Ein Track aus einer anderen Zeit wird zurückgewiesen: Seine Uhr ging falsch, oder die Zahlen der Teilstrecken wurden nicht für ihn gemacht.</translation>
    </message>
    <message>
        <source>Tracks read</source>
        <translation>Gelesene Tracks</translation>
    </message>
    <message>
        <source>Tracks compared</source>
        <translation>Verglichene Tracks</translation>
    </message>
    <message>
        <source>%1: track “%2” (%3) %4 Left out.</source>
        <translation>%1: Track „%2“ (%3) %4 Weggelassen.</translation>
    </message>
    <message>
        <source>is said to be of route “%1”, which is not among the legs.</source>
        <translation>soll zur Route „%1“ gehören, die nicht unter den Teilstrecken ist.</translation>
    </message>
    <message>
        <source>was recorded on %1, but its legs are made for %2. Was its clock set? If both are right, give a larger %3.</source>
        <translation>wurde am %1 aufgezeichnet, aber seine Teilstrecken sind für %2 gemacht. War seine Uhr gestellt? Wenn beides stimmt, geben Sie ein größeres %3 an.</translation>
    </message>
    <message>
        <source>Track “%1”: left out %2.</source>
        <translation>Track „%1“: weggelassen: %2.</translation>
    </message>
    <message>
        <source>Track “%1” fits route “%2” as well as “%3”; taken for the latter. Name its route to be sure.</source>
        <translation>Track „%1“ passt zur Route „%2“ so gut wie zu „%3“; der letzteren zugerechnet. Nennen Sie seine Route, um sicher zu sein.</translation>
    </message>
    <message>
        <source>No track could be compared.</source>
        <translation>Kein Track ließ sich vergleichen.</translation>
    </message>
    <message numerus="yes">
        <source>%n track(s) left out in all.</source>
        <translation>
            <numerusform>Insgesamt %n Track weggelassen.</numerusform>
            <numerusform>Insgesamt %n Tracks weggelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: there is no track in layer “%2”. Of a GPX file take the layer track_points.</source>
        <translation>%1: Im Layer „%2“ ist kein Track. Von einer GPX-Datei nehmen Sie den Layer track_points.</translation>
    </message>
</context>
<context>
    <name>brushline::CompassParameters</name>
    <message>
        <source>Magnetic north</source>
        <translation>Magnetisch Nord</translation>
    </message>
    <message>
        <source>True north (compass set off for declination)</source>
        <translation>Geographisch Nord (Deklination am Kompass eingestellt)</translation>
    </message>
    <message>
        <source>Grid north</source>
        <translation>Gitternord</translation>
    </message>
    <message>
        <source>Degrees (360)</source>
        <translation>Grad (360)</translation>
    </message>
    <message>
        <source>Mils (6400)</source>
        <translation>Strich (6400 mil)</translation>
    </message>
    <message>
        <source>Gon (400)</source>
        <translation>Gon (400)</translation>
    </message>
    <message>
        <source>North the dial is set for</source>
        <translation>Nordrichtung, für die die Marschzahlen gelten</translation>
    </message>
    <message>
        <source>The north that the numbers for the dial are counted from. Magnetic for a plain compass; true for one whose needle house has been set off for declination; grid for working with map grid bearings only.</source>
        <translation>Die Nordrichtung, von der aus die Marschzahlen gezählt werden. Magnetisch für einen einfachen Kompass; geographisch für einen, an dessen Kompassdose die Deklination eingestellt ist; Gitter nur, wenn mit Gitterrichtungen der Karte gearbeitet wird.</translation>
    </message>
    <message>
        <source>Unit of the dial</source>
        <translation>Einheit des Skalenrings</translation>
    </message>
    <message>
        <source>What the dial of the compass is divided in.</source>
        <translation>Worin der Skalenring des Kompasses geteilt ist.</translation>
    </message>
    <message>
        <source>Graduation of the dial, in its unit</source>
        <translation>Teilung des Skalenrings, in seiner Einheit</translation>
    </message>
    <message>
        <source>Numbers for the dial are rounded to a multiple of this, since nobody can set it finer.</source>
        <translation>Marschzahlen werden auf ein Vielfaches davon gerundet, da niemand feiner einstellen kann.</translation>
    </message>
    <message>
        <source>Error of one sighting (degrees, 1 sigma)</source>
        <translation>Fehler einer einzelnen Peilung (Grad, 1 Sigma)</translation>
    </message>
    <message>
        <source>How far a single sighting strays, as a standard deviation in degrees. 3 is usual for a baseplate compass in a grown hand, 5 or more for children.</source>
        <translation>Wie weit eine einzelne Peilung danebenliegt, als Standardabweichung in Grad. 3 ist üblich für einen Plattenkompass in der Hand Erwachsener, 5 oder mehr für Kinder.</translation>
    </message>
    <message>
        <source>%1 (%2) is %3, an eighth of the circle is %4: give the graduation printed on the dial, in the dial&apos;s unit.</source>
        <translation>%1 (%2) ist %3, ein Achtel des Kreises ist %4: Geben Sie die Teilung an, die auf den Skalenring gedruckt ist, in der Einheit des Skalenrings.</translation>
    </message>
</context>
<context>
    <name>brushline::CourseMap</name>
    <message>
        <source>INPUT: the legs of route “%1” cannot be brought into the projection %2 of a map. Are its coordinates right?</source>
        <translation>INPUT: Die Teilstrecken der Route „%1“ lassen sich nicht in die Projektion %2 einer Karte bringen. Stimmen die Koordinaten?</translation>
    </message>
</context>
<context>
    <name>brushline::Courses</name>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Teilstrecken</translation>
    </message>
    <message>
        <source>%1 end</source>
        <translation>%1 Ende</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
</context>
<context>
    <name>brushline::CoverParameters</name>
    <message>
        <source>%1: layer “%2” has no field “class”: give the field that holds the classes.</source>
        <translation>%1: Layer „%2“ hat kein Feld „class“: Geben Sie das Feld mit den Klassen an.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no column “%3”. It needs class and sight_m, and may have sight_bare, speed_f, pace_f and note.</source>
        <translation>%1: Tabelle „%2“ hat keine Spalte „%3“. Sie braucht class und sight_m und darf sight_bare, speed_f, pace_f und note haben.</translation>
    </message>
    <message>
        <source>%1: table “%2”, class “%3”: %4 is “%5”; give a number from %6 to %7, with a decimal point.</source>
        <translation>%1: Tabelle „%2“, Klasse „%3“: %4 ist „%5“; geben Sie eine Zahl von %6 bis %7 an, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <source>%1: table “%2”, class “%3” has no sight_m. Give the distance in metres at which half the marks are still clear.</source>
        <translation>%1: Tabelle „%2“, Klasse „%3“ hat kein sight_m. Geben Sie die Entfernung in Metern an, auf die die Hälfte der Marken noch klar zu sehen ist.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: %4. Give each class one row with its name.</source>
        <translation>%1: Tabelle „%2“, Objekt %3: %4. Geben Sie jeder Klasse eine Zeile mit ihrem Namen.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no classes.</source>
        <translation>%1: Tabelle „%2“ hat keine Klassen.</translation>
    </message>
    <message>
        <source>%1 (%2 m) is more than %3 (%4 m): give a least spacing below the most.</source>
        <translation>%1 (%2 m) ist mehr als %3 (%4 m): Geben Sie einen kleinsten Abstand an, der unter dem größten liegt.</translation>
    </message>
    <message>
        <source>Brushline&apos;s own names</source>
        <translation>Eigene Namen von Brushline</translation>
    </message>
    <message>
        <source>ESA WorldCover codes</source>
        <translation>Codes von ESA WorldCover</translation>
    </message>
    <message>
        <source>CORINE level 3 codes</source>
        <translation>Codes von CORINE, Ebene 3</translation>
    </message>
    <message>
        <source>NLCD codes</source>
        <translation>Codes der NLCD</translation>
    </message>
    <message>
        <source>Orienteering map symbol numbers (ISOM 2017-2)</source>
        <translation>Symbolnummern von Orientierungslaufkarten (ISOM 2017-2)</translation>
    </message>
    <message>
        <source>In leaf</source>
        <translation>Belaubt</translation>
    </message>
    <message>
        <source>Bare</source>
        <translation>Unbelaubt</translation>
    </message>
    <message>
        <source>Cover (polygons)</source>
        <translation>Bewuchs (Polygone)</translation>
    </message>
    <message>
        <source>What stands on the ground: open, wood, brush, thicket. Where polygons overlap, the first in the layer counts.</source>
        <translation>Was auf dem Boden steht: offen, Wald, Gestrüpp, Dickicht. Wo sich Polygone überlappen, zählt das erste im Layer.</translation>
    </message>
    <message>
        <source>Field with the class of cover</source>
        <translation>Feld mit der Bewuchsklasse</translation>
    </message>
    <message>
        <source>Empty: the field called “class”.</source>
        <translation>Leer: das Feld „class“.</translation>
    </message>
    <message>
        <source>Cover raster (class codes)</source>
        <translation>Bewuchsraster (Klassencodes)</translation>
    </message>
    <message>
        <source>Land cover as whole numbers, looked up in the cover table; used where no polygon lies.</source>
        <translation>Bodenbedeckung als ganze Zahlen, die in der Bewuchstabelle nachgeschlagen werden; gilt, wo kein Polygon liegt.</translation>
    </message>
    <message>
        <source>Names or codes of the classes</source>
        <translation>Namen oder Codes der Klassen</translation>
    </message>
    <message>
        <source>The built-in table that the classes are looked up in, unless a table of your own is given.</source>
        <translation>Die eingebaute Tabelle, in der die Klassen nachgeschlagen werden, wenn keine eigene Tabelle angegeben ist.</translation>
    </message>
    <message>
        <source>Cover table of your own</source>
        <translation>Eigene Bewuchstabelle</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Jahreszeit</translation>
    </message>
    <message>
        <source>Whether the leaves are out. Bare uses sight_bare where the table has it.</source>
        <translation>Ob Laub an den Zweigen ist. Unbelaubt verwendet sight_bare, wo die Tabelle es hat.</translation>
    </message>
    <message>
        <source>Sight distance raster (m)</source>
        <translation>Raster der Sichtweite (m)</translation>
    </message>
    <message>
        <source>Metres at which half the marks are still clear. Takes precedence over the cover where it has data.</source>
        <translation>Meter, auf die die Hälfte der Marken noch klar zu sehen ist. Hat Vorrang vor dem Bewuchs, wo es Daten hat.</translation>
    </message>
    <message>
        <source>Chance of a clear sight that a mark needs</source>
        <translation>Wahrscheinlichkeit klarer Sicht, die eine Marke braucht</translation>
    </message>
    <message>
        <source>A mark is used up to the distance at which it is clear with this probability; 0.5 is the table&apos;s own sight distance.</source>
        <translation>Eine Marke wird bis zu der Entfernung benutzt, auf die sie mit dieser Wahrscheinlichkeit klar zu sehen ist; 0,5 ist die Sichtweite der Tabelle selbst.</translation>
    </message>
    <message>
        <source>Share of the sight distance used</source>
        <translation>Genutzter Anteil der Sichtweite</translation>
    </message>
    <message>
        <source>The next mark lies at this share of the sight distance.</source>
        <translation>Die nächste Marke liegt bei diesem Anteil der Sichtweite.</translation>
    </message>
    <message>
        <source>Least spacing of marks (m)</source>
        <translation>Kleinster Abstand der Marken (m)</translation>
    </message>
    <message>
        <source>Marks lie no nearer together than this, in metres, even where it cannot be seen; the leg&apos;s warnings then say so.</source>
        <translation>Näher als so viele Meter liegen Marken nicht beieinander, auch wo die nächste nicht zu sehen ist; die Warnungen der Teilstrecke sagen es dann.</translation>
    </message>
    <message>
        <source>Most spacing of marks (m)</source>
        <translation>Größter Abstand der Marken (m)</translation>
    </message>
    <message>
        <source>Marks lie no farther apart than this, in metres.</source>
        <translation>Weiter als so viele Meter liegen Marken nicht auseinander.</translation>
    </message>
    <message>
        <source>%1: codes that the cover table lacks: %2. Nothing is known of the cover there. Give them in %3, or choose the %4 they belong to.</source>
        <translation>%1: Codes, die in der Bewuchstabelle fehlen: %2. Vom Bewuchs dort ist nichts bekannt. Geben Sie sie in %3 an oder wählen Sie bei %4 das Verzeichnis, zu dem sie gehören.</translation>
    </message>
    <message>
        <source>%1: has values of 0 or less; they were taken for places without data.</source>
        <translation>%1: enthält Werte von 0 oder weniger; solche Stellen gelten als Stellen ohne Daten.</translation>
    </message>
    <message>
        <source>Speed factor where no cover is known</source>
        <translation>Geschwindigkeitsfaktor, wo kein Bewuchs bekannt ist</translation>
    </message>
    <message>
        <source>Where a cover is given but says nothing. 1: as without a map of the cover; nobody has looked there whether there is water or thicket. 0: nobody is sent there.</source>
        <translation>Wo Bewuchs angegeben ist, aber nichts sagt. 1: wie ohne Karte des Bewuchses; niemand hat dort nachgesehen, ob da Wasser oder Dickicht ist. 0: Niemand wird hingeschickt.</translation>
    </message>
    <message numerus="yes">
        <source>%n leg(s) lead over ground without known cover, %1 m in all: nobody has looked whether there is water or thicket. Look at it before anybody walks there; with %2=0 no leg leads over such ground.</source>
        <translation>
            <numerusform>%n Teilstrecke führt über Gelände ohne bekannten Bewuchs, insgesamt %1 m: Niemand hat nachgesehen, ob da Wasser oder Dickicht ist. Sehen Sie es sich an, bevor jemand dort geht; mit %2=0 führt keine Teilstrecke über solches Gelände.</numerusform>
            <numerusform>%n Teilstrecken führen über Gelände ohne bekannten Bewuchs, insgesamt %1 m: Niemand hat nachgesehen, ob da Wasser oder Dickicht ist. Sehen Sie es sich an, bevor jemand dort geht; mit %2=0 führt keine Teilstrecke über solches Gelände.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has classes that the cover table lacks: %3. These polygons are passed over, and what else is given of the cover there counts. Give them in %4, or choose the %5 they belong to.</source>
        <translation>%1: Layer „%2“ hat Klassen, die in der Bewuchstabelle fehlen: %3. Diese Polygone werden übergangen; es gilt, was sonst über den Bewuchs dort angegeben ist. Geben Sie sie in %4 an oder wählen Sie bei %5 das Verzeichnis, zu dem sie gehören.</translation>
    </message>
    <message>
        <source>Columns: class, sight_m (metres at which half the marks are still clear), and if you like sight_bare (the same when the leaves are off), speed_f (1 is the speed off trails, 0 or empty where nobody walks), pace_f (of the number of paces), note. Measure your own: walk away from a mark until half of it is gone.</source>
        <translation>Spalten: class, sight_m (Meter, auf die die Hälfte der Marken noch klar zu sehen ist) und, wenn Sie wollen, sight_bare (dasselbe ohne Laub), speed_f (1 ist die Geschwindigkeit abseits von Wegen, 0 oder leer, wo niemand geht), pace_f (für die Anzahl der Schritte), note. Messen Sie selbst: Gehen Sie von einer Marke weg, bis die Hälfte von ihr verschwunden ist.</translation>
    </message>
</context>
<context>
    <name>brushline::CoverPatches</name>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” without a usable geometry passed over.</source>
        <translation>
            <numerusform>%1: %n Polygon des Layers „%2“ ohne brauchbare Geometrie übergangen.</numerusform>
            <numerusform>%1: %n Polygone des Layers „%2“ ohne brauchbare Geometrie übergangen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</source>
        <translation>
            <numerusform>%1: %n Polygon des Layers „%2“ ist nicht gültig (es kreuzt oder berührt sich selbst). Was eine ungerade Anzahl Male umschlossen ist, zählt als innen. Bessern Sie es mit „Geometrien reparieren“ aus.</numerusform>
            <numerusform>%1: %n Polygone des Layers „%2“ sind nicht gültig (sie kreuzen oder berühren sich selbst). Was eine ungerade Anzahl Male umschlossen ist, zählt als innen. Bessern Sie sie mit „Geometrien reparieren“ aus.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::DateAndFieldParameters</name>
    <message>
        <source>Declination read off a map (degrees, east positive)</source>
        <translation>Von einer Karte abgelesene Deklination (Grad, Ost positiv)</translation>
    </message>
    <message>
        <source>Day of the walk (today when empty)</source>
        <translation>Tag, an dem gegangen wird (leer: heute)</translation>
    </message>
    <message>
        <source>Magnetic north moves; the bearings are good for this day. Year-month-day. The built-in World Magnetic Model 2025 knows the years 2025 to 2029.</source>
        <translation>Magnetisch Nord wandert; die Richtungen gelten für diesen Tag. Jahr-Monat-Tag. Das eingebaute World Magnetic Model 2025 kennt die Jahre 2025 bis 2029.</translation>
    </message>
    <message>
        <source>The bearing of magnetic north from true north: east positive, west negative. Replaces the model&apos;s value everywhere. Its error is not known, so none is given.</source>
        <translation>Die Richtung von magnetisch Nord gegenüber geographisch Nord: Ost positiv, West negativ. Ersetzt überall den Wert des Modells. Ihr Fehler ist nicht bekannt, also wird keiner angegeben.</translation>
    </message>
    <message>
        <source>Magnetic model installed for GeographicLib</source>
        <translation>Für GeographicLib installiertes Magnetfeldmodell</translation>
    </message>
    <message>
        <source>Name of a magnetic model in GeographicLib&apos;s folder on this machine, for example igrf14, for years or places where the built-in one does not serve. Empty: the built-in World Magnetic Model 2025.</source>
        <translation>Name eines Magnetfeldmodells im Ordner von GeographicLib auf diesem Rechner, zum Beispiel igrf14, für Jahre oder Orte, für die das eingebaute nicht taugt. Leer: das eingebaute World Magnetic Model 2025.</translation>
    </message>
    <message>
        <source>%1: %2 is outside the years of the magnetic model %3 (%4 to %5). Give %6, the declination printed on a map of those years, or %7, the name of an installed model that reaches that day.</source>
        <translation>%1: %2 liegt außerhalb der Jahre des Magnetfeldmodells %3 (%4 bis %5). Geben Sie %6 an, die auf einer Karte jener Jahre gedruckte Deklination, oder %7, den Namen eines installierten Modells, das bis zu diesem Tag reicht.</translation>
    </message>
    <message>
        <source>%1: no magnetic model “%2” can be read on this machine (%3). Install it for GeographicLib, or leave %1 empty for the built-in World Magnetic Model 2025.</source>
        <translation>%1: Auf diesem Rechner lässt sich kein Magnetfeldmodell „%2“ lesen (%3). Installieren Sie es für GeographicLib oder lassen Sie %1 leer für das eingebaute World Magnetic Model 2025.</translation>
    </message>
</context>
<context>
    <name>brushline::DetourLegsAlgorithm</name>
    <message>
        <source>Detour round obstacles</source>
        <translation>Hindernisse umgehen</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>obstacle,detour,bypass,box,right angle,pond,thicket,leg,route,compass,paces</source>
        <translation>Hindernis,Umgehung,Umweg,rechter Winkel,Teich,Dickicht,Teilstrecke,Route,Kompass,Schritte</translation>
    </message>
    <message>
        <source>Leads legs round ponds and thickets on three sides at right angles, with dial and paces for each piece and the count to go on with.</source>
        <translation>Führt Teilstrecken auf drei Seiten im rechten Winkel um Teiche und Dickichte herum, mit Marschzahl und Schritten für jedes Stück und der Zahl, mit der man weiterzählt.</translation>
    </message>
    <message>
        <source>Detours</source>
        <translation>Umgehungen</translation>
    </message>
    <message>
        <source>Obstacles in the way, not gone round</source>
        <translation>Hindernisse im Weg, die nicht umgangen werden</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>hat keine zwei auseinanderliegenden Stützpunkte, also keine Teilstrecke.</translation>
    </message>
</context>
<context>
    <name>brushline::DetourParameters</name>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” cross themselves or have parts that overlap, so what is inside them is not certain and a leg may lead through. Mend the layer with “Fix geometries” first.</source>
        <translation>
            <numerusform>%1: %n Polygon des Layers „%2“ kreuzt sich selbst oder hat Teile, die sich überlappen; was darin liegt, ist daher nicht sicher, und eine Teilstrecke kann hindurchführen. Bessern Sie den Layer zuerst mit „Geometrien reparieren“ aus.</numerusform>
            <numerusform>%1: %n Polygone des Layers „%2“ kreuzen sich selbst oder haben Teile, die sich überlappen; was darin liegt, ist daher nicht sicher, und eine Teilstrecke kann hindurchführen. Bessern Sie den Layer zuerst mit „Geometrien reparieren“ aus.</numerusform>
        </translation>
    </message>
    <message>
        <source>Obstacles (polygons)</source>
        <translation>Hindernisse (Polygone)</translation>
    </message>
    <message>
        <source>Ponds, thickets, fenced land: what nobody walks through.</source>
        <translation>Teiche, Dickichte, eingezäuntes Land: wo niemand hindurchgeht.</translation>
    </message>
    <message>
        <source>Field with the obstacle&apos;s name</source>
        <translation>Feld mit dem Namen des Hindernisses</translation>
    </message>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Leer: das Feld „name“, falls es eines gibt.</translation>
    </message>
    <message>
        <source>Clearance from obstacles (m)</source>
        <translation>Abstand von Hindernissen (m)</translation>
    </message>
    <message>
        <source>How far every piece keeps away from them. With 0 it may touch them.</source>
        <translation>Wie weit jedes Stück von ihnen wegbleibt. Bei 0 darf es sie berühren.</translation>
    </message>
    <message>
        <source>Farthest out (m)</source>
        <translation>Wie weit höchstens nach außen (m)</translation>
    </message>
    <message>
        <source>An obstacle that takes a longer way out on both sides is not gone round, but told.</source>
        <translation>Ein Hindernis, das auf beiden Seiten einen längeren Weg nach außen verlangt, wird nicht umgangen, sondern gemeldet.</translation>
    </message>
    <message>
        <source>%1: give a layer with polygons.</source>
        <translation>%1: Geben Sie einen Layer mit Polygonen an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons. Buffer lines or points first.</source>
        <translation>%1: Layer „%2“ hat keine Polygone. Puffern Sie Linien oder Punkte zuerst.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons, so nothing is gone round.</source>
        <translation>%1: Layer „%2“ hat keine Polygone, es wird also nichts umgangen.</translation>
    </message>
</context>
<context>
    <name>brushline::DetourWriter</name>
    <message>
        <source>Legs with detours</source>
        <translation>Teilstrecken mit Umgehungen</translation>
    </message>
    <message>
        <source>obstacle %1</source>
        <translation>Hindernis %1</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>an obstacle</source>
        <translation>ein Hindernis</translation>
    </message>
    <message>
        <source>the way out would be longer than %1 m</source>
        <translation>der Weg nach außen wäre länger als %1 m</translation>
    </message>
    <message>
        <source>there is no room before it to turn off</source>
        <translation>davor ist kein Platz zum Abbiegen</translation>
    </message>
    <message>
        <source>there is no room after it to come back before the leg ends</source>
        <translation>dahinter ist kein Platz zum Zurückkommen, bevor die Teilstrecke endet</translation>
    </message>
    <message>
        <source>NOT PASSED: %1, from %2 m to %3 m of this leg.</source>
        <translation>NICHT UMGANGEN: %1, von %2 m bis %3 m dieser Teilstrecke.</translation>
    </message>
    <message>
        <source>move the turning point.</source>
        <translation>den Knickpunkt verschieben.</translation>
    </message>
    <message>
        <source>move the start.</source>
        <translation>den Start verschieben.</translation>
    </message>
    <message>
        <source>The leg starts inside it: %1</source>
        <translation>Die Teilstrecke beginnt darin: %1</translation>
    </message>
    <message>
        <source>The leg starts nearer to it than %1 m: %2</source>
        <translation>Die Teilstrecke beginnt näher daran als %1 m: %2</translation>
    </message>
    <message>
        <source>move the end.</source>
        <translation>das Ende verschieben.</translation>
    </message>
    <message>
        <source>The leg ends inside it: %1</source>
        <translation>Die Teilstrecke endet darin: %1</translation>
    </message>
    <message>
        <source>The leg ends nearer to it than %1 m: %2</source>
        <translation>Die Teilstrecke endet näher daran als %1 m: %2</translation>
    </message>
    <message>
        <source>On both sides %1.</source>
        <translation>Auf beiden Seiten gilt: %1.</translation>
    </message>
    <message>
        <source>On the left %1; on the right %2.</source>
        <translation>Links gilt: %1; rechts: %2.</translation>
    </message>
    <message>
        <source>Route “%1”, leg %2: %3</source>
        <translation>Route „%1“, Teilstrecke %2: %3</translation>
    </message>
    <message>
        <source>Legs: %1; detours: %2.</source>
        <translation>Teilstrecken: %1; Umgehungen: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n obstacle(s) in the way are NOT gone round: see the field “warnings”.</source>
        <translation>
            <numerusform>%n Hindernis im Weg wird NICHT umgangen: siehe das Feld „warnings“.</numerusform>
            <numerusform>%n Hindernisse im Weg werden NICHT umgangen: siehe das Feld „warnings“.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ExportGpxAlgorithm</name>
    <message>
        <source>The environment variable SOURCE_DATE_EPOCH is “%1”, which is no count of seconds since 1970. Correct or unset it.</source>
        <translation>Die Umgebungsvariable SOURCE_DATE_EPOCH ist „%1“; das ist keine Anzahl von Sekunden seit 1970. Berichtigen Sie sie oder heben Sie sie auf.</translation>
    </message>
    <message>
        <source>Export legs to GPX</source>
        <translation>Teilstrecken als GPX ausgeben</translation>
    </message>
    <message>
        <source>Handouts</source>
        <translation>Zum Mitgeben</translation>
    </message>
    <message>
        <source>gpx,gps,receiver,handheld,route,waypoint,leg,bearing,paces,compass,export,phone</source>
        <translation>GPX,GPS,Empfänger,Handgerät,Route,Wegpunkt,Teilstrecke,Richtung,Schritte,Kompass,Export,Telefon</translation>
    </message>
    <message>
        <source>Writes annotated legs as routes, and their marks as waypoints, for a GPS receiver or a phone: each point tells the number for the dial and the paces of the leg that starts there.</source>
        <translation>Schreibt berechnete Teilstrecken als Routen und ihre Marken als Wegpunkte, für einen GPS-Empfänger oder ein Telefon: Jeder Punkt nennt die Marschzahl und die Schritte der Teilstrecke, die dort beginnt.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>The file&apos;s name for itself. Empty: the route&apos;s name, if there is one route.</source>
        <translation>Der Name der Datei in ihr selbst. Leer: der Name der Route, wenn es nur eine Route gibt.</translation>
    </message>
    <message>
        <source>One route for all walkers</source>
        <translation>Eine Route für alle Geher</translation>
    </message>
    <message>
        <source>Off: a route for each walker. On: one for all, whose points tell everybody&apos;s paces.</source>
        <translation>Aus: eine Route für jeden Geher. Ein: eine für alle, deren Punkte die Schritte eines jeden nennen.</translation>
    </message>
    <message>
        <source>GPX file</source>
        <translation>GPX-Datei</translation>
    </message>
    <message>
        <source>GPX files (*.gpx)</source>
        <translation>GPX-Dateien (*.gpx)</translation>
    </message>
    <message>
        <source>Appears whole or not at all.</source>
        <translation>Entsteht ganz oder gar nicht.</translation>
    </message>
    <message>
        <source>Routes</source>
        <translation>Routen</translation>
    </message>
    <message>
        <source>Points of routes</source>
        <translation>Punkte der Routen</translation>
    </message>
    <message>
        <source>Waypoints (marks)</source>
        <translation>Wegpunkte (Marken)</translation>
    </message>
    <message>
        <source>%1: “%2” does not end in .gpx; receivers look at the ending and may pass it over.</source>
        <translation>%1: „%2“ endet nicht auf .gpx; Empfänger achten auf die Endung und übergehen die Datei vielleicht.</translation>
    </message>
    <message>
        <source>Routes: %1; points in them: %2; waypoints: %3.</source>
        <translation>Routen: %1; Punkte darin: %2; Wegpunkte: %3.</translation>
    </message>
</context>
<context>
    <name>brushline::Expressions</name>
    <message>
        <source>%1 is “%2”: give a number, with a decimal point.</source>
        <translation>%1 ist „%2“: Geben Sie eine Zahl an, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <source>%1 is %2: give a number from %3 to %4.</source>
        <translation>%1 ist %2: Geben Sie eine Zahl von %3 bis %4 an.</translation>
    </message>
    <message>
        <source>The date is “%1”: give a date, or year-month-day as text, for example &apos;2026-05-31&apos;.</source>
        <translation>Das Datum ist „%1“: Geben Sie ein Datum an oder Jahr-Monat-Tag als Text, zum Beispiel &apos;2026-05-31&apos;.</translation>
    </message>
    <message>
        <source>There is no layer or project here whose coordinate reference system could be taken: give one, for example crs:=&apos;EPSG:4326&apos;.</source>
        <translation>Hier ist kein Layer und kein Projekt, dessen Koordinatenbezugssystem genommen werden könnte: Geben Sie eines an, zum Beispiel crs:=&apos;EPSG:4326&apos;.</translation>
    </message>
    <message>
        <source>“%1” is no coordinate reference system that this machine knows: give one as text, for example &apos;EPSG:32621&apos;.</source>
        <translation>„%1“ ist kein Koordinatenbezugssystem, das dieser Rechner kennt: Geben Sie eines als Text an, zum Beispiel &apos;EPSG:32621&apos;.</translation>
    </message>
    <message>
        <source>%1, %2 in %3 is no place on the Earth: give the coordinate reference system of these coordinates, for example crs:=&apos;EPSG:4326&apos;.</source>
        <translation>%1, %2 in %3 ist kein Ort auf der Erde: Geben Sie das Koordinatenbezugssystem dieser Koordinaten an, zum Beispiel crs:=&apos;EPSG:4326&apos;.</translation>
    </message>
    <message>
        <source>The point&apos;s height (Z) of %1 m is beyond -1000 to 850 000 m, where the magnetic model ends.</source>
        <translation>Die Höhe des Punktes (Z) von %1 m liegt außerhalb von -1000 bis 850 000 m, wo das Magnetfeldmodell endet.</translation>
    </message>
    <message>
        <source>%1 is outside the years of the magnetic model %2 (%3 to %4): give a date within them.</source>
        <translation>%1 liegt außerhalb der Jahre des Magnetfeldmodells %2 (%3 bis %4): Geben Sie ein Datum innerhalb davon an.</translation>
    </message>
    <message>
        <source>The place is “%1”: give a geometry, or x and y.</source>
        <translation>Der Ort ist „%1“: Geben Sie eine Geometrie an oder x und y.</translation>
    </message>
    <message>
        <source>x</source>
        <translation>x</translation>
    </message>
    <message>
        <source>y</source>
        <translation>y</translation>
    </message>
    <message>
        <source>The bearing</source>
        <translation>Die Richtung</translation>
    </message>
    <message>
        <source>The place is “%1”: give a geometry, for example $geometry.</source>
        <translation>Der Ort ist „%1“: Geben Sie eine Geometrie an, zum Beispiel $geometry.</translation>
    </message>
    <message>
        <source>The dial&apos;s graduation</source>
        <translation>Die Teilung des Skalenrings</translation>
    </message>
    <message>
        <source>The distance in metres</source>
        <translation>Die Länge in Metern</translation>
    </message>
    <message>
        <source>The number of steps over 100 m</source>
        <translation>Die Anzahl der Schritte auf 100 m</translation>
    </message>
    <message>
        <source>Arguments</source>
        <translation>Argumente</translation>
    </message>
    <message>
        <source>Examples</source>
        <translation>Beispiele</translation>
    </message>
    <message>
        <source>&lt;b&gt;geometry&lt;/b&gt;: a point; of a line its first vertex is taken, of anything else the centroid. A point&apos;s own Z counts as its height (m).</source>
        <translation>&lt;b&gt;geometry&lt;/b&gt;: ein Punkt; von einer Linie wird der erste Stützpunkt genommen, von allem anderen der Schwerpunkt. Das eigene Z eines Punktes gilt als seine Höhe (m).</translation>
    </message>
    <message>
        <source>&lt;b&gt;crs&lt;/b&gt;: the system of the coordinates, for example &apos;EPSG:4326&apos;; left out: the layer&apos;s, without a layer the project&apos;s. In a layout&apos;s label give it.</source>
        <translation>&lt;b&gt;crs&lt;/b&gt;: das System der Koordinaten, zum Beispiel &apos;EPSG:4326&apos;; weggelassen: das des Layers, ohne Layer das des Projekts. In der Beschriftung eines Layouts geben Sie es an.</translation>
    </message>
    <message>
        <source>&lt;b&gt;date&lt;/b&gt;: a date, or year-month-day as text; left out: today. The built-in World Magnetic Model 2025 knows the years 2025 to 2029.</source>
        <translation>&lt;b&gt;date&lt;/b&gt;: ein Datum oder Jahr-Monat-Tag als Text; weggelassen: heute. Das eingebaute World Magnetic Model 2025 kennt die Jahre 2025 bis 2029.</translation>
    </message>
    <message>
        <source>NULL where no compass can be used, near the magnetic poles. Iron and electric current draw a needle off, and no model knows of them: check by the back bearing.</source>
        <translation>NULL, wo kein Kompass brauchbar ist, nahe an den Magnetpolen. Eisen und elektrischer Strom lenken eine Nadel ab, und kein Modell weiß davon: durch die Gegenrichtung prüfen.</translation>
    </message>
    <message>
        <source>The magnetic declination: the bearing of magnetic north from true north in degrees, east positive.</source>
        <translation>Die magnetische Deklination: die Richtung von magnetisch Nord gegenüber geographisch Nord in Grad, Ost positiv.</translation>
    </message>
    <message>
        <source>&lt;b&gt;x, y&lt;/b&gt;: coordinates instead; longitude first where they are degrees.</source>
        <translation>&lt;b&gt;x, y&lt;/b&gt;: stattdessen Koordinaten; die Länge zuerst, wo es Grad sind.</translation>
    </message>
    <message>
        <source>The number to set on a compass&apos;s dial, in degrees: the bearing from magnetic north, rounded to the dial&apos;s graduation.</source>
        <translation>Die Zahl, die am Skalenring eines Kompasses einzustellen ist (Marschzahl), in Grad: die Richtung ab magnetisch Nord, auf die Teilung des Skalenrings gerundet.</translation>
    </message>
    <message>
        <source>&lt;b&gt;true_bearing&lt;/b&gt;: degrees clockwise from true north, as the field true_brg has it. A bearing from grid north is another.</source>
        <translation>&lt;b&gt;true_bearing&lt;/b&gt;: Grad im Uhrzeigersinn ab geographisch Nord, wie sie im Feld true_brg stehen. Eine Richtung ab Gitternord ist eine andere.</translation>
    </message>
    <message>
        <source>The nearest of the sixteen points of the compass, as text: N, NNE, NE … NNW.</source>
        <translation>Die nächste der sechzehn Himmelsrichtungen, als Text: N, NNE, NE … NNW.</translation>
    </message>
    <message>
        <source>The single steps to count over a distance on level ground, as a whole number. One who counts every second step counts half of it. Slopes and brush take more.</source>
        <translation>Die Einzelschritte, die über eine Länge in der Ebene zu zählen sind, als ganze Zahl. Wer jeden zweiten Schritt zählt, zählt die Hälfte davon. Hänge und Gestrüpp verlangen mehr.</translation>
    </message>
    <message>
        <source>&lt;b&gt;metres&lt;/b&gt;: the distance.</source>
        <translation>&lt;b&gt;metres&lt;/b&gt;: die Länge.</translation>
    </message>
    <message>
        <source>&lt;b&gt;paces_per_100m&lt;/b&gt;: single steps the walker takes over 100 m, from 20 to 1000.</source>
        <translation>&lt;b&gt;paces_per_100m&lt;/b&gt;: Einzelschritte, die der Geher auf 100 m macht, von 20 bis 1000.</translation>
    </message>
    <message>
        <source>&lt;b&gt;step&lt;/b&gt;: the dial&apos;s graduation in degrees, from 0.01 to 45; left out: 2.</source>
        <translation>&lt;b&gt;step&lt;/b&gt;: Teilung des Skalenrings in Grad, von 0,01 bis 45; weggelassen: 2.</translation>
    </message>
    <message>
        <source>&lt;b&gt;bearing&lt;/b&gt;: degrees clockwise, any turn. The number of a dial in mils or gon is no such bearing: of a leg take the field compass_pt, or a bearing as in mag_brg.</source>
        <translation>&lt;b&gt;bearing&lt;/b&gt;: Grad im Uhrzeigersinn, beliebig viele Umläufe. Die Zahl eines Skalenrings in Mil oder Gon ist keine solche Richtung: Nehmen Sie das Feld compass_pt der Teilstrecke oder eine Richtung wie in mag_brg.</translation>
    </message>
</context>
<context>
    <name>brushline::FeaturesMetAlgorithm</name>
    <message>
        <source>Features met along legs</source>
        <translation>Objekte entlang der Teilstrecken</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>cross,pass,stream,trail,catching feature,handrail,slope,expect,leg,route</source>
        <translation>kreuzen,vorbei,Bach,Weg,Auffanglinie,Leitlinie,Hang,erwarten,Teilstrecke,Route</translation>
    </message>
    <message>
        <source>Tells what one crosses and passes along each leg, after how many paces and minutes, and what catches one who has gone too far.</source>
        <translation>Sagt, was man auf jeder Teilstrecke kreuzt und woran man vorbeikommt, nach wie vielen Schritten und Minuten, und was einen auffängt, der zu weit gegangen ist.</translation>
    </message>
    <message>
        <source>Features to meet</source>
        <translation>Objekte, auf die man treffen kann</translation>
    </message>
    <message>
        <source>Trails, streams, ponds, boulders: layers of points, lines or polygons.</source>
        <translation>Wege, Bäche, Teiche, Felsblöcke: Layer mit Punkten, Linien oder Polygonen.</translation>
    </message>
    <message>
        <source>How far to either side features are passed (m)</source>
        <translation>Bis wie weit seitlich Objekte gemeldet werden (m)</translation>
    </message>
    <message>
        <source>What lies farther off the line is not told; in metres. In thick cover take what can be seen.</source>
        <translation>Was weiter von der Linie weg liegt, wird nicht gemeldet; in Metern. In dichtem Bewuchs nehmen Sie, was man sehen kann.</translation>
    </message>
    <message>
        <source>How far beyond the leg&apos;s end to look (m)</source>
        <translation>Wie weit über das Ende der Teilstrecke hinaus gesucht wird (m)</translation>
    </message>
    <message>
        <source>The first line or area met there tells one who has gone too far; in metres.</source>
        <translation>Die erste Linie oder Fläche dort sagt einem, dass man zu weit gegangen ist; in Metern.</translation>
    </message>
    <message>
        <source>Features met</source>
        <translation>Angetroffene Objekte</translation>
    </message>
    <message>
        <source>the ground rises</source>
        <translation>das Gelände steigt an</translation>
    </message>
    <message>
        <source>the ground falls away</source>
        <translation>das Gelände fällt ab</translation>
    </message>
    <message>
        <source>the ground levels out</source>
        <translation>das Gelände wird flach</translation>
    </message>
    <message numerus="yes">
        <source>%n feature(s) met.</source>
        <translation>
            <numerusform>%n Objekt angetroffen.</numerusform>
            <numerusform>%n Objekte angetroffen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::FeaturesParameters</name>
    <message>
        <source>%1: “%2” is no layer with geometries. Give layers of points, lines or polygons.</source>
        <translation>%1: „%2“ ist kein Layer mit Geometrien. Geben Sie Layer mit Punkten, Linien oder Polygonen an.</translation>
    </message>
    <message>
        <source>%1 (%2): none of the layers can be read. Give layers of the project or paths of files.</source>
        <translation>%1 (%2): Keiner der Layer lässt sich lesen. Geben Sie Layer des Projekts oder Pfade von Dateien an.</translation>
    </message>
    <message>
        <source>Field with the features&apos; names</source>
        <translation>Feld mit den Namen der Objekte</translation>
    </message>
    <message>
        <source>Taken from each layer that has such a field; elsewhere the layer&apos;s name stands for it.</source>
        <translation>Wird aus jedem Layer genommen, der ein solches Feld hat; sonst steht der Name des Layers dafür.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no coordinate reference system. Set it in the layer&apos;s properties.</source>
        <translation>%1: Layer „%2“ hat kein Koordinatenbezugssystem. Setzen Sie es in den Eigenschaften des Layers.</translation>
    </message>
</context>
<context>
    <name>brushline::FieldAtPointsAlgorithm</name>
    <message>
        <source>Magnetic field at points</source>
        <translation>Magnetfeld an Punkten</translation>
    </message>
    <message>
        <source>Magnetics</source>
        <translation>Erdmagnetfeld</translation>
    </message>
    <message>
        <source>magnetic,declination,variation,inclination,dip,convergence,grid magnetic angle,compass,north,field,geomagnetic</source>
        <translation>magnetisch,Deklination,Missweisung,Inklination,Meridiankonvergenz,Nadelabweichung,Kompass,Nord,Feld,geomagnetisch</translation>
    </message>
    <message>
        <source>Gives each point the declination of its day and how it changes, the dip and strength of the field, the convergence of the grid and the angle between grid and magnetic north.</source>
        <translation>Gibt jedem Punkt die Deklination seines Tages und ihre Änderung, Inklination und Stärke des Feldes, die Meridiankonvergenz des Gitters und den Winkel zwischen Gitternord und magnetisch Nord.</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>A point&apos;s own height (Z, in metres above the sea) is allowed for; without one it is taken to lie at 0. A multipoint gives a row for each of its points.</source>
        <translation>Die eigene Höhe eines Punktes (Z, in Metern über dem Meer) wird berücksichtigt; ohne sie gilt 0. Ein Multipunkt gibt eine Zeile für jeden seiner Punkte.</translation>
    </message>
    <message>
        <source>Grid of the map (for the convergence)</source>
        <translation>Gitter der Karte (für die Meridiankonvergenz)</translation>
    </message>
    <message>
        <source>The projected system whose grid lines are printed on the map. Empty: the points&apos; own when it is projected, else each point&apos;s UTM zone.</source>
        <translation>Das projizierte System, dessen Gitterlinien auf die Karte gedruckt sind. Leer: das der Punkte, wenn es projiziert ist, sonst die UTM-Zone jedes Punktes.</translation>
    </message>
    <message>
        <source>%1 as %2</source>
        <translation>%1 als %2</translation>
    </message>
    <message>
        <source>%1: layer “%2” has fields of these names already, so the new ones are written under others: %3.</source>
        <translation>%1: Layer „%2“ hat schon Felder mit diesen Namen; die neuen werden daher unter anderen geschrieben: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s); model %1, day %2.</source>
        <translation>
            <numerusform>%n Zeile; Modell %1, Tag %2.</numerusform>
            <numerusform>%n Zeilen; Modell %1, Tag %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features.</source>
        <translation>%1: Layer „%2“ hat keine Objekte.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” without a usable place; their new fields are empty. They have no geometry, or coordinates that are no place on the Earth: is the layer&apos;s coordinate reference system the right one?</source>
        <translation>
            <numerusform>%1: %n Zeile des Layers „%2“ ohne brauchbaren Ort; ihre neuen Felder sind leer. Sie hat keine Geometrie oder Koordinaten, die kein Ort auf der Erde sind: Ist das Koordinatenbezugssystem des Layers das richtige?</numerusform>
            <numerusform>%1: %n Zeilen des Layers „%2“ ohne brauchbaren Ort; ihre neuen Felder sind leer. Sie haben keine Geometrie oder Koordinaten, die kein Ort auf der Erde sind: Ist das Koordinatenbezugssystem des Layers das richtige?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” with a height outside -1000 to 850 000 m, where the models end; their new fields are empty. Is their Z in metres?</source>
        <translation>
            <numerusform>%1: %n Zeile des Layers „%2“ mit einer Höhe außerhalb von -1000 bis 850 000 m, wo die Modelle enden; ihre neuen Felder sind leer. Ist ihr Z in Metern?</numerusform>
            <numerusform>%1: %n Zeilen des Layers „%2“ mit einer Höhe außerhalb von -1000 bis 850 000 m, wo die Modelle enden; ihre neuen Felder sind leer. Ist ihr Z in Metern?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) without a height of their own are taken to lie at 0 m.</source>
        <translation>
            <numerusform>Für %n Punkt ohne eigene Höhe gilt die Höhe 0 m.</numerusform>
            <numerusform>Für %n Punkte ohne eigene Höhe gilt die Höhe 0 m.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) lie where this grid does not reach; converg and grid_mag are empty. Give another grid.</source>
        <translation>
            <numerusform>%1: %n Punkt liegt dort, wohin dieses Gitter nicht reicht; converg und grid_mag sind leer. Geben Sie ein anderes Gitter an.</numerusform>
            <numerusform>%1: %n Punkte liegen dort, wohin dieses Gitter nicht reicht; converg und grid_mag sind leer. Geben Sie ein anderes Gitter an.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is outside the years of the model %2: decl is the declination given, zone is judged by the nearest day of the model, and incl, h_nt, f_nt and decl_year are empty.</source>
        <translation>%1 liegt außerhalb der Jahre des Modells %2: decl ist die angegebene Deklination, zone wird nach dem nächstliegenden Tag des Modells beurteilt, und incl, h_nt, f_nt und decl_year sind leer.</translation>
    </message>
    <message>
        <source>decl_err is empty: the error of a declination read off a map is not known.</source>
        <translation>decl_err ist leer: Der Fehler einer von einer Karte abgelesenen Deklination ist nicht bekannt.</translation>
    </message>
    <message>
        <source>decl_err is empty: no error of this model is known.</source>
        <translation>decl_err ist leer: Von diesem Modell ist kein Fehler bekannt.</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) where the field along the ground is under 6000 nT (zone “caution”): the needle is slow and easily drawn off.</source>
        <translation>
            <numerusform>%n Punkt, an dem das Feld parallel zum Boden unter 6000 nT liegt (zone „caution“): Die Nadel ist träge und leicht abzulenken.</numerusform>
            <numerusform>%n Punkte, an denen das Feld parallel zum Boden unter 6000 nT liegt (zone „caution“): Die Nadel ist träge und leicht abzulenken.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) where the field along the ground is under 2000 nT (zone “blackout”): no compass can be used there, whatever decl and grid_mag say.</source>
        <translation>
            <numerusform>%n Punkt, an dem das Feld parallel zum Boden unter 2000 nT liegt (zone „blackout“): Dort ist kein Kompass brauchbar, was immer decl und grid_mag sagen.</numerusform>
            <numerusform>%n Punkte, an denen das Feld parallel zum Boden unter 2000 nT liegt (zone „blackout“): Dort ist kein Kompass brauchbar, was immer decl und grid_mag sagen.</numerusform>
        </translation>
    </message>
    <message>
        <source>row %1 of layer “%2”</source>
        <translation>Zeile %1 des Layers „%2“</translation>
    </message>
</context>
<context>
    <name>brushline::GpxExport</name>
    <message>
        <source>ONE_ROUTE: the legs of route “%1” are not the same for all its walkers, so it is written as %2 routes.</source>
        <translation>ONE_ROUTE: Die Teilstrecken der Route „%1“ sind nicht für alle ihre Geher dieselben; sie wird daher als %2 Routen geschrieben.</translation>
    </message>
    <message>
        <source>Compass legs</source>
        <translation>Kompass-Teilstrecken</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>compass legs</source>
        <translation>Kompass-Teilstrecken</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>Teilstrecke</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>The route ends here, with leg %1.</source>
        <translation>Die Route endet hier, mit Teilstrecke %1.</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>End of leg %1, then a gap of %2 m</source>
        <translation>Ende von Teilstrecke %1, dann eine Lücke von %2 m</translation>
    </message>
    <message>
        <source>Leg %1 ends here. CAUTION: leg %2 starts %3 m away, at “%4”. Neither bearing nor paces are given for the way there.</source>
        <translation>Teilstrecke %1 endet hier. VORSICHT: Teilstrecke %2 beginnt %3 m entfernt, bei „%4“. Für den Weg dorthin sind weder Richtung noch Schritte angegeben.</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Lücke</translation>
    </message>
    <message>
        <source>From here the leg&apos;s start is sighted at %1.</source>
        <translation>Von hier wird der Anfang der Teilstrecke mit %1 angepeilt.</translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) held characters that no XML file can hold or nobody can read; “�” stands in their place.</source>
        <translation>
            <numerusform>%n Text enthielt Zeichen, die keine XML-Datei fassen oder niemand lesen kann; „�“ steht an ihrer Stelle.</numerusform>
            <numerusform>%n Texte enthielten Zeichen, die keine XML-Datei fassen oder niemand lesen kann; „�“ steht an ihrer Stelle.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) held characters that turn the direction of writing, which can make a name look like another; they were left out.</source>
        <translation>
            <numerusform>%n Text enthielt Zeichen, die die Schreibrichtung umkehren, wodurch ein Name wie ein anderer aussehen kann; sie wurden weggelassen.</numerusform>
            <numerusform>%n Texte enthielten Zeichen, die die Schreibrichtung umkehren, wodurch ein Name wie ein anderer aussehen kann; sie wurden weggelassen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) lack legs: see their descriptions.</source>
        <translation>
            <numerusform>%n Route hat fehlende Teilstrecken: siehe Beschreibung.</numerusform>
            <numerusform>%n Routen haben fehlende Teilstrecken: siehe Beschreibungen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Route “%1”: leg %2 is not in the file.</source>
        <translation>Route „%1“: Teilstrecke %2 ist nicht in der Datei.</translation>
    </message>
    <message>
        <source>Route “%1”: legs %2 are not in the file.</source>
        <translation>Route „%1“: Die Teilstrecken %2 sind nicht in der Datei.</translation>
    </message>
    <message>
        <source>End of leg %1</source>
        <translation>Ende der Teilstrecke %1</translation>
    </message>
    <message>
        <source>Leg %1 ends here.</source>
        <translation>Teilstrecke %1 endet hier.</translation>
    </message>
    <message>
        <source>Legs to walk by compass and pace count. CAUTION: magnetic north moves, and the legs are for the day they were worked out for. The lines are straight and know nothing of cliffs, water, thickets or whose land it is. A receiver can fail or err under trees: carry the map and the legs on paper, keep the compass away from iron and power lines, check each leg by its back bearing, tell someone where you go and when you will be back, set a time at which you turn round, and keep to local rules and the word of a qualified leader. Walk a new course yourself before children do.</source>
        <translation>Teilstrecken, die man nach Kompass und Schrittzahl geht. VORSICHT: Magnetisch Nord wandert, und die Teilstrecken gelten für den Tag, für den sie berechnet wurden. Die Linien sind gerade und wissen nichts von Felsabbrüchen, Wasser, Dickichten oder davon, wem das Land gehört. Ein Empfänger kann ausfallen oder sich unter Bäumen irren: Nehmen Sie die Karte und die Teilstrecken auf Papier mit, halten Sie den Kompass von Eisen und Stromleitungen fern, prüfen Sie jede Teilstrecke durch ihre Gegenrichtung, sagen Sie jemandem, wohin Sie gehen und wann Sie wieder da sind, setzen Sie eine Uhrzeit fest, zu der Sie umkehren, und halten Sie sich an örtliche Regeln und an das Wort einer ausgebildeten Leitungsperson. Gehen Sie eine neue Route selbst ab, bevor Kinder sie gehen.</translation>
    </message>
</context>
<context>
    <name>brushline::GridParameters</name>
    <message>
        <source>%1: %2 counts in degrees; a grid is projected. Give a UTM zone or the national grid of your map.</source>
        <translation>%1: %2 zählt in Grad; ein Gitter ist projiziert. Geben Sie eine UTM-Zone oder das Landesgitter Ihrer Karte an.</translation>
    </message>
    <message>
        <source>%1: %2 is not a projected coordinate reference system. Give a UTM zone or the national grid of your map.</source>
        <translation>%1: %2 ist kein projiziertes Koordinatenbezugssystem. Geben Sie eine UTM-Zone oder das Landesgitter Ihrer Karte an.</translation>
    </message>
    <message>
        <source>%1: %2 lies at latitude %3, longitude %4, outside the area that %5 is made for. Is it the grid of your map?</source>
        <translation>%1: %2 liegt bei Breite %3, Länge %4, außerhalb des Bereichs, für den %5 gemacht ist. Ist es das Gitter Ihrer Karte?</translation>
    </message>
</context>
<context>
    <name>brushline::HandoutFiles</name>
    <message>
        <source>only a part of it could be written</source>
        <translation>nur ein Teil davon konnte geschrieben werden</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Where the files go; made when it is not there.</source>
        <translation>Wohin die Dateien kommen; er wird angelegt, wenn es ihn nicht gibt.</translation>
    </message>
    <message>
        <source>Replace files that are there</source>
        <translation>Vorhandene Dateien ersetzen</translation>
    </message>
    <message>
        <source>Off: a file that would be replaced is an error, and nothing is written.</source>
        <translation>Aus: Eine Datei, die ersetzt würde, ist ein Fehler, und nichts wird geschrieben.</translation>
    </message>
    <message>
        <source>%1: the folder “%2” cannot be made or written to. Give another folder, or the right to write there.</source>
        <translation>%1: Der Ordner „%2“ lässt sich nicht anlegen oder nicht beschreiben. Geben Sie einen anderen Ordner an oder das Recht, dort zu schreiben.</translation>
    </message>
    <message>
        <source>%1: “%2” would be written over, but an input is read from it. Give another place.</source>
        <translation>%1: „%2“ würde überschrieben, aber eine Eingabe wird daraus gelesen. Geben Sie einen anderen Ort an.</translation>
    </message>
    <message>
        <source>%1: “%2” is a folder, so no file of that name can be written.</source>
        <translation>%1: „%2“ ist ein Ordner; eine Datei dieses Namens kann daher nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>%1: “%2” is a device or a pipe, so no file can take its place. Give another place.</source>
        <translation>%1: „%2“ ist ein Gerät oder eine Pipe; eine Datei kann daher nicht an seine Stelle treten. Geben Sie einen anderen Ort an.</translation>
    </message>
    <message>
        <source>%1: “%2” is there already. Switch on %3 to have it replaced, or give another place.</source>
        <translation>%1: „%2“ ist schon da. Schalten Sie %3 ein, um sie ersetzen zu lassen, oder geben Sie einen anderen Ort an.</translation>
    </message>
    <message>
        <source>%1: “%2” is there and may not be written to. Give another place, or the right to write there.</source>
        <translation>%1: „%2“ ist da und darf nicht beschrieben werden. Geben Sie einen anderen Ort an oder das Recht, dort zu schreiben.</translation>
    </message>
    <message>
        <source>%1: “%2” cannot be written (%3). Is its folder there, and may it be written to?</source>
        <translation>%1: „%2“ lässt sich nicht schreiben (%3). Gibt es den Ordner, und darf darin geschrieben werden?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so it was left out. Is the disk full?</source>
        <translation>%1: „%2“ ließ sich nicht ganz schreiben (%3) und wurde daher weggelassen. Ist der Datenträger voll?</translation>
    </message>
    <message>
        <source>%1: nothing can be written in “%2” (%3). Give another folder, or the right to write there.</source>
        <translation>%1: In „%2“ kann nichts geschrieben werden (%3). Geben Sie einen anderen Ordner an oder das Recht, dort zu schreiben.</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so nothing was written. Is the disk full?</source>
        <translation>%1: „%2“ ließ sich nicht ganz schreiben (%3), daher wurde nichts geschrieben. Ist der Datenträger voll?</translation>
    </message>
    <message>
        <source>%1: the files could not be written to “%2”, so nothing was. Is the disk full, or damaged?</source>
        <translation>%1: Die Dateien ließen sich nicht nach „%2“ schreiben, daher wurde nichts geschrieben. Ist der Datenträger voll oder beschädigt?</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) written</source>
        <translation>
            <numerusform>%n Datei geschrieben</numerusform>
            <numerusform>%n Dateien geschrieben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n of them in the place of an older one</source>
        <translation>
            <numerusform>, %n davon anstelle einer älteren</numerusform>
            <numerusform>, %n davon anstelle von älteren</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: “%2” is there and could not be kept until the run is through, so nothing was written. Is the disk full?</source>
        <translation>%1: „%2“ ist da und konnte nicht bis zum Ende des Laufs aufgehoben werden, daher wurde nichts geschrieben. Ist der Datenträger voll?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be given its name (%3), so no file was written. Give another folder.</source>
        <translation>%1: „%2“ konnte seinen Namen nicht bekommen (%3), daher wurde keine Datei geschrieben. Geben Sie einen anderen Ordner an.</translation>
    </message>
    <message numerus="yes">
        <source>%1: “%2” could not be given its name (%3), and %n file(s) written before it could not be taken back: do not use them.</source>
        <translation>
            <numerusform>%1: „%2“ konnte seinen Namen nicht bekommen (%3), und %n davor geschriebene Datei konnte nicht zurückgenommen werden: nicht verwenden.</numerusform>
            <numerusform>%1: „%2“ konnte seinen Namen nicht bekommen (%3), und %n davor geschriebene Dateien konnten nicht zurückgenommen werden: nicht verwenden.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::HandoutFonts</name>
    <message>
        <source>No font is installed, so nothing can be printed but empty boxes. Install one, for example DejaVu Sans (on Debian and Ubuntu the package fonts-dejavu-core).</source>
        <translation>Es ist keine Schrift installiert; gedruckt würden nur leere Kästchen. Installieren Sie eine, zum Beispiel DejaVu Sans (unter Debian und Ubuntu das Paket fonts-dejavu-core).</translation>
    </message>
</context>
<context>
    <name>brushline::HazardParameters</name>
    <message>
        <source>%1: table “%2” needs the columns kind and distance_m (metres).</source>
        <translation>%1: Tabelle „%2“ braucht die Spalten kind und distance_m (Meter).</translation>
    </message>
    <message>
        <source>distance_m is “%1”, no number</source>
        <translation>distance_m ist „%1“, keine Zahl</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: %4. Give each kind one row with its distance in metres.</source>
        <translation>%1: Tabelle „%2“, Objekt %3: %4. Geben Sie jeder Art eine Zeile mit ihrem Abstand in Metern.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no rows.</source>
        <translation>%1: Tabelle „%2“ hat keine Zeilen.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no field “kind”; name the field that tells what its features are.</source>
        <translation>%1: Layer „%2“ hat kein Feld „kind“; nennen Sie das Feld, das sagt, was seine Objekte sind.</translation>
    </message>
    <message>
        <source>Iron and current</source>
        <translation>Eisen und Strom</translation>
    </message>
    <message>
        <source>Power lines, fences, vehicles: what draws the needle off.</source>
        <translation>Stromleitungen, Zäune, Fahrzeuge: was die Nadel ablenkt.</translation>
    </message>
    <message>
        <source>Field with the kind</source>
        <translation>Feld mit der Art</translation>
    </message>
    <message>
        <source>Empty: the field called “kind”.</source>
        <translation>Leer: das Feld „kind“.</translation>
    </message>
    <message>
        <source>Table of distances</source>
        <translation>Tabelle der Abstände</translation>
    </message>
    <message>
        <source>Columns kind and distance_m: how far the compass must be from each kind, in metres. Empty: the built-in table, which the help prints.</source>
        <translation>Spalten kind und distance_m: wie weit der Kompass von jeder Art entfernt sein muss, in Metern. Leer: die eingebaute Tabelle, die in der Hilfe steht.</translation>
    </message>
    <message>
        <source>Hazards</source>
        <translation>Gefahren</translation>
    </message>
    <message>
        <source>Cliffs, water, bogs, mine works: layers of points, lines or areas.</source>
        <translation>Felsabbrüche, Wasser, Moore, Bergwerksanlagen: Layer mit Punkten, Linien oder Flächen.</translation>
    </message>
    <message>
        <source>Margin round hazards (m)</source>
        <translation>Abstand von Gefahren (m)</translation>
    </message>
    <message>
        <source>A leg that comes nearer than this to a hazard is told; in metres.</source>
        <translation>Eine Teilstrecke, die einer Gefahr näher kommt als so viele Meter, wird gemeldet.</translation>
    </message>
    <message>
        <source>Steepest ground (degrees)</source>
        <translation>Steilstes Gelände (Grad)</translation>
    </message>
    <message>
        <source>Ground steeper than this is told, whichever way it falls; needs a terrain model.</source>
        <translation>Steileres Gelände wird gemeldet, wohin es auch abfällt; braucht ein Geländemodell.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has kinds for which no distance is known: %3. They are not checked. Give their distances in %4.</source>
        <translation>%1: Layer „%2“ hat Arten, für die kein Abstand bekannt ist: %3. Sie werden nicht geprüft. Geben Sie ihre Abstände in %4 an.</translation>
    </message>
</context>
<context>
    <name>brushline::Html</name>
    <message>
        <source>en</source>
        <extracomment>The language these words are written in, as a web page names it: &quot;en&quot;, &quot;de&quot;, &quot;pt-BR&quot; ...</extracomment>
        <translation>de</translation>
    </message>
    <message>
        <source>ltr</source>
        <extracomment>The direction in which this language is written: &quot;ltr&quot; or &quot;rtl&quot;</extracomment>
        <translation>ltr</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>How to read this page</source>
        <translation>Wie diese Seite zu lesen ist</translation>
    </message>
</context>
<context>
    <name>brushline::InputFiles</name>
    <message>
        <source>%1: “%2” is given for %3 too. Give each a file or table of its own.</source>
        <translation>%1: „%2“ ist auch für %3 angegeben. Geben Sie jedem eine eigene Datei oder Tabelle.</translation>
    </message>
    <message>
        <source>%1: “%2” is the file or table that %3 is read from. Give another.</source>
        <translation>%1: „%2“ ist die Datei oder Tabelle, aus der %3 gelesen wird. Geben Sie eine andere an.</translation>
    </message>
</context>
<context>
    <name>brushline::KeptStyles</name>
    <message>
        <source>Keep the look of the results in their files</source>
        <translation>Das Aussehen der Ergebnisse in ihren Dateien behalten</translation>
    </message>
    <message>
        <source>In a GeoPackage as the default style of the layer, for other files as a file .qml beside it.</source>
        <translation>In einem GeoPackage als Standardstil des Layers, bei anderen Dateien als Datei .qml daneben.</translation>
    </message>
    <message>
        <source>it cannot be opened</source>
        <translation>Der Layer lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The look of %1 could not be kept with it: %2</source>
        <translation>Das Aussehen von %1 konnte nicht dazu abgelegt werden: %2</translation>
    </message>
</context>
<context>
    <name>brushline::LegAdvice</name>
    <message>
        <source>Hazards found on these routes</source>
        <translation>Auf diesen Routen gefundene Gefahren</translation>
    </message>
    <message>
        <source>The output of “Check legs for hazards” for the same routes: its advice goes into the field warnings.</source>
        <translation>Die Ausgabe von „Teilstrecken auf Gefahren prüfen“ für dieselben Routen: Ihre Ratschläge kommen in das Feld warnings.</translation>
    </message>
    <message>
        <source>%1: layer “%2” lacks the field %3. Give the output of “Check legs for hazards” (brushline:checkhazards).</source>
        <translation>%1: Dem Layer „%2“ fehlt das Feld %3. Geben Sie die Ausgabe von „Teilstrecken auf Gefahren prüfen“ (brushline:checkhazards) an.</translation>
    </message>
    <message>
        <source>Take care on this leg: %1.</source>
        <translation>Vorsicht auf dieser Teilstrecke: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n hazard(s) of layer “%2” lie on none of these legs, so no leg warns of them. Check these very legs for hazards, with the same names of routes, and annotate them again.</source>
        <translation>
            <numerusform>%1: %n Gefahr im Layer „%2“ liegt auf keiner dieser Teilstrecken, also warnt keine Teilstrecke vor ihr. Genau diese Teilstrecken mit denselben Routennamen auf Gefahren prüfen und neu beschriften.</numerusform>
            <numerusform>%1: %n Gefahren im Layer „%2“ liegen auf keiner dieser Teilstrecken, also warnt keine Teilstrecke vor ihnen. Genau diese Teilstrecken mit denselben Routennamen auf Gefahren prüfen und neu beschriften.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::LegCards</name>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1° E</source>
        <translation>%1° Ost</translation>
    </message>
    <message>
        <source>%1° W</source>
        <translation>%1° West</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>a day that is not told</source>
        <translation>Tag nicht genannt</translation>
    </message>
    <message>
        <source>Declination %1 on %2.</source>
        <translation>Deklination %1 (%2).</translation>
    </message>
    <message>
        <source>The declination is not known.</source>
        <translation>Die Deklination ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No compass can be used here.</source>
        <translation>Hier ist kein Kompass brauchbar.</translation>
    </message>
    <message>
        <source>It is in the dial numbers already: set them as printed on a plain compass.</source>
        <translation>Sie steckt schon in den Marschzahlen: Stell sie am einfachen Kompass so ein, wie sie hier stehen.</translation>
    </message>
    <message>
        <source>The dial numbers count from true north: for a compass that is set off for declination.</source>
        <translation>Die Marschzahlen zählen ab geographisch Nord: für einen Kompass, an dem die Deklination eingestellt ist.</translation>
    </message>
    <message>
        <source>The dial numbers count from grid north: not for a plain compass in the forest.</source>
        <translation>Die Marschzahlen zählen ab Gitternord: nicht für einen einfachen Kompass im Wald.</translation>
    </message>
    <message>
        <source>The paces are those of %1, nobody else&apos;s.</source>
        <translation>Die Schritte sind die von %1 und gelten für niemand anderen.</translation>
    </message>
    <message>
        <source>1 sighting</source>
        <translation>1 Peilung</translation>
    </message>
    <message>
        <source>%1 sightings</source>
        <translation>%1 Peilungen</translation>
    </message>
    <message>
        <source>%1 sightings of about %2 paces</source>
        <translation>%1 Peilungen, jede etwa %2 Schritte</translation>
    </message>
    <message>
        <source>%1 at %2 paces</source>
        <translation>%1 bei %2 Schritten</translation>
    </message>
    <message>
        <source>marks at %1 paces</source>
        <translation>Marken bei %1 Schritten</translation>
    </message>
    <message>
        <source>%1 at %2 m</source>
        <translation>%1 bei %2 m</translation>
    </message>
    <message>
        <source>one sees %1 m</source>
        <translation>Sicht %1 m</translation>
    </message>
    <message>
        <source>up %1 m, down %2 m</source>
        <translation>%1 m hinauf, %2 m hinab</translation>
    </message>
    <message>
        <source>1 leg</source>
        <translation>1 Strecke</translation>
    </message>
    <message>
        <source>%1 legs</source>
        <translation>%1 Strecken</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 paces</source>
        <translation>%1 Schritte</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>dial</source>
        <translation>Marschzahl</translation>
    </message>
    <message>
        <source>paces</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>from, to</source>
        <translation>von, bis</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>card %1 of %2</source>
        <translation>Blatt %1 von %2</translation>
    </message>
    <message>
        <source>goes on: card %1</source>
        <translation>weiter auf Blatt %1</translation>
    </message>
    <message>
        <source>Turn back at</source>
        <translation>Umkehren um</translation>
    </message>
    <message>
        <source>Told (who)</source>
        <translation>Wer Bescheid weiß</translation>
    </message>
    <message>
        <source>back by</source>
        <translation>zurück bis</translation>
    </message>
    <message>
        <source>Course without a name</source>
        <translation>Route ohne Namen</translation>
    </message>
    <message>
        <source>way back</source>
        <translation>Rückweg</translation>
    </message>
    <message>
        <source>way out</source>
        <translation>Hinweg</translation>
    </message>
    <message>
        <source>the start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>the end</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>back %1</source>
        <translation>Gegenzahl %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>Profile, heights drawn %1 times</source>
        <translation>Profil, Höhen %1-fach vergrößert</translation>
    </message>
    <message>
        <source>Profile, heights drawn as lengths</source>
        <translation>Profil, Höhen im Maßstab der Längen</translation>
    </message>
    <message>
        <source>no heights known here</source>
        <translation>hier keine Höhen bekannt</translation>
    </message>
    <message>
        <source>magnetic north,</source>
        <translation>magnetisch Nord,</translation>
    </message>
    <message>
        <source>lines %1 km apart</source>
        <translation>Linien alle %1 km</translation>
    </message>
    <message>
        <source>lines %1 m apart</source>
        <translation>Linien alle %1 m</translation>
    </message>
    <message>
        <source>true north, in the</source>
        <translation>geographisch Nord,</translation>
    </message>
    <message>
        <source>middle of the map</source>
        <translation>in der Kartenmitte</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>At %1 the course is larger than this map, so the map is drawn at %2.</source>
        <translation>Im Maßstab %1 ist die Route größer als diese Karte; die Karte ist daher im Maßstab %2 gezeichnet.</translation>
    </message>
    <message>
        <source>At %1 the course is only %2 mm long on this map.</source>
        <translation>Im Maßstab %1 ist die Route auf dieser Karte nur %2 mm lang.</translation>
    </message>
    <message>
        <source>Leg %1 is not on this card. Do not walk on past it by these numbers.</source>
        <translation>Teilstrecke %1 steht nicht auf diesem Laufzettel. Nicht mit diesen Zahlen über sie hinausgehen.</translation>
    </message>
    <message>
        <source>Legs %1 are not on this card. Do not walk on past them by these numbers.</source>
        <translation>Die Teilstrecken %1 stehen nicht auf diesem Laufzettel. Nicht mit diesen Zahlen über sie hinausgehen.</translation>
    </message>
    <message>
        <source>The legs are not all for the same day, but for %1.</source>
        <translation>Die Teilstrecken gelten nicht alle für denselben Tag, sondern für %1.</translation>
    </message>
    <message>
        <source>… and %1 more that have no room here</source>
        <translation>… und %1 weitere, für die hier kein Platz ist</translation>
    </message>
    <message>
        <source>several days</source>
        <translation>mehrere Tage</translation>
    </message>
    <message>
        <source>something</source>
        <translation>etwas</translation>
    </message>
    <message>
        <source>gone too far: %1</source>
        <translation>zu weit gegangen: %1</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation>%1 links</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation>%1 rechts</translation>
    </message>
    <message>
        <source>comes to %1</source>
        <translation>stößt auf %1</translation>
    </message>
    <message>
        <source>goes along %1</source>
        <translation>entlang an %1</translation>
    </message>
    <message>
        <source>enters %1</source>
        <translation>hinein in %1</translation>
    </message>
    <message>
        <source>leaves %1</source>
        <translation>heraus aus %1</translation>
    </message>
    <message>
        <source>crosses %1</source>
        <translation>quert %1</translation>
    </message>
</context>
<context>
    <name>brushline::LegCardsAlgorithm</name>
    <message>
        <source>course</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>cards</source>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>Leg cards</source>
        <translation>Laufzettel</translation>
    </message>
    <message>
        <source>Handouts</source>
        <translation>Zum Mitgeben</translation>
    </message>
    <message>
        <source>card,pdf,print,map,compass,bearing,dial,paces,leg,route,profile,handout</source>
        <translation>Laufzettel,PDF,Druck,Karte,Kompass,Richtung,Marschzahl,Schritte,Teilstrecke,Route,Profil,mitgeben</translation>
    </message>
    <message>
        <source>Makes a PDF card for each route and walker: the numbers for the dial, the paces, a map of the course with magnetic north lines.</source>
        <translation>Macht für jede Route und jeden Geher einen Laufzettel als PDF: die Marschzahlen, die Schritte, eine Karte der Route mit Linien nach magnetisch Nord.</translation>
    </message>
    <message numerus="yes">
        <source>Cancelled: %n whole file(s) were made before, and stay. They are not listed in cards.html.</source>
        <translation>
            <numerusform>Abgebrochen: %n ganze Datei wurde vorher erzeugt und bleibt. Sie steht nicht in cards.html.</numerusform>
            <numerusform>Abgebrochen: %n ganze Dateien wurden vorher erzeugt und bleiben. Sie stehen nicht in cards.html.</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1”, walker “%2”: %3</source>
        <translation>„%1“, Geher „%2“: %3</translation>
    </message>
    <message>
        <source>out</source>
        <translation>hin</translation>
    </message>
    <message>
        <source>“%1”: %2</source>
        <translation>„%1“: %2</translation>
    </message>
    <message numerus="yes">
        <source>On %n card(s) texts were too long for their place; an ellipsis (…) stands where they end.</source>
        <translation>
            <numerusform>Auf %n Laufzettel waren Texte zu lang für ihren Platz; wo sie enden, stehen Auslassungspunkte (…).</numerusform>
            <numerusform>Auf %n Laufzetteln waren Texte zu lang für ihren Platz; wo sie enden, stehen Auslassungspunkte (…).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) have letters that no installed font has; a question mark stands for each.</source>
        <translation>
            <numerusform>%n Text hat Buchstaben, die keine installierte Schrift hat; für jeden steht ein Fragezeichen.</numerusform>
            <numerusform>%n Texte haben Buchstaben, die keine installierte Schrift hat; für jeden steht ein Fragezeichen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Number of PDF files</source>
        <translation>Zahl der PDF-Dateien</translation>
    </message>
    <message numerus="yes">
        <source>Cards: %n PDF file(s).</source>
        <translation>
            <numerusform>Laufzettel: %n PDF-Datei.</numerusform>
            <numerusform>Laufzettel: %n PDF-Dateien.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::LegCardsParameters</name>
    <message>
        <source>A6</source>
        <translation>A6</translation>
    </message>
    <message>
        <source>A5</source>
        <translation>A5</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter (US)</translation>
    </message>
    <message>
        <source>Half letter</source>
        <translation>Halbes Letter (US)</translation>
    </message>
    <message>
        <source>One card a page</source>
        <translation>Ein Laufzettel je Seite</translation>
    </message>
    <message>
        <source>A3</source>
        <translation>A3</translation>
    </message>
    <message>
        <source>Portrait</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <source>Landscape</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <source>Layers for the map</source>
        <translation>Layer für die Karte</translation>
    </message>
    <message>
        <source>Drawn on the map in their own styles, the first on top. The course is drawn over them.</source>
        <translation>Auf der Karte in ihren eigenen Stilen gezeichnet, der erste zuoberst. Die Route wird darüber gezeichnet.</translation>
    </message>
    <message>
        <source>Paper of a card</source>
        <translation>Papier eines Laufzettels</translation>
    </message>
    <message>
        <source>A6 fits a trouser pocket, A5 a map case; A4 and letter are for the leader.</source>
        <translation>A6 passt in die Hosentasche, A5 in eine Kartentasche; A4 und Letter sind für die Leitung.</translation>
    </message>
    <message>
        <source>How a card is held</source>
        <translation>Wie der Laufzettel gehalten wird</translation>
    </message>
    <message>
        <source>Portrait has the legs above the map, landscape beside it.</source>
        <translation>Hochformat hat die Teilstrecken über der Karte, Querformat daneben.</translation>
    </message>
    <message>
        <source>Scale of the map (10000 is 1:10 000; 0: what fits)</source>
        <translation>Maßstab der Karte (10000 ist 1:10 000; 0: was passt)</translation>
    </message>
    <message>
        <source>True on paper when printed at 100 %. Where the course has no room at this scale, the largest round one that fits is taken, and the card says so.</source>
        <translation>Stimmt auf dem Papier, wenn mit 100 % gedruckt wird. Wo die Route in diesem Maßstab keinen Platz hat, wird der größte runde genommen, der passt, und der Laufzettel sagt es.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Stands above the route&apos;s name on each card. Empty: the route&apos;s name is the title.</source>
        <translation>Steht auf jedem Laufzettel über dem Namen der Route. Leer: Der Name der Route ist der Titel.</translation>
    </message>
    <message>
        <source>Draw the dial of each leg</source>
        <translation>Den Skalenring jeder Teilstrecke zeichnen</translation>
    </message>
    <message>
        <source>A small picture of the dial as it is to be set, for those who are new to it.</source>
        <translation>Ein kleines Bild des Skalenrings, wie er einzustellen ist, für alle, denen das neu ist.</translation>
    </message>
    <message>
        <source>Several cards on a sheet of</source>
        <translation>Mehrere Laufzettel auf einem Bogen</translation>
    </message>
    <message>
        <source>The cards of all walkers of a route in one file, side by side with lines to cut along.</source>
        <translation>Die Laufzettel aller Geher einer Route in einer Datei, nebeneinander mit Linien zum Zerschneiden.</translation>
    </message>
    <message>
        <source>Cards on a sheet (0: as many as fit)</source>
        <translation>Laufzettel je Bogen (0: so viele, wie passen)</translation>
    </message>
    <message>
        <source>With a sheet only.</source>
        <translation>Nur mit einem Bogen.</translation>
    </message>
    <message>
        <source>List the files in cards.html</source>
        <translation>Die Dateien in cards.html auflisten</translation>
    </message>
    <message>
        <source>A page that lists the cards, to open them from.</source>
        <translation>Eine Seite, die die Laufzettel auflistet und von der aus man sie öffnet.</translation>
    </message>
    <message>
        <source>%1 is %2: give the number after the colon, for example 10000 for 1:10 000, or 0 for what fits.</source>
        <translation>%1 ist %2: Geben Sie die Zahl nach dem Doppelpunkt an, zum Beispiel 10000 für 1:10 000, oder 0 für das, was passt.</translation>
    </message>
    <message>
        <source>%1: a sheet of this paper does not hold a single card of the paper %2. Give a larger sheet or a smaller card.</source>
        <translation>%1: Ein Bogen dieses Papiers fasst keinen einzigen Laufzettel des Papiers %2. Nehmen Sie einen größeren Bogen oder einen kleineren Laufzettel.</translation>
    </message>
    <message>
        <source>%1: the layer “%2” cannot be read. Mend its source, or leave it out.</source>
        <translation>%1: Der Layer „%2“ lässt sich nicht lesen. Bringen Sie seine Quelle in Ordnung oder lassen Sie ihn weg.</translation>
    </message>
    <message>
        <source>%1: “%2” is a table without geometry, so nothing of it is on the maps.</source>
        <translation>%1: „%2“ ist eine Tabelle ohne Geometrie; auf den Karten ist daher nichts davon.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no coordinate reference system, so it may lie in the wrong place on the maps. Set it in the layer&apos;s properties.</source>
        <translation>%1: Layer „%2“ hat kein Koordinatenbezugssystem und liegt auf den Karten daher vielleicht am falschen Ort. Setzen Sie es in den Eigenschaften des Layers.</translation>
    </message>
    <message>
        <source>%1: layer “%2” is blended with those below it on the screen. On the cards, which are drawn as vectors, it hides them.</source>
        <translation>%1: Layer „%2“ wird auf dem Bildschirm mit denen darunter gemischt. Auf den Laufzetteln, die als Vektoren gezeichnet werden, verdeckt er sie.</translation>
    </message>
</context>
<context>
    <name>brushline::LegIndex</name>
    <message>
        <source>without %1</source>
        <translation>ohne %1</translation>
    </message>
    <message>
        <source>day not known</source>
        <translation>Tag nicht bekannt</translation>
    </message>
    <message>
        <source>CSV</source>
        <translation>CSV</translation>
    </message>
    <message>
        <source>CSV: %1</source>
        <translation>CSV: %1</translation>
    </message>
    <message>
        <source>Leg tables</source>
        <translation>Tabellen der Teilstrecken</translation>
    </message>
    <message>
        <source>Route and walker</source>
        <translation>Route und Geher</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Paces</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Routes and walkers</source>
        <translation>Routen und Geher</translation>
    </message>
    <message>
        <source>Minutes are for walking without a stop. What is not known is left out.</source>
        <translation>Minuten gelten für Gehen ohne Halt. Was nicht bekannt ist, fehlt.</translation>
    </message>
</context>
<context>
    <name>brushline::LegLayer</name>
    <message>
        <source>No compass works here: too near the magnetic pole.</source>
        <translation>Hier taugt kein Kompass: zu nahe am Magnetpol.</translation>
    </message>
    <message>
        <source>The needle is weak here, near the magnetic pole: do not rely on it.</source>
        <translation>Die Nadel ist hier, nahe am Magnetpol, schwach: sich nicht auf sie verlassen.</translation>
    </message>
    <message>
        <source>No heights on %1 m of this leg: paces and minutes are those of level ground.</source>
        <translation>Auf %1 m dieser Teilstrecke fehlen Höhen: Schritte und Minuten gelten für ebenes Gelände.</translation>
    </message>
    <message>
        <source>Starts %1 m from where the leg before ends.</source>
        <translation>Beginnt %1 m von dort entfernt, wo die vorige Teilstrecke endet.</translation>
    </message>
    <message>
        <source>The cover of %1 m of this leg is not known: look before you trust the marks.</source>
        <translation>Auf %1 m dieser Teilstrecke ist der Bewuchs nicht bekannt: erst hinsehen, dann den Marken trauen.</translation>
    </message>
    <message>
        <source>Crosses %1 m of %2, which cannot be walked.</source>
        <translation>Kreuzt auf %1 m, was nicht begehbar ist: %2.</translation>
    </message>
    <message>
        <source>On %1 m (%2 paces) not even the next mark can be seen: go from hand to hand.</source>
        <translation>Auf %1 m (%2 Schritte) ist nicht einmal die nächste Marke zu sehen: von Hand zu Hand gehen, immer in Griffweite.</translation>
    </message>
</context>
<context>
    <name>brushline::LegPage</name>
    <message>
        <source>no number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>Von %1 bis %2</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Von %1</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Bis %1</translation>
    </message>
    <message>
        <source>1 sighting</source>
        <translation>1 Peilung</translation>
    </message>
    <message>
        <source>%1 sightings</source>
        <translation>%1 Peilungen</translation>
    </message>
    <message>
        <source>%1, about %2 apart</source>
        <translation>%1, Abstand etwa %2</translation>
    </message>
    <message>
        <source>a mark is clear to %1</source>
        <translation>eine Marke ist bis %1 klar zu sehen</translation>
    </message>
    <message>
        <source>up&#xa0;%1, down&#xa0;%2</source>
        <translation>%1&#xa0;hinauf, %2&#xa0;hinab</translation>
    </message>
    <message>
        <source>may be off %1 sideways, %2 along</source>
        <translation>mögliche Abweichung: %1 zur Seite, %2 in der Länge</translation>
    </message>
    <message>
        <source>Marks at paces</source>
        <translation>Marken bei Schritt</translation>
    </message>
    <message>
        <source>Leg %1 is not in this table. Do not walk on past it by these numbers.</source>
        <translation>Teilstrecke %1 steht nicht in dieser Tabelle. Gehen Sie nach diesen Zahlen nicht über sie hinaus weiter.</translation>
    </message>
    <message>
        <source>Legs %1 are not in this table. Do not walk on past them by these numbers.</source>
        <translation>Die Teilstrecken %1 stehen nicht in dieser Tabelle. Gehen Sie nach diesen Zahlen nicht über sie hinaus weiter.</translation>
    </message>
    <message>
        <source>direction: %1</source>
        <translation>Gehrichtung: %1</translation>
    </message>
    <message>
        <source>day not known</source>
        <translation>Tag nicht bekannt</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Turn back at</source>
        <translation>Umkehren um</translation>
    </message>
    <message>
        <source>Back by</source>
        <translation>Zurück bis</translation>
    </message>
    <message>
        <source>Told to</source>
        <translation>Bescheid weiß</translation>
    </message>
    <message>
        <source>Declination not known.</source>
        <translation>Deklination nicht bekannt.</translation>
    </message>
    <message>
        <source>Declination %1, give or take %2°, on %3.</source>
        <translation>Deklination %1, plus oder minus %2° (%3).</translation>
    </message>
    <message>
        <source>a day not known</source>
        <translation>Tag nicht bekannt</translation>
    </message>
    <message>
        <source>Declination %1, on %2.</source>
        <translation>Deklination %1 (%2).</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Warnung: %1</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Zusammen %1</translation>
    </message>
    <message>
        <source>The %1 here</source>
        <translation>Nur die hier: %1</translation>
    </message>
    <message>
        <source>Legs in the order walked</source>
        <translation>Teilstrecken in der Reihenfolge, in der sie gegangen werden</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Dial</source>
        <translation>Marschzahl</translation>
    </message>
    <message>
        <source>Paces</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>Sight back</source>
        <translation>Gegen­zahl</translation>
    </message>
    <message>
        <source>Distance, time</source>
        <translation>Länge, Zeit</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Dial: the number to set on the compass. Sight back: the number when you look from the leg’s end back to its start.</source>
        <translation>Marschzahl: die Zahl, die am Kompass einzustellen ist. Gegenzahl: die Zahl, wenn man vom Ende der Teilstrecke zu ihrem Anfang zurückpeilt.</translation>
    </message>
    <message>
        <source>Paces are counted the way this walker counts them. Metres and minutes are rounded; what is not known is left out.</source>
        <translation>Schritte sind so gezählt, wie dieser Geher sie zählt. Meter und Minuten sind gerundet; was nicht bekannt ist, fehlt.</translation>
    </message>
    <message>
        <source>Minutes are for walking without a stop: sighting from mark to mark takes time of its own.</source>
        <translation>Minuten gelten für Gehen ohne Halt: Das Peilen von Marke zu Marke braucht seine eigene Zeit.</translation>
    </message>
    <message>
        <source>Sightings: so many times pick a mark on the line, walk to it and sight again. How far a mark is clear is for the thickest place of the leg.</source>
        <translation>Peilungen: So viele Male eine Marke auf der Linie suchen, hingehen und wieder peilen. Wie weit eine Marke klar zu sehen ist, gilt für die dichteste Stelle der Teilstrecke.</translation>
    </message>
    <message>
        <source>Marks at paces: what is counted at each mark; the count starts anew with each leg.</source>
        <translation>Marken bei Schritt: was an jeder Marke gezählt ist; mit jeder Teilstrecke beginnt die Zählung neu.</translation>
    </message>
    <message>
        <source>Give or take: one standard deviation of the magnetic model.</source>
        <translation>Plus oder minus: eine Standardabweichung des Magnetfeldmodells.</translation>
    </message>
    <message>
        <source>Letters: a leg that goes round something comes in pieces, a, b and so on. Set the dial anew for each. Paces along the line and past count for the leg, those out and back do not.</source>
        <translation>Buchstaben: Eine Teilstrecke, die um etwas herumführt, kommt in Stücken, a, b und so weiter. Für jedes die Marschzahl neu einstellen. Schritte auf der Linie und vorbei zählen für die Teilstrecke, die hinaus und zurück nicht.</translation>
    </message>
    <message>
        <source>May be off: two of three walks end no farther to the side than the first number, and two of three no farther short or far than the second; nearly half of them keep within both. Within twice both end nine of ten.</source>
        <translation>Mögliche Abweichung: Zwei von drei Malen endet man nicht weiter seitlich als die erste Zahl, zwei von drei Malen nicht weiter zu kurz oder zu weit als die zweite; knapp die Hälfte der Male innerhalb beider. Innerhalb des Doppelten beider endet man neun von zehn Malen.</translation>
    </message>
</context>
<context>
    <name>brushline::LegSheets</name>
    <message>
        <source>%1: layer “%2” lacks these fields: %3. %4</source>
        <translation>%1: Dem Layer „%2“ fehlen die Felder %3. %4</translation>
    </message>
    <message>
        <source>Layer “%1”, feature %2 %3 Passed over.</source>
        <translation>Layer „%1“, Objekt %2 %3 Übergangen.</translation>
    </message>
    <message numerus="yes">
        <source>%n feature(s) of layer “%1” passed over.</source>
        <translation>
            <numerusform>%n Objekt des Layers „%1“ übergangen.</numerusform>
            <numerusform>%n Objekte des Layers „%1“ übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: several routes are called “%2”, and the rows do not tell which leg belongs to which (feature %3). Give each route a name of its own and annotate them again.</source>
        <translation>%1: Mehrere Routen heißen „%2“, und die Zeilen sagen nicht, welche Teilstrecke zu welcher gehört (Objekt %3). Geben Sie jeder Route einen eigenen Namen und berechnen Sie die Teilstrecken neu.</translation>
    </message>
    <message>
        <source>%1: several routes are called “%2”; they are kept apart as “%2”, “%3”. Give each route a name of its own.</source>
        <translation>%1: Mehrere Routen heißen „%2“; sie werden als „%2“, „%3“ auseinandergehalten. Geben Sie jeder Route einen eigenen Namen.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n mark(s) of layer “%2” belong to none of the legs, or lie elsewhere than they say; passed over. Are they those of these legs?</source>
        <translation>
            <numerusform>%1: %n Marke des Layers „%2“ gehört zu keiner der Teilstrecken oder liegt anderswo, als sie sagt; sie wurde übergangen. Ist sie von diesen Teilstrecken?</numerusform>
            <numerusform>%1: %n Marken des Layers „%2“ gehören zu keiner der Teilstrecken oder liegen anderswo, als sie sagen; sie wurden übergangen. Sind sie von diesen Teilstrecken?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n mark(s) of layer “%2” have no usable place; passed over.</source>
        <translation>
            <numerusform>%1: %n Marke des Layers „%2“ hat keinen brauchbaren Ort; sie wurde übergangen.</numerusform>
            <numerusform>%1: %n Marken des Layers „%2“ haben keinen brauchbaren Ort; sie wurden übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Annotated legs</source>
        <translation>Berechnete Teilstrecken</translation>
    </message>
    <message>
        <source>Legs as “Annotate legs” writes them, with the fields it gives them.</source>
        <translation>Teilstrecken, wie „Teilstrecken berechnen“ sie schreibt, mit den Feldern, die es ihnen gibt.</translation>
    </message>
    <message>
        <source>Marks (points)</source>
        <translation>Marken (Punkte)</translation>
    </message>
    <message>
        <source>The marks of the same legs, as “Annotate legs” or “Choose marks to leapfrog between” write them.</source>
        <translation>Die Marken derselben Teilstrecken, wie „Teilstrecken berechnen“ oder „Marken zum Weiterpeilen wählen“ sie schreibt.</translation>
    </message>
    <message>
        <source>%1: give a layer of annotated legs.</source>
        <translation>%1: Geben Sie einen Layer mit berechneten Teilstrecken an.</translation>
    </message>
    <message>
        <source>Give legs that “Annotate legs” (brushline:annotatelegs) made.</source>
        <translation>Geben Sie Teilstrecken an, die „Teilstrecken berechnen“ (brushline:annotatelegs) gemacht hat.</translation>
    </message>
    <message>
        <source>Give the output MARKS of “Annotate legs” (brushline:annotatelegs), or marks that “Choose marks to leapfrog between” (brushline:choosemarks) made.</source>
        <translation>Geben Sie die Ausgabe MARKS von „Teilstrecken berechnen“ (brushline:annotatelegs) an oder Marken, die „Marken zum Weiterpeilen wählen“ (brushline:choosemarks) gemacht hat.</translation>
    </message>
    <message>
        <source>has no paces or no length.</source>
        <translation>hat keine Schritte oder keine Länge.</translation>
    </message>
    <message>
        <source>has no line.</source>
        <translation>hat keine Linie.</translation>
    </message>
    <message>
        <source>has coordinates that are no place on the Earth.</source>
        <translation>hat Koordinaten, die kein Ort auf der Erde sind.</translation>
    </message>
    <message>
        <source>has no number in its field “leg”, from 1 to %1.</source>
        <translation>hat im Feld „leg“ keine Zahl von 1 bis %1.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features, so there is nothing to hand out.</source>
        <translation>%1: Layer „%2“ hat keine Objekte, es gibt also nichts mitzugeben.</translation>
    </message>
    <message>
        <source>%1: none of the features of layer “%2” is a leg that can be used.</source>
        <translation>%1: Keines der Objekte des Layers „%2“ ist eine brauchbare Teilstrecke.</translation>
    </message>
    <message>
        <source>is a piece of leg %1, of which others are lacking.</source>
        <translation>ist ein Stück der Teilstrecke %1, von der andere fehlen.</translation>
    </message>
    <message>
        <source>is of leg %1, which does not end where the next starts.</source>
        <translation>gehört zu Teilstrecke %1, die nicht dort endet, wo die nächste beginnt.</translation>
    </message>
</context>
<context>
    <name>brushline::LegTablesAlgorithm</name>
    <message>
        <source>Leg tables</source>
        <translation>Tabellen der Teilstrecken</translation>
    </message>
    <message>
        <source>Handouts</source>
        <translation>Zum Mitgeben</translation>
    </message>
    <message>
        <source>table,print,csv,html,spreadsheet,handout,leg,bearing,paces,compass,route</source>
        <translation>Tabelle,Druck,CSV,HTML,Tabellenkalkulation,mitgeben,Teilstrecke,Richtung,Schritte,Kompass,Route</translation>
    </message>
    <message>
        <source>Writes annotated legs as tables to print, to read on a phone or to open in a spreadsheet: one for each route and walker, and a page that lists them.</source>
        <translation>Schreibt berechnete Teilstrecken als Tabellen zum Drucken, zum Lesen auf dem Telefon oder zum Öffnen in einer Tabellenkalkulation: eine für jede Route und jeden Geher und eine Seite, die sie auflistet.</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Comma-separated values (CSV)</source>
        <translation>Kommagetrennte Werte (CSV)</translation>
    </message>
    <message>
        <source>Web pages to print (HTML)</source>
        <translation>Webseiten zum Drucken (HTML)</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beides</translation>
    </message>
    <message>
        <source>CSV opens in spreadsheets and other programs; the pages print on A5 and on US letter.</source>
        <translation>CSV lässt sich in Tabellenkalkulationen und anderen Programmen öffnen; die Seiten werden auf A5 und auf US-Letter gedruckt.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Stands at the head of every page, for example the name of the camp.</source>
        <translation>Steht oben auf jeder Seite, zum Beispiel der Name des Lagers.</translation>
    </message>
    <message>
        <source>Number of files written, the index among them</source>
        <translation>Anzahl der geschriebenen Dateien, das Verzeichnis eingeschlossen</translation>
    </message>
    <message>
        <source>Index (the page that lists the tables)</source>
        <translation>Verzeichnis (die Seite, die die Tabellen auflistet)</translation>
    </message>
</context>
<context>
    <name>brushline::LegWords</name>
    <message>
        <source>magnetic north</source>
        <translation>magnetisch Nord</translation>
    </message>
    <message>
        <source>true north</source>
        <translation>geographisch Nord</translation>
    </message>
    <message>
        <source>grid north</source>
        <translation>Gitternord</translation>
    </message>
    <message>
        <source>1 pace</source>
        <translation>1 Schritt</translation>
    </message>
    <message>
        <source>%1 paces</source>
        <translation>%1 Schritte</translation>
    </message>
    <message>
        <source>no compass</source>
        <translation>kein Kompass</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 Minuten</translation>
    </message>
    <message>
        <source>The shortest sight is %1 m.</source>
        <translation>Die kürzeste Sicht ist %1 m.</translation>
    </message>
    <message>
        <source>One sighting is enough.</source>
        <translation>Eine Peilung genügt.</translation>
    </message>
    <message>
        <source>Take %1 sightings, most of them about %2 m apart.</source>
        <translation>%1 Peilungen machen, die meisten mit etwa %2 m Abstand.</translation>
    </message>
    <message>
        <source>Take %1 sightings.</source>
        <translation>%1 Peilungen machen.</translation>
    </message>
    <message>
        <source>Two walks of three end less than %1 m to either side, and two of three less than %2 m short or far.</source>
        <translation>Zwei von drei Malen endet man weniger als %1 m seitlich daneben, und zwei von drei Malen weniger als %2 m zu kurz oder zu weit.</translation>
    </message>
    <message>
        <source>Leg %1 of %2</source>
        <translation>Teilstrecke %1 von %2</translation>
    </message>
    <message>
        <source>, from %1 to %2</source>
        <translation>, von %1 bis %2</translation>
    </message>
    <message>
        <source>, from %1</source>
        <translation>, von %1</translation>
    </message>
    <message>
        <source>, to %1</source>
        <translation>, bis %1</translation>
    </message>
    <message>
        <source>CAUTION: </source>
        <translation>VORSICHT: </translation>
    </message>
    <message>
        <source>CAUTION for %1: </source>
        <translation>VORSICHT für %1: </translation>
    </message>
    <message>
        <source>There is no number for the dial.</source>
        <translation>Es gibt keine Marschzahl.</translation>
    </message>
    <message>
        <source>Set the dial to %1</source>
        <translation>Marschzahl %1 einstellen</translation>
    </message>
    <message>
        <source>, counted from %1</source>
        <translation>, gezählt ab %1</translation>
    </message>
    <message>
        <source>Walk %1 m.</source>
        <translation>%1 m gehen.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Walk %1 m: %2.</source>
        <translation>%1 m gehen: %2.</translation>
    </message>
    <message>
        <source>It climbs %1 m and drops %2 m.</source>
        <translation>Es geht %1 m hinauf und %2 m hinab.</translation>
    </message>
    <message>
        <source>Cover: %1.</source>
        <translation>Bewuchs: %1.</translation>
    </message>
    <message>
        <source>From its end its start is sighted at %1.</source>
        <translation>Von ihrem Ende wird ihr Anfang mit %1 angepeilt.</translation>
    </message>
    <message>
        <source>true %1</source>
        <translation>geographisch %1</translation>
    </message>
    <message>
        <source>grid %1</source>
        <translation>Gitter %1</translation>
    </message>
    <message>
        <source>magnetic %1</source>
        <translation>magnetisch %1</translation>
    </message>
    <message>
        <source>declination %1° west</source>
        <translation>Deklination %1° West</translation>
    </message>
    <message>
        <source>declination %1° east</source>
        <translation>Deklination %1° Ost</translation>
    </message>
    <message>
        <source>Bearings: %1.</source>
        <translation>Richtungen: %1.</translation>
    </message>
    <message>
        <source>Mark %1 on leg %2</source>
        <translation>Marke %1 auf Teilstrecke %2</translation>
    </message>
    <message>
        <source> of %1, walked back</source>
        <translation> von %1, Rückweg</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> von %1</translation>
    </message>
    <message>
        <source>, %1 m from the leg&apos;s start</source>
        <translation>, %1 m vom Anfang der Teilstrecke</translation>
    </message>
    <message>
        <source>Paces from the leg&apos;s start: %1.</source>
        <translation>Schritte vom Anfang der Teilstrecke: %1.</translation>
    </message>
    <message>
        <source>It stands %1 m to the left of the line.</source>
        <translation>Sie steht %1 m links von der Linie.</translation>
    </message>
    <message>
        <source>It stands %1 m to the right of the line.</source>
        <translation>Sie steht %1 m rechts von der Linie.</translation>
    </message>
    <message>
        <source>1 leg</source>
        <translation>1 Teilstrecke</translation>
    </message>
    <message>
        <source>%1 legs</source>
        <translation>%1 Teilstrecken</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Teilstrecken</translation>
    </message>
    <message>
        <source>, walked back</source>
        <translation>, Rückweg</translation>
    </message>
    <message>
        <source>, %1 m</source>
        <translation>, %1 m</translation>
    </message>
    <message>
        <source>%1 minutes on the move</source>
        <translation>%1 Minuten Gehzeit</translation>
    </message>
    <message>
        <source>Worked out for %1.</source>
        <translation>Berechnet für %1.</translation>
    </message>
    <message>
        <source>The dial counts from %1.</source>
        <translation>Die Marschzahlen zählen ab %1.</translation>
    </message>
    <message>
        <source>A point&apos;s comment is the leg that starts there: number for the dial, then paces (p); a “!” says that its description holds a warning.</source>
        <translation>Der Kommentar eines Punktes ist die Teilstrecke, die dort beginnt: Marschzahl, dann Schritte (p); ein „!“ sagt, dass die Beschreibung eine Warnung enthält.</translation>
    </message>
    <message>
        <source>CAUTION: the lines are straight and know nothing of cliffs, water, thickets or whose land it is. Look at the map first, and check each leg by its back bearing.</source>
        <translation>VORSICHT: Die Linien sind gerade und wissen nichts von Felsabbrüchen, Wasser, Dickichten oder davon, wem das Land gehört. Zuerst auf die Karte sehen und jede Teilstrecke durch ihre Gegenrichtung prüfen.</translation>
    </message>
    <message>
        <source>out:</source>
        <comment>a piece of a leg</comment>
        <translation>hinaus:</translation>
    </message>
    <message>
        <source>past:</source>
        <comment>a piece of a leg</comment>
        <translation>vorbei:</translation>
    </message>
    <message>
        <source>back:</source>
        <comment>a piece of a leg</comment>
        <translation>zurück:</translation>
    </message>
    <message>
        <source>on:</source>
        <comment>a piece of a leg</comment>
        <translation>weiter:</translation>
    </message>
    <message>
        <source>CAUTION: it is not certain from which north it counts. Ask who made these legs.</source>
        <translation>VORSICHT: Es ist nicht sicher, ab welchem Nord sie zählt. Fragen Sie, wer diese Teilstrecken gemacht hat.</translation>
    </message>
    <message>
        <source>CAUTION: leg %1 is not in this file. Do not walk on past it by these numbers.</source>
        <translation>VORSICHT: Teilstrecke %1 ist nicht in dieser Datei. Nicht mit diesen Zahlen über sie hinausgehen.</translation>
    </message>
    <message>
        <source>CAUTION: legs %1 are not in this file. Do not walk on past them by these numbers.</source>
        <translation>VORSICHT: Die Teilstrecken %1 sind nicht in dieser Datei. Nicht mit diesen Zahlen über sie hinausgehen.</translation>
    </message>
</context>
<context>
    <name>brushline::LegWriter</name>
    <message>
        <source>Legs</source>
        <translation>Teilstrecken</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Marken</translation>
    </message>
    <message>
        <source>Drift (where the walker may be, 95 %)</source>
        <translation>Abdrift (wo der Geher sein kann, 95 %)</translation>
    </message>
    <message numerus="yes">
        <source>%n leg(s) cross cover polygons that overlap: the first in the layer counts.</source>
        <translation>
            <numerusform>%n Teilstrecke kreuzt Bewuchspolygone, die sich überlappen: Das erste im Layer zählt.</numerusform>
            <numerusform>%n Teilstrecken kreuzen Bewuchspolygone, die sich überlappen: Das erste im Layer zählt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Routes: %1; leg rows written: %2.</source>
        <translation>Routen: %1; Zeilen mit Teilstrecken geschrieben: %2.</translation>
    </message>
    <message numerus="yes">
        <source>DEM: %n leg(s) lie on ground without heights, whole or in part; their paces and minutes are those of level ground there. Does the terrain model reach so far?</source>
        <translation>
            <numerusform>DEM: %n Teilstrecke liegt ganz oder teilweise auf Gelände ohne Höhen; ihre Schritte und Minuten gelten dort für ebenes Gelände. Reicht das Geländemodell so weit?</numerusform>
            <numerusform>DEM: %n Teilstrecken liegen ganz oder teilweise auf Gelände ohne Höhen; ihre Schritte und Minuten gelten dort für ebenes Gelände. Reicht das Geländemodell so weit?</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::NamedPlacesParameters</name>
    <message>
        <source>%1: layer “%2” has no field “name”: give the field that holds the names.</source>
        <translation>%1: Layer „%2“ hat kein Feld „name“: Geben Sie das Feld mit den Namen an.</translation>
    </message>
    <message>
        <source>Reach of a named point (m)</source>
        <translation>Reichweite eines benannten Punktes (m)</translation>
    </message>
    <message>
        <source>Named points</source>
        <translation>Benannte Punkte</translation>
    </message>
    <message>
        <source>Camp, lone pine, boulder: legs that start or end at one of these say so.</source>
        <translation>Lager, einzelne Kiefer, Felsblock: Teilstrecken, die an einem davon beginnen oder enden, sagen es.</translation>
    </message>
    <message>
        <source>Field with the point&apos;s name</source>
        <translation>Feld mit dem Namen des Punktes</translation>
    </message>
    <message>
        <source>Empty: the field called “name”.</source>
        <translation>Leer: das Feld „name“.</translation>
    </message>
    <message>
        <source>A leg&apos;s end takes the name of the nearest named point that is no farther than this, in metres.</source>
        <translation>Das Ende einer Teilstrecke nimmt den Namen des nächsten benannten Punktes an, der nicht weiter als so viele Meter entfernt ist.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a name passed over.</source>
        <translation>
            <numerusform>%1: %n Punkt des Layers „%2“ ohne Namen übergangen.</numerusform>
            <numerusform>%1: %n Punkte des Layers „%2“ ohne Namen übergangen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::NorthLinesAlgorithm</name>
    <message>
        <source>Magnetic north lines</source>
        <translation>Linien nach magnetisch Nord</translation>
    </message>
    <message>
        <source>Magnetics</source>
        <translation>Erdmagnetfeld</translation>
    </message>
    <message>
        <source>magnetic,north,lines,meridian,declination,variation,compass,map,grid,baseplate</source>
        <translation>magnetisch,Nord,Linien,Meridian,Deklination,Missweisung,Kompass,Karte,Gitter,Plattenkompass</translation>
    </message>
    <message>
        <source>Draws lines towards magnetic north over a map, at an even distance on the ground, so that bearings can be taken off the map without any sum.</source>
        <translation>Zeichnet Linien nach magnetisch Nord über eine Karte, in gleichmäßigem Abstand im Gelände, sodass man Richtungen ohne Rechnen von der Karte abnehmen kann.</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1° W</source>
        <translation>%1° West</translation>
    </message>
    <message>
        <source>%1° E</source>
        <translation>%1° Ost</translation>
    </message>
    <message>
        <source>%1, %2, %3 m</source>
        <translation>%1, %2, %3 m</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) in %1; model %2, day %3.</source>
        <translation>
            <numerusform>%n Linie in %1; Modell %2, Tag %3.</numerusform>
            <numerusform>%n Linien in %1; Modell %2, Tag %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>No line: in this extent the field along the ground is under 2000 nT, so that no compass can be used.</source>
        <translation>Keine Linie: In dieser Ausdehnung liegt das Feld parallel zum Boden unter 2000 nT, sodass kein Kompass brauchbar ist.</translation>
    </message>
    <message>
        <source>In part of the extent the field along the ground is under 2000 nT, so that no compass can be used: lines end at its border.</source>
        <translation>In einem Teil der Ausdehnung liegt das Feld parallel zum Boden unter 2000 nT, sodass kein Kompass brauchbar ist: Linien enden an dessen Rand.</translation>
    </message>
    <message>
        <source>Part of the extent lies where %1 does not reach; there are no lines.</source>
        <translation>Ein Teil der Ausdehnung liegt dort, wohin %1 nicht reicht; dort gibt es keine Linien.</translation>
    </message>
    <message>
        <source>On the ground neighbouring lines lie %1 to %2 m apart within the extent.</source>
        <translation>Im Gelände liegen benachbarte Linien innerhalb der Ausdehnung %1 bis %2 m auseinander.</translation>
    </message>
    <message>
        <source>In part of the extent the field along the ground is under 6000 nT (zone “caution”): the needle is slow and easily drawn off.</source>
        <translation>In einem Teil der Ausdehnung liegt das Feld parallel zum Boden unter 6000 nT (zone „caution“): Die Nadel ist träge und leicht abzulenken.</translation>
    </message>
    <message>
        <source>%1 is outside the years of the model, which only tells where compasses fail.</source>
        <translation>%1 liegt außerhalb der Jahre des Modells; es sagt hier nur, wo Kompasse versagen.</translation>
    </message>
    <message>
        <source>the middle of EXTENT</source>
        <translation>die Mitte von EXTENT</translation>
    </message>
</context>
<context>
    <name>brushline::NorthLinesParameters</name>
    <message>
        <source>%1 is “%2”: give the least x, the most x, the least y, the most y, in this order. Across the 180th meridian count the longitudes on, like 179,181,-18,-16 [EPSG:4326].</source>
        <translation>%1 ist „%2“: Geben Sie das kleinste x, das größte x, das kleinste y, das größte y an, in dieser Reihenfolge. Über den 180. Meridian hinweg zählen Sie die Längen weiter, etwa 179,181,-18,-16 [EPSG:4326].</translation>
    </message>
    <message>
        <source>%1: its middle (%2, %3 in %4) is no place on the Earth.</source>
        <translation>%1: Die Mitte davon (%2, %3 in %4) ist kein Ort auf der Erde.</translation>
    </message>
    <message>
        <source>Extent of the map</source>
        <translation>Ausdehnung der Karte</translation>
    </message>
    <message>
        <source>The lines are cut at a rectangle of the grid that holds this extent. Across the 180th meridian count the longitudes on, like 179,181,-18,-16 [EPSG:4326].</source>
        <translation>Die Linien werden an einem Rechteck des Gitters abgeschnitten, das diese Ausdehnung enthält. Über den 180. Meridian hinweg zählen Sie die Längen weiter, etwa 179,181,-18,-16 [EPSG:4326].</translation>
    </message>
    <message>
        <source>Distance between the lines (m on the ground)</source>
        <translation>Abstand zwischen den Linien (m im Gelände)</translation>
    </message>
    <message>
        <source>In metres on the ground, whatever the scale of the map, square to the lines through the middle of the extent. Elsewhere they draw together or spread as magnetic north does.</source>
        <translation>In Metern im Gelände, unabhängig vom Maßstab der Karte, quer zu den Linien durch die Mitte der Ausdehnung. Anderswo rücken sie zusammen oder auseinander, wie magnetisch Nord es tut.</translation>
    </message>
    <message>
        <source>Grid of the map (the lines are made in it)</source>
        <translation>Gitter der Karte (die Linien werden darin erzeugt)</translation>
    </message>
    <message>
        <source>A projected system. Empty: that of the extent, else of the project, when it is projected; else the UTM zone of the extent&apos;s middle.</source>
        <translation>Ein projiziertes System. Leer: das der Ausdehnung, sonst das des Projekts, wenn es projiziert ist; sonst die UTM-Zone der Mitte der Ausdehnung.</translation>
    </message>
    <message>
        <source>%1: give the extent of your map.</source>
        <translation>%1: Geben Sie die Ausdehnung Ihrer Karte an.</translation>
    </message>
    <message>
        <source>%1 is empty or no extent. Give an area, like 631500,634500,5405500,5408500 [EPSG:32621].</source>
        <translation>%1 ist leer oder keine Ausdehnung. Geben Sie einen Bereich an, etwa 631500,634500,5405500,5408500 [EPSG:32621].</translation>
    </message>
    <message>
        <source>%1 tells no coordinate reference system. Write it behind the numbers, like 631500,634500,5405500,5408500 [EPSG:32621].</source>
        <translation>%1 nennt kein Koordinatenbezugssystem. Schreiben Sie es hinter die Zahlen, etwa 631500,634500,5405500,5408500 [EPSG:32621].</translation>
    </message>
    <message>
        <source>%1 of %2 m over this extent makes about %3 lines; at most %4 are drawn. Give a wider spacing or a smaller extent.</source>
        <translation>%1 von %2 m ergibt über diese Ausdehnung etwa %3 Linien; höchstens %4 werden gezeichnet. Geben Sie einen größeren Abstand oder eine kleinere Ausdehnung an.</translation>
    </message>
    <message>
        <source>%1 lies where %2 does not reach. Give a %3 that is made for this part of the world.</source>
        <translation>%1 liegt dort, wohin %2 nicht reicht. Geben Sie ein %3 an, das für diesen Teil der Welt gemacht ist.</translation>
    </message>
</context>
<context>
    <name>brushline::PaceTries</name>
    <message>
        <source>%1 (%2): give a field of the table “%3”.</source>
        <translation>%1 (%2): Geben Sie ein Feld der Tabelle „%3“ an.</translation>
    </message>
    <message>
        <source>%1: give a table with a row for each try.</source>
        <translation>%1: Geben Sie eine Tabelle mit einer Zeile für jeden Versuch an.</translation>
    </message>
    <message>
        <source>%1 is empty.</source>
        <translation>%1 ist leer.</translation>
    </message>
    <message>
        <source>%1 is “%2”: write numbers with a decimal point and without separators.</source>
        <translation>%1 ist „%2“: Schreiben Sie Zahlen mit Dezimalpunkt und ohne Trennzeichen.</translation>
    </message>
    <message>
        <source>%1 is “%2”, which is no number.</source>
        <translation>%1 ist „%2“; das ist keine Zahl.</translation>
    </message>
    <message>
        <source>%1 is %2: give a number above 0, of %3 at most.</source>
        <translation>%1 ist %2: Geben Sie eine Zahl über 0 an, höchstens %3.</translation>
    </message>
    <message>
        <source>its distance</source>
        <translation>Die Strecke</translation>
    </message>
    <message>
        <source>its count</source>
        <translation>Die gezählte Zahl</translation>
    </message>
    <message>
        <source>its slope</source>
        <translation>Die Steigung</translation>
    </message>
    <message>
        <source>its slope is empty: write 0 for level ground.</source>
        <translation>Die Steigung ist leer: Schreiben Sie 0 für ebenes Gelände.</translation>
    </message>
    <message>
        <source>its slope is %1: give degrees, not percent, between -90 and 90.</source>
        <translation>Die Steigung ist %1: Geben Sie Grad an, nicht Prozent, zwischen -90 und 90.</translation>
    </message>
    <message>
        <source>Tries (table, one row each)</source>
        <translation>Versuche (Tabelle, je eine Zeile)</translation>
    </message>
    <message>
        <source>A row for each time somebody walked a known distance and counted.</source>
        <translation>Eine Zeile für jedes Mal, dass jemand eine bekannte Strecke gegangen ist und gezählt hat.</translation>
    </message>
    <message>
        <source>Field with the walker&apos;s name</source>
        <translation>Feld mit dem Namen des Gehers</translation>
    </message>
    <message>
        <source>Who walked. Names that differ in blanks, or in small and capital letters, are one walker&apos;s.</source>
        <translation>Wer gegangen ist. Namen, die sich nur in Leerzeichen oder in Groß- und Kleinschreibung unterscheiden, gehören demselben Geher.</translation>
    </message>
    <message>
        <source>Field with the distance (m, along the ground)</source>
        <translation>Feld mit der Strecke (m, am Boden entlang)</translation>
    </message>
    <message>
        <source>In metres (a foot is 0.3048 m), as a tape on the ground measures it. A distance off a map or by satellite is shorter on a slope: divide it by the slope&apos;s cosine.</source>
        <translation>In Metern (ein Fuß ist 0,3048 m), wie ein Maßband am Boden sie misst. Von einer Karte oder mit Satelliten gemessen ist eine Strecke am Hang kürzer: Teilen Sie sie durch den Kosinus der Steigung.</translation>
    </message>
    <message>
        <source>Field with the count</source>
        <translation>Feld mit der gezählten Zahl</translation>
    </message>
    <message>
        <source>What was counted over the distance: single steps, or double paces. Halves are welcome.</source>
        <translation>Was über die Strecke gezählt wurde: Einzelschritte oder Doppelschritte. Halbe sind willkommen.</translation>
    </message>
    <message>
        <source>Field with the slope (degrees, uphill positive)</source>
        <translation>Feld mit der Steigung (Grad, bergauf positiv)</translation>
    </message>
    <message>
        <source>The even slope of the ground as it was walked: degrees, not percent; uphill positive, downhill negative. Without the field all tries are taken as level.</source>
        <translation>Die gleichmäßige Steigung des Bodens, wie er gegangen wurde: Grad, nicht Prozent; bergauf positiv, bergab negativ. Ohne das Feld gelten alle Versuche als eben.</translation>
    </message>
    <message>
        <source>it names no walker.</source>
        <translation>Sie nennt keinen Geher.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3 passed over: %4</source>
        <translation>%1: Tabelle „%2“, Objekt %3 übergangen: %4</translation>
    </message>
    <message>
        <source>%1: table “%2” has no rows. Give it one for each try.</source>
        <translation>%1: Tabelle „%2“ hat keine Zeilen. Geben Sie ihr eine für jeden Versuch.</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n row(s) tells a try. %1</source>
        <translation>
            <numerusform>%n Zeile, und sie nennt keinen Versuch. %1</numerusform>
            <numerusform>%n Zeilen, und keine nennt einen Versuch. %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of table “%2” passed over in all.</source>
        <translation>
            <numerusform>%1: Insgesamt %n Zeile der Tabelle „%2“ übergangen.</numerusform>
            <numerusform>%1: Insgesamt %n Zeilen der Tabelle „%2“ übergangen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PairsParameters</name>
    <message>
        <source>%1: layer “%2” of %3 has no field “%4”. Both layers need it to be paired by it; without %1 they are paired by their order.</source>
        <translation>%1: Layer „%2“ von %3 hat kein Feld „%4“. Beide Layer brauchen es, um danach gepaart zu werden; ohne %1 werden sie nach ihrer Reihenfolge gepaart.</translation>
    </message>
    <message>
        <source>%1: layer “%2”, feature %3</source>
        <translation>%1: Layer „%2“, Objekt %3</translation>
    </message>
    <message>
        <source>%1 has no usable place.</source>
        <translation>%1 hat keinen brauchbaren Ort.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Starts (points)</source>
        <translation>Starts (Punkte)</translation>
    </message>
    <message>
        <source>Where the routes begin.</source>
        <translation>Wo die Routen beginnen.</translation>
    </message>
    <message>
        <source>Ends (points)</source>
        <translation>Enden (Punkte)</translation>
    </message>
    <message>
        <source>Where they lead, an end for each start.</source>
        <translation>Wohin sie führen, zu jedem Start ein Ende.</translation>
    </message>
    <message>
        <source>Field that pairs them</source>
        <translation>Feld, das sie paart</translation>
    </message>
    <message>
        <source>A field that both layers have: a start and an end with the same value belong together. Empty: the first start and the first end, the second and the second.</source>
        <translation>Ein Feld, das beide Layer haben: Ein Start und ein Ende mit demselben Wert gehören zusammen. Leer: der erste Start und das erste Ende, der zweite und das zweite.</translation>
    </message>
    <message>
        <source>%1: give a layer with points.</source>
        <translation>%1: Geben Sie einen Layer mit Punkten an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give at least one.</source>
        <translation>%1: Layer „%2“ hat keine Punkte. Geben Sie mindestens einen an.</translation>
    </message>
    <message>
        <source>%1 has no partner: there are %2 starts and %3 ends.</source>
        <translation>%1 hat keinen Partner: Es gibt %2 Starts und %3 Enden.</translation>
    </message>
    <message>
        <source>%1 has nothing in its field “%2”, so it has no partner.</source>
        <translation>%1 hat in seinem Feld „%2“ nichts stehen, also keinen Partner.</translation>
    </message>
    <message>
        <source>%1 has the same “%2” (%3) as another. Give each pair a value of its own.</source>
        <translation>%1 hat dasselbe „%2“ (%3) wie ein anderer Punkt. Geben Sie jedem Paar einen eigenen Wert.</translation>
    </message>
    <message>
        <source>%1 (%2) has no end of that name.</source>
        <translation>Zu %1 (%2) gibt es kein Ende dieses Namens.</translation>
    </message>
    <message>
        <source>%1 (%2) has no start of that name.</source>
        <translation>Zu %1 (%2) gibt es keinen Start dieses Namens.</translation>
    </message>
    <message>
        <source>%1 has %2 points, but a pair has one start and one end. Split it with “Multipart to singleparts”.</source>
        <translation>%1 hat %2 Punkte, aber ein Paar hat einen Start und ein Ende. Teilen Sie es mit „Mehr- zu einteilig“.</translation>
    </message>
</context>
<context>
    <name>brushline::ParameterChecks</name>
    <message>
        <source>%1 (%2) is %3: give a whole number.</source>
        <translation>%1 (%2) ist %3: Geben Sie eine ganze Zahl an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give a layer with points.</source>
        <translation>%1: Layer „%2“ hat keine Punkte. Geben Sie einen Layer mit Punkten an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons. Give a layer with polygons.</source>
        <translation>%1: Layer „%2“ hat keine Polygone. Geben Sie einen Layer mit Polygonen an.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be read. Give layers of the project or paths of files that the host reads.</source>
        <translation>%1 (%2): „%3“ lässt sich nicht lesen. Geben Sie Layer des Projekts oder Pfade von Dateien an, die das Wirtsprogramm liest.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” is no name for a file, since it has a “|”. Give one without; a layer of a GeoPackage that is there is written to as ogr:dbname=&apos;%4&apos; table=&quot;name&quot; (geom).</source>
        <translation>%1 (%2): „%3“ ist kein Name für eine Datei, denn er enthält „|“. Geben Sie einen ohne an; in einen Layer eines GeoPackage, das schon da ist, wird mit ogr:dbname=&apos;%4&apos; table=&quot;name&quot; (geom) geschrieben.</translation>
    </message>
</context>
<context>
    <name>brushline::ParameterReader</name>
    <message>
        <source>%1 (%2) is “%3”: give a number from %4 to %5, with a decimal point.</source>
        <translation>%1 (%2) ist „%3“: Geben Sie eine Zahl von %4 bis %5 an, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <source>%1 (%2) is %3: give a number from %4 to %5.</source>
        <translation>%1 (%2) ist %3: Geben Sie eine Zahl von %4 bis %5 an.</translation>
    </message>
    <message>
        <source>%1 (%2) is %3: give a whole number from 0 to %4.</source>
        <translation>%1 (%2) ist %3: Geben Sie eine ganze Zahl von 0 bis %4 an.</translation>
    </message>
    <message>
        <source>%1 (%2) is “%3”: give a day as year-month-day, for example 2026-05-31.</source>
        <translation>%1 (%2) ist „%3“: Geben Sie einen Tag als Jahr-Monat-Tag an, zum Beispiel 2026-05-31.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” is no coordinate reference system that this machine knows. Give one like EPSG:32621.</source>
        <translation>%1 (%2): „%3“ ist kein Koordinatenbezugssystem, das dieser Rechner kennt. Geben Sie eines wie EPSG:32621 an.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be read. Give a layer of the project or the path of a file that the host reads.</source>
        <translation>%1 (%2): „%3“ lässt sich nicht lesen. Geben Sie einen Layer des Projekts oder den Pfad einer Datei an, die das Wirtsprogramm liest.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be read. Give a raster of the project or the path of a file that the host reads.</source>
        <translation>%1 (%2): „%3“ lässt sich nicht lesen. Geben Sie ein Raster des Projekts oder den Pfad einer Datei an, die das Wirtsprogramm liest.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no field “%3”. Its fields are: %4.</source>
        <translation>%1: Layer „%2“ hat kein Feld „%3“. Seine Felder sind: %4.</translation>
    </message>
    <message>
        <source>%1 (%2) is “%3”: give a whole number from 0 to %4.</source>
        <translation>%1 (%2) ist „%3“: Geben Sie eine ganze Zahl von 0 bis %4 an.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” has a coordinate that is not a number, with which this host cannot open a layer. Find the feature and mend it.</source>
        <translation>%1 (%2): „%3“ hat eine Koordinate, die keine Zahl ist; damit kann dieses QGIS keinen Layer öffnen. Suchen Sie das Objekt und bringen Sie es in Ordnung.</translation>
    </message>
</context>
<context>
    <name>brushline::PlaceReader</name>
    <message>
        <source>%1: layer “%2” has no coordinate reference system. Set it in the layer&apos;s properties.</source>
        <translation>%1: Layer „%2“ hat kein Koordinatenbezugssystem. Setzen Sie es in den Eigenschaften des Layers.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a usable place passed over.</source>
        <translation>
            <numerusform>%1: %n Punkt des Layers „%2“ ohne brauchbaren Ort übergangen.</numerusform>
            <numerusform>%1: %n Punkte des Layers „%2“ ohne brauchbaren Ort übergangen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PlanGround</name>
    <message>
        <source>The area round the pairs makes %1 million cells of %2 m, which would take %3 MB; at most %4 million are worked on. Give CELL at least %5, a smaller MARGIN, or pairs that lie together.</source>
        <translation>Der Bereich um die Paare ergibt %1 Millionen Zellen von %2 m, was %3 MB bräuchte; höchstens %4 Millionen werden bearbeitet. Geben Sie für CELL mindestens %5 an, ein kleineres MARGIN oder Paare, die beieinanderliegen.</translation>
    </message>
    <message>
        <source>the edge of the area searched (a larger MARGIN or terrain model may help)</source>
        <translation>der Rand des durchsuchten Bereichs (ein größeres MARGIN oder Geländemodell hilft vielleicht)</translation>
    </message>
    <message>
        <source>ground without a height in the terrain model</source>
        <translation>Gelände ohne Höhe im Geländemodell</translation>
    </message>
    <message>
        <source>ground steeper than %1°</source>
        <translation>Gelände, das steiler als %1° ist</translation>
    </message>
    <message>
        <source>barriers</source>
        <translation>Barrieren</translation>
    </message>
    <message>
        <source>ground without known cover</source>
        <translation>Gelände ohne bekannten Bewuchs</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n feature(s) of layer “%2” without a usable geometry passed over: they bar nothing.</source>
        <translation>
            <numerusform>%1: %n Objekt des Layers „%2“ ohne brauchbare Geometrie übergangen: Es versperrt nichts.</numerusform>
            <numerusform>%1: %n Objekte des Layers „%2“ ohne brauchbare Geometrie übergangen: Sie versperren nichts.</numerusform>
        </translation>
    </message>
    <message>
        <source>lies outside the terrain model</source>
        <translation>liegt außerhalb des Geländemodells</translation>
    </message>
    <message>
        <source>lies inside a barrier</source>
        <translation>liegt innerhalb einer Barriere</translation>
    </message>
    <message>
        <source>lies on %1</source>
        <translation>liegt auf %1</translation>
    </message>
    <message>
        <source>lies on ground without known cover</source>
        <translation>liegt in Gelände ohne bekannten Bewuchs</translation>
    </message>
    <message>
        <source>lies in %1</source>
        <translation>liegt in „%1“</translation>
    </message>
    <message>
        <source>%1: layer “%2” has points, which bar nothing. Give lines or polygons; buffer points first.</source>
        <translation>%1: Layer „%2“ hat Punkte, die nichts versperren. Geben Sie Linien oder Polygone an; puffern Sie Punkte zuerst.</translation>
    </message>
</context>
<context>
    <name>brushline::PlannedCourses</name>
    <message>
        <source>%1: layer “%2” has legs with detours, in pieces. Give the legs as they were before the detours.</source>
        <translation>%1: Layer „%2“ hat Teilstrecken mit Umgehungen, in Stücken. Geben Sie die Teilstrecken an, wie sie vor den Umgehungen waren.</translation>
    </message>
    <message>
        <source>ROUTE_FIELD: layer “%1” has annotated legs, which name their route themselves. Leave it empty.</source>
        <translation>ROUTE_FIELD: Layer „%1“ hat berechnete Teilstrecken, die ihre Route selbst nennen. Lassen Sie es leer.</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>hat keine zwei auseinanderliegenden Stützpunkte, also keine Teilstrecke.</translation>
    </message>
    <message>
        <source>%1: there is no leg to hold tracks against.</source>
        <translation>%1: Es gibt keine Teilstrecke, gegen die sich Tracks halten ließen.</translation>
    </message>
</context>
<context>
    <name>brushline::PlannedRoutes</name>
    <message>
        <source>Planned routes</source>
        <translation>Geplante Routen</translation>
    </message>
    <message>
        <source>A line for each pair, a vertex at each turn; Annotate legs takes it as it is.</source>
        <translation>Eine Linie für jedes Paar, ein Stützpunkt an jeder Wendung; „Teilstrecken berechnen“ nimmt sie, wie sie sind.</translation>
    </message>
    <message>
        <source>Least minutes from the start</source>
        <translation>Kürzeste Minuten vom Start</translation>
    </message>
    <message>
        <source>Minutes from the start to every cell, by the quickest way; of several starts the soonest.</source>
        <translation>Minuten vom Start zu jeder Zelle, auf dem schnellsten Weg; bei mehreren Starts von dem, der am schnellsten hinführt.</translation>
    </message>
    <message>
        <source>Minutes of walking, all routes together</source>
        <translation>Minuten Gehzeit, alle Routen zusammen</translation>
    </message>
</context>
<context>
    <name>brushline::PlotLegsAlgorithm</name>
    <message>
        <source>Plot legs from bearings and paces</source>
        <translation>Teilstrecken aus Richtungen und Schritten zeichnen</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>bearing,azimuth,pace,traverse,closure,misclosure,compass rule,Bowditch,survey,sketch map,field notes,dead reckoning,compass,course,leg</source>
        <translation>Richtung,Azimut,Schritt,Polygonzug,Schlussfehler,Abschluss,Kompassregel,Bowditch,Vermessung,Kartenskizze,Feldnotizen,Koppelnavigation,Kompass,Route,Teilstrecke</translation>
    </message>
    <message>
        <source>Draws bearings and paces that were written down in the field as legs on the map, tells how the route closes and which leg may hold a slip.</source>
        <translation>Zeichnet Richtungen und Schritte, die im Gelände aufgeschrieben wurden, als Teilstrecken auf die Karte und sagt, wie gut die Route schließt und in welcher Teilstrecke ein Versehen stecken kann.</translation>
    </message>
    <message>
        <source>Grid of the map (for grid bearings)</source>
        <translation>Gitter der Karte (für Gitterrichtungen)</translation>
    </message>
    <message>
        <source>The projected system whose grid lines are printed on the map. Empty: the starts&apos; own when it is projected, else the UTM zone of each route&apos;s start.</source>
        <translation>Das projizierte System, dessen Gitterlinien auf die Karte gedruckt sind. Leer: das der Starts, wenn es projiziert ist, sonst die UTM-Zone des Starts jeder Route.</translation>
    </message>
    <message>
        <source>The route is passed over.</source>
        <translation>Die Route wird übergangen.</translation>
    </message>
    <message>
        <source>Route “%1”: %2</source>
        <translation>Route „%1“: %2</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n route(s) could be plotted.</source>
        <translation>
            <numerusform>%n Route, und sie ließ sich nicht zeichnen.</numerusform>
            <numerusform>%n Routen, und keine ließ sich zeichnen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) passed over in all.</source>
        <translation>
            <numerusform>Insgesamt %n Route übergangen.</numerusform>
            <numerusform>Insgesamt %n Routen übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Route “%1”</source>
        <translation>Route „%1“</translation>
    </message>
</context>
<context>
    <name>brushline::PlotWriter</name>
    <message>
        <source>Plotted legs</source>
        <translation>Gezeichnete Teilstrecken</translation>
    </message>
    <message>
        <source>How the routes close (table)</source>
        <translation>Wie gut die Routen schließen (Tabelle)</translation>
    </message>
    <message>
        <source>Routes plotted</source>
        <translation>Gezeichnete Routen</translation>
    </message>
    <message>
        <source>Legs written, one for each walker</source>
        <translation>Geschriebene Teilstrecken, eine je Geher</translation>
    </message>
    <message>
        <source>Routes that miss their end by more than errors allow</source>
        <translation>Routen, die ihr Ende um mehr verfehlen, als Fehler erlauben</translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) miss their end by more than errors allow: look for slips before anybody walks them.</source>
        <translation>
            <numerusform>%n Route verfehlt ihr Ende um mehr, als Fehler erlauben: Suchen Sie nach Versehen, bevor jemand sie geht.</numerusform>
            <numerusform>%n Routen verfehlen ihr Ende um mehr, als Fehler erlauben: Suchen Sie nach Versehen, bevor jemand sie geht.</numerusform>
        </translation>
    </message>
    <message>
        <source>Routes: %1; leg rows written: %2.</source>
        <translation>Routen: %1; Zeilen mit Teilstrecken geschrieben: %2.</translation>
    </message>
</context>
<context>
    <name>brushline::Plugin</name>
    <message>
        <source>Turns planned routes into legs to walk by compass and pace count</source>
        <translation>Macht aus geplanten Routen Teilstrecken, die man nach Kompass und Schrittzahl geht</translation>
    </message>
</context>
<context>
    <name>brushline::PointSource</name>
    <message>
        <source>%1: give a layer with points.</source>
        <translation>%1: Geben Sie einen Layer mit Punkten an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give a layer with points.</source>
        <translation>%1: Layer „%2“ hat keine Punkte. Geben Sie einen Layer mit Punkten an.</translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseAlgorithm</name>
    <message>
        <source>Lay out practice courses</source>
        <translation>Übungsrouten anlegen</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>practice,course,control,compass,pace,leg,garden,school,scouts,children,training,loop</source>
        <translation>Übung,Route,Posten,Kompass,Schritt,Teilstrecke,Garten,Schule,Pfadfinder,Kinder,Ausbildung,Rundweg</translation>
    </message>
    <message>
        <source>Lays out several compass courses in an area, different but equally hard, with controls that nobody takes for one another.</source>
        <translation>Legt in einem Gebiet mehrere Übungsrouten nach Kompass an, verschieden, aber gleich schwer, mit Posten, die niemand miteinander verwechselt.</translation>
    </message>
    <message>
        <source>AREA: layer “%1” is at most %2 m across, but the shortest leg is to be %3 m. Give a larger area or a smaller LEG_MIN.</source>
        <translation>AREA: Layer „%1“ misst höchstens %2 m, aber die kürzeste Teilstrecke soll %3 m lang sein. Geben Sie ein größeres Gebiet oder ein kleineres LEG_MIN an.</translation>
    </message>
    <message>
        <source>AREA: layer “%1” is of no use: %2. Draw one or more polygons, the widest 100 km.</source>
        <translation>AREA: Layer „%1“ ist nicht brauchbar: %2. Zeichnen Sie ein Polygon oder mehrere, das weiteste 100 km.</translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseParameters</name>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Leer: das Feld „name“, falls es eines gibt.</translation>
    </message>
    <message>
        <source>%1 is %2 m and %3 is %4 m: the shortest leg cannot be longer than the longest.</source>
        <translation>%1 ist %2 m und %3 ist %4 m: Die kürzeste Teilstrecke kann nicht länger sein als die längste.</translation>
    </message>
    <message>
        <source>%1 is %2, but a course back to its start needs three legs or more. Give more, or turn %3 off.</source>
        <translation>%1 ist %2, aber eine Route zurück zu ihrem Start braucht drei Teilstrecken oder mehr. Geben Sie mehr an oder schalten Sie %3 aus.</translation>
    </message>
    <message>
        <source>%1: give a layer with the polygons that courses stay in.</source>
        <translation>%1: Geben Sie einen Layer mit den Polygonen an, in denen die Routen bleiben.</translation>
    </message>
    <message>
        <source>Area that courses stay in (polygons)</source>
        <translation>Gebiet, in dem die Routen bleiben (Polygone)</translation>
    </message>
    <message>
        <source>Every leg lies wholly inside. Holes are out of bounds; polygons that touch are one area.</source>
        <translation>Jede Teilstrecke liegt ganz darin. Löcher dürfen nicht betreten werden; Polygone, die sich berühren, sind ein Gebiet.</translation>
    </message>
    <message>
        <source>Starts (points)</source>
        <translation>Starts (Punkte)</translation>
    </message>
    <message>
        <source>Where groups set out. Courses are dealt to the starts in turn, by their names; several may share one. Empty: one is chosen, a site where sites are given.</source>
        <translation>Wo Gruppen losgehen. Die Routen werden reihum auf die Starts verteilt, nach deren Namen; mehrere können sich einen teilen. Leer: Einer wird gewählt, unter den Stellen für Posten, wenn solche angegeben sind.</translation>
    </message>
    <message>
        <source>Field with the start&apos;s name</source>
        <translation>Feld mit dem Namen des Starts</translation>
    </message>
    <message>
        <source>Sites for controls (points)</source>
        <translation>Stellen für Posten (Punkte)</translation>
    </message>
    <message>
        <source>Boulders, stumps, gate posts: what can be known for certain on reaching it. Empty: controls stand anywhere, and a marker has to be hung up at each.</source>
        <translation>Felsblöcke, Baumstümpfe, Torpfosten: was man bei der Ankunft sicher erkennt. Leer: Posten stehen irgendwo, und an jedem muss eine Markierung aufgehängt werden.</translation>
    </message>
    <message>
        <source>Field with the site&apos;s name</source>
        <translation>Feld mit dem Namen der Stelle</translation>
    </message>
    <message>
        <source>Ground to keep away from</source>
        <translation>Gelände, von dem man wegbleibt</translation>
    </message>
    <message>
        <source>Ponds, cliffs, roads, flower beds: layers of polygons, lines or points that no leg meets.</source>
        <translation>Teiche, Felsabbrüche, Straßen, Blumenbeete: Layer mit Polygonen, Linien oder Punkten, auf die keine Teilstrecke trifft.</translation>
    </message>
    <message>
        <source>Courses</source>
        <translation>Routen</translation>
    </message>
    <message>
        <source>How many different courses, one for each group.</source>
        <translation>Wie viele verschiedene Routen, eine für jede Gruppe.</translation>
    </message>
    <message>
        <source>Legs of a course</source>
        <translation>Teilstrecken einer Route</translation>
    </message>
    <message>
        <source>Each course has so many; back to its start, three or more.</source>
        <translation>Jede Route hat so viele; zurück zu ihrem Start drei oder mehr.</translation>
    </message>
    <message>
        <source>Shortest leg (m)</source>
        <translation>Kürzeste Teilstrecke (m)</translation>
    </message>
    <message>
        <source>In metres on the map. In a garden 15, in a forest 200.</source>
        <translation>In Metern auf der Karte. In einem Garten 15, in einem Wald 200.</translation>
    </message>
    <message>
        <source>Longest leg (m)</source>
        <translation>Längste Teilstrecke (m)</translation>
    </message>
    <message>
        <source>In metres on the map. In a garden 30, in a forest 400.</source>
        <translation>In Metern auf der Karte. In einem Garten 30, in einem Wald 400.</translation>
    </message>
    <message>
        <source>Least turn at a control (degrees)</source>
        <translation>Kleinste Richtungsänderung an einem Posten (Grad)</translation>
    </message>
    <message>
        <source>The bearing changes by at least this many degrees, so that nobody walks on without setting the dial anew.</source>
        <translation>Die Richtung ändert sich um mindestens so viele Grad, damit niemand weitergeht, ohne den Skalenring neu einzustellen.</translation>
    </message>
    <message>
        <source>Back to the start</source>
        <translation>Zurück zum Start</translation>
    </message>
    <message>
        <source>The last leg leads back to the start. Off: a course ends at its last control.</source>
        <translation>Die letzte Teilstrecke führt zurück zum Start. Aus: Eine Route endet an ihrem letzten Posten.</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Zufallszahl</translation>
    </message>
    <message>
        <source>The same seed gives the same courses again, another one gives others.</source>
        <translation>Dieselbe Zahl ergibt wieder dieselben Routen, eine andere ergibt andere.</translation>
    </message>
    <message>
        <source>Room to what is kept away from (m)</source>
        <translation>Abstand zu dem, wovon man wegbleibt (m)</translation>
    </message>
    <message>
        <source>No leg comes nearer to it than this, in metres. Walkers drift: give more at water and cliffs.</source>
        <translation>Keine Teilstrecke kommt dem näher als so viele Meter. Geher driften ab: Geben Sie an Wasser und Felsabbrüchen mehr an.</translation>
    </message>
    <message>
        <source>Steepest ground (degrees)</source>
        <translation>Steilstes Gelände (Grad)</translation>
    </message>
    <message>
        <source>No leg leads over ground steeper than this, in whatever direction it falls. Needs a terrain model.</source>
        <translation>Keine Teilstrecke führt über steileres Gelände, in welcher Richtung es auch abfällt. Braucht ein Geländemodell.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons. Draw the area that courses are to stay in.</source>
        <translation>%1: Layer „%2“ hat keine Polygone. Zeichnen Sie das Gebiet, in dem die Routen bleiben sollen.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give at least one start, or leave %1 empty and one is chosen.</source>
        <translation>%1: Layer „%2“ hat keine Punkte. Geben Sie mindestens einen Start an oder lassen Sie %1 leer; dann wird einer gewählt.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</source>
        <translation>
            <numerusform>%1: %n Polygon des Layers „%2“ ist nicht gültig (es kreuzt oder berührt sich selbst). Was eine ungerade Anzahl Male umschlossen ist, zählt als innen. Bessern Sie es mit „Geometrien reparieren“ aus.</numerusform>
            <numerusform>%1: %n Polygone des Layers „%2“ sind nicht gültig (sie kreuzen oder berühren sich selbst). Was eine ungerade Anzahl Male umschlossen ist, zählt als innen. Bessern Sie sie mit „Geometrien reparieren“ aus.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseWriter</name>
    <message>
        <source>Course lines</source>
        <translation>Linien der Routen</translation>
    </message>
    <message>
        <source>A line for each course, a vertex at each control; Annotate legs takes it as it is.</source>
        <translation>Eine Linie für jede Route, ein Stützpunkt an jedem Posten; „Teilstrecken berechnen“ nimmt sie, wie sie ist.</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Posten</translation>
    </message>
    <message>
        <source>A point for each start, control and finish of each course, with its name; named points for Annotate legs.</source>
        <translation>Ein Punkt für jeden Start, jeden Posten und jedes Ziel jeder Route, mit seinem Namen; benannte Punkte für „Teilstrecken berechnen“.</translation>
    </message>
    <message>
        <source>Courses laid out</source>
        <translation>Angelegte Routen</translation>
    </message>
    <message>
        <source>Places that controls stand at</source>
        <translation>Orte, an denen Posten stehen</translation>
    </message>
    <message>
        <source>Legs that more than one course has</source>
        <translation>Teilstrecken, die mehr als eine Route hat</translation>
    </message>
    <message>
        <source>Farthest that courses are out of balance (percent)</source>
        <translation>Größte Ungleichheit der Routen (Prozent)</translation>
    </message>
    <message>
        <source>%1 outside the area</source>
        <translation>%1 außerhalb des Gebiets</translation>
    </message>
    <message>
        <source>%1 in or too near to what is kept away from</source>
        <translation>%1 in dem oder zu nahe an dem, wovon man wegbleibt</translation>
    </message>
    <message>
        <source>%1 on ground that nobody walks, or of which nothing is known</source>
        <translation>%1 in Gelände, das niemand begeht oder von dem nichts bekannt ist</translation>
    </message>
    <message>
        <source>%1 beyond the %2 that can be looked at</source>
        <translation>%1 über die %2 hinaus, die betrachtet werden können</translation>
    </message>
    <message>
        <source>%1: points passed over: %2. Left: %3.</source>
        <translation>%1: Übergangene Punkte: %2. Übrig: %3.</translation>
    </message>
    <message>
        <source>%1 at the place of another</source>
        <translation>%1 am Ort eines anderen</translation>
    </message>
    <message>
        <source>%1 within %2 m of another or of a start, where walkers could take one for the other</source>
        <translation>%1 näher als %2 m an einem anderen oder an einem Start, wo Geher den einen für den anderen halten könnten</translation>
    </message>
    <message>
        <source>STARTS: there are %1 starts for %2 courses; not all are used.</source>
        <translation>STARTS: Es gibt %1 Starts für %2 Routen; nicht alle werden benutzt.</translation>
    </message>
    <message>
        <source>%1 are too short or too long when measured</source>
        <translation>%1 nachgemessen zu kurz oder zu lang sind</translation>
    </message>
    <message>
        <source>%1 leave the area</source>
        <translation>%1 das Gebiet verlassen</translation>
    </message>
    <message>
        <source>%1 come too near to what is kept away from</source>
        <translation>%1 dem zu nahe kommen, wovon man wegbleibt</translation>
    </message>
    <message>
        <source>%1 cross ground that nobody walks</source>
        <translation>%1 Gelände kreuzen, das niemand begeht</translation>
    </message>
    <message>
        <source>%1 cross ground whose cover is not known</source>
        <translation>%1 Gelände kreuzen, dessen Bewuchs nicht bekannt ist</translation>
    </message>
    <message>
        <source>%1 cross ground without heights</source>
        <translation>%1 Gelände ohne Höhen kreuzen</translation>
    </message>
    <message>
        <source>%1 cross ground that is too steep</source>
        <translation>%1 zu steiles Gelände kreuzen</translation>
    </message>
    <message>
        <source>No two places lie %1 to %2 m apart.</source>
        <translation>Keine zwei Orte liegen %1 bis %2 m auseinander.</translation>
    </message>
    <message>
        <source>Of %1 legs tried all are open.</source>
        <translation>Von %1 versuchten Teilstrecken sind alle frei.</translation>
    </message>
    <message>
        <source>Of %1 legs tried %2.</source>
        <translation>Von %1 versuchten Teilstrecken gilt, dass %2.</translation>
    </message>
    <message>
        <source>STARTS: none of the starts can be used. Put one inside the area, away from what is kept away from and on ground that can be walked; or leave STARTS empty.</source>
        <translation>STARTS: Keiner der Starts ist brauchbar. Setzen Sie einen in das Gebiet, weg von dem, wovon man wegbleibt, und in begehbares Gelände; oder lassen Sie STARTS leer.</translation>
    </message>
    <message>
        <source>SITES: a course of %1 legs needs %2 sites beside its start, but only %3 can be used that lie farther than %4 m from each other and from the starts. Give more sites, fewer or shorter legs, or better walkers.</source>
        <translation>SITES: Eine Route mit %1 Teilstrecken braucht außer ihrem Start %2 Stellen, aber nur %3 sind brauchbar, die weiter als %4 m voneinander und von den Starts entfernt liegen. Geben Sie mehr Stellen, weniger oder kürzere Teilstrecken oder bessere Geher an.</translation>
    </message>
    <message>
        <source>AREA: layer “%1” has room for %2 controls only that lie farther than %3 m from each other (so far walkers may be off after the shortest leg); a course of %4 legs needs %5. Give a larger area, fewer or shorter legs.</source>
        <translation>AREA: Layer „%1“ hat nur für %2 Posten Platz, die weiter als %3 m voneinander entfernt liegen (so weit können Geher nach der kürzesten Teilstrecke danebenliegen); eine Route mit %4 Teilstrecken braucht %5. Geben Sie ein größeres Gebiet, weniger oder kürzere Teilstrecken an.</translation>
    </message>
    <message>
        <source>No course of %1 legs of %2 to %3 m was found. %4 Give a larger area, more sites, another length of legs, fewer legs, or a smaller TURN_MIN.</source>
        <translation>Es wurde keine Route mit %1 Teilstrecken von %2 bis %3 m gefunden. %4 Geben Sie ein größeres Gebiet, mehr Stellen, eine andere Länge der Teilstrecken, weniger Teilstrecken oder ein kleineres TURN_MIN an.</translation>
    </message>
    <message>
        <source>COURSES: only %1 of %2 courses were found that differ from each other. %3 Give a larger area, more sites, or legs of more different lengths.</source>
        <translation>COURSES: Nur %1 von %2 Routen wurden gefunden, die sich voneinander unterscheiden. %3 Geben Sie ein größeres Gebiet, mehr Stellen oder Teilstrecken von verschiedeneren Längen an.</translation>
    </message>
    <message>
        <source>Length %1 to %2 m</source>
        <translation>Länge %1 bis %2 m</translation>
    </message>
    <message>
        <source>Climb %1 to %2 m</source>
        <translation>Anstieg %1 bis %2 m</translation>
    </message>
    <message>
        <source>Walking %1 to %2 minutes</source>
        <translation>Gehzeit %1 bis %2 Minuten</translation>
    </message>
    <message>
        <source>Slowed by cover %1 to %2 times</source>
        <translation>Durch Bewuchs %1- bis %2-mal so lang</translation>
    </message>
    <message>
        <source>Drift %1 to %2 m a leg</source>
        <translation>Abdrift %1 bis %2 m je Teilstrecke</translation>
    </message>
    <message>
        <source>%1: out of balance by %2 percent, more than the 10 aimed at. Give more room, more sites, or a wider range of lengths.</source>
        <translation>%1: um %2 Prozent ungleich, mehr als die angestrebten 10. Geben Sie mehr Platz, mehr Stellen oder einen weiteren Bereich von Längen an.</translation>
    </message>
    <message>
        <source>%1: within %2 percent.</source>
        <translation>%1: innerhalb von %2 Prozent.</translation>
    </message>
    <message numerus="yes">
        <source>%n leg(s) are walked by more than one course: let those groups set out at different times.</source>
        <translation>
            <numerusform>%n Teilstrecke gehört zu mehr als einer Route: Lassen Sie diese Gruppen zu verschiedenen Zeiten losgehen.</numerusform>
            <numerusform>%n Teilstrecken gehören zu mehr als einer Route: Lassen Sie diese Gruppen zu verschiedenen Zeiten losgehen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n course(s) come over their own ground twice.</source>
        <translation>
            <numerusform>%n Route kommt zweimal über ihr eigenes Gelände.</numerusform>
            <numerusform>%n Routen kommen zweimal über ihr eigenes Gelände.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) a leg passes by another control, within twice the drift there: tell walkers to look for the letter of their own.</source>
        <translation>
            <numerusform>%n Mal führt eine Teilstrecke an einem anderen Posten vorbei, innerhalb der doppelten Abdrift dort: Sagen Sie den Gehern, dass sie auf den Buchstaben ihres eigenen achten.</numerusform>
            <numerusform>%n Mal führt eine Teilstrecke an einem anderen Posten vorbei, innerhalb der doppelten Abdrift dort: Sagen Sie den Gehern, dass sie auf den Buchstaben ihres eigenen achten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>SITES: %n control(s) have the name of another one. Their letters tell them apart; better give each site a name of its own.</source>
        <translation>
            <numerusform>SITES: %n Posten hat den Namen eines anderen. Ihre Buchstaben unterscheiden sie; geben Sie besser jeder Stelle einen eigenen Namen.</numerusform>
            <numerusform>SITES: %n Posten haben den Namen eines anderen. Ihre Buchstaben unterscheiden sie; geben Sie besser jeder Stelle einen eigenen Namen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Start %1</source>
        <translation>Start %1</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Course %1</source>
        <translation>Route %1</translation>
    </message>
    <message>
        <source>shares %1 of %2 legs with other courses</source>
        <translation>teilt %1 von %2 Teilstrecken mit anderen Routen</translation>
    </message>
    <message numerus="yes">
        <source>comes over its own ground %n time(s)</source>
        <translation>
            <numerusform>kommt %n Mal über ihr eigenes Gelände</numerusform>
            <numerusform>kommt %n Mal über ihr eigenes Gelände</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>passes by %n other control(s)</source>
        <translation>
            <numerusform>führt an %n anderen Posten vorbei</numerusform>
            <numerusform>führt an %n anderen Posten vorbei</numerusform>
        </translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>climb</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>Bewuchs</translation>
    </message>
    <message>
        <source>drift</source>
        <translation>Abdrift</translation>
    </message>
    <message>
        <source>%1 %2 percent over the mean</source>
        <translation>%1 %2 Prozent über dem Mittel</translation>
    </message>
    <message>
        <source>%1 %2 percent under the mean</source>
        <translation>%1 %2 Prozent unter dem Mittel</translation>
    </message>
</context>
<context>
    <name>brushline::Provider</name>
    <message>
        <source>Brushline: compass legs through cover</source>
        <translation>Brushline: Kompass-Teilstrecken durch Bewuchs</translation>
    </message>
</context>
<context>
    <name>brushline::RasterInput</name>
    <message>
        <source>%1: raster “%2” %3</source>
        <translation>%1: Raster „%2“ %3</translation>
    </message>
    <message>
        <source>has no coordinate reference system. Set it in the layer&apos;s properties.</source>
        <translation>hat kein Koordinatenbezugssystem. Setzen Sie es in den Eigenschaften des Layers.</translation>
    </message>
    <message>
        <source>cannot be read.</source>
        <translation>lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>has no cells of fixed size. Save it as a file first.</source>
        <translation>hat keine Zellen fester Größe. Speichern Sie es zuerst als Datei.</translation>
    </message>
    <message>
        <source>has bands 1 to %1; %2 asks for band %3.</source>
        <translation>hat die Kanäle 1 bis %1; %2 verlangt Kanal %3.</translation>
    </message>
    <message>
        <source>%1: raster “%2” could not be read near %3, %4 (%5). Is its file whole? Copy it anew from where it came.</source>
        <translation>%1: Das Raster „%2“ ließ sich bei %3, %4 nicht lesen (%5). Ist seine Datei vollständig? Kopieren Sie sie neu von dort, woher sie kam.</translation>
    </message>
    <message>
        <source>the host gives no reason</source>
        <translation>das Wirtsprogramm nennt keinen Grund</translation>
    </message>
</context>
<context>
    <name>brushline::RasterOutput</name>
    <message>
        <source>%1 (%2): “%3” cannot be written. Is its folder there, may it be written to, and does the host know the format by that ending?</source>
        <translation>%1 (%2): „%3“ lässt sich nicht schreiben. Gibt es den Ordner, darf darin geschrieben werden, und kennt das Wirtsprogramm das Format an dieser Endung?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so it was left out. Is the disk full?</source>
        <translation>%1: „%2“ ließ sich nicht ganz schreiben (%3) und wurde daher weggelassen. Ist der Datenträger voll?</translation>
    </message>
    <message>
        <source>its end is missing</source>
        <translation>ihr Ende fehlt</translation>
    </message>
</context>
<context>
    <name>brushline::RecordsParameters</name>
    <message>
        <source>Write 042, 42.5 or 42,5 (in the dial&apos;s unit), 42°, 42°30&apos;, N 42 E, S68-05-35W, NE, 0747 mil or 47 gon.</source>
        <translation>Schreiben Sie 042, 42.5 oder 42,5 (in der Einheit des Skalenrings), 42°, 42°30&apos;, N 42 E, S68-05-35W, NE, 0747 mil oder 47 gon (Ost ist E).</translation>
    </message>
    <message>
        <source>has no bearing.</source>
        <translation>hat keine Richtung.</translation>
    </message>
    <message>
        <source>has the bearing “%1”; bearings count clockwise from 0.</source>
        <translation>hat die Richtung „%1“; Richtungen zählen im Uhrzeigersinn ab 0.</translation>
    </message>
    <message>
        <source>has the bearing “%1”, more than a full circle. Is it in another unit than the dial&apos;s (DIAL_UNIT)?</source>
        <translation>hat die Richtung „%1“, mehr als einen vollen Kreis. Ist sie in einer anderen Einheit als der des Skalenrings (DIAL_UNIT)?</translation>
    </message>
    <message>
        <source>has the bearing “%1”; from north or south towards east or west it is 90 degrees at most.</source>
        <translation>hat die Richtung „%1“; von Nord oder Süd gegen Ost oder West sind es höchstens 90 Grad.</translation>
    </message>
    <message>
        <source>has the bearing “%1”; minutes and seconds are below 60.</source>
        <translation>hat die Richtung „%1“; Minuten und Sekunden sind kleiner als 60.</translation>
    </message>
    <message>
        <source>has the bearing “%1”: degrees, or the dial&apos;s unit? Write N 42° E or N 47 gon E.</source>
        <translation>hat die Richtung „%1“: Grad oder die Einheit des Skalenrings? Schreiben Sie N 42° E oder N 47 gon E.</translation>
    </message>
    <message>
        <source>has the bearing “%1”, which cannot be read.</source>
        <translation>hat die Richtung „%1“, die sich nicht lesen lässt.</translation>
    </message>
    <message>
        <source>paces</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Write a number above 0: 62, 62.5, 62,5 or 62 paces.</source>
        <translation>Schreiben Sie eine Zahl über 0: 62, 62.5, 62,5 oder 62 paces.</translation>
    </message>
    <message>
        <source>Write metres above 0: 47, 47.5, 47,5 m or 0.12 km.</source>
        <translation>Schreiben Sie Meter über 0: 47, 47.5, 47,5 m oder 0.12 km.</translation>
    </message>
    <message>
        <source>has no %1.</source>
        <translation>hat keine Angabe für „%1“.</translation>
    </message>
    <message>
        <source>has the %1 “%2”.</source>
        <translation>hat für „%1“ die Angabe „%2“.</translation>
    </message>
    <message>
        <source>%1: name the field with the bearings.</source>
        <translation>%1: Nennen Sie das Feld mit den Richtungen.</translation>
    </message>
    <message>
        <source>%1 and %2 are both given: name one, since nobody could tell which to believe.</source>
        <translation>%1 und %2 sind beide angegeben: Nennen Sie eines, denn niemand wüsste, welchem zu glauben ist.</translation>
    </message>
    <message>
        <source>%1 or %2: name the field with the paces or the one with the distances.</source>
        <translation>%1 oder %2: Nennen Sie das Feld mit den Schritten oder das mit den Längen.</translation>
    </message>
    <message>
        <source>has no order. Number the legs of each route in the order they are walked.</source>
        <translation>hat keine Reihenfolge. Nummerieren Sie die Teilstrecken jeder Route in der Reihenfolge, in der sie gegangen werden.</translation>
    </message>
    <message>
        <source>has the order “%1”, which is no number. Number the legs of each route in the order they are walked.</source>
        <translation>hat die Reihenfolge „%1“; das ist keine Zahl. Nummerieren Sie die Teilstrecken jeder Route in der Reihenfolge, in der sie gegangen werden.</translation>
    </message>
    <message>
        <source>was counted by “%1”, whom the table of walkers (WALKERS) does not have.</source>
        <translation>wurde von „%1“ gezählt; diesen Namen hat die Tabelle der Geher (WALKERS) nicht.</translation>
    </message>
    <message>
        <source>does not say who counted. Fill its field for that, or leave one walker.</source>
        <translation>sagt nicht, wer gezählt hat. Füllen Sie das Feld dafür aus oder lassen Sie nur einen Geher übrig.</translation>
    </message>
    <message>
        <source>is %1 m long; a leg has %2 to %3 m. Mend the number, or delete the row.</source>
        <translation>ist %1 m lang; eine Teilstrecke hat %2 bis %3 m. Berichtigen Sie die Zahl oder löschen Sie die Zeile.</translation>
    </message>
    <message>
        <source>%1: layer “%2”, rows %3 and %4 have the same order in route “%5”, so which comes first is not known. Give each leg of a route its own number.</source>
        <translation>%1: Layer „%2“, die Zeilen %3 und %4 haben in Route „%5“ dieselbe Reihenfolge; daher ist nicht bekannt, welche zuerst kommt. Geben Sie jeder Teilstrecke einer Route eine eigene Nummer.</translation>
    </message>
    <message>
        <source>Bearings and paces (table)</source>
        <translation>Richtungen und Schritte (Tabelle)</translation>
    </message>
    <message>
        <source>A row for each leg, as it was written down in the field. Any table, also a CSV file.</source>
        <translation>Eine Zeile für jede Teilstrecke, wie sie im Gelände aufgeschrieben wurde. Irgendeine Tabelle, auch eine CSV-Datei.</translation>
    </message>
    <message>
        <source>Field with the route&apos;s name</source>
        <translation>Feld mit dem Namen der Route</translation>
    </message>
    <message>
        <source>Rows with the same value make one route, also when they do not stand together. Empty: all rows make one route, called 1.</source>
        <translation>Zeilen mit demselben Wert ergeben eine Route, auch wenn sie nicht beieinanderstehen. Leer: Alle Zeilen ergeben eine Route, die 1 heißt.</translation>
    </message>
    <message>
        <source>Field with the order of legs</source>
        <translation>Feld mit der Reihenfolge der Teilstrecken</translation>
    </message>
    <message>
        <source>Numbers (also as text) or times in the order the legs are walked, no two of a route alike. Empty: as the rows stand in the table.</source>
        <translation>Zahlen (auch als Text) oder Zeiten in der Reihenfolge, in der die Teilstrecken gegangen werden, keine zwei einer Route gleich. Leer: wie die Zeilen in der Tabelle stehen.</translation>
    </message>
    <message>
        <source>Field with the bearing</source>
        <translation>Feld mit der Richtung</translation>
    </message>
    <message>
        <source>Numbers in the dial&apos;s unit (042, 42.5, 42,5), or text: 42°, 42°30&apos;, N 42 E, S68-05-35W, NE, 0747 mil, 47 gon.</source>
        <translation>Zahlen in der Einheit des Skalenrings (042, 42.5, 42,5) oder Text: 42°, 42°30&apos;, N 42 E, S68-05-35W, NE, 0747 mil, 47 gon. Ost ist E.</translation>
    </message>
    <message>
        <source>Field with the paces</source>
        <translation>Feld mit den Schritten</translation>
    </message>
    <message>
        <source>What the walker counted, in their kind of paces. This or the field with the distance.</source>
        <translation>Was der Geher gezählt hat, in seiner Art von Schritten. Dieses oder das Feld mit der Länge.</translation>
    </message>
    <message>
        <source>Field with the distance (m)</source>
        <translation>Feld mit der Länge (m)</translation>
    </message>
    <message>
        <source>Horizontal metres, where they were measured and not paced.</source>
        <translation>Waagrechte Meter, wo gemessen wurde und nicht in Schritten gezählt.</translation>
    </message>
    <message>
        <source>Field with who counted</source>
        <translation>Feld, das sagt, wer gezählt hat</translation>
    </message>
    <message>
        <source>A name from the table of walkers; needed when that has several and paces are given.</source>
        <translation>Ein Name aus der Tabelle der Geher; nötig, wenn sie mehrere enthält und Schritte angegeben sind.</translation>
    </message>
    <message>
        <source>%1: give a table with bearings.</source>
        <translation>%1: Geben Sie eine Tabelle mit Richtungen an.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 has %n walkers, and their paces are not the same. Name the field of “%3” that says who counted, or give a table with that one walker.</source>
        <translation>
            <numerusform>%1: %2 hat %n Geher, und ihre Schritte sind nicht gleich. Nennen Sie das Feld von „%3“, das sagt, wer gezählt hat, oder geben Sie eine Tabelle mit diesem einen Geher an.</numerusform>
            <numerusform>%1: %2 hat %n Geher, und ihre Schritte sind nicht gleich. Nennen Sie das Feld von „%3“, das sagt, wer gezählt hat, oder geben Sie eine Tabelle mit diesem einen Geher an.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2”, row %3</source>
        <translation>%1: Layer „%2“, Zeile %3</translation>
    </message>
    <message>
        <source>%1 names no route in its field “%2”, so that some route would be a leg short. Name it, or delete the row.</source>
        <translation>%1 nennt in ihrem Feld „%2“ keine Route, sodass irgendeiner Route eine Teilstrecke fehlte. Nennen Sie sie oder löschen Sie die Zeile.</translation>
    </message>
    <message>
        <source>%1 (route “%2”) %3</source>
        <translation>%1 (Route „%2“) %3</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n empty row(s) of “%2” passed over.</source>
        <translation>
            <numerusform>%1: %n leere Zeile von „%2“ übergangen.</numerusform>
            <numerusform>%1: %n leere Zeilen von „%2“ übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: “%2” has no rows, so there are no legs.</source>
        <translation>%1: „%2“ hat keine Zeilen, es gibt also keine Teilstrecken.</translation>
    </message>
    <message>
        <source>has the bearing “%1”: thousands or decimals? Write 1600 for thousands; for decimals a point, and not three of them: 1.6.</source>
        <translation>hat die Richtung „%1“: Tausender oder Dezimalen? Für Tausender 1600 schreiben; für Dezimalen einen Punkt, und nicht drei davon: 1.6.</translation>
    </message>
    <message>
        <source>has the %1 “%2”: thousands or decimals? Write 1250 for thousands; for decimals a point, and not three of them: 1.25.</source>
        <translation>hat als %1 „%2“: Tausender oder Dezimalen? Für Tausender 1250 schreiben; für Dezimalen einen Punkt, und nicht drei davon: 1.25.</translation>
    </message>
</context>
<context>
    <name>brushline::RouteFinder</name>
    <message>
        <source>there is a way, but none of %1 legs or fewer was found; the quickest, pulled tight, has %2. Raise MAX_LEGS.</source>
        <translation>Es gibt einen Weg, aber keiner mit %1 oder weniger Teilstrecken wurde gefunden; der schnellste, straff gezogen, hat %2. Erhöhen Sie MAX_LEGS.</translation>
    </message>
    <message>
        <source>the legs found cross, by a hair, ground that nobody walks or that has no height. Move start or end a few metres away from it, or give smaller CELLs.</source>
        <translation>Die gefundenen Teilstrecken kreuzen um Haaresbreite Gelände, durch das niemand geht oder das keine Höhe hat. Verschieben Sie Start oder Ende einige Meter davon weg oder geben Sie eine kleinere Zellgröße CELL an.</translation>
    </message>
    <message>
        <source>%1 (%2 % of its border, nearest after %3 m)</source>
        <translation>%1 (%2 % des Randes, am nächsten nach %3 m)</translation>
    </message>
    <message>
        <source>there is no way: the start is enclosed by %1.</source>
        <translation>Es gibt keinen Weg: Der Start ist eingeschlossen, ringsum: %1.</translation>
    </message>
    <message>
        <source>there is no way: the end is enclosed by %1.</source>
        <translation>Es gibt keinen Weg: Das Ende ist eingeschlossen, ringsum: %1.</translation>
    </message>
    <message>
        <source>no way leads out of the start&apos;s own cell: a barrier, or ground that nobody walks, runs through it. Give a smaller CELL, or move the start.</source>
        <translation>aus der Zelle des Starts führt kein Weg hinaus: Eine Barriere oder Gelände, durch das niemand geht, verläuft durch sie. Geben Sie ein kleineres CELL an, oder verschieben Sie den Start.</translation>
    </message>
    <message>
        <source>no way leads out of the end&apos;s own cell: a barrier, or ground that nobody walks, runs through it. Give a smaller CELL, or move the end.</source>
        <translation>aus der Zelle des Endes führt kein Weg hinaus: Eine Barriere oder Gelände, durch das niemand geht, verläuft durch sie. Geben Sie ein kleineres CELL an, oder verschieben Sie das Ende.</translation>
    </message>
</context>
<context>
    <name>brushline::RoutePlotter</name>
    <message>
        <source>leg %1 (row %2)</source>
        <translation>Teilstrecke %1 (Zeile %2)</translation>
    </message>
    <message>
        <source>no compass works where %1 starts, too near the magnetic pole.</source>
        <translation>Kein Kompass taugt, wo %1 beginnt: zu nahe am Magnetpol.</translation>
    </message>
    <message>
        <source>the grid %1 does not reach to where %2 starts: give another %3.</source>
        <translation>Das Gitter %1 reicht nicht bis dorthin, wo %2 beginnt: Geben Sie ein anderes %3 an.</translation>
    </message>
    <message>
        <source>it leads to where %1 does not reach.</source>
        <translation>Sie führt dorthin, wohin %1 nicht reicht.</translation>
    </message>
    <message>
        <source>it leads to where the grid %1 does not reach: give another %2.</source>
        <translation>Sie führt dorthin, wohin das Gitter %1 nicht reicht: Geben Sie ein anderes %2 an.</translation>
    </message>
    <message>
        <source>spread over the legs, the miss of %1 m leaves one of them without length. Leave %2 off.</source>
        <translation>Auf die Teilstrecken verteilt, lässt der Schlussfehler von %1 m eine von ihnen ohne Länge. Lassen Sie %2 aus.</translation>
    </message>
</context>
<context>
    <name>brushline::RouteSource</name>
    <message>
        <source>layer “%1”, feature %2</source>
        <translation>Layer „%1“, Objekt %2</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>hat keine zwei auseinanderliegenden Stützpunkte, also keine Teilstrecke.</translation>
    </message>
    <message>
        <source>%1: %2 %3 Passed over.</source>
        <translation>%1: %2 %3 Übergangen.</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n route(s) could be used.</source>
        <translation>
            <numerusform>%n Route, und sie war nicht brauchbar.</numerusform>
            <numerusform>%n Routen, und keine war brauchbar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) passed over in all.</source>
        <translation>
            <numerusform>Insgesamt %n Route übergangen.</numerusform>
            <numerusform>Insgesamt %n Routen übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features, so there are no legs.</source>
        <translation>%1: Layer „%2“ hat keine Objekte, es gibt also keine Teilstrecken.</translation>
    </message>
    <message>
        <source>has a coordinate that is not a number (vertex %1).</source>
        <translation>hat eine Koordinate, die keine Zahl ist (Stützpunkt %1).</translation>
    </message>
    <message>
        <source>cannot be transformed from %1 to %2: is the layer&apos;s coordinate reference system the right one?</source>
        <translation>lässt sich nicht von %1 nach %2 transformieren: Ist das Koordinatenbezugssystem des Layers das richtige?</translation>
    </message>
    <message>
        <source>latitude and longitude</source>
        <translation>Breite und Länge</translation>
    </message>
    <message>
        <source>has a latitude of %1 degrees, beyond the pole: are latitude and longitude the wrong way round?</source>
        <translation>hat eine Breite von %1 Grad, jenseits des Pols: Sind Breite und Länge vertauscht?</translation>
    </message>
    <message>
        <source>lies outside the grid %1: give another %2.</source>
        <translation>liegt außerhalb des Gitters %1: Geben Sie ein anderes %2 an.</translation>
    </message>
    <message>
        <source>%1: %2 lies at latitude %3, longitude %4, outside the area that %5 is made for. Is the layer&apos;s coordinate reference system the right one?</source>
        <translation>%1: %2 liegt bei Breite %3, Länge %4, außerhalb des Bereichs, für den %5 gemacht ist. Ist das Koordinatenbezugssystem des Layers das richtige?</translation>
    </message>
    <message>
        <source>has no geometry.</source>
        <translation>hat keine Geometrie.</translation>
    </message>
    <message>
        <source>has no line in it.</source>
        <translation>enthält keine Linie.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has points, so the field with their order is needed.</source>
        <translation>%1: Layer „%2“ hat Punkte; daher wird das Feld mit ihrer Reihenfolge gebraucht.</translation>
    </message>
    <message>
        <source>names no route in its field “%1”.</source>
        <translation>nennt in seinem Feld „%1“ keine Route.</translation>
    </message>
    <message>
        <source>has no single point, so route “%1” is not complete.</source>
        <translation>hat keinen einzelnen Punkt; daher ist Route „%1“ nicht vollständig.</translation>
    </message>
    <message>
        <source>%1: features %2 and %3 of layer “%4” have the same value in route “%5”, so their order is not known. Give each point of a route its own number.</source>
        <translation>%1: Die Objekte %2 und %3 des Layers „%4“ haben in Route „%5“ denselben Wert; daher ist ihre Reihenfolge nicht bekannt. Geben Sie jedem Punkt einer Route eine eigene Nummer.</translation>
    </message>
    <message>
        <source>layer “%1”, route “%2”</source>
        <translation>Layer „%1“, Route „%2“</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n leg(s) do not follow the one before them in the layer (first: %2). Each begins a route of its own, with drift, minutes and places from there. Sort the layer by route, walker, direction and leg if that is not meant.</source>
        <translation>
            <numerusform>%1: %n Teilstrecke folgt nicht auf die, die im Layer vor ihr steht (zuerst: %2). Sie beginnt eine eigene Route, mit Abdrift, Minuten und Orten von dort an. Sortieren Sie den Layer nach Route, Geher, Richtung und Teilstrecke, wenn das nicht gemeint ist.</numerusform>
            <numerusform>%1: %n Teilstrecken folgen nicht auf die, die im Layer vor ihnen steht (zuerst: %2). Jede beginnt eine eigene Route, mit Abdrift, Minuten und Orten von dort an. Sortieren Sie den Layer nach Route, Geher, Richtung und Teilstrecke, wenn das nicht gemeint ist.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, leg %2 of route “%3” after leg %4</source>
        <translation>%1, Teilstrecke %2 der Route „%3“ nach Teilstrecke %4</translation>
    </message>
</context>
<context>
    <name>brushline::RoutesParameters</name>
    <message>
        <source>%1: %2 has no value. Number the points of each route in the order they are walked.</source>
        <translation>%1: %2 hat keinen Wert. Nummerieren Sie die Punkte jeder Route in der Reihenfolge, in der sie gegangen werden.</translation>
    </message>
    <message>
        <source>%1: %2 has “%3”, which is no number. Number the points of each route in the order they are walked.</source>
        <translation>%1: %2 hat „%3“; das ist keine Zahl. Nummerieren Sie die Punkte jeder Route in der Reihenfolge, in der sie gegangen werden.</translation>
    </message>
    <message>
        <source>Routes (lines, or points in order)</source>
        <translation>Routen (Linien oder Punkte der Reihe nach)</translation>
    </message>
    <message>
        <source>Planned routes. Lines: each feature is a route, each straight piece of it a leg. Points: give the fields for route and order.</source>
        <translation>Geplante Routen. Linien: Jedes Objekt ist eine Route, jedes gerade Stück davon eine Teilstrecke. Punkte: Geben Sie die Felder für Route und Reihenfolge an.</translation>
    </message>
    <message>
        <source>Field with the route&apos;s name</source>
        <translation>Feld mit dem Namen der Route</translation>
    </message>
    <message>
        <source>Field with the order of points</source>
        <translation>Feld mit der Reihenfolge der Punkte</translation>
    </message>
    <message>
        <source>For points only: numbers (also as text) or times in the order the points are walked, no two of a route alike.</source>
        <translation>Nur für Punkte: Zahlen (auch als Text) oder Zeiten in der Reihenfolge, in der die Punkte gegangen werden, keine zwei einer Route gleich.</translation>
    </message>
    <message>
        <source>Grid of the map (for grid bearings)</source>
        <translation>Gitter der Karte (für Gitterrichtungen)</translation>
    </message>
    <message>
        <source>The projected system whose grid lines are printed on the map. Empty: the routes&apos; own when it is projected, else the UTM zone of each route&apos;s first point.</source>
        <translation>Das projizierte System, dessen Gitterlinien auf die Karte gedruckt sind. Leer: das der Routen, wenn es projiziert ist, sonst die UTM-Zone des ersten Punktes jeder Route.</translation>
    </message>
    <message>
        <source>%1: give a layer with routes.</source>
        <translation>%1: Geben Sie einen Layer mit Routen an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features. Give a layer with routes, as lines or points.</source>
        <translation>%1: Layer „%2“ hat keine Objekte. Geben Sie einen Layer mit Routen an, als Linien oder Punkte.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no coordinate reference system, so nobody can tell where its routes lie. Set it in the layer&apos;s properties.</source>
        <translation>%1: Layer „%2“ hat kein Koordinatenbezugssystem; niemand kann daher sagen, wo seine Routen liegen. Setzen Sie es in den Eigenschaften des Layers.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has neither lines nor points.</source>
        <translation>%1: Layer „%2“ hat weder Linien noch Punkte.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has points, so the field with their order is needed.</source>
        <translation>%1: Layer „%2“ hat Punkte; daher wird das Feld mit ihrer Reihenfolge gebraucht.</translation>
    </message>
    <message>
        <source>Names the routes. Points with the same value make one route. Without it lines are numbered from 1, and all points make one route. A line that it does not name is called # and its number.</source>
        <translation>Benennt die Routen. Punkte mit demselben Wert ergeben eine Route. Ohne es werden Linien ab 1 nummeriert, und alle Punkte ergeben eine Route. Eine Linie, die es nicht benennt, heißt # und ihre Nummer.</translation>
    </message>
</context>
<context>
    <name>brushline::ShapesReader</name>
    <message numerus="yes">
        <source>%1: %n feature(s) of layer “%2” are without a usable geometry, whole or in part; passed over.</source>
        <translation>
            <numerusform>%1: %n Objekt des Layers „%2“ ist ganz oder zum Teil ohne brauchbare Geometrie; übergangen.</numerusform>
            <numerusform>%1: %n Objekte des Layers „%2“ sind ganz oder zum Teil ohne brauchbare Geometrie; übergangen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::SheetWords</name>
    <message>
        <source>Route without a name</source>
        <translation>Route ohne Namen</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>out</source>
        <translation>hin</translation>
    </message>
    <message>
        <source>%1&#xa0;m</source>
        <translation>%1&#xa0;m</translation>
    </message>
    <message>
        <source>%1&#xa0;min</source>
        <translation>%1&#xa0;min</translation>
    </message>
    <message>
        <source>%1 (%2&#xa0;h %3&#xa0;min)</source>
        <translation>%1 (%2&#xa0;h %3&#xa0;min)</translation>
    </message>
    <message>
        <source>1 leg</source>
        <translation>1 Teilstrecke</translation>
    </message>
    <message>
        <source>%1 legs</source>
        <translation>%1 Teilstrecken</translation>
    </message>
    <message>
        <source>1 pace</source>
        <translation>1 Schritt</translation>
    </message>
    <message>
        <source>%1 paces</source>
        <translation>%1 Schritte</translation>
    </message>
    <message>
        <source>a day that is not known</source>
        <translation>ein nicht bekannter Tag</translation>
    </message>
    <message>
        <source>0.0°</source>
        <translation>0.0°</translation>
    </message>
    <message>
        <source>%1° west</source>
        <translation>%1° West</translation>
    </message>
    <message>
        <source>%1° east</source>
        <translation>%1° Ost</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>There are no numbers for the dial on these legs.</source>
        <translation>Zu diesen Teilstrecken gibt es keine Marschzahlen.</translation>
    </message>
    <message>
        <source>The dial numbers are from magnetic north: set them as they stand, on a compass without correction for declination.</source>
        <translation>Die Marschzahlen zählen ab magnetisch Nord: so einstellen, wie sie dastehen, an einem Kompass ohne Korrektur der Deklination.</translation>
    </message>
    <message>
        <source>The dial numbers are from true north: for a compass that is set to correct for this declination.</source>
        <translation>Die Marschzahlen zählen ab geographisch Nord: für einen Kompass, der so eingestellt ist, dass er diese Deklination korrigiert.</translation>
    </message>
    <message>
        <source>The dial numbers are from grid north, that of the map’s grid lines: for a compass that is set to correct for the angle from grid north to magnetic north.</source>
        <translation>Die Marschzahlen zählen ab Gitternord, dem Nord der Gitterlinien auf der Karte: für einen Kompass, der so eingestellt ist, dass er den Winkel von Gitternord zu magnetisch Nord korrigiert.</translation>
    </message>
    <message>
        <source>magnetic north</source>
        <translation>magnetisch Nord</translation>
    </message>
    <message>
        <source>true north</source>
        <translation>geographisch Nord</translation>
    </message>
    <message>
        <source>grid north</source>
        <translation>Gitternord</translation>
    </message>
    <message>
        <source>These legs do not tell from which north the dial numbers are. Ask who made them before you use them.</source>
        <translation>Diese Teilstrecken sagen nicht, ab welchem Nord die Marschzahlen zählen. Fragen Sie, wer sie gemacht hat, bevor Sie sie benutzen.</translation>
    </message>
    <message>
        <source>These legs do not tell for certain from which north the dial numbers are: %1. Ask who made them.</source>
        <translation>Diese Teilstrecken sagen nicht sicher, ab welchem Nord die Marschzahlen zählen: %1. Fragen Sie, wer sie gemacht hat.</translation>
    </message>
    <message>
        <source> or </source>
        <comment>between two norths</comment>
        <translation> oder </translation>
    </message>
    <message>
        <source>what is in the way</source>
        <translation>was im Weg ist</translation>
    </message>
    <message>
        <source>Turn left, a quarter turn.</source>
        <translation>Nach links, eine Vierteldrehung.</translation>
    </message>
    <message>
        <source>Turn right, a quarter turn.</source>
        <translation>Nach rechts, eine Vierteldrehung.</translation>
    </message>
    <message>
        <source>Along the line.</source>
        <translation>Auf der Linie.</translation>
    </message>
    <message>
        <source>On along the line.</source>
        <translation>Weiter auf der Linie.</translation>
    </message>
    <message>
        <source>Past %1.</source>
        <translation>Vorbei: %1.</translation>
    </message>
    <message>
        <source>Back to the line.</source>
        <translation>Zurück zur Linie.</translation>
    </message>
    <message>
        <source>Out to the left of the line, round %1.</source>
        <translation>Links von der Linie hinaus, um: %1.</translation>
    </message>
    <message>
        <source>Out to the right of the line, round %1.</source>
        <translation>Rechts von der Linie hinaus, um: %1.</translation>
    </message>
    <message>
        <source>Out from the line, round %1.</source>
        <translation>Von der Linie hinaus, um: %1.</translation>
    </message>
    <message>
        <source>These paces do not count for the leg.</source>
        <translation>Diese Schritte zählen nicht für die Teilstrecke.</translation>
    </message>
    <message>
        <source>Count from 0 to %1.</source>
        <translation>Von 0 bis %1 zählen.</translation>
    </message>
    <message>
        <source>Count on from %1 to %2.</source>
        <translation>Weiterzählen von %1 bis %2.</translation>
    </message>
    <message>
        <source>N</source>
        <comment>compass</comment>
        <translation>N</translation>
    </message>
    <message>
        <source>E</source>
        <comment>compass</comment>
        <translation>E</translation>
    </message>
    <message>
        <source>S</source>
        <comment>compass</comment>
        <translation>S</translation>
    </message>
    <message>
        <source>W</source>
        <comment>compass</comment>
        <translation>W</translation>
    </message>
</context>
<context>
    <name>brushline::SightSurfaceAlgorithm</name>
    <message>
        <source>Sight distance surface</source>
        <translation>Sichtweite als Raster</translation>
    </message>
    <message>
        <source>Sighting</source>
        <translation>Sicht und Peilung</translation>
    </message>
    <message>
        <source>sight,visibility,see,cover,vegetation,forest,stand,stems,raster,thicket,brush</source>
        <translation>Sicht,Sichtweite,sehen,Bewuchs,Vegetation,Wald,Bestand,Stämme,Raster,Dickicht,Gestrüpp</translation>
    </message>
    <message>
        <source>Makes a raster of how far one sees through the cover, from cover polygons, class codes or forest stands.</source>
        <translation>Macht ein Raster, das sagt, wie weit man durch den Bewuchs sieht, aus Bewuchspolygonen, Klassencodes oder Waldbeständen.</translation>
    </message>
    <message>
        <source>Extent</source>
        <translation>Ausdehnung</translation>
    </message>
    <message>
        <source>Empty: that of the cover layer, or of the raster when no polygons are given.</source>
        <translation>Leer: die des Bewuchslayers oder, wenn keine Polygone angegeben sind, des Rasters.</translation>
    </message>
    <message>
        <source>Size of the cells (m)</source>
        <translation>Größe der Zellen (m)</translation>
    </message>
    <message>
        <source>In metres; the cover layer has to be in a projected system.</source>
        <translation>In Metern; der Bewuchslayer muss in einem projizierten System sein.</translation>
    </message>
    <message>
        <source>Sight distance (m)</source>
        <translation>Sichtweite (m)</translation>
    </message>
    <message>
        <source>Give cover: polygons (COVER), class codes (COVER_RASTER) or sights (SIGHT_RASTER).</source>
        <translation>Geben Sie Bewuchs an: Polygone (COVER), Klassencodes (COVER_RASTER) oder Sichtweiten (SIGHT_RASTER).</translation>
    </message>
    <message>
        <source>%1 is in metres, but the cover is in %2, which counts in degrees. Reproject it to a UTM zone or a national grid first.</source>
        <translation>%1 ist in Metern, aber der Bewuchs ist in %2, das in Grad zählt. Projizieren Sie ihn zuerst in eine UTM-Zone oder ein Landesgitter um.</translation>
    </message>
    <message>
        <source>%1 is empty. Give an area that the cover lies in.</source>
        <translation>%1 ist leer. Geben Sie einen Bereich an, in dem der Bewuchs liegt.</translation>
    </message>
    <message>
        <source>%1 of %2 m over this extent makes %3 cells. Give larger cells or a smaller extent.</source>
        <translation>%1 von %2 m ergibt über diese Ausdehnung %3 Zellen. Geben Sie größere Zellen oder eine kleinere Ausdehnung an.</translation>
    </message>
    <message>
        <source>%1 columns and %2 rows written.</source>
        <translation>%1 Spalten und %2 Zeilen geschrieben.</translation>
    </message>
    <message>
        <source>Nothing is known of the cover of any cell, so the raster is empty. Does the cover lie in this extent, and does the table have its classes?</source>
        <translation>Vom Bewuchs keiner einzigen Zelle ist etwas bekannt, das Raster ist also leer. Liegt der Bewuchs in dieser Ausdehnung, und hat die Tabelle seine Klassen?</translation>
    </message>
    <message>
        <source>%1 is %2, so this raster is no SIGHT_RASTER for other algorithms: those want the metres at which half the marks are clear (%1 0.5).</source>
        <translation>%1 ist %2, also taugt dieses Raster nicht als SIGHT_RASTER anderer Algorithmen: Die erwarten die Meter, auf die die Hälfte der Marken klar zu sehen ist (%1 0.5).</translation>
    </message>
</context>
<context>
    <name>brushline::SourceFeatures</name>
    <message>
        <source>%1: the reading of layer “%2” broke off before its end (%3). Nothing is worked out from a part; see to the file or the connection, and run again.</source>
        <translation>%1: Das Lesen des Layers „%2“ brach vor seinem Ende ab (%3). Aus einem Teil wird nichts berechnet; Datei oder Verbindung prüfen und erneut ausführen.</translation>
    </message>
</context>
<context>
    <name>brushline::StandParameters</name>
    <message>
        <source>Stands: field with stems per hectare</source>
        <translation>Bestände: Feld mit Stämmen je Hektar</translation>
    </message>
    <message>
        <source>For polygons that are forest stands: the number of stems per hectare. Sight then comes from stems and diameter, not from a class. It is an upper bound: what grows between the stems counts only through the understorey.</source>
        <translation>Für Polygone, die Waldbestände sind: die Anzahl der Stämme je Hektar. Die Sicht ergibt sich dann aus Stämmen und Durchmesser, nicht aus einer Klasse. Sie ist eine Obergrenze: Was zwischen den Stämmen wächst, zählt nur über den Unterwuchs.</translation>
    </message>
    <message>
        <source>Stands: field with the mean diameter (m)</source>
        <translation>Bestände: Feld mit dem mittleren Durchmesser (m)</translation>
    </message>
    <message>
        <source>Mean diameter of the stems in metres.</source>
        <translation>Mittlerer Durchmesser der Stämme in Metern.</translation>
    </message>
    <message>
        <source>Stands: field with the understorey (1/m)</source>
        <translation>Bestände: Feld mit dem Unterwuchs (1/m)</translation>
    </message>
    <message>
        <source>Extinction by what grows between the stems, per metre; ln 2 divided by the distance at which half the marks are clear in it. Empty: none.</source>
        <translation>Auslöschung durch das, was zwischen den Stämmen wächst, je Meter; ln 2 geteilt durch die Entfernung, auf die darin die Hälfte der Marken klar zu sehen ist. Leer: keine.</translation>
    </message>
    <message>
        <source>%1: give the layer with the stands.</source>
        <translation>%1: Geben Sie den Layer mit den Beständen an.</translation>
    </message>
    <message>
        <source>%1: stands need both the stems per hectare and their diameter.</source>
        <translation>%1: Bestände brauchen beides, die Stämme je Hektar und ihren Durchmesser.</translation>
    </message>
    <message>
        <source>%1: layer “%2”, feature %3: %4 is “%5”; give a number from %6 to %7.</source>
        <translation>%1: Layer „%2“, Objekt %3: %4 ist „%5“; geben Sie eine Zahl von %6 bis %7 an.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n stand(s) of layer “%2” without stems or diameter passed over; what else is given of the cover there counts.</source>
        <translation>
            <numerusform>%1: %n Bestand des Layers „%2“ ohne Stammzahl oder Durchmesser übergangen; was dort sonst vom Bewuchs angegeben ist, zählt.</numerusform>
            <numerusform>%1: %n Bestände des Layers „%2“ ohne Stammzahl oder Durchmesser übergangen; was dort sonst vom Bewuchs angegeben ist, zählt.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::StylePostProcessor</name>
    <message>
        <source>The layer&apos;s style could not be applied: %1</source>
        <translation>Der Stil des Layers ließ sich nicht anwenden: %1</translation>
    </message>
</context>
<context>
    <name>brushline::TerrainParameters</name>
    <message>
        <source>Terrain model (heights in metres)</source>
        <translation>Geländemodell (Höhen in Metern)</translation>
    </message>
    <message>
        <source>Band of the terrain model</source>
        <translation>Kanal des Geländemodells</translation>
    </message>
    <message>
        <source>The band that holds the heights.</source>
        <translation>Der Kanal, der die Höhen enthält.</translation>
    </message>
    <message>
        <source>Heights of the ground in metres, in any projection; below -1000 m or above 9000 m they count as missing. Gives slope length, climb and drop, the slope&apos;s effect on paces and minutes, and the height for the magnetic model.</source>
        <translation>Höhen des Geländes in Metern, in beliebiger Projektion; unter -1000 m oder über 9000 m gelten sie als fehlend. Ergibt Länge am Hang, Anstieg und Abstieg, die Wirkung der Steigung auf Schritte und Minuten und die Höhe für das Magnetfeldmodell.</translation>
    </message>
</context>
<context>
    <name>brushline::ThroughCoverAlgorithm</name>
    <message>
        <source>Plan legs through cover</source>
        <translation>Teilstrecken durch Bewuchs planen</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planung</translation>
    </message>
    <message>
        <source>route,plan,leg,least,cost,path,time,slope,cover,barrier,compass,effort</source>
        <translation>Route,planen,Teilstrecke,kürzeste,Kosten,Weg,Zeit,Hang,Bewuchs,Barriere,Kompass,Aufwand</translation>
    </message>
    <message>
        <source>Plans the few straight compass legs that bring a walker soonest from start to end, by slope, cover and barriers.</source>
        <translation>Plant die wenigen geraden Kompass-Teilstrecken, die einen Geher am schnellsten vom Start zum Ende bringen, nach Hang, Bewuchs und Barrieren.</translation>
    </message>
    <message>
        <source>Barriers (lines or polygons)</source>
        <translation>Barrieren (Linien oder Polygone)</translation>
    </message>
    <message>
        <source>What no leg may cross: cliffs, fences, streams, land that is out of bounds. A gap narrower than two cells counts as closed.</source>
        <translation>Was keine Teilstrecke kreuzen darf: Felsabbrüche, Zäune, Bäche, Land, das nicht betreten werden darf. Eine Lücke, die schmaler ist als zwei Zellen, gilt als geschlossen.</translation>
    </message>
    <message>
        <source>Steepest ground (degrees)</source>
        <translation>Steilstes Gelände (Grad)</translation>
    </message>
    <message>
        <source>Ground steeper than this, in whatever direction, is not walked, also not across the slope. Needs a terrain model.</source>
        <translation>Gelände, das in irgendeiner Richtung steiler ist, wird nicht begangen, auch nicht quer zum Hang. Braucht ein Geländemodell.</translation>
    </message>
    <message>
        <source>Worth of a change of bearing (minutes)</source>
        <translation>Wert einer Richtungsänderung (Minuten)</translation>
    </message>
    <message>
        <source>A further leg has to save more than this, in minutes. Half of it at a named point.</source>
        <translation>Eine weitere Teilstrecke muss mehr als so viele Minuten sparen. An einem benannten Punkt die Hälfte davon.</translation>
    </message>
    <message>
        <source>Most legs</source>
        <translation>Höchstzahl der Teilstrecken</translation>
    </message>
    <message>
        <source>A route has no more legs than this.</source>
        <translation>Eine Route hat nicht mehr Teilstrecken als so viele.</translation>
    </message>
    <message>
        <source>Size of the cells (m)</source>
        <translation>Größe der Zellen (m)</translation>
    </message>
    <message>
        <source>In metres. 0: the terrain model&apos;s cells, or a size that suits the area.</source>
        <translation>In Metern. 0: die Zellen des Geländemodells oder eine Größe, die zum Bereich passt.</translation>
    </message>
    <message>
        <source>Land looked at round the pairs (m)</source>
        <translation>Land um die Paare, das betrachtet wird (m)</translation>
    </message>
    <message>
        <source>How far round starts and ends ways are looked for, in metres. 0: half the longest pair&apos;s distance, at least 300 m.</source>
        <translation>Wie weit um Starts und Enden herum nach Wegen gesucht wird, in Metern. 0: die halbe Entfernung des längsten Paares, mindestens 300 m.</translation>
    </message>
    <message>
        <source>%1: start and end are the same place.</source>
        <translation>%1: Start und Ende sind derselbe Ort.</translation>
    </message>
    <message>
        <source>Passed over.</source>
        <translation>Übergangen.</translation>
    </message>
    <message>
        <source>%1: the start %2.</source>
        <translation>%1: Der Start %2.</translation>
    </message>
    <message>
        <source>%1: the end %2.</source>
        <translation>%1: Das Ende %2.</translation>
    </message>
    <message>
        <source>No route could be planned. %1</source>
        <translation>Es ließ sich keine Route planen. %1</translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) or point(s) passed over in all.</source>
        <translation>
            <numerusform>Insgesamt %n Paar oder Punkt übergangen.</numerusform>
            <numerusform>Insgesamt %n Paare oder Punkte übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Planned for %1, the slowest of the walkers.</source>
        <translation>Geplant für %1, den langsamsten der Geher.</translation>
    </message>
</context>
<context>
    <name>brushline::TrackSource</name>
    <message>
        <source>%1: layer “%2” has neither numbers nor times, so its points are taken in the layer&apos;s order. Give %3 if that is not the order they were recorded in.</source>
        <translation>%1: Layer „%2“ hat weder Nummern noch Zeiten; seine Punkte werden daher in der Reihenfolge des Layers genommen. Geben Sie %3 an, wenn sie nicht in dieser Reihenfolge aufgezeichnet wurden.</translation>
    </message>
    <message>
        <source>layer “%1”, feature %2</source>
        <translation>Layer „%1“, Objekt %2</translation>
    </message>
    <message>
        <source>layer “%1”</source>
        <translation>Layer „%1“</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of track “%2” have no number or time that tells their order; they are passed over.</source>
        <translation>
            <numerusform>%1: %n Punkt des Tracks „%2“ hat keine Nummer oder Zeit, die seine Reihenfolge sagt; er wird übergangen.</numerusform>
            <numerusform>%1: %n Punkte des Tracks „%2“ haben keine Nummer oder Zeit, die ihre Reihenfolge sagt; sie werden übergangen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a usable place passed over.</source>
        <translation>
            <numerusform>%1: %n Punkt des Layers „%2“ ohne brauchbaren Ort übergangen.</numerusform>
            <numerusform>%1: %n Punkte des Layers „%2“ ohne brauchbaren Ort übergangen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” have a time that cannot be read; they are taken without it.</source>
        <translation>
            <numerusform>%1: %n Punkt des Layers „%2“ hat eine Zeit, die sich nicht lesen lässt; er wird ohne sie genommen.</numerusform>
            <numerusform>%1: %n Punkte des Layers „%2“ haben eine Zeit, die sich nicht lesen lässt; sie werden ohne sie genommen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::TracksParameters</name>
    <message>
        <source>Walked tracks (lines or points)</source>
        <translation>Gegangene Tracks (Linien oder Punkte)</translation>
    </message>
    <message>
        <source>What a recorder wrote. Of a GPX file take the layer track_points, which has times; tracks has none.</source>
        <translation>Was ein Gerät aufgezeichnet hat. Von einer GPX-Datei nehmen Sie den Layer track_points, der Zeiten hat; tracks hat keine.</translation>
    </message>
    <message>
        <source>Field with the track&apos;s name</source>
        <translation>Feld mit dem Namen des Tracks</translation>
    </message>
    <message>
        <source>Points with the same value make one track. Empty: track_fid of a GPX file, else track; for lines name.</source>
        <translation>Punkte mit demselben Wert ergeben einen Track. Leer: track_fid einer GPX-Datei, sonst track; bei Linien name.</translation>
    </message>
    <message>
        <source>Field with the order of a track&apos;s points</source>
        <translation>Feld mit der Reihenfolge der Punkte eines Tracks</translation>
    </message>
    <message>
        <source>Numbers or times. Empty: the numbers of a GPX file, else the time, else the layer&apos;s order.</source>
        <translation>Nummern oder Zeiten. Leer: die Nummern einer GPX-Datei, sonst die Zeit, sonst die Reihenfolge des Layers.</translation>
    </message>
    <message>
        <source>Field with the time of points</source>
        <translation>Feld mit der Zeit der Punkte</translation>
    </message>
    <message>
        <source>Date and time, or seconds or milliseconds since 1970. Empty: the field called time, if there is one. Lines have their times as M values in seconds or milliseconds since 1970, or none.</source>
        <translation>Datum und Uhrzeit oder Sekunden oder Millisekunden seit 1970. Leer: das Feld „time“, falls es eines gibt. Linien haben ihre Zeiten als M-Werte in Sekunden oder Millisekunden seit 1970 oder keine.</translation>
    </message>
    <message>
        <source>Field with the route that a track is a walk of</source>
        <translation>Feld mit der Route, die auf dem Track gegangen wurde</translation>
    </message>
    <message>
        <source>Empty: the field called route; else a track whose name is that of a route is a walk of it, and others belong to the route they fit best.</source>
        <translation>Leer: das Feld „route“; sonst gehört ein Track, der den Namen einer Route trägt, zu ihr, und andere gehören zu der Route, zu der sie am besten passen.</translation>
    </message>
    <message>
        <source>Field with the name of who walked a track</source>
        <translation>Feld mit dem Namen dessen, der den Track gegangen ist</translation>
    </message>
    <message>
        <source>Empty: the field called walker; else a track whose name is that of a walker of the legs is theirs.</source>
        <translation>Leer: das Feld „walker“; sonst gehört ein Track, der den Namen eines Gehers der Teilstrecken trägt, diesem.</translation>
    </message>
    <message>
        <source>Error of a track&apos;s points (m, one sigma)</source>
        <translation>Fehler der Punkte eines Tracks (m, ein Sigma)</translation>
    </message>
    <message>
        <source>How far recorded points lie from the truth, in each direction. Under dense trees 4 to 10 m.</source>
        <translation>Wie weit aufgezeichnete Punkte in jeder Richtung danebenliegen. Unter dichten Bäumen 4 bis 10 m.</translation>
    </message>
    <message>
        <source>Fastest anybody walks (m/s)</source>
        <translation>Größte Geschwindigkeit, mit der jemand geht (m/s)</translation>
    </message>
    <message>
        <source>Points that could only be reached faster are spikes, and left out.</source>
        <translation>Punkte, die nur schneller zu erreichen wären, sind Ausreißer und werden weggelassen.</translation>
    </message>
    <message>
        <source>%1: give a layer with tracks.</source>
        <translation>%1: Geben Sie einen Layer mit Tracks an.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has neither lines nor points. Of a GPX file take the layer track_points.</source>
        <translation>%1: Layer „%2“ hat weder Linien noch Punkte. Von einer GPX-Datei nehmen Sie den Layer track_points.</translation>
    </message>
</context>
<context>
    <name>brushline::TraverseParameters</name>
    <message>
        <source>%1: “%2” does not say its coordinate reference system. Write it like 632300,5407100 [EPSG:32621].</source>
        <translation>%1: „%2“ nennt kein Koordinatenbezugssystem. Schreiben Sie es wie 632300,5407100 [EPSG:32621].</translation>
    </message>
    <message>
        <source>%1: “%2” is no place on the Earth in %3. The first number is the easting or longitude, the second the northing or latitude.</source>
        <translation>%1: „%2“ ist in %3 kein Ort auf der Erde. Die erste Zahl ist der Ostwert oder die Länge, die zweite der Nordwert oder die Breite.</translation>
    </message>
    <message>
        <source>%1: layer “%2” of %3 has no field “route” or “name”. Name the one that says which route starts there.</source>
        <translation>%1: Layer „%2“ von %3 hat kein Feld „route“ oder „name“. Nennen Sie das Feld, das sagt, welche Route dort beginnt.</translation>
    </message>
    <message numerus="yes">
        <source>%1 has %n points of that name. Leave the one where it starts.</source>
        <translation>
            <numerusform>%1 hat %n Punkt dieses Namens. Lassen Sie nur den übrig, an dem sie beginnt.</numerusform>
            <numerusform>%1 hat %n Punkte dieses Namens. Lassen Sie nur den übrig, an dem sie beginnt.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has no point of that name; it has: %2.</source>
        <translation>%1 hat keinen Punkt dieses Namens; es enthält: %2.</translation>
    </message>
    <message>
        <source>Nowhere in particular (open)</source>
        <translation>An keinem bestimmten Ort (offen)</translation>
    </message>
    <message>
        <source>Where it starts</source>
        <translation>Wo sie beginnt</translation>
    </message>
    <message>
        <source>At the end point</source>
        <translation>Am Endpunkt</translation>
    </message>
    <message>
        <source>Start of all routes</source>
        <translation>Start aller Routen</translation>
    </message>
    <message>
        <source>Easting and northing with their system: 632300,5407100 [EPSG:32621]. This or the layer with starts; the legs come in the same system.</source>
        <translation>Ostwert und Nordwert mit ihrem System: 632300,5407100 [EPSG:32621]. Dieser oder der Layer mit Starts; die Teilstrecken kommen in demselben System.</translation>
    </message>
    <message>
        <source>Starts (points named by route)</source>
        <translation>Starts (nach der Route benannte Punkte)</translation>
    </message>
    <message>
        <source>A point for each route, with the route&apos;s name.</source>
        <translation>Ein Punkt für jede Route, mit dem Namen der Route.</translation>
    </message>
    <message>
        <source>Field of the starts with the route&apos;s name</source>
        <translation>Feld der Starts mit dem Namen der Route</translation>
    </message>
    <message>
        <source>Empty: the field called “route”, else the one called “name”.</source>
        <translation>Leer: das Feld „route“, sonst das Feld „name“.</translation>
    </message>
    <message>
        <source>End point</source>
        <translation>Endpunkt</translation>
    </message>
    <message>
        <source>A known place where the routes should end; used when they close there.</source>
        <translation>Ein bekannter Ort, an dem die Routen enden sollen; benutzt, wenn sie dort schließen.</translation>
    </message>
    <message>
        <source>Where a route should end</source>
        <translation>Wo eine Route enden soll</translation>
    </message>
    <message>
        <source>How far a route misses that place is told, and tells of blunders.</source>
        <translation>Wie weit eine Route diesen Ort verfehlt, wird gesagt und lässt grobe Fehler erkennen.</translation>
    </message>
    <message>
        <source>Spread the miss over the legs (compass rule)</source>
        <translation>Den Schlussfehler auf die Teilstrecken verteilen (Kompassregel)</translation>
    </message>
    <message>
        <source>Moves each leg&apos;s end by its share of the miss, in proportion to the length walked. Off: the legs come as they were read.</source>
        <translation>Verschiebt das Ende jeder Teilstrecke um ihren Anteil am Schlussfehler, im Verhältnis zur gegangenen Länge. Aus: Die Teilstrecken kommen, wie sie abgelesen wurden.</translation>
    </message>
    <message>
        <source>%1 and %2 are both given: leave one, since a route could start at either.</source>
        <translation>%1 und %2 sind beide angegeben: Lassen Sie eines davon übrig, denn eine Route könnte hier oder dort beginnen.</translation>
    </message>
    <message>
        <source>%1 or %2: give the point where the routes start, or a layer with one for each.</source>
        <translation>%1 oder %2: Geben Sie den Punkt an, an dem die Routen beginnen, oder einen Layer mit einem Punkt für jede.</translation>
    </message>
    <message>
        <source>%1 is 2, so %2 is needed: give the point where the routes should end.</source>
        <translation>%1 ist 2, daher wird %2 gebraucht: Geben Sie den Punkt an, an dem die Routen enden sollen.</translation>
    </message>
    <message>
        <source>%1: an open route has no miss to spread. Set %2 to 1 (it ends at its start) or 2 (at %3).</source>
        <translation>%1: Eine offene Route hat keinen Schlussfehler, der zu verteilen wäre. Setzen Sie %2 auf 1 (sie endet an ihrem Start) oder 2 (bei %3).</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a name passed over.</source>
        <translation>
            <numerusform>%1: %n Punkt des Layers „%2“ ohne Namen übergangen.</numerusform>
            <numerusform>%1: %n Punkte des Layers „%2“ ohne Namen übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is given but not used: set %2 to 2 to close the routes on it.</source>
        <translation>%1 ist angegeben, wird aber nicht benutzt: Setzen Sie %2 auf 2, damit die Routen dort schließen.</translation>
    </message>
</context>
<context>
    <name>brushline::VectorOutput</name>
    <message>
        <source>%1 (%2): “%3” cannot be written, since a FlatGeobuf keeps no table without geometries. Give a name that ends in .gpkg or .csv.</source>
        <translation>%1 (%2): „%3“ lässt sich nicht schreiben, weil ein FlatGeobuf keine Tabelle ohne Geometrien aufnimmt. Geben Sie einen Namen an, der auf .gpkg oder .csv endet.</translation>
    </message>
    <message>
        <source>The unfinished table %1 is left: %2</source>
        <translation>Die unfertige Tabelle %1 bleibt stehen: %2</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be written. Is its folder there, may it be written to, and does the host know the format by that ending?</source>
        <translation>%1 (%2): „%3“ lässt sich nicht schreiben. Gibt es den Ordner, darf darin geschrieben werden, und kennt das Wirtsprogramm das Format an dieser Endung?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so it was left out. Is the disk full, or the file opened elsewhere?</source>
        <translation>%1: „%2“ ließ sich nicht ganz schreiben (%3) und wurde daher weggelassen. Ist der Datenträger voll oder die Datei anderswo geöffnet?</translation>
    </message>
    <message>
        <source>%1 of %2 features are in it</source>
        <translation>%1 von %2 Objekten sind darin</translation>
    </message>
    <message numerus="yes">
        <source>%1: “%2” is a shapefile, which keeps 254 bytes of a text: the texts of %n feature(s) are cut, warnings perhaps among them. Give a name that ends in .gpkg.</source>
        <translation>
            <numerusform>%1: „%2“ ist ein Shapefile, das von einem Text 254 Byte behält: Die Texte von %n Objekt sind gekürzt, vielleicht Warnungen darunter. Geben Sie einen Namen an, der auf .gpkg endet.</numerusform>
            <numerusform>%1: „%2“ ist ein Shapefile, das von einem Text 254 Byte behält: Die Texte von %n Objekten sind gekürzt, vielleicht Warnungen darunter. Geben Sie einen Namen an, der auf .gpkg endet.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::WalkWords</name>
    <message>
        <source>The track does not hold this leg.</source>
        <translation>Der Track enthält diese Teilstrecke nicht.</translation>
    </message>
    <message>
        <source>The track ends on this leg: no error of length, no miss.</source>
        <translation>Der Track endet auf dieser Teilstrecke: kein Längenfehler, keine Abweichung am Ende.</translation>
    </message>
    <message>
        <source>Its end cannot be seen in the track (no turn, no stand): length, miss and minutes are not known.</source>
        <translation>Ihr Ende ist im Track nicht zu erkennen (kein Knick, kein Halt): Länge, Abweichung am Ende und Minuten sind nicht bekannt.</translation>
    </message>
    <message>
        <source>Its start cannot be seen in the track (no turn, no stand): length, miss and minutes are not known.</source>
        <translation>Ihr Anfang ist im Track nicht zu erkennen (kein Knick, kein Halt): Länge, Abweichung am Ende und Minuten sind nicht bekannt.</translation>
    </message>
    <message>
        <source>Neither end can be seen in the track (no turn, no stand): length, miss and minutes are not known.</source>
        <translation>Weder Anfang noch Ende sind im Track zu erkennen (kein Knick, kein Halt): Länge, Abweichung am Ende und Minuten sind nicht bekannt.</translation>
    </message>
    <message>
        <source>Nothing was recorded about one of its ends; it is put where the straight lines meet.</source>
        <translation>Um eines ihrer Enden wurde nichts aufgezeichnet; es ist dorthin gesetzt, wo sich die geraden Linien treffen.</translation>
    </message>
    <message>
        <source>So far off that it may not be this leg: left out of the common errors.</source>
        <translation>So weit daneben, dass es vielleicht nicht diese Teilstrecke ist: bei den gemeinsamen Fehlern weggelassen.</translation>
    </message>
    <message>
        <source>The track&apos;s times run backwards: no minutes.</source>
        <translation>Die Zeiten des Tracks laufen rückwärts: keine Minuten.</translation>
    </message>
    <message>
        <source>The track has no times: no minutes.</source>
        <translation>Der Track hat keine Zeiten: keine Minuten.</translation>
    </message>
    <message>
        <source>No usable times at its ends: no minutes.</source>
        <translation>Keine brauchbaren Zeiten an Anfang und Ende: keine Minuten.</translation>
    </message>
    <message>
        <source>declination forgotten, the true bearing set on a compass that is not set off for it (makes %1°)</source>
        <translation>Deklination vergessen, die geographische Richtung an einem Kompass eingestellt, an dem die Deklination nicht eingestellt ist (ergibt %1°)</translation>
    </message>
    <message>
        <source>declination applied the wrong way round (makes %1°)</source>
        <translation>Deklination mit verkehrtem Vorzeichen angewendet (ergibt %1°)</translation>
    </message>
    <message>
        <source>the magnetic bearing set on a compass that is already set off for declination (makes %1°)</source>
        <translation>die magnetische Richtung an einem Kompass eingestellt, an dem die Deklination schon eingestellt ist (ergibt %1°)</translation>
    </message>
    <message>
        <source>the grid bearing set on a compass set off for true north (makes %1°)</source>
        <translation>die Gitterrichtung an einem Kompass eingestellt, der auf geographisch Nord korrigiert ist (ergibt %1°)</translation>
    </message>
    <message>
        <source>the true bearing set on a compass set off for grid north (makes %1°)</source>
        <translation>die geographische Richtung an einem Kompass eingestellt, der auf Gitternord korrigiert ist (ergibt %1°)</translation>
    </message>
    <message>
        <source>the grid bearing set on a compass that is not set off, grid magnetic angle forgotten (makes %1°)</source>
        <translation>die Gitterrichtung an einem Kompass ohne Korrektur eingestellt, Nadelabweichung vergessen (ergibt %1°)</translation>
    </message>
    <message>
        <source>grid magnetic angle applied the wrong way round (makes %1°)</source>
        <translation>Nadelabweichung mit verkehrtem Vorzeichen angewendet (ergibt %1°)</translation>
    </message>
    <message>
        <source>the magnetic bearing set on a compass set off for grid north (makes %1°)</source>
        <translation>die magnetische Richtung an einem Kompass eingestellt, der auf Gitternord korrigiert ist (ergibt %1°)</translation>
    </message>
    <message>
        <source>One leg tells nothing of a common error of bearing.</source>
        <translation>Eine einzige Teilstrecke sagt nichts über einen gemeinsamen Richtungsfehler.</translation>
    </message>
    <message>
        <source>No common error of bearing to be seen (within %1°).</source>
        <translation>Kein gemeinsamer Richtungsfehler zu erkennen (innerhalb von %1°).</translation>
    </message>
    <message>
        <source>Walks %1° (give or take %2°) to the right of the bearing.</source>
        <translation>Geht %1° (plus oder minus %2°) rechts von der Richtung.</translation>
    </message>
    <message>
        <source>Walks %1° (give or take %2°) to the left of the bearing.</source>
        <translation>Geht %1° (plus oder minus %2°) links von der Richtung.</translation>
    </message>
    <message>
        <source>Possible cause: %1. Look at the compass.</source>
        <translation>Mögliche Ursache: %1. Den Kompass ansehen.</translation>
    </message>
    <message>
        <source>; or </source>
        <translation>; oder </translation>
    </message>
    <message>
        <source>No mix-up of norths explains it: see how the compass is held, and compare it with another one.</source>
        <translation>Keine Verwechslung der Nordrichtungen erklärt es: nachsehen, wie der Kompass gehalten wird, und ihn mit einem anderen vergleichen.</translation>
    </message>
    <message>
        <source>Give annotated legs (with declination) to have it held against mix-ups of norths.</source>
        <translation>Geben Sie berechnete Teilstrecken (mit Deklination) an, um es gegen Verwechslungen der Nordrichtungen halten zu lassen.</translation>
    </message>
    <message>
        <source>One leg tells nothing of a common error of length.</source>
        <translation>Eine einzige Teilstrecke sagt nichts über einen gemeinsamen Längenfehler.</translation>
    </message>
    <message>
        <source>No common error of length to be seen (within %1 %).</source>
        <translation>Kein gemeinsamer Längenfehler zu erkennen (innerhalb von %1 %).</translation>
    </message>
    <message>
        <source>Walks %1 % (give or take %2 %) too far.</source>
        <translation>Geht %1 % (plus oder minus %2 %) zu weit.</translation>
    </message>
    <message>
        <source>Walks %1 % (give or take %2 %) too short.</source>
        <translation>Geht %1 % (plus oder minus %2 %) zu kurz.</translation>
    </message>
    <message>
        <source>If legs were ended by the count of paces, reckon with %1 over 100 m instead of %2.</source>
        <translation>Wenn die Teilstrecken nach der Schrittzahl beendet wurden, mit %1 Schritten auf 100 m statt mit %2 rechnen.</translation>
    </message>
    <message>
        <source>If legs were ended by the count of paces, multiply the count by %1.</source>
        <translation>Wenn die Teilstrecken nach der Schrittzahl beendet wurden, die Schrittzahl mit %1 malnehmen.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>%1 %2 (standard error %3, %4 legs)</source>
        <translation>%1 %2 (Standardfehler %3, %4 Teilstrecken)</translation>
    </message>
    <message>
        <source>%1 %2 (one leg)</source>
        <translation>%1 %2 (eine Teilstrecke)</translation>
    </message>
    <message>
        <source>bearing %1, length %2.</source>
        <translation>Richtung %1, Länge %2.</translation>
    </message>
    <message>
        <source>has fewer than two usable points apart.</source>
        <translation>hat keine zwei brauchbaren Punkte, die auseinanderliegen.</translation>
    </message>
    <message>
        <source>lies in another place: no planned turn is within %1 m of it; from its start to the nearest planned one are %2 m.</source>
        <translation>liegt anderswo: Kein geplanter Knickpunkt liegt näher als %1 m daran; von seinem Anfang bis zum nächsten geplanten sind es %2 m.</translation>
    </message>
    <message>
        <source>is like none of the routes near it: no leg can be recognised in it. If it is a walk of one of them, give a larger TOLERANCE than %1 m.</source>
        <translation>gleicht keiner der Routen in seiner Nähe: Keine Teilstrecke ist darin zu erkennen. Wenn darauf eine von ihnen gegangen wurde, geben Sie ein größeres TOLERANCE als %1 m an.</translation>
    </message>
    <message numerus="yes">
        <source>%n double point(s)</source>
        <translation>
            <numerusform>%n doppelter Punkt</numerusform>
            <numerusform>%n doppelte Punkte</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n spike(s)</source>
        <translation>
            <numerusform>%n Ausreißer</numerusform>
            <numerusform>%n Ausreißer</numerusform>
        </translation>
    </message>
    <message>
        <source>times that run backwards, so none is used</source>
        <translation>Zeiten, die rückwärtslaufen, sodass keine benutzt wird</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) that run backwards</source>
        <translation>
            <numerusform>%n Zeit, die rückwärtsläuft</numerusform>
            <numerusform>%n Zeiten, die rückwärtslaufen</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::WalkedLegsWriter</name>
    <message>
        <source>Walked legs</source>
        <translation>Gegangene Teilstrecken</translation>
    </message>
    <message>
        <source>Profile off the planned line</source>
        <translation>Verlauf neben der geplanten Linie</translation>
    </message>
    <message>
        <source>Each recorded point with how far along the planned leg it lies and how far off its line, in metres, right positive.</source>
        <translation>Jeder aufgezeichnete Punkt mit der Angabe, wie weit er auf der geplanten Teilstrecke liegt und wie weit neben ihrer Linie, in Metern, rechts positiv.</translation>
    </message>
    <message>
        <source>Common errors</source>
        <translation>Gemeinsame Fehler</translation>
    </message>
    <message>
        <source>A row for each track, each walker and all of them: the error that all legs share in bearing (degrees) and length (percent), with standard errors, and what may lie behind it.</source>
        <translation>Eine Zeile für jeden Track, für jeden Geher und für alle zusammen: der Fehler, den alle Teilstrecken in Richtung (Grad) und Länge (Prozent) gemeinsam haben, mit Standardfehlern, und was dahinterstecken kann.</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>Walker “%1”</source>
        <translation>Geher „%1“</translation>
    </message>
    <message>
        <source>Track “%1”</source>
        <translation>Track „%1“</translation>
    </message>
</context>
<context>
    <name>brushline::WalkerParameters</name>
    <message>
        <source>%1: %2 over 100 m, counted in double paces, can be read two ways. Give the number of single steps (twice the double paces).</source>
        <translation>%1: %2 auf 100 m, in Doppelschritten gezählt, lässt sich auf zwei Arten verstehen. Geben Sie die Anzahl der Einzelschritte an (das Doppelte der Doppelschritte).</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: %4 is “%5”; give a number from %6 to %7, with a decimal point.</source>
        <translation>%1: Tabelle „%2“, Objekt %3: %4 ist „%5“; geben Sie eine Zahl von %6 bis %7 an, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no column “walker”. It needs one, and may have paces_100m, pace_kind, pace_err, brg_err, eye_m and speed_f; its columns are: %3.</source>
        <translation>%1: Tabelle „%2“ hat keine Spalte „walker“. Sie braucht eine und darf paces_100m, pace_kind, pace_err, brg_err, eye_m und speed_f haben; ihre Spalten sind: %3.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3 has numbers but no name. Fill its column “walker”, or delete the row.</source>
        <translation>%1: Tabelle „%2“, Objekt %3 hat Zahlen, aber keinen Namen. Füllen Sie seine Spalte „walker“ aus oder löschen Sie die Zeile.</translation>
    </message>
    <message>
        <source>%1: table “%2” has the walker “%3” twice (second time in feature %4). Give each walker a name of their own.</source>
        <translation>%1: Tabelle „%2“ enthält den Geher „%3“ zweimal (das zweite Mal in Objekt %4). Geben Sie jedem Geher einen eigenen Namen.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: pace_kind is %4; give 0 (single steps) or 1 (double paces).</source>
        <translation>%1: Tabelle „%2“, Objekt %3: pace_kind ist %4; geben Sie 0 (Einzelschritte) oder 1 (Doppelschritte) an.</translation>
    </message>
    <message>
        <source>%1: table “%2”, walker “%3”</source>
        <translation>%1: Tabelle „%2“, Geher „%3“</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n empty row(s) of table “%2” passed over.</source>
        <translation>
            <numerusform>%1: %n leere Zeile der Tabelle „%2“ übergangen.</numerusform>
            <numerusform>%1: %n leere Zeilen der Tabelle „%2“ übergangen.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: table “%2” has no walkers. Give it a row for each, or leave the parameter empty.</source>
        <translation>%1: Tabelle „%2“ enthält keine Geher. Geben Sie ihr eine Zeile für jeden oder lassen Sie den Parameter leer.</translation>
    </message>
    <message>
        <source>Single steps</source>
        <translation>Einzelschritte</translation>
    </message>
    <message>
        <source>Double paces (every second step)</source>
        <translation>Doppelschritte (jeder zweite Schritt)</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Slope table</source>
        <translation>Hangtabelle</translation>
    </message>
    <message>
        <source>Off-trail speed function</source>
        <translation>Geschwindigkeitsfunktion für wegloses Gehen</translation>
    </message>
    <message>
        <source>Hiking function, off the path</source>
        <translation>Wanderfunktion, abseits des Pfades</translation>
    </message>
    <message>
        <source>Distance and climb</source>
        <translation>Entfernung und Anstieg</translation>
    </message>
    <message>
        <source>Steps over 100 m, on level ground</source>
        <translation>Schritte auf 100 m, in der Ebene</translation>
    </message>
    <message>
        <source>Single steps the walker takes over 100 m of level ground. Also for one who counts double paces, unless the number is under 90: that can only be double paces already. (90 to 110 could be either and is refused.)</source>
        <translation>Einzelschritte, die der Geher auf 100 m in der Ebene macht. Auch für jemanden, der Doppelschritte zählt, außer die Zahl liegt unter 90: Das können nur schon Doppelschritte sein. (90 bis 110 könnte beides sein und wird zurückgewiesen.)</translation>
    </message>
    <message>
        <source>What the walker counts</source>
        <translation>Was der Geher zählt</translation>
    </message>
    <message>
        <source>Every step, or every second one (each time the same foot comes down).</source>
        <translation>Jeden Schritt oder jeden zweiten (immer wenn derselbe Fuß aufsetzt).</translation>
    </message>
    <message>
        <source>Error of the pace count (percent, 1 sigma)</source>
        <translation>Fehler der Schrittzahl (Prozent, 1 Sigma)</translation>
    </message>
    <message>
        <source>How far a paced distance strays, as a standard deviation in percent. 3 or less on level ground by a practised walker, 5 and more in brush.</source>
        <translation>Wie weit eine nach Schritten gemessene Strecke danebenliegt, als Standardabweichung in Prozent. 3 oder weniger in der Ebene bei geübten Gehern, 5 und mehr im Gestrüpp.</translation>
    </message>
    <message>
        <source>Effect of slope on paces</source>
        <translation>Wirkung der Steigung auf die Schritte</translation>
    </message>
    <message>
        <source>Slope table: steps get shorter uphill and, less so, downhill, by a table of 1917 (Moss, Manual of Military Training); the steps are counted along the ground. Needs a terrain model; without one paces are those of level ground.</source>
        <translation>Hangtabelle: Schritte werden bergauf und, weniger stark, bergab kürzer, nach einer Tabelle von 1917 (Moss, Manual of Military Training); gezählt werden die Schritte entlang des Bodens. Braucht ein Geländemodell; ohne eines gelten die Schritte für ebenes Gelände.</translation>
    </message>
    <message>
        <source>Rule for minutes</source>
        <translation>Regel für die Minuten</translation>
    </message>
    <message>
        <source>Off-trail speed function: measured on people finding their way in hilly woods (Irmischer and Clarke 2018). Hiking function: Tobler 1993, times 0.6 off the path. Distance and climb: 12 minutes a kilometre, 10 for 100 m of climb, less or more for descents (Naismith, Langmuir). Without a terrain model the minutes are those of level ground.</source>
        <translation>Geschwindigkeitsfunktion für wegloses Gehen: gemessen an Menschen, die sich in hügeligem Wald zurechtfanden (Irmischer und Clarke 2018). Wanderfunktion: Tobler 1993, mal 0,6 abseits des Pfades. Entfernung und Anstieg: 12 Minuten je Kilometer, 10 je 100 m Anstieg, weniger oder mehr für Abstiege (Naismith, Langmuir). Ohne Geländemodell gelten die Minuten für ebenes Gelände.</translation>
    </message>
    <message>
        <source>Height of the eyes (m)</source>
        <translation>Höhe der Augen (m)</translation>
    </message>
    <message>
        <source>Height of the walker&apos;s eyes above the ground, in metres.</source>
        <translation>Höhe der Augen des Gehers über dem Boden, in Metern.</translation>
    </message>
    <message>
        <source>Walkers (table, one row each)</source>
        <translation>Geher (Tabelle, je eine Zeile)</translation>
    </message>
    <message>
        <source>Every leg comes once for each walker of this table. Columns: walker (a name), and where they differ from the parameters paces_100m (single steps over 100 m), pace_kind (0 single, 1 double), pace_err (percent), brg_err (degrees), eye_m, speed_f (1 is the rule&apos;s own speed).</source>
        <translation>Jede Teilstrecke kommt einmal für jeden Geher dieser Tabelle. Spalten: walker (ein Name) und, wo sie von den Parametern abweichen, paces_100m (Einzelschritte auf 100 m), pace_kind (0 einzeln, 1 doppelt), pace_err (Prozent), brg_err (Grad), eye_m, speed_f (1 ist die Geschwindigkeit der Regel selbst).</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
</TS>
