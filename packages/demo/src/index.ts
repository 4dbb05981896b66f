// The demo class.

export * from './demo.ts';
