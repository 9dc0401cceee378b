export * from './drawing/index.ts';
export * from './pack/index.ts';
export * from './page/index.ts';
export * from './pens/index.ts';
export * from './survey/index.ts';
export * from './type/index.ts';
