// Marks and texts of a picture, drawn over the canvas.

import type { Camera } from './camera.ts';
import type { Box } from './label-layout.ts';
import type { OverlayLayer } from './overlay-layer.ts';
import type { ScenePicture } from './picture.ts';
import type { Room } from './room.ts';
import { boxesToAvoid, marksOf, namedOf } from './scene-marks.ts';

interface Seen {
  readonly camera: Camera;
  readonly room: Room;
  /** Where texts may stand. */
  readonly frame: Box;
  /** While the view turns, the texts that name marks are away: they would jump about. */
  readonly isTurning: boolean;
}

export function writeMarks(layer: OverlayLayer, picture: ScenePicture, { camera, room, frame, isTurning }: Seen): void {
  const { marks, heightAt, rulerBox } = marksOf(picture, camera, room);
  const heightBox = layer.placeHeight(heightAt);
  const named = isTurning ? [] : namedOf(picture, camera);
  const avoid = named.length === 0 ? [] : boxesToAvoid(picture, camera, [rulerBox, heightBox]);
  layer.draw(marks, named, avoid, frame);
}
