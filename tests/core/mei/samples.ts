/** A score of two staves in MEI around the measures given; own work, MIT like the project. */
export const meiScore = (measures: string, more = ''): string => `<?xml version="1.0" encoding="UTF-8"?>
<mei xmlns="http://www.music-encoding.org/ns/mei" meiversion="5.1">
  <meiHead><fileDesc><titleStmt><title><titlePart type="main">Two Ferries</titlePart><titlePart type="subordinate">for practice</titlePart></title><composer>Ines Vaarland</composer></titleStmt></fileDesc></meiHead>
  <music><body><mdiv><score>
    <scoreDef meter.count="3" meter.unit="4" keysig="1s">
      <staffGrp>
        <staffDef n="1" lines="5" clef.shape="G" clef.line="2"><label>Violin I</label></staffDef>
        <staffDef n="2" lines="5" clef.shape="F" clef.line="4" trans.semi="-12" trans.diat="-7"><instrDef midi.instrnum="43"/></staffDef>
      </staffGrp>
    </scoreDef>
    ${more}
    <section>${measures}</section>
  </score></mdiv></body></music>
</mei>`;
