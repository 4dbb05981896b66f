/** Faults told at once: nobody reads further. */
export const FAULTS_TOLD_MOST = 5;
