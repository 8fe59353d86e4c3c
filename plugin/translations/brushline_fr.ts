<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>brushline::AimOffAlgorithm</name>
    <message>
        <source>Aim off to a line feature</source>
        <translation>Viser à côté pour rejoindre une ligne</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planification</translation>
    </message>
    <message>
        <source>aiming off,deliberate offset,handrail,catching feature,trail,stream,compass,bearing,drift,leg,off trail</source>
        <translation>viser à côté,décalage volontaire,main courante,ligne d’arrêt,sentier,ruisseau,boussole,azimut,dérive,tronçon,hors sentier</translation>
    </message>
    <message>
        <source>Legs that aim to one side of a destination on a trail or stream, so that on meeting it one knows which way to turn.</source>
        <translation>Tronçons qui visent d’un côté d’une destination située sur un sentier ou un ruisseau, afin qu’en le rencontrant on sache de quel côté tourner.</translation>
    </message>
    <message>
        <source>Starts with legs</source>
        <translation>Départs avec tronçons</translation>
    </message>
    <message>
        <source>Legs written, one for each walker</source>
        <translation>Tronçons écrits, un pour chaque marcheur</translation>
    </message>
    <message>
        <source>Starts passed over</source>
        <translation>Départs non retenus</translation>
    </message>
</context>
<context>
    <name>brushline::AimOffParameters</name>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;name&#xa0;», s’il y en a un.</translation>
    </message>
    <message>
        <source>%1: give a layer with %2.</source>
        <translation>%1&#xa0;: indiquez une couche avec %2.</translation>
    </message>
    <message>
        <source>%1: %2 cannot be had. Give a chance between 0.5 and 1, for example 0.95.</source>
        <translation>%1&#xa0;: impossible d’obtenir %2. Indiquez une probabilité entre 0.5 et 1, par exemple 0.95.</translation>
    </message>
    <message>
        <source>Whichever is better</source>
        <translation>Le meilleur des deux</translation>
    </message>
    <message>
        <source>Left of the destination</source>
        <translation>À gauche de la destination</translation>
    </message>
    <message>
        <source>Right of the destination</source>
        <translation>À droite de la destination</translation>
    </message>
    <message>
        <source>Starts (points)</source>
        <translation>Départs (points)</translation>
    </message>
    <message>
        <source>Where one sets out, one leg from each.</source>
        <translation>D’où l’on part, un tronçon depuis chacun.</translation>
    </message>
    <message>
        <source>Field with the start&apos;s name</source>
        <translation>Champ du nom du départ</translation>
    </message>
    <message>
        <source>Lines to meet (trails, streams, power lines)</source>
        <translation>Lignes à rencontrer (sentiers, ruisseaux, lignes électriques)</translation>
    </message>
    <message>
        <source>What one cannot cross without noticing. Lines of one name are one line. Give only lines that are as plain on the ground as on the map.</source>
        <translation>Ce que l’on ne peut pas traverser sans s’en apercevoir. Les lignes de même nom forment une seule ligne. N’indiquez que des lignes aussi nettes sur le terrain que sur la carte.</translation>
    </message>
    <message>
        <source>Field with the line&apos;s name</source>
        <translation>Champ du nom de la ligne</translation>
    </message>
    <message>
        <source>Destinations on the lines (points)</source>
        <translation>Destinations sur les lignes (points)</translation>
    </message>
    <message>
        <source>Where one wants to come to. Each start goes to the nearest one, or to that of its own name. Empty: the surest bearing to meet any line.</source>
        <translation>Où l’on veut arriver. Chaque départ va à la plus proche, ou à celle qu’il nomme. Vide&#xa0;: l’azimut le plus sûr pour rencontrer une ligne quelconque.</translation>
    </message>
    <message>
        <source>Field with the destination&apos;s name</source>
        <translation>Champ du nom de la destination</translation>
    </message>
    <message>
        <source>Field of the starts that names their destination</source>
        <translation>Champ des départs qui nomme leur destination</translation>
    </message>
    <message>
        <source>Its value is looked up among the destinations&apos; names; of several alike the nearest counts. Empty: the nearest destination.</source>
        <translation>Sa valeur est cherchée parmi les noms des destinations&#xa0;; de plusieurs semblables, la plus proche compte. Vide&#xa0;: la destination la plus proche.</translation>
    </message>
    <message>
        <source>Aim to which side</source>
        <translation>De quel côté viser</translation>
    </message>
    <message>
        <source>Left and right as seen when facing the destination. Whichever is better: the side that is sure, of two sure ones the shorter way in all.</source>
        <translation>Gauche et droite vues face à la destination. Le meilleur des deux&#xa0;: le côté qui est sûr&#xa0;; de deux côtés sûrs, le chemin le plus court en tout.</translation>
    </message>
    <message>
        <source>Chance that the turn is the right one</source>
        <translation>Probabilité de tourner du bon côté</translation>
    </message>
    <message>
        <source>Between 0.5 and 1: 0.95 aims off so far that nineteen of twenty walks meet the line on the intended side.</source>
        <translation>Entre 0,5 et 1&#xa0;: avec 0,95, on vise assez loin à côté pour que dix-neuf marches sur vingt rencontrent la ligne du côté voulu.</translation>
    </message>
    <message>
        <source>What catches one beyond the line</source>
        <translation>Ce qui vous arrête au-delà de la ligne</translation>
    </message>
    <message>
        <source>Roads, streams, lakes beyond: what tells that one has crossed the line without noticing.</source>
        <translation>Routes, ruisseaux, lacs situés au-delà&#xa0;: ce qui indique que l’on a traversé la ligne sans s’en apercevoir.</translation>
    </message>
    <message>
        <source>Field with its name</source>
        <translation>Champ du nom de ce qui arrête</translation>
    </message>
    <message>
        <source>How far to look for lines (m)</source>
        <translation>Jusqu’où chercher des lignes (m)</translation>
    </message>
    <message>
        <source>From the start, in metres. Destinations, lines and what catches count within it only.</source>
        <translation>Depuis le départ, en mètres. Les destinations, les lignes et ce qui arrête ne comptent que dans cette limite.</translation>
    </message>
    <message>
        <source>Farthest a destination may lie from its line (m)</source>
        <translation>Plus grande distance d’une destination à sa ligne (m)</translation>
    </message>
    <message>
        <source>A destination is taken to the nearest place on a line; one that lies farther away, in metres, is passed over.</source>
        <translation>Une destination est ramenée au point le plus proche d’une ligne&#xa0;; celle qui en est plus éloignée, en mètres, est ignorée.</translation>
    </message>
    <message>
        <source>Walkers can tell the lines apart</source>
        <translation>Les marcheurs savent distinguer les lignes</translation>
    </message>
    <message>
        <source>Off: one who meets another line first takes it for the right one, and counts as having missed. On: other lines are crossed without harm.</source>
        <translation>Désactivé&#xa0;: qui rencontre d’abord une autre ligne la prend pour la bonne et compte comme l’ayant manquée. Activé&#xa0;: les autres lignes sont traversées sans dommage.</translation>
    </message>
    <message>
        <source>Aim by whole graduations of the dial</source>
        <translation>Viser par graduations entières du cadran</translation>
    </message>
    <message>
        <source>The aim is one that the dial can show, the next one farther from the destination. Off: exact, and the dial rounds it.</source>
        <translation>La direction visée est de celles que le cadran peut afficher&#xa0;: la suivante en s’éloignant de la destination. Désactivé&#xa0;: direction exacte, que le cadran arrondit.</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>des départs</translation>
    </message>
    <message>
        <source>lines</source>
        <translation>des lignes</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no field “name”: give the field with the names that %3 refers to.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de champ «&#xa0;name&#xa0;»&#xa0;: indiquez le champ qui contient les noms auxquels %3 renvoie.</translation>
    </message>
    <message>
        <source>%1 refers to destinations: give %2 too.</source>
        <translation>%1 renvoie à des destinations&#xa0;: indiquez aussi %2.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no line of any length, so there is nothing to meet.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a aucune ligne d’une longueur quelconque&#xa0;: il n’y a donc rien à rencontrer.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n destination(s) of layer “%2” lie farther than %3 m from every line; passed over. Move them onto a line, or give a greater %4.</source>
        <translation>
            <numerusform>%1&#xa0;: %n destination de la couche «&#xa0;%2&#xa0;» est à plus de %3 m de toute ligne&#xa0;; ignorée. Déplacez-la sur une ligne, ou indiquez un %4 plus grand.</numerusform>
            <numerusform>%1&#xa0;: %n destinations de la couche «&#xa0;%2&#xa0;» sont à plus de %3 m de toute ligne&#xa0;; ignorées. Déplacez-les sur une ligne, ou indiquez un %4 plus grand.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: no destination of layer “%2” lies within %3 m of a line, so there is nowhere to aim. Move them onto a line, give a greater %4, or leave %1 empty.</source>
        <translation>%1&#xa0;: aucune destination de la couche «&#xa0;%2&#xa0;» n’est à moins de %3 m d’une ligne&#xa0;: il n’y a donc rien à viser. Déplacez-les sur une ligne, indiquez un %4 plus grand, ou laissez %1 vide.</translation>
    </message>
</context>
<context>
    <name>brushline::AimOffWriter</name>
    <message>
        <source>Legs that aim off</source>
        <translation>Tronçons qui visent à côté</translation>
    </message>
    <message>
        <source>Not sure: the chance that the line is met where one turns %1 is %2 %, less than asked for.</source>
        <translation>Pas sûr&#xa0;: la probabilité de rencontrer la ligne là où l’on tourne à %1 est de %2&#xa0;%, moins que demandé.</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>Not sure: the chance of meeting the line is %1 %, less than asked for.</source>
        <translation>Pas sûr&#xa0;: la probabilité de rencontrer la ligne est de %1&#xa0;%, moins que demandé.</translation>
    </message>
    <message>
        <source>With a chance of %1 % another line is met first.</source>
        <translation>Avec une probabilité de %1&#xa0;%, une autre ligne est rencontrée d’abord.</translation>
    </message>
    <message>
        <source>With a chance of %1 % another line is met first, most likely %2.</source>
        <translation>Avec une probabilité de %1&#xa0;%, une autre ligne est rencontrée d’abord, le plus probablement %2.</translation>
    </message>
    <message>
        <source>The destination lies %1 m beside the line.</source>
        <translation>La destination est à %1 m à côté de la ligne.</translation>
    </message>
    <message>
        <source>Aims more than 45 degrees beside the destination: look for a better way.</source>
        <translation>Vise à plus de 45 degrés à côté de la destination&#xa0;: cherchez un meilleur chemin.</translation>
    </message>
    <message>
        <source>%1 m beyond</source>
        <translation>%1 m au-delà</translation>
    </message>
    <message>
        <source>%1, %2 m beyond</source>
        <translation>%1, %2 m au-delà</translation>
    </message>
    <message numerus="yes">
        <source>%n start(s) have no aim as sure as asked for: see the field warnings, and do not send anybody by these without looking at the map.</source>
        <translation>
            <numerusform>%n départ n’a pas de direction aussi sûre que demandé&#xa0;: voyez le champ warnings, et n’envoyez personne sur ce tronçon sans regarder la carte.</numerusform>
            <numerusform>%n départs n’ont pas de direction aussi sûre que demandé&#xa0;: voyez le champ warnings, et n’envoyez personne sur ces tronçons sans regarder la carte.</numerusform>
        </translation>
    </message>
    <message>
        <source>Starts: %1; leg rows written: %2.</source>
        <translation>Départs&#xa0;: %1&#xa0;; enregistrements de tronçon écrits&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>brushline::AimStarts</name>
    <message>
        <source>has no usable place.</source>
        <translation>n’a pas de position utilisable.</translation>
    </message>
    <message>
        <source>lies outside the grid %1: give another %2.</source>
        <translation>se trouve hors de la grille %1&#xa0;: indiquez un autre %2.</translation>
    </message>
    <message>
        <source>names no destination in its field “%1”.</source>
        <translation>ne nomme aucune destination dans son champ «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>goes to “%1”, which lies on no line.</source>
        <translation>va à «&#xa0;%1&#xa0;», qui n’est sur aucune ligne.</translation>
    </message>
    <message>
        <source>goes to “%1”, which is not among the destinations.</source>
        <translation>va à «&#xa0;%1&#xa0;», qui n’est pas parmi les destinations.</translation>
    </message>
    <message>
        <source>layer “%1”, feature %2</source>
        <translation>couche «&#xa0;%1&#xa0;», entité %2</translation>
    </message>
    <message>
        <source>has no geometry.</source>
        <translation>n’a pas de géométrie.</translation>
    </message>
    <message>
        <source>%1: %2 %3 Passed over.</source>
        <translation>%1&#xa0;: %2 %3 Non retenu.</translation>
    </message>
    <message>
        <source>meets no line within %1 m: give a greater REACH, or other lines.</source>
        <translation>ne rencontre aucune ligne à moins de %1 m&#xa0;: indiquez un REACH plus grand, ou d’autres lignes.</translation>
    </message>
    <message>
        <source>lies on the line already, or within a metre of it.</source>
        <translation>est déjà sur la ligne, ou à moins d’un mètre d’elle.</translation>
    </message>
    <message>
        <source>has no destination within %1 m: give a greater REACH.</source>
        <translation>n’a aucune destination à moins de %1 m&#xa0;: indiquez un REACH plus grand.</translation>
    </message>
    <message>
        <source>lies farther than %1 m from its destination: give a greater REACH.</source>
        <translation>est à plus de %1 m de sa destination&#xa0;: indiquez un REACH plus grand.</translation>
    </message>
    <message>
        <source>has no bearing that meets the line where one turn leads to the destination: the line ends there or bends away, or another line lies in front of it. Try the other SIDE, or TELL_APART where one line cannot be taken for another.</source>
        <translation>n’a aucun azimut qui rencontre la ligne là où un seul sens mène à la destination&#xa0;: la ligne s’y termine ou s’en écarte, ou une autre ligne passe devant. Essayez l’autre SIDE, ou TELL_APART si une ligne ne peut pas être prise pour une autre.</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n start(s) could be used.</source>
        <translation>
            <numerusform>%n seul départ, et il n’a pas pu être utilisé.</numerusform>
            <numerusform>Aucun des %n départs n’a pu être utilisé.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n start(s) passed over in all.</source>
        <translation>
            <numerusform>%n départ non retenu en tout.</numerusform>
            <numerusform>%n départs non retenus en tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features, so there are no legs.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas d’entités, donc il n’y a pas de tronçons.</translation>
    </message>
    <message>
        <source>has no aim that stands on the dial: the numbers on both sides of the best bearing miss the line. Give a finer DIAL_STEP if the compass has one, the other SIDE, or another start.</source>
        <translation>n’a pas de direction qui figure sur le cadran&#xa0;: les nombres des deux côtés du meilleur azimut manquent la ligne. Indiquez un DIAL_STEP plus fin si la boussole l’a, l’autre SIDE ou un autre départ.</translation>
    </message>
</context>
<context>
    <name>brushline::AnnotateLegsAlgorithm</name>
    <message>
        <source>Annotate legs</source>
        <translation>Annoter les tronçons</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Tronçons</translation>
    </message>
    <message>
        <source>compass,bearing,azimuth,heading,magnetic,declination,variation,paces,pacing,step count,route,leg,back bearing,off trail,cross country,dead reckoning,navigation,walk,hike,course</source>
        <translation>boussole,azimut,cap,direction,magnétique,déclinaison,pas,compter les pas,double pas,itinéraire,tronçon,azimut inverse,hors sentier,tout terrain,estime,navigation,marche,randonnée,parcours</translation>
    </message>
    <message>
        <source>Turns planned routes into legs to walk by compass and pace count: the number for the dial today, paces, minutes and the way back.</source>
        <translation>Transforme des itinéraires planifiés en tronçons à parcourir à la boussole et au compte des pas&#xa0;: l’azimut à afficher aujourd’hui, les pas, les minutes et le chemin du retour.</translation>
    </message>
    <message>
        <source>Out, as drawn</source>
        <translation>Aller, dans le sens du tracé</translation>
    </message>
    <message>
        <source>Back, the other way</source>
        <translation>Retour, en sens inverse</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Les deux</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Sens</translation>
    </message>
    <message>
        <source>Legs as the route is drawn, the way home, or both.</source>
        <translation>Tronçons dans le sens du tracé de l’itinéraire, pour rentrer, ou les deux.</translation>
    </message>
    <message>
        <source>Named points are found with certainty</source>
        <translation>Les points nommés sont trouvés à coup sûr</translation>
    </message>
    <message>
        <source>Drift starts anew at every named point. Off: errors add up along the whole route.</source>
        <translation>La dérive repart de zéro à chaque point nommé. Désactivé&#xa0;: les erreurs s’additionnent sur tout l’itinéraire.</translation>
    </message>
    <message>
        <source>Routes with legs</source>
        <translation>Itinéraires avec tronçons</translation>
    </message>
    <message>
        <source>Legs written, one for each walker</source>
        <translation>Tronçons écrits, un pour chaque marcheur</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>n’a pas deux sommets distincts, donc pas de tronçon.</translation>
    </message>
</context>
<context>
    <name>brushline::BaseAlgorithm</name>
    <message>
        <source>There is not enough memory for this. Split the input, or write to a file instead of memory.</source>
        <translation>Il n’y a pas assez de mémoire pour cela. Divisez les données en entrée, ou écrivez dans un fichier plutôt qu’en mémoire.</translation>
    </message>
    <message>
        <source>The host reports: %1</source>
        <translation>Le programme hôte signale&#xa0;: %1</translation>
    </message>
    <message>
        <source>This could not be computed: %1</source>
        <translation>Ce calcul n’a pas pu aboutir&#xa0;: %1</translation>
    </message>
    <message>
        <source>This could not be computed, for a reason that was not told.</source>
        <translation>Ce calcul n’a pas pu aboutir, pour une raison qui n’a pas été donnée.</translation>
    </message>
    <message>
        <source>Cancelled: nothing was kept of the outputs.</source>
        <translation>Annulé&#xa0;: rien n’a été conservé des sorties.</translation>
    </message>
</context>
<context>
    <name>brushline::CalibratePacesAlgorithm</name>
    <message>
        <source>Calibrate paces</source>
        <translation>Étalonner les pas</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>pace,paces,count,step,stride,calibrate,walker,walkers,measure,distance</source>
        <translation>pas,compte,enjambée,double pas,étalonner,calibrer,marcheur,marcheurs,mesurer,distance</translation>
    </message>
    <message>
        <source>Makes a table of walkers, with their paces over 100 m and how sure they are, from counts over known distances.</source>
        <translation>Crée une table de marcheurs, avec leurs pas sur 100 m et le degré de certitude de ce nombre, d’après des comptes sur des distances connues.</translation>
    </message>
    <message>
        <source>Walkers</source>
        <translation>Marcheurs</translation>
    </message>
    <message>
        <source>Tries used</source>
        <translation>Essais utilisés</translation>
    </message>
</context>
<context>
    <name>brushline::CalibratedWalkers</name>
    <message>
        <source>Calibrated walkers</source>
        <translation>Marcheurs étalonnés</translation>
    </message>
    <message>
        <source>Tries, judged</source>
        <translation>Essais, évalués</translation>
    </message>
    <message>
        <source>no try on ground of 30 degrees or less, where the slope table ends. Are the slopes in percent?</source>
        <translation>aucun essai sur un terrain de 30 degrés ou moins, où la table des pentes s’arrête. Les pentes sont-elles en pour cent&#xa0;?</translation>
    </message>
    <message>
        <source>the tries do not agree, and nothing tells which are right (%1 steps over 100 m, give or take %2). Count again, over the same distance.</source>
        <translation>les essais ne concordent pas, et rien ne dit lesquels sont justes (%1 pas simples sur 100 m, à %2 près). Comptez de nouveau, sur la même distance.</translation>
    </message>
    <message>
        <source>steps of %1 m are nobody&apos;s. Are the distances in feet, or is PACE_KIND not what was counted?</source>
        <translation>personne ne fait des pas de %1 m. Les distances sont-elles en pieds, ou PACE_KIND n’est-il pas ce qui a été compté&#xa0;?</translation>
    </message>
    <message>
        <source>steeper than 30 degrees, where the slope table ends (percent, not degrees?)</source>
        <translation>plus raide que 30 degrés, où la table des pentes s’arrête (pour cent au lieu de degrés ?)</translation>
    </message>
    <message>
        <source>about half the others&apos; count (double paces among single steps, or twice the distance?)</source>
        <translation>environ la moitié du compte des autres (doubles pas parmi des pas simples, ou distance double ?)</translation>
    </message>
    <message>
        <source>about twice the others&apos; count (single steps among double paces, or half the distance?)</source>
        <translation>environ le double du compte des autres (pas simples parmi des doubles pas, ou demi-distance ?)</translation>
    </message>
    <message>
        <source>about 0.3 of the others&apos; count (distance in feet?)</source>
        <translation>environ 0,3 fois le compte des autres (distance en pieds ?)</translation>
    </message>
    <message>
        <source>far off the others&apos; count</source>
        <translation>très éloigné du compte des autres</translation>
    </message>
    <message>
        <source>an outlier by the test (count lost?)</source>
        <translation>valeur aberrante selon le test (compte perdu ?)</translation>
    </message>
    <message numerus="yes">
        <source>%n try(s) kept, as too few would be left: %1.</source>
        <translation>
            <numerusform>%n essai conservé, car il en resterait trop peu&#xa0;: %1.</numerusform>
            <numerusform>%n essais conservés, car il en resterait trop peu&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n try(s) left out: %1.</source>
        <translation>
            <numerusform>%n essai écarté&#xa0;: %1.</numerusform>
            <numerusform>%n essais écartés&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sloped try(s) brought to the level by the slope table.</source>
        <translation>
            <numerusform>%n essai en pente ramené au plat par la table des pentes.</numerusform>
            <numerusform>%n essais en pente ramenés au plat par la table des pentes.</numerusform>
        </translation>
    </message>
    <message>
        <source>Slope changes the count %1 times as much as the slope table says (95 %: %2 to %3).</source>
        <translation>La pente change le compte %1 fois autant que le dit la table des pentes (95&#xa0;%&#xa0;: %2 à %3).</translation>
    </message>
    <message>
        <source>The tries hardly tell how slope changes the count.</source>
        <translation>Les essais ne disent guère comment la pente change le compte.</translation>
    </message>
    <message>
        <source>The table does not hold for this walker: paces on slopes will be off, and those of level ground are taken from the tries&apos; own line. Count level tries.</source>
        <translation>La table ne vaut pas pour ce marcheur&#xa0;: les pas sur les pentes seront faux, et ceux en terrain plat sont tirés de la droite de ses propres essais. Comptez des essais en terrain plat.</translation>
    </message>
    <message>
        <source>Sloped tries brought to the level by the table.</source>
        <translation>Essais en pente ramenés au plat par la table.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n try(s) used, %2 m.</source>
        <translation>
            <numerusform>%1 essai sur %n utilisé, %2 m.</numerusform>
            <numerusform>Essais utilisés&#xa0;: %1 sur %n, %2 m.</numerusform>
        </translation>
    </message>
    <message>
        <source>One try tells no error: pace_err and the interval are empty. Walk it again, at least twice.</source>
        <translation>Un seul essai ne dit rien de l’erreur&#xa0;: pace_err et l’intervalle sont vides. Marchez-le de nouveau, au moins deux fois.</translation>
    </message>
    <message numerus="yes">
        <source>Only %n tries: the interval is wide. Four or more tell much more.</source>
        <translation>
            <numerusform>Seulement %n essai&#xa0;: l’intervalle est large. Quatre ou plus en disent bien davantage.</numerusform>
            <numerusform>Seulement %n essais&#xa0;: l’intervalle est large. Quatre ou plus en disent bien davantage.</numerusform>
        </translation>
    </message>
    <message>
        <source>The tries agree better than whole paces can tell; the spread is that of rounding.</source>
        <translation>Les essais concordent mieux que des pas entiers ne peuvent le dire&#xa0;; la dispersion est celle de l’arrondi.</translation>
    </message>
    <message>
        <source>CHECK: steps of %1 m are longer than anybody&apos;s. If these are double paces, run again with PACE_KIND 1.</source>
        <translation>À VÉRIFIER&#xa0;: des pas de %1 m sont plus longs que ceux de quiconque. Si ce sont des doubles pas, relancez avec PACE_KIND 1.</translation>
    </message>
    <message>
        <source>CHECK: steps of %1 m are short even for a small child. Are the distances in metres, and is PACE_KIND what was counted?</source>
        <translation>À VÉRIFIER&#xa0;: des pas de %1 m sont courts même pour un petit enfant. Les distances sont-elles en mètres, et PACE_KIND est-il ce qui a été compté&#xa0;?</translation>
    </message>
    <message>
        <source>paces_100m, sd_100m, lo_100m and hi_100m are in double paces here: %1 single steps could be read two ways.</source>
        <translation>paces_100m, sd_100m, lo_100m et hi_100m sont ici en doubles pas&#xa0;: %1 pas simples pourraient se lire de deux façons.</translation>
    </message>
    <message>
        <source>Walker “%1”: also written %2; taken for one.</source>
        <translation>Marcheur «&#xa0;%1&#xa0;»&#xa0;: écrit aussi %2&#xa0;; compté comme un seul.</translation>
    </message>
    <message>
        <source>Walker “%1” is left out: %2</source>
        <translation>Le marcheur «&#xa0;%1&#xa0;» est écarté&#xa0;: %2</translation>
    </message>
    <message>
        <source>Walker “%1”: %2</source>
        <translation>Marcheur «&#xa0;%1&#xa0;»&#xa0;: %2</translation>
    </message>
    <message>
        <source>Kept, as too few would be left: %1.</source>
        <translation>Conservé, car il en resterait trop peu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Left out: %1.</source>
        <translation>Écarté&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Walker left out: %1</source>
        <translation>Marcheur écarté&#xa0;: %1</translation>
    </message>
    <message numerus="yes">
        <source>There is no number for any of the %n walker(s). %1</source>
        <translation>
            <numerusform>%n seul marcheur, et il n’y a pas de nombre pour lui. %1</numerusform>
            <numerusform>Il n’y a de nombre pour aucun des %n marcheurs. %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Walkers: %1; tries used: %2, flagged: %3.</source>
        <translation>Marcheurs&#xa0;: %1&#xa0;; essais utilisés&#xa0;: %2, signalés&#xa0;: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n walker(s) left out in all. They are not in the output, and Annotate legs will have no legs for them.</source>
        <translation>
            <numerusform>%n marcheur écarté en tout. Il n’est pas dans la sortie, et Annoter les tronçons n’aura pas de tronçons pour lui.</numerusform>
            <numerusform>%n marcheurs écartés en tout. Ils ne sont pas dans la sortie, et Annoter les tronçons n’aura pas de tronçons pour eux.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CandidatesParameters</name>
    <message>
        <source>Candidates for marks (points)</source>
        <translation>Repères possibles (points)</translation>
    </message>
    <message>
        <source>Trees, boulders, stumps: what can be told from its surroundings and sighted at.</source>
        <translation>Arbres, rochers, souches&#xa0;: ce qui se distingue de son entourage et que l’on peut viser.</translation>
    </message>
    <message>
        <source>Field with the candidate&apos;s name</source>
        <translation>Champ du nom du repère possible</translation>
    </message>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;name&#xa0;», s’il y en a un.</translation>
    </message>
    <message>
        <source>Farthest a mark may lie from the line (m)</source>
        <translation>Plus grande distance d’un repère à la ligne (m)</translation>
    </message>
    <message>
        <source>Marks beside the line are fine, since each has its own bearing; in metres, to either side.</source>
        <translation>Les repères à côté de la ligne conviennent, puisque chacun a son propre azimut&#xa0;; en mètres, de chaque côté.</translation>
    </message>
    <message>
        <source>%1: give a layer with points.</source>
        <translation>%1&#xa0;: indiquez une couche de points.</translation>
    </message>
</context>
<context>
    <name>brushline::CardFeatures</name>
    <message>
        <source>What the legs meet (points)</source>
        <translation>Ce que les tronçons rencontrent (points)</translation>
    </message>
    <message>
        <source>Streams, trails and the like that legs cross or pass, with the fields route, leg, feature, at_m and role: each is told on its leg&apos;s row, with the paces at which it comes.</source>
        <translation>Ruisseaux, sentiers et autres que les tronçons traversent ou à côté desquels ils passent, avec les champs route, leg, feature, at_m et role&#xa0;: chacun est indiqué sur la ligne de son tronçon, avec le nombre de pas auquel il arrive.</translation>
    </message>
    <message>
        <source>%1: layer “%2” lacks these fields: %3. It needs the fields route, leg, feature (what is met) and at_m (metres from the leg&apos;s start).</source>
        <translation>%1&#xa0;: il manque à la couche «&#xa0;%2&#xa0;» le ou les champs %3. Elle doit avoir les champs route, leg, feature (ce qui est rencontré) et at_m (mètres depuis le départ du tronçon).</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” belong to none of the legs or to several, or say neither what is met nor where; passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n enregistrement de la couche «&#xa0;%2&#xa0;» n’appartient à aucun des tronçons ou à plusieurs, ou ne dit pas ce qui est rencontré ou à quel endroit&#xa0;; ignoré.</numerusform>
            <numerusform>%1&#xa0;: %n enregistrements de la couche «&#xa0;%2&#xa0;» n’appartiennent à aucun des tronçons ou à plusieurs, ou ne disent pas ce qui est rencontré ou à quel endroit&#xa0;; ignorés.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CardPrinter</name>
    <message>
        <source>Layer “%1” could not be drawn: %2</source>
        <translation>La couche «&#xa0;%1&#xa0;» n’a pas pu être dessinée&#xa0;: %2</translation>
    </message>
    <message>
        <source>A card could not be made in the temporary folder “%1”. Is its disk full?</source>
        <translation>Une fiche n’a pas pu être créée dans le dossier temporaire «&#xa0;%1&#xa0;». Son disque est-il plein&#xa0;?</translation>
    </message>
</context>
<context>
    <name>brushline::CardsIndex</name>
    <message>
        <source>Leg cards</source>
        <translation>Fiches des tronçons</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Itinéraire</translation>
    </message>
    <message>
        <source>Walker</source>
        <translation>Marcheur</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Sens</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Tronçons</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Mètres</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
</context>
<context>
    <name>brushline::Cautions</name>
    <message>
        <source>The bearings rest on a model of the Earth’s magnetic field, or on a declination read off a map, and are good for the day named. The model has an error of its own, a quarter of a degree or more, and knows nothing of iron in the ground or near the compass.</source>
        <translation>Les azimuts reposent sur un modèle du champ magnétique terrestre, ou sur une déclinaison lue sur une carte, et valent pour le jour indiqué. Le modèle a sa propre erreur, d’un quart de degré ou plus, et ne sait rien du fer dans le sol ou près de la boussole.</translation>
    </message>
    <message>
        <source>Keep the compass away from iron and electric current: knives, phones, vehicles, wire fences, power lines. Stay at least 55 m from a high-tension line, 18 m from a vehicle and 10 m from a wire fence when you read it.</source>
        <translation>Tenez la boussole loin du fer et du courant électrique&#xa0;: couteaux, téléphones, véhicules, clôtures en fil de fer, lignes électriques. Pour la lire, restez à au moins 55 m d’une ligne à haute tension, 18 m d’un véhicule et 10 m d’une clôture en fil de fer.</translation>
    </message>
    <message>
        <source>Check every leg by its back bearing: from the leg’s end sight back to where you came from. The two numbers must differ by half a turn, that is 180 degrees, 3200 mils or 200 gon. If they do not, something draws the needle aside or you are not where you think: stop and find out before you go on.</source>
        <translation>Vérifiez chaque tronçon par son azimut inverse&#xa0;: depuis la fin du tronçon, visez en arrière vers l’endroit d’où vous venez. Les deux nombres doivent différer d’un demi-tour, c’est-à-dire de 180 degrés, 3200 millièmes (mil) ou 200 grades (gon). Sinon, quelque chose dévie l’aiguille ou vous n’êtes pas là où vous croyez&#xa0;: arrêtez-vous et trouvez pourquoi avant de continuer.</translation>
    </message>
    <message>
        <source>A leg is a straight line. It takes no heed of cliffs, water, bogs and thickets: look at the map and at the ground, and go round what is dangerous.</source>
        <translation>Un tronçon est une ligne droite. Il ne tient aucun compte des falaises, de l’eau, des marécages ni des fourrés&#xa0;: regardez la carte et le terrain, et contournez ce qui est dangereux.</translation>
    </message>
    <message>
        <source>Tell someone who stays behind where you go and when you will be back.</source>
        <translation>Dites à quelqu’un qui ne part pas avec vous où vous allez et quand vous serez de retour.</translation>
    </message>
    <message>
        <source>Set a time at which you turn back, wherever you are then, and keep to it.</source>
        <translation>Fixez une heure à laquelle vous ferez demi-tour, où que vous soyez alors, et respectez-la.</translation>
    </message>
    <message>
        <source>Ask whose land it is, and whether there is hunting on it. Local rules and the word of a qualified leader stand above anything written here.</source>
        <translation>Demandez à qui appartient le terrain, et si l’on y chasse. Les règles locales et l’avis d’un encadrant qualifié passent avant tout ce qui est écrit ici.</translation>
    </message>
    <message>
        <source>Walk a new course yourself before children do.</source>
        <translation>Parcourez vous-même tout nouveau parcours avant que des enfants ne le fassent.</translation>
    </message>
    <message>
        <source>At the end of a leg sight back. If its back number does not fit, stop and think.</source>
        <translation>Au bout d’un tronçon, visez en arrière. Si l’azimut inverse ne correspond pas, arrêtez-vous et réfléchissez.</translation>
    </message>
    <message>
        <source>The line knows nothing of cliffs, water or thicket: look, go round, come back to it.</source>
        <translation>La ligne ne sait rien des falaises, de l’eau ni des fourrés&#xa0;: regardez, contournez, puis revenez sur la ligne.</translation>
    </message>
    <message>
        <source>Not sure? Stay together, and go back to the last place you knew.</source>
        <translation>Un doute&#xa0;? Restez ensemble et retournez au dernier endroit que vous connaissiez.</translation>
    </message>
    <message>
        <source>Knives, phones, cars, wire fences and power lines turn the needle: keep away from iron and current.</source>
        <translation>Les couteaux, les téléphones, les voitures, les clôtures en fil de fer et les lignes électriques font tourner l’aiguille&#xa0;: restez loin du fer et du courant.</translation>
    </message>
    <message>
        <source>Local rules and the word of a qualified leader come first. Ask whose land it is.</source>
        <translation>Les règles locales et l’avis d’un encadrant qualifié passent avant tout. Demandez à qui est le terrain.</translation>
    </message>
</context>
<context>
    <name>brushline::CheckHazardsAlgorithm</name>
    <message>
        <source>Check legs for hazards</source>
        <translation>Vérifier les dangers des tronçons</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planification</translation>
    </message>
    <message>
        <source>hazard,danger,power line,iron,fence,cliff,water,slope,steep,compass,leg,route</source>
        <translation>danger,risque,ligne électrique,fer,clôture,falaise,eau,pente,raide,boussole,tronçon,itinéraire</translation>
    </message>
    <message>
        <source>Finds the stretches of legs where iron or current draws the needle off, where the ground is too steep, and which come close to cliffs, water and other hazards.</source>
        <translation>Trouve les passages des tronçons où le fer ou le courant dévie l’aiguille, où le terrain est trop raide, et qui s’approchent de falaises, d’eau et d’autres dangers.</translation>
    </message>
    <message>
        <source>Stretches to take care on</source>
        <translation>Passages où faire attention</translation>
    </message>
    <message>
        <source>Hazards found</source>
        <translation>Dangers trouvés</translation>
    </message>
    <message>
        <source>From %1 to %2 m the ground is steeper than %3°: go round, or let a qualified leader decide on the spot.</source>
        <translation>De %1 à %2 m, le terrain est plus raide que %3°&#xa0;: contournez, ou laissez un encadrant qualifié décider sur place.</translation>
    </message>
    <message>
        <source>No compass works here, near the magnetic pole: find your way by other means.</source>
        <translation>Aucune boussole ne fonctionne ici, près du pôle magnétique&#xa0;: trouvez votre chemin par d’autres moyens.</translation>
    </message>
    <message>
        <source>The needle is weak here, near the magnetic pole: do not rely on it alone.</source>
        <translation>L’aiguille est faible ici, près du pôle magnétique&#xa0;: ne vous fiez pas à elle seule.</translation>
    </message>
    <message>
        <source>Do not trust the needle from %1 to %2 m, within %3 m of: %4. Sight a mark beyond before you get there, and read the compass again behind it.</source>
        <translation>Ne vous fiez pas à l’aiguille de %1 à %2 m, à moins de %3 m de&#xa0;: %4. Avant d’y arriver, visez un repère situé au-delà, et ne relisez la boussole qu’une fois ce passage derrière vous.</translation>
    </message>
    <message>
        <source>From %1 to %2 m the leg is within %3 m of: %4. Stop short of it, look, and go round.</source>
        <translation>De %1 à %2 m, le tronçon est à moins de %3 m de&#xa0;: %4. Arrêtez-vous avant, regardez et contournez.</translation>
    </message>
    <message>
        <source>On %1 m of the legs there are no heights: the slope there is not known.</source>
        <translation>Sur %1 m des tronçons, il n’y a pas d’altitudes&#xa0;: la pente y est inconnue.</translation>
    </message>
    <message>
        <source>No hazard was found. That does not mean that there is none: the layers know only what somebody drew.</source>
        <translation>Aucun danger n’a été trouvé. Cela ne veut pas dire qu’il n’y en a pas&#xa0;: les couches ne savent que ce que quelqu’un a dessiné.</translation>
    </message>
    <message numerus="yes">
        <source>%n stretch(es) to take care on.</source>
        <translation>
            <numerusform>%n passage où faire attention.</numerusform>
            <numerusform>%n passages où faire attention.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ChooseMarksAlgorithm</name>
    <message>
        <source>Choose marks to leapfrog between</source>
        <translation>Choisir des repères de proche en proche</translation>
    </message>
    <message>
        <source>Sighting</source>
        <translation>Visée</translation>
    </message>
    <message>
        <source>mark,tree,boulder,leapfrog,sighting,bearing,compass,leg,route,landmark</source>
        <translation>repère,arbre,rocher,de proche en proche,visée,azimut,boussole,tronçon,itinéraire,point remarquable</translation>
    </message>
    <message>
        <source>Chooses, from trees, boulders and stumps, the chain of marks that leads along each leg, each visible from the one before.</source>
        <translation>Choisit, parmi les arbres, les rochers et les souches, la chaîne de repères qui mène le long de chaque tronçon, chacun visible depuis le précédent.</translation>
    </message>
</context>
<context>
    <name>brushline::ChosenMarksWriter</name>
    <message>
        <source>Marks</source>
        <translation>Repères</translation>
    </message>
    <message>
        <source>Sightings (from mark to mark)</source>
        <translation>Visées (de repère en repère)</translation>
    </message>
    <message>
        <source>Gaps (no candidate serves)</source>
        <translation>Lacunes (aucun repère possible ne convient)</translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s) written.</source>
        <translation>
            <numerusform>%n repère écrit.</numerusform>
            <numerusform>%n repères écrits.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) that no candidate serves. Marks put on the line there: %1.</source>
        <translation>
            <numerusform>%n lacune pour laquelle aucun repère possible ne convient. Repères placés là sur la ligne&#xa0;: %1.</numerusform>
            <numerusform>%n lacunes pour lesquelles aucun repère possible ne convient. Repères placés là sur la ligne&#xa0;: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s) cannot be seen from the one before: sight_m is shorter than the way there. Go from hand to hand there, or give a smaller SPACING_MIN.</source>
        <translation>
            <numerusform>%n repère n’est pas visible depuis le précédent&#xa0;: sight_m est plus court que le chemin jusque-là. Y avancer à portée de main les uns des autres, ou donner un SPACING_MIN plus petit.</numerusform>
            <numerusform>%n repères ne sont pas visibles depuis le précédent&#xa0;: sight_m est plus court que le chemin jusque-là. Y avancer à portée de main les uns des autres, ou donner un SPACING_MIN plus petit.</numerusform>
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
        <translation>%1 pas (%2 m)</translation>
    </message>
    <message>
        <source>All bearings may be counted from true north already.</source>
        <translation>Tous les azimuts sont peut-être déjà comptés à partir du nord vrai (géographique).</translation>
    </message>
    <message>
        <source>All bearings may be counted from magnetic north.</source>
        <translation>Tous les azimuts sont peut-être comptés à partir du nord magnétique.</translation>
    </message>
    <message>
        <source>The declination may have been turned the wrong way round on all bearings.</source>
        <translation>La déclinaison a peut-être été appliquée dans le mauvais sens à tous les azimuts.</translation>
    </message>
    <message>
        <source>All legs may be half as long: counted in the other kind of paces.</source>
        <translation>Tous les tronçons ont peut-être la moitié de cette longueur&#xa0;: comptés dans l’autre sorte de pas.</translation>
    </message>
    <message>
        <source>All legs may be twice as long: counted in the other kind of paces.</source>
        <translation>Tous les tronçons ont peut-être le double de cette longueur&#xa0;: comptés dans l’autre sorte de pas.</translation>
    </message>
    <message>
        <source>Leg %1 (row %2)</source>
        <translation>Tronçon %1 (ligne %2)</translation>
    </message>
    <message>
        <source>%1 may have its back bearing noted: “%2” for %3.</source>
        <translation>%1&#xa0;: son azimut inverse a peut-être été noté, «&#xa0;%2&#xa0;» au lieu de %3.</translation>
    </message>
    <message>
        <source>%1 may have two digits of its bearing swapped: “%2” for %3.</source>
        <translation>%1&#xa0;: deux chiffres de son azimut sont peut-être intervertis, «&#xa0;%2&#xa0;» au lieu de %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred paces too many: %2 for %3.</source>
        <translation>%1&#xa0;: il y a peut-être cent pas de trop, %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred metres too many: %2 for %3.</source>
        <translation>%1&#xa0;: il y a peut-être cent mètres de trop, %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred paces too few: %2 for %3.</source>
        <translation>%1&#xa0;: il manque peut-être cent pas, %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>%1 may have a hundred metres too few: %2 for %3.</source>
        <translation>%1&#xa0;: il manque peut-être cent mètres, %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>%1 may be counted in the other kind of paces: %2 for %3.</source>
        <translation>%1&#xa0;: il est peut-être compté dans l’autre sorte de pas, %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>%1 may be wrong in its length: %2 for %3.</source>
        <translation>%1&#xa0;: sa longueur est peut-être fausse, %2 au lieu de %3.</translation>
    </message>
    <message>
        <source>The errors allow %1 m.</source>
        <translation>Les erreurs expliquent jusqu’à %1 m.</translation>
    </message>
    <message>
        <source>No single slip accounts for more: look for two, or measure again.</source>
        <translation>Aucune faute unique n’explique davantage&#xa0;: cherchez-en deux, ou mesurez de nouveau.</translation>
    </message>
    <message>
        <source>Then it would miss by %1 m.</source>
        <translation>L’écart serait alors de %1 m.</translation>
    </message>
    <message numerus="yes">
        <source>%n other slip(s) would account for it too.</source>
        <translation>
            <numerusform>%n autre faute l’expliquerait aussi.</numerusform>
            <numerusform>%n autres fautes l’expliqueraient aussi.</numerusform>
        </translation>
    </message>
    <message>
        <source>No other single slip would account for it.</source>
        <translation>Aucune autre faute unique ne l’expliquerait.</translation>
    </message>
    <message>
        <source>This route misses its end by %1 m, more than its errors allow (%2 m): do not walk it before the slip is found.</source>
        <translation>Cet itinéraire manque son arrivée de %1 m, plus que ses erreurs ne l’expliquent (%2 m)&#xa0;: ne le parcourez pas avant que la faute soit trouvée.</translation>
    </message>
    <message>
        <source>Spreading the miss over the legs has only hidden it.</source>
        <translation>Répartir l’écart sur les tronçons n’a fait que cacher la faute.</translation>
    </message>
    <message numerus="yes">
        <source>Route “%1”: %n leg(s), %2 m; misses its end by %3 m</source>
        <translation>
            <numerusform>Itinéraire «&#xa0;%1&#xa0;»&#xa0;: %n tronçon, %2 m&#xa0;; manque son arrivée de %3 m</numerusform>
            <numerusform>Itinéraire «&#xa0;%1&#xa0;»&#xa0;: %n tronçons, %2 m&#xa0;; manque son arrivée de %3 m</numerusform>
        </translation>
    </message>
    <message>
        <source> towards %1° true, 1 in %2</source>
        <translation> vers %1° (azimut vrai), 1 sur %2</translation>
    </message>
</context>
<context>
    <name>brushline::CompareTrackAlgorithm</name>
    <message>
        <source>Compare a walked track</source>
        <translation>Comparer une trace parcourue</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>GPX,GPS,track,log,error,bearing,declination,pace,drift,cross-track,leg,route</source>
        <translation>GPX,GPS,trace,enregistrement,erreur,azimut,déclinaison,pas,dérive,écart latéral,tronçon,itinéraire</translation>
    </message>
    <message>
        <source>Cuts a recorded track where its walker turned, holds each leg against the plan, and tells what all legs have in common: a compass that is off, a pace that is too long.</source>
        <translation>Coupe une trace enregistrée là où le marcheur a changé de direction, compare chaque tronçon au plan et dit ce que tous les tronçons ont en commun&#xa0;: une boussole qui dévie, un pas trop long.</translation>
    </message>
    <message>
        <source>Farthest from a planned turn (m)</source>
        <translation>Plus grande distance à un changement de direction prévu (m)</translation>
    </message>
    <message>
        <source>A walked turn lies within it of the planned one, and so does some part of a track that is a walk of a route. Larger for long routes and large errors.</source>
        <translation>Un changement de direction de la marche se trouve à moins de cela de celui qui était prévu, de même qu’une partie au moins d’une trace qui parcourt un itinéraire. Plus grand pour des itinéraires longs et de grandes erreurs.</translation>
    </message>
    <message>
        <source>Most days between a track and the day of its legs</source>
        <translation>Nombre maximal de jours entre une trace et le jour de ses tronçons</translation>
    </message>
    <message>
        <source>A track of another time is refused: its clock was wrong, or the numbers of the legs were not made for it.</source>
        <translation>Une trace d’une autre époque est refusée&#xa0;: son horloge était fausse, ou les nombres des tronçons n’ont pas été faits pour elle.</translation>
    </message>
    <message>
        <source>Tracks read</source>
        <translation>Traces lues</translation>
    </message>
    <message>
        <source>Tracks compared</source>
        <translation>Traces comparées</translation>
    </message>
    <message>
        <source>%1: track “%2” (%3) %4 Left out.</source>
        <translation>%1&#xa0;: la trace «&#xa0;%2&#xa0;» (%3) %4 Écartée.</translation>
    </message>
    <message>
        <source>is said to be of route “%1”, which is not among the legs.</source>
        <translation>est dite de l’itinéraire «&#xa0;%1&#xa0;», qui n’est pas parmi les tronçons.</translation>
    </message>
    <message>
        <source>was recorded on %1, but its legs are made for %2. Was its clock set? If both are right, give a larger %3.</source>
        <translation>a été enregistrée le %1, mais ses tronçons sont faits pour le %2. Son horloge était-elle réglée&#xa0;? Si les deux sont justes, indiquez un %3 plus grand.</translation>
    </message>
    <message>
        <source>Track “%1”: left out %2.</source>
        <translation>Trace «&#xa0;%1&#xa0;», non pris en compte&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Track “%1” fits route “%2” as well as “%3”; taken for the latter. Name its route to be sure.</source>
        <translation>La trace «&#xa0;%1&#xa0;» correspond aussi bien à l’itinéraire «&#xa0;%2&#xa0;» qu’à «&#xa0;%3&#xa0;»&#xa0;; c’est ce dernier qui est retenu. Nommez son itinéraire pour en être sûr.</translation>
    </message>
    <message>
        <source>No track could be compared.</source>
        <translation>Aucune trace n’a pu être comparée.</translation>
    </message>
    <message numerus="yes">
        <source>%n track(s) left out in all.</source>
        <translation>
            <numerusform>%n trace écartée en tout.</numerusform>
            <numerusform>%n traces écartées en tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: there is no track in layer “%2”. Of a GPX file take the layer track_points.</source>
        <translation>%1&#xa0;: il n’y a aucune trace dans la couche «&#xa0;%2&#xa0;». D’un fichier GPX, prenez la couche track_points.</translation>
    </message>
</context>
<context>
    <name>brushline::CompassParameters</name>
    <message>
        <source>Magnetic north</source>
        <translation>Nord magnétique</translation>
    </message>
    <message>
        <source>True north (compass set off for declination)</source>
        <translation>Nord vrai, géographique (boussole corrigée de la déclinaison)</translation>
    </message>
    <message>
        <source>Grid north</source>
        <translation>Nord de la grille</translation>
    </message>
    <message>
        <source>Degrees (360)</source>
        <translation>Degrés (360)</translation>
    </message>
    <message>
        <source>Mils (6400)</source>
        <translation>Millièmes (mil, 6400)</translation>
    </message>
    <message>
        <source>Gon (400)</source>
        <translation>Grades (gon, 400)</translation>
    </message>
    <message>
        <source>North the dial is set for</source>
        <translation>Nord pour lequel le cadran est réglé</translation>
    </message>
    <message>
        <source>The north that the numbers for the dial are counted from. Magnetic for a plain compass; true for one whose needle house has been set off for declination; grid for working with map grid bearings only.</source>
        <translation>Le nord à partir duquel les azimuts à afficher sont comptés. Magnétique pour une boussole simple&#xa0;; vrai (géographique) pour une boussole dont le boîtier de l’aiguille a été corrigé de la déclinaison&#xa0;; de la grille pour travailler uniquement avec des azimuts de la grille de la carte.</translation>
    </message>
    <message>
        <source>Unit of the dial</source>
        <translation>Unité du cadran</translation>
    </message>
    <message>
        <source>What the dial of the compass is divided in.</source>
        <translation>Ce en quoi le cadran de la boussole est divisé.</translation>
    </message>
    <message>
        <source>Graduation of the dial, in its unit</source>
        <translation>Graduation du cadran, dans son unité</translation>
    </message>
    <message>
        <source>Numbers for the dial are rounded to a multiple of this, since nobody can set it finer.</source>
        <translation>Les azimuts à afficher sont arrondis à un multiple de cette valeur, puisque personne ne peut régler plus finement.</translation>
    </message>
    <message>
        <source>Error of one sighting (degrees, 1 sigma)</source>
        <translation>Erreur d’une visée (degrés, 1 sigma)</translation>
    </message>
    <message>
        <source>How far a single sighting strays, as a standard deviation in degrees. 3 is usual for a baseplate compass in a grown hand, 5 or more for children.</source>
        <translation>De combien une seule visée s’écarte, en écart-type, en degrés. 3 est courant pour une boussole à plaquette dans la main d’un adulte, 5 ou plus pour des enfants.</translation>
    </message>
    <message>
        <source>%1 (%2) is %3, an eighth of the circle is %4: give the graduation printed on the dial, in the dial&apos;s unit.</source>
        <translation>%1 (%2) vaut %3, un huitième du cercle vaut %4&#xa0;: indiquez la graduation imprimée sur le cadran, dans l’unité du cadran.</translation>
    </message>
</context>
<context>
    <name>brushline::CourseMap</name>
    <message>
        <source>INPUT: the legs of route “%1” cannot be brought into the projection %2 of a map. Are its coordinates right?</source>
        <translation>INPUT&#xa0;: les tronçons de l’itinéraire «&#xa0;%1&#xa0;» ne peuvent pas être amenés dans la projection %2 d’une carte. Ses coordonnées sont-elles justes&#xa0;?</translation>
    </message>
</context>
<context>
    <name>brushline::Courses</name>
    <message>
        <source>back</source>
        <translation>retour</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Tronçons</translation>
    </message>
    <message>
        <source>%1 end</source>
        <translation>%1 fin</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Arrivée</translation>
    </message>
</context>
<context>
    <name>brushline::CoverParameters</name>
    <message>
        <source>%1: layer “%2” has no field “class”: give the field that holds the classes.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de champ «&#xa0;class&#xa0;»&#xa0;: indiquez le champ qui contient les classes.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no column “%3”. It needs class and sight_m, and may have sight_bare, speed_f, pace_f and note.</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» n’a pas de colonne «&#xa0;%3&#xa0;». Il lui faut class et sight_m, et elle peut avoir sight_bare, speed_f, pace_f et note.</translation>
    </message>
    <message>
        <source>%1: table “%2”, class “%3”: %4 is “%5”; give a number from %6 to %7, with a decimal point.</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», classe «&#xa0;%3&#xa0;»&#xa0;: %4 vaut «&#xa0;%5&#xa0;»&#xa0;; indiquez un nombre de %6 à %7, avec un point décimal.</translation>
    </message>
    <message>
        <source>%1: table “%2”, class “%3” has no sight_m. Give the distance in metres at which half the marks are still clear.</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», la classe «&#xa0;%3&#xa0;» n’a pas de sight_m. Indiquez la distance en mètres à laquelle la moitié des repères sont encore nets.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: %4. Give each class one row with its name.</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», entité %3&#xa0;: %4. Donnez à chaque classe une seule ligne, avec son nom.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no classes.</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» n’a pas de classes.</translation>
    </message>
    <message>
        <source>%1 (%2 m) is more than %3 (%4 m): give a least spacing below the most.</source>
        <translation>%1 (%2 m) est plus grand que %3 (%4 m)&#xa0;: indiquez un espacement minimal inférieur au maximal.</translation>
    </message>
    <message>
        <source>Brushline&apos;s own names</source>
        <translation>Noms propres à Brushline</translation>
    </message>
    <message>
        <source>ESA WorldCover codes</source>
        <translation>Codes ESA WorldCover</translation>
    </message>
    <message>
        <source>CORINE level 3 codes</source>
        <translation>Codes CORINE niveau 3</translation>
    </message>
    <message>
        <source>NLCD codes</source>
        <translation>Codes NLCD</translation>
    </message>
    <message>
        <source>Orienteering map symbol numbers (ISOM 2017-2)</source>
        <translation>Numéros de symboles des cartes de course d’orientation (ISOM 2017-2)</translation>
    </message>
    <message>
        <source>In leaf</source>
        <translation>En feuilles</translation>
    </message>
    <message>
        <source>Bare</source>
        <translation>Sans feuilles</translation>
    </message>
    <message>
        <source>Cover (polygons)</source>
        <translation>Végétation (polygones)</translation>
    </message>
    <message>
        <source>What stands on the ground: open, wood, brush, thicket. Where polygons overlap, the first in the layer counts.</source>
        <translation>Ce qui couvre le sol&#xa0;: terrain ouvert, bois, broussailles, fourré. Là où des polygones se superposent, le premier de la couche compte.</translation>
    </message>
    <message>
        <source>Field with the class of cover</source>
        <translation>Champ de la classe de végétation</translation>
    </message>
    <message>
        <source>Empty: the field called “class”.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;class&#xa0;».</translation>
    </message>
    <message>
        <source>Cover raster (class codes)</source>
        <translation>Raster de végétation (codes de classes)</translation>
    </message>
    <message>
        <source>Land cover as whole numbers, looked up in the cover table; used where no polygon lies.</source>
        <translation>Occupation du sol en nombres entiers, cherchés dans la table de végétation&#xa0;; utilisée là où il n’y a pas de polygone.</translation>
    </message>
    <message>
        <source>Names or codes of the classes</source>
        <translation>Noms ou codes des classes</translation>
    </message>
    <message>
        <source>The built-in table that the classes are looked up in, unless a table of your own is given.</source>
        <translation>La table intégrée dans laquelle les classes sont cherchées, sauf si vous indiquez votre propre table.</translation>
    </message>
    <message>
        <source>Cover table of your own</source>
        <translation>Votre propre table de végétation</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Saison</translation>
    </message>
    <message>
        <source>Whether the leaves are out. Bare uses sight_bare where the table has it.</source>
        <translation>Si les feuilles sont sorties. Sans feuilles utilise sight_bare là où la table en a un.</translation>
    </message>
    <message>
        <source>Sight distance raster (m)</source>
        <translation>Raster des distances de visibilité (m)</translation>
    </message>
    <message>
        <source>Metres at which half the marks are still clear. Takes precedence over the cover where it has data.</source>
        <translation>Mètres auxquels la moitié des repères sont encore nets. L’emporte sur la végétation là où il a des données.</translation>
    </message>
    <message>
        <source>Chance of a clear sight that a mark needs</source>
        <translation>Probabilité de vue nette exigée pour un repère</translation>
    </message>
    <message>
        <source>A mark is used up to the distance at which it is clear with this probability; 0.5 is the table&apos;s own sight distance.</source>
        <translation>Un repère est utilisé jusqu’à la distance à laquelle il est net avec cette probabilité&#xa0;; 0,5 est la distance de visibilité de la table elle-même.</translation>
    </message>
    <message>
        <source>Share of the sight distance used</source>
        <translation>Part utilisée de la distance de visibilité</translation>
    </message>
    <message>
        <source>The next mark lies at this share of the sight distance.</source>
        <translation>Le repère suivant se trouve à cette part de la distance de visibilité.</translation>
    </message>
    <message>
        <source>Least spacing of marks (m)</source>
        <translation>Espacement minimal des repères (m)</translation>
    </message>
    <message>
        <source>Marks lie no nearer together than this, in metres, even where it cannot be seen; the leg&apos;s warnings then say so.</source>
        <translation>Les repères ne sont pas plus rapprochés que cela, en mètres, même là où l’on ne voit pas aussi loin&#xa0;; les avertissements du tronçon le disent alors.</translation>
    </message>
    <message>
        <source>Most spacing of marks (m)</source>
        <translation>Espacement maximal des repères (m)</translation>
    </message>
    <message>
        <source>Marks lie no farther apart than this, in metres.</source>
        <translation>Les repères ne sont pas plus éloignés les uns des autres que cela, en mètres.</translation>
    </message>
    <message>
        <source>%1: codes that the cover table lacks: %2. Nothing is known of the cover there. Give them in %3, or choose the %4 they belong to.</source>
        <translation>%1&#xa0;: codes qui manquent à la table de végétation&#xa0;: %2. On n’y sait rien de la végétation. Ajoutez-les dans %3, ou choisissez le %4 auquel ils appartiennent.</translation>
    </message>
    <message>
        <source>%1: has values of 0 or less; they were taken for places without data.</source>
        <translation>%1&#xa0;: contient des valeurs inférieures ou égales à 0&#xa0;; elles ont été prises pour des endroits sans données.</translation>
    </message>
    <message>
        <source>Speed factor where no cover is known</source>
        <translation>Facteur de vitesse là où la végétation n’est pas connue</translation>
    </message>
    <message>
        <source>Where a cover is given but says nothing. 1: as without a map of the cover; nobody has looked there whether there is water or thicket. 0: nobody is sent there.</source>
        <translation>Là où une végétation est indiquée mais ne dit rien. 1&#xa0;: comme sans carte de la végétation&#xa0;; personne n’y a regardé s’il y a de l’eau ou un fourré. 0&#xa0;: personne n’y est envoyé.</translation>
    </message>
    <message numerus="yes">
        <source>%n leg(s) lead over ground without known cover, %1 m in all: nobody has looked whether there is water or thicket. Look at it before anybody walks there; with %2=0 no leg leads over such ground.</source>
        <translation>
            <numerusform>%n tronçon passe sur un terrain dont la végétation n’est pas connue, %1 m en tout&#xa0;: personne n’a regardé s’il y a de l’eau ou un fourré. Examinez-le avant que quiconque y marche&#xa0;; avec %2=0, aucun tronçon ne passe sur un tel terrain.</numerusform>
            <numerusform>%n tronçons passent sur un terrain dont la végétation n’est pas connue, %1 m en tout&#xa0;: personne n’a regardé s’il y a de l’eau ou un fourré. Examinez-le avant que quiconque y marche&#xa0;; avec %2=0, aucun tronçon ne passe sur un tel terrain.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has classes that the cover table lacks: %3. These polygons are passed over, and what else is given of the cover there counts. Give them in %4, or choose the %5 they belong to.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» a des classes qui manquent à la table de végétation&#xa0;: %3. Ces polygones sont laissés de côté&#xa0;; ce qui est donné d’autre sur la végétation y compte. Ajoutez-les dans %4, ou choisissez le %5 auquel elles appartiennent.</translation>
    </message>
    <message>
        <source>Columns: class, sight_m (metres at which half the marks are still clear), and if you like sight_bare (the same when the leaves are off), speed_f (1 is the speed off trails, 0 or empty where nobody walks), pace_f (of the number of paces), note. Measure your own: walk away from a mark until half of it is gone.</source>
        <translation>Colonnes&#xa0;: class, sight_m (mètres auxquels la moitié des repères sont encore nets) et, si vous le souhaitez, sight_bare (la même chose quand les feuilles sont tombées), speed_f (1 est la vitesse hors sentier, 0 ou vide là où personne ne marche), pace_f (facteur sur le nombre de pas), note. Mesurez vous-même&#xa0;: éloignez-vous d’un repère jusqu’à ce que la moitié en ait disparu.</translation>
    </message>
</context>
<context>
    <name>brushline::CoverPatches</name>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” without a usable geometry passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n polygone de la couche «&#xa0;%2&#xa0;» sans géométrie utilisable, ignoré.</numerusform>
            <numerusform>%1&#xa0;: %n polygones de la couche «&#xa0;%2&#xa0;» sans géométrie utilisable, ignorés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</source>
        <translation>
            <numerusform>%1&#xa0;: %n polygone de la couche «&#xa0;%2&#xa0;» n’est pas valide (il se croise ou se touche lui-même). Ce qui est entouré un nombre impair de fois compte comme intérieur. Réparez-le avec «&#xa0;Réparer les géométries&#xa0;».</numerusform>
            <numerusform>%1&#xa0;: %n polygones de la couche «&#xa0;%2&#xa0;» ne sont pas valides (ils se croisent ou se touchent eux-mêmes). Ce qui est entouré un nombre impair de fois compte comme intérieur. Réparez-les avec «&#xa0;Réparer les géométries&#xa0;».</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::DateAndFieldParameters</name>
    <message>
        <source>Declination read off a map (degrees, east positive)</source>
        <translation>Déclinaison lue sur une carte (degrés, est positif)</translation>
    </message>
    <message>
        <source>Day of the walk (today when empty)</source>
        <translation>Jour de la marche (aujourd’hui si vide)</translation>
    </message>
    <message>
        <source>Magnetic north moves; the bearings are good for this day. Year-month-day. The built-in World Magnetic Model 2025 knows the years 2025 to 2029.</source>
        <translation>Le nord magnétique se déplace&#xa0;; les azimuts valent pour ce jour. Année-mois-jour. Le World Magnetic Model 2025 intégré connaît les années 2025 à 2029.</translation>
    </message>
    <message>
        <source>The bearing of magnetic north from true north: east positive, west negative. Replaces the model&apos;s value everywhere. Its error is not known, so none is given.</source>
        <translation>L’azimut du nord magnétique à partir du nord vrai (géographique)&#xa0;: est positif, ouest négatif. Remplace partout la valeur du modèle. Son erreur n’est pas connue&#xa0;; aucune n’est donc indiquée.</translation>
    </message>
    <message>
        <source>Magnetic model installed for GeographicLib</source>
        <translation>Modèle magnétique installé pour GeographicLib</translation>
    </message>
    <message>
        <source>Name of a magnetic model in GeographicLib&apos;s folder on this machine, for example igrf14, for years or places where the built-in one does not serve. Empty: the built-in World Magnetic Model 2025.</source>
        <translation>Nom d’un modèle magnétique dans le dossier de GeographicLib sur cette machine, par exemple igrf14, pour des années ou des lieux où le modèle intégré ne convient pas. Vide&#xa0;: le World Magnetic Model 2025 intégré.</translation>
    </message>
    <message>
        <source>%1: %2 is outside the years of the magnetic model %3 (%4 to %5). Give %6, the declination printed on a map of those years, or %7, the name of an installed model that reaches that day.</source>
        <translation>%1&#xa0;: %2 est hors des années du modèle magnétique %3 (%4 à %5). Indiquez %6, la déclinaison imprimée sur une carte de ces années, ou %7, le nom d’un modèle installé qui va jusqu’à ce jour.</translation>
    </message>
    <message>
        <source>%1: no magnetic model “%2” can be read on this machine (%3). Install it for GeographicLib, or leave %1 empty for the built-in World Magnetic Model 2025.</source>
        <translation>%1&#xa0;: aucun modèle magnétique «&#xa0;%2&#xa0;» ne peut être lu sur cette machine (%3). Installez-le pour GeographicLib, ou laissez %1 vide pour le World Magnetic Model 2025 intégré.</translation>
    </message>
</context>
<context>
    <name>brushline::DetourLegsAlgorithm</name>
    <message>
        <source>Detour round obstacles</source>
        <translation>Contourner les obstacles</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planification</translation>
    </message>
    <message>
        <source>obstacle,detour,bypass,box,right angle,pond,thicket,leg,route,compass,paces</source>
        <translation>obstacle,contournement,détour,boîte,angle droit,étang,fourré,tronçon,itinéraire,boussole,pas</translation>
    </message>
    <message>
        <source>Leads legs round ponds and thickets on three sides at right angles, with dial and paces for each piece and the count to go on with.</source>
        <translation>Fait contourner aux tronçons étangs et fourrés sur trois côtés à angle droit, avec l’azimut à afficher et les pas de chaque morceau et le compte avec lequel continuer.</translation>
    </message>
    <message>
        <source>Detours</source>
        <translation>Contournements</translation>
    </message>
    <message>
        <source>Obstacles in the way, not gone round</source>
        <translation>Obstacles sur le chemin, non contournés</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>n’a pas deux sommets distincts, donc pas de tronçon.</translation>
    </message>
</context>
<context>
    <name>brushline::DetourParameters</name>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” cross themselves or have parts that overlap, so what is inside them is not certain and a leg may lead through. Mend the layer with “Fix geometries” first.</source>
        <translation>
            <numerusform>%1&#xa0;: %n polygone de la couche «&#xa0;%2&#xa0;» se croise ou a des parties qui se superposent&#xa0;: ce qui est à l’intérieur n’est donc pas certain et un tronçon peut passer à travers. Réparez d’abord la couche avec «&#xa0;Réparer les géométries&#xa0;».</numerusform>
            <numerusform>%1&#xa0;: %n polygones de la couche «&#xa0;%2&#xa0;» se croisent eux-mêmes ou ont des parties qui se superposent&#xa0;: ce qui est à l’intérieur n’est donc pas certain et un tronçon peut passer à travers. Réparez d’abord la couche avec «&#xa0;Réparer les géométries&#xa0;».</numerusform>
        </translation>
    </message>
    <message>
        <source>Obstacles (polygons)</source>
        <translation>Obstacles (polygones)</translation>
    </message>
    <message>
        <source>Ponds, thickets, fenced land: what nobody walks through.</source>
        <translation>Étangs, fourrés, terrains clos&#xa0;: ce que personne ne traverse.</translation>
    </message>
    <message>
        <source>Field with the obstacle&apos;s name</source>
        <translation>Champ du nom de l’obstacle</translation>
    </message>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;name&#xa0;», s’il y en a un.</translation>
    </message>
    <message>
        <source>Clearance from obstacles (m)</source>
        <translation>Distance à garder des obstacles (m)</translation>
    </message>
    <message>
        <source>How far every piece keeps away from them. With 0 it may touch them.</source>
        <translation>À quelle distance d’eux chaque morceau se tient. Avec 0, il peut les toucher.</translation>
    </message>
    <message>
        <source>Farthest out (m)</source>
        <translation>Écart maximal à la ligne (m)</translation>
    </message>
    <message>
        <source>An obstacle that takes a longer way out on both sides is not gone round, but told.</source>
        <translation>Un obstacle qui demande de s’écarter davantage des deux côtés n’est pas contourné, mais signalé.</translation>
    </message>
    <message>
        <source>%1: give a layer with polygons.</source>
        <translation>%1&#xa0;: indiquez une couche de polygones.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons. Buffer lines or points first.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de polygones. Créez d’abord un tampon autour des lignes ou des points.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons, so nothing is gone round.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de polygones, donc rien n’est contourné.</translation>
    </message>
</context>
<context>
    <name>brushline::DetourWriter</name>
    <message>
        <source>Legs with detours</source>
        <translation>Tronçons avec contournements</translation>
    </message>
    <message>
        <source>obstacle %1</source>
        <translation>obstacle %1</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 de plus</translation>
    </message>
    <message>
        <source>an obstacle</source>
        <translation>un obstacle</translation>
    </message>
    <message>
        <source>the way out would be longer than %1 m</source>
        <translation>il faudrait s’écarter de plus de %1 m</translation>
    </message>
    <message>
        <source>there is no room before it to turn off</source>
        <translation>il n’y a pas la place de quitter la ligne avant lui</translation>
    </message>
    <message>
        <source>there is no room after it to come back before the leg ends</source>
        <translation>il n’y a pas la place de revenir après lui avant la fin du tronçon</translation>
    </message>
    <message>
        <source>NOT PASSED: %1, from %2 m to %3 m of this leg.</source>
        <translation>NON CONTOURNÉ&#xa0;: %1, de %2 m à %3 m de ce tronçon.</translation>
    </message>
    <message>
        <source>move the turning point.</source>
        <translation>déplacez le point où l’on tourne.</translation>
    </message>
    <message>
        <source>move the start.</source>
        <translation>déplacez le départ.</translation>
    </message>
    <message>
        <source>The leg starts inside it: %1</source>
        <translation>Le tronçon commence à l’intérieur&#xa0;: %1</translation>
    </message>
    <message>
        <source>The leg starts nearer to it than %1 m: %2</source>
        <translation>Le tronçon commence à moins de %1 m de lui&#xa0;: %2</translation>
    </message>
    <message>
        <source>move the end.</source>
        <translation>déplacez l’arrivée.</translation>
    </message>
    <message>
        <source>The leg ends inside it: %1</source>
        <translation>Le tronçon finit à l’intérieur&#xa0;: %1</translation>
    </message>
    <message>
        <source>The leg ends nearer to it than %1 m: %2</source>
        <translation>Le tronçon finit à moins de %1 m de lui&#xa0;: %2</translation>
    </message>
    <message>
        <source>On both sides %1.</source>
        <translation>Des deux côtés, %1.</translation>
    </message>
    <message>
        <source>On the left %1; on the right %2.</source>
        <translation>À gauche, %1&#xa0;; à droite, %2.</translation>
    </message>
    <message>
        <source>Route “%1”, leg %2: %3</source>
        <translation>Itinéraire «&#xa0;%1&#xa0;», tronçon %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Legs: %1; detours: %2.</source>
        <translation>Tronçons&#xa0;: %1&#xa0;; contournements&#xa0;: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n obstacle(s) in the way are NOT gone round: see the field “warnings”.</source>
        <translation>
            <numerusform>%n obstacle sur le chemin n’est PAS contourné&#xa0;: voyez le champ «&#xa0;warnings&#xa0;».</numerusform>
            <numerusform>%n obstacles sur le chemin ne sont PAS contournés&#xa0;: voyez le champ «&#xa0;warnings&#xa0;».</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ExportGpxAlgorithm</name>
    <message>
        <source>The environment variable SOURCE_DATE_EPOCH is “%1”, which is no count of seconds since 1970. Correct or unset it.</source>
        <translation>La variable d’environnement SOURCE_DATE_EPOCH vaut «&#xa0;%1&#xa0;», ce qui n’est pas un nombre de secondes depuis 1970. Corrigez-la ou supprimez-la.</translation>
    </message>
    <message>
        <source>Export legs to GPX</source>
        <translation>Exporter les tronçons en GPX</translation>
    </message>
    <message>
        <source>Handouts</source>
        <translation>Documents à emporter</translation>
    </message>
    <message>
        <source>gpx,gps,receiver,handheld,route,waypoint,leg,bearing,paces,compass,export,phone</source>
        <translation>gpx,gps,récepteur,appareil portable,itinéraire,point de cheminement,tronçon,azimut,pas,boussole,exporter,téléphone</translation>
    </message>
    <message>
        <source>Writes annotated legs as routes, and their marks as waypoints, for a GPS receiver or a phone: each point tells the number for the dial and the paces of the leg that starts there.</source>
        <translation>Écrit les tronçons annotés comme itinéraires, et leurs repères comme points de cheminement, pour un récepteur GPS ou un téléphone&#xa0;: chaque point donne l’azimut à afficher et les pas du tronçon qui commence là.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>The file&apos;s name for itself. Empty: the route&apos;s name, if there is one route.</source>
        <translation>Le nom que le fichier se donne. Vide&#xa0;: le nom de l’itinéraire, s’il n’y en a qu’un.</translation>
    </message>
    <message>
        <source>One route for all walkers</source>
        <translation>Un seul itinéraire pour tous les marcheurs</translation>
    </message>
    <message>
        <source>Off: a route for each walker. On: one for all, whose points tell everybody&apos;s paces.</source>
        <translation>Désactivé&#xa0;: un itinéraire pour chaque marcheur. Activé&#xa0;: un seul pour tous, dont les points donnent les pas de chacun.</translation>
    </message>
    <message>
        <source>GPX file</source>
        <translation>Fichier GPX</translation>
    </message>
    <message>
        <source>GPX files (*.gpx)</source>
        <translation>Fichiers GPX (*.gpx)</translation>
    </message>
    <message>
        <source>Appears whole or not at all.</source>
        <translation>Apparaît entier ou pas du tout.</translation>
    </message>
    <message>
        <source>Routes</source>
        <translation>Itinéraires</translation>
    </message>
    <message>
        <source>Points of routes</source>
        <translation>Points des itinéraires</translation>
    </message>
    <message>
        <source>Waypoints (marks)</source>
        <translation>Points de cheminement (repères)</translation>
    </message>
    <message>
        <source>%1: “%2” does not end in .gpx; receivers look at the ending and may pass it over.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» ne finit pas par .gpx&#xa0;; les récepteurs regardent l’extension et peuvent l’ignorer.</translation>
    </message>
    <message>
        <source>Routes: %1; points in them: %2; waypoints: %3.</source>
        <translation>Itinéraires&#xa0;: %1&#xa0;; points qu’ils contiennent&#xa0;: %2&#xa0;; points de cheminement&#xa0;: %3.</translation>
    </message>
</context>
<context>
    <name>brushline::Expressions</name>
    <message>
        <source>%1 is “%2”: give a number, with a decimal point.</source>
        <translation>%1 vaut «&#xa0;%2&#xa0;»&#xa0;: indiquez un nombre, avec un point décimal.</translation>
    </message>
    <message>
        <source>%1 is %2: give a number from %3 to %4.</source>
        <translation>%1 vaut %2&#xa0;: indiquez un nombre de %3 à %4.</translation>
    </message>
    <message>
        <source>The date is “%1”: give a date, or year-month-day as text, for example &apos;2026-05-31&apos;.</source>
        <translation>La date vaut «&#xa0;%1&#xa0;»&#xa0;: indiquez une date, ou année-mois-jour en texte, par exemple &apos;2026-05-31&apos;.</translation>
    </message>
    <message>
        <source>There is no layer or project here whose coordinate reference system could be taken: give one, for example crs:=&apos;EPSG:4326&apos;.</source>
        <translation>Il n’y a ici ni couche ni projet dont prendre le système de coordonnées de référence (SCR)&#xa0;: indiquez-en un, par exemple crs:=&apos;EPSG:4326&apos;.</translation>
    </message>
    <message>
        <source>“%1” is no coordinate reference system that this machine knows: give one as text, for example &apos;EPSG:32621&apos;.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un système de coordonnées de référence (SCR) que cette machine connaît&#xa0;: indiquez-en un en texte, par exemple &apos;EPSG:32621&apos;.</translation>
    </message>
    <message>
        <source>%1, %2 in %3 is no place on the Earth: give the coordinate reference system of these coordinates, for example crs:=&apos;EPSG:4326&apos;.</source>
        <translation>%1, %2 en %3 n’est pas un lieu sur la Terre&#xa0;: indiquez le système de coordonnées de référence (SCR) de ces coordonnées, par exemple crs:=&apos;EPSG:4326&apos;.</translation>
    </message>
    <message>
        <source>The point&apos;s height (Z) of %1 m is beyond -1000 to 850 000 m, where the magnetic model ends.</source>
        <translation>L’altitude du point (Z), %1 m, est hors de -1000 à 850&#xa0;000 m, où le modèle magnétique s’arrête.</translation>
    </message>
    <message>
        <source>%1 is outside the years of the magnetic model %2 (%3 to %4): give a date within them.</source>
        <translation>%1 est hors des années du modèle magnétique %2 (%3 à %4)&#xa0;: indiquez une date comprise dans celles-ci.</translation>
    </message>
    <message>
        <source>The place is “%1”: give a geometry, or x and y.</source>
        <translation>Le lieu vaut «&#xa0;%1&#xa0;»&#xa0;: indiquez une géométrie, ou x et y.</translation>
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
        <translation>L’azimut</translation>
    </message>
    <message>
        <source>The place is “%1”: give a geometry, for example $geometry.</source>
        <translation>Le lieu vaut «&#xa0;%1&#xa0;»&#xa0;: indiquez une géométrie, par exemple $geometry.</translation>
    </message>
    <message>
        <source>The dial&apos;s graduation</source>
        <translation>La graduation du cadran</translation>
    </message>
    <message>
        <source>The distance in metres</source>
        <translation>La distance en mètres</translation>
    </message>
    <message>
        <source>The number of steps over 100 m</source>
        <translation>Le nombre de pas simples sur 100 m</translation>
    </message>
    <message>
        <source>Arguments</source>
        <translation>Arguments</translation>
    </message>
    <message>
        <source>Examples</source>
        <translation>Exemples</translation>
    </message>
    <message>
        <source>&lt;b&gt;geometry&lt;/b&gt;: a point; of a line its first vertex is taken, of anything else the centroid. A point&apos;s own Z counts as its height (m).</source>
        <translation>&lt;b&gt;geometry&lt;/b&gt;&#xa0;: un point&#xa0;; d’une ligne, son premier sommet est pris, de toute autre géométrie, le centroïde. Le Z propre d’un point compte comme son altitude (m).</translation>
    </message>
    <message>
        <source>&lt;b&gt;crs&lt;/b&gt;: the system of the coordinates, for example &apos;EPSG:4326&apos;; left out: the layer&apos;s, without a layer the project&apos;s. In a layout&apos;s label give it.</source>
        <translation>&lt;b&gt;crs&lt;/b&gt;&#xa0;: le système des coordonnées, par exemple &apos;EPSG:4326&apos;&#xa0;; omis&#xa0;: celui de la couche, sans couche celui du projet. Dans l’étiquette d’une mise en page, indiquez-le.</translation>
    </message>
    <message>
        <source>&lt;b&gt;date&lt;/b&gt;: a date, or year-month-day as text; left out: today. The built-in World Magnetic Model 2025 knows the years 2025 to 2029.</source>
        <translation>&lt;b&gt;date&lt;/b&gt;&#xa0;: une date, ou année-mois-jour en texte&#xa0;; omise&#xa0;: aujourd’hui. Le World Magnetic Model 2025 intégré connaît les années 2025 à 2029.</translation>
    </message>
    <message>
        <source>NULL where no compass can be used, near the magnetic poles. Iron and electric current draw a needle off, and no model knows of them: check by the back bearing.</source>
        <translation>NULL là où aucune boussole n’est utilisable, près des pôles magnétiques. Le fer et le courant électrique dévient l’aiguille, et aucun modèle n’en sait rien&#xa0;: vérifiez par l’azimut inverse.</translation>
    </message>
    <message>
        <source>The magnetic declination: the bearing of magnetic north from true north in degrees, east positive.</source>
        <translation>La déclinaison magnétique&#xa0;: l’azimut du nord magnétique à partir du nord vrai (géographique), en degrés, est positif.</translation>
    </message>
    <message>
        <source>&lt;b&gt;x, y&lt;/b&gt;: coordinates instead; longitude first where they are degrees.</source>
        <translation>&lt;b&gt;x, y&lt;/b&gt;&#xa0;: des coordonnées à la place&#xa0;; la longitude d’abord si elles sont en degrés.</translation>
    </message>
    <message>
        <source>The number to set on a compass&apos;s dial, in degrees: the bearing from magnetic north, rounded to the dial&apos;s graduation.</source>
        <translation>L’azimut à afficher sur le cadran d’une boussole, en degrés&#xa0;: l’azimut à partir du nord magnétique, arrondi à la graduation du cadran.</translation>
    </message>
    <message>
        <source>&lt;b&gt;true_bearing&lt;/b&gt;: degrees clockwise from true north, as the field true_brg has it. A bearing from grid north is another.</source>
        <translation>&lt;b&gt;true_bearing&lt;/b&gt;&#xa0;: degrés dans le sens horaire à partir du nord vrai (géographique), comme dans le champ true_brg. Un azimut à partir du nord de la grille est autre chose.</translation>
    </message>
    <message>
        <source>The nearest of the sixteen points of the compass, as text: N, NNE, NE … NNW.</source>
        <translation>Le plus proche des seize points de la rose des vents, en texte&#xa0;: N, NNE, NE … NNW (W&#xa0;: ouest).</translation>
    </message>
    <message>
        <source>The single steps to count over a distance on level ground, as a whole number. One who counts every second step counts half of it. Slopes and brush take more.</source>
        <translation>Les pas simples à compter sur une distance en terrain plat, en nombre entier. Qui compte un pas sur deux en compte la moitié. Les pentes et les broussailles en demandent davantage.</translation>
    </message>
    <message>
        <source>&lt;b&gt;metres&lt;/b&gt;: the distance.</source>
        <translation>&lt;b&gt;metres&lt;/b&gt;&#xa0;: la distance.</translation>
    </message>
    <message>
        <source>&lt;b&gt;paces_per_100m&lt;/b&gt;: single steps the walker takes over 100 m, from 20 to 1000.</source>
        <translation>&lt;b&gt;paces_per_100m&lt;/b&gt;&#xa0;: pas simples que le marcheur fait sur 100 m, de 20 à 1000.</translation>
    </message>
    <message>
        <source>&lt;b&gt;step&lt;/b&gt;: the dial&apos;s graduation in degrees, from 0.01 to 45; left out: 2.</source>
        <translation>&lt;b&gt;step&lt;/b&gt;&#xa0;: graduation du cadran en degrés, de 0,01 à 45&#xa0;; omis&#xa0;: 2.</translation>
    </message>
    <message>
        <source>&lt;b&gt;bearing&lt;/b&gt;: degrees clockwise, any turn. The number of a dial in mils or gon is no such bearing: of a leg take the field compass_pt, or a bearing as in mag_brg.</source>
        <translation>&lt;b&gt;bearing&lt;/b&gt;&#xa0;: degrés dans le sens horaire, tours quelconques. Le nombre d’un cadran en mils ou en gons n’est pas un tel azimut&#xa0;: prenez le champ compass_pt du tronçon, ou un azimut comme dans mag_brg.</translation>
    </message>
</context>
<context>
    <name>brushline::FeaturesMetAlgorithm</name>
    <message>
        <source>Features met along legs</source>
        <translation>Éléments rencontrés le long des tronçons</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planification</translation>
    </message>
    <message>
        <source>cross,pass,stream,trail,catching feature,handrail,slope,expect,leg,route</source>
        <translation>traverser,passer à côté,ruisseau,sentier,ligne d’arrêt,main courante,pente,s’attendre à,tronçon,itinéraire</translation>
    </message>
    <message>
        <source>Tells what one crosses and passes along each leg, after how many paces and minutes, and what catches one who has gone too far.</source>
        <translation>Dit ce que l’on traverse et à côté de quoi l’on passe sur chaque tronçon, après combien de pas et de minutes, et ce qui arrête celui qui est allé trop loin.</translation>
    </message>
    <message>
        <source>Features to meet</source>
        <translation>Éléments à rencontrer</translation>
    </message>
    <message>
        <source>Trails, streams, ponds, boulders: layers of points, lines or polygons.</source>
        <translation>Sentiers, ruisseaux, étangs, rochers&#xa0;: couches de points, de lignes ou de polygones.</translation>
    </message>
    <message>
        <source>How far to either side features are passed (m)</source>
        <translation>Jusqu’où, de chaque côté, signaler ce que l’on dépasse (m)</translation>
    </message>
    <message>
        <source>What lies farther off the line is not told; in metres. In thick cover take what can be seen.</source>
        <translation>Ce qui est plus éloigné de la ligne n’est pas signalé&#xa0;; en mètres. Dans une végétation épaisse, prenez ce qui peut se voir.</translation>
    </message>
    <message>
        <source>How far beyond the leg&apos;s end to look (m)</source>
        <translation>Jusqu’où regarder au-delà de la fin du tronçon (m)</translation>
    </message>
    <message>
        <source>The first line or area met there tells one who has gone too far; in metres.</source>
        <translation>La première ligne ou surface rencontrée là indique que l’on est allé trop loin&#xa0;; en mètres.</translation>
    </message>
    <message>
        <source>Features met</source>
        <translation>Éléments rencontrés</translation>
    </message>
    <message>
        <source>the ground rises</source>
        <translation>le terrain monte</translation>
    </message>
    <message>
        <source>the ground falls away</source>
        <translation>le terrain descend</translation>
    </message>
    <message>
        <source>the ground levels out</source>
        <translation>le terrain devient plat</translation>
    </message>
    <message numerus="yes">
        <source>%n feature(s) met.</source>
        <translation>
            <numerusform>%n élément rencontré.</numerusform>
            <numerusform>%n éléments rencontrés.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::FeaturesParameters</name>
    <message>
        <source>%1: “%2” is no layer with geometries. Give layers of points, lines or polygons.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas une couche avec des géométries. Indiquez des couches de points, de lignes ou de polygones.</translation>
    </message>
    <message>
        <source>%1 (%2): none of the layers can be read. Give layers of the project or paths of files.</source>
        <translation>%1 (%2)&#xa0;: aucune des couches ne peut être lue. Indiquez des couches du projet ou des chemins de fichiers.</translation>
    </message>
    <message>
        <source>Field with the features&apos; names</source>
        <translation>Champ du nom des éléments</translation>
    </message>
    <message>
        <source>Taken from each layer that has such a field; elsewhere the layer&apos;s name stands for it.</source>
        <translation>Pris dans chaque couche qui possède ce champ&#xa0;; ailleurs, le nom de la couche en tient lieu.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no coordinate reference system. Set it in the layer&apos;s properties.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de système de coordonnées de référence (SCR). Définissez-le dans les propriétés de la couche.</translation>
    </message>
</context>
<context>
    <name>brushline::FieldAtPointsAlgorithm</name>
    <message>
        <source>Magnetic field at points</source>
        <translation>Champ magnétique aux points</translation>
    </message>
    <message>
        <source>Magnetics</source>
        <translation>Magnétisme</translation>
    </message>
    <message>
        <source>magnetic,declination,variation,inclination,dip,convergence,grid magnetic angle,compass,north,field,geomagnetic</source>
        <translation>magnétique,déclinaison,variation,inclinaison,convergence,angle grille magnétique,boussole,nord,champ,géomagnétique</translation>
    </message>
    <message>
        <source>Gives each point the declination of its day and how it changes, the dip and strength of the field, the convergence of the grid and the angle between grid and magnetic north.</source>
        <translation>Donne à chaque point la déclinaison de son jour et sa variation, l’inclinaison et l’intensité du champ, la convergence des méridiens de la grille et l’angle entre le nord de la grille et le nord magnétique.</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Points</translation>
    </message>
    <message>
        <source>A point&apos;s own height (Z, in metres above the sea) is allowed for; without one it is taken to lie at 0. A multipoint gives a row for each of its points.</source>
        <translation>L’altitude propre d’un point (Z, en mètres au-dessus de la mer) est prise en compte&#xa0;; sans elle, il est supposé être à 0. Un multipoint donne un enregistrement pour chacun de ses points.</translation>
    </message>
    <message>
        <source>Grid of the map (for the convergence)</source>
        <translation>Grille de la carte (pour la convergence)</translation>
    </message>
    <message>
        <source>The projected system whose grid lines are printed on the map. Empty: the points&apos; own when it is projected, else each point&apos;s UTM zone.</source>
        <translation>Le système projeté dont les lignes de grille sont imprimées sur la carte. Vide&#xa0;: celui des points s’il est projeté, sinon la zone UTM de chaque point.</translation>
    </message>
    <message>
        <source>%1 as %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>%1: layer “%2” has fields of these names already, so the new ones are written under others: %3.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» a déjà des champs de ces noms&#xa0;; les nouveaux sont donc écrits sous d’autres&#xa0;: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s); model %1, day %2.</source>
        <translation>
            <numerusform>%n enregistrement&#xa0;; modèle %1, jour %2.</numerusform>
            <numerusform>%n enregistrements&#xa0;; modèle %1, jour %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas d’entités.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” without a usable place; their new fields are empty. They have no geometry, or coordinates that are no place on the Earth: is the layer&apos;s coordinate reference system the right one?</source>
        <translation>
            <numerusform>%1&#xa0;: %n enregistrement de la couche «&#xa0;%2&#xa0;» sans position utilisable&#xa0;; ses nouveaux champs sont vides. Il n’a pas de géométrie, ou ses coordonnées ne sont pas un lieu sur la Terre&#xa0;: le système de coordonnées de référence (SCR) de la couche est-il le bon&#xa0;?</numerusform>
            <numerusform>%1&#xa0;: %n enregistrements de la couche «&#xa0;%2&#xa0;» sans position utilisable&#xa0;; leurs nouveaux champs sont vides. Ils n’ont pas de géométrie, ou leurs coordonnées ne sont pas un lieu sur la Terre&#xa0;: le système de coordonnées de référence (SCR) de la couche est-il le bon&#xa0;?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” with a height outside -1000 to 850 000 m, where the models end; their new fields are empty. Is their Z in metres?</source>
        <translation>
            <numerusform>%1&#xa0;: %n enregistrement de la couche «&#xa0;%2&#xa0;» a une altitude hors de -1000 à 850&#xa0;000 m, où les modèles s’arrêtent&#xa0;; ses nouveaux champs sont vides. Son Z est-il en mètres&#xa0;?</numerusform>
            <numerusform>%1&#xa0;: %n enregistrements de la couche «&#xa0;%2&#xa0;» ont une altitude hors de -1000 à 850&#xa0;000 m, où les modèles s’arrêtent&#xa0;; leurs nouveaux champs sont vides. Leur Z est-il en mètres&#xa0;?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) without a height of their own are taken to lie at 0 m.</source>
        <translation>
            <numerusform>%n point sans altitude propre est supposé être à 0 m.</numerusform>
            <numerusform>%n points sans altitude propre sont supposés être à 0 m.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) lie where this grid does not reach; converg and grid_mag are empty. Give another grid.</source>
        <translation>
            <numerusform>%1&#xa0;: %n point se trouve là où cette grille ne s’étend pas&#xa0;; converg et grid_mag sont vides. Indiquez une autre grille.</numerusform>
            <numerusform>%1&#xa0;: %n points se trouvent là où cette grille ne s’étend pas&#xa0;; converg et grid_mag sont vides. Indiquez une autre grille.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is outside the years of the model %2: decl is the declination given, zone is judged by the nearest day of the model, and incl, h_nt, f_nt and decl_year are empty.</source>
        <translation>%1 est hors des années du modèle %2&#xa0;: decl est la déclinaison indiquée, zone est jugée d’après le jour du modèle le plus proche, et incl, h_nt, f_nt et decl_year sont vides.</translation>
    </message>
    <message>
        <source>decl_err is empty: the error of a declination read off a map is not known.</source>
        <translation>decl_err est vide&#xa0;: l’erreur d’une déclinaison lue sur une carte n’est pas connue.</translation>
    </message>
    <message>
        <source>decl_err is empty: no error of this model is known.</source>
        <translation>decl_err est vide&#xa0;: aucune erreur de ce modèle n’est connue.</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) where the field along the ground is under 6000 nT (zone “caution”): the needle is slow and easily drawn off.</source>
        <translation>
            <numerusform>%n point où le champ horizontal est inférieur à 6000 nT (zone «&#xa0;caution&#xa0;»)&#xa0;: l’aiguille est lente et facilement déviée.</numerusform>
            <numerusform>%n points où le champ horizontal est inférieur à 6000 nT (zone «&#xa0;caution&#xa0;»)&#xa0;: l’aiguille est lente et facilement déviée.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) where the field along the ground is under 2000 nT (zone “blackout”): no compass can be used there, whatever decl and grid_mag say.</source>
        <translation>
            <numerusform>%n point où le champ horizontal est inférieur à 2000 nT (zone «&#xa0;blackout&#xa0;»)&#xa0;: aucune boussole n’y est utilisable, quoi que disent decl et grid_mag.</numerusform>
            <numerusform>%n points où le champ horizontal est inférieur à 2000 nT (zone «&#xa0;blackout&#xa0;»)&#xa0;: aucune boussole n’y est utilisable, quoi que disent decl et grid_mag.</numerusform>
        </translation>
    </message>
    <message>
        <source>row %1 of layer “%2”</source>
        <translation>la ligne %1 de la couche «&#xa0;%2&#xa0;»</translation>
    </message>
</context>
<context>
    <name>brushline::GpxExport</name>
    <message>
        <source>ONE_ROUTE: the legs of route “%1” are not the same for all its walkers, so it is written as %2 routes.</source>
        <translation>ONE_ROUTE&#xa0;: les tronçons de l’itinéraire «&#xa0;%1&#xa0;» ne sont pas les mêmes pour tous ses marcheurs&#xa0;; il est donc écrit en %2 itinéraires.</translation>
    </message>
    <message>
        <source>Compass legs</source>
        <translation>Tronçons à la boussole</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>compass legs</source>
        <translation>tronçons à la boussole</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>tronçon</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Arrivée</translation>
    </message>
    <message>
        <source>The route ends here, with leg %1.</source>
        <translation>L’itinéraire finit ici, avec le tronçon %1.</translation>
    </message>
    <message>
        <source>end</source>
        <translation>arrivée</translation>
    </message>
    <message>
        <source>End of leg %1, then a gap of %2 m</source>
        <translation>Fin du tronçon %1, puis une interruption de %2 m</translation>
    </message>
    <message>
        <source>Leg %1 ends here. CAUTION: leg %2 starts %3 m away, at “%4”. Neither bearing nor paces are given for the way there.</source>
        <translation>Le tronçon %1 finit ici. ATTENTION&#xa0;: le tronçon %2 commence à %3 m de là, à «&#xa0;%4&#xa0;». Ni azimut ni pas ne sont donnés pour s’y rendre.</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>interruption</translation>
    </message>
    <message>
        <source>From here the leg&apos;s start is sighted at %1.</source>
        <translation>D’ici, le départ du tronçon se vise à %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) held characters that no XML file can hold or nobody can read; “�” stands in their place.</source>
        <translation>
            <numerusform>%n texte contenait des caractères qu’aucun fichier XML ne peut contenir ou que personne ne peut lire&#xa0;; «&#xa0;�&#xa0;» les remplace.</numerusform>
            <numerusform>%n textes contenaient des caractères qu’aucun fichier XML ne peut contenir ou que personne ne peut lire&#xa0;; «&#xa0;�&#xa0;» les remplace.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) held characters that turn the direction of writing, which can make a name look like another; they were left out.</source>
        <translation>
            <numerusform>%n texte contenait des caractères qui inversent le sens d’écriture, ce qui peut faire ressembler un nom à un autre&#xa0;; ils ont été omis.</numerusform>
            <numerusform>%n textes contenaient des caractères qui inversent le sens d’écriture, ce qui peut faire ressembler un nom à un autre&#xa0;; ils ont été omis.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) lack legs: see their descriptions.</source>
        <translation>
            <numerusform>Des tronçons manquent à %n itinéraire&#xa0;: voir sa description.</numerusform>
            <numerusform>Des tronçons manquent à %n itinéraires&#xa0;: voir leurs descriptions.</numerusform>
        </translation>
    </message>
    <message>
        <source>Route “%1”: leg %2 is not in the file.</source>
        <translation>Itinéraire «&#xa0;%1&#xa0;»&#xa0;: le tronçon %2 n’est pas dans le fichier.</translation>
    </message>
    <message>
        <source>Route “%1”: legs %2 are not in the file.</source>
        <translation>Itinéraire «&#xa0;%1&#xa0;»&#xa0;: les tronçons %2 ne sont pas dans le fichier.</translation>
    </message>
    <message>
        <source>End of leg %1</source>
        <translation>Fin du tronçon %1</translation>
    </message>
    <message>
        <source>Leg %1 ends here.</source>
        <translation>Le tronçon %1 finit ici.</translation>
    </message>
    <message>
        <source>Legs to walk by compass and pace count. CAUTION: magnetic north moves, and the legs are for the day they were worked out for. The lines are straight and know nothing of cliffs, water, thickets or whose land it is. A receiver can fail or err under trees: carry the map and the legs on paper, keep the compass away from iron and power lines, check each leg by its back bearing, tell someone where you go and when you will be back, set a time at which you turn round, and keep to local rules and the word of a qualified leader. Walk a new course yourself before children do.</source>
        <translation>Tronçons à parcourir à la boussole et au compte des pas. ATTENTION&#xa0;: le nord magnétique se déplace, et les tronçons valent pour le jour pour lequel ils ont été calculés. Les lignes sont droites et ne savent rien des falaises, de l’eau, des fourrés ni de qui possède le terrain. Un récepteur peut tomber en panne ou se tromper sous les arbres&#xa0;: emportez la carte et les tronçons sur papier, tenez la boussole loin du fer et des lignes électriques, vérifiez chaque tronçon par son azimut inverse, dites à quelqu’un où vous allez et quand vous serez de retour, fixez une heure à laquelle vous ferez demi-tour, et respectez les règles locales et l’avis d’un encadrant qualifié. Parcourez vous-même tout nouveau parcours avant que des enfants ne le fassent.</translation>
    </message>
</context>
<context>
    <name>brushline::GridParameters</name>
    <message>
        <source>%1: %2 counts in degrees; a grid is projected. Give a UTM zone or the national grid of your map.</source>
        <translation>%1&#xa0;: %2 compte en degrés&#xa0;; une grille est projetée. Indiquez une zone UTM ou la grille nationale de votre carte.</translation>
    </message>
    <message>
        <source>%1: %2 is not a projected coordinate reference system. Give a UTM zone or the national grid of your map.</source>
        <translation>%1&#xa0;: %2 n’est pas un système de coordonnées de référence projeté. Indiquez une zone UTM ou la grille nationale de votre carte.</translation>
    </message>
    <message>
        <source>%1: %2 lies at latitude %3, longitude %4, outside the area that %5 is made for. Is it the grid of your map?</source>
        <translation>%1&#xa0;: %2 se trouve à la latitude %3, longitude %4, hors de la zone pour laquelle %5 est prévu. Est-ce le quadrillage de votre carte&#xa0;?</translation>
    </message>
</context>
<context>
    <name>brushline::HandoutFiles</name>
    <message>
        <source>only a part of it could be written</source>
        <translation>seule une partie a pu être écrite</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Where the files go; made when it is not there.</source>
        <translation>Où vont les fichiers&#xa0;; créé s’il n’existe pas.</translation>
    </message>
    <message>
        <source>Replace files that are there</source>
        <translation>Remplacer les fichiers existants</translation>
    </message>
    <message>
        <source>Off: a file that would be replaced is an error, and nothing is written.</source>
        <translation>Désactivé&#xa0;: un fichier qui serait remplacé est une erreur, et rien n’est écrit.</translation>
    </message>
    <message>
        <source>%1: the folder “%2” cannot be made or written to. Give another folder, or the right to write there.</source>
        <translation>%1&#xa0;: impossible de créer le dossier «&#xa0;%2&#xa0;» ou d’y écrire. Indiquez un autre dossier, ou donnez-vous le droit d’y écrire.</translation>
    </message>
    <message>
        <source>%1: “%2” would be written over, but an input is read from it. Give another place.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» serait écrasé, mais une entrée y est lue. Indiquez un autre emplacement.</translation>
    </message>
    <message>
        <source>%1: “%2” is a folder, so no file of that name can be written.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» est un dossier, donc aucun fichier de ce nom ne peut être écrit.</translation>
    </message>
    <message>
        <source>%1: “%2” is a device or a pipe, so no file can take its place. Give another place.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» est un périphérique ou un tube, donc aucun fichier ne peut prendre sa place. Indiquez un autre emplacement.</translation>
    </message>
    <message>
        <source>%1: “%2” is there already. Switch on %3 to have it replaced, or give another place.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» existe déjà. Activez %3 pour le remplacer, ou indiquez un autre emplacement.</translation>
    </message>
    <message>
        <source>%1: “%2” is there and may not be written to. Give another place, or the right to write there.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» existe et ne peut pas être modifié. Indiquez un autre emplacement, ou donnez-vous le droit d’y écrire.</translation>
    </message>
    <message>
        <source>%1: “%2” cannot be written (%3). Is its folder there, and may it be written to?</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» ne peut pas être écrit (%3). Son dossier existe-t-il, et est-il permis d’y écrire&#xa0;?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so it was left out. Is the disk full?</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas pu être écrit en entier (%3), il a donc été omis. Le disque est-il plein&#xa0;?</translation>
    </message>
    <message>
        <source>%1: nothing can be written in “%2” (%3). Give another folder, or the right to write there.</source>
        <translation>%1&#xa0;: rien ne peut être écrit dans «&#xa0;%2&#xa0;» (%3). Indiquez un autre dossier, ou donnez-vous le droit d’y écrire.</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so nothing was written. Is the disk full?</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas pu être écrit en entier (%3), donc rien n’a été écrit. Le disque est-il plein&#xa0;?</translation>
    </message>
    <message>
        <source>%1: the files could not be written to “%2”, so nothing was. Is the disk full, or damaged?</source>
        <translation>%1&#xa0;: les fichiers n’ont pas pu être écrits dans «&#xa0;%2&#xa0;», donc aucun ne l’a été. Le disque est-il plein ou endommagé&#xa0;?</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) written</source>
        <translation>
            <numerusform>%n fichier écrit</numerusform>
            <numerusform>%n fichiers écrits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n of them in the place of an older one</source>
        <translation>
            <numerusform>, dont %n à la place d’un plus ancien</numerusform>
            <numerusform>, dont %n à la place de plus anciens</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: “%2” is there and could not be kept until the run is through, so nothing was written. Is the disk full?</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» existe et n’a pas pu être gardé jusqu’à la fin de l’exécution, rien n’a donc été écrit. Le disque est-il plein&#xa0;?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be given its name (%3), so no file was written. Give another folder.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas pu recevoir son nom (%3), aucun fichier n’a donc été écrit. Indiquez un autre dossier.</translation>
    </message>
    <message numerus="yes">
        <source>%1: “%2” could not be given its name (%3), and %n file(s) written before it could not be taken back: do not use them.</source>
        <translation>
            <numerusform>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas pu recevoir son nom (%3), et %n fichier écrit avant lui n’a pas pu être retiré&#xa0;: ne l’utilisez pas.</numerusform>
            <numerusform>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas pu recevoir son nom (%3), et %n fichiers écrits avant lui n’ont pas pu être retirés&#xa0;: ne les utilisez pas.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::HandoutFonts</name>
    <message>
        <source>No font is installed, so nothing can be printed but empty boxes. Install one, for example DejaVu Sans (on Debian and Ubuntu the package fonts-dejavu-core).</source>
        <translation>Aucune police de caractères n’est installée&#xa0;: rien d’autre que des cases vides ne peut être imprimé. Installez-en une, par exemple DejaVu Sans (sur Debian et Ubuntu, le paquet fonts-dejavu-core).</translation>
    </message>
</context>
<context>
    <name>brushline::HazardParameters</name>
    <message>
        <source>%1: table “%2” needs the columns kind and distance_m (metres).</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» doit avoir les colonnes kind et distance_m (mètres).</translation>
    </message>
    <message>
        <source>distance_m is “%1”, no number</source>
        <translation>distance_m vaut «&#xa0;%1&#xa0;», qui n’est pas un nombre</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: %4. Give each kind one row with its distance in metres.</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», entité %3&#xa0;: %4. Donnez à chaque type une seule ligne, avec sa distance en mètres.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no rows.</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» n’a pas de lignes.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no field “kind”; name the field that tells what its features are.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de champ «&#xa0;kind&#xa0;»&#xa0;; nommez le champ qui dit ce que sont ses entités.</translation>
    </message>
    <message>
        <source>Iron and current</source>
        <translation>Fer et courant</translation>
    </message>
    <message>
        <source>Power lines, fences, vehicles: what draws the needle off.</source>
        <translation>Lignes électriques, clôtures, véhicules&#xa0;: ce qui dévie l’aiguille.</translation>
    </message>
    <message>
        <source>Field with the kind</source>
        <translation>Champ du type</translation>
    </message>
    <message>
        <source>Empty: the field called “kind”.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;kind&#xa0;».</translation>
    </message>
    <message>
        <source>Table of distances</source>
        <translation>Table des distances</translation>
    </message>
    <message>
        <source>Columns kind and distance_m: how far the compass must be from each kind, in metres. Empty: the built-in table, which the help prints.</source>
        <translation>Colonnes kind et distance_m&#xa0;: à quelle distance de chaque type la boussole doit se trouver, en mètres. Vide&#xa0;: la table intégrée, que l’aide reproduit.</translation>
    </message>
    <message>
        <source>Hazards</source>
        <translation>Dangers</translation>
    </message>
    <message>
        <source>Cliffs, water, bogs, mine works: layers of points, lines or areas.</source>
        <translation>Falaises, eau, marécages, ouvrages miniers&#xa0;: couches de points, de lignes ou de surfaces.</translation>
    </message>
    <message>
        <source>Margin round hazards (m)</source>
        <translation>Marge autour des dangers (m)</translation>
    </message>
    <message>
        <source>A leg that comes nearer than this to a hazard is told; in metres.</source>
        <translation>Un tronçon qui s’approche d’un danger à moins de cette distance est signalé&#xa0;; en mètres.</translation>
    </message>
    <message>
        <source>Steepest ground (degrees)</source>
        <translation>Pente maximale du terrain (degrés)</translation>
    </message>
    <message>
        <source>Ground steeper than this is told, whichever way it falls; needs a terrain model.</source>
        <translation>Le terrain plus raide que cela est signalé, quel que soit le sens de sa pente&#xa0;; demande un modèle de terrain.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has kinds for which no distance is known: %3. They are not checked. Give their distances in %4.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» a des types pour lesquels aucune distance n’est connue&#xa0;: %3. Ils ne sont pas vérifiés. Indiquez leurs distances dans %4.</translation>
    </message>
</context>
<context>
    <name>brushline::Html</name>
    <message>
        <source>en</source>
        <extracomment>The language these words are written in, as a web page names it: &quot;en&quot;, &quot;de&quot;, &quot;pt-BR&quot; ...</extracomment>
        <translation>fr</translation>
    </message>
    <message>
        <source>ltr</source>
        <extracomment>The direction in which this language is written: &quot;ltr&quot; or &quot;rtl&quot;</extracomment>
        <translation>ltr</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Faites attention</translation>
    </message>
    <message>
        <source>How to read this page</source>
        <translation>Comment lire cette page</translation>
    </message>
</context>
<context>
    <name>brushline::InputFiles</name>
    <message>
        <source>%1: “%2” is given for %3 too. Give each a file or table of its own.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» est indiqué aussi pour %3. Donnez à chacun son propre fichier ou sa propre table.</translation>
    </message>
    <message>
        <source>%1: “%2” is the file or table that %3 is read from. Give another.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» est le fichier ou la table où %3 est lu. Indiquez-en un autre.</translation>
    </message>
</context>
<context>
    <name>brushline::KeptStyles</name>
    <message>
        <source>Keep the look of the results in their files</source>
        <translation>Conserver l’apparence des résultats dans leurs fichiers</translation>
    </message>
    <message>
        <source>In a GeoPackage as the default style of the layer, for other files as a file .qml beside it.</source>
        <translation>Dans un GeoPackage, comme style par défaut de la couche&#xa0;; pour les autres fichiers, dans un fichier .qml à côté.</translation>
    </message>
    <message>
        <source>it cannot be opened</source>
        <translation>il ne peut pas être ouvert</translation>
    </message>
    <message>
        <source>The look of %1 could not be kept with it: %2</source>
        <translation>L’apparence de %1 n’a pas pu être conservée avec lui&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>brushline::LegAdvice</name>
    <message>
        <source>Hazards found on these routes</source>
        <translation>Dangers trouvés sur ces itinéraires</translation>
    </message>
    <message>
        <source>The output of “Check legs for hazards” for the same routes: its advice goes into the field warnings.</source>
        <translation>Le résultat de «&#xa0;Vérifier les dangers des tronçons&#xa0;» pour les mêmes itinéraires&#xa0;: ses conseils vont dans le champ warnings.</translation>
    </message>
    <message>
        <source>%1: layer “%2” lacks the field %3. Give the output of “Check legs for hazards” (brushline:checkhazards).</source>
        <translation>%1&#xa0;: il manque à la couche «&#xa0;%2&#xa0;» le champ %3. Indiquez le résultat de «&#xa0;Vérifier les dangers des tronçons&#xa0;» (brushline:checkhazards).</translation>
    </message>
    <message>
        <source>Take care on this leg: %1.</source>
        <translation>Faites attention sur ce tronçon&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n hazard(s) of layer “%2” lie on none of these legs, so no leg warns of them. Check these very legs for hazards, with the same names of routes, and annotate them again.</source>
        <translation>
            <numerusform>%1&#xa0;: %n danger de la couche «&#xa0;%2&#xa0;» n’est sur aucun de ces tronçons, donc aucun n’en avertit. Vérifier les dangers de ces tronçons mêmes, avec les mêmes noms d’itinéraires, et les annoter de nouveau.</numerusform>
            <numerusform>%1&#xa0;: %n dangers de la couche «&#xa0;%2&#xa0;» ne sont sur aucun de ces tronçons, donc aucun n’en avertit. Vérifier les dangers de ces tronçons mêmes, avec les mêmes noms d’itinéraires, et les annoter de nouveau.</numerusform>
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
        <translation>%1° E</translation>
    </message>
    <message>
        <source>%1° W</source>
        <translation>%1° O</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>a day that is not told</source>
        <translation>jour non précisé</translation>
    </message>
    <message>
        <source>Declination %1 on %2.</source>
        <translation>Déclinaison %1 (%2).</translation>
    </message>
    <message>
        <source>The declination is not known.</source>
        <translation>La déclinaison n’est pas connue.</translation>
    </message>
    <message>
        <source>No compass can be used here.</source>
        <translation>Aucune boussole n’est utilisable ici.</translation>
    </message>
    <message>
        <source>It is in the dial numbers already: set them as printed on a plain compass.</source>
        <translation>Elle est déjà comprise dans les azimuts à afficher&#xa0;: affichez-les tels quels sur une boussole simple.</translation>
    </message>
    <message>
        <source>The dial numbers count from true north: for a compass that is set off for declination.</source>
        <translation>Les azimuts à afficher partent du nord géographique&#xa0;: pour une boussole corrigée de la déclinaison.</translation>
    </message>
    <message>
        <source>The dial numbers count from grid north: not for a plain compass in the forest.</source>
        <translation>Les azimuts à afficher partent du nord de la grille&#xa0;: pas pour une boussole simple en forêt.</translation>
    </message>
    <message>
        <source>The paces are those of %1, nobody else&apos;s.</source>
        <translation>Ces pas sont pour %1 et pour personne d’autre.</translation>
    </message>
    <message>
        <source>1 sighting</source>
        <translation>1 visée</translation>
    </message>
    <message>
        <source>%1 sightings</source>
        <translation>%1 visées</translation>
    </message>
    <message>
        <source>%1 sightings of about %2 paces</source>
        <translation>%1 visées tous les %2 pas environ</translation>
    </message>
    <message>
        <source>%1 at %2 paces</source>
        <translation>%1 à %2 pas</translation>
    </message>
    <message>
        <source>marks at %1 paces</source>
        <translation>repères à %1 pas</translation>
    </message>
    <message>
        <source>%1 at %2 m</source>
        <translation>%1 à %2 m</translation>
    </message>
    <message>
        <source>one sees %1 m</source>
        <translation>on voit à %1 m</translation>
    </message>
    <message>
        <source>up %1 m, down %2 m</source>
        <translation>montée %1 m, descente %2 m</translation>
    </message>
    <message>
        <source>1 leg</source>
        <translation>1 tronçon</translation>
    </message>
    <message>
        <source>%1 legs</source>
        <translation>%1 tronçons</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 paces</source>
        <translation>%1 pas</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>tronçon</translation>
    </message>
    <message>
        <source>dial</source>
        <translation>cadran</translation>
    </message>
    <message>
        <source>paces</source>
        <translation>pas</translation>
    </message>
    <message>
        <source>from, to</source>
        <translation>depuis, vers</translation>
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
        <translation>aucun</translation>
    </message>
    <message>
        <source>card %1 of %2</source>
        <translation>fiche %1 sur %2</translation>
    </message>
    <message>
        <source>goes on: card %1</source>
        <translation>suite&#xa0;: fiche %1</translation>
    </message>
    <message>
        <source>Turn back at</source>
        <translation>Demi-tour à</translation>
    </message>
    <message>
        <source>Told (who)</source>
        <translation>Prévenu (qui)</translation>
    </message>
    <message>
        <source>back by</source>
        <translation>retour avant</translation>
    </message>
    <message>
        <source>Course without a name</source>
        <translation>Parcours sans nom</translation>
    </message>
    <message>
        <source>way back</source>
        <translation>retour</translation>
    </message>
    <message>
        <source>way out</source>
        <translation>aller</translation>
    </message>
    <message>
        <source>the start</source>
        <translation>le départ</translation>
    </message>
    <message>
        <source>point %1</source>
        <translation>le point %1</translation>
    </message>
    <message>
        <source>the end</source>
        <translation>l’arrivée</translation>
    </message>
    <message>
        <source>back %1</source>
        <translation>inverse %1</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>depuis %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>vers %1</translation>
    </message>
    <message>
        <source>Profile, heights drawn %1 times</source>
        <translation>Profil, hauteurs agrandies %1 fois</translation>
    </message>
    <message>
        <source>Profile, heights drawn as lengths</source>
        <translation>Profil, hauteurs à l’échelle des longueurs</translation>
    </message>
    <message>
        <source>no heights known here</source>
        <translation>altitudes inconnues ici</translation>
    </message>
    <message>
        <source>magnetic north,</source>
        <translation>nord magnétique,</translation>
    </message>
    <message>
        <source>lines %1 km apart</source>
        <translation>lignes tous les %1 km</translation>
    </message>
    <message>
        <source>lines %1 m apart</source>
        <translation>lignes tous les %1 m</translation>
    </message>
    <message>
        <source>true north, in the</source>
        <translation>nord géographique, au</translation>
    </message>
    <message>
        <source>middle of the map</source>
        <translation>milieu de la carte</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>start</source>
        <translation>départ</translation>
    </message>
    <message>
        <source>end</source>
        <translation>arrivée</translation>
    </message>
    <message>
        <source>At %1 the course is larger than this map, so the map is drawn at %2.</source>
        <translation>À l’échelle %1, le parcours est plus grand que cette carte&#xa0;; la carte est donc dessinée à l’échelle %2.</translation>
    </message>
    <message>
        <source>At %1 the course is only %2 mm long on this map.</source>
        <translation>À l’échelle %1, le parcours ne mesure que %2 mm sur cette carte.</translation>
    </message>
    <message>
        <source>Leg %1 is not on this card. Do not walk on past it by these numbers.</source>
        <translation>Le tronçon %1 n’est pas sur cette fiche. Ne pas aller au-delà avec ces nombres.</translation>
    </message>
    <message>
        <source>Legs %1 are not on this card. Do not walk on past them by these numbers.</source>
        <translation>Les tronçons %1 ne sont pas sur cette fiche. Ne pas aller au-delà avec ces nombres.</translation>
    </message>
    <message>
        <source>The legs are not all for the same day, but for %1.</source>
        <translation>Les tronçons ne valent pas tous pour le même jour, mais pour&#xa0;: %1.</translation>
    </message>
    <message>
        <source>… and %1 more that have no room here</source>
        <translation>… et %1 autres qui n’ont pas de place ici</translation>
    </message>
    <message>
        <source>several days</source>
        <translation>plusieurs jours</translation>
    </message>
    <message>
        <source>something</source>
        <translation>quelque chose</translation>
    </message>
    <message>
        <source>gone too far: %1</source>
        <translation>allé trop loin&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 to the left</source>
        <translation>%1 à gauche</translation>
    </message>
    <message>
        <source>%1 to the right</source>
        <translation>%1 à droite</translation>
    </message>
    <message>
        <source>comes to %1</source>
        <translation>atteint %1</translation>
    </message>
    <message>
        <source>goes along %1</source>
        <translation>longe %1</translation>
    </message>
    <message>
        <source>enters %1</source>
        <translation>entre dans %1</translation>
    </message>
    <message>
        <source>leaves %1</source>
        <translation>sort de %1</translation>
    </message>
    <message>
        <source>crosses %1</source>
        <translation>traverse %1</translation>
    </message>
</context>
<context>
    <name>brushline::LegCardsAlgorithm</name>
    <message>
        <source>course</source>
        <translation>parcours</translation>
    </message>
    <message>
        <source>cards</source>
        <translation>fiches</translation>
    </message>
    <message>
        <source>back</source>
        <translation>retour</translation>
    </message>
    <message>
        <source>Leg cards</source>
        <translation>Fiches des tronçons</translation>
    </message>
    <message>
        <source>Handouts</source>
        <translation>Documents à emporter</translation>
    </message>
    <message>
        <source>card,pdf,print,map,compass,bearing,dial,paces,leg,route,profile,handout</source>
        <translation>fiche,pdf,imprimer,carte,boussole,azimut,cadran,pas,tronçon,itinéraire,profil,document</translation>
    </message>
    <message>
        <source>Makes a PDF card for each route and walker: the numbers for the dial, the paces, a map of the course with magnetic north lines.</source>
        <translation>Crée une fiche PDF pour chaque itinéraire et marcheur&#xa0;: les azimuts à afficher, les pas, une carte du parcours avec des lignes du nord magnétique.</translation>
    </message>
    <message numerus="yes">
        <source>Cancelled: %n whole file(s) were made before, and stay. They are not listed in cards.html.</source>
        <translation>
            <numerusform>Annulé&#xa0;: %n fichier entier a été créé avant, et reste. Il n’est pas listé dans cards.html.</numerusform>
            <numerusform>Annulé&#xa0;: %n fichiers entiers ont été créés avant, et restent. Ils ne sont pas listés dans cards.html.</numerusform>
        </translation>
    </message>
    <message>
        <source>“%1”, walker “%2”: %3</source>
        <translation>«&#xa0;%1&#xa0;», marcheur «&#xa0;%2&#xa0;»&#xa0;: %3</translation>
    </message>
    <message>
        <source>out</source>
        <translation>aller</translation>
    </message>
    <message>
        <source>“%1”: %2</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>On %n card(s) texts were too long for their place; an ellipsis (…) stands where they end.</source>
        <translation>
            <numerusform>Sur %n fiche, des textes étaient trop longs pour leur place&#xa0;; des points de suspension (…) marquent l’endroit où ils sont coupés.</numerusform>
            <numerusform>Sur %n fiches, des textes étaient trop longs pour leur place&#xa0;; des points de suspension (…) marquent l’endroit où ils sont coupés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) have letters that no installed font has; a question mark stands for each.</source>
        <translation>
            <numerusform>%n texte a des lettres qu’aucune police installée ne possède&#xa0;; un point d’interrogation remplace chacune.</numerusform>
            <numerusform>%n textes ont des lettres qu’aucune police installée ne possède&#xa0;; un point d’interrogation remplace chacune.</numerusform>
        </translation>
    </message>
    <message>
        <source>Number of PDF files</source>
        <translation>Nombre de fichiers PDF</translation>
    </message>
    <message numerus="yes">
        <source>Cards: %n PDF file(s).</source>
        <translation>
            <numerusform>Fiches&#xa0;: %n fichier PDF.</numerusform>
            <numerusform>Fiches&#xa0;: %n fichiers PDF.</numerusform>
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
        <translation>Lettre US</translation>
    </message>
    <message>
        <source>Half letter</source>
        <translation>Demi-lettre US</translation>
    </message>
    <message>
        <source>One card a page</source>
        <translation>Une fiche par page</translation>
    </message>
    <message>
        <source>A3</source>
        <translation>A3</translation>
    </message>
    <message>
        <source>Portrait</source>
        <translation>Portrait</translation>
    </message>
    <message>
        <source>Landscape</source>
        <translation>Paysage</translation>
    </message>
    <message>
        <source>Layers for the map</source>
        <translation>Couches pour la carte</translation>
    </message>
    <message>
        <source>Drawn on the map in their own styles, the first on top. The course is drawn over them.</source>
        <translation>Dessinées sur la carte dans leur propre style, la première au-dessus. Le parcours est dessiné par-dessus.</translation>
    </message>
    <message>
        <source>Paper of a card</source>
        <translation>Papier d’une fiche</translation>
    </message>
    <message>
        <source>A6 fits a trouser pocket, A5 a map case; A4 and letter are for the leader.</source>
        <translation>A6 tient dans une poche de pantalon, A5 dans un porte-carte&#xa0;; A4 et Lettre US sont pour l’encadrant.</translation>
    </message>
    <message>
        <source>How a card is held</source>
        <translation>Comment la fiche se tient</translation>
    </message>
    <message>
        <source>Portrait has the legs above the map, landscape beside it.</source>
        <translation>En portrait, les tronçons sont au-dessus de la carte&#xa0;; en paysage, à côté.</translation>
    </message>
    <message>
        <source>Scale of the map (10000 is 1:10 000; 0: what fits)</source>
        <translation>Échelle de la carte (10000 pour 1:10&#xa0;000&#xa0;; 0&#xa0;: ce qui convient)</translation>
    </message>
    <message>
        <source>True on paper when printed at 100 %. Where the course has no room at this scale, the largest round one that fits is taken, and the card says so.</source>
        <translation>Exacte sur le papier si l’on imprime à 100&#xa0;%. Là où le parcours n’a pas la place à cette échelle, la plus grande échelle ronde qui convient est prise, et la fiche le dit.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Stands above the route&apos;s name on each card. Empty: the route&apos;s name is the title.</source>
        <translation>Figure au-dessus du nom de l’itinéraire sur chaque fiche. Vide&#xa0;: le nom de l’itinéraire est le titre.</translation>
    </message>
    <message>
        <source>Draw the dial of each leg</source>
        <translation>Dessiner le cadran de chaque tronçon</translation>
    </message>
    <message>
        <source>A small picture of the dial as it is to be set, for those who are new to it.</source>
        <translation>Une petite image du cadran tel qu’il doit être réglé, pour les débutants.</translation>
    </message>
    <message>
        <source>Several cards on a sheet of</source>
        <translation>Plusieurs fiches sur une feuille de format</translation>
    </message>
    <message>
        <source>The cards of all walkers of a route in one file, side by side with lines to cut along.</source>
        <translation>Les fiches de tous les marcheurs d’un itinéraire dans un seul fichier, côte à côte, avec des lignes de découpe.</translation>
    </message>
    <message>
        <source>Cards on a sheet (0: as many as fit)</source>
        <translation>Fiches par feuille (0&#xa0;: autant qu’il en tient)</translation>
    </message>
    <message>
        <source>With a sheet only.</source>
        <translation>Seulement avec une feuille.</translation>
    </message>
    <message>
        <source>List the files in cards.html</source>
        <translation>Lister les fichiers dans cards.html</translation>
    </message>
    <message>
        <source>A page that lists the cards, to open them from.</source>
        <translation>Une page qui liste les fiches, pour les ouvrir de là.</translation>
    </message>
    <message>
        <source>%1 is %2: give the number after the colon, for example 10000 for 1:10 000, or 0 for what fits.</source>
        <translation>%1 vaut %2&#xa0;: indiquez le nombre qui suit les deux points, par exemple 10000 pour 1:10&#xa0;000, ou 0 pour ce qui convient.</translation>
    </message>
    <message>
        <source>%1: a sheet of this paper does not hold a single card of the paper %2. Give a larger sheet or a smaller card.</source>
        <translation>%1&#xa0;: une feuille de ce papier ne contient pas même une fiche du papier %2. Indiquez une feuille plus grande ou une fiche plus petite.</translation>
    </message>
    <message>
        <source>%1: the layer “%2” cannot be read. Mend its source, or leave it out.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» ne peut pas être lue. Réparez sa source, ou retirez-la.</translation>
    </message>
    <message>
        <source>%1: “%2” is a table without geometry, so nothing of it is on the maps.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» est une table sans géométrie, donc rien n’en figure sur les cartes.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no coordinate reference system, so it may lie in the wrong place on the maps. Set it in the layer&apos;s properties.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de système de coordonnées de référence (SCR) et peut donc se trouver au mauvais endroit sur les cartes. Définissez-le dans les propriétés de la couche.</translation>
    </message>
    <message>
        <source>%1: layer “%2” is blended with those below it on the screen. On the cards, which are drawn as vectors, it hides them.</source>
        <translation>%1&#xa0;: à l’écran, la couche «&#xa0;%2&#xa0;» se fond avec celles du dessous. Sur les fiches, dessinées en vecteurs, elle les cache.</translation>
    </message>
</context>
<context>
    <name>brushline::LegIndex</name>
    <message>
        <source>without %1</source>
        <translation>sans tronçon %1</translation>
    </message>
    <message>
        <source>day not known</source>
        <translation>jour inconnu</translation>
    </message>
    <message>
        <source>CSV</source>
        <translation>CSV</translation>
    </message>
    <message>
        <source>CSV: %1</source>
        <translation>CSV&#xa0;: %1</translation>
    </message>
    <message>
        <source>Leg tables</source>
        <translation>Tableaux des tronçons</translation>
    </message>
    <message>
        <source>Route and walker</source>
        <translation>Itinéraire et marcheur</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distance</translation>
    </message>
    <message>
        <source>Paces</source>
        <translation>Pas</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Durée</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tableau</translation>
    </message>
    <message>
        <source>Routes and walkers</source>
        <translation>Itinéraires et marcheurs</translation>
    </message>
    <message>
        <source>Minutes are for walking without a stop. What is not known is left out.</source>
        <translation>Les minutes sont celles d’une marche sans arrêt. Ce qui n’est pas connu est omis.</translation>
    </message>
</context>
<context>
    <name>brushline::LegLayer</name>
    <message>
        <source>No compass works here: too near the magnetic pole.</source>
        <translation>Aucune boussole ne fonctionne ici&#xa0;: trop près du pôle magnétique.</translation>
    </message>
    <message>
        <source>The needle is weak here, near the magnetic pole: do not rely on it.</source>
        <translation>L’aiguille est faible ici, près du pôle magnétique&#xa0;: ne vous y fiez pas.</translation>
    </message>
    <message>
        <source>No heights on %1 m of this leg: paces and minutes are those of level ground.</source>
        <translation>Pas d’altitudes sur %1 m de ce tronçon&#xa0;: pas et minutes sont ceux d’un terrain plat.</translation>
    </message>
    <message>
        <source>Starts %1 m from where the leg before ends.</source>
        <translation>Commence à %1 m de l’endroit où finit le tronçon précédent.</translation>
    </message>
    <message>
        <source>The cover of %1 m of this leg is not known: look before you trust the marks.</source>
        <translation>La végétation de %1 m de ce tronçon n’est pas connue&#xa0;: regardez avant de vous fier aux repères.</translation>
    </message>
    <message>
        <source>Crosses %1 m of %2, which cannot be walked.</source>
        <translation>Traverse %1 m de %2, où l’on ne peut pas marcher.</translation>
    </message>
    <message>
        <source>On %1 m (%2 paces) not even the next mark can be seen: go from hand to hand.</source>
        <translation>Sur %1 m (%2 pas), on ne voit pas même le repère suivant&#xa0;: avancez à portée de main les uns des autres.</translation>
    </message>
</context>
<context>
    <name>brushline::LegPage</name>
    <message>
        <source>no number</source>
        <translation>aucun azimut</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>Depuis %1 jusqu’à %2</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>Depuis %1</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Vers %1</translation>
    </message>
    <message>
        <source>1 sighting</source>
        <translation>1 visée</translation>
    </message>
    <message>
        <source>%1 sightings</source>
        <translation>%1 visées</translation>
    </message>
    <message>
        <source>%1, about %2 apart</source>
        <translation>%1, tous les %2 environ</translation>
    </message>
    <message>
        <source>a mark is clear to %1</source>
        <translation>un repère est net jusqu’à %1</translation>
    </message>
    <message>
        <source>up&#xa0;%1, down&#xa0;%2</source>
        <translation>montée&#xa0;%1, descente&#xa0;%2</translation>
    </message>
    <message>
        <source>may be off %1 sideways, %2 along</source>
        <translation>écart possible&#xa0;: %1 sur le côté, %2 en longueur</translation>
    </message>
    <message>
        <source>Marks at paces</source>
        <translation>Repères aux pas</translation>
    </message>
    <message>
        <source>Leg %1 is not in this table. Do not walk on past it by these numbers.</source>
        <translation>Le tronçon %1 n’est pas dans ce tableau. Ne continuez pas au-delà en vous servant de ces nombres.</translation>
    </message>
    <message>
        <source>Legs %1 are not in this table. Do not walk on past them by these numbers.</source>
        <translation>Les tronçons %1 ne sont pas dans ce tableau. Ne continuez pas au-delà en vous servant de ces nombres.</translation>
    </message>
    <message>
        <source>direction: %1</source>
        <translation>sens&#xa0;: %1</translation>
    </message>
    <message>
        <source>day not known</source>
        <translation>jour inconnu</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Turn back at</source>
        <translation>Demi-tour à</translation>
    </message>
    <message>
        <source>Back by</source>
        <translation>De retour avant</translation>
    </message>
    <message>
        <source>Told to</source>
        <translation>Personne prévenue</translation>
    </message>
    <message>
        <source>Declination not known.</source>
        <translation>Déclinaison inconnue.</translation>
    </message>
    <message>
        <source>Declination %1, give or take %2°, on %3.</source>
        <translation>Déclinaison %1, à %2° près (%3).</translation>
    </message>
    <message>
        <source>a day not known</source>
        <translation>jour inconnu</translation>
    </message>
    <message>
        <source>Declination %1, on %2.</source>
        <translation>Déclinaison %1 (%2).</translation>
    </message>
    <message>
        <source>Warning: %1</source>
        <translation>Avertissement&#xa0;: %1</translation>
    </message>
    <message>
        <source>All %1</source>
        <translation>Total&#xa0;: %1</translation>
    </message>
    <message>
        <source>The %1 here</source>
        <translation>Total ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>Legs in the order walked</source>
        <translation>Tronçons dans l’ordre de la marche</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Tronçon</translation>
    </message>
    <message>
        <source>Dial</source>
        <translation>Cadran</translation>
    </message>
    <message>
        <source>Paces</source>
        <translation>Pas</translation>
    </message>
    <message>
        <source>Sight back</source>
        <translation>Azimut inverse</translation>
    </message>
    <message>
        <source>Distance, time</source>
        <translation>Distance, durée</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Dial: the number to set on the compass. Sight back: the number when you look from the leg’s end back to its start.</source>
        <translation>Cadran&#xa0;: l’azimut à afficher sur la boussole. Azimut inverse&#xa0;: celui que l’on doit lire en regardant, depuis la fin du tronçon, vers son départ.</translation>
    </message>
    <message>
        <source>Paces are counted the way this walker counts them. Metres and minutes are rounded; what is not known is left out.</source>
        <translation>Les pas sont comptés comme ce marcheur les compte. Mètres et minutes sont arrondis&#xa0;; ce qui n’est pas connu est omis.</translation>
    </message>
    <message>
        <source>Minutes are for walking without a stop: sighting from mark to mark takes time of its own.</source>
        <translation>Les minutes sont celles d’une marche sans arrêt&#xa0;: viser de repère en repère demande du temps en plus.</translation>
    </message>
    <message>
        <source>Sightings: so many times pick a mark on the line, walk to it and sight again. How far a mark is clear is for the thickest place of the leg.</source>
        <translation>Visées&#xa0;: autant de fois, choisissez un repère sur la ligne, marchez jusqu’à lui et visez de nouveau. La distance à laquelle un repère est net vaut pour l’endroit le plus touffu du tronçon.</translation>
    </message>
    <message>
        <source>Marks at paces: what is counted at each mark; the count starts anew with each leg.</source>
        <translation>Repères aux pas&#xa0;: ce que l’on a compté à chaque repère&#xa0;; le compte repart de zéro à chaque tronçon.</translation>
    </message>
    <message>
        <source>Give or take: one standard deviation of the magnetic model.</source>
        <translation>À … près&#xa0;: un écart-type du modèle magnétique.</translation>
    </message>
    <message>
        <source>Letters: a leg that goes round something comes in pieces, a, b and so on. Set the dial anew for each. Paces along the line and past count for the leg, those out and back do not.</source>
        <translation>Lettres&#xa0;: un tronçon qui contourne quelque chose vient en morceaux, a, b, etc. Régler le cadran de nouveau pour chacun. Les pas sur la ligne et le long de l’obstacle comptent pour le tronçon, ceux de l’écart et du retour non.</translation>
    </message>
    <message>
        <source>May be off: two of three walks end no farther to the side than the first number, and two of three no farther short or far than the second; nearly half of them keep within both. Within twice both end nine of ten.</source>
        <translation>Écart possible&#xa0;: deux marches sur trois ne finissent pas plus loin sur le côté que le premier nombre, deux sur trois pas plus loin en trop court ou trop long que le second&#xa0;; à peine la moitié restent dans les deux. Dans le double des deux finissent neuf sur dix.</translation>
    </message>
</context>
<context>
    <name>brushline::LegSheets</name>
    <message>
        <source>%1: layer “%2” lacks these fields: %3. %4</source>
        <translation>%1&#xa0;: il manque à la couche «&#xa0;%2&#xa0;» le ou les champs %3. %4</translation>
    </message>
    <message>
        <source>Layer “%1”, feature %2 %3 Passed over.</source>
        <translation>Couche «&#xa0;%1&#xa0;», entité %2 %3 Non retenue.</translation>
    </message>
    <message numerus="yes">
        <source>%n feature(s) of layer “%1” passed over.</source>
        <translation>
            <numerusform>%n entité de la couche «&#xa0;%1&#xa0;» non retenue.</numerusform>
            <numerusform>%n entités de la couche «&#xa0;%1&#xa0;» non retenues.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: several routes are called “%2”, and the rows do not tell which leg belongs to which (feature %3). Give each route a name of its own and annotate them again.</source>
        <translation>%1&#xa0;: plusieurs itinéraires s’appellent «&#xa0;%2&#xa0;», et les enregistrements ne disent pas quel tronçon appartient auquel (entité %3). Donnez à chaque itinéraire son propre nom et annotez-les de nouveau.</translation>
    </message>
    <message>
        <source>%1: several routes are called “%2”; they are kept apart as “%2”, “%3”. Give each route a name of its own.</source>
        <translation>%1&#xa0;: plusieurs itinéraires s’appellent «&#xa0;%2&#xa0;»&#xa0;; ils sont distingués en «&#xa0;%2&#xa0;», «&#xa0;%3&#xa0;». Donnez à chaque itinéraire son propre nom.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n mark(s) of layer “%2” belong to none of the legs, or lie elsewhere than they say; passed over. Are they those of these legs?</source>
        <translation>
            <numerusform>%1&#xa0;: %n repère de la couche «&#xa0;%2&#xa0;» n’appartient à aucun des tronçons, ou n’est pas là où il le dit&#xa0;; non retenu. Est-il bien de ces tronçons&#xa0;?</numerusform>
            <numerusform>%1&#xa0;: %n repères de la couche «&#xa0;%2&#xa0;» n’appartiennent à aucun des tronçons, ou ne sont pas là où ils le disent&#xa0;; non retenus. Sont-ils bien de ces tronçons&#xa0;?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n mark(s) of layer “%2” have no usable place; passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n repère de la couche «&#xa0;%2&#xa0;» n’a pas de position utilisable&#xa0;; non retenu.</numerusform>
            <numerusform>%1&#xa0;: %n repères de la couche «&#xa0;%2&#xa0;» n’ont pas de position utilisable&#xa0;; non retenus.</numerusform>
        </translation>
    </message>
    <message>
        <source>Annotated legs</source>
        <translation>Tronçons annotés</translation>
    </message>
    <message>
        <source>Legs as “Annotate legs” writes them, with the fields it gives them.</source>
        <translation>Les tronçons tels que «&#xa0;Annoter les tronçons&#xa0;» les écrit, avec les champs qu’il leur donne.</translation>
    </message>
    <message>
        <source>Marks (points)</source>
        <translation>Repères (points)</translation>
    </message>
    <message>
        <source>The marks of the same legs, as “Annotate legs” or “Choose marks to leapfrog between” write them.</source>
        <translation>Les repères des mêmes tronçons, tels que «&#xa0;Annoter les tronçons&#xa0;» ou «&#xa0;Choisir des repères de proche en proche&#xa0;» les écrivent.</translation>
    </message>
    <message>
        <source>%1: give a layer of annotated legs.</source>
        <translation>%1&#xa0;: indiquez une couche de tronçons annotés.</translation>
    </message>
    <message>
        <source>Give legs that “Annotate legs” (brushline:annotatelegs) made.</source>
        <translation>Indiquez des tronçons produits par «&#xa0;Annoter les tronçons&#xa0;» (brushline:annotatelegs).</translation>
    </message>
    <message>
        <source>Give the output MARKS of “Annotate legs” (brushline:annotatelegs), or marks that “Choose marks to leapfrog between” (brushline:choosemarks) made.</source>
        <translation>Indiquez la sortie MARKS de «&#xa0;Annoter les tronçons&#xa0;» (brushline:annotatelegs), ou des repères produits par «&#xa0;Choisir des repères de proche en proche&#xa0;» (brushline:choosemarks).</translation>
    </message>
    <message>
        <source>has no paces or no length.</source>
        <translation>n’a pas de pas ou pas de longueur.</translation>
    </message>
    <message>
        <source>has no line.</source>
        <translation>n’a pas de ligne.</translation>
    </message>
    <message>
        <source>has coordinates that are no place on the Earth.</source>
        <translation>a des coordonnées qui ne sont pas un lieu sur la Terre.</translation>
    </message>
    <message>
        <source>has no number in its field “leg”, from 1 to %1.</source>
        <translation>n’a pas dans son champ «&#xa0;leg&#xa0;» de nombre de 1 à %1.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features, so there is nothing to hand out.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas d’entités, il n’y a donc rien à distribuer.</translation>
    </message>
    <message>
        <source>%1: none of the features of layer “%2” is a leg that can be used.</source>
        <translation>%1&#xa0;: aucune des entités de la couche «&#xa0;%2&#xa0;» n’est un tronçon utilisable.</translation>
    </message>
    <message>
        <source>is a piece of leg %1, of which others are lacking.</source>
        <translation>est un morceau du tronçon %1, dont d’autres manquent.</translation>
    </message>
    <message>
        <source>is of leg %1, which does not end where the next starts.</source>
        <translation>est du tronçon %1, qui ne finit pas là où part le suivant.</translation>
    </message>
</context>
<context>
    <name>brushline::LegTablesAlgorithm</name>
    <message>
        <source>Leg tables</source>
        <translation>Tableaux des tronçons</translation>
    </message>
    <message>
        <source>Handouts</source>
        <translation>Documents à emporter</translation>
    </message>
    <message>
        <source>table,print,csv,html,spreadsheet,handout,leg,bearing,paces,compass,route</source>
        <translation>tableau,imprimer,csv,html,tableur,document,tronçon,azimut,pas,boussole,itinéraire</translation>
    </message>
    <message>
        <source>Writes annotated legs as tables to print, to read on a phone or to open in a spreadsheet: one for each route and walker, and a page that lists them.</source>
        <translation>Écrit les tronçons annotés en tableaux à imprimer, à lire sur un téléphone ou à ouvrir dans un tableur&#xa0;: un pour chaque itinéraire et marcheur, et une page qui les liste.</translation>
    </message>
    <message>
        <source>Format</source>
        <translation>Format</translation>
    </message>
    <message>
        <source>Comma-separated values (CSV)</source>
        <translation>Valeurs séparées par des virgules (CSV)</translation>
    </message>
    <message>
        <source>Web pages to print (HTML)</source>
        <translation>Pages web à imprimer (HTML)</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Les deux</translation>
    </message>
    <message>
        <source>CSV opens in spreadsheets and other programs; the pages print on A5 and on US letter.</source>
        <translation>Le CSV s’ouvre dans les tableurs et d’autres programmes&#xa0;; les pages s’impriment en A5 et en format Lettre US.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Stands at the head of every page, for example the name of the camp.</source>
        <translation>Figure en tête de chaque page, par exemple le nom du camp.</translation>
    </message>
    <message>
        <source>Number of files written, the index among them</source>
        <translation>Nombre de fichiers écrits, index compris</translation>
    </message>
    <message>
        <source>Index (the page that lists the tables)</source>
        <translation>Index (la page qui liste les tableaux)</translation>
    </message>
</context>
<context>
    <name>brushline::LegWords</name>
    <message>
        <source>magnetic north</source>
        <translation>nord magnétique</translation>
    </message>
    <message>
        <source>true north</source>
        <translation>nord vrai (géographique)</translation>
    </message>
    <message>
        <source>grid north</source>
        <translation>nord de la grille</translation>
    </message>
    <message>
        <source>1 pace</source>
        <translation>1 pas</translation>
    </message>
    <message>
        <source>%1 paces</source>
        <translation>%1 pas</translation>
    </message>
    <message>
        <source>no compass</source>
        <translation>sans boussole</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutes</translation>
    </message>
    <message>
        <source>The shortest sight is %1 m.</source>
        <translation>La plus courte visibilité est de %1 m.</translation>
    </message>
    <message>
        <source>One sighting is enough.</source>
        <translation>Une seule visée suffit.</translation>
    </message>
    <message>
        <source>Take %1 sightings, most of them about %2 m apart.</source>
        <translation>Faites %1 visées, la plupart espacées d’environ %2 m.</translation>
    </message>
    <message>
        <source>Take %1 sightings.</source>
        <translation>Faites %1 visées.</translation>
    </message>
    <message>
        <source>Two walks of three end less than %1 m to either side, and two of three less than %2 m short or far.</source>
        <translation>Deux marches sur trois finissent à moins de %1 m d’un côté ou de l’autre, et deux sur trois à moins de %2 m trop court ou trop loin.</translation>
    </message>
    <message>
        <source>Leg %1 of %2</source>
        <translation>Tronçon %1 sur %2</translation>
    </message>
    <message>
        <source>, from %1 to %2</source>
        <translation>, depuis %1 jusqu’à %2</translation>
    </message>
    <message>
        <source>, from %1</source>
        <translation>, depuis %1</translation>
    </message>
    <message>
        <source>, to %1</source>
        <translation>, vers %1</translation>
    </message>
    <message>
        <source>CAUTION: </source>
        <translation>ATTENTION&#xa0;: </translation>
    </message>
    <message>
        <source>CAUTION for %1: </source>
        <translation>ATTENTION pour %1&#xa0;: </translation>
    </message>
    <message>
        <source>There is no number for the dial.</source>
        <translation>Il n’y a pas d’azimut à afficher.</translation>
    </message>
    <message>
        <source>Set the dial to %1</source>
        <translation>Affichez %1 sur le cadran</translation>
    </message>
    <message>
        <source>, counted from %1</source>
        <translation>, compté à partir du %1</translation>
    </message>
    <message>
        <source>Walk %1 m.</source>
        <translation>Marchez %1 m.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Walk %1 m: %2.</source>
        <translation>Marchez %1 m&#xa0;: %2.</translation>
    </message>
    <message>
        <source>It climbs %1 m and drops %2 m.</source>
        <translation>Montée %1 m, descente %2 m.</translation>
    </message>
    <message>
        <source>Cover: %1.</source>
        <translation>Végétation&#xa0;: %1.</translation>
    </message>
    <message>
        <source>From its end its start is sighted at %1.</source>
        <translation>De sa fin, son départ se vise à %1.</translation>
    </message>
    <message>
        <source>true %1</source>
        <translation>vrai %1</translation>
    </message>
    <message>
        <source>grid %1</source>
        <translation>grille %1</translation>
    </message>
    <message>
        <source>magnetic %1</source>
        <translation>magnétique %1</translation>
    </message>
    <message>
        <source>declination %1° west</source>
        <translation>déclinaison %1° ouest</translation>
    </message>
    <message>
        <source>declination %1° east</source>
        <translation>déclinaison %1° est</translation>
    </message>
    <message>
        <source>Bearings: %1.</source>
        <translation>Azimuts&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Mark %1 on leg %2</source>
        <translation>Repère %1 du tronçon %2</translation>
    </message>
    <message>
        <source> of %1, walked back</source>
        <translation> de l’itinéraire %1, au retour</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> de l’itinéraire %1</translation>
    </message>
    <message>
        <source>, %1 m from the leg&apos;s start</source>
        <translation>, à %1 m du départ du tronçon</translation>
    </message>
    <message>
        <source>Paces from the leg&apos;s start: %1.</source>
        <translation>Pas depuis le départ du tronçon&#xa0;: %1.</translation>
    </message>
    <message>
        <source>It stands %1 m to the left of the line.</source>
        <translation>Il se trouve à %1 m à gauche de la ligne.</translation>
    </message>
    <message>
        <source>It stands %1 m to the right of the line.</source>
        <translation>Il se trouve à %1 m à droite de la ligne.</translation>
    </message>
    <message>
        <source>1 leg</source>
        <translation>1 tronçon</translation>
    </message>
    <message>
        <source>%1 legs</source>
        <translation>%1 tronçons</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Tronçons</translation>
    </message>
    <message>
        <source>, walked back</source>
        <translation>, au retour</translation>
    </message>
    <message>
        <source>, %1 m</source>
        <translation>, %1 m</translation>
    </message>
    <message>
        <source>%1 minutes on the move</source>
        <translation>%1 minutes de marche</translation>
    </message>
    <message>
        <source>Worked out for %1.</source>
        <translation>Calculé pour le %1.</translation>
    </message>
    <message>
        <source>The dial counts from %1.</source>
        <translation>Le cadran compte à partir du %1.</translation>
    </message>
    <message>
        <source>A point&apos;s comment is the leg that starts there: number for the dial, then paces (p); a “!” says that its description holds a warning.</source>
        <translation>Le commentaire d’un point est le tronçon qui y commence&#xa0;: l’azimut à afficher, puis les pas (p)&#xa0;; un «&#xa0;!&#xa0;» indique que sa description contient un avertissement.</translation>
    </message>
    <message>
        <source>CAUTION: the lines are straight and know nothing of cliffs, water, thickets or whose land it is. Look at the map first, and check each leg by its back bearing.</source>
        <translation>ATTENTION&#xa0;: les lignes sont droites et ne savent rien des falaises, de l’eau, des fourrés ni de qui possède le terrain. Regardez d’abord la carte, et vérifiez chaque tronçon par son azimut inverse.</translation>
    </message>
    <message>
        <source>out:</source>
        <comment>a piece of a leg</comment>
        <translation>écart&#xa0;:</translation>
    </message>
    <message>
        <source>past:</source>
        <comment>a piece of a leg</comment>
        <translation>passage&#xa0;:</translation>
    </message>
    <message>
        <source>back:</source>
        <comment>a piece of a leg</comment>
        <translation>retour&#xa0;:</translation>
    </message>
    <message>
        <source>on:</source>
        <comment>a piece of a leg</comment>
        <translation>suite&#xa0;:</translation>
    </message>
    <message>
        <source>CAUTION: it is not certain from which north it counts. Ask who made these legs.</source>
        <translation>ATTENTION&#xa0;: on ne sait pas avec certitude de quel nord il compte. Demandez à celui qui a fait ces tronçons.</translation>
    </message>
    <message>
        <source>CAUTION: leg %1 is not in this file. Do not walk on past it by these numbers.</source>
        <translation>ATTENTION&#xa0;: le tronçon %1 n’est pas dans ce fichier. Ne pas aller au-delà avec ces nombres.</translation>
    </message>
    <message>
        <source>CAUTION: legs %1 are not in this file. Do not walk on past them by these numbers.</source>
        <translation>ATTENTION&#xa0;: les tronçons %1 ne sont pas dans ce fichier. Ne pas aller au-delà avec ces nombres.</translation>
    </message>
</context>
<context>
    <name>brushline::LegWriter</name>
    <message>
        <source>Legs</source>
        <translation>Tronçons</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Repères</translation>
    </message>
    <message>
        <source>Drift (where the walker may be, 95 %)</source>
        <translation>Dérive (où le marcheur peut se trouver, 95&#xa0;%)</translation>
    </message>
    <message numerus="yes">
        <source>%n leg(s) cross cover polygons that overlap: the first in the layer counts.</source>
        <translation>
            <numerusform>%n tronçon traverse des polygones de végétation qui se superposent&#xa0;: le premier de la couche compte.</numerusform>
            <numerusform>%n tronçons traversent des polygones de végétation qui se superposent&#xa0;: le premier de la couche compte.</numerusform>
        </translation>
    </message>
    <message>
        <source>Routes: %1; leg rows written: %2.</source>
        <translation>Itinéraires&#xa0;: %1&#xa0;; enregistrements de tronçon écrits&#xa0;: %2.</translation>
    </message>
    <message numerus="yes">
        <source>DEM: %n leg(s) lie on ground without heights, whole or in part; their paces and minutes are those of level ground there. Does the terrain model reach so far?</source>
        <translation>
            <numerusform>DEM&#xa0;: %n tronçon se trouve, en tout ou en partie, sur un terrain sans altitudes&#xa0;; ses pas et minutes y sont ceux d’un terrain plat. Le modèle de terrain va-t-il jusque-là&#xa0;?</numerusform>
            <numerusform>DEM&#xa0;: %n tronçons se trouvent, en tout ou en partie, sur un terrain sans altitudes&#xa0;; leurs pas et minutes y sont ceux d’un terrain plat. Le modèle de terrain va-t-il jusque-là&#xa0;?</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::NamedPlacesParameters</name>
    <message>
        <source>%1: layer “%2” has no field “name”: give the field that holds the names.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de champ «&#xa0;name&#xa0;»&#xa0;: indiquez le champ qui contient les noms.</translation>
    </message>
    <message>
        <source>Reach of a named point (m)</source>
        <translation>Portée d’un point nommé (m)</translation>
    </message>
    <message>
        <source>Named points</source>
        <translation>Points nommés</translation>
    </message>
    <message>
        <source>Camp, lone pine, boulder: legs that start or end at one of these say so.</source>
        <translation>Camp, pin isolé, rocher&#xa0;: les tronçons qui commencent ou finissent à l’un d’eux le disent.</translation>
    </message>
    <message>
        <source>Field with the point&apos;s name</source>
        <translation>Champ du nom du point</translation>
    </message>
    <message>
        <source>Empty: the field called “name”.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;name&#xa0;».</translation>
    </message>
    <message>
        <source>A leg&apos;s end takes the name of the nearest named point that is no farther than this, in metres.</source>
        <translation>L’extrémité d’un tronçon prend le nom du point nommé le plus proche, s’il n’est pas plus loin que cela, en mètres.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a name passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n point de la couche «&#xa0;%2&#xa0;» sans nom, ignoré.</numerusform>
            <numerusform>%1&#xa0;: %n points de la couche «&#xa0;%2&#xa0;» sans nom, ignorés.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::NorthLinesAlgorithm</name>
    <message>
        <source>Magnetic north lines</source>
        <translation>Lignes du nord magnétique</translation>
    </message>
    <message>
        <source>Magnetics</source>
        <translation>Magnétisme</translation>
    </message>
    <message>
        <source>magnetic,north,lines,meridian,declination,variation,compass,map,grid,baseplate</source>
        <translation>magnétique,nord,lignes,méridien,déclinaison,variation,boussole,carte,grille,boussole à plaquette</translation>
    </message>
    <message>
        <source>Draws lines towards magnetic north over a map, at an even distance on the ground, so that bearings can be taken off the map without any sum.</source>
        <translation>Trace sur une carte des lignes vers le nord magnétique, à intervalle régulier sur le terrain, afin de relever des azimuts sur la carte sans aucun calcul.</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1° W</source>
        <translation>%1° O</translation>
    </message>
    <message>
        <source>%1° E</source>
        <translation>%1° E</translation>
    </message>
    <message>
        <source>%1, %2, %3 m</source>
        <translation>%1, %2, %3 m</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) in %1; model %2, day %3.</source>
        <translation>
            <numerusform>%n ligne en %1&#xa0;; modèle %2, jour %3.</numerusform>
            <numerusform>%n lignes en %1&#xa0;; modèle %2, jour %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>No line: in this extent the field along the ground is under 2000 nT, so that no compass can be used.</source>
        <translation>Aucune ligne&#xa0;: dans cette emprise, le champ horizontal est inférieur à 2000 nT, si bien qu’aucune boussole n’est utilisable.</translation>
    </message>
    <message>
        <source>In part of the extent the field along the ground is under 2000 nT, so that no compass can be used: lines end at its border.</source>
        <translation>Dans une partie de l’emprise, le champ horizontal est inférieur à 2000 nT, si bien qu’aucune boussole n’y est utilisable&#xa0;: les lignes s’arrêtent à sa limite.</translation>
    </message>
    <message>
        <source>Part of the extent lies where %1 does not reach; there are no lines.</source>
        <translation>Une partie de l’emprise se trouve là où %1 ne s’étend pas&#xa0;; il n’y a pas de lignes.</translation>
    </message>
    <message>
        <source>On the ground neighbouring lines lie %1 to %2 m apart within the extent.</source>
        <translation>Sur le terrain, les lignes voisines sont espacées de %1 à %2 m dans l’emprise.</translation>
    </message>
    <message>
        <source>In part of the extent the field along the ground is under 6000 nT (zone “caution”): the needle is slow and easily drawn off.</source>
        <translation>Dans une partie de l’emprise, le champ horizontal est inférieur à 6000 nT (zone «&#xa0;caution&#xa0;»)&#xa0;: l’aiguille est lente et facilement déviée.</translation>
    </message>
    <message>
        <source>%1 is outside the years of the model, which only tells where compasses fail.</source>
        <translation>%1 est hors des années du modèle, qui indique seulement où les boussoles ne fonctionnent plus.</translation>
    </message>
    <message>
        <source>the middle of EXTENT</source>
        <translation>le milieu d’EXTENT</translation>
    </message>
</context>
<context>
    <name>brushline::NorthLinesParameters</name>
    <message>
        <source>%1 is “%2”: give the least x, the most x, the least y, the most y, in this order. Across the 180th meridian count the longitudes on, like 179,181,-18,-16 [EPSG:4326].</source>
        <translation>%1 vaut «&#xa0;%2&#xa0;»&#xa0;: indiquez le x minimal, le x maximal, le y minimal, le y maximal, dans cet ordre. De part et d’autre du 180e méridien, continuez à compter les longitudes, par exemple 179,181,-18,-16 [EPSG:4326].</translation>
    </message>
    <message>
        <source>%1: its middle (%2, %3 in %4) is no place on the Earth.</source>
        <translation>%1&#xa0;: son milieu (%2, %3 en %4) n’est pas un lieu sur la Terre.</translation>
    </message>
    <message>
        <source>Extent of the map</source>
        <translation>Emprise de la carte</translation>
    </message>
    <message>
        <source>The lines are cut at a rectangle of the grid that holds this extent. Across the 180th meridian count the longitudes on, like 179,181,-18,-16 [EPSG:4326].</source>
        <translation>Les lignes sont coupées à un rectangle de la grille qui contient cette emprise. De part et d’autre du 180e méridien, continuez à compter les longitudes, par exemple 179,181,-18,-16 [EPSG:4326].</translation>
    </message>
    <message>
        <source>Distance between the lines (m on the ground)</source>
        <translation>Distance entre les lignes (m sur le terrain)</translation>
    </message>
    <message>
        <source>In metres on the ground, whatever the scale of the map, square to the lines through the middle of the extent. Elsewhere they draw together or spread as magnetic north does.</source>
        <translation>En mètres sur le terrain, quelle que soit l’échelle de la carte, perpendiculairement aux lignes au milieu de l’emprise. Ailleurs, elles se resserrent ou s’écartent comme le fait le nord magnétique.</translation>
    </message>
    <message>
        <source>Grid of the map (the lines are made in it)</source>
        <translation>Grille de la carte (les lignes y sont tracées)</translation>
    </message>
    <message>
        <source>A projected system. Empty: that of the extent, else of the project, when it is projected; else the UTM zone of the extent&apos;s middle.</source>
        <translation>Un système projeté. Vide&#xa0;: celui de l’emprise, sinon du projet, s’il est projeté&#xa0;; sinon la zone UTM du milieu de l’emprise.</translation>
    </message>
    <message>
        <source>%1: give the extent of your map.</source>
        <translation>%1&#xa0;: indiquez l’emprise de votre carte.</translation>
    </message>
    <message>
        <source>%1 is empty or no extent. Give an area, like 631500,634500,5405500,5408500 [EPSG:32621].</source>
        <translation>%1 est vide ou n’est pas une emprise. Indiquez une zone, par exemple 631500,634500,5405500,5408500 [EPSG:32621].</translation>
    </message>
    <message>
        <source>%1 tells no coordinate reference system. Write it behind the numbers, like 631500,634500,5405500,5408500 [EPSG:32621].</source>
        <translation>%1 n’indique pas de système de coordonnées de référence (SCR). Écrivez-le après les nombres, par exemple 631500,634500,5405500,5408500 [EPSG:32621].</translation>
    </message>
    <message>
        <source>%1 of %2 m over this extent makes about %3 lines; at most %4 are drawn. Give a wider spacing or a smaller extent.</source>
        <translation>%1 de %2 m sur cette emprise donne environ %3 lignes&#xa0;; on en trace au plus %4. Indiquez un espacement plus large ou une emprise plus petite.</translation>
    </message>
    <message>
        <source>%1 lies where %2 does not reach. Give a %3 that is made for this part of the world.</source>
        <translation>%1 se trouve là où %2 ne s’étend pas. Indiquez un %3 prévu pour cette partie du monde.</translation>
    </message>
</context>
<context>
    <name>brushline::PaceTries</name>
    <message>
        <source>%1 (%2): give a field of the table “%3”.</source>
        <translation>%1 (%2)&#xa0;: indiquez un champ de la table «&#xa0;%3&#xa0;».</translation>
    </message>
    <message>
        <source>%1: give a table with a row for each try.</source>
        <translation>%1&#xa0;: indiquez une table avec une ligne pour chaque essai.</translation>
    </message>
    <message>
        <source>%1 is empty.</source>
        <translation>%1 est vide.</translation>
    </message>
    <message>
        <source>%1 is “%2”: write numbers with a decimal point and without separators.</source>
        <translation>%1 vaut «&#xa0;%2&#xa0;»&#xa0;: écrivez les nombres avec un point décimal et sans séparateurs.</translation>
    </message>
    <message>
        <source>%1 is “%2”, which is no number.</source>
        <translation>%1 vaut «&#xa0;%2&#xa0;», qui n’est pas un nombre.</translation>
    </message>
    <message>
        <source>%1 is %2: give a number above 0, of %3 at most.</source>
        <translation>%1 vaut %2&#xa0;: indiquez un nombre supérieur à 0, et d’au plus %3.</translation>
    </message>
    <message>
        <source>its distance</source>
        <translation>sa distance</translation>
    </message>
    <message>
        <source>its count</source>
        <translation>son compte</translation>
    </message>
    <message>
        <source>its slope</source>
        <translation>sa pente</translation>
    </message>
    <message>
        <source>its slope is empty: write 0 for level ground.</source>
        <translation>sa pente est vide&#xa0;: écrivez 0 pour un terrain plat.</translation>
    </message>
    <message>
        <source>its slope is %1: give degrees, not percent, between -90 and 90.</source>
        <translation>sa pente vaut %1&#xa0;: indiquez des degrés, non des pour cent, entre -90 et 90.</translation>
    </message>
    <message>
        <source>Tries (table, one row each)</source>
        <translation>Essais (table, une ligne chacun)</translation>
    </message>
    <message>
        <source>A row for each time somebody walked a known distance and counted.</source>
        <translation>Une ligne pour chaque fois que quelqu’un a parcouru une distance connue et compté.</translation>
    </message>
    <message>
        <source>Field with the walker&apos;s name</source>
        <translation>Champ du nom du marcheur</translation>
    </message>
    <message>
        <source>Who walked. Names that differ in blanks, or in small and capital letters, are one walker&apos;s.</source>
        <translation>Qui a marché. Des noms qui ne diffèrent que par des espaces, ou par des majuscules et des minuscules, sont ceux d’un même marcheur.</translation>
    </message>
    <message>
        <source>Field with the distance (m, along the ground)</source>
        <translation>Champ de la distance (m, le long du sol)</translation>
    </message>
    <message>
        <source>In metres (a foot is 0.3048 m), as a tape on the ground measures it. A distance off a map or by satellite is shorter on a slope: divide it by the slope&apos;s cosine.</source>
        <translation>En mètres (un pied vaut 0,3048 m), telle qu’un ruban la mesure sur le sol. Une distance prise sur une carte ou par satellite est plus courte sur une pente&#xa0;: divisez-la par le cosinus de la pente.</translation>
    </message>
    <message>
        <source>Field with the count</source>
        <translation>Champ du compte</translation>
    </message>
    <message>
        <source>What was counted over the distance: single steps, or double paces. Halves are welcome.</source>
        <translation>Ce qui a été compté sur la distance&#xa0;: des pas simples, ou des doubles pas. Les demis sont bienvenus.</translation>
    </message>
    <message>
        <source>Field with the slope (degrees, uphill positive)</source>
        <translation>Champ de la pente (degrés, positive en montée)</translation>
    </message>
    <message>
        <source>The even slope of the ground as it was walked: degrees, not percent; uphill positive, downhill negative. Without the field all tries are taken as level.</source>
        <translation>La pente régulière du terrain tel qu’il a été parcouru&#xa0;: en degrés, non en pour cent&#xa0;; positive en montée, négative en descente. Sans ce champ, tous les essais comptent comme faits en terrain plat.</translation>
    </message>
    <message>
        <source>it names no walker.</source>
        <translation>elle ne nomme aucun marcheur.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3 passed over: %4</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», entité %3 ignorée&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1: table “%2” has no rows. Give it one for each try.</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» n’a pas de lignes. Donnez-lui-en une pour chaque essai.</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n row(s) tells a try. %1</source>
        <translation>
            <numerusform>%n seule ligne, et elle n’indique aucun essai. %1</numerusform>
            <numerusform>Aucune des %n lignes n’indique un essai. %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of table “%2” passed over in all.</source>
        <translation>
            <numerusform>%1&#xa0;: %n ligne de la table «&#xa0;%2&#xa0;» ignorée en tout.</numerusform>
            <numerusform>%1&#xa0;: %n lignes de la table «&#xa0;%2&#xa0;» ignorées en tout.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PairsParameters</name>
    <message>
        <source>%1: layer “%2” of %3 has no field “%4”. Both layers need it to be paired by it; without %1 they are paired by their order.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» de %3 n’a pas de champ «&#xa0;%4&#xa0;». Les deux couches doivent l’avoir pour être appariées par lui&#xa0;; sans %1, elles sont appariées dans leur ordre.</translation>
    </message>
    <message>
        <source>%1: layer “%2”, feature %3</source>
        <translation>%1&#xa0;: couche «&#xa0;%2&#xa0;», entité %3</translation>
    </message>
    <message>
        <source>%1 has no usable place.</source>
        <translation>%1 n’a pas de position utilisable.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Starts (points)</source>
        <translation>Départs (points)</translation>
    </message>
    <message>
        <source>Where the routes begin.</source>
        <translation>Où les itinéraires commencent.</translation>
    </message>
    <message>
        <source>Ends (points)</source>
        <translation>Arrivées (points)</translation>
    </message>
    <message>
        <source>Where they lead, an end for each start.</source>
        <translation>Où ils mènent, une arrivée pour chaque départ.</translation>
    </message>
    <message>
        <source>Field that pairs them</source>
        <translation>Champ qui les apparie</translation>
    </message>
    <message>
        <source>A field that both layers have: a start and an end with the same value belong together. Empty: the first start and the first end, the second and the second.</source>
        <translation>Un champ que les deux couches possèdent&#xa0;: un départ et une arrivée de même valeur vont ensemble. Vide&#xa0;: le premier départ et la première arrivée, le deuxième et la deuxième.</translation>
    </message>
    <message>
        <source>%1: give a layer with points.</source>
        <translation>%1&#xa0;: indiquez une couche de points.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give at least one.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de points. Indiquez-en au moins un.</translation>
    </message>
    <message>
        <source>%1 has no partner: there are %2 starts and %3 ends.</source>
        <translation>%1 n’a pas de partenaire&#xa0;: il y a %2 départs et %3 arrivées.</translation>
    </message>
    <message>
        <source>%1 has nothing in its field “%2”, so it has no partner.</source>
        <translation>%1 n’a rien dans son champ «&#xa0;%2&#xa0;», donc pas de partenaire.</translation>
    </message>
    <message>
        <source>%1 has the same “%2” (%3) as another. Give each pair a value of its own.</source>
        <translation>%1 a le même «&#xa0;%2&#xa0;» (%3) qu’une autre entité. Donnez à chaque paire sa propre valeur.</translation>
    </message>
    <message>
        <source>%1 (%2) has no end of that name.</source>
        <translation>%1 (%2) n’a pas d’arrivée de ce nom.</translation>
    </message>
    <message>
        <source>%1 (%2) has no start of that name.</source>
        <translation>%1 (%2) n’a pas de départ de ce nom.</translation>
    </message>
    <message>
        <source>%1 has %2 points, but a pair has one start and one end. Split it with “Multipart to singleparts”.</source>
        <translation>%1 a %2 points, mais une paire a un départ et une arrivée. Séparez-les avec «&#xa0;De morceaux multiples à morceaux uniques&#xa0;».</translation>
    </message>
</context>
<context>
    <name>brushline::ParameterChecks</name>
    <message>
        <source>%1 (%2) is %3: give a whole number.</source>
        <translation>%1 (%2) vaut %3&#xa0;: indiquez un nombre entier.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give a layer with points.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de points. Indiquez une couche avec des points.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons. Give a layer with polygons.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de polygones. Indiquez une couche avec des polygones.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be read. Give layers of the project or paths of files that the host reads.</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» ne peut pas être lu. Indiquez des couches du projet ou des chemins de fichiers que le programme hôte sait lire.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” is no name for a file, since it has a “|”. Give one without; a layer of a GeoPackage that is there is written to as ogr:dbname=&apos;%4&apos; table=&quot;name&quot; (geom).</source>
        <translation>%1 (%2) : « %3 » n’est pas un nom de fichier, car il contient « | ». Donnez-en un sans ; une couche d’un GeoPackage déjà présent s’écrit par ogr:dbname=&apos;%4&apos; table=&quot;name&quot; (geom).</translation>
    </message>
</context>
<context>
    <name>brushline::ParameterReader</name>
    <message>
        <source>%1 (%2) is “%3”: give a number from %4 to %5, with a decimal point.</source>
        <translation>%1 (%2) vaut «&#xa0;%3&#xa0;»&#xa0;: indiquez un nombre de %4 à %5, avec un point décimal.</translation>
    </message>
    <message>
        <source>%1 (%2) is %3: give a number from %4 to %5.</source>
        <translation>%1 (%2) vaut %3&#xa0;: indiquez un nombre de %4 à %5.</translation>
    </message>
    <message>
        <source>%1 (%2) is %3: give a whole number from 0 to %4.</source>
        <translation>%1 (%2) vaut %3&#xa0;: indiquez un nombre entier de 0 à %4.</translation>
    </message>
    <message>
        <source>%1 (%2) is “%3”: give a day as year-month-day, for example 2026-05-31.</source>
        <translation>%1 (%2) vaut «&#xa0;%3&#xa0;»&#xa0;: indiquez un jour sous la forme année-mois-jour, par exemple 2026-05-31.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” is no coordinate reference system that this machine knows. Give one like EPSG:32621.</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» n’est pas un système de coordonnées de référence (SCR) que cette machine connaît. Indiquez-en un comme EPSG:32621.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be read. Give a layer of the project or the path of a file that the host reads.</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» ne peut pas être lu. Indiquez une couche du projet ou le chemin d’un fichier que le programme hôte sait lire.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be read. Give a raster of the project or the path of a file that the host reads.</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» ne peut pas être lu. Indiquez un raster du projet ou le chemin d’un fichier que le programme hôte sait lire.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no field “%3”. Its fields are: %4.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de champ «&#xa0;%3&#xa0;». Ses champs sont&#xa0;: %4.</translation>
    </message>
    <message>
        <source>%1 (%2) is “%3”: give a whole number from 0 to %4.</source>
        <translation>%1 (%2) vaut «&#xa0;%3&#xa0;»&#xa0;: indiquez un nombre entier de 0 à %4.</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” has a coordinate that is not a number, with which this host cannot open a layer. Find the feature and mend it.</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» a une coordonnée qui n’est pas un nombre, avec laquelle ce QGIS ne peut pas ouvrir de couche. Trouvez l’entité et corrigez-la.</translation>
    </message>
</context>
<context>
    <name>brushline::PlaceReader</name>
    <message>
        <source>%1: layer “%2” has no coordinate reference system. Set it in the layer&apos;s properties.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de système de coordonnées de référence (SCR). Définissez-le dans les propriétés de la couche.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a usable place passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n point de la couche «&#xa0;%2&#xa0;» sans position utilisable, ignoré.</numerusform>
            <numerusform>%1&#xa0;: %n points de la couche «&#xa0;%2&#xa0;» sans position utilisable, ignorés.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PlanGround</name>
    <message>
        <source>The area round the pairs makes %1 million cells of %2 m, which would take %3 MB; at most %4 million are worked on. Give CELL at least %5, a smaller MARGIN, or pairs that lie together.</source>
        <translation>La zone autour des paires donne %1 millions de cellules de %2 m, ce qui prendrait %3 Mo&#xa0;; on en traite au plus %4 millions. Indiquez un CELL d’au moins %5, un MARGIN plus petit, ou des paires proches les unes des autres.</translation>
    </message>
    <message>
        <source>the edge of the area searched (a larger MARGIN or terrain model may help)</source>
        <translation>le bord de la zone examinée (un MARGIN ou un modèle de terrain plus grand peut aider)</translation>
    </message>
    <message>
        <source>ground without a height in the terrain model</source>
        <translation>un terrain sans altitude dans le modèle de terrain</translation>
    </message>
    <message>
        <source>ground steeper than %1°</source>
        <translation>un terrain plus raide que %1°</translation>
    </message>
    <message>
        <source>barriers</source>
        <translation>des barrières</translation>
    </message>
    <message>
        <source>ground without known cover</source>
        <translation>un terrain dont la végétation n’est pas connue</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n feature(s) of layer “%2” without a usable geometry passed over: they bar nothing.</source>
        <translation>
            <numerusform>%1&#xa0;: %n entité de la couche «&#xa0;%2&#xa0;» sans géométrie utilisable, ignorée&#xa0;: elle ne barre rien.</numerusform>
            <numerusform>%1&#xa0;: %n entités de la couche «&#xa0;%2&#xa0;» sans géométrie utilisable, ignorées&#xa0;: elles ne barrent rien.</numerusform>
        </translation>
    </message>
    <message>
        <source>lies outside the terrain model</source>
        <translation>se trouve hors du modèle de terrain</translation>
    </message>
    <message>
        <source>lies inside a barrier</source>
        <translation>se trouve à l’intérieur d’une barrière</translation>
    </message>
    <message>
        <source>lies on %1</source>
        <translation>se trouve sur %1</translation>
    </message>
    <message>
        <source>lies on ground without known cover</source>
        <translation>se trouve sur un terrain dont la végétation n’est pas connue</translation>
    </message>
    <message>
        <source>lies in %1</source>
        <translation>se trouve dans %1</translation>
    </message>
    <message>
        <source>%1: layer “%2” has points, which bar nothing. Give lines or polygons; buffer points first.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» a des points, qui ne barrent rien. Indiquez des lignes ou des polygones&#xa0;; créez d’abord un tampon autour des points.</translation>
    </message>
</context>
<context>
    <name>brushline::PlannedCourses</name>
    <message>
        <source>%1: layer “%2” has legs with detours, in pieces. Give the legs as they were before the detours.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» a des tronçons avec contournements, en morceaux. Indiquez les tronçons tels qu’ils étaient avant les contournements.</translation>
    </message>
    <message>
        <source>ROUTE_FIELD: layer “%1” has annotated legs, which name their route themselves. Leave it empty.</source>
        <translation>ROUTE_FIELD&#xa0;: la couche «&#xa0;%1&#xa0;» a des tronçons annotés, qui nomment eux-mêmes leur itinéraire. Laissez-le vide.</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>n’a pas deux sommets distincts, donc pas de tronçon.</translation>
    </message>
    <message>
        <source>%1: there is no leg to hold tracks against.</source>
        <translation>%1&#xa0;: il n’y a aucun tronçon auquel comparer des traces.</translation>
    </message>
</context>
<context>
    <name>brushline::PlannedRoutes</name>
    <message>
        <source>Planned routes</source>
        <translation>Itinéraires planifiés</translation>
    </message>
    <message>
        <source>A line for each pair, a vertex at each turn; Annotate legs takes it as it is.</source>
        <translation>Une ligne pour chaque paire, un sommet à chaque changement de direction&#xa0;; Annoter les tronçons la prend telle quelle.</translation>
    </message>
    <message>
        <source>Least minutes from the start</source>
        <translation>Minutes minimales depuis le départ</translation>
    </message>
    <message>
        <source>Minutes from the start to every cell, by the quickest way; of several starts the soonest.</source>
        <translation>Minutes depuis le départ jusqu’à chaque cellule, par le chemin le plus rapide&#xa0;; de plusieurs départs, celui d’où l’on arrive le plus tôt.</translation>
    </message>
    <message>
        <source>Minutes of walking, all routes together</source>
        <translation>Minutes de marche, tous les itinéraires ensemble</translation>
    </message>
</context>
<context>
    <name>brushline::PlotLegsAlgorithm</name>
    <message>
        <source>Plot legs from bearings and paces</source>
        <translation>Reporter des tronçons d’après azimuts et pas</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Relevés</translation>
    </message>
    <message>
        <source>bearing,azimuth,pace,traverse,closure,misclosure,compass rule,Bowditch,survey,sketch map,field notes,dead reckoning,compass,course,leg</source>
        <translation>azimut,cap,pas,cheminement,fermeture,écart de fermeture,compensation,Bowditch,levé,croquis,carnet de terrain,estime,boussole,parcours,tronçon</translation>
    </message>
    <message>
        <source>Draws bearings and paces that were written down in the field as legs on the map, tells how the route closes and which leg may hold a slip.</source>
        <translation>Dessine sur la carte, en tronçons, des azimuts et des pas notés sur le terrain, dit comment l’itinéraire se ferme et quel tronçon peut contenir une faute.</translation>
    </message>
    <message>
        <source>Grid of the map (for grid bearings)</source>
        <translation>Grille de la carte (pour les azimuts de la grille)</translation>
    </message>
    <message>
        <source>The projected system whose grid lines are printed on the map. Empty: the starts&apos; own when it is projected, else the UTM zone of each route&apos;s start.</source>
        <translation>Le système projeté dont les lignes de grille sont imprimées sur la carte. Vide&#xa0;: celui des départs s’il est projeté, sinon la zone UTM du départ de chaque itinéraire.</translation>
    </message>
    <message>
        <source>The route is passed over.</source>
        <translation>L’itinéraire n’est pas retenu.</translation>
    </message>
    <message>
        <source>Route “%1”: %2</source>
        <translation>Itinéraire «&#xa0;%1&#xa0;»&#xa0;: %2</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n route(s) could be plotted.</source>
        <translation>
            <numerusform>%n seul itinéraire, et il n’a pas pu être reporté.</numerusform>
            <numerusform>Aucun des %n itinéraires n’a pu être reporté.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) passed over in all.</source>
        <translation>
            <numerusform>%n itinéraire non retenu en tout.</numerusform>
            <numerusform>%n itinéraires non retenus en tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>Route “%1”</source>
        <translation>L’itinéraire «&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>brushline::PlotWriter</name>
    <message>
        <source>Plotted legs</source>
        <translation>Tronçons reportés</translation>
    </message>
    <message>
        <source>How the routes close (table)</source>
        <translation>Comment les itinéraires se ferment (table)</translation>
    </message>
    <message>
        <source>Routes plotted</source>
        <translation>Itinéraires reportés</translation>
    </message>
    <message>
        <source>Legs written, one for each walker</source>
        <translation>Tronçons écrits, un pour chaque marcheur</translation>
    </message>
    <message>
        <source>Routes that miss their end by more than errors allow</source>
        <translation>Itinéraires qui manquent leur arrivée de plus que les erreurs ne l’expliquent</translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) miss their end by more than errors allow: look for slips before anybody walks them.</source>
        <translation>
            <numerusform>%n itinéraire manque son arrivée de plus que les erreurs ne l’expliquent&#xa0;: cherchez les fautes avant que quiconque le parcoure.</numerusform>
            <numerusform>%n itinéraires manquent leur arrivée de plus que les erreurs ne l’expliquent&#xa0;: cherchez les fautes avant que quiconque les parcoure.</numerusform>
        </translation>
    </message>
    <message>
        <source>Routes: %1; leg rows written: %2.</source>
        <translation>Itinéraires&#xa0;: %1&#xa0;; enregistrements de tronçon écrits&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>brushline::Plugin</name>
    <message>
        <source>Turns planned routes into legs to walk by compass and pace count</source>
        <translation>Transforme des itinéraires planifiés en tronçons à parcourir à la boussole et au compte des pas</translation>
    </message>
</context>
<context>
    <name>brushline::PointSource</name>
    <message>
        <source>%1: give a layer with points.</source>
        <translation>%1&#xa0;: indiquez une couche de points.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give a layer with points.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de points. Indiquez une couche avec des points.</translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseAlgorithm</name>
    <message>
        <source>Lay out practice courses</source>
        <translation>Tracer des parcours d’entraînement</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planification</translation>
    </message>
    <message>
        <source>practice,course,control,compass,pace,leg,garden,school,scouts,children,training,loop</source>
        <translation>entraînement,exercice,parcours,poste,balise,boussole,pas,tronçon,jardin,école,scouts,enfants,boucle</translation>
    </message>
    <message>
        <source>Lays out several compass courses in an area, different but equally hard, with controls that nobody takes for one another.</source>
        <translation>Trace dans une zone plusieurs parcours à la boussole, différents mais de même difficulté, avec des postes que personne ne prend l’un pour l’autre.</translation>
    </message>
    <message>
        <source>AREA: layer “%1” is at most %2 m across, but the shortest leg is to be %3 m. Give a larger area or a smaller LEG_MIN.</source>
        <translation>AREA&#xa0;: la couche «&#xa0;%1&#xa0;» mesure au plus %2 m de large, mais le plus court tronçon doit faire %3 m. Indiquez une zone plus grande ou un LEG_MIN plus petit.</translation>
    </message>
    <message>
        <source>AREA: layer “%1” is of no use: %2. Draw one or more polygons, the widest 100 km.</source>
        <translation>AREA&#xa0;: la couche «&#xa0;%1&#xa0;» est inutilisable&#xa0;: %2. Dessinez un ou plusieurs polygones, de 100 km de large au plus.</translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseParameters</name>
    <message>
        <source>Empty: the field called “name”, if there is one.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;name&#xa0;», s’il y en a un.</translation>
    </message>
    <message>
        <source>%1 is %2 m and %3 is %4 m: the shortest leg cannot be longer than the longest.</source>
        <translation>%1 vaut %2 m et %3 vaut %4 m&#xa0;: le plus court tronçon ne peut pas être plus long que le plus long.</translation>
    </message>
    <message>
        <source>%1 is %2, but a course back to its start needs three legs or more. Give more, or turn %3 off.</source>
        <translation>%1 vaut %2, mais un parcours qui revient à son départ demande trois tronçons ou plus. Indiquez-en davantage, ou désactivez %3.</translation>
    </message>
    <message>
        <source>%1: give a layer with the polygons that courses stay in.</source>
        <translation>%1&#xa0;: indiquez une couche avec les polygones dans lesquels les parcours restent.</translation>
    </message>
    <message>
        <source>Area that courses stay in (polygons)</source>
        <translation>Zone dans laquelle les parcours restent (polygones)</translation>
    </message>
    <message>
        <source>Every leg lies wholly inside. Holes are out of bounds; polygons that touch are one area.</source>
        <translation>Chaque tronçon est entièrement à l’intérieur. Les trous sont interdits&#xa0;; des polygones qui se touchent forment une seule zone.</translation>
    </message>
    <message>
        <source>Starts (points)</source>
        <translation>Départs (points)</translation>
    </message>
    <message>
        <source>Where groups set out. Courses are dealt to the starts in turn, by their names; several may share one. Empty: one is chosen, a site where sites are given.</source>
        <translation>D’où les groupes partent. Les parcours sont répartis à tour de rôle entre les départs, d’après leurs noms&#xa0;; plusieurs peuvent partager le même. Vide&#xa0;: un départ est choisi, parmi les emplacements si des emplacements sont indiqués.</translation>
    </message>
    <message>
        <source>Field with the start&apos;s name</source>
        <translation>Champ du nom du départ</translation>
    </message>
    <message>
        <source>Sites for controls (points)</source>
        <translation>Emplacements des postes (points)</translation>
    </message>
    <message>
        <source>Boulders, stumps, gate posts: what can be known for certain on reaching it. Empty: controls stand anywhere, and a marker has to be hung up at each.</source>
        <translation>Rochers, souches, poteaux de portail&#xa0;: ce que l’on reconnaît à coup sûr en y arrivant. Vide&#xa0;: les postes se trouvent n’importe où, et il faut accrocher une balise à chacun.</translation>
    </message>
    <message>
        <source>Field with the site&apos;s name</source>
        <translation>Champ du nom de l’emplacement</translation>
    </message>
    <message>
        <source>Ground to keep away from</source>
        <translation>Terrain à éviter</translation>
    </message>
    <message>
        <source>Ponds, cliffs, roads, flower beds: layers of polygons, lines or points that no leg meets.</source>
        <translation>Étangs, falaises, routes, plates-bandes&#xa0;: couches de polygones, de lignes ou de points qu’aucun tronçon ne rencontre.</translation>
    </message>
    <message>
        <source>Courses</source>
        <translation>Parcours</translation>
    </message>
    <message>
        <source>How many different courses, one for each group.</source>
        <translation>Combien de parcours différents, un pour chaque groupe.</translation>
    </message>
    <message>
        <source>Legs of a course</source>
        <translation>Tronçons d’un parcours</translation>
    </message>
    <message>
        <source>Each course has so many; back to its start, three or more.</source>
        <translation>Chaque parcours en a ce nombre&#xa0;; s’il revient à son départ, trois ou plus.</translation>
    </message>
    <message>
        <source>Shortest leg (m)</source>
        <translation>Plus court tronçon (m)</translation>
    </message>
    <message>
        <source>In metres on the map. In a garden 15, in a forest 200.</source>
        <translation>En mètres sur la carte. Dans un jardin 15, dans une forêt 200.</translation>
    </message>
    <message>
        <source>Longest leg (m)</source>
        <translation>Plus long tronçon (m)</translation>
    </message>
    <message>
        <source>In metres on the map. In a garden 30, in a forest 400.</source>
        <translation>En mètres sur la carte. Dans un jardin 30, dans une forêt 400.</translation>
    </message>
    <message>
        <source>Least turn at a control (degrees)</source>
        <translation>Changement de direction minimal à un poste (degrés)</translation>
    </message>
    <message>
        <source>The bearing changes by at least this many degrees, so that nobody walks on without setting the dial anew.</source>
        <translation>L’azimut change d’au moins ce nombre de degrés, afin que personne ne continue sans régler de nouveau le cadran.</translation>
    </message>
    <message>
        <source>Back to the start</source>
        <translation>Retour au départ</translation>
    </message>
    <message>
        <source>The last leg leads back to the start. Off: a course ends at its last control.</source>
        <translation>Le dernier tronçon ramène au départ. Désactivé&#xa0;: un parcours finit à son dernier poste.</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Graine</translation>
    </message>
    <message>
        <source>The same seed gives the same courses again, another one gives others.</source>
        <translation>La même graine redonne les mêmes parcours, une autre en donne d’autres.</translation>
    </message>
    <message>
        <source>Room to what is kept away from (m)</source>
        <translation>Distance à garder de ce qu’il faut éviter (m)</translation>
    </message>
    <message>
        <source>No leg comes nearer to it than this, in metres. Walkers drift: give more at water and cliffs.</source>
        <translation>Aucun tronçon ne s’en approche plus que cela, en mètres. Les marcheurs dérivent&#xa0;: indiquez davantage près de l’eau et des falaises.</translation>
    </message>
    <message>
        <source>Steepest ground (degrees)</source>
        <translation>Pente maximale du terrain (degrés)</translation>
    </message>
    <message>
        <source>No leg leads over ground steeper than this, in whatever direction it falls. Needs a terrain model.</source>
        <translation>Aucun tronçon ne passe sur un terrain plus raide que cela, dans quelque sens qu’il descende. Demande un modèle de terrain.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no polygons. Draw the area that courses are to stay in.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de polygones. Dessinez la zone dans laquelle les parcours doivent rester.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no points. Give at least one start, or leave %1 empty and one is chosen.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de points. Indiquez au moins un départ, ou laissez %1 vide et un départ est choisi.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</source>
        <translation>
            <numerusform>%1&#xa0;: %n polygone de la couche «&#xa0;%2&#xa0;» n’est pas valide (il se croise ou se touche lui-même). Ce qui est entouré un nombre impair de fois compte comme intérieur. Réparez-le avec «&#xa0;Réparer les géométries&#xa0;».</numerusform>
            <numerusform>%1&#xa0;: %n polygones de la couche «&#xa0;%2&#xa0;» ne sont pas valides (ils se croisent ou se touchent eux-mêmes). Ce qui est entouré un nombre impair de fois compte comme intérieur. Réparez-les avec «&#xa0;Réparer les géométries&#xa0;».</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseWriter</name>
    <message>
        <source>Course lines</source>
        <translation>Lignes des parcours</translation>
    </message>
    <message>
        <source>A line for each course, a vertex at each control; Annotate legs takes it as it is.</source>
        <translation>Une ligne pour chaque parcours, un sommet à chaque poste&#xa0;; Annoter les tronçons la prend telle quelle.</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Postes</translation>
    </message>
    <message>
        <source>A point for each start, control and finish of each course, with its name; named points for Annotate legs.</source>
        <translation>Un point pour chaque départ, poste et arrivée de chaque parcours, avec son nom&#xa0;; points nommés pour Annoter les tronçons.</translation>
    </message>
    <message>
        <source>Courses laid out</source>
        <translation>Parcours tracés</translation>
    </message>
    <message>
        <source>Places that controls stand at</source>
        <translation>Endroits où se trouvent des postes</translation>
    </message>
    <message>
        <source>Legs that more than one course has</source>
        <translation>Tronçons communs à plusieurs parcours</translation>
    </message>
    <message>
        <source>Farthest that courses are out of balance (percent)</source>
        <translation>Plus grand déséquilibre entre les parcours (pour cent)</translation>
    </message>
    <message>
        <source>%1 outside the area</source>
        <translation>%1 hors de la zone</translation>
    </message>
    <message>
        <source>%1 in or too near to what is kept away from</source>
        <translation>%1 dans ce qu’il faut éviter ou trop près</translation>
    </message>
    <message>
        <source>%1 on ground that nobody walks, or of which nothing is known</source>
        <translation>%1 sur un terrain où personne ne marche, ou dont on ne sait rien</translation>
    </message>
    <message>
        <source>%1 beyond the %2 that can be looked at</source>
        <translation>%1 au-delà des %2 qui peuvent être examinés</translation>
    </message>
    <message>
        <source>%1: points passed over: %2. Left: %3.</source>
        <translation>%1&#xa0;: points non retenus&#xa0;: %2. Il en reste %3.</translation>
    </message>
    <message>
        <source>%1 at the place of another</source>
        <translation>%1 au même endroit qu’un autre</translation>
    </message>
    <message>
        <source>%1 within %2 m of another or of a start, where walkers could take one for the other</source>
        <translation>%1 à moins de %2 m d’un autre ou d’un départ, là où des marcheurs pourraient prendre l’un pour l’autre</translation>
    </message>
    <message>
        <source>STARTS: there are %1 starts for %2 courses; not all are used.</source>
        <translation>STARTS&#xa0;: il y a %1 départs pour %2 parcours&#xa0;; tous ne sont pas utilisés.</translation>
    </message>
    <message>
        <source>%1 are too short or too long when measured</source>
        <translation>%1 de longueur trop petite ou trop grande une fois mesurée</translation>
    </message>
    <message>
        <source>%1 leave the area</source>
        <translation>%1 sortant de la zone</translation>
    </message>
    <message>
        <source>%1 come too near to what is kept away from</source>
        <translation>%1 passant trop près de ce qu’il faut éviter</translation>
    </message>
    <message>
        <source>%1 cross ground that nobody walks</source>
        <translation>%1 traversant un terrain où personne ne marche</translation>
    </message>
    <message>
        <source>%1 cross ground whose cover is not known</source>
        <translation>%1 traversant un terrain dont la végétation n’est pas connue</translation>
    </message>
    <message>
        <source>%1 cross ground without heights</source>
        <translation>%1 traversant un terrain sans altitudes</translation>
    </message>
    <message>
        <source>%1 cross ground that is too steep</source>
        <translation>%1 traversant un terrain trop raide</translation>
    </message>
    <message>
        <source>No two places lie %1 to %2 m apart.</source>
        <translation>Il n’y a pas deux endroits distants de %1 à %2 m.</translation>
    </message>
    <message>
        <source>Of %1 legs tried all are open.</source>
        <translation>Sur %1 tronçons essayés, tous sont praticables.</translation>
    </message>
    <message>
        <source>Of %1 legs tried %2.</source>
        <translation>Tronçons essayés&#xa0;: %1, dont %2.</translation>
    </message>
    <message>
        <source>STARTS: none of the starts can be used. Put one inside the area, away from what is kept away from and on ground that can be walked; or leave STARTS empty.</source>
        <translation>STARTS&#xa0;: aucun des départs n’est utilisable. Mettez-en un dans la zone, loin de ce qu’il faut éviter et sur un terrain où l’on peut marcher&#xa0;; ou laissez STARTS vide.</translation>
    </message>
    <message>
        <source>SITES: a course of %1 legs needs %2 sites beside its start, but only %3 can be used that lie farther than %4 m from each other and from the starts. Give more sites, fewer or shorter legs, or better walkers.</source>
        <translation>SITES&#xa0;: un parcours de %1 tronçons demande %2 emplacements en plus de son départ, mais seuls %3 sont utilisables, à plus de %4 m les uns des autres et des départs. Indiquez davantage d’emplacements, des tronçons moins nombreux ou plus courts, ou de meilleurs marcheurs.</translation>
    </message>
    <message>
        <source>AREA: layer “%1” has room for %2 controls only that lie farther than %3 m from each other (so far walkers may be off after the shortest leg); a course of %4 legs needs %5. Give a larger area, fewer or shorter legs.</source>
        <translation>AREA&#xa0;: la couche «&#xa0;%1&#xa0;» n’a de place que pour %2 postes à plus de %3 m les uns des autres (de cette distance, des marcheurs peuvent être à côté après le plus court tronçon)&#xa0;; un parcours de %4 tronçons en demande %5. Indiquez une zone plus grande, des tronçons moins nombreux ou plus courts.</translation>
    </message>
    <message>
        <source>No course of %1 legs of %2 to %3 m was found. %4 Give a larger area, more sites, another length of legs, fewer legs, or a smaller TURN_MIN.</source>
        <translation>Aucun parcours de %1 tronçons de %2 à %3 m n’a été trouvé. %4 Indiquez une zone plus grande, davantage d’emplacements, une autre longueur de tronçons, moins de tronçons, ou un TURN_MIN plus petit.</translation>
    </message>
    <message>
        <source>COURSES: only %1 of %2 courses were found that differ from each other. %3 Give a larger area, more sites, or legs of more different lengths.</source>
        <translation>COURSES&#xa0;: seuls %1 parcours sur %2 ont été trouvés qui diffèrent les uns des autres. %3 Indiquez une zone plus grande, davantage d’emplacements, ou des longueurs de tronçons plus variées.</translation>
    </message>
    <message>
        <source>Length %1 to %2 m</source>
        <translation>Longueur %1 à %2 m</translation>
    </message>
    <message>
        <source>Climb %1 to %2 m</source>
        <translation>Montée %1 à %2 m</translation>
    </message>
    <message>
        <source>Walking %1 to %2 minutes</source>
        <translation>Marche %1 à %2 minutes</translation>
    </message>
    <message>
        <source>Slowed by cover %1 to %2 times</source>
        <translation>Ralentissement par la végétation %1 à %2 fois</translation>
    </message>
    <message>
        <source>Drift %1 to %2 m a leg</source>
        <translation>Dérive %1 à %2 m par tronçon</translation>
    </message>
    <message>
        <source>%1: out of balance by %2 percent, more than the 10 aimed at. Give more room, more sites, or a wider range of lengths.</source>
        <translation>%1&#xa0;: déséquilibre de %2 pour cent, plus que les 10 visés. Donnez plus de place, davantage d’emplacements, ou une plage de longueurs plus large.</translation>
    </message>
    <message>
        <source>%1: within %2 percent.</source>
        <translation>%1&#xa0;: à %2 pour cent près.</translation>
    </message>
    <message numerus="yes">
        <source>%n leg(s) are walked by more than one course: let those groups set out at different times.</source>
        <translation>
            <numerusform>%n tronçon est commun à plusieurs parcours&#xa0;: faites partir ces groupes à des heures différentes.</numerusform>
            <numerusform>%n tronçons sont communs à plusieurs parcours&#xa0;: faites partir ces groupes à des heures différentes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n course(s) come over their own ground twice.</source>
        <translation>
            <numerusform>%n parcours repasse sur son propre terrain.</numerusform>
            <numerusform>%n parcours repassent sur leur propre terrain.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) a leg passes by another control, within twice the drift there: tell walkers to look for the letter of their own.</source>
        <translation>
            <numerusform>%n fois, un tronçon passe à côté d’un autre poste, à moins du double de la dérive à cet endroit&#xa0;: dites aux marcheurs de chercher la lettre du leur.</numerusform>
            <numerusform>%n fois, un tronçon passe à côté d’un autre poste, à moins du double de la dérive à cet endroit&#xa0;: dites aux marcheurs de chercher la lettre du leur.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>SITES: %n control(s) have the name of another one. Their letters tell them apart; better give each site a name of its own.</source>
        <translation>
            <numerusform>SITES&#xa0;: %n poste a le nom d’un autre. Leurs lettres les distinguent&#xa0;; mieux vaut donner à chaque emplacement son propre nom.</numerusform>
            <numerusform>SITES&#xa0;: %n postes ont le nom d’un autre. Leurs lettres les distinguent&#xa0;; mieux vaut donner à chaque emplacement son propre nom.</numerusform>
        </translation>
    </message>
    <message>
        <source>Start %1</source>
        <translation>Départ %1</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Départ</translation>
    </message>
    <message>
        <source>Course %1</source>
        <translation>Parcours %1</translation>
    </message>
    <message>
        <source>shares %1 of %2 legs with other courses</source>
        <translation>partage avec d’autres parcours %1 de ses %2 tronçons</translation>
    </message>
    <message numerus="yes">
        <source>comes over its own ground %n time(s)</source>
        <translation>
            <numerusform>repasse %n fois sur son propre terrain</numerusform>
            <numerusform>repasse %n fois sur son propre terrain</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>passes by %n other control(s)</source>
        <translation>
            <numerusform>passe à côté de %n autre poste</numerusform>
            <numerusform>passe à côté de %n autres postes</numerusform>
        </translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>climb</source>
        <translation>montée</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutes</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>végétation</translation>
    </message>
    <message>
        <source>drift</source>
        <translation>dérive</translation>
    </message>
    <message>
        <source>%1 %2 percent over the mean</source>
        <translation>%1&#xa0;: %2 pour cent au-dessus de la moyenne</translation>
    </message>
    <message>
        <source>%1 %2 percent under the mean</source>
        <translation>%1&#xa0;: %2 pour cent au-dessous de la moyenne</translation>
    </message>
</context>
<context>
    <name>brushline::Provider</name>
    <message>
        <source>Brushline: compass legs through cover</source>
        <translation>Brushline&#xa0;: tronçons à la boussole à travers la végétation</translation>
    </message>
</context>
<context>
    <name>brushline::RasterInput</name>
    <message>
        <source>%1: raster “%2” %3</source>
        <translation>%1&#xa0;: le raster «&#xa0;%2&#xa0;» %3</translation>
    </message>
    <message>
        <source>has no coordinate reference system. Set it in the layer&apos;s properties.</source>
        <translation>n’a pas de système de coordonnées de référence (SCR). Définissez-le dans les propriétés de la couche.</translation>
    </message>
    <message>
        <source>cannot be read.</source>
        <translation>ne peut pas être lu.</translation>
    </message>
    <message>
        <source>has no cells of fixed size. Save it as a file first.</source>
        <translation>n’a pas de cellules de taille fixe. Enregistrez-le d’abord dans un fichier.</translation>
    </message>
    <message>
        <source>has bands 1 to %1; %2 asks for band %3.</source>
        <translation>a les bandes 1 à %1&#xa0;; %2 demande la bande %3.</translation>
    </message>
    <message>
        <source>%1: raster “%2” could not be read near %3, %4 (%5). Is its file whole? Copy it anew from where it came.</source>
        <translation>%1&#xa0;: le raster «&#xa0;%2&#xa0;» n’a pas pu être lu près de %3, %4 (%5). Son fichier est-il complet&#xa0;? Copiez-le de nouveau depuis son origine.</translation>
    </message>
    <message>
        <source>the host gives no reason</source>
        <translation>le programme hôte n’en donne pas la raison</translation>
    </message>
</context>
<context>
    <name>brushline::RasterOutput</name>
    <message>
        <source>%1 (%2): “%3” cannot be written. Is its folder there, may it be written to, and does the host know the format by that ending?</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» ne peut pas être écrit. Son dossier existe-t-il, est-il permis d’y écrire, et le programme hôte connaît-il le format de cette extension&#xa0;?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so it was left out. Is the disk full?</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas pu être écrit en entier (%3) et a donc été laissé de côté. Le disque est-il plein&#xa0;?</translation>
    </message>
    <message>
        <source>its end is missing</source>
        <translation>sa fin manque</translation>
    </message>
</context>
<context>
    <name>brushline::RecordsParameters</name>
    <message>
        <source>Write 042, 42.5 or 42,5 (in the dial&apos;s unit), 42°, 42°30&apos;, N 42 E, S68-05-35W, NE, 0747 mil or 47 gon.</source>
        <translation>Écrivez 042, 42.5 ou 42,5 (dans l’unité du cadran), 42°, 42°30&apos;, N 42 E, S68-05-35W, NE, 0747 mil ou 47 gon (l’ouest s’écrit W).</translation>
    </message>
    <message>
        <source>has no bearing.</source>
        <translation>n’a pas d’azimut.</translation>
    </message>
    <message>
        <source>has the bearing “%1”; bearings count clockwise from 0.</source>
        <translation>a l’azimut «&#xa0;%1&#xa0;»&#xa0;; les azimuts se comptent dans le sens horaire à partir de 0.</translation>
    </message>
    <message>
        <source>has the bearing “%1”, more than a full circle. Is it in another unit than the dial&apos;s (DIAL_UNIT)?</source>
        <translation>a l’azimut «&#xa0;%1&#xa0;», plus qu’un tour complet. Est-il dans une autre unité que celle du cadran (DIAL_UNIT)&#xa0;?</translation>
    </message>
    <message>
        <source>has the bearing “%1”; from north or south towards east or west it is 90 degrees at most.</source>
        <translation>a l’azimut «&#xa0;%1&#xa0;»&#xa0;; à partir du nord ou du sud vers l’est ou l’ouest, il est de 90 degrés au plus.</translation>
    </message>
    <message>
        <source>has the bearing “%1”; minutes and seconds are below 60.</source>
        <translation>a l’azimut «&#xa0;%1&#xa0;»&#xa0;; les minutes et les secondes sont inférieures à 60.</translation>
    </message>
    <message>
        <source>has the bearing “%1”: degrees, or the dial&apos;s unit? Write N 42° E or N 47 gon E.</source>
        <translation>a l’azimut «&#xa0;%1&#xa0;»&#xa0;: en degrés, ou dans l’unité du cadran&#xa0;? Écrivez N 42° E ou N 47 gon E.</translation>
    </message>
    <message>
        <source>has the bearing “%1”, which cannot be read.</source>
        <translation>a l’azimut «&#xa0;%1&#xa0;», qui ne peut pas être lu.</translation>
    </message>
    <message>
        <source>paces</source>
        <translation>pas</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>distance</translation>
    </message>
    <message>
        <source>Write a number above 0: 62, 62.5, 62,5 or 62 paces.</source>
        <translation>Écrivez un nombre supérieur à 0&#xa0;: 62, 62.5, 62,5 ou 62 paces.</translation>
    </message>
    <message>
        <source>Write metres above 0: 47, 47.5, 47,5 m or 0.12 km.</source>
        <translation>Écrivez des mètres, supérieurs à 0&#xa0;: 47, 47.5, 47,5 m ou 0.12 km.</translation>
    </message>
    <message>
        <source>has no %1.</source>
        <translation>n’a aucune valeur pour «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>has the %1 “%2”.</source>
        <translation>a pour «&#xa0;%1&#xa0;» la valeur «&#xa0;%2&#xa0;».</translation>
    </message>
    <message>
        <source>%1: name the field with the bearings.</source>
        <translation>%1&#xa0;: nommez le champ qui contient les azimuts.</translation>
    </message>
    <message>
        <source>%1 and %2 are both given: name one, since nobody could tell which to believe.</source>
        <translation>%1 et %2 sont indiqués tous les deux&#xa0;: n’en nommez qu’un, puisque personne ne saurait lequel croire.</translation>
    </message>
    <message>
        <source>%1 or %2: name the field with the paces or the one with the distances.</source>
        <translation>%1 ou %2&#xa0;: nommez le champ des pas ou celui des distances.</translation>
    </message>
    <message>
        <source>has no order. Number the legs of each route in the order they are walked.</source>
        <translation>n’a pas d’ordre. Numérotez les tronçons de chaque itinéraire dans l’ordre de la marche.</translation>
    </message>
    <message>
        <source>has the order “%1”, which is no number. Number the legs of each route in the order they are walked.</source>
        <translation>a l’ordre «&#xa0;%1&#xa0;», qui n’est pas un nombre. Numérotez les tronçons de chaque itinéraire dans l’ordre de la marche.</translation>
    </message>
    <message>
        <source>was counted by “%1”, whom the table of walkers (WALKERS) does not have.</source>
        <translation>a été comptée par «&#xa0;%1&#xa0;», que la table des marcheurs (WALKERS) n’a pas.</translation>
    </message>
    <message>
        <source>does not say who counted. Fill its field for that, or leave one walker.</source>
        <translation>ne dit pas qui a compté. Remplissez le champ prévu pour cela, ou ne laissez qu’un marcheur.</translation>
    </message>
    <message>
        <source>is %1 m long; a leg has %2 to %3 m. Mend the number, or delete the row.</source>
        <translation>a %1 m de long&#xa0;; un tronçon a de %2 à %3 m. Corrigez le nombre, ou supprimez la ligne.</translation>
    </message>
    <message>
        <source>%1: layer “%2”, rows %3 and %4 have the same order in route “%5”, so which comes first is not known. Give each leg of a route its own number.</source>
        <translation>%1&#xa0;: couche «&#xa0;%2&#xa0;», les lignes %3 et %4 ont le même ordre dans l’itinéraire «&#xa0;%5&#xa0;»&#xa0;: on ne sait donc pas laquelle vient en premier. Donnez à chaque tronçon d’un itinéraire son propre numéro.</translation>
    </message>
    <message>
        <source>Bearings and paces (table)</source>
        <translation>Azimuts et pas (table)</translation>
    </message>
    <message>
        <source>A row for each leg, as it was written down in the field. Any table, also a CSV file.</source>
        <translation>Une ligne pour chaque tronçon, tel qu’il a été noté sur le terrain. Une table quelconque, y compris un fichier CSV.</translation>
    </message>
    <message>
        <source>Field with the route&apos;s name</source>
        <translation>Champ du nom de l’itinéraire</translation>
    </message>
    <message>
        <source>Rows with the same value make one route, also when they do not stand together. Empty: all rows make one route, called 1.</source>
        <translation>Les lignes de même valeur forment un itinéraire, même si elles ne se suivent pas. Vide&#xa0;: toutes les lignes forment un seul itinéraire, nommé 1.</translation>
    </message>
    <message>
        <source>Field with the order of legs</source>
        <translation>Champ de l’ordre des tronçons</translation>
    </message>
    <message>
        <source>Numbers (also as text) or times in the order the legs are walked, no two of a route alike. Empty: as the rows stand in the table.</source>
        <translation>Des nombres (même en texte) ou des heures dans l’ordre de la marche, tous différents dans un même itinéraire. Vide&#xa0;: dans l’ordre des lignes de la table.</translation>
    </message>
    <message>
        <source>Field with the bearing</source>
        <translation>Champ de l’azimut</translation>
    </message>
    <message>
        <source>Numbers in the dial&apos;s unit (042, 42.5, 42,5), or text: 42°, 42°30&apos;, N 42 E, S68-05-35W, NE, 0747 mil, 47 gon.</source>
        <translation>Des nombres dans l’unité du cadran (042, 42.5, 42,5), ou du texte&#xa0;: 42°, 42°30&apos;, N 42 E, S68-05-35W (W&#xa0;: ouest), NE, 0747 mil, 47 gon.</translation>
    </message>
    <message>
        <source>Field with the paces</source>
        <translation>Champ des pas</translation>
    </message>
    <message>
        <source>What the walker counted, in their kind of paces. This or the field with the distance.</source>
        <translation>Ce que le marcheur a compté, dans sa propre sorte de pas. Ceci ou le champ de la distance.</translation>
    </message>
    <message>
        <source>Field with the distance (m)</source>
        <translation>Champ de la distance (m)</translation>
    </message>
    <message>
        <source>Horizontal metres, where they were measured and not paced.</source>
        <translation>Des mètres horizontaux, là où ils ont été mesurés et non comptés en pas.</translation>
    </message>
    <message>
        <source>Field with who counted</source>
        <translation>Champ de qui a compté</translation>
    </message>
    <message>
        <source>A name from the table of walkers; needed when that has several and paces are given.</source>
        <translation>Un nom de la table des marcheurs&#xa0;; nécessaire si elle en a plusieurs et que des pas sont indiqués.</translation>
    </message>
    <message>
        <source>%1: give a table with bearings.</source>
        <translation>%1&#xa0;: indiquez une table d’azimuts.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2 has %n walkers, and their paces are not the same. Name the field of “%3” that says who counted, or give a table with that one walker.</source>
        <translation>
            <numerusform>%1&#xa0;: %2 a %n marcheur, et ses pas ne sont pas les mêmes. Nommez le champ de «&#xa0;%3&#xa0;» qui dit qui a compté, ou indiquez une table avec ce seul marcheur.</numerusform>
            <numerusform>%1&#xa0;: %2 a %n marcheurs, et leurs pas ne sont pas les mêmes. Nommez le champ de «&#xa0;%3&#xa0;» qui dit qui a compté, ou indiquez une table avec ce seul marcheur.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2”, row %3</source>
        <translation>%1&#xa0;: couche «&#xa0;%2&#xa0;», ligne %3</translation>
    </message>
    <message>
        <source>%1 names no route in its field “%2”, so that some route would be a leg short. Name it, or delete the row.</source>
        <translation>%1 ne nomme aucun itinéraire dans son champ «&#xa0;%2&#xa0;», si bien qu’un tronçon manquerait à un itinéraire. Nommez-le, ou supprimez la ligne.</translation>
    </message>
    <message>
        <source>%1 (route “%2”) %3</source>
        <translation>%1 (itinéraire «&#xa0;%2&#xa0;») %3</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n empty row(s) of “%2” passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n ligne vide de «&#xa0;%2&#xa0;» ignorée.</numerusform>
            <numerusform>%1&#xa0;: %n lignes vides de «&#xa0;%2&#xa0;» ignorées.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: “%2” has no rows, so there are no legs.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas de lignes, donc il n’y a pas de tronçons.</translation>
    </message>
    <message>
        <source>has the bearing “%1”: thousands or decimals? Write 1600 for thousands; for decimals a point, and not three of them: 1.6.</source>
        <translation>a l’azimut «&#xa0;%1&#xa0;»&#xa0;: milliers ou décimales&#xa0;? Écrivez 1600 pour des milliers&#xa0;; pour des décimales un point, et pas trois décimales&#xa0;: 1.6.</translation>
    </message>
    <message>
        <source>has the %1 “%2”: thousands or decimals? Write 1250 for thousands; for decimals a point, and not three of them: 1.25.</source>
        <translation>a comme %1 «&#xa0;%2&#xa0;»&#xa0;: milliers ou décimales&#xa0;? Écrivez 1250 pour des milliers&#xa0;; pour des décimales un point, et pas trois décimales&#xa0;: 1.25.</translation>
    </message>
</context>
<context>
    <name>brushline::RouteFinder</name>
    <message>
        <source>there is a way, but none of %1 legs or fewer was found; the quickest, pulled tight, has %2. Raise MAX_LEGS.</source>
        <translation>il y a un chemin, mais aucun de %1 tronçons ou moins n’a été trouvé&#xa0;; le plus rapide, tendu au plus court, en a %2. Augmentez MAX_LEGS.</translation>
    </message>
    <message>
        <source>the legs found cross, by a hair, ground that nobody walks or that has no height. Move start or end a few metres away from it, or give smaller CELLs.</source>
        <translation>les tronçons trouvés traversent, de très peu, un terrain où personne ne marche ou qui n’a pas d’altitude. Éloignez-en le départ ou l’arrivée de quelques mètres, ou indiquez un CELL plus petit.</translation>
    </message>
    <message>
        <source>%1 (%2 % of its border, nearest after %3 m)</source>
        <translation>%1 (%2&#xa0;% de son contour, au plus près à %3 m)</translation>
    </message>
    <message>
        <source>there is no way: the start is enclosed by %1.</source>
        <translation>il n’y a pas de chemin&#xa0;: le départ est enfermé par %1.</translation>
    </message>
    <message>
        <source>there is no way: the end is enclosed by %1.</source>
        <translation>il n’y a pas de chemin&#xa0;: l’arrivée est enfermée par %1.</translation>
    </message>
    <message>
        <source>no way leads out of the start&apos;s own cell: a barrier, or ground that nobody walks, runs through it. Give a smaller CELL, or move the start.</source>
        <translation>aucun chemin ne sort de la cellule du départ&#xa0;: une barrière, ou un terrain où personne ne marche, la traverse. Indiquez un CELL plus petit ou déplacez le départ.</translation>
    </message>
    <message>
        <source>no way leads out of the end&apos;s own cell: a barrier, or ground that nobody walks, runs through it. Give a smaller CELL, or move the end.</source>
        <translation>aucun chemin ne sort de la cellule de l’arrivée&#xa0;: une barrière, ou un terrain où personne ne marche, la traverse. Indiquez un CELL plus petit ou déplacez l’arrivée.</translation>
    </message>
</context>
<context>
    <name>brushline::RoutePlotter</name>
    <message>
        <source>leg %1 (row %2)</source>
        <translation>le tronçon %1 (ligne %2)</translation>
    </message>
    <message>
        <source>no compass works where %1 starts, too near the magnetic pole.</source>
        <translation>aucune boussole ne fonctionne là où commence %1, trop près du pôle magnétique.</translation>
    </message>
    <message>
        <source>the grid %1 does not reach to where %2 starts: give another %3.</source>
        <translation>la grille %1 ne s’étend pas jusqu’à l’endroit où commence %2&#xa0;: indiquez un autre %3.</translation>
    </message>
    <message>
        <source>it leads to where %1 does not reach.</source>
        <translation>il mène là où %1 ne s’étend pas.</translation>
    </message>
    <message>
        <source>it leads to where the grid %1 does not reach: give another %2.</source>
        <translation>il mène là où la grille %1 ne s’étend pas&#xa0;: indiquez un autre %2.</translation>
    </message>
    <message>
        <source>spread over the legs, the miss of %1 m leaves one of them without length. Leave %2 off.</source>
        <translation>réparti sur les tronçons, l’écart de %1 m laisse l’un d’eux sans longueur. Laissez %2 désactivé.</translation>
    </message>
</context>
<context>
    <name>brushline::RouteSource</name>
    <message>
        <source>layer “%1”, feature %2</source>
        <translation>couche «&#xa0;%1&#xa0;», entité %2</translation>
    </message>
    <message>
        <source>has no two vertices apart, so no leg.</source>
        <translation>n’a pas deux sommets distincts, donc pas de tronçon.</translation>
    </message>
    <message>
        <source>%1: %2 %3 Passed over.</source>
        <translation>%1&#xa0;: %2 %3 Non retenu.</translation>
    </message>
    <message numerus="yes">
        <source>None of the %n route(s) could be used.</source>
        <translation>
            <numerusform>%n seul itinéraire, et il n’a pas pu être utilisé.</numerusform>
            <numerusform>Aucun des %n itinéraires n’a pu être utilisé.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) passed over in all.</source>
        <translation>
            <numerusform>%n itinéraire non retenu en tout.</numerusform>
            <numerusform>%n itinéraires non retenus en tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features, so there are no legs.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas d’entités, donc il n’y a pas de tronçons.</translation>
    </message>
    <message>
        <source>has a coordinate that is not a number (vertex %1).</source>
        <translation>a une coordonnée qui n’est pas un nombre (sommet %1).</translation>
    </message>
    <message>
        <source>cannot be transformed from %1 to %2: is the layer&apos;s coordinate reference system the right one?</source>
        <translation>ne peut pas être transformé de %1 en %2&#xa0;: le système de coordonnées de référence (SCR) de la couche est-il le bon&#xa0;?</translation>
    </message>
    <message>
        <source>latitude and longitude</source>
        <translation>latitude et longitude</translation>
    </message>
    <message>
        <source>has a latitude of %1 degrees, beyond the pole: are latitude and longitude the wrong way round?</source>
        <translation>a une latitude de %1 degrés, au-delà du pôle&#xa0;: la latitude et la longitude sont-elles inversées&#xa0;?</translation>
    </message>
    <message>
        <source>lies outside the grid %1: give another %2.</source>
        <translation>se trouve hors de la grille %1&#xa0;: indiquez un autre %2.</translation>
    </message>
    <message>
        <source>%1: %2 lies at latitude %3, longitude %4, outside the area that %5 is made for. Is the layer&apos;s coordinate reference system the right one?</source>
        <translation>%1&#xa0;: %2 se trouve à la latitude %3, longitude %4, hors de la zone pour laquelle %5 est prévu. Le système de coordonnées de référence (SCR) de la couche est-il le bon&#xa0;?</translation>
    </message>
    <message>
        <source>has no geometry.</source>
        <translation>n’a pas de géométrie.</translation>
    </message>
    <message>
        <source>has no line in it.</source>
        <translation>ne contient aucune ligne.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has points, so the field with their order is needed.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» a des points, le champ de leur ordre est donc nécessaire.</translation>
    </message>
    <message>
        <source>names no route in its field “%1”.</source>
        <translation>ne nomme aucun itinéraire dans son champ «&#xa0;%1&#xa0;».</translation>
    </message>
    <message>
        <source>has no single point, so route “%1” is not complete.</source>
        <translation>n’a pas un point unique, donc l’itinéraire «&#xa0;%1&#xa0;» n’est pas complet.</translation>
    </message>
    <message>
        <source>%1: features %2 and %3 of layer “%4” have the same value in route “%5”, so their order is not known. Give each point of a route its own number.</source>
        <translation>%1&#xa0;: les entités %2 et %3 de la couche «&#xa0;%4&#xa0;» ont la même valeur dans l’itinéraire «&#xa0;%5&#xa0;», leur ordre n’est donc pas connu. Donnez à chaque point d’un itinéraire son propre numéro.</translation>
    </message>
    <message>
        <source>layer “%1”, route “%2”</source>
        <translation>couche «&#xa0;%1&#xa0;», itinéraire «&#xa0;%2&#xa0;»</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n leg(s) do not follow the one before them in the layer (first: %2). Each begins a route of its own, with drift, minutes and places from there. Sort the layer by route, walker, direction and leg if that is not meant.</source>
        <translation>
            <numerusform>%1&#xa0;: %n tronçon ne suit pas celui qui le précède dans la couche (le premier&#xa0;: %2). Il commence un itinéraire à lui, avec dérive, minutes et lieux à partir de là. Triez la couche par itinéraire, marcheur, direction et tronçon si ce n’est pas voulu.</numerusform>
            <numerusform>%1&#xa0;: %n tronçons ne suivent pas celui qui les précède dans la couche (le premier&#xa0;: %2). Chacun commence un itinéraire à lui, avec dérive, minutes et lieux à partir de là. Triez la couche par itinéraire, marcheur, direction et tronçon si ce n’est pas voulu.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, leg %2 of route “%3” after leg %4</source>
        <translation>%1, tronçon %2 de l’itinéraire «&#xa0;%3&#xa0;» après le tronçon %4</translation>
    </message>
</context>
<context>
    <name>brushline::RoutesParameters</name>
    <message>
        <source>%1: %2 has no value. Number the points of each route in the order they are walked.</source>
        <translation>%1&#xa0;: %2 n’a pas de valeur. Numérotez les points de chaque itinéraire dans l’ordre de la marche.</translation>
    </message>
    <message>
        <source>%1: %2 has “%3”, which is no number. Number the points of each route in the order they are walked.</source>
        <translation>%1&#xa0;: %2 contient «&#xa0;%3&#xa0;», qui n’est pas un nombre. Numérotez les points de chaque itinéraire dans l’ordre de la marche.</translation>
    </message>
    <message>
        <source>Routes (lines, or points in order)</source>
        <translation>Itinéraires (lignes, ou points dans l’ordre)</translation>
    </message>
    <message>
        <source>Planned routes. Lines: each feature is a route, each straight piece of it a leg. Points: give the fields for route and order.</source>
        <translation>Itinéraires planifiés. Lignes&#xa0;: chaque entité est un itinéraire, chacun de ses morceaux droits un tronçon. Points&#xa0;: indiquez les champs de l’itinéraire et de l’ordre.</translation>
    </message>
    <message>
        <source>Field with the route&apos;s name</source>
        <translation>Champ du nom de l’itinéraire</translation>
    </message>
    <message>
        <source>Field with the order of points</source>
        <translation>Champ de l’ordre des points</translation>
    </message>
    <message>
        <source>For points only: numbers (also as text) or times in the order the points are walked, no two of a route alike.</source>
        <translation>Pour les points seulement&#xa0;: des nombres (même en texte) ou des heures dans l’ordre de la marche, tous différents dans un même itinéraire.</translation>
    </message>
    <message>
        <source>Grid of the map (for grid bearings)</source>
        <translation>Grille de la carte (pour les azimuts de la grille)</translation>
    </message>
    <message>
        <source>The projected system whose grid lines are printed on the map. Empty: the routes&apos; own when it is projected, else the UTM zone of each route&apos;s first point.</source>
        <translation>Le système projeté dont les lignes de grille sont imprimées sur la carte. Vide&#xa0;: celui des itinéraires s’il est projeté, sinon la zone UTM du premier point de chaque itinéraire.</translation>
    </message>
    <message>
        <source>%1: give a layer with routes.</source>
        <translation>%1&#xa0;: indiquez une couche d’itinéraires.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no features. Give a layer with routes, as lines or points.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas d’entités. Indiquez une couche d’itinéraires, en lignes ou en points.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has no coordinate reference system, so nobody can tell where its routes lie. Set it in the layer&apos;s properties.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a pas de système de coordonnées de référence (SCR)&#xa0;: personne ne peut donc dire où se trouvent ses itinéraires. Définissez-le dans les propriétés de la couche.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has neither lines nor points.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a ni lignes ni points.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has points, so the field with their order is needed.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» a des points, le champ de leur ordre est donc nécessaire.</translation>
    </message>
    <message>
        <source>Names the routes. Points with the same value make one route. Without it lines are numbered from 1, and all points make one route. A line that it does not name is called # and its number.</source>
        <translation>Nomme les itinéraires. Les points de même valeur forment un itinéraire. Sans lui, les lignes sont numérotées à partir de 1, et tous les points forment un seul itinéraire. Une ligne qu’il ne nomme pas s’appelle # suivi de son numéro.</translation>
    </message>
</context>
<context>
    <name>brushline::ShapesReader</name>
    <message numerus="yes">
        <source>%1: %n feature(s) of layer “%2” are without a usable geometry, whole or in part; passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n entité de la couche «&#xa0;%2&#xa0;» est sans géométrie utilisable, en tout ou en partie&#xa0;; ignorée.</numerusform>
            <numerusform>%1&#xa0;: %n entités de la couche «&#xa0;%2&#xa0;» sont sans géométrie utilisable, en tout ou en partie&#xa0;; ignorées.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::SheetWords</name>
    <message>
        <source>Route without a name</source>
        <translation>Itinéraire sans nom</translation>
    </message>
    <message>
        <source>back</source>
        <translation>retour</translation>
    </message>
    <message>
        <source>out</source>
        <translation>aller</translation>
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
        <translation>1 tronçon</translation>
    </message>
    <message>
        <source>%1 legs</source>
        <translation>%1 tronçons</translation>
    </message>
    <message>
        <source>1 pace</source>
        <translation>1 pas</translation>
    </message>
    <message>
        <source>%1 paces</source>
        <translation>%1 pas</translation>
    </message>
    <message>
        <source>a day that is not known</source>
        <translation>un jour inconnu</translation>
    </message>
    <message>
        <source>0.0°</source>
        <translation>0.0°</translation>
    </message>
    <message>
        <source>%1° west</source>
        <translation>%1° ouest</translation>
    </message>
    <message>
        <source>%1° east</source>
        <translation>%1° est</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>There are no numbers for the dial on these legs.</source>
        <translation>Il n’y a pas d’azimuts à afficher sur ces tronçons.</translation>
    </message>
    <message>
        <source>The dial numbers are from magnetic north: set them as they stand, on a compass without correction for declination.</source>
        <translation>Les azimuts à afficher partent du nord magnétique&#xa0;: affichez-les tels quels, sur une boussole sans correction de la déclinaison.</translation>
    </message>
    <message>
        <source>The dial numbers are from true north: for a compass that is set to correct for this declination.</source>
        <translation>Les azimuts à afficher partent du nord vrai (géographique)&#xa0;: pour une boussole réglée pour corriger cette déclinaison.</translation>
    </message>
    <message>
        <source>The dial numbers are from grid north, that of the map’s grid lines: for a compass that is set to correct for the angle from grid north to magnetic north.</source>
        <translation>Les azimuts à afficher partent du nord de la grille, celui des lignes de grille de la carte&#xa0;: pour une boussole réglée pour corriger l’angle du nord de la grille au nord magnétique.</translation>
    </message>
    <message>
        <source>magnetic north</source>
        <translation>nord magnétique</translation>
    </message>
    <message>
        <source>true north</source>
        <translation>nord vrai (géographique)</translation>
    </message>
    <message>
        <source>grid north</source>
        <translation>nord de la grille</translation>
    </message>
    <message>
        <source>These legs do not tell from which north the dial numbers are. Ask who made them before you use them.</source>
        <translation>Ces tronçons ne disent pas de quel nord partent les azimuts à afficher. Demandez à celui qui les a faits avant de vous en servir.</translation>
    </message>
    <message>
        <source>These legs do not tell for certain from which north the dial numbers are: %1. Ask who made them.</source>
        <translation>Ces tronçons ne disent pas avec certitude de quel nord partent les azimuts à afficher&#xa0;: %1. Demandez à celui qui les a faits.</translation>
    </message>
    <message>
        <source> or </source>
        <comment>between two norths</comment>
        <translation> ou </translation>
    </message>
    <message>
        <source>what is in the way</source>
        <translation>ce qui barre le chemin</translation>
    </message>
    <message>
        <source>Turn left, a quarter turn.</source>
        <translation>À gauche, un quart de tour.</translation>
    </message>
    <message>
        <source>Turn right, a quarter turn.</source>
        <translation>À droite, un quart de tour.</translation>
    </message>
    <message>
        <source>Along the line.</source>
        <translation>Le long de la ligne.</translation>
    </message>
    <message>
        <source>On along the line.</source>
        <translation>De nouveau le long de la ligne.</translation>
    </message>
    <message>
        <source>Past %1.</source>
        <translation>Passer&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Back to the line.</source>
        <translation>Retour à la ligne.</translation>
    </message>
    <message>
        <source>Out to the left of the line, round %1.</source>
        <translation>S’écarter à gauche de la ligne, pour contourner&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Out to the right of the line, round %1.</source>
        <translation>S’écarter à droite de la ligne, pour contourner&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Out from the line, round %1.</source>
        <translation>S’écarter de la ligne, pour contourner&#xa0;: %1.</translation>
    </message>
    <message>
        <source>These paces do not count for the leg.</source>
        <translation>Ces pas ne comptent pas pour le tronçon.</translation>
    </message>
    <message>
        <source>Count from 0 to %1.</source>
        <translation>Compter de 0 à %1.</translation>
    </message>
    <message>
        <source>Count on from %1 to %2.</source>
        <translation>Continuer à compter de %1 à %2.</translation>
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
        <translation>O</translation>
    </message>
</context>
<context>
    <name>brushline::SightSurfaceAlgorithm</name>
    <message>
        <source>Sight distance surface</source>
        <translation>Surface des distances de visibilité</translation>
    </message>
    <message>
        <source>Sighting</source>
        <translation>Visée</translation>
    </message>
    <message>
        <source>sight,visibility,see,cover,vegetation,forest,stand,stems,raster,thicket,brush</source>
        <translation>vue,visibilité,voir,végétation,couvert,forêt,peuplement,tiges,raster,fourré,broussailles</translation>
    </message>
    <message>
        <source>Makes a raster of how far one sees through the cover, from cover polygons, class codes or forest stands.</source>
        <translation>Crée un raster de la distance à laquelle on voit à travers la végétation, à partir de polygones de végétation, de codes de classes ou de peuplements forestiers.</translation>
    </message>
    <message>
        <source>Extent</source>
        <translation>Emprise</translation>
    </message>
    <message>
        <source>Empty: that of the cover layer, or of the raster when no polygons are given.</source>
        <translation>Vide&#xa0;: celle de la couche de végétation, ou du raster si aucun polygone n’est indiqué.</translation>
    </message>
    <message>
        <source>Size of the cells (m)</source>
        <translation>Taille des cellules (m)</translation>
    </message>
    <message>
        <source>In metres; the cover layer has to be in a projected system.</source>
        <translation>En mètres&#xa0;; la couche de végétation doit être dans un système projeté.</translation>
    </message>
    <message>
        <source>Sight distance (m)</source>
        <translation>Distance de visibilité (m)</translation>
    </message>
    <message>
        <source>Give cover: polygons (COVER), class codes (COVER_RASTER) or sights (SIGHT_RASTER).</source>
        <translation>Indiquez la végétation&#xa0;: des polygones (COVER), des codes de classes (COVER_RASTER) ou des distances de visibilité (SIGHT_RASTER).</translation>
    </message>
    <message>
        <source>%1 is in metres, but the cover is in %2, which counts in degrees. Reproject it to a UTM zone or a national grid first.</source>
        <translation>%1 est en mètres, mais la végétation est en %2, qui compte en degrés. Reprojetez-la d’abord dans une zone UTM ou une grille nationale.</translation>
    </message>
    <message>
        <source>%1 is empty. Give an area that the cover lies in.</source>
        <translation>%1 est vide. Indiquez une zone où se trouve la végétation.</translation>
    </message>
    <message>
        <source>%1 of %2 m over this extent makes %3 cells. Give larger cells or a smaller extent.</source>
        <translation>%1 de %2 m sur cette emprise donne %3 cellules. Indiquez des cellules plus grandes ou une emprise plus petite.</translation>
    </message>
    <message>
        <source>%1 columns and %2 rows written.</source>
        <translation>%1 colonnes et %2 lignes écrites.</translation>
    </message>
    <message>
        <source>Nothing is known of the cover of any cell, so the raster is empty. Does the cover lie in this extent, and does the table have its classes?</source>
        <translation>Rien n’est connu de la végétation d’aucune cellule, le raster est donc vide. La végétation est-elle dans cette étendue, et la table a-t-elle ses classes&#xa0;?</translation>
    </message>
    <message>
        <source>%1 is %2, so this raster is no SIGHT_RASTER for other algorithms: those want the metres at which half the marks are clear (%1 0.5).</source>
        <translation>%1 est %2, donc ce raster ne convient pas comme SIGHT_RASTER d’autres algorithmes&#xa0;: ceux-ci attendent les mètres auxquels la moitié des repères sont nets (%1 0.5).</translation>
    </message>
</context>
<context>
    <name>brushline::SourceFeatures</name>
    <message>
        <source>%1: the reading of layer “%2” broke off before its end (%3). Nothing is worked out from a part; see to the file or the connection, and run again.</source>
        <translation>%1&#xa0;: la lecture de la couche «&#xa0;%2&#xa0;» s’est interrompue avant la fin (%3). Rien n’est calculé à partir d’une partie&#xa0;; vérifiez le fichier ou la connexion et relancez.</translation>
    </message>
</context>
<context>
    <name>brushline::StandParameters</name>
    <message>
        <source>Stands: field with stems per hectare</source>
        <translation>Peuplements&#xa0;: champ du nombre de tiges par hectare</translation>
    </message>
    <message>
        <source>For polygons that are forest stands: the number of stems per hectare. Sight then comes from stems and diameter, not from a class. It is an upper bound: what grows between the stems counts only through the understorey.</source>
        <translation>Pour des polygones qui sont des peuplements forestiers&#xa0;: le nombre de tiges par hectare. La visibilité vient alors des tiges et du diamètre, non d’une classe. C’est un maximum&#xa0;: ce qui pousse entre les tiges ne compte que par le sous-étage.</translation>
    </message>
    <message>
        <source>Stands: field with the mean diameter (m)</source>
        <translation>Peuplements&#xa0;: champ du diamètre moyen (m)</translation>
    </message>
    <message>
        <source>Mean diameter of the stems in metres.</source>
        <translation>Diamètre moyen des tiges en mètres.</translation>
    </message>
    <message>
        <source>Stands: field with the understorey (1/m)</source>
        <translation>Peuplements&#xa0;: champ du sous-étage (1/m)</translation>
    </message>
    <message>
        <source>Extinction by what grows between the stems, per metre; ln 2 divided by the distance at which half the marks are clear in it. Empty: none.</source>
        <translation>Extinction par ce qui pousse entre les tiges, par mètre&#xa0;; ln 2 divisé par la distance à laquelle la moitié des repères y sont nets. Vide&#xa0;: aucune.</translation>
    </message>
    <message>
        <source>%1: give the layer with the stands.</source>
        <translation>%1&#xa0;: indiquez la couche des peuplements.</translation>
    </message>
    <message>
        <source>%1: stands need both the stems per hectare and their diameter.</source>
        <translation>%1&#xa0;: les peuplements demandent à la fois le nombre de tiges par hectare et leur diamètre.</translation>
    </message>
    <message>
        <source>%1: layer “%2”, feature %3: %4 is “%5”; give a number from %6 to %7.</source>
        <translation>%1&#xa0;: couche «&#xa0;%2&#xa0;», entité %3&#xa0;: %4 vaut «&#xa0;%5&#xa0;»&#xa0;; indiquez un nombre de %6 à %7.</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n stand(s) of layer “%2” without stems or diameter passed over; what else is given of the cover there counts.</source>
        <translation>
            <numerusform>%1&#xa0;: %n peuplement de la couche «&#xa0;%2&#xa0;» sans nombre de tiges ou sans diamètre est passé&#xa0;; ce qui est donné par ailleurs de la végétation à cet endroit compte.</numerusform>
            <numerusform>%1&#xa0;: %n peuplements de la couche «&#xa0;%2&#xa0;» sans nombre de tiges ou sans diamètre sont passés&#xa0;; ce qui est donné par ailleurs de la végétation à cet endroit compte.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::StylePostProcessor</name>
    <message>
        <source>The layer&apos;s style could not be applied: %1</source>
        <translation>Le style de la couche n’a pas pu être appliqué&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>brushline::TerrainParameters</name>
    <message>
        <source>Terrain model (heights in metres)</source>
        <translation>Modèle de terrain (altitudes en mètres)</translation>
    </message>
    <message>
        <source>Band of the terrain model</source>
        <translation>Bande du modèle de terrain</translation>
    </message>
    <message>
        <source>The band that holds the heights.</source>
        <translation>La bande qui contient les altitudes.</translation>
    </message>
    <message>
        <source>Heights of the ground in metres, in any projection; below -1000 m or above 9000 m they count as missing. Gives slope length, climb and drop, the slope&apos;s effect on paces and minutes, and the height for the magnetic model.</source>
        <translation>Altitudes du sol en mètres, dans une projection quelconque&#xa0;; au-dessous de -1000 m ou au-dessus de 9000 m, elles comptent comme manquantes. Donne la longueur selon la pente, la montée et la descente, l’effet de la pente sur les pas et les minutes, et l’altitude pour le modèle magnétique.</translation>
    </message>
</context>
<context>
    <name>brushline::ThroughCoverAlgorithm</name>
    <message>
        <source>Plan legs through cover</source>
        <translation>Planifier des tronçons à travers la végétation</translation>
    </message>
    <message>
        <source>Planning</source>
        <translation>Planification</translation>
    </message>
    <message>
        <source>route,plan,leg,least,cost,path,time,slope,cover,barrier,compass,effort</source>
        <translation>itinéraire,planifier,tronçon,minimal,coût,chemin,temps,pente,végétation,barrière,boussole,effort</translation>
    </message>
    <message>
        <source>Plans the few straight compass legs that bring a walker soonest from start to end, by slope, cover and barriers.</source>
        <translation>Planifie les quelques tronçons droits à la boussole qui mènent le plus tôt un marcheur du départ à l’arrivée, selon la pente, la végétation et les barrières.</translation>
    </message>
    <message>
        <source>Barriers (lines or polygons)</source>
        <translation>Barrières (lignes ou polygones)</translation>
    </message>
    <message>
        <source>What no leg may cross: cliffs, fences, streams, land that is out of bounds. A gap narrower than two cells counts as closed.</source>
        <translation>Ce qu’aucun tronçon ne doit traverser&#xa0;: falaises, clôtures, ruisseaux, terrains interdits. Un passage plus étroit que deux cellules compte comme fermé.</translation>
    </message>
    <message>
        <source>Steepest ground (degrees)</source>
        <translation>Pente maximale du terrain (degrés)</translation>
    </message>
    <message>
        <source>Ground steeper than this, in whatever direction, is not walked, also not across the slope. Needs a terrain model.</source>
        <translation>Sur un terrain plus raide que cela, dans quelque sens que ce soit, on ne marche pas, même en travers de la pente. Demande un modèle de terrain.</translation>
    </message>
    <message>
        <source>Worth of a change of bearing (minutes)</source>
        <translation>Coût d’un changement d’azimut (minutes)</translation>
    </message>
    <message>
        <source>A further leg has to save more than this, in minutes. Half of it at a named point.</source>
        <translation>Un tronçon de plus doit faire gagner plus que cela, en minutes. La moitié à un point nommé.</translation>
    </message>
    <message>
        <source>Most legs</source>
        <translation>Nombre maximal de tronçons</translation>
    </message>
    <message>
        <source>A route has no more legs than this.</source>
        <translation>Un itinéraire n’a pas plus de tronçons que cela.</translation>
    </message>
    <message>
        <source>Size of the cells (m)</source>
        <translation>Taille des cellules (m)</translation>
    </message>
    <message>
        <source>In metres. 0: the terrain model&apos;s cells, or a size that suits the area.</source>
        <translation>En mètres. 0&#xa0;: les cellules du modèle de terrain, ou une taille adaptée à la zone.</translation>
    </message>
    <message>
        <source>Land looked at round the pairs (m)</source>
        <translation>Terrain examiné autour des paires (m)</translation>
    </message>
    <message>
        <source>How far round starts and ends ways are looked for, in metres. 0: half the longest pair&apos;s distance, at least 300 m.</source>
        <translation>Jusqu’où des chemins sont cherchés autour des départs et des arrivées, en mètres. 0&#xa0;: la moitié de la distance de la plus longue paire, au moins 300 m.</translation>
    </message>
    <message>
        <source>%1: start and end are the same place.</source>
        <translation>%1&#xa0;: le départ et l’arrivée sont au même endroit.</translation>
    </message>
    <message>
        <source>Passed over.</source>
        <translation>Non retenu.</translation>
    </message>
    <message>
        <source>%1: the start %2.</source>
        <translation>%1&#xa0;: le départ %2.</translation>
    </message>
    <message>
        <source>%1: the end %2.</source>
        <translation>%1&#xa0;: l’arrivée %2.</translation>
    </message>
    <message>
        <source>No route could be planned. %1</source>
        <translation>Aucun itinéraire n’a pu être planifié. %1</translation>
    </message>
    <message numerus="yes">
        <source>%n pair(s) or point(s) passed over in all.</source>
        <translation>
            <numerusform>%n paire ou point non retenu en tout.</numerusform>
            <numerusform>%n paires ou points non retenus en tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>Planned for %1, the slowest of the walkers.</source>
        <translation>Planifié pour %1, le plus lent des marcheurs.</translation>
    </message>
</context>
<context>
    <name>brushline::TrackSource</name>
    <message>
        <source>%1: layer “%2” has neither numbers nor times, so its points are taken in the layer&apos;s order. Give %3 if that is not the order they were recorded in.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a ni numéros ni heures&#xa0;; ses points sont donc pris dans l’ordre de la couche. Indiquez %3 si ce n’est pas l’ordre dans lequel ils ont été enregistrés.</translation>
    </message>
    <message>
        <source>layer “%1”, feature %2</source>
        <translation>couche «&#xa0;%1&#xa0;», entité %2</translation>
    </message>
    <message>
        <source>layer “%1”</source>
        <translation>couche «&#xa0;%1&#xa0;»</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of track “%2” have no number or time that tells their order; they are passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n point de la trace «&#xa0;%2&#xa0;» n’a ni numéro ni heure qui dise son ordre&#xa0;; il est ignoré.</numerusform>
            <numerusform>%1&#xa0;: %n points de la trace «&#xa0;%2&#xa0;» n’ont ni numéro ni heure qui dise leur ordre&#xa0;; ils sont ignorés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a usable place passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n point de la couche «&#xa0;%2&#xa0;» sans position utilisable, ignoré.</numerusform>
            <numerusform>%1&#xa0;: %n points de la couche «&#xa0;%2&#xa0;» sans position utilisable, ignorés.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” have a time that cannot be read; they are taken without it.</source>
        <translation>
            <numerusform>%1&#xa0;: %n point de la couche «&#xa0;%2&#xa0;» a une heure qui ne peut pas être lue&#xa0;; il est pris sans elle.</numerusform>
            <numerusform>%1&#xa0;: %n points de la couche «&#xa0;%2&#xa0;» ont une heure qui ne peut pas être lue&#xa0;; ils sont pris sans elle.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::TracksParameters</name>
    <message>
        <source>Walked tracks (lines or points)</source>
        <translation>Traces parcourues (lignes ou points)</translation>
    </message>
    <message>
        <source>What a recorder wrote. Of a GPX file take the layer track_points, which has times; tracks has none.</source>
        <translation>Ce qu’un récepteur a enregistré. D’un fichier GPX, prenez la couche track_points, qui a des heures&#xa0;; tracks n’en a pas.</translation>
    </message>
    <message>
        <source>Field with the track&apos;s name</source>
        <translation>Champ du nom de la trace</translation>
    </message>
    <message>
        <source>Points with the same value make one track. Empty: track_fid of a GPX file, else track; for lines name.</source>
        <translation>Les points de même valeur forment une trace. Vide&#xa0;: track_fid d’un fichier GPX, sinon track&#xa0;; pour des lignes, name.</translation>
    </message>
    <message>
        <source>Field with the order of a track&apos;s points</source>
        <translation>Champ de l’ordre des points d’une trace</translation>
    </message>
    <message>
        <source>Numbers or times. Empty: the numbers of a GPX file, else the time, else the layer&apos;s order.</source>
        <translation>Nombres ou heures. Vide&#xa0;: les numéros d’un fichier GPX, sinon l’heure, sinon l’ordre de la couche.</translation>
    </message>
    <message>
        <source>Field with the time of points</source>
        <translation>Champ de l’heure des points</translation>
    </message>
    <message>
        <source>Date and time, or seconds or milliseconds since 1970. Empty: the field called time, if there is one. Lines have their times as M values in seconds or milliseconds since 1970, or none.</source>
        <translation>Date et heure, ou secondes ou millisecondes depuis 1970. Vide&#xa0;: le champ nommé time, s’il y en a un. Les lignes ont leurs heures en valeurs M, en secondes ou millisecondes depuis 1970, ou n’en ont pas.</translation>
    </message>
    <message>
        <source>Field with the route that a track is a walk of</source>
        <translation>Champ de l’itinéraire qu’une trace parcourt</translation>
    </message>
    <message>
        <source>Empty: the field called route; else a track whose name is that of a route is a walk of it, and others belong to the route they fit best.</source>
        <translation>Vide&#xa0;: le champ nommé route&#xa0;; sinon, une trace dont le nom est celui d’un itinéraire le parcourt, et les autres vont à l’itinéraire qui leur correspond le mieux.</translation>
    </message>
    <message>
        <source>Field with the name of who walked a track</source>
        <translation>Champ du nom de qui a parcouru une trace</translation>
    </message>
    <message>
        <source>Empty: the field called walker; else a track whose name is that of a walker of the legs is theirs.</source>
        <translation>Vide&#xa0;: le champ nommé walker&#xa0;; sinon, une trace dont le nom est celui d’un marcheur des tronçons est la sienne.</translation>
    </message>
    <message>
        <source>Error of a track&apos;s points (m, one sigma)</source>
        <translation>Erreur des points d’une trace (m, 1 sigma)</translation>
    </message>
    <message>
        <source>How far recorded points lie from the truth, in each direction. Under dense trees 4 to 10 m.</source>
        <translation>À quelle distance de la vérité se trouvent les points enregistrés, dans chaque direction. Sous des arbres serrés, 4 à 10 m.</translation>
    </message>
    <message>
        <source>Fastest anybody walks (m/s)</source>
        <translation>Vitesse maximale d’un marcheur (m/s)</translation>
    </message>
    <message>
        <source>Points that could only be reached faster are spikes, and left out.</source>
        <translation>Les points qui ne pourraient être atteints que plus vite sont aberrants, et écartés.</translation>
    </message>
    <message>
        <source>%1: give a layer with tracks.</source>
        <translation>%1&#xa0;: indiquez une couche avec des traces.</translation>
    </message>
    <message>
        <source>%1: layer “%2” has neither lines nor points. Of a GPX file take the layer track_points.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» n’a ni lignes ni points. D’un fichier GPX, prenez la couche track_points.</translation>
    </message>
</context>
<context>
    <name>brushline::TraverseParameters</name>
    <message>
        <source>%1: “%2” does not say its coordinate reference system. Write it like 632300,5407100 [EPSG:32621].</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’indique pas son système de coordonnées de référence (SCR). Écrivez-le comme 632300,5407100 [EPSG:32621].</translation>
    </message>
    <message>
        <source>%1: “%2” is no place on the Earth in %3. The first number is the easting or longitude, the second the northing or latitude.</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’est pas un lieu sur la Terre en %3. Le premier nombre est l’abscisse (est) ou la longitude, le second l’ordonnée (nord) ou la latitude.</translation>
    </message>
    <message>
        <source>%1: layer “%2” of %3 has no field “route” or “name”. Name the one that says which route starts there.</source>
        <translation>%1&#xa0;: la couche «&#xa0;%2&#xa0;» de %3 n’a pas de champ «&#xa0;route&#xa0;» ou «&#xa0;name&#xa0;». Nommez celui qui dit quel itinéraire commence là.</translation>
    </message>
    <message numerus="yes">
        <source>%1 has %n points of that name. Leave the one where it starts.</source>
        <translation>
            <numerusform>%1 a %n point de ce nom. Ne laissez que celui où il commence.</numerusform>
            <numerusform>%1 a %n points de ce nom. Ne laissez que celui où il commence.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has no point of that name; it has: %2.</source>
        <translation>%1 n’a aucun point de ce nom&#xa0;; il y a&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Nowhere in particular (open)</source>
        <translation>Nulle part en particulier (ouvert)</translation>
    </message>
    <message>
        <source>Where it starts</source>
        <translation>Là où il commence</translation>
    </message>
    <message>
        <source>At the end point</source>
        <translation>Au point d’arrivée</translation>
    </message>
    <message>
        <source>Start of all routes</source>
        <translation>Départ de tous les itinéraires</translation>
    </message>
    <message>
        <source>Easting and northing with their system: 632300,5407100 [EPSG:32621]. This or the layer with starts; the legs come in the same system.</source>
        <translation>Abscisse (est) et ordonnée (nord) avec leur système&#xa0;: 632300,5407100 [EPSG:32621]. Ceci ou la couche des départs&#xa0;; les tronçons sont écrits dans le même système.</translation>
    </message>
    <message>
        <source>Starts (points named by route)</source>
        <translation>Départs (points nommés par itinéraire)</translation>
    </message>
    <message>
        <source>A point for each route, with the route&apos;s name.</source>
        <translation>Un point pour chaque itinéraire, avec le nom de l’itinéraire.</translation>
    </message>
    <message>
        <source>Field of the starts with the route&apos;s name</source>
        <translation>Champ des départs qui nomme l’itinéraire</translation>
    </message>
    <message>
        <source>Empty: the field called “route”, else the one called “name”.</source>
        <translation>Vide&#xa0;: le champ nommé «&#xa0;route&#xa0;», sinon celui nommé «&#xa0;name&#xa0;».</translation>
    </message>
    <message>
        <source>End point</source>
        <translation>Point d’arrivée</translation>
    </message>
    <message>
        <source>A known place where the routes should end; used when they close there.</source>
        <translation>Un lieu connu où les itinéraires doivent finir&#xa0;; utilisé lorsqu’ils se ferment là.</translation>
    </message>
    <message>
        <source>Where a route should end</source>
        <translation>Où un itinéraire doit finir</translation>
    </message>
    <message>
        <source>How far a route misses that place is told, and tells of blunders.</source>
        <translation>De combien un itinéraire manque ce lieu est signalé, et révèle les fautes.</translation>
    </message>
    <message>
        <source>Spread the miss over the legs (compass rule)</source>
        <translation>Répartir l’écart sur les tronçons (règle de Bowditch)</translation>
    </message>
    <message>
        <source>Moves each leg&apos;s end by its share of the miss, in proportion to the length walked. Off: the legs come as they were read.</source>
        <translation>Déplace la fin de chaque tronçon de sa part de l’écart, en proportion de la longueur parcourue. Désactivé&#xa0;: les tronçons sont écrits tels qu’ils ont été lus.</translation>
    </message>
    <message>
        <source>%1 and %2 are both given: leave one, since a route could start at either.</source>
        <translation>%1 et %2 sont indiqués tous les deux&#xa0;: n’en laissez qu’un, puisqu’un itinéraire pourrait commencer à l’un comme à l’autre.</translation>
    </message>
    <message>
        <source>%1 or %2: give the point where the routes start, or a layer with one for each.</source>
        <translation>%1 ou %2&#xa0;: indiquez le point où les itinéraires commencent, ou une couche avec un point pour chacun.</translation>
    </message>
    <message>
        <source>%1 is 2, so %2 is needed: give the point where the routes should end.</source>
        <translation>%1 vaut 2, donc %2 est nécessaire&#xa0;: indiquez le point où les itinéraires doivent finir.</translation>
    </message>
    <message>
        <source>%1: an open route has no miss to spread. Set %2 to 1 (it ends at its start) or 2 (at %3).</source>
        <translation>%1&#xa0;: un itinéraire ouvert n’a pas d’écart à répartir. Mettez %2 à 1 (il finit à son départ) ou à 2 (à %3).</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a name passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n point de la couche «&#xa0;%2&#xa0;» sans nom, ignoré.</numerusform>
            <numerusform>%1&#xa0;: %n points de la couche «&#xa0;%2&#xa0;» sans nom, ignorés.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is given but not used: set %2 to 2 to close the routes on it.</source>
        <translation>%1 est indiqué mais n’est pas utilisé&#xa0;: mettez %2 à 2 pour y fermer les itinéraires.</translation>
    </message>
</context>
<context>
    <name>brushline::VectorOutput</name>
    <message>
        <source>%1 (%2): “%3” cannot be written, since a FlatGeobuf keeps no table without geometries. Give a name that ends in .gpkg or .csv.</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» ne peut pas être écrit, car un FlatGeobuf ne garde pas de table sans géométries. Donnez un nom qui finit par .gpkg ou .csv.</translation>
    </message>
    <message>
        <source>The unfinished table %1 is left: %2</source>
        <translation>La table inachevée %1 est laissée&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 (%2): “%3” cannot be written. Is its folder there, may it be written to, and does the host know the format by that ending?</source>
        <translation>%1 (%2)&#xa0;: «&#xa0;%3&#xa0;» ne peut pas être écrit. Son dossier existe-t-il, est-il permis d’y écrire, et le programme hôte connaît-il le format de cette extension&#xa0;?</translation>
    </message>
    <message>
        <source>%1: “%2” could not be written whole (%3), so it was left out. Is the disk full, or the file opened elsewhere?</source>
        <translation>%1&#xa0;: «&#xa0;%2&#xa0;» n’a pas pu être écrit en entier (%3) et a donc été laissé de côté. Le disque est-il plein, ou le fichier ouvert ailleurs&#xa0;?</translation>
    </message>
    <message>
        <source>%1 of %2 features are in it</source>
        <translation>%1 entités sur %2 s’y trouvent</translation>
    </message>
    <message numerus="yes">
        <source>%1: “%2” is a shapefile, which keeps 254 bytes of a text: the texts of %n feature(s) are cut, warnings perhaps among them. Give a name that ends in .gpkg.</source>
        <translation>
            <numerusform>%1&#xa0;: «&#xa0;%2&#xa0;» est un shapefile, qui garde 254 octets d’un texte&#xa0;: les textes de %n entité sont coupés, peut-être des avertissements. Donnez un nom qui se termine par .gpkg.</numerusform>
            <numerusform>%1&#xa0;: «&#xa0;%2&#xa0;» est un shapefile, qui garde 254 octets d’un texte&#xa0;: les textes de %n entités sont coupés, peut-être des avertissements. Donnez un nom qui se termine par .gpkg.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::WalkWords</name>
    <message>
        <source>The track does not hold this leg.</source>
        <translation>La trace ne contient pas ce tronçon.</translation>
    </message>
    <message>
        <source>The track ends on this leg: no error of length, no miss.</source>
        <translation>La trace finit sur ce tronçon&#xa0;: pas d’erreur de longueur, pas d’écart.</translation>
    </message>
    <message>
        <source>Its end cannot be seen in the track (no turn, no stand): length, miss and minutes are not known.</source>
        <translation>Sa fin ne se voit pas dans la trace (ni changement de direction ni arrêt)&#xa0;: longueur, écart et minutes ne sont pas connus.</translation>
    </message>
    <message>
        <source>Its start cannot be seen in the track (no turn, no stand): length, miss and minutes are not known.</source>
        <translation>Son départ ne se voit pas dans la trace (ni changement de direction ni arrêt)&#xa0;: longueur, écart et minutes ne sont pas connus.</translation>
    </message>
    <message>
        <source>Neither end can be seen in the track (no turn, no stand): length, miss and minutes are not known.</source>
        <translation>Ni son départ ni sa fin ne se voient dans la trace (ni changement de direction ni arrêt)&#xa0;: longueur, écart et minutes ne sont pas connus.</translation>
    </message>
    <message>
        <source>Nothing was recorded about one of its ends; it is put where the straight lines meet.</source>
        <translation>Rien n’a été enregistré autour d’une de ses extrémités&#xa0;; elle est placée là où les lignes droites se rencontrent.</translation>
    </message>
    <message>
        <source>So far off that it may not be this leg: left out of the common errors.</source>
        <translation>Si éloigné que ce n’est peut-être pas ce tronçon&#xa0;: écarté des erreurs communes.</translation>
    </message>
    <message>
        <source>The track&apos;s times run backwards: no minutes.</source>
        <translation>Les heures de la trace vont à reculons&#xa0;: pas de minutes.</translation>
    </message>
    <message>
        <source>The track has no times: no minutes.</source>
        <translation>La trace n’a pas d’heures&#xa0;: pas de minutes.</translation>
    </message>
    <message>
        <source>No usable times at its ends: no minutes.</source>
        <translation>Pas d’heures utilisables à ses extrémités&#xa0;: pas de minutes.</translation>
    </message>
    <message>
        <source>declination forgotten, the true bearing set on a compass that is not set off for it (makes %1°)</source>
        <translation>déclinaison oubliée, azimut vrai (géographique) affiché sur une boussole qui n’en est pas corrigée (donne %1°)</translation>
    </message>
    <message>
        <source>declination applied the wrong way round (makes %1°)</source>
        <translation>déclinaison appliquée dans le mauvais sens (donne %1°)</translation>
    </message>
    <message>
        <source>the magnetic bearing set on a compass that is already set off for declination (makes %1°)</source>
        <translation>azimut magnétique affiché sur une boussole déjà corrigée de la déclinaison (donne %1°)</translation>
    </message>
    <message>
        <source>the grid bearing set on a compass set off for true north (makes %1°)</source>
        <translation>azimut de la grille affiché sur une boussole corrigée pour le nord vrai (géographique) (donne %1°)</translation>
    </message>
    <message>
        <source>the true bearing set on a compass set off for grid north (makes %1°)</source>
        <translation>azimut vrai (géographique) affiché sur une boussole corrigée pour le nord de la grille (donne %1°)</translation>
    </message>
    <message>
        <source>the grid bearing set on a compass that is not set off, grid magnetic angle forgotten (makes %1°)</source>
        <translation>azimut de la grille affiché sur une boussole non corrigée, angle entre le nord de la grille et le nord magnétique oublié (donne %1°)</translation>
    </message>
    <message>
        <source>grid magnetic angle applied the wrong way round (makes %1°)</source>
        <translation>angle entre le nord de la grille et le nord magnétique appliqué dans le mauvais sens (donne %1°)</translation>
    </message>
    <message>
        <source>the magnetic bearing set on a compass set off for grid north (makes %1°)</source>
        <translation>azimut magnétique affiché sur une boussole corrigée pour le nord de la grille (donne %1°)</translation>
    </message>
    <message>
        <source>One leg tells nothing of a common error of bearing.</source>
        <translation>Un seul tronçon ne dit rien d’une erreur commune d’azimut.</translation>
    </message>
    <message>
        <source>No common error of bearing to be seen (within %1°).</source>
        <translation>Aucune erreur commune d’azimut visible (à %1° près).</translation>
    </message>
    <message>
        <source>Walks %1° (give or take %2°) to the right of the bearing.</source>
        <translation>Marche %1° (à %2° près) à droite de l’azimut.</translation>
    </message>
    <message>
        <source>Walks %1° (give or take %2°) to the left of the bearing.</source>
        <translation>Marche %1° (à %2° près) à gauche de l’azimut.</translation>
    </message>
    <message>
        <source>Possible cause: %1. Look at the compass.</source>
        <translation>Cause possible&#xa0;: %1. Examinez la boussole.</translation>
    </message>
    <message>
        <source>; or </source>
        <translation>&#xa0;; ou </translation>
    </message>
    <message>
        <source>No mix-up of norths explains it: see how the compass is held, and compare it with another one.</source>
        <translation>Aucune confusion de nords ne l’explique&#xa0;: voyez comment la boussole est tenue, et comparez-la à une autre.</translation>
    </message>
    <message>
        <source>Give annotated legs (with declination) to have it held against mix-ups of norths.</source>
        <translation>Indiquez des tronçons annotés (avec la déclinaison) pour que cela soit comparé aux confusions de nords.</translation>
    </message>
    <message>
        <source>One leg tells nothing of a common error of length.</source>
        <translation>Un seul tronçon ne dit rien d’une erreur commune de longueur.</translation>
    </message>
    <message>
        <source>No common error of length to be seen (within %1 %).</source>
        <translation>Aucune erreur commune de longueur visible (à %1&#xa0;% près).</translation>
    </message>
    <message>
        <source>Walks %1 % (give or take %2 %) too far.</source>
        <translation>Marche %1&#xa0;% (à %2&#xa0;% près) trop loin.</translation>
    </message>
    <message>
        <source>Walks %1 % (give or take %2 %) too short.</source>
        <translation>Marche %1&#xa0;% (à %2&#xa0;% près) trop court.</translation>
    </message>
    <message>
        <source>If legs were ended by the count of paces, reckon with %1 over 100 m instead of %2.</source>
        <translation>Si les tronçons ont été finis d’après le compte des pas, prenez %1 sur 100 m au lieu de %2.</translation>
    </message>
    <message>
        <source>If legs were ended by the count of paces, multiply the count by %1.</source>
        <translation>Si les tronçons ont été finis d’après le compte des pas, multipliez le compte par %1.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>%1 %2 (standard error %3, %4 legs)</source>
        <translation>%1&#xa0;%2 (erreur type %3, %4 tronçons)</translation>
    </message>
    <message>
        <source>%1 %2 (one leg)</source>
        <translation>%1&#xa0;%2 (un tronçon)</translation>
    </message>
    <message>
        <source>bearing %1, length %2.</source>
        <translation>azimut %1, longueur %2.</translation>
    </message>
    <message>
        <source>has fewer than two usable points apart.</source>
        <translation>a moins de deux points utilisables distincts.</translation>
    </message>
    <message>
        <source>lies in another place: no planned turn is within %1 m of it; from its start to the nearest planned one are %2 m.</source>
        <translation>se trouve ailleurs&#xa0;: aucun changement de direction prévu n’est à moins de %1 m d’elle&#xa0;; de son départ au plus proche, il y a %2 m.</translation>
    </message>
    <message>
        <source>is like none of the routes near it: no leg can be recognised in it. If it is a walk of one of them, give a larger TOLERANCE than %1 m.</source>
        <translation>ne ressemble à aucun des itinéraires proches d’elle&#xa0;: aucun tronçon ne peut y être reconnu. Si elle parcourt l’un d’eux, indiquez un TOLERANCE plus grand que %1 m.</translation>
    </message>
    <message numerus="yes">
        <source>%n double point(s)</source>
        <translation>
            <numerusform>%n point double</numerusform>
            <numerusform>%n points doubles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n spike(s)</source>
        <translation>
            <numerusform>%n point aberrant</numerusform>
            <numerusform>%n points aberrants</numerusform>
        </translation>
    </message>
    <message>
        <source>times that run backwards, so none is used</source>
        <translation>heures qui vont à reculons, si bien qu’aucune n’est utilisée</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) that run backwards</source>
        <translation>
            <numerusform>%n heure qui va à reculons</numerusform>
            <numerusform>%n heures qui vont à reculons</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::WalkedLegsWriter</name>
    <message>
        <source>Walked legs</source>
        <translation>Tronçons parcourus</translation>
    </message>
    <message>
        <source>Profile off the planned line</source>
        <translation>Profil des écarts à la ligne prévue</translation>
    </message>
    <message>
        <source>Each recorded point with how far along the planned leg it lies and how far off its line, in metres, right positive.</source>
        <translation>Chaque point enregistré, avec sa position le long du tronçon prévu et son écart à la ligne de celui-ci, en mètres, positif à droite.</translation>
    </message>
    <message>
        <source>Common errors</source>
        <translation>Erreurs communes</translation>
    </message>
    <message>
        <source>A row for each track, each walker and all of them: the error that all legs share in bearing (degrees) and length (percent), with standard errors, and what may lie behind it.</source>
        <translation>Une ligne pour chaque trace, pour chaque marcheur et pour tous ensemble&#xa0;: l’erreur que tous les tronçons ont en commun en azimut (degrés) et en longueur (pour cent), avec les erreurs types, et ce qu’il peut y avoir derrière.</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>Walker “%1”</source>
        <translation>Marcheur «&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>Track “%1”</source>
        <translation>Trace «&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>brushline::WalkerParameters</name>
    <message>
        <source>%1: %2 over 100 m, counted in double paces, can be read two ways. Give the number of single steps (twice the double paces).</source>
        <translation>%1&#xa0;: %2 sur 100 m, comptés en doubles pas, peut se lire de deux façons. Indiquez le nombre de pas simples (le double des doubles pas).</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: %4 is “%5”; give a number from %6 to %7, with a decimal point.</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», entité %3&#xa0;: %4 vaut «&#xa0;%5&#xa0;»&#xa0;; indiquez un nombre de %6 à %7, avec un point décimal.</translation>
    </message>
    <message>
        <source>%1: table “%2” has no column “walker”. It needs one, and may have paces_100m, pace_kind, pace_err, brg_err, eye_m and speed_f; its columns are: %3.</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» n’a pas de colonne «&#xa0;walker&#xa0;». Il lui en faut une, et elle peut avoir paces_100m, pace_kind, pace_err, brg_err, eye_m et speed_f&#xa0;; ses colonnes sont&#xa0;: %3.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3 has numbers but no name. Fill its column “walker”, or delete the row.</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», l’entité %3 a des nombres mais pas de nom. Remplissez sa colonne «&#xa0;walker&#xa0;», ou supprimez la ligne.</translation>
    </message>
    <message>
        <source>%1: table “%2” has the walker “%3” twice (second time in feature %4). Give each walker a name of their own.</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» a deux fois le marcheur «&#xa0;%3&#xa0;» (la seconde fois à l’entité %4). Donnez à chaque marcheur son propre nom.</translation>
    </message>
    <message>
        <source>%1: table “%2”, feature %3: pace_kind is %4; give 0 (single steps) or 1 (double paces).</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», entité %3&#xa0;: pace_kind vaut %4&#xa0;; indiquez 0 (pas simples) ou 1 (doubles pas).</translation>
    </message>
    <message>
        <source>%1: table “%2”, walker “%3”</source>
        <translation>%1&#xa0;: table «&#xa0;%2&#xa0;», marcheur «&#xa0;%3&#xa0;»</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n empty row(s) of table “%2” passed over.</source>
        <translation>
            <numerusform>%1&#xa0;: %n ligne vide de la table «&#xa0;%2&#xa0;» ignorée.</numerusform>
            <numerusform>%1&#xa0;: %n lignes vides de la table «&#xa0;%2&#xa0;» ignorées.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: table “%2” has no walkers. Give it a row for each, or leave the parameter empty.</source>
        <translation>%1&#xa0;: la table «&#xa0;%2&#xa0;» n’a pas de marcheurs. Donnez une ligne à chacun, ou laissez le paramètre vide.</translation>
    </message>
    <message>
        <source>Single steps</source>
        <translation>Pas simples</translation>
    </message>
    <message>
        <source>Double paces (every second step)</source>
        <translation>Doubles pas (un pas sur deux)</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>Slope table</source>
        <translation>Table des pentes</translation>
    </message>
    <message>
        <source>Off-trail speed function</source>
        <translation>Fonction de vitesse hors sentier</translation>
    </message>
    <message>
        <source>Hiking function, off the path</source>
        <translation>Fonction de randonnée, hors chemin</translation>
    </message>
    <message>
        <source>Distance and climb</source>
        <translation>Distance et montée</translation>
    </message>
    <message>
        <source>Steps over 100 m, on level ground</source>
        <translation>Pas sur 100 m, en terrain plat</translation>
    </message>
    <message>
        <source>Single steps the walker takes over 100 m of level ground. Also for one who counts double paces, unless the number is under 90: that can only be double paces already. (90 to 110 could be either and is refused.)</source>
        <translation>Pas simples que le marcheur fait sur 100 m de terrain plat. De même pour qui compte en doubles pas, sauf si le nombre est inférieur à 90&#xa0;: ce ne peuvent alors être que des doubles pas. (De 90 à 110, les deux sont possibles et le nombre est refusé.)</translation>
    </message>
    <message>
        <source>What the walker counts</source>
        <translation>Ce que le marcheur compte</translation>
    </message>
    <message>
        <source>Every step, or every second one (each time the same foot comes down).</source>
        <translation>Chaque pas, ou un pas sur deux (chaque fois que le même pied se pose).</translation>
    </message>
    <message>
        <source>Error of the pace count (percent, 1 sigma)</source>
        <translation>Erreur du compte des pas (pour cent, 1 sigma)</translation>
    </message>
    <message>
        <source>How far a paced distance strays, as a standard deviation in percent. 3 or less on level ground by a practised walker, 5 and more in brush.</source>
        <translation>De combien une distance comptée en pas s’écarte, en écart-type, en pour cent. 3 ou moins en terrain plat pour un marcheur exercé, 5 et plus dans les broussailles.</translation>
    </message>
    <message>
        <source>Effect of slope on paces</source>
        <translation>Effet de la pente sur les pas</translation>
    </message>
    <message>
        <source>Slope table: steps get shorter uphill and, less so, downhill, by a table of 1917 (Moss, Manual of Military Training); the steps are counted along the ground. Needs a terrain model; without one paces are those of level ground.</source>
        <translation>Table des pentes&#xa0;: les pas raccourcissent en montée et, dans une moindre mesure, en descente, d’après une table de 1917 (Moss, Manual of Military Training)&#xa0;; les pas sont comptés le long du sol. Demande un modèle de terrain&#xa0;; sans lui, les pas sont ceux d’un terrain plat.</translation>
    </message>
    <message>
        <source>Rule for minutes</source>
        <translation>Règle pour les minutes</translation>
    </message>
    <message>
        <source>Off-trail speed function: measured on people finding their way in hilly woods (Irmischer and Clarke 2018). Hiking function: Tobler 1993, times 0.6 off the path. Distance and climb: 12 minutes a kilometre, 10 for 100 m of climb, less or more for descents (Naismith, Langmuir). Without a terrain model the minutes are those of level ground.</source>
        <translation>Fonction de vitesse hors sentier&#xa0;: mesurée sur des personnes cherchant leur chemin dans des bois vallonnés (Irmischer et Clarke 2018). Fonction de randonnée&#xa0;: Tobler 1993, multipliée par 0,6 hors du chemin. Distance et montée&#xa0;: 12 minutes par kilomètre, 10 par 100 m de montée, moins ou plus pour les descentes (Naismith, Langmuir). Sans modèle de terrain, les minutes sont celles d’un terrain plat.</translation>
    </message>
    <message>
        <source>Height of the eyes (m)</source>
        <translation>Hauteur des yeux (m)</translation>
    </message>
    <message>
        <source>Height of the walker&apos;s eyes above the ground, in metres.</source>
        <translation>Hauteur des yeux du marcheur au-dessus du sol, en mètres.</translation>
    </message>
    <message>
        <source>Walkers (table, one row each)</source>
        <translation>Marcheurs (table, une ligne chacun)</translation>
    </message>
    <message>
        <source>Every leg comes once for each walker of this table. Columns: walker (a name), and where they differ from the parameters paces_100m (single steps over 100 m), pace_kind (0 single, 1 double), pace_err (percent), brg_err (degrees), eye_m, speed_f (1 is the rule&apos;s own speed).</source>
        <translation>Chaque tronçon figure une fois pour chaque marcheur de cette table. Colonnes&#xa0;: walker (un nom) et, là où ils diffèrent des paramètres, paces_100m (pas simples sur 100 m), pace_kind (0 simple, 1 double), pace_err (pour cent), brg_err (degrés), eye_m, speed_f (1 est la vitesse de la règle elle-même).</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
</TS>
