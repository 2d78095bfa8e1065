// Nothing but the headers that CMakeLists.txt has compiled beforehand for every room's tests.
