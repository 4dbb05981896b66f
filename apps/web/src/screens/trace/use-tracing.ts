// A build being traced, with what the worker finds out for it.

import type { Bench } from '@cairnmark/editing';
import type { PaperId } from '@cairnmark/photo';
import { makeRoom } from '@cairnmark/photo';
import { useEffect, useState } from 'preact/hooks';
import type { PhotoClient } from '../../workers/photo-questions.ts';
import { usePhotoClient } from '../../workers/use-photo.ts';
import { tapsAsked, withWays } from './hand.ts';
import { withOutline } from './shape.ts';
import { placesFound, sheetFor } from './sheets.ts';
import type { Step, Tracing, View } from './tracing.ts';
import { measured, NOT_BEGUN, onSheet, withShot } from './tracing.ts';

/** Where what is traced outlives the door, so that another door can be looked through; it goes with the screen. */
export interface Keep {
  tracing: Tracing | null;
}

export interface TracingAtWork {
  readonly tracing: Tracing;
  step(how: Step): void;
  /** The piece in hand is being fitted. */
  readonly fitting: boolean;
  readonly client: PhotoClient;
}

/** `paper`: what a school of these units prints on. */
export function useTracing(keep: Keep, bench: Bench, paper: PaperId): TracingAtWork {
  const [tracing, setTracing] = useState<Tracing>(() => keep.tracing ?? onSheet({ what: 'ground', paper })(NOT_BEGUN));
  const client = usePhotoClient();
  const step = (how: Step): void => setTracing(how);
  keep.tracing = tracing;
  useReading(client, tracing, 'above', step);
  useReading(client, tracing, 'side', step);
  const fitting = useFitting(client, tracing, bench, step);
  const outlining = useOutlining(client, tracing, step);
  return { tracing, step, fitting: fitting || outlining, client };
}

/** A photo that nobody has looked at yet is looked at; on another sheet anew. */
function useReading(client: PhotoClient, tracing: Tracing, view: View, step: (how: Step) => void): void {
  const shot = tracing.shots[view];
  const file = shot?.file;
  const isRead = shot?.read !== null;
  useEffect(() => {
    if (file === undefined || isRead) return;
    let current = true;
    const tell = (change: Parameters<typeof withShot>[2]): void => {
      if (current) step(withShot(view, file, change));
    };
    const sheet = sheetFor(tracing.sheet, view === 'side' ? placesFound(tracing) : undefined);
    client
      .ask(view, 'read', { file, sheet }, (done, most) => tell({ share: done / most }))
      .then((read) => {
        if (read !== null && !('ok' in read)) tell({ read });
      })
      .catch(() => tell({ read: 'failed' }));
    return () => {
      current = false;
    };
  }, [client, file, isRead, view, tracing.sheet]);
}

/** Once a piece has all its taps it is looked where it stands. */
function useFitting(client: PhotoClient, tracing: Tracing, bench: Bench, step: (how: Step) => void): boolean {
  const { hand, pieces } = tracing;
  const above = measured(tracing, 'above');
  const asked = hand === null ? 0 : tapsAsked(bench.solids.get(hand.kind), hand.resting);
  const isDue =
    hand !== null && asked > 0 && hand.taps.length === asked && hand.ways.length === 0 && hand.issue === null;
  const taps = isDue ? hand.taps : null;
  useEffect(() => {
    if (taps === null || hand === null || above === null) return;
    const { kind, resting } = hand;
    const solid = bench.solids.get(kind);
    if (solid === undefined) return;
    const spec = { solid: solid.id, sizes: solid.sizes };
    const { photo, camera } = above;
    const below = makeRoom(pieces).map(({ placed }) => placed);
    client
      .ask('fit', 'fit', { photo, camera, below, kind, spec, resting, taps }, () => undefined)
      .then((answer) => {
        if (answer !== null && 'ok' in answer) step(withWays(taps, answer));
      })
      .catch(() => undefined);
  }, [client, taps]);
  return taps !== null;
}

/** Once all corners of a shape are tapped its edges are looked for. */
function useOutlining(client: PhotoClient, tracing: Tracing, step: (how: Step) => void): boolean {
  const shape = tracing.shapeInHand;
  const above = measured(tracing, 'above');
  const isDue = shape?.closed === true && shape.found === null;
  const taps = isDue ? shape.taps : null;
  const zMm = shape?.planeMm ?? null;
  useEffect(() => {
    if (taps === null || zMm === null || above === null) return;
    const { photo, camera } = above;
    client
      .ask('fit', 'outline', { photo, camera, plane: { zMm, sigmaMm: RULER_SIGMA_MM }, taps }, () => undefined)
      .then((answer) => {
        if (answer !== null && 'ok' in answer) step(withOutline(taps, zMm, answer));
      })
      .catch(() => undefined);
  }, [client, taps, zMm]);
  return taps !== null;
}

/** mm. How well the height of an edge is read on a ruler. */
const RULER_SIGMA_MM = 1;
