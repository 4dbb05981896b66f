// English texts of the Kit screen.

export const kit = {
  'kit.title': 'Kit',
} as const;
