import { signal } from '@preact/signals';

/** The screens in the order of work, then those beside it. */
export const WORK_SCREENS = ['shape', 'joints', 'wood', 'routing', 'sheets', 'book'] as const;
const SIDE_SCREENS = ['designs', 'study', 'own-shape'] as const;

export type Screen = (typeof WORK_SCREENS)[number] | (typeof SIDE_SCREENS)[number];

const ALL: readonly Screen[] = [...WORK_SCREENS, ...SIDE_SCREENS];

/** Which screen is shown: the page's fragment says it, so that the browser's own way back works. */
export const screen = signal<Screen>(screenOf(location.hash));

export function hashOf(name: Screen): string {
  return `#/${name}`;
}

export function show(name: Screen): void {
  location.hash = hashOf(name);
}

addEventListener('hashchange', () => {
  screen.value = screenOf(location.hash);
});

function screenOf(hash: string): Screen {
  const name = hash.replace(/^#\//, '').split('?')[0];
  return ALL.find((each) => each === name) ?? 'shape';
}
