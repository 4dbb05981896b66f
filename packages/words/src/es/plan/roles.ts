// Spanish texts of the roles: who holds the device.

export const roles = {
  'roles.title': '¿Quién tiene este aparato?',
} as const;
