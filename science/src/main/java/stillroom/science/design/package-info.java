/** Which mixtures to try: classical and optimal designs of experiments with mixtures. */
@org.jspecify.annotations.NullMarked
package stillroom.science.design;
