export { type BarChart, drawBars } from './bar-chart';
export { type Drawing, drawingAddress, type Ink, letterHeight } from './drawing';
export { drawIntervals, type IntervalPlot, type IntervalRow } from './interval-plot';
export { drawingStyle } from './style';
export { type Paint, type SvgElement, svgOf, svgText } from './svg';
