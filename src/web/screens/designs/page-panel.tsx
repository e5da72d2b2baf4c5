import { THEMES, theme } from '../../state/theme.ts';
import { Choice } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';

/** How the page itself looks. */
export function PagePanel() {
  const said = words.designs;
  return (
    <section aria-labelledby="page">
      <h2 id="page">{said.page}</h2>
      <Choice
        label={said.theme}
        options={THEMES.map((each) => [each, said.themes[each]])}
        chosen={theme.value}
        onChoose={(chosen) => {
          theme.value = chosen;
        }}
        look="inline"
      />
    </section>
  );
}
