#include "peers.h"

#include <vtkMassProperties.h>
#include <vtkNew.h>
#include <vtkSTLReader.h>

double vtk_read_and_volume(const std::string& path) {
  vtkNew<vtkSTLReader> reader;
  reader->SetFileName(path.c_str());
  vtkNew<vtkMassProperties> properties;
  properties->SetInputConnection(reader->GetOutputPort());
  properties->Update();
  return properties->GetVolume();
}
