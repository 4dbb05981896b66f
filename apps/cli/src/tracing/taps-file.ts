// The file of taps: which sheet, which pieces from the table up, where each was tapped. Or the place where it is not as it should be.

import type { Resting, Solid, SolidId, Vec2 } from '@cairnmark/geometry';
import { CATALOGUE, makeSolid } from '@cairnmark/geometry';
import type { Sheet, TappedPiece, Taps } from '@cairnmark/photo';

export interface TapsFile {
  readonly sheet: Sheet;
  readonly focal35Mm: number | null;
  readonly pieces: readonly TappedPiece[];
  readonly top: Taps | null;
}

/** px. Written down by hand off a screen, or by the magnifier of the app. */
const TAP_SIGMA_PX = 2;

/** `value`: what stands in the file. A text: the place of the first thing that is not as it should be. */
export function tapsFileOf(value: unknown): TapsFile | string {
  if (!isRecord(value)) return '.';
  const sheet = sheetOf(value);
  if (typeof sheet === 'string') return sheet;
  const { pieces, top, focal35Mm = null } = value;
  if (focal35Mm !== null && typeof focal35Mm !== 'number') return 'focal35Mm';
  if (!Array.isArray(pieces) || pieces.length === 0) return 'pieces';
  const read = pieces.map(pieceOf);
  const fault = read.findIndex((one) => typeof one === 'string');
  if (fault >= 0) return `pieces ${fault + 1}, ${read[fault]}`;
  const tapped = read.flatMap((one) => (typeof one === 'string' ? [] : [one]));
  if (top === undefined) return { sheet, focal35Mm, pieces: tapped, top: null };
  const taps = tapsOf(top);
  return taps === null ? 'top' : { sheet, focal35Mm, pieces: tapped, top: taps };
}

type Bag = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);

function sheetOf({ sheet, paper }: Bag): Sheet | string {
  if (paper !== 'a4' && paper !== 'letter') return 'paper';
  if (sheet === 'plain') return { kind: 'plain', paper, halfTurned: false };
  if (sheet !== 'ground' && sheet !== 'forts') return 'sheet';
  return { kind: 'ground', paper, pages: sheet === 'forts' ? 4 : 1, printScale: 1 };
}

function pieceOf(value: unknown): TappedPiece | string {
  if (!isRecord(value)) return '.';
  const { kind, resting, taps } = value;
  if (typeof kind !== 'string') return 'kind';
  const solid = solidOf(value['solid']);
  if (solid === null) return 'solid';
  const side: Resting | undefined = solid.restings.find(({ id }) => id === resting);
  if (side === undefined) return 'resting';
  const read = tapsOf(taps);
  return read === null ? 'taps' : { kind, solid, resting: side, taps: read };
}

function solidOf(value: unknown): Solid | null {
  if (!isRecord(value) || !isRecord(value['sizes'])) return null;
  const id = (Object.keys(CATALOGUE) as SolidId[]).find((one) => one === value['solid']);
  const sizes = Object.entries(value['sizes']).flatMap(([name, size]) =>
    typeof size === 'number' ? [[name, size] as const] : [],
  );
  if (id === undefined || sizes.length < Object.keys(value['sizes']).length) return null;
  const made = makeSolid({ solid: id, sizes: Object.fromEntries(sizes) });
  return made.ok ? made.value : null;
}

function tapsOf(value: unknown): Taps | null {
  if (!Array.isArray(value)) return null;
  const pixels = value.flatMap((one): Vec2[] => {
    const [u, v, more]: readonly unknown[] = Array.isArray(one) ? one : [];
    return typeof u === 'number' && typeof v === 'number' && more === undefined ? [[u, v]] : [];
  });
  return pixels.length < value.length ? null : { pixels, sigmaPx: TAP_SIGMA_PX };
}
