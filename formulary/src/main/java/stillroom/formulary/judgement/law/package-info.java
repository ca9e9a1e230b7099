/** Rule rows held against a composition, a product and a day. */
@org.jspecify.annotations.NullMarked
package stillroom.formulary.judgement.law;
