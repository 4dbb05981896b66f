// Spanish texts of the Kit screen.

export const kit = {
  'kit.title': 'Juego de piezas',
} as const;
