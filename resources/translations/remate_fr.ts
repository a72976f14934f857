<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Kept by packaging/texts. -->
<TS version="2.1" language="fr" sourcelanguage="en">
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
        <translation> sur %1</translation>
    </message>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
    <message>
        <source> or a person with authority to overrule</source>
        <translation> ou une personne habilitée à passer outre</translation>
    </message>
    <message>
        <source> or the lead</source>
        <translation> ou le responsable du chantier</translation>
    </message>
    <message>
        <source> · </source>
        <translation> · </translation>
    </message>
    <message>
        <source> … (goes on; see the program)</source>
        <translation> … (suite ; voir le programme)</translation>
    </message>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
    <message>
        <source>"%1" (%2) holds a character that nobody sees (%3). Type it again.</source>
        <translation>« %1 » (%2) contient un caractère invisible (%3). Ressaisissez-le.</translation>
    </message>
    <message>
        <source>"%1" (%2) holds half a character, which cannot be recorded. Type it again.</source>
        <translation>« %1 » (%2) contient un demi-caractère, qui ne peut pas être enregistré. Ressaisissez-le.</translation>
    </message>
    <message>
        <source>"%1" (%2) is %3 characters long; %4 are kept. Say it shorter, or attach a file.</source>
        <translation>« %1 » (%2) compte %3 caractères ; %4 sont conservés. Dites-le plus brièvement, ou joignez un fichier.</translation>
    </message>
    <message>
        <source>"%1" (%2) is a list of %3; one entry holds %4. Make several entries of it.</source>
        <translation>« %1 » (%2) est une liste de %3 ; une entrée en contient %4. Faites-en plusieurs entrées.</translation>
    </message>
    <message>
        <source>"%1" (%2) is missing.</source>
        <translation>« %1 » (%2) manque.</translation>
    </message>
    <message>
        <source>"%1" (%2) must be %3.</source>
        <translation>« %1 » (%2) doit être %3.</translation>
    </message>
    <message>
        <source>"%1" (%2): %3</source>
        <translation>« %1 » (%2) : %3</translation>
    </message>
    <message>
        <source>"%1" cannot be a name: use 1 to 128 plain characters that everybody sees, no blanks at either end.</source>
        <translation>« %1 » ne peut pas être un nom : utilisez 1 à 128 caractères simples et visibles de tous, sans blanc au début ni à la fin.</translation>
    </message>
    <message>
        <source>"%1" cannot be an id. Expected: 1 to 128 characters, such as E12.</source>
        <translation>« %1 » ne peut pas être un identifiant. Attendu : 1 à 128 caractères, par exemple E12.</translation>
    </message>
    <message>
        <source>"%1" cannot be taken. Expected: %2.</source>
        <translation>« %1 » ne peut pas être pris. Attendu : %2.</translation>
    </message>
    <message>
        <source>"%1" cannot be what is on a tag: plain characters that everybody sees, no blanks at either end. Two tags that look alike are one.</source>
        <translation>« %1 » ne peut pas figurer sur une étiquette : des caractères simples et visibles de tous, sans blanc au début ni à la fin. Deux étiquettes qui se ressemblent n'en font qu'une.</translation>
    </message>
    <message>
        <source>"%1" classes what shows %2 minutes after wiping dry. Say after how many minutes it was looked.</source>
        <translation>« %1 » classe ce qui apparaît %2 minutes après essuyage à sec. Indiquez après combien de minutes on a regardé.</translation>
    </message>
    <message>
        <source>"%1" classes what shows %2 minutes after wiping dry; this was seen after %3. Wait, and look again.</source>
        <translation>« %1 » classe ce qui apparaît %2 minutes après essuyage à sec ; ici on a regardé après %3. Attendez et regardez à nouveau.</translation>
    </message>
    <message>
        <source>"%1" does not class by size. Choose the class by its description, and tell what was seen under how it was checked.</source>
        <translation>« %1 » ne classe pas d'après l'étendue. Choisissez la classe par sa description, et dites ce qui a été vu dans la manière dont le contrôle a été fait.</translation>
    </message>
    <message>
        <source>"%1" gives %2 to more than one class (%3), so the worst of them, "%4", is taken.</source>
        <translation>« %1 » attribue %2 à plus d'une classe (%3) ; la plus mauvaise, « %4 », est donc retenue.</translation>
    </message>
    <message>
        <source>"%1" has a comma, which one reader takes for a decimal sign and another for thousands. Type a decimal point, and no grouping.</source>
        <translation>« %1 » contient une virgule, que l'un lit comme signe décimal et l'autre comme séparateur de milliers. Saisissez un point décimal, sans séparateur.</translation>
    </message>
    <message>
        <source>"%1" has no unit. Add one of %2.</source>
        <translation>« %1 » n'a pas d'unité. Ajoutez-en une parmi %2.</translation>
    </message>
    <message>
        <source>"%1" is %2; %3 is needed, in one of %4.</source>
        <translation>« %1 » est %2 ; il faut %3, dans l'une de ces unités : %4.</translation>
    </message>
    <message>
        <source>"%1" is a half of %2 (%3) too, which is of the same twin group: nobody could tell them apart by it.</source>
        <translation>« %1 » est aussi une moitié de %2 (%3), du même groupe de contrôle croisé : personne ne pourrait les distinguer par elle.</translation>
    </message>
    <message>
        <source>"%1" is empty. Expected: %2.</source>
        <translation>« %1 » est vide. Attendu : %2.</translation>
    </message>
    <message>
        <source>"%1" is given twice.</source>
        <translation>« %1 » est donné deux fois.</translation>
    </message>
    <message>
        <source>"%1" is neither "read" nor "from memory".</source>
        <translation>« %1 » n'est ni « read » ni « from memory ».</translation>
    </message>
    <message>
        <source>"%1" is neither the number of an entry nor a hash of 64 hex digits.</source>
        <translation>« %1 » n'est ni le numéro d'une entrée ni une empreinte de 64 chiffres hexadécimaux.</translation>
    </message>
    <message>
        <source>"%1" is no day such as 2026-03-02.</source>
        <translation>« %1 » n'est pas un jour tel que 2026-03-02.</translation>
    </message>
    <message>
        <source>"%1" is no label of an interface. Labels are scanned while their job is open.</source>
        <translation>« %1 » n'est pas l'étiquette imprimée d'un raccordement. Ces étiquettes se scannent pendant que leur chantier est ouvert.</translation>
    </message>
    <message>
        <source>"%1" is no label, tag or interface of %2. To scan it into a field, choose the field first.</source>
        <translation>« %1 » n'est ni une étiquette imprimée, ni une étiquette posée, ni un raccordement de %2. Pour le scanner dans un champ, choisissez d'abord le champ.</translation>
    </message>
    <message>
        <source>"%1" is no leak class of this job; they are: %2.</source>
        <translation>« %1 » n'est pas une classe de fuite de ce chantier ; ce sont : %2.</translation>
    </message>
    <message>
        <source>"%1" is no leak class: it is always there, below the least. Name the classes without it.</source>
        <translation>« %1 » n'est pas une classe de fuite : elle est toujours là, sous la plus faible. Nommez les classes sans elle.</translation>
    </message>
    <message>
        <source>"%1" is no moment. Give it with its time zone, such as 2026-03-02T08:14:00Z, or leave it out.</source>
        <translation>« %1 » n'est pas un instant. Indiquez-le avec son fuseau horaire, par exemple 2026-03-02T08:14:00Z, ou laissez vide.</translation>
    </message>
    <message>
        <source>"%1" is no number with a unit. Type, for example, 12.5 and one of %2; at most 18 digits.</source>
        <translation>« %1 » n'est pas un nombre avec unité. Saisissez par exemple 12.5 et une unité parmi %2 ; 18 chiffres au plus.</translation>
    </message>
    <message>
        <source>"%1" is no other interface that is open with a tag on it.</source>
        <translation>« %1 » n'est pas un autre raccordement ouvert avec une étiquette posée.</translation>
    </message>
    <message>
        <source>"%1" is no path inside a bag.</source>
        <translation>« %1 » n'est pas un chemin dans un bag.</translation>
    </message>
    <message>
        <source>"%1" is no percent of the final torque. Give numbers such as 30, 60, 100.</source>
        <translation>« %1 » n'est pas un pourcentage du couple final. Donnez des nombres tels que 30, 60, 100.</translation>
    </message>
    <message>
        <source>"%1" is no size of a leak. Write 0.75 in, or under 0.75 in where exactly that size belongs to the next class.</source>
        <translation>« %1 » n'est pas une taille de fuite. Écrivez 0.75 in, ou under 0.75 in quand cette taille exacte appartient à la classe suivante.</translation>
    </message>
    <message>
        <source>"%1" is not a number, zero or more, with a decimal point.</source>
        <translation>« %1 » n'est pas un nombre, nul ou positif, avec un point décimal.</translation>
    </message>
    <message>
        <source>"%1" is not about an interface, so a gate for it names none.</source>
        <translation>« %1 » ne concerne pas un raccordement ; un barrage pour ce type n'en nomme donc aucun.</translation>
    </message>
    <message>
        <source>"%1" is not as %2 has it: %3. If the record there is wrong, they take it back and put that right.</source>
        <translation>« %1 » n'est pas tel que l'indique %2 : %3. Si le dossier est faux là-bas, ils le reprennent et le rectifient.</translation>
    </message>
    <message>
        <source>"%1" is not one of: %2.</source>
        <translation>« %1 » n'est pas l'un de : %2.</translation>
    </message>
    <message>
        <source>"%1" is not packed as this program packs: link, folder, encryption, moment or remark.</source>
        <translation>« %1 » n'est pas empaqueté comme ce programme empaquette : lien, dossier, chiffrement, date ou remarque.</translation>
    </message>
    <message>
        <source>"%1" is the half of %2 already. Expected: a designation of its own for each half, so that a swap can be seen.</source>
        <translation>« %1 » est déjà la moitié de %2. Attendu : une désignation propre à chaque moitié, pour qu'une inversion se voie.</translation>
    </message>
    <message>
        <source>"%1" is the worst class of this job, so it limits nothing. Give a lesser one, or a rate beside it.</source>
        <translation>« %1 » est la pire classe de ce chantier ; elle ne limite donc rien. Indiquez-en une plus faible, ou un débit en plus.</translation>
    </message>
    <message>
        <source>"%1" is within the limit.</source>
        <translation>« %1 » est dans la limite.</translation>
    </message>
    <message>
        <source>"%1" is worse than the limit, "%2". Find the cause; the maintenance data says what to do.</source>
        <translation>« %1 » est pire que la limite, « %2 ». Cherchez la cause ; les données d'entretien disent que faire.</translation>
    </message>
    <message>
        <source>"%1" must be off before this one, and the list does not have it yet. List it first.</source>
        <translation>« %1 » doit être déposé avant celui-ci, et la liste ne le comporte pas encore. Inscrivez-le d'abord.</translation>
    </message>
    <message>
        <source>"%1" must be off before this one, but neither the list nor the job has it.</source>
        <translation>« %1 » doit être déposé avant celui-ci, mais ni la liste ni le chantier ne l'a.</translation>
    </message>
    <message>
        <source>"%1" names no class for %2, so the worst, "%3", is taken.</source>
        <translation>« %1 » ne nomme pas de classe pour %2 ; la plus mauvaise, « %3 », est donc retenue.</translation>
    </message>
    <message>
        <source>"%1" names no row. An id holds lower-case letters, digits, -, / and . alone.</source>
        <translation>« %1 » ne nomme aucune ligne. Un identifiant contient seulement des lettres minuscules, des chiffres, -, / et .</translation>
    </message>
    <message>
        <source>"%1" needs a reason: the next shift acts on it.</source>
        <translation>« %1 » demande un motif : l'équipe suivante agit d'après lui.</translation>
    </message>
    <message>
        <source>"%1", on which this one depends, is not on the list yet. List it first.</source>
        <translation>« %1 », dont celui-ci dépend, n'est pas encore dans la liste. Inscrivez-le d'abord.</translation>
    </message>
    <message>
        <source>"Done at" must lie between the opening of the job and now.</source>
        <translation>« Fait le » doit se situer entre l'ouverture du chantier et maintenant.</translation>
    </message>
    <message>
        <source>%1&#xa;&#xa;%2</source>
        <translation>%1&#xa;&#xa;%2</translation>
    </message>
    <message>
        <source>%1&#xa;&#xa;It works once, until %2, beside your PIN. It is not shown again.</source>
        <translation>%1&#xa;&#xa;Il sert une seule fois, jusqu'au %2, en plus de votre PIN. Il n'est plus affiché ensuite.</translation>
    </message>
    <message>
        <source>%1&#xa;%2</source>
        <translation>%1&#xa;%2</translation>
    </message>
    <message>
        <source>%1&#xa;Entries: %2, attachments: %3&#xa;Hash of the last entry: %4&#xa;Root fingerprint: %5&#xa;VERIFY.txt in it says how to check it without this program.</source>
        <translation>%1&#xa;Entrées : %2, pièces jointes : %3&#xa;Empreinte de la dernière entrée : %4&#xa;Empreinte de la racine : %5&#xa;VERIFY.txt, dans le paquet, dit comment le contrôler sans ce programme.</translation>
    </message>
    <message>
        <source>%1&#xa;It says what was open at its last entry, and is not the record.</source>
        <translation>%1&#xa;Elle dit ce qui était ouvert à sa dernière entrée, et n'est pas le dossier.</translation>
    </message>
    <message>
        <source>%1&#xa;Labels: %2, sheets: %3. Print at 100 %, not fitted to the page.</source>
        <translation>%1&#xa;Étiquettes : %2, feuilles : %3. Imprimez à 100 %, sans ajuster à la page.</translation>
    </message>
    <message>
        <source>%1&#xa;Root fingerprint: %2</source>
        <translation>%1&#xa;Empreinte de la racine : %2</translation>
    </message>
    <message>
        <source>%1&#xa;entry %2</source>
        <translation>%1&#xa;entrée %2</translation>
    </message>
    <message>
        <source>%1&#xa;none yet</source>
        <translation>%1&#xa;aucune pour l'instant</translation>
    </message>
    <message>
        <source>%1&#xa;to %2</source>
        <translation>%1&#xa;à %2</translation>
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
        <translation>%1  %2 – non signé</translation>
    </message>
    <message>
        <source>%1  (continued)</source>
        <translation>%1  (suite)</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>%1 % of the reading</source>
        <translation>%1 % de la lecture</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 %2 No job of this store has that work order. Open the store that has it, or look whether the label hangs in the right place.</source>
        <translation>%1 %2 Aucun chantier de cette base ne porte cet ordre de travail. Ouvrez la base qui le contient, ou vérifiez que l'étiquette est à la bonne place.</translation>
    </message>
    <message>
        <source>%1 %2 Several jobs of this store have that work order. Open the one that is meant, and scan again.</source>
        <translation>%1 %2 Plusieurs chantiers de cette base portent cet ordre de travail. Ouvrez celui qui convient, puis scannez de nouveau.</translation>
    </message>
    <message>
        <source>%1 %2 Whether this store has that job cannot be said: %3</source>
        <translation>%1 %2 Impossible de dire si cette base contient ce chantier : %3</translation>
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
        <translation>%1 %2, rayé</translation>
    </message>
    <message>
        <source>%1 %2, zone %3, %4. Rank %5</source>
        <translation>%1 %2, zone %3, %4. Rang %5</translation>
    </message>
    <message>
        <source>%1 %2: %3</source>
        <translation>%1 %2 : %3</translation>
    </message>
    <message>
        <source>%1 %2: %3, entry %4. %5 Allowed by %6.</source>
        <translation>%1 %2 : %3, entrée %4. %5 Autorisé par %6.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2) has failed.</source>
        <translation>%1 (%2) a échoué.</translation>
    </message>
    <message>
        <source>%1 (%2) is enrolled with a key of their own, opened by their PIN.</source>
        <translation>%1 (%2) est enregistré avec sa propre clé, ouverte par son PIN.</translation>
    </message>
    <message>
        <source>%1 (%2) is not %3.</source>
        <translation>%1 (%2) n'est pas %3.</translation>
    </message>
    <message>
        <source>%1 (%2) is not logged as free, so the unit cannot be off. Log what was undone first.</source>
        <translation>%1 (%2) n'est pas enregistré comme libre ; l'ensemble ne peut donc pas être déposé. Enregistrez d'abord ce qui a été défait.</translation>
    </message>
    <message>
        <source>%1 (%2) is not placed.</source>
        <translation>%1 (%2) n'est pas placé.</translation>
    </message>
    <message>
        <source>%1 (%2) is off. Twins are verified when all of them are joined.</source>
        <translation>%1 (%2) est déposé. Le contrôle croisé se fait quand tous les jumeaux sont raccordés.</translation>
    </message>
    <message>
        <source>%1 (%2) is still applied.</source>
        <translation>%1 (%2) est encore en place.</translation>
    </message>
    <message>
        <source>%1 (%2) is void: %3</source>
        <translation>%1 (%2) est caduc : %3</translation>
    </message>
    <message>
        <source>%1 (%2) was found still attached: which of the two is open is what the tags have to say. It is freed first.</source>
        <translation>%1 (%2) a été trouvé encore attaché : ce sont les étiquettes qui doivent dire lequel des deux est ouvert. Il est d'abord libéré.</translation>
    </message>
    <message>
        <source>%1 (%2), %3: PIN %4</source>
        <translation>%1 (%2), %3 : PIN %4</translation>
    </message>
    <message>
        <source>%1 (%2), which it covered, is open or not restored.</source>
        <translation>%1 (%2), qu'il couvrait, est ouvert ou n'est pas remis en état.</translation>
    </message>
    <message>
        <source>%1 (%2), which it covered, was worked on again in entry %3.</source>
        <translation>%1 (%2), qu'il couvrait, a été repris à l'entrée %3.</translation>
    </message>
    <message>
        <source>%1 (%2), which it covered, was worked on again. %3</source>
        <translation>%1 (%2), qu'il couvrait, a été repris. %3</translation>
    </message>
    <message>
        <source>%1 (%2, serial number %3) has neither moved to the incoming unit nor was declared to leave with the outgoing one.</source>
        <translation>%1 (%2, numéro de série %3) n'a été ni transféré sur l'ensemble entrant ni déclaré partant avec l'ensemble sortant.</translation>
    </message>
    <message>
        <source>%1 (%2, serial number %3) has not been said to be on the outgoing unit again, which goes back up.</source>
        <translation>%1 (%2, numéro de série %3) n'a pas été déclaré comme étant de nouveau sur l'ensemble sortant, qui est reposé.</translation>
    </message>
    <message>
        <source>%1 (OWN WORK)</source>
        <translation>%1 (PROPRE TRAVAIL)</translation>
    </message>
    <message>
        <source>%1 (always new)</source>
        <translation>%1 (toujours neuf)</translation>
    </message>
    <message>
        <source>%1 (critical)</source>
        <translation>%1 (critique)</translation>
    </message>
    <message>
        <source>%1 (except %2)</source>
        <translation>%1 (sauf %2)</translation>
    </message>
    <message>
        <source>%1 (from memory)</source>
        <translation>%1 (de mémoire)</translation>
    </message>
    <message>
        <source>%1 (p. %2)</source>
        <translation>%1 (p. %2)</translation>
    </message>
    <message>
        <source>%1 (signature in doubt)</source>
        <translation>%1 (signature en doute)</translation>
    </message>
    <message>
        <source>%1 (signature in doubt: %2)</source>
        <translation>%1 (signature en doute : %2)</translation>
    </message>
    <message>
        <source>%1 (under %2)</source>
        <translation>%1 (moins de %2)</translation>
    </message>
    <message>
        <source>%1 (up to %2)</source>
        <translation>%1 (jusqu'à %2)</translation>
    </message>
    <message>
        <source>%1 = %2</source>
        <translation>%1 = %2</translation>
    </message>
    <message>
        <source>%1 Allowed by %2.</source>
        <translation>%1 Autorisé par %2.</translation>
    </message>
    <message>
        <source>%1 Choose another, or say that it is meant.</source>
        <translation>%1 Choisissez-en une autre, ou confirmez que c'est voulu.</translation>
    </message>
    <message>
        <source>%1 Copy of a file with SHA-256 %2…</source>
        <translation>%1 Copie d'un fichier de SHA-256 %2…</translation>
    </message>
    <message>
        <source>%1 Its row is struck by an inspector who had no hand in it; or say of it that it is not applicable.</source>
        <translation>%1 Sa ligne est rayée par un contrôleur qui n'y a pas participé ; ou déclarez-le non applicable.</translation>
    </message>
    <message>
        <source>%1 Known that are spelt alike: %2.</source>
        <translation>%1 Connus d'orthographe semblable : %2.</translation>
    </message>
    <message>
        <source>%1 LOOSE ENDS</source>
        <translation>%1 POINTS OUVERTS</translation>
    </message>
    <message>
        <source>%1 ON</source>
        <translation>%1 EN PLACE</translation>
    </message>
    <message>
        <source>%1 OPEN</source>
        <translation>%1 OUVERTS</translation>
    </message>
    <message>
        <source>%1 Pass %2 of %3 is not finished.</source>
        <translation>%1 La passe %2 sur %3 n'est pas terminée.</translation>
    </message>
    <message>
        <source>%1 SIGNATURES IN DOUBT</source>
        <translation>%1 SIGNATURES EN DOUTE</translation>
    </message>
    <message>
        <source>%1 Somebody takes it up and says that it is finished, then it is inspected.</source>
        <translation>%1 Quelqu'un le reprend et déclare qu'il est terminé, puis il est contrôlé.</translation>
    </message>
    <message>
        <source>%1 Take it up by signature, then work on.</source>
        <translation>%1 Reprenez-le par signature, puis poursuivez le travail.</translation>
    </message>
    <message>
        <source>%1 UTC</source>
        <translation>%1 UTC</translation>
    </message>
    <message>
        <source>%1 accepted %2 already; the next inspection is made by somebody else.</source>
        <translation>%1 a déjà accepté %2 ; le contrôle suivant est fait par une autre personne.</translation>
    </message>
    <message>
        <source>%1 across</source>
        <translation>%1 de large</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>%1 and %2 are compared as they are, so nothing is turned by %3 drops to the millilitre. Leave them out.</source>
        <translation>%1 et %2 sont comparés tels quels ; rien n'est donc converti avec %3 gouttes par millilitre. Omettez cette valeur.</translation>
    </message>
    <message>
        <source>%1 and %2 can be compared only when it is known how many drops make a millilitre. Count them, or take the number of the maintenance data.</source>
        <translation>%1 et %2 ne peuvent être comparés que si l'on sait combien de gouttes font un millilitre. Comptez-les, ou prenez le nombre des données d'entretien.</translation>
    </message>
    <message>
        <source>%1 and %2. %3</source>
        <translation>%1 et %2. %3</translation>
    </message>
    <message>
        <source>%1 and its look-alikes have not been verified as a pair.</source>
        <translation>%1 et les raccordements semblables n'ont pas fait l'objet du contrôle croisé par paire.</translation>
    </message>
    <message>
        <source>%1 applied (%2)</source>
        <translation>%1 mis en place (%2)</translation>
    </message>
    <message>
        <source>%1 applied: %2; asked for: %3.</source>
        <translation>%1 appliqué : %2 ; demandé : %3.</translation>
    </message>
    <message>
        <source>%1 asks for a turn of %2° to %3° after the torque; the entry says %4.</source>
        <translation>%1 demande une rotation de %2° à %3° après le couple ; l'entrée indique %4.</translation>
    </message>
    <message>
        <source>%1 asks for no turn here, and a fastener that was turned by %2 after its torque may be stretched. Follow the maintenance data, and raise a finding.</source>
        <translation>%1 ne demande ici aucune rotation, et une fixation tournée de %2 après son couple peut être étirée. Suivez les données d'entretien, et ouvrez un constat.</translation>
    </message>
    <message>
        <source>%1 asks for two readings: measure again with the leads the other way round.</source>
        <translation>%1 demande deux mesures : mesurez à nouveau en inversant les cordons.</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 at worst</source>
        <translation>%1 au pire</translation>
    </message>
    <message>
        <source>%1 between the points</source>
        <translation>%1 entre les points</translation>
    </message>
    <message>
        <source>%1 blanks are logged on %2 of %3; %4 cannot be missing from it.</source>
        <translation>%1 obturateurs sont enregistrés sur %2 de %3 ; il ne peut pas en manquer %4.</translation>
    </message>
    <message>
        <source>%1 blanks were counted on the unit, and %2 are said to be removed. Find the difference before it goes up: a blank left in is found by the engine.</source>
        <translation>%1 obturateurs ont été comptés sur l'ensemble, et %2 seraient retirés. Trouvez l'écart avant que l'ensemble ne monte : un obturateur laissé à l'intérieur, c'est le moteur qui le trouve.</translation>
    </message>
    <message>
        <source>%1 blanks were counted on the unit, which was struck, and now %2. What was counted once is there, or inside: look for it. Where the first count was wrong, an inspector counts, and signs this.</source>
        <translation>%1 obturateurs ont été comptés sur l'ensemble, ce qui a été rayé, et maintenant %2. Ce qui a été compté une fois est là, ou à l'intérieur : cherchez-le. Si le premier comptage était faux, un contrôleur compte, et signe ceci.</translation>
    </message>
    <message>
        <source>%1 blanks were fitted to %2 of %3, and %4 are removed. Find the difference before you join it: one may be inside.</source>
        <translation>%1 obturateurs ont été posés sur %2 de %3, et %4 sont retirés. Trouvez l'écart avant de raccorder : il peut en rester un à l'intérieur.</translation>
    </message>
    <message>
        <source>%1 blanks were logged on the unit's ends, and %2 openings are said to be blanked. Count again: one may be inside it.</source>
        <translation>%1 obturateurs ont été enregistrés côté ensemble, et %2 ouvertures seraient obturées. Recomptez : il peut y en avoir un à l'intérieur.</translation>
    </message>
    <message>
        <source>%1 by stage: %2.</source>
        <translation>%1 par état : %2.</translation>
    </message>
    <message>
        <source>%1 came back in entry %2.</source>
        <translation>%1 est revenu à l'entrée %2.</translation>
    </message>
    <message>
        <source>%1 cannot be accepted. %2 (%3, entry %4)</source>
        <translation>%1 ne peut pas être accepté. %2 (%3, entrée %4)</translation>
    </message>
    <message>
        <source>%1 cannot be dry and leak %2. Say which it is.</source>
        <translation>%1 ne peut pas être sec et fuir de %2. Indiquez ce qu'il en est.</translation>
    </message>
    <message>
        <source>%1 cannot be passed yet. %2</source>
        <translation>%1 ne peut pas encore être franchi. %2</translation>
    </message>
    <message>
        <source>%1 cannot be read (%2). Choose another picture.</source>
        <translation>%1 ne peut pas être lu (%2). Choisissez une autre image.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 ne peut pas être lu : %2</translation>
    </message>
    <message>
        <source>%1 cannot depend on %2, which would be disturbed in another job. %3</source>
        <translation>%1 ne peut pas dépendre de %2, qui serait perturbé dans un autre chantier. %3</translation>
    </message>
    <message>
        <source>%1 cannot depend on itself.</source>
        <translation>%1 ne peut pas dépendre de lui-même.</translation>
    </message>
    <message>
        <source>%1 cannot have moved: %2 (%3), by which it is joined, was never undone.</source>
        <translation>%1 ne peut pas avoir été transféré : %2 (%3), qui le raccorde, n'a jamais été déposé.</translation>
    </message>
    <message>
        <source>%1 carries tag "%2", and "%3" is said to be recovered. Make sure that you are at the right interface.</source>
        <translation>%1 porte l'étiquette « %2 », et c'est « %3 » qui est dite récupérée. Assurez-vous d'être au bon raccordement.</translation>
    </message>
    <message>
        <source>%1 claims %2 × %3 pixels, which cannot be shown. Make the picture smaller, or choose another.</source>
        <translation>%1 annonce %2 × %3 pixels, ce qui ne peut pas être affiché. Réduisez l'image, ou choisissez-en une autre.</translation>
    </message>
    <message>
        <source>%1 closes together with this job and has loose ends: %2. The first: %3</source>
        <translation>%1 se clôt en même temps que ce chantier et a des points ouverts : %2. Le premier : %3</translation>
    </message>
    <message>
        <source>%1 comes after %2, which has to be passed again first. %3</source>
        <translation>%1 vient après %2, qui doit d'abord être franchi à nouveau. %3</translation>
    </message>
    <message>
        <source>%1 confirmed undisturbed</source>
        <translation>%1 confirmés non perturbés</translation>
    </message>
    <message>
        <source>%1 could not be compared: %2</source>
        <translation>%1 n'a pas pu être comparé : %2</translation>
    </message>
    <message>
        <source>%1 could not be kept for you alone. Check the disk, or choose another one.</source>
        <translation>%1 n'a pas pu être gardé pour vous seul. Vérifiez le disque, ou choisissez-en un autre.</translation>
    </message>
    <message>
        <source>%1 could not be made (system %2). Check that the folder is there and that you may write to it.</source>
        <translation>%1 n'a pas pu être créée (système %2). Vérifiez que l'emplacement existe et que vous avez le droit d'y écrire.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Choose another folder.</source>
        <translation>%1 n'a pas pu être écrit : %2. Choisissez un autre emplacement.</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>%1 did not send "%2" to this job.</source>
        <translation>%1 n'a pas transmis « %2 » à ce chantier.</translation>
    </message>
    <message>
        <source>%1 does not begin with an entry that can be read, or is of a ledger that is there already.</source>
        <translation>%1 ne commence pas par une entrée lisible, ou relève d'un registre des entrées déjà présent.</translation>
    </message>
    <message>
        <source>%1 does not belong in this ledger.</source>
        <translation>%1 n'a pas sa place dans ce registre des entrées.</translation>
    </message>
    <message>
        <source>%1 does not belong into a package.</source>
        <translation>%1 n'a pas sa place dans un paquet.</translation>
    </message>
    <message>
        <source>%1 does not hold the secret of a station. Put the copy back that was locked away; without one, move the file aside and have new keys registered.</source>
        <translation>%1 ne contient pas le secret d'un poste. Remettez la copie qui a été mise sous clé ; sans copie, écartez le fichier et faites enregistrer de nouvelles clés.</translation>
    </message>
    <message>
        <source>%1 does not list %2: it was put in.</source>
        <translation>%1 ne mentionne pas %2 : cela a été ajouté.</translation>
    </message>
    <message>
        <source>%1 does not list the attachment %2; it was not unpacked.</source>
        <translation>%1 ne mentionne pas la pièce jointe %2 ; elle n'a pas été décompressée.</translation>
    </message>
    <message>
        <source>%1 does not meet the limit, %2. Find the cause, clean and protect the faces as the maintenance data says, and measure again.</source>
        <translation>%1 ne respecte pas la limite, %2. Cherchez la cause, nettoyez et protégez les surfaces comme le disent les données d'entretien, et mesurez à nouveau.</translation>
    </message>
    <message>
        <source>%1 does not name this job yet.</source>
        <translation>%1 ne nomme pas encore ce chantier.</translation>
    </message>
    <message>
        <source>%1 drops cannot be counted. Give 0 or more.</source>
        <translation>%1 gouttes ne se comptent pas. Donnez 0 ou plus.</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre</source>
        <translation>%1 gouttes par millilitre</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre come from no edge: 10 to 20 are usual, and 60 from the finest tips. Count how many fill a measure, or take the number of the maintenance data.</source>
        <translation>%1 gouttes par millilitre ne tombent d'aucun bord : 10 à 20 sont habituelles, et 60 des pointes les plus fines. Comptez combien remplissent une mesure, ou prenez le nombre des données d'entretien.</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre is the checker's own number; the list has none.</source>
        <translation>%1 gouttes par millilitre : ce nombre vient de la personne qui a fait le contrôle ; la liste n'en a pas.</translation>
    </message>
    <message>
        <source>%1 drops to the millilitre make no volume. Count how many fill a measure, or take the number of the maintenance data.</source>
        <translation>%1 gouttes par millilitre ne font pas un volume. Comptez combien remplissent une mesure, ou prenez le nombre des données d'entretien.</translation>
    </message>
    <message>
        <source>%1 entries</source>
        <translation>%1 entrées</translation>
    </message>
    <message>
        <source>%1 exists already and is never overwritten. Choose another name.</source>
        <translation>%1 existe déjà et n'est jamais écrasé. Choisissez un autre nom.</translation>
    </message>
    <message>
        <source>%1 exists already. Choose another name, or say that it may be replaced.</source>
        <translation>%1 existe déjà. Choisissez un autre nom, ou dites qu'il peut être remplacé.</translation>
    </message>
    <message>
        <source>%1 gets a new key. What they signed before stays valid.</source>
        <translation>%1 reçoit une nouvelle clé. Ce que cette personne a signé avant reste valable.</translation>
    </message>
    <message>
        <source>%1 gets a new key. What was signed with the old one since %2 is in doubt, and is listed for somebody to look at.</source>
        <translation>%1 reçoit une nouvelle clé. Ce qui a été signé avec l'ancienne depuis %2 est en doute, et est listé pour que quelqu'un l'examine.</translation>
    </message>
    <message>
        <source>%1 given over to a linked job</source>
        <translation>%1 transmis à un chantier lié</translation>
    </message>
    <message>
        <source>%1 goes over to another person of this job's crew.</source>
        <translation>%1 est transmis à une autre personne de l'équipe de ce chantier.</translation>
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
        <translation>%1 a participé à %2 et ne peut pas clore un constat à ce sujet.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2 and cannot inspect %3.</source>
        <translation>%1 a participé à %2 et ne peut pas contrôler %3.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2 and cannot inspect it.</source>
        <translation>%1 a participé à %2 et ne peut pas le contrôler.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2, so a second person has to confirm it free.</source>
        <translation>%1 a participé à %2 ; une deuxième personne doit donc le confirmer libre.</translation>
    </message>
    <message>
        <source>%1 had a hand in %2; the tags are exchanged by somebody who had none in either.</source>
        <translation>%1 a participé à %2 ; les étiquettes sont échangées par une personne qui n'a participé à aucun des deux.</translation>
    </message>
    <message>
        <source>%1 had a hand in joining %2 (%3), so somebody else verifies the twins.</source>
        <translation>%1 a participé au raccordement de %2 (%3) ; c'est donc une autre personne qui fait le contrôle croisé.</translation>
    </message>
    <message>
        <source>%1 had no hand in %2: inspect it in the ordinary way.</source>
        <translation>%1 n'a pas participé à %2 : contrôlez-le de la manière ordinaire.</translation>
    </message>
    <message>
        <source>%1 handed over to %2, who has not accepted yet. %1 still answers for the job.</source>
        <translation>%1 a passé la main à %2, qui n'a pas encore accepté. %1 répond toujours du chantier.</translation>
    </message>
    <message>
        <source>%1 has %2 marked fasteners of another person to take over; the entry says %3.</source>
        <translation>%1 a %2 fixations marquées d'une autre personne à reprendre ; l'entrée en indique %3.</translation>
    </message>
    <message>
        <source>%1 has %2 × %3. Count how many came off, and write 0 where there was none.</source>
        <translation>%1 comporte %2 × %3. Comptez combien ont été déposés, et écrivez 0 s'il n'y en avait pas.</translation>
    </message>
    <message>
        <source>%1 has fasteners 1 to %2, not %3.</source>
        <translation>%1 a les fixations 1 à %2, non %3.</translation>
    </message>
    <message>
        <source>%1 has look-alikes (%2), which are verified as a pair. They stay in one job.</source>
        <translation>%1 a des raccordements semblables (%2), qui font l'objet d'un contrôle croisé par paire. Ils restent dans un même chantier.</translation>
    </message>
    <message>
        <source>%1 has look-alikes (%2). Both halves of each are read and verified as a pair first, by somebody who joined none of them.</source>
        <translation>%1 a des raccordements semblables (%2). Les deux moitiés de chacun sont d'abord lues et vérifiées par paire, par une personne qui n'en a raccordé aucun.</translation>
    </message>
    <message>
        <source>%1 has more than %2 MiB. Make the picture smaller, or choose another.</source>
        <translation>%1 dépasse %2 Mio. Réduisez l'image, ou choisissez-en une autre.</translation>
    </message>
    <message>
        <source>%1 has no "%2".</source>
        <translation>%1 n'a pas de « %2 ».</translation>
    </message>
    <message>
        <source>%1 has no entry in this job that stands.</source>
        <translation>%1 n'a dans ce chantier aucune entrée en vigueur.</translation>
    </message>
    <message>
        <source>%1 has no field "%2"; it has %3.</source>
        <translation>%1 n'a pas de champ « %2 » ; il a %3.</translation>
    </message>
    <message>
        <source>%1 has no line %2, and the other file of that ledger has.</source>
        <translation>%1 n'a pas de ligne %2, et l'autre fichier de ce registre des entrées en a une.</translation>
    </message>
    <message>
        <source>%1 has no such photo. Attach it first, then mark it.</source>
        <translation>%1 n'a pas cette photo. Joignez-la d'abord, puis marquez-la.</translation>
    </message>
    <message>
        <source>%1 has passes 1 to %2, not %3.</source>
        <translation>%1 a les passes 1 à %2, non %3.</translation>
    </message>
    <message>
        <source>%1 holds %2, compared with the original.</source>
        <translation>%1 contient %2, comparées avec l'original.</translation>
    </message>
    <message>
        <source>%1 holds no authorisation to %2.</source>
        <translation>%1 n'a pas d'habilitation à %2.</translation>
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
        <source>%1 in %2, %3 of them critical</source>
        <translation>%1 dans %2, dont %3 critiques</translation>
    </message>
    <message>
        <source>%1 inspections</source>
        <translation>%1 contrôles</translation>
    </message>
    <message>
        <source>%1 interfaces</source>
        <translation>%1 raccordements</translation>
    </message>
    <message>
        <source>%1 interfaces not finished</source>
        <translation>%1 raccordements non terminés</translation>
    </message>
    <message>
        <source>%1 interfaces undone and not inspected</source>
        <translation>%1 raccordements déposés et non contrôlés</translation>
    </message>
    <message>
        <source>%1 is %2's, who alone hands it over.</source>
        <translation>%1 appartient à %2, seule personne qui puisse le transmettre.</translation>
    </message>
    <message>
        <source>%1 is %2's, who may be behind it. It is taken off, or handed over, as any other is; on paper alone it does not come off.</source>
        <translation>%1 appartient à %2, qui se trouve peut-être derrière. Il s'enlève, ou se transmet, comme tout autre ; sur le seul papier, il ne s'enlève pas.</translation>
    </message>
    <message>
        <source>%1 is %2's. Nobody else takes it off before it was handed over; where %2 has left, the lead does, having made sure that nobody is behind it, and says why.</source>
        <translation>%1 appartient à %2. Personne d'autre ne l'enlève tant qu'il n'a pas été transmis ; si %2 est parti, le responsable du chantier le fait, après s'être assuré que personne ne se trouve derrière, et en dit la raison.</translation>
    </message>
    <message>
        <source>%1 is %2, and %3 measures %4. Choose a unit of the same kind.</source>
        <translation>%1 est %2, et %3 mesure %4. Choisissez une unité de même nature.</translation>
    </message>
    <message>
        <source>%1 is %2.</source>
        <translation>%1 est %2.</translation>
    </message>
    <message>
        <source>%1 is %2; there is nothing to accept yet.</source>
        <translation>%1 est %2 ; il n'y a encore rien à accepter.</translation>
    </message>
    <message>
        <source>%1 is a measuring tool of the register (%2). Issue it as one.</source>
        <translation>%1 est un outil de mesure du répertoire (%2). Sortez-le comme tel.</translation>
    </message>
    <message>
        <source>%1 is about the whole job; leave the subject out.</source>
        <translation>%1 concerne tout le chantier ; laissez l'objet vide.</translation>
    </message>
    <message>
        <source>%1 is above the most, %2. Give the least first, and then the most.</source>
        <translation>%1 dépasse le maximum, %2. Donnez d'abord le minimum, puis le maximum.</translation>
    </message>
    <message>
        <source>%1 is accepted.</source>
        <translation>%1 est accepté.</translation>
    </message>
    <message>
        <source>%1 is below 0. Give the band of the maintenance data.</source>
        <translation>%1 est inférieur à 0. Donnez la plage des données d'entretien.</translation>
    </message>
    <message>
        <source>%1 is below 0. Give what is marked on the wrench.</source>
        <translation>%1 est inférieur à 0. Donnez ce qui est marqué sur la clé.</translation>
    </message>
    <message>
        <source>%1 is below 0. Give what the wrench showed.</source>
        <translation>%1 est inférieur à 0. Donnez ce que la clé a indiqué.</translation>
    </message>
    <message>
        <source>%1 is checked by class (%2 at worst), and "%3" classes by size. Give how far it is wet across, 0 where it is dry, and whether it drips or pools.</source>
        <translation>%1 est contrôlé par classe (au pire %2), et « %3 » classe d'après l'étendue. Indiquez la largeur de la trace humide, 0 si c'est sec, et si cela goutte ou forme une flaque.</translation>
    </message>
    <message>
        <source>%1 is checked by class (%2 at worst). Say which was seen; dry, where nothing shows.</source>
        <translation>%1 est contrôlé par classe (au pire %2). Indiquez celle qui a été vue ; sec, si rien ne se voit.</translation>
    </message>
    <message>
        <source>%1 is checked by rate (%2 at most). Say what was measured, or count drops.</source>
        <translation>%1 est contrôlé par débit (au plus %2). Indiquez ce qui a été mesuré, ou comptez les gouttes.</translation>
    </message>
    <message>
        <source>%1 is checked for leaks after it was torqued. %2</source>
        <translation>Le contrôle d'étanchéité de %1 se fait après le serrage au couple. %2</translation>
    </message>
    <message>
        <source>%1 is confirmed free.</source>
        <translation>%1 est confirmé libre.</translation>
    </message>
    <message>
        <source>%1 is critical and said to be not applicable; a second person has to agree.</source>
        <translation>%1 est critique et dit non applicable ; une deuxième personne doit donner son accord.</translation>
    </message>
    <message>
        <source>%1 is critical or inspected twice.</source>
        <translation>%1 est critique ou contrôlé deux fois.</translation>
    </message>
    <message>
        <source>%1 is critical, and %2 had a hand in %3 of the same group.</source>
        <translation>%1 est critique, et %2 a participé à %3 du même groupe.</translation>
    </message>
    <message>
        <source>%1 is damaged and cannot be decoded. Copy it from the camera again, or choose another.</source>
        <translation>%1 est endommagé et ne peut pas être décodé. Recopiez-le depuis l'appareil photo, ou choisissez-en un autre.</translation>
    </message>
    <message>
        <source>%1 is damaged and cannot be opened. It was left as it is. Keep it, and go on with the last backup.</source>
        <translation>%1 est endommagée et ne peut pas être ouverte. Elle a été laissée telle quelle. Gardez-la, et continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>%1 is disconnected already (%2, %3).</source>
        <translation>%1 est déjà débranché (%2, %3).</translation>
    </message>
    <message>
        <source>%1 is disconnected.</source>
        <translation>%1 est débranché.</translation>
    </message>
    <message>
        <source>%1 is disconnected. Reconnect it first.</source>
        <translation>%1 est débranché. Rebranchez-le d'abord.</translation>
    </message>
    <message>
        <source>%1 is empty. If it is still being copied, wait and try again.</source>
        <translation>%1 est vide. Si la copie est en cours, attendez et réessayez.</translation>
    </message>
    <message>
        <source>%1 is enough drag: at least %2 is needed.</source>
        <translation>%1 suffit comme couple d'autofreinage : il faut au moins %2.</translation>
    </message>
    <message>
        <source>%1 is given as %2. Give a weight above 0.</source>
        <translation>%1 est donné à %2. Donnez une masse supérieure à 0.</translation>
    </message>
    <message>
        <source>%1 is held by another program. Wait for it to finish, or close it, and open the store again.</source>
        <translation>%1 est occupée par un autre programme. Attendez qu'il finisse, ou fermez-le, et ouvrez de nouveau la base.</translation>
    </message>
    <message>
        <source>%1 is held in place: %2. What holds it comes out, or is said to be out, before anybody confirms it free.</source>
        <translation>%1 est retenu : %2. Ce qui le retient est enlevé, ou déclaré enlevé, avant que quiconque ne le confirme libre.</translation>
    </message>
    <message>
        <source>%1 is in use, or was not closed well. Choose another name for the backup.</source>
        <translation>%1 est utilisé, ou n'a pas été fermé correctement. Choisissez un autre nom pour la sauvegarde.</translation>
    </message>
    <message>
        <source>%1 is inspected; nothing more is asked of it.</source>
        <translation>%1 est contrôlé ; plus rien ne lui est demandé.</translation>
    </message>
    <message>
        <source>%1 is inspected; there is nothing to stop in. If it was worked on again, mark it disturbed.</source>
        <translation>%1 est contrôlé ; il n'y a rien à interrompre. S'il a été retravaillé, marquez-le comme perturbé.</translation>
    </message>
    <message>
        <source>%1 is joined already.</source>
        <translation>%1 est déjà raccordé.</translation>
    </message>
    <message>
        <source>%1 is joined, not secured. </source>
        <translation>%1 est raccordé, non sécurisé. </translation>
    </message>
    <message>
        <source>%1 is joined. What is given over is off, or was never touched.</source>
        <translation>%1 est raccordé. Ce qui est transmis est déposé, ou n'a jamais été touché.</translation>
    </message>
    <message>
        <source>%1 is later than %2: the first day comes first, or nothing could be found.</source>
        <translation>%1 est postérieur à %2 : le premier jour vient en premier, sinon rien ne pourrait être trouvé.</translation>
    </message>
    <message>
        <source>%1 is linked with %2, which this job does not name. Link it, so that all parts close together.</source>
        <translation>%1 est lié à %2, que ce chantier ne nomme pas. Liez-le, pour que toutes les parties soient closes ensemble.</translation>
    </message>
    <message>
        <source>%1 is missing since entry %2, finding %3.</source>
        <translation>%1 manque depuis l'entrée %2, constat %3.</translation>
    </message>
    <message>
        <source>%1 is missing.</source>
        <translation>%1 manque.</translation>
    </message>
    <message>
        <source>%1 is more than the limit of %2. Find the cause; the maintenance data says what to do.</source>
        <translation>%1 dépasse la limite de %2. Cherchez la cause ; les données d'entretien disent que faire.</translation>
    </message>
    <message>
        <source>%1 is neither a moment nor the arm of a centre of gravity. Give one of them from the aircraft's weight record.</source>
        <translation>%1 n'est ni un moment ni le bras de levier d'un centre de gravité. Donnez l'un des deux d'après la fiche de masse de l'aéronef.</translation>
    </message>
    <message>
        <source>%1 is neither of this job's crew nor one of its inspectors.</source>
        <translation>%1 n'est ni de l'équipe de ce chantier ni de ses contrôleurs.</translation>
    </message>
    <message>
        <source>%1 is neither off nor waiting for its torque. If it was loosened, mark it disturbed.</source>
        <translation>%1 n'est ni déposé ni en attente de son couple de serrage. S'il a été desserré, marquez-le comme perturbé.</translation>
    </message>
    <message>
        <source>%1 is no drop across a bond. Look whether the leads are the right way round, and measure again.</source>
        <translation>%1 n'est pas une chute de tension sur une métallisation. Vérifiez que les cordons sont dans le bon sens, et mesurez à nouveau.</translation>
    </message>
    <message>
        <source>%1 is no limit for a resistance. Give one above 0.</source>
        <translation>%1 n'est pas une limite pour une résistance. Indiquez-en une supérieure à 0.</translation>
    </message>
    <message>
        <source>%1 is no number of drops in a time. Give 0 or more drops/min.</source>
        <translation>%1 n'est pas un nombre de gouttes dans un temps. Donnez 0 drops/min ou plus.</translation>
    </message>
    <message>
        <source>%1 is no picture that can be read here. Take JPEG or PNG; a phone can be told to save JPEG.</source>
        <translation>%1 n'est pas une image lisible ici. Prenez du JPEG ou du PNG ; un téléphone peut être réglé pour enregistrer en JPEG.</translation>
    </message>
    <message>
        <source>%1 is no quantity to fill in. Give a volume of 0 or more, with its unit.</source>
        <translation>%1 n'est pas une quantité à remplir. Donnez un volume de 0 ou plus, avec son unité.</translation>
    </message>
    <message>
        <source>%1 is no rate of a leak. Give 0 or more, in drops/min, mL/min or L/min.</source>
        <translation>%1 n'est pas un débit de fuite. Donnez 0 ou plus, en drops/min, mL/min ou L/min.</translation>
    </message>
    <message>
        <source>%1 is no reading of a bond. Check the meter's zero and the contact of its leads, and measure again.</source>
        <translation>%1 n'est pas un relevé de métallisation. Vérifiez le zéro de l'appareil et le contact de ses cordons, et mesurez à nouveau.</translation>
    </message>
    <message>
        <source>%1 is no step. Give what lies between two marks of the scale.</source>
        <translation>%1 n'est pas un pas. Donnez ce qui sépare deux repères de l'échelle.</translation>
    </message>
    <message>
        <source>%1 is no torque to tighten to. Give the band of the maintenance data.</source>
        <translation>%1 n'est pas un couple de serrage. Donnez la plage des données d'entretien.</translation>
    </message>
    <message>
        <source>%1 is no torque to tighten to. Give the final torque of the maintenance data.</source>
        <translation>%1 n'est pas un couple de serrage. Donnez le couple final des données d'entretien.</translation>
    </message>
    <message>
        <source>%1 is not a store of this program. It was left as it is. Choose another file.</source>
        <translation>%1 n'est pas une base de ce programme. Elle a été laissée telle quelle. Choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>%1 is not authorised to inspect %2 (%3), and the tags of both are exchanged.</source>
        <translation>%1 n'est pas habilité à contrôler %2 (%3), et ce sont les étiquettes des deux qui sont échangées.</translation>
    </message>
    <message>
        <source>%1 is not in this job any more. %2</source>
        <translation>%1 n'est plus dans ce chantier. %2</translation>
    </message>
    <message>
        <source>%1 is not joined; there is nothing to reject.</source>
        <translation>%1 n'est pas raccordé ; il n'y a rien à refuser.</translation>
    </message>
    <message>
        <source>%1 is not linked with this job, both ways. An item goes to a job that names this one.</source>
        <translation>%1 n'est pas lié à ce chantier dans les deux sens. Un élément passe à un chantier qui nomme celui-ci.</translation>
    </message>
    <message>
        <source>%1 is not logged as disconnected, so there is nothing to look at yet.</source>
        <translation>%1 n'est pas enregistré comme débranché ; il n'y a donc encore rien à regarder.</translation>
    </message>
    <message>
        <source>%1 is not of this job's crew.</source>
        <translation>%1 n'est pas de l'équipe de ce chantier.</translation>
    </message>
    <message>
        <source>%1 is not off, so it cannot be "%2".</source>
        <translation>%1 n'est pas déposé et ne peut donc pas être « %2 ».</translation>
    </message>
    <message>
        <source>%1 is not open with a tag on it.</source>
        <translation>%1 n'est pas ouvert avec une étiquette posée.</translation>
    </message>
    <message>
        <source>%1 is not open, so no blank is on it that could be missing.</source>
        <translation>%1 n'est pas ouvert ; il ne porte donc aucun obturateur qui puisse manquer.</translation>
    </message>
    <message>
        <source>%1 is not part of this program: install it again.</source>
        <translation>%1 ne fait pas partie de ce programme : réinstallez-le.</translation>
    </message>
    <message>
        <source>%1 is not ready for inspection. %2</source>
        <translation>%1 n'est pas prêt pour le contrôle. %2</translation>
    </message>
    <message>
        <source>%1 is not what %2 says: one of the two was changed.</source>
        <translation>%1 n'est pas ce que dit %2 : l'un des deux a été modifié.</translation>
    </message>
    <message>
        <source>%1 is not what these entries give: it was changed.</source>
        <translation>%1 n'est pas ce que donnent ces entrées : il a été modifié.</translation>
    </message>
    <message>
        <source>%1 is of this job's crew and may inspect %2. A re-inspection is for when nobody else is there.</source>
        <translation>%1 est de l'équipe de ce chantier et peut contrôler %2. Un nouveau contrôle par la même personne est prévu pour le cas où personne d'autre n'est là.</translation>
    </message>
    <message>
        <source>%1 is on the list and was never disconnected. Disconnect it; or confirm it undisturbed; or say why it is not applicable.</source>
        <translation>%1 est dans la liste et n'a jamais été débranché. Débranchez-le ; ou confirmez-le non perturbé ; ou dites pourquoi il est non applicable.</translation>
    </message>
    <message>
        <source>%1 is one tool. What has several pieces is a kit.</source>
        <translation>%1 est un seul outil. Ce qui a plusieurs pièces est une mallette.</translation>
    </message>
    <message>
        <source>%1 is passed by somebody who had no hand in it, and %2 had one in %3.</source>
        <translation>%1 est franchi par une personne qui n'y a pas participé, et %2 a participé à %3.</translation>
    </message>
    <message>
        <source>%1 is past. Give the last day on which it has to be done.</source>
        <translation>Le %1 est passé. Indiquez le dernier jour où cela doit être fait.</translation>
    </message>
    <message>
        <source>%1 is planned with %2, and the weight record of entry %3 gives it %4. Plan the lift with what it weighs, or strike the record if that is wrong.</source>
        <translation>%1 est prévu avec %2, et le relevé de masse de l'entrée %3 lui donne %4. Préparez le levage avec sa masse réelle, ou rayez le relevé s'il est faux.</translation>
    </message>
    <message>
        <source>%1 is recorded with %2, and the lift of entry %3 was planned with %4 only. Strike that plan and plan the lift with what it weighs, or correct the weight.</source>
        <translation>%1 est enregistré avec %2, et le levage de l'entrée %3 n'a été prévu qu'avec %4. Rayez cette préparation et préparez le levage avec la masse réelle, ou corrigez la masse.</translation>
    </message>
    <message>
        <source>%1 is safetied after it was torqued. %2</source>
        <translation>%1 est freiné après le serrage au couple. %2</translation>
    </message>
    <message>
        <source>%1 is said to be as it should be in this job, so there is nothing to give over.</source>
        <translation>%1 est dit conforme dans ce chantier ; il n'y a donc rien à transmettre.</translation>
    </message>
    <message>
        <source>%1 is said to be not applicable, and was said to be undone before that was struck; an inspector who had no hand in it has to agree.</source>
        <translation>%1 est dit non applicable, et avait été dit déposé avant que cela ne soit rayé ; un contrôleur qui n'y a pas participé doit donner son accord.</translation>
    </message>
    <message>
        <source>%1 is the store itself. Choose another name for the backup.</source>
        <translation>%1 est la base elle-même. Choisissez un autre nom pour la sauvegarde.</translation>
    </message>
    <message>
        <source>%1 is tightened in %2 passes; say which this was.</source>
        <translation>%1 se serre en %2 passes ; indiquez laquelle c'était.</translation>
    </message>
    <message>
        <source>%1 is too little: %2 is asked for. Check unit and tool, and torque it again.</source>
        <translation>%1 est insuffisant : il faut %2. Vérifiez l'unité et l'outil, et serrez à nouveau.</translation>
    </message>
    <message>
        <source>%1 is too much: %2 is asked for. The fastener may be overstressed: follow the maintenance data, and raise a finding.</source>
        <translation>%1 est excessif : il faut %2. La fixation a pu être sollicitée à l'excès : suivez les données d'entretien, et ouvrez un constat.</translation>
    </message>
    <message>
        <source>%1 is within the limit of %2.</source>
        <translation>%1 est dans la limite de %2.</translation>
    </message>
    <message>
        <source>%1 joined %2 for the time being (%3). Say how that was undone or made final, then reconnect it.</source>
        <translation>%1 a raccordé %2 provisoirement (%3). Indiquez comment cela a été défait ou rendu définitif, puis rebranchez-le.</translation>
    </message>
    <message>
        <source>%1 joins %2 to %3; read were "%4" and "%5". Do not join them.</source>
        <translation>%1 relie %2 à %3 ; « %4 » et « %5 » ont été lus. Ne les raccordez pas.</translation>
    </message>
    <message>
        <source>%1 leads. These items would be handed over now:</source>
        <translation>%1 est responsable. Ces éléments seraient transmis maintenant :</translation>
    </message>
    <message>
        <source>%1 leak classes have %2 sizes between them, not %3: give each class but the last its greatest size, or none at all.</source>
        <translation>%1 classes de fuite ont %2 tailles entre elles, non %3 : donnez à chaque classe sauf la dernière sa plus grande taille, ou n'en donnez aucune.</translation>
    </message>
    <message>
        <source>%1 leaks %2, so the liquid is not still. Say that it drips or pools.</source>
        <translation>%1 fuit de %2 ; le liquide n'est donc pas immobile. Indiquez qu'il goutte ou forme une flaque.</translation>
    </message>
    <message>
        <source>%1 leaks: %2, where %3 is allowed at worst. %4</source>
        <translation>%1 fuit : %2, alors que %3 est admis au pire. %4</translation>
    </message>
    <message>
        <source>%1 legs a point</source>
        <translation>%1 brins par point</translation>
    </message>
    <message>
        <source>%1 legs a point, %2 carrying</source>
        <translation>%1 brins par point, dont %2 portent</translation>
    </message>
    <message>
        <source>%1 lies in the band of %2, but the tool may be off by %3, which reaches beyond its edge, and readings are accepted with a guard band here. Torque nearer to the middle, or take a better tool.</source>
        <translation>%1 est dans la plage de %2, mais l'outil peut s'écarter de %3, ce qui en dépasse le bord, et les lectures sont acceptées ici avec une bande de garde. Serrez plus près du milieu, ou prenez un meilleur outil.</translation>
    </message>
    <message>
        <source>%1 lies outside %2 to %3, which is the range of a tool that is verified from 20 % on. Give the lowest mark of this one, or take another tool.</source>
        <translation>%1 est hors de %2 à %3, la plage d'un outil vérifié à partir de 20 %. Donnez le plus petit repère de celui-ci, ou prenez un autre outil.</translation>
    </message>
    <message>
        <source>%1 lies outside the range of the tool, %2 to %3. Take another tool.</source>
        <translation>%1 est hors de la plage de l'outil, %2 à %3. Prenez un autre outil.</translation>
    </message>
    <message>
        <source>%1 lies outside the usable range of tool %2 (%3).</source>
        <translation>%1 se situe hors de la plage d'utilisation de l'outil %2 (%3).</translation>
    </message>
    <message>
        <source>%1 lies within %2.</source>
        <translation>%1 est dans %2.</translation>
    </message>
    <message>
        <source>%1 lists %2, which is missing or cannot be read.</source>
        <translation>%1 mentionne %2, qui manque ou ne peut pas être lu.</translation>
    </message>
    <message>
        <source>%1 lists an interface "%2" of its own (%3), so this one cannot be taken on there.</source>
        <translation>%1 a dans sa liste son propre raccordement « %2 » (%3) ; celui-ci ne peut donc pas y être pris en charge.</translation>
    </message>
    <message>
        <source>%1 looked at this. What %1 saw nobody else signs for: close this sheet, lock (Ctrl+L), and look for yourself.</source>
        <translation>%1 a regardé ceci. Ce que %1 a vu, personne d'autre ne le signe : fermez cette feuille, verrouillez (Ctrl+L), et regardez vous-même.</translation>
    </message>
    <message>
        <source>%1 loose ends</source>
        <translation>%1 points ouverts</translation>
    </message>
    <message>
        <source>%1 made the list ask less of %2; another inspector accepts it.</source>
        <translation>%1 a réduit ce que la liste demande à %2 ; c'est un autre contrôleur qui l'accepte.</translation>
    </message>
    <message>
        <source>%1 meets the limit, %2.</source>
        <translation>%1 respecte la limite, %2.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 min after wiping dry</source>
        <translation>%1 min après essuyage à sec</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutes</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 autres</translation>
    </message>
    <message>
        <source>%1 moves to the incoming unit, which has not been received yet.</source>
        <translation>%1 passe sur l'ensemble entrant, qui n'a pas encore été réceptionné.</translation>
    </message>
    <message>
        <source>%1 must be off before %2, and it is still on.</source>
        <translation>%1 doit être déposé avant %2, et il est encore en place.</translation>
    </message>
    <message>
        <source>%1 must name what it is about.</source>
        <translation>%1 doit nommer ce qui est concerné.</translation>
    </message>
    <message>
        <source>%1 names this job as well. What both leads signed stays: the two close together.</source>
        <translation>%1 nomme aussi ce chantier. Ce que les deux responsables ont signé reste : les deux sont clos ensemble.</translation>
    </message>
    <message>
        <source>%1 needs a new seal %2; give its part number and batch.</source>
        <translation>%1 demande un joint neuf %2 ; indiquez sa référence et son lot.</translation>
    </message>
    <message>
        <source>%1 not applicable</source>
        <translation>%1 non applicables</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 of %2 entries</source>
        <translation>%1 entrées sur %2</translation>
    </message>
    <message>
        <source>%1 of %2 entries; the first %3 are shown, the export has all.</source>
        <translation>%1 entrées sur %2 ; les %3 premières sont affichées, l'exportation les a toutes.</translation>
    </message>
    <message>
        <source>%1 of %2 interfaces</source>
        <translation>%1 sur %2 raccordements</translation>
    </message>
    <message>
        <source>%1 of %2 interfaces, drawn by the seed %3; entries: %4</source>
        <translation>%1 raccordements sur %2, tirés par la graine %3 ; entrées : %4</translation>
    </message>
    <message>
        <source>%1 of zone %2</source>
        <translation>%1 de la zone %2</translation>
    </message>
    <message>
        <source>%1 on %2, replaced by %3: %4 (%5)</source>
        <translation>%1 sur %2, remplacée par %3 : %4 (%5)</translation>
    </message>
    <message>
        <source>%1 on %2: %3</source>
        <translation>%1 sur %2 : %3</translation>
    </message>
    <message>
        <source>%1 on the wrench, %2 at the fastener</source>
        <translation>%1 à la clé, %2 à la fixation</translation>
    </message>
    <message>
        <source>%1 openings blanked; tagged unserviceable with %2</source>
        <translation>%1 ouvertures obturées ; étiqueté hors service avec %2</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 ou %2</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>dépassement %1</translation>
    </message>
    <message>
        <source>%1 read %2, which is outside its limits: this test has failed. Find the cause, and say what is worked on again.</source>
        <translation>%1 a donné %2, ce qui est hors de ses limites : cet essai a échoué. Trouvez la cause, et indiquez ce qui est retravaillé.</translation>
    </message>
    <message>
        <source>%1 reconnected and inspected</source>
        <translation>%1 rebranchés et contrôlés</translation>
    </message>
    <message>
        <source>%1 renewed of %2</source>
        <translation>%1 remplacés sur %2</translation>
    </message>
    <message>
        <source>%1 reused</source>
        <translation>%1 réutilisés</translation>
    </message>
    <message>
        <source>%1 said that %2 is not applicable; a second person agrees to it.</source>
        <translation>%1 a déclaré %2 non applicable ; une deuxième personne donne son accord.</translation>
    </message>
    <message>
        <source>%1 said this of %2 in entry %3, and it stands.</source>
        <translation>%1 l'a dit de %2 à l'entrée %3, et cela reste valable.</translation>
    </message>
    <message>
        <source>%1 scrapped</source>
        <translation>%1 mis au rebut</translation>
    </message>
    <message>
        <source>%1 seconds</source>
        <translation>%1 secondes</translation>
    </message>
    <message>
        <source>%1 shipping blanks removed</source>
        <translation>%1 obturateurs de transport retirés</translation>
    </message>
    <message>
        <source>%1 signed in this job within 24 hours (entry %2) and may inspect %3. A re-inspection is for when nobody else is there.</source>
        <translation>%1 a signé dans ce chantier au cours des 24 dernières heures (entrée %2) et peut contrôler %3. Un nouveau contrôle par la même personne est prévu pour le cas où personne d'autre n'est là.</translation>
    </message>
    <message>
        <source>%1 signs</source>
        <translation>%1 signe</translation>
    </message>
    <message>
        <source>%1 signs with the PIN alone</source>
        <translation>%1 signe avec le PIN seul</translation>
    </message>
    <message>
        <source>%1 stopped in the middle of %2 (entry %3): %4 So it was touched.</source>
        <translation>%1 s'est arrêté au milieu de %2 (entrée %3) : %4 Il a donc été touché.</translation>
    </message>
    <message>
        <source>%1 stopped on %2 (entry %3): %4</source>
        <translation>%1 s'est arrêté sur %2 (entrée %3) : %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>two halves</comment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 à %2, %3</translation>
    </message>
    <message>
        <source>%1 to %2, %3, entry %4</source>
        <translation>%1 à %2, %3, entrée %4</translation>
    </message>
    <message>
        <source>%1 to %2, fasteners: %3</source>
        <translation>%1 à %2, fixations : %3</translation>
    </message>
    <message>
        <source>%1 to account for</source>
        <translation>%1 à justifier</translation>
    </message>
    <message>
        <source>%1 to the millilitre</source>
        <translation>%1 par millilitre</translation>
    </message>
    <message>
        <source>%1 too few.</source>
        <translation>Il en manque %1.</translation>
    </message>
    <message>
        <source>%1 too few: find what is left before you go on, it may lie in the bay.</source>
        <translation>Il en manque %1 : trouvez ce qui reste avant de continuer, cela peut se trouver dans le compartiment.</translation>
    </message>
    <message>
        <source>%1 too many.</source>
        <translation>Il y en a %1 de trop.</translation>
    </message>
    <message>
        <source>%1 too many: find out where they belong.</source>
        <translation>Il y en a %1 de trop : trouvez d'où ils proviennent.</translation>
    </message>
    <message>
        <source>%1 took %2 up already.</source>
        <translation>%1 a déjà repris %2.</translation>
    </message>
    <message>
        <source>%1 torqued %2 of %3 fasteners of %4. Start again from fastener %5, or take over the marked fasteners by signature.</source>
        <translation>%1 a serré au couple %2 des %3 fixations de %4. Recommencez à partir de la fixation %5, ou reprenez par signature les fixations marquées.</translation>
    </message>
    <message>
        <source>%1 unpacks to far more than such a file holds; it was not unpacked.</source>
        <translation>%1, décompressé, dépasse de loin ce que contient un tel fichier ; il n'a pas été décompressé.</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1 jusqu'au %2</translation>
    </message>
    <message>
        <source>%1 waits for %2 or depends on it.</source>
        <translation>%1 attend %2 ou en dépend.</translation>
    </message>
    <message>
        <source>%1 waits for its inspection.</source>
        <translation>%1 attend son contrôle.</translation>
    </message>
    <message>
        <source>%1 waits for its second inspection, by another person.</source>
        <translation>%1 attend son deuxième contrôle, par une autre personne.</translation>
    </message>
    <message>
        <source>%1 waits here already, under this name or another.</source>
        <translation>%1 attend déjà ici, sous ce nom ou un autre.</translation>
    </message>
    <message>
        <source>%1 was accepted by %2. If it is worked on again, mark it disturbed first; then it is inspected again.</source>
        <translation>%1 a été accepté par %2. S'il est retravaillé, marquez-le d'abord comme perturbé ; il est ensuite contrôlé à nouveau.</translation>
    </message>
    <message>
        <source>%1 was closed on %2, and this job was complete then: it takes nothing but its own closure. What is found now goes into a follow-on job.</source>
        <translation>%1 a été clos le %2, et ce chantier était alors complet : il n'accepte plus que sa propre clôture. Ce qui est trouvé maintenant va dans un chantier de suite.</translation>
    </message>
    <message>
        <source>%1 was closed on %2. What goes on from a closed job is a follow-on job.</source>
        <translation>%1 a été clos le %2. Ce qui suit un chantier clos est un chantier de suite.</translation>
    </message>
    <message>
        <source>%1 was closed without naming this job. Strike the link.</source>
        <translation>%1 a été clos sans nommer ce chantier. Rayez le lien.</translation>
    </message>
    <message>
        <source>%1 was found still attached by %2: %3 Whoever frees it says so first.</source>
        <translation>%1 a été trouvé encore attaché par %2 : %3 La personne qui le libère le dit d'abord.</translation>
    </message>
    <message>
        <source>%1 was found still attached: %2</source>
        <translation>%1 a été trouvé encore attaché : %2</translation>
    </message>
    <message>
        <source>%1 was found still attached: %2 Free it before it goes.</source>
        <translation>%1 a été trouvé encore attaché : %2 Libérez-le avant de le transmettre.</translation>
    </message>
    <message>
        <source>%1 was inspected by %2, who had a hand in it or its like in %3. It is inspected again, by somebody else.</source>
        <translation>%1 a été contrôlé par %2, qui y a participé, ou à son semblable dans %3. Il est contrôlé à nouveau, par une autre personne.</translation>
    </message>
    <message>
        <source>%1 was issued in entry %2 and has not come back. Two tools of one marking cannot be counted.</source>
        <translation>%1 a été sorti à l'entrée %2 et n'est pas revenu. Deux outils de même marquage ne peuvent pas être comptés.</translation>
    </message>
    <message>
        <source>%1 was issued: it was counted, came back or is missing since. It is not struck; return it, or say that it is missing.</source>
        <translation>%1 a été sorti : il a depuis été compté, est revenu ou manque. Cela ne se raye pas ; rendez-le, ou indiquez qu'il manque.</translation>
    </message>
    <message>
        <source>%1 was joined with what the list asked for then: %2. Undo it first; then correct the list.</source>
        <translation>%1 a été raccordé avec ce que la liste demandait alors : %2. Déposez-le d'abord ; puis corrigez la liste.</translation>
    </message>
    <message>
        <source>%1 was last worked on at %2 (entry %3); this job asks for a pause of %4 minutes before the same eyes look again.</source>
        <translation>La dernière intervention sur %1 date du %2 (entrée %3) ; ce chantier demande une pause de %4 minutes avant que les mêmes yeux regardent à nouveau.</translation>
    </message>
    <message>
        <source>%1 was linked in entry %2.</source>
        <translation>%1 a été lié à l'entrée %2.</translation>
    </message>
    <message>
        <source>%1 was listed with its details. If they are wrong, correct its row of the list.</source>
        <translation>%1 a été inscrit avec ses détails. S'ils sont faux, corrigez sa ligne dans la liste.</translation>
    </message>
    <message>
        <source>%1 was listed with the serial number %2; the plate is said to read %3. Read it again: it may be another one.</source>
        <translation>%1 figure dans la liste avec le numéro de série %2 ; la plaque porterait %3. Relisez-la : il s'agit peut-être d'un autre.</translation>
    </message>
    <message>
        <source>%1 was logged as undone. An inspector who had no hand in it looks what it is, and strikes it.</source>
        <translation>%1 a été enregistré comme déposé. Un contrôleur qui n'y a pas participé regarde ce qu'il en est, et le raye.</translation>
    </message>
    <message>
        <source>%1 was never disconnected in this job.</source>
        <translation>%1 n'a jamais été débranché dans ce chantier.</translation>
    </message>
    <message>
        <source>%1 was never undone in this job. If it was found so, raise a finding.</source>
        <translation>%1 n'a jamais été déposé dans ce chantier. S'il a été trouvé ainsi, ouvrez un constat.</translation>
    </message>
    <message>
        <source>%1 was on no list, and nobody has said yet what restoring it has to show. Give its details before it goes.</source>
        <translation>%1 ne figurait sur aucune liste, et personne n'a encore dit ce que sa remise en état doit démontrer. Donnez ses détails avant de le transmettre.</translation>
    </message>
    <message>
        <source>%1 was on no list, and nobody has said yet what restoring it has to show. Give its details first.</source>
        <translation>%1 ne figurait sur aucune liste, et personne n'a encore dit ce que sa remise en état doit démontrer. Donnez d'abord ses détails.</translation>
    </message>
    <message>
        <source>%1 was passed by %2 in entry %3, and that stands.</source>
        <translation>%1 a été franchi par %2 à l'entrée %3, et cela reste valable.</translation>
    </message>
    <message>
        <source>%1 was passed in entry %2; what was asked for then stays what was asked for.</source>
        <translation>%1 a été franchi à l'entrée %2 ; ce qui était demandé alors reste ce qui était demandé.</translation>
    </message>
    <message>
        <source>%1 was removed by %2 in entry %3.</source>
        <translation>%1 a été retiré par %2 à l'entrée %3.</translation>
    </message>
    <message>
        <source>%1 was said to be undone (entry %2), and that was struck. An inspector who had no hand in it looks first.</source>
        <translation>%1 a été dit déposé (entrée %2), et cela a été rayé. Un contrôleur qui n'y a pas participé regarde d'abord.</translation>
    </message>
    <message>
        <source>%1 was said to be undone (entry %2), and that was struck. An inspector who had no hand in it looks that nothing was touched.</source>
        <translation>%1 a été dit déposé (entrée %2), et cela a été rayé. Un contrôleur qui n'y a pas participé regarde que rien n'a été touché.</translation>
    </message>
    <message>
        <source>%1 was said to be undone again (entry %2), and that was struck: what is in it nobody knows. Undo it and restore it; or somebody with authority to overrule strikes that entry as never so.</source>
        <translation>%1 a été dit déposé à nouveau (entrée %2), et cela a été rayé : personne ne sait ce qu'il contient. Déposez-le et remettez-le en état ; ou une personne habilitée à passer outre raye cette entrée comme n'ayant jamais été vraie.</translation>
    </message>
    <message>
        <source>%1 was said to be undone, which was struck (entry %2). Disconnect it; or have an inspector who had no hand in it confirm it undisturbed.</source>
        <translation>%1 a été dit déposé, ce qui a été rayé (entrée %2). Débranchez-le ; ou faites-le confirmer non perturbé par un contrôleur qui n'y a pas participé.</translation>
    </message>
    <message>
        <source>%1 was sent in entry %2 as this record has it. Strike that first; then put this right.</source>
        <translation>%1 a été transmis à l'entrée %2 tel qu'il figure dans ce dossier. Rayez-la d'abord ; puis rectifiez ceci.</translation>
    </message>
    <message>
        <source>%1 was sent to %2, which has not taken it on yet.</source>
        <translation>%1 a été transmis à %2, qui ne l'a pas encore pris en charge.</translation>
    </message>
    <message>
        <source>%1 was set with %2 and could not be compared here (%3): do not rely on it. Make it anew from the entries.</source>
        <translation>%1 a été composé avec %2 et n'a pas pu être comparé ici (%3) : ne vous y fiez pas. Refaites-le à partir des entrées.</translation>
    </message>
    <message>
        <source>%1 was taken on by %2 as this record has it. They strike that first; then it is back.</source>
        <translation>%1 a été pris en charge par %2 tel qu'il figure dans ce dossier. Ils rayent d'abord cette prise en charge ; il est alors de retour.</translation>
    </message>
    <message>
        <source>%1 was undone again in entry %2, which rests on its having been joined. Strike that one first, if it was a mistake.</source>
        <translation>%1 a été déposé à nouveau à l'entrée %2, qui repose sur le fait qu'il avait été raccordé. Rayez d'abord celle-ci, si c'était une erreur.</translation>
    </message>
    <message>
        <source>%1 was undone and was on no list. Its details are to follow.</source>
        <translation>%1 a été déposé et ne figurait sur aucune liste. Ses détails doivent suivre.</translation>
    </message>
    <message>
        <source>%1 was undone as what it is listed to be, and what it waited for hung on that. Its kind stays.</source>
        <translation>%1 a été déposé en tant que ce qui figure dans la liste, et ce qu'il attendait en dépendait. Son type reste.</translation>
    </message>
    <message>
        <source>%1 was undone in this job (entry %2), so it is restored and inspected.</source>
        <translation>%1 a été déposé dans ce chantier (entrée %2) ; il est donc remis en état et contrôlé.</translation>
    </message>
    <message>
        <source>%1 was undone in this job, so it stays on the list until it is restored and inspected.</source>
        <translation>%1 a été déposé dans ce chantier ; il reste donc dans la liste jusqu'à sa remise en état et son contrôle.</translation>
    </message>
    <message>
        <source>%1 was withdrawn from use.</source>
        <translation>%1 a été retiré du service.</translation>
    </message>
    <message>
        <source>%1 was worked on.</source>
        <translation>%1 a fait l'objet d'une intervention.</translation>
    </message>
    <message>
        <source>%1 was written by a later version of this program. It was left as it is. Open it with that version, or bring this computer up to date.</source>
        <translation>%1 a été écrite par une version ultérieure de ce programme. Elle a été laissée telle quelle. Ouvrez-la avec cette version, ou mettez cet ordinateur à jour.</translation>
    </message>
    <message>
        <source>%1 was written by an earlier version of this program. Open it once for writing, so that it is brought up to date.</source>
        <translation>%1 a été écrite par une version antérieure de ce programme. Ouvrez-la une fois en écriture, pour qu'elle soit mise à jour.</translation>
    </message>
    <message>
        <source>%1 was written by version %2 and could not be compared by this version: do not rely on it. Make it anew from the entries.</source>
        <translation>%1 a été écrit par la version %2 et n'a pas pu être comparé par cette version : ne vous y fiez pas. Refaites-le à partir des entrées.</translation>
    </message>
    <message>
        <source>%1 with its unit, such as %2</source>
        <translation>%1 avec son unité, par exemple %2</translation>
    </message>
    <message>
        <source>%1 would ask less, or hold back less, than it does. That is signed by somebody who may pass it.</source>
        <translation>%1 demanderait moins, ou retiendrait moins, qu'il ne le fait. Cela est signé par une personne qui peut le franchir.</translation>
    </message>
    <message>
        <source>%1 would carry %2 of %3, which leaves %4; under 20 % is little, for weights and angles are seldom known well.</source>
        <translation>%1 porterait %2 sur %3, ce qui laisse %4 ; moins de 20 % est peu, car masses et angles sont rarement bien connus.</translation>
    </message>
    <message>
        <source>%1 would carry %2, over its working load limit of %3. Do not lift; take stronger equipment, or steeper slings.</source>
        <translation>%1 porterait %2, au-delà de sa charge maximale d'utilisation de %3. Ne levez pas ; prenez un matériel de plus grande capacité, ou des élingues plus proches de la verticale.</translation>
    </message>
    <message>
        <source>%1 would cover %2, which has not been inspected.</source>
        <translation>%1 recouvrirait %2, qui n'a pas été contrôlé.</translation>
    </message>
    <message>
        <source>%1 would cover %2. %3</source>
        <translation>%1 recouvrirait %2. %3</translation>
    </message>
    <message>
        <source>%1 would wait for itself: it is asked to have been passed before %2.</source>
        <translation>%1 s'attendrait lui-même : il doit avoir été franchi avant %2.</translation>
    </message>
    <message>
        <source>%1 x %2, separated by |</source>
        <translation>%1 x %2, séparés par |</translation>
    </message>
    <message>
        <source>%1 zones</source>
        <translation>%1 zones</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · %4 rev. %5</source>
        <translation>%1 · %2 · %3 · %4 rév. %5</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 · last entry %4</source>
        <translation>%1 · %2 · %3 · dernière entrée %4</translation>
    </message>
    <message>
        <source>%1 · critical</source>
        <translation>%1 · critique</translation>
    </message>
    <message>
        <source>%1 · root: %2 · fingerprint %3</source>
        <translation>%1 · racine : %2 · empreinte de clé %3</translation>
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
        <translation>%1 × %2 à %3</translation>
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
        <translation>L'habilitation de %1 à %2 commence le %3.</translation>
    </message>
    <message>
        <source>%1's authorisation to %2 does not cover this kind of interface or this aircraft type.</source>
        <translation>L'habilitation de %1 à %2 ne couvre pas ce type de raccordement ou ce type d'aéronef.</translation>
    </message>
    <message>
        <source>%1's authorisation to %2 ran out on %3.</source>
        <translation>L'habilitation de %1 à %2 a expiré le %3.</translation>
    </message>
    <message>
        <source>%1's authorisation to %2 was withdrawn on %3.</source>
        <translation>L'habilitation de %1 à %2 a été retirée le %3.</translation>
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
        <translation>%1, %2 (entrée %3)</translation>
    </message>
    <message>
        <source>%1, %2 at arm %3, moment %4</source>
        <translation>%1, %2 au bras de levier %3, moment %4</translation>
    </message>
    <message>
        <source>%1, %2 of the mean aerodynamic chord</source>
        <translation>%1, %2 de la corde aérodynamique moyenne</translation>
    </message>
    <message>
        <source>%1, %2 × %3 pixels, %4</source>
        <translation>%1, %2 × %3 pixels, %4</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1, %2, entry %3</source>
        <translation>%1, %2, entrée %3</translation>
    </message>
    <message>
        <source>%1, %2, entry %3 there</source>
        <translation>%1, %2, entrée %3 là-bas</translation>
    </message>
    <message>
        <source>%1, %2. %3</source>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2 : %3</translation>
    </message>
    <message>
        <source>%1, always new</source>
        <translation>%1, toujours neuf</translation>
    </message>
    <message>
        <source>%1, and the CSV of its interfaces beside it.</source>
        <translation>%1, et à côté le CSV de ses raccordements.</translation>
    </message>
    <message>
        <source>%1, by different persons</source>
        <translation>%1, par des personnes différentes</translation>
    </message>
    <message>
        <source>%1, byte for byte as it came.</source>
        <translation>%1, octet pour octet tel qu'il est venu.</translation>
    </message>
    <message>
        <source>%1, details to follow</source>
        <translation>%1, détails à suivre</translation>
    </message>
    <message>
        <source>%1, drips or pools</source>
        <translation>%1, goutte ou forme une flaque</translation>
    </message>
    <message>
        <source>%1, due %2</source>
        <translation>%1, échéance %2</translation>
    </message>
    <message>
        <source>%1, entry %2</source>
        <translation>%1, entrée %2</translation>
    </message>
    <message>
        <source>%1, in doubt</source>
        <translation>%1, en doute</translation>
    </message>
    <message>
        <source>%1, in doubt (entry %2)</source>
        <translation>%1, en doute (entrée %2)</translation>
    </message>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, ligne %2 : %3</translation>
    </message>
    <message>
        <source>%1, lockout of %2</source>
        <translation>%1, consignation de %2</translation>
    </message>
    <message>
        <source>%1, moment %2, centre of gravity at %3</source>
        <translation>%1, moment %2, centre de gravité à %3</translation>
    </message>
    <message>
        <source>%1, mount</source>
        <translation>%1, attache</translation>
    </message>
    <message>
        <source>%1, no hand in it</source>
        <translation>%1, sans y avoir pris part</translation>
    </message>
    <message>
        <source>%1, of these struck: %2</source>
        <translation>%1, dont rayées : %2</translation>
    </message>
    <message>
        <source>%1, or the lead with a reason</source>
        <translation>%1, ou le responsable du chantier avec un motif</translation>
    </message>
    <message>
        <source>%1, part %2</source>
        <translation>%1, pièce %2</translation>
    </message>
    <message>
        <source>%1, perimeter</source>
        <translation>%1, périmètre</translation>
    </message>
    <message>
        <source>%1, row to look up</source>
        <translation>%1, ligne à consulter</translation>
    </message>
    <message>
        <source>%1, sent to a linked job and not taken on there</source>
        <translation>%1, envoyé à un chantier lié et non pris en charge là-bas</translation>
    </message>
    <message>
        <source>%1, still attached: %2</source>
        <translation>%1, encore attaché : %2</translation>
    </message>
    <message>
        <source>%1, still to show: %2</source>
        <translation>%1, reste à montrer : %2</translation>
    </message>
    <message>
        <source>%1, stopped: %2</source>
        <translation>%1, arrêté : %2</translation>
    </message>
    <message>
        <source>%1, struck</source>
        <translation>%1, rayé</translation>
    </message>
    <message>
        <source>%1, tag %2</source>
        <translation>%1, étiquette %2</translation>
    </message>
    <message>
        <source>%1, torqued %2 of %3</source>
        <translation>%1, serrés au couple %2 sur %3</translation>
    </message>
    <message>
        <source>%1, two readings</source>
        <translation>%1, deux relevés</translation>
    </message>
    <message>
        <source>%1, unit</source>
        <translation>%1, unité</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1. About %2 of work left for them, between %3 and %4 for the middle half of what this job has shown. This is the job's own pace of %5 inspected interfaces continued, timed over %6 at a time, and nothing else: it counts no pauses, no waiting and no work that comes up.</source>
        <translation>%1. Il reste pour cela environ %2 de travail, entre %3 et %4 pour la moitié centrale de ce que ce chantier a montré. C'est le propre rythme du chantier sur %5 raccordements contrôlés, prolongé, mesuré par %6 à la fois, et rien d'autre : les pauses, les attentes et les travaux qui surviennent ne sont pas comptés.</translation>
    </message>
    <message>
        <source>%1. Key %2</source>
        <translation>%1. Clé %2</translation>
    </message>
    <message>
        <source>%1. Passed with %2.</source>
        <translation>%1. Franchi avec %2.</translation>
    </message>
    <message>
        <source>%1. Reference: %2</source>
        <translation>%1. Référence : %2</translation>
    </message>
    <message>
        <source>%1. SHA-256 %2…</source>
        <translation>%1. SHA-256 %2…</translation>
    </message>
    <message>
        <source>%1. The first: %2</source>
        <translation>%1. Le premier : %2</translation>
    </message>
    <message>
        <source>%1. Too little done to say how long the rest takes: %2 inspected so far, and an estimate needs %3.</source>
        <translation>%1. Trop peu de fait pour dire combien de temps prend le reste : %2 contrôlés à ce jour, et une estimation en demande %3.</translation>
    </message>
    <message>
        <source>%1: "%2" cannot be read. Give a number with its unit.</source>
        <translation>%1 : « %2 » ne se lit pas. Donnez un nombre avec son unité.</translation>
    </message>
    <message>
        <source>%1: "%2" is not part of a value that was read.</source>
        <translation>%1 : « %2 » n'appartient à aucune valeur relevée.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1 : %2 %3</translation>
    </message>
    <message>
        <source>%1: %2 (%3 to %4)</source>
        <translation>%1 : %2 (%3 à %4)</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1 : %2 (%3)</translation>
    </message>
    <message>
        <source>%1: %2 (at least %3)</source>
        <translation>%1 : %2 (au moins %3)</translation>
    </message>
    <message>
        <source>%1: %2 (at most %3)</source>
        <translation>%1 : %2 (au plus %3)</translation>
    </message>
    <message>
        <source>%1: %2 is never used again, and %3 are said to be reused. Scrap what came off and fit new ones.</source>
        <translation>%1 : %2 ne se réutilise jamais, et %3 seraient réutilisés. Mettez au rebut ce qui a été déposé et montez du neuf.</translation>
    </message>
    <message>
        <source>%1: %2 is no torque. Check the unit.</source>
        <translation>%1 : %2 n'est pas un couple. Vérifiez l'unité.</translation>
    </message>
    <message>
        <source>%1: %2 items</source>
        <translation>%1 : %2 éléments</translation>
    </message>
    <message>
        <source>%1: %2 undone and not inspected, %3 not undone</source>
        <translation>%1 : %2 déposés et non contrôlés, %3 non déposés</translation>
    </message>
    <message>
        <source>%1: %2 × %3 are renewed; give their batch.</source>
        <translation>%1 : %2 × %3 sont remplacés ; indiquez leur lot.</translation>
    </message>
    <message>
        <source>%1: %2 × %3 are required; %4 reused and %5 renewed make %6.</source>
        <translation>%1 : %2 × %3 sont requis ; %4 réutilisés et %5 remplacés font %6.</translation>
    </message>
    <message>
        <source>%1: %2 × %3 came off, and %4 are said to be reused. What is from elsewhere is renewed, with its batch.</source>
        <translation>%1 : %2 × %3 ont été déposés, et %4 seraient réutilisés. Ce qui vient d'ailleurs est du neuf, avec son lot.</translation>
    </message>
    <message>
        <source>%1: %2 × %3 came off; %4 reused and %5 scrapped make %6.</source>
        <translation>%1 : %2 × %3 ont été déposés ; %4 réutilisés et %5 mis au rebut font %6.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1 : %2.</translation>
    </message>
    <message>
        <source>%1: %2. The other job would not see that; settle it before it goes.</source>
        <translation>%1 : %2. L'autre chantier ne le verrait pas ; réglez cela avant de le transmettre.</translation>
    </message>
    <message>
        <source>%1: at most %2, first at entry %3 (%4); now %5.</source>
        <translation>%1 : au plus %2, la première fois à l'entrée %3 (%4) ; maintenant %5.</translation>
    </message>
    <message>
        <source>%1: before this, a wrong PIN or passphrase was tried %2 times in a row, the last time on %3. If that was not you, change it, and tell whoever administers the register.</source>
        <translation>%1 : avant cela, un PIN ou une phrase secrète faux a été essayé %2 fois de suite, la dernière fois le %3. Si ce n'était pas vous, changez-le, et prévenez la personne qui administre le répertoire.</translation>
    </message>
    <message>
        <source>%1: give the least or the most that the maintenance data allows.</source>
        <translation>%1 : donnez le minimum ou le maximum que permettent les données d'entretien.</translation>
    </message>
    <message>
        <source>%1: it has to be verified against its twin again.</source>
        <translation>%1 : son contrôle croisé avec son semblable est à refaire.</translation>
    </message>
    <message>
        <source>%1: it is not joined as it was.</source>
        <translation>%1 : il n'est pas raccordé comme il l'était.</translation>
    </message>
    <message>
        <source>%1: its bonding reading is void.</source>
        <translation>%1 : son relevé de métallisation est caduc.</translation>
    </message>
    <message>
        <source>%1: its inspection held until %2, and the lift is on %3. Have it inspected, or take another.</source>
        <translation>%1 : son inspection valait jusqu'au %2, et le levage est le %3. Faites-le inspecter, ou prenez-en un autre.</translation>
    </message>
    <message>
        <source>%1: its inspection is void.</source>
        <translation>%1 : son contrôle est caduc.</translation>
    </message>
    <message>
        <source>%1: its leak check is void.</source>
        <translation>%1 : son contrôle d'étanchéité est caduc.</translation>
    </message>
    <message>
        <source>%1: its safetying is void.</source>
        <translation>%1 : son freinage est caduc.</translation>
    </message>
    <message>
        <source>%1: its torque is void.</source>
        <translation>%1 : son couple est caduc.</translation>
    </message>
    <message>
        <source>%1: no interface undone so far.</source>
        <translation>%1 : aucun raccordement déposé à ce jour.</translation>
    </message>
    <message>
        <source>%1: not now</source>
        <translation>%1 : pas maintenant</translation>
    </message>
    <message>
        <source>%1: say for each part how many were reused, renewed and scrapped. Of %2, %3 are required and %4 came off.</source>
        <translation>%1 : indiquez pour chaque pièce combien ont été réutilisées, remplacées et mises au rebut. Pour %2, %3 sont requises et %4 ont été déposées.</translation>
    </message>
    <message>
        <source>%1: something may not have been found. Verify the store.</source>
        <translation>%1 : quelque chose a pu ne pas être trouvé. Vérifiez la base.</translation>
    </message>
    <message>
        <source>%1: the limit "%2" is none for %3.</source>
        <translation>%1 : la limite « %2 » n'en est pas une pour %3.</translation>
    </message>
    <message>
        <source>%1: there is no date until which its inspection holds. Have it inspected, or take another.</source>
        <translation>%1 : il n'y a pas de date de fin de validité de l'inspection. Faites-le inspecter, ou prenez-en un autre.</translation>
    </message>
    <message>
        <source>%1: to be passed again. %2</source>
        <translation>%1 : à franchir de nouveau. %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1 ; %2</translation>
    </message>
    <message>
        <source>%1; %2 minutes after wiping dry</source>
        <translation>%1 ; %2 minutes après essuyage à sec</translation>
    </message>
    <message>
        <source>%1; T = %2</source>
        <translation>%1; T = %2</translation>
    </message>
    <message>
        <source>%1; agreed by %2</source>
        <translation>%1 ; accord donné par %2</translation>
    </message>
    <message>
        <source>%1; agreed: %2</source>
        <translation>%1 ; accord : %2</translation>
    </message>
    <message>
        <source>%1; allowed by %2</source>
        <translation>%1 ; autorisé par %2</translation>
    </message>
    <message>
        <source>%1; because: %2</source>
        <translation>%1 ; motif : %2</translation>
    </message>
    <message>
        <source>%1; behind it %2 where it is so</source>
        <translation>%1 ; derrière, %2 là où c'est le cas</translation>
    </message>
    <message>
        <source>%1; leaves with it: %2</source>
        <translation>%1 ; part avec lui : %2</translation>
    </message>
    <message>
        <source>%1; next is fastener %2, pass %3</source>
        <translation>%1 ; suivante : fixation %2, passe %3</translation>
    </message>
    <message>
        <source>%1; on %2</source>
        <translation>%1 ; sur %2</translation>
    </message>
    <message>
        <source>%1; or by clearing it: %2</source>
        <translation>%1 ; ou en le levant : %2</translation>
    </message>
    <message>
        <source>%1; serial number %2 instead</source>
        <translation>%1 ; numéro de série %2 à la place</translation>
    </message>
    <message>
        <source>%1° from level</source>
        <translation>%1° par rapport à l'horizontale</translation>
    </message>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n entrée</numerusform>
            <numerusform>%n entrées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>%n élément</numerusform>
            <numerusform>%n éléments</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n openings blanked; tagged %1</source>
        <translation>
            <numerusform>%n ouverture obturée ; étiqueté %1</numerusform>
            <numerusform>%n ouvertures obturées ; étiqueté %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n shipping blanks removed</source>
        <translation>
            <numerusform>%n obturateur de transport retiré</numerusform>
            <numerusform>%n obturateurs de transport retirés</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tags</source>
        <translation>
            <numerusform>%n étiquette</numerusform>
            <numerusform>%n étiquettes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to inspect</source>
        <translation>
            <numerusform>%n à contrôler</numerusform>
            <numerusform>%n à contrôler</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Add a photo …</source>
        <translation>Aj&amp;outer une photo …</translation>
    </message>
    <message>
        <source>&amp;All jobs</source>
        <translation>Tous &amp;les chantiers</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Retour</translation>
    </message>
    <message>
        <source>&amp;Back up the store …</source>
        <translation>Sauve&amp;garder la base …</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Fermer</translation>
    </message>
    <message>
        <source>&amp;Compare …</source>
        <translation>&amp;Comparer …</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>Cop&amp;ier</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>S&amp;ombre</translation>
    </message>
    <message>
        <source>&amp;Discard it</source>
        <translation>L'&amp;abandonner</translation>
    </message>
    <message>
        <source>&amp;Do</source>
        <translation>Ac&amp;tions</translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translation>&amp;Tirer</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>&amp;Export as CSV …</source>
        <translation>Expo&amp;rter en CSV …</translation>
    </message>
    <message>
        <source>&amp;Export the record package …</source>
        <translation>Exporter le paquet &amp;de dossier …</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Chercher</translation>
    </message>
    <message>
        <source>&amp;Find a command …</source>
        <translation>&amp;Trouver une commande …</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Aller</translation>
    </message>
    <message>
        <source>&amp;Go to the entry</source>
        <translation>&amp;Aller à l'entrée</translation>
    </message>
    <message>
        <source>&amp;Handover sheet …</source>
        <translation>Feuille de &amp;passation …</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Aid&amp;e</translation>
    </message>
    <message>
        <source>&amp;Import into this store …</source>
        <translation>&amp;Importer dans cette base …</translation>
    </message>
    <message>
        <source>&amp;Import the list …</source>
        <translation>I&amp;mporter la liste …</translation>
    </message>
    <message>
        <source>&amp;Jobs</source>
        <translation>C&amp;hantiers</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>Touc&amp;hes</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Clair</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>Appare&amp;nce</translation>
    </message>
    <message>
        <source>&amp;Manual</source>
        <translation>&amp;Manuel</translation>
    </message>
    <message>
        <source>&amp;More details</source>
        <translation>Plu&amp;s de détails</translation>
    </message>
    <message>
        <source>&amp;New job …</source>
        <translation>Nouveau chant&amp;ier …</translation>
    </message>
    <message>
        <source>&amp;New key for a person …</source>
        <translation>Nouvelle &amp;clé pour une personne …</translation>
    </message>
    <message>
        <source>&amp;New store …</source>
        <translation>Nouvelle &amp;base …</translation>
    </message>
    <message>
        <source>&amp;Only with loose ends</source>
        <translation>Seulement avec points &amp;ouverts</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Ouvrir</translation>
    </message>
    <message>
        <source>&amp;Open a package file …</source>
        <translation>&amp;Ouvrir un fichier de paquet …</translation>
    </message>
    <message>
        <source>&amp;Open a store …</source>
        <translation>&amp;Ouvrir une base …</translation>
    </message>
    <message>
        <source>&amp;Other interface …</source>
        <translation>Autre raccorde&amp;ment …</translation>
    </message>
    <message>
        <source>&amp;PIN</source>
        <translation>&amp;PIN</translation>
    </message>
    <message>
        <source>&amp;People and tools</source>
        <translation>&amp;Personnes et outils</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Recent stores</source>
        <translation>Bases &amp;récentes</translation>
    </message>
    <message>
        <source>&amp;Register a tool …</source>
        <translation>Enregistrer un &amp;outil …</translation>
    </message>
    <message>
        <source>&amp;Save as PDF …</source>
        <translation>Enre&amp;gistrer en PDF …</translation>
    </message>
    <message>
        <source>&amp;Save as a file …</source>
        <translation>&amp;Enregistrer comme fichier …</translation>
    </message>
    <message>
        <source>&amp;Save the verdict …</source>
        <translation>Enregi&amp;strer le verdict …</translation>
    </message>
    <message>
        <source>&amp;Set a hold point …</source>
        <translation>Pose&amp;r un point d'arrêt …</translation>
    </message>
    <message>
        <source>&amp;Sign the marks …</source>
        <translation>Si&amp;gner les repères …</translation>
    </message>
    <message>
        <source>&amp;Stop the key …</source>
        <translation>Bloquer la c&amp;lé …</translation>
    </message>
    <message>
        <source>&amp;Strike my last entry …</source>
        <translation>&amp;Rayer ma dernière entrée …</translation>
    </message>
    <message>
        <source>&amp;Struck only</source>
        <translation>Rayées seule&amp;ment</translation>
    </message>
    <message>
        <source>&amp;Take it and sign …</source>
        <translation>Im&amp;porter et signer …</translation>
    </message>
    <message>
        <source>&amp;Take the key over at this station …</source>
        <translation>Reprendre &amp;la clé sur ce poste …</translation>
    </message>
    <message>
        <source>&amp;Take your key over …</source>
        <translation>Reprendre &amp;votre clé …</translation>
    </message>
    <message>
        <source>&amp;Until day</source>
        <translation>&amp;Jusqu'au jour</translation>
    </message>
    <message>
        <source>&amp;Verify</source>
        <translation>&amp;Vérifier</translation>
    </message>
    <message>
        <source>&amp;Verify a record package …</source>
        <translation>&amp;Vérifier un paquet de dossier …</translation>
    </message>
    <message>
        <source>&amp;Verify again</source>
        <translation>Vérifier de no&amp;uveau</translation>
    </message>
    <message>
        <source>&amp;Wall sheet: what is open …</source>
        <translation>Feuille d'affichage : ce qui &amp;est ouvert …</translation>
    </message>
    <message>
        <source>&amp;Watch a folder …</source>
        <translation>&amp;Surveiller un dossier …</translation>
    </message>
    <message>
        <source>&amp;Where used …</source>
        <translation>Cas d'empl&amp;oi …</translation>
    </message>
    <message>
        <source>&amp;Who</source>
        <translation>&amp;Qui</translation>
    </message>
    <message>
        <source>&amp;Who signed when …</source>
        <translation>&amp;Qui a signé quand …</translation>
    </message>
    <message>
        <source>(all)</source>
        <translation>(tous)</translation>
    </message>
    <message>
        <source>(signature in doubt)</source>
        <translation>(signature en doute)</translation>
    </message>
    <message>
        <source>(what is to be looked at?)</source>
        <translation>(que faut-il regarder ?)</translation>
    </message>
    <message>
        <source>1 SIGNATURE IN DOUBT</source>
        <translation>1 SIGNATURE EN DOUTE</translation>
    </message>
    <message>
        <source>1 entry</source>
        <translation>1 entrée</translation>
    </message>
    <message>
        <source>1 interface</source>
        <translation>1 raccordement</translation>
    </message>
    <message>
        <source>1 interface not finished</source>
        <translation>1 raccordement non terminé</translation>
    </message>
    <message>
        <source>1 interface undone and not inspected</source>
        <translation>1 raccordement déposé et non contrôlé</translation>
    </message>
    <message>
        <source>1 leg a point</source>
        <translation>1 brin par point</translation>
    </message>
    <message>
        <source>1 loose end</source>
        <translation>1 point ouvert</translation>
    </message>
    <message>
        <source>1 minute</source>
        <translation>1 minute</translation>
    </message>
    <message>
        <source>1 more</source>
        <translation>1 autre</translation>
    </message>
    <message>
        <source>1 second</source>
        <translation>1 seconde</translation>
    </message>
    <message>
        <source>1 zone</source>
        <translation>1 zone</translation>
    </message>
    <message>
        <source>2 lifting points are told by the length between them and by where the centre of gravity lies, for the nearer one carries more. Fill in both.</source>
        <translation>Avec 2 points de levage, on calcule d'après la distance entre eux et la position du centre de gravité, car le plus proche porte davantage. Remplissez les deux champs.</translation>
    </message>
    <message>
        <source>32 letters and digits, as the other station shows them</source>
        <translation>32 lettres et chiffres, tels que l'autre poste les affiche</translation>
    </message>
    <message>
        <source>; within 5° of the vertical, counted as vertical</source>
        <translation>; à moins de 5° de la verticale, compté comme vertical</translation>
    </message>
    <message>
        <source>A PIN or passphrase has at least %1 characters.</source>
        <translation>Un PIN ou une phrase secrète compte au moins %1 caractères.</translation>
    </message>
    <message>
        <source>A PIN or passphrase needs at least %1 characters.</source>
        <translation>Un PIN ou une phrase secrète doit avoir au moins %1 caractères.</translation>
    </message>
    <message>
        <source>A bad batch is found again by its number alone.</source>
        <translation>Un mauvais lot ne se retrouve que par son numéro.</translation>
    </message>
    <message>
        <source>A band from %1 to %2 limits nothing: the most is over %3 times the least. Look for a slipped decimal or a wrong unit.</source>
        <translation>Une plage de %1 à %2 ne limite rien : le maximum dépasse %3 fois le minimum. Cherchez une virgule déplacée ou une unité fausse.</translation>
    </message>
    <message>
        <source>A band of %1 holds nothing. Give the least first, and then the most.</source>
        <translation>Une plage de %1 ne contient rien. Donnez d'abord le minimum, puis le maximum.</translation>
    </message>
    <message>
        <source>A blank is missing and may be inside (finding %1). Nothing is run or tested until it is known where it is.</source>
        <translation>Un obturateur manque et se trouve peut-être à l'intérieur (constat %1). Rien n'est mis en marche ni essayé tant qu'on ne sait pas où il est.</translation>
    </message>
    <message>
        <source>A blank left in a line looks like a finished joint.</source>
        <translation>Un obturateur laissé dans une conduite ressemble à un assemblage terminé.</translation>
    </message>
    <message>
        <source>A blank left inside starves or blocks the system. Let the pressure off before it is fitted or removed, and count. Work as the approved maintenance data and the local rules say.</source>
        <translation>Un obturateur laissé à l'intérieur prive le système d'alimentation ou le bouche. Faites tomber la pression avant de le poser ou de le retirer, et comptez. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A blank of %1 is missing and may be inside. It is joined when finding %2 is rectified, and says what became of it; there are no limits for it, and to put it off is not enough.</source>
        <translation>Un obturateur de %1 manque et se trouve peut-être à l'intérieur. Le raccordement se fait une fois le constat %2 rectifié, avec l'indication de ce qu'il est devenu ; il n'y a pas de limites pour cela, et un report ne suffit pas.</translation>
    </message>
    <message>
        <source>A blank of %1 is missing and may be inside. It stays with those who look for it.</source>
        <translation>Un obturateur de %1 manque et se trouve peut-être à l'intérieur. L'élément reste chez ceux qui le cherchent.</translation>
    </message>
    <message>
        <source>A blank that is missing is found by the engine.</source>
        <translation>Un obturateur manquant, c'est le moteur qui le trouve.</translation>
    </message>
    <message>
        <source>A block comes back as it went out.</source>
        <translation>Une série revient comme elle est partie.</translation>
    </message>
    <message>
        <source>A block of tags runs from a first number, 1 or more, to a last that is not before it, and has at most %1 tags; not from %2 to %3.</source>
        <translation>Une série d'étiquettes va d'un premier numéro, 1 ou plus, à un dernier qui ne le précède pas, et compte au plus %1 étiquettes ; non de %2 à %3.</translation>
    </message>
    <message>
        <source>A block that is complete has no tag on an aircraft.</source>
        <translation>Une série complète n'a pas d'étiquette sur un avion.</translation>
    </message>
    <message>
        <source>A bolt that is left over was left out, or lies where it does harm.</source>
        <translation>Une vis en trop a été oubliée, ou traîne là où elle est nuisible.</translation>
    </message>
    <message>
        <source>A bond is measured once or twice, not %1 times.</source>
        <translation>Une métallisation se mesure une ou deux fois, non %1 fois.</translation>
    </message>
    <message>
        <source>A bonding limit is a resistance and its unit; this one is missing.</source>
        <translation>Une limite de métallisation est une résistance et son unité ; il manque une de ces indications.</translation>
    </message>
    <message>
        <source>A break point in finished work would be read as unfinished work.</source>
        <translation>Un point d'interruption dans un travail terminé se lirait comme un travail inachevé.</translation>
    </message>
    <message>
        <source>A calibration belongs to a tool that is used.</source>
        <translation>Un étalonnage se rapporte à un outil utilisé.</translation>
    </message>
    <message>
        <source>A carriage return stands alone. End lines with a line feed, or with both.</source>
        <translation>Un retour chariot est seul. Terminez les lignes par un saut de ligne, ou par les deux.</translation>
    </message>
    <message>
        <source>A cell begins or ends with a blank.</source>
        <translation>Une cellule commence ou se termine par un blanc.</translation>
    </message>
    <message>
        <source>A check without a limit can only be passed.</source>
        <translation>Un contrôle sans limite ne peut que réussir.</translation>
    </message>
    <message>
        <source>A condition of %1 cannot end with %1 itself.</source>
        <translation>Une condition de %1 ne peut pas s'achever par %1 lui-même.</translation>
    </message>
    <message>
        <source>A condition of %1 ends with the hold point %2, which this job does not have. Set that one, or change this.</source>
        <translation>Une condition de %1 s'achève par le point d'arrêt %2, que ce chantier n'a pas. Posez celui-ci, ou modifiez celui-là.</translation>
    </message>
    <message>
        <source>A condition on interfaces names these by kind, zone or id.</source>
        <translation>Une condition sur les raccordements les désigne par type, zone ou identifiant.</translation>
    </message>
    <message>
        <source>A condition on temporary items names one sort or more.</source>
        <translation>Une condition sur les éléments temporaires nomme une sorte ou plusieurs.</translation>
    </message>
    <message>
        <source>A condition on temporary items names their sorts, not interfaces.</source>
        <translation>Une condition sur les éléments temporaires nomme leurs sortes, non des raccordements.</translation>
    </message>
    <message>
        <source>A condition on tests names one sort: ground run, functional test or leak check.</source>
        <translation>Une condition sur les essais nomme une sorte : ground run, functional test ou leak check.</translation>
    </message>
    <message>
        <source>A condition on the unit names a stage alone.</source>
        <translation>Une condition sur l'ensemble ne nomme qu'un état.</translation>
    </message>
    <message>
        <source>A condition that cannot be so hides one that is.</source>
        <translation>Une réserve impossible en cache une vraie.</translation>
    </message>
    <message>
        <source>A control character stands in this field. Take it out.</source>
        <translation>Un caractère de commande se trouve dans ce champ. Retirez-le.</translation>
    </message>
    <message>
        <source>A copy of this photo is attached to %1 already, by entry %2.</source>
        <translation>Une copie de cette photo est déjà jointe à %1, par l'entrée %2.</translation>
    </message>
    <message>
        <source>A correction on paper does not change what is in the joint.</source>
        <translation>Une correction sur le papier ne change pas ce qui est dans l'assemblage.</translation>
    </message>
    <message>
        <source>A count that does not come out right is the moment to look.</source>
        <translation>Un compte qui ne tombe pas juste est le moment de chercher.</translation>
    </message>
    <message>
        <source>A cowl or panel is heavy, catches the wind and traps hands. Work from a proper platform, hold the panel while its fasteners are undone, lock its hold-open rods and keep people from under it, as the approved maintenance data and the local rules say.</source>
        <translation>Un capot ou un panneau est lourd, prend le vent et peut coincer les mains. Travaillez depuis une plate-forme appropriée, tenez le panneau pendant que ses fixations sont défaites, verrouillez ses béquilles de maintien et ne laissez personne dessous, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A critical interface is looked at by somebody who knows what to look for.</source>
        <translation>Un raccordement critique est regardé par quelqu'un qui sait ce qu'il faut chercher.</translation>
    </message>
    <message>
        <source>A disposition is given once.</source>
        <translation>On statue une seule fois.</translation>
    </message>
    <message>
        <source>A disturbed seal is renewed, by part number and batch, so that a bad batch can be found again.</source>
        <translation>Un joint perturbé est remplacé, avec référence et lot, pour qu'un mauvais lot puisse être retrouvé.</translation>
    </message>
    <message>
        <source>A doubt points at what it doubts.</source>
        <translation>Un doute désigne ce dont il doute.</translation>
    </message>
    <message>
        <source>A draft of the record package was exported: the job is NOT CLOSED</source>
        <translation>Un brouillon du paquet de dossier a été exporté : le chantier N'EST PAS CLOS</translation>
    </message>
    <message>
        <source>A drag of %1 is as much as the torque itself, %2: the nut or its thread is damaged, or the figure is not the drag. Look at both, and measure again.</source>
        <translation>Un couple d'autofreinage de %1 vaut autant que le couple lui-même, %2 : l'écrou ou son filet est endommagé, ou ce chiffre n'est pas le couple d'autofreinage. Examinez les deux, et mesurez à nouveau.</translation>
    </message>
    <message>
        <source>A drag of %1 is none. Give the torque that turns the nut before it seats.</source>
        <translation>Un couple d'autofreinage de %1 n'en est pas un. Donnez le couple qui fait tourner l'écrou avant qu'il ne porte.</translation>
    </message>
    <message>
        <source>A drop under %1 says nothing of the bond. Send a known current above 0 through it.</source>
        <translation>Une chute de tension sous %1 ne dit rien de la métallisation. Faites-y passer un courant connu, supérieur à 0.</translation>
    </message>
    <message>
        <source>A fastener that the order forgets is never tightened.</source>
        <translation>Une fixation que l'ordre oublie n'est jamais serrée.</translation>
    </message>
    <message>
        <source>A fastener that went over its most is not turned back to it: follow the maintenance data.</source>
        <translation>Une fixation qui a dépassé son maximum n'y est pas ramenée : suivez les données d'entretien.</translation>
    </message>
    <message>
        <source>A figure without a source is taken from nowhere. Name the document and its section.</source>
        <translation>Une valeur sans source n'est prise de nulle part. Nommez le document et sa section.</translation>
    </message>
    <message>
        <source>A finding is deferred until a day at most, which its authority names, and which is not past.</source>
        <translation>Un constat est reporté au plus jusqu'à une date que son autorité fixe et qui n'est pas passée.</translation>
    </message>
    <message>
        <source>A finding on nothing is found by nobody.</source>
        <translation>Un constat sur rien n'est retrouvé par personne.</translation>
    </message>
    <message>
        <source>A flow or counted drops against a limit, one turned into the other where that is needed.</source>
        <translation>Un débit ou des gouttes comptées par rapport à une limite, l'un converti en l'autre là où il le faut.</translation>
    </message>
    <message>
        <source>A gate is not lowered once somebody stands in front of it.</source>
        <translation>On n'abaisse pas un barrage une fois que quelqu'un est devant.</translation>
    </message>
    <message>
        <source>A gate names sorts of temporary items, for their removal; not %1.</source>
        <translation>Un barrage nomme des sortes d'éléments temporaires, pour leur retrait ; non %1.</translation>
    </message>
    <message>
        <source>A gate that asks for nothing lets everything through.</source>
        <translation>Un barrage qui ne demande rien laisse tout passer.</translation>
    </message>
    <message>
        <source>A good test never stands for the inspection of an item. The approved maintenance data says what is run, read and allowed; people who are licensed or authorised for it run.</source>
        <translation>Un essai satisfaisant ne remplace jamais le contrôle d'un élément. Les données d'entretien approuvées disent ce qui est essayé, lu et admis ; les essais sont menés par des personnes titulaires d'une licence ou habilitées.</translation>
    </message>
    <message>
        <source>A graduation is one step of the tool's scale, above 0, in the unit of its range; not %1.</source>
        <translation>Une graduation est un pas de l'échelle de l'outil, supérieur à 0, dans l'unité de sa plage ; non %1.</translation>
    </message>
    <message>
        <source>A graduation of %1 is none. Have the tool's registration corrected.</source>
        <translation>Une graduation de %1 n'en est pas une. Faites corriger l'enregistrement de l'outil.</translation>
    </message>
    <message>
        <source>A graduation of %1 is too fine for this torque. Give one step of the wrench's scale.</source>
        <translation>Une graduation de %1 est trop fine pour ce couple. Donnez un pas de l'échelle de la clé.</translation>
    </message>
    <message>
        <source>A greatest torque of %1 is none. Give what is marked on the tool.</source>
        <translation>Un couple maximum de %1 n'en est pas un. Donnez ce qui est marqué sur l'outil.</translation>
    </message>
    <message>
        <source>A guard band is as wide as what the tool may be off. Give it, or accept without a guard band.</source>
        <translation>Une bande de garde est aussi large que l'écart admis de l'outil. Donnez-le, ou acceptez sans bande de garde.</translation>
    </message>
    <message>
        <source>A handing on has two ends, and both sign.</source>
        <translation>Une transmission a deux bouts, et les deux signent.</translation>
    </message>
    <message>
        <source>A handover goes to another person.</source>
        <translation>Une passation se fait à une autre personne.</translation>
    </message>
    <message>
        <source>A handover to %1 waits for acceptance already.</source>
        <translation>Une passation à %1 attend déjà d'être acceptée.</translation>
    </message>
    <message>
        <source>A hoist carries the unit over people. It is rigged and taken away with nobody under the load, and it lets go only when the unit stands or its mounts hold it; trained people lift. Work as the approved maintenance data and the local rules say.</source>
        <translation>Un palan porte l'ensemble au-dessus des personnes. Il est installé et enlevé sans que personne soit sous la charge, et il n'est relâché que lorsque l'ensemble est posé ou que ses attaches le tiennent ; le levage est fait par des personnes formées. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A hold point asks for something, and holds something back. Give conditions or statements, and gates.</source>
        <translation>Un point d'arrêt demande quelque chose et retient quelque chose. Indiquez des conditions ou des déclarations, et des barrages.</translation>
    </message>
    <message>
        <source>A hold point cannot hold back "%1": that has to be said whenever it is so.</source>
        <translation>Un point d'arrêt ne peut pas retenir « %1 » : cela doit être dit chaque fois que c'est le cas.</translation>
    </message>
    <message>
        <source>A hold point cannot hold back "%1": there is no such entry of a job.</source>
        <translation>Un point d'arrêt ne peut pas retenir « %1 » : il n'y a pas d'entrée de ce genre dans un chantier.</translation>
    </message>
    <message>
        <source>A hold point has no id of its own: "%1".</source>
        <translation>Un point d'arrêt n'a pas d'identifiant propre : « %1 ».</translation>
    </message>
    <message>
        <source>A job is not linked with itself. Name the other one.</source>
        <translation>Un chantier ne se lie pas à lui-même. Nommez l'autre.</translation>
    </message>
    <message>
        <source>A job is opened by its lead. Name yourself as lead, or let the lead open it.</source>
        <translation>Un chantier est ouvert par son responsable. Nommez-vous comme responsable, ou laissez le responsable l'ouvrir.</translation>
    </message>
    <message>
        <source>A job needs at least one zone, each with a name of its own.</source>
        <translation>Un chantier demande au moins une zone, chacune avec son propre nom.</translation>
    </message>
    <message>
        <source>A job that is given up is not deleted: what was undone closes in full.</source>
        <translation>Un chantier abandonné ne s'efface pas : ce qui a été défait se clôt en entier.</translation>
    </message>
    <message>
        <source>A job's work is done by the people it names.</source>
        <translation>Le travail d'un chantier est fait par les personnes qu'il nomme.</translation>
    </message>
    <message>
        <source>A joint with a bolt too few looks like any other from outside.</source>
        <translation>Un assemblage auquel manque une vis ressemble de l'extérieur à tout autre.</translation>
    </message>
    <message>
        <source>A key belongs to somebody.</source>
        <translation>Une clé appartient à quelqu'un.</translation>
    </message>
    <message>
        <source>A key is stopped at one moment.</source>
        <translation>Une clé est bloquée à un moment précis.</translation>
    </message>
    <message>
        <source>A key that somebody else may have signs nothing.</source>
        <translation>Une clé qu'une autre personne a peut-être ne signe rien.</translation>
    </message>
    <message>
        <source>A leak check needs the worst class that is allowed, or a rate.</source>
        <translation>Un contrôle d'étanchéité demande la pire classe admise, ou un débit.</translation>
    </message>
    <message>
        <source>A leak grows in flight, beside what is hot.</source>
        <translation>Une fuite grandit en vol, à côté de ce qui est chaud.</translation>
    </message>
    <message>
        <source>A least drag of %1 is none. Take it from the maintenance data; the published table begins at 7/16 in.</source>
        <translation>Un couple d'autofreinage minimum de %1 n'en est pas un. Prenez-le dans les données d'entretien ; la table publiée commence à 7/16 in.</translation>
    </message>
    <message>
        <source>A ledger carries a name that cannot be one: "%1".</source>
        <translation>Un registre des entrées porte un nom qui ne peut pas en être un : « %1 ».</translation>
    </message>
    <message>
        <source>A ledger stands there without one entry: what was in it is gone.</source>
        <translation>Un registre des entrées est là sans aucune entrée : ce qu'il contenait a disparu.</translation>
    </message>
    <message>
        <source>A leg at %1</source>
        <translation>Un brin (%1)</translation>
    </message>
    <message>
        <source>A leg carries, left / right</source>
        <translation>Un brin porte, gauche / droit</translation>
    </message>
    <message>
        <source>A leg of %1 cannot hang from a hook %2 above its lifting point. Give the leg's length, and the height, which is at most as much.</source>
        <translation>Un brin de %1 ne peut pas pendre d'un crochet situé %2 au-dessus de son point de levage. Donnez la longueur du brin, et la hauteur, qui est au plus égale.</translation>
    </message>
    <message>
        <source>A lift is planned for the outgoing or for the incoming unit: name one.</source>
        <translation>Un levage se prépare pour l'ensemble sortant ou pour l'ensemble entrant : nommez-en un.</translation>
    </message>
    <message>
        <source>A lift of the %1 unit is planned, within the limits of hoist and sling.</source>
        <translation>Un levage de l'ensemble (%1) est préparé, dans les limites du palan et des élingues.</translation>
    </message>
    <message>
        <source>A limit and its comparison belong together: at most 3 and less than 3 are two limits. Read with four wires, at a bond that is complete; isolate electrical power first.</source>
        <translation>Une limite et sa comparaison vont ensemble : au plus 3 et moins de 3 sont deux limites. Mesurez à quatre fils, sur une métallisation complète ; consignez d'abord l'alimentation électrique.</translation>
    </message>
    <message>
        <source>A limit of %1 for the drag of a nut limits nothing: a nut that turns with nothing does not lock.</source>
        <translation>Une limite de %1 pour le couple d'autofreinage d'un écrou ne limite rien : un écrou qui tourne sans résistance ne freine pas.</translation>
    </message>
    <message>
        <source>A limit of %1 is none that a bond can have. Give a resistance above 0.</source>
        <translation>Une limite de %1 n'est celle d'aucune métallisation. Donnez une résistance supérieure à 0.</translation>
    </message>
    <message>
        <source>A line is a label, a colon, a blank and a value.</source>
        <translation>Une ligne est un libellé, un deux-points, un blanc et une valeur.</translation>
    </message>
    <message>
        <source>A line is longer than any entry can be.</source>
        <translation>Une ligne est plus longue qu'aucune entrée ne peut l'être.</translation>
    </message>
    <message>
        <source>A link to the wrong job ties two pieces of work that have nothing to do with each other.</source>
        <translation>Un lien vers le mauvais chantier attache deux travaux qui n'ont rien à voir l'un avec l'autre.</translation>
    </message>
    <message>
        <source>A load is reckoned on 1 or 2 lifting points, not on %1. Give 1 or 2; what hangs on more is planned by the maintenance data and somebody qualified for it.</source>
        <translation>Une charge se calcule sur 1 ou 2 points de levage, non sur %1. Donnez 1 ou 2 ; ce qui pend à plus de points se prépare d'après les données d'entretien, par une personne qualifiée.</translation>
    </message>
    <message>
        <source>A load of %1 is none. Give a weight above 0.</source>
        <translation>Une charge de %1 n'en est pas une. Donnez une masse supérieure à 0.</translation>
    </message>
    <message>
        <source>A locked fastener looks torqued.</source>
        <translation>Une fixation freinée a l'air serrée au couple.</translation>
    </message>
    <message>
        <source>A lockout always belongs to somebody who is there.</source>
        <translation>Une consignation appartient toujours à quelqu'un de présent.</translation>
    </message>
    <message>
        <source>A look-up of %1 "%2" would leave out entry %3 of ledger %4: the index of where things were used was changed.</source>
        <translation>Une recherche de %1 « %2 » omettrait l'entrée %3 du registre des entrées %4 : l'index des utilisations a été modifié.</translation>
    </message>
    <message>
        <source>A loose union may stay dry for an hour.</source>
        <translation>Un raccord desserré peut rester sec pendant une heure.</translation>
    </message>
    <message>
        <source>A lowest mark of %1 is none of a tool up to %2. Give what is marked on the tool.</source>
        <translation>Un plus petit repère de %1 n'est celui d'aucun outil jusqu'à %2. Donnez ce qui est marqué sur l'outil.</translation>
    </message>
    <message>
        <source>A mark on a picture that nobody attached points at nothing.</source>
        <translation>Un repère sur une image que personne n'a jointe ne désigne rien.</translation>
    </message>
    <message>
        <source>A mate check needs the designations of both halves.</source>
        <translation>Un contrôle d'appariement demande les désignations des deux moitiés.</translation>
    </message>
    <message>
        <source>A mean aerodynamic chord of %1 is none. Give the length from the aircraft's data, or leave it out.</source>
        <translation>Une corde aérodynamique moyenne de %1 n'en est pas une. Donnez la longueur d'après les données de l'aéronef, ou omettez-la.</translation>
    </message>
    <message>
        <source>A mount carries the unit. Release it only when the load is on a hoist and sling within their limits and everybody is clear; never stand or reach under the load. Trained people lift, as the approved maintenance data and the local rules say.</source>
        <translation>Une attache porte l'ensemble. Ne la libérez que lorsque la charge est sur un palan et une élingue dans leurs limites et que tout le monde est à l'écart ; ne vous tenez jamais sous la charge et n'y passez jamais les mains. Le levage est fait par des personnes formées, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A mount that carries nothing is not restored.</source>
        <translation>Une attache qui ne porte rien n'est pas remise en état.</translation>
    </message>
    <message>
        <source>A mount that is undone again hands its load to the others, or to nobody.</source>
        <translation>Une attache déposée à nouveau reporte sa charge sur les autres, ou sur personne.</translation>
    </message>
    <message>
        <source>A mount.</source>
        <translation>Une attache.</translation>
    </message>
    <message>
        <source>A name that nothing answers to would be looked up by nobody.</source>
        <translation>Un nom auquel rien ne répond ne serait vérifié par personne.</translation>
    </message>
    <message>
        <source>A name that nothing answers to would be reopened by nothing.</source>
        <translation>Un nom auquel rien ne répond ne serait rouvert par rien.</translation>
    </message>
    <message>
        <source>A new seal needs its part number.</source>
        <translation>Un joint neuf demande sa référence.</translation>
    </message>
    <message>
        <source>A number that two parts have is the number of neither.</source>
        <translation>Un numéro que portent deux pièces n'est le numéro d'aucune.</translation>
    </message>
    <message>
        <source>A part is in one place.</source>
        <translation>Une pièce n'est qu'à un seul endroit.</translation>
    </message>
    <message>
        <source>A part that did not come off here has another history.</source>
        <translation>Une pièce qui n'a pas été déposée ici a une autre histoire.</translation>
    </message>
    <message>
        <source>A part that moves was taken off first.</source>
        <translation>Une pièce transférée a d'abord été déposée.</translation>
    </message>
    <message>
        <source>A part that stands twice is counted twice, or not at all.</source>
        <translation>Une pièce qui figure deux fois est comptée deux fois, ou pas du tout.</translation>
    </message>
    <message>
        <source>A pass that is not the last must not look final.</source>
        <translation>Une passe qui n'est pas la dernière ne doit pas avoir l'air finale.</translation>
    </message>
    <message>
        <source>A pass to %1 % asks for less than the pass before it. Give the passes in rising order.</source>
        <translation>Une passe à %1 % demande moins que la précédente. Donnez les passes dans l'ordre croissant.</translation>
    </message>
    <message>
        <source>A pass to %1 % of the final torque is none. Give each pass more than 0 and at most 100 %.</source>
        <translation>Une passe à %1 % du couple final n'en est pas une. Donnez à chaque passe plus de 0 et au plus 100 %.</translation>
    </message>
    <message>
        <source>A period that ends before it begins covers nothing.</source>
        <translation>Une période qui finit avant de commencer ne couvre rien.</translation>
    </message>
    <message>
        <source>A picture of something else proves nothing.</source>
        <translation>Une photo d'autre chose ne prouve rien.</translation>
    </message>
    <message>
        <source>A picture with a lane for each person, shift by shift.</source>
        <translation>Une vue avec une ligne par personne, équipe par équipe.</translation>
    </message>
    <message>
        <source>A pin holds what would fall, fire or fold. It is pulled when everybody is clear, and counted. Work as the approved maintenance data and the local rules say.</source>
        <translation>Une goupille retient ce qui tomberait, se déclencherait ou se replierait. Elle est retirée quand tout le monde est à l'écart, et comptée. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A poor bond lets currents find another way.</source>
        <translation>Une mauvaise métallisation laisse les courants chercher un autre chemin.</translation>
    </message>
    <message>
        <source>A printer</source>
        <translation>Une imprimante</translation>
    </message>
    <message>
        <source>A private key must be 32 bytes long.</source>
        <translation>Une clé privée doit avoir 32 octets de long.</translation>
    </message>
    <message>
        <source>A quote opens here and never closes.</source>
        <translation>Un guillemet s'ouvre ici et ne se ferme jamais.</translation>
    </message>
    <message>
        <source>A quote stands inside a field that does not begin with one. Put the field in quotes and write the quote twice.</source>
        <translation>Un guillemet se trouve dans un champ qui ne commence pas par un guillemet. Mettez le champ entre guillemets et doublez le guillemet.</translation>
    </message>
    <message>
        <source>A rate of leak is not below 0.</source>
        <translation>Un débit de fuite n'est pas inférieur à 0.</translation>
    </message>
    <message>
        <source>A rated load of %1 is none. Give the weight that stands on the accessory.</source>
        <translation>Une charge nominale de %1 n'en est pas une. Donnez la masse marquée sur l'accessoire.</translation>
    </message>
    <message>
        <source>A reading belongs to a joint that is made.</source>
        <translation>Une mesure se rapporte à un assemblage fait.</translation>
    </message>
    <message>
        <source>A reading is as good as the tool on that day.</source>
        <translation>Une mesure vaut ce que vaut l'outil ce jour-là.</translation>
    </message>
    <message>
        <source>A reading is as good as the tool turns out to be.</source>
        <translation>Une mesure vaut ce que l'outil se révèle valoir.</translation>
    </message>
    <message>
        <source>A reading must lead to one tool.</source>
        <translation>Une mesure doit mener à un seul outil.</translation>
    </message>
    <message>
        <source>A reading outside its limits is no matter of opinion.</source>
        <translation>Une mesure hors de ses limites n'est pas affaire d'opinion.</translation>
    </message>
    <message>
        <source>A reading without a specification proves nothing.</source>
        <translation>Une mesure sans spécification ne prouve rien.</translation>
    </message>
    <message>
        <source>A reconnection without a disconnection hides one that nobody logged.</source>
        <translation>Un rebranchement sans débranchement en cache un que personne n'a enregistré.</translation>
    </message>
    <message>
        <source>A register without anybody who can sign could never be mended.</source>
        <translation>Un répertoire où personne ne peut signer ne pourrait jamais être réparé.</translation>
    </message>
    <message>
        <source>A rejection says what is wrong with a joint that was made.</source>
        <translation>Un refus dit ce qui ne va pas dans un assemblage qui a été fait.</translation>
    </message>
    <message>
        <source>A released record must stay what was released.</source>
        <translation>Un dossier dont la remise en service a été prononcée doit rester ce qu'il était alors.</translation>
    </message>
    <message>
        <source>A requirement is not struck by those who have to show it.</source>
        <translation>Une exigence n'est pas rayée par ceux qui doivent y satisfaire.</translation>
    </message>
    <message>
        <source>A requirement that is in the way must not be talked away.</source>
        <translation>Une exigence qui gêne ne doit pas être écartée par des mots.</translation>
    </message>
    <message>
        <source>A result is shown with 0 to %1 decimal places, not %2.</source>
        <translation>Un résultat s'affiche avec 0 à %1 décimales, non %2.</translation>
    </message>
    <message>
        <source>A scheme that looks 0 minutes after wiping dry has no time. Leave the minutes out.</source>
        <translation>Un barème qui regarde 0 minute après essuyage à sec n'a pas de durée. Omettez les minutes.</translation>
    </message>
    <message>
        <source>A second reading must not paper over the first.</source>
        <translation>Une deuxième mesure ne doit pas masquer la première.</translation>
    </message>
    <message>
        <source>A second reading shows whether the first one touched.</source>
        <translation>Une deuxième mesure montre si la première faisait contact.</translation>
    </message>
    <message>
        <source>A second signature would hide which one counts.</source>
        <translation>Une deuxième signature cacherait celle qui compte.</translation>
    </message>
    <message>
        <source>A seed is 1 to 128 characters in one line, each to be seen, and no blank at either end.</source>
        <translation>Une graine a 1 à 128 caractères sur une ligne, chacun visible, sans blanc à l'une ni à l'autre extrémité.</translation>
    </message>
    <message>
        <source>A seep of one scheme is a heavy seep of another.</source>
        <translation>Un suintement selon un barème est un fort suintement selon un autre.</translation>
    </message>
    <message>
        <source>A self-locking nut that is used again shows by its drag that it still locks: measure and record it.</source>
        <translation>Un écrou autofreiné réutilisé montre par son couple d'autofreinage qu'il freine encore : mesurez-le et enregistrez-le.</translation>
    </message>
    <message>
        <source>A sense line may be hot and under the pressure of what it senses: air, oil or fuel. Isolate the source, let it cool, release the pressure and protect skin and eyes, as the approved maintenance data and the local rules say.</source>
        <translation>Une conduite de mesure peut être chaude et à la pression de ce qu'elle mesure : air, huile ou carburant. Consignez la source, laissez refroidir, faites tomber la pression et protégez peau et yeux, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A setting of %1 does not serve: of the wrench's marks, %2 to %3 give the torque that is asked for.</source>
        <translation>Un réglage de %1 ne convient pas : parmi les repères de la clé, %2 à %3 donnent le couple demandé.</translation>
    </message>
    <message>
        <source>A short name without blanks, such as last-look</source>
        <translation>Un nom court sans blanc, par exemple last-look</translation>
    </message>
    <message>
        <source>A signature is worth what is known of the signer.</source>
        <translation>Une signature vaut ce que l'on sait du signataire.</translation>
    </message>
    <message>
        <source>A signature that nothing asked for hides which one counts.</source>
        <translation>Une signature que rien n'a demandée cache celle qui compte.</translation>
    </message>
    <message>
        <source>A sling carries the unit. It comes off when the mounts hold the unit or it rests in its stand, with nobody under the load. Work as the approved maintenance data and the local rules say.</source>
        <translation>Une élingue porte l'ensemble. Elle est retirée quand les attaches tiennent l'ensemble ou qu'il repose dans son bâti, sans que personne soit sous la charge. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A stand that is not for this unit lets it fall. Lock wheels and pins before the load comes on, and keep hands out from between. Work as the approved maintenance data and the local rules say.</source>
        <translation>Un bâti qui n'est pas prévu pour cet ensemble le laisse tomber. Bloquez roues et goupilles avant que la charge n'arrive, et ne laissez pas les mains entre les deux. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A station's secret is %1 bytes long, not %2.</source>
        <translation>Le secret d'un poste a %1 octets de long, et non %2.</translation>
    </message>
    <message>
        <source>A stiff load may hang on two of all its legs: at each of two points one leg is reckoned with, however many there are.</source>
        <translation>Une charge rigide peut pendre à deux de ses brins : à chacun des deux points on compte un seul brin, quel que soit leur nombre.</translation>
    </message>
    <message>
        <source>A stiff load may hang on two of all its legs: two are reckoned with, however many there are.</source>
        <translation>Une charge rigide peut pendre à deux de ses brins : on en compte deux, quel que soit leur nombre.</translation>
    </message>
    <message>
        <source>A stored transfer is damaged. Make a new one where the key is.</source>
        <translation>Un transfert enregistré est endommagé. Faites-en un nouveau là où se trouve la clé.</translation>
    </message>
    <message>
        <source>A tag hangs on what is off. Leave it out.</source>
        <translation>Une étiquette se pose sur ce qui est déposé. Laissez-la vide.</translation>
    </message>
    <message>
        <source>A tag may give the limit of all legs together, or at an angle: what counts here is what one leg carries hanging straight.</source>
        <translation>Une étiquette peut donner la limite de tous les brins ensemble, ou sous un angle : ici compte ce qu'un brin porte à la verticale.</translation>
    </message>
    <message>
        <source>A tag points at one open interface, for the whole job.</source>
        <translation>Une étiquette désigne un seul raccordement ouvert, pour tout le chantier.</translation>
    </message>
    <message>
        <source>A tag that is missing marks a joint, or lies in an engine.</source>
        <translation>Une étiquette manquante marque un assemblage, ou se trouve dans un moteur.</translation>
    </message>
    <message>
        <source>A tag that is struck from the paper still hangs on the breaker.</source>
        <translation>Une étiquette rayée sur le papier est encore posée sur le disjoncteur.</translation>
    </message>
    <message>
        <source>A test current can spark where a contact slips: not near fuel, vapour or open tanks, unless meter and procedure are approved for it.</source>
        <translation>Un courant d'essai peut faire une étincelle quand un contact glisse : jamais près de carburant, de vapeurs ou de réservoirs ouverts, sauf si l'appareil et la méthode sont approuvés pour cela.</translation>
    </message>
    <message>
        <source>A test says nothing of what was open when it was made.</source>
        <translation>Un essai ne dit rien de ce qui était ouvert quand il a été fait.</translation>
    </message>
    <message>
        <source>A test that failed says which interfaces are worked on again. If none of them is the cause, raise a finding, and name those that were touched to find it.</source>
        <translation>Un essai échoué indique quels raccordements sont retravaillés. Si aucun d'eux n'est la cause, ouvrez un constat, et nommez ceux qui ont été touchés pour la trouver.</translation>
    </message>
    <message>
        <source>A test that was passed reopens nothing.</source>
        <translation>Un essai réussi ne rouvre rien.</translation>
    </message>
    <message>
        <source>A tool that is set needs its graduation, or nobody can tell whether it was set to one of its marks.</source>
        <translation>Un outil à réglage demande sa graduation, sinon personne ne peut dire s'il a été réglé sur l'un de ses repères.</translation>
    </message>
    <message>
        <source>A tool that nobody can tell from another is not missed.</source>
        <translation>L'absence d'un outil que personne ne peut distinguer d'un autre ne se remarque pas.</translation>
    </message>
    <message>
        <source>A torque band runs from a least above 0 to a most, in a unit of torque; not from %1 to %2.</source>
        <translation>Une plage de couple va d'un minimum supérieur à 0 à un maximum, dans une unité de couple ; non de %1 à %2.</translation>
    </message>
    <message>
        <source>A torque is specified by its fasteners, least, most and unit; this one is missing.</source>
        <translation>Un couple de serrage se spécifie par ses fixations, son minimum, son maximum et son unité ; il manque une de ces indications.</translation>
    </message>
    <message>
        <source>A torque tool has its usable range in a unit of torque.</source>
        <translation>Un outil dynamométrique a sa plage d'utilisation dans une unité de couple.</translation>
    </message>
    <message>
        <source>A torque, length, weight, volume or other quantity in another unit of its kind, by exact factors.</source>
        <translation>Un couple, une longueur, une masse, un volume ou une autre grandeur dans une autre unité de son genre, par facteurs exacts.</translation>
    </message>
    <message>
        <source>A transfer code has %1 letters and digits; %2 were typed.</source>
        <translation>Un code de transfert a %1 lettres et chiffres ; %2 ont été saisis.</translation>
    </message>
    <message>
        <source>A transfer code has the letters A to Z and the digits 2 to 7; "%1" is none of them.</source>
        <translation>Un code de transfert a les lettres A à Z et les chiffres 2 à 7 ; « %1 » n'en fait pas partie.</translation>
    </message>
    <message>
        <source>A transfer code is %1 bytes long, not %2.</source>
        <translation>Un code de transfert a %1 octets de long, et non %2.</translation>
    </message>
    <message>
        <source>A transfer is open for 1 minute to %1 hours.</source>
        <translation>Un transfert est ouvert de 1 minute à %1 heures.</translation>
    </message>
    <message>
        <source>A trial fit looks finished from a metre away.</source>
        <translation>Un montage à blanc a l'air terminé à un mètre de distance.</translation>
    </message>
    <message>
        <source>A turn after the torque runs from a least angle above 0 to a most of a full turn at most; give both.</source>
        <translation>Une rotation après le couple va d'un angle minimal supérieur à 0 à un angle maximal d'un tour complet au plus ; indiquez les deux.</translation>
    </message>
    <message>
        <source>A unit is in its place.</source>
        <translation>Un ensemble est en place.</translation>
    </message>
    <message>
        <source>A unit that leaves takes its blanks along, each of them counted.</source>
        <translation>Un ensemble qui part emporte ses obturateurs, chacun compté.</translation>
    </message>
    <message>
        <source>A usable range needs its lower and upper end and a unit, from less to more; a tool that measures nothing has none of the three.</source>
        <translation>Une plage d'utilisation demande ses bornes inférieure et supérieure et une unité, du moins au plus ; un outil qui ne mesure rien n'a aucune des trois.</translation>
    </message>
    <message>
        <source>A value that was read in a test has a name.</source>
        <translation>Une valeur relevée lors d'un essai a un nom.</translation>
    </message>
    <message>
        <source>A walk-round looks at what was said to be undone.</source>
        <translation>Un tour d'inspection regarde ce qui a été dit déposé.</translation>
    </message>
    <message>
        <source>A warning tag stops the hand that would switch on. Only the person named on it takes it off. Work as the approved maintenance data and the local rules say.</source>
        <translation>Une étiquette d'avertissement arrête la main qui mettrait en marche. Seule la personne qui y est nommée la retire. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>A wetted area of %1 is none. Give its size across as a length, or 0 when it is dry.</source>
        <translation>Une surface mouillée de %1 n'en est pas une. Donnez sa taille comme longueur, ou 0 si elle est sèche.</translation>
    </message>
    <message>
        <source>A whole number</source>
        <translation>Un nombre entier</translation>
    </message>
    <message>
        <source>A worn self-locking nut backs off.</source>
        <translation>Un écrou autofreiné usé se dévisse.</translation>
    </message>
    <message>
        <source>A wrench is longer than %1: measure from the middle of its grip to the drive.</source>
        <translation>Une clé est plus longue que %1 : mesurez du milieu de sa poignée à l'entraînement.</translation>
    </message>
    <message>
        <source>A wrench or an adapter can slip: pull, with a firm stand, and with nothing sharp behind the hand.</source>
        <translation>Une clé ou un adaptateur peut glisser : tirez, bien d'aplomb, sans rien de tranchant derrière la main.</translation>
    </message>
    <message>
        <source>A wrong length or deviation makes every reading wrong.</source>
        <translation>Une longueur ou un écart faux rend fausse chaque mesure.</translation>
    </message>
    <message>
        <source>A wrong limit is signed for as readily as a right one.</source>
        <translation>Une limite fausse est signée aussi volontiers qu'une juste.</translation>
    </message>
    <message>
        <source>A wrong setting clicks as nicely as a right one.</source>
        <translation>Un mauvais réglage se déclenche aussi bien qu'un bon.</translation>
    </message>
    <message>
        <source>A zero of the leads of %1 is none. Set the meter to zero with the leads on one piece of metal, and measure again.</source>
        <translation>Un zéro des cordons de %1 n'en est pas un. Mettez l'appareil à zéro avec les cordons sur une même pièce de métal, et mesurez à nouveau.</translation>
    </message>
    <message>
        <source>A&amp;ttach it to %1 …</source>
        <translation>La &amp;joindre à %1 …</translation>
    </message>
    <message>
        <source>A&amp;ttach it to …</source>
        <translation>La &amp;joindre à …</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Objet</translation>
    </message>
    <message>
        <source>About your key</source>
        <translation>À propos de votre clé</translation>
    </message>
    <message>
        <source>Accept</source>
        <translation>Accepter</translation>
    </message>
    <message>
        <source>Accept the handover</source>
        <translation>Accepter la passation</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Accepté</translation>
    </message>
    <message>
        <source>Access panel</source>
        <translation>Panneau d'accès</translation>
    </message>
    <message>
        <source>Accessory leaves with the outgoing unit</source>
        <translation>L'accessoire part avec l'ensemble sortant</translation>
    </message>
    <message>
        <source>Accessory listed</source>
        <translation>Accessoire listé</translation>
    </message>
    <message>
        <source>Accessory moved to the incoming unit</source>
        <translation>Accessoire transféré sur l'ensemble entrant</translation>
    </message>
    <message>
        <source>Across, ‰</source>
        <translation>Horizontalement, ‰</translation>
    </message>
    <message>
        <source>Adapter</source>
        <translation>Adaptateur</translation>
    </message>
    <message>
        <source>Adapter's angle</source>
        <translation>Angle de l'adaptateur</translation>
    </message>
    <message>
        <source>Adapter, drive to fastener</source>
        <translation>Adaptateur, carré à fixation</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Ajouter une photo</translation>
    </message>
    <message>
        <source>Add row</source>
        <translation>Ajouter une ligne</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Après</translation>
    </message>
    <message>
        <source>After several wrong PINs or passphrases %1 must wait another %2 before the next try.</source>
        <translation>Après plusieurs PIN ou phrases secrètes faux, %1 doit attendre encore %2 avant le prochain essai.</translation>
    </message>
    <message>
        <source>After: %1</source>
        <translation>Après : %1</translation>
    </message>
    <message>
        <source>Agree: not applicable</source>
        <translation>Donner l'accord : non applicable</translation>
    </message>
    <message>
        <source>Agreed: not applicable</source>
        <translation>Accord donné : non applicable</translation>
    </message>
    <message>
        <source>Aircraft</source>
        <translation>Aéronef</translation>
    </message>
    <message>
        <source>Aircraft half</source>
        <translation>Moitié côté avion</translation>
    </message>
    <message>
        <source>Aircraft type</source>
        <translation>Type d'aéronef</translation>
    </message>
    <message>
        <source>Aircraft types</source>
        <translation>Types d'aéronef</translation>
    </message>
    <message>
        <source>All differences, with the hashes of the entries.</source>
        <translation>Toutes les différences, avec les empreintes des entrées.</translation>
    </message>
    <message>
        <source>All entries of all jobs, with their hashes.</source>
        <translation>Toutes les entrées de tous les chantiers, avec leurs empreintes.</translation>
    </message>
    <message>
        <source>All entries, in order</source>
        <translation>Toutes les entrées, dans l'ordre</translation>
    </message>
    <message>
        <source>All fasteners are fitted, flush and of the right length.</source>
        <translation>Toutes les fixations sont posées, affleurantes et de la bonne longueur.</translation>
    </message>
    <message>
        <source>All interfaces of the job</source>
        <translation>Tous les raccordements du chantier</translation>
    </message>
    <message>
        <source>All kinds</source>
        <translation>Tous les types</translation>
    </message>
    <message>
        <source>All kinds of entries</source>
        <translation>Tous les types d'entrées</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Toute l'image</translation>
    </message>
    <message>
        <source>All of it is as it was signed, but entries were not allowed, as the rules of this program have it. Entries: %1.</source>
        <translation>Tout est tel qu'il a été signé, mais des entrées n'étaient pas permises selon les règles de ce programme. Entrées : %1.</translation>
    </message>
    <message>
        <source>All people</source>
        <translation>Toutes les personnes</translation>
    </message>
    <message>
        <source>All zones</source>
        <translation>Toutes les zones</translation>
    </message>
    <message>
        <source>Allowed by</source>
        <translation>Autorisé par</translation>
    </message>
    <message>
        <source>Also counted by</source>
        <translation>Compté aussi par</translation>
    </message>
    <message>
        <source>Also looked at by</source>
        <translation>Également regardé par</translation>
    </message>
    <message>
        <source>Also open</source>
        <translation>Aussi ouvert</translation>
    </message>
    <message>
        <source>An acceptance names what it accepts.</source>
        <translation>Une acceptation nomme ce qu'elle accepte.</translation>
    </message>
    <message>
        <source>An adapter changes what arrives at the fastener.</source>
        <translation>Un adaptateur change ce qui arrive à la fixation.</translation>
    </message>
    <message>
        <source>An adapter is told by three figures: the wrench's length, the adapter's length and its angle. Fill in all, or none.</source>
        <translation>Un adaptateur se décrit par trois valeurs : la longueur de la clé, la longueur de l'adaptateur et son angle. Remplissez-les toutes, ou aucune.</translation>
    </message>
    <message>
        <source>An agreement belongs to what was said.</source>
        <translation>Un accord se rapporte à ce qui a été dit.</translation>
    </message>
    <message>
        <source>An angle of %1° from the horizontal is none of a sling. Give more than 0° and at most 90°, which hangs straight down.</source>
        <translation>Un angle de %1° par rapport à l'horizontale n'est celui d'aucune élingue. Donnez plus de 0° et au plus 90°, soit à la verticale.</translation>
    </message>
    <message>
        <source>An answer belongs to a question.</source>
        <translation>Une réponse se rapporte à une question.</translation>
    </message>
    <message>
        <source>An authorisation's number names one authorisation for ever.</source>
        <translation>Le numéro d'une habilitation désigne une seule habilitation, pour toujours.</translation>
    </message>
    <message>
        <source>An empty list proves nothing.</source>
        <translation>Une liste vide ne prouve rien.</translation>
    </message>
    <message>
        <source>An empty place in a kit is a tool left somewhere.</source>
        <translation>Une place vide dans une mallette est un outil laissé quelque part.</translation>
    </message>
    <message>
        <source>An empty weight of %1 is none. Give the weight of the aircraft's weight record.</source>
        <translation>Une masse à vide de %1 n'en est pas une. Donnez la masse de la fiche de masse de l'aéronef.</translation>
    </message>
    <message>
        <source>An engine change in the middle of its second shift, with invented people whose PINs are shown.</source>
        <translation>Un changement de moteur au milieu de sa deuxième vacation, avec des personnes inventées dont les PIN sont affichés.</translation>
    </message>
    <message>
        <source>An engine with a blank in it is within no limits.</source>
        <translation>Un moteur avec un obturateur à l'intérieur n'est dans aucune limite.</translation>
    </message>
    <message>
        <source>An entry made later than the act says so, and cannot say the impossible.</source>
        <translation>Une entrée faite après l'acte le dit, et ne peut pas dire l'impossible.</translation>
    </message>
    <message>
        <source>An entry of a kind that this version does not know: %1.</source>
        <translation>Une entrée d'un type que cette version ne connaît pas : %1.</translation>
    </message>
    <message>
        <source>An exception that one person makes alone is a habit.</source>
        <translation>Une exception qu'une personne fait seule est une habitude.</translation>
    </message>
    <message>
        <source>An extract, and no release. The signed entries of the store govern what it says.</source>
        <translation>Un extrait, et non une remise en service. Pour ce qu'il dit, les entrées signées de la base font foi.</translation>
    </message>
    <message>
        <source>An id that was given twice would make two people sign as one.</source>
        <translation>Un identifiant attribué deux fois ferait signer deux personnes comme une seule.</translation>
    </message>
    <message>
        <source>An independent inspection must not be marked as less than it is.</source>
        <translation>Un contrôle indépendant ne doit pas être marqué comme moins que ce qu'il est.</translation>
    </message>
    <message>
        <source>An inspection against the limits of yesterday proves nothing today.</source>
        <translation>Un contrôle par rapport aux limites d'hier ne prouve rien aujourd'hui.</translation>
    </message>
    <message>
        <source>An inspection is worth nothing once hands were on the item again.</source>
        <translation>Un contrôle ne vaut plus rien dès que des mains ont retouché l'élément.</translation>
    </message>
    <message>
        <source>An inspection that held yesterday says nothing of the day on which the load hangs.</source>
        <translation>Un contrôle valable hier ne dit rien du jour où la charge est suspendue.</translation>
    </message>
    <message>
        <source>An inspector looks for what is asked for.</source>
        <translation>Un contrôleur cherche ce qui est demandé.</translation>
    </message>
    <message>
        <source>An inspector signs for a finished joint, not for a promised one.</source>
        <translation>Un contrôleur signe pour un assemblage terminé, non pour un assemblage promis.</translation>
    </message>
    <message>
        <source>An inspector's word is not set aside by those who were inspected, nor one's warning by another.</source>
        <translation>La parole d'un contrôleur n'est pas écartée par ceux qui ont été contrôlés, ni l'avertissement de l'un par un autre.</translation>
    </message>
    <message>
        <source>An interface has at most %1 fasteners; divide it into several interfaces.</source>
        <translation>Un raccordement a au plus %1 fixations ; divisez-le en plusieurs raccordements.</translation>
    </message>
    <message>
        <source>An interface is inspected once or twice, not %1 times.</source>
        <translation>Un raccordement est contrôlé une ou deux fois, non %1 fois.</translation>
    </message>
    <message>
        <source>An interface list is taken into a job. Open the job, then drop the list again.</source>
        <translation>Une liste de raccordements s'importe dans un chantier. Ouvrez le chantier, puis déposez de nouveau la liste.</translation>
    </message>
    <message>
        <source>An isolation protects people. It comes off when everybody behind it is clear and told, by the person who put it on; licensed or authorised people prove that what it isolates is dead. Work as the approved maintenance data and the local rules say.</source>
        <translation>Une consignation protège des personnes. Elle est levée quand tous ceux qui se trouvent derrière sont à l'écart et prévenus, par la personne qui l'a posée ; des personnes titulaires d'une licence ou habilitées prouvent que ce qu'elle consigne est hors énergie. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>An item that two crews work on belongs to neither.</source>
        <translation>Un élément sur lequel travaillent deux équipes n'appartient à aucune.</translation>
    </message>
    <message>
        <source>An order is "cross", or names each of the %1 fasteners once.</source>
        <translation>Un ordre est « cross », ou nomme une fois chacune des %1 fixations.</translation>
    </message>
    <message>
        <source>Angle from the horizontal</source>
        <translation>Angle par rapport à l'horizontale</translation>
    </message>
    <message>
        <source>Angle from the vertical</source>
        <translation>Angle par rapport à la verticale</translation>
    </message>
    <message>
        <source>Angle of the legs from the horizontal</source>
        <translation>Angle des brins par rapport à l'horizontale</translation>
    </message>
    <message>
        <source>Another program holds the store. Nothing was recorded. Wait for it to finish, or close it, and try again.</source>
        <translation>Un autre programme occupe la base. Rien n'a été consigné. Attendez qu'il finisse, ou fermez-le, et réessayez.</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Réponse</translation>
    </message>
    <message>
        <source>Answer:</source>
        <translation>Réponse :</translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation>Partout</translation>
    </message>
    <message>
        <source>Applied</source>
        <translation>Mis en place</translation>
    </message>
    <message>
        <source>Applied for the job</source>
        <translation>Mis en place pour le chantier</translation>
    </message>
    <message>
        <source>Applied, and not removed: %1, at least %2.</source>
        <translation>En place, et non retirés : %1, au moins %2.</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Mettre en place</translation>
    </message>
    <message>
        <source>Approval</source>
        <translation>Agrément</translation>
    </message>
    <message>
        <source>Approval reference</source>
        <translation>Référence d'agrément</translation>
    </message>
    <message>
        <source>Arm of the incoming unit</source>
        <translation>Bras de levier de l'ensemble entrant</translation>
    </message>
    <message>
        <source>Arm of the outgoing unit</source>
        <translation>Bras de levier de l'ensemble sortant</translation>
    </message>
    <message>
        <source>Arrow keys walk along the boundary, Page Down goes on to the next zone, Return opens.</source>
        <translation>Les flèches parcourent la limite, Page suivante passe à la zone suivante, Entrée ouvre.</translation>
    </message>
    <message>
        <source>As a flow, q</source>
        <translation>En débit, q</translation>
    </message>
    <message>
        <source>As drops, n</source>
        <translation>En gouttes, n</translation>
    </message>
    <message>
        <source>As found</source>
        <translation>État constaté</translation>
    </message>
    <message>
        <source>As it was at</source>
        <translation>État au</translation>
    </message>
    <message>
        <source>As many readings as are asked for can be recorded.</source>
        <translation>On peut enregistrer autant de mesures qu'il en est demandé.</translation>
    </message>
    <message>
        <source>As of the last entry, %1. What was signed later is not in this picture.</source>
        <translation>À la dernière entrée, %1. Ce qui a été signé plus tard n'est pas dans cette vue.</translation>
    </message>
    <message>
        <source>As recorded</source>
        <translation>Tel que consigné</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>As the last entry saw it</source>
        <translation>Tel que vu à la dernière entrée</translation>
    </message>
    <message>
        <source>As this job has it</source>
        <translation>Telle que ce chantier l'a</translation>
    </message>
    <message>
        <source>As what it is said to be, %1 would have waited for the hold point %2 (%3), and was undone before that was passed. An inspector who had no hand in it looks, and gives its details.</source>
        <translation>En tant que ce qu'il serait, %1 aurait attendu le point d'arrêt %2 (%3), et il a été déposé avant que celui-ci ne soit franchi. Un contrôleur qui n'y a pas participé regarde, et donne ses détails.</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Question</translation>
    </message>
    <message>
        <source>Asked at</source>
        <translation>Demandé le</translation>
    </message>
    <message>
        <source>Asked for here</source>
        <translation>Demandé ici</translation>
    </message>
    <message>
        <source>Asked for once it is joined again.</source>
        <translation>Demandé une fois qu'il est de nouveau raccordé.</translation>
    </message>
    <message>
        <source>Asked for were entries of kind %1, %2; of every kind and all its time there are: %3.</source>
        <translation>Demandées : entrées du type %1, %2 ; de tout type et de toute date, il y en a : %3.</translation>
    </message>
    <message>
        <source>Asked of</source>
        <translation>Demandé à</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>At a station where you sign: People and tools, "Carry your key over". Type here the code that it shows.</source>
        <translation>Sur un poste où vous signez : Personnes et outils, « Transférer votre clé ». Saisissez ici le code qu'il affiche.</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>At least %1 characters, typed by its owner</source>
        <translation>Au moins %1 caractères, saisis par son propriétaire</translation>
    </message>
    <message>
        <source>At least one is applied, or nothing is asked for.</source>
        <translation>Au moins un est en place, ou rien n'est demandé.</translation>
    </message>
    <message>
        <source>At left / right point</source>
        <translation>Au point gauche / droit</translation>
    </message>
    <message>
        <source>At the ends of its scale a tool tells anything.</source>
        <translation>Aux extrémités de son échelle, un outil indique n'importe quoi.</translation>
    </message>
    <message>
        <source>At the fastener</source>
        <translation>À la fixation</translation>
    </message>
    <message>
        <source>At the fastener then</source>
        <translation>Alors, à la fixation</translation>
    </message>
    <message>
        <source>At the latest on</source>
        <translation>Au plus tard le</translation>
    </message>
    <message>
        <source>At the other station: this store or a copy made from now on, "Take your key over", the code, your PIN.</source>
        <translation>Sur l'autre poste : cette base ou une copie faite à partir de maintenant, « Reprendre votre clé », le code, votre PIN.</translation>
    </message>
    <message>
        <source>At the setting</source>
        <translation>Au réglage</translation>
    </message>
    <message>
        <source>Attach a photo</source>
        <translation>Joindre une photo</translation>
    </message>
    <message>
        <source>Attach it once more all the same</source>
        <translation>La joindre tout de même une fois de plus</translation>
    </message>
    <message>
        <source>Attachment %1 is damaged: its content was changed after it was recorded. Verify the store, and keep the backup that you have.</source>
        <translation>La pièce jointe %1 est endommagée : son contenu a été modifié après avoir été consigné. Vérifiez la base, et gardez la sauvegarde que vous avez.</translation>
    </message>
    <message>
        <source>Authorisation</source>
        <translation>Habilitation</translation>
    </message>
    <message>
        <source>Authorisation granted</source>
        <translation>Habilitation accordée</translation>
    </message>
    <message>
        <source>Authorisation withdrawn</source>
        <translation>Habilitation retirée</translation>
    </message>
    <message>
        <source>Authorisations</source>
        <translation>Habilitations</translation>
    </message>
    <message>
        <source>Authorisations of %1</source>
        <translation>Habilitations de %1</translation>
    </message>
    <message>
        <source>Authorised to</source>
        <translation>Habilité à</translation>
    </message>
    <message>
        <source>Authorised to, under</source>
        <translation>Habilité à, selon</translation>
    </message>
    <message>
        <source>Authority</source>
        <translation>Habilitation</translation>
    </message>
    <message>
        <source>Authority reference</source>
        <translation>Référence de l'autorité</translation>
    </message>
    <message>
        <source>BACK, NOT SECURED</source>
        <translation>REPOSÉ, NON SÉCURISÉ</translation>
    </message>
    <message>
        <source>BACK, NOT TORQUED</source>
        <translation>REPOSÉ, NON SERRÉ AU COUPLE</translation>
    </message>
    <message>
        <source>BLANK MISSING: %1, finding %2</source>
        <translation>OBTURATEUR MANQUANT : %1, constat %2</translation>
    </message>
    <message>
        <source>Back to</source>
        <translation>Retour à</translation>
    </message>
    <message>
        <source>Back up the store</source>
        <translation>Sauvegarder la base</translation>
    </message>
    <message>
        <source>Back up…</source>
        <translation>Sauvegarder…</translation>
    </message>
    <message>
        <source>Backing up the store</source>
        <translation>Sauvegarde de la base</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Solde</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Band: the maintenance data, as given; both ends belong to it (common practice)</source>
        <translation>Plage : les données d'entretien, telles quelles ; ses deux bords en font partie (usage courant)</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Batch (number)</source>
        <translation>Lot (numéro)</translation>
    </message>
    <message>
        <source>Batch of the new</source>
        <translation>Lot des pièces neuves</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Avant</translation>
    </message>
    <message>
        <source>Before a run: area clear and looked over for loose things, wheels chocked, fire cover there, and everybody knows the signals.</source>
        <translation>Avant un point fixe : zone dégagée et vérifiée (aucun objet non fixé), roues calées, moyens incendie présents, et tout le monde connaît les signaux.</translation>
    </message>
    <message>
        <source>Before an isolation comes off: everybody is clear, told, and accounted for, and nothing behind it is open.</source>
        <translation>Avant de lever une consignation : tout le monde est à l'écart, prévenu et compté, et rien n'est ouvert derrière elle.</translation>
    </message>
    <message>
        <source>Before and after side by side, and what came in</source>
        <translation>Avant et après côte à côte, et ce qui est arrivé</translation>
    </message>
    <message>
        <source>Before and after, side by side</source>
        <translation>Avant et après, côte à côte</translation>
    </message>
    <message>
        <source>Before the job names its aircraft and its data, nothing can be said about it.</source>
        <translation>Tant que le chantier ne nomme pas son aéronef et ses données, rien ne peut en être dit.</translation>
    </message>
    <message>
        <source>Before the unit moves: whether everything is free</source>
        <translation>Avant que l'ensemble bouge : si tout est libre</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Avant : %1</translation>
    </message>
    <message>
        <source>Beside the whole job</source>
        <translation>À côté du chantier entier</translation>
    </message>
    <message>
        <source>Between</source>
        <translation>Entre</translation>
    </message>
    <message>
        <source>Between the two lifting points</source>
        <translation>Entre les deux points de levage</translation>
    </message>
    <message>
        <source>Blank</source>
        <translation>Obturateur</translation>
    </message>
    <message>
        <source>Blank missing</source>
        <translation>Obturateur manquant</translation>
    </message>
    <message>
        <source>Blank missing from</source>
        <translation>Obturateur manquant sur</translation>
    </message>
    <message>
        <source>Blanks fitted to the aircraft's end</source>
        <translation>Obturateurs posés côté avion</translation>
    </message>
    <message>
        <source>Blanks fitted to the unit's end</source>
        <translation>Obturateurs posés côté ensemble</translation>
    </message>
    <message>
        <source>Blanks missing</source>
        <translation>Obturateurs manquants</translation>
    </message>
    <message>
        <source>Blanks removed</source>
        <translation>Obturateurs retirés</translation>
    </message>
    <message>
        <source>Blanks removed from the aircraft's end</source>
        <translation>Obturateurs retirés côté avion</translation>
    </message>
    <message>
        <source>Blanks removed from the unit's end</source>
        <translation>Obturateurs retirés côté ensemble</translation>
    </message>
    <message>
        <source>Bleed air is hot and under pressure. Isolate and tag every source, let it cool and release the pressure before a coupling is loosened, as the approved maintenance data and the local rules say.</source>
        <translation>L'air de prélèvement est chaud et sous pression. Consignez et étiquetez chaque source, laissez refroidir et faites tomber la pression avant de desserrer un raccord, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Bleed line</source>
        <translation>Conduite de prélèvement d'air</translation>
    </message>
    <message>
        <source>Bolts point the way that the maintenance data shows.</source>
        <translation>Les vis sont orientées comme le montrent les données d'entretien.</translation>
    </message>
    <message>
        <source>Bonding</source>
        <translation>Métallisation</translation>
    </message>
    <message>
        <source>Bonding by voltage drop</source>
        <translation>Métallisation par chute de tension</translation>
    </message>
    <message>
        <source>Bonding lead</source>
        <translation>Tresse de métallisation</translation>
    </message>
    <message>
        <source>Bonding limit is met</source>
        <translation>La limite de métallisation est tenue</translation>
    </message>
    <message>
        <source>Bonding measured</source>
        <translation>Métallisation mesurée</translation>
    </message>
    <message>
        <source>Bonding needs its greatest resistance and a unit.</source>
        <translation>La métallisation demande sa résistance maximale et une unité.</translation>
    </message>
    <message>
        <source>Bonding readings</source>
        <translation>Relevés de métallisation</translation>
    </message>
    <message>
        <source>Bonding resistance</source>
        <translation>Résistance de métallisation</translation>
    </message>
    <message>
        <source>Bonding resistance, most</source>
        <translation>Résistance de métallisation, maximum</translation>
    </message>
    <message>
        <source>Bonding unit</source>
        <translation>Unité de métallisation</translation>
    </message>
    <message>
        <source>Both halves identified</source>
        <translation>Deux moitiés identifiées</translation>
    </message>
    <message>
        <source>Both readings have to meet the limit, so the worse one counts.</source>
        <translation>Les deux lectures doivent respecter la limite ; la plus mauvaise compte donc.</translation>
    </message>
    <message>
        <source>But not</source>
        <translation>Mais pas</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>By "%1" what was seen is %2, not %3. Leave the class out: it follows from the size.</source>
        <translation>D'après « %1 », ce qui a été vu est %2, non %3. Laissez la classe vide : elle découle de l'étendue.</translation>
    </message>
    <message>
        <source>By somebody who had no hand in it</source>
        <translation>Par quelqu'un qui n'y a pas pris part</translation>
    </message>
    <message>
        <source>By whom, if not you</source>
        <translation>Par qui, si ce n'est vous</translation>
    </message>
    <message>
        <source>C&amp;ompare</source>
        <translation>&amp;Comparer</translation>
    </message>
    <message>
        <source>CHANGE GIVEN UP</source>
        <translation>CHANGEMENT ABANDONNÉ</translation>
    </message>
    <message>
        <source>CLOSED</source>
        <translation>CLOS</translation>
    </message>
    <message>
        <source>CLOSED, LIMITED</source>
        <translation>CLOS, LIMITÉ</translation>
    </message>
    <message>
        <source>CONNECTED, but</source>
        <translation>BRANCHÉ, mais</translation>
    </message>
    <message>
        <source>CSV (*.csv)</source>
        <translation>CSV (*.csv)</translation>
    </message>
    <message>
        <source>Ca&amp;lculator</source>
        <translation>Calculateu&amp;r</translation>
    </message>
    <message>
        <source>Calculations</source>
        <translation>Calculs</translation>
    </message>
    <message>
        <source>Calculator</source>
        <translation>Calculatrice</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Étalonné le</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Étalonnage dû le</translation>
    </message>
    <message>
        <source>Came off</source>
        <translation>Déposé</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Cannot be verified</source>
        <translation>Non vérifiable</translation>
    </message>
    <message>
        <source>Capacity factor (sin)</source>
        <translation>Facteur de capacité (sin)</translation>
    </message>
    <message>
        <source>Caps and plugs are off, and counted.</source>
        <translation>Capuchons et bouchons sont retirés, et comptés.</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Légende</translation>
    </message>
    <message>
        <source>Carry your key over to another station</source>
        <translation>Transférer votre clé vers un autre poste</translation>
    </message>
    <message>
        <source>Carry your key over …</source>
        <translation>Transférer votre clé …</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Attention</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Cells in this row: %1. Expected: %2.</source>
        <translation>Cellules dans cette ligne : %1. Attendu : %2.</translation>
    </message>
    <message>
        <source>Centre of gravity after</source>
        <translation>Centre de gravité après</translation>
    </message>
    <message>
        <source>Centre of gravity before</source>
        <translation>Centre de gravité avant</translation>
    </message>
    <message>
        <source>Centre of gravity from the left point</source>
        <translation>Centre de gravité depuis le point gauche</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changer</translation>
    </message>
    <message>
        <source>Change given up</source>
        <translation>Changement abandonné</translation>
    </message>
    <message>
        <source>Change given up, the outgoing unit goes back on</source>
        <translation>Changement abandonné, l'ensemble sortant est reposé</translation>
    </message>
    <message>
        <source>Change of moment</source>
        <translation>Changement de moment</translation>
    </message>
    <message>
        <source>Change of weight</source>
        <translation>Changement de masse</translation>
    </message>
    <message>
        <source>Change of weight and balance</source>
        <translation>Changement de masse et de centrage</translation>
    </message>
    <message>
        <source>Change of weight that is negligible</source>
        <translation>Changement de masse négligeable</translation>
    </message>
    <message>
        <source>Change the language</source>
        <translation>Changer de langue</translation>
    </message>
    <message>
        <source>Change the language?</source>
        <translation>Changer de langue ?</translation>
    </message>
    <message>
        <source>Change your P&amp;IN …</source>
        <translation>Changer votre P&amp;IN …</translation>
    </message>
    <message>
        <source>Change your PIN</source>
        <translation>Changer votre PIN</translation>
    </message>
    <message>
        <source>Change, at most</source>
        <translation>Changement, au plus</translation>
    </message>
    <message>
        <source>Changes none of them</source>
        <translation>N'en change aucun</translation>
    </message>
    <message>
        <source>Check for leaks</source>
        <translation>Contrôler l'étanchéité</translation>
    </message>
    <message>
        <source>Checked for leaks</source>
        <translation>Étanchéité contrôlée</translation>
    </message>
    <message>
        <source>Choose a &amp;file …</source>
        <translation>Choisir &amp;un fichier …</translation>
    </message>
    <message>
        <source>Choose a hold point to see what it asks for.</source>
        <translation>Choisissez un point d'arrêt pour voir ce qu'il demande.</translation>
    </message>
    <message>
        <source>Choose a mark first: click it, or use the arrow keys.</source>
        <translation>Choisissez d'abord une marque : cliquez dessus, ou utilisez les flèches.</translation>
    </message>
    <message>
        <source>Choose a mark: click it, or use the arrow keys.</source>
        <translation>Choisissez une marque : cliquez dessus, ou utilisez les flèches.</translation>
    </message>
    <message>
        <source>Choose a package first.</source>
        <translation>Choisissez d'abord un paquet.</translation>
    </message>
    <message>
        <source>Choose a person to see their authorisations.</source>
        <translation>Choisissez une personne pour voir ses habilitations.</translation>
    </message>
    <message>
        <source>Choose a photo: as a file, by dropping it here, or by pasting it.</source>
        <translation>Choisissez une photo : par un fichier, en la déposant ici, ou en la collant.</translation>
    </message>
    <message>
        <source>Choose a row first.</source>
        <translation>Choisissez d'abord une ligne.</translation>
    </message>
    <message>
        <source>Choose a row to read its source and note here.</source>
        <translation>Choisissez une ligne pour lire ici sa source et sa note.</translation>
    </message>
    <message>
        <source>Choose an interface in the list. Several at once can be signed together.</source>
        <translation>Choisissez un raccordement dans la liste. Plusieurs à la fois peuvent être signés ensemble.</translation>
    </message>
    <message>
        <source>Choose an interface.</source>
        <translation>Choisissez un raccordement.</translation>
    </message>
    <message>
        <source>Choose the row to remove first.</source>
        <translation>Choisissez d'abord la ligne à retirer.</translation>
    </message>
    <message>
        <source>Choose …</source>
        <translation>Choisir …</translation>
    </message>
    <message>
        <source>Clamp</source>
        <translation>Collier</translation>
    </message>
    <message>
        <source>Clamps and the ends of wire have sharp edges, and what a clamp carries moves when it is let go. Protect hands and eyes, support what it carries, and make sure that lines are without pressure and cables without power, as the approved maintenance data and the local rules say.</source>
        <translation>Les colliers et les bouts de fil ont des arêtes vives, et ce que porte un collier bouge quand on le lâche. Protégez mains et yeux, soutenez ce qu'il porte, et assurez-vous que les conduites sont sans pression et les câbles hors tension, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Classe</translation>
    </message>
    <message>
        <source>Class by "%1"</source>
        <translation>Classe d'après « %1 »</translation>
    </message>
    <message>
        <source>Class of a leak</source>
        <translation>Classe d'une fuite</translation>
    </message>
    <message>
        <source>Classes of fuel and fluid leaks</source>
        <translation>Classes de fuites de carburant et de fluides</translation>
    </message>
    <message>
        <source>Clear its condition</source>
        <translation>Lever sa réserve</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Close the finding</source>
        <translation>Clore le constat</translation>
    </message>
    <message>
        <source>Close the job</source>
        <translation>Clore le chantier</translation>
    </message>
    <message>
        <source>Close the program</source>
        <translation>Fermer le programme</translation>
    </message>
    <message>
        <source>Close the program?</source>
        <translation>Fermer le programme ?</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Clos</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Colonne</translation>
    </message>
    <message>
        <source>Commands</source>
        <translation>Commandes</translation>
    </message>
    <message>
        <source>Compare</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Compare something first.</source>
        <translation>Comparez d'abord quelque chose.</translation>
    </message>
    <message>
        <source>Compared with the list</source>
        <translation>Comparé à la liste</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparaison</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Réserve</translation>
    </message>
    <message>
        <source>Condition cleared</source>
        <translation>Réserve levée</translation>
    </message>
    <message>
        <source>Condition stated</source>
        <translation>Réserve posée</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Conditions</translation>
    </message>
    <message>
        <source>Confirm free</source>
        <translation>Confirmer libre</translation>
    </message>
    <message>
        <source>Confirm undisturbed</source>
        <translation>Confirmer non perturbé</translation>
    </message>
    <message>
        <source>Confirmed free</source>
        <translation>Confirmé libre</translation>
    </message>
    <message>
        <source>Confirmed undisturbed</source>
        <translation>Confirmé non perturbé</translation>
    </message>
    <message>
        <source>Connected</source>
        <translation>Branché</translation>
    </message>
    <message>
        <source>Contact faces are bare and clean, and protected again afterwards.</source>
        <translation>Les faces de contact sont à nu et propres, puis protégées à nouveau.</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Sommaire</translation>
    </message>
    <message>
        <source>Control linkage</source>
        <translation>Timonerie de commande</translation>
    </message>
    <message>
        <source>Convert a unit</source>
        <translation>Convertir une unité</translation>
    </message>
    <message>
        <source>Copy of, by digest</source>
        <translation>Copie de (empreinte)</translation>
    </message>
    <message>
        <source>Correct the list</source>
        <translation>Corriger la liste</translation>
    </message>
    <message>
        <source>Count the tools</source>
        <translation>Compter les outils</translation>
    </message>
    <message>
        <source>Count what lies there, piece by piece, against the marking; never tick what somebody says is there.</source>
        <translation>Comptez ce qui est là, pièce par pièce, d'après le repère ; ne cochez jamais ce que quelqu'un dit être là.</translation>
    </message>
    <message>
        <source>Counted and not out, or counted twice: %1.</source>
        <translation>Comptés et non sortis, ou comptés deux fois : %1.</translation>
    </message>
    <message>
        <source>Covers</source>
        <translation>Couvre</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Équipe</translation>
    </message>
    <message>
        <source>Critical</source>
        <translation>Critique</translation>
    </message>
    <message>
        <source>Current through the bond</source>
        <translation>Courant dans la métallisation</translation>
    </message>
    <message>
        <source>DETAILS TO FOLLOW</source>
        <translation>DÉTAILS À SUIVRE</translation>
    </message>
    <message>
        <source>DOES NOT NAME THIS JOB</source>
        <translation>NE NOMME PAS CE CHANTIER</translation>
    </message>
    <message>
        <source>Damage is not wiped away; somebody decides on it.</source>
        <translation>Un dommage ne s'efface pas ; quelqu'un statue à son sujet.</translation>
    </message>
    <message>
        <source>Damage raises a finding: give its number.</source>
        <translation>Un dommage ouvre un constat : indiquez son numéro.</translation>
    </message>
    <message>
        <source>Damage that is a note alone is nobody's.</source>
        <translation>Un dommage qui n'est qu'une note n'est l'affaire de personne.</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Endommagé</translation>
    </message>
    <message>
        <source>Damaged, so that something may not have been found: %1. Verify the store.</source>
        <translation>Endommagé, si bien que quelque chose a pu ne pas être trouvé : %1. Vérifiez la base.</translation>
    </message>
    <message>
        <source>Damaged: finding number</source>
        <translation>Endommagé : numéro du constat</translation>
    </message>
    <message>
        <source>Damaged; only what came before is shown, and nothing can be added. %1</source>
        <translation>Endommagé ; seul ce qui précède est affiché, et rien ne peut être ajouté. %1</translation>
    </message>
    <message>
        <source>Dark with more &amp;contrast</source>
        <translation>Somb&amp;re, plus de contraste</translation>
    </message>
    <message>
        <source>Day of the lift</source>
        <translation>Jour du levage</translation>
    </message>
    <message>
        <source>Day of the lift, if not today</source>
        <translation>Jour du levage, si ce n'est aujourd'hui</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>Decimal places, 6 when not given</source>
        <translation>Décimales, 6 si non donné</translation>
    </message>
    <message>
        <source>Deferred until, at most</source>
        <translation>Reporté jusqu'au, au plus tard</translation>
    </message>
    <message>
        <source>Depends on</source>
        <translation>Dépend de</translation>
    </message>
    <message>
        <source>Details given</source>
        <translation>Détails donnés</translation>
    </message>
    <message>
        <source>Deviation on the certificate, % of the reading</source>
        <translation>Écart au certificat, % du relevé</translation>
    </message>
    <message>
        <source>Deviation, at most</source>
        <translation>Écart, au plus</translation>
    </message>
    <message>
        <source>Deviation: as given</source>
        <translation>Écart : tel quel</translation>
    </message>
    <message>
        <source>Difference in moment, ΔM</source>
        <translation>Différence de moment, ΔM</translation>
    </message>
    <message>
        <source>Difference in moment: %1</source>
        <translation>Différence de moment : %1</translation>
    </message>
    <message>
        <source>Difference in weight, Δw</source>
        <translation>Différence de masse, Δw</translation>
    </message>
    <message>
        <source>Difference in weight: %1</source>
        <translation>Différence de masse : %1</translation>
    </message>
    <message>
        <source>Difference, as it was found</source>
        <translation>Différence, telle qu'elle a été trouvée</translation>
    </message>
    <message>
        <source>Differences</source>
        <translation>Différences</translation>
    </message>
    <message>
        <source>Digest</source>
        <translation>Empreinte</translation>
    </message>
    <message>
        <source>Disconnect</source>
        <translation>Débrancher</translation>
    </message>
    <message>
        <source>Disconnected</source>
        <translation>Débranché</translation>
    </message>
    <message>
        <source>Disconnected, not listed</source>
        <translation>Débranché, non listé</translation>
    </message>
    <message>
        <source>Disposition</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Disturbed</source>
        <translation>Perturbé</translation>
    </message>
    <message>
        <source>Do not lift</source>
        <translation>Ne pas lever</translation>
    </message>
    <message>
        <source>Do not lift. %1</source>
        <translation>Ne pas lever. %1</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Done at, if earlier</source>
        <translation>Fait le, si plus tôt</translation>
    </message>
    <message>
        <source>Done, by %1 in entry %2. If it was wrong, strike that entry.</source>
        <translation>Fait, par %1 à l'entrée %2. Si c'était faux, rayez cette entrée.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Fait.</translation>
    </message>
    <message>
        <source>Down, ‰</source>
        <translation>Verticalement, ‰</translation>
    </message>
    <message>
        <source>Drag</source>
        <translation>Couple d'autofreinage</translation>
    </message>
    <message>
        <source>Drag of a self-locking nut</source>
        <translation>Couple d'autofreinage d'un écrou autofreiné</translation>
    </message>
    <message>
        <source>Drag to be added</source>
        <translation>Couple d'autofreinage à ajouter</translation>
    </message>
    <message>
        <source>Drag while the nut was run down</source>
        <translation>Couple d'autofreinage pendant le vissage de l'écrou</translation>
    </message>
    <message>
        <source>Drag, least</source>
        <translation>Couple d'autofreinage, minimum</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drain</translation>
    </message>
    <message>
        <source>Draw a sample first.</source>
        <translation>Tirez d'abord un échantillon.</translation>
    </message>
    <message>
        <source>Draw interfaces at random, with every entry about them.</source>
        <translation>Tirer des raccordements au hasard, avec toutes les entrées qui les concernent.</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Tiré</translation>
    </message>
    <message>
        <source>Drawn by</source>
        <translation>Tiré par</translation>
    </message>
    <message>
        <source>Drop a photo here, paste it, or choose a file: JPEG or PNG.</source>
        <translation>Déposez une photo ici, collez-la, ou choisissez un fichier : JPEG ou PNG.</translation>
    </message>
    <message>
        <source>Drop of voltage across the bond</source>
        <translation>Chute de tension aux bornes de la métallisation</translation>
    </message>
    <message>
        <source>Drops counted</source>
        <translation>Gouttes comptées</translation>
    </message>
    <message>
        <source>Drops in a millilitre</source>
        <translation>Gouttes par millilitre</translation>
    </message>
    <message>
        <source>Drops to the millilitre turn counted drops into a rate, and this row limits none. Give a rate, or leave them out.</source>
        <translation>Les gouttes par millilitre convertissent des gouttes comptées en débit, et cette ligne n'en limite aucun. Indiquez un débit, ou laissez-les vides.</translation>
    </message>
    <message>
        <source>Duct</source>
        <translation>Gaine</translation>
    </message>
    <message>
        <source>Ducts stay hot after a run and have sharp edges. Let them cool, make sure that no pressure is left, protect hands and hold up what is heavy, as the approved maintenance data and the local rules say.</source>
        <translation>Les gaines restent chaudes après un fonctionnement et ont des arêtes vives. Laissez-les refroidir, assurez-vous qu'il ne reste pas de pression, protégez les mains et soutenez ce qui est lourd, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Due on, at most</source>
        <translation>Dû le, au plus tard</translation>
    </message>
    <message>
        <source>E&amp;xport the list …</source>
        <translation>Exporter la &amp;liste …</translation>
    </message>
    <message>
        <source>Each entry carries the hash of the one before it and its signer's signature, so the last hash fixes them all. This paper shows what the entries say; the signed entries are the record.</source>
        <translation>Chaque entrée porte l'empreinte (hash) de celle qui la précède et la signature de son signataire ; la dernière empreinte les fixe donc toutes. Ce papier montre ce que disent les entrées ; ce sont les entrées signées qui constituent le dossier.</translation>
    </message>
    <message>
        <source>Each fastener has its reading, in the order that the maintenance data shows.</source>
        <translation>Chaque fixation a sa mesure, dans l'ordre que montrent les données d'entretien.</translation>
    </message>
    <message>
        <source>Each inspector's authorisation has limits and dates.</source>
        <translation>L'habilitation de chaque contrôleur a des limites et des dates.</translation>
    </message>
    <message>
        <source>Each of these must be off before the one in front of it, or depends on it, in a circle: %1.</source>
        <translation>Chacun de ceux-ci doit être déposé avant celui qui le précède, ou en dépend, en cercle : %1.</translation>
    </message>
    <message>
        <source>Each of two crossed lines passes an inspection of its own.</source>
        <translation>Chacune de deux conduites inversées réussit son propre contrôle.</translation>
    </message>
    <message>
        <source>Each test has a result of its own.</source>
        <translation>Chaque essai a son propre résultat.</translation>
    </message>
    <message>
        <source>Else open</source>
        <translation>Autres points ouverts</translation>
    </message>
    <message>
        <source>Empty &amp;all fields</source>
        <translation>&amp;Vider tous les champs</translation>
    </message>
    <message>
        <source>Empty moment before</source>
        <translation>Moment à vide avant</translation>
    </message>
    <message>
        <source>Empty weight above</source>
        <translation>Masse à vide supérieure à</translation>
    </message>
    <message>
        <source>Empty weight after</source>
        <translation>Masse à vide après</translation>
    </message>
    <message>
        <source>Empty weight before</source>
        <translation>Masse à vide avant</translation>
    </message>
    <message>
        <source>Empty weight below</source>
        <translation>Masse à vide inférieure à</translation>
    </message>
    <message>
        <source>Empty weight, moment and centre of gravity after one unit went out and another in, with the lines for the weight record.</source>
        <translation>Masse à vide, moment et centre de gravité après qu'un ensemble est parti et qu'un autre est venu, avec les lignes pour la fiche de masse.</translation>
    </message>
    <message>
        <source>Enrol &amp;a person …</source>
        <translation>Enregi&amp;strer une personne …</translation>
    </message>
    <message>
        <source>Enrol a person</source>
        <translation>Enregistrer une personne</translation>
    </message>
    <message>
        <source>Enrol and sign</source>
        <translation>Enregistrer et signer</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entrées</translation>
    </message>
    <message>
        <source>Entries of the register stand under People and tools.</source>
        <translation>Les entrées du répertoire se trouvent sous Personnes et outils.</translation>
    </message>
    <message>
        <source>Entries that do not count any more</source>
        <translation>Entrées qui ne comptent plus</translation>
    </message>
    <message>
        <source>Entries that were added</source>
        <translation>Entrées qui ont été ajoutées</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Entry %1</source>
        <translation>Entrée %1</translation>
    </message>
    <message>
        <source>Entry %1  %2</source>
        <translation>Entrée %1  %2</translation>
    </message>
    <message>
        <source>Entry %1 %2. That is answered, and stays; where it was a mistake, an inspector strikes it who is not of the crew and had no hand in it or in its group.</source>
        <translation>L'entrée %1 %2. Il y a été répondu, et cela reste ; s'il s'agissait d'une erreur, elle est rayée par un contrôleur qui n'est pas de l'équipe et qui n'a participé ni à ce travail ni à son groupe.</translation>
    </message>
    <message>
        <source>Entry %1 %2. When it is found, that answers the finding; struck it is by somebody with authority to overrule alone.</source>
        <translation>L'entrée %1 %2. Si l'on retrouve ce qui manque, cela répond au constat ; seule une personne habilitée à passer outre peut la rayer.</translation>
    </message>
    <message>
        <source>Entry %1 (%2) cannot be struck. If something was struck by mistake, do it again and sign it again.</source>
        <translation>L'entrée %1 (%2) ne peut pas être rayée. Si quelque chose a été rayé par erreur, refaites-le et signez-le à nouveau.</translation>
    </message>
    <message>
        <source>Entry %1 came after it was passed: what was looked at then is no longer what is there.</source>
        <translation>L'entrée %1 est venue après le franchissement : ce qui fut regardé alors n'est plus ce qui est là.</translation>
    </message>
    <message>
        <source>Entry %1 does not stand any more.</source>
        <translation>L'entrée %1 n'est plus valable.</translation>
    </message>
    <message>
        <source>Entry %1 is an inspector's word on work that %2 had a hand in. Only %3, or somebody else with authority to overrule, may strike it.</source>
        <translation>L'entrée %1 est la parole d'un contrôleur sur un travail auquel %2 a participé. Seul %3, ou une autre personne habilitée à passer outre, peut la rayer.</translation>
    </message>
    <message>
        <source>Entry %1 is later than entry %2: name the earlier one first.</source>
        <translation>L'entrée %1 est postérieure à l'entrée %2 : indiquez d'abord la plus ancienne.</translation>
    </message>
    <message>
        <source>Entry %1 is struck by %2, who made it, or by the lead.</source>
        <translation>L'entrée %1 est rayée par %2, qui en est l'auteur, ou par le responsable du chantier.</translation>
    </message>
    <message>
        <source>Entry %1 is the word of an inspector, or of somebody who was not of the crew; %2 may not set it aside. Only %3, or somebody with authority to overrule, may strike it.</source>
        <translation>L'entrée %1 est la parole d'un contrôleur, ou d'une personne extérieure à l'équipe ; %2 ne peut pas l'écarter. Seul %3, ou une personne habilitée à passer outre, peut la rayer.</translation>
    </message>
    <message>
        <source>Entry %1 of ledger %2 cannot be used: %3 Do not go on working in this store. Verify it, and go back to a backup.</source>
        <translation>L'entrée %1 du registre des entrées %2 ne peut pas être utilisée : %3 Ne continuez pas à travailler dans cette base. Vérifiez-la, et revenez à une sauvegarde.</translation>
    </message>
    <message>
        <source>Entry %1 of the linked ledger %2, which it pins, is not in that ledger.</source>
        <translation>L'entrée %1 du registre des entrées lié %2, qu'elle fixe, n'est pas dans ce registre.</translation>
    </message>
    <message>
        <source>Entry %1 rests on the change being given up. Strike that one first, if it was a mistake.</source>
        <translation>L'entrée %1 repose sur l'abandon du changement. Rayez d'abord celle-ci, si c'était une erreur.</translation>
    </message>
    <message>
        <source>Entry %1 says what %2 found to be in the way. Only %2 strikes it; else it is cleared.</source>
        <translation>L'entrée %1 indique ce que %2 a trouvé qui fait obstacle. Seul %2 peut la rayer ; sinon, l'obstacle est levé.</translation>
    </message>
    <message>
        <source>Entry %1 set aside what striking it would bring back. %2 Leave it and show it anew, after marking it disturbed where that is how to begin; or let somebody with authority to overrule, who had no hand in it, strike it.</source>
        <translation>L'entrée %1 a écarté ce que sa radiation ferait revenir. %2 Laissez-la et démontrez-le à nouveau, après avoir marqué l'élément comme perturbé si c'est ainsi qu'il faut commencer ; ou faites-la rayer par une personne habilitée à passer outre qui n'y a pas participé.</translation>
    </message>
    <message>
        <source>Entry %1 sets no follow-up that is still due.</source>
        <translation>L'entrée %1 ne fixe aucun suivi encore à faire.</translation>
    </message>
    <message>
        <source>Entry %1 was made behind %2 already: it comes too late to be set or changed.</source>
        <translation>L'entrée %1 a déjà été faite derrière %2 : il est trop tard pour le poser ou le modifier.</translation>
    </message>
    <message>
        <source>Entry %1 was made behind the hold point %2. What was let through cannot be called back; strike that entry first, if it was a mistake.</source>
        <translation>L'entrée %1 a été faite derrière le point d'arrêt %2. Ce qui a été laissé passer ne peut pas être rappelé ; rayez d'abord cette entrée-là, si c'était une erreur.</translation>
    </message>
    <message>
        <source>Entry %1, struck since, said that %2 blanks are on %3 of %4; now it is said to be %5. Log as many, and what is not there as missing; or have somebody with authority to overrule strike that entry as never so.</source>
        <translation>L'entrée %1, rayée depuis, indiquait que %2 obturateurs sont sur %3 de %4 ; il y en aurait maintenant %5. Enregistrez-en autant, et ce qui n'y est pas comme manquant ; ou faites rayer cette entrée comme n'ayant jamais été vraie par une personne habilitée à passer outre.</translation>
    </message>
    <message>
        <source>Entry %1, struck since, said that %2 of %3 came off %4; now it is said to be %5. Log as many, and what became of each when it is joined; or have somebody with authority to overrule strike that entry as never so.</source>
        <translation>L'entrée %1, rayée depuis, indiquait que %2 × %3 ont été déposés de %4 ; il y en aurait maintenant %5. Enregistrez-en autant, et ce que chacun est devenu au moment de raccorder ; ou faites rayer cette entrée comme n'ayant jamais été vraie par une personne habilitée à passer outre.</translation>
    </message>
    <message>
        <source>Entry %1: %2, hoist %3</source>
        <translation>Entrée %1 : %2, palan %3</translation>
    </message>
    <message>
        <source>Entry number</source>
        <translation>Numéro d'entrée</translation>
    </message>
    <message>
        <source>Entry that handed over</source>
        <translation>Entrée qui a passé la main</translation>
    </message>
    <message>
        <source>Entry that set it</source>
        <translation>Entrée qui l'a fixé</translation>
    </message>
    <message>
        <source>Entry, what it is about, and the page on which it stands in full</source>
        <translation>Entrée, ce qu'elle concerne, et page où elle figure en entier</translation>
    </message>
    <message>
        <source>Every accessory has moved, or is declared to leave with the outgoing unit.</source>
        <translation>Chaque accessoire est transféré, ou déclaré partir avec l'ensemble sortant.</translation>
    </message>
    <message>
        <source>Every entry is asked all the rules that concern its kind before it is signed, and again whenever a store or a record package is verified. What is refused says which rule refused it; here is why each of them exists.</source>
        <translation>Chaque entrée est soumise à toutes les règles qui concernent son type avant d'être signée, et de nouveau chaque fois qu'une base ou un paquet de dossier est vérifié. Un refus indique quelle règle a refusé ; voici pourquoi chacune d'elles existe.</translation>
    </message>
    <message>
        <source>Every entry is shown.</source>
        <translation>Chaque entrée est affichée.</translation>
    </message>
    <message>
        <source>Every entry of every job of this store, open or closed, that names it.</source>
        <translation>Chaque entrée de chaque chantier de cette base, ouvert ou clos, qui le nomme.</translation>
    </message>
    <message>
        <source>Every entry, what is exported, and whether all of it holds</source>
        <translation>Chaque entrée, ce qui est exporté, et si l'intégrité du tout est confirmée</translation>
    </message>
    <message>
        <source>Every interface as a row</source>
        <translation>Chaque raccordement sur une ligne</translation>
    </message>
    <message>
        <source>Every interface is finished</source>
        <translation>Tous les raccordements sont terminés</translation>
    </message>
    <message>
        <source>Every interface is somebody's side.</source>
        <translation>Tout raccordement est du côté de quelqu'un.</translation>
    </message>
    <message>
        <source>Every side has one who looks after it.</source>
        <translation>Chaque côté a quelqu'un qui s'en occupe.</translation>
    </message>
    <message>
        <source>Every tool that is out was counted, after the last issue, return or loss.</source>
        <translation>Chaque outil sorti a été compté, après la dernière sortie, le dernier retour ou la dernière perte.</translation>
    </message>
    <message>
        <source>Every zone</source>
        <translation>Toutes les zones</translation>
    </message>
    <message>
        <source>Everybody is told, and clear, before what it was holding back begins.</source>
        <translation>Tout le monde est prévenu, et à l'écart, avant que commence ce qu'il retenait.</translation>
    </message>
    <message>
        <source>Everything behind it was inspected before it closed.</source>
        <translation>Tout ce qui est derrière a été contrôlé avant la fermeture.</translation>
    </message>
    <message>
        <source>Everything can be done with the keyboard: Tab and the arrow keys lead on, Space and Enter choose, Esc leaves a window without signing. In every menu and on every button the underlined letter is its key, with Alt.</source>
        <translation>Tout peut se faire au clavier : Tab et les flèches font avancer, Espace et Entrée choisissent, Échap quitte une fenêtre sans signer. Dans chaque menu et sur chaque bouton, la lettre soulignée est sa touche, avec Alt.</translation>
    </message>
    <message>
        <source>Everything that was signed is as it was signed, and each entry was allowed; not everything beside it could be compared here (entries: %1, attachments: %2).</source>
        <translation>Tout ce qui a été signé est tel qu'il a été signé, et chaque entrée était permise ; tout ce qui l'accompagne n'a pas pu être comparé ici (entrées : %1, pièces jointes : %2).</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Preuves</translation>
    </message>
    <message>
        <source>Exchange two tags</source>
        <translation>Échanger deux étiquettes</translation>
    </message>
    <message>
        <source>Export &amp;tag labels …</source>
        <translation>Exporter les ét&amp;iquettes …</translation>
    </message>
    <message>
        <source>Export &amp;the record package …</source>
        <translation>Exporter le paquet de do&amp;ssier …</translation>
    </message>
    <message>
        <source>Export PDF a&amp;nd CSV …</source>
        <translation>E&amp;xporter PDF et CSV …</translation>
    </message>
    <message>
        <source>Export PDF and &amp;CSV …</source>
        <translation>Exporter PDF et &amp;CSV …</translation>
    </message>
    <message>
        <source>Export PDF and CSV</source>
        <translation>Exporter PDF et CSV</translation>
    </message>
    <message>
        <source>Export as &amp;PDF …</source>
        <translation>Exporter en &amp;PDF …</translation>
    </message>
    <message>
        <source>Export tag labels</source>
        <translation>Exporter les étiquettes</translation>
    </message>
    <message>
        <source>Export the list</source>
        <translation>Exporter la liste</translation>
    </message>
    <message>
        <source>Export the record package</source>
        <translation>Exporter le paquet de dossier</translation>
    </message>
    <message>
        <source>Eyes outside a joint do not see a blank in it.</source>
        <translation>Des yeux hors d'un assemblage n'y voient pas un obturateur.</translation>
    </message>
    <message>
        <source>F&amp;rom day</source>
        <translation>&amp;Du jour</translation>
    </message>
    <message>
        <source>F1 opens the page of this manual that tells of what is shown, in a sheet or dialog as well. The manual can be read while the sheet waits.</source>
        <translation>F1 ouvre la page de ce manuel qui traite de ce qui est affiché, aussi dans une feuille ou un dialogue. Le manuel se lit pendant que la feuille attend.</translation>
    </message>
    <message>
        <source>FORK: from entry %1 on it says something else than %2. One of the two is not what was worked on: find out which, before anybody relies on either.</source>
        <translation>BIFURCATION : à partir de l'entrée %1, ce paquet dit autre chose que %2. L'un des deux n'est pas ce sur quoi on a travaillé : trouvez lequel, avant que quiconque ne se fie à l'un ou à l'autre.</translation>
    </message>
    <message>
        <source>Faces that were cleaned to bare metal are bonded and finished again soon: within 24 hours, where the maintenance data says nothing else.</source>
        <translation>Les surfaces nettoyées à nu sont métallisées et protégées sans tarder : dans les 24 heures, sauf indication contraire des données d'entretien.</translation>
    </message>
    <message>
        <source>Fact</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Factor %1 of %2</source>
        <translation>Facteur %1 de %2</translation>
    </message>
    <message>
        <source>Factors: NIST SP 811 (2008) appendix B; exact by the definitions of pound, inch, US gallon and standard gravity</source>
        <translation>Facteurs : NIST SP 811 (2008), annexe B ; exacts d'après les définitions de la livre, du pouce, du gallon US et de la pesanteur normale</translation>
    </message>
    <message>
        <source>Failed: interfaces to be worked on again</source>
        <translation>Échoué : raccordements à reprendre</translation>
    </message>
    <message>
        <source>Fastener</source>
        <translation>Fixation</translation>
    </message>
    <message>
        <source>Fastener %1 of %2 was torqued already to %3. If that was wrong, strike entry %4, or mark the item disturbed.</source>
        <translation>La fixation %1 de %2 a déjà été serrée à %3. Si c'était faux, rayez l'entrée %4, ou marquez l'élément comme perturbé.</translation>
    </message>
    <message>
        <source>Fasteners</source>
        <translation>Fixations</translation>
    </message>
    <message>
        <source>Fasteners are taken</source>
        <translation>Les fixations se serrent</translation>
    </message>
    <message>
        <source>Fasteners out of their order</source>
        <translation>Fixations hors de leur ordre</translation>
    </message>
    <message>
        <source>Faults</source>
        <translation>Défauts</translation>
    </message>
    <message>
        <source>Faults: %1. Mend them in the file and import it again; nothing was taken.</source>
        <translation>Défauts : %1. Corrigez-les dans le fichier et importez-le de nouveau ; rien n'a été importé.</translation>
    </message>
    <message>
        <source>Fell, since an entry that it rested on was struck</source>
        <translation>Tombé, car une entrée sur laquelle il reposait a été rayée</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Champ</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Champs</translation>
    </message>
    <message>
        <source>File type</source>
        <translation>Type de fichier</translation>
    </message>
    <message>
        <source>Fill in what is known, and the working stands here.</source>
        <translation>Renseignez ce qui est connu ; le calcul s'affiche ici.</translation>
    </message>
    <message>
        <source>Filter the entries</source>
        <translation>Filtrer les entrées</translation>
    </message>
    <message>
        <source>Filter the list</source>
        <translation>Filtrer la liste</translation>
    </message>
    <message>
        <source>Filter: item, name, zone, tag, stage …</source>
        <translation>Filtre : élément, nom, zone, étiquette, état …</translation>
    </message>
    <message>
        <source>Filter: item, word … (Ctrl+F)</source>
        <translation>Filtre : élément, mot … (Ctrl+F)</translation>
    </message>
    <message>
        <source>Final torque</source>
        <translation>Couple final</translation>
    </message>
    <message>
        <source>Find a command</source>
        <translation>Trouver une commande</translation>
    </message>
    <message>
        <source>Find the cause, mark the item disturbed, and restore it as the maintenance data says.</source>
        <translation>Trouvez la cause, marquez l'élément comme perturbé, et remettez-le en état comme l'indiquent les données d'entretien.</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Finding %1 is about a blank that is missing. There are no limits within which it may be inside, nor a day until which: it is closed when it is known where the blank is.</source>
        <translation>Le constat %1 concerne un obturateur manquant. Il n'existe ni limites dans lesquelles il pourrait rester à l'intérieur, ni date jusqu'à laquelle il le pourrait : le constat est clos quand on sait où est l'obturateur.</translation>
    </message>
    <message>
        <source>Finding %1 is closed already.</source>
        <translation>Le constat %1 est déjà clos.</translation>
    </message>
    <message>
        <source>Finding %1 is on %2, not on %3.</source>
        <translation>Le constat %1 porte sur %2, non sur %3.</translation>
    </message>
    <message>
        <source>Finding %1 is open: %2</source>
        <translation>Le constat %1 est ouvert : %2</translation>
    </message>
    <message>
        <source>Finding %1, deferred: %2</source>
        <translation>Constat %1, reporté : %2</translation>
    </message>
    <message>
        <source>Finding closed</source>
        <translation>Constat clos</translation>
    </message>
    <message>
        <source>Finding number</source>
        <translation>Numéro du constat</translation>
    </message>
    <message>
        <source>Finding raised</source>
        <translation>Constat ouvert</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Findings are deferred (%1), so this closure is limited. Say how.</source>
        <translation>Des constats sont reportés (%1) ; cette clôture est donc limitée. Indiquez en quoi.</translation>
    </message>
    <message>
        <source>Findings open</source>
        <translation>Constats ouverts</translation>
    </message>
    <message>
        <source>Fingerprint of the root</source>
        <translation>Empreinte de la racine</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Première</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Premier jour</translation>
    </message>
    <message>
        <source>First enrol the people who work, inspect and release, grant them their authorisations, and register the tools that measure. A job needs somebody who may lead.</source>
        <translation>Enregistrez d'abord les personnes qui travaillent, contrôlent et prononcent la remise en service, accordez-leur leurs habilitations, et enregistrez les outils de mesure. Un chantier a besoin de quelqu'un habilité à le diriger.</translation>
    </message>
    <message>
        <source>First entry in doubt</source>
        <translation>Première entrée en doute</translation>
    </message>
    <message>
        <source>First number</source>
        <translation>Premier numéro</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluide</translation>
    </message>
    <message>
        <source>Fluid under pressure cuts through skin, and what is hydraulic moves when it is let go. Isolate and tag the pumps, release the pressure, in accumulators too, and keep people clear of what moves, as the approved maintenance data and the local rules say.</source>
        <translation>Un fluide sous pression traverse la peau, et ce qui est hydraulique bouge quand on le lâche. Consignez et étiquetez les pompes, faites tomber la pression, dans les accumulateurs aussi, et tenez les personnes à l'écart de ce qui bouge, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Follow-up done</source>
        <translation>Suivi fait</translation>
    </message>
    <message>
        <source>Follow-up set</source>
        <translation>Suivi fixé</translation>
    </message>
    <message>
        <source>Follow-ups</source>
        <translation>Suivis</translation>
    </message>
    <message>
        <source>Follows the closed job</source>
        <translation>Fait suite au chantier clos</translation>
    </message>
    <message>
        <source>For an auditor: whether a record that came from elsewhere is as it was signed. Needs no store.</source>
        <translation>Pour un auditeur : vérifier si un dossier venu d'ailleurs est tel qu'il a été signé. Aucune base n'est nécessaire.</translation>
    </message>
    <message>
        <source>For the next job: the notes tell what went otherwise than listed</source>
        <translation>Pour le prochain chantier : les notes disent ce qui s'est passé autrement que listé</translation>
    </message>
    <message>
        <source>For the record</source>
        <translation>Pour le dossier</translation>
    </message>
    <message>
        <source>For the record:</source>
        <translation>Pour le dossier :</translation>
    </message>
    <message>
        <source>For the weight record</source>
        <translation>Pour la fiche de masse</translation>
    </message>
    <message>
        <source>For the weight record, from entry %1</source>
        <translation>Pour la fiche de masse, de l'entrée %1</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>Pour qui</translation>
    </message>
    <message>
        <source>For you</source>
        <translation>Pour vous</translation>
    </message>
    <message>
        <source>Formula</source>
        <translation>Formule</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Trouvé</translation>
    </message>
    <message>
        <source>Found and &amp;sign</source>
        <translation>Fonder et s&amp;igner</translation>
    </message>
    <message>
        <source>Found open</source>
        <translation>Trouvé ouvert</translation>
    </message>
    <message>
        <source>Found out of tolerance</source>
        <translation>Trouvé hors tolérance</translation>
    </message>
    <message>
        <source>Found out of tolerance …</source>
        <translation>Trouvé hors tolérance …</translation>
    </message>
    <message>
        <source>Found still attached</source>
        <translation>Trouvé encore attaché</translation>
    </message>
    <message>
        <source>Found the register</source>
        <translation>Créer le répertoire</translation>
    </message>
    <message>
        <source>Free it</source>
        <translation>Le libérer</translation>
    </message>
    <message>
        <source>Freed</source>
        <translation>Libéré</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>From %1 to %2 there is no range. Give what is marked on the wrench.</source>
        <translation>De %1 à %2 il n'y a pas de plage. Donnez ce qui est marqué sur la clé.</translation>
    </message>
    <message>
        <source>From entry %1 to entry %2: differences %3</source>
        <translation>De l'entrée %1 à l'entrée %2 : différences %3</translation>
    </message>
    <message>
        <source>From the foot of a page that was printed earlier, 64 digits; may stay empty</source>
        <translation>Du pied d'une page imprimée auparavant, 64 chiffres ; peut rester vide</translation>
    </message>
    <message>
        <source>From the job</source>
        <translation>Du chantier</translation>
    </message>
    <message>
        <source>From the standard set</source>
        <translation>Du jeu standard</translation>
    </message>
    <message>
        <source>From then on you sign here with the same PIN. Nobody else's key comes with it.</source>
        <translation>Dès lors, vous signez ici avec le même PIN. Aucune clé d'une autre personne ne vient avec la vôtre.</translation>
    </message>
    <message>
        <source>From which end</source>
        <translation>De quelle extrémité</translation>
    </message>
    <message>
        <source>From whom to whom, when</source>
        <translation>De qui à qui, quand</translation>
    </message>
    <message>
        <source>Fuel and its vapour: bond aircraft and equipment first, no flame, spark or live circuit near, fire cover as the local rules ask.</source>
        <translation>Carburant et vapeurs : reliez d'abord électriquement l'aéronef et le matériel ; ni flamme, ni étincelle, ni circuit sous tension à proximité ; protection incendie selon les règles locales.</translation>
    </message>
    <message>
        <source>Fuel and its vapour: no flame, spark or live circuit near, and air to carry it off.</source>
        <translation>Carburant et vapeurs : ni flamme, ni étincelle, ni circuit sous tension à proximité, et de l'air pour les emporter.</translation>
    </message>
    <message>
        <source>Fuel burns, its vapour explodes, and it harms skin and eyes. Isolate and tag fuel and electrical power, bond, release the pressure, drain, vent, keep every source of ignition away and fire cover ready, as the approved maintenance data and the local rules say.</source>
        <translation>Le carburant brûle, ses vapeurs explosent, et il est nocif pour la peau et les yeux. Consignez et étiquetez le carburant et l'alimentation électrique, établissez la liaison équipotentielle, faites tomber la pression, vidangez, ventilez, tenez à distance toute source d'inflammation et gardez prêts les moyens de lutte contre l'incendie, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Fuel line</source>
        <translation>Conduite de carburant</translation>
    </message>
    <message>
        <source>Gasket makers' instructions: opposite pairs, then halve the angle; percents of the passes as given</source>
        <translation>Notices de fabricants de joints : paires opposées, puis moitié de l'angle ; pourcentages des passes tels quels</translation>
    </message>
    <message>
        <source>General values for cadmium-plated threads free of oil, where the maker gives none. The drag of a self-locking nut is not in them.</source>
        <translation>Valeurs générales pour filetages cadmiés sans huile, lorsque le constructeur n'en donne pas. Le couple d'autofreinage d'un écrou autofreiné n'y est pas compris.</translation>
    </message>
    <message>
        <source>Give an id, a name, and how the identity was proved.</source>
        <translation>Indiquez un identifiant, un nom, et comment l'identité a été prouvée.</translation>
    </message>
    <message>
        <source>Give an id.</source>
        <translation>Indiquez un identifiant.</translation>
    </message>
    <message>
        <source>Give either this or "%1" (%2).</source>
        <translation>Donnez soit ceci, soit « %1 » (%2).</translation>
    </message>
    <message>
        <source>Give its details</source>
        <translation>Donner ses détails</translation>
    </message>
    <message>
        <source>Give the aircraft's moment before, or its centre of gravity: one of them, as the weight record has it.</source>
        <translation>Donnez le moment de l'aéronef avant, ou son centre de gravité : l'un des deux, selon la fiche de masse.</translation>
    </message>
    <message>
        <source>Give the change up</source>
        <translation>Abandonner le changement</translation>
    </message>
    <message>
        <source>Given</source>
        <translation>Donné</translation>
    </message>
    <message>
        <source>Given</source>
        <comment>a handover</comment>
        <translation>Donnée</translation>
    </message>
    <message>
        <source>Given:</source>
        <translation>Données :</translation>
    </message>
    <message>
        <source>Go and look at each condition; a hold point is passed at the aircraft, not at the screen.</source>
        <translation>Allez voir chaque condition sur place ; un point d'arrêt se franchit à l'avion, pas à l'écran.</translation>
    </message>
    <message>
        <source>Graduation</source>
        <translation>Graduation</translation>
    </message>
    <message>
        <source>Grant an a&amp;uthorisation …</source>
        <translation>Accorder une ha&amp;bilitation …</translation>
    </message>
    <message>
        <source>Grant an authorisation</source>
        <translation>Accorder une habilitation</translation>
    </message>
    <message>
        <source>Greatest drag of a nut</source>
        <translation>Couple d'autofreinage maximum d'un écrou</translation>
    </message>
    <message>
        <source>Greatest size of each class but the last</source>
        <translation>Taille maximale de chaque classe sauf la dernière</translation>
    </message>
    <message>
        <source>Greatest torque above</source>
        <translation>Couple maximal supérieur à</translation>
    </message>
    <message>
        <source>Greatest torque of the tool</source>
        <translation>Couple maximal de l'outil</translation>
    </message>
    <message>
        <source>Greatest torque up to</source>
        <translation>Couple maximal jusqu'à</translation>
    </message>
    <message>
        <source>Half a limit limits nothing.</source>
        <translation>Une moitié de limite ne limite rien.</translation>
    </message>
    <message>
        <source>Half a limit would be read as none.</source>
        <translation>Une moitié de limite se lirait comme l'absence de limite.</translation>
    </message>
    <message>
        <source>Halves</source>
        <translation>Moitiés</translation>
    </message>
    <message>
        <source>Halves on the aircraft, of the whole group</source>
        <translation>Moitiés sur l'avion, de tout le groupe</translation>
    </message>
    <message>
        <source>Hand it over</source>
        <translation>Remettre à un autre</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Passer la main</translation>
    </message>
    <message>
        <source>Hand-tight</source>
        <translation>Serré à la main</translation>
    </message>
    <message>
        <source>Handed over</source>
        <translation>Passation faite</translation>
    </message>
    <message>
        <source>Handed over by</source>
        <translation>Passation par</translation>
    </message>
    <message>
        <source>Handed over to another</source>
        <translation>Remis à un autre</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>Passation</translation>
    </message>
    <message>
        <source>Handover accepted</source>
        <translation>Passation acceptée</translation>
    </message>
    <message>
        <source>Handover refused</source>
        <translation>Passation refusée</translation>
    </message>
    <message>
        <source>Handover sheet</source>
        <translation>Feuille de passation</translation>
    </message>
    <message>
        <source>Handovers</source>
        <translation>Passations</translation>
    </message>
    <message>
        <source>Handovers so far</source>
        <translation>Passations à ce jour</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Visserie</translation>
    </message>
    <message>
        <source>Hardware is changed by those who may work.</source>
        <translation>La visserie est changée par ceux qui ont le droit de travailler.</translation>
    </message>
    <message>
        <source>Hardware needs its parts, and how many of each.</source>
        <translation>La visserie demande ses pièces, et combien de chacune.</translation>
    </message>
    <message>
        <source>Hardware that came off</source>
        <translation>Visserie déposée</translation>
    </message>
    <message>
        <source>Hardware, tags and tools that are counted</source>
        <translation>Visserie, étiquettes et outils qui sont comptés</translation>
    </message>
    <message>
        <source>Harness connector</source>
        <translation>Connecteur de harnais</translation>
    </message>
    <message>
        <source>Hash</source>
        <translation>Empreinte</translation>
    </message>
    <message>
        <source>Hash of that entry</source>
        <translation>Empreinte de cette entrée</translation>
    </message>
    <message>
        <source>Hash of the last entry</source>
        <translation>Empreinte de la dernière entrée</translation>
    </message>
    <message>
        <source>Helped, supervised or taught by</source>
        <translation>Aidé, supervisé ou formé par</translation>
    </message>
    <message>
        <source>High current burns and kills. Isolate and tag every source first, batteries and external power too; licensed or authorised people prove it dead before anybody touches a terminal, as the approved maintenance data and the local rules say.</source>
        <translation>Un courant fort brûle et tue. Consignez et étiquetez d'abord chaque source, batteries et alimentation de parc comprises ; des personnes titulaires d'une licence ou habilitées prouvent l'absence de tension avant que quiconque ne touche une borne, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Hoist</source>
        <translation>Palan</translation>
    </message>
    <message>
        <source>Hoist %1</source>
        <translation>Palan %1</translation>
    </message>
    <message>
        <source>Hoist and slings carry what the unit weighs, not what was thought of it.</source>
        <translation>Palan et élingues portent ce que pèse l'ensemble, non ce que l'on en pensait.</translation>
    </message>
    <message>
        <source>Hoist inspected until</source>
        <translation>Palan contrôlé, valable jusqu'au</translation>
    </message>
    <message>
        <source>Hoist on: %1 %2.</source>
        <translation>Palan en place : %1 %2.</translation>
    </message>
    <message>
        <source>Hoist, as marked on it</source>
        <translation>Palan, selon son repère</translation>
    </message>
    <message>
        <source>Hold point</source>
        <translation>Point d'arrêt</translation>
    </message>
    <message>
        <source>Hold point %1: %2</source>
        <translation>Point d'arrêt %1 : %2</translation>
    </message>
    <message>
        <source>Hold point passed</source>
        <translation>Point d'arrêt franchi</translation>
    </message>
    <message>
        <source>Hold point set</source>
        <translation>Point d'arrêt posé</translation>
    </message>
    <message>
        <source>Hold point set: %1</source>
        <translation>Point d'arrêt posé : %1</translation>
    </message>
    <message>
        <source>Hold points</source>
        <translation>Points d'arrêt</translation>
    </message>
    <message>
        <source>Hold points not passed</source>
        <translation>Points d'arrêt non franchis</translation>
    </message>
    <message>
        <source>Holds back: %1</source>
        <translation>Retient : %1</translation>
    </message>
    <message>
        <source>Hole above</source>
        <translation>Trou supérieur à</translation>
    </message>
    <message>
        <source>Hole from</source>
        <translation>Trou à partir de</translation>
    </message>
    <message>
        <source>Hole up to</source>
        <translation>Trou jusqu'à</translation>
    </message>
    <message>
        <source>Hook, latch and brake work, and it stands or hangs on what carries it.</source>
        <translation>Crochet, linguet et frein fonctionnent, et il repose sur ce qui le porte ou y est suspendu.</translation>
    </message>
    <message>
        <source>Hours since the first entry, %1</source>
        <translation>Heures depuis la première entrée, %1</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Jusqu'où</translation>
    </message>
    <message>
        <source>How far a torque tool may be off</source>
        <translation>Erreur possible d'un outil de serrage au couple</translation>
    </message>
    <message>
        <source>How it comes</source>
        <translation>Comment il arrive</translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation>Comment cela s'est terminé</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Où il en est</translation>
    </message>
    <message>
        <source>How it stood</source>
        <translation>Où il en était</translation>
    </message>
    <message>
        <source>How it was checked</source>
        <translation>Comment cela a été vérifié</translation>
    </message>
    <message>
        <source>How it was found, and how each was made sure of</source>
        <translation>Comment cela a été découvert, et comment on s'est assuré de chacun</translation>
    </message>
    <message>
        <source>How it was lost, and where it was looked for</source>
        <translation>Comment elle a été perdue, et où elle a été cherchée</translation>
    </message>
    <message>
        <source>How it was undone, made final, repaired or verified</source>
        <translation>Comment cela a été déposé, rendu définitif, réparé ou vérifié</translation>
    </message>
    <message>
        <source>How many drops make a millilitre depends on the liquid and on the edge that they fall from.</source>
        <translation>Le nombre de gouttes par millilitre dépend du liquide et du bord d'où elles tombent.</translation>
    </message>
    <message>
        <source>How many interfaces</source>
        <translation>Combien de raccordements</translation>
    </message>
    <message>
        <source>How many interfaces were undone and not inspected over time, and what this job's own pace says about the rest.</source>
        <translation>Combien de raccordements étaient déposés et non contrôlés au fil du temps, et ce que le rythme de ce chantier dit du reste.</translation>
    </message>
    <message>
        <source>How the figure was worked out</source>
        <translation>Comment la valeur a été calculée</translation>
    </message>
    <message>
        <source>How the identity was proved</source>
        <translation>Comment l'identité a été prouvée</translation>
    </message>
    <message>
        <source>How they were checked</source>
        <translation>Comment elles ont été vérifiées</translation>
    </message>
    <message>
        <source>How: pressure, run, time watched</source>
        <translation>Comment : pression, point fixe, durée observée</translation>
    </message>
    <message>
        <source>Hung now</source>
        <translation>En place maintenant</translation>
    </message>
    <message>
        <source>Hydraulic line</source>
        <translation>Conduite hydraulique</translation>
    </message>
    <message>
        <source>I did this work and it is complete as stated.</source>
        <translation>J'ai fait ce travail et il est complet tel que déclaré.</translation>
    </message>
    <message>
        <source>I had a hand in this work, and inspected it again myself: nobody else could.</source>
        <translation>J'ai pris part à ce travail et l'ai contrôlé de nouveau moi-même : personne d'autre ne le pouvait.</translation>
    </message>
    <message>
        <source>I inspected this myself and had no hand in the work.</source>
        <translation>J'ai contrôlé ceci moi-même et n'ai pas pris part au travail.</translation>
    </message>
    <message>
        <source>I looked at this myself, and it is as I state.</source>
        <translation>J'ai regardé ceci moi-même, et c'est comme je le déclare.</translation>
    </message>
    <message>
        <source>I looked at this myself, and somebody else had undone it.</source>
        <translation>J'ai regardé ceci moi-même, et quelqu'un d'autre l'avait déposé.</translation>
    </message>
    <message>
        <source>I looked at what this hold point asks for, and it is so.</source>
        <translation>J'ai regardé ce que demande ce point d'arrêt, et c'est le cas.</translation>
    </message>
    <message>
        <source>I release this job: every item is restored and inspected, or stands as undisturbed, not applicable or given over to a linked job.</source>
        <translation>Je prononce la remise en service pour ce chantier : chaque élément est remis en état et contrôlé, ou est déclaré non perturbé, non applicable ou transmis à un chantier lié.</translation>
    </message>
    <message>
        <source>I state this as a record of the job.</source>
        <translation>Je déclare ceci pour le dossier du chantier.</translation>
    </message>
    <message>
        <source>I&amp;mported packages …</source>
        <translation>Paquet&amp;s importés …</translation>
    </message>
    <message>
        <source>IN DOUBT since %1, entries %2: %3</source>
        <translation>EN DOUTE depuis %1, entrées %2 : %3</translation>
    </message>
    <message>
        <source>INSPECTED BY ONE WHO HAD A HAND IN IT</source>
        <translation>CONTRÔLÉ PAR UNE PERSONNE QUI Y A PARTICIPÉ</translation>
    </message>
    <message>
        <source>INSPECTED, but</source>
        <translation>CONTRÔLÉ, mais</translation>
    </message>
    <message>
        <source>Id</source>
        <translation>Id</translation>
    </message>
    <message>
        <source>Id (staff number, stamp)</source>
        <translation>Identifiant (matricule, tampon)</translation>
    </message>
    <message>
        <source>Id, as marked on it</source>
        <translation>Identifiant, tel qu'il y est marqué</translation>
    </message>
    <message>
        <source>Import the interface list</source>
        <translation>Importer la liste des raccordements</translation>
    </message>
    <message>
        <source>Import the list of interfaces of this unit as a CSV file, or drop the file onto the window. You see every row before anything is taken.</source>
        <translation>Importez la liste des raccordements de cet ensemble sous forme de fichier CSV, ou déposez le fichier sur la fenêtre. Vous voyez chaque ligne avant que quoi que ce soit ne soit importé.</translation>
    </message>
    <message>
        <source>Imported</source>
        <translation>Importé</translation>
    </message>
    <message>
        <source>Imported package %1</source>
        <translation>Paquet importé %1</translation>
    </message>
    <message>
        <source>Imported packages</source>
        <translation>Paquets importés</translation>
    </message>
    <message>
        <source>Importing the package</source>
        <translation>Importation du paquet</translation>
    </message>
    <message>
        <source>In %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>In a four-wire reading the leads drop out: the zero is recorded and not subtracted.</source>
        <translation>Dans une mesure à quatre fils, les cordons s'éliminent : le zéro est consigné et non soustrait.</translation>
    </message>
    <message>
        <source>In doubt since</source>
        <translation>En doute depuis</translation>
    </message>
    <message>
        <source>In doubt: %1</source>
        <translation>En doute : %1</translation>
    </message>
    <message>
        <source>In per cent of the final torque. From flanges and pipes; an aircraft's own passes are in its maintenance data.</source>
        <translation>En pour cent du couple final. D'après brides et tuyauteries ; les passes propres à un aéronef sont dans ses données d'entretien.</translation>
    </message>
    <message>
        <source>In per cent of the reading, by the greatest torque of the tool. What the tool's own certificate says comes first.</source>
        <translation>En pour cent du relevé, selon le couple maximal de l'outil. Ce que dit le certificat propre à l'outil prime.</translation>
    </message>
    <message>
        <source>In the scheme "%1" a class has no name of its own ("%2").</source>
        <translation>Dans le barème « %1 » une classe n'a pas de nom propre (« %2 »).</translation>
    </message>
    <message>
        <source>In the scheme "%1" no size belongs to the class "%2".</source>
        <translation>Dans le barème « %1 » aucune taille n'appartient à la classe « %2 ».</translation>
    </message>
    <message>
        <source>In the scheme "%1" the class "%2" begins below the one before it. Give the classes from the least to the worst.</source>
        <translation>Dans le barème « %1 » la classe « %2 » commence au-dessous de la précédente. Donnez les classes de la plus faible à la plus mauvaise.</translation>
    </message>
    <message>
        <source>In which order the fasteners of a ring are tightened, and to how much in each pass.</source>
        <translation>Dans quel ordre les fixations d'une couronne sont serrées, et à combien à chaque passe.</translation>
    </message>
    <message>
        <source>Incoming crew</source>
        <translation>Équipe entrante</translation>
    </message>
    <message>
        <source>Incoming serial number</source>
        <translation>Numéro de série entrant</translation>
    </message>
    <message>
        <source>Incoming unit</source>
        <translation>Ensemble entrant</translation>
    </message>
    <message>
        <source>Incoming unit in its place</source>
        <translation>Ensemble entrant en place</translation>
    </message>
    <message>
        <source>Incoming unit received</source>
        <translation>Ensemble entrant réceptionné</translation>
    </message>
    <message>
        <source>Independence group</source>
        <translation>Groupe d'indépendance</translation>
    </message>
    <message>
        <source>Index of persons</source>
        <translation>Index des personnes</translation>
    </message>
    <message>
        <source>Inspect own work again</source>
        <translation>Contrôler de nouveau son propre travail</translation>
    </message>
    <message>
        <source>Inspected</source>
        <translation>Contrôlé</translation>
    </message>
    <message>
        <source>Inspected and accepted</source>
        <translation>Contrôlé et accepté</translation>
    </message>
    <message>
        <source>Inspected and rejected</source>
        <translation>Contrôlé et refusé</translation>
    </message>
    <message>
        <source>Inspected at</source>
        <translation>Contrôlé le</translation>
    </message>
    <message>
        <source>Inspected by</source>
        <translation>Contrôlé par</translation>
    </message>
    <message>
        <source>Inspecting one's own work again</source>
        <translation>Contrôler de nouveau son propre travail</translation>
    </message>
    <message>
        <source>Inspecting one's own work again, where nobody else is there</source>
        <translation>Contrôler de nouveau son propre travail, quand personne d'autre n'est là</translation>
    </message>
    <message>
        <source>Inspection, look</source>
        <translation>Contrôle, examen</translation>
    </message>
    <message>
        <source>Inspections</source>
        <translation>Contrôles</translation>
    </message>
    <message>
        <source>Inspector</source>
        <translation>Contrôleur</translation>
    </message>
    <message>
        <source>Installed: %1</source>
        <translation>Posé : %1</translation>
    </message>
    <message>
        <source>Insulation is whole and closed.</source>
        <translation>L'isolant est intact et fermé.</translation>
    </message>
    <message>
        <source>Intake, outlet, controls and the way of the unit come first; a tool in them hurts people when the engine is turned.</source>
        <translation>L'entrée d'air, la sortie, les commandes et le trajet de l'ensemble d'abord ; un outil qui s'y trouve blesse des personnes quand on fait tourner le moteur.</translation>
    </message>
    <message>
        <source>Interface</source>
        <translation>Raccordement</translation>
    </message>
    <message>
        <source>Interface list (*.csv)</source>
        <translation>Liste des raccordements (*.csv)</translation>
    </message>
    <message>
        <source>Interfaces</source>
        <translation>Raccordements</translation>
    </message>
    <message>
        <source>Interfaces drawn at random, with every entry about them. The same seed draws the same again; choose it without looking at the work.</source>
        <translation>Raccordements tirés au hasard, avec toutes les entrées qui les concernent. La même graine tire les mêmes ; choisissez-la sans regarder le travail.</translation>
    </message>
    <message>
        <source>Interfaces that it covers; none: all</source>
        <translation>Raccordements qu'il couvre ; aucun : tous</translation>
    </message>
    <message>
        <source>Interfaces to be looked up again</source>
        <translation>Raccordements à consulter de nouveau</translation>
    </message>
    <message>
        <source>Interfaces undone and not inspected</source>
        <translation>Raccordements déposés et non contrôlés</translation>
    </message>
    <message>
        <source>Interfaces with photos</source>
        <translation>Raccordements avec photos</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>En</translation>
    </message>
    <message>
        <source>Isolate and tag the circuits first, and measure when all mechanical connections of the bond are made.</source>
        <translation>Consignez et étiquetez d'abord les circuits, et mesurez quand toutes les liaisons mécaniques de la métallisation sont faites.</translation>
    </message>
    <message>
        <source>Isolate and tag the electrical power first. A missing bond lets static charge build up, also while fuel is handled: keep the unit earthed another way while its lead is off, and fuel and its vapour away, as the approved maintenance data and the local rules say.</source>
        <translation>Consignez et étiquetez d'abord l'alimentation électrique. L'absence de métallisation laisse s'accumuler une charge statique, y compris pendant la manipulation de carburant : maintenez l'ensemble mis à la terre d'une autre manière tant que sa tresse est débranchée, et tenez à distance le carburant et ses vapeurs, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Isolate and tag the electrical power first; licensed or authorised people make sure that it is dead before the connector is parted or joined. Ignition exciters keep a charge for a while. Work as the approved maintenance data and the local rules say.</source>
        <translation>Consignez et étiquetez d'abord l'alimentation électrique ; des personnes titulaires d'une licence ou habilitées s'assurent de l'absence de tension avant que le connecteur ne soit séparé ou assemblé. Les boîtes d'allumage gardent une charge pendant un certain temps. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Isolate before hands go near: power off and locked out, pressure released, and proven dead or empty where the maintenance data asks for it.</source>
        <translation>Consignez avant d'approcher les mains : énergie coupée et condamnée, pression relâchée, et absence de tension ou de contenu prouvée là où les données d'entretien le demandent.</translation>
    </message>
    <message>
        <source>Isolation</source>
        <translation>Consignation</translation>
    </message>
    <message>
        <source>Issue a tool</source>
        <translation>Sortir un outil</translation>
    </message>
    <message>
        <source>Issue tags</source>
        <translation>Sortir des étiquettes</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Sorti</translation>
    </message>
    <message>
        <source>It belongs to the ledger %1.</source>
        <translation>Elle appartient au registre des entrées %1.</translation>
    </message>
    <message>
        <source>It cannot be decoded (%1), and stays in the store alone.</source>
        <translation>Elle ne peut pas être décodée (%1), et reste uniquement dans la base.</translation>
    </message>
    <message>
        <source>It cannot be made small enough for paper, and stays in the store alone.</source>
        <translation>Elle ne peut pas être assez réduite pour le papier, et reste uniquement dans la base.</translation>
    </message>
    <message>
        <source>It carries</source>
        <translation>Il porte</translation>
    </message>
    <message>
        <source>It claims %1 × %2 pixels, more than is drawn here, and stays in the store alone.</source>
        <translation>Elle annonce %1 × %2 pixels, plus qu'il n'en est dessiné ici, et reste uniquement dans la base.</translation>
    </message>
    <message>
        <source>It does not hold: something was changed, removed or put in. Faults: %1.</source>
        <translation>L'intégrité n'est pas confirmée : quelque chose a été modifié, supprimé ou ajouté. Défauts : %1.</translation>
    </message>
    <message>
        <source>It does not name the entry before it: that one was changed, removed or put in.</source>
        <translation>Elle ne nomme pas l'entrée précédente : celle-ci a été modifiée, retirée ou insérée.</translation>
    </message>
    <message>
        <source>It does not pin exactly the jobs that this one is linked with.</source>
        <translation>Elle ne fixe pas exactement les chantiers auxquels celui-ci est lié.</translation>
    </message>
    <message>
        <source>It hangs from another root: %1</source>
        <translation>Il dépend d'une autre racine : %1</translation>
    </message>
    <message>
        <source>It hangs from this store's own root.</source>
        <translation>Il dépend de la propre racine de cette base.</translation>
    </message>
    <message>
        <source>It hangs where the next hand goes, and says who and why.</source>
        <translation>Elle est posée là où ira la prochaine main, et dit qui et pourquoi.</translation>
    </message>
    <message>
        <source>It has not been checked for leaks.</source>
        <translation>Son étanchéité n'a pas été contrôlée.</translation>
    </message>
    <message>
        <source>It has not been safetied.</source>
        <translation>Il n'a pas été freiné.</translation>
    </message>
    <message>
        <source>It holds: everything is as it was signed, and each entry was allowed (entries: %1, attachments: %2).</source>
        <translation>L'intégrité est confirmée : tout est tel qu'il a été signé, et chaque entrée était permise (entrées : %1, pièces jointes : %2).</translation>
    </message>
    <message>
        <source>It is a later state of %1.</source>
        <translation>C'est un état postérieur de : %1.</translation>
    </message>
    <message>
        <source>It is an earlier state of %1.</source>
        <translation>C'est un état antérieur de : %1.</translation>
    </message>
    <message>
        <source>It is an exception, and somebody decides for it before it is needed.</source>
        <translation>C'est une exception, et quelqu'un en décide avant qu'elle ne soit nécessaire.</translation>
    </message>
    <message>
        <source>It is clipped and does not rub.</source>
        <translation>Il est fixé par colliers et ne frotte pas.</translation>
    </message>
    <message>
        <source>It is for this unit, stands level, and its brakes and pins hold.</source>
        <translation>Il est prévu pour cet ensemble, il est de niveau, et ses freins et goupilles tiennent.</translation>
    </message>
    <message>
        <source>It is home, and its streamer can be seen from the ground.</source>
        <translation>Elle est à fond, et sa flamme est visible du sol.</translation>
    </message>
    <message>
        <source>It is missing. An adapter is told by the wrench's length, its own length and its angle: give all three or none.</source>
        <translation>Il manque. Un adaptateur se décrit par la longueur de la clé, sa propre longueur et son angle : donnez les trois ou aucun.</translation>
    </message>
    <message>
        <source>It is neither JPEG nor PNG, and stays in the store alone.</source>
        <translation>Elle n'est ni JPEG ni PNG, et reste uniquement dans la base.</translation>
    </message>
    <message>
        <source>It is no ZIP file, or something stands behind its end.</source>
        <translation>Ce n'est pas un fichier ZIP, ou quelque chose se trouve après sa fin.</translation>
    </message>
    <message>
        <source>It is no ZIP file: it is too short.</source>
        <translation>Ce n'est pas un fichier ZIP : il est trop court.</translation>
    </message>
    <message>
        <source>It is open, dry and not kinked.</source>
        <translation>Elle est libre, sèche et sans pliure.</translation>
    </message>
    <message>
        <source>It is so</source>
        <translation>C'est le cas</translation>
    </message>
    <message>
        <source>It is the right one, clean, and can be seen from outside; nothing is left behind it.</source>
        <translation>C'est le bon, il est propre et visible de l'extérieur ; rien n'est laissé derrière.</translation>
    </message>
    <message>
        <source>It is with %1.</source>
        <translation>Il est auprès de %1.</translation>
    </message>
    <message>
        <source>It lies free of neighbours that move or get hot.</source>
        <translation>Elle est dégagée de voisins qui bougent ou s'échauffent.</translation>
    </message>
    <message>
        <source>It names the attachment %1, which is not there as it was.</source>
        <translation>Elle nomme la pièce jointe %1, qui n'est pas là telle qu'elle était.</translation>
    </message>
    <message>
        <source>It pins entry %1 of the linked ledger %2; an entry before it pinned entry %3.</source>
        <translation>Elle fixe l'entrée %1 du registre des entrées lié %2 ; une entrée antérieure fixait l'entrée %3.</translation>
    </message>
    <message>
        <source>It points away from hot parts and sources of ignition.</source>
        <translation>Il est orienté à l'opposé des pièces chaudes et des sources d'inflammation.</translation>
    </message>
    <message>
        <source>It stands at place %1 and says that it is number %2.</source>
        <translation>Elle se trouve à la place %1 et dit être le numéro %2.</translation>
    </message>
    <message>
        <source>It strikes: %1</source>
        <translation>Elle raye : %1</translation>
    </message>
    <message>
        <source>It was sent to %1, which has not taken it on yet.</source>
        <translation>Il a été envoyé à %1, qui ne l'a pas encore pris en charge.</translation>
    </message>
    <message>
        <source>It was signed at %1 without knowing of entry %2 of the register, of %3: it comes from another copy of the store, or from a clock that was wrong.</source>
        <translation>Elle a été signée le %1 sans connaître l'entrée %2 du répertoire, du %3 : elle vient d'une autre copie de la base, ou d'une horloge qui était fausse.</translation>
    </message>
    <message>
        <source>It would not have been admitted: %1</source>
        <translation>Elle n'aurait pas été admise : %1</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Élément</translation>
    </message>
    <message>
        <source>Items handed on</source>
        <translation>Éléments transmis</translation>
    </message>
    <message>
        <source>Items handed on between linked jobs</source>
        <translation>Éléments transmis entre chantiers liés</translation>
    </message>
    <message>
        <source>Its classes, the least leak first</source>
        <translation>Ses classes, la plus petite fuite d'abord</translation>
    </message>
    <message>
        <source>Its entry</source>
        <translation>Son entrée</translation>
    </message>
    <message>
        <source>Its hardware does not balance: %1.</source>
        <translation>Le compte de sa visserie ne tombe pas juste : %1.</translation>
    </message>
    <message>
        <source>Its id, name or number</source>
        <translation>Son identifiant, nom ou numéro</translation>
    </message>
    <message>
        <source>Its id, name or number, whole as it was entered</source>
        <translation>Son identifiant, nom ou numéro, entier tel qu'il a été saisi</translation>
    </message>
    <message>
        <source>Its interfaces</source>
        <translation>Ses raccordements</translation>
    </message>
    <message>
        <source>Its limit and the date of its inspection can be read, and both hold.</source>
        <translation>Sa limite et la date de son contrôle sont lisibles, et toutes deux sont respectées.</translation>
    </message>
    <message>
        <source>Its release certificate</source>
        <translation>Son certificat libératoire</translation>
    </message>
    <message>
        <source>Its signature is not %1's over these bytes.</source>
        <translation>Sa signature n'est pas celle de %1 sur ces octets.</translation>
    </message>
    <message>
        <source>Its work order</source>
        <translation>Son ordre de travail</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>Job closed</source>
        <translation>Chantier clos</translation>
    </message>
    <message>
        <source>Job ledger</source>
        <translation>Registre des entrées du chantier</translation>
    </message>
    <message>
        <source>Job opened</source>
        <translation>Chantier ouvert</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Chantiers</translation>
    </message>
    <message>
        <source>Jobs that name it</source>
        <translation>Chantiers qui le nomment</translation>
    </message>
    <message>
        <source>Judged by</source>
        <translation>Jugé d'après</translation>
    </message>
    <message>
        <source>Keep hands and head out from under the unit; it may move as soon as the last joint lets go.</source>
        <translation>Ne mettez ni les mains ni la tête sous l'ensemble ; il peut bouger dès que la dernière liaison lâche.</translation>
    </message>
    <message>
        <source>Keeps every loose end of a unit change: what was disconnected, who did it, who put it back, what was measured, and who inspected it. A job cannot be closed while anything is loose.</source>
        <translation>Tient le compte de chaque point ouvert d'un changement d'ensemble : ce qui a été débranché, par qui, qui l'a remis, ce qui a été mesuré, et qui l'a contrôlé. Un chantier ne peut pas être clos tant qu'il reste un point ouvert.</translation>
    </message>
    <message>
        <source>Keeps every loose end of an aircraft unit change.</source>
        <translation>Tient le compte de chaque point ouvert d'un changement d'ensemble d'aéronef.</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Clé</translation>
    </message>
    <message>
        <source>Key replaced</source>
        <translation>Clé remplacée</translation>
    </message>
    <message>
        <source>Key stopped</source>
        <translation>Clé bloquée</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Kind of entry</source>
        <translation>Type d'entrée</translation>
    </message>
    <message>
        <source>Kinds</source>
        <translation>Types</translation>
    </message>
    <message>
        <source>Kinds as in the interface list, several with commas between: mount, access_panel. Named are sorts of what is applied (hoist, sling), units, tests or hold points.</source>
        <translation>Types comme dans la liste des raccordements, plusieurs séparés par des virgules : mount, access_panel. Nommés : sortes d'éléments mis en place (hoist, sling), ensembles, essais ou points d'arrêt.</translation>
    </message>
    <message>
        <source>Kinds of entries</source>
        <translation>Types d'entrées</translation>
    </message>
    <message>
        <source>Kinds of interface</source>
        <translation>Types de raccordement</translation>
    </message>
    <message>
        <source>Known &amp;hash</source>
        <translation>&amp;Empreinte connue</translation>
    </message>
    <message>
        <source>Known &amp;root</source>
        <translation>Raci&amp;ne connue</translation>
    </message>
    <message>
        <source>Known that are spelt alike: %1.</source>
        <translation>Connus d'orthographe semblable : %1.</translation>
    </message>
    <message>
        <source>L = %1, E = %2, a = %3°</source>
        <translation>L = %1, E = %2, a = %3°</translation>
    </message>
    <message>
        <source>Labels for</source>
        <translation>Étiquettes pour</translation>
    </message>
    <message>
        <source>Labels of %1</source>
        <translation>Étiquettes de %1</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Agrandir</translation>
    </message>
    <message>
        <source>Larger (+)</source>
        <translation>Plus grand (+)</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Dernière</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Dernier jour</translation>
    </message>
    <message>
        <source>Last day on which it was known to be right</source>
        <translation>Dernier jour où il était connu comme juste</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Dernière entrée</translation>
    </message>
    <message>
        <source>Last entry in doubt</source>
        <translation>Dernière entrée en doute</translation>
    </message>
    <message>
        <source>Last entry of the job</source>
        <translation>Dernière entrée du chantier</translation>
    </message>
    <message>
        <source>Last number</source>
        <translation>Dernier numéro</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Lead to it, where it can be signed (Return)</source>
        <translation>Y conduire, là où cela peut être signé (Entrée)</translation>
    </message>
    <message>
        <source>Leads</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Leads that read more than the bond measure themselves.</source>
        <translation>Des cordons qui donnent plus que la métallisation se mesurent eux-mêmes.</translation>
    </message>
    <message>
        <source>Leads together showed</source>
        <translation>Les cordons réunis indiquaient</translation>
    </message>
    <message>
        <source>Leak check</source>
        <translation>Contrôle d'étanchéité</translation>
    </message>
    <message>
        <source>Leak checks</source>
        <translation>Contrôles d'étanchéité</translation>
    </message>
    <message>
        <source>Leak class seen, where the scheme has no sizes</source>
        <translation>Classe de fuite vue, quand le barème n'a pas de tailles</translation>
    </message>
    <message>
        <source>Leak classes, the least first</source>
        <translation>Classes de fuite, la plus petite d'abord</translation>
    </message>
    <message>
        <source>Leak measured</source>
        <translation>Fuite mesurée</translation>
    </message>
    <message>
        <source>Leak, at most</source>
        <translation>Fuite, au plus</translation>
    </message>
    <message>
        <source>Leak, most</source>
        <translation>Fuite, maximum</translation>
    </message>
    <message>
        <source>Leak, worst class allowed</source>
        <translation>Fuite, pire classe admise</translation>
    </message>
    <message>
        <source>Least</source>
        <translation>Minimum</translation>
    </message>
    <message>
        <source>Least drag for its size</source>
        <translation>Couple d'autofreinage minimum pour sa taille</translation>
    </message>
    <message>
        <source>Least drag of a nut used again</source>
        <translation>Couple d'autofreinage minimum d'un écrou réutilisé</translation>
    </message>
    <message>
        <source>Least drag of a self-locking nut that is used again</source>
        <translation>Couple d'autofreinage minimum d'un écrou autofreiné réutilisé</translation>
    </message>
    <message>
        <source>Least for its size</source>
        <translation>Minimum pour sa taille</translation>
    </message>
    <message>
        <source>Least margin of a leg</source>
        <translation>Marge minimale d'un brin</translation>
    </message>
    <message>
        <source>Least torque</source>
        <translation>Couple minimal</translation>
    </message>
    <message>
        <source>Least: as given</source>
        <translation>Minimum : tel quel</translation>
    </message>
    <message>
        <source>Leave &amp;it</source>
        <translation>&amp;La laisser</translation>
    </message>
    <message>
        <source>Leave out what the camera wrote: place, time, device</source>
        <translation>Omettre ce que l'appareil a écrit : lieu, heure, appareil</translation>
    </message>
    <message>
        <source>Leave the store</source>
        <translation>Quitter la base</translation>
    </message>
    <message>
        <source>Leave this store?</source>
        <translation>Quitter cette base ?</translation>
    </message>
    <message>
        <source>Leaves with the outgoing unit</source>
        <translation>Part avec l'ensemble sortant</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Registre des entrées</translation>
    </message>
    <message>
        <source>Ledgers</source>
        <translation>Registres des entrées</translation>
    </message>
    <message>
        <source>Left point</source>
        <translation>Point gauche</translation>
    </message>
    <message>
        <source>Legs at each lifting point</source>
        <translation>Brins à chaque point de levage</translation>
    </message>
    <message>
        <source>Legs at each point</source>
        <translation>Brins à chaque point</translation>
    </message>
    <message>
        <source>Length, grip to drive</source>
        <translation>Longueur, poignée à carré</translation>
    </message>
    <message>
        <source>Let the pressure off before a cap is opened, and mind hot oil. Gloves and eye protection; wipe up what is spilled.</source>
        <translation>Faites tomber la pression avant d'ouvrir un bouchon, et attention à l'huile chaude. Gants et lunettes ; essuyez ce qui est renversé.</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Niveau</translation>
    </message>
    <message>
        <source>Lift planned</source>
        <translation>Levage préparé</translation>
    </message>
    <message>
        <source>Lift with hoist and slings</source>
        <translation>Levage avec palan et élingues</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Levé</translation>
    </message>
    <message>
        <source>Lifting point</source>
        <translation>Point de levage</translation>
    </message>
    <message>
        <source>Lifting points %1 apart, with the centre of gravity at %2, make no sense. Give a span above 0 and two lengths.</source>
        <translation>Des points de levage distants de %1, avec le centre de gravité à %2, n'ont pas de sens. Donnez une distance supérieure à 0 et deux longueurs.</translation>
    </message>
    <message>
        <source>Lifts as planned</source>
        <translation>Levages tels que préparés</translation>
    </message>
    <message>
        <source>Lifts, fluids</source>
        <translation>Levages, fluides</translation>
    </message>
    <message>
        <source>Lifts, fluids, weight</source>
        <translation>Levages, fluides, masse</translation>
    </message>
    <message>
        <source>Lifts, servicing and weight, as they were worked out</source>
        <translation>Levages, pleins et masse, tels qu'ils ont été calculés</translation>
    </message>
    <message>
        <source>Light with &amp;more contrast</source>
        <translation>Clair, &amp;plus de contraste</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Limit of a leg</source>
        <translation>Limite d'un brin</translation>
    </message>
    <message>
        <source>Limit of the hoist</source>
        <translation>Limite du palan</translation>
    </message>
    <message>
        <source>Limit, as a flow</source>
        <translation>Limite, en débit</translation>
    </message>
    <message>
        <source>Limit, as drops</source>
        <translation>Limite, en gouttes</translation>
    </message>
    <message>
        <source>Limit: the maintenance data, as given</source>
        <translation>Limite : les données d'entretien, telles quelles</translation>
    </message>
    <message>
        <source>Limitation, where findings are deferred</source>
        <translation>Limitation, lorsque des constats sont reportés</translation>
    </message>
    <message>
        <source>Link with another job</source>
        <translation>Lier à un autre chantier</translation>
    </message>
    <message>
        <source>Linkages trap hands, and springs or power may move them. Isolate, tag and lock what drives them, and keep people clear of what they move, as the approved maintenance data and the local rules say.</source>
        <translation>Les timoneries coincent les mains, et des ressorts ou une source d'énergie peuvent les mouvoir. Consignez, étiquetez et verrouillez ce qui les entraîne, et tenez les personnes à l'écart de ce qu'elles meuvent, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Linked</source>
        <translation>Lié</translation>
    </message>
    <message>
        <source>Linked jobs</source>
        <translation>Chantiers liés</translation>
    </message>
    <message>
        <source>Linked with another job</source>
        <translation>Lié à un autre chantier</translation>
    </message>
    <message>
        <source>List</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>List an accessory</source>
        <translation>Lister un accessoire</translation>
    </message>
    <message>
        <source>List corrected for</source>
        <translation>Liste corrigée pour</translation>
    </message>
    <message>
        <source>Listed</source>
        <translation>Selon la liste</translation>
    </message>
    <message>
        <source>Load on the hoist, H</source>
        <translation>Charge sur le palan, H</translation>
    </message>
    <message>
        <source>Loc&amp;k</source>
        <translation>Verro&amp;uiller</translation>
    </message>
    <message>
        <source>Locking is fitted and pulls towards tight.</source>
        <translation>Le freinage est posé et tire dans le sens du serrage.</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Examen</translation>
    </message>
    <message>
        <source>Look again; then say which is missing, or issue what nobody issued.</source>
        <translation>Cherchez à nouveau ; puis indiquez ce qui manque, ou enregistrez la sortie que personne n'a enregistrée.</translation>
    </message>
    <message>
        <source>Look and feel behind what hides: the last bolt, the lead under the duct, the clamp that nobody listed.</source>
        <translation>Regardez et tâtez derrière ce qui cache : la dernière vis, la tresse sous la gaine, le collier que personne n'a listé.</translation>
    </message>
    <message>
        <source>Look at</source>
        <translation>Regarder</translation>
    </message>
    <message>
        <source>Look at the item itself, at its tag, its blanks and its hardware, before you take it on: what the other job's record says is what you answer for from now on.</source>
        <translation>Regardez l'élément lui-même, son étiquette, ses obturateurs et sa visserie avant de le prendre en charge : vous répondez désormais de ce que dit le dossier de l'autre chantier.</translation>
    </message>
    <message>
        <source>Look at this, and confirm it: %1</source>
        <translation>Regardez ceci, et confirmez-le : %1</translation>
    </message>
    <message>
        <source>Look for something first.</source>
        <translation>Cherchez d'abord quelque chose.</translation>
    </message>
    <message>
        <source>Look for the lost tag first: in the bay, the intake, the outlet and the lines that stood open it is a foreign object.</source>
        <translation>Cherchez d'abord l'étiquette perdue : dans le compartiment, l'entrée d'air, la sortie et les conduites restées ouvertes, c'est un corps étranger.</translation>
    </message>
    <message>
        <source>Look inside as far as eyes, mirror and borescope reach, on both sides; the approved maintenance data and the local rules say how far.</source>
        <translation>Regardez à l'intérieur aussi loin que portent les yeux, le miroir et l'endoscope, des deux côtés ; les données d'entretien approuvées et les règles locales disent jusqu'où.</translation>
    </message>
    <message>
        <source>Look over hoist, slings and fittings on the day, before use. A sling without a legible tag is not used.</source>
        <translation>Examinez palan, élingues et ferrures le jour même, avant emploi. Une élingue sans étiquette lisible ne s'emploie pas.</translation>
    </message>
    <message>
        <source>Look up</source>
        <translation>Consulter</translation>
    </message>
    <message>
        <source>Look up: %1</source>
        <translation>Consulter : %1</translation>
    </message>
    <message>
        <source>Look-alike halves join as easily as the right ones.</source>
        <translation>Des moitiés qui se ressemblent se raccordent aussi facilement que les bonnes.</translation>
    </message>
    <message>
        <source>Look-alikes</source>
        <translation>Semblables</translation>
    </message>
    <message>
        <source>Looked after by</source>
        <translation>Suivi par</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Regardé</translation>
    </message>
    <message>
        <source>Looked at %1 minutes after wiping dry.</source>
        <translation>Regardé %1 minutes après essuyage à sec.</translation>
    </message>
    <message>
        <source>Looked at and confirmed</source>
        <translation>Regardé et confirmé</translation>
    </message>
    <message>
        <source>Looked at it: free</source>
        <translation>Regardé : libre</translation>
    </message>
    <message>
        <source>Looked at it: free   Space</source>
        <translation>Regardé : libre   Espace</translation>
    </message>
    <message>
        <source>Looked at, minutes after wiping dry</source>
        <translation>Regardé, minutes après essuyage à sec</translation>
    </message>
    <message>
        <source>Looked for</source>
        <translation>Cherché</translation>
    </message>
    <message>
        <source>Looked through</source>
        <translation>Parcouru</translation>
    </message>
    <message>
        <source>Looked through were jobs: %1; their entries: %2; entries of the register: %3.</source>
        <translation>Chantiers parcourus : %1 ; leurs entrées : %2 ; entrées du répertoire : %3.</translation>
    </message>
    <message>
        <source>Looked up for: %1</source>
        <translation>Consulté pour : %1</translation>
    </message>
    <message>
        <source>Loose ends</source>
        <translation>Points ouverts</translation>
    </message>
    <message>
        <source>Loose ends that are gone</source>
        <translation>Points ouverts disparus</translation>
    </message>
    <message>
        <source>Loose, by zone</source>
        <translation>Ouvert, par zone</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdues</translation>
    </message>
    <message>
        <source>Lost and replaced</source>
        <translation>Perdues et remplacées</translation>
    </message>
    <message>
        <source>Lost tag replaced on</source>
        <translation>Étiquette perdue remplacée sur</translation>
    </message>
    <message>
        <source>Lowest mark of its scale</source>
        <translation>Plus petit repère de son échelle</translation>
    </message>
    <message>
        <source>Lowest point that is tested</source>
        <translation>Plus petit point essayé</translation>
    </message>
    <message>
        <source>Lug faces are clean, flat and show no heat.</source>
        <translation>Les faces des cosses sont propres, planes et sans trace d'échauffement.</translation>
    </message>
    <message>
        <source>MISSING since %1, finding %2</source>
        <translation>MANQUANT depuis %1, constat %2</translation>
    </message>
    <message>
        <source>Maintenance data</source>
        <translation>Données d'entretien</translation>
    </message>
    <message>
        <source>Maintenance data reference</source>
        <translation>Référence des données d'entretien</translation>
    </message>
    <message>
        <source>Maintenance data revised</source>
        <translation>Données d'entretien révisées</translation>
    </message>
    <message>
        <source>Make it smaller: at most %1 pixels on the longer side</source>
        <translation>Réduire : au plus %1 pixels sur le grand côté</translation>
    </message>
    <message>
        <source>Make sure of each interface by what it joins, not by its tag, and that each is as the log says, before the tags change places.</source>
        <translation>Assurez-vous de chaque raccordement par ce qu'il joint, pas par son étiquette, et que chacun est tel que le disent les entrées, avant que les étiquettes changent de place.</translation>
    </message>
    <message>
        <source>Make sure that the interface is the one that the log says, and as the log says, before the new tag is hung.</source>
        <translation>Assurez-vous que le raccordement est bien celui que disent les entrées, et tel qu'elles le disent, avant de poser la nouvelle étiquette.</translation>
    </message>
    <message>
        <source>Manual</source>
        <translation>Manuel</translation>
    </message>
    <message>
        <source>Manual, &amp;contents</source>
        <translation>Manuel, &amp;sommaire</translation>
    </message>
    <message>
        <source>Many at once</source>
        <translation>Beaucoup à la fois</translation>
    </message>
    <message>
        <source>Many in a short time</source>
        <translation>Beaucoup en peu de temps</translation>
    </message>
    <message>
        <source>Many signatures in a short time</source>
        <translation>Beaucoup de signatures en peu de temps</translation>
    </message>
    <message>
        <source>Margin of a leg at %1</source>
        <translation>Marge d'un brin, %1</translation>
    </message>
    <message>
        <source>Margin of the hoist</source>
        <translation>Marge du palan</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Mark %1 lies beside the photo: both its places are 0 to 1000 thousandths.</source>
        <translation>Le repère %1 est hors de la photo : ses deux positions vont de 0 à 1000 millièmes.</translation>
    </message>
    <message>
        <source>Mark %1, not signed: %2</source>
        <translation>Repère %1, non signé : %2</translation>
    </message>
    <message>
        <source>Mark %1: %2</source>
        <translation>Repère %1 : %2</translation>
    </message>
    <message>
        <source>Mark %1: %2. %3, entry %4</source>
        <translation>Repère %1 : %2. %3, entrée %4</translation>
    </message>
    <message>
        <source>Mark a photo</source>
        <translation>Marquer une photo</translation>
    </message>
    <message>
        <source>Marked fasteners accepted</source>
        <translation>Fixations repérées acceptées</translation>
    </message>
    <message>
        <source>Marking</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Marking on the tool</source>
        <translation>Repère sur l'outil</translation>
    </message>
    <message>
        <source>Markings that were counted</source>
        <translation>Repères qui ont été comptés</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Repères</translation>
    </message>
    <message>
        <source>Marks inside it, %1 apart</source>
        <translation>Repères compris dedans, distants de %1</translation>
    </message>
    <message>
        <source>Marks on the photo</source>
        <translation>Repères sur la photo</translation>
    </message>
    <message>
        <source>Mating faces meet without a gap.</source>
        <translation>Les faces d'appui se rejoignent sans jeu.</translation>
    </message>
    <message>
        <source>May</source>
        <translation>Peut</translation>
    </message>
    <message>
        <source>May be off by</source>
        <translation>Erreur possible</translation>
    </message>
    <message>
        <source>May stay empty</source>
        <translation>Peut rester vide</translation>
    </message>
    <message>
        <source>Mean aerodynamic chord, if known</source>
        <translation>Corde aérodynamique moyenne, si connue</translation>
    </message>
    <message>
        <source>Measure bonding</source>
        <translation>Mesurer la métallisation</translation>
    </message>
    <message>
        <source>Measured in entry %1 with %2, which was found out of tolerance later: %3 Mark the item disturbed, and measure it again with another tool.</source>
        <translation>Mesuré à l'entrée %1 avec %2, trouvé plus tard hors tolérance : %3 Marquez l'élément comme perturbé, et mesurez à nouveau avec un autre outil.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Millivolt drop: AC 43.13-1B (9/8/98) par. 11-188 j, fig. 11-19</source>
        <translation>Chute de tension : AC 43.13-1B (9/8/98) par. 11-188 j, fig. 11-19</translation>
    </message>
    <message>
        <source>Mind:</source>
        <translation>À noter :</translation>
    </message>
    <message>
        <source>Minutes after wiping dry</source>
        <translation>Minutes après essuyage à sec</translation>
    </message>
    <message>
        <source>Minutes between the work and that</source>
        <translation>Minutes entre le travail et cela</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Manquant</translation>
    </message>
    <message>
        <source>Modification state, against the outgoing unit</source>
        <translation>État de modification, par rapport à l'ensemble sortant</translation>
    </message>
    <message>
        <source>More than %1 of %2 did not come off one interface. Count again.</source>
        <translation>Il n'est pas possible que plus de %1 × %2 aient été déposés d'un seul raccordement. Recomptez.</translation>
    </message>
    <message>
        <source>More than %1 of %2 does not belong to one interface. Count again.</source>
        <translation>Plus de %1 × %2 ne peuvent pas appartenir à un seul raccordement. Recomptez.</translation>
    </message>
    <message>
        <source>More was said of %1 (entry %2).</source>
        <translation>%1 a fait l'objet d'autres déclarations (entrée %2).</translation>
    </message>
    <message>
        <source>More was said of %1 since its row was corrected. Correct it again instead.</source>
        <translation>%1 a fait l'objet d'autres déclarations depuis la correction de sa ligne. Corrigez-la plutôt à nouveau.</translation>
    </message>
    <message>
        <source>Most</source>
        <translation>Maximum</translation>
    </message>
    <message>
        <source>Most torque</source>
        <translation>Couple maximal</translation>
    </message>
    <message>
        <source>Mount</source>
        <translation>Attache</translation>
    </message>
    <message>
        <source>Moved to the incoming unit</source>
        <translation>Transféré sur l'ensemble entrant</translation>
    </message>
    <message>
        <source>Must be new</source>
        <translation>Doit être neuf</translation>
    </message>
    <message>
        <source>Must show</source>
        <translation>Doit montrer</translation>
    </message>
    <message>
        <source>NONE IN FORCE</source>
        <translation>AUCUNE EN VIGUEUR</translation>
    </message>
    <message>
        <source>NOT ACCEPTED</source>
        <translation>NON ACCEPTÉE</translation>
    </message>
    <message>
        <source>NOT ACCEPTED yet</source>
        <translation>PAS ENCORE ACCEPTÉE</translation>
    </message>
    <message>
        <source>NOT AGREED</source>
        <translation>SANS ACCORD</translation>
    </message>
    <message>
        <source>NOT CLOSED</source>
        <translation>NON CLOS</translation>
    </message>
    <message>
        <source>NOT EVEN</source>
        <translation>NON ÉQUILIBRÉ</translation>
    </message>
    <message>
        <source>NOT PASSED</source>
        <translation>NON FRANCHI</translation>
    </message>
    <message>
        <source>NOT PLACED</source>
        <translation>NON ATTRIBUÉ</translation>
    </message>
    <message>
        <source>NOT TAKEN ON</source>
        <translation>NON PRIS EN CHARGE</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Name one system that is serviced.</source>
        <translation>Nommez un système dont le plein est fait.</translation>
    </message>
    <message>
        <source>Name the hold points that come first, and nothing else.</source>
        <translation>Nommez les points d'arrêt qui viennent avant, et rien d'autre.</translation>
    </message>
    <message>
        <source>Name the interfaces that the new revision may ask something else of; or say that it was read and changes none of them.</source>
        <translation>Nommez les raccordements auxquels la nouvelle révision peut demander autre chose ; ou déclarez qu'elle a été lue et n'en modifie aucun.</translation>
    </message>
    <message>
        <source>Name, id or badge</source>
        <translation>Nom, identifiant ou badge</translation>
    </message>
    <message>
        <source>Named</source>
        <translation>Nommés</translation>
    </message>
    <message>
        <source>Negligible is what is so in weight and in centre of gravity. The limits forward and aft of the centre of gravity are others, and are not looked at here; nor is a rotorcraft's range. The equipment list and the weight record are revised by those who are licensed for it.</source>
        <translation>Est négligeable ce qui l'est en masse et en centre de gravité. Les limites avant et arrière du centre de gravité sont autres, et ne sont pas regardées ici ; ni la plage d'un giravion. La liste d'équipement et la fiche de masse sont révisées par les titulaires de la licence requise.</translation>
    </message>
    <message>
        <source>Negligible, by weight and by centre of gravity.</source>
        <translation>Négligeable, en masse et en centre de gravité.</translation>
    </message>
    <message>
        <source>Never feel for a leak under pressure with a hand: a fine jet goes through skin. Let the pressure off before touching.</source>
        <translation>Ne cherchez jamais une fuite sous pression avec la main : un jet fin traverse la peau. Faites tomber la pression avant de toucher.</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neuf</translation>
    </message>
    <message>
        <source>New PIN or passphrase</source>
        <translation>Nouveau PIN ou nouvelle phrase secrète</translation>
    </message>
    <message>
        <source>New centre of gravity</source>
        <translation>Nouveau centre de gravité</translation>
    </message>
    <message>
        <source>New empty weight, W</source>
        <translation>Nouvelle masse à vide, W</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Nouveau chantier</translation>
    </message>
    <message>
        <source>New key for a person</source>
        <translation>Nouvelle clé pour une personne</translation>
    </message>
    <message>
        <source>New loose ends</source>
        <translation>Nouveaux points ouverts</translation>
    </message>
    <message>
        <source>New moment, M</source>
        <translation>Nouveau moment, M</translation>
    </message>
    <message>
        <source>New seal</source>
        <translation>Joint neuf</translation>
    </message>
    <message>
        <source>New seal, batch</source>
        <translation>Joint neuf, lot</translation>
    </message>
    <message>
        <source>New seal, part number</source>
        <translation>Joint neuf, référence</translation>
    </message>
    <message>
        <source>New seals</source>
        <translation>Joints neufs</translation>
    </message>
    <message>
        <source>New store</source>
        <translation>Nouvelle base</translation>
    </message>
    <message>
        <source>New tag</source>
        <translation>Nouvelle étiquette</translation>
    </message>
    <message>
        <source>Next fastener</source>
        <translation>Fixation suivante</translation>
    </message>
    <message>
        <source>Next on</source>
        <translation>À reposer</translation>
    </message>
    <message>
        <source>Next to restore</source>
        <translation>Prochain à remettre en état</translation>
    </message>
    <message>
        <source>Next to restore: %1 of %2 may go on now</source>
        <translation>Prochain à remettre en état : %1 sur %2 peuvent être reposés maintenant</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>No %1 was passed yet.</source>
        <translation>Pas encore réussi : %1.</translation>
    </message>
    <message>
        <source>No blank or loose part is left inside.</source>
        <translation>Aucun obturateur ni pièce libre n'est laissé à l'intérieur.</translation>
    </message>
    <message>
        <source>No blank, rag or loose part is left inside.</source>
        <translation>Aucun obturateur, chiffon ni pièce libre n'est laissé à l'intérieur.</translation>
    </message>
    <message>
        <source>No block from %1 to %2 was issued to this job. Blocks that are out: %3.</source>
        <translation>Aucune série de %1 à %2 n'a été sortie pour ce chantier. Séries actuellement sorties : %3.</translation>
    </message>
    <message>
        <source>No block of tags was issued to this job. Where one is, each tag that is hung is of a block that is out, and the block is returned whole.</source>
        <translation>Aucune série d'étiquettes n'a été sortie pour ce chantier. Lorsqu'une série est sortie, chaque étiquette posée en fait partie, et la série est rendue complète.</translation>
    </message>
    <message>
        <source>No command has these letters.</source>
        <translation>Aucune commande ne contient ces lettres.</translation>
    </message>
    <message>
        <source>No copy of %1 could be made. Attach it as it is, or choose another.</source>
        <translation>Aucune copie de %1 n'a pu être faite. Joignez-la telle quelle, ou choisissez-en une autre.</translation>
    </message>
    <message>
        <source>No crack, wear or dent shows on mount and attachment.</source>
        <translation>Aucune crique, usure ou enfoncement n'apparaît sur l'attache et sa fixation.</translation>
    </message>
    <message>
        <source>No disconnection of %1 was logged. If it was found open, say so first.</source>
        <translation>Aucun débranchement de %1 n'a été enregistré. S'il a été trouvé ouvert, dites-le d'abord.</translation>
    </message>
    <message>
        <source>No drag was added. Where the nut locks itself and the maintenance data says so, it is.</source>
        <translation>Aucun couple d'autofreinage n'a été ajouté. Quand l'écrou est autofreiné et que les données d'entretien le disent, il l'est.</translation>
    </message>
    <message>
        <source>No entry fits.</source>
        <translation>Aucune entrée ne correspond.</translation>
    </message>
    <message>
        <source>No entry has the hash %1: it was changed or removed, perhaps with all that followed it.</source>
        <translation>Aucune entrée n'a l'empreinte (hash) %1 : elle a été modifiée ou supprimée, peut-être avec tout ce qui la suivait.</translation>
    </message>
    <message>
        <source>No entry names the attachment %1: it was put in.</source>
        <translation>Aucune entrée ne nomme la pièce jointe %1 : elle a été ajoutée.</translation>
    </message>
    <message>
        <source>No entry of any job names %1 %2.</source>
        <translation>Aucune entrée d'aucun chantier n'indique : %1 %2.</translation>
    </message>
    <message>
        <source>No entry of those asked for names %1 %2.</source>
        <translation>Aucune des entrées demandées n'indique : %1 %2.</translation>
    </message>
    <message>
        <source>No fault.</source>
        <translation>Aucun défaut.</translation>
    </message>
    <message>
        <source>No file could be made beside %1 (system %2). Check that the folder is there and that you may write to it.</source>
        <translation>Aucun fichier n'a pu être créé à côté de %1 (système %2). Vérifiez que l'emplacement existe et que vous avez le droit d'y écrire.</translation>
    </message>
    <message>
        <source>No finding is open.</source>
        <translation>Aucun constat n'est ouvert.</translation>
    </message>
    <message>
        <source>No finding was raised in this job. Raise one for damage or a discrepancy; it stays open until an inspector disposes of it.</source>
        <translation>Aucun constat n'a été ouvert dans ce chantier. Ouvrez-en un pour un dommage ou un écart ; il reste ouvert jusqu'à ce qu'un contrôleur statue.</translation>
    </message>
    <message>
        <source>No finding was raised.</source>
        <translation>Aucun constat n'a été ouvert.</translation>
    </message>
    <message>
        <source>No follow-up was set: what is due after closure, such as a torque to be checked again after some hours.</source>
        <translation>Aucun suivi n'a été fixé : ce qui est dû après la clôture, par exemple un couple à revérifier après quelques heures.</translation>
    </message>
    <message>
        <source>No hash was given that must be in it: whether its end was cut off cannot be told without one, from a page that was printed earlier, say.</source>
        <translation>Aucune empreinte (hash) à y retrouver n'a été donnée : sans elle, prise par exemple sur une page imprimée auparavant, on ne peut pas dire si la fin a été coupée.</translation>
    </message>
    <message>
        <source>No hoist and no sling is on.</source>
        <translation>Ni palan ni élingue en place.</translation>
    </message>
    <message>
        <source>No imported package has the number %1.</source>
        <translation>Aucun paquet importé n'a le numéro %1.</translation>
    </message>
    <message>
        <source>No inspection was recorded.</source>
        <translation>Aucun contrôle n'a été enregistré.</translation>
    </message>
    <message>
        <source>No interface goes uninspected.</source>
        <translation>Aucun raccordement ne reste sans contrôle.</translation>
    </message>
    <message>
        <source>No interface is open or half done.</source>
        <translation>Aucun raccordement n'est ouvert ni à moitié fait.</translation>
    </message>
    <message>
        <source>No interface is open.</source>
        <translation>Aucun raccordement n'est ouvert.</translation>
    </message>
    <message>
        <source>No interface was listed.</source>
        <translation>Aucun raccordement n'a été inscrit.</translation>
    </message>
    <message>
        <source>No item chosen</source>
        <translation>Aucun élément choisi</translation>
    </message>
    <message>
        <source>No job is open.</source>
        <translation>Aucun chantier n'est ouvert.</translation>
    </message>
    <message>
        <source>No job yet</source>
        <translation>Aucun chantier encore</translation>
    </message>
    <message>
        <source>No leak is something that was looked for.</source>
        <translation>L'absence de fuite est quelque chose que l'on a cherché.</translation>
    </message>
    <message>
        <source>No ledger was read.</source>
        <translation>Aucun registre n'a été lu.</translation>
    </message>
    <message>
        <source>No lift is planned, nothing is filled in and no weight recorded in this job. Each is worked out as it is entered, and stands here with its working.</source>
        <translation>Dans ce chantier, aucun levage n'est préparé, aucun plein n'est fait et aucune masse n'est consignée. Chacun est calculé à la saisie et s'affiche ici avec son calcul.</translation>
    </message>
    <message>
        <source>No lift of the %1 unit is planned.</source>
        <translation>Aucun levage de l'ensemble (%1) n'est préparé.</translation>
    </message>
    <message>
        <source>No lift of the outgoing unit is planned.</source>
        <translation>Aucun levage de l'ensemble sortant n'est préparé.</translation>
    </message>
    <message>
        <source>No limit is exceeded by these numbers.</source>
        <translation>Aucune limite n'est dépassée par ces nombres.</translation>
    </message>
    <message>
        <source>No measuring tool was used.</source>
        <translation>Aucun outil de mesure n'a été utilisé.</translation>
    </message>
    <message>
        <source>No new seal was recorded.</source>
        <translation>Aucun joint neuf n'a été enregistré.</translation>
    </message>
    <message>
        <source>No package was imported.</source>
        <translation>Aucun paquet n'a été importé.</translation>
    </message>
    <message>
        <source>No page has all of these words.</source>
        <translation>Aucune page ne contient tous ces mots.</translation>
    </message>
    <message>
        <source>No photo from after.</source>
        <translation>Aucune photo d'après.</translation>
    </message>
    <message>
        <source>No photo from before.</source>
        <translation>Aucune photo d'avant.</translation>
    </message>
    <message>
        <source>No photo is attached in this job yet. Add one as a file, drop it here, paste it, or watch the folder that the camera copies to. It is taken once its entry is signed.</source>
        <translation>Aucune photo n'est encore jointe dans ce chantier. Ajoutez-en une par un fichier, déposez-la ici, collez-la, ou surveillez le dossier où l'appareil copie. Elle est prise une fois son entrée signée.</translation>
    </message>
    <message>
        <source>No pin is bent, pushed back, wet or dirty.</source>
        <translation>Aucune broche n'est tordue, enfoncée, mouillée ou sale.</translation>
    </message>
    <message>
        <source>No servicing of %1 is recorded.</source>
        <translation>Aucun plein de %1 n'est consigné.</translation>
    </message>
    <message>
        <source>No shift has been handed over in this job.</source>
        <translation>Aucune équipe n'a fait de passation dans ce chantier.</translation>
    </message>
    <message>
        <source>No such handover waits for acceptance.</source>
        <translation>Aucune passation de ce genre n'attend d'être acceptée.</translation>
    </message>
    <message>
        <source>No temporary item "%1" was applied in this job.</source>
        <translation>Aucun élément temporaire « %1 » n'a été mis en place dans ce chantier.</translation>
    </message>
    <message>
        <source>No test is recorded: ground runs, functional tests, leak checks of a system. A good test never stands for the inspection of an item.</source>
        <translation>Aucun essai n'est consigné : points fixes, essais fonctionnels, contrôles d'étanchéité d'un système. Un essai satisfaisant ne remplace jamais le contrôle d'un élément.</translation>
    </message>
    <message>
        <source>No tool "%1" was issued to this job.</source>
        <translation>Aucun outil « %1 » n'a été sorti pour ce chantier.</translation>
    </message>
    <message>
        <source>No tool is registered. Torque and bonding are measured with registered tools in calibration alone.</source>
        <translation>Aucun outil n'est enregistré. Couple et métallisation se mesurent uniquement avec des outils enregistrés et en cours d'étalonnage valable.</translation>
    </message>
    <message>
        <source>No tool may be off by %1 % of its reading. Give the percent of its certificate or standard, such as 4.</source>
        <translation>Aucun outil ne peut s'écarter de %1 % de sa lecture. Donnez le pourcentage de son certificat ou de la norme, par exemple 4.</translation>
    </message>
    <message>
        <source>No tool was issued to this job yet. What is issued is counted at the hold points that ask for it, and stays a loose end until it is returned.</source>
        <translation>Aucun outil n'a encore été sorti pour ce chantier. Ce qui est sorti est compté aux points d'arrêt qui le demandent, et reste un point ouvert jusqu'à son retour.</translation>
    </message>
    <message>
        <source>No tool, rag or loose part is left behind it.</source>
        <translation>Il ne reste derrière ni outil, ni chiffon, ni pièce libre.</translation>
    </message>
    <message>
        <source>No torque was recorded.</source>
        <translation>Aucun couple de serrage n'a été enregistré.</translation>
    </message>
    <message>
        <source>No transfer with this code is open. Compare each letter; a code works once, and only until the time that was shown with it. Otherwise make a new one where the key is.</source>
        <translation>Aucun transfert avec ce code n'est ouvert. Comparez chaque lettre ; un code sert une fois, et seulement jusqu'à l'heure affichée avec lui. Sinon, faites-en un nouveau là où se trouve la clé.</translation>
    </message>
    <message>
        <source>No weight change is recorded.</source>
        <translation>Aucun changement de masse n'est consigné.</translation>
    </message>
    <message>
        <source>No zone</source>
        <translation>Pas de zone</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>No. %1, %2, %3: %4</source>
        <translation>N° %1, %2, %3 : %4</translation>
    </message>
    <message>
        <source>No:</source>
        <translation>Non :</translation>
    </message>
    <message>
        <source>Nobody can know how far another's hands had come.</source>
        <translation>Personne ne peut savoir où en étaient les mains d'un autre.</translation>
    </message>
    <message>
        <source>Nobody can sign for another.</source>
        <translation>Personne ne peut signer pour un autre.</translation>
    </message>
    <message>
        <source>Nobody can sign for you, and nobody can read your PIN back to you. A long passphrase protects you better than a short PIN if the file is ever copied.</source>
        <translation>Personne ne peut signer à votre place, et personne ne peut vous relire votre PIN. Une longue phrase secrète vous protège mieux qu'un PIN court si le fichier est un jour copié.</translation>
    </message>
    <message>
        <source>Nobody comes near intake, outlet, propeller or hot parts while it turns, or is pressurised.</source>
        <translation>Personne n'approche de l'entrée d'air, de la sortie, de l'hélice ni des parties chaudes tant que le moteur tourne ou que le système est sous pression.</translation>
    </message>
    <message>
        <source>Nobody found %1 still attached.</source>
        <translation>Personne n'a trouvé %1 encore attaché.</translation>
    </message>
    <message>
        <source>Nobody is enrolled as "%1".</source>
        <translation>Personne n'est inscrit sous « %1 ».</translation>
    </message>
    <message>
        <source>Nobody is enrolled.</source>
        <translation>Personne n'est enregistré.</translation>
    </message>
    <message>
        <source>Nobody is signed in</source>
        <translation>Personne n'est connecté</translation>
    </message>
    <message>
        <source>Nobody is signed in, so nobody's last entry is meant. Choose the entry on the page Record (Ctrl+6), and strike it there.</source>
        <translation>Personne n'est identifié, il n'y a donc pas de dernière entrée. Choisissez l'entrée sur la page Dossier (Ctrl+6), et rayez-la là.</translation>
    </message>
    <message>
        <source>Nobody knows later what became of a bolt of which nothing was said.</source>
        <translation>Personne ne sait plus tard ce qu'est devenue une vis dont rien n'a été dit.</translation>
    </message>
    <message>
        <source>Nobody said of %1: "%2".</source>
        <translation>Personne n'a dit de %1 : « %2 ».</translation>
    </message>
    <message>
        <source>Nobody said which root it must hang from: compare the fingerprint with the one that the organisation publishes.</source>
        <translation>Personne n'a dit de quelle racine cela doit dépendre : comparez l'empreinte de clé avec celle que publie l'organisme.</translation>
    </message>
    <message>
        <source>Nobody sees their own mistake; nor the one that they made alike in a linked job, on the other engine say.</source>
        <translation>Personne ne voit sa propre erreur ; ni celle qu'il a faite à l'identique dans un chantier lié, par exemple sur l'autre moteur.</translation>
    </message>
    <message>
        <source>Nobody sees what they themselves forgot.</source>
        <translation>Personne ne voit ce qu'il a lui-même oublié.</translation>
    </message>
    <message>
        <source>Nobody signed anything.</source>
        <translation>Personne n'a rien signé.</translation>
    </message>
    <message>
        <source>Nobody stands, walks or reaches under the load, at any moment.</source>
        <translation>Personne ne se tient, ne passe ni ne tend le bras sous la charge, à aucun moment.</translation>
    </message>
    <message>
        <source>Nobody stands, walks or reaches under the unit, and one person alone gives the signals.</source>
        <translation>Personne ne se tient, ne passe ni ne tend le bras sous l'ensemble, et une seule personne donne les signaux.</translation>
    </message>
    <message>
        <source>Nobody stopped in the middle of %1; there is nothing to take up.</source>
        <translation>Personne ne s'est arrêté au milieu de %1 ; il n'y a rien à reprendre.</translation>
    </message>
    <message>
        <source>Nobody stopped in the middle of something.</source>
        <translation>Personne ne s'est arrêté au milieu de quelque chose.</translation>
    </message>
    <message>
        <source>Nobody takes off what somebody else put on for their own safety.</source>
        <translation>Personne n'enlève ce qu'un autre a mis pour sa propre sécurité.</translation>
    </message>
    <message>
        <source>Nobody the register knows took part.</source>
        <translation>Aucune personne connue du répertoire n'a participé.</translation>
    </message>
    <message>
        <source>Nobody waits for an agreement that %1 is not applicable.</source>
        <translation>Personne n'attend d'accord sur le fait que %1 est non applicable.</translation>
    </message>
    <message>
        <source>Nobody with the id %1 is enrolled here.</source>
        <translation>Personne avec l'identifiant %1 n'est enregistré ici.</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>None waits.</source>
        <translation>Aucun n'attend.</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Aucune encore</translation>
    </message>
    <message>
        <source>None: one of its own</source>
        <translation>Aucun : un de son choix</translation>
    </message>
    <message>
        <source>Not applicable</source>
        <translation>Non applicable</translation>
    </message>
    <message>
        <source>Not every blank that was fitted has been removed.</source>
        <translation>Les obturateurs posés n'ont pas tous été retirés.</translation>
    </message>
    <message>
        <source>Not negligible: more than %1 lb at this empty weight. Have the weight record revised.</source>
        <translation>Non négligeable : plus de %1 lb à cette masse à vide. Faites réviser la fiche de masse.</translation>
    </message>
    <message>
        <source>Not negligible: the centre of gravity shifts by %1 of the mean aerodynamic chord, which is 0.05 % or more. Have the weight record revised.</source>
        <translation>Non négligeable : le centre de gravité se déplace de %1 de la corde aérodynamique moyenne, soit 0.05 % ou plus. Faites réviser la fiche de masse.</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Pas maintenant</translation>
    </message>
    <message>
        <source>Not now, for %1. Lock (Ctrl+L) to let somebody else sign.</source>
        <translation>Pas maintenant, pour %1. Verrouillez (Ctrl+L) pour qu'une autre personne puisse signer.</translation>
    </message>
    <message>
        <source>Not on parts that are hot, under pressure or turning, and with the circuits nearby isolated and tagged.</source>
        <translation>Pas sur des pièces chaudes, sous pression ou en rotation, et avec les circuits voisins consignés et étiquetés.</translation>
    </message>
    <message>
        <source>Not so yet: %1</source>
        <translation>Pas encore : %1</translation>
    </message>
    <message>
        <source>Not verified yet.</source>
        <translation>Pas encore vérifié.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Notes:</source>
        <translation>Remarques :</translation>
    </message>
    <message>
        <source>Nothing came between.</source>
        <translation>Rien n'est venu entre les deux.</translation>
    </message>
    <message>
        <source>Nothing can be written into that folder (%1). Choose another one.</source>
        <translation>Rien ne peut être écrit dans ce dossier (%1). Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>Nothing else is open.</source>
        <translation>Rien d'autre n'est ouvert.</translation>
    </message>
    <message>
        <source>Nothing is damp or stained.</source>
        <translation>Rien n'est humide ni taché.</translation>
    </message>
    <message>
        <source>Nothing is deferred, so this closure is not limited. Leave the limitation out.</source>
        <translation>Rien n'est reporté ; cette clôture n'est donc pas limitée. Laissez la limitation vide.</translation>
    </message>
    <message>
        <source>Nothing is filled in beforehand. The working stands here as soon as these are known:&#xa;%1</source>
        <translation>Rien n'est renseigné d'avance. Le calcul s'affiche ici dès que ceci est connu :&#xa;%1</translation>
    </message>
    <message>
        <source>Nothing is loose</source>
        <translation>Aucun point ouvert</translation>
    </message>
    <message>
        <source>Nothing is loose.</source>
        <translation>Aucun point ouvert.</translation>
    </message>
    <message>
        <source>Nothing is off. Whatever is disconnected comes here, for a second person to look at before the mounts are released.</source>
        <translation>Rien n'est déposé. Tout ce qui est débranché arrive ici, pour qu'une seconde personne le regarde avant que les attaches soient libérées.</translation>
    </message>
    <message>
        <source>Nothing is off. Whatever is disconnected comes here, what came off last first.</source>
        <translation>Rien n'est déposé. Tout ce qui est débranché arrive ici, le dernier déposé en premier.</translation>
    </message>
    <message>
        <source>Nothing is on.</source>
        <translation>Rien n'est en place.</translation>
    </message>
    <message>
        <source>Nothing is open or half done.</source>
        <translation>Rien n'est ouvert ni à moitié fait.</translation>
    </message>
    <message>
        <source>Nothing is out.</source>
        <translation>Rien n'est sorti.</translation>
    </message>
    <message>
        <source>Nothing of it was so</source>
        <translation>Rien de cela n'a eu lieu</translation>
    </message>
    <message>
        <source>Nothing waits for inspection. Items come here when everything that restoring them must show has been shown.</source>
        <translation>Rien n'attend de contrôle. Les éléments arrivent ici quand tout ce que leur remise en état doit montrer a été montré.</translation>
    </message>
    <message>
        <source>Nothing was applied in this job yet: isolations, warning tags, safety pins, blanks, hoist, sling, stand, platform. What is applied stays a loose end until it is removed.</source>
        <translation>Rien n'a encore été mis en place dans ce chantier : consignations, étiquettes d'avertissement, goupilles de sécurité, obturateurs, palan, élingue, bâti, plate-forme. Ce qui est mis en place reste un point ouvert jusqu'à son retrait.</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Rien n'a été trouvé.</translation>
    </message>
    <message>
        <source>Nothing was handed on. An item is sent from the list, and taken on here.</source>
        <translation>Rien n'a été transmis. Un élément est envoyé depuis la liste, et pris en charge ici.</translation>
    </message>
    <message>
        <source>Nothing was looked for.</source>
        <translation>Rien n'a été cherché.</translation>
    </message>
    <message>
        <source>Nothing was printed. Look whether the printer is there and switched on, or choose another file.</source>
        <translation>Rien n'a été imprimé. Vérifiez que l'imprimante est là et sous tension, ou choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>Nothing was said of its hardware.</source>
        <translation>Rien n'a été dit de sa visserie.</translation>
    </message>
    <message>
        <source>Nothing was signed. %1</source>
        <translation>Rien n'a été signé. %1</translation>
    </message>
    <message>
        <source>Nothing was verified</source>
        <translation>Rien n'a été vérifié</translation>
    </message>
    <message>
        <source>Nothing was written, since the record would say what nobody signed, or what was not allowed. Faults: %1; the first (%2): %3 Verify the store to see them all, keep its file as it is, and ask whoever looks after the records.</source>
        <translation>Rien n'a été écrit, car le dossier dirait ce que personne n'a signé, ou ce qui n'était pas permis. Défauts : %1 ; le premier (%2) : %3 Vérifiez la base pour les voir tous, conservez son fichier tel quel, et adressez-vous à la personne qui s'occupe des dossiers.</translation>
    </message>
    <message>
        <source>Nothing would hang on %1: the centre of gravity lies under the other, and the load can tip.</source>
        <translation>Rien ne pendrait ici : %1. Le centre de gravité est sous l'autre, et la charge peut basculer.</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Rien encore.</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Number of its tag or collar</source>
        <translation>Numéro de son étiquette ou de sa bague</translation>
    </message>
    <message>
        <source>Number of lifting points</source>
        <translation>Nombre de points de levage</translation>
    </message>
    <message>
        <source>Number or hash of the earlier entry</source>
        <translation>Numéro ou empreinte de l'entrée antérieure</translation>
    </message>
    <message>
        <source>Number or hash of the later one; empty: the last</source>
        <translation>Numéro ou empreinte de l'entrée ultérieure ; vide : la dernière</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Nombres</translation>
    </message>
    <message>
        <source>OFF</source>
        <translation>DÉPOSÉ</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation>OUVERT</translation>
    </message>
    <message>
        <source>OWN WORK inspected again</source>
        <translation>PROPRE TRAVAIL contrôlé de nouveau</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Of %1 the list asks for %2. It asks for 1 to %3 of a part.</source>
        <translation>Pour %1, la liste demande %2. Elle demande de 1 à %3 d'une pièce.</translation>
    </message>
    <message>
        <source>Of no listed interface</source>
        <translation>D'aucun raccordement inscrit</translation>
    </message>
    <message>
        <source>Of the empty weight, by what the aircraft weighs empty. The source has no band for exactly 5000 lb and 50000 lb.</source>
        <translation>Par rapport à la masse à vide, selon ce que l'aéronef pèse à vide. La source n'a pas de tranche pour exactement 5000 lb et 50000 lb.</translation>
    </message>
    <message>
        <source>Of the finding</source>
        <translation>Du constat</translation>
    </message>
    <message>
        <source>Of these struck</source>
        <translation>Dont rayées</translation>
    </message>
    <message>
        <source>Of what</source>
        <translation>De quoi</translation>
    </message>
    <message>
        <source>Off before it</source>
        <translation>À déposer avant</translation>
    </message>
    <message>
        <source>Off before this one</source>
        <translation>À déposer avant celui-ci</translation>
    </message>
    <message>
        <source>Oil is hot after a run, may be under pressure and harms the skin; on hot parts it burns. Let it cool, release the pressure, catch what drains and wear protection, as the approved maintenance data and the local rules say.</source>
        <translation>L'huile est chaude après un fonctionnement, peut être sous pression et est nocive pour la peau ; sur des pièces chaudes, elle brûle. Laissez-la refroidir, faites tomber la pression, recueillez ce qui s'écoule et portez des protections, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Oil line</source>
        <translation>Conduite d'huile</translation>
    </message>
    <message>
        <source>Old and new lie on one table, and look alike.</source>
        <translation>L'ancien et le neuf sont sur la même table, et se ressemblent.</translation>
    </message>
    <message>
        <source>On no list</source>
        <translation>Sur aucune liste</translation>
    </message>
    <message>
        <source>On the interface</source>
        <translation>Sur le raccordement</translation>
    </message>
    <message>
        <source>On, and must come off</source>
        <translation>En place, et à retirer</translation>
    </message>
    <message>
        <source>Once the nut has seated, nobody can measure its drag.</source>
        <translation>Une fois l'écrou en appui, personne ne peut mesurer son couple d'autofreinage.</translation>
    </message>
    <message>
        <source>One a line, with its technician after a colon: Left: Ana</source>
        <translation>Une par ligne, avec son technicien après un deux-points : Gauche: Ana</translation>
    </message>
    <message>
        <source>One answer to one question.</source>
        <translation>Une réponse à une question.</translation>
    </message>
    <message>
        <source>One file holds the people, the tools and all jobs of an organisation. You become its first administrator.</source>
        <translation>Un fichier contient les personnes, les outils et tous les chantiers d'un organisme. Vous en devenez le premier administrateur.</translation>
    </message>
    <message>
        <source>One half alone cannot be seen to be crossed.</source>
        <translation>Sur une moitié seule, on ne voit pas une inversion.</translation>
    </message>
    <message>
        <source>One id, one interface.</source>
        <translation>Un identifiant, un raccordement.</translation>
    </message>
    <message>
        <source>One key under two names would let one person inspect their own work.</source>
        <translation>Une seule clé sous deux noms permettrait à une personne de contrôler son propre travail.</translation>
    </message>
    <message>
        <source>One ledger tells one job.</source>
        <translation>Un registre des entrées raconte un chantier.</translation>
    </message>
    <message>
        <source>One leg on one lifting point hangs straight down, or it pulls the load aside. Give 90°, or tell the second point.</source>
        <translation>Un brin sur un seul point de levage pend à la verticale, ou il tire la charge de côté. Donnez 90°, ou indiquez le second point.</translation>
    </message>
    <message>
        <source>One loss, one finding.</source>
        <translation>Une perte, un constat.</translation>
    </message>
    <message>
        <source>One marking, one tool.</source>
        <translation>Un marquage, un outil.</translation>
    </message>
    <message>
        <source>One number, one finding.</source>
        <translation>Un numéro, un constat.</translation>
    </message>
    <message>
        <source>One page, on what</source>
        <translation>Une page, sur quoi</translation>
    </message>
    <message>
        <source>One person answers for a shift.</source>
        <translation>Une seule personne répond d'une vacation.</translation>
    </message>
    <message>
        <source>One person's mistake must not take a critical interface off the list.</source>
        <translation>L'erreur d'une seule personne ne doit pas retirer de la liste un raccordement critique.</translation>
    </message>
    <message>
        <source>One place, one unit.</source>
        <translation>Une place, un ensemble.</translation>
    </message>
    <message>
        <source>One reading a fastener, and every fastener named.</source>
        <translation>Une mesure par fixation, et chaque fixation nommée.</translation>
    </message>
    <message>
        <source>One signature is one person's. Sign each person's entries apart.</source>
        <translation>Une signature est celle d'une seule personne. Signez séparément les entrées de chaque personne.</translation>
    </message>
    <message>
        <source>One step of its scale</source>
        <translation>Un pas de son échelle</translation>
    </message>
    <message>
        <source>One store, one root of trust.</source>
        <translation>Une base, une racine de confiance.</translation>
    </message>
    <message>
        <source>One twist is half a turn. Sources differ, for the ends of the wire as well.</source>
        <translation>Une torsade est un demi-tour. Les sources diffèrent, y compris pour les bouts du fil.</translation>
    </message>
    <message>
        <source>Only a person can be authorised.</source>
        <translation>Seule une personne peut être habilitée.</translation>
    </message>
    <message>
        <source>Only a person with release authority may say that the aircraft part of the job is complete.</source>
        <translation>Seule une personne habilitée à prononcer la remise en service peut dire que la partie avion du chantier est complète.</translation>
    </message>
    <message>
        <source>Only damage raises a finding here. Leave its number out, or raise a finding of its own.</source>
        <translation>Ici, seul un dommage ouvre un constat. Laissez son numéro vide, ou ouvrez un constat à part.</translation>
    </message>
    <message>
        <source>Only if somebody else may have had the old key: 2026-03-02T08:14:00Z</source>
        <translation>Seulement si une autre personne a pu avoir l'ancienne clé : 2026-03-02T08:14:00Z</translation>
    </message>
    <message>
        <source>Only the lead of this job may do this; that is %1.</source>
        <translation>Seul le responsable de ce chantier peut le faire ; c'est %1.</translation>
    </message>
    <message>
        <source>Only the lead of this job sets hold points; that is %1.</source>
        <translation>Seul le responsable de ce chantier pose des points d'arrêt ; c'est %1.</translation>
    </message>
    <message>
        <source>Only what counts can be taken back.</source>
        <translation>Seul ce qui compte peut être repris.</translation>
    </message>
    <message>
        <source>Only what holds is imported.</source>
        <translation>Seul ce dont l'intégrité est confirmée est importé.</translation>
    </message>
    <message>
        <source>Only what hung can be lost.</source>
        <translation>Seul ce qui était posé peut être perdu.</translation>
    </message>
    <message>
        <source>Only what is deferred has a last day. Leave it out, or defer the finding.</source>
        <translation>Seul ce qui est reporté a une date limite. Laissez-la vide, ou reportez le constat.</translation>
    </message>
    <message>
        <source>Only what is on comes off.</source>
        <translation>Seul ce qui est en place s'enlève.</translation>
    </message>
    <message>
        <source>Only what was counted out can be counted in.</source>
        <translation>Seul ce qui a été compté à la sortie peut être compté au retour.</translation>
    </message>
    <message>
        <source>Only what was fitted can be missing.</source>
        <translation>Seul ce qui a été posé peut manquer.</translation>
    </message>
    <message>
        <source>Only what went out comes back.</source>
        <translation>Seul ce qui est sorti revient.</translation>
    </message>
    <message>
        <source>Only when</source>
        <translation>Seulement si</translation>
    </message>
    <message>
        <source>Open %1 and show %2</source>
        <translation>Ouvrir %1 et montrer %2</translation>
    </message>
    <message>
        <source>Open a job first</source>
        <translation>Ouvrez d'abord un chantier</translation>
    </message>
    <message>
        <source>Open a job first.</source>
        <translation>Ouvrez d'abord un chantier.</translation>
    </message>
    <message>
        <source>Open a new job with its work order, aircraft, maintenance data, unit and crew. Then import the list of interfaces.</source>
        <translation>Ouvrez un nouveau chantier avec son ordre de travail, l'aéronef, les données d'entretien, l'ensemble et l'équipe. Importez ensuite la liste des raccordements.</translation>
    </message>
    <message>
        <source>Open a store</source>
        <translation>Ouvrir une base</translation>
    </message>
    <message>
        <source>Open and half done</source>
        <translation>Ouvert et à moitié fait</translation>
    </message>
    <message>
        <source>Open and half done at each handover</source>
        <translation>Ouvert et à moitié fait à chaque passation</translation>
    </message>
    <message>
        <source>Open another job?</source>
        <translation>Ouvrir un autre chantier ?</translation>
    </message>
    <message>
        <source>Open now, by zone</source>
        <translation>Ouvert maintenant, par zone</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Ouvrir le chantier</translation>
    </message>
    <message>
        <source>Open the job and sign</source>
        <translation>Ouvrir le chantier et signer</translation>
    </message>
    <message>
        <source>Open the job of the label first</source>
        <translation>Ouvrez d'abord le chantier de l'étiquette</translation>
    </message>
    <message>
        <source>Open the other job</source>
        <translation>Ouvrir l'autre chantier</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Ouvert</translation>
    </message>
    <message>
        <source>Openings blanked on it</source>
        <translation>Ouvertures obturées sur l'ensemble</translation>
    </message>
    <message>
        <source>Or drop its file onto this window.</source>
        <translation>Ou déposez son fichier sur cette fenêtre.</translation>
    </message>
    <message>
        <source>Or drop photos on this page. None is taken before its entry is signed.</source>
        <translation>Ou déposez des photos sur cette page. Aucune n'est prise avant que son entrée soit signée.</translation>
    </message>
    <message>
        <source>Or told by</source>
        <translation>Ou indiqué par</translation>
    </message>
    <message>
        <source>Order and passes of a ring</source>
        <translation>Ordre et passes d'une couronne</translation>
    </message>
    <message>
        <source>Order of the fasteners</source>
        <translation>Ordre des fixations</translation>
    </message>
    <message>
        <source>Order, least first</source>
        <translation>Ordre, la plus petite d'abord</translation>
    </message>
    <message>
        <source>Organisation</source>
        <translation>Organisme</translation>
    </message>
    <message>
        <source>Other jobs that are parts of this work</source>
        <translation>Autres chantiers qui sont des parties de ce travail</translation>
    </message>
    <message>
        <source>Others kept adding entries to this ledger. Nothing was signed. Try again.</source>
        <translation>D'autres ont continué à ajouter des entrées à ce registre. Rien n'a été signé. Réessayez.</translation>
    </message>
    <message>
        <source>Others may read the secret of this station. Close it to them (chmod 600 %1) and consider it seen: the manual says what then.</source>
        <translation>D'autres peuvent lire le secret de ce poste. Fermez-leur l'accès (chmod 600 %1) et considérez-le comme vu : le manuel dit que faire alors.</translation>
    </message>
    <message>
        <source>Others rely on what was handed on as it was handed on.</source>
        <translation>D'autres se fient à ce qui a été transmis tel qu'il a été transmis.</translation>
    </message>
    <message>
        <source>Out and not counted: %1.</source>
        <translation>Sortis et non comptés : %1.</translation>
    </message>
    <message>
        <source>Out of order</source>
        <translation>Hors de l'ordre</translation>
    </message>
    <message>
        <source>Outgoing serial number</source>
        <translation>Numéro de série sortant</translation>
    </message>
    <message>
        <source>Outgoing unit</source>
        <translation>Ensemble sortant</translation>
    </message>
    <message>
        <source>Outgoing unit off</source>
        <translation>Ensemble sortant déposé</translation>
    </message>
    <message>
        <source>Outgoing unit taken off</source>
        <translation>Ensemble sortant déposé</translation>
    </message>
    <message>
        <source>Own work inspected again and accepted</source>
        <translation>Propre travail contrôlé de nouveau et accepté</translation>
    </message>
    <message>
        <source>P&amp;rint …</source>
        <translation>I&amp;mprimer …</translation>
    </message>
    <message>
        <source>P&amp;rogress …</source>
        <translation>P&amp;rogression …</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>PDF on A4</source>
        <translation>PDF en A4</translation>
    </message>
    <message>
        <source>PDF on Letter</source>
        <translation>PDF en Letter</translation>
    </message>
    <message>
        <source>PDF, CSV and labels were not compared, since the entries that they are made of do not hold together.</source>
        <translation>PDF, CSV et étiquettes n'ont pas été comparés, car l'intégrité des entrées dont ils sont tirés n'est pas confirmée.</translation>
    </message>
    <message>
        <source>PIN or passphrase</source>
        <translation>PIN ou phrase secrète</translation>
    </message>
    <message>
        <source>PRINTED, NOT THE RECORD. What was signed since is not on it. The approved maintenance data governs.</source>
        <translation>IMPRIMÉ : CE N'EST PAS LE DOSSIER. Ce qui a été signé depuis n'y figure pas. Les données d'entretien approuvées font foi.</translation>
    </message>
    <message>
        <source>Package %1: work order %2. It is kept apart from this store's jobs and never worked on.</source>
        <translation>Paquet %1 : ordre de travail %2. Il est gardé à part des chantiers de cette base et n'est jamais travaillé.</translation>
    </message>
    <message>
        <source>Packing the record</source>
        <translation>Constitution du paquet de dossier</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Page</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Pages</translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation>Format du papier</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Partie</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Parts and tools</source>
        <translation>Pièces et outils</translation>
    </message>
    <message>
        <source>Parts, tools</source>
        <translation>Pièces, outils</translation>
    </message>
    <message>
        <source>Pass</source>
        <translation>Passe</translation>
    </message>
    <message>
        <source>Pass %1</source>
        <translation>Passe %1</translation>
    </message>
    <message>
        <source>Pass %1 of %2 is not finished: %3 comes next.</source>
        <translation>La passe %1 de %2 n'est pas terminée : %3 vient ensuite.</translation>
    </message>
    <message>
        <source>Pass the hold point</source>
        <translation>Franchir le point d'arrêt</translation>
    </message>
    <message>
        <source>Passed before: %1.</source>
        <translation>Passés avant : %1.</translation>
    </message>
    <message>
        <source>Passed by</source>
        <translation>Franchi par</translation>
    </message>
    <message>
        <source>Passed, and not void since: %1.</source>
        <translation>Réussi, et non caduc depuis : %1.</translation>
    </message>
    <message>
        <source>Passes bring the faces together evenly.</source>
        <translation>Les passes rapprochent les faces uniformément.</translation>
    </message>
    <message>
        <source>Passes of tightening</source>
        <translation>Passes de serrage</translation>
    </message>
    <message>
        <source>Passes, percent of the final torque</source>
        <translation>Passes, pour cent du couple final</translation>
    </message>
    <message>
        <source>Paste (Ctrl+V)</source>
        <translation>Coller (Ctrl+V)</translation>
    </message>
    <message>
        <source>Pasted picture</source>
        <translation>Image collée</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Schéma de serrage</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>People and their authorisations</source>
        <translation>Personnes et leurs habilitations</translation>
    </message>
    <message>
        <source>People and tools</source>
        <translation>Personnes et outils</translation>
    </message>
    <message>
        <source>People fall from platforms, and tools from them on people. Lock it, rail it, and keep it clear of the unit's way. Work as the approved maintenance data and the local rules say.</source>
        <translation>Des personnes tombent des plates-formes, et des outils en tombent sur des personnes. Bloquez-la, munissez-la de garde-corps, et tenez-la hors du chemin de l'ensemble. Travaillez comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>Perimeter</source>
        <translation>Périmètre</translation>
    </message>
    <message>
        <source>Permissible deviation, % of the reading</source>
        <translation>Écart admissible, % du relevé</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Person enrolled</source>
        <translation>Personne enregistrée</translation>
    </message>
    <message>
        <source>Phase and terminal marks agree at both ends.</source>
        <translation>Les repères de phase et de borne concordent aux deux bouts.</translation>
    </message>
    <message>
        <source>Photo attached</source>
        <translation>Photo jointe</translation>
    </message>
    <message>
        <source>Photo marked</source>
        <translation>Photo marquée</translation>
    </message>
    <message>
        <source>Photo on the left</source>
        <translation>Photo de gauche</translation>
    </message>
    <message>
        <source>Photo on the right</source>
        <translation>Photo de droite</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Photos of %1</source>
        <translation>Photos de %1</translation>
    </message>
    <message>
        <source>Photos of the chosen interface</source>
        <translation>Photos du raccordement choisi</translation>
    </message>
    <message>
        <source>Photos that come into %1 from now on are asked about here.</source>
        <translation>Les photos qui arrivent désormais dans %1 font l'objet d'une question ici.</translation>
    </message>
    <message>
        <source>Picture of how many interfaces were undone and not inspected over time</source>
        <translation>Vue du nombre de raccordements déposés et non contrôlés au fil du temps</translation>
    </message>
    <message>
        <source>Picture of the lift</source>
        <translation>Vue du levage</translation>
    </message>
    <message>
        <source>Picture of who signed what when; the table below says the same</source>
        <translation>Vue de qui a signé quoi, quand ; la table ci-dessous dit la même chose</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Images (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Pièces</translation>
    </message>
    <message>
        <source>Pieces counted, of a kit</source>
        <translation>Pièces comptées, d'une mallette</translation>
    </message>
    <message>
        <source>Pieces, of a kit</source>
        <translation>Pièces, d'une mallette</translation>
    </message>
    <message>
        <source>Pla&amp;ce marks</source>
        <translation>Pla&amp;cer des repères</translation>
    </message>
    <message>
        <source>Plan a lift</source>
        <translation>Préparer un levage</translation>
    </message>
    <message>
        <source>Platform</source>
        <translation>Plate-forme</translation>
    </message>
    <message>
        <source>Playing the demo: people, tools, one engine change</source>
        <translation>Déroulement de la démonstration : personnes, outils, un changement de moteur</translation>
    </message>
    <message>
        <source>Points: ISO 6789-1:2017, lowest marked value, 60 and 100 % (from memory)</source>
        <translation>Points : ISO 6789-1:2017, plus petite valeur marquée, 60 et 100 % (de mémoire)</translation>
    </message>
    <message>
        <source>Points: ISO 6789:2003, 20, 60 and 100 % of the greatest torque</source>
        <translation>Points : ISO 6789:2003, 20, 60 et 100 % du couple maximum</translation>
    </message>
    <message>
        <source>Positioned</source>
        <translation>Mis en position</translation>
    </message>
    <message>
        <source>Power cable</source>
        <translation>Câble de puissance</translation>
    </message>
    <message>
        <source>Pressure and return are not crossed.</source>
        <translation>Pression et retour ne sont pas inversés.</translation>
    </message>
    <message>
        <source>Print all of it on one page</source>
        <translation>Tout imprimer sur une page</translation>
    </message>
    <message>
        <source>Print the calculation</source>
        <translation>Imprimer le calcul</translation>
    </message>
    <message>
        <source>Print the perimeter</source>
        <translation>Imprimer le périmètre</translation>
    </message>
    <message>
        <source>Printed</source>
        <translation>Imprimé</translation>
    </message>
    <message>
        <source>Printed name</source>
        <translation>Nom en toutes lettres</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Progression</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Preuve</translation>
    </message>
    <message>
        <source>Public key</source>
        <translation>Clé publique</translation>
    </message>
    <message>
        <source>Published figures, each with its source. Nothing is filled in unasked.</source>
        <translation>Valeurs publiées, chacune avec sa source. Rien n'est renseigné sans que vous le demandiez.</translation>
    </message>
    <message>
        <source>Pull at the middle of the grip: the arm is measured from there. No pipe on the handle.</source>
        <translation>Tirez au milieu de la poignée : le bras de levier se mesure de là. Pas de tube sur le manche.</translation>
    </message>
    <message>
        <source>Put on stand</source>
        <translation>Posé sur bâti</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Quantity with its unit</source>
        <translation>Quantité avec son unité</translation>
    </message>
    <message>
        <source>REFUSED by %1: %2</source>
        <translation>REFUSÉE par %1 : %2</translation>
    </message>
    <message>
        <source>REFUSED: %1</source>
        <translation>REFUSÉE : %1</translation>
    </message>
    <message>
        <source>Rails, brakes and floor are sound, and nothing lies loose on it.</source>
        <translation>Garde-corps, freins et plancher sont en bon état, et rien n'y traîne.</translation>
    </message>
    <message>
        <source>Raise a finding</source>
        <translation>Ouvrir un constat</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation>Ouvert</translation>
    </message>
    <message>
        <source>Rank</source>
        <translation>Rang</translation>
    </message>
    <message>
        <source>Rate</source>
        <translation>Débit</translation>
    </message>
    <message>
        <source>Rate of a leak</source>
        <translation>Débit d'une fuite</translation>
    </message>
    <message>
        <source>Rate seen</source>
        <translation>Débit observé</translation>
    </message>
    <message>
        <source>Re&amp;move the mark</source>
        <translation>&amp;Retirer le repère</translation>
    </message>
    <message>
        <source>Read the liquid's name on the can and on the filler: the wrong one in the right quantity is no servicing.</source>
        <translation>Lisez le nom du liquide sur le bidon et sur l'orifice : le mauvais liquide en bonne quantité n'est pas un plein.</translation>
    </message>
    <message>
        <source>Read was "%1" joined to "%2", and the list has no such pair. Read again; if it is so, they are crossed: undo them.</source>
        <translation>Il a été lu « %1 » raccordé à « %2 », et la liste n'a pas cette paire. Relisez ; si c'est bien le cas, ils sont inversés : déposez-les.</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>Reading of a torque wrench</source>
        <translation>Relevé d'une clé dynamométrique</translation>
    </message>
    <message>
        <source>Readings are accepted with a guard band here, and the register does not say what this tool may be off. Take another tool, or have its deviation registered.</source>
        <translation>Les lectures sont acceptées ici avec une bande de garde, et le répertoire ne dit pas de combien cet outil peut s'écarter. Prenez un autre outil, ou faites enregistrer son écart.</translation>
    </message>
    <message>
        <source>Readings are checked against the range, so it must be one.</source>
        <translation>Les mesures sont vérifiées par rapport à la plage ; il faut donc que c'en soit une.</translation>
    </message>
    <message>
        <source>Readings near an edge</source>
        <translation>Relevés près d'un bord</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Receive the unit</source>
        <translation>Réceptionner l'ensemble</translation>
    </message>
    <message>
        <source>Recent stores</source>
        <translation>Bases récentes</translation>
    </message>
    <message>
        <source>Reconnect</source>
        <translation>Rebrancher</translation>
    </message>
    <message>
        <source>Reconnected</source>
        <translation>Rebranché</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Record %1 as the &amp;setting</source>
        <translation>Consigner %1 comme ré&amp;glage</translation>
    </message>
    <message>
        <source>Record a &amp;calibration …</source>
        <translation>Consigne&amp;r un étalonnage …</translation>
    </message>
    <message>
        <source>Record a calibration</source>
        <translation>Consigner un étalonnage</translation>
    </message>
    <message>
        <source>Record a test</source>
        <translation>Consigner un essai</translation>
    </message>
    <message>
        <source>Record of a unit change</source>
        <translation>Dossier d'un changement d'ensemble</translation>
    </message>
    <message>
        <source>Record of a unit change: %1</source>
        <translation>Dossier d'un changement d'ensemble : %1</translation>
    </message>
    <message>
        <source>Record package (*.zip)</source>
        <translation>Paquet de dossier (*.zip)</translation>
    </message>
    <message>
        <source>Record packages (*.zip);;All files (*)</source>
        <translation>Paquets de dossier (*.zip);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Record servicing</source>
        <translation>Consigner un plein</translation>
    </message>
    <message>
        <source>Record the weight change</source>
        <translation>Consigner le changement de masse</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>Consigné</translation>
    </message>
    <message>
        <source>Records of other stores, kept as they came: to be looked at, never worked on. Each hangs from its own root.</source>
        <translation>Dossiers d'autres bases, gardés tels qu'ils sont venus : à regarder, jamais à travailler. Chacun dépend de sa propre racine.</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Référence</translation>
    </message>
    <message>
        <source>Refuse the handover</source>
        <translation>Refuser la passation</translation>
    </message>
    <message>
        <source>Register a tool</source>
        <translation>Enregistrer un outil</translation>
    </message>
    <message>
        <source>Register as last pinned</source>
        <translation>Répertoire tel que fixé en dernier</translation>
    </message>
    <message>
        <source>Register founded</source>
        <translation>Répertoire créé</translation>
    </message>
    <message>
        <source>Register, %1: entries %2</source>
        <translation>Répertoire, %1 : entrées %2</translation>
    </message>
    <message>
        <source>Reject</source>
        <translation>Refuser</translation>
    </message>
    <message>
        <source>Rejected</source>
        <translation>Refusé</translation>
    </message>
    <message>
        <source>Release</source>
        <translation>Remise en service</translation>
    </message>
    <message>
        <source>Release certificate</source>
        <translation>Certificat libératoire</translation>
    </message>
    <message>
        <source>Release statement</source>
        <translation>Déclaration de remise en service</translation>
    </message>
    <message>
        <source>Released by %1 on %2 with entry %3.</source>
        <translation>Remise en service prononcée par %1 le %2 par l'entrée %3.</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Remarques</translation>
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
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Remove row</source>
        <translation>Retirer une ligne</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Retiré</translation>
    </message>
    <message>
        <source>Removed, every one of them: %1.</source>
        <translation>Retirés, tous : %1.</translation>
    </message>
    <message>
        <source>Removed: %1</source>
        <translation>Déposé : %1</translation>
    </message>
    <message>
        <source>Removes the row that is chosen.</source>
        <translation>Retire la ligne choisie.</translation>
    </message>
    <message>
        <source>Renewed</source>
        <translation>Remplacé</translation>
    </message>
    <message>
        <source>Replace a lost tag</source>
        <translation>Remplacer une étiquette</translation>
    </message>
    <message>
        <source>Replace and sign</source>
        <translation>Remplacer et signer</translation>
    </message>
    <message>
        <source>Replace the key</source>
        <translation>Remplacer la clé</translation>
    </message>
    <message>
        <source>Required</source>
        <translation>Exigé</translation>
    </message>
    <message>
        <source>Requirements</source>
        <translation>Exigences</translation>
    </message>
    <message>
        <source>Resistance, R</source>
        <translation>Résistance, R</translation>
    </message>
    <message>
        <source>Restored</source>
        <translation>Remis en état</translation>
    </message>
    <message>
        <source>Restored at</source>
        <translation>Remis en état le</translation>
    </message>
    <message>
        <source>Restored by</source>
        <translation>Remis en état par</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Result in %1, y</source>
        <translation>Résultat en %1, y</translation>
    </message>
    <message>
        <source>Return tags</source>
        <translation>Rendre des étiquettes</translation>
    </message>
    <message>
        <source>Return the tool</source>
        <translation>Rendre l'outil</translation>
    </message>
    <message>
        <source>Returned</source>
        <translation>Rendu</translation>
    </message>
    <message>
        <source>Reused</source>
        <translation>Réutilisé</translation>
    </message>
    <message>
        <source>Revised</source>
        <translation>Révisé</translation>
    </message>
    <message>
        <source>Revision</source>
        <translation>Révision</translation>
    </message>
    <message>
        <source>Rigging is checked after it was disturbed.</source>
        <translation>Le réglage est vérifié après avoir été perturbé.</translation>
    </message>
    <message>
        <source>Right point</source>
        <translation>Point droit</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Racine</translation>
    </message>
    <message>
        <source>Root %1</source>
        <translation>Racine %1</translation>
    </message>
    <message>
        <source>Root of the register</source>
        <translation>Racine du répertoire</translation>
    </message>
    <message>
        <source>Rounded, half away from zero, as it was written; nothing was rounded before.</source>
        <translation>Arrondi comme il est écrit ici, les demis en s'éloignant de zéro ; rien n'a été arrondi avant.</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <source>Row %1 of the ledger %2 is damaged: its content was changed after it was recorded. Verify the store, and keep the backup that you have.</source>
        <translation>La ligne %1 du registre des entrées %2 est endommagée : son contenu a été modifié après avoir été consigné. Vérifiez la base, et gardez la sauvegarde que vous avez.</translation>
    </message>
    <message>
        <source>Rows of the list</source>
        <translation>Lignes de la liste</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Règle</translation>
    </message>
    <message>
        <source>Rules of a job</source>
        <translation>Règles d'un chantier</translation>
    </message>
    <message>
        <source>Rules of the register</source>
        <translation>Règles du répertoire</translation>
    </message>
    <message>
        <source>S&amp;omebody else</source>
        <translation>Quelqu'u&amp;n d'autre</translation>
    </message>
    <message>
        <source>SENT AWAY, not taken on</source>
        <translation>ENVOYÉ, non pris en charge</translation>
    </message>
    <message>
        <source>STANDS</source>
        <translation>VALABLE</translation>
    </message>
    <message>
        <source>STILL APPLIED</source>
        <translation>ENCORE EN PLACE</translation>
    </message>
    <message>
        <source>STILL DUE</source>
        <translation>ENCORE DÛ</translation>
    </message>
    <message>
        <source>STILL OUT</source>
        <translation>ENCORE SORTI</translation>
    </message>
    <message>
        <source>STOPPED HERE</source>
        <translation>ARRÊTÉ ICI</translation>
    </message>
    <message>
        <source>Sa&amp;mple …</source>
        <translation>Échant&amp;illon …</translation>
    </message>
    <message>
        <source>Safetied</source>
        <translation>Freiné</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Freiner</translation>
    </message>
    <message>
        <source>Safety pin</source>
        <translation>Goupille de sécurité</translation>
    </message>
    <message>
        <source>Safetying</source>
        <translation>Freinage</translation>
    </message>
    <message>
        <source>Safetying needs its method: lockwire, cotter pin, lock.</source>
        <translation>Le freinage demande son mode : fil à freiner, goupille fendue, frein.</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Échantillon</translation>
    </message>
    <message>
        <source>Sample of the work</source>
        <translation>Échantillon du travail</translation>
    </message>
    <message>
        <source>Sample of the work: %1</source>
        <translation>Échantillon du travail : %1</translation>
    </message>
    <message>
        <source>Save the calculation</source>
        <translation>Enregistrer le calcul</translation>
    </message>
    <message>
        <source>Save the package</source>
        <translation>Enregistrer le paquet</translation>
    </message>
    <message>
        <source>Save the verdict</source>
        <translation>Enregistrer le verdict</translation>
    </message>
    <message>
        <source>Say above first whether you take up what was begun or discard it.</source>
        <translation>Dites d'abord ci-dessus si vous reprenez ce qui était commencé ou l'abandonnez.</translation>
    </message>
    <message>
        <source>Say for each mark what is to be looked at.</source>
        <translation>Dites pour chaque repère ce qu'il faut regarder.</translation>
    </message>
    <message>
        <source>Say for whom, and why.</source>
        <translation>Dites pour qui, et pourquoi.</translation>
    </message>
    <message>
        <source>Say for whom.</source>
        <translation>Dites pour qui.</translation>
    </message>
    <message>
        <source>Say what %1 is, so that it is known when it is found.</source>
        <translation>Indiquez ce qu'est %1, pour qu'on le reconnaisse quand on le trouve.</translation>
    </message>
    <message>
        <source>Say what is looked for: a %1 by its name or number.</source>
        <translation>Dites ce qui est recherché : %1, par son nom ou son numéro.</translation>
    </message>
    <message>
        <source>Say whether this torque tool shows what it gives (indicating) or clicks at what it was set to (setting).</source>
        <translation>Indiquez si cet outil dynamométrique affiche ce qu'il donne (indicating) ou se déclenche à la valeur réglée (setting).</translation>
    </message>
    <message>
        <source>Say which pieces have to come out again, and how many.</source>
        <translation>Indiquez quelles pièces doivent ressortir, et combien.</translation>
    </message>
    <message>
        <source>Scheme</source>
        <translation>Barème</translation>
    </message>
    <message>
        <source>Scheme of leak classes</source>
        <translation>Barème de classes de fuite</translation>
    </message>
    <message>
        <source>Schemes call different leaks by one name. Name the scheme that the leak classes are of.</source>
        <translation>D'un barème à l'autre, un même nom désigne des fuites différentes. Nommez le barème auquel appartiennent les classes de fuite.</translation>
    </message>
    <message>
        <source>Scrapped</source>
        <translation>Mis au rebut</translation>
    </message>
    <message>
        <source>Seal part number</source>
        <translation>Référence du joint</translation>
    </message>
    <message>
        <source>Seals, gaskets, cotter pins and lockwire do their work once.</source>
        <translation>Joints, garnitures, goupilles fendues et fil à freiner ne servent qu'une fois.</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Second</translation>
    </message>
    <message>
        <source>Second reading</source>
        <translation>Second relevé</translation>
    </message>
    <message>
        <source>Secured</source>
        <translation>Sécurisé</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Graine</translation>
    </message>
    <message>
        <source>Seed: any text in one line</source>
        <translation>Graine : un texte quelconque sur une ligne</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Self-locking nut</source>
        <translation>Écrou autofreiné</translation>
    </message>
    <message>
        <source>Send to a linked job</source>
        <translation>Envoyer à un chantier lié</translation>
    </message>
    <message>
        <source>Sense line</source>
        <translation>Conduite de mesure</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>Envoyé</translation>
    </message>
    <message>
        <source>Sent on</source>
        <translation>Transmis</translation>
    </message>
    <message>
        <source>Sent to %1</source>
        <translation>Envoyé à %1</translation>
    </message>
    <message>
        <source>Sent to a linked job</source>
        <translation>Envoyé à un chantier lié</translation>
    </message>
    <message>
        <source>Separated by commas</source>
        <translation>Séparés par des virgules</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Serial number of what is on the incoming unit instead</source>
        <translation>Numéro de série de ce qui est à la place sur l'ensemble entrant</translation>
    </message>
    <message>
        <source>Serial number, as on its plate</source>
        <translation>Numéro de série, tel que sur sa plaque</translation>
    </message>
    <message>
        <source>Serviced</source>
        <translation>Plein fait</translation>
    </message>
    <message>
        <source>Serviced: %1.</source>
        <translation>Plein fait : %1.</translation>
    </message>
    <message>
        <source>Servicing</source>
        <translation>Pleins</translation>
    </message>
    <message>
        <source>Servicing quantity</source>
        <translation>Quantité de plein</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Fixé</translation>
    </message>
    <message>
        <source>Set a follow-up</source>
        <translation>Fixer un suivi</translation>
    </message>
    <message>
        <source>Set a hold point</source>
        <translation>Poser un point d'arrêt</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Fixé par</translation>
    </message>
    <message>
        <source>Set the wrench to %1.</source>
        <translation>Réglez la clé à %1.</translation>
    </message>
    <message>
        <source>Set to %1, the tool may give %2.</source>
        <translation>Réglé à %1, l'outil peut donner %2.</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Setting of a torque wrench</source>
        <translation>Réglage d'une clé dynamométrique</translation>
    </message>
    <message>
        <source>Setting, Y</source>
        <translation>Réglage, Y</translation>
    </message>
    <message>
        <source>Several people are called %1: %2. Say which by the id.</source>
        <translation>Plusieurs personnes s'appellent %1 : %2. Dites laquelle par son identifiant.</translation>
    </message>
    <message>
        <source>Shackles, hooks, beams and the unit's own lifting points have limits too, and are not reckoned here.</source>
        <translation>Manilles, crochets, palonniers et les points de levage de l'ensemble lui-même ont aussi des limites, et ne sont pas calculés ici.</translation>
    </message>
    <message>
        <source>Share of %1, R</source>
        <translation>Part, %1, R</translation>
    </message>
    <message>
        <source>Shares and leg tension: sling makers' pages on sling angle and centre of gravity</source>
        <translation>Parts et tension des brins : pages de fabricants d'élingues sur l'angle et le centre de gravité</translation>
    </message>
    <message>
        <source>Shear band is estimated</source>
        <translation>La plage en cisaillement est estimée</translation>
    </message>
    <message>
        <source>Shear nut, least</source>
        <translation>Écrou de cisaillement, minimum</translation>
    </message>
    <message>
        <source>Shear nut, most</source>
        <translation>Écrou de cisaillement, maximum</translation>
    </message>
    <message>
        <source>Shear nut, never over</source>
        <translation>Écrou de cisaillement, jamais au-delà</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Vacation</translation>
    </message>
    <message>
        <source>Shift %1</source>
        <translation>Vacation %1</translation>
    </message>
    <message>
        <source>Shift in percent of the mean aerodynamic chord, c</source>
        <translation>Déplacement en pour cent de la corde aérodynamique moyenne, c</translation>
    </message>
    <message>
        <source>Shift of the centre of gravity, s</source>
        <translation>Déplacement du centre de gravité, s</translation>
    </message>
    <message>
        <source>Shift of the centre of gravity: %1</source>
        <translation>Déplacement du centre de gravité : %1</translation>
    </message>
    <message>
        <source>Shipping blanks counted on it</source>
        <translation>Obturateurs de transport comptés sur l'ensemble</translation>
    </message>
    <message>
        <source>Shipping blanks removed</source>
        <translation>Obturateurs de transport retirés</translation>
    </message>
    <message>
        <source>Show &amp;all</source>
        <translation>T&amp;out afficher</translation>
    </message>
    <message>
        <source>Show all of it (0)</source>
        <translation>Tout afficher (0)</translation>
    </message>
    <message>
        <source>Show every entry again (Escape).</source>
        <translation>Afficher de nouveau chaque entrée (Échap).</translation>
    </message>
    <message>
        <source>Show the code</source>
        <translation>Afficher le code</translation>
    </message>
    <message>
        <source>Sign</source>
        <translation>Signer</translation>
    </message>
    <message numerus="yes">
        <source>Sign %n entries</source>
        <translation>
            <numerusform>Signer %n entrée</numerusform>
            <numerusform>Signer %n entrées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Sign %n ticked</source>
        <translation>
            <numerusform>Signer %n coché</numerusform>
            <numerusform>Signer %n cochés</numerusform>
        </translation>
    </message>
    <message>
        <source>Sign or close the sheet that is open, then choose the language again.</source>
        <translation>Signez ou fermez la feuille ouverte, puis choisissez à nouveau la langue.</translation>
    </message>
    <message>
        <source>Signature in doubt</source>
        <translation>Signature en doute</translation>
    </message>
    <message>
        <source>Signatures</source>
        <translation>Signatures</translation>
    </message>
    <message>
        <source>Signatures are in doubt from %1 to %2: %3</source>
        <translation>Les signatures sont en doute du %1 au %2 : %3</translation>
    </message>
    <message>
        <source>Signatures cannot be in doubt since a moment that is still to come (%1).</source>
        <translation>Des signatures ne peuvent pas être en doute depuis un moment encore à venir (%1).</translation>
    </message>
    <message>
        <source>Signatures in doubt since</source>
        <translation>Signatures en doute depuis</translation>
    </message>
    <message>
        <source>Signatures, and authorisations as they stood that day</source>
        <translation>Signatures, et habilitations telles qu'elles étaient ce jour-là</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Signé</translation>
    </message>
    <message>
        <source>Signed as</source>
        <translation>Signé en tant que</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signé par</translation>
    </message>
    <message>
        <source>Signed by %1, entries: %2</source>
        <translation>Signé par %1, entrées : %2</translation>
    </message>
    <message>
        <source>Signed gates: safe to start, all free, lowering, lifting, mounts, last look, power, closure. The lead may strike or change one before it matters.</source>
        <translation>Points de passage signés : sûr de commencer, tout est libre, descente, levage, attaches, dernier contrôle visuel, mise sous tension, clôture. Le responsable peut en rayer ou en modifier un avant qu'il ne compte.</translation>
    </message>
    <message>
        <source>Signed with authority to</source>
        <translation>Signé avec habilitation pour</translation>
    </message>
    <message>
        <source>Signs at other stations; here once the key was carried over.</source>
        <translation>Signe sur d'autres postes ; ici une fois la clé transférée.</translation>
    </message>
    <message>
        <source>Signs at this station.</source>
        <translation>Signe sur ce poste.</translation>
    </message>
    <message>
        <source>Size from</source>
        <translation>Taille à partir de</translation>
    </message>
    <message>
        <source>Size is</source>
        <translation>La taille est</translation>
    </message>
    <message>
        <source>Size of a label</source>
        <translation>Taille d'une étiquette</translation>
    </message>
    <message>
        <source>Size to</source>
        <translation>Taille jusqu'à</translation>
    </message>
    <message>
        <source>Sizes and minutes of leaks belong to classes. Name the classes, or leave them out.</source>
        <translation>Les tailles et minutes de fuites vont avec des classes. Nommez les classes, ou omettez-les.</translation>
    </message>
    <message>
        <source>Slave hardware</source>
        <translation>Visserie provisoire</translation>
    </message>
    <message>
        <source>Slave hardware: the pieces that have to come out</source>
        <translation>Visserie provisoire : les pièces qui doivent ressortir</translation>
    </message>
    <message>
        <source>Sling</source>
        <translation>Élingue</translation>
    </message>
    <message>
        <source>Sling %1</source>
        <translation>Élingue %1</translation>
    </message>
    <message>
        <source>Sling inspected until</source>
        <translation>Élingue contrôlée, valable jusqu'au</translation>
    </message>
    <message>
        <source>Sling on: %1 %2.</source>
        <translation>Élingue en place : %1 %2.</translation>
    </message>
    <message>
        <source>Sling, as marked on it</source>
        <translation>Élingue, selon son repère</translation>
    </message>
    <message>
        <source>Slings at an angle</source>
        <translation>Élingues en angle</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Réduire</translation>
    </message>
    <message>
        <source>Smaller (-)</source>
        <translation>Plus petit (-)</translation>
    </message>
    <message>
        <source>Smallest lockwire by the hole</source>
        <translation>Plus petit fil à freiner selon le trou</translation>
    </message>
    <message>
        <source>Some charts count from the vertical, some print sin for 1/sin: mind which. The working load limit is on the tag of the sling, in no table. Nobody stands under a load.</source>
        <translation>Certains tableaux comptent depuis la verticale, d'autres impriment sin pour 1/sin : vérifiez lequel. La charge maximale d'utilisation est sur l'étiquette de l'élingue, dans aucune table. Personne ne se tient sous une charge.</translation>
    </message>
    <message>
        <source>Some letters of what you want to do</source>
        <translation>Quelques lettres de ce que vous voulez faire</translation>
    </message>
    <message>
        <source>Somebody else allows a re-inspection; nobody allows it to themselves.</source>
        <translation>C'est une autre personne qui autorise un nouveau contrôle ; personne ne se l'autorise à soi-même.</translation>
    </message>
    <message>
        <source>Somebody else may have had the key. Entries: %1. Why stands beside the person among the signatures.</source>
        <translation>Une autre personne a peut-être eu la clé. Entrées : %1. La raison figure à côté de la personne, parmi les signatures.</translation>
    </message>
    <message>
        <source>Somebody else recorded something at the same moment. Nothing of yours was recorded. Look at what is new and sign again.</source>
        <translation>Quelqu'un d'autre a consigné quelque chose au même moment. Rien de votre saisie n'a été consigné. Regardez ce qui est nouveau et signez de nouveau.</translation>
    </message>
    <message>
        <source>Somebody stopped in the middle of %1: %2</source>
        <translation>Quelqu'un s'est arrêté au milieu de %1 : %2</translation>
    </message>
    <message>
        <source>Somebody stopped in the middle of %1: %2 Finish that before it goes.</source>
        <translation>Quelqu'un s'est arrêté au milieu de %1 : %2 Terminez cela avant de le transmettre.</translation>
    </message>
    <message>
        <source>Somebody's life hangs on the tag that carries their name.</source>
        <translation>La vie de quelqu'un dépend de l'étiquette qui porte son nom.</translation>
    </message>
    <message>
        <source>Something stands before, between or behind the parts of the ZIP file.</source>
        <translation>Quelque chose se trouve avant, entre ou après les parties du fichier ZIP.</translation>
    </message>
    <message>
        <source>Something was typed here before and not signed, but %1 cannot be read and cannot be set aside. Look at the rights of its folder. Fill in the form anew; nothing that was signed is touched.</source>
        <translation>Quelque chose avait été saisi ici sans être signé, mais %1 ne peut être ni lu ni mis de côté. Vérifiez les droits de son dossier. Remplissez le formulaire à nouveau ; rien de signé n'est touché.</translation>
    </message>
    <message>
        <source>Something was typed here before and not signed, but it cannot be read any more. It was set aside as %1. Fill in the form anew; nothing that was signed is touched.</source>
        <translation>Quelque chose avait été saisi ici sans être signé, mais ce n'est plus lisible. Mis de côté sous %1. Remplissez le formulaire à nouveau ; rien de signé n'est touché.</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Sorte</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Sources</translation>
    </message>
    <message>
        <source>Sources:</source>
        <translation>Sources :</translation>
    </message>
    <message>
        <source>Sources: %1</source>
        <translation>Sources : %1</translation>
    </message>
    <message>
        <source>Space opens it.</source>
        <translation>La barre d'espace l'ouvre.</translation>
    </message>
    <message>
        <source>Space, while the list has the keyboard. One at a time.</source>
        <translation>Espace, tant que la liste a le clavier. Un à la fois.</translation>
    </message>
    <message>
        <source>Specified</source>
        <translation>Spécifié</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Bâti</translation>
    </message>
    <message>
        <source>Standard and class of the deviation</source>
        <translation>Norme et classe de l'écart</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Validité</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Valable</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>State its condition</source>
        <translation>Poser sa réserve</translation>
    </message>
    <message>
        <source>Stated</source>
        <translation>Déclaré</translation>
    </message>
    <message>
        <source>Statement</source>
        <translation>Déclaration</translation>
    </message>
    <message>
        <source>Statements</source>
        <translation>Déclarations</translation>
    </message>
    <message>
        <source>Stay here</source>
        <translation>Rester ici</translation>
    </message>
    <message>
        <source>Steady the load with taglines, not with hands, and keep clear of where it could swing or pinch.</source>
        <translation>Guidez la charge avec des cordes de guidage, non avec les mains, et restez à l'écart d'où elle pourrait balancer ou coincer.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Steps of the working</source>
        <translation>Étapes du calcul</translation>
    </message>
    <message>
        <source>Still attached</source>
        <translation>Encore attaché</translation>
    </message>
    <message>
        <source>Still due after this record</source>
        <translation>Encore dû après ce dossier</translation>
    </message>
    <message>
        <source>Still to show, and conditions</source>
        <translation>Reste à montrer, et réserves</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Arrêter</translation>
    </message>
    <message>
        <source>Stop &amp;watching</source>
        <translation>Cesser la &amp;surveillance</translation>
    </message>
    <message>
        <source>Stop after the first inches, and look all round: level, free, and nothing that catches.</source>
        <translation>Arrêtez après les premiers centimètres, et regardez tout autour : de niveau, libre, et rien qui accroche.</translation>
    </message>
    <message>
        <source>Stop here</source>
        <translation>Arrêter ici</translation>
    </message>
    <message>
        <source>Stop the key</source>
        <translation>Bloquer la clé</translation>
    </message>
    <message>
        <source>Stop, and tell the lead: a blank that is not found may be inside, and nothing is joined, fuelled, powered or turned until it is known where it is.</source>
        <translation>Arrêtez, et prévenez le responsable : un obturateur introuvable peut être à l'intérieur, et rien n'est raccordé, avitaillé, mis sous tension ni mis en rotation tant qu'on ne sait pas où il est.</translation>
    </message>
    <message>
        <source>Stop, tell the lead, and look for it now: nothing is closed, powered, moved or turned while a tool is missing.</source>
        <translation>Arrêtez, prévenez le responsable, et cherchez-le maintenant : rien n'est fermé, mis sous tension, déplacé ni mis en rotation tant qu'un outil manque.</translation>
    </message>
    <message>
        <source>Stopped</source>
        <translation>Arrêté</translation>
    </message>
    <message>
        <source>Stopped half done</source>
        <translation>Arrêté à moitié fait</translation>
    </message>
    <message>
        <source>Store (*.remate)</source>
        <translation>Base (*.remate)</translation>
    </message>
    <message>
        <source>Stores (*.remate);;All files (*)</source>
        <translation>Bases (*.remate);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Rayer</translation>
    </message>
    <message>
        <source>Striking a listing must not make an open joint disappear.</source>
        <translation>Rayer une inscription ne doit pas faire disparaître un assemblage ouvert.</translation>
    </message>
    <message>
        <source>Striking an issue must not make a missing tool disappear.</source>
        <translation>Rayer une sortie ne doit pas faire disparaître un outil manquant.</translation>
    </message>
    <message>
        <source>Striking an issue must not make its tags disappear.</source>
        <translation>Rayer une sortie ne doit pas faire disparaître ses étiquettes.</translation>
    </message>
    <message>
        <source>Striking entry %1 would make a loose end of %2 disappear: %3 %4, who made it, may strike it; else it is cleared.</source>
        <translation>Rayer l'entrée %1 ferait disparaître un point ouvert de %2 : %3 %4, qui en est l'auteur, peut la rayer ; sinon, le point est levé.</translation>
    </message>
    <message>
        <source>Struck</source>
        <translation>Rayé</translation>
    </message>
    <message>
        <source>Struck an entry</source>
        <translation>Entrée rayée</translation>
    </message>
    <message>
        <source>Struck by entry %1: %2</source>
        <translation>Rayé par l'entrée %1 : %2</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Objet</translation>
    </message>
    <message>
        <source>Such as 2026-03-02</source>
        <translation>Par exemple 2026-03-02</translation>
    </message>
    <message>
        <source>Such as 2026-03-02T08:14:00Z</source>
        <translation>Par exemple 2026-03-02T08:14:00Z</translation>
    </message>
    <message>
        <source>Such as 24.5</source>
        <translation>Par exemple 24.5</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Système</translation>
    </message>
    <message>
        <source>TO INSPECT</source>
        <translation>À CONTRÔLER</translation>
    </message>
    <message>
        <source>Table …</source>
        <translation>Table …</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Étiquette</translation>
    </message>
    <message>
        <source>Tag %1</source>
        <translation>Étiquette %1</translation>
    </message>
    <message>
        <source>Tag %1 is of no block of this job that is out.</source>
        <translation>L'étiquette %1 n'est d'aucune série de ce chantier actuellement sortie.</translation>
    </message>
    <message>
        <source>Tag %1 is of no block that was issued to this job. Blocks that are out: %2.</source>
        <translation>L'étiquette %1 n'est d'aucune série sortie pour ce chantier. Séries actuellement sorties : %2.</translation>
    </message>
    <message>
        <source>Tag %1 is of the block %2, which was returned in entry %3. Blocks that are out: %4.</source>
        <translation>L'étiquette %1 est de la série %2, qui a été rendue à l'entrée %3. Séries actuellement sorties : %4.</translation>
    </message>
    <message>
        <source>Tag %1 of the block %2 still hangs on %3 (%4), which is open.</source>
        <translation>L'étiquette %1 de la série %2 est encore posée sur %3 (%4), qui est ouvert.</translation>
    </message>
    <message>
        <source>Tag %1 of the block %2 was hung on %3, so the block was issued. Return it when it is done with.</source>
        <translation>L'étiquette %1 de la série %2 a été posée sur %3 ; la série a donc été sortie. Rendez-la quand elle a fini de servir.</translation>
    </message>
    <message>
        <source>Tag %1 was hung on %2 already. Use another tag.</source>
        <translation>L'étiquette %1 a déjà été posée sur %2. Utilisez-en une autre.</translation>
    </message>
    <message>
        <source>Tag %1 was hung on %2 already; a number is used once. Issue a block without it.</source>
        <translation>L'étiquette %1 a déjà été posée sur %2 ; un numéro ne s'utilise qu'une fois. Sortez une série qui ne le contient pas.</translation>
    </message>
    <message>
        <source>Tag %1 was hung on %2 in this job. Hang a tag of this job instead, and give that one back.</source>
        <translation>L'étiquette %1 a été posée sur %2 dans ce chantier. Posez plutôt une étiquette de ce chantier, et rendez l'autre.</translation>
    </message>
    <message>
        <source>Tag of this job, hung instead</source>
        <translation>Étiquette de ce chantier, posée à la place</translation>
    </message>
    <message>
        <source>Tag recovered</source>
        <translation>Étiquette récupérée</translation>
    </message>
    <message>
        <source>Tag that it comes with</source>
        <translation>Étiquette avec laquelle il arrive</translation>
    </message>
    <message>
        <source>Tag that says unserviceable</source>
        <translation>Étiquette disant hors service</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Étiquettes</translation>
    </message>
    <message>
        <source>Tags counted in the hand</source>
        <translation>Étiquettes comptées en main</translation>
    </message>
    <message>
        <source>Tags exchanged on</source>
        <translation>Étiquettes échangées sur</translation>
    </message>
    <message>
        <source>Tags issued</source>
        <translation>Étiquettes sorties</translation>
    </message>
    <message>
        <source>Tags returned</source>
        <translation>Étiquettes rendues</translation>
    </message>
    <message>
        <source>Take %1 (%2)</source>
        <translation>Prendre %1 (%2)</translation>
    </message>
    <message>
        <source>Take another revision</source>
        <translation>Passer à une autre révision</translation>
    </message>
    <message>
        <source>Take it &amp;up</source>
        <translation>Le &amp;reprendre</translation>
    </message>
    <message>
        <source>Take it up</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Take on from a linked job</source>
        <translation>Prendre en charge depuis un chantier lié</translation>
    </message>
    <message>
        <source>Take over</source>
        <translation>Reprendre</translation>
    </message>
    <message>
        <source>Take over the torque</source>
        <translation>Reprendre le couple</translation>
    </message>
    <message>
        <source>Take the interface list</source>
        <translation>Importer la liste des raccordements</translation>
    </message>
    <message>
        <source>Take the tick back   Space</source>
        <translation>Retirer la coche   Espace</translation>
    </message>
    <message>
        <source>Take this list?</source>
        <translation>Importer cette liste ?</translation>
    </message>
    <message>
        <source>Take up the first inches, stop and look: balance, slings, shackles, and anything still connected. Set down at any doubt.</source>
        <translation>Levez les premiers centimètres, arrêtez et regardez : équilibre, élingues, manilles, et tout ce qui est encore relié. Reposez au moindre doute.</translation>
    </message>
    <message>
        <source>Take your key over at this station</source>
        <translation>Reprendre votre clé sur ce poste</translation>
    </message>
    <message>
        <source>Take: %1</source>
        <translation>Prendre : %1</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Prise</translation>
    </message>
    <message>
        <source>Taken on</source>
        <translation>Pris en charge</translation>
    </message>
    <message>
        <source>Taken on from a linked job</source>
        <translation>Pris en charge depuis un chantier lié</translation>
    </message>
    <message>
        <source>Taken up</source>
        <translation>Repris</translation>
    </message>
    <message>
        <source>Tap the photo where to look, or move the cross with the arrow keys and press Return.</source>
        <translation>Touchez la photo à l'endroit à regarder, ou déplacez la croix avec les flèches et appuyez sur Entrée.</translation>
    </message>
    <message>
        <source>Target, least</source>
        <translation>Cible, minimum</translation>
    </message>
    <message>
        <source>Target, most</source>
        <translation>Cible, maximum</translation>
    </message>
    <message>
        <source>Tell a leak by its rate or by drops counted, not by both.</source>
        <translation>Indiquez une fuite par son débit ou par des gouttes comptées, non par les deux.</translation>
    </message>
    <message>
        <source>Tell what came after an earlier print, or between two entries.</source>
        <translation>Dire ce qui est venu après une impression antérieure, ou entre deux entrées.</translation>
    </message>
    <message>
        <source>Temporarily joined</source>
        <translation>Raccordé provisoirement</translation>
    </message>
    <message>
        <source>Tension factor (1/sin)</source>
        <translation>Facteur de tension (1/sin)</translation>
    </message>
    <message>
        <source>Tension factor, k</source>
        <translation>Facteur de tension, k</translation>
    </message>
    <message>
        <source>Tension nut, least</source>
        <translation>Écrou de traction, minimum</translation>
    </message>
    <message>
        <source>Tension nut, most</source>
        <translation>Écrou de traction, maximum</translation>
    </message>
    <message>
        <source>Tension nut, never over</source>
        <translation>Écrou de traction, jamais au-delà</translation>
    </message>
    <message>
        <source>Tension of a leg at %1, T</source>
        <translation>Tension d'un brin, %1, T</translation>
    </message>
    <message>
        <source>Terminal covers are on, and nothing can touch the terminal.</source>
        <translation>Les cache-bornes sont en place, et rien ne peut toucher la borne.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Essai</translation>
    </message>
    <message>
        <source>Tested</source>
        <translation>Essai fait</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Text (*.txt)</source>
        <translation>Texte (*.txt)</translation>
    </message>
    <message>
        <source>Text follows the closing quote. Only a separator or the end of the line may.</source>
        <translation>Du texte suit le guillemet fermant. Seul un séparateur ou la fin de ligne le peut.</translation>
    </message>
    <message>
        <source>That is larger than the store can hold in one piece. Nothing was recorded.</source>
        <translation>C'est plus grand que ce que la base peut contenir d'un seul tenant. Rien n'a été consigné.</translation>
    </message>
    <message>
        <source>That is not the PIN or passphrase of %1.</source>
        <translation>Ce n'est pas le PIN ni la phrase secrète de %1.</translation>
    </message>
    <message>
        <source>That is what Remate is for.</source>
        <translation>C'est à cela que sert Remate.</translation>
    </message>
    <message>
        <source>That nothing changed is a result, and somebody answers for it.</source>
        <translation>Que rien n'ait changé est un résultat, et quelqu'un en répond.</translation>
    </message>
    <message>
        <source>That nothing of entry %1 ever was so is said by somebody with authority to overrule, of an entry that another one made.</source>
        <translation>Seule une personne habilitée à passer outre peut dire, d'une entrée faite par une autre, que rien de l'entrée %1 n'a jamais été vrai.</translation>
    </message>
    <message>
        <source>That nothing was found, and what was looked through.</source>
        <translation>Que rien n'a été trouvé, et ce qui a été parcouru.</translation>
    </message>
    <message>
        <source>The %1 of %2 (%3) covered it and is void.</source>
        <translation>L'essai « %1 » de %2 (%3) le couvrait et est caduc.</translation>
    </message>
    <message>
        <source>The %1 of %2 (%3) has failed and has to be made again.</source>
        <translation>L'essai « %1 » de %2 (%3) a échoué et doit être refait.</translation>
    </message>
    <message>
        <source>The %1 of %2 (%3) is void and has to be made again. %4</source>
        <translation>L'essai « %1 » de %2 (%3) est caduc et doit être refait. %4</translation>
    </message>
    <message>
        <source>The ZIP file holds "%1" twice.</source>
        <translation>Le fichier ZIP contient « %1 » deux fois.</translation>
    </message>
    <message>
        <source>The ZIP file holds a file with a name that leads elsewhere: "%1".</source>
        <translation>Le fichier ZIP contient un fichier dont le nom mène ailleurs : « %1 ».</translation>
    </message>
    <message>
        <source>The adapter (%1) reaches back to the grip or beyond: no setting gives the torque. Turn it, or take a shorter one.</source>
        <translation>L'adaptateur (%1) revient jusqu'à la poignée ou au-delà : aucun réglage ne donne le couple. Tournez-le, ou prenez-en un plus court.</translation>
    </message>
    <message>
        <source>The adapter's angle is %1°. It lies between 0° (in line, longer) and 180° (pointing back).</source>
        <translation>L'angle de l'adaptateur est %1°. Il est entre 0° (aligné, plus long) et 180° (vers l'arrière).</translation>
    </message>
    <message>
        <source>The adapter's length is %1. Give it as a length, and its direction as an angle: 180° where it points back.</source>
        <translation>La longueur de l'adaptateur est %1. Donnez-la comme longueur, et sa direction comme angle : 180° s'il pointe vers l'arrière.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide what has to be so, and who may sign for it.</source>
        <translation>Les données d'entretien approuvées et les règles locales décident de ce qui doit être rempli, et de qui peut le signer.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the bond.</source>
        <translation>Les données d'entretien approuvées et les règles locales décident, et des personnes titulaires d'une licence ou habilitées pour cela jugent la métallisation.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the leak.</source>
        <translation>Les données d'entretien approuvées et les règles locales décident, et des personnes titulaires d'une licence ou habilitées pour cela jugent la fuite.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the servicing.</source>
        <translation>Les données d'entretien approuvées et les règles locales décident, et des personnes titulaires d'une licence ou habilitées pour cela jugent le plein.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules decide, and people who are licensed or authorised for it tighten.</source>
        <translation>Les données d'entretien approuvées et les règles locales décident, et des personnes titulaires d'une licence ou habilitées pour cela serrent.</translation>
    </message>
    <message>
        <source>The approved maintenance data and the local rules say what is isolated, and by whom.</source>
        <translation>Les données d'entretien approuvées et les règles locales disent ce qui est consigné, et par qui.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs.</source>
        <translation>Les données d'entretien approuvées font foi.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs. This table is a help: compare with the data, and enter no figure from here that the data does not give.</source>
        <translation>Les données d'entretien approuvées font foi. Cette table est une aide : comparez avec les données, et ne saisissez d'ici aucune valeur que les données ne donnent pas.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs. What is shown here is its copy in the list.</source>
        <translation>Les données d'entretien approuvées font foi. Ce qui est affiché ici en est la copie dans la liste.</translation>
    </message>
    <message>
        <source>The approved maintenance data governs: %1, revision %2. Where this record and the maintenance data, the local rules or licensed practice differ, this record gives way.</source>
        <translation>Les données d'entretien approuvées font foi : %1, révision %2. En cas de divergence entre ce dossier et les données d'entretien, les règles locales ou la pratique des titulaires de licence, c'est ce dossier qui s'efface.</translation>
    </message>
    <message>
        <source>The approved maintenance data, the equipment's own instructions and the local rules decide, and people who are licensed or authorised for it lift.</source>
        <translation>Les données d'entretien approuvées, les notices du matériel et les règles locales décident, et des personnes titulaires d'une licence ou habilitées pour cela lèvent.</translation>
    </message>
    <message>
        <source>The approved maintenance data, the hoist's own instructions and the local rules decide, and people who are trained for it lift.</source>
        <translation>Les données d'entretien approuvées, la notice du palan et les règles locales décident, et ce sont des personnes formées qui lèvent.</translation>
    </message>
    <message>
        <source>The arm of %1 is given as %2. Give a length from the datum, negative on its far side.</source>
        <translation>Le bras de levier de %1 est donné à %2. Donnez une longueur depuis le plan de référence, négative de l'autre côté.</translation>
    </message>
    <message>
        <source>The attachment %1 is damaged: its content was changed after it was recorded. Look for it in the last backup.</source>
        <translation>La pièce jointe %1 est endommagée : son contenu a été modifié après avoir été consigné. Cherchez-la dans la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The attachment %1 is not in this store.</source>
        <translation>La pièce jointe %1 n'est pas dans cette base.</translation>
    </message>
    <message>
        <source>The attachment %1 is not what its name says: it was changed or swapped.</source>
        <translation>La pièce jointe %1 n'est pas ce que dit son nom : elle a été modifiée ou échangée.</translation>
    </message>
    <message>
        <source>The attachment %1 is there twice.</source>
        <translation>La pièce jointe %1 est là deux fois.</translation>
    </message>
    <message>
        <source>The attachment does not say what sort of file it is.</source>
        <translation>La pièce jointe ne dit pas quelle sorte de fichier elle est.</translation>
    </message>
    <message>
        <source>The attachment has %1 MiB; at most %2 MiB can be kept. Make it smaller, or cut it into parts.</source>
        <translation>La pièce jointe fait %1 Mio ; au plus %2 Mio peuvent être gardés. Réduisez-la, ou coupez-la en parties.</translation>
    </message>
    <message>
        <source>The attachment is empty. Choose another file.</source>
        <translation>La pièce jointe est vide. Choisissez un autre fichier.</translation>
    </message>
    <message>
        <source>The backup could not be given its name %1 (system %2). Choose another name.</source>
        <translation>La sauvegarde n'a pas pu recevoir son nom %1 (système %2). Choisissez un autre nom.</translation>
    </message>
    <message>
        <source>The backup to %1 failed, and no file was made. Check the disk and its room, and back up again, perhaps to another disk. (%2)</source>
        <translation>La sauvegarde vers %1 a échoué, et aucun fichier n'a été créé. Vérifiez le disque et sa place, et sauvegardez de nouveau, au besoin sur un autre disque. (%2)</translation>
    </message>
    <message>
        <source>The backup was cancelled; no file was made.</source>
        <translation>La sauvegarde a été annulée ; aucun fichier n'a été créé.</translation>
    </message>
    <message>
        <source>The backup was read again and is not the same as the store; it was thrown away. Check the disk, and verify the store itself.</source>
        <translation>La sauvegarde a été relue et n'est pas identique à la base ; elle a été jetée. Vérifiez le disque, et vérifiez la base elle-même.</translation>
    </message>
    <message>
        <source>The bag's folder is not named after the job's ledger.</source>
        <translation>Le dossier du paquet BagIt ne porte pas le nom du registre des entrées du chantier.</translation>
    </message>
    <message>
        <source>The beginning of the store is damaged. Keep the file as it is and go on with the last backup.</source>
        <translation>Le début de la base est endommagé. Gardez le fichier tel quel et continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The block %1 has %2 tags, %3 of them lost; %4 are in the hand instead of %5. Find the difference: a tag may hang on something that nobody logged.</source>
        <translation>La série %1 compte %2 étiquettes, dont %3 perdues ; %4 sont en main au lieu de %5. Trouvez l'écart : une étiquette peut être posée sur quelque chose que personne n'a enregistré.</translation>
    </message>
    <message>
        <source>The block %1 was issued and returned (entry %2); strike the return first, if it was a mistake.</source>
        <translation>La série %1 a été sortie et rendue (entrée %2) ; rayez d'abord le retour, si c'était une erreur.</translation>
    </message>
    <message>
        <source>The block %1 was issued in entry %2; a number is issued once.</source>
        <translation>La série %1 a été sortie à l'entrée %2 ; un numéro ne sort qu'une fois.</translation>
    </message>
    <message>
        <source>The block %1 was returned in entry %2.</source>
        <translation>La série %1 a été rendue à l'entrée %2.</translation>
    </message>
    <message>
        <source>The bond may have</source>
        <translation>La métallisation peut avoir</translation>
    </message>
    <message>
        <source>The bond of %1 is measured after it was torqued. %2</source>
        <translation>La métallisation de %1 se mesure après le serrage au couple. %2</translation>
    </message>
    <message>
        <source>The bonding resistance has not been measured.</source>
        <translation>La résistance de métallisation n'a pas été mesurée.</translation>
    </message>
    <message>
        <source>The boundary is drawn from the list of interfaces, and the list is empty. Import it as a CSV file; nobody has to draw anything.</source>
        <translation>La limite est dessinée d'après la liste des raccordements, et la liste est vide. Importez-la comme fichier CSV ; personne n'a rien à dessiner.</translation>
    </message>
    <message>
        <source>The braid has no broken strands.</source>
        <translation>La tresse n'a pas de brins rompus.</translation>
    </message>
    <message>
        <source>The breaker is out and collared, the valve shut and locked, or the switch guarded, and a tag with a name hangs on it.</source>
        <translation>Le disjoncteur est tiré et bagué, la vanne fermée et verrouillée, ou l'interrupteur protégé, et une étiquette avec un nom y est posée.</translation>
    </message>
    <message>
        <source>The cable has slack and strain relief, and rubs nowhere.</source>
        <translation>Le câble a du mou et une décharge de traction, et ne frotte nulle part.</translation>
    </message>
    <message>
        <source>The calculation was not printed</source>
        <translation>Le calcul n'a pas été imprimé</translation>
    </message>
    <message>
        <source>The calculation was not saved</source>
        <translation>Le calcul n'a pas été enregistré</translation>
    </message>
    <message>
        <source>The calculation was saved</source>
        <translation>Le calcul a été enregistré</translation>
    </message>
    <message>
        <source>The calculator cannot be shown</source>
        <translation>La calculatrice ne peut pas être affichée</translation>
    </message>
    <message>
        <source>The centre of gravity, %1 from the left point, lies outside the span of %2: the far point would be pulled up, and the load turn over. Move the points so that it lies between them.</source>
        <translation>Le centre de gravité, à %1 du point gauche, n'est pas entre les deux points, distants de %2 : le point éloigné serait tiré vers le haut, et la charge se renverserait. Déplacez les points pour qu'il soit entre eux.</translation>
    </message>
    <message>
        <source>The change of weight is within the limit of %1 lb at this empty weight.</source>
        <translation>Le changement de masse est dans la limite de %1 lb à cette masse à vide.</translation>
    </message>
    <message>
        <source>The change was given up already, by %1 in entry %2.</source>
        <translation>Le changement a déjà été abandonné, par %1 à l'entrée %2.</translation>
    </message>
    <message>
        <source>The clamp holds without crushing what it carries.</source>
        <translation>Le collier tient sans écraser ce qu'il porte.</translation>
    </message>
    <message>
        <source>The class of a wet area by a published scheme, against the worst class that is allowed.</source>
        <translation>La classe d'une surface mouillée selon un barème publié, par rapport à la pire classe admise.</translation>
    </message>
    <message>
        <source>The code "%1" is too long for a label of this size. Choose a larger one.</source>
        <translation>Le code « %1 » est trop long pour une étiquette de ce format. Choisissez-en un plus grand.</translation>
    </message>
    <message>
        <source>The code is shown once, works once, and for a day.</source>
        <translation>Le code est affiché une seule fois, sert une seule fois, et vaut un jour.</translation>
    </message>
    <message>
        <source>The column "%1" is expected here.</source>
        <translation>La colonne « %1 » est attendue ici.</translation>
    </message>
    <message>
        <source>The column "%1" is missing.</source>
        <translation>La colonne « %1 » manque.</translation>
    </message>
    <message>
        <source>The column "%1" stands twice.</source>
        <translation>La colonne « %1 » figure deux fois.</translation>
    </message>
    <message>
        <source>The condition "%1" asks for no stage.</source>
        <translation>La condition « %1 » ne demande pas d'état.</translation>
    </message>
    <message>
        <source>The condition "%1" asks for one of the stages %2, not "%3".</source>
        <translation>La condition « %1 » demande l'un des états %2, non « %3 ».</translation>
    </message>
    <message>
        <source>The coupling is home: its mark shows or its lock has clicked.</source>
        <translation>Le connecteur est accouplé à fond : son repère est visible ou son verrou a cliqué.</translation>
    </message>
    <message>
        <source>The coupling is seated all round and clear of its neighbours.</source>
        <translation>Le raccord est en place sur tout le pourtour et dégagé de ses voisins.</translation>
    </message>
    <message>
        <source>The coupling is seated all round and clear of wiring.</source>
        <translation>Le raccord est en place sur tout le pourtour et dégagé du câblage.</translation>
    </message>
    <message>
        <source>The cryptographic library could not be started. Nothing can be signed or verified.</source>
        <translation>La bibliothèque cryptographique n'a pas pu démarrer. Rien ne peut être signé ni vérifié.</translation>
    </message>
    <message>
        <source>The cryptographic library failed; nothing was signed. Free some memory and try again.</source>
        <translation>La bibliothèque cryptographique a échoué ; rien n'a été signé. Libérez de la mémoire et réessayez.</translation>
    </message>
    <message>
        <source>The cushion is in place and not swollen or torn.</source>
        <translation>Le coussinet est en place et n'est ni gonflé ni déchiré.</translation>
    </message>
    <message>
        <source>The damage of %1 is finding %2, which is open. An inspector says what becomes of it first.</source>
        <translation>Le dommage de %1 est l'objet du constat %2, qui est ouvert. Un contrôleur statue d'abord sur celui-ci.</translation>
    </message>
    <message>
        <source>The data that a job works to changes by a signature, never by itself.</source>
        <translation>Les données que suit un chantier changent par une signature, jamais d'elles-mêmes.</translation>
    </message>
    <message>
        <source>The day of the lift is not given, so nothing says whether the inspections hold.</source>
        <translation>Le jour du levage n'est pas donné ; rien ne dit donc si les inspections sont valables.</translation>
    </message>
    <message>
        <source>The demo was not made</source>
        <translation>La démonstration n'a pas été créée</translation>
    </message>
    <message>
        <source>The demo's people and PINs</source>
        <translation>Les personnes de la démonstration et leurs PIN</translation>
    </message>
    <message>
        <source>The designations of both halves belong together.</source>
        <translation>Les désignations des deux moitiés vont ensemble.</translation>
    </message>
    <message>
        <source>The designations of both halves were not read.</source>
        <translation>Les désignations des deux moitiés n'ont pas été lues.</translation>
    </message>
    <message>
        <source>The details of %1 were given in entry %2. If they are wrong, correct its row of the list.</source>
        <translation>Les détails de %1 ont été donnés à l'entrée %2. S'ils sont faux, corrigez sa ligne dans la liste.</translation>
    </message>
    <message>
        <source>The digest stored beside it does not match its bytes: one of the two was changed.</source>
        <translation>L'empreinte enregistrée à côté ne correspond pas à ses octets : l'une ou les autres ont été modifiés.</translation>
    </message>
    <message>
        <source>The directory of the ZIP file breaks off.</source>
        <translation>Le répertoire du fichier ZIP s'interrompt.</translation>
    </message>
    <message>
        <source>The disk could not be read (SQLite %1, system %2). Nothing was recorded. Check that the disk is there and try again; if it happens again, go on with the last backup on another disk.</source>
        <translation>Le disque n'a pas pu être lu (SQLite %1, système %2). Rien n'a été consigné. Vérifiez que le disque est là et réessayez ; si cela se reproduit, continuez avec la dernière sauvegarde sur un autre disque.</translation>
    </message>
    <message>
        <source>The disk did not confirm that it holds %1 (system %2). Check the disk.</source>
        <translation>Le disque n'a pas confirmé qu'il contient %1 (système %2). Vérifiez le disque.</translation>
    </message>
    <message>
        <source>The disk did not confirm what was written (SQLite %1, system %2). It is not certain whether it was recorded. Check the disk and its room, close the store and open it again, and sign again only what is not there.</source>
        <translation>Le disque n'a pas confirmé ce qui a été écrit (SQLite %1, système %2). Il n'est pas certain que cela a été consigné. Vérifiez le disque et sa place, fermez la base et ouvrez-la de nouveau, et ne signez de nouveau que ce qui n'y est pas.</translation>
    </message>
    <message>
        <source>The disk does not keep programs apart that use the store at once (SQLite %1, system %2). Nothing was recorded. Close the store and open it again; if it stays so, move the store to a disk of this computer.</source>
        <translation>Le disque ne sépare pas les programmes qui utilisent la base en même temps (SQLite %1, système %2). Rien n'a été consigné. Fermez la base et ouvrez-la de nouveau ; si cela persiste, déplacez la base sur un disque de cet ordinateur.</translation>
    </message>
    <message>
        <source>The disk is full, so nothing could be recorded in the store. Make room and open it again.</source>
        <translation>Le disque est plein, donc rien n'a pu être consigné dans la base. Faites de la place et ouvrez-la de nouveau.</translation>
    </message>
    <message>
        <source>The disk is full. Make room and export again.</source>
        <translation>Le disque est plein. Faites de la place et exportez à nouveau.</translation>
    </message>
    <message>
        <source>The disk is full. Nothing was recorded. Make room and sign again.</source>
        <translation>Le disque est plein. Rien n'a été consigné. Faites de la place et signez de nouveau.</translation>
    </message>
    <message>
        <source>The disk is full: make room.</source>
        <translation>Le disque est plein : faites de la place.</translation>
    </message>
    <message>
        <source>The disk reported an error (SQLite %1, system %2).</source>
        <translation>Le disque a signalé une erreur (SQLite %1, système %2).</translation>
    </message>
    <message>
        <source>The disk reported an error (SQLite %1, system %2). Nothing was recorded. Check that the disk is there and sign again; if it happens again, back up to another disk.</source>
        <translation>Le disque a signalé une erreur (SQLite %1, système %2). Rien n'a été consigné. Vérifiez que le disque est là et signez de nouveau ; si cela se reproduit, sauvegardez sur un autre disque.</translation>
    </message>
    <message>
        <source>The drag of a nut runs from less to more, not from %1 to %2.</source>
        <translation>Le couple d'autofreinage d'un écrou va du moins au plus, non de %1 à %2.</translation>
    </message>
    <message>
        <source>The drag of fastener %1 was measured as %2 in entry %3, before the nut seated. Give that figure in the later passes as well.</source>
        <translation>Le couple d'autofreinage de la fixation %1 a été mesuré à %2 à l'entrée %3, avant que l'écrou n'appuie. Indiquez cette valeur aussi dans les passes suivantes.</translation>
    </message>
    <message>
        <source>The drag of the self-locking nut is added to the torque of %1: measure it while the nut is run down, before it bears, and record it.</source>
        <translation>Le couple d'autofreinage de l'écrou s'ajoute au couple de serrage de %1 : mesurez-le pendant que l'écrou est vissé, avant qu'il n'appuie, et enregistrez-le.</translation>
    </message>
    <message>
        <source>The drain is open from end to end.</source>
        <translation>Le drain est libre d'un bout à l'autre.</translation>
    </message>
    <message>
        <source>The duct meets its mate without being pulled into place.</source>
        <translation>La gaine rejoint sa contrepartie sans être forcée en place.</translation>
    </message>
    <message>
        <source>The earlier entry</source>
        <translation>L'entrée antérieure</translation>
    </message>
    <message>
        <source>The end of the ZIP file is not as this program writes it.</source>
        <translation>La fin du fichier ZIP n'est pas telle que ce programme l'écrit.</translation>
    </message>
    <message>
        <source>The entries are safe in the side file, but writing them back into the store failed. Keep the side file beside the store, and check the disk. (%1)</source>
        <translation>Les entrées sont en sûreté dans le fichier annexe, mais leur réécriture dans la base a échoué. Gardez le fichier annexe à côté de la base, et vérifiez le disque. (%1)</translation>
    </message>
    <message>
        <source>The entries come here, the earliest first.</source>
        <translation>Les entrées s'affichent ici, la plus ancienne d'abord.</translation>
    </message>
    <message>
        <source>The entries of all jobs are shown.</source>
        <translation>Les entrées de tous les chantiers sont affichées.</translation>
    </message>
    <message>
        <source>The entry before it has number %1: entries are missing, or out of order.</source>
        <translation>L'entrée précédente a le numéro %1 : des entrées manquent, ou ne sont pas dans l'ordre.</translation>
    </message>
    <message>
        <source>The entry has a member that no entry has.</source>
        <translation>L'entrée a un membre qu'aucune entrée n'a.</translation>
    </message>
    <message>
        <source>The entry is not of form 1; a later version of the program may read it.</source>
        <translation>L'entrée n'est pas de la forme 1 ; une version ultérieure du programme peut la lire.</translation>
    </message>
    <message>
        <source>The entry's "%1" is missing or not of its type.</source>
        <translation>Le membre « %1 » de l'entrée manque ou n'est pas de son type.</translation>
    </message>
    <message>
        <source>The export was cancelled; no file was written.</source>
        <translation>L'exportation a été annulée ; aucun fichier n'a été écrit.</translation>
    </message>
    <message>
        <source>The fasteners are numbered clockwise from 1. Where the maintenance data gives an order, it governs.</source>
        <translation>Les fixations sont numérotées dans le sens horaire à partir de 1. Quand les données d'entretien donnent un ordre, il prévaut.</translation>
    </message>
    <message>
        <source>The fasteners of %1 are tightened in their order: %2 comes next, not %3.</source>
        <translation>Les fixations de %1 se serrent dans leur ordre : %2 vient ensuite, non %3.</translation>
    </message>
    <message>
        <source>The fasteners of %1 are tightened in their order: %2 comes next. To take %3 first, say why.</source>
        <translation>Les fixations de %1 se serrent dans leur ordre : %2 vient ensuite. Pour prendre %3 d'abord, dites pourquoi.</translation>
    </message>
    <message>
        <source>The file %1 could not be used (system %2). It orders the programs that write to the store. Check that you may write to the folder and that the disk has room.</source>
        <translation>Le fichier %1 n'a pas pu être utilisé (système %2). Il ordonne les programmes qui écrivent dans la base. Vérifiez que vous avez le droit d'écrire à cet emplacement et que le disque a de la place.</translation>
    </message>
    <message>
        <source>The file %1%2, left by another store, is in the way. Choose another name, or move that file away.</source>
        <translation>Le fichier %1%2, laissé par une autre base, fait obstacle. Choisissez un autre nom, ou déplacez ce fichier.</translation>
    </message>
    <message>
        <source>The file cannot be read (%1).</source>
        <translation>Le fichier ne peut pas être lu (%1).</translation>
    </message>
    <message>
        <source>The file cannot be written (%1). Choose another folder, or ask who looks after it.</source>
        <translation>Le fichier ne peut pas être écrit (%1). Choisissez un autre dossier, ou adressez-vous à la personne qui s'en occupe.</translation>
    </message>
    <message>
        <source>The file cannot be written (%1). Make room, or choose another folder.</source>
        <translation>Le fichier ne peut pas être écrit (%1). Faites de la place, ou choisissez un autre emplacement.</translation>
    </message>
    <message>
        <source>The file cannot be written. Make room and export again.</source>
        <translation>Le fichier ne peut pas être écrit. Faites de la place et exportez à nouveau.</translation>
    </message>
    <message>
        <source>The file cannot be written. Make room, or choose another folder.</source>
        <translation>Le fichier ne peut pas être écrit. Faites de la place, ou choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>The file could not be begun. Choose another folder and export again.</source>
        <translation>Le fichier n'a pas pu être commencé. Choisissez un autre dossier et exportez à nouveau.</translation>
    </message>
    <message>
        <source>The file could not be begun. Choose another folder and try again.</source>
        <translation>Le fichier n'a pas pu être commencé. Choisissez un autre dossier et réessayez.</translation>
    </message>
    <message>
        <source>The file holds no list "hold_points".</source>
        <translation>Le fichier ne contient pas de liste « hold_points ».</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Le fichier est vide.</translation>
    </message>
    <message>
        <source>The file is empty. Expected: a first row that names the columns, then one row an interface.</source>
        <translation>Le fichier est vide. Attendu : une première ligne qui nomme les colonnes, puis une ligne par raccordement.</translation>
    </message>
    <message>
        <source>The file is longer than 64 MiB, which no list is.</source>
        <translation>Le fichier dépasse 64 Mio, ce qu'aucune liste ne fait.</translation>
    </message>
    <message>
        <source>The file names columns but lists no interface.</source>
        <translation>Le fichier nomme des colonnes mais ne liste aucun raccordement.</translation>
    </message>
    <message>
        <source>The file tells where it was taken.</source>
        <translation>Le fichier indique où elle a été prise.</translation>
    </message>
    <message>
        <source>The file was not written</source>
        <translation>Le fichier n'a pas été écrit</translation>
    </message>
    <message>
        <source>The file was written</source>
        <translation>Le fichier a été écrit</translation>
    </message>
    <message>
        <source>The finding number "%1" is taken or cannot be used. Take the next one.</source>
        <translation>Le numéro de constat « %1 » est pris ou ne peut pas être utilisé. Prenez le suivant.</translation>
    </message>
    <message>
        <source>The fingerprint that the organisation publishes, 64 digits; may stay empty</source>
        <translation>L'empreinte de clé que publie l'organisme, 64 chiffres ; peut rester vide</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Le dossier %1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be watched. Choose another, or add the photos as files.</source>
        <translation>Le dossier %1 ne peut pas être surveillé. Choisissez-en un autre, ou ajoutez les photos comme fichiers.</translation>
    </message>
    <message>
        <source>The folder %1 is gone, so it is watched no longer. Connect the camera again, and choose its folder.</source>
        <translation>Le dossier %1 n'existe plus, il n'est donc plus surveillé. Rebranchez l'appareil photo et choisissez son dossier.</translation>
    </message>
    <message>
        <source>The folder is not watched</source>
        <translation>Le dossier n'est pas surveillé</translation>
    </message>
    <message>
        <source>The foot of a printed record names its last entry and the hash of it. Either says what to compare with.</source>
        <translation>Le pied d'un dossier imprimé indique sa dernière entrée et l'empreinte de celle-ci. L'une ou l'autre dit avec quoi comparer.</translation>
    </message>
    <message>
        <source>The founder of a register enrols themselves, nobody else.</source>
        <translation>La personne qui crée un répertoire s'inscrit elle-même, et personne d'autre.</translation>
    </message>
    <message>
        <source>The frame of the record is not up for correction.</source>
        <translation>Le cadre du dossier n'est pas ouvert à la correction.</translation>
    </message>
    <message>
        <source>The group has %1 pairs; read both halves of each, once.</source>
        <translation>Le groupe compte %1 paires ; lisez les deux moitiés de chacune, une fois.</translation>
    </message>
    <message>
        <source>The handover is to %1, who accepts it in person.</source>
        <translation>La passation est faite à %1, qui l'accepte en personne.</translation>
    </message>
    <message>
        <source>The handover to %1 has not been accepted.</source>
        <translation>La passation à %1 n'a pas été acceptée.</translation>
    </message>
    <message>
        <source>The handover was accepted, and entry %1 was made under it. It stays; hand over again.</source>
        <translation>La passation a été acceptée, et l'entrée %1 a été faite sous elle. Elle reste ; faites une nouvelle passation.</translation>
    </message>
    <message>
        <source>The hoist</source>
        <translation>Le palan</translation>
    </message>
    <message>
        <source>The hold point %1 (%2) has not been passed. %3</source>
        <translation>Le point d'arrêt %1 (%2) n'a pas été franchi. %3</translation>
    </message>
    <message>
        <source>The hold point %1 (%2) has to be passed again.</source>
        <translation>Le point d'arrêt %1 (%2) doit être franchi à nouveau.</translation>
    </message>
    <message>
        <source>The hold point %1 (%2) has to be passed again. %3</source>
        <translation>Le point d'arrêt %1 (%2) doit être franchi à nouveau. %3</translation>
    </message>
    <message>
        <source>The hold point %1 has not been passed.</source>
        <translation>Le point d'arrêt %1 n'a pas été franchi.</translation>
    </message>
    <message>
        <source>The hold point %1 is taken back by somebody who may pass it.</source>
        <translation>Le point d'arrêt %1 est annulé par une personne qui peut le franchir.</translation>
    </message>
    <message>
        <source>The hold point %1 was passed in entry %2, so what it asks for stays.</source>
        <translation>Le point d'arrêt %1 a été franchi à l'entrée %2 ; ce qu'il demande reste donc.</translation>
    </message>
    <message>
        <source>The hook hangs above the centre of gravity, and the lifting points lie above it too.</source>
        <translation>Le crochet est au-dessus du centre de gravité, et les points de levage aussi.</translation>
    </message>
    <message>
        <source>The id "%1" belongs to somebody already. An id is never given twice.</source>
        <translation>L'identifiant « %1 » appartient déjà à quelqu'un. Un identifiant n'est jamais attribué deux fois.</translation>
    </message>
    <message>
        <source>The id "%1" stands already on row %2. Expected: each id once.</source>
        <translation>L'identifiant « %1 » figure déjà à la ligne %2. Attendu : chaque identifiant une fois.</translation>
    </message>
    <message>
        <source>The imported package %1 is damaged: it is not what it was when it came. Import it again from where it came from.</source>
        <translation>Le paquet importé %1 est endommagé : il n'est plus ce qu'il était à son arrivée. Importez-le de nouveau de là où il est venu.</translation>
    </message>
    <message>
        <source>The incoming shift needs a lead who may lead.</source>
        <translation>L'équipe entrante a besoin d'un responsable qui a le droit de l'être.</translation>
    </message>
    <message>
        <source>The incoming unit</source>
        <translation>L'ensemble entrant</translation>
    </message>
    <message>
        <source>The incoming unit hangs in its place. To take it off again is a job of its own.</source>
        <translation>L'ensemble entrant est suspendu à sa place. Le déposer à nouveau est un chantier à part.</translation>
    </message>
    <message>
        <source>The incoming unit is in its place, and its shipping blanks are out.</source>
        <translation>L'ensemble entrant est à sa place, et ses obturateurs de transport sont retirés.</translation>
    </message>
    <message>
        <source>The incoming unit is received: plate, certificate, blanks and modification state.</source>
        <translation>L'ensemble entrant est réceptionné : plaque, certificat, obturateurs et état de modification.</translation>
    </message>
    <message>
        <source>The incoming unit was not received yet: its plate, its certificate and its blanks are looked at first.</source>
        <translation>L'ensemble entrant n'a pas encore été réceptionné : sa plaque, son certificat et ses obturateurs sont d'abord examinés.</translation>
    </message>
    <message>
        <source>The index of where things were used has %1 uses, and the entries give %2: it was changed.</source>
        <translation>L'index des utilisations a %1 utilisations, et les entrées en donnent %2 : il a été modifié.</translation>
    </message>
    <message>
        <source>The index of where things were used is of another version of this program. Open the store once for writing, so that it is made again.</source>
        <translation>L'index des utilisations est d'une autre version de ce programme. Ouvrez la base une fois en écriture, pour qu'il soit refait.</translation>
    </message>
    <message>
        <source>The interface is not on the list</source>
        <translation>Le raccordement n'est pas sur la liste</translation>
    </message>
    <message>
        <source>The job</source>
        <translation>Le chantier</translation>
    </message>
    <message>
        <source>The job as a seam: one coupling for each interface</source>
        <translation>Le chantier comme une couture : un accouplement pour chaque raccordement</translation>
    </message>
    <message>
        <source>The job at a glance: every interface across the boundary of the unit</source>
        <translation>Le chantier d'un coup d'œil : chaque raccordement à la limite de l'ensemble</translation>
    </message>
    <message>
        <source>The job closes when this list is empty. Return or a double click leads to where a loose end is cleared.</source>
        <translation>Le chantier se clôt quand cette liste est vide. La touche Entrée ou un double clic mène là où un point ouvert se lève.</translation>
    </message>
    <message>
        <source>The job has a temporary item %1 already. Give this one a number of its own.</source>
        <translation>Le chantier a déjà un élément temporaire %1. Donnez à celui-ci son propre numéro.</translation>
    </message>
    <message>
        <source>The job has a test "%1" already, of entry %2.</source>
        <translation>Le chantier a déjà un essai « %1 », de l'entrée %2.</translation>
    </message>
    <message>
        <source>The job has an accessory "%1" already: %2.</source>
        <translation>Le chantier a déjà un accessoire « %1 » : %2.</translation>
    </message>
    <message>
        <source>The job has entries 1 to %1; there are none from %2 to %3.</source>
        <translation>Le chantier a les entrées 1 à %1 ; il n'y en a pas de %2 à %3.</translation>
    </message>
    <message>
        <source>The job has loose ends: %1. The first: %2</source>
        <translation>Le chantier a des points ouverts : %1. Le premier : %2</translation>
    </message>
    <message>
        <source>The job has no entry %1; its last one is %2.</source>
        <translation>Le chantier n'a pas d'entrée %1 ; sa dernière est %2.</translation>
    </message>
    <message>
        <source>The job has not been opened yet.</source>
        <translation>Le chantier n'a pas encore été ouvert.</translation>
    </message>
    <message>
        <source>The job is closed</source>
        <translation>Le chantier est clos</translation>
    </message>
    <message>
        <source>The job is closed.</source>
        <translation>Le chantier est clos.</translation>
    </message>
    <message>
        <source>The job is not closed. Close it first, or export a draft that says so on each page.</source>
        <translation>Le chantier n'est pas clos. Clôturez-le d'abord, ou exportez un brouillon qui le dit sur chaque page.</translation>
    </message>
    <message>
        <source>The job lists "%1" already.</source>
        <translation>Le chantier liste déjà « %1 ».</translation>
    </message>
    <message>
        <source>The job lists no accessory "%1".</source>
        <translation>Le chantier n'a pas d'accessoire « %1 » dans sa liste.</translation>
    </message>
    <message>
        <source>The job lists no interface to draw from.</source>
        <translation>Le chantier ne liste aucun raccordement à tirer.</translation>
    </message>
    <message>
        <source>The job lists no interface; there is nothing to release.</source>
        <translation>La liste du chantier ne comporte aucun raccordement ; il n'y a rien à remettre en service.</translation>
    </message>
    <message>
        <source>The job lists nothing that a photo could show. Import the interface list first; what waits here stays.</source>
        <translation>Le chantier ne liste rien qu'une photo puisse montrer. Importez d'abord la liste des raccordements ; ce qui attend ici reste.</translation>
    </message>
    <message>
        <source>The job was closed on %1 and takes no more entries. Open a follow-on job that names it.</source>
        <translation>Le chantier a été clos le %1 et n'accepte plus d'entrées. Ouvrez un chantier de suite qui le nomme.</translation>
    </message>
    <message>
        <source>The job was not handed over.</source>
        <translation>Le chantier n'a pas fait l'objet d'une passation.</translation>
    </message>
    <message>
        <source>The job was not opened</source>
        <translation>Le chantier n'a pas été ouvert</translation>
    </message>
    <message>
        <source>The job with this ledger is of the work order %1, not of %2. Make sure that it is the one you mean.</source>
        <translation>Le chantier qui a ce registre des entrées relève de l'ordre de travail %1, non de %2. Assurez-vous que c'est bien celui que vous voulez.</translation>
    </message>
    <message>
        <source>The job works to revision %1 already.</source>
        <translation>Le chantier suit déjà la révision %1.</translation>
    </message>
    <message>
        <source>The key is bound to no station yet: a copy of the store gives the PIN away. It is bound when they next sign.</source>
        <translation>La clé n'est encore liée à aucun poste : une copie de la base trahit le PIN. Elle est liée à la prochaine signature.</translation>
    </message>
    <message>
        <source>The key it names is not the one that the register held for %1 at that moment.</source>
        <translation>La clé qu'elle nomme n'est pas celle que le répertoire tenait pour %1 à cet instant.</translation>
    </message>
    <message>
        <source>The key of %1 is locked after too many wrong PINs or passphrases. An administrator registers a new key for them; what they signed stays valid.</source>
        <translation>La clé de %1 est verrouillée après trop de PIN ou de phrases secrètes faux. Un administrateur enregistre une nouvelle clé pour cette personne ; ce qu'elle a signé reste valable.</translation>
    </message>
    <message>
        <source>The key of %1 is not at this station, so their PIN opens nothing here. At a station where they sign they choose "Carry your key over", and type the code here; or an administrator registers a new key for them. What they signed stays valid.</source>
        <translation>La clé de %1 n'est pas sur ce poste, si bien que son PIN n'ouvre rien ici. Sur un poste où cette personne signe, elle choisit « Transférer votre clé », et saisit ici le code ; ou un administrateur enregistre une nouvelle clé pour elle. Ce qu'elle a signé reste valable.</translation>
    </message>
    <message>
        <source>The key of %1 is not at this station. Take it over with a code from a station where they sign, or have a new key registered.</source>
        <translation>La clé de %1 n'est pas sur ce poste. Reprenez-la avec un code d'un poste où cette personne signe, ou faites enregistrer une nouvelle clé.</translation>
    </message>
    <message>
        <source>The key of %1 is stopped already. Give them a new one.</source>
        <translation>La clé de %1 est déjà bloquée. Donnez-lui-en une nouvelle.</translation>
    </message>
    <message>
        <source>The key of %1 was replaced or stopped since this transfer was made. It signs nothing any more.</source>
        <translation>La clé de %1 a été remplacée ou bloquée depuis que ce transfert a été fait. Elle ne signe plus rien.</translation>
    </message>
    <message>
        <source>The key of %1 was stopped on %2. They sign again once they have a new one.</source>
        <translation>La clé de %1 a été bloquée le %2. Cette personne signera de nouveau quand elle en aura une nouvelle.</translation>
    </message>
    <message>
        <source>The key was stopped on %1.</source>
        <translation>La clé a été bloquée le %1.</translation>
    </message>
    <message>
        <source>The kit %1 needs the number of its pieces, 1 to %2.</source>
        <translation>La mallette %1 demande son nombre de pièces, de 1 à %2.</translation>
    </message>
    <message>
        <source>The kit %1 went out with %2 pieces; %3 are counted. Find the difference, or say that it is missing.</source>
        <translation>La mallette %1 est partie avec %2 pièces ; %3 sont comptées. Trouvez l'écart, ou indiquez ce qui manque.</translation>
    </message>
    <message>
        <source>The label %1 stands there twice.</source>
        <translation>Le libellé %1 y figure deux fois.</translation>
    </message>
    <message>
        <source>The label is of %1 of this job, whose list has no such interface (any more). Look at the list, or print the labels anew.</source>
        <translation>L'étiquette est de %1 de ce chantier, dont la liste n'a pas (ou plus) ce raccordement. Regardez la liste, ou réimprimez les étiquettes.</translation>
    </message>
    <message>
        <source>The label is of another job</source>
        <translation>L'étiquette est d'un autre chantier</translation>
    </message>
    <message>
        <source>The label names %1 of %2.</source>
        <translation>L'étiquette désigne %1 de %2.</translation>
    </message>
    <message>
        <source>The labels were exported</source>
        <translation>Les étiquettes ont été exportées</translation>
    </message>
    <message>
        <source>The labels were not exported</source>
        <translation>Les étiquettes n'ont pas été exportées</translation>
    </message>
    <message>
        <source>The language was not changed</source>
        <translation>La langue n'a pas été changée</translation>
    </message>
    <message>
        <source>The last backup is %1 old. Back up the store to another disk.</source>
        <translation>La dernière sauvegarde remonte à %1. Sauvegardez la base sur un autre disque.</translation>
    </message>
    <message>
        <source>The last day (%1) lies before the first (%2).</source>
        <translation>Le dernier jour (%1) précède le premier (%2).</translation>
    </message>
    <message>
        <source>The last day on which the tool was known to be right lies before today; usually it is that of its last good calibration.</source>
        <translation>Le dernier jour où l'outil était connu comme juste précède aujourd'hui ; c'est en général celui de son dernier étalonnage satisfaisant.</translation>
    </message>
    <message>
        <source>The last entry is not struck</source>
        <translation>La dernière entrée n'est pas rayée</translation>
    </message>
    <message>
        <source>The last entry of this ledger (number %1) is damaged. Nothing more can be recorded in it. Verify the store, and go on with the last backup.</source>
        <translation>La dernière entrée de ce registre des entrées (numéro %1) est endommagée. Plus rien ne peut y être consigné. Vérifiez la base, et continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The last handover</source>
        <translation>La dernière passation</translation>
    </message>
    <message>
        <source>The last line has no end: the file was cut off.</source>
        <translation>La dernière ligne n'a pas de fin : le fichier a été coupé.</translation>
    </message>
    <message>
        <source>The last pass goes to %1 % of the final torque. Add the pass to 100 %.</source>
        <translation>La dernière passe va à %1 % du couple final. Ajoutez la passe à 100 %.</translation>
    </message>
    <message>
        <source>The last pass of a torque is 100 percent, and there are at most %1 passes; these are %2, the last %3.</source>
        <translation>La dernière passe d'un serrage est à 100 pour cent, et il y a au plus %1 passes ; ici il y en a %2, la dernière à %3.</translation>
    </message>
    <message>
        <source>The later entry</source>
        <translation>L'entrée ultérieure</translation>
    </message>
    <message>
        <source>The lead has slack and cannot foul a moving part.</source>
        <translation>La tresse a du mou et ne peut gêner aucune pièce mobile.</translation>
    </message>
    <message>
        <source>The lead signs it, before anything is done that it would hold back.</source>
        <translation>Le responsable le signe avant que soit fait quoi que ce soit qu'il retiendrait.</translation>
    </message>
    <message>
        <source>The ledger is there up to entry %1; the job's entries pin it up to entry %2.</source>
        <translation>Le registre des entrées est là jusqu'à l'entrée %1 ; les entrées du chantier le fixent jusqu'à l'entrée %2.</translation>
    </message>
    <message>
        <source>The legs that carry are taken to be equally long and the angle to be that of the flattest; n is the number of those reckoned with at a point. A cradle that stays on the unit counts as part of it.</source>
        <translation>Les brins porteurs sont supposés d'égale longueur et l'angle celui du plus plat ; n est le nombre de ceux comptés à un point. Un berceau qui reste sur l'ensemble en fait partie.</translation>
    </message>
    <message>
        <source>The library that puts PDF files together cannot be loaded (%1). Install the package libqpdf%2 and export again; nothing that was signed is touched.</source>
        <translation>La bibliothèque qui assemble les fichiers PDF ne peut pas être chargée (%1). Installez le paquet libqpdf%2 et exportez de nouveau ; rien de ce qui a été signé n’est touché.</translation>
    </message>
    <message>
        <source>The lift is on %1, which is past. Plan a lift before it is made; leave the day out when it is today.</source>
        <translation>Le levage est daté du %1, qui est passé. Préparez un levage avant de l'effectuer ; laissez la date vide si c'est aujourd'hui.</translation>
    </message>
    <message>
        <source>The line does not begin with a SHA-256 digest in lower-case hex.</source>
        <translation>La ligne ne commence pas par une empreinte SHA-256 en hexadécimal minuscule.</translation>
    </message>
    <message>
        <source>The line goes to the port of its own designation.</source>
        <translation>La conduite va à l'orifice de sa propre désignation.</translation>
    </message>
    <message>
        <source>The line is not UTF-8.</source>
        <translation>La ligne n'est pas en UTF-8.</translation>
    </message>
    <message>
        <source>The line is not hash, seq and a signature of 64 bytes in base64.</source>
        <translation>La ligne n'est pas une empreinte, un seq et une signature de 64 octets en base64.</translation>
    </message>
    <message>
        <source>The line is not in the one form that it has.</source>
        <translation>La ligne n'est pas dans l'unique forme qu'elle a.</translation>
    </message>
    <message>
        <source>The line lies free, without strain or rubbing.</source>
        <translation>La conduite est libre, sans contrainte ni frottement.</translation>
    </message>
    <message>
        <source>The linkage moves freely from stop to stop and does not touch its neighbours.</source>
        <translation>La timonerie se déplace librement de butée à butée et ne touche pas ses voisins.</translation>
    </message>
    <message>
        <source>The linked job %1 cannot be seen from here. Keep both in one store.</source>
        <translation>Le chantier lié %1 n'est pas visible d'ici. Conservez les deux dans une même base.</translation>
    </message>
    <message>
        <source>The linked job %1 cannot be seen from here. Keep both in one store; nothing is recorded until then.</source>
        <translation>Le chantier lié %1 n'est pas visible d'ici. Conservez les deux dans une même base ; d'ici là, rien n'est enregistré.</translation>
    </message>
    <message>
        <source>The liquid</source>
        <translation>Le liquide</translation>
    </message>
    <message>
        <source>The list asks for %1 on %2; the entry says "%3".</source>
        <translation>La liste demande %1 sur %2 ; l'entrée indique « %3 ».</translation>
    </message>
    <message>
        <source>The list asks for no bonding resistance on %1.</source>
        <translation>La liste ne demande pas de résistance de métallisation sur %1.</translation>
    </message>
    <message>
        <source>The list asks for no leak check on %1. What is seen leaking is a finding.</source>
        <translation>La liste ne demande pas de contrôle d'étanchéité sur %1. Une fuite constatée est un constat.</translation>
    </message>
    <message>
        <source>The list asks for no torque on %1. If the maintenance data does, correct the list.</source>
        <translation>La liste ne demande pas de couple de serrage sur %1. Si les données d'entretien en demandent un, corrigez la liste.</translation>
    </message>
    <message>
        <source>The list cannot be read</source>
        <translation>La liste ne peut pas être lue</translation>
    </message>
    <message>
        <source>The list gives no least drag for the nuts of %1, so none of them can be used again. Fit a new nut.</source>
        <translation>La liste ne donne pas de couple d'autofreinage minimal pour les écrous de %1 ; aucun ne peut donc être réutilisé. Montez un écrou neuf.</translation>
    </message>
    <message>
        <source>The list has %1 drops to the millilitre for %2, not %3. Leave the number out.</source>
        <translation>La liste compte %1 gouttes par millilitre pour %2, non %3. Laissez ce nombre vide.</translation>
    </message>
    <message>
        <source>The list has an interface "%1" already.</source>
        <translation>La liste a déjà un raccordement « %1 ».</translation>
    </message>
    <message>
        <source>The list has no interface "%1".</source>
        <translation>La liste n'a pas de raccordement « %1 ».</translation>
    </message>
    <message>
        <source>The list has no interface "%1". List it first.</source>
        <translation>La liste n'a pas de raccordement « %1 ». Inscrivez-le d'abord.</translation>
    </message>
    <message>
        <source>The list is corrected by the lead, or by an inspector who had no hand in the interface; %1 is neither.</source>
        <translation>La liste est corrigée par le responsable du chantier, ou par un contrôleur qui n'a pas participé au raccordement ; %1 n'est ni l'un ni l'autre.</translation>
    </message>
    <message>
        <source>The list is empty</source>
        <translation>La liste est vide</translation>
    </message>
    <message>
        <source>The list limits no class of %1, so what shows would be judged by nothing; dry alone is within any limit. Leave it out and raise a finding, or have the list corrected.</source>
        <translation>La liste ne limite aucune classe pour %1 ; ce qui se voit ne serait donc jugé par rapport à rien ; seul « sec » est dans toutes les limites. Laissez-la vide et ouvrez un constat, ou faites corriger la liste.</translation>
    </message>
    <message>
        <source>The list limits no rate of %1, so a rate would be judged by nothing. Leave it out and raise a finding, or have the list corrected.</source>
        <translation>La liste ne limite aucun débit pour %1 ; un débit ne serait donc jugé par rapport à rien. Laissez-le vide et ouvrez un constat, ou faites corriger la liste.</translation>
    </message>
    <message>
        <source>The list names no hardware, and none was recorded.</source>
        <translation>La liste ne nomme aucune visserie, et aucune n'a été consignée.</translation>
    </message>
    <message>
        <source>The list names no twins of %1 that could be told apart by the designations of their halves.</source>
        <translation>La liste ne nomme pas, pour %1, de jumeaux qui se distinguent par les désignations de leurs moitiés.</translation>
    </message>
    <message>
        <source>The list of attachments is damaged. Verify the store, and go on with the last backup.</source>
        <translation>La liste des pièces jointes est endommagée. Vérifiez la base, et continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The list of imported packages is damaged. Verify the store, and go on with the last backup.</source>
        <translation>La liste des paquets importés est endommagée. Vérifiez la base, et continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The list of what is open has moved on. Look at it again, then sign.</source>
        <translation>La liste des points ouverts a évolué. Regardez-la à nouveau, puis signez.</translation>
    </message>
    <message>
        <source>The list was exported</source>
        <translation>La liste a été exportée</translation>
    </message>
    <message>
        <source>The list was not exported</source>
        <translation>La liste n'a pas été exportée</translation>
    </message>
    <message>
        <source>The local rules say how long it is looked for, and who may release an aircraft whose tool was not found.</source>
        <translation>Les règles locales disent combien de temps on le cherche, et qui peut prononcer la remise en service d'un aéronef dont l'outil n'a pas été retrouvé.</translation>
    </message>
    <message>
        <source>The look-up tables are not complete. Install the program again.</source>
        <translation>Les tables de consultation ne sont pas complètes. Réinstallez le programme.</translation>
    </message>
    <message>
        <source>The lower size itself</source>
        <translation>La taille inférieure elle-même</translation>
    </message>
    <message>
        <source>The maintenance data of %1 was revised (entry %2), and nobody has looked up yet what it asks for now. Correct its row of the list, or sign it as it is.</source>
        <translation>Les données d'entretien de %1 ont été révisées (entrée %2), et personne n'a encore vérifié ce qu'elles demandent maintenant. Corrigez sa ligne dans la liste, ou signez-la telle quelle.</translation>
    </message>
    <message>
        <source>The maintenance data of %1 was revised (entry %2), and nobody has looked up yet what it asks for now. Do that before it goes.</source>
        <translation>Les données d'entretien de %1 ont été révisées (entrée %2), et personne n'a encore vérifié ce qu'elles demandent maintenant. Faites-le avant de le transmettre.</translation>
    </message>
    <message>
        <source>The maintenance data of %1 was revised. What it asks for is to be looked up.</source>
        <translation>Les données d'entretien de %1 ont été révisées. Ce qu'elles demandent est à vérifier.</translation>
    </message>
    <message>
        <source>The manual cannot be shown</source>
        <translation>Le manuel ne peut pas être affiché</translation>
    </message>
    <message>
        <source>The manual has no page "%1". Install the program again.</source>
        <translation>Le manuel n'a pas de page « %1 ». Réinstallez le programme.</translation>
    </message>
    <message>
        <source>The meaning "%1" does not belong to %2.</source>
        <translation>Le sens « %1 » n'appartient pas à %2.</translation>
    </message>
    <message>
        <source>The measured resistance lies within its limit.</source>
        <translation>La résistance mesurée est dans sa limite.</translation>
    </message>
    <message>
        <source>The member "%1" is not as it must be. Expected: %2.</source>
        <translation>Le membre « %1 » n'est pas comme il doit être. Attendu : %2.</translation>
    </message>
    <message>
        <source>The member "%1" of a hold point is not of the form that it has to be.</source>
        <translation>Le membre « %1 » d'un point d'arrêt n'a pas la forme qu'il doit avoir.</translation>
    </message>
    <message>
        <source>The name of the store's register is damaged. Verify the store, and go on with the last backup.</source>
        <translation>Le nom du répertoire de la base est endommagé. Vérifiez la base, et continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The new PIN or passphrase needs at least %1 characters.</source>
        <translation>Le nouveau PIN ou la nouvelle phrase secrète doit avoir au moins %1 caractères.</translation>
    </message>
    <message>
        <source>The newest entries of %1 are in its side file, and the folder cannot be written to. Copy the store together with the file %1-wal to a folder of your own and open it there.</source>
        <translation>Les entrées les plus récentes de %1 sont dans son fichier annexe, et l'emplacement n'est pas accessible en écriture. Copiez la base avec le fichier %1-wal à un emplacement qui vous appartient et ouvrez-la là.</translation>
    </message>
    <message>
        <source>The next shift undoes what it knows of.</source>
        <translation>L'équipe suivante défait ce dont elle a connaissance.</translation>
    </message>
    <message>
        <source>The next try is possible in %1.</source>
        <translation>Le prochain essai est possible dans %1.</translation>
    </message>
    <message>
        <source>The number %1 cannot be used, or stands on the photo already. The next one is %2.</source>
        <translation>Le numéro %1 n'est pas utilisable, ou figure déjà sur la photo. Le suivant est %2.</translation>
    </message>
    <message>
        <source>The number %1 in %2 would be in the band: was the scale read in another unit?</source>
        <translation>Le nombre %1 en %2 serait dans la plage : l'échelle a-t-elle été lue dans une autre unité ?</translation>
    </message>
    <message>
        <source>The nut turns with</source>
        <translation>L'écrou tourne avec</translation>
    </message>
    <message>
        <source>The nut turns with %1, and at most %2 is allowed: it or its thread is damaged. Take it off, look at both, and follow the maintenance data.</source>
        <translation>L'écrou tourne avec %1, et au plus %2 est permis : lui ou son filet est endommagé. Retirez-le, examinez les deux, et suivez les données d'entretien.</translation>
    </message>
    <message>
        <source>The nut turns with %1; a self-locking nut that is used again needs at least %2. Fit a new nut.</source>
        <translation>L'écrou tourne avec %1 ; un écrou autofreiné réutilisé demande au moins %2. Posez un écrou neuf.</translation>
    </message>
    <message>
        <source>The one bolt that everybody left to the others tears out what it holds.</source>
        <translation>La seule vis que chacun a laissée aux autres arrache ce qu'elle tient.</translation>
    </message>
    <message>
        <source>The open job is %1.</source>
        <translation>Le chantier ouvert est %1.</translation>
    </message>
    <message>
        <source>The outgoing unit</source>
        <translation>L'ensemble sortant</translation>
    </message>
    <message>
        <source>The outgoing unit goes back on.</source>
        <translation>L'ensemble sortant est reposé.</translation>
    </message>
    <message>
        <source>The outgoing unit is not off yet.</source>
        <translation>L'ensemble sortant n'est pas encore déposé.</translation>
    </message>
    <message>
        <source>The outgoing unit is off (entry %1), and none was received since that %2 could be joined to.</source>
        <translation>L'ensemble sortant est déposé (entrée %1), et aucun n'a été réceptionné depuis auquel %2 pourrait être raccordé.</translation>
    </message>
    <message>
        <source>The outgoing unit is off, and no unit was positioned in its place: %1 is to go up.</source>
        <translation>L'ensemble sortant est déposé, et aucun ensemble n'a été mis en position à sa place : c'est %1 qui doit monter.</translation>
    </message>
    <message>
        <source>The outgoing unit is off, blanked and tagged.</source>
        <translation>L'ensemble sortant est déposé, obturé et étiqueté.</translation>
    </message>
    <message>
        <source>The package cannot be begun. Choose another folder.</source>
        <translation>Le paquet ne peut pas être commencé. Choisissez un autre dossier.</translation>
    </message>
    <message>
        <source>The package cannot be verified</source>
        <translation>Le paquet ne peut pas être vérifié</translation>
    </message>
    <message>
        <source>The package cannot be written (%1). Choose another folder, or ask who looks after it.</source>
        <translation>Le paquet ne peut pas être écrit (%1). Choisissez un autre dossier, ou adressez-vous à la personne qui s'en occupe.</translation>
    </message>
    <message>
        <source>The package changed while it was read. Import it again.</source>
        <translation>Le paquet a changé pendant sa lecture. Importez-le de nouveau.</translation>
    </message>
    <message>
        <source>The package does not hold the attachment %1.</source>
        <translation>Le paquet ne contient pas la pièce jointe %1.</translation>
    </message>
    <message>
        <source>The package does not hold, and was not imported. %1</source>
        <translation>L'intégrité du paquet n'est pas confirmée ; il n'a pas été importé. %1</translation>
    </message>
    <message>
        <source>The package was imported</source>
        <translation>Le paquet a été importé</translation>
    </message>
    <message>
        <source>The package was not imported</source>
        <translation>Le paquet n'a pas été importé</translation>
    </message>
    <message>
        <source>The package was not saved</source>
        <translation>Le paquet n'a pas été enregistré</translation>
    </message>
    <message>
        <source>The package was saved</source>
        <translation>Le paquet a été enregistré</translation>
    </message>
    <message>
        <source>The packages were not listed</source>
        <translation>Les paquets n'ont pas été listés</translation>
    </message>
    <message>
        <source>The pages were drawn and could not be put together (%1). Export again; if it happens again, restart the program.</source>
        <translation>Les pages ont été dessinées et n'ont pas pu être assemblées (%1). Exportez à nouveau ; si cela se reproduit, redémarrez le programme.</translation>
    </message>
    <message>
        <source>The part %1 stands twice among the hardware. List it once, with its whole number.</source>
        <translation>La pièce %1 figure deux fois dans la visserie. Inscrivez-la une seule fois, avec son nombre total.</translation>
    </message>
    <message>
        <source>The part %1 stands twice among what came off. Count it once.</source>
        <translation>La pièce %1 figure deux fois dans ce qui a été déposé. Comptez-la une seule fois.</translation>
    </message>
    <message>
        <source>The passes of a torque rise, in percent of the final torque, such as 30, 60, 100, 100; "%1" does not.</source>
        <translation>Les passes d'un serrage sont croissantes, en pour cent du couple final, par exemple 30, 60, 100, 100 ; « %1 » ne l'est pas.</translation>
    </message>
    <message>
        <source>The paths are not in order, or one stands there twice.</source>
        <translation>Les chemins ne sont pas dans l'ordre, ou l'un y figure deux fois.</translation>
    </message>
    <message>
        <source>The percents differ by standard, class and greatest torque, and the tool's own certificate comes first.</source>
        <translation>Les pourcentages diffèrent selon la norme, la classe et le couple maximum, et le certificat de l'outil passe d'abord.</translation>
    </message>
    <message>
        <source>The perimeter was not printed</source>
        <translation>Le périmètre n'a pas été imprimé</translation>
    </message>
    <message>
        <source>The person</source>
        <translation>La personne</translation>
    </message>
    <message>
        <source>The photo is not at hand.</source>
        <translation>La photo n'est pas disponible.</translation>
    </message>
    <message>
        <source>The photo is said to be a copy of itself. Name the file that it was made from, or say nothing where it is the file itself.</source>
        <translation>La photo est donnée comme une copie d'elle-même. Indiquez le fichier dont elle est tirée, ou n'indiquez rien si c'est le fichier lui-même.</translation>
    </message>
    <message>
        <source>The photos are more than 4 GiB, which is more than one package holds. Ask who looks after the program.</source>
        <translation>Les photos dépassent 4 GiB, soit plus que n'en contient un paquet. Adressez-vous à la personne qui s'occupe du programme.</translation>
    </message>
    <message>
        <source>The picture cannot be decoded (%1).</source>
        <translation>L'image ne peut pas être décodée (%1).</translation>
    </message>
    <message>
        <source>The point nearer to the centre of gravity carries more than half.</source>
        <translation>Le point le plus proche du centre de gravité porte plus de la moitié.</translation>
    </message>
    <message>
        <source>The private key is not the one registered for %1.</source>
        <translation>La clé privée n'est pas celle enregistrée pour %1.</translation>
    </message>
    <message>
        <source>The record could not be begun. Choose another folder and export again.</source>
        <translation>Le dossier n'a pas pu être commencé. Choisissez un autre dossier de fichiers et exportez à nouveau.</translation>
    </message>
    <message>
        <source>The record package was exported</source>
        <translation>Le paquet de dossier a été exporté</translation>
    </message>
    <message>
        <source>The record package was not exported</source>
        <translation>Le paquet de dossier n'a pas été exporté</translation>
    </message>
    <message>
        <source>The record was exported</source>
        <translation>Le dossier a été exporté</translation>
    </message>
    <message>
        <source>The record was not exported</source>
        <translation>Le dossier n'a pas été exporté</translation>
    </message>
    <message>
        <source>The record with that hash is not part of this job's history. Compare it with the foot of the print, and see whether it is of this job.</source>
        <translation>Le dossier qui porte cette empreinte ne fait pas partie de l'historique de ce chantier. Comparez-la avec le pied de l'impression, et vérifiez qu'elle est de ce chantier.</translation>
    </message>
    <message>
        <source>The register does not say how finely this wrench can be set. Have its graduation registered, or take another.</source>
        <translation>Le répertoire ne dit pas avec quelle finesse cette clé se règle. Faites enregistrer sa graduation, ou prenez-en une autre.</translation>
    </message>
    <message>
        <source>The register does not say how long tool %1 is, and with an adapter all depends on it. Have its length registered, or take another wrench.</source>
        <translation>Le répertoire n'indique pas la longueur de l'outil %1, et avec un adaptateur tout en dépend. Faites enregistrer sa longueur, ou prenez une autre clé.</translation>
    </message>
    <message>
        <source>The register entry that it pins is not in the register, or an earlier entry pinned a later one.</source>
        <translation>L'entrée du répertoire qu'elle fixe n'est pas dans le répertoire, ou une entrée antérieure en fixait une postérieure.</translation>
    </message>
    <message>
        <source>The register has a tool "%1" already.</source>
        <translation>Le répertoire a déjà un outil « %1 ».</translation>
    </message>
    <message>
        <source>The register has no measuring tool "%1".</source>
        <translation>Le répertoire n'a pas d'outil de mesure « %1 ».</translation>
    </message>
    <message>
        <source>The register has no root person yet. Found it first.</source>
        <translation>Le répertoire n'a pas encore de personne racine. Créez-le d'abord.</translation>
    </message>
    <message>
        <source>The register has no tool "%1" in use.</source>
        <translation>Le répertoire n'a pas d'outil « %1 » en service.</translation>
    </message>
    <message>
        <source>The register has no tool "%1".</source>
        <translation>Le répertoire n'a pas d'outil « %1 ».</translation>
    </message>
    <message>
        <source>The register keeps no list of these: whether it is spelt right cannot be told.</source>
        <translation>Le répertoire n'en tient pas de liste : on ne peut pas dire si l'orthographe est juste.</translation>
    </message>
    <message>
        <source>The register knows no %1 %2, and no entry names it.</source>
        <translation>Le répertoire ne connaît pas : %1 %2 ; et aucune entrée ne l'indique.</translation>
    </message>
    <message>
        <source>The register's own entries pin nothing.</source>
        <translation>Les propres entrées du répertoire ne fixent rien.</translation>
    </message>
    <message>
        <source>The requirement "%1" stands twice.</source>
        <translation>L'exigence « %1 » figure deux fois.</translation>
    </message>
    <message>
        <source>The resistance of a bond by the drop of voltage under a known current, against its limit.</source>
        <translation>La résistance d'une métallisation par la chute de tension sous un courant connu, par rapport à sa limite.</translation>
    </message>
    <message>
        <source>The root fingerprint is not the one that was given: this hangs from another root.</source>
        <translation>L'empreinte de clé de la racine n'est pas celle qui a été donnée : ceci dépend d'une autre racine.</translation>
    </message>
    <message>
        <source>The root signs its own enrolment; everything else hangs from it.</source>
        <translation>La racine signe sa propre inscription ; tout le reste en dépend.</translation>
    </message>
    <message>
        <source>The row has %1 fields. Expected: %2, as in the first row.</source>
        <translation>La ligne a %1 champs. Attendu : %2, comme dans la première ligne.</translation>
    </message>
    <message>
        <source>The rules, by name</source>
        <translation>Les règles, par nom</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Encore une fois le même</translation>
    </message>
    <message>
        <source>The same as a table</source>
        <translation>La même chose en table</translation>
    </message>
    <message>
        <source>The same mistake is made twice by the same hands.</source>
        <translation>La même erreur est faite deux fois par les mêmes mains.</translation>
    </message>
    <message>
        <source>The same word names different leaks in different schemes.</source>
        <translation>Le même mot désigne des fuites différentes d'un barème à l'autre.</translation>
    </message>
    <message>
        <source>The sample with its seed and every hash.</source>
        <translation>L'échantillon avec sa graine et toutes les empreintes.</translation>
    </message>
    <message>
        <source>The scheme "%1" does not class by size. Choose the class by its description.</source>
        <translation>Le barème « %1 » ne classe pas par taille. Choisissez la classe d'après sa description.</translation>
    </message>
    <message>
        <source>The scheme "%1" has no class "%2". Choose one of %3.</source>
        <translation>Le barème « %1 » n'a pas de classe « %2 ». Choisissez parmi %3.</translation>
    </message>
    <message>
        <source>The scheme "%1" has no classes.</source>
        <translation>Le barème « %1 » n'a pas de classes.</translation>
    </message>
    <message>
        <source>The schemes call different leaks by one name. Always name the scheme beside the class. Fuel burns: no flame, no spark, fire cover as the local rules ask.</source>
        <translation>Les barèmes appellent d'un même nom des fuites différentes. Indiquez toujours le barème à côté de la classe. Le carburant brûle : pas de flamme, pas d'étincelle, moyens incendie comme le demandent les règles locales.</translation>
    </message>
    <message>
        <source>The seal is new and of the right material for fuel.</source>
        <translation>Le joint est neuf et d'une matière qui convient au carburant.</translation>
    </message>
    <message>
        <source>The seal is new and of the right material for oil.</source>
        <translation>Le joint est neuf et d'une matière qui convient à l'huile.</translation>
    </message>
    <message>
        <source>The seal is new and of the right material for this fluid.</source>
        <translation>Le joint est neuf et d'une matière qui convient à ce fluide.</translation>
    </message>
    <message>
        <source>The seal is new, seated and not pinched.</source>
        <translation>Le joint est neuf, bien en place et non pincé.</translation>
    </message>
    <message>
        <source>The secret of this station (%1) cannot be read: %2</source>
        <translation>Le secret de ce poste (%1) ne peut pas être lu : %2</translation>
    </message>
    <message>
        <source>The secret of this station could not be kept in %1: %2 Without it no key is opened. Make the folder writable, or name another file in REMATE_STATION.</source>
        <translation>Le secret de ce poste n'a pas pu être gardé dans %1 : %2 Sans lui, aucune clé ne s'ouvre. Rendez l'emplacement accessible en écriture, ou nommez un autre fichier dans REMATE_STATION.</translation>
    </message>
    <message>
        <source>The secret of this station lies in the folder of the store (%1), so whoever copies the folder has both. Move one of them, or name another file in REMATE_STATION.</source>
        <translation>Le secret de ce poste se trouve dans le dossier de la base (%1) ; qui copie le dossier a donc les deux. Déplacez l'un d'eux, ou nommez un autre fichier dans REMATE_STATION.</translation>
    </message>
    <message>
        <source>The serial number %1 is that of %2. Read the plate again.</source>
        <translation>Le numéro de série %1 est celui de %2. Relisez la plaque.</translation>
    </message>
    <message>
        <source>The serial number %1 is that of %2: each is in one place. Read the plate again.</source>
        <translation>Le numéro de série %1 est celui de %2 : chacun n'est qu'à un seul endroit. Relisez la plaque.</translation>
    </message>
    <message>
        <source>The sheet could not be begun. Choose another folder or printer and try again.</source>
        <translation>La feuille n'a pas pu être commencée. Choisissez un autre dossier ou une autre imprimante et réessayez.</translation>
    </message>
    <message>
        <source>The sheet does not fit one page. Shorten the title of the job, or look at it in the program.</source>
        <translation>La feuille ne tient pas sur une page. Raccourcissez le titre du chantier, ou regardez-la dans le programme.</translation>
    </message>
    <message>
        <source>The sheet was not printed</source>
        <translation>La feuille n'a pas été imprimée</translation>
    </message>
    <message>
        <source>The sheet was not written</source>
        <translation>La feuille n'a pas été écrite</translation>
    </message>
    <message>
        <source>The sheet was written</source>
        <translation>La feuille a été écrite</translation>
    </message>
    <message>
        <source>The shift of the centre of gravity is still to be judged: no mean aerodynamic chord is given.</source>
        <translation>Le déplacement du centre de gravité reste à juger : aucune corde aérodynamique moyenne n'est donnée.</translation>
    </message>
    <message>
        <source>The shift of the centre of gravity, %1 of the mean aerodynamic chord, is under the limit of 0.05 %.</source>
        <translation>Le déplacement du centre de gravité, %1 de la corde aérodynamique moyenne, est inférieur à la limite de 0.05 %.</translation>
    </message>
    <message>
        <source>The sizes of leak classes rise; %1 comes after %2.</source>
        <translation>Les tailles des classes de fuite croissent ; %1 vient après %2.</translation>
    </message>
    <message>
        <source>The sling</source>
        <translation>L'élingue</translation>
    </message>
    <message>
        <source>The slings lie under 30° from the horizontal, where a leg carries more than twice its share. Take longer slings or a beam.</source>
        <translation>Les élingues sont à moins de 30° de l'horizontale, où un brin porte plus du double de sa part. Prenez des élingues plus longues ou un palonnier.</translation>
    </message>
    <message>
        <source>The step that was left out is the one that the next pair of hands took for done.</source>
        <translation>L'étape omise est celle que les mains suivantes ont crue faite.</translation>
    </message>
    <message>
        <source>The store could not be brought up to this version: rows of %1 belong to nothing. It was left as it was. Go on with the last backup.</source>
        <translation>La base n'a pas pu être portée à cette version : des lignes de %1 ne se rattachent à rien. Elle a été laissée telle quelle. Continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The store could not be used (SQLite %1, system %2). Nothing was recorded. Close the program and try again; if it happens again, report these numbers.</source>
        <translation>La base n'a pas pu être utilisée (SQLite %1, système %2). Rien n'a été consigné. Fermez le programme et réessayez ; si cela se reproduit, signalez ces numéros.</translation>
    </message>
    <message>
        <source>The store does not hold the attachment %1. Attach the file itself, in the window. Nothing was signed.</source>
        <translation>La base ne contient pas la pièce jointe %1. Joignez le fichier lui-même, dans la fenêtre. Rien n'a été signé.</translation>
    </message>
    <message>
        <source>The store has no register, so nobody can be vouched for. Verify it.</source>
        <translation>La base n'a pas de répertoire ; on ne peut donc se porter garant de personne. Vérifiez-la.</translation>
    </message>
    <message>
        <source>The store has no such job, or one whose name cannot name a folder.</source>
        <translation>La base n'a pas de tel chantier, ou il a un nom qui ne peut pas nommer un dossier.</translation>
    </message>
    <message>
        <source>The store has something that this version knows nothing of: %1 %2.</source>
        <translation>La base a quelque chose dont cette version ne sait rien : %1 %2.</translation>
    </message>
    <message>
        <source>The store has this job up to the same entry already: imported package %1. Nothing was imported.</source>
        <translation>La base a déjà ce chantier jusqu'à la même entrée : paquet importé %1. Rien n'a été importé.</translation>
    </message>
    <message>
        <source>The store holds this job itself, up to the same entry. Nothing was imported.</source>
        <translation>La base contient elle-même ce chantier, jusqu'à la même entrée. Rien n'a été importé.</translation>
    </message>
    <message>
        <source>The store is damaged (SQLite %1). Keep the file as it is and go on with the last backup.</source>
        <translation>La base est endommagée (SQLite %1). Gardez le fichier tel quel et continuez avec la dernière sauvegarde.</translation>
    </message>
    <message>
        <source>The store is open for reading only. Nothing was recorded. Open it for writing and try again.</source>
        <translation>La base est ouverte en lecture seule. Rien n'a été consigné. Ouvrez-la en écriture et réessayez.</translation>
    </message>
    <message>
        <source>The store is open for reading only. Nothing was signed.</source>
        <translation>La base est ouverte en lecture seule. Rien n'a été signé.</translation>
    </message>
    <message>
        <source>The store may be read but not written here. Nothing was recorded. Close the store and open it again; if it stays so, ask whoever looks after this computer for the right to write to it.</source>
        <translation>La base peut être lue mais pas écrite ici. Rien n'a été consigné. Fermez la base et ouvrez-la de nouveau ; si cela persiste, demandez à qui s'occupe de cet ordinateur le droit d'y écrire.</translation>
    </message>
    <message>
        <source>The store refused a change that would break a ledger (SQLite %1). Nothing was recorded. This is a fault of the program: please report it.</source>
        <translation>La base a refusé une modification qui briserait un registre des entrées (SQLite %1). Rien n'a été consigné. C'est un défaut du programme : veuillez le signaler.</translation>
    </message>
    <message>
        <source>The store that holds it was not at hand.</source>
        <translation>La base qui la contient n'était pas à portée.</translation>
    </message>
    <message>
        <source>The store to open.</source>
        <translation>La base à ouvrir.</translation>
    </message>
    <message>
        <source>The store was backed up</source>
        <translation>La base a été sauvegardée</translation>
    </message>
    <message>
        <source>The store was closed, but its side file %1-wal could not be written back into it. Keep both files together, and check the disk. (%2)</source>
        <translation>La base a été fermée, mais son fichier annexe %1-wal n'a pas pu y être réécrit. Gardez les deux fichiers ensemble, et vérifiez le disque. (%2)</translation>
    </message>
    <message>
        <source>The store was not backed up</source>
        <translation>La base n'a pas été sauvegardée</translation>
    </message>
    <message>
        <source>The store was not looked through</source>
        <translation>La base n'a pas été parcourue</translation>
    </message>
    <message>
        <source>The store was not made</source>
        <translation>La base n'a pas été créée</translation>
    </message>
    <message>
        <source>The store was not opened</source>
        <translation>La base n'a pas été ouverte</translation>
    </message>
    <message>
        <source>The store's %1 %2 is gone: entries could be changed without a word.</source>
        <translation>%1 %2 de la base a disparu : des entrées pourraient être modifiées sans que rien ne le signale.</translation>
    </message>
    <message>
        <source>The store's %1 %2 is not the one that was made with it.</source>
        <translation>%1 %2 de la base n'est pas celui qui a été créé avec elle.</translation>
    </message>
    <message>
        <source>The store's file does not agree with itself (%1): it was damaged, or changed by other means. Restore a backup.</source>
        <translation>Le fichier de la base ne concorde pas avec lui-même (%1) : il a été endommagé, ou modifié par d'autres moyens. Restaurez une sauvegarde.</translation>
    </message>
    <message>
        <source>The stored key of %1 is bound to another station.</source>
        <translation>La clé enregistrée de %1 est liée à un autre poste.</translation>
    </message>
    <message>
        <source>The stored key of %1 is damaged. Register a new key for them.</source>
        <translation>La clé enregistrée de %1 est endommagée. Enregistrez une nouvelle clé pour cette personne.</translation>
    </message>
    <message>
        <source>The stored key of %1 is not the one it is said to be. Register a new key for them.</source>
        <translation>La clé enregistrée de %1 n'est pas celle que l'on dit. Enregistrez une nouvelle clé pour cette personne.</translation>
    </message>
    <message>
        <source>The table cannot be shown</source>
        <translation>La table ne peut pas être affichée</translation>
    </message>
    <message>
        <source>The table has no row.</source>
        <translation>La table n'a aucune ligne.</translation>
    </message>
    <message>
        <source>The table is empty.</source>
        <translation>La table est vide.</translation>
    </message>
    <message>
        <source>The tag can be read, its limit and date hold, and no leg is cut, kinked or twisted.</source>
        <translation>L'étiquette est lisible, sa limite et sa date sont respectées, et aucun brin n'est coupé, plié ou tordu.</translation>
    </message>
    <message>
        <source>The tag in the hand proves which interface was closed.</source>
        <translation>L'étiquette en main prouve quel raccordement a été refermé.</translation>
    </message>
    <message>
        <source>The tags %1 have not been returned.</source>
        <translation>Les étiquettes %1 n'ont pas été rendues.</translation>
    </message>
    <message>
        <source>The test covers %1 (%2), which is not restored. Restore it first, or name what the test covers.</source>
        <translation>L'essai couvre %1 (%2), qui n'est pas remis en état. Remettez-le d'abord en état, ou nommez ce que l'essai couvre.</translation>
    </message>
    <message>
        <source>The text puts exactly %1 lb in no band, so the stricter one is taken.</source>
        <translation>Le texte ne met %1 lb exactement dans aucune tranche ; la plus stricte est donc retenue.</translation>
    </message>
    <message>
        <source>The tool %1 has not come back.</source>
        <translation>L'outil %1 n'est pas revenu.</translation>
    </message>
    <message>
        <source>The tool may be off by</source>
        <translation>L'outil peut s'écarter de</translation>
    </message>
    <message>
        <source>The tool may be off by, % of the reading</source>
        <translation>Erreur possible de l'outil, % du relevé</translation>
    </message>
    <message>
        <source>The tool may be off by, W</source>
        <translation>L'outil peut s'écarter de, W</translation>
    </message>
    <message>
        <source>The tool's deviation reaches beyond the edge of the band.</source>
        <translation>L'écart de l'outil dépasse le bord de la plage.</translation>
    </message>
    <message>
        <source>The tools are counted all together: name none.</source>
        <translation>Les outils se comptent tous ensemble : n'en nommez aucun.</translation>
    </message>
    <message>
        <source>The tools have not been counted since entry %1.</source>
        <translation>Les outils n'ont pas été comptés depuis l'entrée %1.</translation>
    </message>
    <message>
        <source>The torque that turns the nut before it seats. The source begins at 7/16 in and says nothing of smaller sizes. What a nut needs to break away is another quantity.</source>
        <translation>Le couple qui fait tourner l'écrou avant qu'il ne porte. La source commence à 7/16 in et ne dit rien des tailles plus petites. Ce qu'il faut pour décoller un écrou est une autre grandeur.</translation>
    </message>
    <message>
        <source>The twin group "%1" has this interface alone. Expected: two look-alikes or more.</source>
        <translation>Le groupe de contrôle croisé « %1 » n'a que ce raccordement. Attendu : deux semblables ou plus.</translation>
    </message>
    <message>
        <source>The two PINs differ. Type both again.</source>
        <translation>Les deux PIN diffèrent. Saisissez-les de nouveau tous les deux.</translation>
    </message>
    <message>
        <source>The union is not overtightened.</source>
        <translation>Le raccord n'est pas trop serré.</translation>
    </message>
    <message>
        <source>The union was held while its nut was turned.</source>
        <translation>Le raccord a été tenu pendant que son écrou était tourné.</translation>
    </message>
    <message>
        <source>The unit</source>
        <translation>L'ensemble</translation>
    </message>
    <message>
        <source>The unit as a boundary: one coupling for each interface, zone by zone</source>
        <translation>L'ensemble comme limite : un accouplement pour chaque raccordement, zone par zone</translation>
    </message>
    <message>
        <source>The unit hangs in its place, and no hoist is applied that carries it while %1 is undone. Give it the load first, and log it.</source>
        <translation>L'ensemble est suspendu à sa place, et aucun palan mis en place ne le porte pendant que %1 est déposé. Mettez-le d'abord en charge, et enregistrez-le.</translation>
    </message>
    <message>
        <source>The unit is off.</source>
        <translation>L'ensemble est déposé.</translation>
    </message>
    <message>
        <source>The unit itself, its accessories and the tests</source>
        <translation>L'ensemble lui-même, ses accessoires et les essais</translation>
    </message>
    <message>
        <source>The unit of "%1" is not known. Use one of %2.</source>
        <translation>L'unité de « %1 » n'est pas connue. Employez-en une parmi %2.</translation>
    </message>
    <message>
        <source>The unit was said to be off (entry %1), and that was struck. Say it anew; or somebody with authority to overrule strikes that entry as never so.</source>
        <translation>L'ensemble a été dit déposé (entrée %1), et cela a été rayé. Dites-le à nouveau ; ou une personne habilitée à passer outre raye cette entrée comme n'ayant jamais été vraie.</translation>
    </message>
    <message>
        <source>The unit, its accessories and tests</source>
        <translation>L'ensemble, ses accessoires et les essais</translation>
    </message>
    <message>
        <source>The upper size itself</source>
        <translation>La taille supérieure elle-même</translation>
    </message>
    <message>
        <source>The verdict was not saved</source>
        <translation>Le verdict n'a pas été enregistré</translation>
    </message>
    <message>
        <source>The verdict was saved</source>
        <translation>Le verdict a été enregistré</translation>
    </message>
    <message>
        <source>The way of locking is chosen by the maintenance data.</source>
        <translation>Le mode de freinage est choisi par les données d'entretien.</translation>
    </message>
    <message>
        <source>The weight change is recorded.</source>
        <translation>Le changement de masse est consigné.</translation>
    </message>
    <message>
        <source>The weight change of this job stands in entry %1 already. Strike that entry before you record it anew.</source>
        <translation>Le changement de masse de ce chantier figure déjà à l'entrée %1. Rayez cette entrée avant de l'enregistrer à nouveau.</translation>
    </message>
    <message>
        <source>The weight of %1 is given as %2. Give a weight above 0.</source>
        <translation>La masse de %1 est donnée à %2. Donnez une masse supérieure à 0.</translation>
    </message>
    <message>
        <source>The weight of the rigging, which the hoist carries as well,</source>
        <translation>La masse des agrès, que le palan porte aussi,</translation>
    </message>
    <message>
        <source>The weight of the unit</source>
        <translation>La masse de l'ensemble</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Le chantier entier</translation>
    </message>
    <message>
        <source>The working load limit of a sling's leg</source>
        <translation>La charge maximale d'utilisation d'un brin</translation>
    </message>
    <message>
        <source>The working load limit of the hoist</source>
        <translation>La charge maximale d'utilisation du palan</translation>
    </message>
    <message>
        <source>The wrench showed</source>
        <translation>La clé indiquait</translation>
    </message>
    <message>
        <source>The wrench would have to be set to %1, and none of its marks, %2 apart, lies there. Take a wrench with finer marks.</source>
        <translation>La clé devrait être réglée à %1, et aucun de ses repères, distants de %2, ne s'y trouve. Prenez une clé à repères plus fins.</translation>
    </message>
    <message>
        <source>The wrench would have to be set to %1; its usable range is %2 to %3. Take another wrench.</source>
        <translation>La clé devrait être réglée à %1 ; sa plage utilisable est de %2 à %3. Prenez une autre clé.</translation>
    </message>
    <message>
        <source>The wrench's length is %1. Measure from the middle of the grip to the square drive.</source>
        <translation>La longueur de la clé est %1. Mesurez du milieu de la poignée au carré d'entraînement.</translation>
    </message>
    <message>
        <source>The wrong unit fits as well as the right one.</source>
        <translation>Le mauvais ensemble se monte aussi bien que le bon.</translation>
    </message>
    <message>
        <source>The zero of the leads, %1, is more than the reading, %2, so the reading cannot be relied on. Check the leads, set the meter to zero, and measure again.</source>
        <translation>Le zéro des cordons, %1, dépasse la lecture, %2 ; on ne peut donc pas s'y fier. Vérifiez les cordons, mettez l'appareil à zéro, et mesurez à nouveau.</translation>
    </message>
    <message>
        <source>There are %1 fasteners to tighten. Count them again.</source>
        <translation>Il y a %1 fixations à serrer. Recomptez-les.</translation>
    </message>
    <message>
        <source>There are %1 legs at each lifting point. Give one or more.</source>
        <translation>Il y a %1 brins à chaque point de levage. Donnez-en un ou plus.</translation>
    </message>
    <message>
        <source>There are at most %1 fasteners; %2 are too many for one ring.</source>
        <translation>Il y a au plus %1 fixations ; %2, c'est trop pour une couronne.</translation>
    </message>
    <message>
        <source>There is an authorisation "%1" already.</source>
        <translation>Il y a déjà une habilitation « %1 ».</translation>
    </message>
    <message>
        <source>There is no authorisation "%1" that could be withdrawn.</source>
        <translation>Il n'y a pas d'habilitation « %1 » qui puisse être retirée.</translation>
    </message>
    <message>
        <source>There is no column "%1". Expected: some of %2.</source>
        <translation>Il n'y a pas de colonne « %1 ». Attendu : certaines de %2.</translation>
    </message>
    <message>
        <source>There is no column after "%1".</source>
        <translation>Il n'y a pas de colonne après « %1 ».</translation>
    </message>
    <message>
        <source>There is no condition "%1".</source>
        <translation>Il n'y a pas de condition « %1 ».</translation>
    </message>
    <message>
        <source>There is no condition "%1"; they are: %2.</source>
        <translation>Il n'y a pas de condition « %1 » ; il y a : %2.</translation>
    </message>
    <message>
        <source>There is no entry %1.</source>
        <translation>Il n'y a pas d'entrée %1.</translation>
    </message>
    <message>
        <source>There is no entry of the kind "%1".</source>
        <translation>Il n'y a pas d'entrée du type « %1 ».</translation>
    </message>
    <message>
        <source>There is no file of that name.</source>
        <translation>Il n'y a pas de fichier de ce nom.</translation>
    </message>
    <message>
        <source>There is no finding %1.</source>
        <translation>Il n'y a pas de constat %1.</translation>
    </message>
    <message>
        <source>There is no folder %1. Choose another.</source>
        <translation>Il n'y a pas de dossier %1. Choisissez-en un autre.</translation>
    </message>
    <message>
        <source>There is no font to write the record with. Install the package fonts-dejavu-core.</source>
        <translation>Il n'y a pas de police pour écrire le dossier. Installez le paquet fonts-dejavu-core.</translation>
    </message>
    <message>
        <source>There is no interface to print a label for. Import the job's list first.</source>
        <translation>Il n'y a aucun raccordement pour lequel imprimer une étiquette. Importez d'abord la liste du chantier.</translation>
    </message>
    <message>
        <source>There is no interface yet</source>
        <translation>Il n'y a pas encore de raccordement</translation>
    </message>
    <message>
        <source>There is no kind "%1". Expected: one of %2.</source>
        <translation>Il n'y a pas de type « %1 ». Attendu : un de %2.</translation>
    </message>
    <message>
        <source>There is no kind of entry "%1".</source>
        <translation>Il n'y a pas de type d'entrée « %1 ».</translation>
    </message>
    <message>
        <source>There is no kind of interface. Install the program again.</source>
        <translation>Il n'y a aucun type de raccordement. Réinstallez le programme.</translation>
    </message>
    <message>
        <source>There is no mark to sign. Place one on the photo.</source>
        <translation>Il n'y a pas de repère à signer. Placez-en un sur la photo.</translation>
    </message>
    <message>
        <source>There is no member "%1" in conditions or gates of hold points.</source>
        <translation>Il n'y a pas de membre « %1 » dans les conditions ou les barrages des points d'arrêt.</translation>
    </message>
    <message>
        <source>There is no picture in it. Copy one, then try again.</source>
        <translation>Il ne contient pas d'image. Copiez-en une, puis réessayez.</translation>
    </message>
    <message>
        <source>There is no picture in the clipboard. Copy one, then paste again.</source>
        <translation>Le presse-papiers ne contient pas d'image. Copiez-en une, puis collez de nouveau.</translation>
    </message>
    <message>
        <source>There is no register, so nobody can be vouched for.</source>
        <translation>Il n'y a pas de répertoire ; on ne peut donc se porter garant de personne.</translation>
    </message>
    <message>
        <source>There is no requirement "%1".</source>
        <translation>Il n'y a pas d'exigence « %1 ».</translation>
    </message>
    <message>
        <source>There is no requirement "%1". Expected: none, or some of %2, separated by |.</source>
        <translation>Il n'y a pas d'exigence « %1 ». Attendu : aucune, ou certaines de %2, séparées par |.</translation>
    </message>
    <message>
        <source>There is no room for a store at %1. Make room, or choose another disk.</source>
        <translation>Il n'y a pas de place pour une base à %1. Faites de la place, ou choisissez un autre disque.</translation>
    </message>
    <message>
        <source>There is no room for the backup at %1; no file was made. Make room, or choose another disk.</source>
        <translation>Il n'y a pas de place pour la sauvegarde à %1 ; aucun fichier n'a été créé. Faites de la place, ou choisissez un autre disque.</translation>
    </message>
    <message>
        <source>There is no room to pack the photos (%1). Make room and export again.</source>
        <translation>Il n'y a pas de place pour empaqueter les photos (%1). Faites de la place et exportez à nouveau.</translation>
    </message>
    <message>
        <source>There is no row to remove.</source>
        <translation>Il n'y a pas de ligne à retirer.</translation>
    </message>
    <message>
        <source>There is no scheme "%1" in the look-up table. Give one of %2.</source>
        <translation>Il n'y a pas de barème « %1 » dans la table. Donnez-en un parmi %2.</translation>
    </message>
    <message>
        <source>There is no sort "%1" of temporary items.</source>
        <translation>Il n'y a pas de sorte « %1 » d'éléments temporaires.</translation>
    </message>
    <message>
        <source>There is no store at %1. Check the name, or make a new store there.</source>
        <translation>Il n'y a pas de base à %1. Vérifiez le nom, ou créez-y une nouvelle base.</translation>
    </message>
    <message>
        <source>There is nothing to draw yet</source>
        <translation>Il n'y a encore rien à dessiner</translation>
    </message>
    <message>
        <source>There is nothing to sign.</source>
        <translation>Il n'y a rien à signer.</translation>
    </message>
    <message>
        <source>There is nothing to strike</source>
        <translation>Il n'y a rien à rayer</translation>
    </message>
    <message>
        <source>There is something else than a file of that name. Choose another name.</source>
        <translation>Il y a sous ce nom autre chose qu'un fichier. Choisissez un autre nom.</translation>
    </message>
    <message>
        <source>There was not enough memory to check the secret. Close other programs and try again.</source>
        <translation>Il n'y avait pas assez de mémoire pour vérifier le secret. Fermez d'autres programmes et réessayez.</translation>
    </message>
    <message>
        <source>There was not enough memory. Nothing was recorded. Close other programs and try again.</source>
        <translation>Il n'y avait pas assez de mémoire. Rien n'a été consigné. Fermez d'autres programmes et réessayez.</translation>
    </message>
    <message>
        <source>There was not enough protected memory for a key. Close other programs and try again.</source>
        <translation>Il n'y avait pas assez de mémoire protégée pour une clé. Fermez d'autres programmes et réessayez.</translation>
    </message>
    <message>
        <source>These entries do not follow one another. Nothing was recorded. This is a fault of the program: please report it.</source>
        <translation>Ces entrées ne se suivent pas. Rien n'a été consigné. C'est un défaut du programme : veuillez le signaler.</translation>
    </message>
    <message>
        <source>This asks less of %1 than before: %2. An inspector who had no hand in it or in its group signs that.</source>
        <translation>Cela demande moins à %1 qu'avant : %2. Un contrôleur qui n'a participé ni à ce raccordement ni à son groupe le signe.</translation>
    </message>
    <message>
        <source>This attachment is not shown. %1</source>
        <translation>Cette pièce jointe n'est pas affichée. %1</translation>
    </message>
    <message>
        <source>This cell may not be empty.</source>
        <translation>Cette cellule ne peut pas être vide.</translation>
    </message>
    <message>
        <source>This computer's clock says %1, which is before the last entry (%2). Set the clock right and sign again.</source>
        <translation>L'horloge de cet ordinateur indique %1, ce qui précède la dernière entrée (%2). Réglez l'horloge et signez à nouveau.</translation>
    </message>
    <message>
        <source>This condition names nothing.</source>
        <translation>Cette condition ne nomme rien.</translation>
    </message>
    <message>
        <source>This disk does not let the store keep its side file, so nothing can be recorded on it safely. Copy the store to a disk of this computer and open it there.</source>
        <translation>Ce disque ne permet pas à la base de garder son fichier annexe, si bien que rien ne peut y être consigné en sûreté. Copiez la base sur un disque de cet ordinateur et ouvrez-la là.</translation>
    </message>
    <message>
        <source>This is a draft of a record and no release. Loose ends: %1.</source>
        <translation>Ceci est un brouillon de dossier et non une remise en service. Points ouverts : %1.</translation>
    </message>
    <message>
        <source>This is a help. The approved maintenance data governs, then the local rules; where they differ from it, follow them.</source>
        <translation>Ceci est une aide. Les données d'entretien approuvées font foi, puis les règles locales ; là où elles diffèrent de cette aide, suivez-les.</translation>
    </message>
    <message>
        <source>This is not UTF-8. Save the file as UTF-8 and try again.</source>
        <translation>Ceci n'est pas de l'UTF-8. Enregistrez le fichier en UTF-8 et réessayez.</translation>
    </message>
    <message>
        <source>This is not an object an entry may hold: %1</source>
        <translation>Ce n'est pas un objet qu'une entrée peut contenir : %1</translation>
    </message>
    <message>
        <source>This job has a tag %1 of its own, of the block %2. Hang a tag of this job instead, and give that one back.</source>
        <translation>Ce chantier a sa propre étiquette %1, de la série %2. Posez plutôt une étiquette de ce chantier, et rendez l'autre.</translation>
    </message>
    <message>
        <source>This job has no hold point "%1".</source>
        <translation>Ce chantier n'a pas de point d'arrêt « %1 ».</translation>
    </message>
    <message>
        <source>This job has no hold points. The lead may set them: one of the standard set, or one of its own.</source>
        <translation>Ce chantier n'a pas de point d'arrêt. Le responsable peut en poser : un du jeu standard, ou un de son choix.</translation>
    </message>
    <message>
        <source>This job has no zone "%1".</source>
        <translation>Ce chantier n'a pas de zone « %1 ».</translation>
    </message>
    <message>
        <source>This job has no zone "%1"; its zones are: %2.</source>
        <translation>Ce chantier n'a pas de zone « %1 » ; ses zones sont : %2.</translation>
    </message>
    <message>
        <source>This job is about the unit %1; the plate is said to read %2. Read it again. If the unit is another one, this is another job.</source>
        <translation>Ce chantier concerne l'ensemble %1 ; la plaque porterait %2. Relisez-la. Si l'ensemble est un autre, c'est un autre chantier.</translation>
    </message>
    <message>
        <source>This job is linked with no other. Link it where one piece of work is kept in several jobs: they share the people who had a hand in an item, and close together.</source>
        <translation>Ce chantier n'est lié à aucun autre. Liez-le là où un même travail est tenu dans plusieurs chantiers : ils partagent les personnes qui ont pris part à un élément, et se closent ensemble.</translation>
    </message>
    <message>
        <source>This job is not linked with %1.</source>
        <translation>Ce chantier n'est pas lié à %1.</translation>
    </message>
    <message>
        <source>This job is open already. Open another job in a ledger of its own.</source>
        <translation>Ce chantier est déjà ouvert. Ouvrez un autre chantier dans son propre registre des entrées.</translation>
    </message>
    <message>
        <source>This job was opened without a scheme of leak classes, so "%1" says nothing. Give a rate.</source>
        <translation>Ce chantier a été ouvert sans barème de classes de fuite ; « %1 » ne dit donc rien. Indiquez un débit.</translation>
    </message>
    <message>
        <source>This job was opened without the single-person re-inspection. Somebody else inspects.</source>
        <translation>Ce chantier a été ouvert sans le nouveau contrôle par la même personne. C'est une autre personne qui contrôle.</translation>
    </message>
    <message>
        <source>This key is or was %1's. Make a new one.</source>
        <translation>Cette clé est ou était celle de %1. Créez-en une nouvelle.</translation>
    </message>
    <message>
        <source>This list cannot be taken</source>
        <translation>Cette liste ne peut pas être importée</translation>
    </message>
    <message>
        <source>This one depends on "%1", but neither the list nor the job has it.</source>
        <translation>Celui-ci dépend de « %1 », mais ni la liste ni le chantier ne l'a.</translation>
    </message>
    <message>
        <source>This photo is attached to %1 already, by entry %2.</source>
        <translation>Cette photo est déjà jointe à %1, par l'entrée %2.</translation>
    </message>
    <message>
        <source>This record leaves nothing due: no follow-up, no deferred finding.</source>
        <translation>Ce dossier ne laisse rien à faire : ni suivi, ni constat reporté.</translation>
    </message>
    <message>
        <source>This register was founded already, by %1.</source>
        <translation>Ce répertoire a déjà été créé, par %1.</translation>
    </message>
    <message>
        <source>This store has a register already.</source>
        <translation>Cette base a déjà un répertoire.</translation>
    </message>
    <message>
        <source>This store has its register already. One store has one register.</source>
        <translation>Cette base a déjà son répertoire. Une base a un seul répertoire.</translation>
    </message>
    <message>
        <source>This store has no job with the ledger %1.</source>
        <translation>Cette base n'a aucun chantier avec le registre des entrées %1.</translation>
    </message>
    <message>
        <source>This store has no job with the ledger %1. Jobs that are linked are kept in one store.</source>
        <translation>Cette base n'a pas de chantier avec le registre des entrées %1. Les chantiers liés sont conservés dans une même base.</translation>
    </message>
    <message>
        <source>This store has no register yet. Found it first.</source>
        <translation>Cette base n'a pas encore de répertoire. Créez-le d'abord.</translation>
    </message>
    <message>
        <source>This store holds no key of %1. They sign where their key is, or an administrator registers a new one for them.</source>
        <translation>Cette base ne contient aucune clé de %1. Cette personne signe là où se trouve sa clé, ou un administrateur en enregistre une nouvelle pour elle.</translation>
    </message>
    <message>
        <source>This store holds no key of them.</source>
        <translation>Cette base ne contient aucune clé de cette personne.</translation>
    </message>
    <message>
        <source>This store is %1 old and was never backed up. Back it up to another disk.</source>
        <translation>Cette base existe depuis %1 et n'a jamais été sauvegardée. Sauvegardez-la sur un autre disque.</translation>
    </message>
    <message>
        <source>This store is empty. Its first entry names the organisation and its first administrator, who then enrols everybody else. The fingerprint of this entry is printed on every record.</source>
        <translation>Cette base est vide. Sa première entrée désigne l'organisme et son premier administrateur, qui enregistre ensuite toutes les autres personnes. L'empreinte de cette entrée est imprimée sur chaque dossier.</translation>
    </message>
    <message>
        <source>This table is empty.</source>
        <translation>Cette table est vide.</translation>
    </message>
    <message>
        <source>This very package was imported before; it has number %1.</source>
        <translation>Ce même paquet a déjà été importé ; il a le numéro %1.</translation>
    </message>
    <message>
        <source>This waits for the hold point %1, which nobody has passed yet.</source>
        <translation>Ceci attend le point d'arrêt %1, que personne n'a encore franchi.</translation>
    </message>
    <message>
        <source>This waits for the hold point %1, which was passed and has to be passed again. %2</source>
        <translation>Ceci attend le point d'arrêt %1, qui a été franchi et doit l'être à nouveau. %2</translation>
    </message>
    <message>
        <source>This was begun at this computer and not signed; the last of it was typed on %1. Take it up where it was left and look through all of it, or discard it.</source>
        <translation>Ceci a été commencé sur cet ordinateur et non signé ; dernière saisie le %1. Reprenez là où c'était resté et relisez le tout, ou abandonnez.</translation>
    </message>
    <message>
        <source>Those are several photos. An entry attaches one: take them one by one, or drop them on the page of photos.</source>
        <translation>Ce sont plusieurs photos. Une entrée en joint une : prenez-les une à une, ou déposez-les sur la page des photos.</translation>
    </message>
    <message>
        <source>Thread series</source>
        <translation>Série de filetage</translation>
    </message>
    <message>
        <source>Thread size</source>
        <translation>Taille du filetage</translation>
    </message>
    <message>
        <source>Threads</source>
        <translation>Filets</translation>
    </message>
    <message>
        <source>Three people who split the bolts among them each believe that the others had the last one.</source>
        <translation>De trois personnes qui se partagent les vis, chacune croit que les autres avaient la dernière.</translation>
    </message>
    <message>
        <source>Tick what you looked at first, one by one.</source>
        <translation>Cochez d'abord ce que vous avez regardé, un par un.</translation>
    </message>
    <message>
        <source>Tighten in the order %1, all of them in each pass.</source>
        <translation>Serrez dans l'ordre %1, toutes à chaque passe.</translation>
    </message>
    <message>
        <source>Tightened out of order, a flange stands askew and leaks.</source>
        <translation>Serrée dans le désordre, une bride se met de travers et fuit.</translation>
    </message>
    <message>
        <source>Tightening</source>
        <translation>Serrage</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Times called in doubt</source>
        <translation>Heures mises en doute</translation>
    </message>
    <message>
        <source>Times in doubt</source>
        <translation>Heures en doute</translation>
    </message>
    <message>
        <source>Tired eyes see what they expect.</source>
        <translation>Des yeux fatigués voient ce qu'ils attendent.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>To</source>
        <comment>a person</comment>
        <translation>À</translation>
    </message>
    <message>
        <source>To be seen: %1</source>
        <translation>À voir : %1</translation>
    </message>
    <message>
        <source>To inspect</source>
        <translation>À contrôler</translation>
    </message>
    <message>
        <source>To show</source>
        <translation>À montrer</translation>
    </message>
    <message>
        <source>To the incoming lead</source>
        <translation>Au responsable entrant</translation>
    </message>
    <message>
        <source>To the job</source>
        <translation>Au chantier</translation>
    </message>
    <message>
        <source>To the nearer edge</source>
        <translation>Jusqu'au bord le plus proche</translation>
    </message>
    <message>
        <source>To whom</source>
        <translation>À qui</translation>
    </message>
    <message>
        <source>Too little starves, too much foams.</source>
        <translation>Trop peu, il manque d'huile ; trop, elle mousse.</translation>
    </message>
    <message>
        <source>Too little works loose, too much breaks.</source>
        <translation>Trop peu serré se desserre, trop serré casse.</translation>
    </message>
    <message>
        <source>Too little: %1 is %2 short of %3. Fill up as the maintenance data says, and look whether any leaks.</source>
        <translation>Trop peu : %1 est de %2 inférieur à %3. Complétez comme le disent les données d'entretien, et regardez si quelque chose fuit.</translation>
    </message>
    <message>
        <source>Too much: %1 is %2 over %3. Draw it off as the maintenance data says, and check that the right liquid was filled in.</source>
        <translation>Trop : %1 est de %2 supérieur à %3. Retirez l'excès comme le disent les données d'entretien, et vérifiez que le bon liquide a été mis.</translation>
    </message>
    <message>
        <source>Tool</source>
        <translation>Outil</translation>
    </message>
    <message>
        <source>Tool %1 clicks at what it is set to, %2; it cannot have shown %3. Correct the one that is wrong.</source>
        <translation>L'outil %1 se déclenche à la valeur réglée, %2 ; il ne peut pas avoir affiché %3. Corrigez celle des deux qui est fausse.</translation>
    </message>
    <message>
        <source>Tool %1 is not in calibration on %2; its calibration holds until: %3.</source>
        <translation>L'étalonnage de l'outil %1 n'est pas valable le %2 ; échéance de l'étalonnage : %3.</translation>
    </message>
    <message>
        <source>Tool %1 is registered with a length of %2; the entry says %3.</source>
        <translation>L'outil %1 est enregistré avec une longueur de %2 ; l'entrée indique %3.</translation>
    </message>
    <message>
        <source>Tool %1 was found out of tolerance (%2) and has not been calibrated since.</source>
        <translation>L'outil %1 a été trouvé hors tolérance (%2) et n'a pas été étalonné depuis.</translation>
    </message>
    <message>
        <source>Tool %1 was withdrawn on %2.</source>
        <translation>L'outil %1 a été retiré le %2.</translation>
    </message>
    <message>
        <source>Tool calibrated</source>
        <translation>Outil étalonné</translation>
    </message>
    <message>
        <source>Tool found out of tolerance</source>
        <translation>Outil trouvé hors tolérance</translation>
    </message>
    <message>
        <source>Tool issued to the job:</source>
        <translation>Outil sorti pour le chantier :</translation>
    </message>
    <message>
        <source>Tool missing</source>
        <translation>Outil manquant</translation>
    </message>
    <message>
        <source>Tool missing:</source>
        <translation>Outil manquant :</translation>
    </message>
    <message>
        <source>Tool registered</source>
        <translation>Outil enregistré</translation>
    </message>
    <message>
        <source>Tool returned:</source>
        <translation>Outil rendu :</translation>
    </message>
    <message>
        <source>Tool withdrawn</source>
        <translation>Outil retiré</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Outils</translation>
    </message>
    <message>
        <source>Tools and tags out</source>
        <translation>Outils et étiquettes sortis</translation>
    </message>
    <message>
        <source>Tools and their calibration</source>
        <translation>Outils et leur étalonnage</translation>
    </message>
    <message>
        <source>Tools counted</source>
        <translation>Outils comptés</translation>
    </message>
    <message>
        <source>Tools issued to the job</source>
        <translation>Outils sortis pour le chantier</translation>
    </message>
    <message>
        <source>Tools that measure</source>
        <translation>Outils de mesure</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Couple de serrage</translation>
    </message>
    <message>
        <source>Torque asked for</source>
        <translation>Couple demandé</translation>
    </message>
    <message>
        <source>Torque at the fastener</source>
        <translation>Couple à la fixation</translation>
    </message>
    <message>
        <source>Torque at the fastener, T</source>
        <translation>Couple à la fixation, T</translation>
    </message>
    <message>
        <source>Torque is missing on fastener %1 of %2.</source>
        <translation>Couple manquant, fixation %1 sur %2.</translation>
    </message>
    <message>
        <source>Torque needs the number of fasteners, the least and the most torque and a unit.</source>
        <translation>Le couple de serrage demande le nombre de fixations, le couple minimal et maximal et une unité.</translation>
    </message>
    <message>
        <source>Torque of nuts by thread</source>
        <translation>Couple des écrous selon le filetage</translation>
    </message>
    <message>
        <source>Torque of this pass, T₁</source>
        <translation>Couple de cette passe, T₁</translation>
    </message>
    <message>
        <source>Torque readings are accepted</source>
        <translation>Les relevés de couple sont acceptés</translation>
    </message>
    <message>
        <source>Torque specified, T₀</source>
        <translation>Couple spécifié, T₀</translation>
    </message>
    <message>
        <source>Torque taken over</source>
        <translation>Couple repris</translation>
    </message>
    <message>
        <source>Torque tool</source>
        <translation>Outil de serrage au couple</translation>
    </message>
    <message>
        <source>Torque unit</source>
        <translation>Unité de couple</translation>
    </message>
    <message>
        <source>Torque, fastener %1</source>
        <translation>Couple, fixation %1</translation>
    </message>
    <message>
        <source>Torque, fastener %1, pass %2</source>
        <translation>Couple, fixation %1, passe %2</translation>
    </message>
    <message>
        <source>Torque, least</source>
        <translation>Couple, minimum</translation>
    </message>
    <message>
        <source>Torque, most</source>
        <translation>Couple, maximum</translation>
    </message>
    <message>
        <source>Torqued</source>
        <translation>Serré au couple</translation>
    </message>
    <message>
        <source>Torqued and inspected anew when one of these is disturbed</source>
        <translation>Resserrés et recontrôlés quand l'un d'eux est perturbé</translation>
    </message>
    <message>
        <source>Torqued at</source>
        <translation>Serré au couple le</translation>
    </message>
    <message>
        <source>Torqued by</source>
        <translation>Serré au couple par</translation>
    </message>
    <message>
        <source>Tr&amp;y the demo …</source>
        <translation>Essa&amp;yer la démonstration …</translation>
    </message>
    <message>
        <source>Transfer code</source>
        <translation>Code de transfert</translation>
    </message>
    <message>
        <source>Try again.</source>
        <translation>Réessayez.</translation>
    </message>
    <message>
        <source>Turn after the torque, least</source>
        <translation>Rotation après le couple, minimum</translation>
    </message>
    <message>
        <source>Turn after the torque, most</source>
        <translation>Rotation après le couple, maximum</translation>
    </message>
    <message>
        <source>Turn the pigtail in, so that nobody is cut by it.</source>
        <translation>Rentrez la queue de torsade, pour que personne ne s'y coupe.</translation>
    </message>
    <message>
        <source>Turned</source>
        <translation>Tourné</translation>
    </message>
    <message>
        <source>Turned after the torque</source>
        <translation>Tourné après le couple</translation>
    </message>
    <message>
        <source>Twin group</source>
        <translation>Groupe de contrôle croisé</translation>
    </message>
    <message>
        <source>Twins verified</source>
        <translation>Contrôle croisé fait</translation>
    </message>
    <message>
        <source>Twists in an inch, least</source>
        <translation>Torsades par pouce, minimum</translation>
    </message>
    <message>
        <source>Twists in an inch, most</source>
        <translation>Torsades par pouce, maximum</translation>
    </message>
    <message>
        <source>Twists of lockwire</source>
        <translation>Torsades du fil à freiner</translation>
    </message>
    <message>
        <source>Two blanks stand between digest and path.</source>
        <translation>Deux blancs se trouvent entre l'empreinte et le chemin.</translation>
    </message>
    <message>
        <source>Two crossed lines both look joined.</source>
        <translation>Deux conduites inversées ont toutes deux l'air raccordées.</translation>
    </message>
    <message>
        <source>Two inspections by one person are one inspection.</source>
        <translation>Deux contrôles par une même personne font un seul contrôle.</translation>
    </message>
    <message>
        <source>Two interfaces that wait for each other could never be restored.</source>
        <translation>Deux raccordements qui s'attendent l'un l'autre ne pourraient jamais être remis en état.</translation>
    </message>
    <message>
        <source>Two interfaces that wait for each other could never be undone.</source>
        <translation>Deux raccordements qui s'attendent l'un l'autre ne pourraient jamais être déposés.</translation>
    </message>
    <message>
        <source>Two kinds of interface share the id or the name "%1".</source>
        <translation>Deux types de raccordement portent le même identifiant ou le même nom « %1 ».</translation>
    </message>
    <message>
        <source>Two legs that hold a stiff load, margin of 20 %: common practice</source>
        <translation>Deux brins qui tiennent une charge rigide, marge de 20 % : usage courant</translation>
    </message>
    <message>
        <source>Two marks of one number send two people to two places.</source>
        <translation>Deux repères du même numéro envoient deux personnes à deux endroits.</translation>
    </message>
    <message>
        <source>Two of one name are one to whoever reads them.</source>
        <translation>Deux choses de même nom n'en font qu'une pour qui les lit.</translation>
    </message>
    <message>
        <source>Two pending handovers leave nobody in charge.</source>
        <translation>Deux passations en attente ne laissent personne responsable.</translation>
    </message>
    <message>
        <source>Two people logging the same disconnection means that one of them undid something else.</source>
        <translation>Deux personnes qui enregistrent le même débranchement : l'une d'elles a défait autre chose.</translation>
    </message>
    <message>
        <source>Two rows have the id "%1".</source>
        <translation>Deux lignes ont l'identifiant « %1 ».</translation>
    </message>
    <message>
        <source>Two tags of one number point at two places.</source>
        <translation>Deux étiquettes de même numéro désignent deux endroits.</translation>
    </message>
    <message>
        <source>Two tags that hang crosswise point at two wrong places.</source>
        <translation>Deux étiquettes posées de façon croisée désignent deux mauvais endroits.</translation>
    </message>
    <message>
        <source>Two weight records of one change leave it open which of them counts.</source>
        <translation>Deux relevés de masse pour un changement ne disent pas lequel compte.</translation>
    </message>
    <message>
        <source>Type the code.</source>
        <translation>Saisissez le code.</translation>
    </message>
    <message>
        <source>Type the number or the hash of the earlier entry first.</source>
        <translation>Saisissez d'abord le numéro ou l'empreinte de l'entrée antérieure.</translation>
    </message>
    <message>
        <source>Under 30° from the horizontal: OSHA guidance on safe sling use</source>
        <translation>Moins de 30° par rapport à l'horizontale : guide OSHA sur l'emploi sûr des élingues</translation>
    </message>
    <message>
        <source>Undisturbed</source>
        <translation>Non perturbé</translation>
    </message>
    <message>
        <source>Undone</source>
        <translation>Déposé</translation>
    </message>
    <message>
        <source>Undone at</source>
        <translation>Déposé le</translation>
    </message>
    <message>
        <source>Undone by</source>
        <translation>Déposé par</translation>
    </message>
    <message>
        <source>Undone by: %1</source>
        <translation>Déposé par : %1</translation>
    </message>
    <message>
        <source>Undone, not listed</source>
        <translation>Déposé, non listé</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Ensemble</translation>
    </message>
    <message>
        <source>Unit</source>
        <comment>of measurement</comment>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Unit half</source>
        <translation>Moitié côté ensemble</translation>
    </message>
    <message>
        <source>Unit is in place</source>
        <translation>L'ensemble est en place</translation>
    </message>
    <message>
        <source>Unit is off</source>
        <translation>L'ensemble est déposé</translation>
    </message>
    <message>
        <source>Unit …</source>
        <translation>Ensemble …</translation>
    </message>
    <message>
        <source>Unit …</source>
        <comment>of measurement</comment>
        <translation>Unité …</translation>
    </message>
    <message>
        <source>Unit, tests</source>
        <translation>Ensemble, essais</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu'à</translation>
    </message>
    <message>
        <source>Until the incoming lead signs, the outgoing one answers.</source>
        <translation>Tant que le responsable entrant n'a pas signé, c'est le sortant qui répond.</translation>
    </message>
    <message>
        <source>Untouched, not applicable, not listed</source>
        <translation>Non touchés, non applicables, non listés</translation>
    </message>
    <message>
        <source>Up to</source>
        <translation>Jusqu'à</translation>
    </message>
    <message>
        <source>Usable from</source>
        <translation>Utilisable à partir de</translation>
    </message>
    <message>
        <source>Usable range</source>
        <translation>Plage utilisable</translation>
    </message>
    <message>
        <source>Usable to</source>
        <translation>Utilisable jusqu'à</translation>
    </message>
    <message>
        <source>Uses</source>
        <translation>Utilisations</translation>
    </message>
    <message>
        <source>VOID</source>
        <translation>CADUC</translation>
    </message>
    <message>
        <source>VOID: %1</source>
        <translation>CADUC : %1</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Values and limits</source>
        <translation>Valeurs et limites</translation>
    </message>
    <message>
        <source>Values read, with their limits</source>
        <translation>Valeurs lues, avec leurs limites</translation>
    </message>
    <message>
        <source>Verified at 100 %</source>
        <translation>Vérifié à 100 %</translation>
    </message>
    <message>
        <source>Verified at 20 %</source>
        <translation>Vérifié à 20 %</translation>
    </message>
    <message>
        <source>Verified at 60 %</source>
        <translation>Vérifié à 60 %</translation>
    </message>
    <message>
        <source>Verified at the lowest mark</source>
        <translation>Vérifié au plus petit repère</translation>
    </message>
    <message>
        <source>Verify a record package</source>
        <translation>Vérifier un paquet de dossier</translation>
    </message>
    <message>
        <source>Verify the store</source>
        <translation>Vérifier la base</translation>
    </message>
    <message>
        <source>Verify the twins</source>
        <translation>Faire le contrôle croisé</translation>
    </message>
    <message>
        <source>Verifying was stopped; nothing was said about the rest.</source>
        <translation>La vérification a été arrêtée ; rien n'a été dit du reste.</translation>
    </message>
    <message>
        <source>Verifying what the record rests on</source>
        <translation>Vérification de ce sur quoi repose le dossier</translation>
    </message>
    <message>
        <source>Waits to be attached: %1</source>
        <translation>En attente d'être jointe : %1</translation>
    </message>
    <message>
        <source>Waits to be attached: %1, and %2</source>
        <translation>En attente d'être jointe : %1, et %2</translation>
    </message>
    <message>
        <source>Walk-round</source>
        <translation>Tour d'inspection</translation>
    </message>
    <message numerus="yes">
        <source>Walk-round: %n to look at</source>
        <translation>
            <numerusform>Tour d'inspection : %n à regarder</numerusform>
            <numerusform>Tour d'inspection : %n à regarder</numerusform>
        </translation>
    </message>
    <message>
        <source>Wall sheet: what is open</source>
        <translation>Feuille d'affichage : ce qui est ouvert</translation>
    </message>
    <message>
        <source>Warning tag</source>
        <translation>Étiquette d'avertissement</translation>
    </message>
    <message>
        <source>Washers stack in the order that the maintenance data shows.</source>
        <translation>Les rondelles sont empilées dans l'ordre que montrent les données d'entretien.</translation>
    </message>
    <message>
        <source>Watch the folder of a camera or phone</source>
        <translation>Surveiller le dossier d'un appareil photo ou d'un téléphone</translation>
    </message>
    <message>
        <source>Watched for</source>
        <translation>Observé pendant</translation>
    </message>
    <message>
        <source>Wear eye protection when lockwire is cut, and catch the ends: they hurt people and find their way into engines.</source>
        <translation>Portez une protection des yeux quand on coupe du fil à freiner, et récupérez les bouts : ils blessent et se retrouvent dans les moteurs.</translation>
    </message>
    <message>
        <source>Weight and balance</source>
        <translation>Masse et centrage</translation>
    </message>
    <message>
        <source>Weight change recorded</source>
        <translation>Changement de masse consigné</translation>
    </message>
    <message>
        <source>Weight of the incoming unit</source>
        <translation>Masse de l'ensemble entrant</translation>
    </message>
    <message>
        <source>Weight of the outgoing unit</source>
        <translation>Masse de l'ensemble sortant</translation>
    </message>
    <message>
        <source>Weight of the rigging</source>
        <translation>Masse des agrès</translation>
    </message>
    <message>
        <source>Weight of the unit</source>
        <translation>Masse de l'ensemble</translation>
    </message>
    <message>
        <source>Wet area, across</source>
        <translation>Surface mouillée, largeur</translation>
    </message>
    <message>
        <source>Wet area, across; 0: dry</source>
        <translation>Surface mouillée, largeur ; 0 : sec</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What a gate let through does not go back behind it.</source>
        <translation>Ce qu'un barrage a laissé passer ne retourne pas derrière lui.</translation>
    </message>
    <message>
        <source>What a tool clicks at and what it shows are two things to check.</source>
        <translation>La valeur à laquelle un outil se déclenche et celle qu'il affiche sont deux choses à vérifier.</translation>
    </message>
    <message>
        <source>What a torque tool may be off</source>
        <translation>Erreur possible d'un outil de serrage</translation>
    </message>
    <message>
        <source>What anybody on the job sees must be easy to say.</source>
        <translation>Ce que n'importe qui voit sur le chantier doit être facile à dire.</translation>
    </message>
    <message>
        <source>What became of the hardware</source>
        <translation>Ce que la visserie est devenue</translation>
    </message>
    <message>
        <source>What became void</source>
        <translation>Ce qui est devenu caduc</translation>
    </message>
    <message>
        <source>What came between</source>
        <translation>Ce qui est venu entre les deux</translation>
    </message>
    <message>
        <source>What came between comes here.</source>
        <translation>Ce qui est venu entre les deux s'affiche ici.</translation>
    </message>
    <message>
        <source>What came between: %1</source>
        <translation>Ce qui est venu entre les deux : %1</translation>
    </message>
    <message>
        <source>What came off is counted from what was on.</source>
        <translation>Ce qui a été déposé se compte à partir de ce qui était posé.</translation>
    </message>
    <message>
        <source>What cannot be shown would stay loose for ever.</source>
        <translation>Ce qui ne peut pas être démontré resterait ouvert à jamais.</translation>
    </message>
    <message>
        <source>What cannot be taken back waits until everything before it is true.</source>
        <translation>Ce qui est irréversible attend que tout ce qui précède soit vrai.</translation>
    </message>
    <message>
        <source>What carries no designations cannot be told apart by them.</source>
        <translation>Ce qui ne porte pas de désignations ne peut pas être distingué par elles.</translation>
    </message>
    <message>
        <source>What changes on the way was changed by nobody.</source>
        <translation>Ce qui change en route n'a été changé par personne.</translation>
    </message>
    <message>
        <source>What drains may be fuel, oil or hydraulic fluid, hot or under pressure. Let it cool, catch it, protect skin and eyes, and keep every source of ignition away, as the approved maintenance data and the local rules say.</source>
        <translation>Ce qui s'écoule peut être du carburant, de l'huile ou du fluide hydraulique, chaud ou sous pression. Laissez refroidir, recueillez, protégez peau et yeux, et tenez à distance toute source d'inflammation, comme le disent les données d'entretien approuvées et les règles locales.</translation>
    </message>
    <message>
        <source>What each is joined to, in the same order</source>
        <translation>À quoi chacune est jointe, dans le même ordre</translation>
    </message>
    <message>
        <source>What goes on next, and what stands in its way</source>
        <translation>Ce qui est reposé ensuite, et ce qui y fait obstacle</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s'est passé</translation>
    </message>
    <message>
        <source>What has to be off before %1 waits itself for %1. Leave out one of them.</source>
        <translation>Ce qui doit être déposé avant %1 attend lui-même %1. Omettez l'un des deux.</translation>
    </message>
    <message>
        <source>What has to be so</source>
        <translation>Ce qui doit être rempli</translation>
    </message>
    <message>
        <source>What has to come out again is not done, however tight it is.</source>
        <translation>Ce qui doit ressortir n'est pas fait, aussi serré soit-il.</translation>
    </message>
    <message>
        <source>What hoist and legs carry, and whether a limit or an inspection speaks against the lift.</source>
        <translation>Ce que portent le palan et les brins, et si une limite ou un contrôle s'oppose au levage.</translation>
    </message>
    <message>
        <source>What is chosen: %1</source>
        <translation>Ce qui est choisi : %1</translation>
    </message>
    <message>
        <source>What is confirmed are the statements of %1, each once, in their order.</source>
        <translation>Ce qui est confirmé, ce sont les déclarations de %1, chacune une fois, dans leur ordre.</translation>
    </message>
    <message>
        <source>What is counted is not believed.</source>
        <translation>Ce qui se compte ne se croit pas sur parole.</translation>
    </message>
    <message>
        <source>What is covered cannot be inspected.</source>
        <translation>Ce qui est recouvert ne peut pas être contrôlé.</translation>
    </message>
    <message>
        <source>What is deferred without end is forgotten.</source>
        <translation>Ce qui est reporté sans fin est oublié.</translation>
    </message>
    <message>
        <source>What is drawn comes here, with every entry about it.</source>
        <translation>Ce qui est tiré s'affiche ici, avec toutes les entrées qui s'y rapportent.</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Ce qui est dû</translation>
    </message>
    <message>
        <source>What is fitted instead comes with a release certificate: name it.</source>
        <translation>Ce qui est monté à la place est accompagné d'un certificat libératoire : indiquez-le.</translation>
    </message>
    <message>
        <source>What is found comes here, job by job.</source>
        <translation>Ce qui est trouvé s'affiche ici, chantier par chantier.</translation>
    </message>
    <message>
        <source>What is half done is finished by those who know how far it came.</source>
        <translation>Ce qui est à moitié fait est terminé par ceux qui savent où cela en est.</translation>
    </message>
    <message>
        <source>What is kept and signed is the photo as it is, SHA-256 %1….</source>
        <translation>Ce qui est conservé et signé est la photo telle quelle, SHA-256 %1….</translation>
    </message>
    <message>
        <source>What is kept and signed is this copy, SHA-256 %1…. The original is not kept and stays where it came from; the entry names it by its SHA-256, %2….</source>
        <translation>Ce qui est conservé et signé est cette copie, SHA-256 %1…. L'original n'est pas conservé et reste là d'où il vient ; l'entrée indique son SHA-256, %2….</translation>
    </message>
    <message>
        <source>What is kept and signed is this copy, SHA-256 %1…. The picture was pasted, so there is no file to name.</source>
        <translation>Ce qui est conservé et signé est cette copie, SHA-256 %1…. L'image a été collée : il n'y a pas de fichier à indiquer.</translation>
    </message>
    <message>
        <source>What is looked for</source>
        <translation>Ce qui est cherché</translation>
    </message>
    <message>
        <source>What is loose</source>
        <translation>Ce qui est ouvert</translation>
    </message>
    <message>
        <source>What is missing first</source>
        <translation>Ce qui manque d'abord</translation>
    </message>
    <message>
        <source>What is missing is looked for before the way to it is closed.</source>
        <translation>On cherche ce qui manque avant que l'accès ne soit refermé.</translation>
    </message>
    <message>
        <source>What is new in it</source>
        <translation>Ce qu'elle apporte de nouveau</translation>
    </message>
    <message>
        <source>What is not on the list is not missed at the end.</source>
        <translation>L'absence de ce qui n'est pas dans la liste ne se remarque pas à la fin.</translation>
    </message>
    <message>
        <source>What is on</source>
        <translation>Ce qui est en place</translation>
    </message>
    <message>
        <source>What is open is counted, not remembered.</source>
        <translation>Ce qui est ouvert se compte, et ne se retient pas de mémoire.</translation>
    </message>
    <message>
        <source>What is out</source>
        <translation>Ce qui est sorti</translation>
    </message>
    <message>
        <source>What is overloaded does not warn before it parts.</source>
        <translation>Ce qui est surchargé ne prévient pas avant de rompre.</translation>
    </message>
    <message>
        <source>What is passed has been set.</source>
        <translation>Ce qui est franchi a d'abord été posé.</translation>
    </message>
    <message>
        <source>What is removed weighs as much as the aircraft, or more. Check the weights and their units.</source>
        <translation>Ce qui est déposé pèse autant que l'aéronef, ou plus. Vérifiez les masses et leurs unités.</translation>
    </message>
    <message>
        <source>What is said twice is cleared once.</source>
        <translation>Ce qui est dit deux fois n'est levé qu'une fois.</translation>
    </message>
    <message>
        <source>What is sent to somebody who knows nothing of it is lost.</source>
        <translation>Ce qui est transmis à quelqu'un qui n'en sait rien est perdu.</translation>
    </message>
    <message>
        <source>What is signed</source>
        <translation>Ce qui est signé</translation>
    </message>
    <message>
        <source>What is still to be tightened will bond otherwise.</source>
        <translation>Ce qui reste à serrer aura une autre métallisation.</translation>
    </message>
    <message>
        <source>What is taken up was put down.</source>
        <translation>Ce que l'on reprend a été laissé.</translation>
    </message>
    <message>
        <source>What is typed as known has to be 64 digits, 0 to 9 and a to f; these are %1.</source>
        <translation>Ce qui est saisi comme connu doit avoir 64 chiffres, 0 à 9 et a à f ; il y en a %1.</translation>
    </message>
    <message>
        <source>What is typed on the pages and not signed is lost. What was signed stands.</source>
        <translation>Ce qui est saisi dans les pages sans être signé sera perdu. Ce qui a été signé reste.</translation>
    </message>
    <message>
        <source>What is typed or marked on the pages and not signed is lost. Photos that wait are not attached, and no folder is watched any more. What was signed stands.</source>
        <translation>Ce qui est saisi ou repéré dans les pages sans être signé sera perdu. Les photos en attente ne seront pas jointes, et aucun dossier ne sera plus surveillé. Ce qui a été signé reste.</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Ce qui est faux</translation>
    </message>
    <message>
        <source>What is wrong, and what was expected</source>
        <translation>Ce qui est faux, et ce qui était attendu</translation>
    </message>
    <message>
        <source>What it carries rubs nowhere between clamps.</source>
        <translation>Ce qu'il porte ne frotte nulle part entre les colliers.</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Ce que c'est</translation>
    </message>
    <message>
        <source>What it isolates is dead, empty or without pressure, and somebody has proven it.</source>
        <translation>Ce qu'elle consigne est hors tension, vide ou sans pression, et quelqu'un l'a prouvé.</translation>
    </message>
    <message>
        <source>What leaves with it</source>
        <translation>Ce qui part avec lui</translation>
    </message>
    <message>
        <source>What made a test fail is open until it is found.</source>
        <translation>Ce qui a fait échouer un essai reste ouvert jusqu'à ce qu'on le trouve.</translation>
    </message>
    <message>
        <source>What may not go on before something was looked at</source>
        <translation>Ce qui ne peut continuer avant que quelque chose ait été vérifié</translation>
    </message>
    <message>
        <source>What nobody released does not fly.</source>
        <translation>Ce que personne n'a remis en service ne vole pas.</translation>
    </message>
    <message>
        <source>What only eyes can tell, each pair of eyes looks at on its own.</source>
        <translation>Ce que seuls les yeux peuvent dire, chaque paire d'yeux le regarde pour elle-même.</translation>
    </message>
    <message>
        <source>What restoring has to show is not changed in passing.</source>
        <translation>Ce que la remise en état doit démontrer ne se change pas en passant.</translation>
    </message>
    <message>
        <source>What stands in the way</source>
        <translation>Ce qui fait obstacle</translation>
    </message>
    <message>
        <source>What still holds it</source>
        <translation>Ce qui le retient encore</translation>
    </message>
    <message>
        <source>What stops closure</source>
        <translation>Ce qui empêche la clôture</translation>
    </message>
    <message>
        <source>What the list did not foresee</source>
        <translation>Ce que la liste n'avait pas prévu</translation>
    </message>
    <message>
        <source>What the next shift has to know</source>
        <translation>Ce que l'équipe suivante doit savoir</translation>
    </message>
    <message>
        <source>What the nut eats up does not clamp.</source>
        <translation>Ce que l'écrou absorbe ne serre pas.</translation>
    </message>
    <message>
        <source>What the signer looks at and confirms</source>
        <translation>Ce que le signataire regarde et confirme</translation>
    </message>
    <message>
        <source>What the signer looks at and confirms, one statement a line</source>
        <translation>Ce que le signataire regarde et confirme, une déclaration par ligne</translation>
    </message>
    <message>
        <source>What the store remembers of the job for the start page is not what its entries say: it was put in. Open the job to see what they say.</source>
        <translation>Ce que la base retient du chantier pour la page d'accueil n'est pas ce que disent ses entrées : cela a été ajouté. Ouvrez le chantier pour voir ce qu'elles disent.</translation>
    </message>
    <message>
        <source>What the tool may give at a setting, and at the points at which it is verified.</source>
        <translation>Ce que l'outil peut donner à un réglage, et aux points où il est vérifié.</translation>
    </message>
    <message>
        <source>What they do</source>
        <translation>Ce qu'elles font</translation>
    </message>
    <message>
        <source>What this record rests on</source>
        <translation>Sur quoi repose ce dossier</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Ce qu'il faut regarder</translation>
    </message>
    <message>
        <source>What to look at, for the chosen mark</source>
        <translation>Ce qu'il faut regarder, pour le repère choisi</translation>
    </message>
    <message>
        <source>What to set the wrench to so that the fastener gets a torque of its band, with or without an adapter.</source>
        <translation>À quoi régler la clé pour que la fixation reçoive un couple dans sa plage, avec ou sans adaptateur.</translation>
    </message>
    <message>
        <source>What two things are called by one name, one of them is left on.</source>
        <translation>De deux choses appelées d'un même nom, l'une reste en place.</translation>
    </message>
    <message>
        <source>What voids one item has to reach the other, and a job voids nothing in another one.</source>
        <translation>Ce qui rend caduc un élément doit atteindre l'autre, et un chantier ne rend rien caduc dans un autre.</translation>
    </message>
    <message>
        <source>What waited at a gate does not become something that need not have waited.</source>
        <translation>Ce qui attendait à un barrage ne devient pas quelque chose qui n'aurait pas eu à attendre.</translation>
    </message>
    <message>
        <source>What waits</source>
        <translation>Ce qui attend</translation>
    </message>
    <message>
        <source>What waits at a gate does not go round it by having no name.</source>
        <translation>Ce qui attend à un barrage ne le contourne pas faute de nom.</translation>
    </message>
    <message>
        <source>What waits for an inspector</source>
        <translation>Ce qui attend un contrôleur</translation>
    </message>
    <message>
        <source>What waits for it</source>
        <translation>Ce qui l'attend</translation>
    </message>
    <message>
        <source>What was begun was typed for the photo %1. Choose that one, or cancel and begin anew.</source>
        <translation>Ce qui a été commencé a été saisi pour la photo %1. Choisissez celle-là, ou annulez et recommencez.</translation>
    </message>
    <message>
        <source>What was counted once does not become less by counting again.</source>
        <translation>Ce qui a été compté une fois ne diminue pas en étant recompté.</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>What was due yesterday is late, not planned.</source>
        <translation>Ce qui était dû hier est en retard, non prévu.</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été constaté</translation>
    </message>
    <message>
        <source>What was found holding on is free when somebody has freed it.</source>
        <translation>Ce qui a été trouvé encore attaché est libre quand quelqu'un l'a libéré.</translation>
    </message>
    <message>
        <source>What was found, and what became of it</source>
        <translation>Ce qui a été constaté, et ce qu'il en est advenu</translation>
    </message>
    <message>
        <source>What was looked at</source>
        <translation>Ce qui a été regardé</translation>
    </message>
    <message>
        <source>What was measured in between has to be found again.</source>
        <translation>Ce qui a été mesuré entre-temps doit pouvoir être retrouvé.</translation>
    </message>
    <message>
        <source>What was not counted as it came off cannot be missed when it goes on.</source>
        <translation>L'absence de ce qui n'a pas été compté à la dépose ne se remarque pas à la repose.</translation>
    </message>
    <message>
        <source>What was put in for the journey must come out before the work.</source>
        <translation>Ce qui a été mis pour le transport doit être enlevé avant le travail.</translation>
    </message>
    <message>
        <source>What was put on for the job and has to come off</source>
        <translation>Ce qui a été mis en place pour le chantier et doit être retiré</translation>
    </message>
    <message>
        <source>What was scanned is not known here</source>
        <translation>Ce qui a été scanné n'est pas connu ici</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>What was seen to be wrong is put right; it does not go away by a word.</source>
        <translation>Ce qui a été vu comme faux est rectifié ; cela ne disparaît pas d'un mot.</translation>
    </message>
    <message>
        <source>What was signed about each interface</source>
        <translation>Ce qui a été signé pour chaque raccordement</translation>
    </message>
    <message>
        <source>What was signed in between has to be found again.</source>
        <translation>Ce qui a été signé entre-temps doit pouvoir être retrouvé.</translation>
    </message>
    <message>
        <source>What was so</source>
        <translation>Ce qui était rempli</translation>
    </message>
    <message>
        <source>What was struck, and what fell with it.</source>
        <translation>Ce qui a été rayé, et ce qui est tombé avec.</translation>
    </message>
    <message>
        <source>What was typed here stays in %1, which cannot be removed (%2). Remove it by hand.</source>
        <translation>Ce qui a été saisi ici reste dans %1, qui ne peut pas être supprimé (%2). Supprimez-le à la main.</translation>
    </message>
    <message>
        <source>What was undone</source>
        <translation>Ce qui a été déposé</translation>
    </message>
    <message>
        <source>What was undone is not made untouched by a word.</source>
        <translation>Ce qui a été défait ne devient pas intact d'un mot.</translation>
    </message>
    <message>
        <source>What was verified could not be remembered in %1 (%2). The next verification begins at the first entry again.</source>
        <translation>Ce qui a été vérifié n'a pas pu être retenu dans %1 (%2). La prochaine vérification recommence à la première entrée.</translation>
    </message>
    <message>
        <source>What was withdrawn stays withdrawn from that moment.</source>
        <translation>Ce qui a été retiré reste retiré à partir de ce moment.</translation>
    </message>
    <message>
        <source>What you sign</source>
        <translation>Ce que vous signez</translation>
    </message>
    <message>
        <source>What you type here is not kept if the program ends: %1 cannot be written (%2). Make room or mend the rights of the folder, or sign before you leave.</source>
        <translation>Ce que vous saisissez ici n'est pas conservé si le programme se termine : %1 ne peut pas être écrit (%2). Faites de la place ou corrigez les droits du dossier, ou signez avant de partir.</translation>
    </message>
    <message>
        <source>What, and where</source>
        <translation>Quoi, et où</translation>
    </message>
    <message>
        <source>Whatever is in front was taken off first; if the log says otherwise, it lacks an entry.</source>
        <translation>Ce qui est devant a été déposé d'abord ; si les entrées disent autre chose, il en manque une.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>When one of %1 and %2 is disturbed, the other is torqued and inspected anew. They stay in one job.</source>
        <translation>Quand l'un de %1 et %2 est perturbé, l'autre est de nouveau serré au couple et contrôlé. Ils restent dans un même chantier.</translation>
    </message>
    <message>
        <source>When the first part was released, the other parts were complete; they stay what they were then.</source>
        <translation>Quand la première partie a été remise en service, les autres étaient complètes ; elles restent ce qu'elles étaient alors.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Where "%1" should begin in the ZIP file stands something else.</source>
        <translation>Là où « %1 » devrait commencer dans le fichier ZIP se trouve autre chose.</translation>
    </message>
    <message>
        <source>Where %1 went was said by %2 in entry %3. If it was wrong, strike that.</source>
        <translation>%2 a déjà dit à l'entrée %3 où est passé %1. Si c'est faux, rayez cette entrée.</translation>
    </message>
    <message>
        <source>Where another inspector is there, it is not unforeseen.</source>
        <translation>Quand un autre contrôleur est là, ce n'est pas imprévu.</translation>
    </message>
    <message>
        <source>Where it was last seen, and where it was looked for</source>
        <translation>Où il a été vu pour la dernière fois, et où il a été cherché</translation>
    </message>
    <message>
        <source>Where record and lift differ, one of them is wrong, and the lift may have been too light.</source>
        <translation>Quand le relevé et le levage diffèrent, l'un des deux est faux, et le moyen de levage était peut-être trop faible.</translation>
    </message>
    <message>
        <source>Where the turn stretches the bolt, the torque alone does not.</source>
        <translation>Là où la rotation étire la vis, le couple seul ne le fait pas.</translation>
    </message>
    <message>
        <source>Where the weight lies decides how the aircraft flies.</source>
        <translation>L'emplacement de la masse décide du comportement de l'avion en vol.</translation>
    </message>
    <message>
        <source>Where the work stands</source>
        <translation>Où en est le travail</translation>
    </message>
    <message>
        <source>Where to keep the demo</source>
        <translation>Où garder la démonstration</translation>
    </message>
    <message>
        <source>Where used</source>
        <translation>Cas d'emploi</translation>
    </message>
    <message>
        <source>Where used: %1 %2</source>
        <translation>Cas d'emploi : %1 %2</translation>
    </message>
    <message>
        <source>Whether a nut may be used again at all, the maintenance data says. Look at it as well: clean, undamaged, and measured before it seats.</source>
        <translation>Les données d'entretien disent si un écrou peut être réutilisé. Examinez-le aussi : propre, intact, et mesuré avant qu'il ne porte.</translation>
    </message>
    <message>
        <source>Whether a nut still locks well enough to be used again.</source>
        <translation>Si un écrou freine encore assez pour être réutilisé.</translation>
    </message>
    <message>
        <source>Whether it is negligible</source>
        <translation>Si c'est négligeable</translation>
    </message>
    <message>
        <source>Whether one reading of a bond, or the worse of two, meets its limit.</source>
        <translation>Si un relevé d'une métallisation, ou le pire de deux, tient sa limite.</translation>
    </message>
    <message>
        <source>Whether what the wrench showed lies in the band, with what the tool may be off.</source>
        <translation>Si ce que la clé indiquait est dans la plage, avec l'erreur possible de l'outil.</translation>
    </message>
    <message>
        <source>Whether what was filled in lies in its band, in any unit of volume.</source>
        <translation>Si ce qui a été rempli est dans sa plage, dans toute unité de volume.</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Lequel</translation>
    </message>
    <message>
        <source>Which fasteners</source>
        <translation>Quelles fixations</translation>
    </message>
    <message>
        <source>Which interface does it show?</source>
        <translation>Quel raccordement montre-t-elle ?</translation>
    </message>
    <message>
        <source>Which list</source>
        <translation>Quelle liste</translation>
    </message>
    <message>
        <source>Which table?</source>
        <translation>Quelle table ?</translation>
    </message>
    <message>
        <source>Which unit</source>
        <translation>Quel ensemble</translation>
    </message>
    <message>
        <source>Which unit goes up is not changed behind its back.</source>
        <translation>On ne change pas en cachette l'ensemble qui monte.</translation>
    </message>
    <message>
        <source>Which way</source>
        <translation>Dans quel sens</translation>
    </message>
    <message>
        <source>While an engine runs, keep clear of intake, propeller and exhaust, and look from where the maintenance data says.</source>
        <translation>Moteur tournant, restez à l'écart de l'entrée d'air, de l'hélice et de l'échappement, et regardez d'où le disent les données d'entretien.</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Qui</translation>
    </message>
    <message>
        <source>Who can clear it</source>
        <translation>Qui peut le lever</translation>
    </message>
    <message>
        <source>Who does the work does not choose what it has to show.</source>
        <translation>Qui fait le travail ne choisit pas ce qu'il doit démontrer.</translation>
    </message>
    <message>
        <source>Who enrolled whom, and on whose word, stands on the record.</source>
        <translation>Qui a inscrit qui, et sur la parole de qui, figure au dossier.</translation>
    </message>
    <message>
        <source>Who had a hand in it cannot be asked of a record that is not there.</source>
        <translation>On ne peut pas demander à un dossier absent qui y a participé.</translation>
    </message>
    <message>
        <source>Who had it</source>
        <translation>Qui l'avait</translation>
    </message>
    <message>
        <source>Who has it</source>
        <translation>Chez qui</translation>
    </message>
    <message>
        <source>Who has to stop at a gate does not lower it.</source>
        <translation>Qui doit s'arrêter à un barrage ne l'abaisse pas.</translation>
    </message>
    <message>
        <source>Who helped counts for independence, so helpers must be people, not free text.</source>
        <translation>Qui a aidé compte pour l'indépendance ; les aides doivent donc être des personnes, non du texte libre.</translation>
    </message>
    <message>
        <source>Who led and who worked on a shift is not changed afterwards.</source>
        <translation>Qui était responsable et qui a travaillé lors d'une vacation ne se change pas après coup.</translation>
    </message>
    <message>
        <source>Who lets the next step begin answers for it.</source>
        <translation>Qui laisse commencer l'étape suivante en répond.</translation>
    </message>
    <message>
        <source>Who signed or is named</source>
        <translation>Qui a signé ou est nommé</translation>
    </message>
    <message>
        <source>Who signed what when</source>
        <translation>Qui a signé quoi, quand</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Qui signe</translation>
    </message>
    <message>
        <source>Who signs?</source>
        <translation>Qui signe ?</translation>
    </message>
    <message>
        <source>Who stopped, when</source>
        <translation>Qui s'est arrêté, quand</translation>
    </message>
    <message>
        <source>Who takes a requirement away does not judge alone what is left of it.</source>
        <translation>Qui supprime une exigence ne juge pas seul de ce qu'il en reste.</translation>
    </message>
    <message>
        <source>Who takes over says how many fasteners were looked at.</source>
        <translation>Qui reprend dit combien de fixations ont été regardées.</translation>
    </message>
    <message>
        <source>Who was authorised and which tool was in date is asked for the moment of the entry.</source>
        <translation>Qui était habilité et quel outil était en cours de validité se demande pour le moment de l'entrée.</translation>
    </message>
    <message>
        <source>Whoever compares the copy with its original has to know which file that is.</source>
        <translation>Qui compare la copie à son original doit savoir de quel fichier il s'agit.</translation>
    </message>
    <message>
        <source>Whoever could cut a link could inspect their own work behind it.</source>
        <translation>Qui pourrait rompre un lien pourrait contrôler derrière lui son propre travail.</translation>
    </message>
    <message>
        <source>Whoever crossed them believes that they are right.</source>
        <translation>Qui les a inversées croit avoir raison.</translation>
    </message>
    <message>
        <source>Whoever flies it has to know what is still to be done.</source>
        <translation>Qui pilote l'avion doit savoir ce qui reste à faire.</translation>
    </message>
    <message>
        <source>Whoever made the damage does not judge it.</source>
        <translation>Qui a fait le dommage n'en juge pas.</translation>
    </message>
    <message>
        <source>Whoever opens a job answers for it until it is handed over.</source>
        <translation>Qui ouvre un chantier en répond jusqu'à la passation.</translation>
    </message>
    <message>
        <source>Whoever stops their own key can sign nothing any more. Replace it instead, and say since when its signatures are in doubt.</source>
        <translation>Qui bloque sa propre clé ne peut plus rien signer. Remplacez-la plutôt, et indiquez depuis quand ses signatures sont en doute.</translation>
    </message>
    <message>
        <source>Whoever undid something could say that they did not.</source>
        <translation>Qui a défait quelque chose pourrait dire qu'il ne l'a pas fait.</translation>
    </message>
    <message>
        <source>Whoever wished an inspection back could say that nothing had happened.</source>
        <translation>Qui voudrait ne pas avoir été contrôlé pourrait dire que rien ne s'est passé.</translation>
    </message>
    <message>
        <source>Whoever works behind an isolation applies their own, with their name on it.</source>
        <translation>Quiconque travaille derrière une consignation pose la sienne, à son nom.</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>À qui</translation>
    </message>
    <message>
        <source>Whose entry?</source>
        <translation>L'entrée de qui ?</translation>
    </message>
    <message>
        <source>Whose hands were there stays known, unless it never was so.</source>
        <translation>Les mains qui y étaient restent connues, à moins que cela n'ait jamais été vrai.</translation>
    </message>
    <message>
        <source>Whose hands were there, and what was counted, stays. A name or a number that was mistyped goes first to somebody with authority to overrule, who strikes it as never so (More details).</source>
        <translation>Qui y a mis la main, et ce qui a été compté, reste. Un nom ou un nombre mal saisi passe d'abord par quelqu'un habilité à passer outre, qui le raye comme n'ayant jamais été (Plus de détails).</translation>
    </message>
    <message>
        <source>Why it does not move</source>
        <translation>Pourquoi il n'est pas transféré</translation>
    </message>
    <message>
        <source>Why it is refused</source>
        <translation>Pourquoi c'est refusé</translation>
    </message>
    <message>
        <source>Why it is set or changed</source>
        <translation>Pourquoi c'est posé ou modifié</translation>
    </message>
    <message>
        <source>Why out of order</source>
        <translation>Pourquoi hors de l'ordre</translation>
    </message>
    <message>
        <source>Why the change is given up</source>
        <translation>Pourquoi le changement est abandonné</translation>
    </message>
    <message>
        <source>Why the clock is not trusted</source>
        <translation>Pourquoi l'horloge n'est pas fiable</translation>
    </message>
    <message>
        <source>Why the list is corrected, and by which data</source>
        <translation>Pourquoi la liste est corrigée, et d'après quelles données</translation>
    </message>
    <message>
        <source>Why this could not be foreseen</source>
        <translation>Pourquoi cela ne pouvait être prévu</translation>
    </message>
    <message>
        <source>Why, or what was seen</source>
        <translation>Pourquoi, ou ce qui a été vu</translation>
    </message>
    <message>
        <source>Why, where it is another person's</source>
        <translation>Pourquoi, lorsqu'il est à une autre personne</translation>
    </message>
    <message>
        <source>Wire and pins are new each time; how they are fitted the approved maintenance data and the local rules say.</source>
        <translation>Le fil et les goupilles sont neufs à chaque fois ; les données d'entretien approuvées et les règles locales disent comment ils se posent.</translation>
    </message>
    <message>
        <source>Wire diameter from</source>
        <translation>Diamètre du fil à partir de</translation>
    </message>
    <message>
        <source>Wire diameter to</source>
        <translation>Diamètre du fil jusqu'à</translation>
    </message>
    <message>
        <source>Wire diameter, least</source>
        <translation>Diamètre du fil, minimum</translation>
    </message>
    <message>
        <source>Wire is new each time, and pulls in the direction of tightening.</source>
        <translation>Le fil est neuf à chaque fois, et tire dans le sens du serrage.</translation>
    </message>
    <message>
        <source>With 1 lifting point there is no length between two, and the load hangs with its centre of gravity below that point. Empty both fields, or give 2 points.</source>
        <translation>Avec 1 point de levage il n'y a pas de distance entre deux, et la charge pend avec son centre de gravité sous ce point. Videz les deux champs, ou donnez 2 points.</translation>
    </message>
    <message>
        <source>With an adapter the wrench does not show the torque at the fastener. Say what it was set to.</source>
        <translation>Avec un adaptateur, la clé n'indique pas le couple à la fixation. Indiquez à quelle valeur elle a été réglée.</translation>
    </message>
    <message>
        <source>With an odd number none lies opposite: each is followed by the nearer of the two that face it.</source>
        <translation>Avec un nombre impair, aucune n'est à l'opposé : chacune est suivie de la plus proche des deux qui lui font face.</translation>
    </message>
    <message>
        <source>With interfaces chosen in the list</source>
        <translation>Avec des raccordements choisis dans la liste</translation>
    </message>
    <message numerus="yes">
        <source>With the %n standard hold points</source>
        <translation>
            <numerusform>Avec le %n point d'arrêt standard</numerusform>
            <numerusform>Avec les %n points d'arrêt standard</numerusform>
        </translation>
    </message>
    <message>
        <source>With the drag of the nut, d</source>
        <translation>Avec le couple d'autofreinage de l'écrou, d</translation>
    </message>
    <message>
        <source>With the tag on</source>
        <translation>Avec l'étiquette de</translation>
    </message>
    <message>
        <source>Withdraw the authorisation</source>
        <translation>Retirer l'habilitation</translation>
    </message>
    <message>
        <source>Withdraw the authorisation …</source>
        <translation>Retirer l'habilitation …</translation>
    </message>
    <message>
        <source>Withdraw the tool</source>
        <translation>Retirer l'outil</translation>
    </message>
    <message>
        <source>Withdraw the tool …</source>
        <translation>Retirer l'outil …</translation>
    </message>
    <message>
        <source>Within seconds</source>
        <translation>En quelques secondes</translation>
    </message>
    <message>
        <source>Without a root nobody can vouch for anybody.</source>
        <translation>Sans racine, personne ne peut se porter garant de quiconque.</translation>
    </message>
    <message>
        <source>Without entry %1 the list asks less of %2: %3. An inspector who had no hand in it strikes it.</source>
        <translation>Sans l'entrée %1, la liste demande moins à %2 : %3. Elle est rayée par un contrôleur qui n'y a pas participé.</translation>
    </message>
    <message>
        <source>Without such a station an administrator registers a new key for you. What you signed stays valid.</source>
        <translation>Sans un tel poste, un administrateur enregistre une nouvelle clé pour vous. Ce que vous avez signé reste valable.</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Mots à chercher</translation>
    </message>
    <message>
        <source>Words to look for in the manual</source>
        <translation>Mots à chercher dans le manuel</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Travail</translation>
    </message>
    <message>
        <source>Work by this list has begun.</source>
        <translation>Le travail d'après cette liste a commencé.</translation>
    </message>
    <message>
        <source>Work is done by people authorised for it on that day.</source>
        <translation>Le travail est fait par des personnes habilitées pour cela ce jour-là.</translation>
    </message>
    <message>
        <source>Work on</source>
        <translation>Travail sur</translation>
    </message>
    <message>
        <source>Work order</source>
        <translation>Ordre de travail</translation>
    </message>
    <message>
        <source>Work order %1  ·  %2  ·  %3</source>
        <translation>Ordre de travail %1  ·  %2  ·  %3</translation>
    </message>
    <message>
        <source>Work order %1, %2, %3: %4</source>
        <translation>Ordre de travail %1, %2, %3 : %4</translation>
    </message>
    <message>
        <source>Work order %1, %2, %3: entries %4. Ledger %5</source>
        <translation>Ordre de travail %1, %2, %3 : entrées %4. Registre des entrées %5</translation>
    </message>
    <message>
        <source>Work order %1: %2.</source>
        <translation>Ordre de travail %1 : %2.</translation>
    </message>
    <message>
        <source>Work that was interrupted is finished before it is inspected.</source>
        <translation>Un travail interrompu est terminé avant d'être contrôlé.</translation>
    </message>
    <message>
        <source>Worked out</source>
        <translation>Calculé</translation>
    </message>
    <message>
        <source>Worked out outside any job, printed %1.</source>
        <translation>Calculé hors de tout chantier, imprimé le %1.</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Calcul</translation>
    </message>
    <message>
        <source>Working load limit of one leg, on its tag</source>
        <translation>Charge maximale d'utilisation d'un brin, sur son étiquette</translation>
    </message>
    <message>
        <source>Working load limit on the hoist's plate</source>
        <translation>Charge maximale d'utilisation sur la plaque du palan</translation>
    </message>
    <message>
        <source>Working:</source>
        <translation>Calcul :</translation>
    </message>
    <message>
        <source>Worst class allowed</source>
        <translation>Plus mauvaise classe permise</translation>
    </message>
    <message>
        <source>Worst class allowed; none: dry</source>
        <translation>Pire classe admise ; aucune : sec</translation>
    </message>
    <message>
        <source>Wrench length, grip to drive</source>
        <translation>Longueur de la clé, poignée à carré</translation>
    </message>
    <message>
        <source>Wrench set to</source>
        <translation>Clé réglée à</translation>
    </message>
    <message>
        <source>Wrench usable from</source>
        <translation>Clé utilisable à partir de</translation>
    </message>
    <message>
        <source>Wrench usable to</source>
        <translation>Clé utilisable jusqu'à</translation>
    </message>
    <message>
        <source>Writing the record</source>
        <translation>Écriture du dossier</translation>
    </message>
    <message>
        <source>Wrong PINs since the last right one: %1, the last on %2.</source>
        <translation>PIN faux depuis le dernier juste : %1, le dernier le %2.</translation>
    </message>
    <message>
        <source>Y = %1</source>
        <translation>Y = %1</translation>
    </message>
    <message>
        <source>You may not read %1. Ask its owner, or whoever looks after this computer.</source>
        <translation>Vous n'avez pas le droit de lire %1. Demandez à son propriétaire, ou à qui s'occupe de cet ordinateur.</translation>
    </message>
    <message>
        <source>You may not write to the folder of %1, which recording needs. Open the store for reading, or copy it to a folder of your own.</source>
        <translation>Vous n'avez pas le droit d'écrire à l'emplacement de %1, ce que demande la consignation. Ouvrez la base en lecture, ou copiez-la à un emplacement qui vous appartient.</translation>
    </message>
    <message>
        <source>You may read %1 but not write to it. Open it for reading, or ask its owner.</source>
        <translation>Vous pouvez lire %1 mais pas y écrire. Ouvrez-la en lecture, ou demandez à son propriétaire.</translation>
    </message>
    <message>
        <source>Your PIN opens your key once more; a copy is left in the store, sealed with your PIN and a code.</source>
        <translation>Votre PIN ouvre encore une fois votre clé ; une copie reste dans la base, scellée par votre PIN et un code.</translation>
    </message>
    <message>
        <source>Your id (staff number, stamp)</source>
        <translation>Votre identifiant (matricule, tampon)</translation>
    </message>
    <message>
        <source>Your key stays the same; only the PIN that opens it changes.</source>
        <translation>Votre clé reste la même ; seul change le PIN qui l'ouvre.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Votre nom</translation>
    </message>
    <message>
        <source>Your old PIN opens your key once more; from then on the new one does.</source>
        <translation>Votre ancien PIN ouvre encore une fois votre clé ; ensuite, c'est le nouveau.</translation>
    </message>
    <message>
        <source>Zero of the leads, as recorded</source>
        <translation>Zéro des cordons, tel que consigné</translation>
    </message>
    <message>
        <source>Zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>Zone or person beside the whole job</source>
        <translation>Zone ou personne à côté du chantier entier</translation>
    </message>
    <message>
        <source>Zone: %1</source>
        <translation>Zone : %1</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zones</translation>
    </message>
    <message>
        <source>Zones, as divided at the opening</source>
        <translation>Zones, telles que divisées à l'ouverture</translation>
    </message>
    <message>
        <source>a = %1° from the horizontal</source>
        <translation>a = %1° par rapport à l'horizontale</translation>
    </message>
    <message>
        <source>a SHA-256 digest in 64 lower-case hex digits</source>
        <translation>une empreinte SHA-256 de 64 chiffres hexadécimaux en minuscules</translation>
    </message>
    <message>
        <source>a current</source>
        <translation>un courant</translation>
    </message>
    <message>
        <source>a date such as 2026-03-02</source>
        <translation>une date telle que 2026-03-02</translation>
    </message>
    <message>
        <source>a decimal point; this number has a decimal comma</source>
        <translation>un point décimal ; ce nombre a une virgule décimale</translation>
    </message>
    <message>
        <source>a decimal with a point, such as 12.5, of at most 18 digits</source>
        <translation>un nombre décimal avec un point, tel que 12.5, d'au plus 18 chiffres</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>une longueur</translation>
    </message>
    <message>
        <source>a list of interfaces' ids</source>
        <translation>une liste d'identifiants de raccordements</translation>
    </message>
    <message>
        <source>a list of objects</source>
        <translation>une liste d'objets</translation>
    </message>
    <message>
        <source>a list of people's ids</source>
        <translation>une liste d'identifiants de personnes</translation>
    </message>
    <message>
        <source>a list of texts</source>
        <translation>une liste de textes</translation>
    </message>
    <message>
        <source>a list of texts, each of them looked at and confirmed</source>
        <translation>une liste de textes, chacun regardé et confirmé</translation>
    </message>
    <message>
        <source>a member of the crew or an inspector</source>
        <translation>un membre de l'équipe ou un contrôleur</translation>
    </message>
    <message>
        <source>a member of the crew; or the lead, by a handover that names the new crew</source>
        <translation>un membre de l'équipe ; ou le responsable du chantier, par une passation qui nomme la nouvelle équipe</translation>
    </message>
    <message>
        <source>a moment of weight</source>
        <translation>un moment de masse</translation>
    </message>
    <message>
        <source>a number of drops in a time</source>
        <translation>un nombre de gouttes dans un temps</translation>
    </message>
    <message>
        <source>a number with a point, such as 12.5, not below 0</source>
        <translation>un nombre avec un point, par exemple 12.5, non inférieur à 0</translation>
    </message>
    <message>
        <source>a person with authority to overrule</source>
        <translation>une personne habilitée à passer outre</translation>
    </message>
    <message>
        <source>a person with release authority, by closing this job; and whoever opens a follow-on job</source>
        <translation>une personne habilitée à prononcer la remise en service, en clôturant ce chantier ; et la personne qui ouvre un chantier de suite</translation>
    </message>
    <message>
        <source>a person's id</source>
        <translation>l'identifiant d'une personne</translation>
    </message>
    <message>
        <source>a rate of flow</source>
        <translation>un débit</translation>
    </message>
    <message>
        <source>a requirement (%1)</source>
        <translation>une exigence (%1)</translation>
    </message>
    <message>
        <source>a resistance</source>
        <translation>une résistance</translation>
    </message>
    <message>
        <source>a sort of temporary items that the program has</source>
        <translation>une sorte d'éléments temporaires que le programme a</translation>
    </message>
    <message>
        <source>a technician of that job</source>
        <translation>un technicien de ce chantier-là</translation>
    </message>
    <message>
        <source>a technician of that job, by sending it</source>
        <translation>un technicien de ce chantier-là, en le transmettant</translation>
    </message>
    <message>
        <source>a technician of the crew</source>
        <translation>un technicien de l'équipe</translation>
    </message>
    <message>
        <source>a technician of the crew, by taking it up</source>
        <translation>un technicien de l'équipe, en le reprenant</translation>
    </message>
    <message>
        <source>a technician of the crew, or an inspector</source>
        <translation>un technicien de l'équipe, ou un contrôleur</translation>
    </message>
    <message>
        <source>a technician of the crew; or a person with authority to overrule</source>
        <translation>un technicien de l'équipe ; ou une personne habilitée à passer outre</translation>
    </message>
    <message>
        <source>a technician, with a fitting tool</source>
        <translation>un technicien, avec un outil adapté</translation>
    </message>
    <message>
        <source>a technician, with a tag of this job; or the lead, by issuing more</source>
        <translation>un technicien, avec une étiquette de ce chantier ; ou le responsable du chantier, en en sortant d'autres</translation>
    </message>
    <message>
        <source>a technician; or an inspector</source>
        <translation>un technicien ; ou un contrôleur</translation>
    </message>
    <message>
        <source>a text that is not blank</source>
        <translation>un texte non vide</translation>
    </message>
    <message>
        <source>a text without blanks at its ends</source>
        <translation>un texte sans blancs à ses extrémités</translation>
    </message>
    <message>
        <source>a time such as 2026-03-02T08:14:31.120Z</source>
        <translation>une heure telle que 2026-03-02T08:14:31.120Z</translation>
    </message>
    <message>
        <source>a tool's id</source>
        <translation>l'identifiant d'un outil</translation>
    </message>
    <message>
        <source>a torque</source>
        <translation>un couple</translation>
    </message>
    <message>
        <source>a voltage</source>
        <translation>une tension</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>un volume</translation>
    </message>
    <message>
        <source>a weight</source>
        <translation>une masse</translation>
    </message>
    <message>
        <source>a whole number, 0 or more</source>
        <translation>un nombre entier, 0 ou plus</translation>
    </message>
    <message>
        <source>a whole number, such as 4</source>
        <translation>un nombre entier, par exemple 4</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>accepté</translation>
    </message>
    <message>
        <source>accepted BY ONE WHO HAD A HAND IN IT</source>
        <translation>accepté PAR QUELQU'UN QUI Y A PRIS PART</translation>
    </message>
    <message>
        <source>accepted by %1</source>
        <translation>acceptée par %1</translation>
    </message>
    <message>
        <source>accessories_placed</source>
        <translation>accessoires placés</translation>
    </message>
    <message>
        <source>accessory %1 not placed (%2)</source>
        <translation>accessoire %1 non attribué (%2)</translation>
    </message>
    <message>
        <source>accessory, not placed</source>
        <translation>accessoire, non attribué</translation>
    </message>
    <message>
        <source>added</source>
        <translation>ajouté</translation>
    </message>
    <message>
        <source>administer</source>
        <translation>administrer</translation>
    </message>
    <message>
        <source>after</source>
        <translation>après</translation>
    </message>
    <message>
        <source>aircraft</source>
        <translation>aéronef</translation>
    </message>
    <message>
        <source>all</source>
        <translation>tous</translation>
    </message>
    <message>
        <source>all aircraft types</source>
        <translation>tous les types d'aéronef</translation>
    </message>
    <message>
        <source>all kinds</source>
        <translation>tous les types</translation>
    </message>
    <message>
        <source>allowed</source>
        <translation>permis</translation>
    </message>
    <message>
        <source>allowed where nobody else is there, %1 minutes after the work</source>
        <translation>permis quand personne d'autre n'est là, %1 minutes après le travail</translation>
    </message>
    <message>
        <source>always</source>
        <translation>toujours</translation>
    </message>
    <message>
        <source>an Ed25519 public key in 64 lower-case hex digits</source>
        <translation>une clé publique Ed25519 de 64 chiffres hexadécimaux en minuscules</translation>
    </message>
    <message>
        <source>an administrator of the register</source>
        <translation>un administrateur du répertoire</translation>
    </message>
    <message>
        <source>an administrator of the register; or take another tool</source>
        <translation>un administrateur du répertoire ; ou prenez un autre outil</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>un angle</translation>
    </message>
    <message>
        <source>an authorised inspector</source>
        <translation>un contrôleur habilité</translation>
    </message>
    <message>
        <source>an authorised inspector who had no hand in it</source>
        <translation>un contrôleur habilité qui n'y a pas participé</translation>
    </message>
    <message>
        <source>an authorised inspector, by closing the finding</source>
        <translation>un contrôleur habilité, en clôturant le constat</translation>
    </message>
    <message>
        <source>an authorised inspector, by inspecting what is under it</source>
        <translation>un contrôleur habilité, en contrôlant ce qui est dessous</translation>
    </message>
    <message>
        <source>an inspection</source>
        <translation>un contrôle</translation>
    </message>
    <message>
        <source>an inspector, by disposing of the finding</source>
        <translation>un contrôleur, en statuant sur le constat</translation>
    </message>
    <message>
        <source>an inspector, once it is found</source>
        <translation>un contrôleur, une fois l'obturateur retrouvé</translation>
    </message>
    <message>
        <source>an interface's id</source>
        <translation>l'identifiant d'un raccordement</translation>
    </message>
    <message>
        <source>an object in braces</source>
        <translation>un objet entre accolades</translation>
    </message>
    <message>
        <source>an object in it has more than %1 members</source>
        <translation>un objet qu'il contient a plus de %1 membres</translation>
    </message>
    <message>
        <source>and %1 more, listed by remate-cli doubtful</source>
        <translation>et %1 de plus, listées par remate-cli doubtful</translation>
    </message>
    <message>
        <source>and %1 more; see the program</source>
        <translation>et %1 de plus ; voir le programme</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
    <message>
        <source>another authorised inspector</source>
        <translation>un autre contrôleur habilité</translation>
    </message>
    <message>
        <source>another technician or an inspector</source>
        <translation>un autre technicien ou un contrôleur</translation>
    </message>
    <message>
        <source>anybody of the job</source>
        <translation>n'importe quelle personne du chantier</translation>
    </message>
    <message>
        <source>anywhere in the band</source>
        <translation>n'importe où dans la plage</translation>
    </message>
    <message>
        <source>applied</source>
        <translation>mis en place</translation>
    </message>
    <message>
        <source>arm %1 + %2 at %3</source>
        <translation>bras %1 + %2 à %3</translation>
    </message>
    <message>
        <source>as found: %1</source>
        <translation>état constaté : %1</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>demandé</translation>
    </message>
    <message>
        <source>at least one thing that an inspector looks at</source>
        <translation>au moins une chose que regarde un contrôleur</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>au plus</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>au plus %1</translation>
    </message>
    <message>
        <source>authority to %1</source>
        <translation>habilitation : %1</translation>
    </message>
    <message>
        <source>bag-info.txt lacks a label that a package has, or is of a format that this program does not know.</source>
        <translation>Il manque à bag-info.txt un libellé que possède un paquet, ou il est d'un format que ce programme ne connaît pas.</translation>
    </message>
    <message>
        <source>bag-info.txt says something else than the entries do.</source>
        <translation>bag-info.txt dit autre chose que les entrées.</translation>
    </message>
    <message>
        <source>bagit.txt is not that of BagIt 1.0.</source>
        <translation>bagit.txt n'est pas celui de BagIt 1.0.</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>lot</translation>
    </message>
    <message>
        <source>before</source>
        <translation>avant</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>obturateur</translation>
    </message>
    <message>
        <source>blanks fitted: %1</source>
        <translation>obturateurs posés : %1</translation>
    </message>
    <message>
        <source>blanks fitted: %1 to the aircraft's end, %2 to the unit's</source>
        <translation>obturateurs posés : %1 côté avion, %2 côté ensemble</translation>
    </message>
    <message>
        <source>blanks removed: %1</source>
        <translation>obturateurs retirés : %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>came off: %1</source>
        <translation>déposé : %1</translation>
    </message>
    <message>
        <source>cannot be seen from here</source>
        <translation>n'est pas visible d'ici</translation>
    </message>
    <message>
        <source>cannot be worked out from what was entered</source>
        <translation>ne peut pas être calculé d'après ce qui a été saisi</translation>
    </message>
    <message>
        <source>cannot verify</source>
        <translation>invérifiable</translation>
    </message>
    <message>
        <source>carries %1</source>
        <translation>porte %1</translation>
    </message>
    <message>
        <source>certificate</source>
        <translation>certificat</translation>
    </message>
    <message>
        <source>certificate %1; %2 shipping blanks; %3</source>
        <translation>certificat %1 ; %2 obturateurs de transport ; %3</translation>
    </message>
    <message>
        <source>clear</source>
        <comment>off</comment>
        <translation>déconsigner</translation>
    </message>
    <message>
        <source>cleared</source>
        <comment>off_done</comment>
        <translation>déconsigné</translation>
    </message>
    <message>
        <source>close</source>
        <comment>on</comment>
        <translation>fermer</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>clos</translation>
    </message>
    <message>
        <source>closed</source>
        <comment>on_done</comment>
        <translation>fermé</translation>
    </message>
    <message>
        <source>closed on %1</source>
        <translation>clos le %1</translation>
    </message>
    <message>
        <source>compared</source>
        <translation>compared</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>confirmé</translation>
    </message>
    <message>
        <source>confirmed free</source>
        <translation>confirmé libre</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>compte</translation>
    </message>
    <message>
        <source>critical</source>
        <translation>critique</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <translation>d MMM yyyy, HH:mm</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>endommagé</translation>
    </message>
    <message>
        <source>deferred</source>
        <translation>reporté</translation>
    </message>
    <message>
        <source>details given in entry %1</source>
        <translation>détails donnés à l'entrée %1</translation>
    </message>
    <message>
        <source>details to follow</source>
        <translation>détails à suivre</translation>
    </message>
    <message>
        <source>difference not known</source>
        <translation>différence non connue</translation>
    </message>
    <message>
        <source>disconnect</source>
        <comment>off</comment>
        <translation>débrancher</translation>
    </message>
    <message>
        <source>disconnected</source>
        <translation>débranché</translation>
    </message>
    <message>
        <source>disconnected</source>
        <comment>off_done</comment>
        <translation>débranché</translation>
    </message>
    <message>
        <source>disconnected and confirmed free by a second person</source>
        <translation>débranché et confirmé libre par une deuxième personne</translation>
    </message>
    <message>
        <source>disturbed after it was restored</source>
        <translation>perturbé après avoir été remis en état</translation>
    </message>
    <message>
        <source>does not name this job yet</source>
        <translation>ne nomme pas encore ce chantier</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>done, %1</source>
        <translation>fait, %1</translation>
    </message>
    <message>
        <source>drag %1</source>
        <translation>couple d'autofreinage %1</translation>
    </message>
    <message>
        <source>drag is added</source>
        <translation>le couple d'autofreinage est ajouté</translation>
    </message>
    <message>
        <source>drag is included</source>
        <translation>le couple d'autofreinage est compris</translation>
    </message>
    <message>
        <source>drag of a used nut at least %1</source>
        <translation>couple d'autofreinage d'un écrou réutilisé au moins %1</translation>
    </message>
    <message>
        <source>drips or pools</source>
        <translation>goutte ou forme une flaque</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>sec</translation>
    </message>
    <message>
        <source>due</source>
        <translation>dû</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>échéance %1</translation>
    </message>
    <message>
        <source>each leg %1</source>
        <translation>chaque brin %1</translation>
    </message>
    <message>
        <source>each requirement once, not "%1" twice</source>
        <translation>chaque exigence une fois, et non « %1 » deux fois</translation>
    </message>
    <message>
        <source>entries %1 to %2: %3; %4 (%5)</source>
        <translation>entrées %1 à %2 : %3 ; %4 (%5)</translation>
    </message>
    <message>
        <source>entry %1, %2</source>
        <translation>entrée %1, %2</translation>
    </message>
    <message>
        <source>even</source>
        <translation>équilibré</translation>
    </message>
    <message>
        <source>every %1</source>
        <translation>tous les %1</translation>
    </message>
    <message>
        <source>every interface</source>
        <translation>chaque raccordement</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>tout</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>échoué</translation>
    </message>
    <message>
        <source>fastener %1</source>
        <translation>fixation %1</translation>
    </message>
    <message>
        <source>fastener %1 in pass %2</source>
        <translation>fixation %1 en passe %2</translation>
    </message>
    <message>
        <source>fasteners</source>
        <translation>fixations</translation>
    </message>
    <message>
        <source>fasteners %1</source>
        <translation>fixations %1</translation>
    </message>
    <message>
        <source>fell with what it rested on</source>
        <translation>tombée avec ce sur quoi elle reposait</translation>
    </message>
    <message>
        <source>finding %1</source>
        <translation>constat %1</translation>
    </message>
    <message>
        <source>finding %1 open (%2)</source>
        <translation>constat %1 ouvert (%2)</translation>
    </message>
    <message>
        <source>finding %1: %2</source>
        <translation>constat %1 : %2</translation>
    </message>
    <message>
        <source>finding, open</source>
        <translation>constat, ouvert</translation>
    </message>
    <message>
        <source>findings: %1, tools out: %2</source>
        <translation>constats : %1, outils sortis : %2</translation>
    </message>
    <message>
        <source>findings_closed</source>
        <translation>constats clos</translation>
    </message>
    <message>
        <source>fit</source>
        <comment>on</comment>
        <translation>poser</translation>
    </message>
    <message>
        <source>fitted</source>
        <comment>on_done</comment>
        <translation>posé</translation>
    </message>
    <message>
        <source>found open, and logged by nobody</source>
        <translation>trouvé ouvert, et consigné par personne</translation>
    </message>
    <message>
        <source>found still attached on the walk-round</source>
        <translation>trouvé encore attaché lors du tour d'inspection</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>de %1</translation>
    </message>
    <message>
        <source>from %1 on</source>
        <translation>à partir du %1</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>du %1 au %2</translation>
    </message>
    <message>
        <source>from %1 to %2: %3 (%4)</source>
        <translation>de %1 à %2 : %3 (%4)</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>functional test</source>
        <translation>essai fonctionnel</translation>
    </message>
    <message>
        <source>given to %1, NOT ACCEPTED yet</source>
        <translation>remise à %1, PAS ENCORE ACCEPTÉE</translation>
    </message>
    <message>
        <source>ground run</source>
        <translation>point fixe</translation>
    </message>
    <message>
        <source>guarded</source>
        <translation>avec bande de garde</translation>
    </message>
    <message>
        <source>hand tool</source>
        <translation>outil à main</translation>
    </message>
    <message>
        <source>hand-tight</source>
        <translation>serré à la main</translation>
    </message>
    <message>
        <source>hang</source>
        <comment>on</comment>
        <translation>accrocher</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>visserie</translation>
    </message>
    <message>
        <source>hoist</source>
        <translation>palan</translation>
    </message>
    <message>
        <source>hold point %1 %2</source>
        <translation>point d'arrêt %1 %2</translation>
    </message>
    <message>
        <source>hold point, %1</source>
        <translation>point d'arrêt, %1</translation>
    </message>
    <message>
        <source>how it was found</source>
        <translation>l'état dans lequel il a été trouvé</translation>
    </message>
    <message>
        <source>hung</source>
        <comment>on_done</comment>
        <translation>accroché</translation>
    </message>
    <message>
        <source>ids of interfaces, separated by |</source>
        <translation>des identifiants de raccordements, séparés par |</translation>
    </message>
    <message>
        <source>if known %1</source>
        <translation>%1, si connu</translation>
    </message>
    <message>
        <source>imported package %1</source>
        <translation>paquet importé %1</translation>
    </message>
    <message>
        <source>in calibration</source>
        <translation>étalonnage valable</translation>
    </message>
    <message>
        <source>in jobs: %1; entries, with those of the register: %2; of these with a signature in doubt: %3</source>
        <translation>dans des chantiers : %1 ; entrées, avec celles du répertoire : %2 ; dont avec une signature en doute : %3</translation>
    </message>
    <message>
        <source>in their order alone</source>
        <translation>dans leur ordre uniquement</translation>
    </message>
    <message>
        <source>in their words</source>
        <translation>dans leurs mots</translation>
    </message>
    <message>
        <source>included</source>
        <translation>compris</translation>
    </message>
    <message>
        <source>incoming</source>
        <translation>entrant</translation>
    </message>
    <message>
        <source>incoming for outgoing unit</source>
        <translation>ensemble entrant pour ensemble sortant</translation>
    </message>
    <message>
        <source>incoming unit</source>
        <translation>ensemble entrant</translation>
    </message>
    <message>
        <source>indicating</source>
        <translation>à lecture</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>contrôler</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>contrôlé</translation>
    </message>
    <message>
        <source>inspected again by the person who did the work</source>
        <translation>contrôlé de nouveau par la personne qui a fait le travail</translation>
    </message>
    <message>
        <source>inspected own work</source>
        <translation>propre travail contrôlé</translation>
    </message>
    <message>
        <source>interfaces</source>
        <translation>raccordements</translation>
    </message>
    <message>
        <source>interfaces: %1 of %2</source>
        <translation>raccordements : %1 sur %2</translation>
    </message>
    <message>
        <source>isolate</source>
        <comment>on</comment>
        <translation>consigner</translation>
    </message>
    <message>
        <source>isolated</source>
        <comment>on_done</comment>
        <translation>consigné</translation>
    </message>
    <message>
        <source>isolation</source>
        <translation>consignation</translation>
    </message>
    <message>
        <source>issued by %1</source>
        <translation>sorti par %1</translation>
    </message>
    <message>
        <source>it breaks off.</source>
        <translation>il s'interrompt.</translation>
    </message>
    <message>
        <source>it does not follow the entry before it.</source>
        <translation>elle ne fait pas suite à l'entrée qui la précède.</translation>
    </message>
    <message>
        <source>it does not unpack to the length that it states.</source>
        <translation>il ne se décompresse pas à la longueur qu'il indique.</translation>
    </message>
    <message>
        <source>it does not unpack.</source>
        <translation>il ne se décompresse pas.</translation>
    </message>
    <message>
        <source>it holds a number that is not a whole number within ±(2^53−1)</source>
        <translation>il contient un nombre qui n'est pas un entier dans ±(2^53−1)</translation>
    </message>
    <message>
        <source>it holds a value of unknown type</source>
        <translation>il contient une valeur de type inconnu</translation>
    </message>
    <message>
        <source>it is longer than such a file can be.</source>
        <translation>il est plus long qu'un tel fichier ne peut l'être.</translation>
    </message>
    <message>
        <source>it is not an object in braces</source>
        <translation>ce n'est pas un objet entre accolades</translation>
    </message>
    <message>
        <source>it is not in canonical form (RFC 8785)</source>
        <translation>il n'est pas en forme canonique (RFC 8785)</translation>
    </message>
    <message>
        <source>it is not what its check sum says.</source>
        <translation>il n'est pas ce que dit sa somme de contrôle.</translation>
    </message>
    <message>
        <source>it is not what its digest says.</source>
        <translation>elle n'est pas ce que dit son empreinte.</translation>
    </message>
    <message>
        <source>it is older than the one that this program was made with</source>
        <translation>elle est plus ancienne que celle avec laquelle ce programme a été construit</translation>
    </message>
    <message>
        <source>it nests more than %1 levels</source>
        <translation>il s'imbrique sur plus de %1 niveaux</translation>
    </message>
    <message>
        <source>its blanks</source>
        <translation>ses obturateurs</translation>
    </message>
    <message>
        <source>its details</source>
        <translation>ses détails</translation>
    </message>
    <message>
        <source>its folder cannot be made.</source>
        <translation>son dossier ne peut pas être créé.</translation>
    </message>
    <message>
        <source>its halves</source>
        <translation>ses moitiés</translation>
    </message>
    <message>
        <source>its independence group (%1)</source>
        <translation>son groupe d'indépendance (%1)</translation>
    </message>
    <message>
        <source>its kind (%1)</source>
        <translation>son type (%1)</translation>
    </message>
    <message>
        <source>its members are not in canonical order (RFC 8785)</source>
        <translation>ses membres ne sont pas dans l'ordre canonique (RFC 8785)</translation>
    </message>
    <message>
        <source>its row, by the new revision</source>
        <translation>sa ligne, selon la nouvelle révision</translation>
    </message>
    <message>
        <source>its safetying (%1)</source>
        <translation>son freinage (%1)</translation>
    </message>
    <message>
        <source>its seal (%1)</source>
        <translation>son joint (%1)</translation>
    </message>
    <message>
        <source>its tag</source>
        <translation>son étiquette</translation>
    </message>
    <message>
        <source>its twins (%1)</source>
        <translation>ses jumeaux (%1)</translation>
    </message>
    <message>
        <source>its zone (%1)</source>
        <translation>sa zone (%1)</translation>
    </message>
    <message>
        <source>job</source>
        <translation>chantier</translation>
    </message>
    <message>
        <source>job %1</source>
        <translation>chantier %1</translation>
    </message>
    <message>
        <source>jobs: %1; their entries: %2; entries of the register: %3</source>
        <translation>chantiers : %1 ; leurs entrées : %2 ; entrées du répertoire : %3</translation>
    </message>
    <message>
        <source>kit</source>
        <translation>mallette</translation>
    </message>
    <message>
        <source>known requirements (%1), not "%2"</source>
        <translation>des exigences connues (%1), et non « %2 »</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>diriger</translation>
    </message>
    <message>
        <source>leads together %1</source>
        <translation>cordons réunis %1</translation>
    </message>
    <message>
        <source>leak check</source>
        <translation>contrôle d'étanchéité</translation>
    </message>
    <message>
        <source>leaves with the outgoing unit: %1</source>
        <translation>part avec l'ensemble sortant : %1</translation>
    </message>
    <message>
        <source>left with the outgoing unit: %1</source>
        <translation>parti avec l'ensemble sortant : %1</translation>
    </message>
    <message>
        <source>leg %1</source>
        <translation>brin %1</translation>
    </message>
    <message>
        <source>leg %1, %2 high</source>
        <translation>brin %1, hauteur %2</translation>
    </message>
    <message>
        <source>less than</source>
        <translation>inférieur à</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>lift_planned</source>
        <translation>levage préparé</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>limite %1</translation>
    </message>
    <message>
        <source>line </source>
        <translation>ligne </translation>
    </message>
    <message>
        <source>lines of %1</source>
        <translation>des lignes de %1</translation>
    </message>
    <message>
        <source>listed after work had begun</source>
        <translation>listé après le début du travail</translation>
    </message>
    <message>
        <source>listed, and never touched</source>
        <translation>listé, et jamais touché</translation>
    </message>
    <message>
        <source>listed, and not applicable</source>
        <translation>listé, et non applicable</translation>
    </message>
    <message>
        <source>little margin</source>
        <translation>peu de marge</translation>
    </message>
    <message>
        <source>looks after the register</source>
        <translation>tient le répertoire</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>desserré</translation>
    </message>
    <message>
        <source>loose end</source>
        <translation>point ouvert</translation>
    </message>
    <message>
        <source>loose ends</source>
        <translation>points ouverts</translation>
    </message>
    <message>
        <source>lower-case letters, digits and underscores, and the file named after it</source>
        <translation>des lettres minuscules, des chiffres et des traits de soulignement, et le fichier portant ce nom</translation>
    </message>
    <message>
        <source>lubricated</source>
        <translation>lubrifié</translation>
    </message>
    <message>
        <source>many in a short time</source>
        <translation>beaucoup en peu de temps</translation>
    </message>
    <message>
        <source>margin %1</source>
        <translation>marge %1</translation>
    </message>
    <message>
        <source>margin of the hoist %1, of a leg %2</source>
        <translation>marge du palan %1, d'un brin %2</translation>
    </message>
    <message>
        <source>measuring tool</source>
        <translation>outil de mesure</translation>
    </message>
    <message>
        <source>missing since %1, finding %2; back: %3</source>
        <translation>manquant depuis %1, constat %2 ; revenu : %3</translation>
    </message>
    <message>
        <source>missing, %1</source>
        <translation>manquant, %1</translation>
    </message>
    <message>
        <source>moved to the incoming unit</source>
        <translation>transféré sur l'ensemble entrant</translation>
    </message>
    <message>
        <source>never</source>
        <translation>jamais</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>next: fastener %1</source>
        <translation>suivante : fixation %1</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>no end</source>
        <translation>sans fin</translation>
    </message>
    <message>
        <source>no remarks</source>
        <translation>pas de remarques</translation>
    </message>
    <message>
        <source>no safetying</source>
        <translation>aucun freinage</translation>
    </message>
    <message>
        <source>no such member; known are %1</source>
        <translation>pas de tel membre ; connus sont %1</translation>
    </message>
    <message>
        <source>no zone</source>
        <translation>pas de zone</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>nobody; open a follow-on job</source>
        <translation>personne ; ouvrez un chantier de suite</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>aucun trouvé</translation>
    </message>
    <message>
        <source>none on a temporary item</source>
        <translation>aucun sur un élément temporaire</translation>
    </message>
    <message>
        <source>none registered</source>
        <translation>aucun enregistré</translation>
    </message>
    <message>
        <source>none that covers %1</source>
        <translation>aucun qui couvre %1</translation>
    </message>
    <message>
        <source>not applicable</source>
        <translation>non applicable</translation>
    </message>
    <message>
        <source>not applicable: to be agreed</source>
        <translation>non applicable : accord à donner</translation>
    </message>
    <message>
        <source>not calibrated</source>
        <translation>non étalonné</translation>
    </message>
    <message>
        <source>not even</source>
        <translation>non équilibré</translation>
    </message>
    <message>
        <source>not in calibration</source>
        <translation>étalonnage non valable</translation>
    </message>
    <message>
        <source>not known: the job is damaged before it</source>
        <translation>inconnu : le chantier est endommagé avant cela</translation>
    </message>
    <message>
        <source>not on the list</source>
        <translation>pas sur la liste</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>not taken on there yet</source>
        <translation>pas encore pris en charge là-bas</translation>
    </message>
    <message>
        <source>not undone</source>
        <translation>non déposé</translation>
    </message>
    <message>
        <source>not undone yet</source>
        <translation>pas encore déposé</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>pas encore</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>nothing was signed in that time</source>
        <translation>rien n'a été signé pendant ce temps</translation>
    </message>
    <message>
        <source>nothing: a list cannot hold this</source>
        <translation>rien : une liste ne peut pas contenir cela</translation>
    </message>
    <message>
        <source>nothing: somebody with authority has to look and sign</source>
        <translation>rien : quelqu'un d'habilité doit regarder et signer</translation>
    </message>
    <message>
        <source>of all its time</source>
        <translation>de toute date</translation>
    </message>
    <message>
        <source>on</source>
        <translation>en place</translation>
    </message>
    <message>
        <source>on no list</source>
        <translation>sur aucune liste</translation>
    </message>
    <message>
        <source>one of the units %1</source>
        <translation>l'une des unités %1</translation>
    </message>
    <message>
        <source>one of: %1</source>
        <translation>l'un des suivants : %1</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>open</source>
        <comment>off</comment>
        <translation>ouvrir</translation>
    </message>
    <message>
        <source>opened</source>
        <comment>off_done</comment>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>ordre %1</translation>
    </message>
    <message>
        <source>other</source>
        <translation>autre</translation>
    </message>
    <message>
        <source>out</source>
        <translation>sorti</translation>
    </message>
    <message>
        <source>out of their order with a reason</source>
        <translation>hors de leur ordre avec un motif</translation>
    </message>
    <message>
        <source>outgoing</source>
        <translation>sortant</translation>
    </message>
    <message>
        <source>outgoing unit</source>
        <translation>ensemble sortant</translation>
    </message>
    <message>
        <source>over</source>
        <translation>terminé</translation>
    </message>
    <message>
        <source>over its limit</source>
        <translation>au-delà de sa limite</translation>
    </message>
    <message>
        <source>over with the work</source>
        <translation>terminé avec le travail</translation>
    </message>
    <message>
        <source>overrule</source>
        <translation>passer outre</translation>
    </message>
    <message>
        <source>package-%1.zip</source>
        <translation>package-%1.zip</translation>
    </message>
    <message>
        <source>part number</source>
        <translation>référence</translation>
    </message>
    <message>
        <source>pass %1</source>
        <translation>passe %1</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>franchi</translation>
    </message>
    <message>
        <source>passed</source>
        <comment>a test</comment>
        <translation>réussi</translation>
    </message>
    <message>
        <source>passed again later, or struck</source>
        <translation>franchi de nouveau plus tard, ou rayé</translation>
    </message>
    <message>
        <source>passed; VOID since: %1</source>
        <translation>franchi ; CADUC depuis : %1</translation>
    </message>
    <message>
        <source>passes %1 %</source>
        <translation>passes %1 %</translation>
    </message>
    <message>
        <source>performed</source>
        <translation>exécuté</translation>
    </message>
    <message>
        <source>person</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>platform</source>
        <translation>plate-forme</translation>
    </message>
    <message>
        <source>positioned</source>
        <translation>mis en position</translation>
    </message>
    <message>
        <source>pull</source>
        <comment>off</comment>
        <translation>retirer</translation>
    </message>
    <message>
        <source>pulled</source>
        <comment>off_done</comment>
        <translation>retiré</translation>
    </message>
    <message>
        <source>raised finding %1</source>
        <translation>a ouvert le constat %1</translation>
    </message>
    <message>
        <source>read in the source</source>
        <translation>lu dans la source</translation>
    </message>
    <message>
        <source>ready to close</source>
        <translation>prêt à clore</translation>
    </message>
    <message>
        <source>ready to pass</source>
        <translation>prêt à franchir</translation>
    </message>
    <message>
        <source>received</source>
        <translation>réceptionné</translation>
    </message>
    <message>
        <source>reconnect</source>
        <comment>on</comment>
        <translation>rebrancher</translation>
    </message>
    <message>
        <source>reconnected</source>
        <translation>rebranché</translation>
    </message>
    <message>
        <source>reconnected</source>
        <comment>on_done</comment>
        <translation>rebranché</translation>
    </message>
    <message>
        <source>reconnected and torqued</source>
        <translation>rebranché et serré au couple</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>consigné</translation>
    </message>
    <message>
        <source>rectified</source>
        <translation>rectifié</translation>
    </message>
    <message>
        <source>refit</source>
        <comment>on</comment>
        <translation>reposer</translation>
    </message>
    <message>
        <source>refitted</source>
        <comment>on_done</comment>
        <translation>reposé</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>refusé</translation>
    </message>
    <message>
        <source>refused: %1</source>
        <translation>refusé : %1</translation>
    </message>
    <message>
        <source>register</source>
        <translation>répertoire</translation>
    </message>
    <message>
        <source>rejected</source>
        <translation>refusé</translation>
    </message>
    <message>
        <source>rejected by the inspector</source>
        <translation>refusé par le contrôleur</translation>
    </message>
    <message>
        <source>release</source>
        <translation>prononcer la remise en service</translation>
    </message>
    <message>
        <source>release</source>
        <comment>off</comment>
        <translation>libérer</translation>
    </message>
    <message>
        <source>released</source>
        <translation>remis en service</translation>
    </message>
    <message>
        <source>released</source>
        <comment>off_done</comment>
        <translation>libéré</translation>
    </message>
    <message>
        <source>remove</source>
        <comment>off</comment>
        <translation>retirer</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>removed</source>
        <comment>off_done</comment>
        <translation>retiré</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>remis en état</translation>
    </message>
    <message>
        <source>restored and inspected</source>
        <translation>remis en état et contrôlé</translation>
    </message>
    <message>
        <source>restored, all but the leak check</source>
        <translation>remis en état, sauf contrôle d'étanchéité</translation>
    </message>
    <message>
        <source>returned</source>
        <translation>rendu</translation>
    </message>
    <message>
        <source>rig</source>
        <comment>on</comment>
        <translation>installer</translation>
    </message>
    <message>
        <source>rigged</source>
        <comment>on_done</comment>
        <translation>installé</translation>
    </message>
    <message>
        <source>rigging %1</source>
        <translation>agrès %1</translation>
    </message>
    <message>
        <source>root</source>
        <translation>racine</translation>
    </message>
    <message>
        <source>root of the register</source>
        <translation>racine du répertoire</translation>
    </message>
    <message>
        <source>row to look up</source>
        <translation>ligne à consulter</translation>
    </message>
    <message>
        <source>safety pin</source>
        <translation>goupille de sécurité</translation>
    </message>
    <message>
        <source>sample</source>
        <translation>sample</translation>
    </message>
    <message>
        <source>says that the %1 of %2 has failed</source>
        <translation>indique que l'essai « %1 » de %2 a échoué</translation>
    </message>
    <message>
        <source>says that the maintenance data was revised</source>
        <translation>indique que les données d'entretien ont été révisées</translation>
    </message>
    <message>
        <source>seal %1, batch %2</source>
        <translation>joint %1, lot %2</translation>
    </message>
    <message>
        <source>seen</source>
        <translation>vu</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>renvoyé</translation>
    </message>
    <message>
        <source>sent to a linked job, not taken on there yet</source>
        <translation>envoyé à un chantier lié, pas encore pris en charge là-bas</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>numéro de série</translation>
    </message>
    <message>
        <source>serviced</source>
        <translation>plein fait</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>réglé à %1</translation>
    </message>
    <message>
        <source>set up</source>
        <comment>on</comment>
        <translation>mettre en place</translation>
    </message>
    <message>
        <source>set up</source>
        <comment>on_done</comment>
        <translation>mis en place</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>à réglage</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>signé</translation>
    </message>
    <message>
        <source>simple</source>
        <translation>simple</translation>
    </message>
    <message>
        <source>slave hardware</source>
        <translation>visserie provisoire</translation>
    </message>
    <message>
        <source>sling</source>
        <translation>élingue</translation>
    </message>
    <message>
        <source>somebody of the job other than who said so</source>
        <translation>une personne du chantier autre que celle qui l'a dit</translation>
    </message>
    <message>
        <source>somebody of the job who joined none of them</source>
        <translation>une personne du chantier qui n'en a raccordé aucun</translation>
    </message>
    <message>
        <source>somebody with authority to %1</source>
        <translation>une personne habilitée à %1</translation>
    </message>
    <message>
        <source>somebody with authority to %1 who had no hand in it</source>
        <translation>une personne habilitée à %1 qui n'y a pas participé</translation>
    </message>
    <message>
        <source>somebody with authority to %1, by passing the hold point</source>
        <translation>une personne habilitée à %1, en franchissant le point d'arrêt</translation>
    </message>
    <message>
        <source>something stands behind the end of what it unpacks to.</source>
        <translation>quelque chose se trouve après la fin de ce en quoi il se décompresse.</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>en bon état</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>bâti</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>valable</translation>
    </message>
    <message>
        <source>still</source>
        <translation>immobile</translation>
    </message>
    <message>
        <source>still attached</source>
        <translation>encore attaché</translation>
    </message>
    <message>
        <source>still attached: %1</source>
        <translation>encore attaché : %1</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>arrêté</translation>
    </message>
    <message>
        <source>stopped: %1</source>
        <translation>arrêté : %1</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>rayé</translation>
    </message>
    <message>
        <source>struck by entry %1</source>
        <translation>rayée par l'entrée %1</translation>
    </message>
    <message>
        <source>struck by no. %1</source>
        <translation>rayée par n° %1</translation>
    </message>
    <message>
        <source>such as 2026-03-02</source>
        <translation>par exemple 2026-03-02</translation>
    </message>
    <message>
        <source>tag %1</source>
        <translation>étiquette %1</translation>
    </message>
    <message>
        <source>tag %1 recovered</source>
        <translation>étiquette %1 récupérée</translation>
    </message>
    <message>
        <source>tags %1 out</source>
        <translation>étiquettes %1 sorties</translation>
    </message>
    <message>
        <source>tags OUT</source>
        <translation>étiquettes SORTIES</translation>
    </message>
    <message>
        <source>tags, out</source>
        <translation>étiquettes, sorties</translation>
    </message>
    <message>
        <source>take away</source>
        <comment>off</comment>
        <translation>enlever</translation>
    </message>
    <message>
        <source>take off</source>
        <comment>off</comment>
        <translation>retirer</translation>
    </message>
    <message>
        <source>taken away</source>
        <comment>off_done</comment>
        <translation>enlevé</translation>
    </message>
    <message>
        <source>taken off</source>
        <comment>off_done</comment>
        <translation>retiré</translation>
    </message>
    <message>
        <source>taken on there</source>
        <translation>pris en charge là-bas</translation>
    </message>
    <message>
        <source>taken on: %1</source>
        <translation>pris en charge : %1</translation>
    </message>
    <message>
        <source>temporary</source>
        <translation>provisoire</translation>
    </message>
    <message>
        <source>test %1 %2</source>
        <translation>essai %1 %2</translation>
    </message>
    <message>
        <source>test, %1</source>
        <translation>essai, %1</translation>
    </message>
    <message>
        <source>tested</source>
        <translation>essayé</translation>
    </message>
    <message>
        <source>the SHA-256 digest of a file that is kept elsewhere, in 64 lower-case hex digits</source>
        <translation>l'empreinte SHA-256 d'un fichier conservé ailleurs, en 64 chiffres hexadécimaux minuscules</translation>
    </message>
    <message>
        <source>the aircraft's end</source>
        <translation>le côté avion</translation>
    </message>
    <message>
        <source>the bonding limit</source>
        <translation>la limite de métallisation</translation>
    </message>
    <message>
        <source>the drag of the nuts</source>
        <translation>le couple d'autofreinage des écrous</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>le dossier ne peut pas être créé</translation>
    </message>
    <message>
        <source>the halves</source>
        <translation>les moitiés</translation>
    </message>
    <message>
        <source>the hardware</source>
        <translation>la visserie</translation>
    </message>
    <message>
        <source>the hardware that came off</source>
        <translation>la visserie déposée</translation>
    </message>
    <message>
        <source>the incoming unit</source>
        <translation>l'ensemble entrant</translation>
    </message>
    <message>
        <source>the inspector who disposes of it</source>
        <translation>le contrôleur qui statue sur le constat</translation>
    </message>
    <message>
        <source>the job</source>
        <translation>le chantier</translation>
    </message>
    <message>
        <source>the lead</source>
        <translation>le responsable du chantier</translation>
    </message>
    <message>
        <source>the lead, by importing the list</source>
        <translation>le responsable du chantier, en important la liste</translation>
    </message>
    <message>
        <source>the lead, by opening a follow-on job</source>
        <translation>le responsable du chantier, en ouvrant un chantier de suite</translation>
    </message>
    <message>
        <source>the lead, by opening the job</source>
        <translation>le responsable du chantier, en ouvrant le chantier</translation>
    </message>
    <message>
        <source>the lead, or an inspector, by correcting its row of the list</source>
        <translation>le responsable du chantier, ou un contrôleur, en corrigeant sa ligne dans la liste</translation>
    </message>
    <message>
        <source>the lead, or an inspector, by correcting the row again</source>
        <translation>le responsable du chantier, ou un contrôleur, en corrigeant la ligne à nouveau</translation>
    </message>
    <message>
        <source>the leak limit</source>
        <translation>la limite de fuite</translation>
    </message>
    <message>
        <source>the ledger of a job</source>
        <translation>le registre des entrées d'un chantier</translation>
    </message>
    <message>
        <source>the left point</source>
        <translation>le point gauche</translation>
    </message>
    <message>
        <source>the lifting point</source>
        <translation>le point de levage</translation>
    </message>
    <message>
        <source>the mark of a critical interface</source>
        <translation>la marque d'un raccordement critique</translation>
    </message>
    <message>
        <source>the name "%1" stands twice</source>
        <translation>le nom « %1 » figure deux fois</translation>
    </message>
    <message>
        <source>the number %1 lies beyond ±(2^53−1)</source>
        <translation>le nombre %1 est au-delà de ±(2^53−1)</translation>
    </message>
    <message>
        <source>the order of the fasteners</source>
        <translation>l'ordre des fixations</translation>
    </message>
    <message>
        <source>the outgoing lead</source>
        <translation>le responsable sortant</translation>
    </message>
    <message>
        <source>the outgoing lead, by handing over</source>
        <translation>le responsable sortant, par la passation</translation>
    </message>
    <message>
        <source>the outgoing unit</source>
        <translation>l'ensemble sortant</translation>
    </message>
    <message>
        <source>the outgoing unit goes back on</source>
        <translation>l'ensemble sortant est reposé</translation>
    </message>
    <message>
        <source>the passes</source>
        <translation>les passes</translation>
    </message>
    <message>
        <source>the register</source>
        <translation>le répertoire</translation>
    </message>
    <message>
        <source>the register and the linked jobs as they are now</source>
        <translation>le répertoire et les chantiers liés tels qu'ils sont maintenant</translation>
    </message>
    <message>
        <source>the right point</source>
        <translation>le point droit</translation>
    </message>
    <message>
        <source>the seal</source>
        <translation>le joint</translation>
    </message>
    <message>
        <source>the smallest SHA-256 of the seed, a line feed and the interface's id, in UTF-8</source>
        <translation>les plus petits SHA-256 de la graine, d'un saut de ligne et de l'identifiant du raccordement, en UTF-8</translation>
    </message>
    <message>
        <source>the threads</source>
        <translation>les filetages</translation>
    </message>
    <message>
        <source>the torque</source>
        <translation>le couple de serrage</translation>
    </message>
    <message>
        <source>the torque band</source>
        <translation>la plage de couple</translation>
    </message>
    <message>
        <source>the turn after the torque</source>
        <translation>la rotation après le couple</translation>
    </message>
    <message>
        <source>the unit's end</source>
        <translation>le côté ensemble</translation>
    </message>
    <message>
        <source>the whole</source>
        <translation>le tout</translation>
    </message>
    <message>
        <source>then turned %1° to %2°</source>
        <translation>puis tourné de %1° à %2°</translation>
    </message>
    <message>
        <source>there is no memory to unpack it.</source>
        <translation>il n'y a pas assez de mémoire pour le décompresser.</translation>
    </message>
    <message>
        <source>this store's own job</source>
        <translation>le propre chantier de cette base</translation>
    </message>
    <message>
        <source>ticked</source>
        <translation>coché</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>to be moved, or declared to leave</source>
        <translation>à transférer, ou à déclarer partant</translation>
    </message>
    <message>
        <source>to be seen</source>
        <translation>à voir</translation>
    </message>
    <message>
        <source>to come out: %1</source>
        <translation>à retirer : %1</translation>
    </message>
    <message>
        <source>too little</source>
        <translation>insuffisant</translation>
    </message>
    <message>
        <source>too much</source>
        <translation>excessif</translation>
    </message>
    <message>
        <source>tool</source>
        <translation>outil</translation>
    </message>
    <message>
        <source>tool %1 out</source>
        <translation>outil %1 sorti</translation>
    </message>
    <message>
        <source>tool %1 out (%2)</source>
        <translation>outil %1 sorti (%2)</translation>
    </message>
    <message>
        <source>tool OUT</source>
        <translation>outil SORTI</translation>
    </message>
    <message>
        <source>tool, out</source>
        <translation>outil, sorti</translation>
    </message>
    <message>
        <source>tools_counted</source>
        <translation>outils comptés</translation>
    </message>
    <message>
        <source>torqued</source>
        <translation>serré au couple</translation>
    </message>
    <message>
        <source>torqued %1 of %2</source>
        <translation>serrés au couple : %1 sur %2</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>vrai ou faux</translation>
    </message>
    <message>
        <source>undisturbed</source>
        <translation>non perturbé</translation>
    </message>
    <message>
        <source>undone, and on no list</source>
        <translation>déposé, et sur aucune liste</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>ensemble</translation>
    </message>
    <message>
        <source>untouched</source>
        <translation>non touché</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>jusqu'au %1</translation>
    </message>
    <message>
        <source>used again</source>
        <translation>réutilisé</translation>
    </message>
    <message>
        <source>verdict.txt</source>
        <translation>verdict.txt</translation>
    </message>
    <message>
        <source>void</source>
        <translation>caduc</translation>
    </message>
    <message>
        <source>void, pass again</source>
        <translation>caduc, à franchir de nouveau</translation>
    </message>
    <message>
        <source>void: %1</source>
        <translation>caduc : %1</translation>
    </message>
    <message>
        <source>voided later</source>
        <translation>rendu caduc plus tard</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>en attente</translation>
    </message>
    <message>
        <source>waits to be taken on here</source>
        <translation>attend d'être pris en charge ici</translation>
    </message>
    <message>
        <source>walked_round</source>
        <translation>tour d'inspection fait</translation>
    </message>
    <message>
        <source>warning tag</source>
        <translation>étiquette d'avertissement</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesé</translation>
    </message>
    <message>
        <source>what has to be off before it</source>
        <translation>ce qui doit être déposé avant lui</translation>
    </message>
    <message>
        <source>what it asks for is to be looked up</source>
        <translation>ce qu'elles demandent est à consulter</translation>
    </message>
    <message>
        <source>what it depends on</source>
        <translation>ce dont il dépend</translation>
    </message>
    <message>
        <source>what restoring it has to show</source>
        <translation>ce que la remise en état doit démontrer</translation>
    </message>
    <message>
        <source>what was found</source>
        <translation>ce qui a été constaté</translation>
    </message>
    <message>
        <source>where they stopped</source>
        <translation>où il s'est arrêté</translation>
    </message>
    <message>
        <source>where-used</source>
        <translation>where-used</translation>
    </message>
    <message>
        <source>whether it is off</source>
        <translation>s'il est déposé</translation>
    </message>
    <message>
        <source>which</source>
        <translation>lequel</translation>
    </message>
    <message>
        <source>which, its tag, and whose it is</source>
        <translation>lequel, son étiquette, et à qui il est</translation>
    </message>
    <message>
        <source>who has it: %1</source>
        <translation>chez qui : %1</translation>
    </message>
    <message>
        <source>whoever attaches the photo</source>
        <translation>la personne qui joint la photo</translation>
    </message>
    <message>
        <source>whoever did it</source>
        <translation>la personne qui l'a fait</translation>
    </message>
    <message>
        <source>whoever exchanges the tags</source>
        <translation>la personne qui échange les étiquettes</translation>
    </message>
    <message>
        <source>whoever fills in the form</source>
        <translation>la personne qui remplit le formulaire</translation>
    </message>
    <message>
        <source>whoever has it</source>
        <translation>la personne qui l'a</translation>
    </message>
    <message>
        <source>whoever keeps the backups</source>
        <translation>la personne qui garde les sauvegardes</translation>
    </message>
    <message>
        <source>whoever keeps the stores</source>
        <translation>la personne qui gère les bases</translation>
    </message>
    <message>
        <source>whoever keeps the weight record</source>
        <translation>la personne qui tient la fiche de masse</translation>
    </message>
    <message>
        <source>whoever looks after the tools</source>
        <translation>la personne qui s'occupe de l'outillage</translation>
    </message>
    <message>
        <source>whoever looks after this computer's clock</source>
        <translation>la personne qui s'occupe de l'horloge de cet ordinateur</translation>
    </message>
    <message>
        <source>whoever makes the list</source>
        <translation>la personne qui établit la liste</translation>
    </message>
    <message>
        <source>whoever marks the photo</source>
        <translation>la personne qui marque la photo</translation>
    </message>
    <message>
        <source>whoever passes the hold point</source>
        <translation>la personne qui franchit le point d'arrêt</translation>
    </message>
    <message>
        <source>whoever plans the lift</source>
        <translation>la personne qui prépare le levage</translation>
    </message>
    <message>
        <source>whoever plans the lift, with other equipment</source>
        <translation>la personne qui prépare le levage, avec un autre matériel</translation>
    </message>
    <message>
        <source>whoever raises the finding</source>
        <translation>la personne qui ouvre le constat</translation>
    </message>
    <message>
        <source>whoever releases</source>
        <translation>la personne qui prononce la remise en service</translation>
    </message>
    <message>
        <source>whoever sets it</source>
        <translation>la personne qui le fixe</translation>
    </message>
    <message>
        <source>whoever shows it anew; or a person with authority to overrule</source>
        <translation>la personne qui le démontre à nouveau ; ou une personne habilitée à passer outre</translation>
    </message>
    <message>
        <source>whole job</source>
        <translation>tout le chantier</translation>
    </message>
    <message>
        <source>whose: %1</source>
        <translation>à qui : %1</translation>
    </message>
    <message>
        <source>with a guard band as wide as what the tool may be off</source>
        <translation>avec une bande de garde aussi large que l'erreur possible de l'outil</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>withdrawn %1</source>
        <translation>retiré le %1</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>within limits</source>
        <translation>dans les limites</translation>
    </message>
    <message>
        <source>work</source>
        <translation>travailler</translation>
    </message>
    <message>
        <source>worn</source>
        <translation>usé</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>oui ou non</translation>
    </message>
    <message>
        <source>± %1 %</source>
        <translation>± %1 %</translation>
    </message>
    <message>
        <source>± %1 %, %2</source>
        <translation>± %1 %, %2</translation>
    </message>
    <message>
        <source>• %1</source>
        <translation>• %1</translation>
    </message>
    <message>
        <source>○ %1: %2</source>
        <translation>○ %1 : %2</translation>
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
        <translation>✗ Non vérifié : %1</translation>
    </message>
</context>
</TS>
