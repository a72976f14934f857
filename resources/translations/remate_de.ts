<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Kept by packaging/texts. -->
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Remate</name>
    <message>
        <source>  ·  </source>
        <translation>  ·  </translation>
    </message>
    <message>
        <source> UTC</source>
        <translation> UTC</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> von %1</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source> or a person with authority to overrule</source>
        <translation> oder eine Person mit Befugnis zum Übersteuern</translation>
    </message>
    <message>
        <source> or the lead</source>
        <translation> oder der Leiter</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source> … (goes on; see the program)</source>
        <translation> … (geht weiter; siehe Programm)</translation>
    </message>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
    <message>
        <source>"%1" (%2) holds a character that nobody sees (%3). Type it again.</source>
        <translation>„%1“ (%2) enthält ein Zeichen, das niemand sieht (%3). Geben Sie es noch einmal ein.</translation>
    </message>
    <message>
        <source>"%1" (%2) holds half a character, which cannot be recorded. Type it again.</source>
        <translation>„%1“ (%2) enthält ein halbes Zeichen, das nicht eingetragen werden kann. Geben Sie es noch einmal ein.</translation>
    </message>
    <message>
        <source>"%1" (%2) is %3 characters long; %4 are kept. Say it shorter, or attach a file.</source>
        <translation>„%1“ (%2) ist %3 Zeichen lang; %4 werden aufbewahrt. Fassen Sie sich kürzer, oder hängen Sie eine Datei an.</translation>
    </message>
    <message>
        <source>"%1" (%2) is a list of %3; one entry holds %4. Make several entries of it.</source>
        <translation>„%1“ (%2) ist eine Liste von %3; ein Eintrag fasst %4. Machen Sie mehrere Einträge daraus.</translation>
    </message>
    <message>
        <source>"%1" (%2) is missing.</source>
        <translation>„%1“ (%2) fehlt.</translation>
    </message>
    <message>
        <source>"%1" (%2) must be %3.</source>
        <translation>„%1“ (%2) muss sein: %3.</translation>
    </message>
    <message>
        <source>"%1" (%2): %3</source>
        <translation>„%1“ (%2): %3</translation>
    </message>
    <message>
        <source>"%1" cannot be a name: use 1 to 128 plain characters that everybody sees, no blanks at either end.</source>
        <translation>„%1“ kann keine Bezeichnung sein: Verwenden Sie 1 bis 128 einfache Zeichen, die jeder sieht, ohne Leerzeichen am Anfang oder Ende.</translation>
    </message>
    <message>
        <source>"%1" cannot be an id. Expected: 1 to 128 characters, such as E12.</source>
        <translation>„%1“ kann keine Kennung sein. Erwartet: 1 bis 128 Zeichen, etwa E12.</translation>
    </message>
    <message>
        <source>"%1" cannot be taken. Expected: %2.</source>
        <translation>„%1“ kann nicht übernommen werden. Erwartet: %2.</translation>
    </message>
    <message>
        <source>"%1" cannot be what is on a tag: plain characters that everybody sees, no blanks at either end. Two tags that look alike are one.</source>
        <translation>„%1“ kann nicht auf einem Anhänger stehen: einfache Zeichen, die jeder sieht, keine Leerzeichen am Anfang oder Ende. Zwei Anhänger, die gleich aussehen, sind einer.</translation>
    </message>
    <message>
        <source>"%1" classes what shows %2 minutes after wiping dry. Say after how many minutes it was looked.</source>
        <translation>„%1“ stuft ein, was sich %2 Minuten nach dem Trockenwischen zeigt. Geben Sie an, nach wie vielen Minuten hingesehen wurde.</translation>
    </message>
    <message>
        <source>"%1" classes what shows %2 minutes after wiping dry; this was seen after %3. Wait, and look again.</source>
        <translation>„%1“ stuft ein, was sich %2 Minuten nach dem Trockenwischen zeigt; hier wurde nach %3 hingesehen. Warten Sie und sehen Sie noch einmal hin.</translation>
    </message>
    <message>
        <source>"%1" does not class by size. Choose the class by its description, and tell what was seen under how it was checked.</source>
        <translation>„%1“ stuft nicht nach Größe ein. Wählen Sie die Klasse nach ihrer Beschreibung, und geben Sie das Gesehene unter dem Prüfverfahren an.</translation>
    </message>
    <message>
        <source>"%1" gives %2 to more than one class (%3), so the worst of them, "%4", is taken.</source>
        <translation>„%1“ ordnet %2 mehr als einer Klasse zu (%3); deshalb wird die schlechteste davon, „%4“, genommen.</translation>
    </message>
    <message>
        <source>"%1" has a comma, which one reader takes for a decimal sign and another for thousands. Type a decimal point, and no grouping.</source>
        <translation>„%1“ hat ein Komma, das der eine als Dezimalzeichen liest und der andere als Tausendertrennung. Schreiben Sie einen Dezimalpunkt und keine Tausendertrennung.</translation>
    </message>
    <message>
        <source>"%1" has no unit. Add one of %2.</source>
        <translation>„%1“ hat keine Einheit. Ergänzen Sie eine von %2.</translation>
    </message>
    <message>
        <source>"%1" is %2; %3 is needed, in one of %4.</source>
        <translation>„%1“ ist %2; gebraucht wird %3, in einer von %4.</translation>
    </message>
    <message>
        <source>"%1" is a half of %2 (%3) too, which is of the same twin group: nobody could tell them apart by it.</source>
        <translation>„%1“ ist auch eine Hälfte von %2 (%3), das zur selben Gegenprüfungsgruppe gehört: Niemand könnte sie daran unterscheiden.</translation>
    </message>
    <message>
        <source>"%1" is empty. Expected: %2.</source>
        <translation>„%1“ ist leer. Erwartet: %2.</translation>
    </message>
    <message>
        <source>"%1" is given twice.</source>
        <translation>„%1“ ist zweimal angegeben.</translation>
    </message>
    <message>
        <source>"%1" is neither "read" nor "from memory".</source>
        <translation>„%1“ ist weder „read“ noch „from memory“.</translation>
    </message>
    <message>
        <source>"%1" is neither the number of an entry nor a hash of 64 hex digits.</source>
        <translation>„%1“ ist weder die Nummer eines Eintrags noch eine Prüfsumme aus 64 Hexadezimalziffern.</translation>
    </message>
    <message>
        <source>"%1" is no day such as 2026-03-02.</source>
        <translation>„%1“ ist kein Tag wie 2026-03-02.</translation>
    </message>
    <message>
        <source>"%1" is no label of an interface. Labels are scanned while their job is open.</source>
        <translation>„%1“ ist kein Etikett eines Anschlusses. Etiketten werden gescannt, während ihr Auftrag geöffnet ist.</translation>
    </message>
    <message>
        <source>"%1" is no label, tag or interface of %2. To scan it into a field, choose the field first.</source>
        <translation>„%1“ ist kein Etikett, Anhänger oder Anschluss von %2. Um es in ein Feld zu scannen, wählen Sie zuerst das Feld.</translation>
    </message>
    <message>
        <source>"%1" is no leak class of this job; they are: %2.</source>
        <translation>„%1“ ist keine Leckklasse dieses Auftrags; es sind: %2.</translation>
    </message>
    <message>
        <source>"%1" is no leak class: it is always there, below the least. Name the classes without it.</source>
        <translation>„%1“ ist keine Leckklasse: Sie ist immer da, unter der kleinsten. Nennen Sie die Klassen ohne sie.</translation>
    </message>
    <message>
        <source>"%1" is no moment. Give it with its time zone, such as 2026-03-02T08:14:00Z, or leave it out.</source>
        <translation>„%1“ ist kein Zeitpunkt. Geben Sie ihn mit Zeitzone an, etwa 2026-03-02T08:14:00Z, oder lassen Sie ihn weg.</translation>
    </message>
    <message>
        <source>"%1" is no number with a unit. Type, for example, 12.5 and one of %2; at most 18 digits.</source>
        <translation>„%1“ ist keine Zahl mit Einheit. Schreiben Sie zum Beispiel 12.5 und eine von %2; höchstens 18 Ziffern.</translation>
    </message>
    <message>
        <source>"%1" is no other interface that is open with a tag on it.</source>
        <translation>„%1“ ist kein anderer Anschluss, der offen ist und einen Anhänger trägt.</translation>
    </message>
    <message>
        <source>"%1" is no path inside a bag.</source>
        <translation>„%1“ ist kein Pfad innerhalb eines Bag.</translation>
    </message>
    <message>
        <source>"%1" is no percent of the final torque. Give numbers such as 30, 60, 100.</source>
        <translation>„%1“ ist kein Prozentwert des Enddrehmoments. Geben Sie Zahlen wie 30, 60, 100 an.</translation>
    </message>
    <message>
        <source>"%1" is no size of a leak. Write 0.75 in, or under 0.75 in where exactly that size belongs to the next class.</source>
        <translation>„%1“ ist keine Größe eines Lecks. Schreiben Sie 0.75 in oder under 0.75 in, wo genau diese Größe zur nächsten Klasse gehört.</translation>
    </message>
    <message>
        <source>"%1" is not a number, zero or more, with a decimal point.</source>
        <translation>„%1“ ist keine Zahl, null oder größer, mit Dezimalpunkt.</translation>
    </message>
    <message>
        <source>"%1" is not about an interface, so a gate for it names none.</source>
        <translation>„%1“ betrifft keinen Anschluss, also nennt eine Sperre dafür keinen.</translation>
    </message>
    <message>
        <source>"%1" is not as %2 has it: %3. If the record there is wrong, they take it back and put that right.</source>
        <translation>„%1“ ist nicht so, wie %2 es führt: %3. Ist der Nachweis dort falsch, nimmt man es zurück und berichtigt das.</translation>
    </message>
    <message>
        <source>"%1" is not one of: %2.</source>
        <translation>„%1“ ist keines von: %2.</translation>
    </message>
    <message>
        <source>"%1" is not packed as this program packs: link, folder, encryption, moment or remark.</source>
        <translation>„%1“ ist nicht so gepackt, wie dieses Programm packt: Verweis, Ordner, Verschlüsselung, Zeitpunkt oder Bemerkung.</translation>
    </message>
    <message>
        <source>"%1" is the half of %2 already. Expected: a designation of its own for each half, so that a swap can be seen.</source>
        <translation>„%1“ ist bereits die Hälfte von %2. Erwartet: eine eigene Bezeichnung für jede Hälfte, damit eine Vertauschung erkennbar ist.</translation>
    </message>
    <message>
        <source>"%1" is the worst class of this job, so it limits nothing. Give a lesser one, or a rate beside it.</source>
        <translation>„%1“ ist die schlechteste Klasse dieses Auftrags und begrenzt daher nichts. Geben Sie eine geringere an, oder daneben eine Rate.</translation>
    </message>
    <message>
        <source>"%1" is within the limit.</source>
        <translation>„%1“ liegt innerhalb der Grenze.</translation>
    </message>
    <message>
        <source>"%1" is worse than the limit, "%2". Find the cause; the maintenance data says what to do.</source>
        <translation>„%1“ ist schlechter als die Grenze, „%2“. Suchen Sie die Ursache; die Instandhaltungsunterlagen sagen, was zu tun ist.</translation>
    </message>
    <message>
        <source>"%1" must be off before this one, and the list does not have it yet. List it first.</source>
        <translation>„%1“ muss vor diesem gelöst sein, und die Liste hat es noch nicht. Führen Sie es zuerst auf.</translation>
    </message>
    <message>
        <source>"%1" must be off before this one, but neither the list nor the job has it.</source>
        <translation>„%1“ muss vor diesem gelöst sein, aber weder die Liste noch der Auftrag hat es.</translation>
    </message>
    <message>
        <source>"%1" names no class for %2, so the worst, "%3", is taken.</source>
        <translation>„%1“ nennt keine Klasse für %2; deshalb wird die schlechteste, „%3“, genommen.</translation>
    </message>
    <message>
        <source>"%1" names no row. An id holds lower-case letters, digits, -, / and . alone.</source>
        <translation>„%1“ benennt keine Zeile. Eine Kennung enthält nur Kleinbuchstaben, Ziffern, -, / und .</translation>
    </message>
    <message>
        <source>"%1" needs a reason: the next shift acts on it.</source>
        <translation>„%1“ braucht eine Begründung: Die nächste Schicht handelt danach.</translation>
    </message>
    <message>
        <source>"%1", on which this one depends, is not on the list yet. List it first.</source>
        <translation>„%1“, wovon dieser abhängt, steht noch nicht auf der Liste. Führen Sie es zuerst auf.</translation>
    </message>
    <message>
        <source>"Done at" must lie between the opening of the job and now.</source>
        <translation>„Ausgeführt um“ muss zwischen der Eröffnung des Auftrags und jetzt liegen.</translation>
    </message>
    <message>
        <source>%1&#xa;&#xa;%2</source>
        <translation>%1&#xa;&#xa;%2</translation>
    </message>
    <message>
        <source>%1&#xa;&#xa;It works once, until %2, beside your PIN. It is not shown again.</source>
        <translation>%1&#xa;&#xa;Er gilt einmal, bis %2, zusammen mit Ihrer PIN. Er wird nicht noch einmal angezeigt.</translation>
    </message>
    <message>
        <source>%1&#xa;%2</source>
        <translation>%1&#xa;%2</translation>
    </message>
    <message>
        <source>%1&#xa;Entries: %2, attachments: %3&#xa;Hash of the last entry: %4&#xa;Root fingerprint: %5&#xa;VERIFY.txt in it says how to check it without this program.</source>
        <translation>%1&#xa;Einträge: %2, Anlagen: %3&#xa;Prüfsumme des letzten Eintrags: %4&#xa;Fingerabdruck der Wurzel: %5&#xa;Darin sagt VERIFY.txt, wie es ohne dieses Programm zu prüfen ist.</translation>
    </message>
    <message>
        <source>%1&#xa;It says what was open at its last entry, and is not the record.</source>
        <translation>%1&#xa;Es sagt, was beim letzten Eintrag offen war, und ist nicht der Nachweis.</translation>
    </message>
    <message>
        <source>%1&#xa;Labels: %2, sheets: %3. Print at 100 %, not fitted to the page.</source>
        <translation>%1&#xa;Etiketten: %2, Bögen: %3. Drucken Sie mit 100 %, nicht an die Seite angepasst.</translation>
    </message>
    <message>
        <source>%1&#xa;Root fingerprint: %2</source>
        <translation>%1&#xa;Fingerabdruck der Wurzel: %2</translation>
    </message>
    <message>
        <source>%1&#xa;entry %2</source>
        <translation>%1&#xa;Eintrag %2</translation>
    </message>
    <message>
        <source>%1&#xa;none yet</source>
        <translation>%1&#xa;noch keines</translation>
    </message>
    <message>
        <source>%1&#xa;to %2</source>
        <translation>%1&#xa;bis %2</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>%1   (%2)</source>
        <translation>%1   (%2)</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1  %2  ·  %3  ·  %4</source>
        <translation>%1  %2  ·  %3  ·  %4</translation>
    </message>
    <message>
        <source>%1  %2 – %3</source>
        <translation>%1  %2 – %3</translation>
    </message>
    <message>
        <source>%1  %2 – not signed</source>
        <translation>%1  %2 – nicht unterschrieben</translation>
    </message>
    <message>
        <source>%1  (continued)</source>
        <translation>%1  (Fortsetzung)</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>%1 % of the reading</source>
        <translation>%1 % vom Messwert</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 No job of this store has that work order. Open the store that has it, or look whether the label hangs in the right place.</source>
        <translation>%1 %2 Kein Auftrag dieser Ablage hat diesen Arbeitsauftrag. Öffnen Sie die Ablage, die ihn enthält, oder prüfen Sie, ob das Etikett an der richtigen Stelle hängt.</translation>
    </message>
    <message>
        <source>%1 %2 Several jobs of this store have that work order. Open the one that is meant, and scan again.</source>
        <translation>%1 %2 Mehrere Aufträge dieser Ablage haben diesen Arbeitsauftrag. Öffnen Sie den gemeinten und scannen Sie noch einmal.</translation>
    </message>
    <message>
        <source>%1 %2 Whether this store has that job cannot be said: %3</source>
        <translation>%1 %2 Ob diese Ablage den Auftrag hat, ist nicht festzustellen: %3</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>%1 %2, %3.</source>
        <translation>%1 %2, %3.</translation>
    </message>
    <message>
        <source>%1 %2, struck</source>
        <translation>%1 %2, gestrichen</translation>
    </message>
    <message>
        <source>%1 %2, zone %3, %4. Rank %5</source>
        <translation>%1 %2, Bereich %3, %4. Rang %5</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2: %3</translation>
    </message>
    <message>
        <source>%1 %2: %3, entry %4. %5 Allowed by %6.</source>
        <translation>%1 %2: %3, Eintrag %4. %5 Erlaubt von %6.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2) has failed.</source>
        <translation>%1 (%2) ist nicht bestanden.</translation>
    </message>
    <message>
        <source>%1 (%2) is enrolled with a key of their own, opened by their PIN.</source>
        <translation>%1 (%2) ist mit eigenem Schlüssel aufgenommen, den die eigene PIN öffnet.</translation>
    </message>
    <message>
        <source>%1 (%2) is not %3.</source>
        <translation>%1 (%2) ist nicht %3.</translation>
    </message>
    <message>
        <source>%1 (%2) is not logged as free, so the unit cannot be off. Log what was undone first.</source>
        <translation>%1 (%2) ist nicht als frei eingetragen, also kann das Aggregat nicht ausgebaut sein. Tragen Sie zuerst ein, was gelöst wurde.</translation>
    </message>
    <message>
        <source>%1 (%2) is not placed.</source>
        <translation>%1 (%2) hat keinen Platz.</translation>
    </message>
    <message>
        <source>%1 (%2) is off. Twins are verified when all of them are joined.</source>
        <translation>%1 (%2) ist gelöst. Die Gegenprüfung erfolgt, wenn alle angeschlossen sind.</translation>
    </message>
    <message>
        <source>%1 (%2) is still applied.</source>
        <translation>%1 (%2) ist noch angebracht.</translation>
    </message>
    <message>
        <source>%1 (%2) is void: %3</source>
        <translation>%1 (%2) ist hinfällig: %3</translation>
    </message>
    <message>
        <source>%1 (%2) was found still attached: which of the two is open is what the tags have to say. It is freed first.</source>
        <translation>%1 (%2) wurde noch verbunden vorgefunden: Welcher der beiden offen ist, müssen die Anhänger sagen. Er wird zuerst frei gemacht.</translation>
    </message>
    <message>
        <source>%1 (%2), %3: PIN %4</source>
        <translation>%1 (%2), %3: PIN %4</translation>
    </message>
    <message>
        <source>%1 (%2), which it covered, is open or not restored.</source>
        <translation>%1 (%2), davon erfasst, ist offen oder nicht wiederhergestellt.</translation>
    </message>
    <message>
        <source>%1 (%2), which it covered, was worked on again in entry %3.</source>
        <translation>An %1 (%2), davon erfasst, wurde laut Eintrag %3 erneut gearbeitet.</translation>
    </message>
    <message>
        <source>%1 (%2), which it covered, was worked on again. %3</source>
        <translation>An %1 (%2), davon erfasst, wurde erneut gearbeitet. %3</translation>
    </message>
    <message>
        <source>%1 (%2, serial number %3) has neither moved to the incoming unit nor was declared to leave with the outgoing one.</source>
        <translation>%1 (%2, Seriennummer %3) ist weder an das eingehende Aggregat gekommen noch als mit dem ausgehenden abgehend erklärt.</translation>
    </message>
    <message>
        <source>%1 (%2, serial number %3) has not been said to be on the outgoing unit again, which goes back up.</source>
        <translation>%1 (%2, Seriennummer %3) ist noch nicht als wieder am ausgehenden Aggregat angegeben, das wieder eingebaut wird.</translation>
    </message>
    <message>
        <source>%1 (OWN WORK)</source>
        <translation>%1 (EIGENE ARBEIT)</translation>
    </message>
    <message>
        <source>%1 (always new)</source>
        <translation>%1 (immer neu)</translation>
    </message>
    <message>
        <source>%1 (critical)</source>
        <translation>%1 (kritisch)</translation>
    </message>
    <message>
        <source>%1 (except %2)</source>
        <translation>%1 (außer %2)</translation>
    </message>
    <message>
        <source>%1 (from memory)</source>
        <translation>%1 (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>%1 (p. %2)</source>
        <translation>%1 (S. %2)</translation>
    </message>
    <message>
        <source>%1 (signature in doubt)</source>
        <translation>%1 (Unterschrift zweifelhaft)</translation>
    </message>
    <message>
        <source>%1 (signature in doubt: %2)</source>
        <translation>%1 (Unterschrift zweifelhaft: %2)</translation>
    </message>
    <message>
        <source>%1 (under %2)</source>
        <translation>%1 (unter %2)</translation>
    </message>
    <message>
        <source>%1 (up to %2)</source>
        <translation>%1 (bis %2)</translation>
    </message>
    <message>
        <source>%1 = %2</source>
        <translation>%1 = %2</translation>
    </message>
    <message>
        <source>%1 Allowed by %2.</source>
        <translation>%1 Erlaubt von %2.</translation>
    </message>
    <message>
        <source>%1 Choose another, or say that it is meant.</source>
        <translation>%1 Wählen Sie ein anderes, oder bestätigen Sie, dass es gemeint ist.</translation>
    </message>
    <message>
        <source>%1 Copy of a file with SHA-256 %2…</source>
        <translation>%1 Kopie einer Datei mit SHA-256 %2…</translation>
    </message>
    <message>
        <source>%1 Its row is struck by an inspector who had no hand in it; or say of it that it is not applicable.</source>
        <translation>%1 Die Zeile wird von einem Prüfer gestrichen, der nicht daran beteiligt war; oder geben Sie an, dass sie nicht zutreffend ist.</translation>
    </message>
    <message>
        <source>%1 Known that are spelt alike: %2.</source>
        <translation>%1 Ähnlich geschrieben und bekannt sind: %2.</translation>
    </message>
    <message>
        <source>%1 LOOSE ENDS</source>
        <translation>%1 OFFENE STELLEN</translation>
    </message>
    <message>
        <source>%1 ON</source>
        <translation>%1 ANGEBRACHT</translation>
    </message>
    <message>
        <source>%1 OPEN</source>
        <translation>%1 OFFEN</translation>
    </message>
    <message>
        <source>%1 Pass %2 of %3 is not finished.</source>
        <translation>%1 Durchgang %2 von %3 ist nicht fertig.</translation>
    </message>
    <message>
        <source>%1 SIGNATURES IN DOUBT</source>
        <translation>%1 UNTERSCHRIFTEN ZWEIFELHAFT</translation>
    </message>
    <message>
        <source>%1 Somebody takes it up and says that it is finished, then it is inspected.</source>
        <translation>%1 Jemand nimmt die Arbeit auf und gibt an, dass sie fertig ist; dann wird geprüft.</translation>
    </message>
    <message>
        <source>%1 Take it up by signature, then work on.</source>
        <translation>%1 Nehmen Sie die Arbeit mit Unterschrift auf und arbeiten Sie dann weiter.</translation>
    </message>
    <message>
        <source>%1 UTC</source>
        <translation>%1 UTC</translation>
    </message>
    <message>
        <source>%1 accepted %2 already; the next inspection is made by somebody else.</source>
        <translation>%1 hat %2 bereits angenommen; die nächste Prüfung macht jemand anders.</translation>
    </message>
    <message>
        <source>%1 across</source>
        <translation>%1 Durchmesser</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 and %2 are compared as they are, so nothing is turned by %3 drops to the millilitre. Leave them out.</source>
        <translation>%1 und %2 werden verglichen, wie sie sind; mit %3 Tropfen je Milliliter wird also nichts umgerechnet. Lassen Sie diese Angabe weg.</translation>
    </message>
    <message>
        <source>%1 and %2 can be compared only when it is known how many drops make a millilitre. Count them, or take the number of the maintenance data.</source>
        <translation>%1 und %2 lassen sich nur vergleichen, wenn bekannt ist, wie viele Tropfen einen Milliliter ergeben. Zählen Sie sie, oder nehmen Sie die Zahl der Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>%1 and %2. %3</source>
        <translation>%1 und %2. %3</translation>
    </message>
    <message>
        <source>%1 and its look-alikes have not been verified as a pair.</source>
        <translation>%1 und die Verwechselbaren wurden nicht als Paar gegengeprüft.</translation>
    </message>
    <message>
        <source>%1 applied (%2)</source>
        <translation>%1 angebracht (%2)</translation>
    </message>
    <message>
        <source>%1 applied: %2; asked for: %3.</source>
        <translation>%1 aufgebracht: %2; verlangt: %3.</translation>
    </message>
    <message>
        <source>%1 asks for a turn of %2° to %3° after the torque; the entry says %4.</source>
        <translation>%1 verlangt nach dem Anziehdrehmoment einen Drehwinkel von %2° bis %3°; der Eintrag gibt %4 an.</translation>
    </message>
    <message>
        <source>%1 asks for no turn here, and a fastener that was turned by %2 after its torque may be stretched. Follow the maintenance data, and raise a finding.</source>
        <translation>%1 verlangt hier keinen Drehwinkel, und ein Verbindungselement, das nach seinem Anziehdrehmoment um %2 gedreht wurde, kann überdehnt sein. Befolgen Sie die Instandhaltungsunterlagen, und melden Sie einen Befund.</translation>
    </message>
    <message>
        <source>%1 asks for two readings: measure again with the leads the other way round.</source>
        <translation>%1 verlangt zwei Messungen: Messen Sie noch einmal mit vertauschten Messleitungen.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>%1 at worst</source>
        <translation>%1 im schlechtesten Fall</translation>
    </message>
    <message>
        <source>%1 between the points</source>
        <translation>%1 zwischen den Punkten</translation>
    </message>
    <message>
        <source>%1 blanks are logged on %2 of %3; %4 cannot be missing from it.</source>
        <translation>%1 Verschlüsse sind an %2 von %3 eingetragen; %4 können davon nicht fehlen.</translation>
    </message>
    <message>
        <source>%1 blanks were counted on the unit, and %2 are said to be removed. Find the difference before it goes up: a blank left in is found by the engine.</source>
        <translation>%1 Verschlüsse wurden am Aggregat gezählt, und %2 sollen entfernt sein. Klären Sie den Unterschied, bevor es angehoben wird: Ein vergessener Verschluss gerät ins Triebwerk.</translation>
    </message>
    <message>
        <source>%1 blanks were counted on the unit, which was struck, and now %2. What was counted once is there, or inside: look for it. Where the first count was wrong, an inspector counts, and signs this.</source>
        <translation>%1 Verschlüsse wurden am Aggregat gezählt, das wurde gestrichen, und jetzt sind es %2. Was einmal gezählt wurde, ist da oder innen: Suchen Sie danach. War die erste Zählung falsch, zählt ein Prüfer und unterschreibt dies.</translation>
    </message>
    <message>
        <source>%1 blanks were fitted to %2 of %3, and %4 are removed. Find the difference before you join it: one may be inside.</source>
        <translation>%1 Verschlüsse wurden an %2 von %3 angebracht, und %4 sind entfernt. Klären Sie den Unterschied, bevor Sie anschließen: Einer kann noch innen sein.</translation>
    </message>
    <message>
        <source>%1 blanks were logged on the unit's ends, and %2 openings are said to be blanked. Count again: one may be inside it.</source>
        <translation>%1 Verschlüsse wurden an den Enden des Aggregats eingetragen, und %2 Öffnungen sollen verschlossen sein. Zählen Sie noch einmal: Einer kann innen sein.</translation>
    </message>
    <message>
        <source>%1 by stage: %2.</source>
        <translation>%1 nach Stand: %2.</translation>
    </message>
    <message>
        <source>%1 came back in entry %2.</source>
        <translation>%1 kam in Eintrag %2 zurück.</translation>
    </message>
    <message>
        <source>%1 cannot be accepted. %2 (%3, entry %4)</source>
        <translation>%1 kann nicht angenommen werden. %2 (%3, Eintrag %4)</translation>
    </message>
    <message>
        <source>%1 cannot be dry and leak %2. Say which it is.</source>
        <translation>%1 kann nicht trocken sein und %2 lecken. Geben Sie an, was zutrifft.</translation>
    </message>
    <message>
        <source>%1 cannot be passed yet. %2</source>
        <translation>%1 kann noch nicht passiert werden. %2</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2). Choose another picture.</source>
        <translation>%1 lässt sich nicht lesen (%2). Wählen Sie ein anderes Bild.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 kann nicht gelesen werden: %2</translation>
    </message>
    <message>
        <source>%1 cannot depend on %2, which would be disturbed in another job. %3</source>
        <translation>%1 kann nicht von %2 abhängen, das in einem anderen Auftrag verändert würde. %3</translation>
    </message>
    <message>
        <source>%1 cannot depend on itself.</source>
        <translation>%1 kann nicht von sich selbst abhängen.</translation>
    </message>
    <message>
        <source>%1 cannot have moved: %2 (%3), by which it is joined, was never undone.</source>
        <translation>%1 kann nicht umgebaut sein: %2 (%3), womit es angeschlossen ist, wurde nie gelöst.</translation>
    </message>
    <message>
        <source>%1 carries tag "%2", and "%3" is said to be recovered. Make sure that you are at the right interface.</source>
        <translation>%1 trägt den Anhänger „%2“, und „%3“ soll zurückgenommen sein. Vergewissern Sie sich, dass Sie am richtigen Anschluss sind.</translation>
    </message>
    <message>
        <source>%1 claims %2 × %3 pixels, which cannot be shown. Make the picture smaller, or choose another.</source>
        <translation>%1 gibt %2 × %3 Bildpunkte an, die sich nicht anzeigen lassen. Verkleinern Sie das Bild, oder wählen Sie ein anderes.</translation>
    </message>
    <message>
        <source>%1 closes together with this job and has loose ends: %2. The first: %3</source>
        <translation>%1 wird zusammen mit diesem Auftrag abgeschlossen und hat offene Stellen: %2. Die erste: %3</translation>
    </message>
    <message>
        <source>%1 comes after %2, which has to be passed again first. %3</source>
        <translation>%1 kommt nach %2, der zuerst noch einmal passiert werden muss. %3</translation>
    </message>
    <message>
        <source>%1 confirmed undisturbed</source>
        <translation>%1 als unberührt bestätigt</translation>
    </message>
    <message>
        <source>%1 could not be compared: %2</source>
        <translation>%1 konnte nicht verglichen werden: %2</translation>
    </message>
    <message>
        <source>%1 could not be kept for you alone. Check the disk, or choose another one.</source>
        <translation>%1 konnte nicht für Sie allein aufbewahrt werden. Prüfen Sie den Datenträger, oder wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>%1 could not be made (system %2). Check that the folder is there and that you may write to it.</source>
        <translation>%1 konnte nicht erstellt werden (System %2). Prüfen Sie, ob der Ordner vorhanden ist und ob Sie hineinschreiben dürfen.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another folder.</source>
        <translation>%1 konnte nicht geschrieben werden: %2. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1 did not send "%2" to this job.</source>
        <translation>%1 hat „%2“ nicht an diesen Auftrag gesendet.</translation>
    </message>
    <message>
        <source>%1 does not begin with an entry that can be read, or is of a ledger that is there already.</source>
        <translation>%1 beginnt nicht mit einem lesbaren Eintrag oder gehört zu einem Buch, das schon da ist.</translation>
    </message>
    <message>
        <source>%1 does not belong in this ledger.</source>
        <translation>%1 gehört nicht in dieses Buch.</translation>
    </message>
    <message>
        <source>%1 does not belong into a package.</source>
        <translation>%1 gehört nicht in ein Paket.</translation>
    </message>
    <message>
        <source>%1 does not hold the secret of a station. Put the copy back that was locked away; without one, move the file aside and have new keys registered.</source>
        <translation>%1 enthält nicht das Geheimnis eines Arbeitsplatzes. Legen Sie die weggeschlossene Kopie zurück; gibt es keine, verschieben Sie die Datei, und lassen Sie neue Schlüssel registrieren.</translation>
    </message>
    <message>
        <source>%1 does not list %2: it was put in.</source>
        <translation>%1 führt %2 nicht auf: Es wurde eingefügt.</translation>
    </message>
    <message>
        <source>%1 does not list the attachment %2; it was not unpacked.</source>
        <translation>%1 führt die Anlage %2 nicht auf; sie wurde nicht entpackt.</translation>
    </message>
    <message>
        <source>%1 does not meet the limit, %2. Find the cause, clean and protect the faces as the maintenance data says, and measure again.</source>
        <translation>%1 hält die Grenze, %2, nicht ein. Suchen Sie die Ursache, reinigen und schützen Sie die Flächen, wie die Instandhaltungsunterlagen sagen, und messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>%1 does not name this job yet.</source>
        <translation>%1 nennt diesen Auftrag noch nicht.</translation>
    </message>
    <message>
        <source>%1 drops cannot be counted. Give 0 or more.</source>
        <translation>%1 Tropfen lassen sich nicht zählen. Geben Sie 0 oder mehr an.</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre</source>
        <translation>%1 Tropfen je Milliliter</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre come from no edge: 10 to 20 are usual, and 60 from the finest tips. Count how many fill a measure, or take the number of the maintenance data.</source>
        <translation>%1 Tropfen je Milliliter fallen von keiner Kante: 10 bis 20 sind üblich, und 60 von den feinsten Spitzen. Zählen Sie, wie viele ein Maß füllen, oder nehmen Sie die Zahl der Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre is the checker's own number; the list has none.</source>
        <translation>%1 Tropfen je Milliliter ist die eigene Zahl des Prüfenden; die Liste hat keine.</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre make no volume. Count how many fill a measure, or take the number of the maintenance data.</source>
        <translation>%1 Tropfen je Milliliter ergeben kein Volumen. Zählen Sie, wie viele ein Maß füllen, oder nehmen Sie die Zahl der Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 Einträge</translation>
    </message>
    <message>
        <source>%1 exists already and is never overwritten. Choose another name.</source>
        <translation>%1 gibt es bereits und wird nie überschrieben. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>%1 exists already. Choose another name, or say that it may be replaced.</source>
        <translation>%1 gibt es bereits. Wählen Sie einen anderen Namen, oder geben Sie an, dass sie ersetzt werden darf.</translation>
    </message>
    <message>
        <source>%1 gets a new key. What they signed before stays valid.</source>
        <translation>%1 erhält einen neuen Schlüssel. Was zuvor unterschrieben wurde, bleibt gültig.</translation>
    </message>
    <message>
        <source>%1 gets a new key. What was signed with the old one since %2 is in doubt, and is listed for somebody to look at.</source>
        <translation>%1 erhält einen neuen Schlüssel. Was seit %2 mit dem alten unterschrieben wurde, ist zweifelhaft und wird zur Durchsicht aufgelistet.</translation>
    </message>
    <message>
        <source>%1 given over to a linked job</source>
        <translation>%1 an einen verknüpften Auftrag abgegeben</translation>
    </message>
    <message>
        <source>%1 goes over to another person of this job's crew.</source>
        <translation>%1 geht an eine andere Person der Mannschaft dieses Auftrags über.</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1 had a hand in %2 and cannot close a finding on it.</source>
        <translation>%1 war an %2 beteiligt und kann dazu keinen Befund schließen.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2 and cannot inspect %3.</source>
        <translation>%1 war an %2 beteiligt und kann %3 nicht prüfen.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2 and cannot inspect it.</source>
        <translation>%1 war an %2 beteiligt und kann das nicht prüfen.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2, so a second person has to confirm it free.</source>
        <translation>%1 war an %2 beteiligt, also muss eine zweite Person es als frei bestätigen.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2; the tags are exchanged by somebody who had none in either.</source>
        <translation>%1 war an %2 beteiligt; die Anhänger tauscht jemand, der an keinem von beiden beteiligt war.</translation>
    </message>
    <message>
        <source>%1 had a hand in joining %2 (%3), so somebody else verifies the twins.</source>
        <translation>%1 war am Anschließen von %2 (%3) beteiligt, also macht jemand anders die Gegenprüfung.</translation>
    </message>
    <message>
        <source>%1 had no hand in %2: inspect it in the ordinary way.</source>
        <translation>%1 war an %2 nicht beteiligt: Prüfen Sie auf dem üblichen Weg.</translation>
    </message>
    <message>
        <source>%1 handed over to %2, who has not accepted yet. %1 still answers for the job.</source>
        <translation>%1 hat an %2 übergeben; die Annahme steht noch aus. %1 ist weiter für den Auftrag verantwortlich.</translation>
    </message>
    <message>
        <source>%1 has %2 marked fasteners of another person to take over; the entry says %3.</source>
        <translation>%1 hat %2 markierte Verbindungselemente einer anderen Person zu übernehmen; der Eintrag gibt %3 an.</translation>
    </message>
    <message>
        <source>%1 has %2 × %3. Count how many came off, and write 0 where there was none.</source>
        <translation>%1 hat %2 × %3. Zählen Sie, wie viele abgenommen wurden, und schreiben Sie 0, wo keine waren.</translation>
    </message>
    <message>
        <source>%1 has fasteners 1 to %2, not %3.</source>
        <translation>%1 hat die Verbindungselemente 1 bis %2, nicht %3.</translation>
    </message>
    <message>
        <source>%1 has look-alikes (%2), which are verified as a pair. They stay in one job.</source>
        <translation>%1 hat Verwechselbare (%2), die als Paar gegengeprüft werden. Sie bleiben in einem Auftrag.</translation>
    </message>
    <message>
        <source>%1 has look-alikes (%2). Both halves of each are read and verified as a pair first, by somebody who joined none of them.</source>
        <translation>%1 hat Verwechselbare (%2). Zuerst werden beide Hälften von jedem gelesen und als Paar gegengeprüft, von jemandem, der keinen davon angeschlossen hat.</translation>
    </message>
    <message>
        <source>%1 has more than %2 MiB. Make the picture smaller, or choose another.</source>
        <translation>%1 hat mehr als %2 MiB. Verkleinern Sie das Bild, oder wählen Sie ein anderes.</translation>
    </message>
    <message>
        <source>%1 has no "%2".</source>
        <translation>%1 hat kein „%2“.</translation>
    </message>
    <message>
        <source>%1 has no entry in this job that stands.</source>
        <translation>%1 hat in diesem Auftrag keinen Eintrag, der gilt.</translation>
    </message>
    <message>
        <source>%1 has no field "%2"; it has %3.</source>
        <translation>%1 hat kein Feld „%2“; es hat %3.</translation>
    </message>
    <message>
        <source>%1 has no line %2, and the other file of that ledger has.</source>
        <translation>%1 hat keine Zeile %2, und die andere Datei dieses Buchs hat sie.</translation>
    </message>
    <message>
        <source>%1 has no such photo. Attach it first, then mark it.</source>
        <translation>%1 hat kein solches Foto. Hängen Sie es erst an, dann markieren Sie es.</translation>
    </message>
    <message>
        <source>%1 has passes 1 to %2, not %3.</source>
        <translation>%1 hat die Durchgänge 1 bis %2, nicht %3.</translation>
    </message>
    <message>
        <source>%1 holds %2, compared with the original.</source>
        <translation>%1 enthält %2, verglichen mit dem Original.</translation>
    </message>
    <message>
        <source>%1 holds no authorisation to %2.</source>
        <translation>%1 hat keine Berechtigung „%2“.</translation>
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
        <source>%1 in %2, %3 of them critical</source>
        <translation>%1 in %2, davon kritisch: %3</translation>
    </message>
    <message>
        <source>%1 inspections</source>
        <translation>%1 Prüfungen</translation>
    </message>
    <message>
        <source>%1 interfaces</source>
        <translation>%1 Anschlüsse</translation>
    </message>
    <message>
        <source>%1 interfaces not finished</source>
        <translation>%1 Anschlüsse nicht fertig</translation>
    </message>
    <message>
        <source>%1 interfaces undone and not inspected</source>
        <translation>%1 Anschlüsse gelöst und nicht geprüft</translation>
    </message>
    <message>
        <source>%1 is %2's, who alone hands it over.</source>
        <translation>%1 gehört %2; nur diese Person übergibt es.</translation>
    </message>
    <message>
        <source>%1 is %2's, who may be behind it. It is taken off, or handed over, as any other is; on paper alone it does not come off.</source>
        <translation>%1 gehört %2, und diese Person kann dahinter sein. Es wird wie jedes andere abgenommen oder übergeben; auf dem Papier allein geht es nicht ab.</translation>
    </message>
    <message>
        <source>%1 is %2's. Nobody else takes it off before it was handed over; where %2 has left, the lead does, having made sure that nobody is behind it, and says why.</source>
        <translation>%1 gehört %2. Niemand anders nimmt es ab, bevor es übergeben ist; ist %2 nicht mehr da, tut es der Leiter, der sich vergewissert hat, dass niemand dahinter ist, und angibt, warum.</translation>
    </message>
    <message>
        <source>%1 is %2, and %3 measures %4. Choose a unit of the same kind.</source>
        <translation>%1 ist %2, und %3 misst %4. Wählen Sie eine Einheit derselben Art.</translation>
    </message>
    <message>
        <source>%1 is %2.</source>
        <translation>%1 ist %2.</translation>
    </message>
    <message>
        <source>%1 is %2; there is nothing to accept yet.</source>
        <translation>%1 ist %2; es gibt noch nichts anzunehmen.</translation>
    </message>
    <message>
        <source>%1 is a measuring tool of the register (%2). Issue it as one.</source>
        <translation>%1 ist ein Messmittel des Stammbuchs (%2). Geben Sie es als solches aus.</translation>
    </message>
    <message>
        <source>%1 is about the whole job; leave the subject out.</source>
        <translation>%1 betrifft den ganzen Auftrag; lassen Sie den Gegenstand weg.</translation>
    </message>
    <message>
        <source>%1 is above the most, %2. Give the least first, and then the most.</source>
        <translation>%1 liegt über dem Größten, %2. Geben Sie erst das Kleinste an und dann das Größte.</translation>
    </message>
    <message>
        <source>%1 is accepted.</source>
        <translation>%1 wird angenommen.</translation>
    </message>
    <message>
        <source>%1 is below 0. Give the band of the maintenance data.</source>
        <translation>%1 liegt unter 0. Geben Sie den Bereich der Instandhaltungsunterlagen an.</translation>
    </message>
    <message>
        <source>%1 is below 0. Give what is marked on the wrench.</source>
        <translation>%1 liegt unter 0. Geben Sie an, was auf dem Schlüssel steht.</translation>
    </message>
    <message>
        <source>%1 is below 0. Give what the wrench showed.</source>
        <translation>%1 liegt unter 0. Geben Sie an, was der Schlüssel anzeigte.</translation>
    </message>
    <message>
        <source>%1 is checked by class (%2 at worst), and "%3" classes by size. Give how far it is wet across, 0 where it is dry, and whether it drips or pools.</source>
        <translation>%1 wird nach Klasse geprüft (%2 im schlechtesten Fall), und „%3“ stuft nach Größe ein. Geben Sie an, wie breit die nasse Stelle ist, 0 wo es trocken ist, und ob es tropft oder sich sammelt.</translation>
    </message>
    <message>
        <source>%1 is checked by class (%2 at worst). Say which was seen; dry, where nothing shows.</source>
        <translation>%1 wird nach Klasse geprüft (%2 im schlechtesten Fall). Geben Sie an, welche zu sehen war; trocken, wo sich nichts zeigt.</translation>
    </message>
    <message>
        <source>%1 is checked by rate (%2 at most). Say what was measured, or count drops.</source>
        <translation>%1 wird nach Rate geprüft (%2 höchstens). Geben Sie das Gemessene an, oder zählen Sie Tropfen.</translation>
    </message>
    <message>
        <source>%1 is checked for leaks after it was torqued. %2</source>
        <translation>%1 wird auf Dichtheit geprüft, nachdem es angezogen wurde. %2</translation>
    </message>
    <message>
        <source>%1 is confirmed free.</source>
        <translation>%1 ist als frei bestätigt.</translation>
    </message>
    <message>
        <source>%1 is critical and said to be not applicable; a second person has to agree.</source>
        <translation>%1 ist kritisch und gilt als nicht zutreffend; eine zweite Person muss zustimmen.</translation>
    </message>
    <message>
        <source>%1 is critical or inspected twice.</source>
        <translation>%1 ist kritisch oder wird zweimal geprüft.</translation>
    </message>
    <message>
        <source>%1 is critical, and %2 had a hand in %3 of the same group.</source>
        <translation>%1 ist kritisch, und %2 war an %3 aus derselben Gruppe beteiligt.</translation>
    </message>
    <message>
        <source>%1 is damaged and cannot be decoded. Copy it from the camera again, or choose another.</source>
        <translation>%1 ist beschädigt und lässt sich nicht dekodieren. Kopieren Sie es noch einmal von der Kamera, oder wählen Sie ein anderes.</translation>
    </message>
    <message>
        <source>%1 is damaged and cannot be opened. It was left as it is. Keep it, and go on with the last backup.</source>
        <translation>%1 ist beschädigt und kann nicht geöffnet werden. Die Datei wurde belassen, wie sie ist. Behalten Sie sie, und arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>%1 is disconnected already (%2, %3).</source>
        <translation>%1 ist bereits gelöst (%2, %3).</translation>
    </message>
    <message>
        <source>%1 is disconnected.</source>
        <translation>%1 ist gelöst.</translation>
    </message>
    <message>
        <source>%1 is disconnected. Reconnect it first.</source>
        <translation>%1 ist gelöst. Schließen Sie es zuerst wieder an.</translation>
    </message>
    <message>
        <source>%1 is empty. If it is still being copied, wait and try again.</source>
        <translation>%1 ist leer. Wird es noch kopiert, warten Sie und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>%1 is enough drag: at least %2 is needed.</source>
        <translation>%1 ist genug Klemmdrehmoment: Mindestens %2 ist nötig.</translation>
    </message>
    <message>
        <source>%1 is given as %2. Give a weight above 0.</source>
        <translation>%1 ist mit %2 angegeben. Geben Sie ein Gewicht über 0 an.</translation>
    </message>
    <message>
        <source>%1 is held by another program. Wait for it to finish, or close it, and open the store again.</source>
        <translation>%1 wird von einem anderen Programm gehalten. Warten Sie, bis es fertig ist, oder schließen Sie es, und öffnen Sie die Ablage erneut.</translation>
    </message>
    <message>
        <source>%1 is held in place: %2. What holds it comes out, or is said to be out, before anybody confirms it free.</source>
        <translation>%1 wird festgehalten: %2. Was es hält, kommt heraus oder wird als entfernt angegeben, bevor jemand es als frei bestätigt.</translation>
    </message>
    <message>
        <source>%1 is in use, or was not closed well. Choose another name for the backup.</source>
        <translation>%1 wird benutzt oder wurde nicht richtig geschlossen. Wählen Sie einen anderen Namen für die Sicherungskopie.</translation>
    </message>
    <message>
        <source>%1 is inspected; nothing more is asked of it.</source>
        <translation>%1 ist geprüft; mehr wird nicht verlangt.</translation>
    </message>
    <message>
        <source>%1 is inspected; there is nothing to stop in. If it was worked on again, mark it disturbed.</source>
        <translation>%1 ist geprüft; da gibt es nichts zu unterbrechen. Wurde wieder daran gearbeitet, kennzeichnen Sie den Posten als nachträglich verändert.</translation>
    </message>
    <message>
        <source>%1 is joined already.</source>
        <translation>%1 ist bereits angeschlossen.</translation>
    </message>
    <message>
        <source>%1 is joined, not secured. </source>
        <translation>%1 ist angeschlossen, nicht gesichert. </translation>
    </message>
    <message>
        <source>%1 is joined. What is given over is off, or was never touched.</source>
        <translation>%1 ist angeschlossen. Was abgegeben wird, ist gelöst oder wurde nie angerührt.</translation>
    </message>
    <message>
        <source>%1 is later than %2: the first day comes first, or nothing could be found.</source>
        <translation>%1 ist später als %2: Der erste Tag kommt zuerst, sonst ließe sich nichts finden.</translation>
    </message>
    <message>
        <source>%1 is linked with %2, which this job does not name. Link it, so that all parts close together.</source>
        <translation>%1 ist mit %2 verknüpft, den dieser Auftrag nicht nennt. Verknüpfen Sie ihn, damit alle Teile zusammen abgeschlossen werden.</translation>
    </message>
    <message>
        <source>%1 is missing since entry %2, finding %3.</source>
        <translation>%1 fehlt seit Eintrag %2, Befund %3.</translation>
    </message>
    <message>
        <source>%1 is missing.</source>
        <translation>%1 fehlt.</translation>
    </message>
    <message>
        <source>%1 is more than the limit of %2. Find the cause; the maintenance data says what to do.</source>
        <translation>%1 ist mehr als die Grenze von %2. Suchen Sie die Ursache; die Instandhaltungsunterlagen sagen, was zu tun ist.</translation>
    </message>
    <message>
        <source>%1 is neither a moment nor the arm of a centre of gravity. Give one of them from the aircraft's weight record.</source>
        <translation>%1 ist weder ein Moment noch der Hebelarm eines Schwerpunkts. Geben Sie eines davon aus der Gewichtsübersicht des Luftfahrzeugs an.</translation>
    </message>
    <message>
        <source>%1 is neither of this job's crew nor one of its inspectors.</source>
        <translation>%1 gehört weder zur Mannschaft dieses Auftrags noch zu den Prüfern.</translation>
    </message>
    <message>
        <source>%1 is neither off nor waiting for its torque. If it was loosened, mark it disturbed.</source>
        <translation>%1 ist weder gelöst noch wartet es auf sein Anziehdrehmoment. Wurde es gelockert, kennzeichnen Sie den Posten als nachträglich verändert.</translation>
    </message>
    <message>
        <source>%1 is no drop across a bond. Look whether the leads are the right way round, and measure again.</source>
        <translation>%1 ist kein Spannungsabfall über einer Masseverbindung. Sehen Sie nach, ob die Leitungen richtig herum angeschlossen sind, und messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>%1 is no limit for a resistance. Give one above 0.</source>
        <translation>%1 ist kein Grenzwert für einen Widerstand. Geben Sie einen über 0 an.</translation>
    </message>
    <message>
        <source>%1 is no number of drops in a time. Give 0 or more drops/min.</source>
        <translation>%1 ist keine Zahl von Tropfen in einer Zeit. Geben Sie 0 oder mehr drops/min an.</translation>
    </message>
    <message>
        <source>%1 is no picture that can be read here. Take JPEG or PNG; a phone can be told to save JPEG.</source>
        <translation>%1 ist kein Bild, das hier gelesen werden kann. Nehmen Sie JPEG oder PNG; ein Telefon lässt sich auf JPEG einstellen.</translation>
    </message>
    <message>
        <source>%1 is no quantity to fill in. Give a volume of 0 or more, with its unit.</source>
        <translation>%1 ist keine Menge zum Einfüllen. Geben Sie ein Volumen von 0 oder mehr mit seiner Einheit an.</translation>
    </message>
    <message>
        <source>%1 is no rate of a leak. Give 0 or more, in drops/min, mL/min or L/min.</source>
        <translation>%1 ist keine Rate eines Lecks. Geben Sie 0 oder mehr an, in drops/min, mL/min oder L/min.</translation>
    </message>
    <message>
        <source>%1 is no reading of a bond. Check the meter's zero and the contact of its leads, and measure again.</source>
        <translation>%1 ist kein Messwert einer Masseverbindung. Prüfen Sie den Nullpunkt des Messgeräts und den Kontakt der Leitungen und messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>%1 is no step. Give what lies between two marks of the scale.</source>
        <translation>%1 ist kein Schritt. Geben Sie an, was zwischen zwei Teilstrichen der Skala liegt.</translation>
    </message>
    <message>
        <source>%1 is no torque to tighten to. Give the band of the maintenance data.</source>
        <translation>%1 ist kein Drehmoment, auf das angezogen wird. Geben Sie den Bereich der Instandhaltungsunterlagen an.</translation>
    </message>
    <message>
        <source>%1 is no torque to tighten to. Give the final torque of the maintenance data.</source>
        <translation>%1 ist kein Drehmoment, auf das angezogen wird. Geben Sie das Enddrehmoment der Instandhaltungsunterlagen an.</translation>
    </message>
    <message>
        <source>%1 is not a store of this program. It was left as it is. Choose another file.</source>
        <translation>%1 ist keine Ablage dieses Programms. Die Datei wurde belassen, wie sie ist. Wählen Sie eine andere Datei.</translation>
    </message>
    <message>
        <source>%1 is not authorised to inspect %2 (%3), and the tags of both are exchanged.</source>
        <translation>%1 ist nicht berechtigt, %2 zu prüfen (%3), und die Anhänger beider werden getauscht.</translation>
    </message>
    <message>
        <source>%1 is not in this job any more. %2</source>
        <translation>%1 ist nicht mehr in diesem Auftrag. %2</translation>
    </message>
    <message>
        <source>%1 is not joined; there is nothing to reject.</source>
        <translation>%1 ist nicht angeschlossen; es gibt nichts zurückzuweisen.</translation>
    </message>
    <message>
        <source>%1 is not linked with this job, both ways. An item goes to a job that names this one.</source>
        <translation>%1 ist mit diesem Auftrag nicht in beiden Richtungen verknüpft. Ein Posten geht an einen Auftrag, der diesen nennt.</translation>
    </message>
    <message>
        <source>%1 is not logged as disconnected, so there is nothing to look at yet.</source>
        <translation>%1 ist nicht als gelöst eingetragen, also gibt es noch nichts anzusehen.</translation>
    </message>
    <message>
        <source>%1 is not of this job's crew.</source>
        <translation>%1 gehört nicht zur Mannschaft dieses Auftrags.</translation>
    </message>
    <message>
        <source>%1 is not off, so it cannot be "%2".</source>
        <translation>%1 ist nicht gelöst und kann daher nicht „%2“ sein.</translation>
    </message>
    <message>
        <source>%1 is not open with a tag on it.</source>
        <translation>%1 ist nicht offen mit einem Anhänger daran.</translation>
    </message>
    <message>
        <source>%1 is not open, so no blank is on it that could be missing.</source>
        <translation>%1 ist nicht offen, also ist kein Verschluss daran, der fehlen könnte.</translation>
    </message>
    <message>
        <source>%1 is not part of this program: install it again.</source>
        <translation>%1 gehört nicht zu diesem Programm: Installieren Sie es neu.</translation>
    </message>
    <message>
        <source>%1 is not ready for inspection. %2</source>
        <translation>%1 ist nicht bereit zur Prüfung. %2</translation>
    </message>
    <message>
        <source>%1 is not what %2 says: one of the two was changed.</source>
        <translation>%1 ist nicht, was %2 angibt: Eines der beiden wurde geändert.</translation>
    </message>
    <message>
        <source>%1 is not what these entries give: it was changed.</source>
        <translation>%1 ist nicht das, was diese Einträge ergeben: Es wurde geändert.</translation>
    </message>
    <message>
        <source>%1 is of this job's crew and may inspect %2. A re-inspection is for when nobody else is there.</source>
        <translation>%1 gehört zur Mannschaft dieses Auftrags und darf %2 prüfen. Eine erneute Prüfung ist für den Fall, dass niemand anders da ist.</translation>
    </message>
    <message>
        <source>%1 is on the list and was never disconnected. Disconnect it; or confirm it undisturbed; or say why it is not applicable.</source>
        <translation>%1 steht auf der Liste und wurde nie gelöst. Lösen Sie es; oder bestätigen Sie es als unberührt; oder geben Sie an, warum es nicht zutreffend ist.</translation>
    </message>
    <message>
        <source>%1 is one tool. What has several pieces is a kit.</source>
        <translation>%1 ist ein einzelnes Werkzeug. Was mehrere Teile hat, ist ein Satz.</translation>
    </message>
    <message>
        <source>%1 is passed by somebody who had no hand in it, and %2 had one in %3.</source>
        <translation>%1 wird von jemandem passiert, der nicht daran beteiligt war, und %2 war in %3 daran beteiligt.</translation>
    </message>
    <message>
        <source>%1 is past. Give the last day on which it has to be done.</source>
        <translation>%1 ist vergangen. Geben Sie den letzten Tag an, an dem es getan sein muss.</translation>
    </message>
    <message>
        <source>%1 is planned with %2, and the weight record of entry %3 gives it %4. Plan the lift with what it weighs, or strike the record if that is wrong.</source>
        <translation>%1 ist mit %2 geplant, und die Gewichtsübersicht von Eintrag %3 gibt %4 an. Planen Sie den Hebevorgang mit dem tatsächlichen Gewicht, oder streichen Sie die Gewichtsübersicht, wenn diese falsch ist.</translation>
    </message>
    <message>
        <source>%1 is recorded with %2, and the lift of entry %3 was planned with %4 only. Strike that plan and plan the lift with what it weighs, or correct the weight.</source>
        <translation>%1 ist mit %2 eingetragen, und der Hebevorgang von Eintrag %3 war nur mit %4 geplant. Streichen Sie diesen Plan und planen Sie den Hebevorgang mit dem tatsächlichen Gewicht, oder berichtigen Sie das Gewicht.</translation>
    </message>
    <message>
        <source>%1 is safetied after it was torqued. %2</source>
        <translation>%1 wird gesichert, nachdem es angezogen wurde. %2</translation>
    </message>
    <message>
        <source>%1 is said to be as it should be in this job, so there is nothing to give over.</source>
        <translation>%1 gilt in diesem Auftrag als so, wie es sein soll; es gibt also nichts abzugeben.</translation>
    </message>
    <message>
        <source>%1 is said to be not applicable, and was said to be undone before that was struck; an inspector who had no hand in it has to agree.</source>
        <translation>%1 gilt als nicht zutreffend und wurde als gelöst angegeben, bevor das gestrichen wurde; ein Prüfer, der nicht daran beteiligt war, muss zustimmen.</translation>
    </message>
    <message>
        <source>%1 is the store itself. Choose another name for the backup.</source>
        <translation>%1 ist die Ablage selbst. Wählen Sie einen anderen Namen für die Sicherungskopie.</translation>
    </message>
    <message>
        <source>%1 is tightened in %2 passes; say which this was.</source>
        <translation>%1 wird in %2 Durchgängen angezogen; geben Sie an, welcher dies war.</translation>
    </message>
    <message>
        <source>%1 is too little: %2 is asked for. Check unit and tool, and torque it again.</source>
        <translation>%1 ist zu wenig: Verlangt ist %2. Prüfen Sie Einheit und Werkzeug und ziehen Sie noch einmal an.</translation>
    </message>
    <message>
        <source>%1 is too much: %2 is asked for. The fastener may be overstressed: follow the maintenance data, and raise a finding.</source>
        <translation>%1 ist zu viel: Verlangt ist %2. Das Verbindungselement kann überlastet sein: Befolgen Sie die Instandhaltungsunterlagen und melden Sie einen Befund.</translation>
    </message>
    <message>
        <source>%1 is within the limit of %2.</source>
        <translation>%1 liegt innerhalb der Grenze von %2.</translation>
    </message>
    <message>
        <source>%1 joined %2 for the time being (%3). Say how that was undone or made final, then reconnect it.</source>
        <translation>%1 hat %2 vorläufig verbunden (%3). Geben Sie an, wie das rückgängig oder endgültig gemacht wurde, und schließen Sie dann wieder an.</translation>
    </message>
    <message>
        <source>%1 joins %2 to %3; read were "%4" and "%5". Do not join them.</source>
        <translation>%1 verbindet %2 mit %3; gelesen wurden „%4“ und „%5“. Verbinden Sie diese nicht.</translation>
    </message>
    <message>
        <source>%1 leads. These items would be handed over now:</source>
        <translation>Leiter ist %1. Diese Posten würden jetzt übergeben:</translation>
    </message>
    <message>
        <source>%1 leak classes have %2 sizes between them, not %3: give each class but the last its greatest size, or none at all.</source>
        <translation>%1 Leckklassen haben %2 Größen zwischen sich, nicht %3: Geben Sie jeder Klasse außer der letzten ihre größte Größe oder gar keine.</translation>
    </message>
    <message>
        <source>%1 leaks %2, so the liquid is not still. Say that it drips or pools.</source>
        <translation>%1 leckt %2, also steht die Flüssigkeit nicht. Geben Sie an, dass sie tropft oder sich sammelt.</translation>
    </message>
    <message>
        <source>%1 leaks: %2, where %3 is allowed at worst. %4</source>
        <translation>%1 leckt: %2, wo höchstens %3 zulässig ist. %4</translation>
    </message>
    <message>
        <source>%1 legs a point</source>
        <translation>%1 Stränge je Punkt</translation>
    </message>
    <message>
        <source>%1 legs a point, %2 carrying</source>
        <translation>%1 Stränge je Punkt, davon tragend: %2</translation>
    </message>
    <message>
        <source>%1 lies in the band of %2, but the tool may be off by %3, which reaches beyond its edge, and readings are accepted with a guard band here. Torque nearer to the middle, or take a better tool.</source>
        <translation>%1 liegt im Bereich von %2, aber das Werkzeug darf um %3 abweichen, was über dessen Rand reicht, und Messwerte werden hier mit Sicherheitsabstand angenommen. Ziehen Sie näher zur Mitte an, oder nehmen Sie ein besseres Werkzeug.</translation>
    </message>
    <message>
        <source>%1 lies outside %2 to %3, which is the range of a tool that is verified from 20 % on. Give the lowest mark of this one, or take another tool.</source>
        <translation>%1 liegt außerhalb von %2 bis %3, dem Bereich eines Werkzeugs, das ab 20 % geprüft wird. Geben Sie den kleinsten Teilstrich dieses Werkzeugs an, oder nehmen Sie ein anderes.</translation>
    </message>
    <message>
        <source>%1 lies outside the range of the tool, %2 to %3. Take another tool.</source>
        <translation>%1 liegt außerhalb des Bereichs des Werkzeugs, %2 bis %3. Nehmen Sie ein anderes Werkzeug.</translation>
    </message>
    <message>
        <source>%1 lies outside the usable range of tool %2 (%3).</source>
        <translation>%1 liegt außerhalb des nutzbaren Bereichs von Werkzeug %2 (%3).</translation>
    </message>
    <message>
        <source>%1 lies within %2.</source>
        <translation>%1 liegt innerhalb von %2.</translation>
    </message>
    <message>
        <source>%1 lists %2, which is missing or cannot be read.</source>
        <translation>%1 führt %2 auf, und das fehlt oder kann nicht gelesen werden.</translation>
    </message>
    <message>
        <source>%1 lists an interface "%2" of its own (%3), so this one cannot be taken on there.</source>
        <translation>%1 führt selbst einen Anschluss „%2“ (%3) auf; dieser hier kann dort also nicht übernommen werden.</translation>
    </message>
    <message>
        <source>%1 looked at this. What %1 saw nobody else signs for: close this sheet, lock (Ctrl+L), and look for yourself.</source>
        <translation>%1 hat dies angesehen. Für das, was %1 gesehen hat, unterschreibt niemand sonst: Schließen Sie dieses Blatt, sperren Sie (Strg+L) und sehen Sie selbst nach.</translation>
    </message>
    <message>
        <source>%1 loose ends</source>
        <translation>%1 offene Stellen</translation>
    </message>
    <message>
        <source>%1 made the list ask less of %2; another inspector accepts it.</source>
        <translation>%1 hat die Anforderungen der Liste an %2 verringert; die Annahme macht ein anderer Prüfer.</translation>
    </message>
    <message>
        <source>%1 meets the limit, %2.</source>
        <translation>%1 hält die Grenze, %2, ein.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 min after wiping dry</source>
        <translation>%1 min nach dem Trockenwischen</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 Minuten</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 weitere</translation>
    </message>
    <message>
        <source>%1 moves to the incoming unit, which has not been received yet.</source>
        <translation>%1 kommt an das eingehende Aggregat, und dieses wurde noch nicht angenommen.</translation>
    </message>
    <message>
        <source>%1 must be off before %2, and it is still on.</source>
        <translation>%1 muss vor %2 gelöst sein und ist noch angebaut.</translation>
    </message>
    <message>
        <source>%1 must name what it is about.</source>
        <translation>%1 muss angeben, worum es geht.</translation>
    </message>
    <message>
        <source>%1 names this job as well. What both leads signed stays: the two close together.</source>
        <translation>%1 nennt ebenfalls diesen Auftrag. Was beide Leiter unterschrieben haben, bleibt: Die beiden werden zusammen abgeschlossen.</translation>
    </message>
    <message>
        <source>%1 needs a new seal %2; give its part number and batch.</source>
        <translation>%1 braucht eine neue Dichtung %2; geben Sie deren Teilenummer und Charge an.</translation>
    </message>
    <message>
        <source>%1 not applicable</source>
        <translation>%1 nicht zutreffend</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 entries</source>
        <translation>%1 von %2 Einträgen</translation>
    </message>
    <message>
        <source>%1 of %2 entries; the first %3 are shown, the export has all.</source>
        <translation>%1 von %2 Einträgen; die ersten %3 werden gezeigt, der Export enthält alle.</translation>
    </message>
    <message>
        <source>%1 of %2 interfaces</source>
        <translation>%1 von %2 Anschlüssen</translation>
    </message>
    <message>
        <source>%1 of %2 interfaces, drawn by the seed %3; entries: %4</source>
        <translation>%1 von %2 Anschlüssen, gezogen mit dem Startwert %3; Einträge: %4</translation>
    </message>
    <message>
        <source>%1 of zone %2</source>
        <translation>%1 des Bereichs %2</translation>
    </message>
    <message>
        <source>%1 on %2, replaced by %3: %4 (%5)</source>
        <translation>%1 an %2, ersetzt durch %3: %4 (%5)</translation>
    </message>
    <message>
        <source>%1 on %2: %3</source>
        <translation>%1 an %2: %3</translation>
    </message>
    <message>
        <source>%1 on the wrench, %2 at the fastener</source>
        <translation>%1 am Schlüssel, %2 am Verbindungselement</translation>
    </message>
    <message>
        <source>%1 openings blanked; tagged unserviceable with %2</source>
        <translation>%1 Öffnungen verschlossen; als nicht betriebstüchtig gekennzeichnet mit %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 darüber</translation>
    </message>
    <message>
        <source>%1 read %2, which is outside its limits: this test has failed. Find the cause, and say what is worked on again.</source>
        <translation>%1 ergab %2 und liegt außerhalb der Grenzwerte: Dieser Test ist nicht bestanden. Suchen Sie die Ursache, und geben Sie an, woran wieder gearbeitet wird.</translation>
    </message>
    <message>
        <source>%1 reconnected and inspected</source>
        <translation>%1 wieder angeschlossen und geprüft</translation>
    </message>
    <message>
        <source>%1 renewed of %2</source>
        <translation>%1 von %2 erneuert</translation>
    </message>
    <message>
        <source>%1 reused</source>
        <translation>%1 wiederverwendet</translation>
    </message>
    <message>
        <source>%1 said that %2 is not applicable; a second person agrees to it.</source>
        <translation>%1 hat angegeben, dass %2 nicht zutreffend ist; eine zweite Person stimmt dem zu.</translation>
    </message>
    <message>
        <source>%1 said this of %2 in entry %3, and it stands.</source>
        <translation>%1 hat dies zu %2 in Eintrag %3 angegeben, und es gilt.</translation>
    </message>
    <message>
        <source>%1 scrapped</source>
        <translation>%1 ausgesondert</translation>
    </message>
    <message>
        <source>%1 seconds</source>
        <translation>%1 Sekunden</translation>
    </message>
    <message>
        <source>%1 shipping blanks removed</source>
        <translation>%1 Transportverschlüsse entfernt</translation>
    </message>
    <message>
        <source>%1 signed in this job within 24 hours (entry %2) and may inspect %3. A re-inspection is for when nobody else is there.</source>
        <translation>%1 hat in diesem Auftrag innerhalb von 24 Stunden unterschrieben (Eintrag %2) und darf %3 prüfen. Eine erneute Prüfung ist für den Fall, dass niemand anders da ist.</translation>
    </message>
    <message>
        <source>%1 signs</source>
        <translation>%1 unterschreibt</translation>
    </message>
    <message>
        <source>%1 signs with the PIN alone</source>
        <translation>%1 unterschreibt allein mit der PIN</translation>
    </message>
    <message>
        <source>%1 stopped in the middle of %2 (entry %3): %4 So it was touched.</source>
        <translation>%1 hat die Arbeit an %2 mittendrin unterbrochen (Eintrag %3): %4 Es wurde also angerührt.</translation>
    </message>
    <message>
        <source>%1 stopped on %2 (entry %3): %4</source>
        <translation>%1 hat die Arbeit an %2 unterbrochen (Eintrag %3): %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>two halves</comment>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 an %2, %3</translation>
    </message>
    <message>
        <source>%1 to %2, %3, entry %4</source>
        <translation>%1 an %2, %3, Eintrag %4</translation>
    </message>
    <message>
        <source>%1 to %2, fasteners: %3</source>
        <translation>%1 bis %2, Verbindungselemente: %3</translation>
    </message>
    <message>
        <source>%1 to account for</source>
        <translation>%1 zu klären</translation>
    </message>
    <message>
        <source>%1 to the millilitre</source>
        <translation>%1 je Milliliter</translation>
    </message>
    <message>
        <source>%1 too few.</source>
        <translation>%1 zu wenig.</translation>
    </message>
    <message>
        <source>%1 too few: find what is left before you go on, it may lie in the bay.</source>
        <translation>%1 zu wenig: Suchen Sie das Fehlende, bevor Sie weitermachen; es kann im Einbauraum liegen.</translation>
    </message>
    <message>
        <source>%1 too many.</source>
        <translation>%1 zu viel.</translation>
    </message>
    <message>
        <source>%1 too many: find out where they belong.</source>
        <translation>%1 zu viel: Klären Sie, wohin sie gehören.</translation>
    </message>
    <message>
        <source>%1 took %2 up already.</source>
        <translation>%1 hat %2 bereits aufgenommen.</translation>
    </message>
    <message>
        <source>%1 torqued %2 of %3 fasteners of %4. Start again from fastener %5, or take over the marked fasteners by signature.</source>
        <translation>%1 hat %2 von %3 Verbindungselementen von %4 angezogen. Beginnen Sie wieder mit Verbindungselement %5, oder übernehmen Sie die markierten Verbindungselemente mit Unterschrift.</translation>
    </message>
    <message>
        <source>%1 unpacks to far more than such a file holds; it was not unpacked.</source>
        <translation>%1 entpackt sich zu weit mehr, als eine solche Datei fasst; es wurde nicht entpackt.</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 waits for %2 or depends on it.</source>
        <translation>%1 wartet auf %2 oder hängt davon ab.</translation>
    </message>
    <message>
        <source>%1 waits for its inspection.</source>
        <translation>%1 wartet auf die Prüfung.</translation>
    </message>
    <message>
        <source>%1 waits for its second inspection, by another person.</source>
        <translation>%1 wartet auf die zweite Prüfung, durch eine andere Person.</translation>
    </message>
    <message>
        <source>%1 waits here already, under this name or another.</source>
        <translation>%1 wartet hier schon, unter diesem oder einem anderen Namen.</translation>
    </message>
    <message>
        <source>%1 was accepted by %2. If it is worked on again, mark it disturbed first; then it is inspected again.</source>
        <translation>%1 wurde von %2 angenommen. Wird wieder daran gearbeitet, kennzeichnen Sie den Posten zuerst als nachträglich verändert; dann wird er erneut geprüft.</translation>
    </message>
    <message>
        <source>%1 was closed on %2, and this job was complete then: it takes nothing but its own closure. What is found now goes into a follow-on job.</source>
        <translation>%1 wurde am %2 abgeschlossen, und dieser Auftrag war damals vollständig: Er nimmt nur noch den eigenen Abschluss auf. Was jetzt gefunden wird, kommt in einen Folgeauftrag.</translation>
    </message>
    <message>
        <source>%1 was closed on %2. What goes on from a closed job is a follow-on job.</source>
        <translation>%1 wurde am %2 abgeschlossen. Was von einem abgeschlossenen Auftrag aus weitergeht, ist ein Folgeauftrag.</translation>
    </message>
    <message>
        <source>%1 was closed without naming this job. Strike the link.</source>
        <translation>%1 wurde abgeschlossen, ohne diesen Auftrag zu nennen. Streichen Sie die Verknüpfung.</translation>
    </message>
    <message>
        <source>%1 was found still attached by %2: %3 Whoever frees it says so first.</source>
        <translation>%1 wurde von %2 noch verbunden vorgefunden: %3 Wer es frei macht, gibt das zuerst an.</translation>
    </message>
    <message>
        <source>%1 was found still attached: %2</source>
        <translation>%1 wurde noch verbunden vorgefunden: %2</translation>
    </message>
    <message>
        <source>%1 was found still attached: %2 Free it before it goes.</source>
        <translation>%1 wurde noch verbunden vorgefunden: %2 Machen Sie es frei, bevor es abgegeben wird.</translation>
    </message>
    <message>
        <source>%1 was inspected by %2, who had a hand in it or its like in %3. It is inspected again, by somebody else.</source>
        <translation>%1 wurde von %2 geprüft, und diese Person war in %3 daran oder an Gleichartigem beteiligt. Es wird noch einmal geprüft, von jemand anderem.</translation>
    </message>
    <message>
        <source>%1 was issued in entry %2 and has not come back. Two tools of one marking cannot be counted.</source>
        <translation>%1 wurde in Eintrag %2 ausgegeben und ist nicht zurück. Zwei Werkzeuge mit derselben Kennzeichnung lassen sich nicht zählen.</translation>
    </message>
    <message>
        <source>%1 was issued: it was counted, came back or is missing since. It is not struck; return it, or say that it is missing.</source>
        <translation>%1 wurde ausgegeben: Es wurde gezählt, kam zurück oder fehlt seither. Es wird nicht gestrichen; geben Sie es zurück, oder geben Sie an, dass es fehlt.</translation>
    </message>
    <message>
        <source>%1 was joined with what the list asked for then: %2. Undo it first; then correct the list.</source>
        <translation>%1 wurde mit dem angeschlossen, was die Liste damals verlangte: %2. Lösen Sie es zuerst; berichtigen Sie dann die Liste.</translation>
    </message>
    <message>
        <source>%1 was last worked on at %2 (entry %3); this job asks for a pause of %4 minutes before the same eyes look again.</source>
        <translation>An %1 wurde zuletzt um %2 gearbeitet (Eintrag %3); dieser Auftrag verlangt eine Pause von %4 Minuten, bevor dieselben Augen wieder hinsehen.</translation>
    </message>
    <message>
        <source>%1 was linked in entry %2.</source>
        <translation>%1 wurde in Eintrag %2 verknüpft.</translation>
    </message>
    <message>
        <source>%1 was listed with its details. If they are wrong, correct its row of the list.</source>
        <translation>%1 wurde mit seinen Einzelheiten aufgeführt. Sind sie falsch, berichtigen Sie die Zeile in der Liste.</translation>
    </message>
    <message>
        <source>%1 was listed with the serial number %2; the plate is said to read %3. Read it again: it may be another one.</source>
        <translation>%1 ist mit der Seriennummer %2 aufgeführt; auf dem Typenschild soll %3 stehen. Lesen Sie es noch einmal: Es kann ein anderes Teil sein.</translation>
    </message>
    <message>
        <source>%1 was logged as undone. An inspector who had no hand in it looks what it is, and strikes it.</source>
        <translation>%1 wurde als gelöst eingetragen. Ein Prüfer, der nicht daran beteiligt war, sieht nach, was es ist, und streicht es.</translation>
    </message>
    <message>
        <source>%1 was never disconnected in this job.</source>
        <translation>%1 wurde in diesem Auftrag nie gelöst.</translation>
    </message>
    <message>
        <source>%1 was never undone in this job. If it was found so, raise a finding.</source>
        <translation>%1 wurde in diesem Auftrag nie gelöst. Wurde es so vorgefunden, melden Sie einen Befund.</translation>
    </message>
    <message>
        <source>%1 was on no list, and nobody has said yet what restoring it has to show. Give its details before it goes.</source>
        <translation>%1 stand auf keiner Liste, und noch niemand hat angegeben, was die Wiederherstellung nachweisen muss. Geben Sie die Einzelheiten an, bevor es abgegeben wird.</translation>
    </message>
    <message>
        <source>%1 was on no list, and nobody has said yet what restoring it has to show. Give its details first.</source>
        <translation>%1 stand auf keiner Liste, und noch niemand hat angegeben, was die Wiederherstellung nachweisen muss. Geben Sie zuerst die Einzelheiten an.</translation>
    </message>
    <message>
        <source>%1 was passed by %2 in entry %3, and that stands.</source>
        <translation>%1 wurde von %2 in Eintrag %3 passiert, und das gilt.</translation>
    </message>
    <message>
        <source>%1 was passed in entry %2; what was asked for then stays what was asked for.</source>
        <translation>%1 wurde in Eintrag %2 passiert; was damals verlangt war, bleibt das Verlangte.</translation>
    </message>
    <message>
        <source>%1 was removed by %2 in entry %3.</source>
        <translation>%1 wurde von %2 in Eintrag %3 entfernt.</translation>
    </message>
    <message>
        <source>%1 was said to be undone (entry %2), and that was struck. An inspector who had no hand in it looks first.</source>
        <translation>%1 wurde als gelöst angegeben (Eintrag %2), und das wurde gestrichen. Ein Prüfer, der nicht daran beteiligt war, sieht zuerst nach.</translation>
    </message>
    <message>
        <source>%1 was said to be undone (entry %2), and that was struck. An inspector who had no hand in it looks that nothing was touched.</source>
        <translation>%1 wurde als gelöst angegeben (Eintrag %2), und das wurde gestrichen. Ein Prüfer, der nicht daran beteiligt war, sieht nach, dass nichts angerührt wurde.</translation>
    </message>
    <message>
        <source>%1 was said to be undone again (entry %2), and that was struck: what is in it nobody knows. Undo it and restore it; or somebody with authority to overrule strikes that entry as never so.</source>
        <translation>%1 wurde als wieder gelöst angegeben (Eintrag %2), und das wurde gestrichen: Was darin ist, weiß niemand. Lösen Sie es, und stellen Sie es wieder her; oder jemand mit Befugnis zum Übersteuern streicht jenen Eintrag als nie so gewesen.</translation>
    </message>
    <message>
        <source>%1 was said to be undone, which was struck (entry %2). Disconnect it; or have an inspector who had no hand in it confirm it undisturbed.</source>
        <translation>%1 wurde als gelöst angegeben, und das wurde gestrichen (Eintrag %2). Lösen Sie es; oder lassen Sie einen Prüfer, der nicht daran beteiligt war, es als unberührt bestätigen.</translation>
    </message>
    <message>
        <source>%1 was sent in entry %2 as this record has it. Strike that first; then put this right.</source>
        <translation>%1 wurde in Eintrag %2 so gesendet, wie es dieser Nachweis führt. Streichen Sie zuerst jenen; berichtigen Sie dann dies.</translation>
    </message>
    <message>
        <source>%1 was sent to %2, which has not taken it on yet.</source>
        <translation>%1 wurde an %2 gesendet und dort noch nicht übernommen.</translation>
    </message>
    <message>
        <source>%1 was set with %2 and could not be compared here (%3): do not rely on it. Make it anew from the entries.</source>
        <translation>%1 wurde mit %2 gesetzt und konnte hier nicht verglichen werden (%3): Verlassen Sie sich nicht darauf. Erstellen Sie es neu aus den Einträgen.</translation>
    </message>
    <message>
        <source>%1 was taken on by %2 as this record has it. They strike that first; then it is back.</source>
        <translation>%1 wurde von %2 so übernommen, wie es dieser Nachweis führt. Dort wird das zuerst gestrichen; dann ist es zurück.</translation>
    </message>
    <message>
        <source>%1 was undone again in entry %2, which rests on its having been joined. Strike that one first, if it was a mistake.</source>
        <translation>%1 wurde in Eintrag %2 wieder gelöst, und dieser beruht darauf, dass es angeschlossen war. Streichen Sie zuerst jenen, wenn er ein Irrtum war.</translation>
    </message>
    <message>
        <source>%1 was undone and was on no list. Its details are to follow.</source>
        <translation>%1 wurde gelöst und stand auf keiner Liste. Die Einzelheiten fehlen noch.</translation>
    </message>
    <message>
        <source>%1 was undone as what it is listed to be, and what it waited for hung on that. Its kind stays.</source>
        <translation>%1 wurde als das gelöst, als was es aufgeführt ist, und worauf es wartete, hing davon ab. Die Art bleibt.</translation>
    </message>
    <message>
        <source>%1 was undone in this job (entry %2), so it is restored and inspected.</source>
        <translation>%1 wurde in diesem Auftrag gelöst (Eintrag %2), also wird es wiederhergestellt und geprüft.</translation>
    </message>
    <message>
        <source>%1 was undone in this job, so it stays on the list until it is restored and inspected.</source>
        <translation>%1 wurde in diesem Auftrag gelöst und bleibt daher auf der Liste, bis es wiederhergestellt und geprüft ist.</translation>
    </message>
    <message>
        <source>%1 was withdrawn from use.</source>
        <translation>%1 wurde aus dem Gebrauch genommen.</translation>
    </message>
    <message>
        <source>%1 was worked on.</source>
        <translation>An %1 wurde gearbeitet.</translation>
    </message>
    <message>
        <source>%1 was written by a later version of this program. It was left as it is. Open it with that version, or bring this computer up to date.</source>
        <translation>%1 wurde von einer späteren Version dieses Programms geschrieben. Die Datei wurde belassen, wie sie ist. Öffnen Sie sie mit jener Version, oder aktualisieren Sie diesen Rechner.</translation>
    </message>
    <message>
        <source>%1 was written by an earlier version of this program. Open it once for writing, so that it is brought up to date.</source>
        <translation>%1 wurde von einer früheren Version dieses Programms geschrieben. Öffnen Sie die Ablage einmal zum Schreiben, damit sie auf diese Version gebracht wird.</translation>
    </message>
    <message>
        <source>%1 was written by version %2 and could not be compared by this version: do not rely on it. Make it anew from the entries.</source>
        <translation>%1 wurde von Version %2 geschrieben und konnte von dieser Version nicht verglichen werden: Verlassen Sie sich nicht darauf. Erstellen Sie es neu aus den Einträgen.</translation>
    </message>
    <message>
        <source>%1 with its unit, such as %2</source>
        <translation>%1 mit Einheit, wie %2</translation>
    </message>
    <message>
        <source>%1 would ask less, or hold back less, than it does. That is signed by somebody who may pass it.</source>
        <translation>%1 würde weniger verlangen oder weniger zurückhalten als jetzt. Das unterschreibt jemand, der ihn passieren darf.</translation>
    </message>
    <message>
        <source>%1 would carry %2 of %3, which leaves %4; under 20 % is little, for weights and angles are seldom known well.</source>
        <translation>%1 würde %2 von %3 tragen, was %4 übrig lässt; unter 20 % ist wenig, denn Gewichte und Winkel sind selten genau bekannt.</translation>
    </message>
    <message>
        <source>%1 would carry %2, over its working load limit of %3. Do not lift; take stronger equipment, or steeper slings.</source>
        <translation>%1 würde %2 tragen, mehr als die zulässige Tragfähigkeit von %3. Heben Sie nicht; nehmen Sie stärkeres Gerät oder steiler geführte Anschlagmittel.</translation>
    </message>
    <message>
        <source>%1 would cover %2, which has not been inspected.</source>
        <translation>%1 würde %2 verdecken, das noch nicht geprüft ist.</translation>
    </message>
    <message>
        <source>%1 would cover %2. %3</source>
        <translation>%1 würde %2 verdecken. %3</translation>
    </message>
    <message>
        <source>%1 would wait for itself: it is asked to have been passed before %2.</source>
        <translation>%1 würde auf sich selbst warten: Verlangt ist, dass er vor %2 passiert ist.</translation>
    </message>
    <message>
        <source>%1 x %2, separated by |</source>
        <translation>%1 x %2, getrennt durch |</translation>
    </message>
    <message>
        <source>%1 zones</source>
        <translation>%1 Bereiche</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · %4 rev. %5</source>
        <translation>%1 · %2 · %3 · %4 Rev. %5</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · last entry %4</source>
        <translation>%1 · %2 · %3 · letzter Eintrag %4</translation>
    </message>
    <message>
        <source>%1 · critical</source>
        <translation>%1 · kritisch</translation>
    </message>
    <message>
        <source>%1 · root: %2 · fingerprint %3</source>
        <translation>%1 · Wurzel: %2 · Fingerabdruck %3</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 × %2 mm</source>
        <translation>%1 × %2 mm</translation>
    </message>
    <message>
        <source>%1 × %2 to %3</source>
        <translation>%1 × %2 bis %3</translation>
    </message>
    <message>
        <source>%1 – %2. %3</source>
        <translation>%1 – %2. %3</translation>
    </message>
    <message>
        <source>%1 – Remate</source>
        <translation>%1 – Remate</translation>
    </message>
    <message>
        <source>%1's authorisation to %2 begins on %3.</source>
        <translation>Die Berechtigung „%2“ von %1 beginnt am %3.</translation>
    </message>
    <message>
        <source>%1's authorisation to %2 does not cover this kind of interface or this aircraft type.</source>
        <translation>Die Berechtigung „%2“ von %1 deckt diese Art von Anschluss oder diesen Luftfahrzeugtyp nicht ab.</translation>
    </message>
    <message>
        <source>%1's authorisation to %2 ran out on %3.</source>
        <translation>Die Berechtigung „%2“ von %1 ist am %3 abgelaufen.</translation>
    </message>
    <message>
        <source>%1's authorisation to %2 was withdrawn on %3.</source>
        <translation>Die Berechtigung „%2“ von %1 wurde am %3 entzogen.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 %3</source>
        <translation>%1, %2 %3</translation>
    </message>
    <message>
        <source>%1, %2 (%3)</source>
        <translation>%1, %2 (%3)</translation>
    </message>
    <message>
        <source>%1, %2 (entry %3)</source>
        <translation>%1, %2 (Eintrag %3)</translation>
    </message>
    <message>
        <source>%1, %2 at arm %3, moment %4</source>
        <translation>%1, %2 am Hebelarm %3, Moment %4</translation>
    </message>
    <message>
        <source>%1, %2 of the mean aerodynamic chord</source>
        <translation>%1, %2 der mittleren aerodynamischen Flügeltiefe</translation>
    </message>
    <message>
        <source>%1, %2 × %3 pixels, %4</source>
        <translation>%1, %2 × %3 Bildpunkte, %4</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>%1, %2, Eintrag %3</translation>
    </message>
    <message>
        <source>%1, %2, entry %3 there</source>
        <translation>%1, %2, dort Eintrag %3</translation>
    </message>
    <message>
        <source>%1, %2. %3</source>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>%1, always new</source>
        <translation>%1, immer neu</translation>
    </message>
    <message>
        <source>%1, and the CSV of its interfaces beside it.</source>
        <translation>%1 und daneben die CSV-Datei seiner Anschlüsse.</translation>
    </message>
    <message>
        <source>%1, by different persons</source>
        <translation>%1, durch verschiedene Personen</translation>
    </message>
    <message>
        <source>%1, byte for byte as it came.</source>
        <translation>%1, Byte für Byte wie eingegangen.</translation>
    </message>
    <message>
        <source>%1, details to follow</source>
        <translation>%1, Angaben folgen</translation>
    </message>
    <message>
        <source>%1, drips or pools</source>
        <translation>%1, tropft oder bildet Lachen</translation>
    </message>
    <message>
        <source>%1, due %2</source>
        <translation>%1, fällig %2</translation>
    </message>
    <message>
        <source>%1, entry %2</source>
        <translation>%1, Eintrag %2</translation>
    </message>
    <message>
        <source>%1, in doubt</source>
        <translation>%1, zweifelhaft</translation>
    </message>
    <message>
        <source>%1, in doubt (entry %2)</source>
        <translation>%1, zweifelhaft (Eintrag %2)</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, Zeile %2: %3</translation>
    </message>
    <message>
        <source>%1, lockout of %2</source>
        <translation>%1, persönliche Sperre von %2</translation>
    </message>
    <message>
        <source>%1, moment %2, centre of gravity at %3</source>
        <translation>%1, Moment %2, Schwerpunkt bei %3</translation>
    </message>
    <message>
        <source>%1, mount</source>
        <translation>%1, Aufhängung</translation>
    </message>
    <message>
        <source>%1, no hand in it</source>
        <translation>%1, nicht daran beteiligt</translation>
    </message>
    <message>
        <source>%1, of these struck: %2</source>
        <translation>%1, davon gestrichen: %2</translation>
    </message>
    <message>
        <source>%1, or the lead with a reason</source>
        <translation>%1, oder der Leiter mit Begründung</translation>
    </message>
    <message>
        <source>%1, part %2</source>
        <translation>%1, Teil %2</translation>
    </message>
    <message>
        <source>%1, perimeter</source>
        <translation>%1, Umriss</translation>
    </message>
    <message>
        <source>%1, row to look up</source>
        <translation>%1, Zeile nachzuschlagen</translation>
    </message>
    <message>
        <source>%1, sent to a linked job and not taken on there</source>
        <translation>%1, an einen verknüpften Auftrag gesendet und dort nicht übernommen</translation>
    </message>
    <message>
        <source>%1, still attached: %2</source>
        <translation>%1, noch verbunden: %2</translation>
    </message>
    <message>
        <source>%1, still to show: %2</source>
        <translation>%1, noch nachzuweisen: %2</translation>
    </message>
    <message>
        <source>%1, stopped: %2</source>
        <translation>%1, unterbrochen: %2</translation>
    </message>
    <message>
        <source>%1, struck</source>
        <translation>%1, gestrichen</translation>
    </message>
    <message>
        <source>%1, tag %2</source>
        <translation>%1, Anhänger %2</translation>
    </message>
    <message>
        <source>%1, torqued %2 of %3</source>
        <translation>%1, angezogen %2 von %3</translation>
    </message>
    <message>
        <source>%1, two readings</source>
        <translation>%1, zwei Messungen</translation>
    </message>
    <message>
        <source>%1, unit</source>
        <translation>%1, Einheit</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1. About %2 of work left for them, between %3 and %4 for the middle half of what this job has shown. This is the job's own pace of %5 inspected interfaces continued, timed over %6 at a time, and nothing else: it counts no pauses, no waiting and no work that comes up.</source>
        <translation>%1. Dafür bleiben etwa %2 Arbeit, zwischen %3 und %4 für die mittlere Hälfte dessen, was dieser Auftrag gezeigt hat. Das ist das eigene Tempo dieses Auftrags mit %5 geprüften Anschlüssen fortgeschrieben, gemessen über jeweils %6, und sonst nichts: Pausen, Wartezeiten und neu hinzukommende Arbeit zählen nicht.</translation>
    </message>
    <message>
        <source>%1. Key %2</source>
        <translation>%1. Schlüssel %2</translation>
    </message>
    <message>
        <source>%1. Passed with %2.</source>
        <translation>%1. Passiert mit %2.</translation>
    </message>
    <message>
        <source>%1. Reference: %2</source>
        <translation>%1. Referenz: %2</translation>
    </message>
    <message>
        <source>%1. SHA-256 %2…</source>
        <translation>%1. SHA-256 %2…</translation>
    </message>
    <message>
        <source>%1. The first: %2</source>
        <translation>%1. Das erste: %2</translation>
    </message>
    <message>
        <source>%1. Too little done to say how long the rest takes: %2 inspected so far, and an estimate needs %3.</source>
        <translation>%1. Es ist zu wenig getan, um zu sagen, wie lange der Rest dauert: bisher %2 geprüft, und eine Schätzung braucht %3.</translation>
    </message>
    <message>
        <source>%1: "%2" cannot be read. Give a number with its unit.</source>
        <translation>%1: „%2“ ist nicht lesbar. Geben Sie eine Zahl mit ihrer Einheit an.</translation>
    </message>
    <message>
        <source>%1: "%2" is not part of a value that was read.</source>
        <translation>%1: „%2“ gehört zu keinem abgelesenen Wert.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1: %2 (%3 to %4)</source>
        <translation>%1: %2 (%3 bis %4)</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1: %2 (at least %3)</source>
        <translation>%1: %2 (mindestens %3)</translation>
    </message>
    <message>
        <source>%1: %2 (at most %3)</source>
        <translation>%1: %2 (höchstens %3)</translation>
    </message>
    <message>
        <source>%1: %2 is never used again, and %3 are said to be reused. Scrap what came off and fit new ones.</source>
        <translation>%1: %2 wird nie wiederverwendet, und %3 sollen wiederverwendet sein. Sondern Sie das Abgenommene aus, und bauen Sie neue an.</translation>
    </message>
    <message>
        <source>%1: %2 is no torque. Check the unit.</source>
        <translation>%1: %2 ist kein Drehmoment. Prüfen Sie die Einheit.</translation>
    </message>
    <message>
        <source>%1: %2 items</source>
        <translation>%1: %2 Posten</translation>
    </message>
    <message>
        <source>%1: %2 undone and not inspected, %3 not undone</source>
        <translation>%1: %2 gelöst und nicht geprüft, %3 nicht gelöst</translation>
    </message>
    <message>
        <source>%1: %2 × %3 are renewed; give their batch.</source>
        <translation>%1: %2 × %3 sind erneuert; geben Sie deren Charge an.</translation>
    </message>
    <message>
        <source>%1: %2 × %3 are required; %4 reused and %5 renewed make %6.</source>
        <translation>%1: %2 × %3 sind verlangt; %4 wiederverwendet und %5 erneuert ergeben %6.</translation>
    </message>
    <message>
        <source>%1: %2 × %3 came off, and %4 are said to be reused. What is from elsewhere is renewed, with its batch.</source>
        <translation>%1: %2 × %3 wurden abgenommen, und %4 sollen wiederverwendet sein. Was von anderswo stammt, wird erneuert, mit seiner Charge.</translation>
    </message>
    <message>
        <source>%1: %2 × %3 came off; %4 reused and %5 scrapped make %6.</source>
        <translation>%1: %2 × %3 wurden abgenommen; %4 wiederverwendet und %5 ausgesondert ergeben %6.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2. The other job would not see that; settle it before it goes.</source>
        <translation>%1: %2. Der andere Auftrag würde das nicht sehen; klären Sie es, bevor es abgegeben wird.</translation>
    </message>
    <message>
        <source>%1: at most %2, first at entry %3 (%4); now %5.</source>
        <translation>%1: höchstens %2, erstmals bei Eintrag %3 (%4); jetzt %5.</translation>
    </message>
    <message>
        <source>%1: before this, a wrong PIN or passphrase was tried %2 times in a row, the last time on %3. If that was not you, change it, and tell whoever administers the register.</source>
        <translation>%1: Zuvor wurde %2-mal hintereinander eine falsche PIN oder Passphrase versucht, zuletzt am %3. Wenn Sie das nicht waren, ändern Sie sie, und sagen Sie es der Person, die das Stammbuch verwaltet.</translation>
    </message>
    <message>
        <source>%1: give the least or the most that the maintenance data allows.</source>
        <translation>%1: Geben Sie das Kleinste oder das Größte an, das die Instandhaltungsunterlagen zulassen.</translation>
    </message>
    <message>
        <source>%1: it has to be verified against its twin again.</source>
        <translation>%1: Die Gegenprüfung muss erneut erfolgen.</translation>
    </message>
    <message>
        <source>%1: it is not joined as it was.</source>
        <translation>%1: Es ist nicht so verbunden, wie es war.</translation>
    </message>
    <message>
        <source>%1: its bonding reading is void.</source>
        <translation>%1: Die Messung der Masseverbindung ist hinfällig.</translation>
    </message>
    <message>
        <source>%1: its inspection held until %2, and the lift is on %3. Have it inspected, or take another.</source>
        <translation>%1: Die Prüfung galt bis %2, und gehoben wird am %3. Lassen Sie es prüfen, oder nehmen Sie ein anderes.</translation>
    </message>
    <message>
        <source>%1: its inspection is void.</source>
        <translation>%1: Die Prüfung ist hinfällig.</translation>
    </message>
    <message>
        <source>%1: its leak check is void.</source>
        <translation>%1: Die Dichtheitsprüfung ist hinfällig.</translation>
    </message>
    <message>
        <source>%1: its safetying is void.</source>
        <translation>%1: Die Sicherung ist hinfällig.</translation>
    </message>
    <message>
        <source>%1: its torque is void.</source>
        <translation>%1: Das Anziehdrehmoment ist hinfällig.</translation>
    </message>
    <message>
        <source>%1: no interface undone so far.</source>
        <translation>%1: bisher kein Anschluss gelöst.</translation>
    </message>
    <message>
        <source>%1: not now</source>
        <translation>%1: jetzt nicht</translation>
    </message>
    <message>
        <source>%1: say for each part how many were reused, renewed and scrapped. Of %2, %3 are required and %4 came off.</source>
        <translation>%1: Geben Sie zu jedem Teil an, wie viele wiederverwendet, erneuert und ausgesondert wurden. Von %2 sind %3 verlangt, und %4 wurden abgenommen.</translation>
    </message>
    <message>
        <source>%1: something may not have been found. Verify the store.</source>
        <translation>%1: Etwas wurde möglicherweise nicht gefunden. Verifizieren Sie die Ablage.</translation>
    </message>
    <message>
        <source>%1: the limit "%2" is none for %3.</source>
        <translation>%1: Die Grenze „%2“ ist keine für %3.</translation>
    </message>
    <message>
        <source>%1: there is no date until which its inspection holds. Have it inspected, or take another.</source>
        <translation>%1: Es fehlt der Tag, bis zu dem die Prüfung gilt. Lassen Sie es prüfen, oder nehmen Sie ein anderes.</translation>
    </message>
    <message>
        <source>%1: to be passed again. %2</source>
        <translation>%1: erneut zu passieren. %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1; %2 minutes after wiping dry</source>
        <translation>%1; %2 Minuten nach dem Trockenwischen</translation>
    </message>
    <message>
        <source>%1; T = %2</source>
        <translation>%1; T = %2</translation>
    </message>
    <message>
        <source>%1; agreed by %2</source>
        <translation>%1; zugestimmt von %2</translation>
    </message>
    <message>
        <source>%1; agreed: %2</source>
        <translation>%1; zugestimmt: %2</translation>
    </message>
    <message>
        <source>%1; allowed by %2</source>
        <translation>%1; erlaubt von %2</translation>
    </message>
    <message>
        <source>%1; because: %2</source>
        <translation>%1; weil: %2</translation>
    </message>
    <message>
        <source>%1; behind it %2 where it is so</source>
        <translation>%1; dahinter %2, wo es so ist</translation>
    </message>
    <message>
        <source>%1; leaves with it: %2</source>
        <translation>%1; geht damit ab: %2</translation>
    </message>
    <message>
        <source>%1; next is fastener %2, pass %3</source>
        <translation>%1; nächstes ist Verbindungselement %2, Durchgang %3</translation>
    </message>
    <message>
        <source>%1; on %2</source>
        <translation>%1; auf %2</translation>
    </message>
    <message>
        <source>%1; or by clearing it: %2</source>
        <translation>%1; oder durch Erledigen: %2</translation>
    </message>
    <message>
        <source>%1; serial number %2 instead</source>
        <translation>%1; stattdessen Seriennummer %2</translation>
    </message>
    <message>
        <source>%1° from level</source>
        <translation>%1° zur Waagerechten</translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n Eintrag</numerusform>
            <numerusform>%n Einträge</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n Posten</numerusform>
            <numerusform>%n Posten</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n openings blanked; tagged %1</source>
        <translation>
            <numerusform>%n Öffnung verschlossen; Anhänger %1</numerusform>
            <numerusform>%n Öffnungen verschlossen; Anhänger %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n shipping blanks removed</source>
        <translation>
            <numerusform>%n Transportverschluss entfernt</numerusform>
            <numerusform>%n Transportverschlüsse entfernt</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tags</source>
        <translation>
            <numerusform>%n Anhänger</numerusform>
            <numerusform>%n Anhänger</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to inspect</source>
        <translation>
            <numerusform>%n zu prüfen</numerusform>
            <numerusform>%n zu prüfen</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Add a photo …</source>
        <translation>&amp;Foto hinzufügen …</translation>
    </message>
    <message>
        <source>&amp;All jobs</source>
        <translation>&amp;Alle Aufträge</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Back up the store …</source>
        <translation>Ablage &amp;sichern …</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>Sc&amp;hließen</translation>
    </message>
    <message>
        <source>&amp;Compare …</source>
        <translation>Vergleic&amp;hen …</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Discard it</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>&amp;Do</source>
        <translation>Ein&amp;tragen</translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translation>&amp;Ziehen</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Export as CSV …</source>
        <translation>Als &amp;CSV exportieren …</translation>
    </message>
    <message>
        <source>&amp;Export the record package …</source>
        <translation>Nachweis&amp;paket exportieren …</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>&amp;Find a command …</source>
        <translation>&amp;Befehl suchen …</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>&amp;Go to the entry</source>
        <translation>Zum Ei&amp;ntrag</translation>
    </message>
    <message>
        <source>&amp;Handover sheet …</source>
        <translation>Übe&amp;rgabeblatt …</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>H&amp;ilfe</translation>
    </message>
    <message>
        <source>&amp;Import into this store …</source>
        <translation>In diese Ablage &amp;importieren …</translation>
    </message>
    <message>
        <source>&amp;Import the list …</source>
        <translation>Liste &amp;importieren …</translation>
    </message>
    <message>
        <source>&amp;Jobs</source>
        <translation>A&amp;ufträge</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>Ansi&amp;cht</translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>&amp;More details</source>
        <translation>Weitere A&amp;ngaben</translation>
    </message>
    <message>
        <source>&amp;New job …</source>
        <translation>&amp;Neuer Auftrag …</translation>
    </message>
    <message>
        <source>&amp;New key for a person …</source>
        <translation>Neuer &amp;Schlüssel für eine Person …</translation>
    </message>
    <message>
        <source>&amp;New store …</source>
        <translation>&amp;Neue Ablage …</translation>
    </message>
    <message>
        <source>&amp;Only with loose ends</source>
        <translation>Nur mit &amp;offenen Stellen</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Open a package file …</source>
        <translation>&amp;Paketdatei öffnen …</translation>
    </message>
    <message>
        <source>&amp;Open a store …</source>
        <translation>&amp;Ablage öffnen …</translation>
    </message>
    <message>
        <source>&amp;Other interface …</source>
        <translation>&amp;Anderer Anschluss …</translation>
    </message>
    <message>
        <source>&amp;PIN</source>
        <translation>&amp;PIN</translation>
    </message>
    <message>
        <source>&amp;People and tools</source>
        <translation>Personen und &amp;Werkzeuge</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Recent stores</source>
        <translation>&amp;Zuletzt geöffnete Ablagen</translation>
    </message>
    <message>
        <source>&amp;Register a tool …</source>
        <translation>Werkzeug &amp;registrieren …</translation>
    </message>
    <message>
        <source>&amp;Save as PDF …</source>
        <translation>Als PDF &amp;speichern …</translation>
    </message>
    <message>
        <source>&amp;Save as a file …</source>
        <translation>Als Datei &amp;speichern …</translation>
    </message>
    <message>
        <source>&amp;Save the verdict …</source>
        <translation>Ergebnis &amp;speichern …</translation>
    </message>
    <message>
        <source>&amp;Set a hold point …</source>
        <translation>Haltepunkt &amp;setzen …</translation>
    </message>
    <message>
        <source>&amp;Sign the marks …</source>
        <translation>&amp;Markierungen unterschreiben …</translation>
    </message>
    <message>
        <source>&amp;Stop the key …</source>
        <translation>Sc&amp;hlüssel sperren …</translation>
    </message>
    <message>
        <source>&amp;Strike my last entry …</source>
        <translation>Meinen letzten Eintrag &amp;streichen …</translation>
    </message>
    <message>
        <source>&amp;Struck only</source>
        <translation>&amp;Nur gestrichene</translation>
    </message>
    <message>
        <source>&amp;Take it and sign …</source>
        <translation>Übernehmen &amp;und unterschreiben …</translation>
    </message>
    <message>
        <source>&amp;Take the key over at this station …</source>
        <translation>Schlüssel an diesem Arbeitsplatz ü&amp;bernehmen …</translation>
    </message>
    <message>
        <source>&amp;Take your key over …</source>
        <translation>Eigenen Schlüssel über&amp;nehmen …</translation>
    </message>
    <message>
        <source>&amp;Until day</source>
        <translation>&amp;Bis Tag</translation>
    </message>
    <message>
        <source>&amp;Verify</source>
        <translation>&amp;Verifizieren</translation>
    </message>
    <message>
        <source>&amp;Verify a record package …</source>
        <translation>Nachweispaket veri&amp;fizieren …</translation>
    </message>
    <message>
        <source>&amp;Verify again</source>
        <translation>&amp;Erneut verifizieren</translation>
    </message>
    <message>
        <source>&amp;Wall sheet: what is open …</source>
        <translation>Aushang: was &amp;offen ist …</translation>
    </message>
    <message>
        <source>&amp;Watch a folder …</source>
        <translation>&amp;Ordner beobachten …</translation>
    </message>
    <message>
        <source>&amp;Where used …</source>
        <translation>Wo &amp;verwendet …</translation>
    </message>
    <message>
        <source>&amp;Who</source>
        <translation>&amp;Wer</translation>
    </message>
    <message>
        <source>&amp;Who signed when …</source>
        <translation>Wer unterschrieb w&amp;ann …</translation>
    </message>
    <message>
        <source>(all)</source>
        <translation>(alle)</translation>
    </message>
    <message>
        <source>(signature in doubt)</source>
        <translation>(Unterschrift zweifelhaft)</translation>
    </message>
    <message>
        <source>(what is to be looked at?)</source>
        <translation>(was ist anzusehen?)</translation>
    </message>
    <message>
        <source>1 SIGNATURE IN DOUBT</source>
        <translation>1 UNTERSCHRIFT ZWEIFELHAFT</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation>1 Eintrag</translation>
    </message>
    <message>
        <source>1 interface</source>
        <translation>1 Anschluss</translation>
    </message>
    <message>
        <source>1 interface not finished</source>
        <translation>1 Anschluss nicht fertig</translation>
    </message>
    <message>
        <source>1 interface undone and not inspected</source>
        <translation>1 Anschluss gelöst und nicht geprüft</translation>
    </message>
    <message>
        <source>1 leg a point</source>
        <translation>1 Strang je Punkt</translation>
    </message>
    <message>
        <source>1 loose end</source>
        <translation>1 offene Stelle</translation>
    </message>
    <message>
        <source>1 minute</source>
        <translation>1 Minute</translation>
    </message>
    <message>
        <source>1 more</source>
        <translation>1 weiteres</translation>
    </message>
    <message>
        <source>1 second</source>
        <translation>1 Sekunde</translation>
    </message>
    <message>
        <source>1 zone</source>
        <translation>1 Bereich</translation>
    </message>
    <message>
        <source>2 lifting points are told by the length between them and by where the centre of gravity lies, for the nearer one carries more. Fill in both.</source>
        <translation>Bei 2 Anschlagpunkten wird nach dem Abstand zwischen ihnen und nach der Lage des Schwerpunkts gerechnet, denn der nähere trägt mehr. Füllen Sie beides aus.</translation>
    </message>
    <message>
        <source>32 letters and digits, as the other station shows them</source>
        <translation>32 Buchstaben und Ziffern, wie der andere Arbeitsplatz sie anzeigt</translation>
    </message>
    <message>
        <source>; within 5° of the vertical, counted as vertical</source>
        <translation>; innerhalb von 5° zur Senkrechten, als senkrecht gerechnet</translation>
    </message>
    <message>
        <source>A PIN or passphrase has at least %1 characters.</source>
        <translation>Eine PIN oder Passphrase hat mindestens %1 Zeichen.</translation>
    </message>
    <message>
        <source>A PIN or passphrase needs at least %1 characters.</source>
        <translation>Eine PIN oder Passphrase braucht mindestens %1 Zeichen.</translation>
    </message>
    <message>
        <source>A bad batch is found again by its number alone.</source>
        <translation>Eine schlechte Charge findet man nur über ihre Nummer wieder.</translation>
    </message>
    <message>
        <source>A band from %1 to %2 limits nothing: the most is over %3 times the least. Look for a slipped decimal or a wrong unit.</source>
        <translation>Ein Bereich von %1 bis %2 begrenzt nichts: Der größte Wert ist mehr als das %3-Fache des kleinsten. Suchen Sie nach einem verrutschten Dezimalpunkt oder einer falschen Einheit.</translation>
    </message>
    <message>
        <source>A band of %1 holds nothing. Give the least first, and then the most.</source>
        <translation>Ein Bereich von %1 enthält nichts. Geben Sie erst das Kleinste an und dann das Größte.</translation>
    </message>
    <message>
        <source>A blank is missing and may be inside (finding %1). Nothing is run or tested until it is known where it is.</source>
        <translation>Ein Verschluss fehlt und kann innen sein (Befund %1). Nichts wird laufen gelassen oder getestet, bis bekannt ist, wo er ist.</translation>
    </message>
    <message>
        <source>A blank left in a line looks like a finished joint.</source>
        <translation>Ein in einer Leitung vergessener Verschluss sieht wie eine fertige Verbindung aus.</translation>
    </message>
    <message>
        <source>A blank left inside starves or blocks the system. Let the pressure off before it is fitted or removed, and count. Work as the approved maintenance data and the local rules say.</source>
        <translation>Ein innen vergessener Verschluss unterbricht die Versorgung des Systems oder blockiert es. Lassen Sie den Druck ab, bevor er angebracht oder entfernt wird, und zählen Sie. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A blank of %1 is missing and may be inside. It is joined when finding %2 is rectified, and says what became of it; there are no limits for it, and to put it off is not enough.</source>
        <translation>Ein Verschluss von %1 fehlt und kann innen sein. Angeschlossen wird erst, wenn Befund %2 behoben ist und angibt, wo der Verschluss geblieben ist; dafür gibt es keine Grenzwerte, und zurückstellen genügt nicht.</translation>
    </message>
    <message>
        <source>A blank of %1 is missing and may be inside. It stays with those who look for it.</source>
        <translation>Ein Verschluss von %1 fehlt und kann innen sein. Es bleibt bei denen, die danach suchen.</translation>
    </message>
    <message>
        <source>A blank that is missing is found by the engine.</source>
        <translation>Ein fehlender Verschluss gerät ins Triebwerk.</translation>
    </message>
    <message>
        <source>A block comes back as it went out.</source>
        <translation>Ein Block kommt zurück, wie er hinausging.</translation>
    </message>
    <message>
        <source>A block of tags runs from a first number, 1 or more, to a last that is not before it, and has at most %1 tags; not from %2 to %3.</source>
        <translation>Ein Anhängerblock läuft von einer ersten Nummer, 1 oder mehr, bis zu einer letzten, die nicht davor liegt, und hat höchstens %1 Anhänger; nicht von %2 bis %3.</translation>
    </message>
    <message>
        <source>A block that is complete has no tag on an aircraft.</source>
        <translation>Ein vollständiger Block hat keinen Anhänger an einem Luftfahrzeug.</translation>
    </message>
    <message>
        <source>A bolt that is left over was left out, or lies where it does harm.</source>
        <translation>Ein übriger Bolzen wurde ausgelassen oder liegt, wo er Schaden anrichtet.</translation>
    </message>
    <message>
        <source>A bond is measured once or twice, not %1 times.</source>
        <translation>Eine Masseverbindung wird ein- oder zweimal gemessen, nicht %1-mal.</translation>
    </message>
    <message>
        <source>A bonding limit is a resistance and its unit; this one is missing.</source>
        <translation>Ein Masseverbindungsgrenzwert ist ein Widerstand mit seiner Einheit; dies fehlt.</translation>
    </message>
    <message>
        <source>A break point in finished work would be read as unfinished work.</source>
        <translation>Eine Unterbrechung in fertiger Arbeit würde als unfertige Arbeit gelesen.</translation>
    </message>
    <message>
        <source>A calibration belongs to a tool that is used.</source>
        <translation>Eine Kalibrierung gehört zu einem Werkzeug, das benutzt wird.</translation>
    </message>
    <message>
        <source>A carriage return stands alone. End lines with a line feed, or with both.</source>
        <translation>Ein Wagenrücklauf steht allein. Beenden Sie Zeilen mit einem Zeilenvorschub oder mit beiden.</translation>
    </message>
    <message>
        <source>A cell begins or ends with a blank.</source>
        <translation>Eine Zelle beginnt oder endet mit einem Leerzeichen.</translation>
    </message>
    <message>
        <source>A check without a limit can only be passed.</source>
        <translation>Eine Prüfung ohne Grenzwert kann nur bestanden werden.</translation>
    </message>
    <message>
        <source>A condition of %1 cannot end with %1 itself.</source>
        <translation>Eine Bedingung von %1 kann nicht mit %1 selbst enden.</translation>
    </message>
    <message>
        <source>A condition of %1 ends with the hold point %2, which this job does not have. Set that one, or change this.</source>
        <translation>Eine Bedingung von %1 endet mit dem Haltepunkt %2, den dieser Auftrag nicht hat. Setzen Sie jenen, oder ändern Sie diesen.</translation>
    </message>
    <message>
        <source>A condition on interfaces names these by kind, zone or id.</source>
        <translation>Eine Bedingung für Anschlüsse nennt sie nach Art, Bereich oder Kennung.</translation>
    </message>
    <message>
        <source>A condition on temporary items names one sort or more.</source>
        <translation>Eine Bedingung für vorübergehend Angebrachtes nennt eine Sorte oder mehrere.</translation>
    </message>
    <message>
        <source>A condition on temporary items names their sorts, not interfaces.</source>
        <translation>Eine Bedingung für vorübergehend Angebrachtes nennt dessen Sorten, keine Anschlüsse.</translation>
    </message>
    <message>
        <source>A condition on tests names one sort: ground run, functional test or leak check.</source>
        <translation>Eine Bedingung für Tests nennt eine Sorte: ground run, functional test oder leak check.</translation>
    </message>
    <message>
        <source>A condition on the unit names a stage alone.</source>
        <translation>Eine Bedingung für das Aggregat nennt nur einen Stand.</translation>
    </message>
    <message>
        <source>A condition that cannot be so hides one that is.</source>
        <translation>Ein Zustand, den es nicht geben kann, verdeckt einen, den es gibt.</translation>
    </message>
    <message>
        <source>A control character stands in this field. Take it out.</source>
        <translation>In diesem Feld steht ein Steuerzeichen. Entfernen Sie es.</translation>
    </message>
    <message>
        <source>A copy of this photo is attached to %1 already, by entry %2.</source>
        <translation>Eine Kopie dieses Fotos ist schon an %1 angehängt, durch Eintrag %2.</translation>
    </message>
    <message>
        <source>A correction on paper does not change what is in the joint.</source>
        <translation>Eine Berichtigung auf dem Papier ändert nicht, was in der Verbindung ist.</translation>
    </message>
    <message>
        <source>A count that does not come out right is the moment to look.</source>
        <translation>Eine Zählung, die nicht aufgeht, ist der Moment zum Nachsehen.</translation>
    </message>
    <message>
        <source>A cowl or panel is heavy, catches the wind and traps hands. Work from a proper platform, hold the panel while its fasteners are undone, lock its hold-open rods and keep people from under it, as the approved maintenance data and the local rules say.</source>
        <translation>Eine Haube oder Klappe ist schwer, fängt den Wind und klemmt Hände ein. Arbeiten Sie von einer geeigneten Arbeitsbühne, halten Sie die Klappe, während ihre Verbindungselemente gelöst werden, verriegeln Sie ihre Haltestangen, und lassen Sie niemanden darunter, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A critical interface is looked at by somebody who knows what to look for.</source>
        <translation>Einen kritischen Anschluss sieht jemand an, der weiß, wonach zu suchen ist.</translation>
    </message>
    <message>
        <source>A disposition is given once.</source>
        <translation>Über einen Befund wird einmal entschieden.</translation>
    </message>
    <message>
        <source>A disturbed seal is renewed, by part number and batch, so that a bad batch can be found again.</source>
        <translation>Eine angerührte Dichtung wird erneuert, mit Teilenummer und Charge, damit sich eine schlechte Charge wiederfinden lässt.</translation>
    </message>
    <message>
        <source>A doubt points at what it doubts.</source>
        <translation>Ein Zweifel zeigt auf das, woran er zweifelt.</translation>
    </message>
    <message>
        <source>A draft of the record package was exported: the job is NOT CLOSED</source>
        <translation>Ein Entwurf des Nachweispakets wurde exportiert: Der Auftrag ist NICHT ABGESCHLOSSEN</translation>
    </message>
    <message>
        <source>A drag of %1 is as much as the torque itself, %2: the nut or its thread is damaged, or the figure is not the drag. Look at both, and measure again.</source>
        <translation>Ein Klemmdrehmoment von %1 ist so viel wie das Drehmoment selbst, %2: Die Mutter oder ihr Gewinde ist beschädigt, oder die Zahl ist nicht das Klemmdrehmoment. Sehen Sie beide an und messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>A drag of %1 is none. Give the torque that turns the nut before it seats.</source>
        <translation>Ein Klemmdrehmoment von %1 ist keines. Geben Sie das Drehmoment an, das die Mutter dreht, bevor sie aufliegt.</translation>
    </message>
    <message>
        <source>A drop under %1 says nothing of the bond. Send a known current above 0 through it.</source>
        <translation>Ein Spannungsabfall bei %1 sagt nichts über die Masseverbindung. Schicken Sie einen bekannten Strom über 0 hindurch.</translation>
    </message>
    <message>
        <source>A fastener that the order forgets is never tightened.</source>
        <translation>Ein Verbindungselement, das die Reihenfolge vergisst, wird nie angezogen.</translation>
    </message>
    <message>
        <source>A fastener that went over its most is not turned back to it: follow the maintenance data.</source>
        <translation>Ein Verbindungselement, das über seinen größten Wert angezogen wurde, wird nicht darauf zurückgedreht: Befolgen Sie die Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>A figure without a source is taken from nowhere. Name the document and its section.</source>
        <translation>Ein Wert ohne Quelle ist aus der Luft gegriffen. Nennen Sie das Dokument und den Abschnitt.</translation>
    </message>
    <message>
        <source>A finding is deferred until a day at most, which its authority names, and which is not past.</source>
        <translation>Ein Befund wird höchstens bis zu einem Tag zurückgestellt, den die zugehörige Grundlage nennt und der nicht vergangen ist.</translation>
    </message>
    <message>
        <source>A finding on nothing is found by nobody.</source>
        <translation>Einen Befund an nichts findet niemand.</translation>
    </message>
    <message>
        <source>A flow or counted drops against a limit, one turned into the other where that is needed.</source>
        <translation>Ein Durchfluss oder gezählte Tropfen gegen einen Grenzwert, das eine ins andere umgerechnet, wo nötig.</translation>
    </message>
    <message>
        <source>A gate is not lowered once somebody stands in front of it.</source>
        <translation>Eine Sperre wird nicht gelockert, wenn jemand davorsteht.</translation>
    </message>
    <message>
        <source>A gate names sorts of temporary items, for their removal; not %1.</source>
        <translation>Eine Sperre nennt Arten vorübergehend angebrachter Hilfsmittel, für deren Entfernen; nicht %1.</translation>
    </message>
    <message>
        <source>A gate that asks for nothing lets everything through.</source>
        <translation>Eine Sperre, die nichts verlangt, lässt alles durch.</translation>
    </message>
    <message>
        <source>A good test never stands for the inspection of an item. The approved maintenance data says what is run, read and allowed; people who are licensed or authorised for it run.</source>
        <translation>Ein guter Test ersetzt nie die Prüfung eines Postens. Die genehmigten Instandhaltungsunterlagen sagen, was zu fahren und abzulesen ist und was zulässig ist; den Lauf führen Personen mit Lizenz oder Berechtigung dafür durch.</translation>
    </message>
    <message>
        <source>A graduation is one step of the tool's scale, above 0, in the unit of its range; not %1.</source>
        <translation>Eine Teilung ist ein Schritt auf der Skala des Werkzeugs, über 0, in der Einheit seines Bereichs; nicht %1.</translation>
    </message>
    <message>
        <source>A graduation of %1 is none. Have the tool's registration corrected.</source>
        <translation>Eine Teilung von %1 ist keine. Lassen Sie die Registrierung des Werkzeugs berichtigen.</translation>
    </message>
    <message>
        <source>A graduation of %1 is too fine for this torque. Give one step of the wrench's scale.</source>
        <translation>Eine Teilung von %1 ist zu fein für dieses Drehmoment. Geben Sie einen Schritt der Skala des Schlüssels an.</translation>
    </message>
    <message>
        <source>A greatest torque of %1 is none. Give what is marked on the tool.</source>
        <translation>Ein größtes Drehmoment von %1 ist keines. Geben Sie an, was auf dem Werkzeug steht.</translation>
    </message>
    <message>
        <source>A guard band is as wide as what the tool may be off. Give it, or accept without a guard band.</source>
        <translation>Ein Sicherheitsabstand ist so breit wie die zulässige Abweichung des Werkzeugs. Geben Sie sie an, oder nehmen Sie ohne Sicherheitsabstand an.</translation>
    </message>
    <message>
        <source>A handing on has two ends, and both sign.</source>
        <translation>Eine Weitergabe hat zwei Enden, und beide unterschreiben.</translation>
    </message>
    <message>
        <source>A handover goes to another person.</source>
        <translation>Eine Übergabe geht an eine andere Person.</translation>
    </message>
    <message>
        <source>A handover to %1 waits for acceptance already.</source>
        <translation>Eine Übergabe an %1 wartet bereits auf Annahme.</translation>
    </message>
    <message>
        <source>A hoist carries the unit over people. It is rigged and taken away with nobody under the load, and it lets go only when the unit stands or its mounts hold it; trained people lift. Work as the approved maintenance data and the local rules say.</source>
        <translation>Ein Hebezeug trägt das Aggregat über Personen. Es wird nur angebracht und weggenommen, wenn niemand unter der Last ist, und es lässt erst los, wenn das Aggregat steht oder seine Aufhängungen es halten; geschultes Personal hebt. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A hold point asks for something, and holds something back. Give conditions or statements, and gates.</source>
        <translation>Ein Haltepunkt verlangt etwas und hält etwas zurück. Geben Sie Bedingungen oder Erklärungen an, und Sperren.</translation>
    </message>
    <message>
        <source>A hold point cannot hold back "%1": that has to be said whenever it is so.</source>
        <translation>Ein Haltepunkt kann „%1“ nicht zurückhalten: Das muss gesagt werden, wann immer es so ist.</translation>
    </message>
    <message>
        <source>A hold point cannot hold back "%1": there is no such entry of a job.</source>
        <translation>Ein Haltepunkt kann „%1“ nicht zurückhalten: Einen solchen Eintrag eines Auftrags gibt es nicht.</translation>
    </message>
    <message>
        <source>A hold point has no id of its own: "%1".</source>
        <translation>Ein Haltepunkt hat keine eigene Kennung: „%1“.</translation>
    </message>
    <message>
        <source>A job is not linked with itself. Name the other one.</source>
        <translation>Ein Auftrag wird nicht mit sich selbst verknüpft. Nennen Sie den anderen.</translation>
    </message>
    <message>
        <source>A job is opened by its lead. Name yourself as lead, or let the lead open it.</source>
        <translation>Ein Auftrag wird von seinem Leiter eröffnet. Nennen Sie sich selbst als Leiter, oder lassen Sie den Leiter ihn eröffnen.</translation>
    </message>
    <message>
        <source>A job needs at least one zone, each with a name of its own.</source>
        <translation>Ein Auftrag braucht mindestens einen Bereich, jeder mit eigener Bezeichnung.</translation>
    </message>
    <message>
        <source>A job that is given up is not deleted: what was undone closes in full.</source>
        <translation>Ein abgebrochener Auftrag wird nicht gelöscht: Was gelöst wurde, wird vollständig abgeschlossen.</translation>
    </message>
    <message>
        <source>A job's work is done by the people it names.</source>
        <translation>Die Arbeit eines Auftrags tun die Personen, die er nennt.</translation>
    </message>
    <message>
        <source>A joint with a bolt too few looks like any other from outside.</source>
        <translation>Eine Verbindung mit einem Bolzen zu wenig sieht von außen aus wie jede andere.</translation>
    </message>
    <message>
        <source>A key belongs to somebody.</source>
        <translation>Ein Schlüssel gehört jemandem.</translation>
    </message>
    <message>
        <source>A key is stopped at one moment.</source>
        <translation>Ein Schlüssel wird zu einem Zeitpunkt gesperrt.</translation>
    </message>
    <message>
        <source>A key that somebody else may have signs nothing.</source>
        <translation>Ein Schlüssel, den jemand anders haben kann, unterschreibt nichts.</translation>
    </message>
    <message>
        <source>A leak check needs the worst class that is allowed, or a rate.</source>
        <translation>Eine Dichtheitsprüfung braucht die schlechteste zulässige Klasse oder eine Rate.</translation>
    </message>
    <message>
        <source>A leak grows in flight, beside what is hot.</source>
        <translation>Eine Leckage wächst im Flug, neben dem, was heiß ist.</translation>
    </message>
    <message>
        <source>A least drag of %1 is none. Take it from the maintenance data; the published table begins at 7/16 in.</source>
        <translation>Ein kleinstes Klemmdrehmoment von %1 ist keines. Nehmen Sie es aus den Instandhaltungsunterlagen; die veröffentlichte Tabelle beginnt bei 7/16 in.</translation>
    </message>
    <message>
        <source>A ledger carries a name that cannot be one: "%1".</source>
        <translation>Ein Buch trägt einen Namen, der keiner sein kann: „%1“.</translation>
    </message>
    <message>
        <source>A ledger stands there without one entry: what was in it is gone.</source>
        <translation>Ein Buch steht da ohne einen einzigen Eintrag: Was darin war, ist weg.</translation>
    </message>
    <message>
        <source>A leg at %1</source>
        <translation>Ein Strang (%1)</translation>
    </message>
    <message>
        <source>A leg carries, left / right</source>
        <translation>Ein Strang trägt, links / rechts</translation>
    </message>
    <message>
        <source>A leg of %1 cannot hang from a hook %2 above its lifting point. Give the leg's length, and the height, which is at most as much.</source>
        <translation>Ein Strang von %1 kann nicht an einem Haken hängen, der %2 über seinem Anschlagpunkt ist. Geben Sie die Länge des Strangs an und die Höhe, die höchstens ebenso groß ist.</translation>
    </message>
    <message>
        <source>A lift is planned for the outgoing or for the incoming unit: name one.</source>
        <translation>Ein Hebevorgang wird für das ausgehende oder für das eingehende Aggregat geplant: Nennen Sie eines.</translation>
    </message>
    <message>
        <source>A lift of the %1 unit is planned, within the limits of hoist and sling.</source>
        <translation>Ein Hebevorgang für das Aggregat (%1) ist geplant, innerhalb der Grenzen von Hebezeug und Anschlagmitteln.</translation>
    </message>
    <message>
        <source>A limit and its comparison belong together: at most 3 and less than 3 are two limits. Read with four wires, at a bond that is complete; isolate electrical power first.</source>
        <translation>Ein Grenzwert und sein Vergleich gehören zusammen: höchstens 3 und weniger als 3 sind zwei Grenzwerte. Messen Sie mit vier Leitungen, an einer vollständigen Masseverbindung; schalten Sie zuerst die Stromversorgung frei.</translation>
    </message>
    <message>
        <source>A limit of %1 for the drag of a nut limits nothing: a nut that turns with nothing does not lock.</source>
        <translation>Ein Grenzwert von %1 für das Klemmdrehmoment einer Mutter begrenzt nichts: Eine Mutter, die sich ohne Widerstand dreht, sichert nicht.</translation>
    </message>
    <message>
        <source>A limit of %1 is none that a bond can have. Give a resistance above 0.</source>
        <translation>Eine Grenze von %1 kann keine Masseverbindung haben. Geben Sie einen Widerstand über 0 an.</translation>
    </message>
    <message>
        <source>A line is a label, a colon, a blank and a value.</source>
        <translation>Eine Zeile besteht aus einer Bezeichnung, einem Doppelpunkt, einem Leerzeichen und einem Wert.</translation>
    </message>
    <message>
        <source>A line is longer than any entry can be.</source>
        <translation>Eine Zeile ist länger, als ein Eintrag sein kann.</translation>
    </message>
    <message>
        <source>A link to the wrong job ties two pieces of work that have nothing to do with each other.</source>
        <translation>Eine Verknüpfung mit dem falschen Auftrag bindet zwei Arbeiten, die nichts miteinander zu tun haben.</translation>
    </message>
    <message>
        <source>A load is reckoned on 1 or 2 lifting points, not on %1. Give 1 or 2; what hangs on more is planned by the maintenance data and somebody qualified for it.</source>
        <translation>Eine Last wird auf 1 oder 2 Anschlagpunkte gerechnet, nicht auf %1. Geben Sie 1 oder 2 an; was an mehr Punkten hängt, wird nach den Instandhaltungsunterlagen und von jemand dafür Qualifiziertem geplant.</translation>
    </message>
    <message>
        <source>A load of %1 is none. Give a weight above 0.</source>
        <translation>Eine Last von %1 ist keine. Geben Sie ein Gewicht über 0 an.</translation>
    </message>
    <message>
        <source>A locked fastener looks torqued.</source>
        <translation>Ein gesichertes Verbindungselement sieht angezogen aus.</translation>
    </message>
    <message>
        <source>A lockout always belongs to somebody who is there.</source>
        <translation>Eine persönliche Sperre gehört immer jemandem, der da ist.</translation>
    </message>
    <message>
        <source>A look-up of %1 "%2" would leave out entry %3 of ledger %4: the index of where things were used was changed.</source>
        <translation>Eine Suche nach %1 „%2“ würde Eintrag %3 des Buchs %4 auslassen: Das Verzeichnis, wo etwas verwendet wurde, ist geändert worden.</translation>
    </message>
    <message>
        <source>A loose union may stay dry for an hour.</source>
        <translation>Eine lose Verschraubung kann eine Stunde trocken bleiben.</translation>
    </message>
    <message>
        <source>A lowest mark of %1 is none of a tool up to %2. Give what is marked on the tool.</source>
        <translation>Ein kleinster Teilstrich von %1 ist keiner eines Werkzeugs bis %2. Geben Sie an, was auf dem Werkzeug steht.</translation>
    </message>
    <message>
        <source>A mark on a picture that nobody attached points at nothing.</source>
        <translation>Eine Markierung auf einem Bild, das niemand angehängt hat, zeigt auf nichts.</translation>
    </message>
    <message>
        <source>A mate check needs the designations of both halves.</source>
        <translation>Eine Zuordnungsprüfung braucht die Bezeichnungen beider Hälften.</translation>
    </message>
    <message>
        <source>A mean aerodynamic chord of %1 is none. Give the length from the aircraft's data, or leave it out.</source>
        <translation>Eine mittlere aerodynamische Flügeltiefe von %1 ist keine. Geben Sie die Länge aus den Daten des Luftfahrzeugs an, oder lassen Sie sie weg.</translation>
    </message>
    <message>
        <source>A mount carries the unit. Release it only when the load is on a hoist and sling within their limits and everybody is clear; never stand or reach under the load. Trained people lift, as the approved maintenance data and the local rules say.</source>
        <translation>Eine Aufhängung trägt das Aggregat. Lösen Sie sie erst, wenn die Last an einem Hebezeug mit Anschlagmitteln innerhalb ihrer Grenzwerte hängt und alle aus dem Gefahrenbereich sind; stehen oder greifen Sie nie unter die Last. Geschultes Personal hebt, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A mount that carries nothing is not restored.</source>
        <translation>Eine Aufhängung, die nichts trägt, ist nicht wiederhergestellt.</translation>
    </message>
    <message>
        <source>A mount that is undone again hands its load to the others, or to nobody.</source>
        <translation>Eine wieder gelöste Aufhängung gibt ihre Last an die anderen ab oder an niemanden.</translation>
    </message>
    <message>
        <source>A mount.</source>
        <translation>Eine Aufhängung.</translation>
    </message>
    <message>
        <source>A name that nothing answers to would be looked up by nobody.</source>
        <translation>Einen Namen, zu dem es nichts gibt, würde niemand nachsehen.</translation>
    </message>
    <message>
        <source>A name that nothing answers to would be reopened by nothing.</source>
        <translation>Ein Name, zu dem es nichts gibt, würde durch nichts wieder geöffnet.</translation>
    </message>
    <message>
        <source>A new seal needs its part number.</source>
        <translation>Eine neue Dichtung braucht ihre Teilenummer.</translation>
    </message>
    <message>
        <source>A number that two parts have is the number of neither.</source>
        <translation>Eine Nummer, die zwei Teile haben, ist die Nummer von keinem.</translation>
    </message>
    <message>
        <source>A part is in one place.</source>
        <translation>Ein Teil ist an einer Stelle.</translation>
    </message>
    <message>
        <source>A part that did not come off here has another history.</source>
        <translation>Ein Teil, das nicht von hier abgenommen wurde, hat eine andere Vorgeschichte.</translation>
    </message>
    <message>
        <source>A part that moves was taken off first.</source>
        <translation>Ein Teil, das umgebaut wird, wurde zuerst abgebaut.</translation>
    </message>
    <message>
        <source>A part that stands twice is counted twice, or not at all.</source>
        <translation>Ein Teil, das zweimal aufgeführt ist, wird zweimal gezählt oder gar nicht.</translation>
    </message>
    <message>
        <source>A pass that is not the last must not look final.</source>
        <translation>Ein Durchgang, der nicht der letzte ist, darf nicht endgültig aussehen.</translation>
    </message>
    <message>
        <source>A pass to %1 % asks for less than the pass before it. Give the passes in rising order.</source>
        <translation>Ein Durchgang auf %1 % verlangt weniger als der davor. Geben Sie die Durchgänge in steigender Folge an.</translation>
    </message>
    <message>
        <source>A pass to %1 % of the final torque is none. Give each pass more than 0 and at most 100 %.</source>
        <translation>Ein Durchgang auf %1 % des Enddrehmoments ist keiner. Geben Sie jedem Durchgang mehr als 0 und höchstens 100 %.</translation>
    </message>
    <message>
        <source>A period that ends before it begins covers nothing.</source>
        <translation>Ein Zeitraum, der vor seinem Beginn endet, deckt nichts ab.</translation>
    </message>
    <message>
        <source>A picture of something else proves nothing.</source>
        <translation>Ein Bild von etwas anderem beweist nichts.</translation>
    </message>
    <message>
        <source>A picture with a lane for each person, shift by shift.</source>
        <translation>Ein Bild mit einer Spur für jede Person, Schicht für Schicht.</translation>
    </message>
    <message>
        <source>A pin holds what would fall, fire or fold. It is pulled when everybody is clear, and counted. Work as the approved maintenance data and the local rules say.</source>
        <translation>Ein Stift hält, was sonst fallen, auslösen oder einklappen würde. Er wird erst gezogen, wenn alle aus dem Gefahrenbereich sind, und gezählt. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A poor bond lets currents find another way.</source>
        <translation>Eine schlechte Masseverbindung lässt Ströme einen anderen Weg suchen.</translation>
    </message>
    <message>
        <source>A printer</source>
        <translation>Ein Drucker</translation>
    </message>
    <message>
        <source>A private key must be 32 bytes long.</source>
        <translation>Ein privater Schlüssel muss 32 Byte lang sein.</translation>
    </message>
    <message>
        <source>A quote opens here and never closes.</source>
        <translation>Hier öffnet sich ein Anführungszeichen und wird nie geschlossen.</translation>
    </message>
    <message>
        <source>A quote stands inside a field that does not begin with one. Put the field in quotes and write the quote twice.</source>
        <translation>In einem Feld, das nicht mit einem Anführungszeichen beginnt, steht ein Anführungszeichen. Setzen Sie das Feld in Anführungszeichen und schreiben Sie das Anführungszeichen doppelt.</translation>
    </message>
    <message>
        <source>A rate of leak is not below 0.</source>
        <translation>Eine Leckrate liegt nicht unter 0.</translation>
    </message>
    <message>
        <source>A rated load of %1 is none. Give the weight that stands on the accessory.</source>
        <translation>Eine Nennlast von %1 ist keine. Geben Sie das Gewicht an, das auf dem Anschlagmittel steht.</translation>
    </message>
    <message>
        <source>A reading belongs to a joint that is made.</source>
        <translation>Ein Messwert gehört zu einer hergestellten Verbindung.</translation>
    </message>
    <message>
        <source>A reading is as good as the tool on that day.</source>
        <translation>Ein Messwert ist so gut wie das Werkzeug an jenem Tag.</translation>
    </message>
    <message>
        <source>A reading is as good as the tool turns out to be.</source>
        <translation>Ein Messwert ist so gut, wie sich das Werkzeug erweist.</translation>
    </message>
    <message>
        <source>A reading must lead to one tool.</source>
        <translation>Ein Messwert muss zu einem Werkzeug führen.</translation>
    </message>
    <message>
        <source>A reading outside its limits is no matter of opinion.</source>
        <translation>Ein Messwert außerhalb seiner Grenzwerte ist keine Ansichtssache.</translation>
    </message>
    <message>
        <source>A reading without a specification proves nothing.</source>
        <translation>Ein Messwert ohne Vorgabe beweist nichts.</translation>
    </message>
    <message>
        <source>A reconnection without a disconnection hides one that nobody logged.</source>
        <translation>Ein Wiederanschließen ohne Lösen verdeckt ein Lösen, das niemand eingetragen hat.</translation>
    </message>
    <message>
        <source>A register without anybody who can sign could never be mended.</source>
        <translation>Ein Stammbuch ohne jemanden, der unterschreiben kann, ließe sich nie reparieren.</translation>
    </message>
    <message>
        <source>A rejection says what is wrong with a joint that was made.</source>
        <translation>Eine Zurückweisung sagt, was an einer hergestellten Verbindung falsch ist.</translation>
    </message>
    <message>
        <source>A released record must stay what was released.</source>
        <translation>Ein freigegebener Nachweis muss bleiben, was freigegeben wurde.</translation>
    </message>
    <message>
        <source>A requirement is not struck by those who have to show it.</source>
        <translation>Eine Anforderung wird nicht von denen gestrichen, die sie nachweisen müssen.</translation>
    </message>
    <message>
        <source>A requirement that is in the way must not be talked away.</source>
        <translation>Eine Anforderung, die im Weg ist, darf nicht weggeredet werden.</translation>
    </message>
    <message>
        <source>A result is shown with 0 to %1 decimal places, not %2.</source>
        <translation>Ein Ergebnis wird mit 0 bis %1 Dezimalstellen gezeigt, nicht mit %2.</translation>
    </message>
    <message>
        <source>A scheme that looks 0 minutes after wiping dry has no time. Leave the minutes out.</source>
        <translation>Ein Schema, das 0 Minuten nach dem Trockenwischen hinsieht, hat keine Zeit. Lassen Sie die Minuten weg.</translation>
    </message>
    <message>
        <source>A second reading must not paper over the first.</source>
        <translation>Ein zweiter Messwert darf den ersten nicht überdecken.</translation>
    </message>
    <message>
        <source>A second reading shows whether the first one touched.</source>
        <translation>Eine zweite Messung zeigt, ob die erste Kontakt hatte.</translation>
    </message>
    <message>
        <source>A second signature would hide which one counts.</source>
        <translation>Eine zweite Unterschrift würde verdecken, welche gilt.</translation>
    </message>
    <message>
        <source>A seed is 1 to 128 characters in one line, each to be seen, and no blank at either end.</source>
        <translation>Ein Startwert hat 1 bis 128 sichtbare Zeichen in einer Zeile, ohne Leerzeichen am Anfang oder Ende.</translation>
    </message>
    <message>
        <source>A seep of one scheme is a heavy seep of another.</source>
        <translation>Ein Sickern nach einem Schema ist ein starkes Sickern nach einem anderen.</translation>
    </message>
    <message>
        <source>A self-locking nut that is used again shows by its drag that it still locks: measure and record it.</source>
        <translation>Eine wiederverwendete selbstsichernde Mutter zeigt durch ihr Klemmdrehmoment, dass sie noch sichert: Messen Sie es, und tragen Sie es ein.</translation>
    </message>
    <message>
        <source>A sense line may be hot and under the pressure of what it senses: air, oil or fuel. Isolate the source, let it cool, release the pressure and protect skin and eyes, as the approved maintenance data and the local rules say.</source>
        <translation>Eine Fühlleitung kann heiß sein und unter dem Druck dessen stehen, was sie erfasst: Luft, Öl oder Kraftstoff. Sperren Sie die Quelle ab, lassen Sie abkühlen, lassen Sie den Druck ab, und schützen Sie Haut und Augen, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A setting of %1 does not serve: of the wrench's marks, %2 to %3 give the torque that is asked for.</source>
        <translation>Eine Einstellung von %1 taugt nicht: Von den Teilstrichen des Schlüssels ergeben %2 bis %3 das verlangte Drehmoment.</translation>
    </message>
    <message>
        <source>A short name without blanks, such as last-look</source>
        <translation>Ein kurzer Name ohne Leerzeichen, etwa last-look</translation>
    </message>
    <message>
        <source>A signature is worth what is known of the signer.</source>
        <translation>Eine Unterschrift ist so viel wert, wie man über den Unterzeichner weiß.</translation>
    </message>
    <message>
        <source>A signature that nothing asked for hides which one counts.</source>
        <translation>Eine Unterschrift, die nicht verlangt war, verdeckt, welche gilt.</translation>
    </message>
    <message>
        <source>A sling carries the unit. It comes off when the mounts hold the unit or it rests in its stand, with nobody under the load. Work as the approved maintenance data and the local rules say.</source>
        <translation>Ein Anschlagmittel trägt das Aggregat. Es wird erst abgenommen, wenn die Aufhängungen das Aggregat halten oder es in seinem Ständer ruht und niemand unter der Last ist. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A stand that is not for this unit lets it fall. Lock wheels and pins before the load comes on, and keep hands out from between. Work as the approved maintenance data and the local rules say.</source>
        <translation>Ein Ständer, der nicht für dieses Aggregat bestimmt ist, lässt es fallen. Sperren Sie Räder und Stifte, bevor die Last darauf kommt, und halten Sie die Hände aus den Zwischenräumen. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A station's secret is %1 bytes long, not %2.</source>
        <translation>Das Geheimnis eines Arbeitsplatzes ist %1 Byte lang, nicht %2.</translation>
    </message>
    <message>
        <source>A stiff load may hang on two of all its legs: at each of two points one leg is reckoned with, however many there are.</source>
        <translation>Eine starre Last kann an zweien ihrer Stränge hängen: An jedem von zwei Punkten wird mit einem Strang gerechnet, wie viele es auch sind.</translation>
    </message>
    <message>
        <source>A stiff load may hang on two of all its legs: two are reckoned with, however many there are.</source>
        <translation>Eine starre Last kann an zweien ihrer Stränge hängen: Mit zweien wird gerechnet, wie viele es auch sind.</translation>
    </message>
    <message>
        <source>A stored transfer is damaged. Make a new one where the key is.</source>
        <translation>Eine gespeicherte Übertragung ist beschädigt. Erstellen Sie eine neue dort, wo der Schlüssel ist.</translation>
    </message>
    <message>
        <source>A tag hangs on what is off. Leave it out.</source>
        <translation>Ein Anhänger hängt an dem, was gelöst ist. Lassen Sie ihn weg.</translation>
    </message>
    <message>
        <source>A tag may give the limit of all legs together, or at an angle: what counts here is what one leg carries hanging straight.</source>
        <translation>Ein Anhänger kann die Grenze aller Stränge zusammen oder bei einem Winkel angeben: Hier zählt, was ein Strang gerade hängend trägt.</translation>
    </message>
    <message>
        <source>A tag points at one open interface, for the whole job.</source>
        <translation>Ein Anhänger zeigt den ganzen Auftrag lang auf einen offenen Anschluss.</translation>
    </message>
    <message>
        <source>A tag that is missing marks a joint, or lies in an engine.</source>
        <translation>Ein fehlender Anhänger kennzeichnet eine Verbindung oder liegt in einem Triebwerk.</translation>
    </message>
    <message>
        <source>A tag that is struck from the paper still hangs on the breaker.</source>
        <translation>Ein Anhänger, der auf dem Papier gestrichen ist, hängt noch am Schutzschalter.</translation>
    </message>
    <message>
        <source>A test current can spark where a contact slips: not near fuel, vapour or open tanks, unless meter and procedure are approved for it.</source>
        <translation>Ein Prüfstrom kann funken, wo ein Kontakt abrutscht: nicht in der Nähe von Kraftstoff, Dämpfen oder offenen Tanks, es sei denn, Messgerät und Verfahren sind dafür zugelassen.</translation>
    </message>
    <message>
        <source>A test says nothing of what was open when it was made.</source>
        <translation>Ein Test sagt nichts über das, was offen war, als er gemacht wurde.</translation>
    </message>
    <message>
        <source>A test that failed says which interfaces are worked on again. If none of them is the cause, raise a finding, and name those that were touched to find it.</source>
        <translation>Ein nicht bestandener Test gibt an, an welchen Anschlüssen wieder gearbeitet wird. Ist keiner davon die Ursache, melden Sie einen Befund, und nennen Sie die, die bei der Suche angerührt wurden.</translation>
    </message>
    <message>
        <source>A test that was passed reopens nothing.</source>
        <translation>Ein bestandener Test öffnet nichts wieder.</translation>
    </message>
    <message>
        <source>A tool that is set needs its graduation, or nobody can tell whether it was set to one of its marks.</source>
        <translation>Ein einstellbares Werkzeug braucht seine Teilung, sonst kann niemand sagen, ob es auf einen Teilstrich eingestellt war.</translation>
    </message>
    <message>
        <source>A tool that nobody can tell from another is not missed.</source>
        <translation>Ein Werkzeug, das niemand von einem anderen unterscheiden kann, wird nicht vermisst.</translation>
    </message>
    <message>
        <source>A torque band runs from a least above 0 to a most, in a unit of torque; not from %1 to %2.</source>
        <translation>Ein Drehmomentbereich läuft von einem kleinsten Wert über 0 bis zu einem größten, in einer Drehmomenteinheit; nicht von %1 bis %2.</translation>
    </message>
    <message>
        <source>A torque is specified by its fasteners, least, most and unit; this one is missing.</source>
        <translation>Ein Anziehdrehmoment wird durch Verbindungselemente, kleinsten und größten Wert und Einheit vorgegeben; dies fehlt.</translation>
    </message>
    <message>
        <source>A torque tool has its usable range in a unit of torque.</source>
        <translation>Ein Drehmomentwerkzeug hat seinen nutzbaren Bereich in einer Drehmomenteinheit.</translation>
    </message>
    <message>
        <source>A torque, length, weight, volume or other quantity in another unit of its kind, by exact factors.</source>
        <translation>Ein Drehmoment, eine Länge, ein Gewicht, ein Volumen oder eine andere Größe in einer anderen Einheit ihrer Art, mit exakten Faktoren.</translation>
    </message>
    <message>
        <source>A transfer code has %1 letters and digits; %2 were typed.</source>
        <translation>Ein Übertragungscode hat %1 Buchstaben und Ziffern; eingegeben wurden %2.</translation>
    </message>
    <message>
        <source>A transfer code has the letters A to Z and the digits 2 to 7; "%1" is none of them.</source>
        <translation>Ein Übertragungscode hat die Buchstaben A bis Z und die Ziffern 2 bis 7; „%1“ gehört nicht dazu.</translation>
    </message>
    <message>
        <source>A transfer code is %1 bytes long, not %2.</source>
        <translation>Ein Übertragungscode ist %1 Byte lang, nicht %2.</translation>
    </message>
    <message>
        <source>A transfer is open for 1 minute to %1 hours.</source>
        <translation>Eine Übertragung ist 1 Minute bis %1 Stunden offen.</translation>
    </message>
    <message>
        <source>A trial fit looks finished from a metre away.</source>
        <translation>Eine Probemontage sieht aus einem Meter Entfernung fertig aus.</translation>
    </message>
    <message>
        <source>A turn after the torque runs from a least angle above 0 to a most of a full turn at most; give both.</source>
        <translation>Ein Drehwinkel nach dem Anziehdrehmoment läuft von einem kleinsten Winkel über 0 bis zu höchstens einer ganzen Umdrehung; geben Sie beide an.</translation>
    </message>
    <message>
        <source>A unit is in its place.</source>
        <translation>Ein Aggregat ist an seinem Platz.</translation>
    </message>
    <message>
        <source>A unit that leaves takes its blanks along, each of them counted.</source>
        <translation>Ein Aggregat, das weggeht, nimmt seine Verschlüsse mit, jeden davon gezählt.</translation>
    </message>
    <message>
        <source>A usable range needs its lower and upper end and a unit, from less to more; a tool that measures nothing has none of the three.</source>
        <translation>Ein nutzbarer Bereich braucht unteres und oberes Ende und eine Einheit, vom kleineren zum größeren Wert; ein Werkzeug, das nichts misst, hat keines der drei.</translation>
    </message>
    <message>
        <source>A value that was read in a test has a name.</source>
        <translation>Ein in einem Test abgelesener Wert hat einen Namen.</translation>
    </message>
    <message>
        <source>A walk-round looks at what was said to be undone.</source>
        <translation>Ein Rundgang sieht sich an, was als gelöst angegeben ist.</translation>
    </message>
    <message>
        <source>A warning tag stops the hand that would switch on. Only the person named on it takes it off. Work as the approved maintenance data and the local rules say.</source>
        <translation>Ein Warnanhänger hält die Hand auf, die einschalten würde. Nur die darauf genannte Person nimmt ihn ab. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>A wetted area of %1 is none. Give its size across as a length, or 0 when it is dry.</source>
        <translation>Eine benetzte Fläche von %1 ist keine. Geben Sie ihre Größe als Länge an, oder 0, wenn sie trocken ist.</translation>
    </message>
    <message>
        <source>A whole number</source>
        <translation>Eine ganze Zahl</translation>
    </message>
    <message>
        <source>A worn self-locking nut backs off.</source>
        <translation>Eine verschlissene selbstsichernde Mutter dreht sich los.</translation>
    </message>
    <message>
        <source>A wrench is longer than %1: measure from the middle of its grip to the drive.</source>
        <translation>Ein Schlüssel ist länger als %1: Messen Sie von der Mitte des Griffs bis zum Antrieb.</translation>
    </message>
    <message>
        <source>A wrench or an adapter can slip: pull, with a firm stand, and with nothing sharp behind the hand.</source>
        <translation>Ein Schlüssel oder ein Adapter kann abrutschen: Ziehen Sie, mit festem Stand und mit nichts Scharfem hinter der Hand.</translation>
    </message>
    <message>
        <source>A wrong length or deviation makes every reading wrong.</source>
        <translation>Eine falsche Länge oder Abweichung macht jeden Messwert falsch.</translation>
    </message>
    <message>
        <source>A wrong limit is signed for as readily as a right one.</source>
        <translation>Für einen falschen Grenzwert wird so bereitwillig unterschrieben wie für einen richtigen.</translation>
    </message>
    <message>
        <source>A wrong setting clicks as nicely as a right one.</source>
        <translation>Eine falsche Einstellung klickt so schön wie eine richtige.</translation>
    </message>
    <message>
        <source>A zero of the leads of %1 is none. Set the meter to zero with the leads on one piece of metal, and measure again.</source>
        <translation>Ein Nullwert der Leitungen von %1 ist keiner. Stellen Sie das Messgerät mit beiden Leitungen auf einem Stück Metall auf null und messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>A&amp;ttach it to %1 …</source>
        <translation>An %1 an&amp;hängen …</translation>
    </message>
    <message>
        <source>A&amp;ttach it to …</source>
        <translation>An&amp;hängen an …</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Betrifft</translation>
    </message>
    <message>
        <source>About your key</source>
        <translation>Zu Ihrem Schlüssel</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Accept the handover</source>
        <translation>Übergabe annehmen</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Access panel</source>
        <translation>Zugangsklappe</translation>
    </message>
    <message>
        <source>Accessory leaves with the outgoing unit</source>
        <translation>Anbauteil geht mit dem ausgehenden Aggregat ab</translation>
    </message>
    <message>
        <source>Accessory listed</source>
        <translation>Anbauteil aufgelistet</translation>
    </message>
    <message>
        <source>Accessory moved to the incoming unit</source>
        <translation>Anbauteil an das eingehende Aggregat umgebaut</translation>
    </message>
    <message>
        <source>Across, ‰</source>
        <translation>Waagerecht, ‰</translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation>Adapter</translation>
    </message>
    <message>
        <source>Adapter's angle</source>
        <translation>Winkel des Adapters</translation>
    </message>
    <message>
        <source>Adapter, drive to fastener</source>
        <translation>Adapter, Antrieb bis Verbindungselement</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Foto hinzufügen</translation>
    </message>
    <message>
        <source>Add row</source>
        <translation>Zeile hinzufügen</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nachher</translation>
    </message>
    <message>
        <source>After several wrong PINs or passphrases %1 must wait another %2 before the next try.</source>
        <translation>Nach mehreren falschen PINs oder Passphrasen muss %1 bis zum nächsten Versuch noch %2 warten.</translation>
    </message>
    <message>
        <source>After: %1</source>
        <translation>Nachher: %1</translation>
    </message>
    <message>
        <source>Agree: not applicable</source>
        <translation>Zustimmen: nicht zutreffend</translation>
    </message>
    <message>
        <source>Agreed: not applicable</source>
        <translation>Zugestimmt: nicht zutreffend</translation>
    </message>
    <message>
        <source>Aircraft</source>
        <translation>Luftfahrzeug</translation>
    </message>
    <message>
        <source>Aircraft half</source>
        <translation>Flugzeugseitige Hälfte</translation>
    </message>
    <message>
        <source>Aircraft type</source>
        <translation>Luftfahrzeugmuster</translation>
    </message>
    <message>
        <source>Aircraft types</source>
        <translation>Luftfahrzeugmuster</translation>
    </message>
    <message>
        <source>All differences, with the hashes of the entries.</source>
        <translation>Alle Unterschiede, mit den Prüfsummen der Einträge.</translation>
    </message>
    <message>
        <source>All entries of all jobs, with their hashes.</source>
        <translation>Alle Einträge aller Aufträge, mit ihren Prüfsummen.</translation>
    </message>
    <message>
        <source>All entries, in order</source>
        <translation>Alle Einträge, der Reihe nach</translation>
    </message>
    <message>
        <source>All fasteners are fitted, flush and of the right length.</source>
        <translation>Alle Verbindungselemente sind angebracht, bündig und von richtiger Länge.</translation>
    </message>
    <message>
        <source>All interfaces of the job</source>
        <translation>Alle Anschlüsse des Auftrags</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Alle Arten</translation>
    </message>
    <message>
        <source>All kinds of entries</source>
        <translation>Alle Arten von Einträgen</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Ganzes Bild</translation>
    </message>
    <message>
        <source>All of it is as it was signed, but entries were not allowed, as the rules of this program have it. Entries: %1.</source>
        <translation>Alles ist so, wie es unterschrieben wurde, aber Einträge waren nach den Regeln dieses Programms nicht erlaubt. Einträge: %1.</translation>
    </message>
    <message>
        <source>All people</source>
        <translation>Alle Personen</translation>
    </message>
    <message>
        <source>All zones</source>
        <translation>Alle Bereiche</translation>
    </message>
    <message>
        <source>Allowed by</source>
        <translation>Erlaubt von</translation>
    </message>
    <message>
        <source>Also counted by</source>
        <translation>Auch gezählt von</translation>
    </message>
    <message>
        <source>Also looked at by</source>
        <translation>Auch angesehen von</translation>
    </message>
    <message>
        <source>Also open</source>
        <translation>Außerdem offen</translation>
    </message>
    <message>
        <source>An acceptance names what it accepts.</source>
        <translation>Eine Annahme nennt, was sie annimmt.</translation>
    </message>
    <message>
        <source>An adapter changes what arrives at the fastener.</source>
        <translation>Ein Adapter ändert, was am Verbindungselement ankommt.</translation>
    </message>
    <message>
        <source>An adapter is told by three figures: the wrench's length, the adapter's length and its angle. Fill in all, or none.</source>
        <translation>Ein Adapter wird durch drei Werte angegeben: Länge des Schlüssels, Länge des Adapters und sein Winkel. Füllen Sie alle aus oder keinen.</translation>
    </message>
    <message>
        <source>An agreement belongs to what was said.</source>
        <translation>Eine Zustimmung gehört zu dem, was gesagt wurde.</translation>
    </message>
    <message>
        <source>An angle of %1° from the horizontal is none of a sling. Give more than 0° and at most 90°, which hangs straight down.</source>
        <translation>Ein Winkel von %1° zur Waagerechten ist keiner eines Anschlagmittels. Geben Sie mehr als 0° und höchstens 90° an, was senkrecht hängt.</translation>
    </message>
    <message>
        <source>An answer belongs to a question.</source>
        <translation>Eine Antwort gehört zu einer Frage.</translation>
    </message>
    <message>
        <source>An authorisation's number names one authorisation for ever.</source>
        <translation>Die Nummer einer Berechtigung bezeichnet für immer eine Berechtigung.</translation>
    </message>
    <message>
        <source>An empty list proves nothing.</source>
        <translation>Eine leere Liste beweist nichts.</translation>
    </message>
    <message>
        <source>An empty place in a kit is a tool left somewhere.</source>
        <translation>Ein leerer Platz im Satz ist ein irgendwo liegen gelassenes Werkzeug.</translation>
    </message>
    <message>
        <source>An empty weight of %1 is none. Give the weight of the aircraft's weight record.</source>
        <translation>Ein Leergewicht von %1 ist keines. Geben Sie das Gewicht aus der Gewichtsübersicht des Luftfahrzeugs an.</translation>
    </message>
    <message>
        <source>An engine change in the middle of its second shift, with invented people whose PINs are shown.</source>
        <translation>Ein Triebwerkswechsel mitten in der zweiten Schicht, mit erfundenen Personen, deren PINs angezeigt werden.</translation>
    </message>
    <message>
        <source>An engine with a blank in it is within no limits.</source>
        <translation>Ein Triebwerk mit einem Verschluss darin liegt innerhalb keines Grenzwerts.</translation>
    </message>
    <message>
        <source>An entry made later than the act says so, and cannot say the impossible.</source>
        <translation>Ein Eintrag, der später als die Handlung gemacht wird, sagt das und kann nichts Unmögliches angeben.</translation>
    </message>
    <message>
        <source>An entry of a kind that this version does not know: %1.</source>
        <translation>Ein Eintrag einer Art, die diese Version nicht kennt: %1.</translation>
    </message>
    <message>
        <source>An exception that one person makes alone is a habit.</source>
        <translation>Eine Ausnahme, die jemand allein macht, ist eine Gewohnheit.</translation>
    </message>
    <message>
        <source>An extract, and no release. The signed entries of the store govern what it says.</source>
        <translation>Ein Auszug und keine Freigabe. Maßgeblich für seinen Inhalt sind die unterschriebenen Einträge der Ablage.</translation>
    </message>
    <message>
        <source>An id that was given twice would make two people sign as one.</source>
        <translation>Eine zweimal vergebene Kennung ließe zwei Personen als eine unterschreiben.</translation>
    </message>
    <message>
        <source>An independent inspection must not be marked as less than it is.</source>
        <translation>Eine unabhängige Prüfung darf nicht als weniger gekennzeichnet werden, als sie ist.</translation>
    </message>
    <message>
        <source>An inspection against the limits of yesterday proves nothing today.</source>
        <translation>Eine Prüfung gegen die Grenzwerte von gestern beweist heute nichts.</translation>
    </message>
    <message>
        <source>An inspection is worth nothing once hands were on the item again.</source>
        <translation>Eine Prüfung ist nichts mehr wert, sobald wieder Hände am Posten waren.</translation>
    </message>
    <message>
        <source>An inspection that held yesterday says nothing of the day on which the load hangs.</source>
        <translation>Eine Prüfung, die gestern galt, sagt nichts über den Tag, an dem die Last hängt.</translation>
    </message>
    <message>
        <source>An inspector looks for what is asked for.</source>
        <translation>Ein Prüfer sucht nach dem, was verlangt ist.</translation>
    </message>
    <message>
        <source>An inspector signs for a finished joint, not for a promised one.</source>
        <translation>Ein Prüfer unterschreibt für eine fertige Verbindung, nicht für eine versprochene.</translation>
    </message>
    <message>
        <source>An inspector's word is not set aside by those who were inspected, nor one's warning by another.</source>
        <translation>Die Aussage eines Prüfers wird nicht von den Geprüften außer Kraft gesetzt, und die Warnung einer Person nicht von einer anderen.</translation>
    </message>
    <message>
        <source>An interface has at most %1 fasteners; divide it into several interfaces.</source>
        <translation>Ein Anschluss hat höchstens %1 Verbindungselemente; teilen Sie ihn in mehrere Anschlüsse auf.</translation>
    </message>
    <message>
        <source>An interface is inspected once or twice, not %1 times.</source>
        <translation>Ein Anschluss wird ein- oder zweimal geprüft, nicht %1-mal.</translation>
    </message>
    <message>
        <source>An interface list is taken into a job. Open the job, then drop the list again.</source>
        <translation>Eine Anschlussliste wird in einen Auftrag übernommen. Öffnen Sie den Auftrag und ziehen Sie die Liste dann erneut hierher.</translation>
    </message>
    <message>
        <source>An isolation protects people. It comes off when everybody behind it is clear and told, by the person who put it on; licensed or authorised people prove that what it isolates is dead. Work as the approved maintenance data and the local rules say.</source>
        <translation>Eine Freischaltung schützt Personen. Sie wird erst aufgehoben, wenn alle dahinter aus dem Gefahrenbereich und unterrichtet sind, und zwar durch die Person, die sie angebracht hat; lizenziertes oder berechtigtes Personal weist nach, dass das Freigeschaltete spannungslos ist. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>An item that two crews work on belongs to neither.</source>
        <translation>Ein Posten, an dem zwei Mannschaften arbeiten, gehört zu keiner.</translation>
    </message>
    <message>
        <source>An order is "cross", or names each of the %1 fasteners once.</source>
        <translation>Eine Reihenfolge ist „cross“ oder nennt jedes der %1 Verbindungselemente einmal.</translation>
    </message>
    <message>
        <source>Angle from the horizontal</source>
        <translation>Winkel zur Waagerechten</translation>
    </message>
    <message>
        <source>Angle from the vertical</source>
        <translation>Winkel zur Senkrechten</translation>
    </message>
    <message>
        <source>Angle of the legs from the horizontal</source>
        <translation>Winkel der Stränge zur Waagerechten</translation>
    </message>
    <message>
        <source>Another program holds the store. Nothing was recorded. Wait for it to finish, or close it, and try again.</source>
        <translation>Ein anderes Programm hält die Ablage. Es wurde nichts eingetragen. Warten Sie, bis es fertig ist, oder schließen Sie es, und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Answer:</source>
        <translation>Antwort:</translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Applied</source>
        <translation>Angebracht</translation>
    </message>
    <message>
        <source>Applied for the job</source>
        <translation>Für den Auftrag angebracht</translation>
    </message>
    <message>
        <source>Applied, and not removed: %1, at least %2.</source>
        <translation>Angebracht und nicht entfernt: %1, mindestens %2.</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Anbringen</translation>
    </message>
    <message>
        <source>Approval</source>
        <translation>Genehmigung</translation>
    </message>
    <message>
        <source>Approval reference</source>
        <translation>Referenz der Genehmigung</translation>
    </message>
    <message>
        <source>Arm of the incoming unit</source>
        <translation>Hebelarm des eingehenden Aggregats</translation>
    </message>
    <message>
        <source>Arm of the outgoing unit</source>
        <translation>Hebelarm des ausgehenden Aggregats</translation>
    </message>
    <message>
        <source>Arrow keys walk along the boundary, Page Down goes on to the next zone, Return opens.</source>
        <translation>Die Pfeiltasten gehen den Umriss entlang, Bild ab geht zum nächsten Bereich, die Eingabetaste öffnet.</translation>
    </message>
    <message>
        <source>As a flow, q</source>
        <translation>Als Durchfluss, q</translation>
    </message>
    <message>
        <source>As drops, n</source>
        <translation>Als Tropfen, n</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>Vorgefundener Zustand</translation>
    </message>
    <message>
        <source>As it was at</source>
        <translation>Stand vom</translation>
    </message>
    <message>
        <source>As many readings as are asked for can be recorded.</source>
        <translation>Eingetragen werden können so viele Messungen, wie verlangt sind.</translation>
    </message>
    <message>
        <source>As of the last entry, %1. What was signed later is not in this picture.</source>
        <translation>Stand des letzten Eintrags, %1. Was später unterschrieben wurde, ist nicht in diesem Bild.</translation>
    </message>
    <message>
        <source>As recorded</source>
        <translation>Wie eingetragen</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>As the last entry saw it</source>
        <translation>Wie der letzte Eintrag es sah</translation>
    </message>
    <message>
        <source>As this job has it</source>
        <translation>Wie dieser Auftrag sie hat</translation>
    </message>
    <message>
        <source>As what it is said to be, %1 would have waited for the hold point %2 (%3), and was undone before that was passed. An inspector who had no hand in it looks, and gives its details.</source>
        <translation>Als das, was es sein soll, hätte %1 auf den Haltepunkt %2 (%3) gewartet, und es wurde gelöst, bevor dieser passiert war. Ein Prüfer, der nicht daran beteiligt war, sieht nach und gibt die Einzelheiten an.</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Gefragt</translation>
    </message>
    <message>
        <source>Asked at</source>
        <translation>Gefragt um</translation>
    </message>
    <message>
        <source>Asked for here</source>
        <translation>Hier verlangt</translation>
    </message>
    <message>
        <source>Asked for once it is joined again.</source>
        <translation>Verlangt, sobald es wieder verbunden ist.</translation>
    </message>
    <message>
        <source>Asked for were entries of kind %1, %2; of every kind and all its time there are: %3.</source>
        <translation>Gefragt wurde nach Einträgen der Art %1, %2; über jede Art und die gesamte Zeit gibt es: %3.</translation>
    </message>
    <message>
        <source>Asked of</source>
        <translation>Gefragt wurde</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Um</translation>
    </message>
    <message>
        <source>At a station where you sign: People and tools, "Carry your key over". Type here the code that it shows.</source>
        <translation>An einem Arbeitsplatz, an dem Sie unterschreiben: Personen und Werkzeuge, „Eigenen Schlüssel mitnehmen“. Geben Sie hier den Code ein, der dort angezeigt wird.</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>At least %1 characters, typed by its owner</source>
        <translation>Mindestens %1 Zeichen, von der Person selbst eingegeben</translation>
    </message>
    <message>
        <source>At least one is applied, or nothing is asked for.</source>
        <translation>Mindestens eines ist angebracht, oder nichts ist verlangt.</translation>
    </message>
    <message>
        <source>At left / right point</source>
        <translation>Am linken / rechten Punkt</translation>
    </message>
    <message>
        <source>At the ends of its scale a tool tells anything.</source>
        <translation>An den Enden seiner Skala zeigt ein Werkzeug irgendetwas.</translation>
    </message>
    <message>
        <source>At the fastener</source>
        <translation>Am Verbindungselement</translation>
    </message>
    <message>
        <source>At the fastener then</source>
        <translation>Dann am Verbindungselement</translation>
    </message>
    <message>
        <source>At the latest on</source>
        <translation>Spätestens am</translation>
    </message>
    <message>
        <source>At the other station: this store or a copy made from now on, "Take your key over", the code, your PIN.</source>
        <translation>Am anderen Arbeitsplatz: diese Ablage oder eine Kopie, die ab jetzt erstellt wird, „Eigenen Schlüssel übernehmen“, der Code, Ihre PIN.</translation>
    </message>
    <message>
        <source>At the setting</source>
        <translation>Bei der Einstellung</translation>
    </message>
    <message>
        <source>Attach a photo</source>
        <translation>Foto anhängen</translation>
    </message>
    <message>
        <source>Attach it once more all the same</source>
        <translation>Trotzdem noch einmal anhängen</translation>
    </message>
    <message>
        <source>Attachment %1 is damaged: its content was changed after it was recorded. Verify the store, and keep the backup that you have.</source>
        <translation>Anlage %1 ist beschädigt: Ihr Inhalt wurde nach dem Eintragen geändert. Verifizieren Sie die Ablage, und behalten Sie die vorhandene Sicherungskopie.</translation>
    </message>
    <message>
        <source>Authorisation</source>
        <translation>Berechtigung</translation>
    </message>
    <message>
        <source>Authorisation granted</source>
        <translation>Berechtigung erteilt</translation>
    </message>
    <message>
        <source>Authorisation withdrawn</source>
        <translation>Berechtigung entzogen</translation>
    </message>
    <message>
        <source>Authorisations</source>
        <translation>Berechtigungen</translation>
    </message>
    <message>
        <source>Authorisations of %1</source>
        <translation>Berechtigungen von %1</translation>
    </message>
    <message>
        <source>Authorised to</source>
        <translation>Berechtigt zu</translation>
    </message>
    <message>
        <source>Authorised to, under</source>
        <translation>Berechtigt zu, nach</translation>
    </message>
    <message>
        <source>Authority</source>
        <translation>Befugnis</translation>
    </message>
    <message>
        <source>Authority reference</source>
        <translation>Referenz der Befugnis</translation>
    </message>
    <message>
        <source>BACK, NOT SECURED</source>
        <translation>WIEDER AN, NICHT GESICHERT</translation>
    </message>
    <message>
        <source>BACK, NOT TORQUED</source>
        <translation>WIEDER AN, NICHT ANGEZOGEN</translation>
    </message>
    <message>
        <source>BLANK MISSING: %1, finding %2</source>
        <translation>VERSCHLUSS FEHLT: %1, Befund %2</translation>
    </message>
    <message>
        <source>Back to</source>
        <translation>Zurück zu</translation>
    </message>
    <message>
        <source>Back up the store</source>
        <translation>Ablage sichern</translation>
    </message>
    <message>
        <source>Back up…</source>
        <translation>Sichern…</translation>
    </message>
    <message>
        <source>Backing up the store</source>
        <translation>Ablage wird gesichert</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Bilanz</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Zulässiger Bereich</translation>
    </message>
    <message>
        <source>Band: the maintenance data, as given; both ends belong to it (common practice)</source>
        <translation>Bereich: die Instandhaltungsunterlagen, wie angegeben; beide Enden gehören dazu (übliche Praxis)</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>Batch (number)</source>
        <translation>Charge (Nummer)</translation>
    </message>
    <message>
        <source>Batch of the new</source>
        <translation>Charge des neuen Materials</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Before a run: area clear and looked over for loose things, wheels chocked, fire cover there, and everybody knows the signals.</source>
        <translation>Vor einem Lauf: Bereich geräumt und auf lose Gegenstände abgesucht, Bremsklötze vorgelegt, Brandschutz vor Ort, und alle kennen die Zeichen.</translation>
    </message>
    <message>
        <source>Before an isolation comes off: everybody is clear, told, and accounted for, and nothing behind it is open.</source>
        <translation>Bevor eine Freischaltung aufgehoben wird: Alle sind aus dem Gefahrenbereich, unterrichtet und vollzählig, und nichts dahinter ist offen.</translation>
    </message>
    <message>
        <source>Before and after side by side, and what came in</source>
        <translation>Vorher und nachher nebeneinander, und was hereinkam</translation>
    </message>
    <message>
        <source>Before and after, side by side</source>
        <translation>Vorher und nachher, nebeneinander</translation>
    </message>
    <message>
        <source>Before the job names its aircraft and its data, nothing can be said about it.</source>
        <translation>Bevor der Auftrag sein Luftfahrzeug und seine Unterlagen nennt, lässt sich nichts über ihn sagen.</translation>
    </message>
    <message>
        <source>Before the unit moves: whether everything is free</source>
        <translation>Bevor sich das Aggregat bewegt: ob alles frei ist</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Vorher: %1</translation>
    </message>
    <message>
        <source>Beside the whole job</source>
        <translation>Neben dem ganzen Auftrag</translation>
    </message>
    <message>
        <source>Between</source>
        <translation>Zwischen</translation>
    </message>
    <message>
        <source>Between the two lifting points</source>
        <translation>Zwischen den beiden Anschlagpunkten</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Verschluss</translation>
    </message>
    <message>
        <source>Blank missing</source>
        <translation>Verschluss fehlt</translation>
    </message>
    <message>
        <source>Blank missing from</source>
        <translation>Verschluss fehlt von</translation>
    </message>
    <message>
        <source>Blanks fitted to the aircraft's end</source>
        <translation>Verschlüsse flugzeugseitig angebracht</translation>
    </message>
    <message>
        <source>Blanks fitted to the unit's end</source>
        <translation>Verschlüsse aggregatseitig angebracht</translation>
    </message>
    <message>
        <source>Blanks missing</source>
        <translation>Fehlende Verschlüsse</translation>
    </message>
    <message>
        <source>Blanks removed</source>
        <translation>Verschlüsse entfernt</translation>
    </message>
    <message>
        <source>Blanks removed from the aircraft's end</source>
        <translation>Verschlüsse flugzeugseitig entfernt</translation>
    </message>
    <message>
        <source>Blanks removed from the unit's end</source>
        <translation>Verschlüsse aggregatseitig entfernt</translation>
    </message>
    <message>
        <source>Bleed air is hot and under pressure. Isolate and tag every source, let it cool and release the pressure before a coupling is loosened, as the approved maintenance data and the local rules say.</source>
        <translation>Zapfluft ist heiß und steht unter Druck. Sperren Sie jede Quelle ab und hängen Sie einen Anhänger an, lassen Sie die Leitung abkühlen, und lassen Sie den Druck ab, bevor eine Kupplung gelockert wird, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Bleed line</source>
        <translation>Zapfluftleitung</translation>
    </message>
    <message>
        <source>Bolts point the way that the maintenance data shows.</source>
        <translation>Die Bolzen weisen in die Richtung, die die Instandhaltungsunterlagen zeigen.</translation>
    </message>
    <message>
        <source>Bonding</source>
        <translation>Masseverbindung</translation>
    </message>
    <message>
        <source>Bonding by voltage drop</source>
        <translation>Masseverbindung über Spannungsabfall</translation>
    </message>
    <message>
        <source>Bonding lead</source>
        <translation>Masseband</translation>
    </message>
    <message>
        <source>Bonding limit is met</source>
        <translation>Grenzwert der Masseverbindung ist eingehalten</translation>
    </message>
    <message>
        <source>Bonding measured</source>
        <translation>Masseverbindung gemessen</translation>
    </message>
    <message>
        <source>Bonding needs its greatest resistance and a unit.</source>
        <translation>Die Masseverbindung braucht ihren größten Widerstand und eine Einheit.</translation>
    </message>
    <message>
        <source>Bonding readings</source>
        <translation>Messungen der Masseverbindung</translation>
    </message>
    <message>
        <source>Bonding resistance</source>
        <translation>Widerstand der Masseverbindung</translation>
    </message>
    <message>
        <source>Bonding resistance, most</source>
        <translation>Widerstand der Masseverbindung, höchstens</translation>
    </message>
    <message>
        <source>Bonding unit</source>
        <translation>Einheit des Widerstands der Masseverbindung</translation>
    </message>
    <message>
        <source>Both halves identified</source>
        <translation>Beide Hälften identifiziert</translation>
    </message>
    <message>
        <source>Both readings have to meet the limit, so the worse one counts.</source>
        <translation>Beide Messwerte müssen die Grenze einhalten, also zählt der schlechtere.</translation>
    </message>
    <message>
        <source>But not</source>
        <translation>Aber nicht</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>By "%1" what was seen is %2, not %3. Leave the class out: it follows from the size.</source>
        <translation>Nach „%1“ ist das Gesehene %2, nicht %3. Lassen Sie die Klasse weg: Sie folgt aus der Größe.</translation>
    </message>
    <message>
        <source>By somebody who had no hand in it</source>
        <translation>Durch jemanden, der nicht daran beteiligt war</translation>
    </message>
    <message>
        <source>By whom, if not you</source>
        <translation>Durch wen, wenn nicht durch Sie</translation>
    </message>
    <message>
        <source>C&amp;ompare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <source>CHANGE GIVEN UP</source>
        <translation>WECHSEL ABGEBROCHEN</translation>
    </message>
    <message>
        <source>CLOSED</source>
        <translation>ABGESCHLOSSEN</translation>
    </message>
    <message>
        <source>CLOSED, LIMITED</source>
        <translation>ABGESCHLOSSEN, EINGESCHRÄNKT</translation>
    </message>
    <message>
        <source>CONNECTED, but</source>
        <translation>ANGESCHLOSSEN, aber</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Ca&amp;lculator</source>
        <translation>&amp;Rechner</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Berechnungen</translation>
    </message>
    <message>
        <source>Calculator</source>
        <translation>Rechner</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Kalibriert am</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Kalibrierung fällig</translation>
    </message>
    <message>
        <source>Came off</source>
        <translation>Abgenommen</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Cannot be verified</source>
        <translation>Nicht überprüfbar</translation>
    </message>
    <message>
        <source>Capacity factor (sin)</source>
        <translation>Tragfähigkeitsfaktor (sin)</translation>
    </message>
    <message>
        <source>Caps and plugs are off, and counted.</source>
        <translation>Kappen und Stopfen sind ab und gezählt.</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Bildunterschrift</translation>
    </message>
    <message>
        <source>Carry your key over to another station</source>
        <translation>Eigenen Schlüssel an einen anderen Arbeitsplatz mitnehmen</translation>
    </message>
    <message>
        <source>Carry your key over …</source>
        <translation>Eigenen Schlüssel mitnehmen …</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Cells in this row: %1. Expected: %2.</source>
        <translation>Zellen in dieser Zeile: %1. Erwartet: %2.</translation>
    </message>
    <message>
        <source>Centre of gravity after</source>
        <translation>Schwerpunkt nachher</translation>
    </message>
    <message>
        <source>Centre of gravity before</source>
        <translation>Schwerpunkt vorher</translation>
    </message>
    <message>
        <source>Centre of gravity from the left point</source>
        <translation>Schwerpunkt ab dem linken Punkt</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Bescheinigung</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Change given up</source>
        <translation>Wechsel abgebrochen</translation>
    </message>
    <message>
        <source>Change given up, the outgoing unit goes back on</source>
        <translation>Wechsel abgebrochen, das ausgehende Aggregat wird wieder eingebaut</translation>
    </message>
    <message>
        <source>Change of moment</source>
        <translation>Momentänderung</translation>
    </message>
    <message>
        <source>Change of weight</source>
        <translation>Gewichtsänderung</translation>
    </message>
    <message>
        <source>Change of weight and balance</source>
        <translation>Änderung von Gewicht und Schwerpunkt</translation>
    </message>
    <message>
        <source>Change of weight that is negligible</source>
        <translation>Vernachlässigbare Gewichtsänderung</translation>
    </message>
    <message>
        <source>Change the language</source>
        <translation>Sprache wechseln</translation>
    </message>
    <message>
        <source>Change the language?</source>
        <translation>Sprache wechseln?</translation>
    </message>
    <message>
        <source>Change your P&amp;IN …</source>
        <translation>&amp;Eigene PIN ändern …</translation>
    </message>
    <message>
        <source>Change your PIN</source>
        <translation>Eigene PIN ändern</translation>
    </message>
    <message>
        <source>Change, at most</source>
        <translation>Änderung, höchstens</translation>
    </message>
    <message>
        <source>Changes none of them</source>
        <translation>Ändert keinen davon</translation>
    </message>
    <message>
        <source>Check for leaks</source>
        <translation>Auf Dichtheit prüfen</translation>
    </message>
    <message>
        <source>Checked for leaks</source>
        <translation>Auf Dichtheit geprüft</translation>
    </message>
    <message>
        <source>Choose a &amp;file …</source>
        <translation>&amp;Datei wählen …</translation>
    </message>
    <message>
        <source>Choose a hold point to see what it asks for.</source>
        <translation>Wählen Sie einen Haltepunkt, um zu sehen, was er verlangt.</translation>
    </message>
    <message>
        <source>Choose a mark first: click it, or use the arrow keys.</source>
        <translation>Wählen Sie zuerst eine Marke: mit einem Klick oder mit den Pfeiltasten.</translation>
    </message>
    <message>
        <source>Choose a mark: click it, or use the arrow keys.</source>
        <translation>Wählen Sie eine Marke: mit einem Klick oder mit den Pfeiltasten.</translation>
    </message>
    <message>
        <source>Choose a package first.</source>
        <translation>Wählen Sie zuerst ein Paket.</translation>
    </message>
    <message>
        <source>Choose a person to see their authorisations.</source>
        <translation>Wählen Sie eine Person, um ihre Berechtigungen zu sehen.</translation>
    </message>
    <message>
        <source>Choose a photo: as a file, by dropping it here, or by pasting it.</source>
        <translation>Wählen Sie ein Foto: als Datei, durch Ablegen hier oder durch Einfügen.</translation>
    </message>
    <message>
        <source>Choose a row first.</source>
        <translation>Wählen Sie zuerst eine Zeile.</translation>
    </message>
    <message>
        <source>Choose a row to read its source and note here.</source>
        <translation>Wählen Sie eine Zeile, um hier ihre Quelle und ihren Hinweis zu lesen.</translation>
    </message>
    <message>
        <source>Choose an interface in the list. Several at once can be signed together.</source>
        <translation>Wählen Sie einen Anschluss in der Liste. Mehrere lassen sich zusammen unterschreiben.</translation>
    </message>
    <message>
        <source>Choose an interface.</source>
        <translation>Wählen Sie einen Anschluss.</translation>
    </message>
    <message>
        <source>Choose the row to remove first.</source>
        <translation>Wählen Sie zuerst die Zeile, die entfernt werden soll.</translation>
    </message>
    <message>
        <source>Choose …</source>
        <translation>Wählen …</translation>
    </message>
    <message>
        <source>Clamp</source>
        <translation>Schelle</translation>
    </message>
    <message>
        <source>Clamps and the ends of wire have sharp edges, and what a clamp carries moves when it is let go. Protect hands and eyes, support what it carries, and make sure that lines are without pressure and cables without power, as the approved maintenance data and the local rules say.</source>
        <translation>Schellen und Drahtenden haben scharfe Kanten, und was eine Schelle trägt, bewegt sich, wenn es losgelassen wird. Schützen Sie Hände und Augen, stützen Sie, was sie trägt, und vergewissern Sie sich, dass Leitungen drucklos und Kabel spannungslos sind, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Class by "%1"</source>
        <translation>Klasse nach „%1“</translation>
    </message>
    <message>
        <source>Class of a leak</source>
        <translation>Klasse einer Leckage</translation>
    </message>
    <message>
        <source>Classes of fuel and fluid leaks</source>
        <translation>Klassen von Kraftstoff- und Flüssigkeitsleckagen</translation>
    </message>
    <message>
        <source>Clear its condition</source>
        <translation>Zustand aufheben</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the finding</source>
        <translation>Befund schließen</translation>
    </message>
    <message>
        <source>Close the job</source>
        <translation>Auftrag abschließen</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Programm schließen</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation>Das Programm schließen?</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Abgeschlossen</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Vergleichen</translation>
    </message>
    <message>
        <source>Compare something first.</source>
        <translation>Vergleichen Sie zuerst etwas.</translation>
    </message>
    <message>
        <source>Compared with the list</source>
        <translation>Mit der Liste verglichen</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Condition cleared</source>
        <translation>Zustand aufgehoben</translation>
    </message>
    <message>
        <source>Condition stated</source>
        <translation>Zustand angegeben</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Bedingungen</translation>
    </message>
    <message>
        <source>Confirm free</source>
        <translation>Als frei bestätigen</translation>
    </message>
    <message>
        <source>Confirm undisturbed</source>
        <translation>Als unberührt bestätigen</translation>
    </message>
    <message>
        <source>Confirmed free</source>
        <translation>Als frei bestätigt</translation>
    </message>
    <message>
        <source>Confirmed undisturbed</source>
        <translation>Als unberührt bestätigt</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Angeschlossen</translation>
    </message>
    <message>
        <source>Contact faces are bare and clean, and protected again afterwards.</source>
        <translation>Kontaktflächen sind blank und sauber und danach wieder geschützt.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Control linkage</source>
        <translation>Steuergestänge</translation>
    </message>
    <message>
        <source>Convert a unit</source>
        <translation>Einheit umrechnen</translation>
    </message>
    <message>
        <source>Copy of, by digest</source>
        <translation>Kopie von (Prüfsumme)</translation>
    </message>
    <message>
        <source>Correct the list</source>
        <translation>Liste berichtigen</translation>
    </message>
    <message>
        <source>Count the tools</source>
        <translation>Werkzeuge zählen</translation>
    </message>
    <message>
        <source>Count what lies there, piece by piece, against the marking; never tick what somebody says is there.</source>
        <translation>Zählen Sie, was da liegt, Stück für Stück, gegen die Kennzeichnung; haken Sie nie ab, was jemand nur als vorhanden nennt.</translation>
    </message>
    <message>
        <source>Counted and not out, or counted twice: %1.</source>
        <translation>Gezählt und nicht ausgegeben, oder zweimal gezählt: %1.</translation>
    </message>
    <message>
        <source>Covers</source>
        <translation>Umfasst</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Mannschaft</translation>
    </message>
    <message>
        <source>Critical</source>
        <translation>Kritisch</translation>
    </message>
    <message>
        <source>Current through the bond</source>
        <translation>Strom durch die Masseverbindung</translation>
    </message>
    <message>
        <source>DETAILS TO FOLLOW</source>
        <translation>ANGABEN FOLGEN</translation>
    </message>
    <message>
        <source>DOES NOT NAME THIS JOB</source>
        <translation>NENNT DIESEN AUFTRAG NICHT</translation>
    </message>
    <message>
        <source>Damage is not wiped away; somebody decides on it.</source>
        <translation>Ein Schaden wird nicht weggewischt; jemand entscheidet darüber.</translation>
    </message>
    <message>
        <source>Damage raises a finding: give its number.</source>
        <translation>Ein Schaden führt zu einem Befund: Geben Sie dessen Nummer an.</translation>
    </message>
    <message>
        <source>Damage that is a note alone is nobody's.</source>
        <translation>Ein Schaden, der nur eine Notiz ist, gehört niemandem.</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Beschädigt</translation>
    </message>
    <message>
        <source>Damaged, so that something may not have been found: %1. Verify the store.</source>
        <translation>Beschädigt, sodass etwas möglicherweise nicht gefunden wurde: %1. Verifizieren Sie die Ablage.</translation>
    </message>
    <message>
        <source>Damaged: finding number</source>
        <translation>Beschädigt: Nummer des Befunds</translation>
    </message>
    <message>
        <source>Damaged; only what came before is shown, and nothing can be added. %1</source>
        <translation>Beschädigt; nur was davor kam, wird gezeigt, und es kann nichts hinzugefügt werden. %1</translation>
    </message>
    <message>
        <source>Dark with more &amp;contrast</source>
        <translation>Dunkel mit mehr K&amp;ontrast</translation>
    </message>
    <message>
        <source>Day of the lift</source>
        <translation>Tag des Hebevorgangs</translation>
    </message>
    <message>
        <source>Day of the lift, if not today</source>
        <translation>Tag des Hebevorgangs, wenn nicht heute</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Decimal places, 6 when not given</source>
        <translation>Nachkommastellen, 6 ohne Angabe</translation>
    </message>
    <message>
        <source>Deferred until, at most</source>
        <translation>Zurückgestellt bis, höchstens</translation>
    </message>
    <message>
        <source>Depends on</source>
        <translation>Hängt ab von</translation>
    </message>
    <message>
        <source>Details given</source>
        <translation>Angaben eingetragen</translation>
    </message>
    <message>
        <source>Deviation on the certificate, % of the reading</source>
        <translation>Abweichung laut Bescheinigung, % vom Messwert</translation>
    </message>
    <message>
        <source>Deviation, at most</source>
        <translation>Abweichung, höchstens</translation>
    </message>
    <message>
        <source>Deviation: as given</source>
        <translation>Abweichung: wie angegeben</translation>
    </message>
    <message>
        <source>Difference in moment, ΔM</source>
        <translation>Unterschied des Moments, ΔM</translation>
    </message>
    <message>
        <source>Difference in moment: %1</source>
        <translation>Unterschied des Moments: %1</translation>
    </message>
    <message>
        <source>Difference in weight, Δw</source>
        <translation>Unterschied des Gewichts, Δw</translation>
    </message>
    <message>
        <source>Difference in weight: %1</source>
        <translation>Unterschied des Gewichts: %1</translation>
    </message>
    <message>
        <source>Difference, as it was found</source>
        <translation>Abweichung, wie sie festgestellt wurde</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Unterschiede</translation>
    </message>
    <message>
        <source>Digest</source>
        <translation>Prüfsumme</translation>
    </message>
    <message>
        <source>Disconnect</source>
        <translation>Trennen</translation>
    </message>
    <message>
        <source>Disconnected</source>
        <translation>Getrennt</translation>
    </message>
    <message>
        <source>Disconnected, not listed</source>
        <translation>Getrennt, nicht aufgelistet</translation>
    </message>
    <message>
        <source>Disposition</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Disturbed</source>
        <translation>Nachträglich verändert</translation>
    </message>
    <message>
        <source>Do not lift</source>
        <translation>Nicht heben</translation>
    </message>
    <message>
        <source>Do not lift. %1</source>
        <translation>Nicht heben. %1</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Done at, if earlier</source>
        <translation>Ausgeführt um, falls früher</translation>
    </message>
    <message>
        <source>Done, by %1 in entry %2. If it was wrong, strike that entry.</source>
        <translation>Getan, von %1 in Eintrag %2. War das falsch, streichen Sie jenen Eintrag.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Erledigt.</translation>
    </message>
    <message>
        <source>Down, ‰</source>
        <translation>Senkrecht, ‰</translation>
    </message>
    <message>
        <source>Drag</source>
        <translation>Klemmdrehmoment</translation>
    </message>
    <message>
        <source>Drag of a self-locking nut</source>
        <translation>Klemmdrehmoment einer selbstsichernden Mutter</translation>
    </message>
    <message>
        <source>Drag to be added</source>
        <translation>Hinzuzurechnendes Klemmdrehmoment</translation>
    </message>
    <message>
        <source>Drag while the nut was run down</source>
        <translation>Klemmdrehmoment beim Aufschrauben der Mutter</translation>
    </message>
    <message>
        <source>Drag, least</source>
        <translation>Klemmdrehmoment, mindestens</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drainleitung</translation>
    </message>
    <message>
        <source>Draw a sample first.</source>
        <translation>Ziehen Sie zuerst eine Stichprobe.</translation>
    </message>
    <message>
        <source>Draw interfaces at random, with every entry about them.</source>
        <translation>Anschlüsse zufällig ziehen, mit jedem Eintrag dazu.</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Gezogen</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Gezogen nach</translation>
    </message>
    <message>
        <source>Drop a photo here, paste it, or choose a file: JPEG or PNG.</source>
        <translation>Legen Sie hier ein Foto ab, fügen Sie es ein oder wählen Sie eine Datei: JPEG oder PNG.</translation>
    </message>
    <message>
        <source>Drop of voltage across the bond</source>
        <translation>Spannungsabfall über der Masseverbindung</translation>
    </message>
    <message>
        <source>Drops counted</source>
        <translation>Gezählte Tropfen</translation>
    </message>
    <message>
        <source>Drops in a millilitre</source>
        <translation>Tropfen in einem Milliliter</translation>
    </message>
    <message>
        <source>Drops to the millilitre turn counted drops into a rate, and this row limits none. Give a rate, or leave them out.</source>
        <translation>Tropfen je Milliliter machen aus gezählten Tropfen eine Rate, und diese Zeile begrenzt keine. Geben Sie eine Rate an, oder lassen Sie die Tropfen je Milliliter weg.</translation>
    </message>
    <message>
        <source>Duct</source>
        <translation>Luftkanal</translation>
    </message>
    <message>
        <source>Ducts stay hot after a run and have sharp edges. Let them cool, make sure that no pressure is left, protect hands and hold up what is heavy, as the approved maintenance data and the local rules say.</source>
        <translation>Kanäle bleiben nach einem Lauf heiß und haben scharfe Kanten. Lassen Sie sie abkühlen, vergewissern Sie sich, dass kein Druck mehr da ist, schützen Sie die Hände, und stützen Sie Schweres ab, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Due on, at most</source>
        <translation>Fällig, spätestens</translation>
    </message>
    <message>
        <source>E&amp;xport the list …</source>
        <translation>&amp;Liste exportieren …</translation>
    </message>
    <message>
        <source>Each entry carries the hash of the one before it and its signer's signature, so the last hash fixes them all. This paper shows what the entries say; the signed entries are the record.</source>
        <translation>Jeder Eintrag trägt die Prüfsumme des vorigen und die Unterschrift seines Unterzeichners; die letzte Prüfsumme legt also alle fest. Dieses Papier zeigt, was die Einträge angeben; die unterschriebenen Einträge sind der Nachweis.</translation>
    </message>
    <message>
        <source>Each fastener has its reading, in the order that the maintenance data shows.</source>
        <translation>Jedes Verbindungselement hat seinen Messwert, in der Reihenfolge, die die Instandhaltungsunterlagen zeigen.</translation>
    </message>
    <message>
        <source>Each inspector's authorisation has limits and dates.</source>
        <translation>Die Berechtigung jedes Prüfers hat Grenzen und Fristen.</translation>
    </message>
    <message>
        <source>Each of these must be off before the one in front of it, or depends on it, in a circle: %1.</source>
        <translation>Jeder davon muss vor dem davor stehenden gelöst sein oder hängt von ihm ab, im Kreis: %1.</translation>
    </message>
    <message>
        <source>Each of two crossed lines passes an inspection of its own.</source>
        <translation>Jede von zwei vertauschten Leitungen besteht ihre eigene Prüfung.</translation>
    </message>
    <message>
        <source>Each test has a result of its own.</source>
        <translation>Jeder Test hat ein eigenes Ergebnis.</translation>
    </message>
    <message>
        <source>Else open</source>
        <translation>Sonst offen</translation>
    </message>
    <message>
        <source>Empty &amp;all fields</source>
        <translation>Alle Felder &amp;leeren</translation>
    </message>
    <message>
        <source>Empty moment before</source>
        <translation>Leermoment vorher</translation>
    </message>
    <message>
        <source>Empty weight above</source>
        <translation>Leergewicht über</translation>
    </message>
    <message>
        <source>Empty weight after</source>
        <translation>Leergewicht nachher</translation>
    </message>
    <message>
        <source>Empty weight before</source>
        <translation>Leergewicht vorher</translation>
    </message>
    <message>
        <source>Empty weight below</source>
        <translation>Leergewicht unter</translation>
    </message>
    <message>
        <source>Empty weight, moment and centre of gravity after one unit went out and another in, with the lines for the weight record.</source>
        <translation>Leergewicht, Moment und Schwerpunkt, nachdem ein Aggregat ausgebaut und ein anderes eingebaut wurde, mit den Zeilen für die Gewichtsübersicht.</translation>
    </message>
    <message>
        <source>Enrol &amp;a person …</source>
        <translation>Person &amp;aufnehmen …</translation>
    </message>
    <message>
        <source>Enrol a person</source>
        <translation>Person aufnehmen</translation>
    </message>
    <message>
        <source>Enrol and sign</source>
        <translation>Aufnehmen und unterschreiben</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Entries of the register stand under People and tools.</source>
        <translation>Einträge des Stammbuchs stehen unter Personen und Werkzeuge.</translation>
    </message>
    <message>
        <source>Entries that do not count any more</source>
        <translation>Einträge, die nicht mehr zählen</translation>
    </message>
    <message>
        <source>Entries that were added</source>
        <translation>Hinzugekommene Einträge</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Entry %1</source>
        <translation>Eintrag %1</translation>
    </message>
    <message>
        <source>Entry %1  %2</source>
        <translation>Eintrag %1  %2</translation>
    </message>
    <message>
        <source>Entry %1 %2. That is answered, and stays; where it was a mistake, an inspector strikes it who is not of the crew and had no hand in it or in its group.</source>
        <translation>Eintrag %1 %2. Das wird beantwortet und bleibt; wo es ein Irrtum war, streicht ihn ein Prüfer, der nicht zur Mannschaft gehört und weder daran noch an der Gruppe beteiligt war.</translation>
    </message>
    <message>
        <source>Entry %1 %2. When it is found, that answers the finding; struck it is by somebody with authority to overrule alone.</source>
        <translation>Eintrag %1 %2. Wird das Fehlende gefunden, ist der Befund damit beantwortet; streichen darf ihn allein jemand mit Befugnis zum Übersteuern.</translation>
    </message>
    <message>
        <source>Entry %1 (%2) cannot be struck. If something was struck by mistake, do it again and sign it again.</source>
        <translation>Eintrag %1 (%2) kann nicht gestrichen werden. Wurde etwas irrtümlich gestrichen, tun und unterschreiben Sie es noch einmal.</translation>
    </message>
    <message>
        <source>Entry %1 came after it was passed: what was looked at then is no longer what is there.</source>
        <translation>Eintrag %1 kam, nachdem er passiert war: Was damals angesehen wurde, ist nicht mehr das, was da ist.</translation>
    </message>
    <message>
        <source>Entry %1 does not stand any more.</source>
        <translation>Eintrag %1 gilt nicht mehr.</translation>
    </message>
    <message>
        <source>Entry %1 is an inspector's word on work that %2 had a hand in. Only %3, or somebody else with authority to overrule, may strike it.</source>
        <translation>Eintrag %1 ist die Aussage eines Prüfers über Arbeit, an der %2 beteiligt war. Nur %3 oder jemand anders mit Befugnis zum Übersteuern darf ihn streichen.</translation>
    </message>
    <message>
        <source>Entry %1 is later than entry %2: name the earlier one first.</source>
        <translation>Eintrag %1 ist später als Eintrag %2: Nennen Sie den früheren zuerst.</translation>
    </message>
    <message>
        <source>Entry %1 is struck by %2, who made it, or by the lead.</source>
        <translation>Eintrag %1 wird von %2 gestrichen, von wem er stammt, oder vom Leiter.</translation>
    </message>
    <message>
        <source>Entry %1 is the word of an inspector, or of somebody who was not of the crew; %2 may not set it aside. Only %3, or somebody with authority to overrule, may strike it.</source>
        <translation>Eintrag %1 ist die Aussage eines Prüfers oder einer Person außerhalb der Mannschaft; %2 darf sie nicht außer Kraft setzen. Nur %3 oder jemand mit Befugnis zum Übersteuern darf ihn streichen.</translation>
    </message>
    <message>
        <source>Entry %1 of ledger %2 cannot be used: %3 Do not go on working in this store. Verify it, and go back to a backup.</source>
        <translation>Eintrag %1 des Buchs %2 kann nicht benutzt werden: %3 Arbeiten Sie nicht in dieser Ablage weiter. Verifizieren Sie sie, und kehren Sie zu einer Sicherungskopie zurück.</translation>
    </message>
    <message>
        <source>Entry %1 of the linked ledger %2, which it pins, is not in that ledger.</source>
        <translation>Eintrag %1 des verknüpften Buchs %2, auf den er sich festlegt, steht nicht in jenem Buch.</translation>
    </message>
    <message>
        <source>Entry %1 rests on the change being given up. Strike that one first, if it was a mistake.</source>
        <translation>Eintrag %1 beruht darauf, dass der Wechsel abgebrochen ist. Streichen Sie zuerst jenen, wenn er ein Irrtum war.</translation>
    </message>
    <message>
        <source>Entry %1 says what %2 found to be in the way. Only %2 strikes it; else it is cleared.</source>
        <translation>Eintrag %1 gibt an, was %2 als hinderlich vorgefunden hat. Nur %2 streicht ihn; sonst wird er erledigt.</translation>
    </message>
    <message>
        <source>Entry %1 set aside what striking it would bring back. %2 Leave it and show it anew, after marking it disturbed where that is how to begin; or let somebody with authority to overrule, who had no hand in it, strike it.</source>
        <translation>Eintrag %1 hat außer Kraft gesetzt, was sein Streichen zurückbrächte. %2 Lassen Sie ihn stehen, und weisen Sie es neu nach, nachdem Sie den Posten als nachträglich verändert gekennzeichnet haben, wo so zu beginnen ist; oder lassen Sie ihn von jemandem mit Befugnis zum Übersteuern streichen, der nicht daran beteiligt war.</translation>
    </message>
    <message>
        <source>Entry %1 sets no follow-up that is still due.</source>
        <translation>Eintrag %1 legt keine Nachprüfung fest, die noch fällig ist.</translation>
    </message>
    <message>
        <source>Entry %1 was made behind %2 already: it comes too late to be set or changed.</source>
        <translation>Eintrag %1 wurde bereits hinter %2 gemacht: Zum Setzen oder Ändern ist es zu spät.</translation>
    </message>
    <message>
        <source>Entry %1 was made behind the hold point %2. What was let through cannot be called back; strike that entry first, if it was a mistake.</source>
        <translation>Eintrag %1 wurde hinter dem Haltepunkt %2 gemacht. Was durchgelassen wurde, lässt sich nicht zurückrufen; streichen Sie zuerst jenen Eintrag, wenn er ein Irrtum war.</translation>
    </message>
    <message>
        <source>Entry %1, struck since, said that %2 blanks are on %3 of %4; now it is said to be %5. Log as many, and what is not there as missing; or have somebody with authority to overrule strike that entry as never so.</source>
        <translation>Eintrag %1, seither gestrichen, gab an, dass %2 Verschlüsse an %3 von %4 sind; jetzt sollen es %5 sein. Tragen Sie ebenso viele ein, und was nicht da ist, als fehlend; oder lassen Sie jemanden mit Befugnis zum Übersteuern jenen Eintrag als nie so gewesen streichen.</translation>
    </message>
    <message>
        <source>Entry %1, struck since, said that %2 of %3 came off %4; now it is said to be %5. Log as many, and what became of each when it is joined; or have somebody with authority to overrule strike that entry as never so.</source>
        <translation>Eintrag %1, seither gestrichen, gab an, dass %2 von %3 an %4 abgenommen wurden; jetzt sollen es %5 sein. Tragen Sie ebenso viele ein, und beim Anschließen, was aus jedem wurde; oder lassen Sie jemanden mit Befugnis zum Übersteuern jenen Eintrag als nie so gewesen streichen.</translation>
    </message>
    <message>
        <source>Entry %1: %2, hoist %3</source>
        <translation>Eintrag %1: %2, Hebezeug %3</translation>
    </message>
    <message>
        <source>Entry number</source>
        <translation>Nummer des Eintrags</translation>
    </message>
    <message>
        <source>Entry that handed over</source>
        <translation>Eintrag, der übergab</translation>
    </message>
    <message>
        <source>Entry that set it</source>
        <translation>Eintrag, der es festlegte</translation>
    </message>
    <message>
        <source>Entry, what it is about, and the page on which it stands in full</source>
        <translation>Eintrag, worum es geht und auf welcher Seite er vollständig steht</translation>
    </message>
    <message>
        <source>Every accessory has moved, or is declared to leave with the outgoing unit.</source>
        <translation>Jedes Anbauteil ist umgebaut, oder es ist erklärt, dass es mit dem ausgehenden Aggregat abgeht.</translation>
    </message>
    <message>
        <source>Every entry is asked all the rules that concern its kind before it is signed, and again whenever a store or a record package is verified. What is refused says which rule refused it; here is why each of them exists.</source>
        <translation>Jeder Eintrag wird an allen Regeln gemessen, die seine Art betreffen, bevor er unterschrieben wird, und wieder, wenn eine Ablage oder ein Nachweispaket verifiziert wird. Eine Ablehnung nennt die Regel, die abgelehnt hat; hier steht, warum es jede davon gibt.</translation>
    </message>
    <message>
        <source>Every entry is shown.</source>
        <translation>Jeder Eintrag wird gezeigt.</translation>
    </message>
    <message>
        <source>Every entry of every job of this store, open or closed, that names it.</source>
        <translation>Jeder Eintrag in jedem Auftrag dieser Ablage, offen oder abgeschlossen, der es nennt.</translation>
    </message>
    <message>
        <source>Every entry, what is exported, and whether all of it holds</source>
        <translation>Jeder Eintrag, was exportiert wird und ob alles stimmt</translation>
    </message>
    <message>
        <source>Every interface as a row</source>
        <translation>Jeder Anschluss als Zeile</translation>
    </message>
    <message>
        <source>Every interface is finished</source>
        <translation>Jeder Anschluss ist fertig</translation>
    </message>
    <message>
        <source>Every interface is somebody's side.</source>
        <translation>Jeder Anschluss gehört zu jemandes Bereich.</translation>
    </message>
    <message>
        <source>Every side has one who looks after it.</source>
        <translation>Jeder Bereich hat jemanden, der sich um ihn kümmert.</translation>
    </message>
    <message>
        <source>Every tool that is out was counted, after the last issue, return or loss.</source>
        <translation>Jedes Werkzeug, das ausgegeben ist, wurde gezählt, nach der letzten Ausgabe, Rückgabe oder Verlustmeldung.</translation>
    </message>
    <message>
        <source>Every zone</source>
        <translation>Jeder Bereich</translation>
    </message>
    <message>
        <source>Everybody is told, and clear, before what it was holding back begins.</source>
        <translation>Alle sind unterrichtet und aus dem Gefahrenbereich, bevor beginnt, was er zurückgehalten hat.</translation>
    </message>
    <message>
        <source>Everything behind it was inspected before it closed.</source>
        <translation>Alles dahinter wurde geprüft, bevor sie geschlossen wurde.</translation>
    </message>
    <message>
        <source>Everything can be done with the keyboard: Tab and the arrow keys lead on, Space and Enter choose, Esc leaves a window without signing. In every menu and on every button the underlined letter is its key, with Alt.</source>
        <translation>Alles lässt sich mit der Tastatur tun: Tabulator und Pfeiltasten führen weiter, Leertaste und Eingabetaste wählen, Esc verlässt ein Fenster ohne Unterschrift. In jedem Menü und auf jeder Schaltfläche ist der unterstrichene Buchstabe die zugehörige Taste, zusammen mit Alt.</translation>
    </message>
    <message>
        <source>Everything that was signed is as it was signed, and each entry was allowed; not everything beside it could be compared here (entries: %1, attachments: %2).</source>
        <translation>Alles Unterschriebene ist so, wie es unterschrieben wurde, und jeder Eintrag war erlaubt; nicht alles daneben konnte hier verglichen werden (Einträge: %1, Anlagen: %2).</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Belege</translation>
    </message>
    <message>
        <source>Exchange two tags</source>
        <translation>Zwei Anhänger tauschen</translation>
    </message>
    <message>
        <source>Export &amp;tag labels …</source>
        <translation>Anhänger&amp;etiketten exportieren …</translation>
    </message>
    <message>
        <source>Export &amp;the record package …</source>
        <translation>Nachweispa&amp;ket exportieren …</translation>
    </message>
    <message>
        <source>Export PDF a&amp;nd CSV …</source>
        <translation>PDF und CSV &amp;exportieren …</translation>
    </message>
    <message>
        <source>Export PDF and &amp;CSV …</source>
        <translation>PDF und &amp;CSV exportieren …</translation>
    </message>
    <message>
        <source>Export PDF and CSV</source>
        <translation>PDF und CSV exportieren</translation>
    </message>
    <message>
        <source>Export as &amp;PDF …</source>
        <translation>Als &amp;PDF exportieren …</translation>
    </message>
    <message>
        <source>Export tag labels</source>
        <translation>Anhängeretiketten exportieren</translation>
    </message>
    <message>
        <source>Export the list</source>
        <translation>Liste exportieren</translation>
    </message>
    <message>
        <source>Export the record package</source>
        <translation>Nachweispaket exportieren</translation>
    </message>
    <message>
        <source>Eyes outside a joint do not see a blank in it.</source>
        <translation>Augen außerhalb einer Verbindung sehen keinen Verschluss darin.</translation>
    </message>
    <message>
        <source>F&amp;rom day</source>
        <translation>&amp;Von Tag</translation>
    </message>
    <message>
        <source>F1 opens the page of this manual that tells of what is shown, in a sheet or dialog as well. The manual can be read while the sheet waits.</source>
        <translation>F1 öffnet die Seite dieses Handbuchs, die von dem handelt, was gezeigt wird, auch in einem Blatt oder Dialog. Das Handbuch lässt sich lesen, während das Blatt wartet.</translation>
    </message>
    <message>
        <source>FORK: from entry %1 on it says something else than %2. One of the two is not what was worked on: find out which, before anybody relies on either.</source>
        <translation>ABZWEIGUNG: Ab Eintrag %1 gibt es etwas anderes an als: %2. Eines der beiden ist nicht das, woran gearbeitet wurde: Klären Sie, welches, bevor sich jemand auf eines von beiden verlässt.</translation>
    </message>
    <message>
        <source>Faces that were cleaned to bare metal are bonded and finished again soon: within 24 hours, where the maintenance data says nothing else.</source>
        <translation>Flächen, die bis aufs blanke Metall gereinigt wurden, werden bald verbunden und wieder geschützt: innerhalb von 24 Stunden, wo die Instandhaltungsunterlagen nichts anderes sagen.</translation>
    </message>
    <message>
        <source>Fact</source>
        <translation>Fakt</translation>
    </message>
    <message>
        <source>Factor %1 of %2</source>
        <translation>Faktor %1 von %2</translation>
    </message>
    <message>
        <source>Factors: NIST SP 811 (2008) appendix B; exact by the definitions of pound, inch, US gallon and standard gravity</source>
        <translation>Faktoren: NIST SP 811 (2008) Anhang B; exakt nach den Definitionen von Pfund, Zoll, US-Gallone und Normfallbeschleunigung</translation>
    </message>
    <message>
        <source>Failed: interfaces to be worked on again</source>
        <translation>Nicht bestanden: Anschlüsse, an denen erneut zu arbeiten ist</translation>
    </message>
    <message>
        <source>Fastener</source>
        <translation>Verbindungselement</translation>
    </message>
    <message>
        <source>Fastener %1 of %2 was torqued already to %3. If that was wrong, strike entry %4, or mark the item disturbed.</source>
        <translation>Verbindungselement %1 von %2 wurde bereits mit %3 angezogen. War das falsch, streichen Sie Eintrag %4 oder kennzeichnen Sie den Posten als nachträglich verändert.</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Verbindungselemente</translation>
    </message>
    <message>
        <source>Fasteners are taken</source>
        <translation>Verbindungselemente werden angezogen</translation>
    </message>
    <message>
        <source>Fasteners out of their order</source>
        <translation>Verbindungselemente außer der Reihenfolge</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Faults: %1. Mend them in the file and import it again; nothing was taken.</source>
        <translation>Fehler: %1. Beheben Sie sie in der Datei und importieren Sie diese erneut; es wurde nichts übernommen.</translation>
    </message>
    <message>
        <source>Fell, since an entry that it rested on was struck</source>
        <translation>Entfallen, da ein Eintrag gestrichen wurde, auf dem es beruhte</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Feld</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>File type</source>
        <translation>Dateityp</translation>
    </message>
    <message>
        <source>Fill in what is known, and the working stands here.</source>
        <translation>Füllen Sie aus, was bekannt ist; der Rechenweg steht dann hier.</translation>
    </message>
    <message>
        <source>Filter the entries</source>
        <translation>Einträge filtern</translation>
    </message>
    <message>
        <source>Filter the list</source>
        <translation>Liste filtern</translation>
    </message>
    <message>
        <source>Filter: item, name, zone, tag, stage …</source>
        <translation>Filter: Posten, Name, Bereich, Anhänger, Stand …</translation>
    </message>
    <message>
        <source>Filter: item, word … (Ctrl+F)</source>
        <translation>Filter: Posten, Wort … (Strg+F)</translation>
    </message>
    <message>
        <source>Final torque</source>
        <translation>Enddrehmoment</translation>
    </message>
    <message>
        <source>Find a command</source>
        <translation>Befehl suchen</translation>
    </message>
    <message>
        <source>Find the cause, mark the item disturbed, and restore it as the maintenance data says.</source>
        <translation>Suchen Sie die Ursache, kennzeichnen Sie den Posten als nachträglich verändert, und stellen Sie ihn wieder her, wie es die Instandhaltungsunterlagen angeben.</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Finding %1 is about a blank that is missing. There are no limits within which it may be inside, nor a day until which: it is closed when it is known where the blank is.</source>
        <translation>Befund %1 betrifft einen fehlenden Verschluss. Es gibt keine Grenzwerte, innerhalb derer er innen sein darf, und keinen Tag, bis zu dem er es darf: Der Befund wird geschlossen, wenn bekannt ist, wo der Verschluss ist.</translation>
    </message>
    <message>
        <source>Finding %1 is closed already.</source>
        <translation>Befund %1 ist bereits geschlossen.</translation>
    </message>
    <message>
        <source>Finding %1 is on %2, not on %3.</source>
        <translation>Befund %1 betrifft %2, nicht %3.</translation>
    </message>
    <message>
        <source>Finding %1 is open: %2</source>
        <translation>Befund %1 ist offen: %2</translation>
    </message>
    <message>
        <source>Finding %1, deferred: %2</source>
        <translation>Befund %1, zurückgestellt: %2</translation>
    </message>
    <message>
        <source>Finding closed</source>
        <translation>Befund geschlossen</translation>
    </message>
    <message>
        <source>Finding number</source>
        <translation>Nummer des Befunds</translation>
    </message>
    <message>
        <source>Finding raised</source>
        <translation>Befund gemeldet</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Findings are deferred (%1), so this closure is limited. Say how.</source>
        <translation>Befunde sind zurückgestellt (%1), also ist dieser Abschluss eingeschränkt. Geben Sie an, wie.</translation>
    </message>
    <message>
        <source>Findings open</source>
        <translation>Offene Befunde</translation>
    </message>
    <message>
        <source>Fingerprint of the root</source>
        <translation>Fingerabdruck der Wurzel</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erste</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>First enrol the people who work, inspect and release, grant them their authorisations, and register the tools that measure. A job needs somebody who may lead.</source>
        <translation>Nehmen Sie zuerst die Personen auf, die arbeiten, prüfen und freigeben, erteilen Sie ihnen ihre Berechtigungen, und registrieren Sie die Messmittel. Ein Auftrag braucht jemanden, der leiten darf.</translation>
    </message>
    <message>
        <source>First entry in doubt</source>
        <translation>Erster zweifelhafter Eintrag</translation>
    </message>
    <message>
        <source>First number</source>
        <translation>Erste Nummer</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>Fluid under pressure cuts through skin, and what is hydraulic moves when it is let go. Isolate and tag the pumps, release the pressure, in accumulators too, and keep people clear of what moves, as the approved maintenance data and the local rules say.</source>
        <translation>Flüssigkeit unter Druck durchdringt die Haut, und was hydraulisch ist, bewegt sich, wenn es losgelassen wird. Setzen Sie die Pumpen still, sichern Sie sie gegen Anlauf, und hängen Sie Anhänger an; lassen Sie den Druck ab, auch in Druckspeichern, und halten Sie Personen von allem fern, was sich bewegt, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Follow-up done</source>
        <translation>Nachprüfung erledigt</translation>
    </message>
    <message>
        <source>Follow-up set</source>
        <translation>Nachprüfung festgelegt</translation>
    </message>
    <message>
        <source>Follow-ups</source>
        <translation>Nachprüfungen</translation>
    </message>
    <message>
        <source>Follows the closed job</source>
        <translation>Folgt auf den abgeschlossenen Auftrag</translation>
    </message>
    <message>
        <source>For an auditor: whether a record that came from elsewhere is as it was signed. Needs no store.</source>
        <translation>Für einen Auditor: ob ein von anderswo gekommener Nachweis so ist, wie er unterschrieben wurde. Braucht keine Ablage.</translation>
    </message>
    <message>
        <source>For the next job: the notes tell what went otherwise than listed</source>
        <translation>Für den nächsten Auftrag: die Hinweise sagen, was anders als aufgelistet war</translation>
    </message>
    <message>
        <source>For the record</source>
        <translation>Für den Nachweis</translation>
    </message>
    <message>
        <source>For the record:</source>
        <translation>Für den Nachweis:</translation>
    </message>
    <message>
        <source>For the weight record</source>
        <translation>Für die Gewichtsübersicht</translation>
    </message>
    <message>
        <source>For the weight record, from entry %1</source>
        <translation>Für die Gewichtsübersicht, aus Eintrag %1</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Für wen</translation>
    </message>
    <message>
        <source>For you</source>
        <translation>Für Sie</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Formel</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Found and &amp;sign</source>
        <translation>&amp;Anlegen und unterschreiben</translation>
    </message>
    <message>
        <source>Found open</source>
        <translation>Offen vorgefunden</translation>
    </message>
    <message>
        <source>Found out of tolerance</source>
        <translation>Außer Toleranz befunden</translation>
    </message>
    <message>
        <source>Found out of tolerance …</source>
        <translation>Außer Toleranz befunden …</translation>
    </message>
    <message>
        <source>Found still attached</source>
        <translation>Noch verbunden vorgefunden</translation>
    </message>
    <message>
        <source>Found the register</source>
        <translation>Stammbuch anlegen</translation>
    </message>
    <message>
        <source>Free it</source>
        <translation>Frei machen</translation>
    </message>
    <message>
        <source>Freed</source>
        <translation>Frei gemacht</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>From %1 to %2 there is no range. Give what is marked on the wrench.</source>
        <translation>Von %1 bis %2 gibt es keinen Bereich. Geben Sie an, was auf dem Schlüssel steht.</translation>
    </message>
    <message>
        <source>From entry %1 to entry %2: differences %3</source>
        <translation>Von Eintrag %1 bis Eintrag %2: Unterschiede %3</translation>
    </message>
    <message>
        <source>From the foot of a page that was printed earlier, 64 digits; may stay empty</source>
        <translation>Vom Fuß einer früher gedruckten Seite, 64 Stellen; darf leer bleiben</translation>
    </message>
    <message>
        <source>From the job</source>
        <translation>Vom Auftrag</translation>
    </message>
    <message>
        <source>From the standard set</source>
        <translation>Aus dem Standardsatz</translation>
    </message>
    <message>
        <source>From then on you sign here with the same PIN. Nobody else's key comes with it.</source>
        <translation>Von da an unterschreiben Sie hier mit derselben PIN. Kein Schlüssel anderer Personen kommt mit.</translation>
    </message>
    <message>
        <source>From which end</source>
        <translation>Von welchem Ende</translation>
    </message>
    <message>
        <source>From whom to whom, when</source>
        <translation>Von wem an wen, wann</translation>
    </message>
    <message>
        <source>Fuel and its vapour: bond aircraft and equipment first, no flame, spark or live circuit near, fire cover as the local rules ask.</source>
        <translation>Kraftstoff und seine Dämpfe: erst Luftfahrzeug und Gerät elektrisch verbinden; keine Flamme, kein Funke, kein Stromkreis unter Spannung in der Nähe, Brandschutz, wie ihn die örtlichen Vorschriften verlangen.</translation>
    </message>
    <message>
        <source>Fuel and its vapour: no flame, spark or live circuit near, and air to carry it off.</source>
        <translation>Kraftstoff und seine Dämpfe: keine Flamme, kein Funke, kein Stromkreis unter Spannung in der Nähe, und Luft, die sie fortträgt.</translation>
    </message>
    <message>
        <source>Fuel burns, its vapour explodes, and it harms skin and eyes. Isolate and tag fuel and electrical power, bond, release the pressure, drain, vent, keep every source of ignition away and fire cover ready, as the approved maintenance data and the local rules say.</source>
        <translation>Kraftstoff brennt, seine Dämpfe explodieren, und er schadet Haut und Augen. Sperren Sie den Kraftstoff ab, schalten Sie die Stromversorgung frei, und hängen Sie Anhänger an; stellen Sie die Masseverbindung her, lassen Sie den Druck ab, entleeren und lüften Sie, halten Sie jede Zündquelle fern und Brandschutz bereit, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Fuel line</source>
        <translation>Kraftstoffleitung</translation>
    </message>
    <message>
        <source>Gasket makers' instructions: opposite pairs, then halve the angle; percents of the passes as given</source>
        <translation>Anleitungen von Dichtungsherstellern: gegenüberliegende Paare, dann den Winkel halbieren; Prozente der Durchgänge wie angegeben</translation>
    </message>
    <message>
        <source>General values for cadmium-plated threads free of oil, where the maker gives none. The drag of a self-locking nut is not in them.</source>
        <translation>Allgemeine Werte für kadmierte, ölfreie Gewinde, wo der Hersteller keine angibt. Das Klemmdrehmoment einer selbstsichernden Mutter ist nicht enthalten.</translation>
    </message>
    <message>
        <source>Give an id, a name, and how the identity was proved.</source>
        <translation>Geben Sie eine Kennung, einen Namen und die Art des Identitätsnachweises an.</translation>
    </message>
    <message>
        <source>Give an id.</source>
        <translation>Geben Sie eine Kennung an.</translation>
    </message>
    <message>
        <source>Give either this or "%1" (%2).</source>
        <translation>Geben Sie entweder dies an oder „%1“ (%2).</translation>
    </message>
    <message>
        <source>Give its details</source>
        <translation>Angaben dazu eintragen</translation>
    </message>
    <message>
        <source>Give the aircraft's moment before, or its centre of gravity: one of them, as the weight record has it.</source>
        <translation>Geben Sie das Moment des Luftfahrzeugs vorher oder seinen Schwerpunkt an: eines davon, wie es die Gewichtsübersicht hat.</translation>
    </message>
    <message>
        <source>Give the change up</source>
        <translation>Wechsel abbrechen</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Angegeben</translation>
    </message>
    <message>
        <source>Given</source>
        <comment>a handover</comment>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Given:</source>
        <translation>Gegeben:</translation>
    </message>
    <message>
        <source>Go and look at each condition; a hold point is passed at the aircraft, not at the screen.</source>
        <translation>Gehen Sie hin und sehen Sie jede Bedingung an; ein Haltepunkt wird am Luftfahrzeug passiert, nicht am Bildschirm.</translation>
    </message>
    <message>
        <source>Graduation</source>
        <translation>Skalenteilung</translation>
    </message>
    <message>
        <source>Grant an a&amp;uthorisation …</source>
        <translation>Berechtigung ertei&amp;len …</translation>
    </message>
    <message>
        <source>Grant an authorisation</source>
        <translation>Berechtigung erteilen</translation>
    </message>
    <message>
        <source>Greatest drag of a nut</source>
        <translation>Größtes Klemmdrehmoment einer Mutter</translation>
    </message>
    <message>
        <source>Greatest size of each class but the last</source>
        <translation>Größtes Maß jeder Klasse außer der letzten</translation>
    </message>
    <message>
        <source>Greatest torque above</source>
        <translation>Größtes Drehmoment über</translation>
    </message>
    <message>
        <source>Greatest torque of the tool</source>
        <translation>Größtes Drehmoment des Werkzeugs</translation>
    </message>
    <message>
        <source>Greatest torque up to</source>
        <translation>Größtes Drehmoment bis</translation>
    </message>
    <message>
        <source>Half a limit limits nothing.</source>
        <translation>Ein halber Grenzwert begrenzt nichts.</translation>
    </message>
    <message>
        <source>Half a limit would be read as none.</source>
        <translation>Ein halber Grenzwert würde als keiner gelesen.</translation>
    </message>
    <message>
        <source>Halves</source>
        <translation>Hälften</translation>
    </message>
    <message>
        <source>Halves on the aircraft, of the whole group</source>
        <translation>Flugzeugseitige Hälften der ganzen Gruppe</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Weitergeben</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Hand-tight</source>
        <translation>Handfest</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Handed over by</source>
        <translation>Übergeben von</translation>
    </message>
    <message>
        <source>Handed over to another</source>
        <translation>An eine andere Person weitergegeben</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Handover accepted</source>
        <translation>Übergabe angenommen</translation>
    </message>
    <message>
        <source>Handover refused</source>
        <translation>Übergabe abgelehnt</translation>
    </message>
    <message>
        <source>Handover sheet</source>
        <translation>Übergabeblatt</translation>
    </message>
    <message>
        <source>Handovers</source>
        <translation>Übergaben</translation>
    </message>
    <message>
        <source>Handovers so far</source>
        <translation>Bisherige Übergaben</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Befestigungsmaterial</translation>
    </message>
    <message>
        <source>Hardware is changed by those who may work.</source>
        <translation>Das Befestigungsmaterial ändern die, die arbeiten dürfen.</translation>
    </message>
    <message>
        <source>Hardware needs its parts, and how many of each.</source>
        <translation>Befestigungsmaterial braucht seine Teile und die Anzahl von jedem.</translation>
    </message>
    <message>
        <source>Hardware that came off</source>
        <translation>Abgenommenes Befestigungsmaterial</translation>
    </message>
    <message>
        <source>Hardware, tags and tools that are counted</source>
        <translation>Befestigungsmaterial, Anhänger und Werkzeuge, die gezählt werden</translation>
    </message>
    <message>
        <source>Harness connector</source>
        <translation>Kabelbaumstecker</translation>
    </message>
    <message>
        <source>Hash</source>
        <translation>Prüfsumme</translation>
    </message>
    <message>
        <source>Hash of that entry</source>
        <translation>Prüfsumme dieses Eintrags</translation>
    </message>
    <message>
        <source>Hash of the last entry</source>
        <translation>Prüfsumme des letzten Eintrags</translation>
    </message>
    <message>
        <source>Helped, supervised or taught by</source>
        <translation>Unterstützt, beaufsichtigt oder angeleitet von</translation>
    </message>
    <message>
        <source>High current burns and kills. Isolate and tag every source first, batteries and external power too; licensed or authorised people prove it dead before anybody touches a terminal, as the approved maintenance data and the local rules say.</source>
        <translation>Hohe Ströme verbrennen und töten. Schalten Sie zuerst jede Quelle frei, auch Batterien und Außenbordversorgung, und hängen Sie Anhänger an; lizenziertes oder berechtigtes Personal weist die Spannungsfreiheit nach, bevor jemand eine Klemme berührt, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Hoist</source>
        <translation>Hebezeug</translation>
    </message>
    <message>
        <source>Hoist %1</source>
        <translation>Hebezeug %1</translation>
    </message>
    <message>
        <source>Hoist and slings carry what the unit weighs, not what was thought of it.</source>
        <translation>Hebezeug und Anschlagmittel tragen, was das Aggregat wiegt, nicht was man dafür hielt.</translation>
    </message>
    <message>
        <source>Hoist inspected until</source>
        <translation>Hebezeug geprüft bis</translation>
    </message>
    <message>
        <source>Hoist on: %1 %2.</source>
        <translation>Hebezeug angebracht: %1 %2.</translation>
    </message>
    <message>
        <source>Hoist, as marked on it</source>
        <translation>Hebezeug, wie darauf gekennzeichnet</translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation>Haltepunkt</translation>
    </message>
    <message>
        <source>Hold point %1: %2</source>
        <translation>Haltepunkt %1: %2</translation>
    </message>
    <message>
        <source>Hold point passed</source>
        <translation>Haltepunkt passiert</translation>
    </message>
    <message>
        <source>Hold point set</source>
        <translation>Haltepunkt gesetzt</translation>
    </message>
    <message>
        <source>Hold point set: %1</source>
        <translation>Haltepunkt gesetzt: %1</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Haltepunkte</translation>
    </message>
    <message>
        <source>Hold points not passed</source>
        <translation>Nicht passierte Haltepunkte</translation>
    </message>
    <message>
        <source>Holds back: %1</source>
        <translation>Hält zurück: %1</translation>
    </message>
    <message>
        <source>Hole above</source>
        <translation>Bohrung über</translation>
    </message>
    <message>
        <source>Hole from</source>
        <translation>Bohrung ab</translation>
    </message>
    <message>
        <source>Hole up to</source>
        <translation>Bohrung bis</translation>
    </message>
    <message>
        <source>Hook, latch and brake work, and it stands or hangs on what carries it.</source>
        <translation>Haken, Sperrklinke und Bremse funktionieren, und es steht oder hängt auf dem, was es trägt.</translation>
    </message>
    <message>
        <source>Hours since the first entry, %1</source>
        <translation>Stunden seit dem ersten Eintrag, %1</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Wie weit</translation>
    </message>
    <message>
        <source>How far a torque tool may be off</source>
        <translation>Wie weit ein Drehmomentwerkzeug abweichen darf</translation>
    </message>
    <message>
        <source>How it comes</source>
        <translation>Wie es kommt</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Wie es endete</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Wie es steht</translation>
    </message>
    <message>
        <source>How it stood</source>
        <translation>Wie es stand</translation>
    </message>
    <message>
        <source>How it was checked</source>
        <translation>Wie geprüft wurde</translation>
    </message>
    <message>
        <source>How it was found, and how each was made sure of</source>
        <translation>Wie es bemerkt wurde und wie man sich bei jedem vergewissert hat</translation>
    </message>
    <message>
        <source>How it was lost, and where it was looked for</source>
        <translation>Wie er verloren ging und wo er gesucht wurde</translation>
    </message>
    <message>
        <source>How it was undone, made final, repaired or verified</source>
        <translation>Wie es gelöst, endgültig gemacht, repariert oder verifiziert wurde</translation>
    </message>
    <message>
        <source>How many drops make a millilitre depends on the liquid and on the edge that they fall from.</source>
        <translation>Wie viele Tropfen einen Milliliter ergeben, hängt von der Flüssigkeit ab und von der Kante, von der sie fallen.</translation>
    </message>
    <message>
        <source>How many interfaces</source>
        <translation>Wie viele Anschlüsse</translation>
    </message>
    <message>
        <source>How many interfaces were undone and not inspected over time, and what this job's own pace says about the rest.</source>
        <translation>Wie viele Anschlüsse im Lauf der Zeit gelöst und nicht geprüft waren und was das eigene Tempo dieses Auftrags über den Rest sagt.</translation>
    </message>
    <message>
        <source>How the figure was worked out</source>
        <translation>Wie der Wert berechnet wurde</translation>
    </message>
    <message>
        <source>How the identity was proved</source>
        <translation>Wie die Identität nachgewiesen wurde</translation>
    </message>
    <message>
        <source>How they were checked</source>
        <translation>Wie sie geprüft wurden</translation>
    </message>
    <message>
        <source>How: pressure, run, time watched</source>
        <translation>Wie: Druck, Lauf, Beobachtungszeit</translation>
    </message>
    <message>
        <source>Hung now</source>
        <translation>Jetzt angehängt</translation>
    </message>
    <message>
        <source>Hydraulic line</source>
        <translation>Hydraulikleitung</translation>
    </message>
    <message>
        <source>I did this work and it is complete as stated.</source>
        <translation>Ich habe diese Arbeit ausgeführt, und sie ist wie angegeben vollständig.</translation>
    </message>
    <message>
        <source>I had a hand in this work, and inspected it again myself: nobody else could.</source>
        <translation>Ich war an dieser Arbeit beteiligt und habe sie selbst erneut geprüft: Niemand anders konnte es.</translation>
    </message>
    <message>
        <source>I inspected this myself and had no hand in the work.</source>
        <translation>Ich habe dies selbst geprüft und war an der Arbeit nicht beteiligt.</translation>
    </message>
    <message>
        <source>I looked at this myself, and it is as I state.</source>
        <translation>Ich habe dies selbst angesehen, und es ist so, wie ich es angebe.</translation>
    </message>
    <message>
        <source>I looked at this myself, and somebody else had undone it.</source>
        <translation>Ich habe dies selbst angesehen, und jemand anders hatte es gelöst.</translation>
    </message>
    <message>
        <source>I looked at what this hold point asks for, and it is so.</source>
        <translation>Ich habe angesehen, was dieser Haltepunkt verlangt, und es ist so.</translation>
    </message>
    <message>
        <source>I release this job: every item is restored and inspected, or stands as undisturbed, not applicable or given over to a linked job.</source>
        <translation>Ich gebe diesen Auftrag frei: Jeder Posten ist wiederhergestellt und geprüft oder gilt als unberührt, nicht zutreffend oder an einen verknüpften Auftrag abgegeben.</translation>
    </message>
    <message>
        <source>I state this as a record of the job.</source>
        <translation>Ich gebe dies für den Nachweis des Auftrags an.</translation>
    </message>
    <message>
        <source>I&amp;mported packages …</source>
        <translation>I&amp;mportierte Pakete …</translation>
    </message>
    <message>
        <source>IN DOUBT since %1, entries %2: %3</source>
        <translation>ZWEIFELHAFT seit %1, Einträge %2: %3</translation>
    </message>
    <message>
        <source>INSPECTED BY ONE WHO HAD A HAND IN IT</source>
        <translation>GEPRÜFT VON JEMANDEM, DER DARAN BETEILIGT WAR</translation>
    </message>
    <message>
        <source>INSPECTED, but</source>
        <translation>GEPRÜFT, aber</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Id (staff number, stamp)</source>
        <translation>Kennung (Personalnummer, Stempel)</translation>
    </message>
    <message>
        <source>Id, as marked on it</source>
        <translation>Kennung, wie darauf gekennzeichnet</translation>
    </message>
    <message>
        <source>Import the interface list</source>
        <translation>Anschlussliste importieren</translation>
    </message>
    <message>
        <source>Import the list of interfaces of this unit as a CSV file, or drop the file onto the window. You see every row before anything is taken.</source>
        <translation>Importieren Sie die Liste der Anschlüsse dieses Aggregats als CSV-Datei, oder ziehen Sie die Datei auf das Fenster. Sie sehen jede Zeile, bevor etwas übernommen wird.</translation>
    </message>
    <message>
        <source>Imported</source>
        <translation>Importiert</translation>
    </message>
    <message>
        <source>Imported package %1</source>
        <translation>Importiertes Paket %1</translation>
    </message>
    <message>
        <source>Imported packages</source>
        <translation>Importierte Pakete</translation>
    </message>
    <message>
        <source>Importing the package</source>
        <translation>Paket wird importiert</translation>
    </message>
    <message>
        <source>In %1</source>
        <translation>In %1</translation>
    </message>
    <message>
        <source>In a four-wire reading the leads drop out: the zero is recorded and not subtracted.</source>
        <translation>In der Vierleitermessung fallen die Leitungen heraus: Der Nullwert wird eingetragen und nicht abgezogen.</translation>
    </message>
    <message>
        <source>In doubt since</source>
        <translation>Zweifelhaft seit</translation>
    </message>
    <message>
        <source>In doubt: %1</source>
        <translation>Zweifelhaft: %1</translation>
    </message>
    <message>
        <source>In per cent of the final torque. From flanges and pipes; an aircraft's own passes are in its maintenance data.</source>
        <translation>In Prozent des Enddrehmoments. Von Flanschen und Rohren; die Durchgänge eines Luftfahrzeugs stehen in seinen Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>In per cent of the reading, by the greatest torque of the tool. What the tool's own certificate says comes first.</source>
        <translation>In Prozent des Messwerts, nach dem größten Drehmoment des Werkzeugs. Was die eigene Bescheinigung des Werkzeugs sagt, geht vor.</translation>
    </message>
    <message>
        <source>In the scheme "%1" a class has no name of its own ("%2").</source>
        <translation>Im Schema „%1“ hat eine Klasse keinen eigenen Namen („%2“).</translation>
    </message>
    <message>
        <source>In the scheme "%1" no size belongs to the class "%2".</source>
        <translation>Im Schema „%1“ gehört keine Größe zur Klasse „%2“.</translation>
    </message>
    <message>
        <source>In the scheme "%1" the class "%2" begins below the one before it. Give the classes from the least to the worst.</source>
        <translation>Im Schema „%1“ beginnt die Klasse „%2“ unter der davor. Geben Sie die Klassen von der geringsten bis zur schlechtesten an.</translation>
    </message>
    <message>
        <source>In which order the fasteners of a ring are tightened, and to how much in each pass.</source>
        <translation>In welcher Reihenfolge die Verbindungselemente eines Rings angezogen werden, und bis zu welchem Wert in jedem Durchgang.</translation>
    </message>
    <message>
        <source>Incoming crew</source>
        <translation>Übernehmende Mannschaft</translation>
    </message>
    <message>
        <source>Incoming serial number</source>
        <translation>Seriennummer, eingehend</translation>
    </message>
    <message>
        <source>Incoming unit</source>
        <translation>Eingehendes Aggregat</translation>
    </message>
    <message>
        <source>Incoming unit in its place</source>
        <translation>Eingehendes Aggregat an seinem Platz</translation>
    </message>
    <message>
        <source>Incoming unit received</source>
        <translation>Eingehendes Aggregat angenommen</translation>
    </message>
    <message>
        <source>Independence group</source>
        <translation>Unabhängigkeitsgruppe</translation>
    </message>
    <message>
        <source>Index of persons</source>
        <translation>Personenverzeichnis</translation>
    </message>
    <message>
        <source>Inspect own work again</source>
        <translation>Eigene Arbeit erneut prüfen</translation>
    </message>
    <message>
        <source>Inspected</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>Inspected and accepted</source>
        <translation>Geprüft und angenommen</translation>
    </message>
    <message>
        <source>Inspected and rejected</source>
        <translation>Geprüft und zurückgewiesen</translation>
    </message>
    <message>
        <source>Inspected at</source>
        <translation>Geprüft um</translation>
    </message>
    <message>
        <source>Inspected by</source>
        <translation>Geprüft von</translation>
    </message>
    <message>
        <source>Inspecting one's own work again</source>
        <translation>Erneute Prüfung eigener Arbeit</translation>
    </message>
    <message>
        <source>Inspecting one's own work again, where nobody else is there</source>
        <translation>Erneute Prüfung eigener Arbeit, wo niemand sonst da ist</translation>
    </message>
    <message>
        <source>Inspection, look</source>
        <translation>Prüfung, Ansehen</translation>
    </message>
    <message>
        <source>Inspections</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Inspector</source>
        <translation>Prüfer</translation>
    </message>
    <message>
        <source>Installed: %1</source>
        <translation>Eingebaut: %1</translation>
    </message>
    <message>
        <source>Insulation is whole and closed.</source>
        <translation>Die Isolierung ist unversehrt und geschlossen.</translation>
    </message>
    <message>
        <source>Intake, outlet, controls and the way of the unit come first; a tool in them hurts people when the engine is turned.</source>
        <translation>Einlauf, Auslass, Steuerung und der Weg des Aggregats kommen zuerst; ein Werkzeug darin verletzt Menschen, wenn das Triebwerk gedreht wird.</translation>
    </message>
    <message>
        <source>Interface</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Interface list (*.csv)</source>
        <translation>Anschlussliste (*.csv)</translation>
    </message>
    <message>
        <source>Interfaces</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>Interfaces drawn at random, with every entry about them. The same seed draws the same again; choose it without looking at the work.</source>
        <translation>Zufällig gezogene Anschlüsse, mit jedem Eintrag dazu. Derselbe Startwert zieht dieselben wieder; wählen Sie ihn, ohne die Arbeit anzusehen.</translation>
    </message>
    <message>
        <source>Interfaces that it covers; none: all</source>
        <translation>Anschlüsse, die es umfasst; keine: alle</translation>
    </message>
    <message>
        <source>Interfaces to be looked up again</source>
        <translation>Erneut nachzuschlagende Anschlüsse</translation>
    </message>
    <message>
        <source>Interfaces undone and not inspected</source>
        <translation>Anschlüsse gelöst und nicht geprüft</translation>
    </message>
    <message>
        <source>Interfaces with photos</source>
        <translation>Anschlüsse mit Fotos</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>In</translation>
    </message>
    <message>
        <source>Isolate and tag the circuits first, and measure when all mechanical connections of the bond are made.</source>
        <translation>Schalten Sie erst die Stromkreise frei und hängen Sie Anhänger an, und messen Sie, wenn alle mechanischen Verbindungen der Masseverbindung hergestellt sind.</translation>
    </message>
    <message>
        <source>Isolate and tag the electrical power first. A missing bond lets static charge build up, also while fuel is handled: keep the unit earthed another way while its lead is off, and fuel and its vapour away, as the approved maintenance data and the local rules say.</source>
        <translation>Schalten Sie zuerst die Stromversorgung frei, und hängen Sie einen Anhänger an. Eine fehlende Masseverbindung lässt statische Ladung entstehen, auch während mit Kraftstoff umgegangen wird: Halten Sie das Aggregat auf anderem Weg geerdet, solange sein Masseband gelöst ist, und halten Sie Kraftstoff und seine Dämpfe fern, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Isolate and tag the electrical power first; licensed or authorised people make sure that it is dead before the connector is parted or joined. Ignition exciters keep a charge for a while. Work as the approved maintenance data and the local rules say.</source>
        <translation>Schalten Sie zuerst die Stromversorgung frei, und hängen Sie einen Anhänger an; lizenziertes oder berechtigtes Personal vergewissert sich, dass der Stecker spannungslos ist, bevor er getrennt oder verbunden wird. Zündgeräte behalten eine Zeit lang eine Ladung. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Isolate before hands go near: power off and locked out, pressure released, and proven dead or empty where the maintenance data asks for it.</source>
        <translation>Schalten Sie frei, bevor Hände in die Nähe kommen: Strom aus und gegen Einschalten gesperrt, Druck abgelassen und nachgewiesen spannungslos oder leer, wo die Instandhaltungsunterlagen es verlangen.</translation>
    </message>
    <message>
        <source>Isolation</source>
        <translation>Freischaltung</translation>
    </message>
    <message>
        <source>Issue a tool</source>
        <translation>Werkzeug ausgeben</translation>
    </message>
    <message>
        <source>Issue tags</source>
        <translation>Anhänger ausgeben</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Ausgegeben</translation>
    </message>
    <message>
        <source>It belongs to the ledger %1.</source>
        <translation>Er gehört zum Buch %1.</translation>
    </message>
    <message>
        <source>It cannot be decoded (%1), and stays in the store alone.</source>
        <translation>Sie lässt sich nicht dekodieren (%1) und bleibt nur in der Ablage.</translation>
    </message>
    <message>
        <source>It cannot be made small enough for paper, and stays in the store alone.</source>
        <translation>Sie lässt sich nicht klein genug für Papier machen und bleibt nur in der Ablage.</translation>
    </message>
    <message>
        <source>It carries</source>
        <translation>Es trägt</translation>
    </message>
    <message>
        <source>It claims %1 × %2 pixels, more than is drawn here, and stays in the store alone.</source>
        <translation>Sie gibt %1 × %2 Bildpunkte an, mehr als hier gezeichnet wird, und bleibt nur in der Ablage.</translation>
    </message>
    <message>
        <source>It does not hold: something was changed, removed or put in. Faults: %1.</source>
        <translation>Es stimmt nicht: Etwas wurde geändert, entfernt oder eingefügt. Fehler: %1.</translation>
    </message>
    <message>
        <source>It does not name the entry before it: that one was changed, removed or put in.</source>
        <translation>Er nennt nicht den Eintrag davor: Dieser wurde geändert, entfernt oder eingefügt.</translation>
    </message>
    <message>
        <source>It does not pin exactly the jobs that this one is linked with.</source>
        <translation>Er legt sich nicht genau auf die Aufträge fest, mit denen dieser verknüpft ist.</translation>
    </message>
    <message>
        <source>It hangs from another root: %1</source>
        <translation>Es hängt an einer anderen Wurzel: %1</translation>
    </message>
    <message>
        <source>It hangs from this store's own root.</source>
        <translation>Es hängt an der eigenen Wurzel dieser Ablage.</translation>
    </message>
    <message>
        <source>It hangs where the next hand goes, and says who and why.</source>
        <translation>Er hängt, wo die nächste Hand hingreift, und sagt, wer und warum.</translation>
    </message>
    <message>
        <source>It has not been checked for leaks.</source>
        <translation>Es wurde nicht auf Dichtheit geprüft.</translation>
    </message>
    <message>
        <source>It has not been safetied.</source>
        <translation>Es wurde nicht gesichert.</translation>
    </message>
    <message>
        <source>It holds: everything is as it was signed, and each entry was allowed (entries: %1, attachments: %2).</source>
        <translation>Es stimmt: Alles ist so, wie es unterschrieben wurde, und jeder Eintrag war erlaubt (Einträge: %1, Anlagen: %2).</translation>
    </message>
    <message>
        <source>It is a later state of %1.</source>
        <translation>Dies ist ein späterer Stand von: %1.</translation>
    </message>
    <message>
        <source>It is an earlier state of %1.</source>
        <translation>Dies ist ein früherer Stand von: %1.</translation>
    </message>
    <message>
        <source>It is an exception, and somebody decides for it before it is needed.</source>
        <translation>Es ist eine Ausnahme, und jemand entscheidet dafür, bevor sie gebraucht wird.</translation>
    </message>
    <message>
        <source>It is clipped and does not rub.</source>
        <translation>Sie ist befestigt und scheuert nicht.</translation>
    </message>
    <message>
        <source>It is for this unit, stands level, and its brakes and pins hold.</source>
        <translation>Er ist für dieses Aggregat bestimmt, steht waagerecht, und seine Bremsen und Stifte halten.</translation>
    </message>
    <message>
        <source>It is home, and its streamer can be seen from the ground.</source>
        <translation>Er sitzt vollständig, und sein Warnband ist vom Boden aus zu sehen.</translation>
    </message>
    <message>
        <source>It is missing. An adapter is told by the wrench's length, its own length and its angle: give all three or none.</source>
        <translation>Es fehlt. Ein Adapter wird durch die Länge des Schlüssels, seine eigene Länge und seinen Winkel beschrieben: Geben Sie alle drei an oder keines.</translation>
    </message>
    <message>
        <source>It is neither JPEG nor PNG, and stays in the store alone.</source>
        <translation>Sie ist weder JPEG noch PNG und bleibt nur in der Ablage.</translation>
    </message>
    <message>
        <source>It is no ZIP file, or something stands behind its end.</source>
        <translation>Es ist keine ZIP-Datei, oder etwas steht hinter ihrem Ende.</translation>
    </message>
    <message>
        <source>It is no ZIP file: it is too short.</source>
        <translation>Es ist keine ZIP-Datei: Sie ist zu kurz.</translation>
    </message>
    <message>
        <source>It is open, dry and not kinked.</source>
        <translation>Sie ist offen, trocken und nicht geknickt.</translation>
    </message>
    <message>
        <source>It is so</source>
        <translation>Es ist so</translation>
    </message>
    <message>
        <source>It is the right one, clean, and can be seen from outside; nothing is left behind it.</source>
        <translation>Es ist der richtige, sauber und von außen zu sehen; dahinter ist nichts zurückgeblieben.</translation>
    </message>
    <message>
        <source>It is with %1.</source>
        <translation>Es ist bei %1.</translation>
    </message>
    <message>
        <source>It lies free of neighbours that move or get hot.</source>
        <translation>Sie liegt frei von Nachbarn, die sich bewegen oder heiß werden.</translation>
    </message>
    <message>
        <source>It names the attachment %1, which is not there as it was.</source>
        <translation>Er nennt die Anlage %1, und die ist nicht da, wie sie war.</translation>
    </message>
    <message>
        <source>It pins entry %1 of the linked ledger %2; an entry before it pinned entry %3.</source>
        <translation>Er legt sich auf Eintrag %1 des verknüpften Buchs %2 fest; ein Eintrag davor legte sich auf Eintrag %3 fest.</translation>
    </message>
    <message>
        <source>It points away from hot parts and sources of ignition.</source>
        <translation>Sie weist weg von heißen Teilen und Zündquellen.</translation>
    </message>
    <message>
        <source>It stands at place %1 and says that it is number %2.</source>
        <translation>Er steht an Stelle %1 und gibt sich als Nummer %2 aus.</translation>
    </message>
    <message>
        <source>It strikes: %1</source>
        <translation>Gestrichen wird: %1</translation>
    </message>
    <message>
        <source>It was sent to %1, which has not taken it on yet.</source>
        <translation>Es wurde an %1 abgegeben und dort noch nicht übernommen.</translation>
    </message>
    <message>
        <source>It was signed at %1 without knowing of entry %2 of the register, of %3: it comes from another copy of the store, or from a clock that was wrong.</source>
        <translation>Er wurde um %1 ohne Kenntnis von Eintrag %2 des Stammbuchs, von %3, unterschrieben: Er stammt aus einer anderen Kopie der Ablage oder von einer Uhr, die falsch ging.</translation>
    </message>
    <message>
        <source>It would not have been admitted: %1</source>
        <translation>Er wäre nicht zugelassen worden: %1</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Posten</translation>
    </message>
    <message>
        <source>Items handed on</source>
        <translation>Weitergegebene Posten</translation>
    </message>
    <message>
        <source>Items handed on between linked jobs</source>
        <translation>Zwischen verknüpften Aufträgen weitergegebene Posten</translation>
    </message>
    <message>
        <source>Its classes, the least leak first</source>
        <translation>Seine Klassen, die kleinste Leckage zuerst</translation>
    </message>
    <message>
        <source>Its entry</source>
        <translation>Zugehöriger Eintrag</translation>
    </message>
    <message>
        <source>Its hardware does not balance: %1.</source>
        <translation>Das Befestigungsmaterial geht nicht auf: %1.</translation>
    </message>
    <message>
        <source>Its id, name or number</source>
        <translation>Kennung, Name oder Nummer</translation>
    </message>
    <message>
        <source>Its id, name or number, whole as it was entered</source>
        <translation>Kennung, Name oder Nummer, vollständig wie eingetragen</translation>
    </message>
    <message>
        <source>Its interfaces</source>
        <translation>Zugehörige Anschlüsse</translation>
    </message>
    <message>
        <source>Its limit and the date of its inspection can be read, and both hold.</source>
        <translation>Grenzwert und Prüfdatum sind lesbar, und beide gelten noch.</translation>
    </message>
    <message>
        <source>Its release certificate</source>
        <translation>Zugehörige Freigabebescheinigung</translation>
    </message>
    <message>
        <source>Its signature is not %1's over these bytes.</source>
        <translation>Seine Unterschrift ist nicht die von %1 über diese Bytes.</translation>
    </message>
    <message>
        <source>Its work order</source>
        <translation>Zugehöriger Arbeitsauftrag</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Job closed</source>
        <translation>Auftrag abgeschlossen</translation>
    </message>
    <message>
        <source>Job ledger</source>
        <translation>Buch des Auftrags</translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation>Auftrag eröffnet</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Jobs that name it</source>
        <translation>Aufträge, die es nennen</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Beurteilt nach</translation>
    </message>
    <message>
        <source>Keep hands and head out from under the unit; it may move as soon as the last joint lets go.</source>
        <translation>Halten Sie Hände und Kopf nie unter das Aggregat; es kann sich bewegen, sobald sich die letzte Verbindung löst.</translation>
    </message>
    <message>
        <source>Keeps every loose end of a unit change: what was disconnected, who did it, who put it back, what was measured, and who inspected it. A job cannot be closed while anything is loose.</source>
        <translation>Führt jede offene Stelle beim Wechsel eines Aggregats: was getrennt wurde, wer es tat, wer es wiederherstellte, was gemessen wurde und wer es geprüft hat. Ein Auftrag kann nicht abgeschlossen werden, solange etwas offen ist.</translation>
    </message>
    <message>
        <source>Keeps every loose end of an aircraft unit change.</source>
        <translation>Führt jede offene Stelle beim Wechsel eines Luftfahrzeugaggregats.</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Key replaced</source>
        <translation>Schlüssel ersetzt</translation>
    </message>
    <message>
        <source>Key stopped</source>
        <translation>Schlüssel gesperrt</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Art des Eintrags</translation>
    </message>
    <message>
        <source>Kinds</source>
        <translation>Arten</translation>
    </message>
    <message>
        <source>Kinds as in the interface list, several with commas between: mount, access_panel. Named are sorts of what is applied (hoist, sling), units, tests or hold points.</source>
        <translation>Arten wie in der Anschlussliste, mehrere durch Kommas getrennt: mount, access_panel. Benannt sind Sorten des Angebrachten (hoist, sling), Aggregate, Tests oder Haltepunkte.</translation>
    </message>
    <message>
        <source>Kinds of entries</source>
        <translation>Arten von Einträgen</translation>
    </message>
    <message>
        <source>Kinds of interface</source>
        <translation>Arten von Anschlüssen</translation>
    </message>
    <message>
        <source>Known &amp;hash</source>
        <translation>Bekannte &amp;Prüfsumme</translation>
    </message>
    <message>
        <source>Known &amp;root</source>
        <translation>Bekannte &amp;Wurzel</translation>
    </message>
    <message>
        <source>Known that are spelt alike: %1.</source>
        <translation>Ähnlich geschrieben und bekannt sind: %1.</translation>
    </message>
    <message>
        <source>L = %1, E = %2, a = %3°</source>
        <translation>L = %1, E = %2, a = %3°</translation>
    </message>
    <message>
        <source>Labels for</source>
        <translation>Etiketten für</translation>
    </message>
    <message>
        <source>Labels of %1</source>
        <translation>Etiketten von %1</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Larger (+)</source>
        <translation>Größer (+)</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Letzte</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Last day on which it was known to be right</source>
        <translation>Letzter Tag, an dem es bekanntermaßen richtig war</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Letzter Eintrag</translation>
    </message>
    <message>
        <source>Last entry in doubt</source>
        <translation>Letzter zweifelhafter Eintrag</translation>
    </message>
    <message>
        <source>Last entry of the job</source>
        <translation>Letzter Eintrag des Auftrags</translation>
    </message>
    <message>
        <source>Last number</source>
        <translation>Letzte Nummer</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Leiter</translation>
    </message>
    <message>
        <source>Lead to it, where it can be signed (Return)</source>
        <translation>Dorthin führen, wo unterschrieben werden kann (Eingabetaste)</translation>
    </message>
    <message>
        <source>Leads</source>
        <translation>Leitet</translation>
    </message>
    <message>
        <source>Leads that read more than the bond measure themselves.</source>
        <translation>Messleitungen, die mehr anzeigen als die Masseverbindung, messen sich selbst.</translation>
    </message>
    <message>
        <source>Leads together showed</source>
        <translation>Anzeige bei kurzgeschlossenen Messleitungen</translation>
    </message>
    <message>
        <source>Leak check</source>
        <translation>Dichtheitsprüfung</translation>
    </message>
    <message>
        <source>Leak checks</source>
        <translation>Dichtheitsprüfungen</translation>
    </message>
    <message>
        <source>Leak class seen, where the scheme has no sizes</source>
        <translation>Gesehene Leckklasse, wo das Schema keine Maße hat</translation>
    </message>
    <message>
        <source>Leak classes, the least first</source>
        <translation>Leckklassen, die kleinste zuerst</translation>
    </message>
    <message>
        <source>Leak measured</source>
        <translation>Gemessene Leckage</translation>
    </message>
    <message>
        <source>Leak, at most</source>
        <translation>Leckage, höchstens</translation>
    </message>
    <message>
        <source>Leak, most</source>
        <translation>Leckage, höchstens</translation>
    </message>
    <message>
        <source>Leak, worst class allowed</source>
        <translation>Leckage, schlechteste zulässige Klasse</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Mindestwert</translation>
    </message>
    <message>
        <source>Least drag for its size</source>
        <translation>Kleinstes Klemmdrehmoment für die Größe</translation>
    </message>
    <message>
        <source>Least drag of a nut used again</source>
        <translation>Kleinstes Klemmdrehmoment einer wiederverwendeten Mutter</translation>
    </message>
    <message>
        <source>Least drag of a self-locking nut that is used again</source>
        <translation>Kleinstes Klemmdrehmoment einer wiederverwendeten selbstsichernden Mutter</translation>
    </message>
    <message>
        <source>Least for its size</source>
        <translation>Kleinstes für die Größe</translation>
    </message>
    <message>
        <source>Least margin of a leg</source>
        <translation>Kleinste Reserve eines Strangs</translation>
    </message>
    <message>
        <source>Least torque</source>
        <translation>Kleinstes Drehmoment</translation>
    </message>
    <message>
        <source>Least: as given</source>
        <translation>Kleinstes: wie angegeben</translation>
    </message>
    <message>
        <source>Leave &amp;it</source>
        <translation>&amp;Liegen lassen</translation>
    </message>
    <message>
        <source>Leave out what the camera wrote: place, time, device</source>
        <translation>Weglassen, was die Kamera schrieb: Ort, Zeit, Gerät</translation>
    </message>
    <message>
        <source>Leave the store</source>
        <translation>Ablage verlassen</translation>
    </message>
    <message>
        <source>Leave this store?</source>
        <translation>Diese Ablage verlassen?</translation>
    </message>
    <message>
        <source>Leaves with the outgoing unit</source>
        <translation>Geht mit dem ausgehenden Aggregat ab</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Buch</translation>
    </message>
    <message>
        <source>Ledgers</source>
        <translation>Bücher</translation>
    </message>
    <message>
        <source>Left point</source>
        <translation>Linker Punkt</translation>
    </message>
    <message>
        <source>Legs at each lifting point</source>
        <translation>Stränge an jedem Anschlagpunkt</translation>
    </message>
    <message>
        <source>Legs at each point</source>
        <translation>Stränge an jedem Punkt</translation>
    </message>
    <message>
        <source>Length, grip to drive</source>
        <translation>Länge, Griff bis Antrieb</translation>
    </message>
    <message>
        <source>Let the pressure off before a cap is opened, and mind hot oil. Gloves and eye protection; wipe up what is spilled.</source>
        <translation>Lassen Sie den Druck ab, bevor ein Deckel geöffnet wird, und achten Sie auf heißes Öl. Handschuhe und Augenschutz; Verschüttetes aufwischen.</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Füllstand</translation>
    </message>
    <message>
        <source>Lift planned</source>
        <translation>Hebevorgang geplant</translation>
    </message>
    <message>
        <source>Lift with hoist and slings</source>
        <translation>Heben mit Hebezeug und Anschlagmitteln</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Gehoben</translation>
    </message>
    <message>
        <source>Lifting point</source>
        <translation>Anschlagpunkt</translation>
    </message>
    <message>
        <source>Lifting points %1 apart, with the centre of gravity at %2, make no sense. Give a span above 0 and two lengths.</source>
        <translation>Anschlagpunkte im Abstand von %1 mit dem Schwerpunkt bei %2 ergeben keinen Sinn. Geben Sie einen Abstand über 0 und zwei Längen an.</translation>
    </message>
    <message>
        <source>Lifts as planned</source>
        <translation>Hebevorgänge wie geplant</translation>
    </message>
    <message>
        <source>Lifts, fluids</source>
        <translation>Heben, Flüssigkeiten</translation>
    </message>
    <message>
        <source>Lifts, fluids, weight</source>
        <translation>Hebevorgänge, Flüssigkeiten, Gewicht</translation>
    </message>
    <message>
        <source>Lifts, servicing and weight, as they were worked out</source>
        <translation>Hebevorgänge, Befüllung und Gewicht, wie sie berechnet wurden</translation>
    </message>
    <message>
        <source>Light with &amp;more contrast</source>
        <translation>Hell mit mehr &amp;Kontrast</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Limit of a leg</source>
        <translation>Grenzwert eines Strangs</translation>
    </message>
    <message>
        <source>Limit of the hoist</source>
        <translation>Grenzwert des Hebezeugs</translation>
    </message>
    <message>
        <source>Limit, as a flow</source>
        <translation>Grenzwert, als Durchfluss</translation>
    </message>
    <message>
        <source>Limit, as drops</source>
        <translation>Grenzwert, als Tropfen</translation>
    </message>
    <message>
        <source>Limit: the maintenance data, as given</source>
        <translation>Grenze: die Instandhaltungsunterlagen, wie angegeben</translation>
    </message>
    <message>
        <source>Limitation, where findings are deferred</source>
        <translation>Einschränkung, wo Befunde zurückgestellt sind</translation>
    </message>
    <message>
        <source>Link with another job</source>
        <translation>Mit einem anderen Auftrag verknüpfen</translation>
    </message>
    <message>
        <source>Linkages trap hands, and springs or power may move them. Isolate, tag and lock what drives them, and keep people clear of what they move, as the approved maintenance data and the local rules say.</source>
        <translation>Gestänge klemmen Hände ein, und Federn oder Antriebe können sie bewegen. Setzen Sie still, was sie antreibt, hängen Sie einen Anhänger an, verriegeln Sie es, und halten Sie Personen von allem fern, was sie bewegen, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Linked</source>
        <translation>Verknüpft</translation>
    </message>
    <message>
        <source>Linked jobs</source>
        <translation>Verknüpfte Aufträge</translation>
    </message>
    <message>
        <source>Linked with another job</source>
        <translation>Mit einem anderen Auftrag verknüpft</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>List an accessory</source>
        <translation>Anbauteil auflisten</translation>
    </message>
    <message>
        <source>List corrected for</source>
        <translation>Liste berichtigt für</translation>
    </message>
    <message>
        <source>Listed</source>
        <translation>In der Liste</translation>
    </message>
    <message>
        <source>Load on the hoist, H</source>
        <translation>Last am Hebezeug, H</translation>
    </message>
    <message>
        <source>Loc&amp;k</source>
        <translation>S&amp;perren</translation>
    </message>
    <message>
        <source>Locking is fitted and pulls towards tight.</source>
        <translation>Die Sicherung ist angebracht und zieht in Festdrehrichtung.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Look again; then say which is missing, or issue what nobody issued.</source>
        <translation>Sehen Sie noch einmal nach; geben Sie dann an, was fehlt, oder geben Sie aus, was niemand ausgegeben hat.</translation>
    </message>
    <message>
        <source>Look and feel behind what hides: the last bolt, the lead under the duct, the clamp that nobody listed.</source>
        <translation>Sehen und fühlen Sie hinter das, was verdeckt: der letzte Bolzen, das Masseband unter dem Kanal, die Schelle, die niemand aufgelistet hat.</translation>
    </message>
    <message>
        <source>Look at</source>
        <translation>Anzusehen</translation>
    </message>
    <message>
        <source>Look at the item itself, at its tag, its blanks and its hardware, before you take it on: what the other job's record says is what you answer for from now on.</source>
        <translation>Sehen Sie den Posten selbst an, seinen Anhänger, seine Verschlüsse und sein Befestigungsmaterial, bevor Sie ihn übernehmen: Für das, was der Nachweis des anderen Auftrags sagt, stehen von nun an Sie ein.</translation>
    </message>
    <message>
        <source>Look at this, and confirm it: %1</source>
        <translation>Sehen Sie dies an, und bestätigen Sie es: %1</translation>
    </message>
    <message>
        <source>Look for something first.</source>
        <translation>Suchen Sie zuerst etwas.</translation>
    </message>
    <message>
        <source>Look for the lost tag first: in the bay, the intake, the outlet and the lines that stood open it is a foreign object.</source>
        <translation>Suchen Sie zuerst den verlorenen Anhänger: Im Einbauraum, im Einlauf, im Auslass und in den Leitungen, die offen standen, ist er ein Fremdkörper.</translation>
    </message>
    <message>
        <source>Look inside as far as eyes, mirror and borescope reach, on both sides; the approved maintenance data and the local rules say how far.</source>
        <translation>Sehen Sie auf beiden Seiten hinein, so weit Augen, Spiegel und Boroskop reichen; wie weit, sagen die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Look over hoist, slings and fittings on the day, before use. A sling without a legible tag is not used.</source>
        <translation>Sehen Sie Hebezeug, Anschlagmittel und Beschläge am selben Tag vor dem Gebrauch an. Ein Anschlagmittel ohne lesbaren Anhänger wird nicht benutzt.</translation>
    </message>
    <message>
        <source>Look up</source>
        <translation>Nachschlagen</translation>
    </message>
    <message>
        <source>Look up: %1</source>
        <translation>Nachschlagen: %1</translation>
    </message>
    <message>
        <source>Look-alike halves join as easily as the right ones.</source>
        <translation>Gleich aussehende Hälften lassen sich so leicht verbinden wie die richtigen.</translation>
    </message>
    <message>
        <source>Look-alikes</source>
        <translation>Verwechselbare</translation>
    </message>
    <message>
        <source>Looked after by</source>
        <translation>Betreut von</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Looked at %1 minutes after wiping dry.</source>
        <translation>Hingesehen %1 Minuten nach dem Trockenwischen.</translation>
    </message>
    <message>
        <source>Looked at and confirmed</source>
        <translation>Angesehen und bestätigt</translation>
    </message>
    <message>
        <source>Looked at it: free</source>
        <translation>Angesehen: frei</translation>
    </message>
    <message>
        <source>Looked at it: free   Space</source>
        <translation>Angesehen: frei   Leertaste</translation>
    </message>
    <message>
        <source>Looked at, minutes after wiping dry</source>
        <translation>Angesehen, Minuten nach dem Trockenwischen</translation>
    </message>
    <message>
        <source>Looked for</source>
        <translation>Gesucht</translation>
    </message>
    <message>
        <source>Looked through</source>
        <translation>Durchsucht</translation>
    </message>
    <message>
        <source>Looked through were jobs: %1; their entries: %2; entries of the register: %3.</source>
        <translation>Durchgesehen wurden Aufträge: %1; deren Einträge: %2; Einträge des Stammbuchs: %3.</translation>
    </message>
    <message>
        <source>Looked up for: %1</source>
        <translation>Nachgeschlagen für: %1</translation>
    </message>
    <message>
        <source>Loose ends</source>
        <translation>Offene Stellen</translation>
    </message>
    <message>
        <source>Loose ends that are gone</source>
        <translation>Weggefallene offene Stellen</translation>
    </message>
    <message>
        <source>Loose, by zone</source>
        <translation>Offen, nach Bereich</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Verloren</translation>
    </message>
    <message>
        <source>Lost and replaced</source>
        <translation>Verloren und ersetzt</translation>
    </message>
    <message>
        <source>Lost tag replaced on</source>
        <translation>Verlorener Anhänger ersetzt an</translation>
    </message>
    <message>
        <source>Lowest mark of its scale</source>
        <translation>Kleinster Strich seiner Skala</translation>
    </message>
    <message>
        <source>Lowest point that is tested</source>
        <translation>Kleinster geprüfter Punkt</translation>
    </message>
    <message>
        <source>Lug faces are clean, flat and show no heat.</source>
        <translation>Die Kontaktflächen der Kabelschuhe sind sauber, eben und zeigen keine Hitzespuren.</translation>
    </message>
    <message>
        <source>MISSING since %1, finding %2</source>
        <translation>FEHLT seit %1, Befund %2</translation>
    </message>
    <message>
        <source>Maintenance data</source>
        <translation>Instandhaltungsunterlagen</translation>
    </message>
    <message>
        <source>Maintenance data reference</source>
        <translation>Referenz der Instandhaltungsunterlagen</translation>
    </message>
    <message>
        <source>Maintenance data revised</source>
        <translation>Instandhaltungsunterlagen revidiert</translation>
    </message>
    <message>
        <source>Make it smaller: at most %1 pixels on the longer side</source>
        <translation>Verkleinern: höchstens %1 Bildpunkte an der längeren Seite</translation>
    </message>
    <message>
        <source>Make sure of each interface by what it joins, not by its tag, and that each is as the log says, before the tags change places.</source>
        <translation>Vergewissern Sie sich bei jedem Anschluss anhand dessen, was er verbindet, nicht anhand des Anhängers, und dass jeder so ist, wie es eingetragen ist, bevor die Anhänger getauscht werden.</translation>
    </message>
    <message>
        <source>Make sure that the interface is the one that the log says, and as the log says, before the new tag is hung.</source>
        <translation>Vergewissern Sie sich, dass der Anschluss der eingetragene und so ist, wie es eingetragen ist, bevor der neue Anhänger angehängt wird.</translation>
    </message>
    <message>
        <source>Manual</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Manual, &amp;contents</source>
        <translation>Handbuch, &amp;Inhalt</translation>
    </message>
    <message>
        <source>Many at once</source>
        <translation>Viele auf einmal</translation>
    </message>
    <message>
        <source>Many in a short time</source>
        <translation>Viele in kurzer Zeit</translation>
    </message>
    <message>
        <source>Many signatures in a short time</source>
        <translation>Viele Unterschriften in kurzer Zeit</translation>
    </message>
    <message>
        <source>Margin of a leg at %1</source>
        <translation>Reserve eines Strangs, %1</translation>
    </message>
    <message>
        <source>Margin of the hoist</source>
        <translation>Reserve des Hebezeugs</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Markierung</translation>
    </message>
    <message>
        <source>Mark %1 lies beside the photo: both its places are 0 to 1000 thousandths.</source>
        <translation>Markierung %1 liegt neben dem Foto: Beide Lagen reichen von 0 bis 1000 Tausendstel.</translation>
    </message>
    <message>
        <source>Mark %1, not signed: %2</source>
        <translation>Markierung %1, nicht unterschrieben: %2</translation>
    </message>
    <message>
        <source>Mark %1: %2</source>
        <translation>Markierung %1: %2</translation>
    </message>
    <message>
        <source>Mark %1: %2. %3, entry %4</source>
        <translation>Markierung %1: %2. %3, Eintrag %4</translation>
    </message>
    <message>
        <source>Mark a photo</source>
        <translation>Foto markieren</translation>
    </message>
    <message>
        <source>Marked fasteners accepted</source>
        <translation>Markierte Verbindungselemente übernommen</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Kennzeichnung</translation>
    </message>
    <message>
        <source>Marking on the tool</source>
        <translation>Kennzeichnung auf dem Werkzeug</translation>
    </message>
    <message>
        <source>Markings that were counted</source>
        <translation>Gezählte Kennzeichnungen</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Markierungen</translation>
    </message>
    <message>
        <source>Marks inside it, %1 apart</source>
        <translation>Teilstriche darin, im Abstand %1</translation>
    </message>
    <message>
        <source>Marks on the photo</source>
        <translation>Markierungen auf dem Foto</translation>
    </message>
    <message>
        <source>Mating faces meet without a gap.</source>
        <translation>Die Anlageflächen liegen ohne Spalt aneinander.</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Darf</translation>
    </message>
    <message>
        <source>May be off by</source>
        <translation>Mögliche Abweichung</translation>
    </message>
    <message>
        <source>May stay empty</source>
        <translation>Darf leer bleiben</translation>
    </message>
    <message>
        <source>Mean aerodynamic chord, if known</source>
        <translation>Mittlere aerodynamische Flügeltiefe, falls bekannt</translation>
    </message>
    <message>
        <source>Measure bonding</source>
        <translation>Masseverbindung messen</translation>
    </message>
    <message>
        <source>Measured in entry %1 with %2, which was found out of tolerance later: %3 Mark the item disturbed, and measure it again with another tool.</source>
        <translation>In Eintrag %1 gemessen mit %2, das später außer Toleranz befunden wurde: %3 Kennzeichnen Sie den Posten als nachträglich verändert, und messen Sie ihn mit einem anderen Werkzeug erneut.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Millivolt drop: AC 43.13-1B (9/8/98) par. 11-188 j, fig. 11-19</source>
        <translation>Spannungsabfall: AC 43.13-1B (9/8/98) Abs. 11-188 j, Bild 11-19</translation>
    </message>
    <message>
        <source>Mind:</source>
        <translation>Beachten:</translation>
    </message>
    <message>
        <source>Minutes after wiping dry</source>
        <translation>Minuten nach dem Trockenwischen</translation>
    </message>
    <message>
        <source>Minutes between the work and that</source>
        <translation>Minuten zwischen der Arbeit und dieser Prüfung</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <source>Modification state, against the outgoing unit</source>
        <translation>Änderungsstand, gegenüber dem ausgehenden Aggregat</translation>
    </message>
    <message>
        <source>More than %1 of %2 did not come off one interface. Count again.</source>
        <translation>Mehr als %1 von %2 kamen nicht von einem einzigen Anschluss. Zählen Sie noch einmal.</translation>
    </message>
    <message>
        <source>More than %1 of %2 does not belong to one interface. Count again.</source>
        <translation>Mehr als %1 von %2 gehören nicht zu einem einzigen Anschluss. Zählen Sie noch einmal.</translation>
    </message>
    <message>
        <source>More was said of %1 (entry %2).</source>
        <translation>Zu %1 wurde mehr angegeben (Eintrag %2).</translation>
    </message>
    <message>
        <source>More was said of %1 since its row was corrected. Correct it again instead.</source>
        <translation>Zu %1 wurde seit der Berichtigung der Zeile mehr angegeben. Berichtigen Sie stattdessen die Zeile noch einmal.</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Höchstwert</translation>
    </message>
    <message>
        <source>Most torque</source>
        <translation>Größtes Drehmoment</translation>
    </message>
    <message>
        <source>Mount</source>
        <translation>Aufhängung</translation>
    </message>
    <message>
        <source>Moved to the incoming unit</source>
        <translation>An das eingehende Aggregat umgebaut</translation>
    </message>
    <message>
        <source>Must be new</source>
        <translation>Muss neu sein</translation>
    </message>
    <message>
        <source>Must show</source>
        <translation>Nachzuweisen</translation>
    </message>
    <message>
        <source>NONE IN FORCE</source>
        <translation>KEINE IN KRAFT</translation>
    </message>
    <message>
        <source>NOT ACCEPTED</source>
        <translation>NICHT ANGENOMMEN</translation>
    </message>
    <message>
        <source>NOT ACCEPTED yet</source>
        <translation>noch NICHT ANGENOMMEN</translation>
    </message>
    <message>
        <source>NOT AGREED</source>
        <translation>OHNE ZUSTIMMUNG</translation>
    </message>
    <message>
        <source>NOT CLOSED</source>
        <translation>NICHT ABGESCHLOSSEN</translation>
    </message>
    <message>
        <source>NOT EVEN</source>
        <translation>NICHT AUSGEGLICHEN</translation>
    </message>
    <message>
        <source>NOT PASSED</source>
        <translation>NICHT PASSIERT</translation>
    </message>
    <message>
        <source>NOT PLACED</source>
        <translation>OHNE VERBLEIB</translation>
    </message>
    <message>
        <source>NOT TAKEN ON</source>
        <translation>NICHT ÜBERNOMMEN</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name one system that is serviced.</source>
        <translation>Nennen Sie ein System, das befüllt wird.</translation>
    </message>
    <message>
        <source>Name the hold points that come first, and nothing else.</source>
        <translation>Nennen Sie die Haltepunkte, die vorher kommen, und sonst nichts.</translation>
    </message>
    <message>
        <source>Name the interfaces that the new revision may ask something else of; or say that it was read and changes none of them.</source>
        <translation>Nennen Sie die Anschlüsse, von denen die neue Revision etwas anderes verlangen kann; oder geben Sie an, dass sie gelesen wurde und keinen davon ändert.</translation>
    </message>
    <message>
        <source>Name, id or badge</source>
        <translation>Name, Kennung oder Ausweis</translation>
    </message>
    <message>
        <source>Named</source>
        <translation>Benannt</translation>
    </message>
    <message>
        <source>Negligible is what is so in weight and in centre of gravity. The limits forward and aft of the centre of gravity are others, and are not looked at here; nor is a rotorcraft's range. The equipment list and the weight record are revised by those who are licensed for it.</source>
        <translation>Vernachlässigbar ist, was es im Gewicht und im Schwerpunkt ist. Die vordere und die hintere Schwerpunktgrenze sind andere und werden hier nicht betrachtet; ebenso wenig der Bereich eines Drehflüglers. Ausrüstungsliste und Gewichtsübersicht berichtigen die dafür Lizenzierten.</translation>
    </message>
    <message>
        <source>Negligible, by weight and by centre of gravity.</source>
        <translation>Vernachlässigbar, nach Gewicht und nach Schwerpunkt.</translation>
    </message>
    <message>
        <source>Never feel for a leak under pressure with a hand: a fine jet goes through skin. Let the pressure off before touching.</source>
        <translation>Fühlen Sie nie mit der Hand nach einem Leck unter Druck: Ein feiner Strahl geht durch die Haut. Lassen Sie den Druck ab, bevor Sie etwas berühren.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>New PIN or passphrase</source>
        <translation>Neue PIN oder Passphrase</translation>
    </message>
    <message>
        <source>New centre of gravity</source>
        <translation>Neuer Schwerpunkt</translation>
    </message>
    <message>
        <source>New empty weight, W</source>
        <translation>Neues Leergewicht, W</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>New key for a person</source>
        <translation>Neuer Schlüssel für eine Person</translation>
    </message>
    <message>
        <source>New loose ends</source>
        <translation>Neue offene Stellen</translation>
    </message>
    <message>
        <source>New moment, M</source>
        <translation>Neues Moment, M</translation>
    </message>
    <message>
        <source>New seal</source>
        <translation>Neue Dichtung</translation>
    </message>
    <message>
        <source>New seal, batch</source>
        <translation>Neue Dichtung, Charge</translation>
    </message>
    <message>
        <source>New seal, part number</source>
        <translation>Neue Dichtung, Teilenummer</translation>
    </message>
    <message>
        <source>New seals</source>
        <translation>Neue Dichtungen</translation>
    </message>
    <message>
        <source>New store</source>
        <translation>Neue Ablage</translation>
    </message>
    <message>
        <source>New tag</source>
        <translation>Neuer Anhänger</translation>
    </message>
    <message>
        <source>Next fastener</source>
        <translation>Nächstes Verbindungselement</translation>
    </message>
    <message>
        <source>Next on</source>
        <translation>Als Nächstes an</translation>
    </message>
    <message>
        <source>Next to restore</source>
        <translation>Als Nächstes wiederherzustellen</translation>
    </message>
    <message>
        <source>Next to restore: %1 of %2 may go on now</source>
        <translation>Als Nächstes wiederherzustellen: %1 von %2 dürfen jetzt angebaut werden</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>No %1 was passed yet.</source>
        <translation>Noch nicht passiert: %1.</translation>
    </message>
    <message>
        <source>No blank or loose part is left inside.</source>
        <translation>Kein Verschluss oder loses Teil ist innen zurückgeblieben.</translation>
    </message>
    <message>
        <source>No blank, rag or loose part is left inside.</source>
        <translation>Kein Verschluss, Lappen oder loses Teil ist innen zurückgeblieben.</translation>
    </message>
    <message>
        <source>No block from %1 to %2 was issued to this job. Blocks that are out: %3.</source>
        <translation>Für diesen Auftrag wurde kein Block von %1 bis %2 ausgegeben. Ausgegebene Blöcke: %3.</translation>
    </message>
    <message>
        <source>No block of tags was issued to this job. Where one is, each tag that is hung is of a block that is out, and the block is returned whole.</source>
        <translation>Für diesen Auftrag wurde kein Block Anhänger ausgegeben. Wo einer ausgegeben ist, stammt jeder angehängte Anhänger aus einem ausgegebenen Block, und der Block wird vollständig zurückgegeben.</translation>
    </message>
    <message>
        <source>No command has these letters.</source>
        <translation>Kein Befehl enthält diese Buchstaben.</translation>
    </message>
    <message>
        <source>No copy of %1 could be made. Attach it as it is, or choose another.</source>
        <translation>Von %1 ließ sich keine Kopie machen. Hängen Sie es an, wie es ist, oder wählen Sie ein anderes.</translation>
    </message>
    <message>
        <source>No crack, wear or dent shows on mount and attachment.</source>
        <translation>Aufhängung und Befestigung zeigen weder Riss noch Verschleiß noch Delle.</translation>
    </message>
    <message>
        <source>No disconnection of %1 was logged. If it was found open, say so first.</source>
        <translation>Zu %1 ist kein Lösen eingetragen. Wurde es offen vorgefunden, geben Sie das zuerst an.</translation>
    </message>
    <message>
        <source>No drag was added. Where the nut locks itself and the maintenance data says so, it is.</source>
        <translation>Es wurde kein Klemmdrehmoment addiert. Wo die Mutter selbstsichernd ist und die Instandhaltungsunterlagen es sagen, wird es addiert.</translation>
    </message>
    <message>
        <source>No entry fits.</source>
        <translation>Kein Eintrag passt.</translation>
    </message>
    <message>
        <source>No entry has the hash %1: it was changed or removed, perhaps with all that followed it.</source>
        <translation>Kein Eintrag hat die Prüfsumme %1: Er wurde geändert oder entfernt, vielleicht mit allem, was ihm folgte.</translation>
    </message>
    <message>
        <source>No entry names the attachment %1: it was put in.</source>
        <translation>Kein Eintrag nennt die Anlage %1: Sie wurde eingefügt.</translation>
    </message>
    <message>
        <source>No entry of any job names %1 %2.</source>
        <translation>Kein Eintrag eines Auftrags nennt: %1 %2.</translation>
    </message>
    <message>
        <source>No entry of those asked for names %1 %2.</source>
        <translation>Keiner der abgefragten Einträge nennt: %1 %2.</translation>
    </message>
    <message>
        <source>No fault.</source>
        <translation>Kein Fehler.</translation>
    </message>
    <message>
        <source>No file could be made beside %1 (system %2). Check that the folder is there and that you may write to it.</source>
        <translation>Neben %1 konnte keine Datei erstellt werden (System %2). Prüfen Sie, ob der Ordner vorhanden ist und ob Sie hineinschreiben dürfen.</translation>
    </message>
    <message>
        <source>No finding is open.</source>
        <translation>Kein Befund ist offen.</translation>
    </message>
    <message>
        <source>No finding was raised in this job. Raise one for damage or a discrepancy; it stays open until an inspector disposes of it.</source>
        <translation>In diesem Auftrag wurde kein Befund gemeldet. Melden Sie einen bei Schaden oder Abweichung; er bleibt offen, bis ein Prüfer darüber entscheidet.</translation>
    </message>
    <message>
        <source>No finding was raised.</source>
        <translation>Es wurde kein Befund gemeldet.</translation>
    </message>
    <message>
        <source>No follow-up was set: what is due after closure, such as a torque to be checked again after some hours.</source>
        <translation>Es wurde keine Nachprüfung festgelegt: was nach dem Abschluss fällig ist, etwa ein Anziehdrehmoment, das nach einigen Stunden erneut zu prüfen ist.</translation>
    </message>
    <message>
        <source>No hash was given that must be in it: whether its end was cut off cannot be told without one, from a page that was printed earlier, say.</source>
        <translation>Es wurde keine Prüfsumme angegeben, die darin sein muss: Ob das Ende abgeschnitten wurde, lässt sich ohne eine solche nicht sagen, etwa von einer früher gedruckten Seite.</translation>
    </message>
    <message>
        <source>No hoist and no sling is on.</source>
        <translation>Weder Hebezeug noch Anschlagmittel ist angebracht.</translation>
    </message>
    <message>
        <source>No imported package has the number %1.</source>
        <translation>Kein importiertes Paket hat die Nummer %1.</translation>
    </message>
    <message>
        <source>No inspection was recorded.</source>
        <translation>Es wurde keine Prüfung eingetragen.</translation>
    </message>
    <message>
        <source>No interface goes uninspected.</source>
        <translation>Kein Anschluss bleibt ungeprüft.</translation>
    </message>
    <message>
        <source>No interface is open or half done.</source>
        <translation>Kein Anschluss ist offen oder halb erledigt.</translation>
    </message>
    <message>
        <source>No interface is open.</source>
        <translation>Kein Anschluss ist offen.</translation>
    </message>
    <message>
        <source>No interface was listed.</source>
        <translation>Es wurde kein Anschluss aufgeführt.</translation>
    </message>
    <message>
        <source>No item chosen</source>
        <translation>Kein Posten gewählt</translation>
    </message>
    <message>
        <source>No job is open.</source>
        <translation>Kein Auftrag ist geöffnet.</translation>
    </message>
    <message>
        <source>No job yet</source>
        <translation>Noch kein Auftrag</translation>
    </message>
    <message>
        <source>No leak is something that was looked for.</source>
        <translation>„Keine Leckage“ ist etwas, wonach gesucht wurde.</translation>
    </message>
    <message>
        <source>No ledger was read.</source>
        <translation>Es wurde kein Buch gelesen.</translation>
    </message>
    <message>
        <source>No lift is planned, nothing is filled in and no weight recorded in this job. Each is worked out as it is entered, and stands here with its working.</source>
        <translation>In diesem Auftrag ist kein Hebevorgang geplant, nichts befüllt und kein Gewicht eingetragen. Jedes wird beim Eintragen berechnet und steht hier mit seinem Rechenweg.</translation>
    </message>
    <message>
        <source>No lift of the %1 unit is planned.</source>
        <translation>Es ist kein Hebevorgang für das Aggregat (%1) geplant.</translation>
    </message>
    <message>
        <source>No lift of the outgoing unit is planned.</source>
        <translation>Es ist kein Hebevorgang für das ausgehende Aggregat geplant.</translation>
    </message>
    <message>
        <source>No limit is exceeded by these numbers.</source>
        <translation>Mit diesen Zahlen wird keine Grenze überschritten.</translation>
    </message>
    <message>
        <source>No measuring tool was used.</source>
        <translation>Es wurde kein Messmittel verwendet.</translation>
    </message>
    <message>
        <source>No new seal was recorded.</source>
        <translation>Es wurde keine neue Dichtung eingetragen.</translation>
    </message>
    <message>
        <source>No package was imported.</source>
        <translation>Es wurde kein Paket importiert.</translation>
    </message>
    <message>
        <source>No page has all of these words.</source>
        <translation>Keine Seite enthält alle diese Wörter.</translation>
    </message>
    <message>
        <source>No photo from after.</source>
        <translation>Kein Foto von nachher.</translation>
    </message>
    <message>
        <source>No photo from before.</source>
        <translation>Kein Foto von vorher.</translation>
    </message>
    <message>
        <source>No photo is attached in this job yet. Add one as a file, drop it here, paste it, or watch the folder that the camera copies to. It is taken once its entry is signed.</source>
        <translation>In diesem Auftrag ist noch kein Foto angehängt. Fügen Sie eines als Datei hinzu, legen Sie es hier ab, fügen Sie es ein, oder beobachten Sie den Ordner, in den die Kamera kopiert. Übernommen ist es, sobald sein Eintrag unterschrieben ist.</translation>
    </message>
    <message>
        <source>No pin is bent, pushed back, wet or dirty.</source>
        <translation>Kein Kontaktstift ist verbogen, zurückgedrückt, nass oder schmutzig.</translation>
    </message>
    <message>
        <source>No servicing of %1 is recorded.</source>
        <translation>Es ist keine Befüllung von %1 eingetragen.</translation>
    </message>
    <message>
        <source>No shift has been handed over in this job.</source>
        <translation>In diesem Auftrag wurde noch keine Schicht übergeben.</translation>
    </message>
    <message>
        <source>No such handover waits for acceptance.</source>
        <translation>Keine solche Übergabe wartet auf Annahme.</translation>
    </message>
    <message>
        <source>No temporary item "%1" was applied in this job.</source>
        <translation>In diesem Auftrag wurde kein Hilfsmittel „%1“ angebracht.</translation>
    </message>
    <message>
        <source>No test is recorded: ground runs, functional tests, leak checks of a system. A good test never stands for the inspection of an item.</source>
        <translation>Kein Test ist eingetragen: Standläufe, Funktionstests, Dichtheitsprüfungen eines Systems. Ein guter Test ersetzt nie die Prüfung eines Postens.</translation>
    </message>
    <message>
        <source>No tool "%1" was issued to this job.</source>
        <translation>Für diesen Auftrag wurde kein Werkzeug „%1“ ausgegeben.</translation>
    </message>
    <message>
        <source>No tool is registered. Torque and bonding are measured with registered tools in calibration alone.</source>
        <translation>Es ist kein Werkzeug registriert. Anziehdrehmoment und Masseverbindung werden nur mit registrierten, gültig kalibrierten Werkzeugen gemessen.</translation>
    </message>
    <message>
        <source>No tool may be off by %1 % of its reading. Give the percent of its certificate or standard, such as 4.</source>
        <translation>Kein Werkzeug darf um %1 % seines Messwerts abweichen. Geben Sie den Prozentwert seiner Bescheinigung oder der Norm an, etwa 4.</translation>
    </message>
    <message>
        <source>No tool was issued to this job yet. What is issued is counted at the hold points that ask for it, and stays a loose end until it is returned.</source>
        <translation>Für diesen Auftrag wurde noch kein Werkzeug ausgegeben. Was ausgegeben ist, wird an den Haltepunkten gezählt, die das verlangen, und bleibt eine offene Stelle, bis es zurückgegeben ist.</translation>
    </message>
    <message>
        <source>No tool, rag or loose part is left behind it.</source>
        <translation>Kein Werkzeug, Lappen oder loses Teil ist dahinter zurückgeblieben.</translation>
    </message>
    <message>
        <source>No torque was recorded.</source>
        <translation>Es wurde kein Anziehdrehmoment eingetragen.</translation>
    </message>
    <message>
        <source>No transfer with this code is open. Compare each letter; a code works once, and only until the time that was shown with it. Otherwise make a new one where the key is.</source>
        <translation>Mit diesem Code ist keine Übertragung offen. Vergleichen Sie jeden Buchstaben; ein Code gilt einmal, und nur bis zu der Zeit, die mit ihm angezeigt wurde. Erstellen Sie sonst einen neuen dort, wo der Schlüssel ist.</translation>
    </message>
    <message>
        <source>No weight change is recorded.</source>
        <translation>Es ist keine Gewichtsänderung eingetragen.</translation>
    </message>
    <message>
        <source>No zone</source>
        <translation>Kein Bereich</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>No. %1, %2, %3: %4</source>
        <translation>Nr. %1, %2, %3: %4</translation>
    </message>
    <message>
        <source>No:</source>
        <translation>Nein:</translation>
    </message>
    <message>
        <source>Nobody can know how far another's hands had come.</source>
        <translation>Niemand kann wissen, wie weit die Hände eines anderen gekommen waren.</translation>
    </message>
    <message>
        <source>Nobody can sign for another.</source>
        <translation>Niemand kann für eine andere Person unterschreiben.</translation>
    </message>
    <message>
        <source>Nobody can sign for you, and nobody can read your PIN back to you. A long passphrase protects you better than a short PIN if the file is ever copied.</source>
        <translation>Niemand kann für Sie unterschreiben, und niemand kann Ihnen Ihre PIN wieder nennen. Eine lange Passphrase schützt Sie besser als eine kurze PIN, falls die Datei einmal kopiert wird.</translation>
    </message>
    <message>
        <source>Nobody comes near intake, outlet, propeller or hot parts while it turns, or is pressurised.</source>
        <translation>Niemand nähert sich Einlauf, Auslass, Propeller oder heißen Teilen, solange sich das Triebwerk dreht oder etwas unter Druck steht.</translation>
    </message>
    <message>
        <source>Nobody found %1 still attached.</source>
        <translation>Niemand hat %1 noch verbunden vorgefunden.</translation>
    </message>
    <message>
        <source>Nobody is enrolled as "%1".</source>
        <translation>Niemand ist als „%1“ aufgenommen.</translation>
    </message>
    <message>
        <source>Nobody is enrolled.</source>
        <translation>Niemand ist aufgenommen.</translation>
    </message>
    <message>
        <source>Nobody is signed in</source>
        <translation>Niemand ist angemeldet</translation>
    </message>
    <message>
        <source>Nobody is signed in, so nobody's last entry is meant. Choose the entry on the page Record (Ctrl+6), and strike it there.</source>
        <translation>Niemand ist angemeldet, also ist niemandes letzter Eintrag gemeint. Wählen Sie den Eintrag auf der Seite Nachweis (Strg+6), und streichen Sie ihn dort.</translation>
    </message>
    <message>
        <source>Nobody knows later what became of a bolt of which nothing was said.</source>
        <translation>Niemand weiß später, was aus einem Bolzen wurde, zu dem nichts angegeben war.</translation>
    </message>
    <message>
        <source>Nobody said of %1: "%2".</source>
        <translation>Niemand hat zu %1 angegeben: „%2“.</translation>
    </message>
    <message>
        <source>Nobody said which root it must hang from: compare the fingerprint with the one that the organisation publishes.</source>
        <translation>Niemand hat angegeben, an welcher Wurzel es hängen muss: Vergleichen Sie den Fingerabdruck mit dem, den die Organisation veröffentlicht.</translation>
    </message>
    <message>
        <source>Nobody sees their own mistake; nor the one that they made alike in a linked job, on the other engine say.</source>
        <translation>Niemand sieht den eigenen Fehler; auch nicht den, den man in einem verknüpften Auftrag genauso gemacht hat, etwa am anderen Triebwerk.</translation>
    </message>
    <message>
        <source>Nobody sees what they themselves forgot.</source>
        <translation>Niemand sieht, was er selbst vergessen hat.</translation>
    </message>
    <message>
        <source>Nobody signed anything.</source>
        <translation>Niemand hat etwas unterschrieben.</translation>
    </message>
    <message>
        <source>Nobody stands, walks or reaches under the load, at any moment.</source>
        <translation>Niemand steht, geht oder greift unter die Last, in keinem Augenblick.</translation>
    </message>
    <message>
        <source>Nobody stands, walks or reaches under the unit, and one person alone gives the signals.</source>
        <translation>Niemand steht, geht oder greift unter das Aggregat, und nur eine Person gibt die Zeichen.</translation>
    </message>
    <message>
        <source>Nobody stopped in the middle of %1; there is nothing to take up.</source>
        <translation>Niemand hat mitten in %1 unterbrochen; es gibt nichts aufzunehmen.</translation>
    </message>
    <message>
        <source>Nobody stopped in the middle of something.</source>
        <translation>Niemand hat mitten in einer Arbeit unterbrochen.</translation>
    </message>
    <message>
        <source>Nobody takes off what somebody else put on for their own safety.</source>
        <translation>Niemand entfernt, was jemand anders zur eigenen Sicherheit angebracht hat.</translation>
    </message>
    <message>
        <source>Nobody the register knows took part.</source>
        <translation>Niemand, den das Stammbuch kennt, hat teilgenommen.</translation>
    </message>
    <message>
        <source>Nobody waits for an agreement that %1 is not applicable.</source>
        <translation>Niemand wartet auf eine Zustimmung, dass %1 nicht zutreffend ist.</translation>
    </message>
    <message>
        <source>Nobody with the id %1 is enrolled here.</source>
        <translation>Mit der Kennung %1 ist hier niemand aufgenommen.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>None waits.</source>
        <translation>Keiner wartet.</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>None: one of its own</source>
        <translation>Keiner: ein eigener</translation>
    </message>
    <message>
        <source>Not applicable</source>
        <translation>Nicht zutreffend</translation>
    </message>
    <message>
        <source>Not every blank that was fitted has been removed.</source>
        <translation>Nicht jeder angebrachte Verschluss wurde entfernt.</translation>
    </message>
    <message>
        <source>Not negligible: more than %1 lb at this empty weight. Have the weight record revised.</source>
        <translation>Nicht vernachlässigbar: mehr als %1 lb bei diesem Leergewicht. Lassen Sie die Gewichtsübersicht berichtigen.</translation>
    </message>
    <message>
        <source>Not negligible: the centre of gravity shifts by %1 of the mean aerodynamic chord, which is 0.05 % or more. Have the weight record revised.</source>
        <translation>Nicht vernachlässigbar: Der Schwerpunkt verschiebt sich um %1 der mittleren aerodynamischen Flügeltiefe, das sind 0.05 % oder mehr. Lassen Sie die Gewichtsübersicht berichtigen.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Not now, for %1. Lock (Ctrl+L) to let somebody else sign.</source>
        <translation>Jetzt nicht, für %1. Sperren Sie (Strg+L), damit jemand anders unterschreiben kann.</translation>
    </message>
    <message>
        <source>Not on parts that are hot, under pressure or turning, and with the circuits nearby isolated and tagged.</source>
        <translation>Nicht an Teilen, die heiß sind, unter Druck stehen oder sich drehen, und nur, wenn die Stromkreise in der Nähe freigeschaltet und mit Anhängern versehen sind.</translation>
    </message>
    <message>
        <source>Not so yet: %1</source>
        <translation>Noch nicht so: %1</translation>
    </message>
    <message>
        <source>Not verified yet.</source>
        <translation>Noch nicht verifiziert.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Notes:</source>
        <translation>Hinweise:</translation>
    </message>
    <message>
        <source>Nothing came between.</source>
        <translation>Dazwischen kam nichts hinzu.</translation>
    </message>
    <message>
        <source>Nothing can be written into that folder (%1). Choose another one.</source>
        <translation>In diesen Ordner kann nichts geschrieben werden (%1). Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>Nothing else is open.</source>
        <translation>Sonst ist nichts offen.</translation>
    </message>
    <message>
        <source>Nothing is damp or stained.</source>
        <translation>Nichts ist feucht oder fleckig.</translation>
    </message>
    <message>
        <source>Nothing is deferred, so this closure is not limited. Leave the limitation out.</source>
        <translation>Nichts ist zurückgestellt, also ist dieser Abschluss nicht eingeschränkt. Lassen Sie die Einschränkung weg.</translation>
    </message>
    <message>
        <source>Nothing is filled in beforehand. The working stands here as soon as these are known:&#xa;%1</source>
        <translation>Nichts ist im Voraus ausgefüllt. Der Rechenweg steht hier, sobald Folgendes bekannt ist:&#xa;%1</translation>
    </message>
    <message>
        <source>Nothing is loose</source>
        <translation>Nichts ist offen</translation>
    </message>
    <message>
        <source>Nothing is loose.</source>
        <translation>Nichts ist offen.</translation>
    </message>
    <message>
        <source>Nothing is off. Whatever is disconnected comes here, for a second person to look at before the mounts are released.</source>
        <translation>Nichts ist gelöst. Was getrennt wird, kommt hierher, damit eine zweite Person es ansieht, bevor die Aufhängungen gelöst werden.</translation>
    </message>
    <message>
        <source>Nothing is off. Whatever is disconnected comes here, what came off last first.</source>
        <translation>Nichts ist gelöst. Was getrennt wird, kommt hierher, das zuletzt Gelöste zuerst.</translation>
    </message>
    <message>
        <source>Nothing is on.</source>
        <translation>Nichts ist angebracht.</translation>
    </message>
    <message>
        <source>Nothing is open or half done.</source>
        <translation>Nichts ist offen oder halb erledigt.</translation>
    </message>
    <message>
        <source>Nothing is out.</source>
        <translation>Nichts ist ausgegeben.</translation>
    </message>
    <message>
        <source>Nothing of it was so</source>
        <translation>Nichts davon war so</translation>
    </message>
    <message>
        <source>Nothing waits for inspection. Items come here when everything that restoring them must show has been shown.</source>
        <translation>Nichts wartet auf Prüfung. Posten kommen hierher, wenn alles nachgewiesen ist, was ihre Wiederherstellung nachweisen muss.</translation>
    </message>
    <message>
        <source>Nothing was applied in this job yet: isolations, warning tags, safety pins, blanks, hoist, sling, stand, platform. What is applied stays a loose end until it is removed.</source>
        <translation>In diesem Auftrag wurde noch nichts angebracht: Freischaltungen, Warnanhänger, Sicherungsstifte, Verschlüsse, Hebezeug, Anschlagmittel, Ständer, Arbeitsbühne. Was angebracht ist, bleibt eine offene Stelle, bis es entfernt ist.</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Es wurde nichts gefunden.</translation>
    </message>
    <message>
        <source>Nothing was handed on. An item is sent from the list, and taken on here.</source>
        <translation>Es wurde nichts weitergegeben. Ein Posten wird aus der Liste gesendet und hier übernommen.</translation>
    </message>
    <message>
        <source>Nothing was looked for.</source>
        <translation>Es wurde nichts gesucht.</translation>
    </message>
    <message>
        <source>Nothing was printed. Look whether the printer is there and switched on, or choose another file.</source>
        <translation>Es wurde nichts gedruckt. Sehen Sie nach, ob der Drucker vorhanden und eingeschaltet ist, oder wählen Sie eine andere Datei.</translation>
    </message>
    <message>
        <source>Nothing was said of its hardware.</source>
        <translation>Über das Befestigungsmaterial wurde nichts gesagt.</translation>
    </message>
    <message>
        <source>Nothing was signed. %1</source>
        <translation>Es wurde nichts unterschrieben. %1</translation>
    </message>
    <message>
        <source>Nothing was verified</source>
        <translation>Es wurde nichts verifiziert</translation>
    </message>
    <message>
        <source>Nothing was written, since the record would say what nobody signed, or what was not allowed. Faults: %1; the first (%2): %3 Verify the store to see them all, keep its file as it is, and ask whoever looks after the records.</source>
        <translation>Es wurde nichts geschrieben, da der Nachweis sonst angäbe, was niemand unterschrieben hat oder was nicht erlaubt war. Fehler: %1; der erste (%2): %3 Verifizieren Sie die Ablage, um alle zu sehen, lassen Sie ihre Datei, wie sie ist, und fragen Sie, wer die Nachweise verwaltet.</translation>
    </message>
    <message>
        <source>Nothing would hang on %1: the centre of gravity lies under the other, and the load can tip.</source>
        <translation>An einem Punkt (%1) hinge nichts: Der Schwerpunkt liegt unter dem anderen, und die Last kann kippen.</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Noch nichts.</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Number of its tag or collar</source>
        <translation>Nummer des Anhängers oder Sperrkragens</translation>
    </message>
    <message>
        <source>Number of lifting points</source>
        <translation>Anzahl der Anschlagpunkte</translation>
    </message>
    <message>
        <source>Number or hash of the earlier entry</source>
        <translation>Nummer oder Prüfsumme des früheren Eintrags</translation>
    </message>
    <message>
        <source>Number or hash of the later one; empty: the last</source>
        <translation>Nummer oder Prüfsumme des späteren; leer: der letzte</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>OFF</source>
        <translation>AB</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation>OFFEN</translation>
    </message>
    <message>
        <source>OWN WORK inspected again</source>
        <translation>EIGENE ARBEIT erneut geprüft</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>Wovon</translation>
    </message>
    <message>
        <source>Of %1 the list asks for %2. It asks for 1 to %3 of a part.</source>
        <translation>Von %1 verlangt die Liste %2. Sie verlangt 1 bis %3 von einem Teil.</translation>
    </message>
    <message>
        <source>Of no listed interface</source>
        <translation>Zu keinem aufgeführten Anschluss</translation>
    </message>
    <message>
        <source>Of the empty weight, by what the aircraft weighs empty. The source has no band for exactly 5000 lb and 50000 lb.</source>
        <translation>Vom Leergewicht, nach dem, was das Luftfahrzeug leer wiegt. Die Quelle hat keinen Bereich für genau 5000 lb und 50000 lb.</translation>
    </message>
    <message>
        <source>Of the finding</source>
        <translation>Zum Befund</translation>
    </message>
    <message>
        <source>Of these struck</source>
        <translation>Davon gestrichen</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>Wovon</translation>
    </message>
    <message>
        <source>Off before it</source>
        <translation>Vorher zu lösen</translation>
    </message>
    <message>
        <source>Off before this one</source>
        <translation>Vor diesem zu lösen</translation>
    </message>
    <message>
        <source>Oil is hot after a run, may be under pressure and harms the skin; on hot parts it burns. Let it cool, release the pressure, catch what drains and wear protection, as the approved maintenance data and the local rules say.</source>
        <translation>Öl ist nach einem Lauf heiß, kann unter Druck stehen und schadet der Haut; auf heißen Teilen brennt es. Lassen Sie es abkühlen, lassen Sie den Druck ab, fangen Sie auf, was abläuft, und tragen Sie Schutz, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Oil line</source>
        <translation>Ölleitung</translation>
    </message>
    <message>
        <source>Old and new lie on one table, and look alike.</source>
        <translation>Alt und Neu liegen auf einem Tisch und sehen gleich aus.</translation>
    </message>
    <message>
        <source>On no list</source>
        <translation>In keiner Liste</translation>
    </message>
    <message>
        <source>On the interface</source>
        <translation>Am Anschluss</translation>
    </message>
    <message>
        <source>On, and must come off</source>
        <translation>Angebracht, muss wieder ab</translation>
    </message>
    <message>
        <source>Once the nut has seated, nobody can measure its drag.</source>
        <translation>Sitzt die Mutter einmal auf, kann niemand mehr ihr Klemmdrehmoment messen.</translation>
    </message>
    <message>
        <source>One a line, with its technician after a colon: Left: Ana</source>
        <translation>Einer je Zeile, mit dem Mechaniker nach einem Doppelpunkt: Links: Ana</translation>
    </message>
    <message>
        <source>One answer to one question.</source>
        <translation>Eine Antwort auf eine Frage.</translation>
    </message>
    <message>
        <source>One file holds the people, the tools and all jobs of an organisation. You become its first administrator.</source>
        <translation>Eine Datei enthält die Personen, die Werkzeuge und alle Aufträge einer Organisation. Sie werden deren erster Administrator.</translation>
    </message>
    <message>
        <source>One half alone cannot be seen to be crossed.</source>
        <translation>An einer Hälfte allein sieht man nicht, dass sie vertauscht ist.</translation>
    </message>
    <message>
        <source>One id, one interface.</source>
        <translation>Eine Kennung, ein Anschluss.</translation>
    </message>
    <message>
        <source>One key under two names would let one person inspect their own work.</source>
        <translation>Ein Schlüssel unter zwei Namen ließe eine Person die eigene Arbeit prüfen.</translation>
    </message>
    <message>
        <source>One ledger tells one job.</source>
        <translation>Ein Buch erzählt einen Auftrag.</translation>
    </message>
    <message>
        <source>One leg on one lifting point hangs straight down, or it pulls the load aside. Give 90°, or tell the second point.</source>
        <translation>Ein Strang an einem Anschlagpunkt hängt senkrecht, oder er zieht die Last zur Seite. Geben Sie 90° an, oder nennen Sie den zweiten Punkt.</translation>
    </message>
    <message>
        <source>One loss, one finding.</source>
        <translation>Ein Verlust, ein Befund.</translation>
    </message>
    <message>
        <source>One marking, one tool.</source>
        <translation>Eine Kennzeichnung, ein Werkzeug.</translation>
    </message>
    <message>
        <source>One number, one finding.</source>
        <translation>Eine Nummer, ein Befund.</translation>
    </message>
    <message>
        <source>One page, on what</source>
        <translation>Eine Seite, worauf</translation>
    </message>
    <message>
        <source>One person answers for a shift.</source>
        <translation>Eine Person ist für eine Schicht verantwortlich.</translation>
    </message>
    <message>
        <source>One person's mistake must not take a critical interface off the list.</source>
        <translation>Der Fehler einer einzelnen Person darf keinen kritischen Anschluss von der Liste nehmen.</translation>
    </message>
    <message>
        <source>One place, one unit.</source>
        <translation>Ein Platz, ein Aggregat.</translation>
    </message>
    <message>
        <source>One reading a fastener, and every fastener named.</source>
        <translation>Ein Messwert je Verbindungselement, und jedes Verbindungselement benannt.</translation>
    </message>
    <message>
        <source>One signature is one person's. Sign each person's entries apart.</source>
        <translation>Eine Unterschrift gehört einer Person. Unterschreiben Sie die Einträge jeder Person getrennt.</translation>
    </message>
    <message>
        <source>One step of its scale</source>
        <translation>Ein Schritt seiner Skala</translation>
    </message>
    <message>
        <source>One store, one root of trust.</source>
        <translation>Eine Ablage, eine Wurzel des Vertrauens.</translation>
    </message>
    <message>
        <source>One twist is half a turn. Sources differ, for the ends of the wire as well.</source>
        <translation>Eine Verdrillung ist eine halbe Umdrehung. Die Quellen weichen voneinander ab, auch bei den Drahtenden.</translation>
    </message>
    <message>
        <source>Only a person can be authorised.</source>
        <translation>Nur eine Person kann berechtigt sein.</translation>
    </message>
    <message>
        <source>Only a person with release authority may say that the aircraft part of the job is complete.</source>
        <translation>Nur eine Person mit Freigabebefugnis darf sagen, dass der Luftfahrzeugteil des Auftrags vollständig ist.</translation>
    </message>
    <message>
        <source>Only damage raises a finding here. Leave its number out, or raise a finding of its own.</source>
        <translation>Hier führt nur ein Schaden zu einem Befund. Lassen Sie dessen Nummer weg oder melden Sie einen eigenen Befund.</translation>
    </message>
    <message>
        <source>Only if somebody else may have had the old key: 2026-03-02T08:14:00Z</source>
        <translation>Nur wenn jemand anders den alten Schlüssel gehabt haben kann: 2026-03-02T08:14:00Z</translation>
    </message>
    <message>
        <source>Only the lead of this job may do this; that is %1.</source>
        <translation>Nur der Leiter dieses Auftrags darf das tun; das ist %1.</translation>
    </message>
    <message>
        <source>Only the lead of this job sets hold points; that is %1.</source>
        <translation>Nur der Leiter dieses Auftrags setzt Haltepunkte; das ist %1.</translation>
    </message>
    <message>
        <source>Only what counts can be taken back.</source>
        <translation>Nur was gilt, kann zurückgenommen werden.</translation>
    </message>
    <message>
        <source>Only what holds is imported.</source>
        <translation>Importiert wird nur, was stimmt.</translation>
    </message>
    <message>
        <source>Only what hung can be lost.</source>
        <translation>Nur was hing, kann verloren gehen.</translation>
    </message>
    <message>
        <source>Only what is deferred has a last day. Leave it out, or defer the finding.</source>
        <translation>Nur Zurückgestelltes hat einen letzten Tag. Lassen Sie ihn weg, oder stellen Sie den Befund zurück.</translation>
    </message>
    <message>
        <source>Only what is on comes off.</source>
        <translation>Nur was angebracht ist, kommt ab.</translation>
    </message>
    <message>
        <source>Only what was counted out can be counted in.</source>
        <translation>Nur was hinausgezählt wurde, kann hereingezählt werden.</translation>
    </message>
    <message>
        <source>Only what was fitted can be missing.</source>
        <translation>Nur was angebracht war, kann fehlen.</translation>
    </message>
    <message>
        <source>Only what went out comes back.</source>
        <translation>Nur was hinausging, kommt zurück.</translation>
    </message>
    <message>
        <source>Only when</source>
        <translation>Nur wenn</translation>
    </message>
    <message>
        <source>Open %1 and show %2</source>
        <translation>%1 öffnen und %2 zeigen</translation>
    </message>
    <message>
        <source>Open a job first</source>
        <translation>Zuerst einen Auftrag öffnen</translation>
    </message>
    <message>
        <source>Open a job first.</source>
        <translation>Öffnen Sie zuerst einen Auftrag.</translation>
    </message>
    <message>
        <source>Open a new job with its work order, aircraft, maintenance data, unit and crew. Then import the list of interfaces.</source>
        <translation>Eröffnen Sie einen neuen Auftrag mit Arbeitsauftrag, Luftfahrzeug, Instandhaltungsunterlagen, Aggregat und Mannschaft. Importieren Sie dann die Liste der Anschlüsse.</translation>
    </message>
    <message>
        <source>Open a store</source>
        <translation>Ablage öffnen</translation>
    </message>
    <message>
        <source>Open and half done</source>
        <translation>Offen und halb erledigt</translation>
    </message>
    <message>
        <source>Open and half done at each handover</source>
        <translation>Offen und halb erledigt bei jeder Übergabe</translation>
    </message>
    <message>
        <source>Open another job?</source>
        <translation>Einen anderen Auftrag öffnen?</translation>
    </message>
    <message>
        <source>Open now, by zone</source>
        <translation>Jetzt offen, nach Bereich</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Auftrag eröffnen</translation>
    </message>
    <message>
        <source>Open the job and sign</source>
        <translation>Auftrag eröffnen und unterschreiben</translation>
    </message>
    <message>
        <source>Open the job of the label first</source>
        <translation>Zuerst den Auftrag des Etiketts öffnen</translation>
    </message>
    <message>
        <source>Open the other job</source>
        <translation>Den anderen Auftrag öffnen</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Eröffnet</translation>
    </message>
    <message>
        <source>Openings blanked on it</source>
        <translation>Daran verschlossene Öffnungen</translation>
    </message>
    <message>
        <source>Or drop its file onto this window.</source>
        <translation>Oder ziehen Sie die Datei auf dieses Fenster.</translation>
    </message>
    <message>
        <source>Or drop photos on this page. None is taken before its entry is signed.</source>
        <translation>Oder legen Sie Fotos auf dieser Seite ab. Keines ist übernommen, bevor sein Eintrag unterschrieben ist.</translation>
    </message>
    <message>
        <source>Or told by</source>
        <translation>Oder erkennbar an</translation>
    </message>
    <message>
        <source>Order and passes of a ring</source>
        <translation>Reihenfolge und Durchgänge eines Rings</translation>
    </message>
    <message>
        <source>Order of the fasteners</source>
        <translation>Reihenfolge der Verbindungselemente</translation>
    </message>
    <message>
        <source>Order, least first</source>
        <translation>Reihenfolge, kleinste zuerst</translation>
    </message>
    <message>
        <source>Organisation</source>
        <translation>Organisation</translation>
    </message>
    <message>
        <source>Other jobs that are parts of this work</source>
        <translation>Andere Aufträge, die Teile dieser Arbeit sind</translation>
    </message>
    <message>
        <source>Others kept adding entries to this ledger. Nothing was signed. Try again.</source>
        <translation>Andere fügten diesem Buch immer wieder Einträge hinzu. Es wurde nichts unterschrieben. Versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>Others may read the secret of this station. Close it to them (chmod 600 %1) and consider it seen: the manual says what then.</source>
        <translation>Andere können das Geheimnis dieses Arbeitsplatzes lesen. Sperren Sie es für sie (chmod 600 %1), und betrachten Sie es als gesehen: Das Handbuch sagt, was dann zu tun ist.</translation>
    </message>
    <message>
        <source>Others rely on what was handed on as it was handed on.</source>
        <translation>Andere verlassen sich auf das Weitergegebene, so wie es weitergegeben wurde.</translation>
    </message>
    <message>
        <source>Out and not counted: %1.</source>
        <translation>Ausgegeben und nicht gezählt: %1.</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Außer der Reihenfolge</translation>
    </message>
    <message>
        <source>Outgoing serial number</source>
        <translation>Seriennummer, ausgehend</translation>
    </message>
    <message>
        <source>Outgoing unit</source>
        <translation>Ausgehendes Aggregat</translation>
    </message>
    <message>
        <source>Outgoing unit off</source>
        <translation>Ausgehendes Aggregat ausgebaut</translation>
    </message>
    <message>
        <source>Outgoing unit taken off</source>
        <translation>Ausgehendes Aggregat ausgebaut</translation>
    </message>
    <message>
        <source>Own work inspected again and accepted</source>
        <translation>Eigene Arbeit erneut geprüft und angenommen</translation>
    </message>
    <message>
        <source>P&amp;rint …</source>
        <translation>D&amp;rucken …</translation>
    </message>
    <message>
        <source>P&amp;rogress …</source>
        <translation>&amp;Fortschritt …</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>PDF on A4</source>
        <translation>PDF auf A4</translation>
    </message>
    <message>
        <source>PDF on Letter</source>
        <translation>PDF auf Letter</translation>
    </message>
    <message>
        <source>PDF, CSV and labels were not compared, since the entries that they are made of do not hold together.</source>
        <translation>PDF, CSV und Etiketten wurden nicht verglichen, da die Einträge, aus denen sie gemacht sind, nicht zusammenpassen.</translation>
    </message>
    <message>
        <source>PIN or passphrase</source>
        <translation>PIN oder Passphrase</translation>
    </message>
    <message>
        <source>PRINTED, NOT THE RECORD. What was signed since is not on it. The approved maintenance data governs.</source>
        <translation>GEDRUCKT, NICHT DER NACHWEIS. Seither Unterschriebenes steht nicht darauf. Maßgeblich sind die genehmigten Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>Package %1: work order %2. It is kept apart from this store's jobs and never worked on.</source>
        <translation>Paket %1: Arbeitsauftrag %2. Es wird getrennt von den Aufträgen dieser Ablage aufbewahrt und nie bearbeitet.</translation>
    </message>
    <message>
        <source>Packing the record</source>
        <translation>Nachweis wird gepackt</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Papierformat</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>Parts and tools</source>
        <translation>Teile und Werkzeuge</translation>
    </message>
    <message>
        <source>Parts, tools</source>
        <translation>Teile, Werkzeuge</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Durchgang</translation>
    </message>
    <message>
        <source>Pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>Pass %1 of %2 is not finished: %3 comes next.</source>
        <translation>Durchgang %1 von %2 ist nicht abgeschlossen: %3 ist als Nächstes dran.</translation>
    </message>
    <message>
        <source>Pass the hold point</source>
        <translation>Haltepunkt passieren</translation>
    </message>
    <message>
        <source>Passed before: %1.</source>
        <translation>Vorher passiert: %1.</translation>
    </message>
    <message>
        <source>Passed by</source>
        <translation>Passiert durch</translation>
    </message>
    <message>
        <source>Passed, and not void since: %1.</source>
        <translation>Bestanden und seither nicht hinfällig: %1.</translation>
    </message>
    <message>
        <source>Passes bring the faces together evenly.</source>
        <translation>Durchgänge bringen die Flächen gleichmäßig zusammen.</translation>
    </message>
    <message>
        <source>Passes of tightening</source>
        <translation>Durchgänge des Anziehens</translation>
    </message>
    <message>
        <source>Passes, percent of the final torque</source>
        <translation>Durchgänge, Prozent des Enddrehmoments</translation>
    </message>
    <message>
        <source>Paste (Ctrl+V)</source>
        <translation>Einfügen (Strg+V)</translation>
    </message>
    <message>
        <source>Pasted picture</source>
        <translation>Eingefügtes Bild</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>People and their authorisations</source>
        <translation>Personen und ihre Berechtigungen</translation>
    </message>
    <message>
        <source>People and tools</source>
        <translation>Personen und Werkzeuge</translation>
    </message>
    <message>
        <source>People fall from platforms, and tools from them on people. Lock it, rail it, and keep it clear of the unit's way. Work as the approved maintenance data and the local rules say.</source>
        <translation>Personen stürzen von Arbeitsbühnen, und Werkzeuge fallen von ihnen auf Personen. Stellen Sie die Bühne fest, versehen Sie sie mit Geländer, und halten Sie sie aus dem Weg des Aggregats. Arbeiten Sie, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>Perimeter</source>
        <translation>Umriss</translation>
    </message>
    <message>
        <source>Permissible deviation, % of the reading</source>
        <translation>Zulässige Abweichung, % vom Messwert</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Person enrolled</source>
        <translation>Person aufgenommen</translation>
    </message>
    <message>
        <source>Phase and terminal marks agree at both ends.</source>
        <translation>Phasen- und Klemmenkennzeichnung stimmen an beiden Enden überein.</translation>
    </message>
    <message>
        <source>Photo attached</source>
        <translation>Foto angehängt</translation>
    </message>
    <message>
        <source>Photo marked</source>
        <translation>Foto markiert</translation>
    </message>
    <message>
        <source>Photo on the left</source>
        <translation>Foto links</translation>
    </message>
    <message>
        <source>Photo on the right</source>
        <translation>Foto rechts</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Photos of %1</source>
        <translation>Fotos von %1</translation>
    </message>
    <message>
        <source>Photos of the chosen interface</source>
        <translation>Fotos des gewählten Anschlusses</translation>
    </message>
    <message>
        <source>Photos that come into %1 from now on are asked about here.</source>
        <translation>Nach Fotos, die von jetzt an in %1 ankommen, wird hier gefragt.</translation>
    </message>
    <message>
        <source>Picture of how many interfaces were undone and not inspected over time</source>
        <translation>Bild, wie viele Anschlüsse im Lauf der Zeit gelöst und nicht geprüft waren</translation>
    </message>
    <message>
        <source>Picture of the lift</source>
        <translation>Bild des Hebevorgangs</translation>
    </message>
    <message>
        <source>Picture of who signed what when; the table below says the same</source>
        <translation>Bild, wer was wann unterschrieb; die Tabelle darunter sagt dasselbe</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Bilder (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Pieces counted, of a kit</source>
        <translation>Gezählte Stücke, bei einem Satz</translation>
    </message>
    <message>
        <source>Pieces, of a kit</source>
        <translation>Stücke, bei einem Satz</translation>
    </message>
    <message>
        <source>Pla&amp;ce marks</source>
        <translation>Markierungen &amp;setzen</translation>
    </message>
    <message>
        <source>Plan a lift</source>
        <translation>Hebevorgang planen</translation>
    </message>
    <message>
        <source>Platform</source>
        <translation>Arbeitsbühne</translation>
    </message>
    <message>
        <source>Playing the demo: people, tools, one engine change</source>
        <translation>Vorführung wird abgespielt: Personen, Werkzeuge, ein Triebwerkswechsel</translation>
    </message>
    <message>
        <source>Points: ISO 6789-1:2017, lowest marked value, 60 and 100 % (from memory)</source>
        <translation>Prüfpunkte: ISO 6789-1:2017, kleinster markierter Wert, 60 und 100 % (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>Points: ISO 6789:2003, 20, 60 and 100 % of the greatest torque</source>
        <translation>Prüfpunkte: ISO 6789:2003, 20, 60 und 100 % des größten Drehmoments</translation>
    </message>
    <message>
        <source>Positioned</source>
        <translation>Positioniert</translation>
    </message>
    <message>
        <source>Power cable</source>
        <translation>Stromkabel</translation>
    </message>
    <message>
        <source>Pressure and return are not crossed.</source>
        <translation>Druck und Rücklauf sind nicht vertauscht.</translation>
    </message>
    <message>
        <source>Print all of it on one page</source>
        <translation>Alles auf eine Seite drucken</translation>
    </message>
    <message>
        <source>Print the calculation</source>
        <translation>Berechnung drucken</translation>
    </message>
    <message>
        <source>Print the perimeter</source>
        <translation>Umriss drucken</translation>
    </message>
    <message>
        <source>Printed</source>
        <translation>Gedruckt</translation>
    </message>
    <message>
        <source>Printed name</source>
        <translation>Name in Druckschrift</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Public key</source>
        <translation>Öffentlicher Schlüssel</translation>
    </message>
    <message>
        <source>Published figures, each with its source. Nothing is filled in unasked.</source>
        <translation>Veröffentlichte Werte, jeder mit seiner Quelle. Nichts wird ungefragt ausgefüllt.</translation>
    </message>
    <message>
        <source>Pull at the middle of the grip: the arm is measured from there. No pipe on the handle.</source>
        <translation>Ziehen Sie in der Mitte des Griffs: Von dort wird der Hebelarm gemessen. Kein Rohr auf den Griff.</translation>
    </message>
    <message>
        <source>Put on stand</source>
        <translation>Auf Ständer abgesetzt</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Quantity with its unit</source>
        <translation>Größe mit ihrer Einheit</translation>
    </message>
    <message>
        <source>REFUSED by %1: %2</source>
        <translation>ABGELEHNT von %1: %2</translation>
    </message>
    <message>
        <source>REFUSED: %1</source>
        <translation>ABGELEHNT: %1</translation>
    </message>
    <message>
        <source>Rails, brakes and floor are sound, and nothing lies loose on it.</source>
        <translation>Geländer, Bremsen und Boden sind in Ordnung, und nichts liegt lose darauf.</translation>
    </message>
    <message>
        <source>Raise a finding</source>
        <translation>Befund melden</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation>Gemeldet</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Rate</translation>
    </message>
    <message>
        <source>Rate of a leak</source>
        <translation>Rate einer Leckage</translation>
    </message>
    <message>
        <source>Rate seen</source>
        <translation>Gesehene Rate</translation>
    </message>
    <message>
        <source>Re&amp;move the mark</source>
        <translation>Markierung &amp;entfernen</translation>
    </message>
    <message>
        <source>Read the liquid's name on the can and on the filler: the wrong one in the right quantity is no servicing.</source>
        <translation>Lesen Sie den Namen der Flüssigkeit auf der Dose und am Einfüllstutzen: Die falsche in der richtigen Menge ist keine ordnungsgemäße Befüllung.</translation>
    </message>
    <message>
        <source>Read was "%1" joined to "%2", and the list has no such pair. Read again; if it is so, they are crossed: undo them.</source>
        <translation>Gelesen wurde „%1“ verbunden mit „%2“, und die Liste hat kein solches Paar. Lesen Sie noch einmal; ist es so, dann sind sie vertauscht: Lösen Sie sie.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Reading of a torque wrench</source>
        <translation>Ablesung eines Drehmomentschlüssels</translation>
    </message>
    <message>
        <source>Readings are accepted with a guard band here, and the register does not say what this tool may be off. Take another tool, or have its deviation registered.</source>
        <translation>Messwerte werden hier mit Sicherheitsabstand angenommen, und im Stammbuch steht nicht, um wie viel dieses Werkzeug abweichen darf. Nehmen Sie ein anderes Werkzeug, oder lassen Sie seine Abweichung registrieren.</translation>
    </message>
    <message>
        <source>Readings are checked against the range, so it must be one.</source>
        <translation>Messwerte werden gegen den Bereich geprüft, also muss er einer sein.</translation>
    </message>
    <message>
        <source>Readings near an edge</source>
        <translation>Messwerte nahe einer Grenze</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Receive the unit</source>
        <translation>Aggregat annehmen</translation>
    </message>
    <message>
        <source>Recent stores</source>
        <translation>Zuletzt geöffnete Ablagen</translation>
    </message>
    <message>
        <source>Reconnect</source>
        <translation>Wieder anschließen</translation>
    </message>
    <message>
        <source>Reconnected</source>
        <translation>Wieder angeschlossen</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Nachweis</translation>
    </message>
    <message>
        <source>Record %1 as the &amp;setting</source>
        <translation>%1 als &amp;Einstellung eintragen</translation>
    </message>
    <message>
        <source>Record a &amp;calibration …</source>
        <translation>&amp;Kalibrierung eintragen …</translation>
    </message>
    <message>
        <source>Record a calibration</source>
        <translation>Kalibrierung eintragen</translation>
    </message>
    <message>
        <source>Record a test</source>
        <translation>Test eintragen</translation>
    </message>
    <message>
        <source>Record of a unit change</source>
        <translation>Nachweis über einen Aggregatwechsel</translation>
    </message>
    <message>
        <source>Record of a unit change: %1</source>
        <translation>Nachweis über einen Aggregatwechsel: %1</translation>
    </message>
    <message>
        <source>Record package (*.zip)</source>
        <translation>Nachweispaket (*.zip)</translation>
    </message>
    <message>
        <source>Record packages (*.zip);;All files (*)</source>
        <translation>Nachweispakete (*.zip);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Record servicing</source>
        <translation>Befüllung eintragen</translation>
    </message>
    <message>
        <source>Record the weight change</source>
        <translation>Gewichtsänderung eintragen</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Eingetragen</translation>
    </message>
    <message>
        <source>Records of other stores, kept as they came: to be looked at, never worked on. Each hangs from its own root.</source>
        <translation>Nachweise anderer Ablagen, aufbewahrt wie eingegangen: zum Ansehen, nie zum Bearbeiten. Jeder hängt an seiner eigenen Wurzel.</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>Refuse the handover</source>
        <translation>Übergabe ablehnen</translation>
    </message>
    <message>
        <source>Register a tool</source>
        <translation>Werkzeug registrieren</translation>
    </message>
    <message>
        <source>Register as last pinned</source>
        <translation>Stammbuch, wie zuletzt festgelegt</translation>
    </message>
    <message>
        <source>Register founded</source>
        <translation>Stammbuch angelegt</translation>
    </message>
    <message>
        <source>Register, %1: entries %2</source>
        <translation>Stammbuch, %1: Einträge %2</translation>
    </message>
    <message>
        <source>Reject</source>
        <translation>Zurückweisen</translation>
    </message>
    <message>
        <source>Rejected</source>
        <translation>Zurückgewiesen</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>Release certificate</source>
        <translation>Freigabebescheinigung</translation>
    </message>
    <message>
        <source>Release statement</source>
        <translation>Freigabeerklärung</translation>
    </message>
    <message>
        <source>Released by %1 on %2 with entry %3.</source>
        <translation>Freigegeben von %1 am %2 mit Eintrag %3.</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Remate</source>
        <translation>Remate</translation>
    </message>
    <message>
        <source>Remate %1</source>
        <translation>Remate %1</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove row</source>
        <translation>Zeile entfernen</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Entfernt</translation>
    </message>
    <message>
        <source>Removed, every one of them: %1.</source>
        <translation>Entfernt, jedes davon: %1.</translation>
    </message>
    <message>
        <source>Removed: %1</source>
        <translation>Ausgebaut: %1</translation>
    </message>
    <message>
        <source>Removes the row that is chosen.</source>
        <translation>Entfernt die gewählte Zeile.</translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation>Erneuert</translation>
    </message>
    <message>
        <source>Replace a lost tag</source>
        <translation>Anhänger ersetzen</translation>
    </message>
    <message>
        <source>Replace and sign</source>
        <translation>Ersetzen und unterschreiben</translation>
    </message>
    <message>
        <source>Replace the key</source>
        <translation>Schlüssel ersetzen</translation>
    </message>
    <message>
        <source>Required</source>
        <translation>Erforderlich</translation>
    </message>
    <message>
        <source>Requirements</source>
        <translation>Anforderungen</translation>
    </message>
    <message>
        <source>Resistance, R</source>
        <translation>Widerstand, R</translation>
    </message>
    <message>
        <source>Restored</source>
        <translation>Wiederhergestellt</translation>
    </message>
    <message>
        <source>Restored at</source>
        <translation>Wiederhergestellt um</translation>
    </message>
    <message>
        <source>Restored by</source>
        <translation>Wiederhergestellt von</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Result in %1, y</source>
        <translation>Ergebnis in %1, y</translation>
    </message>
    <message>
        <source>Return tags</source>
        <translation>Anhänger zurückgeben</translation>
    </message>
    <message>
        <source>Return the tool</source>
        <translation>Werkzeug zurückgeben</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Zurückgegeben</translation>
    </message>
    <message>
        <source>Reused</source>
        <translation>Wiederverwendet</translation>
    </message>
    <message>
        <source>Revised</source>
        <translation>Revidiert</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Revision</translation>
    </message>
    <message>
        <source>Rigging is checked after it was disturbed.</source>
        <translation>Die Einstellung (Rigging) wird geprüft, nachdem sie verändert wurde.</translation>
    </message>
    <message>
        <source>Right point</source>
        <translation>Rechter Punkt</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Wurzel</translation>
    </message>
    <message>
        <source>Root %1</source>
        <translation>Wurzel %1</translation>
    </message>
    <message>
        <source>Root of the register</source>
        <translation>Wurzel des Stammbuchs</translation>
    </message>
    <message>
        <source>Rounded, half away from zero, as it was written; nothing was rounded before.</source>
        <translation>Gerundet, halbe von null weg, wie es geschrieben wurde; vorher wurde nichts gerundet.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Row %1 of the ledger %2 is damaged: its content was changed after it was recorded. Verify the store, and keep the backup that you have.</source>
        <translation>Zeile %1 des Buchs %2 ist beschädigt: Ihr Inhalt wurde nach dem Eintragen geändert. Verifizieren Sie die Ablage, und behalten Sie die vorhandene Sicherungskopie.</translation>
    </message>
    <message>
        <source>Rows of the list</source>
        <translation>Zeilen der Liste</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Rules of a job</source>
        <translation>Regeln eines Auftrags</translation>
    </message>
    <message>
        <source>Rules of the register</source>
        <translation>Regeln des Stammbuchs</translation>
    </message>
    <message>
        <source>S&amp;omebody else</source>
        <translation>&amp;Jemand anders</translation>
    </message>
    <message>
        <source>SENT AWAY, not taken on</source>
        <translation>WEGGESENDET, nicht übernommen</translation>
    </message>
    <message>
        <source>STANDS</source>
        <translation>GILT</translation>
    </message>
    <message>
        <source>STILL APPLIED</source>
        <translation>NOCH ANGEBRACHT</translation>
    </message>
    <message>
        <source>STILL DUE</source>
        <translation>NOCH FÄLLIG</translation>
    </message>
    <message>
        <source>STILL OUT</source>
        <translation>NOCH AUSGEGEBEN</translation>
    </message>
    <message>
        <source>STOPPED HERE</source>
        <translation>HIER UNTERBROCHEN</translation>
    </message>
    <message>
        <source>Sa&amp;mple …</source>
        <translation>Stichp&amp;robe …</translation>
    </message>
    <message>
        <source>Safetied</source>
        <translation>Sicherung angebracht</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sichern</translation>
    </message>
    <message>
        <source>Safety pin</source>
        <translation>Sicherungsstift</translation>
    </message>
    <message>
        <source>Safetying</source>
        <translation>Sicherung</translation>
    </message>
    <message>
        <source>Safetying needs its method: lockwire, cotter pin, lock.</source>
        <translation>Die Sicherung braucht ihr Verfahren: Sicherungsdraht, Splint, Sicherungselement.</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Stichprobe</translation>
    </message>
    <message>
        <source>Sample of the work</source>
        <translation>Stichprobe der Arbeit</translation>
    </message>
    <message>
        <source>Sample of the work: %1</source>
        <translation>Stichprobe der Arbeit: %1</translation>
    </message>
    <message>
        <source>Save the calculation</source>
        <translation>Berechnung speichern</translation>
    </message>
    <message>
        <source>Save the package</source>
        <translation>Paket speichern</translation>
    </message>
    <message>
        <source>Save the verdict</source>
        <translation>Ergebnis speichern</translation>
    </message>
    <message>
        <source>Say above first whether you take up what was begun or discard it.</source>
        <translation>Sagen Sie oben zuerst, ob Sie das Begonnene aufnehmen oder verwerfen.</translation>
    </message>
    <message>
        <source>Say for each mark what is to be looked at.</source>
        <translation>Geben Sie zu jeder Markierung an, was anzusehen ist.</translation>
    </message>
    <message>
        <source>Say for whom, and why.</source>
        <translation>Geben Sie an, für wen und warum.</translation>
    </message>
    <message>
        <source>Say for whom.</source>
        <translation>Geben Sie an, für wen.</translation>
    </message>
    <message>
        <source>Say what %1 is, so that it is known when it is found.</source>
        <translation>Geben Sie an, was %1 ist, damit man es erkennt, wenn es gefunden wird.</translation>
    </message>
    <message>
        <source>Say what is looked for: a %1 by its name or number.</source>
        <translation>Geben Sie an, wonach gesucht wird: %1, mit Name oder Nummer.</translation>
    </message>
    <message>
        <source>Say whether this torque tool shows what it gives (indicating) or clicks at what it was set to (setting).</source>
        <translation>Geben Sie an, ob dieses Drehmomentwerkzeug anzeigt, was es abgibt (anzeigend), oder bei dem eingestellten Wert klickt (auslösend).</translation>
    </message>
    <message>
        <source>Say which pieces have to come out again, and how many.</source>
        <translation>Geben Sie an, welche Teile wieder herauskommen müssen und wie viele.</translation>
    </message>
    <message>
        <source>Scheme</source>
        <translation>Schema</translation>
    </message>
    <message>
        <source>Scheme of leak classes</source>
        <translation>Schema der Leckklassen</translation>
    </message>
    <message>
        <source>Schemes call different leaks by one name. Name the scheme that the leak classes are of.</source>
        <translation>Schemata bezeichnen verschiedene Leckagen mit demselben Namen. Nennen Sie das Schema, aus dem die Leckklassen stammen.</translation>
    </message>
    <message>
        <source>Scrapped</source>
        <translation>Ausgesondert</translation>
    </message>
    <message>
        <source>Seal part number</source>
        <translation>Teilenummer der Dichtung</translation>
    </message>
    <message>
        <source>Seals, gaskets, cotter pins and lockwire do their work once.</source>
        <translation>Dichtungen, Flachdichtungen, Splinte und Sicherungsdraht tun ihren Dienst einmal.</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Zweite</translation>
    </message>
    <message>
        <source>Second reading</source>
        <translation>Zweite Messung</translation>
    </message>
    <message>
        <source>Secured</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Startwert</translation>
    </message>
    <message>
        <source>Seed: any text in one line</source>
        <translation>Startwert: beliebiger Text in einer Zeile</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Self-locking nut</source>
        <translation>Selbstsichernde Mutter</translation>
    </message>
    <message>
        <source>Send to a linked job</source>
        <translation>Verknüpftem Auftrag senden</translation>
    </message>
    <message>
        <source>Sense line</source>
        <translation>Fühlleitung</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>Gesendet</translation>
    </message>
    <message>
        <source>Sent on</source>
        <translation>Weitergesendet</translation>
    </message>
    <message>
        <source>Sent to %1</source>
        <translation>Gesendet an %1</translation>
    </message>
    <message>
        <source>Sent to a linked job</source>
        <translation>An einen verknüpften Auftrag gesendet</translation>
    </message>
    <message>
        <source>Separated by commas</source>
        <translation>Durch Kommas getrennt</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Serial number of what is on the incoming unit instead</source>
        <translation>Seriennummer dessen, was stattdessen am eingehenden Aggregat ist</translation>
    </message>
    <message>
        <source>Serial number, as on its plate</source>
        <translation>Seriennummer, wie auf dem Typenschild</translation>
    </message>
    <message>
        <source>Serviced</source>
        <translation>Befüllt</translation>
    </message>
    <message>
        <source>Serviced: %1.</source>
        <translation>Befüllt: %1.</translation>
    </message>
    <message>
        <source>Servicing</source>
        <translation>Befüllung</translation>
    </message>
    <message>
        <source>Servicing quantity</source>
        <translation>Füllmenge</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Festgelegt</translation>
    </message>
    <message>
        <source>Set a follow-up</source>
        <translation>Nachprüfung festlegen</translation>
    </message>
    <message>
        <source>Set a hold point</source>
        <translation>Haltepunkt setzen</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Festgelegt von</translation>
    </message>
    <message>
        <source>Set the wrench to %1.</source>
        <translation>Stellen Sie den Schlüssel auf %1.</translation>
    </message>
    <message>
        <source>Set to %1, the tool may give %2.</source>
        <translation>Auf %1 eingestellt, kann das Werkzeug %2 geben.</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Setting of a torque wrench</source>
        <translation>Einstellung eines Drehmomentschlüssels</translation>
    </message>
    <message>
        <source>Setting, Y</source>
        <translation>Einstellung, Y</translation>
    </message>
    <message>
        <source>Several people are called %1: %2. Say which by the id.</source>
        <translation>Mehrere Personen heißen %1: %2. Geben Sie anhand der Kennung an, welche.</translation>
    </message>
    <message>
        <source>Shackles, hooks, beams and the unit's own lifting points have limits too, and are not reckoned here.</source>
        <translation>Schäkel, Haken, Traversen und die Anschlagpunkte des Aggregats selbst haben auch Grenzen und werden hier nicht gerechnet.</translation>
    </message>
    <message>
        <source>Share of %1, R</source>
        <translation>Anteil, %1, R</translation>
    </message>
    <message>
        <source>Shares and leg tension: sling makers' pages on sling angle and centre of gravity</source>
        <translation>Anteile und Strangkraft: Seiten von Anschlagmittelherstellern über Neigungswinkel und Schwerpunkt</translation>
    </message>
    <message>
        <source>Shear band is estimated</source>
        <translation>Bereich für Scherung ist geschätzt</translation>
    </message>
    <message>
        <source>Shear nut, least</source>
        <translation>Mutter (Scherung), mindestens</translation>
    </message>
    <message>
        <source>Shear nut, most</source>
        <translation>Mutter (Scherung), höchstens</translation>
    </message>
    <message>
        <source>Shear nut, never over</source>
        <translation>Mutter (Scherung), nie über</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>Shift %1</source>
        <translation>Schicht %1</translation>
    </message>
    <message>
        <source>Shift in percent of the mean aerodynamic chord, c</source>
        <translation>Verschiebung in Prozent der mittleren aerodynamischen Flügeltiefe, c</translation>
    </message>
    <message>
        <source>Shift of the centre of gravity, s</source>
        <translation>Verschiebung des Schwerpunkts, s</translation>
    </message>
    <message>
        <source>Shift of the centre of gravity: %1</source>
        <translation>Verschiebung des Schwerpunkts: %1</translation>
    </message>
    <message>
        <source>Shipping blanks counted on it</source>
        <translation>Daran gezählte Transportverschlüsse</translation>
    </message>
    <message>
        <source>Shipping blanks removed</source>
        <translation>Transportverschlüsse entfernt</translation>
    </message>
    <message>
        <source>Show &amp;all</source>
        <translation>Alle &amp;zeigen</translation>
    </message>
    <message>
        <source>Show all of it (0)</source>
        <translation>Alles zeigen (0)</translation>
    </message>
    <message>
        <source>Show every entry again (Escape).</source>
        <translation>Wieder jeden Eintrag zeigen (Esc).</translation>
    </message>
    <message>
        <source>Show the code</source>
        <translation>Code anzeigen</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Unterschreiben</translation>
    </message>
    <message numerus="yes">
        <source>Sign %n entries</source>
        <translation>
            <numerusform>%n Eintrag unterschreiben</numerusform>
            <numerusform>%n Einträge unterschreiben</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Sign %n ticked</source>
        <translation>
            <numerusform>%n Abgehaktes unterschreiben</numerusform>
            <numerusform>%n Abgehakte unterschreiben</numerusform>
        </translation>
    </message>
    <message>
        <source>Sign or close the sheet that is open, then choose the language again.</source>
        <translation>Unterschreiben oder schließen Sie das offene Blatt und wählen Sie die Sprache dann noch einmal.</translation>
    </message>
    <message>
        <source>Signature in doubt</source>
        <translation>Unterschrift zweifelhaft</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Unterschriften</translation>
    </message>
    <message>
        <source>Signatures are in doubt from %1 to %2: %3</source>
        <translation>Unterschriften sind zweifelhaft von %1 bis %2: %3</translation>
    </message>
    <message>
        <source>Signatures cannot be in doubt since a moment that is still to come (%1).</source>
        <translation>Unterschriften können nicht seit einem künftigen Zeitpunkt (%1) zweifelhaft sein.</translation>
    </message>
    <message>
        <source>Signatures in doubt since</source>
        <translation>Unterschriften zweifelhaft seit</translation>
    </message>
    <message>
        <source>Signatures, and authorisations as they stood that day</source>
        <translation>Unterschriften, und Berechtigungen nach dem Stand jenes Tages</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrieben</translation>
    </message>
    <message>
        <source>Signed as</source>
        <translation>Unterschrieben als</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterschrieben von</translation>
    </message>
    <message>
        <source>Signed by %1, entries: %2</source>
        <translation>Unterschrieben von %1, Einträge: %2</translation>
    </message>
    <message>
        <source>Signed gates: safe to start, all free, lowering, lifting, mounts, last look, power, closure. The lead may strike or change one before it matters.</source>
        <translation>Haltepunkte mit Unterschrift: sicher zu beginnen, alles frei, Absenken, Anheben, Aufhängungen, letzter Blick, Strom, Abschluss. Der Leiter kann einen streichen oder ändern, bevor es darauf ankommt.</translation>
    </message>
    <message>
        <source>Signed with authority to</source>
        <translation>Unterschrieben mit der Befugnis zu</translation>
    </message>
    <message>
        <source>Signs at other stations; here once the key was carried over.</source>
        <translation>Unterschreibt an anderen Arbeitsplätzen; hier, sobald der Schlüssel mitgenommen wurde.</translation>
    </message>
    <message>
        <source>Signs at this station.</source>
        <translation>Unterschreibt an diesem Arbeitsplatz.</translation>
    </message>
    <message>
        <source>Size from</source>
        <translation>Größe ab</translation>
    </message>
    <message>
        <source>Size is</source>
        <translation>Größe ist</translation>
    </message>
    <message>
        <source>Size of a label</source>
        <translation>Größe eines Etiketts</translation>
    </message>
    <message>
        <source>Size to</source>
        <translation>Größe bis</translation>
    </message>
    <message>
        <source>Sizes and minutes of leaks belong to classes. Name the classes, or leave them out.</source>
        <translation>Größen und Minuten von Lecks gehören zu Klassen. Nennen Sie die Klassen, oder lassen Sie sie weg.</translation>
    </message>
    <message>
        <source>Slave hardware</source>
        <translation>Behelfsbefestigung</translation>
    </message>
    <message>
        <source>Slave hardware: the pieces that have to come out</source>
        <translation>Behelfsbefestigung: die Stücke, die wieder heraus müssen</translation>
    </message>
    <message>
        <source>Sling</source>
        <translation>Anschlagmittel</translation>
    </message>
    <message>
        <source>Sling %1</source>
        <translation>Anschlagmittel %1</translation>
    </message>
    <message>
        <source>Sling inspected until</source>
        <translation>Anschlagmittel geprüft bis</translation>
    </message>
    <message>
        <source>Sling on: %1 %2.</source>
        <translation>Anschlagmittel angebracht: %1 %2.</translation>
    </message>
    <message>
        <source>Sling, as marked on it</source>
        <translation>Anschlagmittel, wie darauf gekennzeichnet</translation>
    </message>
    <message>
        <source>Slings at an angle</source>
        <translation>Anschlagmittel im Winkel</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Smaller (-)</source>
        <translation>Kleiner (-)</translation>
    </message>
    <message>
        <source>Smallest lockwire by the hole</source>
        <translation>Kleinster Sicherungsdraht nach der Bohrung</translation>
    </message>
    <message>
        <source>Some charts count from the vertical, some print sin for 1/sin: mind which. The working load limit is on the tag of the sling, in no table. Nobody stands under a load.</source>
        <translation>Manche Tabellen zählen ab der Senkrechten, manche drucken sin für 1/sin: Achten Sie darauf, welche. Die Tragfähigkeit steht auf dem Anhänger des Anschlagmittels, in keiner Tabelle. Niemand steht unter einer Last.</translation>
    </message>
    <message>
        <source>Some letters of what you want to do</source>
        <translation>Einige Buchstaben dessen, was Sie tun wollen</translation>
    </message>
    <message>
        <source>Somebody else allows a re-inspection; nobody allows it to themselves.</source>
        <translation>Eine erneute Prüfung erlaubt jemand anders; niemand erlaubt sie sich selbst.</translation>
    </message>
    <message>
        <source>Somebody else may have had the key. Entries: %1. Why stands beside the person among the signatures.</source>
        <translation>Jemand anders kann den Schlüssel gehabt haben. Einträge: %1. Der Grund steht bei der Person unter den Unterschriften.</translation>
    </message>
    <message>
        <source>Somebody else recorded something at the same moment. Nothing of yours was recorded. Look at what is new and sign again.</source>
        <translation>Jemand anders hat im selben Augenblick etwas eingetragen. Von Ihnen wurde nichts eingetragen. Sehen Sie an, was neu ist, und unterschreiben Sie erneut.</translation>
    </message>
    <message>
        <source>Somebody stopped in the middle of %1: %2</source>
        <translation>Jemand hat mitten in %1 unterbrochen: %2</translation>
    </message>
    <message>
        <source>Somebody stopped in the middle of %1: %2 Finish that before it goes.</source>
        <translation>Jemand hat mitten in %1 unterbrochen: %2 Schließen Sie das ab, bevor es abgegeben wird.</translation>
    </message>
    <message>
        <source>Somebody's life hangs on the tag that carries their name.</source>
        <translation>An dem Anhänger, der den eigenen Namen trägt, hängt ein Leben.</translation>
    </message>
    <message>
        <source>Something stands before, between or behind the parts of the ZIP file.</source>
        <translation>Etwas steht vor, zwischen oder hinter den Teilen der ZIP-Datei.</translation>
    </message>
    <message>
        <source>Something was typed here before and not signed, but %1 cannot be read and cannot be set aside. Look at the rights of its folder. Fill in the form anew; nothing that was signed is touched.</source>
        <translation>Hier wurde früher etwas getippt und nicht unterschrieben, aber %1 lässt sich weder lesen noch beiseitelegen. Sehen Sie nach den Rechten des Ordners. Füllen Sie das Formular neu aus; nichts Unterschriebenes ist berührt.</translation>
    </message>
    <message>
        <source>Something was typed here before and not signed, but it cannot be read any more. It was set aside as %1. Fill in the form anew; nothing that was signed is touched.</source>
        <translation>Hier wurde früher etwas getippt und nicht unterschrieben, aber es lässt sich nicht mehr lesen. Es wurde als %1 beiseitegelegt. Füllen Sie das Formular neu aus; nichts Unterschriebenes ist berührt.</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Sources:</source>
        <translation>Quellen:</translation>
    </message>
    <message>
        <source>Sources: %1</source>
        <translation>Quellen: %1</translation>
    </message>
    <message>
        <source>Space opens it.</source>
        <translation>Die Leertaste öffnet ihn.</translation>
    </message>
    <message>
        <source>Space, while the list has the keyboard. One at a time.</source>
        <translation>Leertaste, während die Liste die Tastatur hat. Einzeln nacheinander.</translation>
    </message>
    <message>
        <source>Specified</source>
        <translation>Vorgeschrieben</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Ständer</translation>
    </message>
    <message>
        <source>Standard and class of the deviation</source>
        <translation>Norm und Klasse der Abweichung</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Geltung</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Geltung</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>State its condition</source>
        <translation>Zustand angeben</translation>
    </message>
    <message>
        <source>Stated</source>
        <translation>Angegeben</translation>
    </message>
    <message>
        <source>Statement</source>
        <translation>Aussage</translation>
    </message>
    <message>
        <source>Statements</source>
        <translation>Aussagen</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Hier bleiben</translation>
    </message>
    <message>
        <source>Steady the load with taglines, not with hands, and keep clear of where it could swing or pinch.</source>
        <translation>Führen Sie die Last mit Leinen, nicht mit den Händen, und bleiben Sie weg von dort, wo sie pendeln oder quetschen kann.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Steps of the working</source>
        <translation>Schritte des Rechenwegs</translation>
    </message>
    <message>
        <source>Still attached</source>
        <translation>Noch verbunden</translation>
    </message>
    <message>
        <source>Still due after this record</source>
        <translation>Nach diesem Nachweis noch fällig</translation>
    </message>
    <message>
        <source>Still to show, and conditions</source>
        <translation>Noch nachzuweisen, und Zustände</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Stop &amp;watching</source>
        <translation>&amp;Nicht mehr beobachten</translation>
    </message>
    <message>
        <source>Stop after the first inches, and look all round: level, free, and nothing that catches.</source>
        <translation>Halten Sie nach den ersten Zentimetern an und sehen Sie rundum nach: waagerecht, frei und nichts, das hängen bleibt.</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Hier unterbrechen</translation>
    </message>
    <message>
        <source>Stop the key</source>
        <translation>Schlüssel sperren</translation>
    </message>
    <message>
        <source>Stop, and tell the lead: a blank that is not found may be inside, and nothing is joined, fuelled, powered or turned until it is known where it is.</source>
        <translation>Unterbrechen Sie die Arbeit und sagen Sie es dem Leiter: Ein Verschluss, der nicht gefunden wird, kann im Inneren stecken, und nichts wird verbunden, betankt, eingeschaltet oder gedreht, bis bekannt ist, wo er ist.</translation>
    </message>
    <message>
        <source>Stop, tell the lead, and look for it now: nothing is closed, powered, moved or turned while a tool is missing.</source>
        <translation>Unterbrechen Sie, sagen Sie es dem Leiter und suchen Sie es sofort: Nichts wird geschlossen, eingeschaltet, bewegt oder gedreht, solange ein Werkzeug fehlt.</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Unterbrochen</translation>
    </message>
    <message>
        <source>Stopped half done</source>
        <translation>Halb erledigt unterbrochen</translation>
    </message>
    <message>
        <source>Store (*.remate)</source>
        <translation>Ablage (*.remate)</translation>
    </message>
    <message>
        <source>Stores (*.remate);;All files (*)</source>
        <translation>Ablagen (*.remate);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Streichen</translation>
    </message>
    <message>
        <source>Striking a listing must not make an open joint disappear.</source>
        <translation>Das Streichen einer Auflistung darf keine offene Verbindung verschwinden lassen.</translation>
    </message>
    <message>
        <source>Striking an issue must not make a missing tool disappear.</source>
        <translation>Das Streichen einer Ausgabe darf ein fehlendes Werkzeug nicht verschwinden lassen.</translation>
    </message>
    <message>
        <source>Striking an issue must not make its tags disappear.</source>
        <translation>Das Streichen einer Ausgabe darf deren Anhänger nicht verschwinden lassen.</translation>
    </message>
    <message>
        <source>Striking entry %1 would make a loose end of %2 disappear: %3 %4, who made it, may strike it; else it is cleared.</source>
        <translation>Das Streichen von Eintrag %1 ließe eine offene Stelle von %2 verschwinden: %3 %4, von wem er stammt, darf ihn streichen; sonst wird sie erledigt.</translation>
    </message>
    <message>
        <source>Struck</source>
        <translation>Gestrichen</translation>
    </message>
    <message>
        <source>Struck an entry</source>
        <translation>Eintrag gestrichen</translation>
    </message>
    <message>
        <source>Struck by entry %1: %2</source>
        <translation>Gestrichen durch Eintrag %1: %2</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Gegenstand</translation>
    </message>
    <message>
        <source>Such as 2026-03-02</source>
        <translation>Etwa 2026-03-02</translation>
    </message>
    <message>
        <source>Such as 2026-03-02T08:14:00Z</source>
        <translation>Etwa 2026-03-02T08:14:00Z</translation>
    </message>
    <message>
        <source>Such as 24.5</source>
        <translation>Etwa 24.5</translation>
    </message>
    <message>
        <source>System</source>
        <translation>System</translation>
    </message>
    <message>
        <source>TO INSPECT</source>
        <translation>ZU PRÜFEN</translation>
    </message>
    <message>
        <source>Table …</source>
        <translation>Tabelle …</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Anhänger %1</translation>
    </message>
    <message>
        <source>Tag %1 is of no block of this job that is out.</source>
        <translation>Anhänger %1 gehört zu keinem Block dieses Auftrags, der ausgegeben ist.</translation>
    </message>
    <message>
        <source>Tag %1 is of no block that was issued to this job. Blocks that are out: %2.</source>
        <translation>Anhänger %1 gehört zu keinem Block, der für diesen Auftrag ausgegeben wurde. Ausgegebene Blöcke: %2.</translation>
    </message>
    <message>
        <source>Tag %1 is of the block %2, which was returned in entry %3. Blocks that are out: %4.</source>
        <translation>Anhänger %1 gehört zum Block %2, der in Eintrag %3 zurückgegeben wurde. Ausgegebene Blöcke: %4.</translation>
    </message>
    <message>
        <source>Tag %1 of the block %2 still hangs on %3 (%4), which is open.</source>
        <translation>Anhänger %1 aus dem Block %2 hängt noch an %3 (%4), und das ist offen.</translation>
    </message>
    <message>
        <source>Tag %1 of the block %2 was hung on %3, so the block was issued. Return it when it is done with.</source>
        <translation>Anhänger %1 aus dem Block %2 wurde an %3 gehängt, also war der Block ausgegeben. Geben Sie ihn zurück, wenn er nicht mehr gebraucht wird.</translation>
    </message>
    <message>
        <source>Tag %1 was hung on %2 already. Use another tag.</source>
        <translation>Anhänger %1 wurde bereits an %2 gehängt. Verwenden Sie einen anderen Anhänger.</translation>
    </message>
    <message>
        <source>Tag %1 was hung on %2 already; a number is used once. Issue a block without it.</source>
        <translation>Anhänger %1 wurde bereits an %2 gehängt; eine Nummer wird einmal verwendet. Geben Sie einen Block ohne sie aus.</translation>
    </message>
    <message>
        <source>Tag %1 was hung on %2 in this job. Hang a tag of this job instead, and give that one back.</source>
        <translation>Anhänger %1 wurde in diesem Auftrag an %2 gehängt. Hängen Sie stattdessen einen Anhänger dieses Auftrags an, und geben Sie jenen zurück.</translation>
    </message>
    <message>
        <source>Tag of this job, hung instead</source>
        <translation>Anhänger dieses Auftrags, stattdessen angehängt</translation>
    </message>
    <message>
        <source>Tag recovered</source>
        <translation>Anhänger zurückgenommen</translation>
    </message>
    <message>
        <source>Tag that it comes with</source>
        <translation>Anhänger, mit dem es kommt</translation>
    </message>
    <message>
        <source>Tag that says unserviceable</source>
        <translation>Anhänger, der es als nicht betriebstüchtig ausweist</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Tags counted in the hand</source>
        <translation>In der Hand gezählte Anhänger</translation>
    </message>
    <message>
        <source>Tags exchanged on</source>
        <translation>Anhänger getauscht an</translation>
    </message>
    <message>
        <source>Tags issued</source>
        <translation>Anhänger ausgegeben</translation>
    </message>
    <message>
        <source>Tags returned</source>
        <translation>Anhänger zurückgegeben</translation>
    </message>
    <message>
        <source>Take %1 (%2)</source>
        <translation>%1 übernehmen (%2)</translation>
    </message>
    <message>
        <source>Take another revision</source>
        <translation>Andere Revision übernehmen</translation>
    </message>
    <message>
        <source>Take it &amp;up</source>
        <translation>&amp;Aufnehmen</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Arbeit wieder aufnehmen</translation>
    </message>
    <message>
        <source>Take on from a linked job</source>
        <translation>Aus einem verknüpften Auftrag übernehmen</translation>
    </message>
    <message>
        <source>Take over</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Take over the torque</source>
        <translation>Anziehdrehmoment übernehmen</translation>
    </message>
    <message>
        <source>Take the interface list</source>
        <translation>Anschlussliste übernehmen</translation>
    </message>
    <message>
        <source>Take the tick back   Space</source>
        <translation>Haken zurücknehmen   Leertaste</translation>
    </message>
    <message>
        <source>Take this list?</source>
        <translation>Diese Liste übernehmen?</translation>
    </message>
    <message>
        <source>Take up the first inches, stop and look: balance, slings, shackles, and anything still connected. Set down at any doubt.</source>
        <translation>Heben Sie die ersten Zentimeter an, halten Sie inne und sehen Sie hin: Gleichgewicht, Anschlagmittel, Schäkel und alles, was noch verbunden ist. Setzen Sie bei jedem Zweifel ab.</translation>
    </message>
    <message>
        <source>Take your key over at this station</source>
        <translation>Eigenen Schlüssel an diesem Arbeitsplatz übernehmen</translation>
    </message>
    <message>
        <source>Take: %1</source>
        <translation>Übernehmen: %1</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>Taken on</source>
        <translation>Übernommen</translation>
    </message>
    <message>
        <source>Taken on from a linked job</source>
        <translation>Aus einem verknüpften Auftrag übernommen</translation>
    </message>
    <message>
        <source>Taken up</source>
        <translation>Wieder aufgenommen</translation>
    </message>
    <message>
        <source>Tap the photo where to look, or move the cross with the arrow keys and press Return.</source>
        <translation>Tippen Sie auf die Stelle im Foto, oder bewegen Sie das Kreuz mit den Pfeiltasten und drücken Sie die Eingabetaste.</translation>
    </message>
    <message>
        <source>Target, least</source>
        <translation>Ziel, mindestens</translation>
    </message>
    <message>
        <source>Target, most</source>
        <translation>Ziel, höchstens</translation>
    </message>
    <message>
        <source>Tell a leak by its rate or by drops counted, not by both.</source>
        <translation>Geben Sie eine Leckage durch ihre Rate oder durch gezählte Tropfen an, nicht durch beides.</translation>
    </message>
    <message>
        <source>Tell what came after an earlier print, or between two entries.</source>
        <translation>Zeigen, was nach einem früheren Ausdruck oder zwischen zwei Einträgen hinzukam.</translation>
    </message>
    <message>
        <source>Temporarily joined</source>
        <translation>Vorläufig verbunden</translation>
    </message>
    <message>
        <source>Tension factor (1/sin)</source>
        <translation>Zugkraftfaktor (1/sin)</translation>
    </message>
    <message>
        <source>Tension factor, k</source>
        <translation>Zugkraftfaktor, k</translation>
    </message>
    <message>
        <source>Tension nut, least</source>
        <translation>Mutter (Zug), mindestens</translation>
    </message>
    <message>
        <source>Tension nut, most</source>
        <translation>Mutter (Zug), höchstens</translation>
    </message>
    <message>
        <source>Tension nut, never over</source>
        <translation>Mutter (Zug), nie über</translation>
    </message>
    <message>
        <source>Tension of a leg at %1, T</source>
        <translation>Kraft eines Strangs, %1, T</translation>
    </message>
    <message>
        <source>Terminal covers are on, and nothing can touch the terminal.</source>
        <translation>Die Klemmenabdeckungen sind angebracht, und nichts kann die Klemme berühren.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Tested</source>
        <translation>Getestet</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Tests</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <source>Text follows the closing quote. Only a separator or the end of the line may.</source>
        <translation>Nach dem schließenden Anführungszeichen folgt Text. Dort darf nur ein Trennzeichen oder das Zeilenende stehen.</translation>
    </message>
    <message>
        <source>That is larger than the store can hold in one piece. Nothing was recorded.</source>
        <translation>Das ist größer, als die Ablage in einem Stück aufnehmen kann. Es wurde nichts eingetragen.</translation>
    </message>
    <message>
        <source>That is not the PIN or passphrase of %1.</source>
        <translation>Das ist nicht die PIN oder Passphrase von %1.</translation>
    </message>
    <message>
        <source>That is what Remate is for.</source>
        <translation>Dafür ist Remate da.</translation>
    </message>
    <message>
        <source>That nothing changed is a result, and somebody answers for it.</source>
        <translation>Dass sich nichts geändert hat, ist ein Ergebnis, und jemand ist dafür verantwortlich.</translation>
    </message>
    <message>
        <source>That nothing of entry %1 ever was so is said by somebody with authority to overrule, of an entry that another one made.</source>
        <translation>Dass nichts von Eintrag %1 je so war, gibt jemand mit Befugnis zum Übersteuern an, und zwar zu einem Eintrag, den jemand anders gemacht hat.</translation>
    </message>
    <message>
        <source>That nothing was found, and what was looked through.</source>
        <translation>Dass nichts gefunden wurde und was durchsucht wurde.</translation>
    </message>
    <message>
        <source>The %1 of %2 (%3) covered it and is void.</source>
        <translation>Der Test „%1“ an %2 (%3) hat dies mit erfasst und ist hinfällig.</translation>
    </message>
    <message>
        <source>The %1 of %2 (%3) has failed and has to be made again.</source>
        <translation>Der Test „%1“ an %2 (%3) ist nicht bestanden und muss noch einmal gemacht werden.</translation>
    </message>
    <message>
        <source>The %1 of %2 (%3) is void and has to be made again. %4</source>
        <translation>Der Test „%1“ an %2 (%3) ist hinfällig und muss noch einmal gemacht werden. %4</translation>
    </message>
    <message>
        <source>The ZIP file holds "%1" twice.</source>
        <translation>Die ZIP-Datei enthält „%1“ zweimal.</translation>
    </message>
    <message>
        <source>The ZIP file holds a file with a name that leads elsewhere: "%1".</source>
        <translation>Die ZIP-Datei enthält eine Datei mit einem Namen, der anderswohin führt: „%1“.</translation>
    </message>
    <message>
        <source>The adapter (%1) reaches back to the grip or beyond: no setting gives the torque. Turn it, or take a shorter one.</source>
        <translation>Der Adapter (%1) reicht bis zum Griff zurück oder darüber hinaus: Keine Einstellung ergibt das Drehmoment. Drehen Sie ihn, oder nehmen Sie einen kürzeren.</translation>
    </message>
    <message>
        <source>The adapter's angle is %1°. It lies between 0° (in line, longer) and 180° (pointing back).</source>
        <translation>Der Winkel des Adapters ist %1°. Er liegt zwischen 0° (in Linie, länger) und 180° (zurückweisend).</translation>
    </message>
    <message>
        <source>The adapter's length is %1. Give it as a length, and its direction as an angle: 180° where it points back.</source>
        <translation>Die Länge des Adapters ist %1. Geben Sie sie als Länge an und seine Richtung als Winkel: 180°, wo er zurückweist.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide what has to be so, and who may sign for it.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften bestimmen, was gegeben sein muss und wer dafür unterschreiben darf.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the bond.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften entscheiden, und dafür Lizenzierte oder Berechtigte beurteilen die Masseverbindung.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the leak.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften entscheiden, und dafür Lizenzierte oder Berechtigte beurteilen das Leck.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the servicing.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften entscheiden, und dafür Lizenzierte oder Berechtigte beurteilen die Befüllung.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it tighten.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften entscheiden, und dafür Lizenzierte oder Berechtigte ziehen an.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules say what is isolated, and by whom.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften sagen, was freigeschaltet wird und von wem.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs.</source>
        <translation>Maßgeblich sind die genehmigten Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs. This table is a help: compare with the data, and enter no figure from here that the data does not give.</source>
        <translation>Maßgeblich sind die genehmigten Instandhaltungsunterlagen. Diese Tabelle ist eine Hilfe: Vergleichen Sie mit den Unterlagen, und tragen Sie von hier keinen Wert ein, den die Unterlagen nicht angeben.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs. What is shown here is its copy in the list.</source>
        <translation>Maßgeblich sind die genehmigten Instandhaltungsunterlagen. Was hier steht, ist deren Abschrift in der Liste.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs: %1, revision %2. Where this record and the maintenance data, the local rules or licensed practice differ, this record gives way.</source>
        <translation>Maßgeblich sind die genehmigten Instandhaltungsunterlagen: %1, Revision %2. Wo dieser Nachweis von den Instandhaltungsunterlagen, den örtlichen Vorschriften oder der Praxis lizenzierten Personals abweicht, tritt dieser Nachweis zurück.</translation>
    </message>
    <message>
        <source>The approved maintenance data, the equipment's own instructions and the local rules decide, and people who are licensed or authorised for it lift.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen, die Anleitungen des Geräts und die örtlichen Vorschriften entscheiden, und dafür Lizenzierte oder Berechtigte heben.</translation>
    </message>
    <message>
        <source>The approved maintenance data, the hoist's own instructions and the local rules decide, and people who are trained for it lift.</source>
        <translation>Die genehmigten Instandhaltungsunterlagen, die Anweisungen des Hebezeugs und die örtlichen Vorschriften bestimmen, und dafür ausgebildete Personen heben.</translation>
    </message>
    <message>
        <source>The arm of %1 is given as %2. Give a length from the datum, negative on its far side.</source>
        <translation>Der Hebelarm von %1 ist mit %2 angegeben. Geben Sie eine Länge von der Bezugsebene an, negativ auf deren anderer Seite.</translation>
    </message>
    <message>
        <source>The attachment %1 is damaged: its content was changed after it was recorded. Look for it in the last backup.</source>
        <translation>Die Anlage %1 ist beschädigt: Ihr Inhalt wurde nach dem Eintragen geändert. Suchen Sie sie in der letzten Sicherungskopie.</translation>
    </message>
    <message>
        <source>The attachment %1 is not in this store.</source>
        <translation>Die Anlage %1 ist nicht in dieser Ablage.</translation>
    </message>
    <message>
        <source>The attachment %1 is not what its name says: it was changed or swapped.</source>
        <translation>Die Anlage %1 ist nicht, was ihr Name angibt: Sie wurde geändert oder vertauscht.</translation>
    </message>
    <message>
        <source>The attachment %1 is there twice.</source>
        <translation>Die Anlage %1 ist zweimal da.</translation>
    </message>
    <message>
        <source>The attachment does not say what sort of file it is.</source>
        <translation>Die Anlage sagt nicht, welche Art von Datei sie ist.</translation>
    </message>
    <message>
        <source>The attachment has %1 MiB; at most %2 MiB can be kept. Make it smaller, or cut it into parts.</source>
        <translation>Die Anlage hat %1 MiB; höchstens %2 MiB können aufbewahrt werden. Verkleinern Sie sie, oder teilen Sie sie auf.</translation>
    </message>
    <message>
        <source>The attachment is empty. Choose another file.</source>
        <translation>Die Anlage ist leer. Wählen Sie eine andere Datei.</translation>
    </message>
    <message>
        <source>The backup could not be given its name %1 (system %2). Choose another name.</source>
        <translation>Die Sicherungskopie konnte ihren Namen %1 nicht erhalten (System %2). Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>The backup to %1 failed, and no file was made. Check the disk and its room, and back up again, perhaps to another disk. (%2)</source>
        <translation>Die Sicherung nach %1 ist misslungen, und es wurde keine Datei erstellt. Prüfen Sie den Datenträger und seinen Platz, und sichern Sie erneut, vielleicht auf einen anderen Datenträger. (%2)</translation>
    </message>
    <message>
        <source>The backup was cancelled; no file was made.</source>
        <translation>Die Sicherung wurde abgebrochen; es wurde keine Datei erstellt.</translation>
    </message>
    <message>
        <source>The backup was read again and is not the same as the store; it was thrown away. Check the disk, and verify the store itself.</source>
        <translation>Die Sicherungskopie wurde erneut gelesen und stimmt nicht mit der Ablage überein; sie wurde verworfen. Prüfen Sie den Datenträger, und verifizieren Sie die Ablage selbst.</translation>
    </message>
    <message>
        <source>The bag's folder is not named after the job's ledger.</source>
        <translation>Der Ordner des Bag ist nicht nach dem Buch des Auftrags benannt.</translation>
    </message>
    <message>
        <source>The beginning of the store is damaged. Keep the file as it is and go on with the last backup.</source>
        <translation>Der Anfang der Ablage ist beschädigt. Behalten Sie die Datei, wie sie ist, und arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>The block %1 has %2 tags, %3 of them lost; %4 are in the hand instead of %5. Find the difference: a tag may hang on something that nobody logged.</source>
        <translation>Der Block %1 hat %2 Anhänger, davon %3 verloren; in der Hand sind %4 statt %5. Klären Sie den Unterschied: Ein Anhänger kann an etwas hängen, das niemand eingetragen hat.</translation>
    </message>
    <message>
        <source>The block %1 was issued and returned (entry %2); strike the return first, if it was a mistake.</source>
        <translation>Der Block %1 wurde ausgegeben und zurückgegeben (Eintrag %2); streichen Sie zuerst die Rückgabe, wenn sie ein Irrtum war.</translation>
    </message>
    <message>
        <source>The block %1 was issued in entry %2; a number is issued once.</source>
        <translation>Der Block %1 wurde in Eintrag %2 ausgegeben; eine Nummer wird einmal ausgegeben.</translation>
    </message>
    <message>
        <source>The block %1 was returned in entry %2.</source>
        <translation>Der Block %1 wurde in Eintrag %2 zurückgegeben.</translation>
    </message>
    <message>
        <source>The bond may have</source>
        <translation>Die Masseverbindung darf haben</translation>
    </message>
    <message>
        <source>The bond of %1 is measured after it was torqued. %2</source>
        <translation>Die Masseverbindung von %1 wird gemessen, nachdem es angezogen wurde. %2</translation>
    </message>
    <message>
        <source>The bonding resistance has not been measured.</source>
        <translation>Der Masseverbindungswiderstand wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>The boundary is drawn from the list of interfaces, and the list is empty. Import it as a CSV file; nobody has to draw anything.</source>
        <translation>Der Umriss wird aus der Liste der Anschlüsse gezeichnet, und die Liste ist leer. Importieren Sie sie als CSV-Datei; niemand muss etwas zeichnen.</translation>
    </message>
    <message>
        <source>The braid has no broken strands.</source>
        <translation>Das Geflecht hat keine gebrochenen Litzen.</translation>
    </message>
    <message>
        <source>The breaker is out and collared, the valve shut and locked, or the switch guarded, and a tag with a name hangs on it.</source>
        <translation>Der Schutzschalter ist gezogen und mit Sperrkragen versehen, das Ventil geschlossen und gesperrt oder der Schalter abgedeckt, und ein Anhänger mit Namen hängt daran.</translation>
    </message>
    <message>
        <source>The cable has slack and strain relief, and rubs nowhere.</source>
        <translation>Das Kabel hat Spiel und Zugentlastung und scheuert nirgends.</translation>
    </message>
    <message>
        <source>The calculation was not printed</source>
        <translation>Die Berechnung wurde nicht gedruckt</translation>
    </message>
    <message>
        <source>The calculation was not saved</source>
        <translation>Die Berechnung wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>The calculation was saved</source>
        <translation>Die Berechnung wurde gespeichert</translation>
    </message>
    <message>
        <source>The calculator cannot be shown</source>
        <translation>Der Rechner kann nicht angezeigt werden</translation>
    </message>
    <message>
        <source>The centre of gravity, %1 from the left point, lies outside the span of %2: the far point would be pulled up, and the load turn over. Move the points so that it lies between them.</source>
        <translation>Der Schwerpunkt, %1 vom linken Punkt, liegt außerhalb des Abstands von %2: Der ferne Punkt würde hochgezogen, und die Last kippte um. Versetzen Sie die Punkte so, dass er zwischen ihnen liegt.</translation>
    </message>
    <message>
        <source>The change of weight is within the limit of %1 lb at this empty weight.</source>
        <translation>Die Gewichtsänderung liegt bei diesem Leergewicht innerhalb der Grenze von %1 lb.</translation>
    </message>
    <message>
        <source>The change was given up already, by %1 in entry %2.</source>
        <translation>Der Wechsel wurde bereits abgebrochen, von %1 in Eintrag %2.</translation>
    </message>
    <message>
        <source>The clamp holds without crushing what it carries.</source>
        <translation>Die Schelle hält, ohne zu quetschen, was sie trägt.</translation>
    </message>
    <message>
        <source>The class of a wet area by a published scheme, against the worst class that is allowed.</source>
        <translation>Die Klasse einer nassen Fläche nach einem veröffentlichten Schema, gegen die schlechteste zulässige Klasse.</translation>
    </message>
    <message>
        <source>The code "%1" is too long for a label of this size. Choose a larger one.</source>
        <translation>Der Code „%1“ ist zu lang für ein Etikett dieser Größe. Wählen Sie ein größeres.</translation>
    </message>
    <message>
        <source>The code is shown once, works once, and for a day.</source>
        <translation>Der Code wird einmal angezeigt, gilt einmal und einen Tag lang.</translation>
    </message>
    <message>
        <source>The column "%1" is expected here.</source>
        <translation>Hier wird die Spalte „%1“ erwartet.</translation>
    </message>
    <message>
        <source>The column "%1" is missing.</source>
        <translation>Die Spalte „%1“ fehlt.</translation>
    </message>
    <message>
        <source>The column "%1" stands twice.</source>
        <translation>Die Spalte „%1“ steht zweimal da.</translation>
    </message>
    <message>
        <source>The condition "%1" asks for no stage.</source>
        <translation>Die Bedingung „%1“ verlangt keinen Stand.</translation>
    </message>
    <message>
        <source>The condition "%1" asks for one of the stages %2, not "%3".</source>
        <translation>Die Bedingung „%1“ verlangt einen der Stände %2, nicht „%3“.</translation>
    </message>
    <message>
        <source>The coupling is home: its mark shows or its lock has clicked.</source>
        <translation>Die Kupplung sitzt vollständig: Ihre Markierung ist sichtbar oder ihre Verriegelung ist eingerastet.</translation>
    </message>
    <message>
        <source>The coupling is seated all round and clear of its neighbours.</source>
        <translation>Die Kupplung sitzt ringsum und hat Abstand zu ihren Nachbarn.</translation>
    </message>
    <message>
        <source>The coupling is seated all round and clear of wiring.</source>
        <translation>Die Kupplung sitzt ringsum und hat Abstand zu Kabeln.</translation>
    </message>
    <message>
        <source>The cryptographic library could not be started. Nothing can be signed or verified.</source>
        <translation>Die kryptografische Bibliothek konnte nicht gestartet werden. Es kann nichts unterschrieben oder verifiziert werden.</translation>
    </message>
    <message>
        <source>The cryptographic library failed; nothing was signed. Free some memory and try again.</source>
        <translation>Die kryptografische Bibliothek versagte; es wurde nichts unterschrieben. Geben Sie etwas Speicher frei und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>The cushion is in place and not swollen or torn.</source>
        <translation>Das Polster ist an seinem Platz und nicht gequollen oder gerissen.</translation>
    </message>
    <message>
        <source>The damage of %1 is finding %2, which is open. An inspector says what becomes of it first.</source>
        <translation>Der Schaden an %1 ist Befund %2, und dieser ist offen. Zuerst gibt ein Prüfer an, was daraus wird.</translation>
    </message>
    <message>
        <source>The data that a job works to changes by a signature, never by itself.</source>
        <translation>Die Unterlagen, nach denen ein Auftrag arbeitet, ändern sich durch eine Unterschrift, nie von selbst.</translation>
    </message>
    <message>
        <source>The day of the lift is not given, so nothing says whether the inspections hold.</source>
        <translation>Der Tag des Hebevorgangs ist nicht angegeben; nichts sagt also, ob die Prüfungen gelten.</translation>
    </message>
    <message>
        <source>The demo was not made</source>
        <translation>Die Vorführung wurde nicht erstellt</translation>
    </message>
    <message>
        <source>The demo's people and PINs</source>
        <translation>Personen und PINs der Vorführung</translation>
    </message>
    <message>
        <source>The designations of both halves belong together.</source>
        <translation>Die Bezeichnungen beider Hälften gehören zusammen.</translation>
    </message>
    <message>
        <source>The designations of both halves were not read.</source>
        <translation>Die Bezeichnungen beider Hälften wurden nicht gelesen.</translation>
    </message>
    <message>
        <source>The details of %1 were given in entry %2. If they are wrong, correct its row of the list.</source>
        <translation>Die Einzelheiten zu %1 wurden in Eintrag %2 angegeben. Sind sie falsch, berichtigen Sie die Zeile in der Liste.</translation>
    </message>
    <message>
        <source>The digest stored beside it does not match its bytes: one of the two was changed.</source>
        <translation>Die daneben abgelegte Prüfsumme passt nicht zu den Bytes: Eines von beiden wurde geändert.</translation>
    </message>
    <message>
        <source>The directory of the ZIP file breaks off.</source>
        <translation>Das Verzeichnis der ZIP-Datei bricht ab.</translation>
    </message>
    <message>
        <source>The disk could not be read (SQLite %1, system %2). Nothing was recorded. Check that the disk is there and try again; if it happens again, go on with the last backup on another disk.</source>
        <translation>Der Datenträger konnte nicht gelesen werden (SQLite %1, System %2). Es wurde nichts eingetragen. Prüfen Sie, ob der Datenträger vorhanden ist, und versuchen Sie es erneut; wenn es wieder geschieht, arbeiten Sie mit der letzten Sicherungskopie auf einem anderen Datenträger weiter.</translation>
    </message>
    <message>
        <source>The disk did not confirm that it holds %1 (system %2). Check the disk.</source>
        <translation>Der Datenträger hat nicht bestätigt, dass er %1 enthält (System %2). Prüfen Sie den Datenträger.</translation>
    </message>
    <message>
        <source>The disk did not confirm what was written (SQLite %1, system %2). It is not certain whether it was recorded. Check the disk and its room, close the store and open it again, and sign again only what is not there.</source>
        <translation>Der Datenträger hat nicht bestätigt, was geschrieben wurde (SQLite %1, System %2). Es ist nicht sicher, ob es eingetragen wurde. Prüfen Sie den Datenträger und seinen Platz, schließen Sie die Ablage, öffnen Sie sie erneut, und unterschreiben Sie nur das erneut, was nicht da ist.</translation>
    </message>
    <message>
        <source>The disk does not keep programs apart that use the store at once (SQLite %1, system %2). Nothing was recorded. Close the store and open it again; if it stays so, move the store to a disk of this computer.</source>
        <translation>Der Datenträger hält Programme, die die Ablage gleichzeitig benutzen, nicht auseinander (SQLite %1, System %2). Es wurde nichts eingetragen. Schließen Sie die Ablage, und öffnen Sie sie erneut; wenn es so bleibt, verschieben Sie die Ablage auf einen Datenträger dieses Rechners.</translation>
    </message>
    <message>
        <source>The disk is full, so nothing could be recorded in the store. Make room and open it again.</source>
        <translation>Der Datenträger ist voll, daher konnte nichts in die Ablage eingetragen werden. Schaffen Sie Platz, und öffnen Sie sie erneut.</translation>
    </message>
    <message>
        <source>The disk is full. Make room and export again.</source>
        <translation>Der Datenträger ist voll. Schaffen Sie Platz, und exportieren Sie noch einmal.</translation>
    </message>
    <message>
        <source>The disk is full. Nothing was recorded. Make room and sign again.</source>
        <translation>Der Datenträger ist voll. Es wurde nichts eingetragen. Schaffen Sie Platz, und unterschreiben Sie erneut.</translation>
    </message>
    <message>
        <source>The disk is full: make room.</source>
        <translation>Der Datenträger ist voll: Schaffen Sie Platz.</translation>
    </message>
    <message>
        <source>The disk reported an error (SQLite %1, system %2).</source>
        <translation>Der Datenträger meldete einen Fehler (SQLite %1, System %2).</translation>
    </message>
    <message>
        <source>The disk reported an error (SQLite %1, system %2). Nothing was recorded. Check that the disk is there and sign again; if it happens again, back up to another disk.</source>
        <translation>Der Datenträger meldete einen Fehler (SQLite %1, System %2). Es wurde nichts eingetragen. Prüfen Sie, ob der Datenträger vorhanden ist, und unterschreiben Sie erneut; wenn es wieder geschieht, sichern Sie auf einen anderen Datenträger.</translation>
    </message>
    <message>
        <source>The drag of a nut runs from less to more, not from %1 to %2.</source>
        <translation>Das Klemmdrehmoment der Mutter läuft vom kleineren zum größeren Wert, nicht von %1 bis %2.</translation>
    </message>
    <message>
        <source>The drag of fastener %1 was measured as %2 in entry %3, before the nut seated. Give that figure in the later passes as well.</source>
        <translation>Das Klemmdrehmoment von Verbindungselement %1 wurde in Eintrag %3 mit %2 gemessen, bevor die Mutter aufsaß. Geben Sie diesen Wert auch in den späteren Durchgängen an.</translation>
    </message>
    <message>
        <source>The drag of the self-locking nut is added to the torque of %1: measure it while the nut is run down, before it bears, and record it.</source>
        <translation>Das Klemmdrehmoment der selbstsichernden Mutter kommt zum Anziehdrehmoment von %1 hinzu: Messen Sie es beim Aufschrauben der Mutter, bevor sie aufliegt, und tragen Sie es ein.</translation>
    </message>
    <message>
        <source>The drain is open from end to end.</source>
        <translation>Die Drainleitung ist von Ende zu Ende offen.</translation>
    </message>
    <message>
        <source>The duct meets its mate without being pulled into place.</source>
        <translation>Der Kanal trifft auf sein Gegenstück, ohne in Position gezogen zu werden.</translation>
    </message>
    <message>
        <source>The earlier entry</source>
        <translation>Der frühere Eintrag</translation>
    </message>
    <message>
        <source>The end of the ZIP file is not as this program writes it.</source>
        <translation>Das Ende der ZIP-Datei ist nicht so, wie dieses Programm es schreibt.</translation>
    </message>
    <message>
        <source>The entries are safe in the side file, but writing them back into the store failed. Keep the side file beside the store, and check the disk. (%1)</source>
        <translation>Die Einträge sind in der Begleitdatei sicher, aber das Zurückschreiben in die Ablage ist misslungen. Behalten Sie die Begleitdatei neben der Ablage, und prüfen Sie den Datenträger. (%1)</translation>
    </message>
    <message>
        <source>The entries come here, the earliest first.</source>
        <translation>Die Einträge kommen hierher, die frühesten zuerst.</translation>
    </message>
    <message>
        <source>The entries of all jobs are shown.</source>
        <translation>Die Einträge aller Aufträge werden gezeigt.</translation>
    </message>
    <message>
        <source>The entry before it has number %1: entries are missing, or out of order.</source>
        <translation>Der Eintrag davor hat die Nummer %1: Einträge fehlen oder sind nicht in der Reihenfolge.</translation>
    </message>
    <message>
        <source>The entry has a member that no entry has.</source>
        <translation>Der Eintrag hat ein Element, das kein Eintrag hat.</translation>
    </message>
    <message>
        <source>The entry is not of form 1; a later version of the program may read it.</source>
        <translation>Der Eintrag hat nicht die Form 1; eine spätere Version des Programms kann ihn vielleicht lesen.</translation>
    </message>
    <message>
        <source>The entry's "%1" is missing or not of its type.</source>
        <translation>„%1“ des Eintrags fehlt oder hat nicht den richtigen Typ.</translation>
    </message>
    <message>
        <source>The export was cancelled; no file was written.</source>
        <translation>Der Export wurde abgebrochen; es wurde keine Datei geschrieben.</translation>
    </message>
    <message>
        <source>The fasteners are numbered clockwise from 1. Where the maintenance data gives an order, it governs.</source>
        <translation>Die Verbindungselemente sind im Uhrzeigersinn ab 1 nummeriert. Wo die Instandhaltungsunterlagen eine Reihenfolge angeben, gilt diese.</translation>
    </message>
    <message>
        <source>The fasteners of %1 are tightened in their order: %2 comes next, not %3.</source>
        <translation>Die Verbindungselemente von %1 werden in ihrer Reihenfolge angezogen: %2 ist als Nächstes dran, nicht %3.</translation>
    </message>
    <message>
        <source>The fasteners of %1 are tightened in their order: %2 comes next. To take %3 first, say why.</source>
        <translation>Die Verbindungselemente von %1 werden in ihrer Reihenfolge angezogen: %2 ist als Nächstes dran. Um %3 zuerst zu nehmen, geben Sie an, warum.</translation>
    </message>
    <message>
        <source>The file %1 could not be used (system %2). It orders the programs that write to the store. Check that you may write to the folder and that the disk has room.</source>
        <translation>Die Datei %1 konnte nicht benutzt werden (System %2). Sie regelt die Reihenfolge der Programme, die in die Ablage schreiben. Prüfen Sie, ob Sie in den Ordner schreiben dürfen und ob der Datenträger Platz hat.</translation>
    </message>
    <message>
        <source>The file %1%2, left by another store, is in the way. Choose another name, or move that file away.</source>
        <translation>Die Datei %1%2, von einer anderen Ablage hinterlassen, ist im Weg. Wählen Sie einen anderen Namen, oder verschieben Sie diese Datei.</translation>
    </message>
    <message>
        <source>The file cannot be read (%1).</source>
        <translation>Die Datei kann nicht gelesen werden (%1).</translation>
    </message>
    <message>
        <source>The file cannot be written (%1). Choose another folder, or ask who looks after it.</source>
        <translation>Die Datei kann nicht geschrieben werden (%1). Wählen Sie einen anderen Ordner, oder fragen Sie, wer diesen betreut.</translation>
    </message>
    <message>
        <source>The file cannot be written (%1). Make room, or choose another folder.</source>
        <translation>Die Datei kann nicht geschrieben werden (%1). Schaffen Sie Platz, oder wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>The file cannot be written. Make room and export again.</source>
        <translation>Die Datei kann nicht geschrieben werden. Schaffen Sie Platz, und exportieren Sie noch einmal.</translation>
    </message>
    <message>
        <source>The file cannot be written. Make room, or choose another folder.</source>
        <translation>Die Datei kann nicht geschrieben werden. Schaffen Sie Platz, oder wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>The file could not be begun. Choose another folder and export again.</source>
        <translation>Die Datei konnte nicht begonnen werden. Wählen Sie einen anderen Ordner, und exportieren Sie noch einmal.</translation>
    </message>
    <message>
        <source>The file could not be begun. Choose another folder and try again.</source>
        <translation>Die Datei konnte nicht begonnen werden. Wählen Sie einen anderen Ordner, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The file holds no list "hold_points".</source>
        <translation>Die Datei enthält keine Liste „hold_points“.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Die Datei ist leer.</translation>
    </message>
    <message>
        <source>The file is empty. Expected: a first row that names the columns, then one row an interface.</source>
        <translation>Die Datei ist leer. Erwartet: eine erste Zeile, die die Spalten benennt, dann je Anschluss eine Zeile.</translation>
    </message>
    <message>
        <source>The file is longer than 64 MiB, which no list is.</source>
        <translation>Die Datei ist länger als 64 MiB; das ist keine Liste.</translation>
    </message>
    <message>
        <source>The file names columns but lists no interface.</source>
        <translation>Die Datei benennt Spalten, führt aber keinen Anschluss auf.</translation>
    </message>
    <message>
        <source>The file tells where it was taken.</source>
        <translation>Die Datei verrät, wo es aufgenommen wurde.</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>Die Datei wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>The file was written</source>
        <translation>Die Datei wurde geschrieben</translation>
    </message>
    <message>
        <source>The finding number "%1" is taken or cannot be used. Take the next one.</source>
        <translation>Die Befundnummer „%1“ ist vergeben oder nicht verwendbar. Nehmen Sie die nächste.</translation>
    </message>
    <message>
        <source>The fingerprint that the organisation publishes, 64 digits; may stay empty</source>
        <translation>Der Fingerabdruck, den die Organisation veröffentlicht, 64 Stellen; darf leer bleiben</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Der Ordner %1 kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be watched. Choose another, or add the photos as files.</source>
        <translation>Der Ordner %1 lässt sich nicht beobachten. Wählen Sie einen anderen, oder fügen Sie die Fotos als Dateien hinzu.</translation>
    </message>
    <message>
        <source>The folder %1 is gone, so it is watched no longer. Connect the camera again, and choose its folder.</source>
        <translation>Den Ordner %1 gibt es nicht mehr, er wird nicht länger beobachtet. Schließen Sie die Kamera wieder an und wählen Sie ihren Ordner.</translation>
    </message>
    <message>
        <source>The folder is not watched</source>
        <translation>Der Ordner wird nicht beobachtet</translation>
    </message>
    <message>
        <source>The foot of a printed record names its last entry and the hash of it. Either says what to compare with.</source>
        <translation>Der Fuß eines gedruckten Nachweises nennt dessen letzten Eintrag und die zugehörige Prüfsumme. Beides sagt, womit zu vergleichen ist.</translation>
    </message>
    <message>
        <source>The founder of a register enrols themselves, nobody else.</source>
        <translation>Wer ein Stammbuch anlegt, nimmt sich selbst auf, sonst niemanden.</translation>
    </message>
    <message>
        <source>The frame of the record is not up for correction.</source>
        <translation>Der Rahmen des Nachweises steht nicht zur Berichtigung.</translation>
    </message>
    <message>
        <source>The group has %1 pairs; read both halves of each, once.</source>
        <translation>Die Gruppe hat %1 Paare; lesen Sie beide Hälften von jedem, einmal.</translation>
    </message>
    <message>
        <source>The handover is to %1, who accepts it in person.</source>
        <translation>Die Übergabe geht an %1, und diese Person nimmt sie selbst an.</translation>
    </message>
    <message>
        <source>The handover to %1 has not been accepted.</source>
        <translation>Die Übergabe an %1 wurde nicht angenommen.</translation>
    </message>
    <message>
        <source>The handover was accepted, and entry %1 was made under it. It stays; hand over again.</source>
        <translation>Die Übergabe wurde angenommen, und Eintrag %1 wurde unter ihr gemacht. Sie bleibt; übergeben Sie noch einmal.</translation>
    </message>
    <message>
        <source>The hoist</source>
        <translation>Das Hebezeug</translation>
    </message>
    <message>
        <source>The hold point %1 (%2) has not been passed. %3</source>
        <translation>Der Haltepunkt %1 (%2) wurde nicht passiert. %3</translation>
    </message>
    <message>
        <source>The hold point %1 (%2) has to be passed again.</source>
        <translation>Der Haltepunkt %1 (%2) muss noch einmal passiert werden.</translation>
    </message>
    <message>
        <source>The hold point %1 (%2) has to be passed again. %3</source>
        <translation>Der Haltepunkt %1 (%2) muss noch einmal passiert werden. %3</translation>
    </message>
    <message>
        <source>The hold point %1 has not been passed.</source>
        <translation>Der Haltepunkt %1 ist nicht passiert.</translation>
    </message>
    <message>
        <source>The hold point %1 is taken back by somebody who may pass it.</source>
        <translation>Der Haltepunkt %1 wird von jemandem zurückgenommen, der ihn passieren darf.</translation>
    </message>
    <message>
        <source>The hold point %1 was passed in entry %2, so what it asks for stays.</source>
        <translation>Der Haltepunkt %1 wurde in Eintrag %2 passiert; was er verlangt, bleibt daher.</translation>
    </message>
    <message>
        <source>The hook hangs above the centre of gravity, and the lifting points lie above it too.</source>
        <translation>Der Haken hängt über dem Schwerpunkt, und auch die Anschlagpunkte liegen darüber.</translation>
    </message>
    <message>
        <source>The id "%1" belongs to somebody already. An id is never given twice.</source>
        <translation>Die Kennung „%1“ gehört bereits jemandem. Eine Kennung wird nie zweimal vergeben.</translation>
    </message>
    <message>
        <source>The id "%1" stands already on row %2. Expected: each id once.</source>
        <translation>Die Kennung „%1“ steht bereits in Zeile %2. Erwartet: jede Kennung einmal.</translation>
    </message>
    <message>
        <source>The imported package %1 is damaged: it is not what it was when it came. Import it again from where it came from.</source>
        <translation>Das importierte Paket %1 ist beschädigt: Es ist nicht mehr, was es beim Eingang war. Importieren Sie es erneut von dort, woher es kam.</translation>
    </message>
    <message>
        <source>The incoming shift needs a lead who may lead.</source>
        <translation>Die übernehmende Schicht braucht einen Leiter, der leiten darf.</translation>
    </message>
    <message>
        <source>The incoming unit</source>
        <translation>Das eingehende Aggregat</translation>
    </message>
    <message>
        <source>The incoming unit hangs in its place. To take it off again is a job of its own.</source>
        <translation>Das eingehende Aggregat hängt an seinem Platz. Es wieder auszubauen ist ein eigener Auftrag.</translation>
    </message>
    <message>
        <source>The incoming unit is in its place, and its shipping blanks are out.</source>
        <translation>Das eingehende Aggregat ist an seinem Platz, und seine Transportverschlüsse sind heraus.</translation>
    </message>
    <message>
        <source>The incoming unit is received: plate, certificate, blanks and modification state.</source>
        <translation>Das eingehende Aggregat ist angenommen: Typenschild, Bescheinigung, Verschlüsse und Änderungsstand.</translation>
    </message>
    <message>
        <source>The incoming unit was not received yet: its plate, its certificate and its blanks are looked at first.</source>
        <translation>Das eingehende Aggregat wurde noch nicht angenommen: Zuerst werden Typenschild, Bescheinigung und Verschlüsse angesehen.</translation>
    </message>
    <message>
        <source>The index of where things were used has %1 uses, and the entries give %2: it was changed.</source>
        <translation>Das Verzeichnis, wo etwas verwendet wurde, hat %1 Verwendungen, und die Einträge ergeben %2: Es wurde geändert.</translation>
    </message>
    <message>
        <source>The index of where things were used is of another version of this program. Open the store once for writing, so that it is made again.</source>
        <translation>Das Verzeichnis, wo etwas verwendet wurde, stammt von einer anderen Version dieses Programms. Öffnen Sie die Ablage einmal zum Schreiben, damit es neu erstellt wird.</translation>
    </message>
    <message>
        <source>The interface is not on the list</source>
        <translation>Der Anschluss ist nicht in der Liste</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>Der Auftrag</translation>
    </message>
    <message>
        <source>The job as a seam: one coupling for each interface</source>
        <translation>Der Auftrag als Naht: eine Kupplung für jeden Anschluss</translation>
    </message>
    <message>
        <source>The job at a glance: every interface across the boundary of the unit</source>
        <translation>Der Auftrag auf einen Blick: jeder Anschluss über die Grenze des Aggregats</translation>
    </message>
    <message>
        <source>The job closes when this list is empty. Return or a double click leads to where a loose end is cleared.</source>
        <translation>Der Auftrag wird abgeschlossen, wenn diese Liste leer ist. Eingabetaste oder Doppelklick führt dorthin, wo eine offene Stelle erledigt wird.</translation>
    </message>
    <message>
        <source>The job has a temporary item %1 already. Give this one a number of its own.</source>
        <translation>Der Auftrag hat bereits ein Hilfsmittel %1. Geben Sie diesem eine eigene Nummer.</translation>
    </message>
    <message>
        <source>The job has a test "%1" already, of entry %2.</source>
        <translation>Der Auftrag hat bereits einen Test „%1“, aus Eintrag %2.</translation>
    </message>
    <message>
        <source>The job has an accessory "%1" already: %2.</source>
        <translation>Der Auftrag hat bereits ein Anbauteil „%1“: %2.</translation>
    </message>
    <message>
        <source>The job has entries 1 to %1; there are none from %2 to %3.</source>
        <translation>Der Auftrag hat die Einträge 1 bis %1; von %2 bis %3 gibt es keine.</translation>
    </message>
    <message>
        <source>The job has loose ends: %1. The first: %2</source>
        <translation>Der Auftrag hat offene Stellen: %1. Die erste: %2</translation>
    </message>
    <message>
        <source>The job has no entry %1; its last one is %2.</source>
        <translation>Der Auftrag hat keinen Eintrag %1; sein letzter ist %2.</translation>
    </message>
    <message>
        <source>The job has not been opened yet.</source>
        <translation>Der Auftrag wurde noch nicht eröffnet.</translation>
    </message>
    <message>
        <source>The job is closed</source>
        <translation>Der Auftrag ist abgeschlossen</translation>
    </message>
    <message>
        <source>The job is closed.</source>
        <translation>Der Auftrag ist abgeschlossen.</translation>
    </message>
    <message>
        <source>The job is not closed. Close it first, or export a draft that says so on each page.</source>
        <translation>Der Auftrag ist nicht abgeschlossen. Schließen Sie ihn zuerst ab, oder exportieren Sie einen Entwurf, der das auf jeder Seite angibt.</translation>
    </message>
    <message>
        <source>The job lists "%1" already.</source>
        <translation>Der Auftrag führt „%1“ bereits auf.</translation>
    </message>
    <message>
        <source>The job lists no accessory "%1".</source>
        <translation>Der Auftrag führt kein Anbauteil „%1“ auf.</translation>
    </message>
    <message>
        <source>The job lists no interface to draw from.</source>
        <translation>Der Auftrag führt keinen Anschluss auf, der gezogen werden könnte.</translation>
    </message>
    <message>
        <source>The job lists no interface; there is nothing to release.</source>
        <translation>Der Auftrag führt keinen Anschluss auf; es gibt nichts freizugeben.</translation>
    </message>
    <message>
        <source>The job lists nothing that a photo could show. Import the interface list first; what waits here stays.</source>
        <translation>Der Auftrag führt nichts auf, was ein Foto zeigen könnte. Importieren Sie zuerst die Anschlussliste; was hier wartet, bleibt.</translation>
    </message>
    <message>
        <source>The job was closed on %1 and takes no more entries. Open a follow-on job that names it.</source>
        <translation>Der Auftrag wurde am %1 abgeschlossen und nimmt keine Einträge mehr auf. Eröffnen Sie einen Folgeauftrag, der ihn nennt.</translation>
    </message>
    <message>
        <source>The job was not handed over.</source>
        <translation>Der Auftrag wurde nicht übergeben.</translation>
    </message>
    <message>
        <source>The job was not opened</source>
        <translation>Der Auftrag wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>The job with this ledger is of the work order %1, not of %2. Make sure that it is the one you mean.</source>
        <translation>Der Auftrag mit diesem Buch gehört zum Arbeitsauftrag %1, nicht zu %2. Vergewissern Sie sich, dass es der gemeinte ist.</translation>
    </message>
    <message>
        <source>The job works to revision %1 already.</source>
        <translation>Der Auftrag arbeitet bereits nach Revision %1.</translation>
    </message>
    <message>
        <source>The key is bound to no station yet: a copy of the store gives the PIN away. It is bound when they next sign.</source>
        <translation>Der Schlüssel ist noch an keinen Arbeitsplatz gebunden: Eine Kopie der Ablage gibt die PIN preis. Er wird bei der nächsten Unterschrift gebunden.</translation>
    </message>
    <message>
        <source>The key it names is not the one that the register held for %1 at that moment.</source>
        <translation>Der Schlüssel, den er nennt, ist nicht der, den das Stammbuch in jenem Augenblick für %1 führte.</translation>
    </message>
    <message>
        <source>The key of %1 is locked after too many wrong PINs or passphrases. An administrator registers a new key for them; what they signed stays valid.</source>
        <translation>Der Schlüssel von %1 ist nach zu vielen falschen PINs oder Passphrasen gesperrt. Ein Administrator registriert einen neuen Schlüssel für die Person; was sie unterschrieben hat, bleibt gültig.</translation>
    </message>
    <message>
        <source>The key of %1 is not at this station, so their PIN opens nothing here. At a station where they sign they choose "Carry your key over", and type the code here; or an administrator registers a new key for them. What they signed stays valid.</source>
        <translation>Der Schlüssel von %1 ist nicht an diesem Arbeitsplatz, daher öffnet die PIN hier nichts. An einem Arbeitsplatz, an dem die Person unterschreibt, wählt sie „Eigenen Schlüssel mitnehmen“ und gibt den Code hier ein; oder ein Administrator registriert einen neuen Schlüssel für sie. Was sie unterschrieben hat, bleibt gültig.</translation>
    </message>
    <message>
        <source>The key of %1 is not at this station. Take it over with a code from a station where they sign, or have a new key registered.</source>
        <translation>Der Schlüssel von %1 ist nicht an diesem Arbeitsplatz. Übernehmen Sie ihn mit einem Code von einem Arbeitsplatz, an dem die Person unterschreibt, oder lassen Sie einen neuen Schlüssel registrieren.</translation>
    </message>
    <message>
        <source>The key of %1 is stopped already. Give them a new one.</source>
        <translation>Der Schlüssel von %1 ist bereits gesperrt. Geben Sie dieser Person einen neuen.</translation>
    </message>
    <message>
        <source>The key of %1 was replaced or stopped since this transfer was made. It signs nothing any more.</source>
        <translation>Der Schlüssel von %1 wurde seit dieser Übertragung ersetzt oder gesperrt. Er unterschreibt nichts mehr.</translation>
    </message>
    <message>
        <source>The key of %1 was stopped on %2. They sign again once they have a new one.</source>
        <translation>Der Schlüssel von %1 wurde am %2 gesperrt. Mit einem neuen Schlüssel kann wieder unterschrieben werden.</translation>
    </message>
    <message>
        <source>The key was stopped on %1.</source>
        <translation>Der Schlüssel wurde am %1 gesperrt.</translation>
    </message>
    <message>
        <source>The kit %1 needs the number of its pieces, 1 to %2.</source>
        <translation>Der Satz %1 braucht die Anzahl seiner Teile, 1 bis %2.</translation>
    </message>
    <message>
        <source>The kit %1 went out with %2 pieces; %3 are counted. Find the difference, or say that it is missing.</source>
        <translation>Der Satz %1 ging mit %2 Teilen hinaus; gezählt sind %3. Klären Sie den Unterschied, oder geben Sie an, dass es fehlt.</translation>
    </message>
    <message>
        <source>The label %1 stands there twice.</source>
        <translation>Die Bezeichnung %1 steht zweimal da.</translation>
    </message>
    <message>
        <source>The label is of %1 of this job, whose list has no such interface (any more). Look at the list, or print the labels anew.</source>
        <translation>Das Etikett gehört zu %1 dieses Auftrags, dessen Liste einen solchen Anschluss nicht (mehr) enthält. Sehen Sie die Liste an, oder drucken Sie die Etiketten neu.</translation>
    </message>
    <message>
        <source>The label is of another job</source>
        <translation>Das Etikett gehört zu einem anderen Auftrag</translation>
    </message>
    <message>
        <source>The label names %1 of %2.</source>
        <translation>Auf dem Etikett steht %1 von %2.</translation>
    </message>
    <message>
        <source>The labels were exported</source>
        <translation>Die Etiketten wurden exportiert</translation>
    </message>
    <message>
        <source>The labels were not exported</source>
        <translation>Die Etiketten wurden nicht exportiert</translation>
    </message>
    <message>
        <source>The language was not changed</source>
        <translation>Die Sprache wurde nicht gewechselt</translation>
    </message>
    <message>
        <source>The last backup is %1 old. Back up the store to another disk.</source>
        <translation>Die letzte Sicherungskopie ist %1 alt. Sichern Sie die Ablage auf einen anderen Datenträger.</translation>
    </message>
    <message>
        <source>The last day (%1) lies before the first (%2).</source>
        <translation>Der letzte Tag (%1) liegt vor dem ersten (%2).</translation>
    </message>
    <message>
        <source>The last day on which the tool was known to be right lies before today; usually it is that of its last good calibration.</source>
        <translation>Der letzte Tag, an dem das Werkzeug bekanntermaßen in Ordnung war, liegt vor heute; meist ist es der seiner letzten guten Kalibrierung.</translation>
    </message>
    <message>
        <source>The last entry is not struck</source>
        <translation>Der letzte Eintrag wird nicht gestrichen</translation>
    </message>
    <message>
        <source>The last entry of this ledger (number %1) is damaged. Nothing more can be recorded in it. Verify the store, and go on with the last backup.</source>
        <translation>Der letzte Eintrag dieses Buchs (Nummer %1) ist beschädigt. Es kann nichts mehr darin eingetragen werden. Verifizieren Sie die Ablage, und arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>The last handover</source>
        <translation>Die letzte Übergabe</translation>
    </message>
    <message>
        <source>The last line has no end: the file was cut off.</source>
        <translation>Die letzte Zeile hat kein Ende: Die Datei wurde abgeschnitten.</translation>
    </message>
    <message>
        <source>The last pass goes to %1 % of the final torque. Add the pass to 100 %.</source>
        <translation>Der letzte Durchgang geht auf %1 % des Enddrehmoments. Ergänzen Sie den Durchgang auf 100 %.</translation>
    </message>
    <message>
        <source>The last pass of a torque is 100 percent, and there are at most %1 passes; these are %2, the last %3.</source>
        <translation>Der letzte Durchgang eines Anziehdrehmoments ist 100 Prozent, und es gibt höchstens %1 Durchgänge; hier sind es %2, der letzte %3.</translation>
    </message>
    <message>
        <source>The later entry</source>
        <translation>Der spätere Eintrag</translation>
    </message>
    <message>
        <source>The lead has slack and cannot foul a moving part.</source>
        <translation>Das Masseband hat Spiel und kann kein bewegliches Teil behindern.</translation>
    </message>
    <message>
        <source>The lead signs it, before anything is done that it would hold back.</source>
        <translation>Der Leiter unterschreibt ihn, bevor etwas getan wird, das er zurückhalten würde.</translation>
    </message>
    <message>
        <source>The ledger is there up to entry %1; the job's entries pin it up to entry %2.</source>
        <translation>Das Buch reicht bis Eintrag %1; die Einträge des Auftrags legen es bis Eintrag %2 fest.</translation>
    </message>
    <message>
        <source>The legs that carry are taken to be equally long and the angle to be that of the flattest; n is the number of those reckoned with at a point. A cradle that stays on the unit counts as part of it.</source>
        <translation>Die tragenden Stränge werden als gleich lang angenommen, ihr Winkel als der des flachsten; n ist die Zahl derer, mit denen an einem Punkt gerechnet wird. Ein Gestell, das am Aggregat bleibt, zählt zu ihm.</translation>
    </message>
    <message>
        <source>The library that puts PDF files together cannot be loaded (%1). Install the package libqpdf%2 and export again; nothing that was signed is touched.</source>
        <translation>Die Bibliothek, die PDF-Dateien zusammensetzt, kann nicht geladen werden (%1). Installieren Sie das Paket libqpdf%2 und exportieren Sie noch einmal; was unterschrieben ist, bleibt unberührt.</translation>
    </message>
    <message>
        <source>The lift is on %1, which is past. Plan a lift before it is made; leave the day out when it is today.</source>
        <translation>Der Hebevorgang ist am %1, und das ist vergangen. Planen Sie einen Hebevorgang, bevor er stattfindet; lassen Sie den Tag weg, wenn es heute ist.</translation>
    </message>
    <message>
        <source>The line does not begin with a SHA-256 digest in lower-case hex.</source>
        <translation>Die Zeile beginnt nicht mit einer SHA-256-Prüfsumme in Kleinbuchstaben-Hexadezimal.</translation>
    </message>
    <message>
        <source>The line goes to the port of its own designation.</source>
        <translation>Die Leitung führt zu dem Anschluss mit ihrer eigenen Bezeichnung.</translation>
    </message>
    <message>
        <source>The line is not UTF-8.</source>
        <translation>Die Zeile ist nicht UTF-8.</translation>
    </message>
    <message>
        <source>The line is not hash, seq and a signature of 64 bytes in base64.</source>
        <translation>Die Zeile ist nicht hash, seq und eine Unterschrift von 64 Byte in base64.</translation>
    </message>
    <message>
        <source>The line is not in the one form that it has.</source>
        <translation>Die Zeile hat nicht die einzige Form, die es für sie gibt.</translation>
    </message>
    <message>
        <source>The line lies free, without strain or rubbing.</source>
        <translation>Die Leitung liegt frei, ohne Spannung oder Scheuern.</translation>
    </message>
    <message>
        <source>The linkage moves freely from stop to stop and does not touch its neighbours.</source>
        <translation>Das Gestänge bewegt sich frei von Anschlag zu Anschlag und berührt seine Nachbarn nicht.</translation>
    </message>
    <message>
        <source>The linked job %1 cannot be seen from here. Keep both in one store.</source>
        <translation>Der verknüpfte Auftrag %1 ist von hier nicht sichtbar. Führen Sie beide in einer Ablage.</translation>
    </message>
    <message>
        <source>The linked job %1 cannot be seen from here. Keep both in one store; nothing is recorded until then.</source>
        <translation>Der verknüpfte Auftrag %1 ist von hier nicht sichtbar. Führen Sie beide in einer Ablage; bis dahin wird nichts eingetragen.</translation>
    </message>
    <message>
        <source>The liquid</source>
        <translation>Die Flüssigkeit</translation>
    </message>
    <message>
        <source>The list asks for %1 on %2; the entry says "%3".</source>
        <translation>Die Liste verlangt %1 an %2; der Eintrag gibt „%3“ an.</translation>
    </message>
    <message>
        <source>The list asks for no bonding resistance on %1.</source>
        <translation>Die Liste verlangt keinen Masseverbindungswiderstand an %1.</translation>
    </message>
    <message>
        <source>The list asks for no leak check on %1. What is seen leaking is a finding.</source>
        <translation>Die Liste verlangt an %1 keine Dichtheitsprüfung. Was als undicht gesehen wird, ist ein Befund.</translation>
    </message>
    <message>
        <source>The list asks for no torque on %1. If the maintenance data does, correct the list.</source>
        <translation>Die Liste verlangt kein Anziehdrehmoment an %1. Verlangen es die Instandhaltungsunterlagen, berichtigen Sie die Liste.</translation>
    </message>
    <message>
        <source>The list cannot be read</source>
        <translation>Die Liste kann nicht gelesen werden</translation>
    </message>
    <message>
        <source>The list gives no least drag for the nuts of %1, so none of them can be used again. Fit a new nut.</source>
        <translation>Die Liste gibt für die Muttern von %1 kein kleinstes Klemmdrehmoment an, also darf keine wiederverwendet werden. Bauen Sie eine neue Mutter an.</translation>
    </message>
    <message>
        <source>The list has %1 drops to the millilitre for %2, not %3. Leave the number out.</source>
        <translation>Die Liste hat %1 Tropfen je Milliliter für %2, nicht %3. Lassen Sie die Zahl weg.</translation>
    </message>
    <message>
        <source>The list has an interface "%1" already.</source>
        <translation>Die Liste hat bereits einen Anschluss „%1“.</translation>
    </message>
    <message>
        <source>The list has no interface "%1".</source>
        <translation>Die Liste hat keinen Anschluss „%1“.</translation>
    </message>
    <message>
        <source>The list has no interface "%1". List it first.</source>
        <translation>Die Liste hat keinen Anschluss „%1“. Führen Sie ihn zuerst auf.</translation>
    </message>
    <message>
        <source>The list is corrected by the lead, or by an inspector who had no hand in the interface; %1 is neither.</source>
        <translation>Die Liste wird vom Leiter berichtigt oder von einem Prüfer, der am Anschluss nicht beteiligt war; auf %1 trifft beides nicht zu.</translation>
    </message>
    <message>
        <source>The list is empty</source>
        <translation>Die Liste ist leer</translation>
    </message>
    <message>
        <source>The list limits no class of %1, so what shows would be judged by nothing; dry alone is within any limit. Leave it out and raise a finding, or have the list corrected.</source>
        <translation>Die Liste begrenzt keine Klasse von %1, also würde das Sichtbare an nichts gemessen; nur trocken liegt innerhalb jedes Grenzwerts. Lassen Sie es weg und melden Sie einen Befund, oder lassen Sie die Liste berichtigen.</translation>
    </message>
    <message>
        <source>The list limits no rate of %1, so a rate would be judged by nothing. Leave it out and raise a finding, or have the list corrected.</source>
        <translation>Die Liste begrenzt keine Rate von %1, also würde eine Rate an nichts gemessen. Lassen Sie sie weg und melden Sie einen Befund, oder lassen Sie die Liste berichtigen.</translation>
    </message>
    <message>
        <source>The list names no hardware, and none was recorded.</source>
        <translation>Die Liste nennt kein Befestigungsmaterial, und es wurde keines eingetragen.</translation>
    </message>
    <message>
        <source>The list names no twins of %1 that could be told apart by the designations of their halves.</source>
        <translation>Die Liste nennt keine Gegenprüfungspaare von %1, die sich an den Bezeichnungen ihrer Hälften unterscheiden ließen.</translation>
    </message>
    <message>
        <source>The list of attachments is damaged. Verify the store, and go on with the last backup.</source>
        <translation>Die Liste der Anlagen ist beschädigt. Verifizieren Sie die Ablage, und arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>The list of imported packages is damaged. Verify the store, and go on with the last backup.</source>
        <translation>Die Liste der importierten Pakete ist beschädigt. Verifizieren Sie die Ablage, und arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>The list of what is open has moved on. Look at it again, then sign.</source>
        <translation>Die Liste dessen, was offen ist, hat sich weiterentwickelt. Sehen Sie sie noch einmal an, und unterschreiben Sie dann.</translation>
    </message>
    <message>
        <source>The list was exported</source>
        <translation>Die Liste wurde exportiert</translation>
    </message>
    <message>
        <source>The list was not exported</source>
        <translation>Die Liste wurde nicht exportiert</translation>
    </message>
    <message>
        <source>The local rules say how long it is looked for, and who may release an aircraft whose tool was not found.</source>
        <translation>Die örtlichen Vorschriften sagen, wie lange gesucht wird und wer ein Luftfahrzeug freigeben darf, dessen Werkzeug nicht gefunden wurde.</translation>
    </message>
    <message>
        <source>The look-up tables are not complete. Install the program again.</source>
        <translation>Die Nachschlagetabellen sind nicht vollständig. Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <source>The lower size itself</source>
        <translation>Die untere Größe selbst</translation>
    </message>
    <message>
        <source>The maintenance data of %1 was revised (entry %2), and nobody has looked up yet what it asks for now. Correct its row of the list, or sign it as it is.</source>
        <translation>Die Instandhaltungsunterlagen zu %1 wurden geändert (Eintrag %2), und noch niemand hat nachgesehen, was sie jetzt verlangen. Berichtigen Sie die Zeile in der Liste, oder unterschreiben Sie sie, wie sie ist.</translation>
    </message>
    <message>
        <source>The maintenance data of %1 was revised (entry %2), and nobody has looked up yet what it asks for now. Do that before it goes.</source>
        <translation>Die Instandhaltungsunterlagen zu %1 wurden geändert (Eintrag %2), und noch niemand hat nachgesehen, was sie jetzt verlangen. Tun Sie das, bevor es abgegeben wird.</translation>
    </message>
    <message>
        <source>The maintenance data of %1 was revised. What it asks for is to be looked up.</source>
        <translation>Die Instandhaltungsunterlagen zu %1 wurden geändert. Es ist nachzusehen, was sie verlangen.</translation>
    </message>
    <message>
        <source>The manual cannot be shown</source>
        <translation>Das Handbuch kann nicht angezeigt werden</translation>
    </message>
    <message>
        <source>The manual has no page "%1". Install the program again.</source>
        <translation>Das Handbuch hat keine Seite „%1“. Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <source>The meaning "%1" does not belong to %2.</source>
        <translation>Die Bedeutung „%1“ gehört nicht zu %2.</translation>
    </message>
    <message>
        <source>The measured resistance lies within its limit.</source>
        <translation>Der gemessene Widerstand liegt innerhalb seines Grenzwerts.</translation>
    </message>
    <message>
        <source>The member "%1" is not as it must be. Expected: %2.</source>
        <translation>Das Element „%1“ ist nicht, wie es sein muss. Erwartet: %2.</translation>
    </message>
    <message>
        <source>The member "%1" of a hold point is not of the form that it has to be.</source>
        <translation>Das Element „%1“ eines Haltepunkts hat nicht die Form, die es haben muss.</translation>
    </message>
    <message>
        <source>The name of the store's register is damaged. Verify the store, and go on with the last backup.</source>
        <translation>Der Name des Stammbuchs der Ablage ist beschädigt. Verifizieren Sie die Ablage, und arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>The new PIN or passphrase needs at least %1 characters.</source>
        <translation>Die neue PIN oder Passphrase braucht mindestens %1 Zeichen.</translation>
    </message>
    <message>
        <source>The newest entries of %1 are in its side file, and the folder cannot be written to. Copy the store together with the file %1-wal to a folder of your own and open it there.</source>
        <translation>Die neuesten Einträge von %1 sind in der Begleitdatei, und in den Ordner kann nicht geschrieben werden. Kopieren Sie die Ablage zusammen mit der Datei %1-wal in einen eigenen Ordner, und öffnen Sie sie dort.</translation>
    </message>
    <message>
        <source>The next shift undoes what it knows of.</source>
        <translation>Die nächste Schicht macht rückgängig, wovon sie weiß.</translation>
    </message>
    <message>
        <source>The next try is possible in %1.</source>
        <translation>Der nächste Versuch ist in %1 möglich.</translation>
    </message>
    <message>
        <source>The number %1 cannot be used, or stands on the photo already. The next one is %2.</source>
        <translation>Die Nummer %1 ist nicht zulässig oder steht schon auf dem Foto. Die nächste ist %2.</translation>
    </message>
    <message>
        <source>The number %1 in %2 would be in the band: was the scale read in another unit?</source>
        <translation>Die Zahl %1 in %2 läge im Bereich: Wurde die Skala in einer anderen Einheit abgelesen?</translation>
    </message>
    <message>
        <source>The nut turns with</source>
        <translation>Die Mutter dreht sich mit</translation>
    </message>
    <message>
        <source>The nut turns with %1, and at most %2 is allowed: it or its thread is damaged. Take it off, look at both, and follow the maintenance data.</source>
        <translation>Die Mutter dreht sich mit %1, und höchstens %2 ist zulässig: Sie oder ihr Gewinde ist beschädigt. Nehmen Sie sie ab, sehen Sie beide an und folgen Sie den Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>The nut turns with %1; a self-locking nut that is used again needs at least %2. Fit a new nut.</source>
        <translation>Die Mutter dreht sich mit %1; eine wiederverwendete selbstsichernde Mutter braucht mindestens %2. Nehmen Sie eine neue Mutter.</translation>
    </message>
    <message>
        <source>The one bolt that everybody left to the others tears out what it holds.</source>
        <translation>Der eine Bolzen, den jeder den anderen überließ, reißt heraus, was er hält.</translation>
    </message>
    <message>
        <source>The open job is %1.</source>
        <translation>Offen ist der Auftrag %1.</translation>
    </message>
    <message>
        <source>The outgoing unit</source>
        <translation>Das ausgehende Aggregat</translation>
    </message>
    <message>
        <source>The outgoing unit goes back on.</source>
        <translation>Das ausgehende Aggregat wird wieder eingebaut.</translation>
    </message>
    <message>
        <source>The outgoing unit is not off yet.</source>
        <translation>Das ausgehende Aggregat ist noch nicht ausgebaut.</translation>
    </message>
    <message>
        <source>The outgoing unit is off (entry %1), and none was received since that %2 could be joined to.</source>
        <translation>Das ausgehende Aggregat ist ausgebaut (Eintrag %1), und seither wurde keines angenommen, an das %2 angeschlossen werden könnte.</translation>
    </message>
    <message>
        <source>The outgoing unit is off, and no unit was positioned in its place: %1 is to go up.</source>
        <translation>Das ausgehende Aggregat ist ausgebaut, und kein Aggregat wurde an seinem Platz positioniert: %1 ist anzuheben.</translation>
    </message>
    <message>
        <source>The outgoing unit is off, blanked and tagged.</source>
        <translation>Das ausgehende Aggregat ist ausgebaut, verschlossen und mit Anhänger gekennzeichnet.</translation>
    </message>
    <message>
        <source>The package cannot be begun. Choose another folder.</source>
        <translation>Das Paket kann nicht begonnen werden. Wählen Sie einen anderen Ordner.</translation>
    </message>
    <message>
        <source>The package cannot be verified</source>
        <translation>Das Paket kann nicht verifiziert werden</translation>
    </message>
    <message>
        <source>The package cannot be written (%1). Choose another folder, or ask who looks after it.</source>
        <translation>Das Paket kann nicht geschrieben werden (%1). Wählen Sie einen anderen Ordner, oder fragen Sie, wer diesen betreut.</translation>
    </message>
    <message>
        <source>The package changed while it was read. Import it again.</source>
        <translation>Das Paket änderte sich, während es gelesen wurde. Importieren Sie es erneut.</translation>
    </message>
    <message>
        <source>The package does not hold the attachment %1.</source>
        <translation>Das Paket enthält die Anlage %1 nicht.</translation>
    </message>
    <message>
        <source>The package does not hold, and was not imported. %1</source>
        <translation>Das Paket stimmt nicht und wurde nicht importiert. %1</translation>
    </message>
    <message>
        <source>The package was imported</source>
        <translation>Das Paket wurde importiert</translation>
    </message>
    <message>
        <source>The package was not imported</source>
        <translation>Das Paket wurde nicht importiert</translation>
    </message>
    <message>
        <source>The package was not saved</source>
        <translation>Das Paket wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>The package was saved</source>
        <translation>Das Paket wurde gespeichert</translation>
    </message>
    <message>
        <source>The packages were not listed</source>
        <translation>Die Pakete wurden nicht aufgelistet</translation>
    </message>
    <message>
        <source>The pages were drawn and could not be put together (%1). Export again; if it happens again, restart the program.</source>
        <translation>Die Seiten wurden gezeichnet und konnten nicht zusammengesetzt werden (%1). Exportieren Sie noch einmal; kommt es wieder vor, starten Sie das Programm neu.</translation>
    </message>
    <message>
        <source>The part %1 stands twice among the hardware. List it once, with its whole number.</source>
        <translation>Das Teil %1 steht zweimal im Befestigungsmaterial. Führen Sie es einmal auf, mit der ganzen Anzahl.</translation>
    </message>
    <message>
        <source>The part %1 stands twice among what came off. Count it once.</source>
        <translation>Das Teil %1 steht zweimal unter dem Abgenommenen. Zählen Sie es einmal.</translation>
    </message>
    <message>
        <source>The passes of a torque rise, in percent of the final torque, such as 30, 60, 100, 100; "%1" does not.</source>
        <translation>Die Durchgänge eines Anziehdrehmoments steigen, in Prozent des Enddrehmoments, etwa 30, 60, 100, 100; „%1“ steigt nicht.</translation>
    </message>
    <message>
        <source>The paths are not in order, or one stands there twice.</source>
        <translation>Die Pfade sind nicht in der Reihenfolge, oder einer steht zweimal da.</translation>
    </message>
    <message>
        <source>The percents differ by standard, class and greatest torque, and the tool's own certificate comes first.</source>
        <translation>Die Prozente unterscheiden sich nach Norm, Klasse und größtem Drehmoment, und die Bescheinigung des Werkzeugs geht vor.</translation>
    </message>
    <message>
        <source>The perimeter was not printed</source>
        <translation>Der Umriss wurde nicht gedruckt</translation>
    </message>
    <message>
        <source>The person</source>
        <translation>Die Person</translation>
    </message>
    <message>
        <source>The photo is not at hand.</source>
        <translation>Das Foto liegt nicht vor.</translation>
    </message>
    <message>
        <source>The photo is said to be a copy of itself. Name the file that it was made from, or say nothing where it is the file itself.</source>
        <translation>Das Foto soll eine Kopie seiner selbst sein. Nennen Sie die Datei, aus der es gemacht wurde, oder geben Sie nichts an, wenn es die Datei selbst ist.</translation>
    </message>
    <message>
        <source>The photos are more than 4 GiB, which is more than one package holds. Ask who looks after the program.</source>
        <translation>Die Fotos sind größer als 4 GiB, und das ist mehr, als ein Paket fasst. Fragen Sie, wer das Programm betreut.</translation>
    </message>
    <message>
        <source>The picture cannot be decoded (%1).</source>
        <translation>Das Bild lässt sich nicht dekodieren (%1).</translation>
    </message>
    <message>
        <source>The point nearer to the centre of gravity carries more than half.</source>
        <translation>Der Punkt, der dem Schwerpunkt näher liegt, trägt mehr als die Hälfte.</translation>
    </message>
    <message>
        <source>The private key is not the one registered for %1.</source>
        <translation>Der private Schlüssel ist nicht der für %1 registrierte.</translation>
    </message>
    <message>
        <source>The record could not be begun. Choose another folder and export again.</source>
        <translation>Der Nachweis konnte nicht begonnen werden. Wählen Sie einen anderen Ordner, und exportieren Sie noch einmal.</translation>
    </message>
    <message>
        <source>The record package was exported</source>
        <translation>Das Nachweispaket wurde exportiert</translation>
    </message>
    <message>
        <source>The record package was not exported</source>
        <translation>Das Nachweispaket wurde nicht exportiert</translation>
    </message>
    <message>
        <source>The record was exported</source>
        <translation>Der Nachweis wurde exportiert</translation>
    </message>
    <message>
        <source>The record was not exported</source>
        <translation>Der Nachweis wurde nicht exportiert</translation>
    </message>
    <message>
        <source>The record with that hash is not part of this job's history. Compare it with the foot of the print, and see whether it is of this job.</source>
        <translation>Der Nachweis mit dieser Prüfsumme gehört nicht zur Geschichte dieses Auftrags. Vergleichen Sie sie mit dem Fuß des Ausdrucks, und sehen Sie nach, ob er zu diesem Auftrag gehört.</translation>
    </message>
    <message>
        <source>The register does not say how finely this wrench can be set. Have its graduation registered, or take another.</source>
        <translation>Im Stammbuch steht nicht, wie fein sich dieser Schlüssel einstellen lässt. Lassen Sie seine Teilung registrieren, oder nehmen Sie einen anderen.</translation>
    </message>
    <message>
        <source>The register does not say how long tool %1 is, and with an adapter all depends on it. Have its length registered, or take another wrench.</source>
        <translation>Das Stammbuch gibt nicht an, wie lang Werkzeug %1 ist, und mit einem Adapter hängt alles davon ab. Lassen Sie die Länge eintragen, oder nehmen Sie einen anderen Schlüssel.</translation>
    </message>
    <message>
        <source>The register entry that it pins is not in the register, or an earlier entry pinned a later one.</source>
        <translation>Der Stammbucheintrag, auf den er sich festlegt, steht nicht im Stammbuch, oder ein früherer Eintrag legte sich auf einen späteren fest.</translation>
    </message>
    <message>
        <source>The register has a tool "%1" already.</source>
        <translation>Das Stammbuch hat bereits ein Werkzeug „%1“.</translation>
    </message>
    <message>
        <source>The register has no measuring tool "%1".</source>
        <translation>Das Stammbuch hat kein Messmittel „%1“.</translation>
    </message>
    <message>
        <source>The register has no root person yet. Found it first.</source>
        <translation>Das Stammbuch hat noch keine Wurzelperson. Legen Sie es zuerst an.</translation>
    </message>
    <message>
        <source>The register has no tool "%1" in use.</source>
        <translation>Das Stammbuch hat kein Werkzeug „%1“ in Gebrauch.</translation>
    </message>
    <message>
        <source>The register has no tool "%1".</source>
        <translation>Das Stammbuch hat kein Werkzeug „%1“.</translation>
    </message>
    <message>
        <source>The register keeps no list of these: whether it is spelt right cannot be told.</source>
        <translation>Das Stammbuch führt davon keine Liste: Ob es richtig geschrieben ist, lässt sich nicht sagen.</translation>
    </message>
    <message>
        <source>The register knows no %1 %2, and no entry names it.</source>
        <translation>Das Stammbuch kennt nicht: %1 %2, und kein Eintrag nennt dies.</translation>
    </message>
    <message>
        <source>The register's own entries pin nothing.</source>
        <translation>Die eigenen Einträge des Stammbuchs legen sich auf nichts fest.</translation>
    </message>
    <message>
        <source>The requirement "%1" stands twice.</source>
        <translation>Die Anforderung „%1“ steht zweimal da.</translation>
    </message>
    <message>
        <source>The resistance of a bond by the drop of voltage under a known current, against its limit.</source>
        <translation>Der Widerstand einer Masseverbindung aus dem Spannungsabfall bei bekanntem Strom, gegen ihren Grenzwert.</translation>
    </message>
    <message>
        <source>The root fingerprint is not the one that was given: this hangs from another root.</source>
        <translation>Der Fingerabdruck der Wurzel ist nicht der angegebene: Dies hängt an einer anderen Wurzel.</translation>
    </message>
    <message>
        <source>The root signs its own enrolment; everything else hangs from it.</source>
        <translation>Die Wurzel unterschreibt ihre eigene Aufnahme; alles andere hängt daran.</translation>
    </message>
    <message>
        <source>The row has %1 fields. Expected: %2, as in the first row.</source>
        <translation>Die Zeile hat %1 Felder. Erwartet: %2, wie in der ersten Zeile.</translation>
    </message>
    <message>
        <source>The rules, by name</source>
        <translation>Die Regeln, nach Namen</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Noch einmal dieselbe</translation>
    </message>
    <message>
        <source>The same as a table</source>
        <translation>Dasselbe als Tabelle</translation>
    </message>
    <message>
        <source>The same mistake is made twice by the same hands.</source>
        <translation>Derselbe Fehler wird von denselben Händen zweimal gemacht.</translation>
    </message>
    <message>
        <source>The same word names different leaks in different schemes.</source>
        <translation>Dasselbe Wort bezeichnet in verschiedenen Schemata verschiedene Leckagen.</translation>
    </message>
    <message>
        <source>The sample with its seed and every hash.</source>
        <translation>Die Stichprobe mit ihrem Startwert und jeder Prüfsumme.</translation>
    </message>
    <message>
        <source>The scheme "%1" does not class by size. Choose the class by its description.</source>
        <translation>Das Schema „%1“ stuft nicht nach Größe ein. Wählen Sie die Klasse nach ihrer Beschreibung.</translation>
    </message>
    <message>
        <source>The scheme "%1" has no class "%2". Choose one of %3.</source>
        <translation>Das Schema „%1“ hat keine Klasse „%2“. Wählen Sie eine von %3.</translation>
    </message>
    <message>
        <source>The scheme "%1" has no classes.</source>
        <translation>Das Schema „%1“ hat keine Klassen.</translation>
    </message>
    <message>
        <source>The schemes call different leaks by one name. Always name the scheme beside the class. Fuel burns: no flame, no spark, fire cover as the local rules ask.</source>
        <translation>Die Schemata nennen verschiedene Leckagen mit einem Namen. Nennen Sie immer das Schema neben der Klasse. Kraftstoff brennt: keine Flamme, kein Funke, Brandschutz, wie ihn die örtlichen Vorschriften verlangen.</translation>
    </message>
    <message>
        <source>The seal is new and of the right material for fuel.</source>
        <translation>Die Dichtung ist neu und aus dem richtigen Werkstoff für Kraftstoff.</translation>
    </message>
    <message>
        <source>The seal is new and of the right material for oil.</source>
        <translation>Die Dichtung ist neu und aus dem richtigen Werkstoff für Öl.</translation>
    </message>
    <message>
        <source>The seal is new and of the right material for this fluid.</source>
        <translation>Die Dichtung ist neu und aus dem richtigen Werkstoff für diese Flüssigkeit.</translation>
    </message>
    <message>
        <source>The seal is new, seated and not pinched.</source>
        <translation>Die Dichtung ist neu, sitzt richtig und ist nicht eingeklemmt.</translation>
    </message>
    <message>
        <source>The secret of this station (%1) cannot be read: %2</source>
        <translation>Das Geheimnis dieses Arbeitsplatzes (%1) kann nicht gelesen werden: %2</translation>
    </message>
    <message>
        <source>The secret of this station could not be kept in %1: %2 Without it no key is opened. Make the folder writable, or name another file in REMATE_STATION.</source>
        <translation>Das Geheimnis dieses Arbeitsplatzes konnte nicht in %1 aufbewahrt werden: %2 Ohne das Geheimnis wird kein Schlüssel geöffnet. Machen Sie den Ordner beschreibbar, oder nennen Sie eine andere Datei in REMATE_STATION.</translation>
    </message>
    <message>
        <source>The secret of this station lies in the folder of the store (%1), so whoever copies the folder has both. Move one of them, or name another file in REMATE_STATION.</source>
        <translation>Das Geheimnis dieses Arbeitsplatzes liegt im Ordner der Ablage (%1); wer den Ordner kopiert, hat also beides. Verschieben Sie eines davon, oder geben Sie in REMATE_STATION eine andere Datei an.</translation>
    </message>
    <message>
        <source>The serial number %1 is that of %2. Read the plate again.</source>
        <translation>Die Seriennummer %1 ist die von %2. Lesen Sie das Typenschild noch einmal.</translation>
    </message>
    <message>
        <source>The serial number %1 is that of %2: each is in one place. Read the plate again.</source>
        <translation>Die Seriennummer %1 ist die von %2: Jedes Teil ist nur an einer Stelle. Lesen Sie das Typenschild noch einmal.</translation>
    </message>
    <message>
        <source>The sheet could not be begun. Choose another folder or printer and try again.</source>
        <translation>Das Blatt konnte nicht begonnen werden. Wählen Sie einen anderen Ordner oder Drucker, und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <source>The sheet does not fit one page. Shorten the title of the job, or look at it in the program.</source>
        <translation>Das Blatt passt nicht auf eine Seite. Kürzen Sie den Titel des Auftrags, oder sehen Sie es im Programm an.</translation>
    </message>
    <message>
        <source>The sheet was not printed</source>
        <translation>Das Blatt wurde nicht gedruckt</translation>
    </message>
    <message>
        <source>The sheet was not written</source>
        <translation>Das Blatt wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>The sheet was written</source>
        <translation>Das Blatt wurde geschrieben</translation>
    </message>
    <message>
        <source>The shift of the centre of gravity is still to be judged: no mean aerodynamic chord is given.</source>
        <translation>Die Verschiebung des Schwerpunkts ist noch zu beurteilen: Es ist keine mittlere aerodynamische Flügeltiefe angegeben.</translation>
    </message>
    <message>
        <source>The shift of the centre of gravity, %1 of the mean aerodynamic chord, is under the limit of 0.05 %.</source>
        <translation>Die Verschiebung des Schwerpunkts, %1 der mittleren aerodynamischen Flügeltiefe, liegt unter der Grenze von 0.05 %.</translation>
    </message>
    <message>
        <source>The sizes of leak classes rise; %1 comes after %2.</source>
        <translation>Die Größen der Leckklassen steigen; %1 kommt nach %2.</translation>
    </message>
    <message>
        <source>The sling</source>
        <translation>Das Anschlagmittel</translation>
    </message>
    <message>
        <source>The slings lie under 30° from the horizontal, where a leg carries more than twice its share. Take longer slings or a beam.</source>
        <translation>Die Anschlagmittel liegen unter 30° zur Waagerechten, wo ein Strang mehr als das Doppelte seines Anteils trägt. Nehmen Sie längere Anschlagmittel oder eine Traverse.</translation>
    </message>
    <message>
        <source>The step that was left out is the one that the next pair of hands took for done.</source>
        <translation>Der ausgelassene Schritt ist der, den die nächsten Hände für getan hielten.</translation>
    </message>
    <message>
        <source>The store could not be brought up to this version: rows of %1 belong to nothing. It was left as it was. Go on with the last backup.</source>
        <translation>Die Ablage konnte nicht auf diese Version gebracht werden: Zeilen von %1 gehören zu nichts. Sie wurde belassen, wie sie war. Arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>The store could not be used (SQLite %1, system %2). Nothing was recorded. Close the program and try again; if it happens again, report these numbers.</source>
        <translation>Die Ablage konnte nicht benutzt werden (SQLite %1, System %2). Es wurde nichts eingetragen. Schließen Sie das Programm, und versuchen Sie es erneut; wenn es wieder geschieht, melden Sie diese Zahlen.</translation>
    </message>
    <message>
        <source>The store does not hold the attachment %1. Attach the file itself, in the window. Nothing was signed.</source>
        <translation>Die Ablage enthält die Anlage %1 nicht. Hängen Sie die Datei selbst an, im Fenster. Es wurde nichts unterschrieben.</translation>
    </message>
    <message>
        <source>The store has no register, so nobody can be vouched for. Verify it.</source>
        <translation>Die Ablage hat kein Stammbuch, also kann für niemanden gebürgt werden. Verifizieren Sie sie.</translation>
    </message>
    <message>
        <source>The store has no such job, or one whose name cannot name a folder.</source>
        <translation>Die Ablage hat keinen solchen Auftrag oder einen, dessen Name keinen Ordner bezeichnen kann.</translation>
    </message>
    <message>
        <source>The store has something that this version knows nothing of: %1 %2.</source>
        <translation>Die Ablage hat etwas, wovon diese Version nichts weiß: %1 %2.</translation>
    </message>
    <message>
        <source>The store has this job up to the same entry already: imported package %1. Nothing was imported.</source>
        <translation>Die Ablage hat diesen Auftrag bereits bis zum selben Eintrag: importiertes Paket %1. Es wurde nichts importiert.</translation>
    </message>
    <message>
        <source>The store holds this job itself, up to the same entry. Nothing was imported.</source>
        <translation>Die Ablage führt diesen Auftrag selbst, bis zum selben Eintrag. Es wurde nichts importiert.</translation>
    </message>
    <message>
        <source>The store is damaged (SQLite %1). Keep the file as it is and go on with the last backup.</source>
        <translation>Die Ablage ist beschädigt (SQLite %1). Behalten Sie die Datei, wie sie ist, und arbeiten Sie mit der letzten Sicherungskopie weiter.</translation>
    </message>
    <message>
        <source>The store is open for reading only. Nothing was recorded. Open it for writing and try again.</source>
        <translation>Die Ablage ist nur zum Lesen geöffnet. Es wurde nichts eingetragen. Öffnen Sie sie zum Schreiben, und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>The store is open for reading only. Nothing was signed.</source>
        <translation>Die Ablage ist nur zum Lesen geöffnet. Es wurde nichts unterschrieben.</translation>
    </message>
    <message>
        <source>The store may be read but not written here. Nothing was recorded. Close the store and open it again; if it stays so, ask whoever looks after this computer for the right to write to it.</source>
        <translation>Die Ablage darf hier gelesen, aber nicht geschrieben werden. Es wurde nichts eingetragen. Schließen Sie die Ablage, und öffnen Sie sie erneut; wenn es so bleibt, fragen Sie die Person, die diesen Rechner betreut, nach dem Schreibrecht.</translation>
    </message>
    <message>
        <source>The store refused a change that would break a ledger (SQLite %1). Nothing was recorded. This is a fault of the program: please report it.</source>
        <translation>Die Ablage wies eine Änderung ab, die ein Buch zerstören würde (SQLite %1). Es wurde nichts eingetragen. Dies ist ein Fehler des Programms: Bitte melden Sie ihn.</translation>
    </message>
    <message>
        <source>The store that holds it was not at hand.</source>
        <translation>Die Ablage, in der die Anlage liegt, war nicht zur Hand.</translation>
    </message>
    <message>
        <source>The store to open.</source>
        <translation>Die Ablage, die geöffnet werden soll.</translation>
    </message>
    <message>
        <source>The store was backed up</source>
        <translation>Die Ablage wurde gesichert</translation>
    </message>
    <message>
        <source>The store was closed, but its side file %1-wal could not be written back into it. Keep both files together, and check the disk. (%2)</source>
        <translation>Die Ablage wurde geschlossen, aber ihre Begleitdatei %1-wal konnte nicht in sie zurückgeschrieben werden. Behalten Sie beide Dateien zusammen, und prüfen Sie den Datenträger. (%2)</translation>
    </message>
    <message>
        <source>The store was not backed up</source>
        <translation>Die Ablage wurde nicht gesichert</translation>
    </message>
    <message>
        <source>The store was not looked through</source>
        <translation>Die Ablage wurde nicht durchsucht</translation>
    </message>
    <message>
        <source>The store was not made</source>
        <translation>Die Ablage wurde nicht angelegt</translation>
    </message>
    <message>
        <source>The store was not opened</source>
        <translation>Die Ablage wurde nicht geöffnet</translation>
    </message>
    <message>
        <source>The store's %1 %2 is gone: entries could be changed without a word.</source>
        <translation>Bei der Ablage fehlt %1 %2: Einträge könnten unbemerkt geändert werden.</translation>
    </message>
    <message>
        <source>The store's %1 %2 is not the one that was made with it.</source>
        <translation>Bei der Ablage ist %1 %2 nicht mehr wie beim Anlegen.</translation>
    </message>
    <message>
        <source>The store's file does not agree with itself (%1): it was damaged, or changed by other means. Restore a backup.</source>
        <translation>Die Datei der Ablage stimmt nicht mit sich selbst überein (%1): Sie wurde beschädigt oder mit anderen Mitteln geändert. Stellen Sie eine Sicherungskopie wieder her.</translation>
    </message>
    <message>
        <source>The stored key of %1 is bound to another station.</source>
        <translation>Der gespeicherte Schlüssel von %1 ist an einen anderen Arbeitsplatz gebunden.</translation>
    </message>
    <message>
        <source>The stored key of %1 is damaged. Register a new key for them.</source>
        <translation>Der gespeicherte Schlüssel von %1 ist beschädigt. Registrieren Sie einen neuen Schlüssel für die Person.</translation>
    </message>
    <message>
        <source>The stored key of %1 is not the one it is said to be. Register a new key for them.</source>
        <translation>Der gespeicherte Schlüssel von %1 ist nicht der, als der er ausgegeben wird. Registrieren Sie einen neuen Schlüssel für die Person.</translation>
    </message>
    <message>
        <source>The table cannot be shown</source>
        <translation>Die Tabelle kann nicht angezeigt werden</translation>
    </message>
    <message>
        <source>The table has no row.</source>
        <translation>Die Tabelle hat keine Zeile.</translation>
    </message>
    <message>
        <source>The table is empty.</source>
        <translation>Die Tabelle ist leer.</translation>
    </message>
    <message>
        <source>The tag can be read, its limit and date hold, and no leg is cut, kinked or twisted.</source>
        <translation>Der Anhänger ist lesbar, Grenzwert und Datum gelten, und kein Strang ist eingeschnitten, geknickt oder verdreht.</translation>
    </message>
    <message>
        <source>The tag in the hand proves which interface was closed.</source>
        <translation>Der Anhänger in der Hand beweist, welcher Anschluss geschlossen wurde.</translation>
    </message>
    <message>
        <source>The tags %1 have not been returned.</source>
        <translation>Die Anhänger %1 wurden nicht zurückgegeben.</translation>
    </message>
    <message>
        <source>The test covers %1 (%2), which is not restored. Restore it first, or name what the test covers.</source>
        <translation>Der Test umfasst %1 (%2), und das ist nicht wiederhergestellt. Stellen Sie es zuerst wieder her, oder nennen Sie, was der Test umfasst.</translation>
    </message>
    <message>
        <source>The text puts exactly %1 lb in no band, so the stricter one is taken.</source>
        <translation>Der Text ordnet genau %1 lb keinem Bereich zu; deshalb wird der strengere genommen.</translation>
    </message>
    <message>
        <source>The tool %1 has not come back.</source>
        <translation>Das Werkzeug %1 ist nicht zurückgekommen.</translation>
    </message>
    <message>
        <source>The tool may be off by</source>
        <translation>Das Werkzeug darf abweichen um</translation>
    </message>
    <message>
        <source>The tool may be off by, % of the reading</source>
        <translation>Mögliche Abweichung des Werkzeugs, % vom Messwert</translation>
    </message>
    <message>
        <source>The tool may be off by, W</source>
        <translation>Das Werkzeug darf abweichen um, W</translation>
    </message>
    <message>
        <source>The tool's deviation reaches beyond the edge of the band.</source>
        <translation>Die Abweichung des Werkzeugs reicht über den Rand des Bereichs.</translation>
    </message>
    <message>
        <source>The tools are counted all together: name none.</source>
        <translation>Die Werkzeuge werden alle zusammen gezählt: Nennen Sie keines.</translation>
    </message>
    <message>
        <source>The tools have not been counted since entry %1.</source>
        <translation>Die Werkzeuge wurden seit Eintrag %1 nicht gezählt.</translation>
    </message>
    <message>
        <source>The torque that turns the nut before it seats. The source begins at 7/16 in and says nothing of smaller sizes. What a nut needs to break away is another quantity.</source>
        <translation>Das Drehmoment, das die Mutter dreht, bevor sie aufliegt. Die Quelle beginnt bei 7/16 in und sagt nichts über kleinere Größen. Was eine Mutter zum Losbrechen braucht, ist eine andere Größe.</translation>
    </message>
    <message>
        <source>The twin group "%1" has this interface alone. Expected: two look-alikes or more.</source>
        <translation>Die Gegenprüfungsgruppe „%1“ hat allein diesen Anschluss. Erwartet: zwei verwechselbare oder mehr.</translation>
    </message>
    <message>
        <source>The two PINs differ. Type both again.</source>
        <translation>Die beiden PINs sind verschieden. Geben Sie beide erneut ein.</translation>
    </message>
    <message>
        <source>The union is not overtightened.</source>
        <translation>Die Verschraubung ist nicht überdreht.</translation>
    </message>
    <message>
        <source>The union was held while its nut was turned.</source>
        <translation>Die Verschraubung wurde gehalten, während ihre Mutter gedreht wurde.</translation>
    </message>
    <message>
        <source>The unit</source>
        <translation>Das Aggregat</translation>
    </message>
    <message>
        <source>The unit as a boundary: one coupling for each interface, zone by zone</source>
        <translation>Das Aggregat als Umriss: eine Kupplung für jeden Anschluss, Bereich für Bereich</translation>
    </message>
    <message>
        <source>The unit hangs in its place, and no hoist is applied that carries it while %1 is undone. Give it the load first, and log it.</source>
        <translation>Das Aggregat hängt an seinem Platz, und es ist kein Hebezeug angebracht, das es trägt, während %1 gelöst wird. Geben Sie ihm zuerst die Last, und tragen Sie das ein.</translation>
    </message>
    <message>
        <source>The unit is off.</source>
        <translation>Das Aggregat ist ausgebaut.</translation>
    </message>
    <message>
        <source>The unit itself, its accessories and the tests</source>
        <translation>Das Aggregat selbst, seine Anbauteile und die Tests</translation>
    </message>
    <message>
        <source>The unit of "%1" is not known. Use one of %2.</source>
        <translation>Die Einheit von „%1“ ist nicht bekannt. Nehmen Sie eine von %2.</translation>
    </message>
    <message>
        <source>The unit was said to be off (entry %1), and that was struck. Say it anew; or somebody with authority to overrule strikes that entry as never so.</source>
        <translation>Das Aggregat wurde als ausgebaut angegeben (Eintrag %1), und das wurde gestrichen. Geben Sie es neu an; oder jemand mit Befugnis zum Übersteuern streicht jenen Eintrag als nie so gewesen.</translation>
    </message>
    <message>
        <source>The unit, its accessories and tests</source>
        <translation>Das Aggregat, seine Anbauteile und Tests</translation>
    </message>
    <message>
        <source>The upper size itself</source>
        <translation>Die obere Größe selbst</translation>
    </message>
    <message>
        <source>The verdict was not saved</source>
        <translation>Das Ergebnis wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>The verdict was saved</source>
        <translation>Das Ergebnis wurde gespeichert</translation>
    </message>
    <message>
        <source>The way of locking is chosen by the maintenance data.</source>
        <translation>Die Art der Sicherung bestimmen die Instandhaltungsunterlagen.</translation>
    </message>
    <message>
        <source>The weight change is recorded.</source>
        <translation>Die Gewichtsänderung ist eingetragen.</translation>
    </message>
    <message>
        <source>The weight change of this job stands in entry %1 already. Strike that entry before you record it anew.</source>
        <translation>Die Gewichtsänderung dieses Auftrags steht bereits in Eintrag %1. Streichen Sie diesen Eintrag, bevor Sie sie neu eintragen.</translation>
    </message>
    <message>
        <source>The weight of %1 is given as %2. Give a weight above 0.</source>
        <translation>Das Gewicht von %1 ist mit %2 angegeben. Geben Sie ein Gewicht über 0 an.</translation>
    </message>
    <message>
        <source>The weight of the rigging, which the hoist carries as well,</source>
        <translation>Das Gewicht des Geschirrs, das das Hebezeug mitträgt,</translation>
    </message>
    <message>
        <source>The weight of the unit</source>
        <translation>Das Gewicht des Aggregats</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Der ganze Auftrag</translation>
    </message>
    <message>
        <source>The working load limit of a sling's leg</source>
        <translation>Die Tragfähigkeit eines Strangs</translation>
    </message>
    <message>
        <source>The working load limit of the hoist</source>
        <translation>Die Tragfähigkeit des Hebezeugs</translation>
    </message>
    <message>
        <source>The wrench showed</source>
        <translation>Der Schlüssel zeigte</translation>
    </message>
    <message>
        <source>The wrench would have to be set to %1, and none of its marks, %2 apart, lies there. Take a wrench with finer marks.</source>
        <translation>Der Schlüssel müsste auf %1 eingestellt werden, und keiner seiner Teilstriche, im Abstand %2, liegt dort. Nehmen Sie einen Schlüssel mit feinerer Teilung.</translation>
    </message>
    <message>
        <source>The wrench would have to be set to %1; its usable range is %2 to %3. Take another wrench.</source>
        <translation>Der Schlüssel müsste auf %1 eingestellt werden; sein nutzbarer Bereich ist %2 bis %3. Nehmen Sie einen anderen Schlüssel.</translation>
    </message>
    <message>
        <source>The wrench's length is %1. Measure from the middle of the grip to the square drive.</source>
        <translation>Die Länge des Schlüssels ist %1. Messen Sie von der Mitte des Griffs bis zum Vierkant.</translation>
    </message>
    <message>
        <source>The wrong unit fits as well as the right one.</source>
        <translation>Das falsche Aggregat passt so gut wie das richtige.</translation>
    </message>
    <message>
        <source>The zero of the leads, %1, is more than the reading, %2, so the reading cannot be relied on. Check the leads, set the meter to zero, and measure again.</source>
        <translation>Der Nullwert der Leitungen, %1, ist größer als der Messwert, %2; auf den Messwert ist also kein Verlass. Prüfen Sie die Leitungen, stellen Sie das Messgerät auf null und messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>There are %1 fasteners to tighten. Count them again.</source>
        <translation>Es sind %1 Verbindungselemente anzuziehen. Zählen Sie sie noch einmal.</translation>
    </message>
    <message>
        <source>There are %1 legs at each lifting point. Give one or more.</source>
        <translation>An jedem Anschlagpunkt sind %1 Stränge. Geben Sie einen oder mehrere an.</translation>
    </message>
    <message>
        <source>There are at most %1 fasteners; %2 are too many for one ring.</source>
        <translation>Es gibt höchstens %1 Verbindungselemente; %2 sind zu viele für einen Ring.</translation>
    </message>
    <message>
        <source>There is an authorisation "%1" already.</source>
        <translation>Es gibt bereits eine Berechtigung „%1“.</translation>
    </message>
    <message>
        <source>There is no authorisation "%1" that could be withdrawn.</source>
        <translation>Es gibt keine Berechtigung „%1“, die entzogen werden könnte.</translation>
    </message>
    <message>
        <source>There is no column "%1". Expected: some of %2.</source>
        <translation>Es gibt keine Spalte „%1“. Erwartet: einige von %2.</translation>
    </message>
    <message>
        <source>There is no column after "%1".</source>
        <translation>Nach „%1“ gibt es keine Spalte.</translation>
    </message>
    <message>
        <source>There is no condition "%1".</source>
        <translation>Es gibt keine Bedingung „%1“.</translation>
    </message>
    <message>
        <source>There is no condition "%1"; they are: %2.</source>
        <translation>Es gibt keine Bedingung „%1“; es gibt: %2.</translation>
    </message>
    <message>
        <source>There is no entry %1.</source>
        <translation>Es gibt keinen Eintrag %1.</translation>
    </message>
    <message>
        <source>There is no entry of the kind "%1".</source>
        <translation>Es gibt keinen Eintrag der Art „%1“.</translation>
    </message>
    <message>
        <source>There is no file of that name.</source>
        <translation>Es gibt keine Datei dieses Namens.</translation>
    </message>
    <message>
        <source>There is no finding %1.</source>
        <translation>Es gibt keinen Befund %1.</translation>
    </message>
    <message>
        <source>There is no folder %1. Choose another.</source>
        <translation>Es gibt keinen Ordner %1. Wählen Sie einen anderen.</translation>
    </message>
    <message>
        <source>There is no font to write the record with. Install the package fonts-dejavu-core.</source>
        <translation>Es gibt keine Schrift, mit der der Nachweis geschrieben werden könnte. Installieren Sie das Paket fonts-dejavu-core.</translation>
    </message>
    <message>
        <source>There is no interface to print a label for. Import the job's list first.</source>
        <translation>Es gibt keinen Anschluss, für den ein Etikett gedruckt werden könnte. Importieren Sie zuerst die Liste des Auftrags.</translation>
    </message>
    <message>
        <source>There is no interface yet</source>
        <translation>Es gibt noch keinen Anschluss</translation>
    </message>
    <message>
        <source>There is no kind "%1". Expected: one of %2.</source>
        <translation>Es gibt keine Art „%1“. Erwartet: eine von %2.</translation>
    </message>
    <message>
        <source>There is no kind of entry "%1".</source>
        <translation>Es gibt keine Eintragsart „%1“.</translation>
    </message>
    <message>
        <source>There is no kind of interface. Install the program again.</source>
        <translation>Es gibt keine Art von Anschluss. Installieren Sie das Programm neu.</translation>
    </message>
    <message>
        <source>There is no mark to sign. Place one on the photo.</source>
        <translation>Es gibt keine Markierung zu unterschreiben. Setzen Sie eine auf das Foto.</translation>
    </message>
    <message>
        <source>There is no member "%1" in conditions or gates of hold points.</source>
        <translation>Es gibt kein Element „%1“ in Bedingungen oder Sperren von Haltepunkten.</translation>
    </message>
    <message>
        <source>There is no picture in it. Copy one, then try again.</source>
        <translation>Es ist kein Bild darin. Kopieren Sie eines, dann versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>There is no picture in the clipboard. Copy one, then paste again.</source>
        <translation>In der Zwischenablage ist kein Bild. Kopieren Sie eines, dann fügen Sie erneut ein.</translation>
    </message>
    <message>
        <source>There is no register, so nobody can be vouched for.</source>
        <translation>Es gibt kein Stammbuch, also kann für niemanden gebürgt werden.</translation>
    </message>
    <message>
        <source>There is no requirement "%1".</source>
        <translation>Es gibt keine Anforderung „%1“.</translation>
    </message>
    <message>
        <source>There is no requirement "%1". Expected: none, or some of %2, separated by |.</source>
        <translation>Es gibt keine Anforderung „%1“. Erwartet: keine, oder einige von %2, getrennt durch |.</translation>
    </message>
    <message>
        <source>There is no room for a store at %1. Make room, or choose another disk.</source>
        <translation>Bei %1 ist kein Platz für eine Ablage. Schaffen Sie Platz, oder wählen Sie einen anderen Datenträger.</translation>
    </message>
    <message>
        <source>There is no room for the backup at %1; no file was made. Make room, or choose another disk.</source>
        <translation>Bei %1 ist kein Platz für die Sicherungskopie; es wurde keine Datei erstellt. Schaffen Sie Platz, oder wählen Sie einen anderen Datenträger.</translation>
    </message>
    <message>
        <source>There is no room to pack the photos (%1). Make room and export again.</source>
        <translation>Es ist kein Platz, um die Fotos zu packen (%1). Schaffen Sie Platz, und exportieren Sie noch einmal.</translation>
    </message>
    <message>
        <source>There is no row to remove.</source>
        <translation>Es gibt keine Zeile zu entfernen.</translation>
    </message>
    <message>
        <source>There is no scheme "%1" in the look-up table. Give one of %2.</source>
        <translation>Es gibt kein Schema „%1“ in der Nachschlagetabelle. Geben Sie eines von %2 an.</translation>
    </message>
    <message>
        <source>There is no sort "%1" of temporary items.</source>
        <translation>Es gibt keine Sorte „%1“ von vorübergehend Angebrachtem.</translation>
    </message>
    <message>
        <source>There is no store at %1. Check the name, or make a new store there.</source>
        <translation>Bei %1 gibt es keine Ablage. Prüfen Sie den Namen, oder legen Sie dort eine neue Ablage an.</translation>
    </message>
    <message>
        <source>There is nothing to draw yet</source>
        <translation>Es gibt noch nichts zu zeichnen</translation>
    </message>
    <message>
        <source>There is nothing to sign.</source>
        <translation>Es gibt nichts zu unterschreiben.</translation>
    </message>
    <message>
        <source>There is nothing to strike</source>
        <translation>Es gibt nichts zu streichen</translation>
    </message>
    <message>
        <source>There is something else than a file of that name. Choose another name.</source>
        <translation>Unter diesem Namen gibt es etwas anderes als eine Datei. Wählen Sie einen anderen Namen.</translation>
    </message>
    <message>
        <source>There was not enough memory to check the secret. Close other programs and try again.</source>
        <translation>Der Speicher reichte nicht, um das Geheimnis zu prüfen. Schließen Sie andere Programme und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>There was not enough memory. Nothing was recorded. Close other programs and try again.</source>
        <translation>Der Speicher reichte nicht. Es wurde nichts eingetragen. Schließen Sie andere Programme, und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>There was not enough protected memory for a key. Close other programs and try again.</source>
        <translation>Es war nicht genug geschützter Speicher für einen Schlüssel vorhanden. Schließen Sie andere Programme und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>These entries do not follow one another. Nothing was recorded. This is a fault of the program: please report it.</source>
        <translation>Diese Einträge folgen nicht aufeinander. Es wurde nichts eingetragen. Dies ist ein Fehler des Programms: Bitte melden Sie ihn.</translation>
    </message>
    <message>
        <source>This asks less of %1 than before: %2. An inspector who had no hand in it or in its group signs that.</source>
        <translation>Dies verlangt von %1 weniger als bisher: %2. Das unterschreibt ein Prüfer, der weder daran noch an der Gruppe beteiligt war.</translation>
    </message>
    <message>
        <source>This attachment is not shown. %1</source>
        <translation>Diese Anlage wird nicht gezeigt. %1</translation>
    </message>
    <message>
        <source>This cell may not be empty.</source>
        <translation>Diese Zelle darf nicht leer sein.</translation>
    </message>
    <message>
        <source>This computer's clock says %1, which is before the last entry (%2). Set the clock right and sign again.</source>
        <translation>Die Uhr dieses Computers zeigt %1, und das ist vor dem letzten Eintrag (%2). Stellen Sie die Uhr richtig, und unterschreiben Sie noch einmal.</translation>
    </message>
    <message>
        <source>This condition names nothing.</source>
        <translation>Diese Bedingung nennt nichts.</translation>
    </message>
    <message>
        <source>This disk does not let the store keep its side file, so nothing can be recorded on it safely. Copy the store to a disk of this computer and open it there.</source>
        <translation>Dieser Datenträger lässt die Ablage ihre Begleitdatei nicht führen, daher kann darauf nichts sicher eingetragen werden. Kopieren Sie die Ablage auf einen Datenträger dieses Rechners, und öffnen Sie sie dort.</translation>
    </message>
    <message>
        <source>This is a draft of a record and no release. Loose ends: %1.</source>
        <translation>Dies ist ein Entwurf eines Nachweises und keine Freigabe. Offene Stellen: %1.</translation>
    </message>
    <message>
        <source>This is a help. The approved maintenance data governs, then the local rules; where they differ from it, follow them.</source>
        <translation>Dies ist eine Hilfe. Maßgeblich sind die genehmigten Instandhaltungsunterlagen, dann die örtlichen Vorschriften; wo diese von der Hilfe abweichen, befolgen Sie sie.</translation>
    </message>
    <message>
        <source>This is not UTF-8. Save the file as UTF-8 and try again.</source>
        <translation>Dies ist nicht UTF-8. Speichern Sie die Datei als UTF-8 und versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>This is not an object an entry may hold: %1</source>
        <translation>Dies ist kein Objekt, das ein Eintrag enthalten darf: %1</translation>
    </message>
    <message>
        <source>This job has a tag %1 of its own, of the block %2. Hang a tag of this job instead, and give that one back.</source>
        <translation>Dieser Auftrag hat einen eigenen Anhänger %1, aus dem Block %2. Hängen Sie stattdessen einen Anhänger dieses Auftrags an, und geben Sie jenen zurück.</translation>
    </message>
    <message>
        <source>This job has no hold point "%1".</source>
        <translation>Dieser Auftrag hat keinen Haltepunkt „%1“.</translation>
    </message>
    <message>
        <source>This job has no hold points. The lead may set them: one of the standard set, or one of its own.</source>
        <translation>Dieser Auftrag hat keine Haltepunkte. Der Leiter kann sie setzen: aus dem Standardsatz oder eigene.</translation>
    </message>
    <message>
        <source>This job has no zone "%1".</source>
        <translation>Dieser Auftrag hat keinen Bereich „%1“.</translation>
    </message>
    <message>
        <source>This job has no zone "%1"; its zones are: %2.</source>
        <translation>Dieser Auftrag hat keinen Bereich „%1“; seine Bereiche sind: %2.</translation>
    </message>
    <message>
        <source>This job is about the unit %1; the plate is said to read %2. Read it again. If the unit is another one, this is another job.</source>
        <translation>Dieser Auftrag betrifft das Aggregat %1; auf dem Typenschild soll %2 stehen. Lesen Sie es noch einmal. Ist es ein anderes Aggregat, so ist dies ein anderer Auftrag.</translation>
    </message>
    <message>
        <source>This job is linked with no other. Link it where one piece of work is kept in several jobs: they share the people who had a hand in an item, and close together.</source>
        <translation>Dieser Auftrag ist mit keinem anderen verknüpft. Verknüpfen Sie ihn, wo eine Arbeit in mehreren Aufträgen geführt wird: Sie teilen die Angaben, wer an einem Posten beteiligt war, und werden zusammen abgeschlossen.</translation>
    </message>
    <message>
        <source>This job is not linked with %1.</source>
        <translation>Dieser Auftrag ist nicht mit %1 verknüpft.</translation>
    </message>
    <message>
        <source>This job is open already. Open another job in a ledger of its own.</source>
        <translation>Dieser Auftrag ist bereits eröffnet. Eröffnen Sie einen anderen Auftrag in einem eigenen Buch.</translation>
    </message>
    <message>
        <source>This job was opened without a scheme of leak classes, so "%1" says nothing. Give a rate.</source>
        <translation>Dieser Auftrag wurde ohne Schema für Leckklassen eröffnet; „%1“ sagt daher nichts aus. Geben Sie eine Rate an.</translation>
    </message>
    <message>
        <source>This job was opened without the single-person re-inspection. Somebody else inspects.</source>
        <translation>Dieser Auftrag wurde ohne die erneute Prüfung durch dieselbe Person eröffnet. Jemand anders prüft.</translation>
    </message>
    <message>
        <source>This key is or was %1's. Make a new one.</source>
        <translation>Dieser Schlüssel ist oder war von %1. Erzeugen Sie einen neuen.</translation>
    </message>
    <message>
        <source>This list cannot be taken</source>
        <translation>Diese Liste kann nicht übernommen werden</translation>
    </message>
    <message>
        <source>This one depends on "%1", but neither the list nor the job has it.</source>
        <translation>Dieser hängt von „%1“ ab, aber weder die Liste noch der Auftrag hat es.</translation>
    </message>
    <message>
        <source>This photo is attached to %1 already, by entry %2.</source>
        <translation>Dieses Foto ist schon an %1 angehängt, durch Eintrag %2.</translation>
    </message>
    <message>
        <source>This record leaves nothing due: no follow-up, no deferred finding.</source>
        <translation>Dieser Nachweis lässt nichts fällig: keine Nachprüfung, keinen zurückgestellten Befund.</translation>
    </message>
    <message>
        <source>This register was founded already, by %1.</source>
        <translation>Dieses Stammbuch wurde bereits angelegt, von %1.</translation>
    </message>
    <message>
        <source>This store has a register already.</source>
        <translation>Diese Ablage hat bereits ein Stammbuch.</translation>
    </message>
    <message>
        <source>This store has its register already. One store has one register.</source>
        <translation>Diese Ablage hat ihr Stammbuch bereits. Eine Ablage hat ein Stammbuch.</translation>
    </message>
    <message>
        <source>This store has no job with the ledger %1.</source>
        <translation>Diese Ablage hat keinen Auftrag mit dem Buch %1.</translation>
    </message>
    <message>
        <source>This store has no job with the ledger %1. Jobs that are linked are kept in one store.</source>
        <translation>Diese Ablage hat keinen Auftrag mit dem Buch %1. Verknüpfte Aufträge werden in einer Ablage geführt.</translation>
    </message>
    <message>
        <source>This store has no register yet. Found it first.</source>
        <translation>Diese Ablage hat noch kein Stammbuch. Legen Sie es zuerst an.</translation>
    </message>
    <message>
        <source>This store holds no key of %1. They sign where their key is, or an administrator registers a new one for them.</source>
        <translation>Diese Ablage enthält keinen Schlüssel von %1. Die Person unterschreibt dort, wo ihr Schlüssel ist, oder ein Administrator registriert einen neuen für sie.</translation>
    </message>
    <message>
        <source>This store holds no key of them.</source>
        <translation>Diese Ablage enthält keinen Schlüssel dieser Person.</translation>
    </message>
    <message>
        <source>This store is %1 old and was never backed up. Back it up to another disk.</source>
        <translation>Diese Ablage ist %1 alt und wurde nie gesichert. Sichern Sie sie auf einen anderen Datenträger.</translation>
    </message>
    <message>
        <source>This store is empty. Its first entry names the organisation and its first administrator, who then enrols everybody else. The fingerprint of this entry is printed on every record.</source>
        <translation>Diese Ablage ist leer. Ihr erster Eintrag nennt die Organisation und ihren ersten Administrator, der dann alle anderen aufnimmt. Der Fingerabdruck dieses Eintrags wird auf jeden Nachweis gedruckt.</translation>
    </message>
    <message>
        <source>This table is empty.</source>
        <translation>Diese Tabelle ist leer.</translation>
    </message>
    <message>
        <source>This very package was imported before; it has number %1.</source>
        <translation>Genau dieses Paket wurde bereits importiert; es hat die Nummer %1.</translation>
    </message>
    <message>
        <source>This waits for the hold point %1, which nobody has passed yet.</source>
        <translation>Dies wartet auf den Haltepunkt %1, den noch niemand passiert hat.</translation>
    </message>
    <message>
        <source>This waits for the hold point %1, which was passed and has to be passed again. %2</source>
        <translation>Dies wartet auf den Haltepunkt %1, der passiert wurde und noch einmal passiert werden muss. %2</translation>
    </message>
    <message>
        <source>This was begun at this computer and not signed; the last of it was typed on %1. Take it up where it was left and look through all of it, or discard it.</source>
        <translation>Dies wurde an diesem Rechner begonnen und nicht unterschrieben; zuletzt getippt am %1. Nehmen Sie es dort auf, wo es liegen blieb, und sehen Sie alles durch, oder verwerfen Sie es.</translation>
    </message>
    <message>
        <source>Those are several photos. An entry attaches one: take them one by one, or drop them on the page of photos.</source>
        <translation>Das sind mehrere Fotos. Ein Eintrag hängt eines an: Nehmen Sie sie einzeln, oder legen Sie sie auf der Seite der Fotos ab.</translation>
    </message>
    <message>
        <source>Thread series</source>
        <translation>Gewindereihe</translation>
    </message>
    <message>
        <source>Thread size</source>
        <translation>Gewindegröße</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Three people who split the bolts among them each believe that the others had the last one.</source>
        <translation>Von drei Personen, die sich die Bolzen teilen, glaubt jede, die anderen hätten den letzten gehabt.</translation>
    </message>
    <message>
        <source>Tick what you looked at first, one by one.</source>
        <translation>Haken Sie zuerst einzeln ab, was Sie angesehen haben.</translation>
    </message>
    <message>
        <source>Tighten in the order %1, all of them in each pass.</source>
        <translation>Ziehen Sie in der Reihenfolge %1 an, in jedem Durchgang alle.</translation>
    </message>
    <message>
        <source>Tightened out of order, a flange stands askew and leaks.</source>
        <translation>Außer der Reihenfolge angezogen, steht ein Flansch schief und leckt.</translation>
    </message>
    <message>
        <source>Tightening</source>
        <translation>Anziehen</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>Times called in doubt</source>
        <translation>Zeiten als zweifelhaft erklärt</translation>
    </message>
    <message>
        <source>Times in doubt</source>
        <translation>Zeiten zweifelhaft</translation>
    </message>
    <message>
        <source>Tired eyes see what they expect.</source>
        <translation>Müde Augen sehen, was sie erwarten.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>To</source>
        <comment>a person</comment>
        <translation>An</translation>
    </message>
    <message>
        <source>To be seen: %1</source>
        <translation>Zu sehen: %1</translation>
    </message>
    <message>
        <source>To inspect</source>
        <translation>Zu prüfen</translation>
    </message>
    <message>
        <source>To show</source>
        <translation>Nachzuweisen</translation>
    </message>
    <message>
        <source>To the incoming lead</source>
        <translation>An den übernehmenden Leiter</translation>
    </message>
    <message>
        <source>To the job</source>
        <translation>An den Auftrag</translation>
    </message>
    <message>
        <source>To the nearer edge</source>
        <translation>Bis zum näheren Rand</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>An wen</translation>
    </message>
    <message>
        <source>Too little starves, too much foams.</source>
        <translation>Zu wenig lässt es trockenlaufen, zu viel schäumt.</translation>
    </message>
    <message>
        <source>Too little works loose, too much breaks.</source>
        <translation>Zu wenig lockert sich, zu viel bricht.</translation>
    </message>
    <message>
        <source>Too little: %1 is %2 short of %3. Fill up as the maintenance data says, and look whether any leaks.</source>
        <translation>Zu wenig: %1 ist %2 weniger als %3. Füllen Sie nach, wie die Instandhaltungsunterlagen sagen, und sehen Sie nach, ob etwas ausläuft.</translation>
    </message>
    <message>
        <source>Too much: %1 is %2 over %3. Draw it off as the maintenance data says, and check that the right liquid was filled in.</source>
        <translation>Zu viel: %1 ist %2 mehr als %3. Lassen Sie es ab, wie die Instandhaltungsunterlagen sagen, und prüfen Sie, ob die richtige Flüssigkeit eingefüllt wurde.</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>Tool %1 clicks at what it is set to, %2; it cannot have shown %3. Correct the one that is wrong.</source>
        <translation>Werkzeug %1 klickt bei dem, worauf es eingestellt ist, %2; es kann nicht %3 angezeigt haben. Berichtigen Sie den falschen Wert.</translation>
    </message>
    <message>
        <source>Tool %1 is not in calibration on %2; its calibration holds until: %3.</source>
        <translation>Werkzeug %1 ist am %2 nicht in Kalibrierung; die Kalibrierung gilt bis: %3.</translation>
    </message>
    <message>
        <source>Tool %1 is registered with a length of %2; the entry says %3.</source>
        <translation>Werkzeug %1 ist mit einer Länge von %2 eingetragen; der Eintrag gibt %3 an.</translation>
    </message>
    <message>
        <source>Tool %1 was found out of tolerance (%2) and has not been calibrated since.</source>
        <translation>Werkzeug %1 wurde außer Toleranz befunden (%2) und seither nicht kalibriert.</translation>
    </message>
    <message>
        <source>Tool %1 was withdrawn on %2.</source>
        <translation>Werkzeug %1 wurde am %2 aus dem Gebrauch genommen.</translation>
    </message>
    <message>
        <source>Tool calibrated</source>
        <translation>Werkzeug kalibriert</translation>
    </message>
    <message>
        <source>Tool found out of tolerance</source>
        <translation>Werkzeug außer Toleranz befunden</translation>
    </message>
    <message>
        <source>Tool issued to the job:</source>
        <translation>Werkzeug für den Auftrag ausgegeben:</translation>
    </message>
    <message>
        <source>Tool missing</source>
        <translation>Werkzeug fehlt</translation>
    </message>
    <message>
        <source>Tool missing:</source>
        <translation>Werkzeug fehlt:</translation>
    </message>
    <message>
        <source>Tool registered</source>
        <translation>Werkzeug registriert</translation>
    </message>
    <message>
        <source>Tool returned:</source>
        <translation>Werkzeug zurückgegeben:</translation>
    </message>
    <message>
        <source>Tool withdrawn</source>
        <translation>Werkzeug aus dem Gebrauch genommen</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Tools and tags out</source>
        <translation>Ausgegebene Werkzeuge und Anhänger</translation>
    </message>
    <message>
        <source>Tools and their calibration</source>
        <translation>Werkzeuge und ihre Kalibrierung</translation>
    </message>
    <message>
        <source>Tools counted</source>
        <translation>Werkzeuge gezählt</translation>
    </message>
    <message>
        <source>Tools issued to the job</source>
        <translation>Für den Auftrag ausgegebene Werkzeuge</translation>
    </message>
    <message>
        <source>Tools that measure</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Anziehdrehmoment</translation>
    </message>
    <message>
        <source>Torque asked for</source>
        <translation>Verlangtes Anziehdrehmoment</translation>
    </message>
    <message>
        <source>Torque at the fastener</source>
        <translation>Drehmoment am Verbindungselement</translation>
    </message>
    <message>
        <source>Torque at the fastener, T</source>
        <translation>Drehmoment am Verbindungselement, T</translation>
    </message>
    <message>
        <source>Torque is missing on fastener %1 of %2.</source>
        <translation>Das Anziehdrehmoment fehlt am Verbindungselement %1 von %2.</translation>
    </message>
    <message>
        <source>Torque needs the number of fasteners, the least and the most torque and a unit.</source>
        <translation>Das Anziehdrehmoment braucht die Anzahl der Verbindungselemente, den kleinsten und den größten Wert und eine Einheit.</translation>
    </message>
    <message>
        <source>Torque of nuts by thread</source>
        <translation>Drehmoment von Muttern nach Gewinde</translation>
    </message>
    <message>
        <source>Torque of this pass, T₁</source>
        <translation>Drehmoment dieses Durchgangs, T₁</translation>
    </message>
    <message>
        <source>Torque readings are accepted</source>
        <translation>Drehmoment-Messwerte werden angenommen</translation>
    </message>
    <message>
        <source>Torque specified, T₀</source>
        <translation>Verlangtes Drehmoment, T₀</translation>
    </message>
    <message>
        <source>Torque taken over</source>
        <translation>Anziehdrehmoment übernommen</translation>
    </message>
    <message>
        <source>Torque tool</source>
        <translation>Drehmomentwerkzeug</translation>
    </message>
    <message>
        <source>Torque unit</source>
        <translation>Drehmomenteinheit</translation>
    </message>
    <message>
        <source>Torque, fastener %1</source>
        <translation>Anziehdrehmoment, Verbindungselement %1</translation>
    </message>
    <message>
        <source>Torque, fastener %1, pass %2</source>
        <translation>Anziehdrehmoment, Verbindungselement %1, Durchgang %2</translation>
    </message>
    <message>
        <source>Torque, least</source>
        <translation>Anziehdrehmoment, mindestens</translation>
    </message>
    <message>
        <source>Torque, most</source>
        <translation>Anziehdrehmoment, höchstens</translation>
    </message>
    <message>
        <source>Torqued</source>
        <translation>Mit Drehmoment angezogen</translation>
    </message>
    <message>
        <source>Torqued and inspected anew when one of these is disturbed</source>
        <translation>Neu angezogen und geprüft, wenn eines davon verändert wird</translation>
    </message>
    <message>
        <source>Torqued at</source>
        <translation>Angezogen um</translation>
    </message>
    <message>
        <source>Torqued by</source>
        <translation>Angezogen von</translation>
    </message>
    <message>
        <source>Tr&amp;y the demo …</source>
        <translation>&amp;Vorführung ausprobieren …</translation>
    </message>
    <message>
        <source>Transfer code</source>
        <translation>Übertragungscode</translation>
    </message>
    <message>
        <source>Try again.</source>
        <translation>Versuchen Sie es erneut.</translation>
    </message>
    <message>
        <source>Turn after the torque, least</source>
        <translation>Drehwinkel nach dem Anziehdrehmoment, mindestens</translation>
    </message>
    <message>
        <source>Turn after the torque, most</source>
        <translation>Drehwinkel nach dem Anziehdrehmoment, höchstens</translation>
    </message>
    <message>
        <source>Turn the pigtail in, so that nobody is cut by it.</source>
        <translation>Biegen Sie das verdrillte Drahtende nach innen, damit sich niemand daran schneidet.</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Weitergedreht</translation>
    </message>
    <message>
        <source>Turned after the torque</source>
        <translation>Nach dem Drehmoment weitergedreht</translation>
    </message>
    <message>
        <source>Twin group</source>
        <translation>Gegenprüfungsgruppe</translation>
    </message>
    <message>
        <source>Twins verified</source>
        <translation>Gegenprüfung erfolgt</translation>
    </message>
    <message>
        <source>Twists in an inch, least</source>
        <translation>Verdrillungen je Zoll, mindestens</translation>
    </message>
    <message>
        <source>Twists in an inch, most</source>
        <translation>Verdrillungen je Zoll, höchstens</translation>
    </message>
    <message>
        <source>Twists of lockwire</source>
        <translation>Verdrillungen von Sicherungsdraht</translation>
    </message>
    <message>
        <source>Two blanks stand between digest and path.</source>
        <translation>Zwischen Prüfsumme und Pfad stehen zwei Leerzeichen.</translation>
    </message>
    <message>
        <source>Two crossed lines both look joined.</source>
        <translation>Zwei vertauschte Leitungen sehen beide angeschlossen aus.</translation>
    </message>
    <message>
        <source>Two inspections by one person are one inspection.</source>
        <translation>Zwei Prüfungen durch eine Person sind eine Prüfung.</translation>
    </message>
    <message>
        <source>Two interfaces that wait for each other could never be restored.</source>
        <translation>Zwei Anschlüsse, die aufeinander warten, ließen sich nie wiederherstellen.</translation>
    </message>
    <message>
        <source>Two interfaces that wait for each other could never be undone.</source>
        <translation>Zwei Anschlüsse, die aufeinander warten, ließen sich nie lösen.</translation>
    </message>
    <message>
        <source>Two kinds of interface share the id or the name "%1".</source>
        <translation>Zwei Arten von Anschlüssen haben dieselbe Kennung oder denselben Namen „%1“.</translation>
    </message>
    <message>
        <source>Two legs that hold a stiff load, margin of 20 %: common practice</source>
        <translation>Zwei Stränge, die eine starre Last halten, Reserve von 20 %: übliche Praxis</translation>
    </message>
    <message>
        <source>Two marks of one number send two people to two places.</source>
        <translation>Zwei Markierungen einer Nummer schicken zwei Leute an zwei Stellen.</translation>
    </message>
    <message>
        <source>Two of one name are one to whoever reads them.</source>
        <translation>Zwei mit gleichem Namen sind für den, der sie liest, einer.</translation>
    </message>
    <message>
        <source>Two pending handovers leave nobody in charge.</source>
        <translation>Bei zwei wartenden Übergaben ist niemand verantwortlich.</translation>
    </message>
    <message>
        <source>Two people logging the same disconnection means that one of them undid something else.</source>
        <translation>Tragen zwei Personen dasselbe Lösen ein, so hat eine davon etwas anderes gelöst.</translation>
    </message>
    <message>
        <source>Two rows have the id "%1".</source>
        <translation>Zwei Zeilen haben die Kennung „%1“.</translation>
    </message>
    <message>
        <source>Two tags of one number point at two places.</source>
        <translation>Zwei Anhänger mit einer Nummer zeigen auf zwei Stellen.</translation>
    </message>
    <message>
        <source>Two tags that hang crosswise point at two wrong places.</source>
        <translation>Zwei über Kreuz hängende Anhänger zeigen auf zwei falsche Stellen.</translation>
    </message>
    <message>
        <source>Two weight records of one change leave it open which of them counts.</source>
        <translation>Zwei Gewichtsübersichten eines Wechsels lassen offen, welcher gilt.</translation>
    </message>
    <message>
        <source>Type the code.</source>
        <translation>Geben Sie den Code ein.</translation>
    </message>
    <message>
        <source>Type the number or the hash of the earlier entry first.</source>
        <translation>Geben Sie zuerst die Nummer oder die Prüfsumme des früheren Eintrags ein.</translation>
    </message>
    <message>
        <source>Under 30° from the horizontal: OSHA guidance on safe sling use</source>
        <translation>Unter 30° zur Waagerechten: OSHA-Leitfaden zum sicheren Gebrauch von Anschlagmitteln</translation>
    </message>
    <message>
        <source>Undisturbed</source>
        <translation>Unberührt</translation>
    </message>
    <message>
        <source>Undone</source>
        <translation>Gelöst</translation>
    </message>
    <message>
        <source>Undone at</source>
        <translation>Gelöst um</translation>
    </message>
    <message>
        <source>Undone by</source>
        <translation>Gelöst von</translation>
    </message>
    <message>
        <source>Undone by: %1</source>
        <translation>Gelöst von: %1</translation>
    </message>
    <message>
        <source>Undone, not listed</source>
        <translation>Gelöst, nicht gelistet</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Aggregat</translation>
    </message>
    <message>
        <source>Unit</source>
        <comment>of measurement</comment>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Unit half</source>
        <translation>Aggregatseitige Hälfte</translation>
    </message>
    <message>
        <source>Unit is in place</source>
        <translation>Aggregat ist an seinem Platz</translation>
    </message>
    <message>
        <source>Unit is off</source>
        <translation>Aggregat ist ausgebaut</translation>
    </message>
    <message>
        <source>Unit …</source>
        <translation>Einheit …</translation>
    </message>
    <message>
        <source>Unit …</source>
        <comment>of measurement</comment>
        <translation>Einheit …</translation>
    </message>
    <message>
        <source>Unit, tests</source>
        <translation>Aggregat, Tests</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Until the incoming lead signs, the outgoing one answers.</source>
        <translation>Bis der übernehmende Leiter unterschreibt, ist der übergebende verantwortlich.</translation>
    </message>
    <message>
        <source>Untouched, not applicable, not listed</source>
        <translation>Nicht berührt, nicht zutreffend, nicht aufgelistet</translation>
    </message>
    <message>
        <source>Up to</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Usable from</source>
        <translation>Nutzbar ab</translation>
    </message>
    <message>
        <source>Usable range</source>
        <translation>Nutzbarer Bereich</translation>
    </message>
    <message>
        <source>Usable to</source>
        <translation>Nutzbar bis</translation>
    </message>
    <message>
        <source>Uses</source>
        <translation>Verwendungen</translation>
    </message>
    <message>
        <source>VOID</source>
        <translation>HINFÄLLIG</translation>
    </message>
    <message>
        <source>VOID: %1</source>
        <translation>HINFÄLLIG: %1</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Values and limits</source>
        <translation>Werte und Grenzwerte</translation>
    </message>
    <message>
        <source>Values read, with their limits</source>
        <translation>Abgelesene Werte, mit ihren Grenzwerten</translation>
    </message>
    <message>
        <source>Verified at 100 %</source>
        <translation>Geprüft bei 100 %</translation>
    </message>
    <message>
        <source>Verified at 20 %</source>
        <translation>Geprüft bei 20 %</translation>
    </message>
    <message>
        <source>Verified at 60 %</source>
        <translation>Geprüft bei 60 %</translation>
    </message>
    <message>
        <source>Verified at the lowest mark</source>
        <translation>Geprüft beim kleinsten Teilstrich</translation>
    </message>
    <message>
        <source>Verify a record package</source>
        <translation>Nachweispaket verifizieren</translation>
    </message>
    <message>
        <source>Verify the store</source>
        <translation>Ablage verifizieren</translation>
    </message>
    <message>
        <source>Verify the twins</source>
        <translation>Gegenprüfung durchführen</translation>
    </message>
    <message>
        <source>Verifying was stopped; nothing was said about the rest.</source>
        <translation>Das Verifizieren wurde abgebrochen; über den Rest wurde nichts gesagt.</translation>
    </message>
    <message>
        <source>Verifying what the record rests on</source>
        <translation>Es wird verifiziert, worauf der Nachweis beruht</translation>
    </message>
    <message>
        <source>Waits to be attached: %1</source>
        <translation>Wartet aufs Anhängen: %1</translation>
    </message>
    <message>
        <source>Waits to be attached: %1, and %2</source>
        <translation>Wartet aufs Anhängen: %1, und %2</translation>
    </message>
    <message>
        <source>Walk-round</source>
        <translation>Rundgang</translation>
    </message>
    <message numerus="yes">
        <source>Walk-round: %n to look at</source>
        <translation>
            <numerusform>Rundgang: %n anzusehen</numerusform>
            <numerusform>Rundgang: %n anzusehen</numerusform>
        </translation>
    </message>
    <message>
        <source>Wall sheet: what is open</source>
        <translation>Aushang: was offen ist</translation>
    </message>
    <message>
        <source>Warning tag</source>
        <translation>Warnanhänger</translation>
    </message>
    <message>
        <source>Washers stack in the order that the maintenance data shows.</source>
        <translation>Die Scheiben liegen in der Reihenfolge, die die Instandhaltungsunterlagen zeigen.</translation>
    </message>
    <message>
        <source>Watch the folder of a camera or phone</source>
        <translation>Ordner einer Kamera oder eines Telefons beobachten</translation>
    </message>
    <message>
        <source>Watched for</source>
        <translation>Beobachtet während</translation>
    </message>
    <message>
        <source>Wear eye protection when lockwire is cut, and catch the ends: they hurt people and find their way into engines.</source>
        <translation>Tragen Sie Augenschutz, wenn Sicherungsdraht geschnitten wird, und fangen Sie die Enden auf: Sie verletzen Menschen und geraten in Triebwerke.</translation>
    </message>
    <message>
        <source>Weight and balance</source>
        <translation>Gewicht und Schwerpunkt</translation>
    </message>
    <message>
        <source>Weight change recorded</source>
        <translation>Gewichtsänderung eingetragen</translation>
    </message>
    <message>
        <source>Weight of the incoming unit</source>
        <translation>Gewicht des eingehenden Aggregats</translation>
    </message>
    <message>
        <source>Weight of the outgoing unit</source>
        <translation>Gewicht des ausgehenden Aggregats</translation>
    </message>
    <message>
        <source>Weight of the rigging</source>
        <translation>Gewicht des Geschirrs</translation>
    </message>
    <message>
        <source>Weight of the unit</source>
        <translation>Gewicht des Aggregats</translation>
    </message>
    <message>
        <source>Wet area, across</source>
        <translation>Nasse Fläche, Durchmesser</translation>
    </message>
    <message>
        <source>Wet area, across; 0: dry</source>
        <translation>Nasse Fläche, Durchmesser; 0: trocken</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What a gate let through does not go back behind it.</source>
        <translation>Was eine Sperre durchgelassen hat, geht nicht hinter sie zurück.</translation>
    </message>
    <message>
        <source>What a tool clicks at and what it shows are two things to check.</source>
        <translation>Wobei ein Werkzeug klickt und was es anzeigt, sind zwei Dinge, die zu prüfen sind.</translation>
    </message>
    <message>
        <source>What a torque tool may be off</source>
        <translation>Mögliche Abweichung eines Drehmomentwerkzeugs</translation>
    </message>
    <message>
        <source>What anybody on the job sees must be easy to say.</source>
        <translation>Was irgendjemand am Auftrag sieht, muss leicht zu sagen sein.</translation>
    </message>
    <message>
        <source>What became of the hardware</source>
        <translation>Was aus dem Befestigungsmaterial wurde</translation>
    </message>
    <message>
        <source>What became void</source>
        <translation>Was hinfällig wurde</translation>
    </message>
    <message>
        <source>What came between</source>
        <translation>Was dazwischen hinzukam</translation>
    </message>
    <message>
        <source>What came between comes here.</source>
        <translation>Was dazwischen hinzukam, steht dann hier.</translation>
    </message>
    <message>
        <source>What came between: %1</source>
        <translation>Was dazwischen hinzukam: %1</translation>
    </message>
    <message>
        <source>What came off is counted from what was on.</source>
        <translation>Was abgenommen wurde, wird von dem gezählt, was daran war.</translation>
    </message>
    <message>
        <source>What cannot be shown would stay loose for ever.</source>
        <translation>Was nicht nachgewiesen werden kann, bliebe für immer lose.</translation>
    </message>
    <message>
        <source>What cannot be taken back waits until everything before it is true.</source>
        <translation>Was sich nicht zurücknehmen lässt, wartet, bis alles davor wahr ist.</translation>
    </message>
    <message>
        <source>What carries no designations cannot be told apart by them.</source>
        <translation>Was keine Bezeichnungen trägt, lässt sich nicht an ihnen unterscheiden.</translation>
    </message>
    <message>
        <source>What changes on the way was changed by nobody.</source>
        <translation>Was sich unterwegs ändert, hat niemand geändert.</translation>
    </message>
    <message>
        <source>What drains may be fuel, oil or hydraulic fluid, hot or under pressure. Let it cool, catch it, protect skin and eyes, and keep every source of ignition away, as the approved maintenance data and the local rules say.</source>
        <translation>Was abläuft, kann Kraftstoff, Öl oder Hydraulikflüssigkeit sein, heiß oder unter Druck. Lassen Sie es abkühlen, fangen Sie es auf, schützen Sie Haut und Augen, und halten Sie jede Zündquelle fern, wie es die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften angeben.</translation>
    </message>
    <message>
        <source>What each is joined to, in the same order</source>
        <translation>Womit jede verbunden ist, in derselben Reihenfolge</translation>
    </message>
    <message>
        <source>What goes on next, and what stands in its way</source>
        <translation>Was als Nächstes angebaut wird und was dem im Weg steht</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>What has to be off before %1 waits itself for %1. Leave out one of them.</source>
        <translation>Was vor %1 gelöst sein muss, wartet selbst auf %1. Lassen Sie eines davon weg.</translation>
    </message>
    <message>
        <source>What has to be so</source>
        <translation>Was gegeben sein muss</translation>
    </message>
    <message>
        <source>What has to come out again is not done, however tight it is.</source>
        <translation>Was wieder herauskommen muss, ist nicht fertig, wie fest es auch sitzt.</translation>
    </message>
    <message>
        <source>What hoist and legs carry, and whether a limit or an inspection speaks against the lift.</source>
        <translation>Was Hebezeug und Stränge tragen, und ob ein Grenzwert oder eine Prüfung gegen den Hebevorgang spricht.</translation>
    </message>
    <message>
        <source>What is chosen: %1</source>
        <translation>Was gewählt ist: %1</translation>
    </message>
    <message>
        <source>What is confirmed are the statements of %1, each once, in their order.</source>
        <translation>Bestätigt werden die Erklärungen von %1, jede einmal, in ihrer Reihenfolge.</translation>
    </message>
    <message>
        <source>What is counted is not believed.</source>
        <translation>Was gezählt wird, braucht man nicht zu glauben.</translation>
    </message>
    <message>
        <source>What is covered cannot be inspected.</source>
        <translation>Was verdeckt ist, kann nicht geprüft werden.</translation>
    </message>
    <message>
        <source>What is deferred without end is forgotten.</source>
        <translation>Was ohne Ende zurückgestellt ist, wird vergessen.</translation>
    </message>
    <message>
        <source>What is drawn comes here, with every entry about it.</source>
        <translation>Was gezogen wird, kommt hierher, mit jedem Eintrag dazu.</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Was fällig ist</translation>
    </message>
    <message>
        <source>What is fitted instead comes with a release certificate: name it.</source>
        <translation>Was stattdessen angebaut wird, kommt mit einer Freigabebescheinigung: Geben Sie diese an.</translation>
    </message>
    <message>
        <source>What is found comes here, job by job.</source>
        <translation>Was gefunden wird, kommt hierher, Auftrag für Auftrag.</translation>
    </message>
    <message>
        <source>What is half done is finished by those who know how far it came.</source>
        <translation>Was halb fertig ist, beenden die, die wissen, wie weit es kam.</translation>
    </message>
    <message>
        <source>What is kept and signed is the photo as it is, SHA-256 %1….</source>
        <translation>Aufbewahrt und unterschrieben wird das Foto, wie es ist, SHA-256 %1….</translation>
    </message>
    <message>
        <source>What is kept and signed is this copy, SHA-256 %1…. The original is not kept and stays where it came from; the entry names it by its SHA-256, %2….</source>
        <translation>Aufbewahrt und unterschrieben wird diese Kopie, SHA-256 %1…. Das Original wird nicht aufbewahrt und bleibt, wo es herkam; der Eintrag nennt seine SHA-256, %2….</translation>
    </message>
    <message>
        <source>What is kept and signed is this copy, SHA-256 %1…. The picture was pasted, so there is no file to name.</source>
        <translation>Aufbewahrt und unterschrieben wird diese Kopie, SHA-256 %1…. Das Bild wurde eingefügt, darum gibt es keine Datei zu nennen.</translation>
    </message>
    <message>
        <source>What is looked for</source>
        <translation>Was gesucht wird</translation>
    </message>
    <message>
        <source>What is loose</source>
        <translation>Was offen ist</translation>
    </message>
    <message>
        <source>What is missing first</source>
        <translation>Was zuerst fehlt</translation>
    </message>
    <message>
        <source>What is missing is looked for before the way to it is closed.</source>
        <translation>Was fehlt, wird gesucht, bevor der Weg dorthin geschlossen wird.</translation>
    </message>
    <message>
        <source>What is new in it</source>
        <translation>Was darin neu ist</translation>
    </message>
    <message>
        <source>What is not on the list is not missed at the end.</source>
        <translation>Was nicht auf der Liste steht, wird am Ende nicht vermisst.</translation>
    </message>
    <message>
        <source>What is on</source>
        <translation>Was angebracht ist</translation>
    </message>
    <message>
        <source>What is open is counted, not remembered.</source>
        <translation>Was offen ist, wird gezählt, nicht erinnert.</translation>
    </message>
    <message>
        <source>What is out</source>
        <translation>Was ausgegeben ist</translation>
    </message>
    <message>
        <source>What is overloaded does not warn before it parts.</source>
        <translation>Was überlastet ist, warnt nicht, bevor es reißt.</translation>
    </message>
    <message>
        <source>What is passed has been set.</source>
        <translation>Was passiert wird, wurde gesetzt.</translation>
    </message>
    <message>
        <source>What is removed weighs as much as the aircraft, or more. Check the weights and their units.</source>
        <translation>Was ausgebaut wird, wiegt so viel wie das Luftfahrzeug oder mehr. Prüfen Sie die Gewichte und ihre Einheiten.</translation>
    </message>
    <message>
        <source>What is said twice is cleared once.</source>
        <translation>Was zweimal gesagt ist, wird einmal erledigt.</translation>
    </message>
    <message>
        <source>What is sent to somebody who knows nothing of it is lost.</source>
        <translation>Was an jemanden gesendet wird, der nichts davon weiß, ist verloren.</translation>
    </message>
    <message>
        <source>What is signed</source>
        <translation>Was unterschrieben wird</translation>
    </message>
    <message>
        <source>What is still to be tightened will bond otherwise.</source>
        <translation>Was noch anzuziehen ist, leitet danach anders.</translation>
    </message>
    <message>
        <source>What is taken up was put down.</source>
        <translation>Was aufgenommen wird, wurde vorher abgelegt.</translation>
    </message>
    <message>
        <source>What is typed as known has to be 64 digits, 0 to 9 and a to f; these are %1.</source>
        <translation>Was als bekannt eingegeben wird, muss 64 Stellen haben, 0 bis 9 und a bis f; dies sind %1.</translation>
    </message>
    <message>
        <source>What is typed on the pages and not signed is lost. What was signed stands.</source>
        <translation>Was auf den Seiten eingetippt und nicht unterschrieben ist, geht verloren. Was unterschrieben wurde, bleibt.</translation>
    </message>
    <message>
        <source>What is typed or marked on the pages and not signed is lost. Photos that wait are not attached, and no folder is watched any more. What was signed stands.</source>
        <translation>Was auf den Seiten eingetippt oder markiert und nicht unterschrieben ist, geht verloren. Wartende Fotos werden nicht angehängt, und kein Ordner wird mehr beobachtet. Was unterschrieben wurde, bleibt.</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <source>What is wrong, and what was expected</source>
        <translation>Was falsch ist und was erwartet wurde</translation>
    </message>
    <message>
        <source>What it carries rubs nowhere between clamps.</source>
        <translation>Was sie trägt, scheuert zwischen den Schellen nirgends.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was es ist</translation>
    </message>
    <message>
        <source>What it isolates is dead, empty or without pressure, and somebody has proven it.</source>
        <translation>Was sie freischaltet, ist spannungslos, leer oder drucklos, und jemand hat es nachgewiesen.</translation>
    </message>
    <message>
        <source>What leaves with it</source>
        <translation>Was damit abgeht</translation>
    </message>
    <message>
        <source>What made a test fail is open until it is found.</source>
        <translation>Was einen Test scheitern ließ, ist offen, bis es gefunden ist.</translation>
    </message>
    <message>
        <source>What may not go on before something was looked at</source>
        <translation>Was nicht weitergehen darf, bevor etwas angesehen wurde</translation>
    </message>
    <message>
        <source>What nobody released does not fly.</source>
        <translation>Was niemand freigegeben hat, fliegt nicht.</translation>
    </message>
    <message>
        <source>What only eyes can tell, each pair of eyes looks at on its own.</source>
        <translation>Was nur Augen erkennen können, sieht jedes Augenpaar für sich an.</translation>
    </message>
    <message>
        <source>What restoring has to show is not changed in passing.</source>
        <translation>Was die Wiederherstellung nachweisen muss, wird nicht nebenbei geändert.</translation>
    </message>
    <message>
        <source>What stands in the way</source>
        <translation>Was im Weg steht</translation>
    </message>
    <message>
        <source>What still holds it</source>
        <translation>Was es noch hält</translation>
    </message>
    <message>
        <source>What stops closure</source>
        <translation>Was dem Abschluss entgegensteht</translation>
    </message>
    <message>
        <source>What the list did not foresee</source>
        <translation>Was die Liste nicht vorsah</translation>
    </message>
    <message>
        <source>What the next shift has to know</source>
        <translation>Was die nächste Schicht wissen muss</translation>
    </message>
    <message>
        <source>What the nut eats up does not clamp.</source>
        <translation>Was die Mutter an Drehmoment aufzehrt, erzeugt keine Vorspannung.</translation>
    </message>
    <message>
        <source>What the signer looks at and confirms</source>
        <translation>Was die unterschreibende Person ansieht und bestätigt</translation>
    </message>
    <message>
        <source>What the signer looks at and confirms, one statement a line</source>
        <translation>Was die unterschreibende Person ansieht und bestätigt, eine Aussage je Zeile</translation>
    </message>
    <message>
        <source>What the store remembers of the job for the start page is not what its entries say: it was put in. Open the job to see what they say.</source>
        <translation>Was sich die Ablage zum Auftrag für die Startseite merkt, ist nicht, was seine Einträge angeben: Es wurde eingefügt. Öffnen Sie den Auftrag, um zu sehen, was sie angeben.</translation>
    </message>
    <message>
        <source>What the tool may give at a setting, and at the points at which it is verified.</source>
        <translation>Was das Werkzeug bei einer Einstellung und an den Punkten, an denen es verifiziert wird, abgeben darf.</translation>
    </message>
    <message>
        <source>What they do</source>
        <translation>Was sie tun</translation>
    </message>
    <message>
        <source>What this record rests on</source>
        <translation>Worauf dieser Nachweis beruht</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Was anzusehen ist</translation>
    </message>
    <message>
        <source>What to look at, for the chosen mark</source>
        <translation>Was anzusehen ist, bei der gewählten Markierung</translation>
    </message>
    <message>
        <source>What to set the wrench to so that the fastener gets a torque of its band, with or without an adapter.</source>
        <translation>Worauf der Schlüssel einzustellen ist, damit das Verbindungselement ein Drehmoment seines zulässigen Bereichs erhält, mit oder ohne Adapter.</translation>
    </message>
    <message>
        <source>What two things are called by one name, one of them is left on.</source>
        <translation>Heißen zwei Dinge gleich, bleibt eines davon am Luftfahrzeug.</translation>
    </message>
    <message>
        <source>What voids one item has to reach the other, and a job voids nothing in another one.</source>
        <translation>Was einen Posten hinfällig macht, muss den anderen erreichen, und ein Auftrag macht nichts in einem anderen hinfällig.</translation>
    </message>
    <message>
        <source>What waited at a gate does not become something that need not have waited.</source>
        <translation>Was an einer Sperre gewartet hat, wird nicht zu etwas, das nicht hätte warten müssen.</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Was wartet</translation>
    </message>
    <message>
        <source>What waits at a gate does not go round it by having no name.</source>
        <translation>Was an einer Sperre wartet, umgeht sie nicht dadurch, dass es keinen Namen hat.</translation>
    </message>
    <message>
        <source>What waits for an inspector</source>
        <translation>Was auf einen Prüfer wartet</translation>
    </message>
    <message>
        <source>What waits for it</source>
        <translation>Was darauf wartet</translation>
    </message>
    <message>
        <source>What was begun was typed for the photo %1. Choose that one, or cancel and begin anew.</source>
        <translation>Das Begonnene wurde für das Foto %1 eingetippt. Wählen Sie jenes, oder brechen Sie ab und beginnen Sie neu.</translation>
    </message>
    <message>
        <source>What was counted once does not become less by counting again.</source>
        <translation>Was einmal gezählt wurde, wird durch erneutes Zählen nicht weniger.</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>What was due yesterday is late, not planned.</source>
        <translation>Was gestern fällig war, ist überfällig, nicht geplant.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was festgestellt wurde</translation>
    </message>
    <message>
        <source>What was found holding on is free when somebody has freed it.</source>
        <translation>Was noch festhängend vorgefunden wurde, ist frei, wenn jemand es frei gemacht hat.</translation>
    </message>
    <message>
        <source>What was found, and what became of it</source>
        <translation>Was festgestellt wurde und was daraus wurde</translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation>Was angesehen wurde</translation>
    </message>
    <message>
        <source>What was measured in between has to be found again.</source>
        <translation>Was dazwischen gemessen wurde, muss wiedergefunden werden.</translation>
    </message>
    <message>
        <source>What was not counted as it came off cannot be missed when it goes on.</source>
        <translation>Was beim Abnehmen nicht gezählt wurde, kann beim Anbauen nicht vermisst werden.</translation>
    </message>
    <message>
        <source>What was put in for the journey must come out before the work.</source>
        <translation>Was für den Transport eingebaut wurde, muss vor der Arbeit heraus.</translation>
    </message>
    <message>
        <source>What was put on for the job and has to come off</source>
        <translation>Was für den Auftrag angebracht wurde und wieder ab muss</translation>
    </message>
    <message>
        <source>What was scanned is not known here</source>
        <translation>Was gescannt wurde, ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>What was seen to be wrong is put right; it does not go away by a word.</source>
        <translation>Was als falsch gesehen wurde, wird in Ordnung gebracht; es verschwindet nicht durch ein Wort.</translation>
    </message>
    <message>
        <source>What was signed about each interface</source>
        <translation>Was zu jedem Anschluss unterschrieben wurde</translation>
    </message>
    <message>
        <source>What was signed in between has to be found again.</source>
        <translation>Was dazwischen unterschrieben wurde, muss wiedergefunden werden.</translation>
    </message>
    <message>
        <source>What was so</source>
        <translation>Was so war</translation>
    </message>
    <message>
        <source>What was struck, and what fell with it.</source>
        <translation>Was gestrichen wurde und was damit entfallen ist.</translation>
    </message>
    <message>
        <source>What was typed here stays in %1, which cannot be removed (%2). Remove it by hand.</source>
        <translation>Was hier getippt wurde, bleibt in %1, das sich nicht entfernen lässt (%2). Entfernen Sie es von Hand.</translation>
    </message>
    <message>
        <source>What was undone</source>
        <translation>Was gelöst wurde</translation>
    </message>
    <message>
        <source>What was undone is not made untouched by a word.</source>
        <translation>Was gelöst wurde, wird nicht durch ein Wort unangerührt.</translation>
    </message>
    <message>
        <source>What was verified could not be remembered in %1 (%2). The next verification begins at the first entry again.</source>
        <translation>Was verifiziert wurde, konnte nicht in %1 gemerkt werden (%2). Die nächste Verifizierung beginnt wieder beim ersten Eintrag.</translation>
    </message>
    <message>
        <source>What was withdrawn stays withdrawn from that moment.</source>
        <translation>Was entzogen wurde, bleibt von jenem Zeitpunkt an entzogen.</translation>
    </message>
    <message>
        <source>What you sign</source>
        <translation>Was Sie unterschreiben</translation>
    </message>
    <message>
        <source>What you type here is not kept if the program ends: %1 cannot be written (%2). Make room or mend the rights of the folder, or sign before you leave.</source>
        <translation>Was Sie hier tippen, bleibt nicht erhalten, wenn das Programm endet: %1 lässt sich nicht schreiben (%2). Schaffen Sie Platz oder berichtigen Sie die Rechte des Ordners, oder unterschreiben Sie, bevor Sie gehen.</translation>
    </message>
    <message>
        <source>What, and where</source>
        <translation>Was und wo</translation>
    </message>
    <message>
        <source>Whatever is in front was taken off first; if the log says otherwise, it lacks an entry.</source>
        <translation>Was davor liegt, wurde zuerst abgenommen; sagt das Buch etwas anderes, fehlt ihm ein Eintrag.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>When one of %1 and %2 is disturbed, the other is torqued and inspected anew. They stay in one job.</source>
        <translation>Wird einer von %1 und %2 nachträglich verändert, so wird der andere neu angezogen und geprüft. Sie bleiben in einem Auftrag.</translation>
    </message>
    <message>
        <source>When the first part was released, the other parts were complete; they stay what they were then.</source>
        <translation>Als der erste Teil freigegeben wurde, waren die anderen Teile vollständig; sie bleiben, was sie damals waren.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Where "%1" should begin in the ZIP file stands something else.</source>
        <translation>Wo in der ZIP-Datei „%1“ beginnen sollte, steht etwas anderes.</translation>
    </message>
    <message>
        <source>Where %1 went was said by %2 in entry %3. If it was wrong, strike that.</source>
        <translation>Wohin %1 kam, hat %2 in Eintrag %3 angegeben. War das falsch, streichen Sie jenen Eintrag.</translation>
    </message>
    <message>
        <source>Where another inspector is there, it is not unforeseen.</source>
        <translation>Wo ein anderer Prüfer da ist, ist es nicht unvorhergesehen.</translation>
    </message>
    <message>
        <source>Where it was last seen, and where it was looked for</source>
        <translation>Wo es zuletzt gesehen und wo gesucht wurde</translation>
    </message>
    <message>
        <source>Where record and lift differ, one of them is wrong, and the lift may have been too light.</source>
        <translation>Wo Nachweis und Hebevorgang voneinander abweichen, ist einer falsch, und das Hebezeug kann zu schwach gewesen sein.</translation>
    </message>
    <message>
        <source>Where the turn stretches the bolt, the torque alone does not.</source>
        <translation>Wo der Drehwinkel den Bolzen dehnt, tut es das Anziehdrehmoment allein nicht.</translation>
    </message>
    <message>
        <source>Where the weight lies decides how the aircraft flies.</source>
        <translation>Wo das Gewicht liegt, entscheidet, wie das Luftfahrzeug fliegt.</translation>
    </message>
    <message>
        <source>Where the work stands</source>
        <translation>Wo die Arbeit steht</translation>
    </message>
    <message>
        <source>Where to keep the demo</source>
        <translation>Wo die Vorführung abgelegt wird</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Wo verwendet</translation>
    </message>
    <message>
        <source>Where used: %1 %2</source>
        <translation>Wo verwendet: %1 %2</translation>
    </message>
    <message>
        <source>Whether a nut may be used again at all, the maintenance data says. Look at it as well: clean, undamaged, and measured before it seats.</source>
        <translation>Ob eine Mutter überhaupt wiederverwendet werden darf, sagen die Instandhaltungsunterlagen. Sehen Sie sie auch an: sauber, unbeschädigt und gemessen, bevor sie aufliegt.</translation>
    </message>
    <message>
        <source>Whether a nut still locks well enough to be used again.</source>
        <translation>Ob eine Mutter noch gut genug sichert, um wiederverwendet zu werden.</translation>
    </message>
    <message>
        <source>Whether it is negligible</source>
        <translation>Ob sie vernachlässigbar ist</translation>
    </message>
    <message>
        <source>Whether one reading of a bond, or the worse of two, meets its limit.</source>
        <translation>Ob eine Messung einer Masseverbindung, oder die schlechtere von zweien, ihren Grenzwert einhält.</translation>
    </message>
    <message>
        <source>Whether what the wrench showed lies in the band, with what the tool may be off.</source>
        <translation>Ob die Anzeige des Schlüssels im zulässigen Bereich liegt, mit der möglichen Abweichung des Werkzeugs.</translation>
    </message>
    <message>
        <source>Whether what was filled in lies in its band, in any unit of volume.</source>
        <translation>Ob das Aufgefüllte in seinem zulässigen Bereich liegt, in jeder Volumeneinheit.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welcher</translation>
    </message>
    <message>
        <source>Which fasteners</source>
        <translation>Welche Verbindungselemente</translation>
    </message>
    <message>
        <source>Which interface does it show?</source>
        <translation>Welchen Anschluss zeigt es?</translation>
    </message>
    <message>
        <source>Which list</source>
        <translation>Welche Liste</translation>
    </message>
    <message>
        <source>Which table?</source>
        <translation>Welche Tabelle?</translation>
    </message>
    <message>
        <source>Which unit</source>
        <translation>Welches Aggregat</translation>
    </message>
    <message>
        <source>Which unit goes up is not changed behind its back.</source>
        <translation>Welches Aggregat angehoben wird, wird nicht hinter seinem Rücken geändert.</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>While an engine runs, keep clear of intake, propeller and exhaust, and look from where the maintenance data says.</source>
        <translation>Während ein Triebwerk läuft, bleiben Sie von Einlauf, Propeller und Abgas weg und sehen von dort hin, von wo die Instandhaltungsunterlagen es sagen.</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Who can clear it</source>
        <translation>Wer es erledigen kann</translation>
    </message>
    <message>
        <source>Who does the work does not choose what it has to show.</source>
        <translation>Wer die Arbeit tut, wählt nicht, was sie nachweisen muss.</translation>
    </message>
    <message>
        <source>Who enrolled whom, and on whose word, stands on the record.</source>
        <translation>Wer wen aufgenommen hat, und auf wessen Wort, steht im Nachweis.</translation>
    </message>
    <message>
        <source>Who had a hand in it cannot be asked of a record that is not there.</source>
        <translation>Wer daran beteiligt war, lässt sich von einem Nachweis, der nicht da ist, nicht erfragen.</translation>
    </message>
    <message>
        <source>Who had it</source>
        <translation>Wer es hatte</translation>
    </message>
    <message>
        <source>Who has it</source>
        <translation>Wer es hat</translation>
    </message>
    <message>
        <source>Who has to stop at a gate does not lower it.</source>
        <translation>Wer an einer Sperre halten muss, lockert sie nicht.</translation>
    </message>
    <message>
        <source>Who helped counts for independence, so helpers must be people, not free text.</source>
        <translation>Wer geholfen hat, zählt für die Unabhängigkeit; Helfer müssen daher Personen sein, nicht freier Text.</translation>
    </message>
    <message>
        <source>Who led and who worked on a shift is not changed afterwards.</source>
        <translation>Wer eine Schicht geleitet und in ihr gearbeitet hat, wird nachträglich nicht geändert.</translation>
    </message>
    <message>
        <source>Who lets the next step begin answers for it.</source>
        <translation>Wer den nächsten Schritt beginnen lässt, ist dafür verantwortlich.</translation>
    </message>
    <message>
        <source>Who signed or is named</source>
        <translation>Wer unterschrieben hat oder genannt ist</translation>
    </message>
    <message>
        <source>Who signed what when</source>
        <translation>Wer was wann unterschrieb</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Who signs?</source>
        <translation>Wer unterschreibt?</translation>
    </message>
    <message>
        <source>Who stopped, when</source>
        <translation>Wer unterbrach, wann</translation>
    </message>
    <message>
        <source>Who takes a requirement away does not judge alone what is left of it.</source>
        <translation>Wer eine Anforderung wegnimmt, beurteilt nicht allein, was davon übrig bleibt.</translation>
    </message>
    <message>
        <source>Who takes over says how many fasteners were looked at.</source>
        <translation>Wer übernimmt, gibt an, wie viele Verbindungselemente angesehen wurden.</translation>
    </message>
    <message>
        <source>Who was authorised and which tool was in date is asked for the moment of the entry.</source>
        <translation>Wer berechtigt und welches Werkzeug gültig kalibriert war, wird für den Zeitpunkt des Eintrags gefragt.</translation>
    </message>
    <message>
        <source>Whoever compares the copy with its original has to know which file that is.</source>
        <translation>Wer die Kopie mit ihrem Original vergleicht, muss wissen, welche Datei das ist.</translation>
    </message>
    <message>
        <source>Whoever could cut a link could inspect their own work behind it.</source>
        <translation>Wer eine Verknüpfung trennen könnte, könnte dahinter die eigene Arbeit prüfen.</translation>
    </message>
    <message>
        <source>Whoever crossed them believes that they are right.</source>
        <translation>Wer sie vertauscht hat, glaubt, dass sie richtig sind.</translation>
    </message>
    <message>
        <source>Whoever flies it has to know what is still to be done.</source>
        <translation>Wer damit fliegt, muss wissen, was noch zu tun ist.</translation>
    </message>
    <message>
        <source>Whoever made the damage does not judge it.</source>
        <translation>Wer den Schaden verursacht hat, beurteilt ihn nicht.</translation>
    </message>
    <message>
        <source>Whoever opens a job answers for it until it is handed over.</source>
        <translation>Wer einen Auftrag eröffnet, ist dafür verantwortlich, bis er übergeben ist.</translation>
    </message>
    <message>
        <source>Whoever stops their own key can sign nothing any more. Replace it instead, and say since when its signatures are in doubt.</source>
        <translation>Wer den eigenen Schlüssel sperrt, kann nichts mehr unterschreiben. Ersetzen Sie ihn stattdessen, und geben Sie an, seit wann seine Unterschriften zweifelhaft sind.</translation>
    </message>
    <message>
        <source>Whoever undid something could say that they did not.</source>
        <translation>Wer etwas gelöst hat, könnte sagen, er habe es nicht getan.</translation>
    </message>
    <message>
        <source>Whoever wished an inspection back could say that nothing had happened.</source>
        <translation>Wer sich eine Prüfung zurückwünscht, könnte sagen, es sei nichts geschehen.</translation>
    </message>
    <message>
        <source>Whoever works behind an isolation applies their own, with their name on it.</source>
        <translation>Wer hinter einer Freischaltung arbeitet, bringt seine eigene an, mit seinem Namen darauf.</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>Wessen</translation>
    </message>
    <message>
        <source>Whose entry?</source>
        <translation>Wessen Eintrag?</translation>
    </message>
    <message>
        <source>Whose hands were there stays known, unless it never was so.</source>
        <translation>Wer Hand angelegt hat, bleibt bekannt, außer es war nie so.</translation>
    </message>
    <message>
        <source>Whose hands were there, and what was counted, stays. A name or a number that was mistyped goes first to somebody with authority to overrule, who strikes it as never so (More details).</source>
        <translation>Wer Hand angelegt hat und was gezählt wurde, bleibt stehen. Ein falsch getippter Name oder eine falsch getippte Zahl geht zuerst an jemanden mit der Befugnis zum Übersteuern, der den Eintrag als nie so gewesen streicht (Weitere Angaben).</translation>
    </message>
    <message>
        <source>Why it does not move</source>
        <translation>Warum es nicht umgebaut wird</translation>
    </message>
    <message>
        <source>Why it is refused</source>
        <translation>Warum abgelehnt wird</translation>
    </message>
    <message>
        <source>Why it is set or changed</source>
        <translation>Warum er gesetzt oder geändert wird</translation>
    </message>
    <message>
        <source>Why out of order</source>
        <translation>Warum außer der Reihenfolge</translation>
    </message>
    <message>
        <source>Why the change is given up</source>
        <translation>Warum der Wechsel abgebrochen wird</translation>
    </message>
    <message>
        <source>Why the clock is not trusted</source>
        <translation>Warum der Uhr nicht vertraut wird</translation>
    </message>
    <message>
        <source>Why the list is corrected, and by which data</source>
        <translation>Warum die Liste berichtigt wird und nach welchen Unterlagen</translation>
    </message>
    <message>
        <source>Why this could not be foreseen</source>
        <translation>Warum dies nicht vorherzusehen war</translation>
    </message>
    <message>
        <source>Why, or what was seen</source>
        <translation>Warum, oder was gesehen wurde</translation>
    </message>
    <message>
        <source>Why, where it is another person's</source>
        <translation>Warum, wo es einer anderen Person gehört</translation>
    </message>
    <message>
        <source>Wire and pins are new each time; how they are fitted the approved maintenance data and the local rules say.</source>
        <translation>Draht und Splinte sind jedes Mal neu; wie sie angebracht werden, sagen die genehmigten Instandhaltungsunterlagen und die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Wire diameter from</source>
        <translation>Drahtdurchmesser von</translation>
    </message>
    <message>
        <source>Wire diameter to</source>
        <translation>Drahtdurchmesser bis</translation>
    </message>
    <message>
        <source>Wire diameter, least</source>
        <translation>Drahtdurchmesser, mindestens</translation>
    </message>
    <message>
        <source>Wire is new each time, and pulls in the direction of tightening.</source>
        <translation>Draht ist jedes Mal neu und zieht in Anziehrichtung.</translation>
    </message>
    <message>
        <source>With 1 lifting point there is no length between two, and the load hangs with its centre of gravity below that point. Empty both fields, or give 2 points.</source>
        <translation>Bei 1 Anschlagpunkt gibt es keinen Abstand zwischen zweien, und die Last hängt mit ihrem Schwerpunkt unter diesem Punkt. Leeren Sie beide Felder, oder geben Sie 2 Punkte an.</translation>
    </message>
    <message>
        <source>With an adapter the wrench does not show the torque at the fastener. Say what it was set to.</source>
        <translation>Mit einem Adapter zeigt der Schlüssel nicht das Drehmoment am Verbindungselement. Geben Sie an, worauf er eingestellt war.</translation>
    </message>
    <message>
        <source>With an odd number none lies opposite: each is followed by the nearer of the two that face it.</source>
        <translation>Bei ungerader Zahl liegt keines gegenüber: Auf jedes folgt das nähere der beiden, die ihm zugewandt sind.</translation>
    </message>
    <message>
        <source>With interfaces chosen in the list</source>
        <translation>Mit gewählten Anschlüssen in der Liste</translation>
    </message>
    <message numerus="yes">
        <source>With the %n standard hold points</source>
        <translation>
            <numerusform>Mit dem %n Standard-Haltepunkt</numerusform>
            <numerusform>Mit den %n Standard-Haltepunkten</numerusform>
        </translation>
    </message>
    <message>
        <source>With the drag of the nut, d</source>
        <translation>Mit dem Klemmdrehmoment der Mutter, d</translation>
    </message>
    <message>
        <source>With the tag on</source>
        <translation>Mit dem Anhänger an</translation>
    </message>
    <message>
        <source>Withdraw the authorisation</source>
        <translation>Berechtigung entziehen</translation>
    </message>
    <message>
        <source>Withdraw the authorisation …</source>
        <translation>Berechtigung entziehen …</translation>
    </message>
    <message>
        <source>Withdraw the tool</source>
        <translation>Werkzeug aus dem Gebrauch nehmen</translation>
    </message>
    <message>
        <source>Withdraw the tool …</source>
        <translation>Werkzeug aus dem Gebrauch nehmen …</translation>
    </message>
    <message>
        <source>Within seconds</source>
        <translation>Innerhalb von Sekunden</translation>
    </message>
    <message>
        <source>Without a root nobody can vouch for anybody.</source>
        <translation>Ohne Wurzel kann niemand für jemanden bürgen.</translation>
    </message>
    <message>
        <source>Without entry %1 the list asks less of %2: %3. An inspector who had no hand in it strikes it.</source>
        <translation>Ohne Eintrag %1 verlangt die Liste weniger von %2: %3. Ihn streicht ein Prüfer, der nicht daran beteiligt war.</translation>
    </message>
    <message>
        <source>Without such a station an administrator registers a new key for you. What you signed stays valid.</source>
        <translation>Ohne einen solchen Arbeitsplatz registriert ein Administrator einen neuen Schlüssel für Sie. Was Sie unterschrieben haben, bleibt gültig.</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Suchwörter</translation>
    </message>
    <message>
        <source>Words to look for in the manual</source>
        <translation>Wörter, nach denen im Handbuch gesucht wird</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Work by this list has begun.</source>
        <translation>Die Arbeit nach dieser Liste hat begonnen.</translation>
    </message>
    <message>
        <source>Work is done by people authorised for it on that day.</source>
        <translation>Arbeit tun Personen, die an jenem Tag dafür berechtigt sind.</translation>
    </message>
    <message>
        <source>Work on</source>
        <translation>Arbeit an</translation>
    </message>
    <message>
        <source>Work order</source>
        <translation>Arbeitsauftrag</translation>
    </message>
    <message>
        <source>Work order %1  ·  %2  ·  %3</source>
        <translation>Arbeitsauftrag %1  ·  %2  ·  %3</translation>
    </message>
    <message>
        <source>Work order %1, %2, %3: %4</source>
        <translation>Arbeitsauftrag %1, %2, %3: %4</translation>
    </message>
    <message>
        <source>Work order %1, %2, %3: entries %4. Ledger %5</source>
        <translation>Arbeitsauftrag %1, %2, %3: Einträge %4. Buch %5</translation>
    </message>
    <message>
        <source>Work order %1: %2.</source>
        <translation>Arbeitsauftrag %1: %2.</translation>
    </message>
    <message>
        <source>Work that was interrupted is finished before it is inspected.</source>
        <translation>Unterbrochene Arbeit wird abgeschlossen, bevor sie geprüft wird.</translation>
    </message>
    <message>
        <source>Worked out</source>
        <translation>Berechnet</translation>
    </message>
    <message>
        <source>Worked out outside any job, printed %1.</source>
        <translation>Außerhalb eines Auftrags berechnet, gedruckt %1.</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>Working load limit of one leg, on its tag</source>
        <translation>Tragfähigkeit eines Strangs, auf seinem Anhänger</translation>
    </message>
    <message>
        <source>Working load limit on the hoist's plate</source>
        <translation>Tragfähigkeit auf dem Typenschild des Hebezeugs</translation>
    </message>
    <message>
        <source>Working:</source>
        <translation>Rechenweg:</translation>
    </message>
    <message>
        <source>Worst class allowed</source>
        <translation>Schlechteste zulässige Klasse</translation>
    </message>
    <message>
        <source>Worst class allowed; none: dry</source>
        <translation>Schlechteste zulässige Klasse; keine: trocken</translation>
    </message>
    <message>
        <source>Wrench length, grip to drive</source>
        <translation>Schlüssellänge, Griff bis Antrieb</translation>
    </message>
    <message>
        <source>Wrench set to</source>
        <translation>Drehmomentschlüssel eingestellt auf</translation>
    </message>
    <message>
        <source>Wrench usable from</source>
        <translation>Schlüssel nutzbar ab</translation>
    </message>
    <message>
        <source>Wrench usable to</source>
        <translation>Schlüssel nutzbar bis</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Nachweis wird geschrieben</translation>
    </message>
    <message>
        <source>Wrong PINs since the last right one: %1, the last on %2.</source>
        <translation>Falsche PINs seit der letzten richtigen: %1, die letzte am %2.</translation>
    </message>
    <message>
        <source>Y = %1</source>
        <translation>Y = %1</translation>
    </message>
    <message>
        <source>You may not read %1. Ask its owner, or whoever looks after this computer.</source>
        <translation>Sie dürfen %1 nicht lesen. Fragen Sie den Eigentümer oder wer diesen Rechner betreut.</translation>
    </message>
    <message>
        <source>You may not write to the folder of %1, which recording needs. Open the store for reading, or copy it to a folder of your own.</source>
        <translation>Sie dürfen nicht in den Ordner von %1 schreiben, was zum Eintragen nötig ist. Öffnen Sie die Ablage zum Lesen, oder kopieren Sie sie in einen eigenen Ordner.</translation>
    </message>
    <message>
        <source>You may read %1 but not write to it. Open it for reading, or ask its owner.</source>
        <translation>Sie dürfen %1 lesen, aber nicht hineinschreiben. Öffnen Sie die Ablage zum Lesen, oder fragen Sie den Eigentümer.</translation>
    </message>
    <message>
        <source>Your PIN opens your key once more; a copy is left in the store, sealed with your PIN and a code.</source>
        <translation>Ihre PIN öffnet Ihren Schlüssel noch einmal; eine Kopie bleibt in der Ablage, versiegelt mit Ihrer PIN und einem Code.</translation>
    </message>
    <message>
        <source>Your id (staff number, stamp)</source>
        <translation>Ihre Kennung (Personalnummer, Stempel)</translation>
    </message>
    <message>
        <source>Your key stays the same; only the PIN that opens it changes.</source>
        <translation>Ihr Schlüssel bleibt derselbe; nur die PIN, die ihn öffnet, ändert sich.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Ihr Name</translation>
    </message>
    <message>
        <source>Your old PIN opens your key once more; from then on the new one does.</source>
        <translation>Ihre alte PIN öffnet Ihren Schlüssel noch einmal; von da an öffnet ihn die neue.</translation>
    </message>
    <message>
        <source>Zero of the leads, as recorded</source>
        <translation>Nullwert der Leitungen, wie eingetragen</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Bereich %1</translation>
    </message>
    <message>
        <source>Zone or person beside the whole job</source>
        <translation>Bereich oder Person neben dem ganzen Auftrag</translation>
    </message>
    <message>
        <source>Zone: %1</source>
        <translation>Bereich: %1</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Bereiche</translation>
    </message>
    <message>
        <source>Zones, as divided at the opening</source>
        <translation>Bereiche, wie bei der Eröffnung aufgeteilt</translation>
    </message>
    <message>
        <source>a = %1° from the horizontal</source>
        <translation>a = %1° zur Waagerechten</translation>
    </message>
    <message>
        <source>a SHA-256 digest in 64 lower-case hex digits</source>
        <translation>eine SHA-256-Prüfsumme aus 64 kleingeschriebenen Hexadezimalziffern</translation>
    </message>
    <message>
        <source>a current</source>
        <translation>ein Strom</translation>
    </message>
    <message>
        <source>a date such as 2026-03-02</source>
        <translation>ein Datum wie 2026-03-02</translation>
    </message>
    <message>
        <source>a decimal point; this number has a decimal comma</source>
        <translation>ein Dezimalpunkt; diese Zahl hat ein Dezimalkomma</translation>
    </message>
    <message>
        <source>a decimal with a point, such as 12.5, of at most 18 digits</source>
        <translation>eine Dezimalzahl mit Punkt, wie 12.5, mit höchstens 18 Ziffern</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>a list of interfaces' ids</source>
        <translation>eine Liste von Anschlusskennungen</translation>
    </message>
    <message>
        <source>a list of objects</source>
        <translation>eine Liste von Objekten</translation>
    </message>
    <message>
        <source>a list of people's ids</source>
        <translation>eine Liste von Personenkennungen</translation>
    </message>
    <message>
        <source>a list of texts</source>
        <translation>eine Liste von Texten</translation>
    </message>
    <message>
        <source>a list of texts, each of them looked at and confirmed</source>
        <translation>eine Liste von Texten, jeder davon angesehen und bestätigt</translation>
    </message>
    <message>
        <source>a member of the crew or an inspector</source>
        <translation>ein Mitglied der Mannschaft oder ein Prüfer</translation>
    </message>
    <message>
        <source>a member of the crew; or the lead, by a handover that names the new crew</source>
        <translation>ein Mitglied der Mannschaft; oder der Leiter, durch eine Übergabe, die die neue Mannschaft nennt</translation>
    </message>
    <message>
        <source>a moment of weight</source>
        <translation>ein Gewichtsmoment</translation>
    </message>
    <message>
        <source>a number of drops in a time</source>
        <translation>eine Zahl von Tropfen in einer Zeit</translation>
    </message>
    <message>
        <source>a number with a point, such as 12.5, not below 0</source>
        <translation>eine Zahl mit Punkt, etwa 12.5, nicht unter 0</translation>
    </message>
    <message>
        <source>a person with authority to overrule</source>
        <translation>eine Person mit Befugnis zum Übersteuern</translation>
    </message>
    <message>
        <source>a person with release authority, by closing this job; and whoever opens a follow-on job</source>
        <translation>eine Person mit Freigabebefugnis, durch Abschließen dieses Auftrags; und wer einen Folgeauftrag eröffnet</translation>
    </message>
    <message>
        <source>a person's id</source>
        <translation>die Kennung einer Person</translation>
    </message>
    <message>
        <source>a rate of flow</source>
        <translation>ein Durchfluss</translation>
    </message>
    <message>
        <source>a requirement (%1)</source>
        <translation>eine Anforderung (%1)</translation>
    </message>
    <message>
        <source>a resistance</source>
        <translation>ein Widerstand</translation>
    </message>
    <message>
        <source>a sort of temporary items that the program has</source>
        <translation>eine Sorte von Hilfsmitteln, die das Programm hat</translation>
    </message>
    <message>
        <source>a technician of that job</source>
        <translation>ein Mechaniker jenes Auftrags</translation>
    </message>
    <message>
        <source>a technician of that job, by sending it</source>
        <translation>ein Mechaniker jenes Auftrags, durch Senden</translation>
    </message>
    <message>
        <source>a technician of the crew</source>
        <translation>ein Mechaniker der Mannschaft</translation>
    </message>
    <message>
        <source>a technician of the crew, by taking it up</source>
        <translation>ein Mechaniker der Mannschaft, durch Aufnehmen der Arbeit</translation>
    </message>
    <message>
        <source>a technician of the crew, or an inspector</source>
        <translation>ein Mechaniker der Mannschaft oder ein Prüfer</translation>
    </message>
    <message>
        <source>a technician of the crew; or a person with authority to overrule</source>
        <translation>ein Mechaniker der Mannschaft; oder eine Person mit Befugnis zum Übersteuern</translation>
    </message>
    <message>
        <source>a technician, with a fitting tool</source>
        <translation>ein Mechaniker, mit einem passenden Werkzeug</translation>
    </message>
    <message>
        <source>a technician, with a tag of this job; or the lead, by issuing more</source>
        <translation>ein Mechaniker, mit einem Anhänger dieses Auftrags; oder der Leiter, durch Ausgeben weiterer</translation>
    </message>
    <message>
        <source>a technician; or an inspector</source>
        <translation>ein Mechaniker; oder ein Prüfer</translation>
    </message>
    <message>
        <source>a text that is not blank</source>
        <translation>ein Text, der nicht leer ist</translation>
    </message>
    <message>
        <source>a text without blanks at its ends</source>
        <translation>ein Text ohne Leerzeichen an den Enden</translation>
    </message>
    <message>
        <source>a time such as 2026-03-02T08:14:31.120Z</source>
        <translation>eine Zeit wie 2026-03-02T08:14:31.120Z</translation>
    </message>
    <message>
        <source>a tool's id</source>
        <translation>die Kennung eines Werkzeugs</translation>
    </message>
    <message>
        <source>a torque</source>
        <translation>ein Drehmoment</translation>
    </message>
    <message>
        <source>a voltage</source>
        <translation>eine Spannung</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>ein Volumen</translation>
    </message>
    <message>
        <source>a weight</source>
        <translation>ein Gewicht</translation>
    </message>
    <message>
        <source>a whole number, 0 or more</source>
        <translation>eine ganze Zahl, 0 oder mehr</translation>
    </message>
    <message>
        <source>a whole number, such as 4</source>
        <translation>eine ganze Zahl, etwa 4</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>accepted BY ONE WHO HAD A HAND IN IT</source>
        <translation>angenommen VON JEMANDEM, DER BETEILIGT WAR</translation>
    </message>
    <message>
        <source>accepted by %1</source>
        <translation>angenommen von %1</translation>
    </message>
    <message>
        <source>accessories_placed</source>
        <translation>Anbauteile untergebracht</translation>
    </message>
    <message>
        <source>accessory %1 not placed (%2)</source>
        <translation>Anbauteil %1 ohne Verbleib (%2)</translation>
    </message>
    <message>
        <source>accessory, not placed</source>
        <translation>Anbauteil, ohne Verbleib</translation>
    </message>
    <message>
        <source>added</source>
        <translation>hinzuzurechnen</translation>
    </message>
    <message>
        <source>administer</source>
        <translation>verwalten</translation>
    </message>
    <message>
        <source>after</source>
        <translation>nachher</translation>
    </message>
    <message>
        <source>aircraft</source>
        <translation>Luftfahrzeug</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>all aircraft types</source>
        <translation>alle Luftfahrzeugmuster</translation>
    </message>
    <message>
        <source>all kinds</source>
        <translation>alle Arten</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>erlaubt</translation>
    </message>
    <message>
        <source>allowed where nobody else is there, %1 minutes after the work</source>
        <translation>erlaubt, wo niemand sonst da ist, %1 Minuten nach der Arbeit</translation>
    </message>
    <message>
        <source>always</source>
        <translation>immer</translation>
    </message>
    <message>
        <source>an Ed25519 public key in 64 lower-case hex digits</source>
        <translation>ein öffentlicher Ed25519-Schlüssel aus 64 kleingeschriebenen Hexadezimalziffern</translation>
    </message>
    <message>
        <source>an administrator of the register</source>
        <translation>ein Administrator des Stammbuchs</translation>
    </message>
    <message>
        <source>an administrator of the register; or take another tool</source>
        <translation>ein Administrator des Stammbuchs; oder ein anderes Werkzeug nehmen</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>ein Winkel</translation>
    </message>
    <message>
        <source>an authorised inspector</source>
        <translation>ein berechtigter Prüfer</translation>
    </message>
    <message>
        <source>an authorised inspector who had no hand in it</source>
        <translation>ein berechtigter Prüfer, der nicht daran beteiligt war</translation>
    </message>
    <message>
        <source>an authorised inspector, by closing the finding</source>
        <translation>ein berechtigter Prüfer, durch Schließen des Befunds</translation>
    </message>
    <message>
        <source>an authorised inspector, by inspecting what is under it</source>
        <translation>ein berechtigter Prüfer, durch Prüfen dessen, was darunter liegt</translation>
    </message>
    <message>
        <source>an inspection</source>
        <translation>eine Prüfung</translation>
    </message>
    <message>
        <source>an inspector, by disposing of the finding</source>
        <translation>ein Prüfer, durch Entscheidung über den Befund</translation>
    </message>
    <message>
        <source>an inspector, once it is found</source>
        <translation>ein Prüfer, sobald er gefunden ist</translation>
    </message>
    <message>
        <source>an interface's id</source>
        <translation>die Kennung eines Anschlusses</translation>
    </message>
    <message>
        <source>an object in braces</source>
        <translation>ein Objekt in geschweiften Klammern</translation>
    </message>
    <message>
        <source>an object in it has more than %1 members</source>
        <translation>ein Objekt darin hat mehr als %1 Elemente</translation>
    </message>
    <message>
        <source>and %1 more, listed by remate-cli doubtful</source>
        <translation>und %1 weitere, aufgelistet mit remate-cli doubtful</translation>
    </message>
    <message>
        <source>and %1 more; see the program</source>
        <translation>und %1 weitere; siehe Programm</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weiterer</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>another authorised inspector</source>
        <translation>ein anderer berechtigter Prüfer</translation>
    </message>
    <message>
        <source>another technician or an inspector</source>
        <translation>ein anderer Mechaniker oder ein Prüfer</translation>
    </message>
    <message>
        <source>anybody of the job</source>
        <translation>wer auch immer zum Auftrag gehört</translation>
    </message>
    <message>
        <source>anywhere in the band</source>
        <translation>irgendwo im Bereich</translation>
    </message>
    <message>
        <source>applied</source>
        <translation>angebracht</translation>
    </message>
    <message>
        <source>arm %1 + %2 at %3</source>
        <translation>Hebel %1 + %2 bei %3</translation>
    </message>
    <message>
        <source>as found: %1</source>
        <translation>vorgefunden: %1</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>verlangt</translation>
    </message>
    <message>
        <source>at least one thing that an inspector looks at</source>
        <translation>mindestens eines, das ein Prüfer ansieht</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>authority to %1</source>
        <translation>Befugnis zu: %1</translation>
    </message>
    <message>
        <source>bag-info.txt lacks a label that a package has, or is of a format that this program does not know.</source>
        <translation>In bag-info.txt fehlt eine Angabe, die ein Paket hat, oder es hat ein Format, das dieses Programm nicht kennt.</translation>
    </message>
    <message>
        <source>bag-info.txt says something else than the entries do.</source>
        <translation>bag-info.txt gibt etwas anderes an als die Einträge.</translation>
    </message>
    <message>
        <source>bagit.txt is not that of BagIt 1.0.</source>
        <translation>bagit.txt ist nicht das von BagIt 1.0.</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>Verschluss</translation>
    </message>
    <message>
        <source>blanks fitted: %1</source>
        <translation>Verschlüsse angebracht: %1</translation>
    </message>
    <message>
        <source>blanks fitted: %1 to the aircraft's end, %2 to the unit's</source>
        <translation>Verschlüsse angebracht: %1 flugzeugseitig, %2 aggregatseitig</translation>
    </message>
    <message>
        <source>blanks removed: %1</source>
        <translation>Verschlüsse entfernt: %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>came off: %1</source>
        <translation>abgenommen: %1</translation>
    </message>
    <message>
        <source>cannot be seen from here</source>
        <translation>von hier aus nicht zu sehen</translation>
    </message>
    <message>
        <source>cannot be worked out from what was entered</source>
        <translation>lässt sich aus dem Eingetragenen nicht berechnen</translation>
    </message>
    <message>
        <source>cannot verify</source>
        <translation>nicht prüfbar</translation>
    </message>
    <message>
        <source>carries %1</source>
        <translation>trägt %1</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>Bescheinigung</translation>
    </message>
    <message>
        <source>certificate %1; %2 shipping blanks; %3</source>
        <translation>Bescheinigung %1; %2 Transportverschlüsse; %3</translation>
    </message>
    <message>
        <source>clear</source>
        <comment>off</comment>
        <translation>aufheben</translation>
    </message>
    <message>
        <source>cleared</source>
        <comment>off_done</comment>
        <translation>aufgehoben</translation>
    </message>
    <message>
        <source>close</source>
        <comment>on</comment>
        <translation>schließen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>closed</source>
        <comment>on_done</comment>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>closed on %1</source>
        <translation>abgeschlossen am %1</translation>
    </message>
    <message>
        <source>compared</source>
        <translation>verglichen</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>bestätigt</translation>
    </message>
    <message>
        <source>confirmed free</source>
        <translation>als frei bestätigt</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>zählt</translation>
    </message>
    <message>
        <source>critical</source>
        <translation>kritisch</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <translation>d. MMM yyyy, HH:mm</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>deferred</source>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <source>details given in entry %1</source>
        <translation>Angaben eingetragen in Eintrag %1</translation>
    </message>
    <message>
        <source>details to follow</source>
        <translation>Angaben folgen</translation>
    </message>
    <message>
        <source>difference not known</source>
        <translation>Abweichung nicht bekannt</translation>
    </message>
    <message>
        <source>disconnect</source>
        <comment>off</comment>
        <translation>trennen</translation>
    </message>
    <message>
        <source>disconnected</source>
        <translation>gelöst</translation>
    </message>
    <message>
        <source>disconnected</source>
        <comment>off_done</comment>
        <translation>getrennt</translation>
    </message>
    <message>
        <source>disconnected and confirmed free by a second person</source>
        <translation>gelöst und von einer zweiten Person als frei bestätigt</translation>
    </message>
    <message>
        <source>disturbed after it was restored</source>
        <translation>nach der Wiederherstellung verändert</translation>
    </message>
    <message>
        <source>does not name this job yet</source>
        <translation>nennt diesen Auftrag noch nicht</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>done, %1</source>
        <translation>erledigt, %1</translation>
    </message>
    <message>
        <source>drag %1</source>
        <translation>Klemmdrehmoment %1</translation>
    </message>
    <message>
        <source>drag is added</source>
        <translation>Klemmdrehmoment kommt hinzu</translation>
    </message>
    <message>
        <source>drag is included</source>
        <translation>Klemmdrehmoment ist enthalten</translation>
    </message>
    <message>
        <source>drag of a used nut at least %1</source>
        <translation>Klemmdrehmoment einer gebrauchten Mutter mindestens %1</translation>
    </message>
    <message>
        <source>drips or pools</source>
        <translation>tropft oder bildet Lachen</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>each leg %1</source>
        <translation>jeder Strang %1</translation>
    </message>
    <message>
        <source>each requirement once, not "%1" twice</source>
        <translation>jede Anforderung einmal, nicht „%1“ zweimal</translation>
    </message>
    <message>
        <source>entries %1 to %2: %3; %4 (%5)</source>
        <translation>Einträge %1 bis %2: %3; %4 (%5)</translation>
    </message>
    <message>
        <source>entry %1, %2</source>
        <translation>Eintrag %1, %2</translation>
    </message>
    <message>
        <source>even</source>
        <translation>ausgeglichen</translation>
    </message>
    <message>
        <source>every %1</source>
        <translation>je %1</translation>
    </message>
    <message>
        <source>every interface</source>
        <translation>jeder Anschluss</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>alles</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>fastener %1</source>
        <translation>Verbindungselement %1</translation>
    </message>
    <message>
        <source>fastener %1 in pass %2</source>
        <translation>Verbindungselement %1 in Durchgang %2</translation>
    </message>
    <message>
        <source>fasteners</source>
        <translation>Verbindungselemente</translation>
    </message>
    <message>
        <source>fasteners %1</source>
        <translation>Verbindungselemente %1</translation>
    </message>
    <message>
        <source>fell with what it rested on</source>
        <translation>entfallen mit dem, worauf es beruhte</translation>
    </message>
    <message>
        <source>finding %1</source>
        <translation>Befund %1</translation>
    </message>
    <message>
        <source>finding %1 open (%2)</source>
        <translation>Befund %1 offen (%2)</translation>
    </message>
    <message>
        <source>finding %1: %2</source>
        <translation>Befund %1: %2</translation>
    </message>
    <message>
        <source>finding, open</source>
        <translation>Befund, offen</translation>
    </message>
    <message>
        <source>findings: %1, tools out: %2</source>
        <translation>Befunde: %1, ausgegebene Werkzeuge: %2</translation>
    </message>
    <message>
        <source>findings_closed</source>
        <translation>Befunde geschlossen</translation>
    </message>
    <message>
        <source>fit</source>
        <comment>on</comment>
        <translation>anbringen</translation>
    </message>
    <message>
        <source>fitted</source>
        <comment>on_done</comment>
        <translation>angebracht</translation>
    </message>
    <message>
        <source>found open, and logged by nobody</source>
        <translation>offen vorgefunden, und von niemandem eingetragen</translation>
    </message>
    <message>
        <source>found still attached on the walk-round</source>
        <translation>beim Rundgang noch verbunden vorgefunden</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>ab %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 bis %2</translation>
    </message>
    <message>
        <source>from %1 to %2: %3 (%4)</source>
        <translation>von %1 auf %2: %3 (%4)</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>functional test</source>
        <translation>Funktionstest</translation>
    </message>
    <message>
        <source>given to %1, NOT ACCEPTED yet</source>
        <translation>an %1 übergeben, noch NICHT ANGENOMMEN</translation>
    </message>
    <message>
        <source>ground run</source>
        <translation>Standlauf</translation>
    </message>
    <message>
        <source>guarded</source>
        <translation>mit Sicherheitsabstand</translation>
    </message>
    <message>
        <source>hand tool</source>
        <translation>Handwerkzeug</translation>
    </message>
    <message>
        <source>hand-tight</source>
        <translation>handfest</translation>
    </message>
    <message>
        <source>hang</source>
        <comment>on</comment>
        <translation>anhängen</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>Befestigungsmaterial</translation>
    </message>
    <message>
        <source>hoist</source>
        <translation>Hebezeug</translation>
    </message>
    <message>
        <source>hold point %1 %2</source>
        <translation>Haltepunkt %1 %2</translation>
    </message>
    <message>
        <source>hold point, %1</source>
        <translation>Haltepunkt, %1</translation>
    </message>
    <message>
        <source>how it was found</source>
        <translation>wie es vorgefunden wurde</translation>
    </message>
    <message>
        <source>hung</source>
        <comment>on_done</comment>
        <translation>angehängt</translation>
    </message>
    <message>
        <source>ids of interfaces, separated by |</source>
        <translation>Kennungen von Anschlüssen, getrennt durch |</translation>
    </message>
    <message>
        <source>if known %1</source>
        <translation>falls bekannt %1</translation>
    </message>
    <message>
        <source>imported package %1</source>
        <translation>importiertes Paket %1</translation>
    </message>
    <message>
        <source>in calibration</source>
        <translation>gültig kalibriert</translation>
    </message>
    <message>
        <source>in jobs: %1; entries, with those of the register: %2; of these with a signature in doubt: %3</source>
        <translation>in Aufträgen: %1; Einträge, mit denen des Stammbuchs: %2; davon mit zweifelhafter Unterschrift: %3</translation>
    </message>
    <message>
        <source>in their order alone</source>
        <translation>nur in ihrer Reihenfolge</translation>
    </message>
    <message>
        <source>in their words</source>
        <translation>in ihren Worten</translation>
    </message>
    <message>
        <source>included</source>
        <translation>enthalten</translation>
    </message>
    <message>
        <source>incoming</source>
        <translation>eingehend</translation>
    </message>
    <message>
        <source>incoming for outgoing unit</source>
        <translation>eingehendes statt ausgehendes Aggregat</translation>
    </message>
    <message>
        <source>incoming unit</source>
        <translation>eingehendes Aggregat</translation>
    </message>
    <message>
        <source>indicating</source>
        <translation>anzeigend</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>prüfen</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>inspected again by the person who did the work</source>
        <translation>von der Person erneut geprüft, die die Arbeit ausgeführt hat</translation>
    </message>
    <message>
        <source>inspected own work</source>
        <translation>eigene Arbeit geprüft</translation>
    </message>
    <message>
        <source>interfaces</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>interfaces: %1 of %2</source>
        <translation>Anschlüsse: %1 von %2</translation>
    </message>
    <message>
        <source>isolate</source>
        <comment>on</comment>
        <translation>freischalten</translation>
    </message>
    <message>
        <source>isolated</source>
        <comment>on_done</comment>
        <translation>freigeschaltet</translation>
    </message>
    <message>
        <source>isolation</source>
        <translation>Freischaltung</translation>
    </message>
    <message>
        <source>issued by %1</source>
        <translation>ausgegeben von %1</translation>
    </message>
    <message>
        <source>it breaks off.</source>
        <translation>sie bricht ab.</translation>
    </message>
    <message>
        <source>it does not follow the entry before it.</source>
        <translation>er folgt nicht auf den Eintrag davor.</translation>
    </message>
    <message>
        <source>it does not unpack to the length that it states.</source>
        <translation>sie entpackt sich nicht zu der Länge, die sie angibt.</translation>
    </message>
    <message>
        <source>it does not unpack.</source>
        <translation>sie lässt sich nicht entpacken.</translation>
    </message>
    <message>
        <source>it holds a number that is not a whole number within ±(2^53−1)</source>
        <translation>es enthält eine Zahl, die keine ganze Zahl innerhalb von ±(2^53−1) ist</translation>
    </message>
    <message>
        <source>it holds a value of unknown type</source>
        <translation>es enthält einen Wert unbekannten Typs</translation>
    </message>
    <message>
        <source>it is longer than such a file can be.</source>
        <translation>sie ist länger, als eine solche Datei sein kann.</translation>
    </message>
    <message>
        <source>it is not an object in braces</source>
        <translation>es ist kein Objekt in geschweiften Klammern</translation>
    </message>
    <message>
        <source>it is not in canonical form (RFC 8785)</source>
        <translation>es ist nicht in kanonischer Form (RFC 8785)</translation>
    </message>
    <message>
        <source>it is not what its check sum says.</source>
        <translation>sie ist nicht das, was ihre Kontrollsumme angibt.</translation>
    </message>
    <message>
        <source>it is not what its digest says.</source>
        <translation>er ist nicht das, was seine Prüfsumme angibt.</translation>
    </message>
    <message>
        <source>it is older than the one that this program was made with</source>
        <translation>sie ist älter als die, mit der dieses Programm gebaut wurde</translation>
    </message>
    <message>
        <source>it nests more than %1 levels</source>
        <translation>es ist mehr als %1 Ebenen tief geschachtelt</translation>
    </message>
    <message>
        <source>its blanks</source>
        <translation>die Verschlüsse</translation>
    </message>
    <message>
        <source>its details</source>
        <translation>die Angaben dazu</translation>
    </message>
    <message>
        <source>its folder cannot be made.</source>
        <translation>ihr Ordner kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>its halves</source>
        <translation>die Hälften</translation>
    </message>
    <message>
        <source>its independence group (%1)</source>
        <translation>die Unabhängigkeitsgruppe (%1)</translation>
    </message>
    <message>
        <source>its kind (%1)</source>
        <translation>die Art (%1)</translation>
    </message>
    <message>
        <source>its members are not in canonical order (RFC 8785)</source>
        <translation>seine Elemente sind nicht in kanonischer Reihenfolge (RFC 8785)</translation>
    </message>
    <message>
        <source>its row, by the new revision</source>
        <translation>die Zeile dazu, nach der neuen Revision</translation>
    </message>
    <message>
        <source>its safetying (%1)</source>
        <translation>die Sicherung (%1)</translation>
    </message>
    <message>
        <source>its seal (%1)</source>
        <translation>die Dichtung (%1)</translation>
    </message>
    <message>
        <source>its tag</source>
        <translation>der Anhänger</translation>
    </message>
    <message>
        <source>its twins (%1)</source>
        <translation>die Gegenprüfung (%1)</translation>
    </message>
    <message>
        <source>its zone (%1)</source>
        <translation>der Bereich (%1)</translation>
    </message>
    <message>
        <source>job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>jobs: %1; their entries: %2; entries of the register: %3</source>
        <translation>Aufträge: %1; ihre Einträge: %2; Einträge des Stammbuchs: %3</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>known requirements (%1), not "%2"</source>
        <translation>bekannte Anforderungen (%1), nicht „%2“</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>leiten</translation>
    </message>
    <message>
        <source>leads together %1</source>
        <translation>Messleitungen kurzgeschlossen %1</translation>
    </message>
    <message>
        <source>leak check</source>
        <translation>Dichtheitsprüfung</translation>
    </message>
    <message>
        <source>leaves with the outgoing unit: %1</source>
        <translation>geht mit dem ausgehenden Aggregat ab: %1</translation>
    </message>
    <message>
        <source>left with the outgoing unit: %1</source>
        <translation>mit dem ausgehenden Aggregat abgegangen: %1</translation>
    </message>
    <message>
        <source>leg %1</source>
        <translation>Strang %1</translation>
    </message>
    <message>
        <source>leg %1, %2 high</source>
        <translation>Strang %1, %2 hoch</translation>
    </message>
    <message>
        <source>less than</source>
        <translation>kleiner als</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>lift_planned</source>
        <translation>Hebevorgang geplant</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>line </source>
        <translation>Zeile </translation>
    </message>
    <message>
        <source>lines of %1</source>
        <translation>Zeilen aus %1</translation>
    </message>
    <message>
        <source>listed after work had begun</source>
        <translation>aufgelistet, nachdem die Arbeit begonnen hatte</translation>
    </message>
    <message>
        <source>listed, and never touched</source>
        <translation>aufgelistet, und nie angefasst</translation>
    </message>
    <message>
        <source>listed, and not applicable</source>
        <translation>aufgelistet, und nicht zutreffend</translation>
    </message>
    <message>
        <source>little margin</source>
        <translation>wenig Reserve</translation>
    </message>
    <message>
        <source>looks after the register</source>
        <translation>betreut das Stammbuch</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>lose</translation>
    </message>
    <message>
        <source>loose end</source>
        <translation>offene Stelle</translation>
    </message>
    <message>
        <source>loose ends</source>
        <translation>offene Stellen</translation>
    </message>
    <message>
        <source>lower-case letters, digits and underscores, and the file named after it</source>
        <translation>Kleinbuchstaben, Ziffern und Unterstriche, und die Datei danach benannt</translation>
    </message>
    <message>
        <source>lubricated</source>
        <translation>geschmiert</translation>
    </message>
    <message>
        <source>many in a short time</source>
        <translation>viele in kurzer Zeit</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>Reserve %1</translation>
    </message>
    <message>
        <source>margin of the hoist %1, of a leg %2</source>
        <translation>Reserve des Hebezeugs %1, eines Strangs %2</translation>
    </message>
    <message>
        <source>measuring tool</source>
        <translation>Messmittel</translation>
    </message>
    <message>
        <source>missing since %1, finding %2; back: %3</source>
        <translation>fehlte seit %1, Befund %2; zurück: %3</translation>
    </message>
    <message>
        <source>missing, %1</source>
        <translation>fehlt, %1</translation>
    </message>
    <message>
        <source>moved to the incoming unit</source>
        <translation>an das eingehende Aggregat umgebaut</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>next: fastener %1</source>
        <translation>nächstes: Verbindungselement %1</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no end</source>
        <translation>ohne Ende</translation>
    </message>
    <message>
        <source>no remarks</source>
        <translation>keine Bemerkungen</translation>
    </message>
    <message>
        <source>no safetying</source>
        <translation>keine Sicherung</translation>
    </message>
    <message>
        <source>no such member; known are %1</source>
        <translation>kein solches Element; bekannt sind %1</translation>
    </message>
    <message>
        <source>no zone</source>
        <translation>kein Bereich</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>nobody; open a follow-on job</source>
        <translation>niemand; eröffnen Sie einen Folgeauftrag</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>keine gefunden</translation>
    </message>
    <message>
        <source>none on a temporary item</source>
        <translation>keine bei einem Hilfsmittel</translation>
    </message>
    <message>
        <source>none registered</source>
        <translation>keine eingetragen</translation>
    </message>
    <message>
        <source>none that covers %1</source>
        <translation>keine, die %1 umfasst</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>nicht zutreffend</translation>
    </message>
    <message>
        <source>not applicable: to be agreed</source>
        <translation>nicht zutreffend: Zustimmung steht aus</translation>
    </message>
    <message>
        <source>not calibrated</source>
        <translation>nicht kalibriert</translation>
    </message>
    <message>
        <source>not even</source>
        <translation>nicht ausgeglichen</translation>
    </message>
    <message>
        <source>not in calibration</source>
        <translation>nicht gültig kalibriert</translation>
    </message>
    <message>
        <source>not known: the job is damaged before it</source>
        <translation>nicht bekannt: Der Auftrag ist davor beschädigt</translation>
    </message>
    <message>
        <source>not on the list</source>
        <translation>nicht in der Liste</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>not taken on there yet</source>
        <translation>dort noch nicht übernommen</translation>
    </message>
    <message>
        <source>not undone</source>
        <translation>nicht gelöst</translation>
    </message>
    <message>
        <source>not undone yet</source>
        <translation>noch nicht gelöst</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>nothing was signed in that time</source>
        <translation>in dieser Zeit wurde nichts unterschrieben</translation>
    </message>
    <message>
        <source>nothing: a list cannot hold this</source>
        <translation>nichts: eine Liste kann dies nicht enthalten</translation>
    </message>
    <message>
        <source>nothing: somebody with authority has to look and sign</source>
        <translation>nichts: jemand mit Befugnis muss es ansehen und unterschreiben</translation>
    </message>
    <message>
        <source>of all its time</source>
        <translation>über die gesamte Zeit</translation>
    </message>
    <message>
        <source>on</source>
        <translation>angebracht</translation>
    </message>
    <message>
        <source>on no list</source>
        <translation>in keiner Liste</translation>
    </message>
    <message>
        <source>one of the units %1</source>
        <translation>eine der Einheiten %1</translation>
    </message>
    <message>
        <source>one of: %1</source>
        <translation>eines von: %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>open</source>
        <comment>off</comment>
        <translation>öffnen</translation>
    </message>
    <message>
        <source>opened</source>
        <comment>off_done</comment>
        <translation>geöffnet</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>Reihenfolge %1</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>out</source>
        <translation>ausgegeben</translation>
    </message>
    <message>
        <source>out of their order with a reason</source>
        <translation>außer der Reihenfolge mit einem Grund</translation>
    </message>
    <message>
        <source>outgoing</source>
        <translation>ausgehend</translation>
    </message>
    <message>
        <source>outgoing unit</source>
        <translation>ausgehendes Aggregat</translation>
    </message>
    <message>
        <source>over</source>
        <translation>vorbei</translation>
    </message>
    <message>
        <source>over its limit</source>
        <translation>über der Grenze</translation>
    </message>
    <message>
        <source>over with the work</source>
        <translation>vorbei mit der Arbeit</translation>
    </message>
    <message>
        <source>overrule</source>
        <translation>übersteuern</translation>
    </message>
    <message>
        <source>package-%1.zip</source>
        <translation>package-%1.zip</translation>
    </message>
    <message>
        <source>part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>Durchgang %1</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>passiert</translation>
    </message>
    <message>
        <source>passed</source>
        <comment>a test</comment>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>passed again later, or struck</source>
        <translation>später erneut passiert, oder gestrichen</translation>
    </message>
    <message>
        <source>passed; VOID since: %1</source>
        <translation>bestanden; HINFÄLLIG seit: %1</translation>
    </message>
    <message>
        <source>passes %1 %</source>
        <translation>Durchgänge %1 %</translation>
    </message>
    <message>
        <source>performed</source>
        <translation>ausgeführt</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>platform</source>
        <translation>Arbeitsbühne</translation>
    </message>
    <message>
        <source>positioned</source>
        <translation>in Position</translation>
    </message>
    <message>
        <source>pull</source>
        <comment>off</comment>
        <translation>ziehen</translation>
    </message>
    <message>
        <source>pulled</source>
        <comment>off_done</comment>
        <translation>gezogen</translation>
    </message>
    <message>
        <source>raised finding %1</source>
        <translation>hat Befund %1 gemeldet</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation>in der Quelle gelesen</translation>
    </message>
    <message>
        <source>ready to close</source>
        <translation>bereit zum Abschluss</translation>
    </message>
    <message>
        <source>ready to pass</source>
        <translation>bereit zum Passieren</translation>
    </message>
    <message>
        <source>received</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>reconnect</source>
        <comment>on</comment>
        <translation>wieder anschließen</translation>
    </message>
    <message>
        <source>reconnected</source>
        <translation>wieder angeschlossen</translation>
    </message>
    <message>
        <source>reconnected</source>
        <comment>on_done</comment>
        <translation>wieder angeschlossen</translation>
    </message>
    <message>
        <source>reconnected and torqued</source>
        <translation>wieder angeschlossen und angezogen</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>rectified</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>refit</source>
        <comment>on</comment>
        <translation>wieder anbringen</translation>
    </message>
    <message>
        <source>refitted</source>
        <comment>on_done</comment>
        <translation>wieder angebracht</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>refused: %1</source>
        <translation>abgelehnt: %1</translation>
    </message>
    <message>
        <source>register</source>
        <translation>Stammbuch</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>zurückgewiesen</translation>
    </message>
    <message>
        <source>rejected by the inspector</source>
        <translation>vom Prüfer zurückgewiesen</translation>
    </message>
    <message>
        <source>release</source>
        <translation>freigeben</translation>
    </message>
    <message>
        <source>release</source>
        <comment>off</comment>
        <translation>lösen</translation>
    </message>
    <message>
        <source>released</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>released</source>
        <comment>off_done</comment>
        <translation>gelöst</translation>
    </message>
    <message>
        <source>remove</source>
        <comment>off</comment>
        <translation>entfernen</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>removed</source>
        <comment>off_done</comment>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>wiederhergestellt</translation>
    </message>
    <message>
        <source>restored and inspected</source>
        <translation>wiederhergestellt und geprüft</translation>
    </message>
    <message>
        <source>restored, all but the leak check</source>
        <translation>wiederhergestellt, bis auf die Dichtheitsprüfung</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>rig</source>
        <comment>on</comment>
        <translation>anbringen</translation>
    </message>
    <message>
        <source>rigged</source>
        <comment>on_done</comment>
        <translation>angebracht</translation>
    </message>
    <message>
        <source>rigging %1</source>
        <translation>Geschirr %1</translation>
    </message>
    <message>
        <source>root</source>
        <translation>Wurzel</translation>
    </message>
    <message>
        <source>root of the register</source>
        <translation>Wurzel des Stammbuchs</translation>
    </message>
    <message>
        <source>row to look up</source>
        <translation>Zeile nachzuschlagen</translation>
    </message>
    <message>
        <source>safety pin</source>
        <translation>Sicherungsstift</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>stichprobe</translation>
    </message>
    <message>
        <source>says that the %1 of %2 has failed</source>
        <translation>gibt an, dass „%1“ an %2 nicht bestanden wurde</translation>
    </message>
    <message>
        <source>says that the maintenance data was revised</source>
        <translation>gibt an, dass die Instandhaltungsunterlagen geändert wurden</translation>
    </message>
    <message>
        <source>seal %1, batch %2</source>
        <translation>Dichtung %1, Charge %2</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>gesehen</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgesendet</translation>
    </message>
    <message>
        <source>sent to a linked job, not taken on there yet</source>
        <translation>an einen verknüpften Auftrag gesendet, dort noch nicht übernommen</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>serviced</source>
        <translation>befüllt</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>eingestellt auf %1</translation>
    </message>
    <message>
        <source>set up</source>
        <comment>on</comment>
        <translation>aufstellen</translation>
    </message>
    <message>
        <source>set up</source>
        <comment>on_done</comment>
        <translation>aufgestellt</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>auslösend</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>unterschrieben</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>einfach</translation>
    </message>
    <message>
        <source>slave hardware</source>
        <translation>Behelfsbefestigung</translation>
    </message>
    <message>
        <source>sling</source>
        <translation>Anschlagmittel</translation>
    </message>
    <message>
        <source>somebody of the job other than who said so</source>
        <translation>jemand aus dem Auftrag, außer der Person, die es angegeben hat</translation>
    </message>
    <message>
        <source>somebody of the job who joined none of them</source>
        <translation>jemand aus dem Auftrag, der keinen davon angeschlossen hat</translation>
    </message>
    <message>
        <source>somebody with authority to %1</source>
        <translation>jemand mit der Befugnis „%1“</translation>
    </message>
    <message>
        <source>somebody with authority to %1 who had no hand in it</source>
        <translation>jemand mit der Befugnis „%1“, der nicht daran beteiligt war</translation>
    </message>
    <message>
        <source>somebody with authority to %1, by passing the hold point</source>
        <translation>jemand mit der Befugnis „%1“, durch Passieren des Haltepunkts</translation>
    </message>
    <message>
        <source>something stands behind the end of what it unpacks to.</source>
        <translation>hinter dem Ende des Entpackten steht etwas.</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>Ständer</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>gilt</translation>
    </message>
    <message>
        <source>still</source>
        <translation>stehend</translation>
    </message>
    <message>
        <source>still attached</source>
        <translation>noch verbunden</translation>
    </message>
    <message>
        <source>still attached: %1</source>
        <translation>noch verbunden: %1</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>unterbrochen</translation>
    </message>
    <message>
        <source>stopped: %1</source>
        <translation>unterbrochen: %1</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>struck by entry %1</source>
        <translation>gestrichen durch Eintrag %1</translation>
    </message>
    <message>
        <source>struck by no. %1</source>
        <translation>gestrichen durch Nr. %1</translation>
    </message>
    <message>
        <source>such as 2026-03-02</source>
        <translation>etwa 2026-03-02</translation>
    </message>
    <message>
        <source>tag %1</source>
        <translation>Anhänger %1</translation>
    </message>
    <message>
        <source>tag %1 recovered</source>
        <translation>Anhänger %1 zurückgenommen</translation>
    </message>
    <message>
        <source>tags %1 out</source>
        <translation>Anhänger %1 ausgegeben</translation>
    </message>
    <message>
        <source>tags OUT</source>
        <translation>Anhänger AUSGEGEBEN</translation>
    </message>
    <message>
        <source>tags, out</source>
        <translation>Anhänger, ausgegeben</translation>
    </message>
    <message>
        <source>take away</source>
        <comment>off</comment>
        <translation>wegnehmen</translation>
    </message>
    <message>
        <source>take off</source>
        <comment>off</comment>
        <translation>abnehmen</translation>
    </message>
    <message>
        <source>taken away</source>
        <comment>off_done</comment>
        <translation>weggenommen</translation>
    </message>
    <message>
        <source>taken off</source>
        <comment>off_done</comment>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>taken on there</source>
        <translation>dort übernommen</translation>
    </message>
    <message>
        <source>taken on: %1</source>
        <translation>übernommen: %1</translation>
    </message>
    <message>
        <source>temporary</source>
        <translation>vorläufig</translation>
    </message>
    <message>
        <source>test %1 %2</source>
        <translation>Test %1 %2</translation>
    </message>
    <message>
        <source>test, %1</source>
        <translation>Test, %1</translation>
    </message>
    <message>
        <source>tested</source>
        <translation>getestet</translation>
    </message>
    <message>
        <source>the SHA-256 digest of a file that is kept elsewhere, in 64 lower-case hex digits</source>
        <translation>die SHA-256-Prüfsumme einer anderswo aufbewahrten Datei in 64 kleingeschriebenen Hexadezimalziffern</translation>
    </message>
    <message>
        <source>the aircraft's end</source>
        <translation>das Ende am Luftfahrzeug</translation>
    </message>
    <message>
        <source>the bonding limit</source>
        <translation>der Masseverbindungsgrenzwert</translation>
    </message>
    <message>
        <source>the drag of the nuts</source>
        <translation>das Klemmdrehmoment der Muttern</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>the halves</source>
        <translation>die Hälften</translation>
    </message>
    <message>
        <source>the hardware</source>
        <translation>das Befestigungsmaterial</translation>
    </message>
    <message>
        <source>the hardware that came off</source>
        <translation>das abgenommene Befestigungsmaterial</translation>
    </message>
    <message>
        <source>the incoming unit</source>
        <translation>das eingehende Aggregat</translation>
    </message>
    <message>
        <source>the inspector who disposes of it</source>
        <translation>der Prüfer, der darüber entscheidet</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>der Auftrag</translation>
    </message>
    <message>
        <source>the lead</source>
        <translation>der Leiter</translation>
    </message>
    <message>
        <source>the lead, by importing the list</source>
        <translation>der Leiter, durch Importieren der Liste</translation>
    </message>
    <message>
        <source>the lead, by opening a follow-on job</source>
        <translation>der Leiter, durch Eröffnen eines Folgeauftrags</translation>
    </message>
    <message>
        <source>the lead, by opening the job</source>
        <translation>der Leiter, durch Eröffnen des Auftrags</translation>
    </message>
    <message>
        <source>the lead, or an inspector, by correcting its row of the list</source>
        <translation>der Leiter oder ein Prüfer, durch Berichtigen der Zeile in der Liste</translation>
    </message>
    <message>
        <source>the lead, or an inspector, by correcting the row again</source>
        <translation>der Leiter oder ein Prüfer, durch erneutes Berichtigen der Zeile</translation>
    </message>
    <message>
        <source>the leak limit</source>
        <translation>der Leckagegrenzwert</translation>
    </message>
    <message>
        <source>the ledger of a job</source>
        <translation>das Buch eines Auftrags</translation>
    </message>
    <message>
        <source>the left point</source>
        <translation>der linke Punkt</translation>
    </message>
    <message>
        <source>the lifting point</source>
        <translation>der Anschlagpunkt</translation>
    </message>
    <message>
        <source>the mark of a critical interface</source>
        <translation>die Kennzeichnung als kritischer Anschluss</translation>
    </message>
    <message>
        <source>the name "%1" stands twice</source>
        <translation>der Name „%1“ steht zweimal da</translation>
    </message>
    <message>
        <source>the number %1 lies beyond ±(2^53−1)</source>
        <translation>die Zahl %1 liegt außerhalb von ±(2^53−1)</translation>
    </message>
    <message>
        <source>the order of the fasteners</source>
        <translation>die Reihenfolge der Verbindungselemente</translation>
    </message>
    <message>
        <source>the outgoing lead</source>
        <translation>der übergebende Leiter</translation>
    </message>
    <message>
        <source>the outgoing lead, by handing over</source>
        <translation>der übergebende Leiter, durch Übergeben</translation>
    </message>
    <message>
        <source>the outgoing unit</source>
        <translation>das ausgehende Aggregat</translation>
    </message>
    <message>
        <source>the outgoing unit goes back on</source>
        <translation>das ausgehende Aggregat wird wieder eingebaut</translation>
    </message>
    <message>
        <source>the passes</source>
        <translation>die Durchgänge</translation>
    </message>
    <message>
        <source>the register</source>
        <translation>das Stammbuch</translation>
    </message>
    <message>
        <source>the register and the linked jobs as they are now</source>
        <translation>dem Stammbuch und den verknüpften Aufträgen nach jetzigem Stand</translation>
    </message>
    <message>
        <source>the right point</source>
        <translation>der rechte Punkt</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>die Dichtung</translation>
    </message>
    <message>
        <source>the smallest SHA-256 of the seed, a line feed and the interface's id, in UTF-8</source>
        <translation>dem kleinsten SHA-256 aus Startwert, Zeilenvorschub und Kennung des Anschlusses, in UTF-8</translation>
    </message>
    <message>
        <source>the threads</source>
        <translation>die Gewinde</translation>
    </message>
    <message>
        <source>the torque</source>
        <translation>das Anziehdrehmoment</translation>
    </message>
    <message>
        <source>the torque band</source>
        <translation>der Drehmomentbereich</translation>
    </message>
    <message>
        <source>the turn after the torque</source>
        <translation>der Drehwinkel nach dem Anziehdrehmoment</translation>
    </message>
    <message>
        <source>the unit's end</source>
        <translation>das Ende am Aggregat</translation>
    </message>
    <message>
        <source>the whole</source>
        <translation>das Ganze</translation>
    </message>
    <message>
        <source>then turned %1° to %2°</source>
        <translation>danach um %1° bis %2° weitergedreht</translation>
    </message>
    <message>
        <source>there is no memory to unpack it.</source>
        <translation>es ist kein Speicher da, um sie zu entpacken.</translation>
    </message>
    <message>
        <source>this store's own job</source>
        <translation>eigener Auftrag dieser Ablage</translation>
    </message>
    <message>
        <source>ticked</source>
        <translation>abgehakt</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>to be moved, or declared to leave</source>
        <translation>umzubauen oder als abgehend zu erklären</translation>
    </message>
    <message>
        <source>to be seen</source>
        <translation>zu sehen</translation>
    </message>
    <message>
        <source>to come out: %1</source>
        <translation>herauszunehmen: %1</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>zu wenig</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>zu viel</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>Werkzeug</translation>
    </message>
    <message>
        <source>tool %1 out</source>
        <translation>Werkzeug %1 ausgegeben</translation>
    </message>
    <message>
        <source>tool %1 out (%2)</source>
        <translation>Werkzeug %1 ausgegeben (%2)</translation>
    </message>
    <message>
        <source>tool OUT</source>
        <translation>Werkzeug AUSGEGEBEN</translation>
    </message>
    <message>
        <source>tool, out</source>
        <translation>Werkzeug, ausgegeben</translation>
    </message>
    <message>
        <source>tools_counted</source>
        <translation>Werkzeuge gezählt</translation>
    </message>
    <message>
        <source>torqued</source>
        <translation>angezogen</translation>
    </message>
    <message>
        <source>torqued %1 of %2</source>
        <translation>angezogen %1 von %2</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>undisturbed</source>
        <translation>unberührt</translation>
    </message>
    <message>
        <source>undone, and on no list</source>
        <translation>gelöst, und in keiner Liste</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Aggregat</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>unberührt</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>used again</source>
        <translation>wiederverwendet</translation>
    </message>
    <message>
        <source>verdict.txt</source>
        <translation>verdict.txt</translation>
    </message>
    <message>
        <source>void</source>
        <translation>hinfällig</translation>
    </message>
    <message>
        <source>void, pass again</source>
        <translation>hinfällig, erneut zu passieren</translation>
    </message>
    <message>
        <source>void: %1</source>
        <translation>hinfällig: %1</translation>
    </message>
    <message>
        <source>voided later</source>
        <translation>später hinfällig geworden</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>waits to be taken on here</source>
        <translation>wartet darauf, hier übernommen zu werden</translation>
    </message>
    <message>
        <source>walked_round</source>
        <translation>Rundgang gemacht</translation>
    </message>
    <message>
        <source>warning tag</source>
        <translation>Warnanhänger</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>gewogen</translation>
    </message>
    <message>
        <source>what has to be off before it</source>
        <translation>was vorher gelöst sein muss</translation>
    </message>
    <message>
        <source>what it asks for is to be looked up</source>
        <translation>was verlangt ist, ist nachzuschlagen</translation>
    </message>
    <message>
        <source>what it depends on</source>
        <translation>wovon es abhängt</translation>
    </message>
    <message>
        <source>what restoring it has to show</source>
        <translation>was seine Wiederherstellung nachweisen muss</translation>
    </message>
    <message>
        <source>what was found</source>
        <translation>was festgestellt wurde</translation>
    </message>
    <message>
        <source>where they stopped</source>
        <translation>wo unterbrochen wurde</translation>
    </message>
    <message>
        <source>where-used</source>
        <translation>wo-verwendet</translation>
    </message>
    <message>
        <source>whether it is off</source>
        <translation>ob es gelöst ist</translation>
    </message>
    <message>
        <source>which</source>
        <translation>welcher</translation>
    </message>
    <message>
        <source>which, its tag, and whose it is</source>
        <translation>welches, der Anhänger und wessen</translation>
    </message>
    <message>
        <source>who has it: %1</source>
        <translation>wer es hat: %1</translation>
    </message>
    <message>
        <source>whoever attaches the photo</source>
        <translation>wer das Foto anhängt</translation>
    </message>
    <message>
        <source>whoever did it</source>
        <translation>wer es getan hat</translation>
    </message>
    <message>
        <source>whoever exchanges the tags</source>
        <translation>wer die Anhänger tauscht</translation>
    </message>
    <message>
        <source>whoever fills in the form</source>
        <translation>wer das Formular ausfüllt</translation>
    </message>
    <message>
        <source>whoever has it</source>
        <translation>wer es hat</translation>
    </message>
    <message>
        <source>whoever keeps the backups</source>
        <translation>wer die Sicherungskopien verwahrt</translation>
    </message>
    <message>
        <source>whoever keeps the stores</source>
        <translation>wer die Ablagen verwaltet</translation>
    </message>
    <message>
        <source>whoever keeps the weight record</source>
        <translation>wer die Gewichtsübersicht führt</translation>
    </message>
    <message>
        <source>whoever looks after the tools</source>
        <translation>wer die Werkzeuge verwaltet</translation>
    </message>
    <message>
        <source>whoever looks after this computer's clock</source>
        <translation>wer die Uhr dieses Computers betreut</translation>
    </message>
    <message>
        <source>whoever makes the list</source>
        <translation>wer die Liste erstellt</translation>
    </message>
    <message>
        <source>whoever marks the photo</source>
        <translation>wer das Foto markiert</translation>
    </message>
    <message>
        <source>whoever passes the hold point</source>
        <translation>wer den Haltepunkt passiert</translation>
    </message>
    <message>
        <source>whoever plans the lift</source>
        <translation>wer den Hebevorgang plant</translation>
    </message>
    <message>
        <source>whoever plans the lift, with other equipment</source>
        <translation>wer den Hebevorgang plant, mit anderem Gerät</translation>
    </message>
    <message>
        <source>whoever raises the finding</source>
        <translation>wer den Befund meldet</translation>
    </message>
    <message>
        <source>whoever releases</source>
        <translation>wer freigibt</translation>
    </message>
    <message>
        <source>whoever sets it</source>
        <translation>wer sie festlegt</translation>
    </message>
    <message>
        <source>whoever shows it anew; or a person with authority to overrule</source>
        <translation>wer es neu nachweist; oder eine Person mit Befugnis zum Übersteuern</translation>
    </message>
    <message>
        <source>whole job</source>
        <translation>ganzer Auftrag</translation>
    </message>
    <message>
        <source>whose: %1</source>
        <translation>wessen: %1</translation>
    </message>
    <message>
        <source>with a guard band as wide as what the tool may be off</source>
        <translation>mit einem Sicherheitsabstand so breit wie die mögliche Abweichung des Werkzeugs</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>aus dem Gebrauch genommen</translation>
    </message>
    <message>
        <source>withdrawn %1</source>
        <translation>entzogen %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>im Bereich</translation>
    </message>
    <message>
        <source>within limits</source>
        <translation>innerhalb der Grenzen</translation>
    </message>
    <message>
        <source>work</source>
        <translation>arbeiten</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>abgenutzt</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>ja oder nein</translation>
    </message>
    <message>
        <source>± %1 %</source>
        <translation>± %1 %</translation>
    </message>
    <message>
        <source>± %1 %, %2</source>
        <translation>± %1 %, %2</translation>
    </message>
    <message>
        <source>• %1</source>
        <translation>• %1</translation>
    </message>
    <message>
        <source>○ %1: %2</source>
        <translation>○ %1: %2</translation>
    </message>
    <message>
        <source>✓ %1</source>
        <translation>✓ %1</translation>
    </message>
    <message>
        <source>✗ %1</source>
        <translation>✗ %1</translation>
    </message>
    <message>
        <source>✗ Not verified: %1</source>
        <translation>✗ Nicht verifiziert: %1</translation>
    </message>
</context>
</TS>
