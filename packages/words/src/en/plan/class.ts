// English texts of the plan of a class: its groups, and what may be done with it as a whole.

export const classPlan = {
  'class.title': 'Class',
} as const;
