/** Black on white, A4 upright, no step torn apart at the end of a page. */
export const styleSheet = `
@page { size: A4 portrait; margin: 15mm 14mm 14mm; }
* { box-sizing: border-box; }
body { font: 10pt/1.4 Georgia, "Liberation Serif", "DejaVu Serif", serif; color: #000; background: #fff;
  max-width: 182mm; margin: 0 auto; }
h1 { font-size: 22pt; line-height: 1.1; margin: 0 0 1mm; font-weight: normal; }
h2 { font-size: 12pt; margin: 5mm 0 2mm; padding-bottom: 1mm; border-bottom: 0.3mm solid #000;
  break-after: avoid; }
h3 { font-size: 11.5pt; margin: 0 0 1.5mm; break-after: avoid; }
p { margin: 0 0 1.5mm; }
.lead { margin-bottom: 4mm; font-style: italic; }
.lists { display: grid; grid-template-columns: 1fr 1fr; gap: 0 8mm; }
table { border-collapse: collapse; width: 100%; font-size: 9pt; }
td { vertical-align: top; padding: 0.6mm 2mm 0.6mm 0; border-bottom: 0.1mm solid #000; }
.key { font-weight: bold; width: 5mm; }
.figure { white-space: nowrap; font-variant-numeric: tabular-nums; }
.step { display: grid; grid-template-columns: 98mm 80mm; gap: 0 4mm; padding: 3mm 0;
  border-bottom: 0.1mm solid #000; break-inside: avoid; }
.step.wide { display: block; }
.number { display: inline-block; min-width: 8mm; font-size: 16pt; line-height: 1; }
.seams { margin: 1mm 0 2mm; font-size: 8.5pt; }
.seams .figure { white-space: normal; }
.seams td:nth-child(2) { width: 38%; }
.amounts { margin: 0 0 1.5mm; padding-left: 4mm; }
.amounts li { margin: 0; }
.source, .made-with { font-size: 8pt; }
.made-with { font-style: italic; }
.ready { font-size: 8.5pt; font-style: italic; }
.use { font-weight: bold; }
.caution { border-left: 1.2mm solid #000; padding: 0 0 0 2mm; margin: 2mm 0 1mm; font-size: 9pt; }
figure { margin: 0; text-align: center; }
.wide figure { display: inline-block; margin-right: 4mm; }
.place { font-size: 9pt; }
.wide figure { margin-top: 2mm; }
.finished { margin: 0 0 4mm; }
.finished svg { margin: 0 4mm; }
svg { max-width: 100%; }
path { fill: none; stroke: #000; stroke-linejoin: round; stroke-linecap: round; }
.cut { stroke-width: 0.22; }
.stitch { stroke-width: 0.13; stroke-dasharray: 1 0.7; }
.inside { stroke-width: 0.13; stroke-dasharray: 0.3 0.8; }
.notch { stroke-width: 0.25; }
.leader { stroke-width: 0.1; }
.heavy { stroke-width: 0.75; }
text { font-family: "Liberation Sans", Arial, sans-serif; }
.letter { font-weight: bold; }
.faults { border: 0.6mm solid #000; padding: 2mm 4mm; }
@media screen { body { padding: 10mm 4mm; } }
`;
