// Every measure of a build, in the order in which reports list them. A new measure is one file and one line here.

import { areaToPerimeter } from './each/area-to-perimeter.ts';
import { baseArea } from './each/base-area.ts';
import { basePerimeter } from './each/base-perimeter.ts';
import { baseWidth } from './each/base-width.ts';
import { corners } from './each/corners.ts';
import { courtyardArea } from './each/courtyard-area.ts';
import { curvedEdges } from './each/curved-edges.ts';
import { curvedSurfaces } from './each/curved-surfaces.ts';
import { edges } from './each/edges.ts';
import { faces } from './each/faces.ts';
import { flatFaces } from './each/flat-faces.ts';
import { footprintArea } from './each/footprint-area.ts';
import { footprintInnerPerimeter } from './each/footprint-inner-perimeter.ts';
import { footprintParts } from './each/footprint-parts.ts';
import { footprintPerimeter } from './each/footprint-perimeter.ts';
import { height } from './each/height.ts';
import { heightToWidth } from './each/height-to-width.ts';
import { hullArea } from './each/hull-area.ts';
import { kinds } from './each/kinds.ts';
import { paper } from './each/paper.ts';
import { pieces } from './each/pieces.ts';
import { straightEdges } from './each/straight-edges.ts';
import { touchableSurface } from './each/touchable-surface.ts';
import { vertices } from './each/vertices.ts';
import { volume } from './each/volume.ts';
import { volumePerPaper } from './each/volume-per-paper.ts';
import type { MeasureDefinition } from './measure.ts';

export const MEASURES: readonly MeasureDefinition[] = [
  height,
  footprintArea,
  footprintPerimeter,
  footprintInnerPerimeter,
  footprintParts,
  baseArea,
  basePerimeter,
  baseWidth,
  courtyardArea,
  hullArea,
  volume,
  paper,
  touchableSurface,
  heightToWidth,
  volumePerPaper,
  areaToPerimeter,
  pieces,
  kinds,
  flatFaces,
  curvedSurfaces,
  straightEdges,
  curvedEdges,
  vertices,
  faces,
  edges,
  corners,
];
