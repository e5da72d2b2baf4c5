import { THEMES, type Theme, theme } from '../../state/theme.ts';
import { words } from '../../words/en.ts';

/** How the page itself looks. */
export function PagePanel() {
  const said = words.designs;
  return (
    <section aria-labelledby="page">
      <h2 id="page">{said.page}</h2>
      <label class="choice inline">
        {said.theme}{' '}
        <select
          value={theme.value}
          onChange={(event) => {
            theme.value = event.currentTarget.value as Theme;
          }}
        >
          {THEMES.map((each) => (
            <option key={each} value={each}>
              {said.themes[each]}
            </option>
          ))}
        </select>
      </label>
    </section>
  );
}
