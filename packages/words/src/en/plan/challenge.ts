// English texts of the Challenge screen.

export const challenge = {
  'challenge.title': 'Challenge',
} as const;
