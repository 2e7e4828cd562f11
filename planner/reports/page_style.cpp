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
.chart-cells { font-size: .7rem; }
.chart-cells th, .chart-cells td { padding: .14rem .22rem; }
.chart-cells td { white-space: nowrap; }
.shots th, .shots td { padding: .18rem .28rem; font-size: .84rem; }
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

.ahead { display: flex; flex-wrap: wrap; gap: .2rem 1.4rem; align-items: flex-start; margin: .5rem 0; }
.ahead > div:first-child { flex: 1 1 13rem; }
.ahead > .scroll { flex: 0 1 auto; }
.ahead h3 { font-size: .92rem; margin: .15rem 0 .2rem; }
.next { font-size: .92rem; margin: 0; padding-left: 1.3rem; }
.next li { margin-bottom: .2rem; }
.scores { width: auto; font-size: .78rem; margin: 0; }
.scores th, .scores td { padding: .06rem .45rem .06rem 0; border-bottom: 0; white-space: nowrap; }
.scores thead th { border-bottom: 1px solid var(--ink); }
.scores tbody th { font-weight: 400; }
.scores .at-par th { font-weight: 650; }
.scores span { display: inline-block; min-width: 2.6rem; }
.share-bar { width: 5rem; height: .7em; vertical-align: -.05em; border-left: 1px solid var(--ink); }
.share-bar rect { fill: #44483f; }

.shade, .cost-key { display: none; }
.shade path { fill-rule: evenodd; }
.shade-one:checked ~ .hole-map .shade, .shade-all:checked ~ .hole .shade { display: inline; }
.shade-one:checked ~ .cost-key, .shade-all:checked ~ .hole .cost-key { display: block; }
.shade-one:checked ~ .hole-map .ground path, .shade-all:checked ~ .hole .ground path { fill: none; }
.shade-all:checked ~ .hole .shade-one, .shade-all:checked ~ .hole .shade-one + .switch { visibility: hidden; }
.switch { font-size: .85rem; padding-left: .3rem; cursor: pointer; }
.cost-key { font-size: .74rem; width: 0; min-width: 100%; color: #33372f; }
.cost-key ul { list-style: none; margin: 0; padding: 0; display: grid;
  grid-template-columns: repeat(auto-fill, minmax(5.7rem, 1fr)); gap: .05rem .4rem; }
.cost-key li { display: flex; white-space: nowrap; }

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
  .choices, .legend, .more { font-size: 7.5pt; }
  .choices th, .choices td { padding: .12rem .2rem; }
  .lie-bar { min-width: 3rem; }
  .scores, .next { font-size: 7.6pt; line-height: 1.18; }
  .scores th, .scores td { padding: 0 .35rem 0 0; }
  .legend { margin-top: .35rem; gap: 0 .7rem; line-height: 1.2; }
  .ahead { margin: .2rem 0; flex-wrap: nowrap; gap: 0 5mm; }
  .ahead > div:first-child { flex-basis: 0; }
  .ahead h3 { font-size: 8.4pt; }
  .share-bar { width: 3.6rem; }
  .shade-one, .shade-all, .switch { display: none; }
  .shade-one:checked ~ .hole-map, .shade-all:checked ~ .hole .hole-map { max-height: 108mm; }
  .cost-key { font-size: 6.4pt; line-height: 1.15; }
  .cost-key ul { grid-template-columns: repeat(auto-fill, minmax(4.3rem, 1fr)); gap: 0 .2rem; }
  .cost-key .swatch { margin-right: .15rem; }
  .cost-key p { margin: .1rem 0; }
  .caution { font-size: 8.4pt; margin: .2rem 0; }
  .hole p { margin: .25rem 0; }
  .round { font-size: 8.2pt; }
  .chart-cells { font-size: 6pt; }
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
