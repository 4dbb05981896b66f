// English sentences about one build and about the ranking. Names in braces are filled in; numbers come with their unit.

import type { ResultKey } from '../keys.ts';

export const results = {
  mark: '{mark} of 4',
  // A fact that has no number, by reason.
  'unmeasured.no-layout': 'not measured: no drawing of this build',
  'unmeasured.traced-outline-only': 'not measured: a traced outline does not show it',
  'unmeasured.no-height-read': 'not measured: no height was read',
  'unmeasured.no-pieces-listed': 'not measured: no pieces were listed',
  'unmeasured.unknown': 'not measured',
  readings: 'readings: {readings}',
  // How a number came about where there is no formula.
  'method.sum-of-pieces': 'added up over the pieces',
  'method.highest-point': 'highest point above the table',
  'method.boundary-walk': 'by walking round the outline',
  'method.hull': 'with a tight string round the outline',
  'method.count': 'counted',
  'method.surface-less-contacts':
    'all surfaces S, less both sides of C, where pieces touch flat, and less T, what lies flat on the table',
  gap: 'A gap of {width} counts as closed. From the middle of the sheet it is {across} and {along}.',
  'gap.left': '{length} to the left',
  'gap.right': '{length} to the right',
  'gap.front': '{length} to the front',
  'gap.back': '{length} to the back',
  // Rules.
  subject: '{measure} {value}',
  'bound.exactly': 'exactly {limit}',
  'bound.at-least': 'at least {limit}',
  'bound.at-most': 'at most {limit}',
  'rule.kept': '{subject}. The rule says {bound}. Kept.',
  'rule.broken': '{subject}. The rule says {bound}.',
  'rule.costs': '{sentence} It costs {points}.',
  'rule.not-measured': '{measure}: not measured. The rule says {bound}.',
  'judged.kept': '"{text}" was kept.',
  'judged.broken': '"{text}" was not kept.',
  'judged.not-judged': '"{text}" has not been judged yet.',
  stock: 'It uses {used} of {kind}; the kit has {stock}.',
  // Points.
  'points.line': '{amount} × {each} = {total}',
  'points.measured': '{subject}. {each} for every {per}, {rounding}: {times} × {each} = {total}',
  'points.marks': '{subject}: {times} × {each} = {total}',
  'points.cap': '{line}, but at most {limit}',
  'points.floor': '{line}, but at least {limit}',
  'points.not-measured': '{measure}: not measured, {total}',
  'points.adjusted': '{points} by {by}: {reason}',
  // Why a build takes no place.
  'out.rule-broken': 'A rule is broken. {why}',
  'out.more-than-the-kit-has': 'More pieces than the kit has. {why}',
  'out.absent': 'Absent: no result. That is not 0.',
  'out.not-taking-part': 'Not taking part.',
  'out.fell': 'Fell before it was measured.',
  'out.fell-after': 'Fell after {seconds}.',
  'out.not-confirmed': 'Not confirmed yet: nobody has seen the real build.',
  'out.no-attempt': 'Nothing built yet.',
  'out.not-measured': 'Not measured: {measure}.',
  // Places.
  'place.shared': 'shared with {groups}',
  'place.near': 'within measuring error of {groups}',
  // What people decided.
  'decision.made': '{measure} {value}, decided by {by}: {reason}',
  'decision.instead': '{measure} {value} instead of {before}, decided by {by}: {reason}',
  'decision.back': '{measure} {value} by {by} was taken back: {reason}',
  // Ranking rules.
  'order.more': '{measure}, more is better',
  'order.less': '{measure}, less is better',
  'order.rounded': '{order}, rounded to {step}',
  'order.then': '{first}; then {next}',
  'day.weight': '{challenge} counts {times} times.',
  'day.mean-stands-in': 'A missing result counts as the mean of those there are.',
  'day.missing-is-out': 'A group with a missing result takes no place.',
  'day.place': 'place {place}',
  'day.points-of-place': '{points} for {place}',
  'day.present': '{present} of {of}',
  'day.sum-of-points': 'The day adds up the points of all challenges.',
  'day.sum-of-place-points': 'The day adds up points for places: {points}.',
  'day.mean-place': 'The day takes the mean of the places.',
} as const satisfies Readonly<Record<ResultKey, string>> & Readonly<Record<string, string>>;
