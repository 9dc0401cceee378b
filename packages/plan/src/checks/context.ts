import type { Choices, Confirmation, DesignSignature, Facts, Job } from '@eaveline/job';
import type { Plan } from '../plan.ts';
import type { RulePack } from '../rules/pack.ts';
import type { RuleId } from '../rules/ruleLimits.ts';

/** The parts of a job that rules read. */
export interface CheckView {
  readonly state: Job['state'];
  readonly facts: Pick<Facts, 'site' | 'network' | 'supply' | 'board' | 'roof' | 'walls'> & {
    readonly loads: Pick<Facts['loads'], 'circuits'>;
  };
  readonly choices: Pick<
    Choices,
    | 'rules'
    | 'equipment'
    | 'rows'
    | 'modules'
    | 'units'
    | 'trunks'
    | 'batteries'
    | 'backup'
    | 'mounting'
    | 'wind'
    | 'parts'
    | 'setbacks'
    | 'exportLimitSetVA'
    | 'labels'
    | 'confirmations'
  >;
  /** What has been signed: `of` of every signature, those superseded left out. */
  readonly signed: readonly string[];
  /** The signature that stands for the design. */
  readonly designSigned?: DesignSignature;
}

/** Stages whose answers rules read. */
export type CheckedStages = 'site' | 'roof' | 'array' | 'trunks' | 'board' | 'backup' | 'structure';

/** All that a rule may look at. */
export interface CheckContext extends CheckView, Pick<Plan, CheckedStages> {
  readonly pack: RulePack;
  /** True where a licensed person has put a name to this rule for the edition in force; of another document where named. */
  confirmed(rule: RuleId, document?: string): boolean;
  /** That person's word. */
  wordFor(rule: RuleId, document?: string): Confirmation | undefined;
}

/** Puts the context of a job together. */
export function contextOf(view: CheckView, pack: RulePack, stages: Pick<Plan, CheckedStages>): CheckContext {
  const wordFor: CheckContext['wordFor'] = (rule, document = pack.rules[rule]?.document ?? '') => {
    const edition = editionOf(view.choices.rules, pack, document);
    const full = editionName(document, edition);
    return Object.values(view.choices.confirmations).find(
      (word) => word.rule === rule && (word.edition === edition || word.edition === full),
    );
  };
  return {
    ...view,
    site: stages.site,
    roof: stages.roof,
    array: stages.array,
    trunks: stages.trunks,
    board: stages.board,
    backup: stages.backup,
    structure: stages.structure,
    pack,
    wordFor,
    confirmed: (rule, document) => wordFor(rule, document) !== undefined,
  };
}

/** Edition in force: the job's own, else the one the pack takes. Empty for what has no editions. */
export function editionOf(rules: Choices['rules'], pack: RulePack, document: string): string {
  return rules.editions[document] ?? pack.editions[document] ?? '';
}

/** `AS/NZS 3000 2018`. */
export function editionName(document: string, edition: string): string {
  return edition === '' ? document : `${document} ${edition}`;
}
