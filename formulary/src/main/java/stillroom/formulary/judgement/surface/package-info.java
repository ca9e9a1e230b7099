/** Surfactants, phases, HLB and net charge of what is judged. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement.surface;
