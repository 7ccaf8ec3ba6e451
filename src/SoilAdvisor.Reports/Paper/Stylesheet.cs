namespace SoilAdvisor.Reports.Paper;

/// <summary>The look of the HTML report: one ink on paper, letters of the reader's own machine, nothing that needs colour to be understood.</summary>
internal static class Stylesheet
{
    public const string Text = """
        :root { --ink: #16130f; --soft: #595349; --hair: #b9b2a5; --paper: #fffefb; }
        * { box-sizing: border-box; }
        html { -webkit-text-size-adjust: 100%; }
        body { margin: 0; background: var(--paper); color: var(--ink); font: 17px/1.5 Charter, "Bitstream Charter", "Iowan Old Style", Georgia, "DejaVu Serif", serif; }
        main { max-width: 58rem; margin: 0 auto; padding: 1rem 1.1rem 4rem; }
        h1, h2, h3, h4, h5 { line-height: 1.2; margin: 1.6em 0 .4em; break-after: avoid; overflow-wrap: anywhere; }
        h1 { font-size: 1.9rem; margin-top: .4em; }
        h2 { font-size: 1.5rem; border-top: 3px double var(--ink); padding-top: .5em; margin-top: 2.2em; }
        h3 { font-size: 1.25rem; border-top: 1px solid var(--ink); padding-top: .5em; margin-top: 2em; }
        h4 { font-size: 1.05rem; }
        h5 { font-size: 1rem; font-style: italic; }
        p, ul { margin: .4em 0 .8em; max-width: 44rem; overflow-wrap: anywhere; }
        ul { padding-left: 1.2em; }
        li { margin: .25em 0; }
        .lead { font-size: 1.12rem; }
        a { color: inherit; text-decoration-color: var(--hair); text-underline-offset: .15em; }
        a:focus-visible, summary:focus-visible { outline: 2px solid var(--ink); outline-offset: 2px; }
        a.mark { text-decoration: none; color: var(--soft); font-size: .78em; white-space: nowrap; }
        a.mark:hover { text-decoration: underline; }
        :target { outline: 1px dashed var(--ink); outline-offset: 3px; }
        nav { margin: 1em 0; line-height: 2; overflow-wrap: anywhere; }
        nav a { margin-right: .9em; }
        table { border-collapse: collapse; width: 100%; margin: .4em 0 1.2em; font-size: .9rem; line-height: 1.4; font-variant-numeric: lining-nums; }
        th { text-align: left; vertical-align: bottom; font-weight: 600; border-bottom: 1.5px solid var(--ink); padding: .3em .7em .3em 0; }
        td { vertical-align: top; border-bottom: 1px solid var(--hair); padding: .4em .7em .4em 0; overflow-wrap: break-word; }
        tr { break-inside: avoid; }
        .soft, .ruling { color: var(--soft); font-size: .92em; }
        .ruling { margin: 0; font-size: .8em; line-height: 1.3; }
        table.ratings td.scale { width: 46%; padding-right: .7em; }
        table.ratings tbody tr:last-child td { border-bottom-color: var(--ink); }
        .scale-head th { vertical-align: top; border-bottom: 0; padding-top: .8em; font-size: 1.08em; }
        .scale-head td { border-bottom: 0; padding-top: .9em; }
        .scale-head { break-after: avoid; }
        svg.ruler { display: block; overflow: visible; }
        svg.row { margin: -.4em 0; }
        svg.ruler text { font: 12px/1 system-ui, "Helvetica Neue", Arial, "DejaVu Sans", sans-serif; fill: var(--ink); }
        svg.ruler .name { fill: var(--soft); }
        svg.ruler .found { fill: var(--ink); font-weight: 700; }
        svg.ruler .result { font-weight: 700; font-size: 13px; }
        svg.ruler .limit { font-weight: 600; }
        svg.ruler .round { fill: var(--soft); font-size: 10.5px; }
        svg.ruler .edge, svg.ruler .mark { stroke: var(--ink); stroke-width: 1.3; }
        svg.ruler .small { stroke: var(--ink); stroke-width: .6; }
        svg.ruler .target { stroke: var(--ink); stroke-width: 1.3; }
        svg.row .mark { stroke-width: .7; }
        svg.row .hair { stroke: var(--soft); stroke-width: .7; stroke-dasharray: 1 4; }
        svg.ruler .whisker { stroke: var(--ink); stroke-width: 2; }
        svg.ruler .drop { stroke: var(--ink); stroke-width: .8; stroke-dasharray: 2 2; }
        svg.ruler .dot { fill: var(--ink); stroke: var(--paper); stroke-width: 1.4; }
        svg.ruler .open { stroke: var(--ink); stroke-width: 1.8; stroke-dasharray: 5 4; }
        svg.ruler .open-dot { fill: var(--paper); stroke: var(--ink); stroke-width: 1.6; }
        details { margin: .5em 0; border-left: 1px solid var(--ink); padding-left: .8em; }
        summary { cursor: pointer; padding: .35em 0; font-style: italic; }
        pre { font: .86rem/1.5 ui-monospace, Consolas, "DejaVu Sans Mono", monospace; white-space: pre-wrap; overflow-wrap: anywhere; margin: .4em 0 1em; }
        .source { break-inside: avoid; margin: 0 0 .8em; font-size: .92rem; }
        .source p { margin: 0; }
        .source ul { margin: .1em 0 0; padding: 0; list-style: none; }
        @media screen and (max-width: 46rem) {
          body { font-size: 16px; }
          table, tbody, tr, td { display: block; }
          thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
          tr { border-bottom: 1px solid var(--ink); padding: .5em 0; }
          td { display: grid; grid-template-columns: 7.2rem 1fr; gap: .6rem; border: 0; padding: .12em 0; overflow-wrap: anywhere; }
          td.empty { display: none; }
          td.scale, table.ratings td.scale { display: block; width: auto; padding: .3em 0; }
          .scale-head th { display: block; }
          td::before { content: attr(data-column); color: var(--soft); font-size: .82rem; line-height: 1.55; }
        }
        @media print {
          @page { margin: 15mm 14mm; }
          :root { --soft: #333; --hair: #999; --paper: #fff; }
          body { font-size: 10.5pt; line-height: 1.38; }
          main { max-width: none; padding: 0; }
          nav { display: none; }
          table { font-size: 8.8pt; }
          thead { display: table-header-group; }
          h2 { margin-top: 1.4em; }
          #beds, #sources, [id^="field-sheet-"] { break-before: page; }
          a { text-decoration: none; }
          details:not([open]) > summary::after { content: " (closed: open it on the screen to print it)"; }
        }

        """;
}
