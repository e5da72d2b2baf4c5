/** The screen of joints. */
export const joints = {
  list: 'Joints of the base',
  count: (count: number) => `${count} ×`,
  between: 'Between',
  alone: 'This form draws single parts: where others join them stands on their patterns, as centre lines.',
  none: 'This base has no joints.',
  drawing: (label: string) => `${label}, marked out on its parts and cut open`,
} as const;
