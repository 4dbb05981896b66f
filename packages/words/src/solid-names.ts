// The sizes of the solids in the catalogue and the sides on which they rest, by the names that files write.

/** The sizes of the solids in the catalogue, and the measurements that are taken instead. */
export type SizeName =
  | 'edge'
  | 'length'
  | 'width'
  | 'height'
  | 'a'
  | 'b'
  | 'c'
  | 'sides'
  | 'slant'
  | 'slantLength'
  | 'slantWidth'
  | 'slantEdge'
  | 'topEdge'
  | 'topLength'
  | 'topWidth'
  | 'radius'
  | 'diameter'
  | 'circumference'
  | 'topRadius'
  | 'topDiameter'
  | 'topCircumference';

/** The sides on which they rest. */
export type RestingName =
  | 'base'
  | 'top'
  | 'side'
  | 'long-side'
  | 'short-side'
  | 'side-a'
  | 'side-b'
  | 'side-c'
  | 'side-length'
  | 'side-width'
  | 'face'
  | 'square'
  | 'triangle'
  | 'round'
  | 'flat'
  | 'dome';
