import type { SheetProps } from '../desk/sheetView.ts';
import { stepsOf } from '../job/path.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import { figure } from '../words/figure.ts';
import { RoofDrawing } from './RoofDrawing.tsx';
import styles from './RoofSheet.module.css';

/** Sheet 02: the planes as they were measured, and the sun each sees. */
export function RoofSheet({ plan, job, selected, onSelect }: SheetProps) {
  const { planes } = plan.roof;
  const picked =
    planes.find(({ id }) => selected === `plane:${id}`) ??
    planes.find(({ raftersU }) => raftersU === undefined) ??
    planes[0];
  const at = (rest: string) => stepsOf(`facts.roof.planes.${picked?.id}.${rest}`);
  const waiting = (path: string) => plan.site.missing.find((missing) => missing.at === path)?.rules.length ?? 0;
  return (
    <>
      <RoofDrawing plan={plan} job={job} selected={selected} onSelect={onSelect} what="planes" />
      <Part title="Planes" count={planes.length} ruled>
        <table className={styles.planes}>
          <thead>
            <tr>
              <th scope="col">Plane</th>
              <th scope="col" className="num">
                faces
              </th>
              <th scope="col" className="num">
                pitch
              </th>
              <th scope="col" className="num">
                area
              </th>
              <th scope="col" className="num">
                free
              </th>
              <th scope="col" className="num">
                sun a year
              </th>
              <th scope="col" className="num">
                rafters
              </th>
            </tr>
          </thead>
          <tbody>
            {planes.map(({ id, name, facingDeg, pitchDeg, areaM2, usableAreaM2, sun, raftersU }) => (
              <tr key={id} data-selected={selected === `plane:${id}` || undefined}>
                <th scope="row">
                  <button type="button" data-subject={`plane:${id}`} onClick={() => onSelect(`plane:${id}`)}>
                    {name}
                  </button>
                </th>
                <td className="num">{figure(facingDeg, 0)}°</td>
                <td className="num">{figure(pitchDeg, 1)}°</td>
                <td className="num">{figure(areaM2, 1)} m²</td>
                <td className="num">{figure(usableAreaM2, 1)} m²</td>
                <td className="num">{figure(sun.annualKwhM2, 0)} kWh/m²</td>
                <td className="num">{raftersU === undefined ? 'not measured' : raftersU.length}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Part>
      {picked && (
        <Part title={`${picked.name}, as measured`}>
          <div className={styles.fields} key={picked.id}>
            <NumberField label="Eave" path={at('eaveLengthM')} unit="mm" times={1000} />
            <NumberField label="Slope" path={at('slopeLengthM')} unit="mm" times={1000} />
            <NumberField label="Pitch" path={at('pitchDeg')} unit="°" />
            <NumberField label="Faces" path={at('facingDeg')} unit="°" />
            <NumberField
              label="Rafter spacing"
              path={at('rafters.spacingMm')}
              unit="mm"
              optional
              waiting={waiting(`facts.roof.planes.${picked.id}.rafters.spacingMm`)}
            />
            <NumberField label="First rafter" path={at('rafters.firstMm')} unit="mm" optional />
          </div>
        </Part>
      )}
    </>
  );
}
