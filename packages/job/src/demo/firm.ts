/** The invented firm of the demo jobs. */
export const firm = { name: 'Lantern & Ridge Electrical' } as const;

/** Its crew of four. */
export const crew = {
  nia: { name: 'Nia', role: 'lead electrician' },
  ode: { name: 'Ode', role: 'electrician' },
  tam: { name: 'Tam', role: 'roof hand' },
  wren: { name: 'Wren', role: 'roof hand' },
} as const;
