export { type DrawnSign, drawnSigns, signStroke } from './drawnSigns.ts';
export { advanceMm, chainOf, emMm, type FontName, type Fonts, fontNames, holds } from './faces.ts';
export { metrics, type TextMetrics } from './metrics.ts';
export { type FontRun, type Run, runsOf, type SignRun } from './runs.ts';
export { type Fitted, fit, wrap, wrapEven } from './wrap.ts';
