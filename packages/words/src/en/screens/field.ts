// English texts of the fields for lengths and other numbers.

export const field = {
  'field.decimal-mark': '.',
  'field.unread-length': 'I cannot read {text} as a length.',
  'field.unread-number': 'I cannot read {text} as a number.',
  'field.unread-whole': 'I cannot read {text} as a whole number.',
  'field.too-small': '{text} is too small: {least} is the least.',
  'field.too-large': '{text} is too large: {most} is the most.',
  'field.empty': 'Type a number.',
  'field.kept': 'I kept {kept}.',
  'field.either': 'Which do you mean by {text}?',
} as const;
