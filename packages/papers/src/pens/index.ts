export { inkVariables, printInks, wireInks } from './inks.ts';
export { type PdfOptions, pdfOf } from './pdfPen.ts';
export { type SvgOptions, svgOf } from './svgPen.ts';
export { fontFace, svgStyle } from './svgStyle.ts';
