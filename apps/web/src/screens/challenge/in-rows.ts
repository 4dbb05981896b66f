// Where the focus goes in a list of rows that can be added to and taken out.

/** The first thing to fill in of the last row. */
export const inLastRow = (area: HTMLElement): HTMLElement | null | undefined =>
  [...area.querySelectorAll<HTMLElement>('.chal-row')].at(-1)?.querySelector<HTMLElement>('select, input');

/** The button that adds a row. */
export const onAdd = (area: HTMLElement): HTMLElement | null => area.querySelector<HTMLElement>('.chal-add button');
