#include "planner/reports/page_style.hpp"

namespace landwidth {

std::string_view page_style() {
    // No '<' and no '&' in here: the page is read as XML too.
    return R"css(
:root { color-scheme: light; --ink: #1c211b; --soft: #55594f; --hair: #c9cbbf; --mark: #8c0a4f; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 62rem; padding: 1.2rem 1.4rem 3rem; color: var(--ink); background: #fff;
  font: 16px/1.45 system-ui, sans-serif; font-variant-numeric: tabular-nums; overflow-wrap: anywhere; }
h1, h2, h3 { line-height: 1.2; margin: 0; font-weight: 650; }
h1 { font-size: 1.9rem; }
h2 { font-size: 1.25rem; }
h3 { font-size: 1rem; }
p { margin: .4rem 0; }
ul { margin: .4rem 0; padding-left: 1.2rem; }
.sub { color: var(--soft); }
header { border-top: 5px solid var(--ink); border-bottom: 1px solid var(--ink); padding: .9rem 0 .8rem;
  margin-bottom: 1.1rem; }
section.part { margin: 1.6rem 0; }
table { border-collapse: collapse; width: 100%; margin: .6rem 0; }
caption, .note { text-align: left; color: var(--soft); font-size: .9em; padding-bottom: .2rem; }
th, td { overflow-wrap: break-word; text-align: left; padding: .22rem .45rem; border-bottom: 1px solid var(--hair); vertical-align: top; }
thead th { border-bottom: 1.5px solid var(--ink); vertical-align: bottom; font-size: .86em; font-weight: 600; }
tfoot th, tfoot td { border-top: 1.5px solid var(--ink); border-bottom: 0; font-weight: 650; }
th[scope=row] { font-weight: 600; }
.n { text-align: right; white-space: nowrap; }
thead .n { white-space: normal; }
.scroll { overflow-x: auto; }
.totals { width: auto; min-width: 24rem; }
.chosen th, .chosen td { font-weight: 650; }
.round td:nth-child(6) { white-space: nowrap; }
.chosen th { color: var(--mark); }
.tossup { font-style: italic; }
a { color: inherit; }

.hole { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: 0 1.6rem; align-items: start;
  border-top: 2px solid var(--ink); padding: .8rem 0 1.6rem; margin-top: 1.4rem; }
.hole figure { margin: 0; }
.hole .facts { margin: .1rem 0 .5rem; color: var(--soft); }
.verdict { font-size: 1.08rem; border-left: 4px solid var(--mark); padding-left: .7rem; }
.choices { font-size: .82rem; }
.choices th, .choices td { padding: .18rem .35rem; }
.choices bdi, .round bdi { white-space: nowrap; }
.more { font-size: .85rem; color: var(--soft); }
.choices thead th { font-size: .92em; }
.lie-bar { display: block; width: 100%; min-width: 4.5rem; max-width: 9rem; height: .95em;
  margin-top: .22em; }
.lie-bar rect { stroke: #333; stroke-width: .6; stroke-dasharray: none; }
.caution { padding-left: 1.2rem; font-size: .92rem; }
.legend li { display: flex; align-items: baseline; }
.legend { list-style: none; padding: 0; margin: .7rem 0 0; display: flex; flex-wrap: wrap; gap: .1rem .9rem;
  font-size: .78rem; color: #33372f; }
.swatch { flex: none; align-self: center; margin-right: .35rem; overflow: visible; }

.hole-map { display: block; width: auto; height: 40rem; max-width: 100%; }
.hole-map text { font: 9.5px system-ui, sans-serif; fill: #14180f; stroke: #fff; stroke-width: 2.4px;
  stroke-linejoin: round; paint-order: stroke; unicode-bidi: plaintext; }
.hole-map text.club { font-size: 10.5px; font-weight: 700; }
.hole-map text.width { font-size: 10.5px; font-weight: 700; }
text.e { text-anchor: end; }
text.m { text-anchor: middle; }
.case { stroke: #fff; stroke-width: 3.6; stroke-opacity: .8; }
.arc { stroke: #3a3f36; stroke-width: .6; }
.rim { stroke: #6d7364; stroke-width: .8; }
.wide { stroke: #000; stroke-width: 2; }
.tee { fill: #fff; stroke: #000; stroke-width: 1.6; }
.pole { stroke: #000; stroke-width: 1.2; }
.flag { fill: #000; }
.cup { fill: #000; }
.bar { fill: #fff; stroke: #000; stroke-width: .8; }
.half { fill: #000; }
.north { fill: #000; stroke: #000; stroke-width: 1; }
.house { fill: #4a4a4a; stroke: #000; stroke-width: .6; }
.shore { fill: none; stroke: #7fb2d3; stroke-width: 2.6; }
.road { fill: #fff; stroke: #555; stroke-width: .9; }
.path { fill: #efe7d6; stroke: #6b5d40; stroke-width: .4; }
.other { fill: none; stroke: #000; stroke-width: .9; stroke-dasharray: 2 2; }

details { margin: .7rem 0; border: 1px solid var(--hair); padding: .4rem .7rem; }
summary { cursor: pointer; font-weight: 600; }
details table { font-size: .85rem; }
footer { margin-top: 2rem; border-top: 1px solid var(--ink); padding-top: .6rem; font-size: .85rem; color: #44483f; }

@media (max-width: 44rem) {
  body { padding: .8rem .8rem 2rem; font-size: 15px; }
  .hole { grid-template-columns: minmax(0, 1fr); }
  .hole-map { height: auto; max-height: 38rem; margin: 0 auto .6rem; }
  .totals { min-width: 0; width: 100%; }
  .round { font-size: .8rem; min-width: 44rem; }
  .choices { font-size: .78rem; }
  .choices th, .choices td { padding: .18rem .2rem; }
}

@media (max-width: 30rem) {
  .choices th:nth-child(4), .choices td:nth-child(4) { display: none; }
}

@page { size: A4; margin: 11mm 12mm; }
@media print {
  html { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  body { max-width: none; padding: 0; font-size: 9.5pt; line-height: 1.32; }
  h1 { font-size: 17pt; }
  h2 { font-size: 12.5pt; }
  .hole { break-inside: avoid; grid-template-columns: auto minmax(0, 1fr); gap: 0 5mm; margin-top: 0;
    padding: 2mm 0 2.5mm; border-top-width: 1px; }
  .hole-map { height: auto; max-height: none; max-width: none; }
  .verdict { font-size: 9.8pt; }
  .choices, .legend, .more { font-size: 7.6pt; }
  .choices th, .choices td { padding: .12rem .2rem; }
  .lie-bar { min-width: 3rem; }
  .caution { font-size: 8.4pt; margin: .2rem 0; }
  .hole p { margin: .25rem 0; }
  .round { font-size: 8.2pt; }
  .round td:nth-child(6) { width: auto; }
  .round td, .round th { padding: .12rem .3rem; }
  tr, li, p, h2, h3 { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
  .scroll { overflow: visible; }
  tfoot { display: table-row-group; }
  details:not([open]) { display: none; }
}
)css";
}

}  // namespace landwidth
