// Spanish texts of the Challenge screen.

export const challenge = {
  'challenge.title': 'Reto',
} as const;
