/** What a batch cost, what a container has to bring, and what a dearer material does. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.batches.cost;
