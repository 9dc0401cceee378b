import { FindingsHere } from '../checks/FindingsHere.tsx';
import type { SheetProps } from '../desk/sheetView.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { Part } from '../parts/Part.tsx';
import { useSelectedInView } from '../parts/useSelectedInView.ts';
import fields from '../trunks/TrunkFields.module.css';
import { CutsBound } from './CutsBound.tsx';
import styles from './KitSheet.module.css';
import { LabelTable } from './LabelTable.tsx';
import { OrderList } from './OrderList.tsx';
import { RailCuts } from './RailCuts.tsx';
import { SpliceList } from './SpliceList.tsx';

/** Sheet 09: what to order, each count with its working, how the rails are cut, and the labels with their clauses. */
export function KitSheet({ plan: { kit, array, checks }, selected, onSelect }: SheetProps) {
  useSelectedInView(selected);
  const { lines, cuts, cutting, splices, breaks, labels } = kit;
  return (
    <>
      <OrderList lines={lines} selected={selected} onSelect={onSelect} />
      <div className={`${fields.fields} ${styles.spares}`}>
        <NumberField label="Spare modules" path={['choices', 'spares', 'modules']} unit="pieces" optional />
        <NumberField label="Spare units" path={['choices', 'spares', 'units']} unit="pieces" optional />
      </div>
      {cuts.length > 0 && (
        <Part title="Rails, cut" count={cutting.bars} ruled aside="to scale, pieces from the left">
          <CutsBound cutting={cutting} />
          <RailCuts cuts={cuts} selected={selected} onSelect={onSelect} />
        </Part>
      )}
      {splices.length + breaks.length > 0 && (
        <Part
          title="Splices and breaks"
          count={splices.length + breaks.length}
          ruled
          aside="from the left end of the rail"
        >
          <SpliceList splices={splices} breaks={breaks} rails={array.rails} />
        </Part>
      )}
      {labels.length > 0 && (
        <Part title="Labels" count={labels.length} ruled>
          <LabelTable labels={labels} selected={selected} onSelect={onSelect} />
        </Part>
      )}
      <FindingsHere findings={checks.findings} sheet="09" selected={selected} onSelect={onSelect} />
    </>
  );
}
