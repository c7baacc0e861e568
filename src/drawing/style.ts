/**
 * The style of pictures in a page. Its colours are properties that the page may set; shapes, outlines and dashes tell the
 * marks apart without any, and where the reader's system sets the colours it does so here, too.
 */
export const drawingStyle = `.kf-drawing { display: block; max-width: 100%; height: auto; font-family: inherit; }
.kf-drawing text { fill: var(--kf-ink, currentColor); }
.kf-drawing .kf-side { fill: var(--kf-faint, currentColor); }
.kf-limit, .kf-mean, .kf-span, .kf-base { fill: none; stroke: var(--kf-ink, currentColor); }
.kf-limit { stroke-width: 2; } .kf-span { stroke-width: 1.5; }
.kf-mean { stroke: var(--kf-faint, currentColor); stroke-width: 1.5; stroke-dasharray: 4 3; }
.kf-band, .kf-bar, .kf-best { stroke: var(--kf-ink, currentColor); fill: var(--kf-fill, transparent); }
.kf-best { fill: var(--kf-paper, transparent); }
@media (forced-colors: active) {
.kf-drawing text { fill: CanvasText; }
.kf-limit, .kf-mean, .kf-span, .kf-base, .kf-band, .kf-bar, .kf-best { stroke: CanvasText; }
.kf-band, .kf-bar { fill: GrayText; } .kf-best { fill: Canvas; } }`;
