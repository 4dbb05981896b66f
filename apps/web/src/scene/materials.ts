// All materials of the scene, painted anew when the colours of the page change.

import { Color, DoubleSide, MeshBasicMaterial, MeshLambertMaterial } from 'three';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import type { Family } from '../drawing/family.ts';
import { FAMILIES } from '../drawing/family.ts';
import type { Camera } from './camera.ts';
import { isAbove } from './camera.ts';
import type { Theme } from './theme.ts';

/** Plain; pale, because it moves; a ghost where a piece would settle, or where it may not be put. */
export type Look = 'plain' | 'pale' | 'ghost' | 'refused';

export class Materials {
  readonly leaf = new MeshBasicMaterial(BEHIND_LINES);
  readonly square = new LineMaterial({ linewidth: 1 });
  readonly squareBold = new LineMaterial({ linewidth: 1.5 });
  readonly hatch = new LineMaterial({ linewidth: 1 });
  readonly rim = new LineMaterial({ linewidth: 1.2, dashed: true, dashSize: 4, gapSize: 3 });
  /** The footprint from above, over everything. */
  readonly footprint = new LineMaterial({ linewidth: 3.5, depthTest: false, transparent: true });
  readonly picked = new LineMaterial({ linewidth: 3.5, transparent: true, ...NEARER });
  /** Drawn over the pale pieces that it holds up, but not over others. */
  readonly heldUp = new MeshBasicMaterial({ ...BEFORE_SURFACES, transparent: true, side: DoubleSide });
  readonly heldUpRim = new LineMaterial({ linewidth: 1.2, transparent: true });
  /** Leaves no colour: it only hides the far edges of a piece that is seen through. */
  readonly mask = new MeshBasicMaterial({ ...BEHIND_LINES, transparent: true, colorWrite: false });
  readonly lines: Readonly<Record<Look, LineMaterial>> = {
    plain: new LineMaterial({ linewidth: 1.4 }),
    pale: new LineMaterial({ linewidth: 1.2, transparent: true }),
    ghost: new LineMaterial({ linewidth: 2, transparent: true, dashed: true, dashSize: 6, gapSize: 4 }),
    refused: new LineMaterial({
      linewidth: 2,
      transparent: true,
      dashed: true,
      dashSize: 6,
      gapSize: 4,
      depthTest: false,
    }),
  };
  readonly #surfaces: ReadonlyMap<Look, ReadonlyMap<Family, MeshLambertMaterial>>;
  readonly #refused = new MeshLambertMaterial({ ...BEHIND_LINES, ...SEEN_THROUGH, opacity: OPACITY.refused });

  constructor() {
    const each = (look: 'plain' | 'pale' | 'ghost'): ReadonlyMap<Family, MeshLambertMaterial> =>
      new Map(FAMILIES.map((family) => [family, new MeshLambertMaterial(surface(look))]));
    this.#surfaces = new Map([
      ['plain', each('plain')],
      ['pale', each('pale')],
      ['ghost', each('ghost')],
    ]);
  }

  surface(look: Look, family: Family): MeshLambertMaterial {
    return this.#surfaces.get(look)?.get(family) ?? this.#refused;
  }

  paint(theme: Theme): void {
    this.leaf.color.set(theme.leaf);
    this.square.color.set(theme.square);
    this.squareBold.color.set(theme.squareBold);
    this.hatch.color.set(theme.inkSoft);
    this.rim.color.set(theme.inkSoft);
    this.footprint.color.set(theme.ink);
    this.picked.color.set(theme.ink);
    this.heldUp.color.set(theme.wood);
    this.heldUpRim.color.set(theme.edge);
    this.lines.plain.color.set(theme.edge);
    this.lines.pale.color.copy(new Color(theme.inkSoft).lerp(new Color(theme.table), 0.45));
    this.lines.ghost.color.set(theme.ink);
    this.lines.refused.color.set(theme.bad);
    this.#refused.color.set(theme.bad);
    for (const families of this.#surfaces.values()) {
      for (const [family, { color }] of families) {
        color.set(theme.families.get(family) ?? theme.edge).lerp(WHITE, PALER);
      }
    }
  }

  /** Dashes keep their length on the screen; from above a picked piece is seen through those on it. */
  aim({ pxPerMm, view }: Camera): void {
    for (const line of [this.rim, this.lines.ghost, this.lines.refused]) line.dashScale = pxPerMm;
    this.picked.depthTest = !isAbove(view);
  }

  dispose(): void {
    const surfaces = [...this.#surfaces.values()].flatMap((families) => [...families.values()]);
    const paper = [this.leaf, this.square, this.squareBold, this.hatch, this.rim, this.footprint];
    const pieces = [
      this.picked,
      this.heldUp,
      this.heldUpRim,
      this.mask,
      this.#refused,
      ...Object.values(this.lines),
      ...surfaces,
    ];
    for (const material of [...paper, ...pieces]) material.dispose();
  }
}

/** Surfaces stand back by more than half a line, so that lines on their edges are seen whole. */
const BEHIND_LINES = { polygonOffset: true, polygonOffsetFactor: 2, polygonOffsetUnits: 2 } as const;

/** Some 2 mm nearer than it is, so that pieces which touch do not eat into it. */
const NEARER = { polygonOffset: true, polygonOffsetFactor: 0, polygonOffsetUnits: -1000 } as const;

const BEFORE_SURFACES = { polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -4 } as const;

const SEEN_THROUGH = { transparent: true, depthWrite: false } as const;

/** The light takes a little more than it gives; so much white makes up for it. */
const WHITE = new Color('white');
const PALER = 0.02;

const OPACITY = { pale: 0.36, ghost: 0.5, refused: 0.3 } as const;

const surface = (look: 'plain' | 'pale' | 'ghost') =>
  look === 'plain' ? BEHIND_LINES : { ...BEHIND_LINES, ...SEEN_THROUGH, opacity: OPACITY[look] };
