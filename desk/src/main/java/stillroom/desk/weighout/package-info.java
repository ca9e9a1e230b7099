/** The sheet by which runs of trials are weighed out on paper: what to weigh of each beaker, with room for what was weighed and read. */
@org.jspecify.annotations.NullMarked
package stillroom.desk.weighout;
