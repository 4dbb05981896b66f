// Line drawings of the buttons, 20 px. Never the only sign: a word stands beside each, shown or for screen readers.

const PATHS = {
  settings: 'M3 6h14M3 10h14M3 14h14M7 4v4M13 8v4M9 12v4',
  file: 'M5 3h7l3 3v11H5zM12 3v3h3',
  left: 'M16 10H4M8 6l-4 4 4 4',
  right: 'M4 10h12M12 6l4 4-4 4',
  up: 'M10 16V4M6 8l4-4 4 4',
  down: 'M10 4v12M6 12l4 4 4-4',
  'turn-left': 'M4 5v4h4M4.5 9a6 6 0 1 1 1 5',
  'turn-right': 'M16 5v4h-4M15.5 9a6 6 0 1 0-1 5',
  lay: 'M3 15h14M5 12h10V8H5z',
  'take-off': 'M4 6h12M8 6V4h4v2M6 6l1 11h6l1-11',
  undo: 'M4 8h8a4 4 0 0 1 0 8H8M7 5L4 8l3 3',
  redo: 'M16 8H8a4 4 0 0 0 0 8h4M13 5l3 3-3 3',
  copy: 'M7 7h9v9H7zM4 13V4h9',
  keys: 'M2.5 6h15v9h-15zM5 9h1M8 9h1M11 9h1M14 9h1M6 12h8',
  yes: 'M4 10.5l4 4 8-9',
  no: 'M5 5l10 10M15 5L5 15',
  unknown: 'M7 7.5a3 3 0 1 1 4.5 2.6c-1 .6-1.500 1.100-1.500 2.100M10 15.500v.2',
  stack: 'M4 17h12M7 17v-3h6v3M8 14v-3h4v3M9 11V8h2v3M9.500 8V5h1v3',
  layout: 'M3 16h14l-3-8H6zM5 13h10M10 8v8',
  numbers: 'M4 15h12M4 15V5M8 15v-4M12 15V8M16 15v-6',
  near: 'M4 8c2-2 4-2 6 0s4 2 6 0M4 13c2-2 4-2 6 0s4 2 6 0',
  screen: 'M4 8V4h4M12 4h4v4M16 12v4h-4M8 16H4v-4',
  print: 'M6 8V3h8v5M6 14H3V8h14v6h-3M6 12h8v5H6z',
  plus: 'M10 4v12M4 10h12',
  minus: 'M4 10h12',
  camera: 'M3 6h3l1.500-2h5L14 6h3v10H3zM10 8a2.800 2.800 0 1 1 0 5.600 2.800 2.800 0 0 1 0-5.600',
  clock: 'M10 3a7 7 0 1 1 0 14 7 7 0 0 1 0-14M10 6v4l3 2',
} as const;

export type IconName = keyof typeof PATHS;

export const Icon = ({ name }: { readonly name: IconName }) => (
  <svg className="ic" viewBox="0 0 20 20" aria-hidden="true">
    <path d={PATHS[name]} />
  </svg>
);
