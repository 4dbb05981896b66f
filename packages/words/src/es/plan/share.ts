// Spanish texts of the ways in which a try leaves a device and comes in.

export const share = {
  'share.title': 'Compartir este intento',
} as const;
