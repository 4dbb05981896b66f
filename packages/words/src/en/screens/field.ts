// English texts of the fields for lengths and other numbers.

export const field = {
  'field.decimal-mark': '.',
  'field.unread-length': 'I cannot read {text} as a length. Type it like 12.5 cm or 4 3/4 in.',
  'field.unread-number': 'I cannot read {text} as a number. Type it like 12.5.',
  'field.unread-whole': 'I cannot read {text} as a whole number. Type it like 12.',
  'field.too-small': '{text} is too small: {least} is the least.',
  'field.too-large': '{text} is too large: {most} is the most.',
  'field.empty': 'Type a number.',
  'field.kept': 'I kept {kept}.',
  'field.either': 'Which do you mean by {text}?',
} as const;
