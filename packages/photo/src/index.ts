// Measuring from photographs: the sheet, the camera that saw it, pieces from taps, heights from the side. Plain pixels in, mm out.

export * from './camera/camera.ts';
export * from './camera/fit-camera.ts';
export * from './camera/fit-plain.ts';
export * from './camera/fit-points.ts';
export * from './camera/fitted-camera.ts';
export * from './camera/read-plain.ts';
export * from './camera/read-sheet.ts';
export * from './camera/sheet.ts';
export * from './find/find-markers.ts';
export * from './find/find-sheet.ts';
export * from './ground-sheet.ts';
export * from './image/photo.ts';
export * from './issues.ts';
export * from './sheet/print-scale.ts';
export * from './trace/figure.ts';
export * from './trace/fit-solid.ts';
export * from './trace/height-from-side.ts';
export * from './trace/likeliest-height.ts';
export * from './trace/make-room.ts';
export * from './trace/pose.ts';
export * from './trace/rim.ts';
export * from './trace/set-piece.ts';
export * from './trace/top-shape.ts';
export * from './trace/trace-outline.ts';
export * from './trace/trace-tower.ts';
