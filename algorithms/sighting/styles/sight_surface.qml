<!DOCTYPE qgis PUBLIC 'http://mrcc.com/qgis.dtd' 'SYSTEM'>
<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<qgis version="3.22.16" styleCategories="Symbology">
  <pipe>
    <rasterrenderer type="singlebandpseudocolor" band="1" alphaBand="-1" opacity="1" classificationMin="0" classificationMax="160">
      <minMaxOrigin>
        <limits>None</limits>
      </minMaxOrigin>
      <rastershader>
        <colorrampshader colorRampType="DISCRETE" classificationMode="1" clip="0" minimumValue="0" maximumValue="160">
          <item value="5" label="0–5 m" color="#2b2350" alpha="255"/>
          <item value="10" label="5–10 m" color="#453a78" alpha="255"/>
          <item value="20" label="10–20 m" color="#6a5f9e" alpha="255"/>
          <item value="40" label="20–40 m" color="#958cbd" alpha="255"/>
          <item value="80" label="40–80 m" color="#beb9d6" alpha="255"/>
          <item value="160" label="80–160 m" color="#e2dfea" alpha="255"/>
          <item value="inf" label="&gt; 160 m" color="#faf8f2" alpha="255"/>
        </colorrampshader>
      </rastershader>
    </rasterrenderer>
  </pipe>
</qgis>
