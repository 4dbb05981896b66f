// The languages that there are words for.

export type Language = 'en' | 'es';
export const LANGUAGES: readonly Language[] = ['en', 'es'];
