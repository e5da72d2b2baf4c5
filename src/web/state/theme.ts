import { effect, signal } from '@preact/signals';

export const THEMES = ['system', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

const NAME = 'legwright theme';

/** Light or dark, as chosen for this page; `system` as the device has it. */
export const theme = signal<Theme>(THEMES.find((each) => each === stored()) ?? 'system');

effect(() => {
  if (theme.value === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme.value;
  try {
    localStorage.setItem(NAME, theme.value);
  } catch {
    // A browser that keeps nothing asks again next time.
  }
});

function stored(): string | null {
  try {
    return localStorage.getItem(NAME);
  } catch {
    return null;
  }
}
