// How large the demo class is, told before it is loaded.

export const DEMO_SIZE = { groups: 6, challenges: 3 } as const;
