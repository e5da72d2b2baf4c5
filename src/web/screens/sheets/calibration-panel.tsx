import { useEffect, useState } from 'preact/hooks';
import type { Design } from '../../../design/index.ts';
import { engineDo } from '../../engine/engine-do.ts';
import { printToFile } from '../../print/printer.ts';
import { change } from '../../state/current.ts';
import { today } from '../../state/designs.ts';
import { keepPrinter, printers, readPrinters } from '../../store/printers.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { MeasureField } from '../../ui/measure-field.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { words } from '../../words/en.ts';

/** A printer's own error, measured once and corrected from then on. */
export function CalibrationPanel({ design }: { readonly design: Design }) {
  const { paper, units } = design;
  const { calibration } = paper;
  const said = words.sheets;
  const [bars, setBars] = useState<{ readonly long: string; readonly short: string }>();
  const [long, setLong] = useState('');
  const [short, setShort] = useState('');
  const [name, setName] = useState(calibration?.printer ?? '');
  const [says, setSays] = useState<readonly string[]>([]);
  useEffect(() => void readPrinters(), []);
  useEffect(() => void engineDo('readBars', design).then(setBars), [paper, units]);
  const take = async (): Promise<void> => {
    const readings = { ...(long === '' ? {} : { long }), ...(short === '' ? {} : { short }) };
    const printer = name.trim() === '' ? undefined : name.trim();
    const found = await engineDo('calibrate', { design, readings, date: today(), printer });
    if (!found.ok) {
      setSays(found.problems.map(({ message }) => message));
      return;
    }
    const { calibration: next, findings } = found.value;
    change(said.calibration, [{ path: ['paper', 'calibration'], to: next }]);
    if (printer !== undefined) await keepPrinter({ name: printer, size: paper.size, calibration: next });
    setSays(findings.map(({ message }) => message));
    setLong('');
    setShort('');
  };
  const kept = printers.value.filter(({ size }) => JSON.stringify(size) === JSON.stringify(paper.size));
  return (
    <section aria-label={said.printer}>
      <h2>{said.printer}</h2>
      <p class="hint">
        {calibration === undefined
          ? said.noPrinter
          : said.calibrated(percent(calibration.long), percent(calibration.short))}
      </p>
      {kept.length === 0 ? null : (
        <Choice
          label={said.printers}
          options={[['', said.noPrinter], ...kept.map((each) => [each.name, each.name] as const)]}
          chosen={calibration?.printer ?? ''}
          onChoose={(printer) => {
            const chosen = kept.find((each) => each.name === printer);
            change(said.printer, [
              { path: ['paper', 'calibration'], ...(chosen && { to: chosen.calibration }) },
            ]);
            setName(chosen?.name ?? '');
          }}
        />
      )}
      <Button onClick={() => void printToFile(design, { kind: 'calibration' })}>
        {said.calibrationSheet}
      </Button>
      {bars === undefined ? null : <p class="hint">{said.calibrationHelp(bars.long, bars.short)}</p>}
      <TextField label={said.printerName} text={name} maxLength={60} onTake={setName} />
      <MeasureField label={said.long} kind="length" text={long} unit={units.length} onTake={setLong} />
      <MeasureField label={said.short} kind="length" text={short} unit={units.length} onTake={setShort} />
      <div class="row">
        <Button disabled={long === '' && short === ''} onClick={() => void take()}>
          {said.calibrate}
        </Button>
        {calibration === undefined ? null : (
          <Button look="quiet" onClick={() => change(said.forget, [{ path: ['paper', 'calibration'] }])}>
            {said.forget}
          </Button>
        )}
      </div>
      {says.map((message) => (
        <p key={message} class="problem" role="alert">
          {message}
        </p>
      ))}
    </section>
  );
}

function percent(factor: number): string {
  return `${(100 * factor).toFixed(3)} %`;
}
