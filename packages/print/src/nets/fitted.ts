// The net of each kind that was ordered, as it goes on the paper, or why there is none.

import type { Result } from '@cairnmark/geometry';
import { failure, success } from '@cairnmark/geometry';
import type { Frame, Net, NetIssue } from '@cairnmark/nets';
import { checkFit, makeNet, splitNet } from '@cairnmark/nets';
import type { PrintWords } from '@cairnmark/words';
import { usableArea } from '../frame/frame.ts';
import type { PaperSize } from '../page/paper.ts';
import type { LeftOut, NetKind, NetOrder } from './order.ts';

export interface Fitted {
  readonly kind: NetKind;
  readonly net: Net;
  /** Pairs of faces that a fold would join, and that are parted because the net is larger than the page. */
  readonly parted: readonly (readonly [number, number])[];
}

export interface FittedNets {
  readonly fitted: readonly Fitted[];
  readonly leftOut: readonly LeftOut[];
}

/** Kinds of which none was ordered are not looked at. Null when `goOn`, asked before each net, said no. */
export function fitNets(order: NetOrder, words: PrintWords, goOn: () => boolean): FittedNets | null {
  const frame = frameOf(order.paper, words);
  const fitted: Fitted[] = [];
  const leftOut: LeftOut[] = [];
  for (const kind of order.kinds.filter(({ count }) => count > 0)) {
    if (!goOn()) return null;
    const made = onPaper(kind, order, frame);
    if (made.ok) fitted.push(made.value);
    else leftOut.push(...made.issues.map((issue) => ({ kind: kind.id, issue })));
  }
  return { fitted, leftOut };
}

const frameOf = (size: PaperSize, words: PrintWords): Frame => ({
  paper: words.say(`print.paper-${size}`),
  ...usableArea({ size, orientation: 'portrait' }),
});

function onPaper(kind: NetKind, { tabDepthMm, large }: NetOrder, frame: Frame): Result<Fitted, NetIssue> {
  const whole = makeNet(kind.solid, { tabDepthMm, frame, base: kind.base ?? 'closed' });
  if (!whole.ok) return whole;
  const net = large === 'split' ? parted(whole.value, frame) : fitting(whole.value, frame);
  return net.ok ? success({ kind, net: net.value, parted: partedIn(whole.value, net.value) }) : net;
}

function fitting(net: Net, frame: Frame): Result<Net, NetIssue> {
  const fit = checkFit(net, frame);
  return fit.ok ? success(net) : fit;
}

/** Where no split helps, the size that would is told as well. */
function parted(net: Net, frame: Frame): Result<Net, NetIssue> {
  const split = splitNet(net, frame);
  if (split.ok) return split;
  const whole = checkFit(net, frame);
  const details = whole.ok ? {} : whole.issues[0]?.details;
  return failure(split.issues.map((issue) => ({ ...issue, details: { ...details, ...issue.details } })));
}

function partedIn(whole: Net, net: Net): readonly (readonly [number, number])[] {
  const kept = new Set(jointsOf(net).map(String));
  return jointsOf(whole).filter((joint) => !kept.has(String(joint)));
}

const jointsOf = ({ parts }: Net): readonly (readonly [number, number])[] =>
  parts.flatMap(({ folds }) => folds.flatMap((fold) => (fold.kind === 'face' ? [fold.between] : [])));
