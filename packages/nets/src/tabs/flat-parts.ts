// Sheets with their tabs as parts of a net: lines to cut and to fold, faces with room for a name, tabs with where they end.

import type { Vec3 } from '@cairnmark/geometry';
import { add3, scale3, signedAreaMm2 } from '@cairnmark/geometry';
import type { NetFace, NetFold, NetPart, NetTab } from '../net.ts';
import type { Path } from '../path/path.ts';
import { straightPath } from '../path/path.ts';
import { centroidOf } from '../plane/centroid.ts';
import type { Motion } from '../plane/motion.ts';
import type { Room } from '../plane/room.ts';
import { roomIn } from '../plane/room.ts';
import type { FaceTable, Placed } from '../unfold/faces.ts';
import { commonSide, inSpace } from '../unfold/faces.ts';
import type { Joint, LaidFace, Sheet } from '../unfold/unfold.ts';
import { sideOf } from '../unfold/unfold.ts';
import type { PlacedTab, Tabs } from './place-tabs.ts';
import { placeTabs } from './place-tabs.ts';

/** A part for each sheet, with one tab for every cut edge of the solid. */
export function flatParts(table: FaceTable, sheets: readonly Sheet[], tabDepthMm: number): readonly NetPart[] {
  const placed = placeTabs(table, sheets, tabDepthMm);
  const faces = sheets.map((sheet) => sheet.faces.map((laid) => netFace(table, laid)));
  const byNumber = new Map(faces.flat().map((face) => [face.face, face]));
  return sheets.map((sheet, k) => {
    const own = placed.tabs.filter(({ host }) => host.sheet === k);
    const ofSheet = faces[k] ?? [];
    return {
      cut: cutLine(placed, k),
      folds: [...sheet.joints.map((joint) => faceFold(table, sheet, joint)), ...own.map(tabFold)],
      faces: ofSheet,
      tabs: own.map((tab) => netTab(tab, byNumber.get(tab.host.mate)?.placed ?? null)),
      label: roomiest(ofSheet),
    };
  });
}

/** The roomiest face's room; the first of those that are alike. */
export function roomiest(faces: readonly NetFace[]): Room {
  const [first, ...others] = faces.map(({ room }) => room);
  if (first === undefined) throw new RangeError('a part has a face');
  return others.reduce((best, room) => (room.radiusMm > best.radiusMm * (1 + ALIKE) ? room : best), first);
}

const ALIKE = 1e-9;

function netFace({ faces }: FaceTable, { face, ring, motion }: LaidFace): NetFace {
  const placed = faces[face]?.placed;
  if (placed === undefined) throw new RangeError(`no face ${face}`);
  return {
    face,
    kind: 'polygon',
    outline: straightPath(ring, true),
    areaMm2: signedAreaMm2(ring),
    centroid: centroidOf(ring),
    room: roomIn(ring),
    placed: fromSheet(placed, motion),
  };
}

/** The figure's place in space, told from the sheet on which `motion` laid it. */
function fromSheet({ origin, x, y }: Placed, { cos, sin, shift }: Motion): Placed {
  const onSheetX: Vec3 = add3(scale3(x, cos), scale3(y, -sin));
  const onSheetY: Vec3 = add3(scale3(x, sin), scale3(y, cos));
  const back = add3(scale3(onSheetX, shift[0]), scale3(onSheetY, shift[1]));
  return { origin: add3(origin, scale3(back, -1)), x: onSheetX, y: onSheetY };
}

function cutLine({ rims, tabs }: Tabs, sheet: number): Path {
  const rings = new Map(
    tabs.filter(({ host }) => host.sheet === sheet).map(({ host, shape }) => [host.position, shape.ring]),
  );
  const corners = (rims[sheet] ?? []).flatMap(({ a, position }) => rings.get(position)?.slice(0, 3) ?? [a]);
  return straightPath(corners, true);
}

function faceFold(table: FaceTable, sheet: Sheet, [parent, child]: Joint): NetFold {
  const laid = sheet.faces.find(({ face }) => face === parent);
  const side = commonSide(table, parent, child);
  if (laid === undefined || side === undefined) throw new RangeError(`no fold between ${parent} and ${child}`);
  return { kind: 'face', path: straightPath(sideOf(laid.ring, side), false), between: [parent, child] };
}

const tabFold = ({ host }: PlacedTab): NetFold => ({
  kind: 'tab',
  path: straightPath([host.a, host.b], false),
  face: host.face,
});

function netTab({ host, shape, landing }: PlacedTab, mate: Placed | null): NetTab {
  if (mate === null) throw new RangeError('a tab is glued to a flat face');
  return {
    kind: 'flap',
    outline: straightPath(shape.ring, true),
    areaMm2: shape.areaMm2,
    depthMm: shape.depthMm,
    host: host.face,
    mate: host.mate,
    landing,
    centroid: inSpace(mate, centroidOf(landing)),
  };
}
