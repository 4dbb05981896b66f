// English texts of the build screen.

export const build = {
  'build.title': 'Build',
} as const;
