// English texts of the ways in which a try leaves a device and comes in.

export const share = {
  'share.title': 'Share this try',
  'share.what':
    'Take a photo of this code with the other device. There, choose the photo under "Bring in a try". It stands here and on the Class screen.',
  'share.code-label':
    'Code of {group}, {challenge}, try {number}, for the camera of another device. The button below saves the same try as a file.',
  'share.code-not': 'Save this try as a file instead.',
  'share.save': 'Save as a file',
  'share.bring': 'Bring in a try',
  'share.bring-what':
    'Choose a file of a try, or a photo of its code; several at once if you like. Photos are read on this device. Cairnmark keeps none and sends none.',
  'share.choose': 'Choose files or photos',
  'share.reading': 'Reading {file}',
  'share.read-all': 'Files opened: {count}.',
  'share.which': '{group}, {challenge}, try {number}',
  'share.which-unknown': '{group}, {challenge}',
  'share.pieces': 'Built of {pieces}.',
  'share.readings': 'Height by the ruler: {lengths}.',
  'share.no-reading': 'No height was read from the ruler.',
  'share.stood': 'It stood for {time}.',
  'share.fell': 'It fell after {time}.',
  'share.comes-confirm': 'Somebody has seen the real build. That comes in too.',
  'share.comes-judge': 'It has been judged. That comes in too.',
  'share.comes-decide': 'Values were set or points given by hand. That comes in too.',
  'share.stays-out':
    'Who saw it, judged it or decided on it stays out. Only a device that is held by such a person takes that in.',
  'share.group-unknown': 'This class has no group "{group}".',
  'share.group-choose': 'Which group is it of?',
  'share.group-none': 'Choose a group',
  'share.other-rules': 'The rules of this challenge are other ones here. The points may come out otherwise.',
  'share.other-kit': 'The kit is another one here. The pieces may have other sizes.',
  'share.other-sizes': 'The group has measured other sizes here. What is worked out from them may come out otherwise.',
  'share.supply-here': 'The pieces that were earned do not come in. What the Supply screen says here counts.',
  'share.rules-not-told': 'A file does not tell its rules and its kit. Check that they are the same here.',
  'share.here': 'This try is here already: it is try {number}. Nothing changes.',
  'share.beside':
    'A try of this name is here already, with other content. Both stay: this one comes in as a further try.',
  'share.take': 'Take it in',
  'share.taken': 'It is here now, as try {number}.',
  'share.show': 'Show it',
  'share.refused': 'It was not taken in. Nothing has changed.',
  'share.not-read': '{file} was not read.',
  'share.photo-not-opened':
    'This browser cannot open this picture. Save it as JPEG or PNG, or bring the try as a file.',
  'share.no-code':
    'No code was found on this photo. Take it again: the whole code with the white around it, straight on and sharp.',
  'share.help-save': 'Saves this try as a file, for a USB stick or any folder.',
  'share.help-choose': 'Reads tries from files or photos. Nothing is taken in before you say so.',
  'share.help-take': 'Puts the try into this class. What is here already stays as it is.',
} as const;
