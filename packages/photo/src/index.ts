// Measuring from photographs: the sheet that they are measured by.

export * from './camera/camera.ts';
export * from './camera/fit-camera.ts';
export * from './camera/fitted-camera.ts';
export * from './camera/sheet.ts';
export * from './find/find-markers.ts';
export * from './ground-sheet.ts';
export * from './image/photo.ts';
export * from './issues.ts';
