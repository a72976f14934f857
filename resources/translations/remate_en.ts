<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<!-- Kept by packaging/texts. -->
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Remate</name>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>1 entry</numerusform>
            <numerusform>%n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items</source>
        <translation>
            <numerusform>1 item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n openings blanked; tagged %1</source>
        <translation>
            <numerusform>1 opening blanked; tagged %1</numerusform>
            <numerusform>%n openings blanked; tagged %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n shipping blanks removed</source>
        <translation>
            <numerusform>1 shipping blank removed</numerusform>
            <numerusform>%n shipping blanks removed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tags</source>
        <translation>
            <numerusform>1 tag</numerusform>
            <numerusform>%n tags</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to inspect</source>
        <translation>
            <numerusform>1 to inspect</numerusform>
            <numerusform>%n to inspect</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Sign %n entries</source>
        <translation>
            <numerusform>Sign 1 entry</numerusform>
            <numerusform>Sign %n entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Sign %n ticked</source>
        <translation>
            <numerusform>Sign 1 ticked</numerusform>
            <numerusform>Sign %n ticked</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Walk-round: %n to look at</source>
        <translation>
            <numerusform>Walk-round: 1 to look at</numerusform>
            <numerusform>Walk-round: %n to look at</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>With the %n standard hold points</source>
        <translation>
            <numerusform>With the 1 standard hold point</numerusform>
            <numerusform>With the %n standard hold points</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and 1 more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
</TS>
