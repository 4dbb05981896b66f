// The figures behind a verdict, line by line: what it bears, what goes first, joint by joint, gaps taken as closed, moves.

import type { JointMargin, Mend, Stability, Tilt } from '@cairnmark/geometry';
import { capital } from './amounts.ts';
import { failureSentences, whereText } from './failures.ts';
import type { Kinds } from './pieces.ts';
import { pieceName, pieceNames } from './pieces.ts';
import { exact, inSteps } from './quantities.ts';
import { fill } from './say.ts';
import { degreesText, sideText, tiltText } from './tilts.ts';
import type { Voice } from './voice.ts';

/** Of what is not predicted the reasons alone: the sums do not hold for it. */
export function reasonLines({ notPredicted }: Stability, kinds: Kinds, voice: Voice): readonly string[] {
  const reasons = [...new Set(notPredicted.map(({ why }) => why))];
  return reasons.map((reason) => {
    const pieces = notPredicted.filter(({ why }) => why === reason).map(({ piece }) => piece);
    return fill(voice.words.stability[`why.${reason}`], { pieces: pieceNames(pieces, kinds, voice) });
  });
}

export function figureLines(stability: Stability, kinds: Kinds, voice: Voice): readonly string[] {
  const { stands, verdict, first, joints, closedGaps, mend, steadyingMove } = stability;
  const gaps = closedGaps.map((gap) => gapLine(gap, kinds, voice));
  // What rolls bears nothing, and its verdict names it: figures would all be 0.
  if (verdict === 'rolls-at-a-touch') return gaps;
  return [
    ...marginLines(stability, voice),
    ...failureSentences(first, stands === false ? 'falls' : 'stands', kinds, voice),
    ...jointLines(joints ?? [], kinds, voice),
    ...gaps,
    ...(mend === null ? [] : [moveLine('holds', mend, kinds, voice)]),
    ...(verdict === 'falls' && mend === null ? [voice.words.stability['move.none']] : []),
    ...(steadyingMove === null ? [] : [moveLine('steadies', steadyingMove, kinds, voice)]),
  ];
}

/** rad. Margins by programmes agree to 0.1 degrees: less than that is no third figure. */
const SAME_TILT_RAD = Math.PI / 1800;

function marginLines({ standsTo, tipsAt, slidesAt }: Stability, voice: Voice): readonly string[] {
  const { stability } = voice.words;
  const lines: string[] = [];
  const filled = (text: string, tilt: Tilt): string =>
    fill(text, { tilt: tiltText(tilt, voice), side: sideText(tilt.direction, voice) });
  if (standsTo !== null) lines.push(filled(stability[`bears.${limitOf(standsTo, tipsAt, slidesAt)}`], standsTo));
  if (tipsAt !== null) lines.push(filled(stability.tips, tipsAt));
  if (slidesAt !== null) lines.push(filled(stability.slides, slidesAt));
  return lines;
}

export function limitOf(standsTo: Tilt, tipsAt: Tilt | null, slidesAt: Tilt | null): 'tips' | 'slides' | 'wedged' {
  const [tips, slides] = [tipsAt?.tiltRad ?? Number.POSITIVE_INFINITY, slidesAt?.tiltRad ?? Number.POSITIVE_INFINITY];
  if (Math.min(tips, slides) - standsTo.tiltRad > SAME_TILT_RAD) return 'wedged';
  return tips <= slides ? 'tips' : 'slides';
}

/** mm. Rounding of a load that balances on an edge. */
const NOISE_MM = 1e-9;

/** A single joint says no more than the build as a whole. */
function jointLines(joints: readonly JointMargin[], kinds: Kinds, voice: Voice): readonly string[] {
  return joints.length < 2 ? [] : joints.map((joint) => jointLine(joint, kinds, voice));
}

function jointLine({ upper, lower, tipsAt, slidesAtRad, insideMm }: JointMargin, kinds: Kinds, voice: Voice): string {
  const hangs = insideMm < -NOISE_MM;
  return fill(voice.words.stability[hangs ? 'joint.hangs' : 'joint.holds'], {
    upper: capital(pieceName(upper, kinds, voice)),
    lower: pieceName(lower, kinds, voice),
    where: whereText('edge', hangs ? -insideMm : -Math.abs(insideMm), voice),
    tips: degreesText(tipsAt.tiltRad, voice),
    slides: degreesText(slidesAtRad, voice),
  });
}

/** mm. Gaps follow from measured sizes: a tenth tells those within the slack apart, and more is noise. */
const GAP_STEP_MM = 0.1;

type CarriedGap = Stability['closedGaps'][number];

function gapLine({ upper, lower, gapMm }: CarriedGap, kinds: Kinds, voice: Voice): string {
  return fill(voice.words.stability.gap, {
    upper: capital(pieceName(upper, kinds, voice)),
    lower: pieceName(lower, kinds, voice),
    gap: inSteps(gapMm, GAP_STEP_MM, 'mm', voice.reader.ruler, voice.words.decimalMark),
  });
}

/** "Move the cone (piece 5), and all that stands on it, 14 mm to the left: ...". */
function moveLine(to: 'holds' | 'steadies', move: Mend, kinds: Kinds, { words, reader }: Voice): string {
  const piece = pieceName(move.piece, kinds, { words, reader });
  const length = exact(move.byMm, 'mm', reader.ruler, words.decimalMark);
  return fill(words.stability[`move.${to}`], {
    what: move.moved.length > 1 ? fill(words.stability['move.all'], { piece }) : piece,
    by: fill(words.results[`gap.${move.side}`], { length }),
    steady: exact(reader.bands.steadyRad, 'rad', reader.ruler, words.decimalMark),
  });
}
