import { Mark } from '../parts/Mark.tsx';
import styles from './Specimens.module.css';
import { FACES, SIGNS } from './signs.ts';

type Group = keyof typeof SIGNS;

/** Every sign we letter, in every face and weight it is asked of. */
export function GlyphProof() {
  return (
    <>
      {FACES.map(({ name, family, weights, groups }) =>
        weights.map((weight) => (
          <section key={`${name} ${weight}`} className={styles.proof}>
            <h3>
              {name}, {weight}
            </h3>
            <dl>
              {groups.map((group) => (
                <div key={group} className={styles.sort}>
                  <dt className={styles.group}>{group}</dt>
                  <dd
                    className={styles.signs}
                    data-proof={`${name} ${weight}`}
                    style={{
                      fontFamily: family,
                      fontWeight: weight,
                      fontStyle: name === 'Symbol' ? 'italic' : 'normal',
                    }}
                  >
                    {SIGNS[group as Group]}
                  </dd>
                </div>
              ))}
            </dl>
          </section>
        )),
      )}
      <section className={styles.proof}>
        <h3>Drawn with a pen</h3>
        <p>
          <Mark state="meets" /> <Mark state="fails" />{' '}
          <svg className={styles.box} width="18" height="18" viewBox="0 0 18 18" aria-hidden="true">
            <rect className="pen50" x="2" y="2" width="14" height="14" />
          </svg>{' '}
          tick, cross and box: no face of ours holds all three, so all are drawn.
        </p>
        <p className={styles.columns}>
          <span>1 154.60</span>
          <span>7 111.11</span>
          <span>8 888.88</span>
          <span>−0.40</span>
        </p>
        <p className="quiet">Figures have one width: their points stand below each other.</p>
      </section>
    </>
  );
}
