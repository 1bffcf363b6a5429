// A run of a design has the process's current directory to itself.
[assembly: CollectionBehavior(DisableTestParallelization = true)]
