// English texts of the roles: who holds the device.

export const roles = {
  'roles.title': 'Who holds this device?',
} as const;
