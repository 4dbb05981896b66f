// English sentences about whether a build stands, by how much, what goes first and what would mend it. "By the sums" is
// what the statics say; the real test is another matter.

import type { StabilityKey } from '../keys.ts';

export const stability = {
  // Things that sentences are made of.
  piece: 'the {kind} (piece {number})',
  table: 'the table',
  all: 'the whole build',
  less: 'less than {amount}',
  tilt: '{degrees} (like a push of {percent} of its weight sideways)',
  'side.right': 'to the right',
  'side.back-right': 'to the back right',
  'side.back': 'to the back',
  'side.back-left': 'to the back left',
  'side.left': 'to the left',
  'side.front-left': 'to the front left',
  'side.front': 'to the front',
  'side.front-right': 'to the front right',
  'side.at': '{side} ({degrees} round from the right)',
  'edge.past': '{length} past the edge',
  'edge.inside': '{length} inside the edge',
  'point.past': '{length} past that point',
  'point.inside': '{length} short of that point',
  // The verdict.
  'verdict.steady': 'Steady: by the sums it stands, even on a table tilted by {steady}.',
  'verdict.wobbly': 'Wobbly: by the sums it stands, but a tilt of less than {steady} brings it down.',
  'verdict.too-close-stands':
    'Too close to call: by the sums it stands, but a tilt of less than {close} brings it down.',
  'verdict.too-close-falls': 'Too close to call: by the sums it falls, but a shift of {step} would hold it.',
  'verdict.falls': 'Falls: by the sums it cannot stand.',
  'verdict.rolls-at-a-touch': 'Rolls at a touch: nothing stops it from rolling. Touching with a round side: {pieces}.',
  'verdict.not-predicted':
    'Not predicted, only measured: the sums are about stiff pieces that simply rest on each other.',
  'verdict.needs-solver':
    'By the sums it stands. How steady it is was not worked out: that part of the program is not loaded.',
  'verdict.margin-not-decided': 'By the sums it stands. How steady it is was not worked out: the sums got too long.',
  'verdict.not-decided': 'Not decided: the sums got too long.',
  // Why it is not predicted.
  'why.taped': 'Taped: {pieces}.',
  'why.glued': 'Glued: {pieces}.',
  'why.leaning': 'Leaning: {pieces}.',
  'why.nested': 'One inside another: {pieces}.',
  'why.paper-rolls': 'Folded paper on a round side, which dents instead of rolling: {pieces}.',
  // How much it bears.
  'bears.tips': 'Stands up to a tilt of {tilt}. Then it tips.',
  'bears.slides': 'Stands up to a tilt of {tilt}. Then it slides.',
  'bears.wedged': 'Stands up to a tilt of {tilt}, weakest {side}. Then the pieces push each other apart.',
  tips: 'Tips at {tilt}, weakest {side}, with sliding left out.',
  slides: 'Slides at {tilt}, with tipping left out.',
  'joint.holds':
    '{upper} on {lower}: the centre of the weight above is {where}; it tips at {tips}, slides at {slides}.',
  'joint.hangs': '{upper} on {lower}: the centre of the weight above is {where}; it does not hold.',
  // What goes first.
  'first.falls': 'Goes first: {what}',
  'also.falls': 'Goes at the same time: {what}',
  'first.stands': 'Would give way first: {what}',
  'also.stands': 'Would give way at the same time: {what}',
  'goes.over-edge':
    '{pieces}, tipping {side} over the edge of the part that rests on {on}. The centre of the weight is {where}.',
  'goes.over-point': '{pieces}, tipping {side} over one point on {on}. The centre of the weight is {where}.',
  'goes.slipping': '{pieces}, slipping on {on}.',
  'goes.dropping': '{pieces}, with nothing underneath.',
  // What is taken for granted, and what would mend it.
  gap: '{upper} is taken to rest on {lower} too, though a gap of {gap} is left.',
  'move.all': '{piece}, and all that stands on it,',
  'move.holds': 'Move {what} {by}: then by the sums it stands, though maybe only just.',
  'move.steadies': 'To make it steady, move {what} {by}: then by the sums it bears a tilt of {steady}.',
  'move.none': 'No single move of a falling piece was found that holds it.',
  // In short, for the strip under a build.
  'brief.piece': 'piece {numbers}',
  'brief.pieces': 'pieces {numbers}',
  'brief.tips': 'You can tilt the table {degrees} before it tips.',
  'brief.slides': 'You can tilt the table {degrees} before it slides.',
  'brief.wedged': 'You can tilt the table {degrees} before its pieces push each other apart.',
  'brief.close': '{bears} Too close to call: try the real one.',
  'brief.one-over': '{what} goes over',
  'brief.many-over': '{what} go over',
  'brief.one-slips': '{what} slips off.',
  'brief.many-slips': '{what} slip off.',
  'brief.one-drops': '{what} has nothing under it.',
  'brief.many-drops': '{what} have nothing under them.',
  'brief.over': '{goes}.',
  'brief.past-edge': '{goes}: the balance point is {length} past the edge.',
  'brief.past-point': '{goes}: the balance point is {length} past the point it turns over.',
  'brief.move': 'Move {what} by {by} and it just stands.',
  'brief.rolls': 'Nothing stops it from rolling: {pieces}.',
  'brief.not-predicted': 'Measured only: the sums are for stiff pieces that simply rest on each other.',
  // Without a piece.
  'without.nothing': 'Without {piece} nothing is left.',
  'without.steady': 'Without {piece} the rest stands, and is steady.',
  'without.wobbly': 'Without {piece} the rest stands, but is wobbly.',
  'without.too-close-stands': 'Without {piece} it is too close to call: by the sums the rest stands.',
  'without.too-close-falls': 'Without {piece} it is too close to call: by the sums it falls.',
  'without.falls': 'Without {piece} it falls, by the sums.',
  'without.rolls-at-a-touch': 'Without {piece} the rest rolls at a touch.',
  'without.not-predicted': 'Without {piece}: not predicted.',
  'without.needs-solver': 'Without {piece} the rest stands, by the sums. How steady it is was not worked out.',
  'without.margin-not-decided': 'Without {piece} the rest stands, by the sums. How steady it is was not worked out.',
  'without.not-decided': 'Without {piece}: not decided, the sums got too long.',
  // Tilted to one side.
  'towards.bears': 'With the table tilted down {side} it stands up to {tilt}.',
  'towards.nothing': 'With the table tilted down {side} it goes at a touch.',
  'towards.unknown':
    'Not known for this side: it falls on a level table already, or is not predicted, or this was not worked out.',
  // What the sums leave out.
  'limit.stiff':
    'Pieces are taken as stiff and unglued. Soft or dented paper, tape, glue and a shaky table are not in the sums.',
  'limit.kindly':
    'Where the pieces could hold each other up in any way, the sums say that they do: wedged or very grippy builds may be judged too kindly.',
  'limit.close': 'Under {close} it is too close to call.',
  'limit.grip':
    'How well pieces grip (friction) is typed in with the kit. For paper on paper no published number was found: the usual 0.4 is a guess.',
  'limit.test': 'The real test on the table decides.',
} as const satisfies Readonly<Record<StabilityKey, string>> & Readonly<Record<string, string>>;
