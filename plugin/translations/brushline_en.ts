<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>brushline::AimOffParameters</name>
    <message numerus="yes">
        <source>%1: %n destination(s) of layer “%2” lie farther than %3 m from every line; passed over. Move them onto a line, or give a greater %4.</source>
        <translation>
            <numerusform>%1: %n destination of layer “%2” lies farther than %3 m from every line; passed over. Move it onto a line, or give a greater %4.</numerusform>
            <numerusform>%1: %n destinations of layer “%2” lie farther than %3 m from every line; passed over. Move them onto a line, or give a greater %4.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::AimOffWriter</name>
    <message numerus="yes">
        <source>%n start(s) have no aim as sure as asked for: see the field warnings, and do not send anybody by these without looking at the map.</source>
        <translation>
            <numerusform>%n start has no aim as sure as asked for: see the field warnings, and do not send anybody by it without looking at the map.</numerusform>
            <numerusform>%n starts have no aim as sure as asked for: see the field warnings, and do not send anybody by these without looking at the map.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::AimStarts</name>
    <message numerus="yes">
        <source>None of the %n start(s) could be used.</source>
        <translation>
            <numerusform>%n start, and it could not be used.</numerusform>
            <numerusform>None of the %n starts could be used.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n start(s) passed over in all.</source>
        <translation>
            <numerusform>%n start passed over in all.</numerusform>
            <numerusform>%n starts passed over in all.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CalibratedWalkers</name>
    <message numerus="yes">
        <source>%n try(s) kept, as too few would be left: %1.</source>
        <translation>
            <numerusform>%n try kept, as too few would be left: %1.</numerusform>
            <numerusform>%n tries kept, as too few would be left: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n try(s) left out: %1.</source>
        <translation>
            <numerusform>%n try left out: %1.</numerusform>
            <numerusform>%n tries left out: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sloped try(s) brought to the level by the slope table.</source>
        <translation>
            <numerusform>%n sloped try brought to the level by the slope table.</numerusform>
            <numerusform>%n sloped tries brought to the level by the slope table.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n try(s) used, %2 m.</source>
        <translation>
            <numerusform>%1 of %n try used, %2 m.</numerusform>
            <numerusform>%1 of %n tries used, %2 m.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Only %n tries: the interval is wide. Four or more tell much more.</source>
        <translation>
            <numerusform>Only %n try: the interval is wide. Four or more tell much more.</numerusform>
            <numerusform>Only %n tries: the interval is wide. Four or more tell much more.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>There is no number for any of the %n walker(s). %1</source>
        <translation>
            <numerusform>There is no number for the %n walker. %1</numerusform>
            <numerusform>There is no number for any of the %n walkers. %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n walker(s) left out in all. They are not in the output, and Annotate legs will have no legs for them.</source>
        <translation>
            <numerusform>%n walker left out in all. This walker is not in the output, and Annotate legs will have no legs for them.</numerusform>
            <numerusform>%n walkers left out in all. They are not in the output, and Annotate legs will have no legs for them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CardFeatures</name>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” belong to none of the legs or to several, or say neither what is met nor where; passed over.</source>
        <translation>
            <numerusform>%1: %n row of layer “%2” belongs to none of the legs or to several, or says neither what is met nor where; passed over.</numerusform>
            <numerusform>%1: %n rows of layer “%2” belong to none of the legs or to several, or say neither what is met nor where; passed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CheckHazardsAlgorithm</name>
    <message numerus="yes">
        <source>%n stretch(es) to take care on.</source>
        <translation>
            <numerusform>%n stretch to take care on.</numerusform>
            <numerusform>%n stretches to take care on.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ChosenMarksWriter</name>
    <message numerus="yes">
        <source>%n mark(s) written.</source>
        <translation>
            <numerusform>%n mark written.</numerusform>
            <numerusform>%n marks written.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) that no candidate serves. Marks put on the line there: %1.</source>
        <translation>
            <numerusform>%n gap that no candidate serves. Marks put on the line there: %1.</numerusform>
            <numerusform>%n gaps that no candidate serves. Marks put on the line there: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s) cannot be seen from the one before: sight_m is shorter than the way there. Go from hand to hand there, or give a smaller SPACING_MIN.</source>
        <translation>
            <numerusform>%n mark cannot be seen from the one before: sight_m is shorter than the way there. Go from hand to hand there, or give a smaller SPACING_MIN.</numerusform>
            <numerusform>%n marks cannot be seen from the one before: sight_m is shorter than the way there. Go from hand to hand there, or give a smaller SPACING_MIN.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ClosureWords</name>
    <message numerus="yes">
        <source>%n other slip(s) would account for it too.</source>
        <translation>
            <numerusform>%n other slip would account for it too.</numerusform>
            <numerusform>%n other slips would account for it too.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Route “%1”: %n leg(s), %2 m; misses its end by %3 m</source>
        <translation>
            <numerusform>Route “%1”: %n leg, %2 m; misses its end by %3 m</numerusform>
            <numerusform>Route “%1”: %n legs, %2 m; misses its end by %3 m</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CompareTrackAlgorithm</name>
    <message numerus="yes">
        <source>%n track(s) left out in all.</source>
        <translation>
            <numerusform>%n track left out in all.</numerusform>
            <numerusform>%n tracks left out in all.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CoverParameters</name>
    <message numerus="yes">
        <source>%n leg(s) lead over ground without known cover, %1 m in all: nobody has looked whether there is water or thicket. Look at it before anybody walks there; with %2=0 no leg leads over such ground.</source>
        <translation>
            <numerusform>%n leg leads over ground without known cover, %1 m in all: nobody has looked whether there is water or thicket. Look at it before anybody walks there; with %2=0 no leg leads over such ground.</numerusform>
            <numerusform>%n legs lead over ground without known cover, %1 m in all: nobody has looked whether there is water or thicket. Look at it before anybody walks there; with %2=0 no leg leads over such ground.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::CoverPatches</name>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” without a usable geometry passed over.</source>
        <translation>
            <numerusform>%1: %n polygon of layer “%2” without a usable geometry passed over.</numerusform>
            <numerusform>%1: %n polygons of layer “%2” without a usable geometry passed over.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</source>
        <translation>
            <numerusform>%1: %n polygon of layer “%2” is not valid (it crosses or touches itself). What is enclosed an odd number of times counts as inside. Mend it with “Fix geometries”.</numerusform>
            <numerusform>%1: %n polygons of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::DetourParameters</name>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” cross themselves or have parts that overlap, so what is inside them is not certain and a leg may lead through. Mend the layer with “Fix geometries” first.</source>
        <translation>
            <numerusform>%1: %n polygon of layer “%2” crosses itself or has parts that overlap, so what is inside it is not certain and a leg may lead through. Mend the layer with “Fix geometries” first.</numerusform>
            <numerusform>%1: %n polygons of layer “%2” cross themselves or have parts that overlap, so what is inside them is not certain and a leg may lead through. Mend the layer with “Fix geometries” first.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::DetourWriter</name>
    <message numerus="yes">
        <source>%n obstacle(s) in the way are NOT gone round: see the field “warnings”.</source>
        <translation>
            <numerusform>%n obstacle in the way is NOT gone round: see the field “warnings”.</numerusform>
            <numerusform>%n obstacles in the way are NOT gone round: see the field “warnings”.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::FeaturesMetAlgorithm</name>
    <message numerus="yes">
        <source>%n feature(s) met.</source>
        <translation>
            <numerusform>%n feature met.</numerusform>
            <numerusform>%n features met.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::FieldAtPointsAlgorithm</name>
    <message numerus="yes">
        <source>%n row(s); model %1, day %2.</source>
        <translation>
            <numerusform>%n row; model %1, day %2.</numerusform>
            <numerusform>%n rows; model %1, day %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” without a usable place; their new fields are empty. They have no geometry, or coordinates that are no place on the Earth: is the layer&apos;s coordinate reference system the right one?</source>
        <translation>
            <numerusform>%1: %n row of layer “%2” without a usable place; its new fields are empty. It has no geometry, or coordinates that are no place on the Earth: is the layer&apos;s coordinate reference system the right one?</numerusform>
            <numerusform>%1: %n rows of layer “%2” without a usable place; their new fields are empty. They have no geometry, or coordinates that are no place on the Earth: is the layer&apos;s coordinate reference system the right one?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of layer “%2” with a height outside -1000 to 850 000 m, where the models end; their new fields are empty. Is their Z in metres?</source>
        <translation>
            <numerusform>%1: %n row of layer “%2” with a height outside -1000 to 850 000 m, where the models end; its new fields are empty. Is its Z in metres?</numerusform>
            <numerusform>%1: %n rows of layer “%2” with a height outside -1000 to 850 000 m, where the models end; their new fields are empty. Is their Z in metres?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) without a height of their own are taken to lie at 0 m.</source>
        <translation>
            <numerusform>%n point without a height of its own is taken to lie at 0 m.</numerusform>
            <numerusform>%n points without a height of their own are taken to lie at 0 m.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) lie where this grid does not reach; converg and grid_mag are empty. Give another grid.</source>
        <translation>
            <numerusform>%1: %n point lies where this grid does not reach; converg and grid_mag are empty. Give another grid.</numerusform>
            <numerusform>%1: %n points lie where this grid does not reach; converg and grid_mag are empty. Give another grid.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) where the field along the ground is under 6000 nT (zone “caution”): the needle is slow and easily drawn off.</source>
        <translation>
            <numerusform>%n point where the field along the ground is under 6000 nT (zone “caution”): the needle is slow and easily drawn off.</numerusform>
            <numerusform>%n points where the field along the ground is under 6000 nT (zone “caution”): the needle is slow and easily drawn off.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) where the field along the ground is under 2000 nT (zone “blackout”): no compass can be used there, whatever decl and grid_mag say.</source>
        <translation>
            <numerusform>%n point where the field along the ground is under 2000 nT (zone “blackout”): no compass can be used there, whatever decl and grid_mag say.</numerusform>
            <numerusform>%n points where the field along the ground is under 2000 nT (zone “blackout”): no compass can be used there, whatever decl and grid_mag say.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::GpxExport</name>
    <message numerus="yes">
        <source>%n text(s) held characters that no XML file can hold or nobody can read; “�” stands in their place.</source>
        <translation>
            <numerusform>%n text held characters that no XML file can hold or nobody can read; “�” stands in their place.</numerusform>
            <numerusform>%n texts held characters that no XML file can hold or nobody can read; “�” stands in their place.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) held characters that turn the direction of writing, which can make a name look like another; they were left out.</source>
        <translation>
            <numerusform>%n text held characters that turn the direction of writing, which can make a name look like another; they were left out.</numerusform>
            <numerusform>%n texts held characters that turn the direction of writing, which can make a name look like another; they were left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) lack legs: see their descriptions.</source>
        <translation>
            <numerusform>%n route lacks legs: see its description.</numerusform>
            <numerusform>%n routes lack legs: see their descriptions.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::HandoutFiles</name>
    <message numerus="yes">
        <source>%n file(s) written</source>
        <translation>
            <numerusform>%n file written</numerusform>
            <numerusform>%n files written</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n of them in the place of an older one</source>
        <translation>
            <numerusform>, %n of them in the place of an older one</numerusform>
            <numerusform>, %n of them in the place of older ones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: “%2” could not be given its name (%3), and %n file(s) written before it could not be taken back: do not use them.</source>
        <translation>
            <numerusform>%1: “%2” could not be given its name (%3), and %n file written before it could not be taken back: do not use it.</numerusform>
            <numerusform>%1: “%2” could not be given its name (%3), and %n files written before it could not be taken back: do not use them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::LegAdvice</name>
    <message numerus="yes">
        <source>%1: %n hazard(s) of layer “%2” lie on none of these legs, so no leg warns of them. Check these very legs for hazards, with the same names of routes, and annotate them again.</source>
        <translation>
            <numerusform>%1: %n hazard of layer “%2” lies on none of these legs, so no leg warns of it. Check these very legs for hazards, with the same names of routes, and annotate them again.</numerusform>
            <numerusform>%1: %n hazards of layer “%2” lie on none of these legs, so no leg warns of them. Check these very legs for hazards, with the same names of routes, and annotate them again.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::LegCardsAlgorithm</name>
    <message numerus="yes">
        <source>Cancelled: %n whole file(s) were made before, and stay. They are not listed in cards.html.</source>
        <translation>
            <numerusform>Cancelled: %n whole file was made before, and stays. It is not listed in cards.html.</numerusform>
            <numerusform>Cancelled: %n whole files were made before, and stay. They are not listed in cards.html.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>On %n card(s) texts were too long for their place; an ellipsis (…) stands where they end.</source>
        <translation>
            <numerusform>On %n card texts were too long for their place; an ellipsis (…) stands where they end.</numerusform>
            <numerusform>On %n cards texts were too long for their place; an ellipsis (…) stands where they end.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n text(s) have letters that no installed font has; a question mark stands for each.</source>
        <translation>
            <numerusform>%n text has letters that no installed font has; a question mark stands for each.</numerusform>
            <numerusform>%n texts have letters that no installed font has; a question mark stands for each.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Cards: %n PDF file(s).</source>
        <translation>
            <numerusform>Cards: %n PDF file.</numerusform>
            <numerusform>Cards: %n PDF files.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::LegSheets</name>
    <message numerus="yes">
        <source>%n feature(s) of layer “%1” passed over.</source>
        <translation>
            <numerusform>%n feature of layer “%1” passed over.</numerusform>
            <numerusform>%n features of layer “%1” passed over.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n mark(s) of layer “%2” belong to none of the legs, or lie elsewhere than they say; passed over. Are they those of these legs?</source>
        <translation>
            <numerusform>%1: %n mark of layer “%2” belongs to none of the legs, or lies elsewhere than it says; passed over. Are the marks those of these legs?</numerusform>
            <numerusform>%1: %n marks of layer “%2” belong to none of the legs, or lie elsewhere than they say; passed over. Are they those of these legs?</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n mark(s) of layer “%2” have no usable place; passed over.</source>
        <translation>
            <numerusform>%1: %n mark of layer “%2” has no usable place; passed over.</numerusform>
            <numerusform>%1: %n marks of layer “%2” have no usable place; passed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::LegWriter</name>
    <message numerus="yes">
        <source>%n leg(s) cross cover polygons that overlap: the first in the layer counts.</source>
        <translation>
            <numerusform>%n leg crosses cover polygons that overlap: the first in the layer counts.</numerusform>
            <numerusform>%n legs cross cover polygons that overlap: the first in the layer counts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>DEM: %n leg(s) lie on ground without heights, whole or in part; their paces and minutes are those of level ground there. Does the terrain model reach so far?</source>
        <translation>
            <numerusform>DEM: %n leg lies on ground without heights, whole or in part; its paces and minutes are those of level ground there. Does the terrain model reach so far?</numerusform>
            <numerusform>DEM: %n legs lie on ground without heights, whole or in part; their paces and minutes are those of level ground there. Does the terrain model reach so far?</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::NamedPlacesParameters</name>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a name passed over.</source>
        <translation>
            <numerusform>%1: %n point of layer “%2” without a name passed over.</numerusform>
            <numerusform>%1: %n points of layer “%2” without a name passed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::NorthLinesAlgorithm</name>
    <message numerus="yes">
        <source>%n line(s) in %1; model %2, day %3.</source>
        <translation>
            <numerusform>%n line in %1; model %2, day %3.</numerusform>
            <numerusform>%n lines in %1; model %2, day %3.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PaceTries</name>
    <message numerus="yes">
        <source>None of the %n row(s) tells a try. %1</source>
        <translation>
            <numerusform>%n row, and it tells no try. %1</numerusform>
            <numerusform>None of the %n rows tells a try. %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n row(s) of table “%2” passed over in all.</source>
        <translation>
            <numerusform>%1: %n row of table “%2” passed over in all.</numerusform>
            <numerusform>%1: %n rows of table “%2” passed over in all.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PlaceReader</name>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a usable place passed over.</source>
        <translation>
            <numerusform>%1: %n point of layer “%2” without a usable place passed over.</numerusform>
            <numerusform>%1: %n points of layer “%2” without a usable place passed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PlanGround</name>
    <message numerus="yes">
        <source>%1: %n feature(s) of layer “%2” without a usable geometry passed over: they bar nothing.</source>
        <translation>
            <numerusform>%1: %n feature of layer “%2” without a usable geometry passed over: it bars nothing.</numerusform>
            <numerusform>%1: %n features of layer “%2” without a usable geometry passed over: they bar nothing.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PlotLegsAlgorithm</name>
    <message numerus="yes">
        <source>None of the %n route(s) could be plotted.</source>
        <translation>
            <numerusform>%n route, and it could not be plotted.</numerusform>
            <numerusform>None of the %n routes could be plotted.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) passed over in all.</source>
        <translation>
            <numerusform>%n route passed over in all.</numerusform>
            <numerusform>%n routes passed over in all.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PlotWriter</name>
    <message numerus="yes">
        <source>%n route(s) miss their end by more than errors allow: look for slips before anybody walks them.</source>
        <translation>
            <numerusform>%n route misses its end by more than errors allow: look for slips before anybody walks it.</numerusform>
            <numerusform>%n routes miss their end by more than errors allow: look for slips before anybody walks them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseParameters</name>
    <message numerus="yes">
        <source>%1: %n polygon(s) of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</source>
        <translation>
            <numerusform>%1: %n polygon of layer “%2” is not valid (it crosses or touches itself). What is enclosed an odd number of times counts as inside. Mend it with “Fix geometries”.</numerusform>
            <numerusform>%1: %n polygons of layer “%2” are not valid (they cross or touch themselves). What is enclosed an odd number of times counts as inside. Mend them with “Fix geometries”.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::PracticeCourseWriter</name>
    <message numerus="yes">
        <source>%n leg(s) are walked by more than one course: let those groups set out at different times.</source>
        <translation>
            <numerusform>%n leg is walked by more than one course: let those groups set out at different times.</numerusform>
            <numerusform>%n legs are walked by more than one course: let those groups set out at different times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n course(s) come over their own ground twice.</source>
        <translation>
            <numerusform>%n course comes over its own ground twice.</numerusform>
            <numerusform>%n courses come over their own ground twice.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) a leg passes by another control, within twice the drift there: tell walkers to look for the letter of their own.</source>
        <translation>
            <numerusform>%n time a leg passes by another control, within twice the drift there: tell walkers to look for the letter of their own.</numerusform>
            <numerusform>%n times a leg passes by another control, within twice the drift there: tell walkers to look for the letter of their own.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>SITES: %n control(s) have the name of another one. Their letters tell them apart; better give each site a name of its own.</source>
        <translation>
            <numerusform>SITES: %n control has the name of another one. Their letters tell them apart; better give each site a name of its own.</numerusform>
            <numerusform>SITES: %n controls have the name of another one. Their letters tell them apart; better give each site a name of its own.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>comes over its own ground %n time(s)</source>
        <translation>
            <numerusform>comes over its own ground %n time</numerusform>
            <numerusform>comes over its own ground %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>passes by %n other control(s)</source>
        <translation>
            <numerusform>passes by %n other control</numerusform>
            <numerusform>passes by %n other controls</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::RecordsParameters</name>
    <message numerus="yes">
        <source>%1: %2 has %n walkers, and their paces are not the same. Name the field of “%3” that says who counted, or give a table with that one walker.</source>
        <translation>
            <numerusform>%1: %2 has %n walkers, and their paces are not the same. Name the field of “%3” that says who counted, or give a table with that one walker.</numerusform>
            <numerusform>%1: %2 has %n walkers, and their paces are not the same. Name the field of “%3” that says who counted, or give a table with that one walker.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n empty row(s) of “%2” passed over.</source>
        <translation>
            <numerusform>%1: %n empty row of “%2” passed over.</numerusform>
            <numerusform>%1: %n empty rows of “%2” passed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::RouteSource</name>
    <message numerus="yes">
        <source>None of the %n route(s) could be used.</source>
        <translation>
            <numerusform>%n route, and it could not be used.</numerusform>
            <numerusform>None of the %n routes could be used.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n route(s) passed over in all.</source>
        <translation>
            <numerusform>%n route passed over in all.</numerusform>
            <numerusform>%n routes passed over in all.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n leg(s) do not follow the one before them in the layer (first: %2). Each begins a route of its own, with drift, minutes and places from there. Sort the layer by route, walker, direction and leg if that is not meant.</source>
        <translation>
            <numerusform>%1: %n leg does not follow the one before it in the layer (first: %2). It begins a route of its own, with drift, minutes and places from there. Sort the layer by route, walker, direction and leg if that is not meant.</numerusform>
            <numerusform>%1: %n legs do not follow the one before them in the layer (first: %2). Each begins a route of its own, with drift, minutes and places from there. Sort the layer by route, walker, direction and leg if that is not meant.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ShapesReader</name>
    <message numerus="yes">
        <source>%1: %n feature(s) of layer “%2” are without a usable geometry, whole or in part; passed over.</source>
        <translation>
            <numerusform>%1: %n feature of layer “%2” is without a usable geometry, whole or in part; passed over.</numerusform>
            <numerusform>%1: %n features of layer “%2” are without a usable geometry, whole or in part; passed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::StandParameters</name>
    <message numerus="yes">
        <source>%1: %n stand(s) of layer “%2” without stems or diameter passed over; what else is given of the cover there counts.</source>
        <translation>
            <numerusform>%1: %n stand of layer “%2” without stems or diameter passed over; what else is given of the cover there counts.</numerusform>
            <numerusform>%1: %n stands of layer “%2” without stems or diameter passed over; what else is given of the cover there counts.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::ThroughCoverAlgorithm</name>
    <message numerus="yes">
        <source>%n pair(s) or point(s) passed over in all.</source>
        <translation>
            <numerusform>%n pair or point passed over in all.</numerusform>
            <numerusform>%n pairs or points passed over in all.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::TrackSource</name>
    <message numerus="yes">
        <source>%1: %n point(s) of track “%2” have no number or time that tells their order; they are passed over.</source>
        <translation>
            <numerusform>%1: %n point of track “%2” has no number or time that tells its order; it is passed over.</numerusform>
            <numerusform>%1: %n points of track “%2” have no number or time that tells their order; they are passed over.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a usable place passed over.</source>
        <translation>
            <numerusform>%1: %n point of layer “%2” without a usable place passed over.</numerusform>
            <numerusform>%1: %n points of layer “%2” without a usable place passed over.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” have a time that cannot be read; they are taken without it.</source>
        <translation>
            <numerusform>%1: %n point of layer “%2” has a time that cannot be read; it is taken without its time.</numerusform>
            <numerusform>%1: %n points of layer “%2” have a time that cannot be read; they are taken without it.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::TraverseParameters</name>
    <message numerus="yes">
        <source>%1 has %n points of that name. Leave the one where it starts.</source>
        <translation>
            <numerusform>%1 has %n points of that name. Leave the one where it starts.</numerusform>
            <numerusform>%1 has %n points of that name. Leave the one where it starts.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n point(s) of layer “%2” without a name passed over.</source>
        <translation>
            <numerusform>%1: %n point of layer “%2” without a name passed over.</numerusform>
            <numerusform>%1: %n points of layer “%2” without a name passed over.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::VectorOutput</name>
    <message numerus="yes">
        <source>%1: “%2” is a shapefile, which keeps 254 bytes of a text: the texts of %n feature(s) are cut, warnings perhaps among them. Give a name that ends in .gpkg.</source>
        <translation>
            <numerusform>%1: “%2” is a shapefile, which keeps 254 bytes of a text: the texts of %n feature are cut, warnings perhaps among them. Give a name that ends in .gpkg.</numerusform>
            <numerusform>%1: “%2” is a shapefile, which keeps 254 bytes of a text: the texts of %n features are cut, warnings perhaps among them. Give a name that ends in .gpkg.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::WalkWords</name>
    <message numerus="yes">
        <source>%n double point(s)</source>
        <translation>
            <numerusform>%n double point</numerusform>
            <numerusform>%n double points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n spike(s)</source>
        <translation>
            <numerusform>%n spike</numerusform>
            <numerusform>%n spikes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) that run backwards</source>
        <translation>
            <numerusform>%n time that runs backwards</numerusform>
            <numerusform>%n times that run backwards</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brushline::WalkerParameters</name>
    <message numerus="yes">
        <source>%1: %n empty row(s) of table “%2” passed over.</source>
        <translation>
            <numerusform>%1: %n empty row of table “%2” passed over.</numerusform>
            <numerusform>%1: %n empty rows of table “%2” passed over.</numerusform>
        </translation>
    </message>
</context>
</TS>
