// English sentences for everything that can be wrong with a file, a kit, a challenge or a layout: what is wrong, then what
// to do. The place stands before the sentence; numbers come with their unit.

import type { IssueTexts } from '../keys.ts';

export const issues = {
  // The text of a file.
  'not-json':
    'The file cannot be read on from line {line}, column {column} (not JSON). Look there and just before: is a comma, quote or bracket missing or one too many? Decimals take a point, and quotes are straight.',
  'duplicate-key': 'This key stands here twice. Keep one of the two.',
  'too-deep': 'Lists stand in lists more than {most} deep. Export the file again.',
  'too-many-values': 'The file holds more than {most} values. Export the file again, or split it.',
  'file-too-large': 'The file has {characters} characters. At most {most} are read. Split it into smaller files.',
  'not-a-cairnmark-file':
    'This is no Cairnmark file: "format" and "version" are missing at its start. Choose another file.',
  'format-unknown': 'The format "{format}" is not known. Use one of: {allowed}.',
  'format-other': 'This file is of the format "{received}", but "{expected}" is needed. Choose another file.',
  'version-newer':
    'A newer Cairnmark wrote this file: version {version}; the newest known here is {newest}. Open it there, or ask for an older copy.',
  'version-unknown': 'This is no version number. Write a whole number from 1 on.',
  'more-issues': 'And {count} more. Mend those above first, then check again.',
  // A code on a screen.
  'code-too-large': 'This try needs {bytes} bytes, and a code holds {most}. Save it as a file.',
  'code-of-others': 'This code is not from Cairnmark. Take a photo of the code of a try.',
  'code-newer':
    'A newer Cairnmark made this code: version {version}; the newest known here is {newest}. Bring the try as a file, or use the newer one here.',
  'code-misread': 'A part of this code was not read as it stands. Take the photo again: closer, straight on, sharp.',
  'code-not-ours': 'This code does not say what Cairnmark would write. Ask for the try again, as a file.',
  // The shape of each value.
  missing: 'This is missing. Write it in.',
  'unknown-key': 'This key is not known here. Check its spelling, or take it out.',
  'wrong-type': 'This is {received}. Write {expected}.',
  'not-one-of': 'This says "{received}". Use one of: {allowed}.',
  'not-finite': 'No one can calculate with this number. Write an ordinary number.',
  'not-whole': 'This must be a whole number. Leave out the decimals.',
  'too-small': 'This number is too small. Write {least} or more.',
  'not-above': 'This number is too small. Write more than {moreThan}.',
  'too-large': 'This number is too large. Write {most} or less.',
  'too-few': 'This list is too short. It needs at least {least}.',
  'too-many': 'This list is too long. At most {most} are allowed.',
  'too-many-keys': 'There are too many keys here. At most {most} are allowed.',
  empty: 'This text is empty. Write something in.',
  'too-long': 'This text is too long. At most {most} characters are allowed.',
  'not-an-id': 'This is no id. Use small letters, digits and single hyphens, such as tall-light-2.',
  'not-a-time': 'This is no date and time. Write it like 2026-03-05T10:20:00+01:00.',
  'control-character': 'This text holds a sign that cannot be seen. Type the text again.',
  // Sizes of a solid.
  'size-missing': 'This size is missing. Measure it and write it in, in mm.',
  'size-unknown': 'This solid has no size of that name. Check the spelling, or take it out.',
  'size-not-positive': 'A size must be more than 0 mm. Here it is {sizeMm}. Measure again.',
  'size-not-finite': 'No one can calculate with this size. Measure again.',
  'size-too-large': 'This size is too large: {sizeMm}. At most {mostMm} is allowed. Is it in mm?',
  'size-too-small': 'This size is too small: {sizeMm}. At least {leastMm} is needed. Is it in mm?',
  'size-given-twice': 'This size is already given by "{first}". Keep one of the two.',
  'sides-not-whole': 'The number of sides is {sides}. It must be a whole number.',
  'sides-out-of-range': 'The number of sides is {sides}. It must be from {fewest} to {most}.',
  'triangle-impossible':
    'These three sides make no triangle: the longest must be shorter than the other two together. Measure again.',
  'slant-too-short': 'The slant is {slantMm}. It must be longer than {runMm}, or the sides do not meet. Measure again.',
  'frustum-upside-down': 'The top must be smaller than the bottom. Swap the two, or use a prism or a cylinder.',
  // A layout.
  'kind-unknown': 'The kit has no kind "{kind}". Use a kind of the kit, or add it there.',
  'resting-unknown': 'A piece of the kind "{kind}" cannot rest on "{resting}". Use one of: {known}.',
  'position-not-finite': 'No one can calculate with this place: {value}. Put the piece down again.',
  'position-too-far': 'The piece lies {valueMm} away. At most {limitMm} is allowed. Put it nearer.',
  overlaps: 'This piece runs {depthMm} into piece {other}. Move it aside, or stack it on top.',
  'mass-not-positive': 'A mass must be more than 0 g. Here it is {massG}. Weigh the piece again.',
  'centre-outside-piece':
    'The centre of the weight is {centreMm} high, but it must lie inside the piece: from {leastMm} to {mostMm}. Measure again.',
  'too-many-pieces': 'The build has {count} pieces. At most {limit} are allowed. Split it.',
  // What the records of a class say together.
  'id-twice': 'The id "{id}" stands here twice. Give one of the two another id.',
  'group-unknown': 'There is no group "{group}". Check the spelling, or add the group.',
  'challenge-unknown': 'There is no challenge "{challenge}". Check the spelling, or add the challenge.',
  'criterion-unknown': 'The challenge has no criterion "{criterion}". Check the spelling, or add it there.',
  'requirement-unknown': 'The challenge has no rule "{requirement}". Check the spelling, or add it there.',
  'measure-unknown': 'There is no measure "{measure}". Check the spelling.',
  'height-source-missing': 'No height counts here. Name at least one of: ruler, photo, model.',
  'number-out-of-range': 'The number {value} is not allowed here. Write a number from {least} to {most}.',
  'cap-below-floor': 'The most points ({cap}) are fewer than the least points ({floor}). Swap them.',
  'surface-unknown':
    'No piece of the kit has the surface "{surface}", and the table is called table. Check the spelling.',
  'friction-twice': 'The friction of "{first}" on "{second}" stands here twice. Keep one of the two.',
  'supply-not-played':
    'At the challenge "{challenge}" pieces are not earned in a game. Set the rules of the game, or take this list out.',
  'supply-missing':
    'This asks for what was earned, but pieces are not earned in a game here. Set the rules of the game, or take this out.',
  'kinds-missing': 'This rule names no kind that may be used. Name at least one, or take the rule out.',
  'own-twice': 'The result "{measure}" stands here twice. Keep one of the two.',
  'stock-exceeded': 'This hands out {count} of "{piece}"; left in the stock: {left}. Check the number.',
  'more-than-the-group-has': 'This takes away {count} of "{piece}", but the group has only {has}. Check the number.',
  'mark-twice': '{judge} has marked "{criterion}" twice. Keep one of the two marks.',
} as const satisfies IssueTexts;
