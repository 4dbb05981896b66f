// The two motions of the scene: the view turns, a piece drops. Each is over in a moment, and neither is shown to people who
// asked for less motion. Times in ms, of any one clock.

import type { Camera } from './camera.ts';
import { between, isSameCamera } from './camera.ts';

const TURN_MS = 160;
const DROP_MS = 180;
const DROP_FROM_MM = 60;

/** The camera as it stands, and the camera that it turns to from another; null once it is there. */
export interface Way {
  readonly camera: Camera;
  readonly to: { readonly from: Camera; readonly camera: Camera; readonly sinceMs: number } | null;
}

/** Sets out for `goal` from where it stands; at once there when it comes from nowhere. A goal that it has already is kept. */
export function wayTo(goal: Camera, now: Way | null, nowMs: number): Way {
  if (now === null) return { camera: goal, to: null };
  if (isSameCamera(goal, now.to?.camera ?? now.camera)) return now;
  return { camera: now.camera, to: { from: now.camera, camera: goal, sinceMs: nowMs } };
}

export function onTheWay(way: Way, nowMs: number): Way {
  if (way.to === null) return way;
  const share = shareOf(way.to.sinceMs, TURN_MS, nowMs);
  if (share === 1) return { camera: way.to.camera, to: null };
  return { camera: between(way.to.from, way.to.camera, share * share * (3 - 2 * share)), to: way.to };
}

export interface Drop {
  readonly piece: number;
  readonly sinceMs: number;
}

/** How high above its place a piece is; faster and faster, as things fall. */
export function dropMm({ sinceMs }: Drop, nowMs: number): number {
  return DROP_FROM_MM * (1 - shareOf(sinceMs, DROP_MS, nowMs) ** 2);
}

export const isOver = ({ sinceMs }: Drop, nowMs: number): boolean => shareOf(sinceMs, DROP_MS, nowMs) === 1;

export const wantsLessMotion = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

const shareOf = (sinceMs: number, lastsMs: number, nowMs: number): number =>
  Math.min(1, Math.max(0, (nowMs - sinceMs) / lastsMs));
