// Textos en español de la pantalla build.

import type { build as pattern } from '../../en/screens/build.ts';

export const build: Readonly<Record<keyof typeof pattern, string>> = {
  'build.title': 'Construir',
};
