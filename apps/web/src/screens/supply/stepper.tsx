// Fewer, a count, more. A button that can do nothing now still answers, so that it can say why.

interface Step {
  /** For screen readers. */
  readonly text: string;
  readonly act: () => void;
  readonly off: boolean;
  /** It opens something below. */
  readonly open?: boolean;
}

export const Stepper = ({
  name,
  count,
  fewer,
  more,
}: {
  readonly name: string;
  readonly count: number;
  readonly fewer: Step;
  readonly more: Step;
}) => (
  // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as one bar in every browser
  <span className="supply-step" role="group" aria-label={name}>
    <StepButton sign="−" step={fewer} />
    <output>{count}</output>
    <StepButton sign="+" step={more} />
  </span>
);

const StepButton = ({ sign, step }: { readonly sign: string; readonly step: Step }) => (
  <button type="button" aria-disabled={step.off} aria-expanded={step.open} aria-label={step.text} onClick={step.act}>
    {sign}
  </button>
);
